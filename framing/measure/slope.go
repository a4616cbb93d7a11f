package measure

import "math/bits"

// Slope returns the angle of a rise over a run, rounded to the nanodegree, above
// -180 and up to 180 degrees: the slope of a wire, the miter of a cut. A fall is
// a rise below nothing. Nothing over nothing is level. 45 degrees and the right
// angles come out exactly; what lies within 2^-25 nanodegrees of a half can be
// 1 nanodegree off.
func Slope(rise, run Length) Angle {
	const straight = Turn / 2
	a := atan(magnitude(int64(rise)), magnitude(int64(run)))
	if run < 0 {
		a = straight - a
	}
	if rise < 0 && a < straight {
		a = -a
	}
	return a
}

// ArcTan returns the angle across from the side opposite of a right triangle
// whose other leg is adjacent: [Slope] by the name that it has beside [ArcSin]
// and [ArcCos]. It takes all four quadrants, above -180 and up to 180 degrees:
// an adjacent side below nothing turns the angle past a right one. Nothing over
// nothing is level.
func ArcTan(opposite, adjacent Length) Angle { return Slope(opposite, adjacent) }

// ArcSin returns the angle across from a side of a right triangle, from -90 to
// 90 degrees, rounded as [Slope] does it. A side that is longer than the
// hypotenuse counts as just as long, and nothing over nothing is level.
func ArcSin(opposite, hypotenuse Length) Angle {
	side, long := magnitude(int64(opposite)), magnitude(int64(hypotenuse))
	a := RightAngle
	switch {
	case side == 0:
		return 0
	case side < long:
		hi, lo := squaresLess(long, side)
		shift := rootShift(hi, lo)
		a = sloped(side, shift/2, root(shifted(hi, lo, shift)))
	}
	if (opposite < 0) != (hypotenuse < 0) {
		a = -a
	}
	return a
}

// ArcCos returns the angle beside a side of a right triangle, from 0 to 180
// degrees: a right angle less [ArcSin].
func ArcCos(adjacent, hypotenuse Length) Angle { return RightAngle - ArcSin(adjacent, hypotenuse) }

// sloped is the angle of a rise of y x 2^shift over a run x.
func sloped(y uint64, shift uint, x uint64) Angle {
	if spare := uint(bits.LeadingZeros64(y)); shift > spare {
		return atan(y<<spare, x>>(shift-spare))
	}
	return atan(y<<shift, x)
}

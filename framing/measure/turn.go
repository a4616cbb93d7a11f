package measure

// Trigonometry in whole numbers. A sine is held to 2^-124, so a product with it
// is the exact one rounded, unless the exact one lies within 1e-8 nm of a half;
// then it can be 1 nm off. For lengths of the trade, and angles of more than a
// minute, "within" is 1e-20 nm. Rational values come out exactly: the sine of 0,
// 30 and 90 degrees, the tangent of 0 and 45, and their like; no other sine or
// tangent of a whole number of nanodegrees is rational (Niven's theorem), so none
// of their products is ever just a half.

// Sin returns l times the sine of a, rounded half away from zero. Any angle
// will do: whole turns do not count.
func (l Length) Sin(a Angle) Length { return Length(timesSin(int64(l), a)) }

// Cos returns l times the cosine of a, as [Length.Sin] does.
func (l Length) Cos(a Angle) Length { return Length(timesSin(int64(l), a%Turn+RightAngle)) }

// Tan returns l times the tangent of a, rounded half away from zero. Past the
// range it is the nearest Length there is. At 90 and 270 degrees, where the
// tangent has no value, it is the greatest Length with the sign of l.
func (l Length) Tan(a Angle) Length { return Length(timesTan(int64(l), a)) }

// OverTan returns l over the tangent of a, as [Length.Tan] does: how far a bevel
// at the angle a runs in over the thickness l. Where the tangent is nothing it is
// the greatest Length with the sign of l.
func (l Length) OverTan(a Angle) Length { return Length(timesTan(int64(l), RightAngle-a%Turn)) }

// OverSin returns l over the sine of a, as [Length.Tan] does: how long a bevel
// at the angle a is over the thickness l. Where the sine is nothing it is the
// greatest Length with the sign of l.
func (l Length) OverSin(a Angle) Length { return Length(overSin(int64(l), a)) }

// Sin does for a force what [Length.Sin] does for a length.
func (f Force) Sin(a Angle) Force { return Force(timesSin(int64(f), a)) }

// Cos does for a force what [Length.Cos] does for a length.
func (f Force) Cos(a Angle) Force { return Force(timesSin(int64(f), a%Turn+RightAngle)) }

// Tan does for a force what [Length.Tan] does for a length.
func (f Force) Tan(a Angle) Force { return Force(timesTan(int64(f), a)) }

// OverTan does for a force what [Length.OverTan] does for a length: the pull
// that draws the rails together, from the load at the end of a wire.
func (f Force) OverTan(a Angle) Force { return Force(timesTan(int64(f), RightAngle-a%Turn)) }

// OverSin does for a force what [Length.OverSin] does for a length: the tension
// of a wire at the angle a above the level, from the load at its end.
func (f Force) OverSin(a Angle) Force { return Force(overSin(int64(f), a)) }

func timesSin(v int64, a Angle) int64 {
	return int64(SineOf(a).Of(Length(v)))
}

func overSin(v int64, a Angle) int64 {
	sin, one, negative := sine(a)
	m := magnitude(v)
	switch {
	case v == 0:
		return 0
	case one:
		return signed(m, negative != (v < 0))
	case sin == wide{}:
		return saturated(v < 0)
	}
	q, ok := sin.over(m, wide{})
	if !ok {
		return saturated(negative != (v < 0))
	}
	return signed(q, negative != (v < 0))
}

func timesTan(v int64, a Angle) int64 {
	const straight = Turn / 2
	if a %= straight; a < 0 {
		a += straight
	}
	negative := v < 0
	if a > RightAngle {
		a, negative = straight-a, !negative
	}
	switch {
	case v == 0 || a == 0:
		return 0
	case a == RightAngle:
		return saturated(v < 0)
	case a == RightAngle/2:
		return signed(magnitude(v), negative)
	}
	sin, _, _ := sine(a)
	cos, _, _ := sine(RightAngle - a)
	q, ok := cos.over(sin.scaled(magnitude(v)))
	if !ok {
		return saturated(negative)
	}
	return signed(q, negative)
}

// signed is m or -m, or the nearest there is.
func signed(m uint64, negative bool) int64 {
	switch {
	case m > maxInt64:
		return saturated(negative)
	case negative:
		return -int64(m)
	}
	return int64(m)
}

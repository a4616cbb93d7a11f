package molding

import "github.com/fairmiter/fairmiter/framing/measure"

// SawSteps returns the steps that a saw's scales can be read to: whole, half and
// quarter degrees.
func SawSteps() [3]measure.Angle {
	return [3]measure.Angle{measure.Degree, measure.Degree / 2, measure.Degree / 4}
}

// Nearest returns the setting with both angles to the nearest step.
func (s Setting) Nearest(step measure.Angle) Setting {
	s.Miter, _ = measure.RoundTo(s.Miter, step, measure.Nearest)
	s.Tilt, _ = measure.RoundTo(s.Tilt, step, measure.Nearest)
	return s
}

// A Share is what one cut adds to a joint that does not lie as it should: how
// much farther the rail reaches than at its sight edge in front, square to the
// cut. Below nothing it reaches less far.
type Share struct {
	Rim  measure.Length // at the rim
	Back measure.Length // at the back
}

// Share returns what a cut with a setting s in a position leaves, on a board of
// the side's face and thickness. Both angles are less than right ones, as on any
// saw.
func (c SlopedCorner) Share(side SlopedSide, p Position, s Setting) Share {
	return c.shareOf(side, p, s, c.plane())
}

// shareOf is [SlopedCorner.Share] where the right plane is given.
func (c SlopedCorner) shareOf(side SlopedSide, p Position, s Setting, right cutPlane) Share {
	cut := c.planeOf(p, s)
	size := right.size()
	share := func(way, wanted, got measure.Length) measure.Length {
		a, _ := measure.MulDiv(way, int64(got), int64(cut.along))
		b, _ := measure.MulDiv(way, int64(wanted), int64(right.along))
		square, _ := measure.MulDiv(a-b, int64(right.along), int64(size))
		return square
	}
	return Share{share(side.Face, right.rim, cut.rim), share(side.Thickness, right.back, cut.back)}
}

// planeOf is the plane that a setting cuts in a position.
func (c SlopedCorner) planeOf(p Position, s Setting) cutPlane {
	upright, table := radius.Cos(s.Tilt), radius.Sin(s.Tilt)
	along, fence := upright.Cos(s.Miter), upright.Sin(s.Miter)
	switch p {
	case OnEdge:
		return cutPlane{along, table, fence}
	case Propped:
		own := c.Own.Flat()
		return cutPlane{along, fence.Cos(own) - table.Sin(own), fence.Sin(own) + table.Cos(own)}
	}
	return cutPlane{along, fence, table}
}

// A Gap is how a joint stands open when its two boards are pushed together until
// they touch. Of Heel and Toe, and of Front and Back, one is nothing.
type Gap struct {
	Heel  measure.Length // at the sight edge, the joint touching at the rim
	Toe   measure.Length // at the rim, the joint touching at the sight edge
	Front measure.Length // over the thickness in front, where it is seen
	Back  measure.Length // over the thickness at the back
}

// JointGap returns the gap of a joint of two cuts; of two boards cut alike, give
// the share of the one twice.
func JointGap(a, b Share) Gap {
	rim, back := a.Rim+b.Rim, a.Back+b.Back
	return Gap{Heel: max(rim, 0), Toe: max(-rim, 0), Front: max(back, 0), Back: max(-back, 0)}
}

// Most returns the widest that the joint stands open, at the corner of the cut
// across from where it touches.
func (g Gap) Most() measure.Length { return g.Heel + g.Toe + g.Front + g.Back }

// A Rounded is a cut as it can be set on a saw's scales.
type Rounded struct {
	Step    measure.Angle // what the scales are read to
	Setting Setting       // the setting nearest to the exact one
	Gap     Gap           // what it leaves where both boards are cut so
}

// Rounded returns the cut in a position to the nearest step, and the gap of two
// boards that are both cut off by as much.
func (c SlopedCorner) Rounded(side SlopedSide, p Position, step measure.Angle) Rounded {
	right := c.plane()
	return c.roundedTo(side, p, step, c.settingOf(p, right), right)
}

func (c SlopedCorner) roundedTo(side SlopedSide, p Position, step measure.Angle, exact Setting, right cutPlane) Rounded {
	s := exact.Nearest(step)
	share := c.shareOf(side, p, s, right)
	return Rounded{step, s, JointGap(share, share)}
}

// RoundedToSteps is [SlopedCorner.Rounded] to each of [SawSteps].
func (c SlopedCorner) RoundedToSteps(side SlopedSide, p Position) [3]Rounded {
	right := c.plane()
	exact := c.settingOf(p, right)
	var rounded [3]Rounded
	for i, step := range SawSteps() {
		rounded[i] = c.roundedTo(side, p, step, exact, right)
	}
	return rounded
}

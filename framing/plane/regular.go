package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Across says where the size of a regular polygon is measured.
type Across string

// Where a regular polygon is measured. With an odd number of sides no two of them
// are parallel, and none has a corner across from it: there it is twice the way
// from the middle to a side, or to a corner.
const (
	Flats   Across = "flats"  // from a side to the one across from it
	Points  Across = "points" // from a corner to the one across from it
	OneSide Across = "side"   // the length of a side
)

// Choices lists where one measures, for readers and forms.
func (Across) Choices() []string { return []string{string(Flats), string(Points), string(OneSide)} }

// HalfTurn is half of what a regular polygon of n sides turns at each corner, 180
// degrees over n, rounded to the nearest nanodegree: what the saw is set to. An n
// below 3 is taken as 3.
func HalfTurn(n int) measure.Angle { return share(measure.Turn/2, 1, max(n, 3)) }

// share is i n-ths of a, rounded half away from zero.
func share(a measure.Angle, i, n int) measure.Angle {
	part, _ := measure.MulDiv(a, int64(i), int64(n))
	return part
}

// Turns are what a regular polygon of n sides turns at its corners: 360 degrees
// over n where that is a whole number of nanodegrees, else by one more or less, so
// that they add up to 360 degrees exactly. It has none for an n below 3 or above
// [MaxCorners].
func Turns(n int) []measure.Angle {
	if n < 3 || n > MaxCorners {
		return nil
	}
	turns := make([]measure.Angle, n)
	for i := range turns {
		turns[i] = share(measure.Turn, i+1, n) - share(measure.Turn, i, n)
	}
	return turns
}

// Regular returns the polygon of n equal sides, 3 to [MaxCorners], and equal
// corners around the origin. Its first side is at the bottom, level, and runs to
// the right. The directions of its corners are rounded to a nanodegree, which is less
// than 0.01 nm in a meter. Equal sides are equal, and [Turns] are its turns.
func Regular(n int, across Across, size measure.Length) (Polygon, error) {
	if err := checkCount(n, 3, MaxCorners); err != nil {
		return Polygon{}, err
	}
	if err := checkLength(size, Reach, -1); err != nil {
		return Polygon{}, err
	}
	// Twice the way from the middle to a corner.
	half := HalfTurn(n)
	wide := size << grain
	switch across {
	case Flats:
		wide = wide.OverSin(measure.RightAngle - half)
	case OneSide:
		wide = wide.OverSin(half)
	case Points:
	default:
		return Polygon{}, fault(explain.NotAChoice, -1)
	}
	if wide > 2*Reach<<grain {
		return Polygon{}, limited(fault(Far, 0), explain.AtMost, Reach)
	}
	spots := make([]spot, n)
	for i := range spots {
		spots[i] = arrow(int64(wide/2), share(measure.Turn, 2*i-1, 2*n)-measure.RightAngle)
	}
	p, err := outline(spots)
	if err != nil {
		return Polygon{}, err
	}
	side := p.sides[0].Length
	for i, turn := range Turns(n) {
		p.sides[i] = Side{side, turn}
	}
	if across == OneSide {
		for i := range p.sides {
			p.sides[i].Length = size
		}
	}
	return p, nil
}

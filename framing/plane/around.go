package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// MaxAround is how many sides a regular polygon may have for [RegularAround].
const MaxAround = 1000

// Stand is how a regular polygon hangs.
type Stand string

// Choices lists how a regular polygon can hang, for readers and forms.
func (Stand) Choices() []string { return []string{string(OnSide), string(OnPoint), string(Sideways)} }

// How a regular polygon hangs: in line with an axis, so that it looks the same from
// left and right, or as high to either side. An odd one with a corner at the bottom
// is one with a side there turned upside down. With an even number of sides, no way
// between needs less room than the better of the two that are given. With an odd
// one, askew can need up to a hundredth less, and hangs askew.
const (
	OnSide   Stand = "side"    // a side is at the bottom, level
	OnPoint  Stand = "point"   // a corner is at the bottom, and with an even number of sides one at the top
	Sideways Stand = "upright" // a side is upright, at the left: an odd polygon lying on its side
)

// An Around is the smallest regular polygon around an upright rectangle, standing
// in one way.
type Around struct {
	Stand Stand
	// Flats is the polygon's size across flats, twice the way from its middle to a
	// side, rounded up.
	Flats measure.Length
	// Turned is how far the polygon of [Regular] is turned to the left to stand so.
	Turned measure.Angle
	// Middle is where the rectangle's middle lies, seen from the polygon's.
	Middle Point
}

// RegularAround returns the smallest regular polygons of n sides, 3 to
// [MaxAround], that an upright rectangle of this size fits into, one for each way
// to stand: two of them. In an odd one the rectangle does not lie in the middle.
func RegularAround(n int, inner measure.Size) ([]Around, error) {
	if err := checkCount(n, 3, MaxAround); err != nil {
		return nil, err
	}
	for i, l := range [...]measure.Length{inner.Width, inner.Height} {
		if err := checkLength(l, explain.MaxLength, i); err != nil {
			return nil, err
		}
	}
	second, by := OnPoint, HalfTurn(n)
	if n%2 == 1 {
		second, by = Sideways, -measure.RightAngle
	}
	return []Around{around(n, inner, OnSide, 0), around(n, inner, second, by)}, nil
}

// around needs, of each side, that twice its way from the middle is no less than
// the rectangle's extent in its direction, more where the rectangle moves toward
// it. A polygon in line with an axis lets the rectangle move along that axis only,
// and the two sides that are first to stop it, one either way, say how far.
func around(n int, inner measure.Size, stand Stand, turn measure.Angle) Around {
	const one = measure.Length(1) << 40
	type wall struct{ extent, way measure.Length } // extent in 2^-grain nm, way of one
	walls := make([]wall, n)
	width, height := inner.Width<<grain, inner.Height<<grain
	for i := range walls {
		normal := share(measure.Turn, i, n) + turn - measure.RightAngle
		way := one.Sin(normal)
		if stand == Sideways {
			way = one.Cos(normal)
		}
		walls[i] = wall{abs(width.Cos(normal)) + abs(height.Sin(normal)), way}
	}
	r := Around{Stand: stand, Turned: turn}
	var flats, moved measure.Length
	for _, a := range walls {
		if n%2 == 0 || abs(a.way) < 1<<8 { // opposite sides are alike; this one is in line
			flats = max(flats, a.extent)
			continue
		}
		for _, b := range walls {
			if a.way <= 0 || b.way >= 0 {
				continue
			}
			// Weighed by the other's way; their difference moves the rectangle.
			sum := a.way - b.way
			x, _ := a.extent.Scale(int64(-b.way), int64(sum))
			y, _ := b.extent.Scale(int64(a.way), int64(sum))
			if x+y > flats {
				flats = x + y
				moved, _ = (b.extent - a.extent).Scale(int64(one), int64(2*sum))
			}
		}
	}
	const nm = 1 << grain
	r.Flats = (flats + nm - 1) / nm
	if stand == Sideways {
		r.Middle.X = coarse(int64(moved))
	} else {
		r.Middle.Y = coarse(int64(moved))
	}
	return r
}

func abs(l measure.Length) measure.Length { return max(l, -l) }

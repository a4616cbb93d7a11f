package plane

import "github.com/fairmiter/fairmiter/framing/measure"

// A Rectangle lies in the plane: upright with its lower left corner at Corner,
// then turned to the left about it.
type Rectangle struct {
	Corner Point         `json:"corner"`
	Size   measure.Size  `json:"size"`
	Turned measure.Angle `json:"turned"`
}

// Corners returns its corners, from the lower left one on to the right, to the
// nearest nanometer.
func (r Rectangle) Corners() [4]Point {
	var corners [4]Point
	for i, s := range r.spots(0) {
		corners[i] = s.point()
	}
	return corners
}

// spots are the corners, each moved in by so much on either side.
func (r Rectangle) spots(in measure.Length) [4]spot {
	left, bottom := int64(in)<<grain, int64(in)<<grain
	right, top := int64(r.Size.Width-in)<<grain, int64(r.Size.Height-in)<<grain
	spots := [4]spot{{left, bottom}, {right, bottom}, {right, top}, {left, top}}
	for i, s := range spots {
		spots[i] = turned(s, r.Turned).plus(r.Corner.spot())
	}
	return spots
}

// Contains reports whether a point lies inside p or on it, exactly.
func (p Polygon) Contains(at Point) bool {
	return at.within() && p.encloses(at.spot())
}

// encloses counts the sides to the right of a spot.
func (p Polygon) encloses(s spot) bool {
	inside := false
	for i, a := range p.corners {
		b := p.corners[(i+1)%len(p.corners)]
		way := side(a, b, s)
		if way == 0 && min(a.x, b.x) <= s.x && s.x <= max(a.x, b.x) && min(a.y, b.y) <= s.y && s.y <= max(a.y, b.y) {
			return true
		}
		if (a.y > s.y) != (b.y > s.y) && (b.y > a.y) == (way > 0) {
			inside = !inside
		}
	}
	return inside
}

// ContainsRectangle reports whether a rectangle that is slack smaller on each side
// lies inside p; it may touch p from within. With a slack of nothing a rectangle
// that just fits is in or out by the rounding of corners; [Tolerance] lets it in.
// A rectangle of no size, or of one past twice [Reach], is in nothing.
func (p Polygon) ContainsRectangle(r Rectangle, slack measure.Length) bool {
	fits := func(l measure.Length) bool { return l > 0 && l <= 2*Reach }
	slack = max(slack, 0)
	if !fits(r.Size.Width) || !fits(r.Size.Height) || !r.Corner.within() || slack > Reach ||
		!fits(r.Size.Width-2*slack) || !fits(r.Size.Height-2*slack) {
		return false
	}
	rectangle := r.spots(slack)
	for _, s := range rectangle {
		if !s.within() || !p.encloses(s) {
			return false
		}
	}
	// No side may run through it; then it is all inside or all outside, and its
	// middle tells which.
	for i, a := range p.corners {
		if runsThrough(a, p.corners[(i+1)%len(p.corners)], rectangle) {
			return false
		}
	}
	a, b := rectangle[0], rectangle[2]
	return p.encloses(spot{a.x + (b.x-a.x)/2, a.y + (b.y-a.y)/2})
}

// runsThrough reports whether the straight line from a to b has a point inside a
// rectangle that runs to the left. It has none where a side of the rectangle, or
// the line itself, parts the two.
func runsThrough(a, b spot, rectangle [4]spot) bool {
	left, right := false, false
	for i, c := range rectangle {
		d := rectangle[(i+1)%4]
		if side(c, d, a) <= 0 && side(c, d, b) <= 0 {
			return false
		}
		way := side(a, b, c)
		left, right = left || way > 0, right || way < 0
	}
	return left && right
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// RailCorners are where the two edges of a rail begin and end, around the same
// origin as the panel, in the order of the panel's corners.
type RailCorners struct {
	Sight, Outer [2]plane.Point
}

// Lie returns where the rails of p lie, one for each side of the panel, to two
// nanometers; a side without molding has none, all at nothing. Also of an open frame,
// whose rails' square ends are in none of the outlines.
func (f PolygonFrame) Lie(p Polygon) []RailCorners {
	lie := make([]RailCorners, len(p.Rails))
	for i, r := range p.Rails {
		if r.IsZero() {
			continue
		}
		a, b := p.Panel.Corner(i), p.Panel.Corner(i+1)
		heading := measure.Slope(b.Y-a.Y, b.X-a.X)
		place := func(along, out measure.Length) plane.Point {
			if p.Panel.Clockwise() {
				out = -out
			}
			return plane.Point{
				X: a.X + along.Cos(heading) + out.Sin(heading),
				Y: a.Y + along.Sin(heading) - out.Cos(heading),
			}
		}
		side, sight := p.Panel.Side(i).Length, f.sight(r.Section)
		inner, outer := f.grown(p.Panel, i, 0)
		innerEnd, outerEnd := f.grown(p.Panel, i, 1)
		lie[i] = RailCorners{
			Sight: [2]plane.Point{place(-fromFine(inner), sight), place(side+fromFine(innerEnd), sight)},
			Outer: [2]plane.Point{place(-fromFine(outer), sight+r.Face), place(side+fromFine(outerEnd), sight+r.Face)},
		}
	}
	return lie
}

// around are the corners of a rail, round it.
func (r RailCorners) around() [4]plane.Point {
	return [4]plane.Point{r.Sight[0], r.Sight[1], r.Outer[1], r.Outer[0]}
}

// covers reports whether two rails touch, or one lies on the other.
func (r RailCorners) covers(o RailCorners) bool {
	a, b := r.around(), o.around()
	for i := range a {
		for j := range b {
			if plane.Meet(a[i], a[(i+1)%4], b[j], b[(j+1)%4]) {
				return true
			}
		}
	}
	return holds(a, b[0]) || holds(b, a[0])
}

func holds(corners [4]plane.Point, at plane.Point) bool {
	p, err := plane.New(corners[:]...)
	return err == nil && p.Contains(at)
}

// cross finds two rails, not joined to each other, that lie on one another, or one of
// whose outer edge its neighbor leaves nothing.
func (f PolygonFrame) cross(p Polygon) (one, other int, found bool) {
	n := len(p.Rails)
	lie := f.Lie(p)
	for i, r := range p.Rails {
		if r.IsZero() {
			continue
		}
		if r.Outer <= 0 {
			if other = (i + 1) % n; r.Finish.Square || !r.Start.Square && r.Start.Growth < r.Finish.Growth {
				other = (i + n - 1) % n
			}
			return i, other, true
		}
		for j := i + 1; j < n; j++ {
			if joined := j == i+1 || i == 0 && j == n-1; !joined && !p.Rails[j].IsZero() && lie[i].covers(lie[j]) {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// ArcRule says by which construction four arcs are laid out.
type ArcRule string

// The constructions, both for given axes. French's is that of the drafting books: from
// an end A of the longer axis to an end C of the shorter, CE = a - b is laid off, and
// the line that halves AE at a right angle gives both centers where it meets the axes
// (Chandrupatla and Osler, "Approximating an ellipse with four circular arcs", who name
// it so). Huygens' lets the arcs meet at 60 degrees, so that the triangles between the
// centers are halves of equilateral ones (from memory).
const (
	French  ArcRule = "french"
	Huygens ArcRule = "huygens"
)

// FourArcs are four arcs of circles that come close to an ellipse and run smoothly
// into one another, through the ends of both axes. Two have the radius Small, around
// SmallCenter and across from it, and two the radius Large. The large arc around
// LargeCenter meets the small one around SmallCenter at Meet, on the line through both
// centers, above and to the right of the middle; all else is alike in the other three
// quarters. Most is how far they are from the ellipse where they are farthest.
type FourArcs struct {
	Rule        ArcRule        `json:"rule"`
	Small       measure.Length `json:"small"`
	Large       measure.Length `json:"large"`
	SmallCenter Point          `json:"small_center"`
	LargeCenter Point          `json:"large_center"`
	Meet        Point          `json:"meet"`
	Most        measure.Length `json:"most"`
}

// FourArcs returns the arcs of the construction that comes closer to e: French's for
// ovals of the trade, Huygens' for those about twice as long as wide. Lengths are
// rounded to the nearest. An oval so thin that a radius passes [Reach] is refused
// ([Far]).
func (e Ellipse) FourArcs() (FourArcs, error) {
	if err := e.check(); err != nil {
		return FourArcs{}, err
	}
	long, short := e.axes()
	o := arcOval{a: long << (grain - 1), b: short << (grain - 1)}
	best, rule := o.french(), French
	if best.large > measure.Length(edge) {
		return FourArcs{}, limited(fault(Far, -1), explain.AtMost, Reach)
	}
	most := o.most(best)
	if other := o.huygens(); 0 < other.small && long != short {
		if m := o.most(other); m < most {
			best, rule, most = other, Huygens, m
		}
	}
	place := func(x, y measure.Length) Point {
		if e.Height > e.Width {
			x, y = y, x
		}
		return spot{int64(x), int64(y)}.point()
	}
	x, y := best.meet()
	return FourArcs{
		Rule: rule, Small: coarse(int64(best.small)), Large: coarse(int64(best.large)), Most: coarse(int64(most)),
		SmallCenter: place(best.along, 0), LargeCenter: place(0, -best.across), Meet: place(x, y),
	}, nil
}

// An arcOval is an ellipse that lies down, by half axes in units of 2^-grain nm.
type arcOval struct{ a, b measure.Length }

// arcs are two radii, and how far their centers are from the middle, in such units.
type arcs struct{ small, large, along, across measure.Length }

func (o arcOval) arcs(small, large measure.Length) arcs {
	return arcs{small, large, o.a - small, large - o.b}
}

func (o arcOval) french() arcs {
	s := measure.Hypot(o.a, o.b)
	small, _ := s.Scale(int64(s-o.a+o.b), 2*int64(o.a))
	large, _ := s.Scale(int64(s+o.a-o.b), 2*int64(o.b))
	return o.arcs(small, large)
}

func (o arcOval) huygens() arcs {
	const sixty = 60 * measure.Degree
	along := (o.a - o.b + (o.a - o.b).Tan(sixty)) / 2
	return o.arcs(o.a-along, o.b+along.Tan(sixty))
}

// meet is where the arcs meet, on the line from the large one's center to the small
// one's.
func (c arcs) meet() (x, y measure.Length) {
	between := int64(measure.Hypot(c.along, c.across))
	if between == 0 { // a circle
		return c.small.Cos(measure.Turn / 8), c.small.Sin(measure.Turn / 8)
	}
	x, _ = c.small.Scale(int64(c.along), between)
	y, _ = c.small.Scale(int64(c.across), between)
	return c.along + x, y
}

// most is how far the arcs are from the ellipse at the most. Both outlines are convex,
// so it is the most by which their reaches differ in one direction u: where the arcs
// meet, or where the difference stands still, which for the small arc is at
// cos u = b k / (c root(c^2 - k^2)), for the large one at sin u = a k / (c root(c^2 + k^2)),
// with k how far its center is from the middle and c how far the focus is.
func (o arcOval) most(c arcs) measure.Length {
	focus := measure.Leg(o.a, o.b)
	if focus == 0 {
		return 0
	}
	meet := measure.Slope(c.across, c.along)
	least := o.off(c, meet, true)
	most := max(least, -least)
	try := func(u measure.Angle, small bool) {
		if small == (u < meet) {
			d := o.off(c, u, small)
			most = max(most, d, -d)
		}
	}
	if side := measure.Leg(focus, c.along); side > 0 {
		adjacent, _ := c.along.Scale(int64(o.b), int64(focus))
		try(measure.ArcCos(adjacent, side), true)
	}
	opposite, _ := c.across.Scale(int64(o.a), int64(focus))
	try(measure.ArcSin(opposite, measure.Hypot(focus, c.across)), false)
	return most
}

// off is how much farther an arc reaches in a direction than the ellipse.
func (o arcOval) off(c arcs, u measure.Angle, small bool) measure.Length {
	reach := measure.Hypot(o.a.Cos(u), o.b.Sin(u))
	if small {
		return c.along.Cos(u) + c.small - reach
	}
	return c.large - c.across.Sin(u) - reach
}

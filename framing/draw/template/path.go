package template

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A Vertex is a point of a path and how it goes on to the next one: straight, or
// in an arc of a circle that turns left through Sweep, right where it is below
// nothing, by less than a whole turn.
type Vertex struct {
	plane.Point
	Sweep measure.Angle
}

// A Path is one line of a template, of straight pieces and arcs of circles. The
// last vertex of a closed path goes on to its first; that of an open one ends it. A path
// made by [Oval] has no vertices before it is written.
type Path struct {
	Layer    Layer
	Closed   bool
	Vertices []Vertex

	oval   plane.Parallel
	middle plane.Point // of the oval
}

// Line is a straight path.
func Line(layer Layer, from, to plane.Point) Path {
	return Path{Layer: layer, Vertices: []Vertex{{Point: from}, {Point: to}}}
}

// Outline is the path around a polygon.
func Outline(layer Layer, p plane.Polygon) Path {
	path := Path{Layer: layer, Closed: true, Vertices: make([]Vertex, p.Len())}
	for i := range path.Vertices {
		path.Vertices[i].Point = p.Corner(i)
	}
	return path
}

// check adds what lies outside the domain of a path.
func (p Path) check(c *explain.Checker, at explain.Path) {
	checkLayer(c, at, p.Layer)
	if p.isOval() {
		size := p.oval.Size()
		checkPoint(c, at+"/middle", plane.Point{X: p.middle.X - size.Width/2, Y: p.middle.Y - size.Height/2})
		checkPoint(c, at+"/middle", plane.Point{X: p.middle.X + size.Width/2, Y: p.middle.Y + size.Height/2})
		return
	}
	if len(p.Vertices) < 2 {
		c.Add(explain.Problem{Code: explain.TooFew, Path: at + "/vertices", Accepted: "2"})
		return
	}
	for i, v := range p.Vertices {
		from := (at + "/vertices").Index(i)
		checkPoint(c, from, v.Point)
		c.Angle(from+"/sweep", v.Sweep, 1-measure.Turn, measure.Turn-1)
	}
	if !c.Clean(at) {
		return
	}
	// The middle of an arc says how far it reaches.
	for i, v := range p.Vertices {
		if v.Sweep == 0 || !p.Closed && i+1 == len(p.Vertices) {
			continue
		}
		a := arc{v.Point, p.Vertices[(i+1)%len(p.Vertices)].Point, v.Sweep}
		up, right := a.bulge()
		near := -plane.Reach <= up && up <= plane.Reach && -plane.Reach <= right && right <= plane.Reach
		if !near || a.from == a.to {
			c.Add(explain.Problem{Code: explain.OutOfRange, Path: (at + "/vertices").Index(i) + "/sweep", Given: explain.Of(v.Sweep).String()})
		}
	}
}

// arcs visits the pieces of a path that was checked.
func (p Path) arcs(visit func(arc)) {
	n := len(p.Vertices)
	for i, v := range p.Vertices {
		if i+1 < n || p.Closed {
			visit(arc{v.Point, p.Vertices[(i+1)%n].Point, v.Sweep})
		}
	}
}

// An arc is a straight piece, or one that turns left through sweep.
type arc struct {
	from, to plane.Point
	sweep    measure.Angle
}

func (a arc) across() (dx, dy measure.Length) { return a.to.X - a.from.X, a.to.Y - a.from.Y }

// bulge is twice the way from the middle of the chord to that of the arc, which
// lies to the right of the chord where it turns left.
func (a arc) bulge() (x, y measure.Length) {
	dx, dy := a.across()
	return dy.Tan(a.sweep / 4), -dx.Tan(a.sweep / 4)
}

// middle is the point halfway along the arc.
func (a arc) middle() plane.Point {
	x, y := a.bulge()
	return plane.Point{X: (a.from.X + a.to.X + x) / 2, Y: (a.from.Y + a.to.Y + y) / 2}
}

// split visits parts of the arc that turn by no more than most.
func (a arc) split(most measure.Angle, visit func(arc)) {
	if -most <= a.sweep && a.sweep <= most {
		visit(a)
		return
	}
	middle, half := a.middle(), a.sweep/2
	arc{a.from, middle, half}.split(most, visit)
	arc{middle, a.to, a.sweep - half}.split(most, visit)
}

// controls are those of the cubic Bezier curve that leaves and ends as the arc
// does and goes through its middle. With t the tangent of a quarter of the sweep,
// they lie a third of (1-t^2) of the chord from its ends along it, and a third of
// 2t of the chord beside it. Up to 30 degrees the curve is off by less than
// 4e-7 of the radius.
func (a arc) controls() (one, two plane.Point) {
	dx, dy := a.across()
	x, y := a.bulge()
	along := plane.Point{X: (dx - dx.Tan(a.sweep/4).Tan(a.sweep/4)) / 3, Y: (dy - dy.Tan(a.sweep/4).Tan(a.sweep/4)) / 3}
	beside := plane.Point{X: 2 * x / 3, Y: 2 * y / 3}
	return plane.Point{X: a.from.X + along.X + beside.X, Y: a.from.Y + along.Y + beside.Y},
		plane.Point{X: a.to.X - along.X + beside.X, Y: a.to.Y - along.Y + beside.Y}
}

// fine is how far an arc may turn that is drawn as one Bezier curve.
const fine = 30 * measure.Degree

// center is the middle of the circle; the arc turns by a degree or more.
func (a arc) center() plane.Point {
	dx, dy := a.across()
	return plane.Point{
		X: (a.from.X + a.to.X - dy.OverTan(a.sweep/2)) / 2,
		Y: (a.from.Y + a.to.Y + dx.OverTan(a.sweep/2)) / 2,
	}
}

// radius is that of the circle; the arc turns by a degree or more.
func (a arc) radius() measure.Length {
	dx, dy := a.across()
	half, _ := measure.Hypot(dx, dy).Half()
	return max(half.OverSin(a.sweep/2), -half.OverSin(a.sweep/2))
}

// bounds grow around what is put into them.
type bounds struct {
	least, most plane.Point
	used        bool
}

func (b *bounds) point(p plane.Point) {
	if !b.used {
		b.least, b.most, b.used = p, p, true
		return
	}
	b.least = plane.Point{X: min(b.least.X, p.X), Y: min(b.least.Y, p.Y)}
	b.most = plane.Point{X: max(b.most.X, p.X), Y: max(b.most.Y, p.Y)}
}

// arc grows the bounds by an arc: by its ends, and by the points of the circle
// farthest left, right, up and down where they lie on the arc.
func (b *bounds) arc(a arc) {
	b.point(a.from)
	b.point(a.to)
	if a.sweep == 0 {
		return
	}
	if -measure.Degree < a.sweep && a.sweep < measure.Degree {
		b.point(a.middle())
		return
	}
	c, r := a.center(), a.radius()
	start := measure.Slope(a.from.Y-c.Y, a.from.X-c.X)
	for i, p := range [...]plane.Point{{X: c.X + r, Y: c.Y}, {X: c.X, Y: c.Y + r}, {X: c.X - r, Y: c.Y}, {X: c.X, Y: c.Y - r}} {
		turn, sweep := measure.Angle(i)*measure.RightAngle-start, a.sweep
		if sweep < 0 {
			turn, sweep = -turn, -sweep
		}
		if turn %= measure.Turn; turn < 0 {
			turn += measure.Turn
		}
		if turn < sweep {
			b.point(p)
		}
	}
}

package template

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Oval is the path around an ellipse, or beside one, with its middle there:
//
//	edge, err := plane.Ellipse{Width: 20 * in, Height: 16 * in}.Parallel(2 * in)
//	path, err := template.Oval(template.Cut, plane.Point{}, edge)
//
// In a file it is arcs of circles: no farther from the true curve than DXF was asked
// for, or than 0.001 mm in SVG and PDF. The four ends of the axes are among their ends.
// It refuses what [plane.Ellipse.Parallel] does.
func Oval(layer Layer, middle plane.Point, p plane.Parallel) (Path, error) {
	if _, err := p.Of.Parallel(p.By); err != nil {
		return Path{}, err
	}
	return Path{Layer: layer, Closed: true, oval: p, middle: middle}, nil
}

// Arch is the path around an arch, or beside one: foot is the middle of the foot of the
// arch that it is beside, so that edges at several distances lie in one another as
// they do on the work. Lines and arcs of circles are all that it has. It refuses what
// [plane.Arch.Parallel] does.
func Arch(layer Layer, foot plane.Point, p plane.ArchParallel) (Path, error) {
	if _, err := p.Of.Parallel(p.By); err != nil {
		return Path{}, err
	}
	left := plane.Point{X: foot.X - p.Width()/2, Y: foot.Y - p.By}
	at := func(x, y measure.Length, sweep measure.Angle) Vertex {
		return Vertex{Point: plane.Point{X: left.X + x, Y: left.Y + y}, Sweep: sweep}
	}
	side := p.Side()
	v := []Vertex{at(0, 0, 0)}
	if side > 0 {
		v = append(v, at(p.Width(), 0, 0))
	}
	v = append(v, at(p.Width(), side, p.Sweep()))
	if p.Arcs() == 2 {
		v = append(v, at(p.Width()/2, p.Height(), p.Sweep()))
	}
	if side > 0 {
		v = append(v, at(0, side, 0))
	}
	return Path{Layer: layer, Closed: true, Vertices: v}, nil
}

// exact is how far arcs may lie from a true curve in SVG and PDF.
const exact = LeastWithin

func (p Path) isOval() bool { return p.oval != (plane.Parallel{}) }

// flat is p by its vertices, its arcs no farther than within from the true curve.
func (p Path) flat(within measure.Length) Path {
	if !p.isOval() {
		return p
	}
	flat := Path{Layer: p.Layer, Closed: true}
	for i := range measure.Angle(4) {
		flat.Vertices = p.follow(flat.Vertices, i*measure.RightAngle, (i+1)*measure.RightAngle, within, 0)
	}
	return flat
}

// deepest is how often a quarter of an oval is halved at most.
const deepest = 12

// follow appends arcs from one eccentric angle to another: the one through the point
// halfway, or those of either half where that is too far off.
func (p Path) follow(v []Vertex, from, to measure.Angle, within measure.Length, deep int) []Vertex {
	half := from + (to-from)/2
	start, middle, end := p.on(from), p.on(half), p.on(to)
	if start == end {
		return v
	}
	// The angle between the chords to and from a point of an arc is half of its sweep.
	turn := (measure.Slope(end.Y-middle.Y, end.X-middle.X) - measure.Slope(middle.Y-start.Y, middle.X-start.X)) % measure.Turn
	switch {
	case turn > measure.Turn/2:
		turn -= measure.Turn
	case turn < -measure.Turn/2:
		turn += measure.Turn
	}
	a := arc{start, end, 2 * turn}
	// Between the three points that it goes through, an arc is farthest off a little
	// past the middles of the halves, and by no more than a thirtieth more than there.
	off := max(a.off(p.on(from+(half-from)/2)), a.off(p.on(half+(to-half)/2)))
	if deep < deepest && (off+off/10 >= within || a.sweep > measure.RightAngle) {
		v = p.follow(v, from, half, within, deep+1)
		return p.follow(v, half, to, within, deep+1)
	}
	if a.sweep < 0 || a.sweep > measure.RightAngle {
		a.sweep = 0 // points so near each other that rounding turns their chords
	}
	return append(v, Vertex{Point: start, Sweep: a.sweep})
}

// on is the point of an oval at an eccentric angle.
func (p Path) on(t measure.Angle) plane.Point {
	at := p.oval.At(t)
	return plane.Point{X: p.middle.X + at.X, Y: p.middle.Y + at.Y}
}

// off is how far a point near the arc is from it, rounded up; of an arc that is nearly
// straight, how far that rises.
func (a arc) off(at plane.Point) measure.Length {
	if -measure.Degree/1000 < a.sweep && a.sweep < measure.Degree/1000 {
		x, y := a.bulge()
		return measure.Hypot(x, y)/2 + 1
	}
	c := a.center()
	off := measure.Hypot(at.X-c.X, at.Y-c.Y) - a.radius()
	return max(off, -off) + 1
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// An OvalRing says which curves the edges of an oval frame are. Only one of them is the
// ellipse that was drawn; what lies beside it at an equal distance is none, and what an
// oval lathe turns beside it lies at no equal distance.
type OvalRing struct {
	// True is the edge that is the ellipse of the frame's axes.
	True OvalEdge `json:"true"`
	// Rings says what the other edges are.
	Rings OvalFamily `json:"rings"`
}

// IsZero reports whether the frame is no oval.
func (ring OvalRing) IsZero() bool { return ring == OvalRing{} }

// An OvalEdge is an edge of an oval frame that can be a true ellipse.
type OvalEdge string

// The edges that can be decided to be true.
const (
	TruePanel   OvalEdge = "panel"   // glass and backing are cut to an ellipse
	TrueSight   OvalEdge = "sight"   // what is seen is an ellipse
	TrueOutside OvalEdge = "outside" // the frame's outline is an ellipse
)

// Choices lists the edges, for readers and forms.
func (OvalEdge) Choices() []string {
	return []string{string(TruePanel), string(TrueSight), string(TrueOutside)}
}

// An OvalFamily is how the rings of an oval frame follow from each other.
type OvalFamily string

// The two families. Along the axes they are one.
const (
	Turned   OvalFamily = "turned"   // ellipses whose axes grow alike, as an oval lathe cuts them
	Parallel OvalFamily = "parallel" // at one distance all round: a face of one width
)

// Choices lists the families, for readers and forms.
func (OvalFamily) Choices() []string { return []string{string(Turned), string(Parallel)} }

// A CurveKind is what one edge of an oval frame is.
type CurveKind string

// The kinds of curves.
const (
	EllipseCurve  CurveKind = "ellipse"
	ParallelCurve CurveKind = "parallel" // at one distance from an ellipse, itself none
)

// Choices lists the kinds, for readers.
func (CurveKind) Choices() []string { return []string{string(EllipseCurve), string(ParallelCurve)} }

// An OvalCurve is one edge of an oval frame, its middle at the origin.
type OvalCurve struct {
	// Size is the whole axes.
	measure.Size
	// Curve is what it is. A parallel keeps its distance By from the ellipse of the
	// axes Of, outward above nothing; of an odd nanometer between the axes By is the
	// half below.
	Curve CurveKind
	Of    measure.Size
	By    measure.Length
	// Perimeter is the way around: the length of edging, fillet or trim along it.
	Perimeter measure.Length
	// Tightest is the radius of its sharpest bends, at the ends of the longer axis: no
	// cutter of a larger one gets into them.
	Tightest measure.Length
	// Apart is how far this edge lies, at the most, from what it would be in the other
	// family; nothing for the true edge, for a circle, and where there is no parallel.
	Apart OvalApart
}

// An OvalApart is how far two curves of the same axes lie apart where they do so most,
// square to both. The parallel is the one that reaches farther, inside its ellipse the
// less far.
type OvalApart struct {
	Most measure.Length
	// Heading is that of the normal of both there, 0 to 90 degrees from the right, and
	// At the point of the parallel. The three other quarters have its like.
	Heading measure.Angle
	At      plane.Point
}

// An Oval is an oval frame worked out.
type Oval struct {
	Ring OvalRing
	// Package is what the frame is made for: glass, mat and backing are cut to it.
	// Opening is the rabbet, back edge to back edge.
	Package, Opening OvalCurve
	// Sight is what is seen of the package, Outside the whole frame.
	Sight, Outside OvalCurve
}

// AroundOval works out the oval frame around a package, by its whole axes. Along them
// it is the algebra of a rectangle, [Frame.Around]: opening = package + allowance,
// sight = opening - 2 x lip, outside = sight + 2 x face, in both families. What lies
// between the axes is for the ring to say. It takes any values; [Frame.CheckOval] says
// which make sense. An edge that there is not, its axes being nothing or less, has no
// perimeter.
//
// It refuses, with an [explain.Problem] whose path is seen from the frame, what is no
// oval of one face, and a parallel inside that would come to a point and fold back: it
// stays short of b^2/a of its ellipse, a and b the half axes.
func (f Frame) AroundOval(pkg measure.Size, ring OvalRing) (Oval, error) {
	if fault := f.ovalFault(pkg, ring); fault != nil {
		return Oval{}, fault.problem("", measure.Length.String)
	}
	return f.oval(pkg, ring), nil
}

func (f Frame) oval(pkg measure.Size, ring OvalRing) Oval {
	r := f.Around(pkg)
	o := Oval{Ring: ring}
	from := ring.of(r)
	o.Package, o.Opening = ring.curve(r.Package, from), ring.curve(r.Opening, from)
	o.Sight, o.Outside = ring.curve(r.Sight, from), ring.curve(r.Outside, from)
	return o
}

// of is the size of the edge that is true.
func (ring OvalRing) of(r Rectangle) measure.Size {
	switch ring.True {
	case TrueSight:
		return r.Sight
	case TrueOutside:
		return r.Outside
	}
	return r.Package
}

// curve is the edge of these axes beside the true one.
func (ring OvalRing) curve(size, from measure.Size) OvalCurve {
	c := OvalCurve{Size: size, Curve: EllipseCurve, Of: size}
	e := ellipse(size)
	c.Perimeter, c.Tightest = e.Perimeter(), tightest(size, 0)
	if size == from || from.Width <= 0 || from.Height <= 0 {
		return c
	}
	by := outward(size, from)
	p, err := ellipse(from).Parallel(by)
	if err != nil {
		return c
	}
	if ring.Rings == Parallel {
		c.Curve, c.Of, c.By = ParallelCurve, from, by
		c.Perimeter, c.Tightest = p.Perimeter(), tightest(from, by)
	}
	if from.Width != from.Height {
		d := p.Against()
		c.Apart = OvalApart{Most: d.Most, Heading: d.Heading, At: besideAt(from, by, d.Heading)}
	}
	return c
}

// outward is how far the edge of a size lies outside that of another.
func outward(size, from measure.Size) measure.Length {
	by, _ := (size.Width - from.Width).Half()
	return by
}

func ellipse(s measure.Size) plane.Ellipse { return plane.Ellipse{Width: s.Width, Height: s.Height} }

// tightest is the least radius of a parallel, b^2/a + by, and nothing where there is no
// ellipse.
func tightest(s measure.Size, by measure.Length) measure.Length {
	long, short := max(s.Width, s.Height), min(s.Width, s.Height)
	if short <= 0 {
		return 0
	}
	radius, _ := (fineUnit * short).Scale(int64(short), int64(2*long))
	return fromFine(radius + fineUnit*by)
}

// besideAt is the point at a distance from the ellipse of these axes where its normal
// has a heading.
func besideAt(s measure.Size, by measure.Length, heading measure.Angle) plane.Point {
	wide, high := (fineUnit / 2 * s.Width).Cos(heading), (fineUnit / 2 * s.Height).Sin(heading)
	reach := measure.Hypot(wide, high)
	x, _ := (fineUnit / 2 * s.Width).Scale(int64(wide), int64(reach))
	y, _ := (fineUnit / 2 * s.Height).Scale(int64(high), int64(reach))
	return plane.Point{X: fromFine(x + (fineUnit * by).Cos(heading)), Y: fromFine(y + (fineUnit * by).Sin(heading))}
}

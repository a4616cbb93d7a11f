package plane

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/natural"
)

// An Ellipse is an oval that stands upright, its middle at the origin. Width and
// Height are the whole axes. Its methods take one that [Ellipse.Check] lets pass;
// of any other, what they return means nothing.
type Ellipse struct {
	Width  measure.Length `json:"width"`
	Height measure.Length `json:"height"`
}

// Check refuses axes that are not above nothing, or are longer than [Reach].
func (e Ellipse) Check() error {
	if err := e.check(); err != nil {
		return err
	}
	return nil
}

func (e Ellipse) check() *Error {
	if err := checkLength(e.Width, Reach, -1); err != nil {
		return err
	}
	return checkLength(e.Height, Reach, -1)
}

// sound reports whether e passes [Ellipse.Check].
func (e Ellipse) sound() bool {
	return 0 < e.Width && e.Width <= Reach && 0 < e.Height && e.Height <= Reach
}

// axes are the longer axis and the shorter one.
func (e Ellipse) axes() (long, short measure.Length) {
	return max(e.Width, e.Height), min(e.Width, e.Height)
}

// Perimeter is the way around, 4 a E(m), where a is half of the longer axis, b half
// of the shorter one, and E the complete elliptic integral of the second kind of the
// parameter m = 1 - b^2/a^2, which is the square of the modulus. It is rounded to the
// nearest nanometer; within 2^-20 nm of a half it can be the other one.
func (e Ellipse) Perimeter() measure.Length {
	if !e.sound() {
		return 0
	}
	return roundedPerimeter(e.Width, e.Height, 0)
}

// pi is 2^124 times the number, rounded to the nearest.
var pi = natural.Nat{0x313198a2e0370734, 0x3243f6a8885a308d}

const piGrain = 124

// Area is the surface, pi a b, rounded to the nearest square micrometer.
func (e Ellipse) Area() measure.Area {
	if !e.sound() {
		return 0
	}
	return overPi(natural.Of(uint64(e.Width)).Times(natural.Of(uint64(e.Height))), natural.Nat{}, false)
}

// overPi is the surface of pi/4 square, in nm2, and more or less a rest in
// 2^-piGrain/4 nm2.
func overPi(square, rest natural.Nat, less bool) measure.Area {
	sum := square.Times(pi)
	switch {
	case !less:
		sum = sum.Plus(rest)
	case sum.Compare(rest) < 0:
		return 0
	default:
		sum = sum.Minus(rest)
	}
	unit := natural.Of(4 * uint64(measure.Micrometer*measure.Micrometer))
	q, _ := sum.Nearest(unit.Times(natural.Nat{0, 1 << (piGrain - 64)}))
	v, _ := q.Uint64()
	return measure.Area(v)
}

// Focus is how far each focus lies from the middle, along the longer axis: the root
// of a^2 - b^2, rounded to the nearest.
func (e Ellipse) Focus() measure.Length {
	if !e.sound() {
		return 0
	}
	long, short := e.axes()
	return rounded(measure.Leg(long<<(fineBits-1), short<<(fineBits-1)))
}

// At is the point at the eccentric angle t, (a cos t, b sin t): that of the two
// circles over the axes, from the right turning left, and not the heading from the
// middle, but for the ends of the axes.
func (e Ellipse) At(t measure.Angle) Point { return e.spot(t).point() }

func (e Ellipse) spot(t measure.Angle) spot {
	return spot{int64((e.Width << (grain - 1)).Cos(t)), int64((e.Height << (grain - 1)).Sin(t))}
}

// outward is an arrow along the outward normal at the eccentric angle t, with a length
// of half of the shorter axis to half of the longer one.
func (e Ellipse) outward(t measure.Angle) spot {
	return Ellipse{e.Height, e.Width}.spot(t)
}

// Normal is the heading of the outward normal at the eccentric angle t, above -180
// and up to 180 degrees.
func (e Ellipse) Normal(t measure.Angle) measure.Angle { return e.outward(t).heading() }

// Eccentric is the eccentric angle of the point whose outward normal has this
// heading: what undoes [Ellipse.Normal].
func (e Ellipse) Eccentric(heading measure.Angle) measure.Angle { return e.spot(heading).heading() }

// Reach is how far it reaches from the middle in a direction, the root of
// a^2 cos^2 + b^2 sin^2, rounded to the nearest: half of the space it needs between
// two parallel edges.
func (e Ellipse) Reach(heading measure.Angle) measure.Length { return coarse(e.reach(heading)) }

// reach is [Ellipse.Reach] in units of 2^-grain nm.
func (e Ellipse) reach(heading measure.Angle) int64 { return e.spot(heading).length() }

// Tightest is the radius of its sharpest bends, at the ends of the longer axis:
// b^2/a, rounded down. A parallel inside stays short of it; so does a cutter.
func (e Ellipse) Tightest() measure.Length {
	if !e.sound() {
		return 0
	}
	long, short := e.axes()
	hi, lo := bits.Mul64(uint64(short), uint64(short))
	radius, _ := bits.Div64(hi, lo, 2*uint64(long))
	return measure.Length(radius)
}

// Flattest is the radius of its flattest bends, at the ends of the shorter axis:
// a^2/b, rounded to the nearest.
func (e Ellipse) Flattest() measure.Length {
	if !e.sound() {
		return 0
	}
	long, short := e.axes()
	radius, _ := measure.MulDiv(long, int64(long), 2*int64(short))
	return radius
}

// Grown is the ellipse with both axes longer by twice as much: what an oval lathe
// turns with its tool moved out by that. It is as wide as that along the axes, and
// narrower between them: see [Parallel].
func (e Ellipse) Grown(by measure.Length) Ellipse {
	return Ellipse{e.Width + 2*by, e.Height + 2*by}
}

// Size is the size of the upright rectangle around it.
func (e Ellipse) Size() measure.Size { return measure.Size{Width: e.Width, Height: e.Height} }

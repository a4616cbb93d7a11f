package plane

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/natural"
)

// A Parallel runs beside an ellipse at the same distance everywhere, outward above
// nothing: the outer edge of an oval rail that is equally wide all round. It is no
// ellipse, but for a circle's. Have it from [Ellipse.Parallel].
type Parallel struct {
	Of Ellipse        `json:"of"`
	By measure.Length `json:"by"`
}

// Parallel is the curve at a distance from e, outward above nothing. Inward it stays
// short of b^2/a, the radius of the sharpest bends, where it would come to a point and
// fold back: from there on it is refused as [Folds], with the farthest that it may
// move in. Outward its size stays within [Reach].
func (e Ellipse) Parallel(by measure.Length) (Parallel, error) {
	if err := e.parallel(by); err != nil {
		return Parallel{}, err
	}
	return Parallel{e, by}, nil
}

func (e Ellipse) parallel(by measure.Length) *Error {
	if err := e.check(); err != nil {
		return err
	}
	if most := e.inmost(); by < -most {
		return limited(given(fault(Folds, -1), -max(by, -1<<63+1)), explain.AtMost, most)
	}
	long, _ := e.axes()
	if most := (Reach - long) / 2; by > most {
		return limited(given(fault(explain.OutOfRange, -1), by), explain.AtMost, most)
	}
	return nil
}

// inmost is the last distance short of b^2/a.
func (e Ellipse) inmost() measure.Length {
	long, short := e.axes()
	hi, lo := bits.Mul64(uint64(short), uint64(short))
	radius, rest := bits.Div64(hi, lo, 2*uint64(long))
	if rest == 0 {
		radius--
	}
	return measure.Length(radius)
}

func (p Parallel) sound() bool { return p.Of.parallel(p.By) == nil }

// Perimeter is the way around, rounded to the nearest: that of the ellipse and, by
// Steiner's formula for parallel curves, a circle's of the radius By more.
func (p Parallel) Perimeter() measure.Length {
	if !p.sound() {
		return 0
	}
	fine := roundedPerimeter(p.Of.Width, p.Of.Height, fineBits)
	switch circle := 2 * max(p.By, -p.By); {
	case p.By > 0:
		fine += roundedPerimeter(circle, circle, fineBits)
	case p.By < 0:
		fine -= roundedPerimeter(circle, circle, fineBits)
	}
	return rounded(fine)
}

// Area is the surface within, rounded to the nearest square micrometer: that of the
// ellipse, By times the way around it, and a circle's of the radius By (Steiner). It is
// worked out with the way around to 2^-20 nm or as near as [Ellipse.Perimeter] comes.
func (p Parallel) Area() measure.Area {
	if !p.sound() {
		return 0
	}
	by := natural.Of(uint64(max(p.By, -p.By)))
	square := natural.Of(uint64(p.Of.Width)).Times(natural.Of(uint64(p.Of.Height)))
	square = square.Plus(by.Times(by).Times(natural.Of(4)))
	around, places := meansPerimeter(p.Of.axes())
	band := by.Times(natural.Of(around)).Times(natural.Of(4))
	for ; places < piGrain; places += 62 { // up to the binary places of pi, and past them
		band = band.Times(natural.Of(1 << min(62, piGrain-places)))
	}
	return overPi(square, band, p.By < 0)
}

// Size is the size of the upright rectangle around it: its axes.
func (p Parallel) Size() measure.Size { return p.Grown().Size() }

// Grown is the ellipse of the same axes: what an oval lathe turns instead.
func (p Parallel) Grown() Ellipse { return p.Of.Grown(p.By) }

// At is the point beside the ellipse's point at the eccentric angle t.
func (p Parallel) At(t measure.Angle) Point { return p.spot(t).point() }

func (p Parallel) spot(t measure.Angle) spot {
	s, out := p.Of.spot(t), p.Of.outward(t)
	long := out.length()
	if long == 0 {
		return s
	}
	x, _ := measure.MulDiv(p.By<<grain, out.x, long)
	y, _ := measure.MulDiv(p.By<<grain, out.y, long)
	return s.plus(spot{int64(x), int64(y)})
}

// A Difference is how far two curves lie apart where they do so most.
type Difference struct {
	Most    measure.Length `json:"most"`
	Heading measure.Angle  `json:"heading"` // of the normal of both there, 0 to 90 degrees
	At      Point          `json:"at"`      // on the parallel; the other three quarters have its like
}

// Against is how far the parallel and the ellipse of the same axes, [Parallel.Grown],
// lie apart at the most, measured square to both and rounded to the nearest: what a
// turned oval, its tool moved out by By, lacks there of an equal width, the ellipse
// lying inside the parallel; inward, what it has too much.
//
// A curve's reach to one side is that of its tangent there, and where both reaches
// differ most the two tangents have one normal. With h(u) the root of a^2 cos^2 u +
// b^2 sin^2 u, the reach of the ellipse, and By = d, they differ by h(u) + d less that
// of a + d and b + d. This is greatest where cos^2 u is the mean of b/(a + b) and
// (b + d)/(a + b + 2 d).
func (p Parallel) Against() Difference {
	if !p.sound() {
		return Difference{}
	}
	grown := p.Grown()
	heading := between(p.Of, grown)
	apart := rounded(p.Of.fineReach(heading) + p.By<<fineBits - grown.fineReach(heading))
	return Difference{max(apart, -apart), heading, p.At(p.Of.Eccentric(heading))}
}

// one is what cosines are multiples of here, as in [explain.Radius].
const one = measure.Length(1_000_000_000_000_000_000)

// between is the heading whose cos^2 is the mean of what the heights of two ellipses
// are of height and width together.
func between(e, f Ellipse) measure.Angle {
	first, _ := one.Scale(int64(e.Height), int64(e.Width+e.Height))
	second, _ := one.Scale(int64(f.Height), int64(f.Width+f.Height))
	cos := (first + second) >> 1
	sin := one - cos
	// The root of one times a part of it is a leg between half their sum and half of
	// what they differ by.
	return measure.Slope(measure.Leg((one+sin)>>1, (one-sin)>>1), measure.Leg((one+cos)>>1, (one-cos)>>1))
}

// fineReach is [Ellipse.Reach] in units of 2^-fineBits nm, as [explain.Once] works it
// out.
func (e Ellipse) fineReach(heading measure.Angle) measure.Length {
	return measure.Hypot((e.Width << (fineBits - 1)).Cos(heading), (e.Height << (fineBits - 1)).Sin(heading))
}

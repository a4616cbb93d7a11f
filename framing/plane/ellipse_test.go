package plane_test

import (
	"errors"
	"math"
	"math/big"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

const mm = measure.Millimeter

// ovals are those of the trade, and some of no trade.
var ovals = []plane.Ellipse{
	{Width: 16 * inch, Height: 20 * inch}, {Width: 10 * inch, Height: 8 * inch}, {Width: 36 * inch, Height: 27 * inch},
	{Width: 400 * mm, Height: 300 * mm}, {Width: 200 * mm, Height: 120 * mm}, {Width: 333 * mm, Height: 333 * mm},
	{Width: 12345678901, Height: 9876543219}, {Width: plane.Reach, Height: plane.Reach / 7}, {Width: 1, Height: 1000}, {Width: 100 * mm, Height: 2 * mm},
}

func TestEllipseRefused(t *testing.T) {
	for _, row := range []struct {
		e     plane.Ellipse
		code  explain.Code
		limit measure.Length
	}{
		{plane.Ellipse{}, plane.NoLength, 0},
		{plane.Ellipse{Width: inch}, plane.NoLength, 0},
		{plane.Ellipse{Width: -1, Height: inch}, explain.OutOfRange, 1},
		{plane.Ellipse{Width: inch, Height: -inch}, explain.OutOfRange, 1},
		{plane.Ellipse{Width: plane.Reach + 1, Height: inch}, explain.OutOfRange, plane.Reach},
		{plane.Ellipse{Width: inch, Height: math.MaxInt64}, explain.OutOfRange, plane.Reach},
		{plane.Ellipse{Width: plane.Reach, Height: 1}, "", 0},
	} {
		err := row.e.Check()
		if code(t, err) != row.code {
			t.Errorf("%+v: %v, want %q", row.e, err, row.code)
		}
		var e *plane.Error
		if errors.As(err, &e) && row.limit != 0 && e.Limit != explain.Of(row.limit) {
			t.Errorf("%+v: accepted is %v", row.e, e.Limit)
		}
		if err != nil && (row.e.Perimeter() != 0 || row.e.Area() != 0 || row.e.Focus() != 0 || row.e.Tightest() != 0 || row.e.Flattest() != 0) {
			t.Errorf("%+v is refused and has measures", row.e)
		}
		row.e.At(1)
		row.e.Normal(1)
		row.e.Reach(1)
	}
}

// TestEllipseArea: pi a b, from pi as it is printed; that of a circle of 1 m.
func TestEllipseArea(t *testing.T) {
	if a := (plane.Ellipse{Width: measure.Meter, Height: measure.Meter}).Area(); a != 785398163397 {
		t.Errorf("a circle of 1 m has %d square micrometers", a)
	}
	for _, e := range ovals {
		v := quo(mul(mul(bigPi, bigInt(e.Width)), bigInt(e.Height)), bigOf(4e6))
		want, _ := add(v, bigOf(0.5)).Int64()
		if e.Area() != measure.Area(want) {
			t.Errorf("%+v: %d, want %d", e, e.Area(), want)
		}
	}
}

// TestOnEllipse: every point keeps the equation, is as far from both foci together as
// the longer axis is long, and has its normal where its tangent is not.
func TestOnEllipse(t *testing.T) {
	for _, e := range ovals {
		if min(e.Width, e.Height) < mm {
			continue
		}
		a, b := float64(e.Width)/2, float64(e.Height)/2
		c := e.Focus()
		for i := range 721 {
			a0 := measure.Angle(i-360) * deg / 2
			p := e.At(a0)
			x, y := float64(p.X)/a, float64(p.Y)/b
			if off := (x*x + y*y - 1) * min(a, b); math.Abs(off) > 3 {
				t.Fatalf("%+v at %v: %v nm off the curve", e, a0, off)
			}
			f := plane.Point{X: c}
			if e.Height > e.Width {
				f = plane.Point{Y: c}
			}
			sum := measure.Hypot(p.X-f.X, p.Y-f.Y) + measure.Hypot(p.X+f.X, p.Y+f.Y)
			near(t, "both threads", sum, max(e.Width, e.Height), 4)
			// The line along the tangent at a normal's heading lies as far out as the
			// ellipse reaches.
			normal := e.Normal(a0)
			n := spotOf(normal)
			reach := (float64(p.X)*n.x + float64(p.Y)*n.y)
			if off := reach - float64(e.Reach(normal)); math.Abs(off) > 2 {
				t.Fatalf("%+v at %v: the tangent lies %v nm off", e, a0, off)
			}
			if d := (e.Eccentric(normal) - a0) % measure.Turn; !nearTurn(d, 60*measure.Angle(max(e.Width, e.Height)/min(e.Width, e.Height)+1)) {
				t.Fatalf("%+v: %v leads back to %v", e, a0, e.Eccentric(normal))
			}
		}
	}
}

type direction struct{ x, y float64 }

// spotOf is a unit arrow.
func spotOf(a measure.Angle) direction {
	const one = measure.Length(1_000_000_000_000_000)
	return direction{float64(one.Cos(a)) / float64(one), float64(one.Sin(a)) / float64(one)}
}

// nearTurn reports whether a is a whole turn or none, to so much.
func nearTurn(a, within measure.Angle) bool {
	if a %= measure.Turn; a < 0 {
		a += measure.Turn
	}
	return a <= within || a >= measure.Turn-within
}

func TestEllipseAtItsAxes(t *testing.T) {
	e := plane.Ellipse{Width: 16 * inch, Height: 20 * inch}
	for i, want := range []plane.Point{{X: 8 * inch}, {Y: 10 * inch}, {X: -8 * inch}, {Y: -10 * inch}} {
		at := measure.Angle(i) * measure.RightAngle
		if p := e.At(at); p != want {
			t.Errorf("at %v: %v, want %v", at, p, want)
		}
		if r := e.Reach(at); r != measure.Hypot(want.X, want.Y) {
			t.Errorf("at %v it reaches %v", at, r)
		}
		if !nearTurn(e.Normal(at)-at, 0) || e.Normal(at) > measure.Turn/2 || e.Normal(at) <= -measure.Turn/2 {
			t.Errorf("at %v the normal heads for %v", at, e.Normal(at))
		}
	}
	if g := e.Grown(2 * inch); g != (plane.Ellipse{Width: 20 * inch, Height: 24 * inch}) || g.Grown(-2*inch) != e {
		t.Errorf("grown by 2 in it is %v", g)
	}
	if e.Size() != (measure.Size{Width: 16 * inch, Height: 20 * inch}) {
		t.Error("size")
	}
}

// TestBends: the radii at the ends of the axes are those of circles through points
// close by; the sharpest is rounded down.
func TestBends(t *testing.T) {
	for _, e := range ovals {
		long, short := max(e.Width, e.Height), min(e.Width, e.Height)
		exact := big.NewRat(1, 1).SetFrac(new(big.Int).Mul(big.NewInt(int64(short)), big.NewInt(int64(short))), big.NewInt(2*int64(long)))
		tight := big.NewRat(int64(e.Tightest()), 1)
		if tight.Cmp(exact) > 0 || tight.Add(tight, big.NewRat(1, 1)).Cmp(exact) <= 0 {
			t.Errorf("%+v: %d, want %s rounded down", e, e.Tightest(), exact.FloatString(3))
		}
		if short < 100*mm {
			continue
		}
		e = plane.Ellipse{Width: long, Height: short}
		near(t, "sharpest", bend(e.At(-deg), e.At(0), e.At(deg)), e.Tightest(), e.Tightest()/200)
		near(t, "flattest", bend(e.At(89*deg), e.At(90*deg), e.At(91*deg)), e.Flattest(), e.Flattest()/200)
	}
	if e := (plane.Ellipse{Width: 16 * inch, Height: 8 * inch}); e.Tightest() != 2*inch || e.Flattest() != 16*inch {
		t.Errorf("16 x 8 in bends with %v and %v", e.Tightest(), e.Flattest())
	}
}

// bend is the radius of the circle through three points.
func bend(p, q, r plane.Point) measure.Length {
	a := math.Hypot(float64(p.X-q.X), float64(p.Y-q.Y))
	b := math.Hypot(float64(q.X-r.X), float64(q.Y-r.Y))
	c := math.Hypot(float64(p.X-r.X), float64(p.Y-r.Y))
	area := math.Abs(float64(q.X-p.X)*float64(r.Y-p.Y)-float64(q.Y-p.Y)*float64(r.X-p.X)) / 2
	return measure.Length(a * b * c / (4 * area))
}

func BenchmarkPerimeter(b *testing.B) {
	for name, e := range map[string]plane.Ellipse{
		"16x20": ovals[0], "circle": ovals[5], "3to1": {Width: 30 * inch, Height: 10 * inch}, "10to1": {Width: 30 * inch, Height: 3 * inch}, "50to1": ovals[9],
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				e.Perimeter()
			}
		})
	}
}

// TestPerimeterAllocatesNothing.
func TestPerimeterAllocatesNothing(t *testing.T) {
	for _, e := range ovals {
		if n := testing.AllocsPerRun(10, func() { e.Perimeter() }); n != 0 {
			t.Errorf("%+v: %v allocations", e, n)
		}
	}
}

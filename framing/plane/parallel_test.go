package plane_test

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func parallel(t *testing.T, e plane.Ellipse, by measure.Length) plane.Parallel {
	t.Helper()
	p, err := e.Parallel(by)
	if err != nil {
		t.Fatalf("%+v by %v: %v", e, by, err)
	}
	return p
}

// integrated is the way around and the surface of a parallel by sums over its
// equation, x = (a + b d/g) cos t, y = (b + a d/g) sin t, where g is the root of
// a^2 sin^2 t + b^2 cos^2 t (Steiner's formulas are not used).
func integrated(a, b, d float64) (around, area float64) {
	const n = 4000
	for i := range n {
		s, c := math.Sincos(2 * math.Pi * float64(i) / n)
		g := math.Hypot(a*s, b*c)
		dg := (a*a - b*b) * s * c / g
		x, y := (a+b*d/g)*c, (b+a*d/g)*s
		dx := -(a+b*d/g)*s - b*d/(g*g)*dg*c
		dy := (b+a*d/g)*c - a*d/(g*g)*dg*s
		around += math.Hypot(dx, dy)
		area += (x*dy - y*dx) / 2
	}
	return around * 2 * math.Pi / n, area * 2 * math.Pi / n
}

// parallels are figures worked out elsewhere: half axes, distance, the way around the
// ellipse, the parallel and the ellipse of the same axes, the surfaces of the two, and
// how far these lie apart (C).
var parallels = []struct {
	a, b, d, around, parallel, grown string
	area, grownArea, apart           string
}{
	{"200", "150", "20", "1105.1746080355", "1230.8383141791", "1230.2609318726", "117607.90882984", "117495.56524426", "0.184"},
	{"200", "150", "40", "1105.1746080355", "1356.5020203227", "1355.4549812795", "143481.31217486", "143256.62500369", "0.3336"},
	{"100", "60", "25", "510.53997726796", "667.61960994745", "665.7321372419", "33576.550761731", "33379.421944392", "0.6025"},
	{"8", "5", "1", "41.386276072229", "47.669461379408", "47.596318767872", "170.19157486941", "169.64600329385", "0.0233"},
}

func TestParallels(t *testing.T) {
	const unit = 10 * measure.Millimeter
	length := func(s string) measure.Length {
		return measure.Length(new(big.Rat).Mul(ratOf(s), big.NewRat(int64(unit), 1)).Num().Int64())
	}
	same := func(what string, got int64, unit int64, want string, within string) {
		t.Helper()
		off := new(big.Rat).Sub(big.NewRat(got, unit), ratOf(want))
		if off.Abs(off).Cmp(ratOf(within)) > 0 {
			t.Errorf("%s is %s, want %s", what, big.NewRat(got, unit).FloatString(12), want)
		}
	}
	for _, row := range parallels {
		e := plane.Ellipse{Width: 2 * length(row.a), Height: 2 * length(row.b)}
		p := parallel(t, e, length(row.d))
		const square = int64(100 * measure.SquareMillimeter)
		same("the ellipse", int64(e.Perimeter()), int64(unit), row.around, "0.00000006")
		same("the parallel", int64(p.Perimeter()), int64(unit), row.parallel, "0.00000006")
		same("the ellipse of its axes", int64(p.Grown().Perimeter()), int64(unit), row.grown, "0.00000006")
		same("surface", int64(p.Area()), square, row.area, "0.00000001")
		same("surface of the ellipse", int64(p.Grown().Area()), square, row.grownArea, "0.00000001")
		same("apart", int64(p.Against().Most), int64(unit), row.apart, "0.00005")
	}
}

// TestSteiner: against sums over the equation, outward and inward, and to the last
// nanometer before it folds.
func TestSteiner(t *testing.T) {
	for _, e := range ovals {
		if min(e.Width, e.Height) < mm || max(e.Width, e.Height) > 2*measure.Meter {
			continue
		}
		a, b := float64(e.Width)/2, float64(e.Height)/2
		for _, by := range []measure.Length{0, 1, inch, 50 * mm, measure.Meter, -1, -e.Tightest() / 2, -e.Tightest() + 1} {
			p := parallel(t, e, by)
			around, area := integrated(a, b, float64(by))
			near(t, "around", p.Perimeter(), measure.Length(math.Round(around)), 1)
			if off := float64(p.Area()) - area/1e6; math.Abs(off) > 0.51+area/1e6*1e-14 {
				t.Errorf("%+v by %v: surface %d, want %.2f", e, by, p.Area(), area/1e6)
			}
			if by == 0 && (p.Perimeter() != e.Perimeter() || p.Area() != e.Area() || p.At(deg) != e.At(deg)) {
				t.Errorf("%+v: moved by nothing it is another", e)
			}
		}
	}
	// A circle's parallel is a circle.
	e := plane.Ellipse{Width: 300 * mm, Height: 300 * mm}
	for _, by := range []measure.Length{inch, -inch, 150*mm - 1, -150*mm + 1} {
		p := parallel(t, e, by)
		near(t, "a circle", p.Perimeter(), p.Grown().Perimeter(), 1)
		if d := p.Area() - p.Grown().Area(); d < -1 || d > 1 {
			t.Errorf("a circle's surface is %d off", d)
		}
		near(t, "apart", p.Against().Most, 0, 0)
	}
}

// TestParallelKeepsItsDistance: every point is as far from the ellipse as it should be.
func TestParallelKeepsItsDistance(t *testing.T) {
	for _, e := range []plane.Ellipse{ovals[0], ovals[3], ovals[4], {Width: 16 * inch, Height: 8 * inch}} {
		for _, by := range []measure.Length{2 * inch, -1 * inch, -e.Tightest() + 1} {
			p := parallel(t, e, by)
			for a := measure.Angle(0); a < measure.Turn; a += 7 * deg {
				off := math.Abs(distance(e, p.At(a))) - math.Abs(float64(by))
				if math.Abs(off) > 3 {
					t.Fatalf("%+v by %v at %v: %v nm off", e, by, a, off)
				}
			}
			if s := p.Size(); s != (measure.Size{Width: e.Width + 2*by, Height: e.Height + 2*by}) || p.At(0).X != s.Width/2 {
				t.Errorf("%+v by %v is %v wide and high", e, by, s)
			}
		}
	}
}

// distance is from a point to an ellipse, by search over the whole curve in floats.
func distance(e plane.Ellipse, p plane.Point) float64 {
	a, b := float64(e.Width)/2, float64(e.Height)/2
	x, y := float64(p.X), float64(p.Y)
	at := func(t float64) float64 {
		s, c := math.Sincos(t)
		return math.Hypot(a*c-x, b*s-y)
	}
	best, near := math.Inf(1), 0.0
	const n = 720
	for i := range n {
		t := 2 * math.Pi * float64(i) / n
		if d := at(t); d < best {
			best, near = d, t
		}
	}
	low, high := near-2*math.Pi/n, near+2*math.Pi/n
	for range 60 {
		if l, h := low+(high-low)/3, high-(high-low)/3; at(l) < at(h) {
			high = h
		} else {
			low = l
		}
	}
	return at((low + high) / 2)
}

// searched is how far the ellipse of the same axes is from the width by at the most,
// by search over a quarter of its points.
func searched(p plane.Parallel) (most float64, at plane.Point) {
	grown, by := p.Grown(), math.Abs(float64(p.By))
	off := func(a measure.Angle) float64 { return math.Abs(distance(p.Of, grown.At(a)) - by) }
	best := measure.Angle(0)
	for a := measure.Angle(0); a <= 90*deg; a += deg {
		if d := off(a); d > most {
			most, best = d, a
		}
	}
	low, high := max(best-deg, 0), best+deg
	for high-low > deg/1000 {
		if l, h := low+(high-low)/3, high-(high-low)/3; off(l) < off(h) {
			low = l
		} else {
			high = h
		}
	}
	return off((low + high) / 2), grown.At((low + high) / 2)
}

func TestAgainst(t *testing.T) {
	for _, row := range []struct {
		e  plane.Ellipse
		by measure.Length
	}{
		{ovals[0], 2 * inch}, {ovals[1], 2 * inch}, {ovals[2], 3 * inch}, {ovals[3], 20 * mm}, {ovals[4], 25 * mm},
		{plane.Ellipse{Width: 16 * inch, Height: 8 * inch}, 2 * inch}, {plane.Ellipse{Width: 16 * inch, Height: 8 * inch}, -2*inch + 1},
		{ovals[3], -50 * mm}, {ovals[9], 10 * mm},
	} {
		p := parallel(t, row.e, row.by)
		d := p.Against()
		most, at := searched(p)
		near(t, "apart", d.Most, measure.Length(math.Round(most)), 3)
		// Both lie beside one another there.
		if apart := measure.Hypot(at.X-d.At.X, at.Y-d.At.Y); apart > d.Most+d.Most/1000+20*measure.Micrometer {
			t.Errorf("%+v by %v: at %v, found at %v", row.e, row.by, d.At, at)
		}
		near(t, "to the ellipse", measure.Length(math.Round(math.Abs(distance(p.Grown(), d.At)))), d.Most, 3)
		if d.Heading < 0 || d.Heading > 90*deg || d.At.X < 0 || d.At.Y < 0 {
			t.Errorf("%+v: %+v is in no first quarter", row.e, d)
		}
		// The closed form: d (1 - 2 h / (a + b)).
		a, b, by := float64(row.e.Width)/2, float64(row.e.Height)/2, float64(row.by)
		h := math.Sqrt(b*b + (a-b)/2*(b+(a+b)*(b+by)/(a+b+2*by)))
		near(t, "closed form", d.Most, measure.Length(math.Round(math.Abs(by*(1-2*h/(a+b))))), 1)
	}
}

// TestConstantWidthIsNoEllipse: what an ellipse with both axes longer lacks.
func TestConstantWidthIsNoEllipse(t *testing.T) {
	t.Run("OVAL-04", func(t *testing.T) {
		for _, row := range []struct {
			width, height, rail measure.Length
			want                string
		}{
			{16 * inch, 20 * inch, 2 * inch, "0.010"},
			{36 * inch, 27 * inch, 3 * inch, "0.026"},
			{16 * inch, 8 * inch, 2 * inch, "0.085"},
		} {
			p := parallel(t, plane.Ellipse{Width: row.width, Height: row.height}, row.rail)
			if got := inches(p.Against().Most, 3); got != row.want {
				t.Errorf("%v x %v, rail %v: %s, want %s", row.width, row.height, row.rail, got, row.want)
			}
		}
		e := plane.Ellipse{Width: 16 * inch, Height: 8 * inch}
		if e.Tightest() != 2*inch {
			t.Errorf("16 x 8 in may move in by %v", e.Tightest())
		}
		for _, by := range []measure.Length{2 * inch, 2*inch + 1, 3 * inch, 4 * inch, plane.Reach, math.MaxInt64} {
			_, err := e.Parallel(-by)
			var f *plane.Error
			if !errors.As(err, &f) || f.Code != plane.Folds || f.Limit != explain.Of(2*inch-1) || f.Given != explain.Of(by) {
				t.Errorf("inward by %v: %v", by, err)
			}
		}
		p := parallel(t, e, -2*inch+1)
		if p.Perimeter() <= 0 || p.Area() <= 0 {
			t.Error("nothing is left a hair short of the limit")
		}
	})
}

func TestParallelRefused(t *testing.T) {
	for _, row := range []struct {
		e    plane.Ellipse
		by   measure.Length
		code explain.Code
	}{
		{plane.Ellipse{}, 0, plane.NoLength},
		{plane.Ellipse{Width: inch}, -inch, plane.NoLength},
		{plane.Ellipse{Width: inch, Height: inch}, -inch / 2, plane.Folds},
		{plane.Ellipse{Width: inch, Height: inch}, -inch/2 + 1, ""},
		{plane.Ellipse{Width: inch, Height: inch}, math.MinInt64, plane.Folds},
		{plane.Ellipse{Width: inch, Height: inch}, math.MaxInt64, explain.OutOfRange},
		{plane.Ellipse{Width: plane.Reach, Height: inch}, 1, explain.OutOfRange},
		{plane.Ellipse{Width: plane.Reach - 2, Height: inch}, 1, ""},
		{plane.Ellipse{Width: 1000, Height: 1}, -1, plane.Folds}, // b^2/a is below a nanometer
		{plane.Ellipse{Width: 1000, Height: 1}, 0, ""},
	} {
		p, err := row.e.Parallel(row.by)
		if code(t, err) != row.code {
			t.Errorf("%+v by %v: %v, want %q", row.e, row.by, err, row.code)
		}
		if err != nil && p != (plane.Parallel{}) {
			t.Errorf("%+v is refused and there", p)
		}
		if bad := (plane.Parallel{Of: row.e, By: row.by}); err != nil && (bad.Perimeter() != 0 || bad.Area() != 0 || bad.Against() != plane.Difference{}) {
			t.Errorf("%+v is refused and has measures", bad)
		}
	}
}

// TestInmost: the limit is right to a nanometer, whatever the axes.
func TestInmost(t *testing.T) {
	r := rand.New(rand.NewPCG(43, 44))
	for range 2000 {
		e := plane.Ellipse{Width: 1 + measure.Length(r.Int64N(int64(2*measure.Meter))), Height: 1 + measure.Length(r.Int64N(int64(2*measure.Meter)))}
		_, err := e.Parallel(-plane.Reach)
		var f *plane.Error
		if !errors.As(err, &f) {
			t.Fatal(err)
		}
		most := measure.Length(f.Limit.N)
		if _, err := e.Parallel(-most); err != nil {
			t.Fatalf("%+v: %v is the limit and refused", e, most)
		}
		if _, err := e.Parallel(-most - 1); code(t, err) != plane.Folds {
			t.Fatalf("%+v: %v is past the limit and taken", e, most+1)
		}
		if most != e.Tightest() && most != e.Tightest()-1 {
			t.Fatalf("%+v: limit %v, sharpest bend %v", e, most, e.Tightest())
		}
	}
}

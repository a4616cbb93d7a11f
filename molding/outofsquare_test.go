package molding_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// leaning is art whose opposite sides are equal and which leans to the right.
func leaning(w, h measure.Length, by measure.Angle) plane.Polygon {
	x, y := h.Sin(by), h.Cos(by)
	return shape(plane.New(plane.Point{}, plane.Point{X: w}, plane.Point{X: w + x, Y: y}, plane.Point{X: x, Y: y}))
}

func TestSkew(t *testing.T) {
	// By hand: 3-4-5 and its mirror. Sides 5 and 5 with diagonals 8 and 6 are a rhombus
	// whose corners are 2 atan(3/4) = 73.740 and the rest.
	is(t, "rhombus", degreesOf(molding.Skew(size("5", "5"), in("8"), in("6")), 3), "16.260")
	is(t, "the other way", degreesOf(molding.Skew(size("5", "5"), in("6"), in("8")), 3), "-16.260")
	is(t, "square", degreesOf(molding.Skew(size("16", "20"), in("25 5/8"), in("25 5/8")), 3), "0.000")
	r := rand.New(rand.NewPCG(31, 32))
	for range 500 {
		w, h := in("4")+measure.Length(r.Int64N(int64(in("60")))), in("4")+measure.Length(r.Int64N(int64(in("60"))))
		by := measure.Angle(r.Int64N(int64(20*measure.Degree))) - 10*measure.Degree
		p := leaning(w, h, by)
		rising, falling := p.Diagonal(0, 2), p.Diagonal(1, 3)
		got := molding.Skew(measure.Size{Width: w, Height: h}, rising, falling)
		if d := got - by; d < -3000 || d > 3000 { // a nanometer in four inches
			t.Errorf("%v x %v leaning by %v comes out as %v", w, h, by, got)
		}
		working := molding.ExplainSkew(measure.Size{Width: w, Height: h}, rising, falling, "/art", "/plan/skew")
		if v, err := working.Formula.Evaluate(); err != nil || v != explain.Of(got) || working.Exact != v || working.Path != "/plan/skew" {
			t.Errorf("explained as %v, %v, not %v", v, err, got)
		}
	}
}

func outOf(bottom, right, top, left, rising, falling measure.Length) molding.OutOfSquare {
	return molding.OutOfSquare{Bottom: bottom, Right: right, Top: top, Left: left, Rising: rising, Falling: falling}
}

// TestOutline: the four corners from four sides and either diagonal, or both.
func TestOutline(t *testing.T) {
	p := leaning(in("16"), in("20"), measure.Degree)
	sides := molding.OutOfSquare{Bottom: in("16"), Right: in("20"), Top: in("16"), Left: in("20")}
	rising, falling := p.Diagonal(0, 2), p.Diagonal(1, 3)
	for _, row := range []struct {
		name            string
		rising, falling measure.Length
		within          measure.Length
		code            explain.Code
	}{
		{"rising", rising, 0, 0, ""},
		{"falling", 0, falling, 0, ""},
		{"both", rising, falling, 2, ""},
		{"both, one off by 1/32", rising, falling + in("1/32"), in("1/64"), plane.Differs},
		{"both, one off by 1/64", rising, falling + in("1/64"), in("1/64") + 2, ""},
		{"neither", 0, 0, 0, explain.TooFew},
		{"too long", in("36"), 0, 0, plane.NoTriangle},
		{"too short", in("4"), 0, 0, plane.NoTriangle},
	} {
		o := sides
		o.Rising, o.Falling = row.rising, row.falling
		q, err := o.Outline(row.within)
		var e *plane.Error
		if errors.As(err, &e); (err == nil) != (row.code == "") || e != nil && e.Code != row.code {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
			continue
		}
		if err == nil {
			for i, c := range p.Corners() {
				lies(t, row.name+", X", q.Corner(i).X, c.X, 60)
				lies(t, row.name+", Y", q.Corner(i).Y, c.Y, 60)
			}
		}
	}
	for _, row := range []struct {
		o    molding.OutOfSquare
		want []string
	}{
		{outOf(1, 1, 1, 1, 1, 0), nil},
		{outOf(1, 1, 1, 1, 0, explain.MaxLength), nil},
		{outOf(0, 1, 1, -1, -1, 0), []string{"/art/bottom missing", "/art/left out_of_range", "/art/rising out_of_range"}},
		{outOf(1, explain.MaxLength+1, 0, 1, 0, 0), []string{"/art/right out_of_range", "/art/rising missing", "/art/top missing"}},
		{outOf(1, 1, 1, 1, 0, -1), []string{"/art/falling out_of_range"}},
	} {
		var c explain.Checker
		row.o.Check(&c, "/art")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%+v: %q, want %q", row.o, got, row.want)
		}
	}
}

// TestCleanWithin: art that leans by s keeps, upright, its width less the lean of
// its height. Art that only lies askew keeps everything once it is turned.
func TestCleanWithin(t *testing.T) {
	w, h := in("16"), in("20")
	p := leaning(w, h, measure.Degree)
	clean, err := molding.CleanWithin(p)
	if err != nil {
		t.Fatal(err)
	}
	lies(t, "upright width", clean.Upright.Size.Width, w-h.Sin(measure.Degree), 3)
	lies(t, "upright height", clean.Upright.Size.Height, h.Cos(measure.Degree), 3)
	if clean.Turned.Size.Area() < clean.Upright.Size.Area() || !p.ContainsRectangle(clean.Upright, 0) || !p.ContainsRectangle(clean.Turned, 2) {
		t.Errorf("%+v", clean)
	}
	// The second road, in floats: over many angles, all four edges touch.
	best := 0.0
	for i := range 2001 {
		a := float64(i-1000) / 1000 * math.Pi / 180 // the rectangle turned to the left
		s := math.Pi / 180
		// In the rectangle's own directions the bottom falls by a, the left leans by s+a.
		// Width x + height y tan(s+a) and so on, from the two equations of the edges.
		base := float64(w) * math.Cos(a)
		rise := float64(h) * math.Cos(s+a)
		lean, fall := math.Tan(math.Abs(s+a)), math.Tan(math.Abs(a))
		// x + y lean = W', y + x fall = H', W' and H' the outline's level and upright cuts.
		wide := base + float64(w)*math.Sin(math.Abs(a))*lean*sign(a*(s+a))
		high := rise + float64(h)*math.Sin(math.Abs(s+a))*fall*sign(a*(s+a))
		det := 1 - lean*fall
		x, y := (wide-high*lean)/det, (high-wide*fall)/det
		best = max(best, x*y)
	}
	got := float64(clean.Turned.Size.Width) * float64(clean.Turned.Size.Height)
	if got < best*(1-1e-5) || got > best*(1+1e-5) {
		t.Errorf("turned: %g, by floats %g", got, best)
	}

	box := shape(shape(plane.Box(size("16", "20"))).Turned(measure.Degree / 2))
	clean, err = molding.CleanWithin(box)
	if err != nil || clean.Turned.Turned != measure.Degree/2 {
		t.Errorf("askew: %+v, %v", clean, err)
	}
	lies(t, "width", clean.Turned.Size.Width, w, 3)
	lies(t, "height", clean.Turned.Size.Height, h, 3)
	if _, err := molding.CleanWithin(shape(plane.Regular(5, plane.Flats, w))); err == nil {
		t.Error("five corners are taken")
	}
	dart := shape(plane.New(plane.Point{}, plane.Point{X: in("4"), Y: in("3")}, plane.Point{X: in("8")}, plane.Point{X: in("4"), Y: in("9")}))
	if _, err := molding.CleanWithin(dart); err == nil {
		t.Error("a dart is taken")
	}
}

func sign(f float64) float64 {
	if f < 0 {
		return -1
	}
	return 1
}

func TestGapsIn(t *testing.T) {
	opening := size("16 1/2", "20 1/2")
	square, err := molding.GapsIn(opening, shape(plane.Box(size("16", "20"))))
	if quarter := measure.AllSides(in("1/4")); err != nil || square.Least != quarter || square.Most != quarter {
		t.Errorf("square art: %+v, %v", square, err)
	}
	p := leaning(in("16"), in("20"), measure.Degree)
	lean := in("20").Sin(measure.Degree)
	g, err := molding.GapsIn(opening, p)
	if err != nil {
		t.Fatal(err)
	}
	// Left and right share what is left of the width, and one end has the lean more.
	half, rest := (opening.Width - in("16") - lean).Half()
	if g.Least.Left != half || g.Least.Right != half+rest || g.Most.Left != half+lean || g.Most.Right != half+rest+lean {
		t.Errorf("%+v", g)
	}
	if g.Least.Top != g.Most.Top || g.Least.Bottom != g.Most.Bottom || g.Least.Top+g.Least.Bottom != opening.Height-in("20").Cos(measure.Degree) {
		t.Errorf("%+v", g)
	}
	// The gaps and the art fill the opening.
	if wide := g.Least.Left + g.Least.Right + p.Size().Width; wide != opening.Width {
		t.Errorf("%v is filled of %v", wide, opening.Width)
	}
	// Turned so that its sides are upright, its top and bottom are off level.
	turned, err := molding.GapsIn(opening, shape(p.Turned(measure.Degree)))
	if err != nil || turned.Most.Left-turned.Least.Left > 2 || turned.Most.Top-turned.Least.Top < in("1/4") {
		t.Errorf("%+v, %v", turned, err)
	}
	// Art that does not go in has a gap below nothing.
	if g, _ := molding.GapsIn(size("16", "21"), p); g.Least.Left >= 0 {
		t.Errorf("%+v", g)
	}
	if _, err := molding.GapsIn(opening, plane.Polygon{}); err == nil {
		t.Error("no art is taken")
	}
}

// TestRegularShowing: the frame of that panel shows the whole picture, and one a hair
// smaller does not.
func TestRegularShowing(t *testing.T) {
	f := molding.Frame{Kind: molding.Rabbeted, Face: in("2"), Lip: in("1/4"), Allowance: in("1/8")}
	picture := size("8", "10")
	for n := 3; n <= 12; n++ {
		shows, err := f.RegularShowing(n, picture)
		if err != nil || len(shows) != 2 {
			t.Fatalf("n = %d: %v, %v", n, shows, err)
		}
		for _, show := range shows {
			r := f.AroundRegular(molding.RegularPanel{Sides: n, Across: plane.Flats, Size: show.Panel})
			if r.Sight != show.Flats {
				t.Errorf("n = %d: the sight is %v, not %v", n, r.Sight, show.Flats)
			}
			sight := shape(one("2", "1/4", "1/8").SightEdge(shape(shape(plane.Regular(n, plane.Flats, show.Panel)).Turned(show.Turned))))
			at := plane.Rectangle{Size: picture, Corner: plane.Point{X: show.Middle.X - picture.Width/2, Y: show.Middle.Y - picture.Height/2}}
			if !sight.ContainsRectangle(at, 2) {
				t.Errorf("n = %d, on its %s: %v does not show it", n, show.Stand, show.Flats)
			}
			at.Size = at.Size.Grown(40)
			at.Corner.X, at.Corner.Y = at.Corner.X-20, at.Corner.Y-20
			if sight.ContainsRectangle(at, 2) {
				t.Errorf("n = %d, on its %s: %v shows more", n, show.Stand, show.Flats)
			}
		}
	}
	if _, err := f.RegularShowing(2, picture); err == nil {
		t.Error("two sides are taken")
	}
}

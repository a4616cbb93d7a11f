package plane_test

import (
	"errors"
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

const cm = measure.Centimeter

func TestPins(t *testing.T) {
	shown := func(l, step measure.Length) measure.Length {
		l, _ = l.Round(step, measure.Nearest)
		return l
	}
	t.Run("OVAL-01", func(t *testing.T) {
		e := plane.Ellipse{Width: 16 * cm, Height: 10 * cm}
		if c := shown(e.Focus(), cm/1000); c != 6245*cm/1000 {
			t.Errorf("foci %v from the middle", c)
		}
		if loop := shown(e.Pins().Loop, cm/100); loop != 2849*cm/100 {
			t.Errorf("loop %v", loop)
		}
	})
	t.Run("S-04", func(t *testing.T) {
		e := plane.Ellipse{Width: 340 * mm, Height: 200 * mm}
		if c := shown(e.Focus(), mm/10); c != 1375*mm/10 {
			t.Errorf("foci %v from the middle", c)
		}
		if loop := shown(e.Pins().Loop, mm/10); loop != 615*mm {
			t.Errorf("loop %v", loop)
		}
	})
	for _, row := range []struct {
		width, height measure.Length
		want          plane.Pins
	}{
		{10 * cm, 8 * cm, plane.Pins{Apart: 6 * cm, Loop: 16 * cm, String: 10 * cm}},
		{6 * cm, 10 * cm, plane.Pins{Apart: 8 * cm, Loop: 18 * cm, String: 10 * cm}},
		{20 * cm, 16 * cm, plane.Pins{Apart: 12 * cm, Loop: 32 * cm, String: 20 * cm}},
		{406400 * measure.Micrometer, 304800 * measure.Micrometer, plane.Pins{Apart: 268808333, Loop: 675208333, String: 406400000}},
		{inch, inch, plane.Pins{Loop: inch, String: inch}}, // a circle: one pin
		{}, {inch, -inch, plane.Pins{}},
	} {
		e := plane.Ellipse{Width: row.width, Height: row.height}
		if got := e.Pins(); got != row.want {
			t.Errorf("%+v: %+v, want %+v", e, got, row.want)
		}
	}
	// The drawn curve keeps the thread tight: loop and string, at every point.
	for _, e := range ovals {
		pins := e.Pins()
		f := plane.Point{X: pins.Apart / 2}
		if e.Height > e.Width {
			f = plane.Point{Y: pins.Apart / 2}
		}
		for a := measure.Angle(0); a < measure.Turn; a += deg {
			p := e.At(a)
			thread := measure.Hypot(p.X-f.X, p.Y-f.Y) + measure.Hypot(p.X+f.X, p.Y+f.Y)
			near(t, "string", thread, pins.String, 4)
			near(t, "loop", thread+pins.Apart, pins.Loop, 4)
		}
	}
}

// TestTrammel slides the stick: with the pins on their axes the pencil is on the curve,
// and with the pins changed over it is not.
func TestTrammel(t *testing.T) {
	for _, e := range ovals {
		r := e.Trammel()
		if r.Gap != r.Long-r.Short || r.Gap != e.LatheOffset() || max(e.Width, e.Height) < plane.Reach && e.Grown(cm).LatheOffset() != r.Gap {
			t.Errorf("%+v: %+v, lathe %v", e, r, e.LatheOffset())
		}
		if min(e.Width, e.Height) < mm || e.Width == e.Height {
			continue
		}
		lying := plane.Ellipse{Width: max(e.Width, e.Height), Height: min(e.Width, e.Height)}
		off := func(onLonger, onShorter measure.Length) float64 {
			most := 0.0
			for i := range 91 {
				s, c := math.Sincos(float64(i) * math.Pi / 180)
				// The pin on the longer axis lies below the pencil, the one on the shorter
				// axis beside it.
				x, y := float64(onShorter)*c, float64(onLonger)*s
				x, y = x*2/float64(lying.Width), y*2/float64(lying.Height)
				most = max(most, math.Abs(x*x+y*y-1)*float64(lying.Height)/2)
			}
			return most
		}
		if off(r.Short, r.Long) > 4 || off(r.Long, r.Short) < float64(r.Gap)/2 {
			t.Errorf("%+v: off by %v, changed over by %v", e, off(r.Short, r.Long), off(r.Long, r.Short))
		}
	}
	if (plane.Ellipse{}).Trammel() != (plane.Trammel{}) {
		t.Error("a trammel for nothing")
	}
	want := plane.Trammel{Long: 10 * inch, Short: 8 * inch, Gap: 2 * inch}
	if got := ovals[0].Trammel(); got != want {
		t.Errorf("16 x 20: %+v", got)
	}
}

func TestOrdinates(t *testing.T) {
	for _, e := range ovals {
		step := max(max(e.Width, e.Height)/37, 1)
		ordinates, err := e.Ordinates(step)
		if err != nil {
			t.Fatal(err)
		}
		end := len(ordinates) - 1
		if ordinates[0] != (plane.Ordinate{Across: coarseHalf(min(e.Width, e.Height))}) || ordinates[end] != (plane.Ordinate{Along: max(e.Width, e.Height) / 2}) {
			t.Errorf("%+v: from %+v to %+v", e, ordinates[0], ordinates[end])
		}
		a, b := float64(max(e.Width, e.Height))/2, float64(min(e.Width, e.Height))/2
		for i, o := range ordinates[:end] {
			if want := b * math.Sqrt((1-float64(o.Along)/a)*(1+float64(o.Along)/a)); o.Along != measure.Length(i)*step || math.Abs(float64(o.Across)-want) > 0.6 {
				t.Errorf("%+v: %+v, want %v across", e, o, want)
			}
		}
	}
	// By hand: a 5, b 4, at 3 it is 3.2, the latus rectum b^2/a.
	got, _ := plane.Ellipse{Width: 8 * inch, Height: 10 * inch}.Ordinates(3 * inch)
	if len(got) != 3 || got[1] != (plane.Ordinate{Along: 3 * inch, Across: inch * 32 / 10}) {
		t.Errorf("%+v", got)
	}
	for _, row := range []struct {
		e    plane.Ellipse
		step measure.Length
		code explain.Code
	}{
		{ovals[0], 0, plane.NoLength}, {ovals[0], -1, explain.OutOfRange}, {ovals[0], plane.Reach + 1, explain.OutOfRange},
		{plane.Ellipse{}, inch, plane.NoLength}, {ovals[0], plane.Reach, ""},
		{plane.Ellipse{Width: 1998, Height: 2}, 1, ""}, {plane.Ellipse{Width: 2000, Height: 2}, 1, explain.TooMany},
		{plane.Ellipse{Width: 1, Height: 1}, 1, ""}, {plane.Ellipse{Width: plane.Reach, Height: 1}, 1, explain.TooMany},
	} {
		o, err := row.e.Ordinates(row.step)
		if code(t, err) != row.code || len(o) > plane.MaxOrdinates {
			t.Errorf("%+v every %v: %d, %v, want %q", row.e, row.step, len(o), err, row.code)
		}
	}
}

// coarseHalf is a half, rounded up.
func coarseHalf(l measure.Length) measure.Length { return (l + 1) / 2 }

func TestFourArcs(t *testing.T) {
	for _, e := range ovals {
		arcs, err := e.FourArcs()
		if max(e.Width, e.Height) == plane.Reach && code(t, err) == plane.Far { // see TestFourArcsRefused
			continue
		}
		if err != nil {
			t.Fatalf("%+v: %v", e, err)
		}
		a, b := coarseHalf(max(e.Width, e.Height)), coarseHalf(min(e.Width, e.Height))
		lay := func(p plane.Point) plane.Point {
			if e.Height > e.Width {
				return plane.Point{X: p.Y, Y: p.X}
			}
			return p
		}
		small, large, meet := lay(arcs.SmallCenter), lay(arcs.LargeCenter), lay(arcs.Meet)
		if small.Y != 0 || large.X != 0 || small.X < 0 || large.Y > 0 || meet.X < 0 || meet.Y < 0 {
			t.Fatalf("%+v: %+v", e, arcs)
		}
		// Through the ends of the axes, and through the point where they meet, from
		// which both centers lie in one direction.
		near(t, "end", small.X+arcs.Small, a, 1)
		near(t, "top", large.Y+arcs.Large, b, 1)
		near(t, "small radius", measure.Hypot(meet.X-small.X, meet.Y-small.Y), arcs.Small, 2)
		near(t, "large radius", measure.Hypot(meet.X-large.X, meet.Y-large.Y), arcs.Large, 2)
		near(t, "centers", measure.Hypot(small.X, large.Y), arcs.Large-arcs.Small, 3)
		if e.Width == e.Height || min(e.Width, e.Height) < mm || max(e.Width, e.Height) > plane.Reach/2 {
			continue
		}
		// By search: no point of the arcs is farther off than that, and one is as far.
		lying := plane.Ellipse{Width: max(e.Width, e.Height), Height: min(e.Width, e.Height)}
		most := 0.0
		join := math.Atan2(float64(-large.Y), float64(small.X))
		for i := range 1001 {
			u := float64(i) / 1000 * math.Pi / 2
			c, r := small, arcs.Small
			if u > join {
				c, r = large, arcs.Large
			}
			s, k := math.Sincos(u)
			p := plane.Point{X: c.X + measure.Length(float64(r)*k), Y: c.Y + measure.Length(float64(r)*s)}
			most = max(most, distance(lying, p))
		}
		most = max(most, distance(lying, meet))
		if off := float64(arcs.Most) - most; off < -4 || off > 4+most/10_000 {
			t.Errorf("%+v: off by %v, found %v", e, arcs.Most, most)
		}
	}
}

// French's construction as it is drawn, point by point.
func TestFrench(t *testing.T) {
	for _, e := range []plane.Ellipse{ovals[1], ovals[2], ovals[3], ovals[4]} {
		arcs, err := e.FourArcs()
		if err != nil || arcs.Rule != plane.French {
			t.Fatal(arcs, err)
		}
		a, b := float64(e.Width)/2, float64(e.Height)/2
		// A (-a, 0), C (0, b), E on CA at a - b from C.
		s := math.Hypot(a, b)
		ex, ey := -a*(a-b)/s, b-b*(a-b)/s
		mx, my := (ex-a)/2, ey/2
		// The line through the middle of AE, square to AC (a, b).
		x := mx + my*b/a // where y = 0
		y := my + mx*a/b // where x = 0
		near(t, "center", arcs.SmallCenter.X, measure.Length(math.Round(-x)), 1)
		near(t, "center", arcs.LargeCenter.Y, measure.Length(math.Round(y)), 1)
	}
	// 20 x 16 in, worked by hand: s = root 164, r = s (s - 2)/20.
	arcs, _ := plane.Ellipse{Width: 20 * inch, Height: 16 * inch}.FourArcs()
	if got := inches(arcs.Small, 4) + " " + inches(arcs.Large, 4) + " " + inches(arcs.Most, 3); got != "6.9194 11.8508 0.054" {
		t.Errorf("20 x 16: %s", got)
	}
	// Twice as long as wide Huygens' is the closer one, its arcs meet at 60 degrees.
	arcs, _ = plane.Ellipse{Width: 8 * inch, Height: 16 * inch}.FourArcs()
	if arcs.Rule != plane.Huygens || inches(arcs.Most, 3) != "0.079" || arcs.Large-arcs.Small != 2*arcs.SmallCenter.Y {
		t.Errorf("8 x 16: %+v", arcs)
	}
}

func TestFourArcsRefused(t *testing.T) {
	for _, row := range []struct {
		e    plane.Ellipse
		code explain.Code
	}{
		{plane.Ellipse{}, plane.NoLength},
		{plane.Ellipse{Width: 1, Height: -1}, explain.OutOfRange},
		{plane.Ellipse{Width: plane.Reach, Height: 1}, plane.Far},
		{plane.Ellipse{Width: plane.Reach, Height: plane.Reach / 4}, plane.Far},
		{plane.Ellipse{Width: plane.Reach, Height: plane.Reach / 2}, ""},
		{plane.Ellipse{Width: plane.Reach, Height: plane.Reach}, ""},
		{plane.Ellipse{Width: plane.Reach, Height: plane.Reach - 1}, ""},
		{plane.Ellipse{Width: 2, Height: 1}, ""},
	} {
		arcs, err := row.e.FourArcs()
		if code(t, err) != row.code || err != nil && arcs != (plane.FourArcs{}) {
			t.Errorf("%+v: %+v, %v, want %q", row.e, arcs, err, row.code)
		}
		var f *plane.Error
		if errors.As(err, &f) && f.Code == plane.Far && f.Limit != explain.Of(plane.Reach) {
			t.Errorf("%+v: %v", row.e, err)
		}
	}
}

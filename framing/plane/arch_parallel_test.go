package plane_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func parallelArch(t *testing.T, a plane.Arch, by measure.Length) plane.ArchParallel {
	t.Helper()
	p, err := a.Parallel(by)
	if err != nil {
		t.Fatalf("%+v by %v: %v", a, by, err)
	}
	return p
}

// TestArchParallels: triangles of whole numbers on either side of the arch, both ways:
// the parallel of the parallel is the arch.
func TestArchParallels(t *testing.T) {
	segmental := plane.Arch{Kind: plane.Segmental, Width: 240 * mm, Height: 300 * mm, Rise: 80 * mm}
	horseshoe := plane.Arch{Kind: plane.Horseshoe, Width: 240 * mm, Height: 360 * mm, Rise: 180 * mm}
	lancet := plane.Arch{Kind: plane.Pointed, Width: 160 * mm, Height: 400 * mm, Rise: 240 * mm}
	for _, row := range []struct {
		name                        string
		arch                        plane.Arch
		by                          measure.Length
		width, height, rise, radius measure.Length // mm
	}{
		{"half round, out", plane.Arch{Kind: plane.HalfRound, Width: 400 * mm, Height: 700 * mm}, 50 * mm, 500, 800, 250, 250},
		{"half round, in", plane.Arch{Kind: plane.HalfRound, Width: 400 * mm, Height: 700 * mm}, -50 * mm, 300, 600, 150, 150},
		// The chord's half 120 and the radius 130 leave 50; 175 and 185 leave 60, 75 and 85 leave 40.
		{"segmental, out", segmental, 55 * mm, 350, 410, 125, 185},
		{"segmental, in", segmental, -45 * mm, 150, 210, 45, 85},
		{"segmental itself", segmental, 0, 240, 300, 80, 130},
		{"horseshoe, out", horseshoe, 55 * mm, 350, 470, 245, 185},
		{"horseshoe, in", horseshoe, -45 * mm, 150, 270, 125, 85},
		// 320 to the middle: 600 up at a radius of 680, 72 at one of 328.
		{"lancet, out", lancet, 280 * mm, 720, 1040, 600, 680},
		{"lancet, in", lancet, -72 * mm, 16, 160, 72, 328},
	} {
		p := parallelArch(t, row.arch, row.by)
		if p.Width() != row.width*mm || p.Height() != row.height*mm || p.Rise() != row.rise*mm || p.Radius() != row.radius*mm || p.Side() != (row.height-row.rise)*mm {
			t.Errorf("%s: width %v, height %v, rise %v, radius %v", row.name, p.Width(), p.Height(), p.Rise(), p.Radius())
		}
		across := p.Width()
		if row.arch.Kind == plane.Horseshoe {
			across = 2 * row.radius * mm
		}
		if p.Size() != (measure.Size{Width: across, Height: row.height * mm}) {
			t.Errorf("%s: around it %v", row.name, p.Size())
		}
		back := parallelArch(t, plane.Arch{Kind: row.arch.Kind, Width: p.Width(), Height: p.Height(), Rise: p.Rise()}, -row.by)
		if back.Width() != row.arch.Width || back.Height() != row.arch.Height || row.arch.Rise != 0 && back.Rise() != row.arch.Rise {
			t.Errorf("%s: and back %v, %v, %v", row.name, back.Width(), back.Height(), back.Rise())
		}
	}
}

// TestArchParallelItself: at no distance it is the arch, as the contour measures it.
func TestArchParallelItself(t *testing.T) {
	for _, row := range arches {
		p := parallelArch(t, row.arch, 0)
		c, err := row.arch.Contour()
		if err != nil {
			t.Fatal(err)
		}
		if degrees(p.Sweep(), 6) != row.sweep || p.Radius() != row.radius || p.Side() != row.springing {
			t.Errorf("%s: sweep %v, radius %v, side %v", row.name, p.Sweep(), p.Radius(), p.Side())
		}
		near(t, row.name+" is long", p.Perimeter(), c.Length(), 20)
		near(t, row.name+" is wide", p.Size().Width, c.Size().Width, 1)
		near(t, row.name+" is high", p.Size().Height, c.Size().Height, 1)
	}
}

func randomArch(r *rand.Rand) plane.Arch {
	a := plane.Arch{Kind: plane.ArchKind(plane.HalfRound.Choices()[r.IntN(4)])}
	a.Width = 50*mm + measure.Length(r.Int64N(int64(1000*mm)))
	switch a.Kind {
	case plane.Segmental:
		a.Rise = a.Width/100 + measure.Length(r.Int64N(int64(a.Width/2-a.Width/100)))
	case plane.Horseshoe:
		a.Rise = a.Width/2 + 1 + measure.Length(r.Int64N(int64(a.Width)))
	case plane.Pointed:
		if r.IntN(3) > 0 {
			a.Rise = a.Width/2 + 1 + measure.Length(r.Int64N(int64(a.Width)))
		}
	}
	a.Height = max(a.Rise, a.Width) + measure.Length(r.Int64N(int64(600*mm)))
	return a
}

// TestArchParallelAgain: where each arc begins and ends lies on the lines and the circle
// that were moved, in floats.
func TestArchParallelAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 28))
	worked := 0
	for range 3000 {
		a := randomArch(r)
		by := measure.Length(r.Int64N(int64(200*mm))) - 70*mm
		p, err := a.Parallel(by)
		if err != nil {
			continue
		}
		worked++
		c, h, d, height := float64(a.Width), float64(a.Rise), float64(by), float64(a.Height)
		if h == 0 {
			h = map[plane.ArchKind]float64{plane.HalfRound: c / 2, plane.Pointed: c * math.Sqrt(3) / 2}[a.Kind]
		}
		// The middle of the right arc, seen from the middle of the foot, and its radius.
		x, y, radius := 0.0, height-(c*c/4+h*h)/(2*h), (c*c/4+h*h)/(2*h)
		if a.Kind == plane.Pointed {
			radius = (c*c/4 + h*h) / c
			x, y = c/2-radius, height-h
		}
		springing, crown := float64(p.Side())-d, float64(p.Height())-d
		tolerance := 3 + 1e6/math.Sqrt(c)
		for what, off := range map[string]float64{
			"springing": math.Hypot(c/2+d-x, springing-y) - radius - d,
			"crown":     math.Hypot(x, crown-y) - radius - d,
		} {
			if math.Abs(off) > tolerance {
				t.Fatalf("%+v by %v: the %s is off by %.1f", a, by, what, off)
			}
		}
		chord := 2 * (radius + d) * math.Sin(float64(p.Sweep())*math.Pi/360e9)
		straight := c + 2*d
		if a.Kind == plane.Pointed {
			straight = math.Hypot(c/2+d, float64(p.Rise()))
		}
		if math.Abs(chord-straight) > 100 {
			t.Fatalf("%+v by %v: the sweep's chord is %.1f, the width %.1f", a, by, chord, straight)
		}
	}
	if worked < 1500 {
		t.Errorf("only %d were worked", worked)
	}
}

// TestArchParallelRefuses: what a refusal accepts stands, and a nanometer more does not.
func TestArchParallelRefuses(t *testing.T) {
	r := rand.New(rand.NewPCG(18, 36))
	for range 500 {
		a := randomArch(r)
		_, err := a.Parallel(-a.Width)
		var e *plane.Error
		if !errors.As(err, &e) || e.Code != plane.LostSide || e.Bound != explain.AtMost {
			t.Fatalf("%+v: %v", a, err)
		}
		most := measure.Length(e.Limit.N)
		if _, err := a.Parallel(-most); err != nil {
			t.Fatalf("%+v: %v, and then %v", a, e, err)
		}
		if _, err := a.Parallel(-most - 1); err == nil {
			t.Fatalf("%+v: %v, and a nanometer more does, too", a, e)
		}
	}
	for name, err := range map[string]error{
		"no arch":  func() error { _, err := plane.Arch{}.Parallel(0); return err }(),
		"too far":  func() error { _, err := arches[0].arch.Parallel(plane.Reach); return err }(),
		"past all": func() error { _, err := arches[0].arch.Parallel(math.MaxInt64); return err }(),
		"inmost":   func() error { _, err := arches[0].arch.Parallel(math.MinInt64); return err }(),
	} {
		var e *plane.Error
		if !errors.As(err, &e) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestExplainArchParallel(t *testing.T) {
	at := plane.ArchPlaces{Arch: "/order/arch", Worked: "/arch"}
	r := rand.New(rand.NewPCG(8, 1))
	for range 1500 {
		a := randomArch(r)
		p, err := a.Parallel(measure.Length(r.Int64N(int64(200*mm))) - 70*mm)
		if err != nil {
			continue
		}
		all := map[explain.Path]explain.Value{
			"/arch/by": explain.Of(p.By), "/arch/width": explain.Of(p.Width()), "/arch/across": explain.Of(p.Across()), "/arch/height": explain.Of(p.Height()),
			"/arch/rise": explain.Of(p.Rise()), "/arch/side": explain.Of(p.Side()), "/arch/radius": explain.Of(p.Radius()), "/arch/sweep": explain.Of(p.Sweep()),
			"/arch/arc": explain.Of(p.Arc()), "/arch/perimeter": explain.Of(p.Perimeter()),
			"/order/arch/width": explain.Of(a.Width), "/order/arch/height": explain.Of(a.Height), "/order/arch/rise": explain.Of(a.Rise),
		}
		for path, want := range all {
			figure, is := path.After(at.Worked)
			if !is || figure == "/by" {
				continue
			}
			w, ok := p.Explain(figure, at)
			got, err := w.Formula.Evaluate()
			if !ok || err != nil || got != want || w.Exact != want || w.Path != path || w.Key == "" || w.Source.Status == "" {
				t.Fatalf("%+v\n%s: %v %v %v, want %v\n%s", p, path, ok, got, err, want, w.Text(measure.Format{}))
			}
			for _, term := range w.Formula.Terms() {
				if value, is := all[term.Path]; !is || value != term.Value || term.Path == path {
					t.Fatalf("%s takes %v from %s, which is %v", path, term.Value, term.Path, value)
				}
			}
		}
	}
	for _, figure := range []explain.Path{"", "/by", "/span", "/width/x"} {
		if w, ok := parallelArch(t, arches[0].arch, 0).Explain(figure, at); ok || w.Path != "" {
			t.Errorf("%q is explained: %v", figure, w)
		}
	}
}

// A segmental arch, and the edge an inch and a half outside it.
func ExampleArch_Parallel() {
	const in = measure.Inch
	a := plane.Arch{Kind: plane.Segmental, Width: 24 * in, Height: 30 * in, Rise: 8 * in}
	p, err := a.Parallel(in + in/2)
	if err != nil {
		fmt.Println(err)
		return
	}
	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	fmt.Println("radius", f.Text(a.Radius(), measure.Nearest), "and", f.Text(p.Radius(), measure.Nearest))
	fmt.Println("rise", f.Text(p.Rise(), measure.Nearest), "sides", f.Text(p.Side(), measure.Nearest))
	// Output:
	// radius 13 in and 14 1/2 in
	// rise 9 3/16 in sides 23 13/16 in
}

package hang_test

import (
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

var places = hang.Places{
	Hang: "/order/pieces/0/hang", Face: "/order/pieces/0/frame/face", Lip: "/order/pieces/0/frame/lip", Ledge: "/order/pieces/0/frame/ledge", Outside: "/pieces/0/frame/outside",
	Mass: "/pieces/0/mass/total", Heaviest: "/pieces/0/mass/heaviest", Worked: "/pieces/0/hang",
}

// in reads a length, inches where it names no unit.
func in(s string) measure.Length {
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

// lb is a mass in pounds.
func lb(s string) measure.Mass {
	m, err := measure.ParseMass(s, measure.Pounds)
	if err != nil {
		panic(err)
	}
	return m
}

// lbf is a load in pounds.
func lbf(s string) measure.Force { return measure.Weight(lb(s)) }

// newtons is the mass that weighs so many newtons.
func newtons(n float64) measure.Mass { return measure.Mass(n/9.80665*1e6 + 0.5) }

// inPounds is a load in pounds of force, 4.4482216152605 N.
func inPounds(f measure.Force) float64 { return float64(f) / 4448.2216152605 }

// within reports whether a and b differ by tolerance at most.
func within(a, b, tolerance float64) bool { return a-b <= tolerance && b-a <= tolerance }

// worked is a print in a frame of 20 x 24 that weighs ten pounds, on one hook.
func worked() (hang.Hanging, hang.Given) {
	h := hang.Usual(true)
	h.Hooks, h.Below, h.Inset, h.NailAbove = 1, in("7"), in("1"), in("3/4")
	h.Ratings.WireBreaks, h.Ratings.HangerHolds, h.Ratings.HookHolds = lbf("100"), lbf("50"), lbf("30")
	return h, hang.Given{
		Outside: measure.Size{Width: in("20"), Height: in("24")}, Face: in("2"),
		Mass: lb("10"), Heaviest: lb("10"), MassKnown: true,
	}
}

// onWire is a wire between hangers so far apart, with nothing to get in its way.
func onWire(span measure.Length, mass measure.Mass, hooks int, taut hang.Taut) (hang.Hanging, hang.Given) {
	h := hang.Usual(true)
	h.Hooks, h.Taut, h.Inset, h.Below = hooks, taut, in("1"), in("20")
	return h, hang.Given{
		Outside: measure.Size{Width: span + in("2"), Height: in("80")}, Face: in("2"),
		Mass: mass, Heaviest: mass, MassKnown: true,
	}
}

func check(h hang.Hanging) explain.Problems {
	var c explain.Checker
	h.Check(&c, "")
	return c.Problems()
}

// randomLength is up to most, on a tape's marks or between them.
func randomLength(r *rand.Rand, most measure.Length) measure.Length {
	l := measure.Length(r.Int64N(int64(most) + 1))
	if r.IntN(2) == 0 {
		l -= l % (measure.Inch / 64)
	}
	return l
}

// maybe is a random length, or nothing.
func maybe(r *rand.Rand, most measure.Length) measure.Length {
	if r.IntN(2) == 0 {
		return 0
	}
	return randomLength(r, most)
}

// random returns a hanging that passes its check, and a piece.
func random(r *rand.Rand) (hang.Hanging, hang.Given) {
	pick := func(choices []string) string { return choices[r.IntN(len(choices))] }
	g := hang.Given{
		Outside: measure.Size{Width: in("4") + randomLength(r, in("60")), Height: in("4") + randomLength(r, in("60"))},
		Face:    in("1/4") + randomLength(r, in("4")),
		Mass:    measure.Mass(r.Int64N(int64(20 * measure.Kilogram))), MassKnown: r.IntN(4) > 0,
	}
	if r.IntN(2) == 0 {
		g.Lip = randomLength(r, g.Face-1)
	} else if r.IntN(4) == 0 {
		g.Ledge = randomLength(r, in("2"))
	}
	g.Heaviest = g.Mass + measure.Mass(r.Int64N(int64(2*measure.Kilogram)))
	h := hang.Usual(r.IntN(2) == 0)
	if r.IntN(2) == 0 {
		h.By = hang.Way(pick(hang.Wire.Choices()))
	}
	h.Hooks = 1 + r.IntN(2)
	h.Part = explain.Ratio(int(explain.Percent) * (5 + r.IntN(60)))
	h.Below = maybe(r, g.Outside.Height/2)
	h.BelowRight = maybe(r, g.Outside.Height/2) // counts for rings only
	h.Inset = maybe(r, g.Outside.Width/2)
	switch r.IntN(6) {
	case 0, 1:
		h.Inset = maybe(r, in("3"))
	case 2:
		h.Inset = g.Outside.Width / 2
	}
	h.Taut = hang.Taut{
		By:    hang.TautBy(pick(hang.ByRise.Choices())),
		Angle: hang.LeastAngle + measure.Angle(r.Int64N(int64(hang.MostAngle-hang.LeastAngle)+1)),
		Rise:  1 + randomLength(r, in("8")),
		Wire:  1 + randomLength(r, 2*g.Outside.Width),
	}
	h.Spread = maybe(r, g.Outside.Width)
	h.Tails = randomLength(r, in("8"))
	h.NailAbove = maybe(r, in("2"))
	h.Hidden = randomLength(r, in("3"))
	h.Center = in("20") + randomLength(r, in("60"))
	h.Ratings.WireBreaks = measure.Force(r.Int64N(int64(measure.Kilonewton)))
	h.Ratings.HangerHolds = measure.Force(r.Int64N(int64(measure.Kilonewton / 4)))
	h.Ratings.HookHolds = measure.Force(r.Int64N(int64(measure.Kilonewton / 4)))
	h.Ratings.Factor = 1 + r.IntN(8)
	if r.IntN(4) == 0 {
		h.Ratings = hang.Ratings{Factor: 4}
	}
	return h, g
}

// eachRandom runs f on many random pieces, the same ones each time.
func eachRandom(t *testing.T, n int, f func(t *testing.T, r *rand.Rand, h hang.Hanging, g hang.Given)) {
	t.Helper()
	r := rand.New(rand.NewPCG(57, 145))
	for range n {
		h, g := random(r)
		if problems := check(h); problems != nil {
			t.Fatalf("nothing to test with: %v", problems)
		}
		if f(t, r, h, g); t.Failed() {
			t.Fatalf("hanging %+v\ngiven %+v\nlaid %+v", h, g, h.Lay(g))
		}
	}
}

// figures are the figures of a layout by their paths, as a plan would name them.
func figures(h hang.Hanging, l hang.Layout) map[explain.Path]explain.Value {
	all := make(map[explain.Path]explain.Value)
	if !l.Hangs() {
		return all
	}
	all["/below/left"], all["/below/right"] = explain.Of(l.Below.Left), explain.Of(l.Below.Right)
	load := func(at explain.Path, l hang.Load) {
		all[at+"/nominal"], all[at+"/heaviest"] = explain.Of(l.Nominal), explain.Of(l.Heaviest)
	}
	load("/hanger", l.Hanger)
	load("/hook", l.Hook)
	if h.By != hang.Sawtooth {
		all["/span"] = explain.Of(l.Span)
	}
	if h.By == hang.Wire {
		if h.Hooks == 2 {
			all["/spread"] = explain.Of(l.Spread)
		} else if l.StableRise != 0 {
			all["/stable_rise"] = explain.Of(l.StableRise)
		}
		all["/rise"], all["/angle"], all["/leg"] = explain.Of(l.Rise), explain.Of(l.Angle), explain.Of(l.Leg)
		all["/taut"], all["/wire"], all["/wire_top"] = explain.Of(l.Taut), explain.Of(l.Wire), explain.Of(l.WireTop)
		load("/tension", l.Tension)
		load("/pull", l.Pull)
	}
	for i, m := range l.Marks {
		at := explain.Path("/marks/" + strconv.Itoa(i))
		all[at+"/across"], all[at+"/bearing"], all[at+"/nail"] = explain.Of(m.Across), explain.Of(m.Bearing), explain.Of(m.Nail)
	}
	return all
}

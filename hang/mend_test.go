package hang_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// waysOut are the changes of a note as they read.
func waysOut(n explain.Note) string {
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	var list []string
	for _, c := range n.Changes {
		list = append(list, c.Text(f))
	}
	return strings.Join(list, "; ")
}

// TestWaysOut: what is proposed where, and nothing that is there already or that
// would make it worse. A wide low frame of 47 1/4 x 19 1/4 can have no wire of 30
// degrees on one hook: its hangers 46 apart would need 13.3 in of rise.
func TestWaysOut(t *testing.T) {
	wide := func(h *hang.Hanging, g *hang.Given) {
		g.Outside, g.Face = measure.Size{Width: in("47 1/4"), Height: in("19 1/4")}, in("1 1/4")
		h.Below, h.Inset = 0, in("5/8")
	}
	small := func(h *hang.Hanging, g *hang.Given) {
		g.Outside, h.By, h.Below = measure.Size{Width: in("12"), Height: in("14")}, hang.Sawtooth, in("1")
	}
	rows := []struct {
		name   string
		change func(*hang.Hanging, *hang.Given)
		code   explain.Code
		want   string
	}{
		{"a wire above a low frame", func(h *hang.Hanging, g *hang.Given) {
			wide(h, g)
			h.Taut.Angle = 45 * measure.Degree
		}, hang.WireShows, "hanging by two rings"},
		{"a flat wire on a low frame", func(h *hang.Hanging, g *hang.Given) {
			wide(h, g)
			h.Taut.Angle = 9 * measure.Degree
		}, hang.FlatWire, "hanging by two rings"},
		{"a flat wire with room to rise", func(h *hang.Hanging, _ *hang.Given) {
			h.Hooks, h.Taut.Angle = 2, 14*measure.Degree
		}, hang.FlatWire, "angle of the wire at least 30 deg; hanging by two rings"},
		{"a flat wire by its rise, which two hooks make steep", func(h *hang.Hanging, g *hang.Given) {
			wide(h, g)
			h.Spread, h.Taut = in("44"), hang.Taut{By: hang.ByRise, Rise: in("2")}
		}, hang.FlatWire, "wall hooks 2; hanging by two rings"},
		{"a weak hook, and one more to be had", func(h *hang.Hanging, _ *hang.Given) {
			h.Ratings.HookHolds = lbf("8")
		}, hang.HookGives, "rating of each wall hook at least 10.0 lb; wall hooks 2; hanging by two rings"},
		{"two weak hooks", func(h *hang.Hanging, _ *hang.Given) {
			h.By, h.Ratings.HookHolds = hang.Rings, lbf("4")
		}, hang.HookGives, "rating of each wall hook at least 5.0 lb"},
		{"two weak rings", func(h *hang.Hanging, _ *hang.Given) {
			h.By, h.Ratings.HangerHolds = hang.Rings, lbf("4")
		}, hang.HangerGives, "rating of each hanger at least 5.0 lb"},
		{"hangers too far down", func(h *hang.Hanging, _ *hang.Given) {
			h.Hooks, h.Below = 2, in("13")
		}, hang.TopHeavy, "hangers below the frame's top 8 in"},
		{"too far down under a wire that would show at a third", func(h *hang.Hanging, g *hang.Given) {
			wide(h, g)
			h.Hooks, h.Below = 2, in("12")
		}, hang.TopHeavy, "hangers below the frame's top at most 9 9/16 in"},
		{"too far down, as a part", func(h *hang.Hanging, _ *hang.Given) {
			h.Hooks, h.Below, h.Part = 2, 0, 60*explain.Percent
		}, hang.TopHeavy, "hangers down the frame's height 33 %"},
		{"a hook that shows", func(h *hang.Hanging, _ *hang.Given) {
			h.By, h.Below, h.NailAbove = hang.Rings, in("1"), in("1 1/2")
		}, hang.HookShows, "hangers below the frame's top at least 2 in; nail above where the hook bears at most 15/16 in"},
		{"a heavy piece on a sawtooth", small, hang.SawtoothHeavy, "hanging by two rings"}, // a wire 1 in below the top would show
	}
	for _, row := range rows {
		h, g := worked()
		h.Ratings.WireBreaks, h.Ratings.HangerHolds = lbf("1000"), lbf("1000")
		if row.change(&h, &g); row.code == hang.HookShows {
			h.Hidden = in("2")
		}
		ns := notes(t, h, g)
		n := find(t, ns, row.code)
		if got := waysOut(n); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
		for _, n := range ns {
			if text := n.Text(measure.Format{}); h.Hooks == 2 && strings.Contains(text, "two hooks") || h.By == hang.Rings && strings.Contains(text, "two in place") {
				t.Errorf("%s: %s", row.name, text)
			}
		}
	}
}

// TestSawtoothLimits: 5 lb and 16 in on the short side, and a hair past them.
func TestSawtoothLimits(t *testing.T) {
	h, g := worked()
	h.By, h.Below = hang.Sawtooth, in("1")
	g.Outside, g.Heaviest = measure.Size{Width: hang.SawtoothSide, Height: in("20")}, hang.SawtoothMass
	g.Mass = g.Heaviest
	if got := codes(notes(t, h, g)); got != "" {
		t.Errorf("at both limits: %s", got)
	}
	heavier, larger := g, g
	heavier.Heaviest++
	if got := codes(notes(t, h, heavier)); got != "warning hang.sawtooth_heavy" {
		t.Errorf("a milligram heavier: %s", got)
	}
	larger.Outside.Width++
	if got := codes(notes(t, h, larger)); got != "advice hang.sawtooth_large" {
		t.Errorf("a nanometer wider: %s", got)
	}
	h.By = hang.Rings
	if got := codes(notes(t, h, heavier)); strings.Contains(got, "sawtooth") {
		t.Errorf("on rings: %s", got)
	}
}

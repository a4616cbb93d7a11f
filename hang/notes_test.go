package hang_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

var wallCautions = []explain.Code{hang.CautionSeats, hang.CautionWiring, hang.CautionDamp}

// notes returns the notes of h but for the cautions that every piece has.
func notes(t *testing.T, h hang.Hanging, g hang.Given) []explain.Note {
	t.Helper()
	all := h.Notes(g, h.Lay(g), places)
	for _, code := range wallCautions {
		i := slices.IndexFunc(all, func(n explain.Note) bool { return n.Code == code })
		if i < 0 || all[i].Level != explain.Caution {
			t.Fatalf("no %s: %+v", code, all)
		}
		all = slices.Delete(all, i, i+1)
	}
	for _, n := range all {
		if text := n.Text(measure.Format{}); text == string(n.Code) || strings.ContainsAny(text, "{}") {
			t.Errorf("%s reads %q", n.Code, text)
		}
		if n.Level == explain.Caution && n.Changes != nil {
			t.Errorf("%s could be changed away", n.Code)
		}
		for _, c := range n.Changes {
			if text := c.Text(measure.Format{}); strings.HasPrefix(text, "field.") || strings.HasPrefix(text, "change.") {
				t.Errorf("%s would change a field without a name: %s", n.Code, c.Path)
			}
		}
	}
	return all
}

func codes(ns []explain.Note) string {
	var list []string
	for _, n := range ns {
		list = append(list, string(n.Level)+" "+string(n.Code))
	}
	return strings.Join(list, "; ")
}

// find returns the note of a code.
func find(t *testing.T, ns []explain.Note, code explain.Code) explain.Note {
	t.Helper()
	i := slices.IndexFunc(ns, func(n explain.Note) bool { return n.Code == code })
	if i < 0 {
		t.Fatalf("no %s in %s", code, codes(ns))
	}
	return ns[i]
}

// value returns the value of a note's term.
func value(t *testing.T, n explain.Note, key explain.Key) int64 {
	t.Helper()
	for _, v := range n.Values {
		if v.Key == key {
			return v.Value.N
		}
	}
	t.Fatalf("%s says no %s", n.Code, key)
	return 0
}

// TestNotes: each code comes exactly where it must, at its limit and a nanometer,
// a millinewton or a nanodegree to either side.
func TestNotes(t *testing.T) {
	const friction = "advice hang.only_friction"
	rise := func(s string, less measure.Length) func(*hang.Hanging) {
		return func(h *hang.Hanging) {
			h.Hooks, h.Taut = 2, hang.Taut{By: hang.ByRise, Rise: in(s) - less}
		}
	}
	two := func(change func(*hang.Hanging)) func(*hang.Hanging) {
		return func(h *hang.Hanging) { h.Hooks = 2; change(h) }
	}
	rings := func(change func(*hang.Hanging)) func(*hang.Hanging) {
		return func(h *hang.Hanging) { h.By = hang.Rings; change(h) }
	}
	sawtooth := func(change func(*hang.Hanging)) func(*hang.Hanging) {
		return func(h *hang.Hanging) { h.By, h.Below = hang.Sawtooth, in("1"); change(h) }
	}
	nothing := func(*hang.Hanging) {}
	h, g := worked()
	h.Hooks = 2
	laid := h.Lay(g)
	rows := []struct {
		name   string
		change func(*hang.Hanging)
		want   string
	}{
		{"on one hook", func(h *hang.Hanging) { h.Taut.Angle = 29 * measure.Degree }, "advice hang.low_wire; " + friction},
		{"on one hook at 30, too high", func(h *hang.Hanging) { h.Hidden = in("2") }, "advice hang.near_top; " + friction},
		{"on two", two(nothing), ""},
		{"at 30 degrees", two(func(h *hang.Hanging) { h.Taut.Angle = hang.LowAngle }), ""},
		{"flatter by a nanodegree", two(func(h *hang.Hanging) { h.Taut.Angle = hang.LowAngle - 1 }), "advice hang.low_wire"},
		{"at 15 degrees", two(func(h *hang.Hanging) { h.Taut.Angle = hang.FlatAngle }), "advice hang.low_wire"},
		{"flatter by a nanodegree", two(func(h *hang.Hanging) { h.Taut.Angle = hang.FlatAngle - 1 }), "warning hang.flat_wire"},
		{"2 in below the top", rise("5", 0), ""},
		{"a nanometer less", rise("5", -1), "advice hang.near_top"},
		{"a nanometer more than the nail", rise("6 1/4", 1), "advice hang.near_top"},
		{"the nail at the top", rise("6 1/4", 0), "warning hang.hook_shows"},
		{"the wire just below the top", rise("7", 1), "warning hang.hook_shows"},
		{"the wire at the top, under its nail", rise("7", 0), "warning hang.wire_shows"},
		{"the wire at the top", two(func(h *hang.Hanging) { rise("7", 0)(h); h.NailAbove = 0 }), "warning hang.wire_shows; advice hang.nail_unknown"},
		{"the wire a nanometer below", two(func(h *hang.Hanging) { rise("7", 1)(h); h.NailAbove = 0 }), "advice hang.near_top; advice hang.nail_unknown"},
		{"the wire above the top", rise("8", 0), "warning hang.wire_shows"},
		{"no nail known", two(func(h *hang.Hanging) { h.NailAbove = 0 }), "advice hang.nail_unknown"},
		{"wire just strong enough", two(func(h *hang.Hanging) { h.Ratings.WireBreaks = 4 * laid.Tension.Heaviest }), ""},
		{"weaker by a millinewton", two(func(h *hang.Hanging) { h.Ratings.WireBreaks = 4*laid.Tension.Heaviest - 1 }), "warning hang.wire_breaks"},
		{"a factor of one more", two(func(h *hang.Hanging) { h.Ratings.WireBreaks, h.Ratings.Factor = 4*laid.Tension.Heaviest, 5 }), "warning hang.wire_breaks"},
		{"hangers just strong enough", two(func(h *hang.Hanging) { h.Ratings.HangerHolds = laid.Hanger.Heaviest }), ""},
		{"weaker by a millinewton", two(func(h *hang.Hanging) { h.Ratings.HangerHolds = laid.Hanger.Heaviest - 1 }), "warning hang.hanger_gives"},
		{"hooks just strong enough", two(func(h *hang.Hanging) { h.Ratings.HookHolds = laid.Hook.Heaviest }), ""},
		{"weaker by a millinewton", two(func(h *hang.Hanging) { h.Ratings.HookHolds = laid.Hook.Heaviest - 1 }), "warning hang.hook_gives"},
		{"no ratings", two(func(h *hang.Hanging) { h.Ratings = hang.Ratings{Factor: 4} }), "advice hang.wire_unrated; advice hang.hanger_unrated; advice hang.hook_unrated"},
		{"hangers just above the middle", two(func(h *hang.Hanging) { h.Below = in("12") - 1 }), ""},
		{"hangers at the middle", two(func(h *hang.Hanging) { h.Below = in("12") }), "warning hang.top_heavy"},
		{"just on the floor", two(func(h *hang.Hanging) { h.Center = in("12") }), ""},
		{"a nanometer in it", two(func(h *hang.Hanging) { h.Center = in("12") - 1 }), "warning hang.through_floor"},
		{"hangers that just fit", func(h *hang.Hanging) { h.Inset = in("10") - 1; h.Hooks = 1 }, "warning hang.off_wood"},
		{"hangers in the last of the wood", two(func(h *hang.Hanging) { h.Inset = in("2") - 1 }), ""},
		{"hangers past it", two(func(h *hang.Hanging) { h.Inset = in("2") }), "warning hang.off_wood"},
		{"rings past it", rings(func(h *hang.Hanging) { h.Inset = in("2") }), "warning hang.off_wood"},
		{"hangers that meet", two(func(h *hang.Hanging) { h.Inset = in("10") }), "warning hang.no_span"},
		{"hooks as far apart as the hangers", two(func(h *hang.Hanging) { h.Spread = in("18") }), "warning hang.wide_spread"},
		{"a short wire", two(func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByWire, Wire: in("18")} }), "warning hang.short_wire"},
		{"rings", rings(nothing), ""},
		{"rings, no nail known", rings(func(h *hang.Hanging) { h.NailAbove = 0 }), "advice hang.nail_unknown"},
		{"rings that are not level", rings(func(h *hang.Hanging) { h.BelowRight = in("7") + 1 }), "advice hang.uneven_rings"},
		{"rings as the left one", rings(func(h *hang.Hanging) { h.BelowRight = in("7") }), ""},
		{"rings at the top", rings(func(h *hang.Hanging) { h.Below = in("3/4") }), "warning hang.hook_shows"},
		{"rings near the top", rings(func(h *hang.Hanging) { h.Below = in("2") - 1 }), "advice hang.near_top"},
		{"the right ring near the top", rings(func(h *hang.Hanging) { h.BelowRight = in("2") - 1 }), "advice hang.near_top; advice hang.uneven_rings"},
		{"the right ring in the middle", rings(func(h *hang.Hanging) { h.BelowRight = in("12") }), "warning hang.top_heavy; advice hang.uneven_rings"},
		{"rings that just hold", rings(func(h *hang.Hanging) { h.Ratings.HangerHolds, h.Ratings.HookHolds = lbf("5"), lbf("5") }), ""},
		{"rings that do not", rings(func(h *hang.Hanging) { h.Ratings.HangerHolds, h.Ratings.HookHolds = lbf("5")-1, lbf("5")-1 }), "warning hang.hanger_gives; warning hang.hook_gives"},
		{"rings that meet", rings(func(h *hang.Hanging) { h.Inset = in("10") }), "warning hang.no_span"},
		{"a sawtooth", sawtooth(nothing), ""},
		{"a sawtooth on a bare nail", sawtooth(func(h *hang.Hanging) { h.NailAbove = 0 }), ""},
		{"a sawtooth in the last of the wood", sawtooth(func(h *hang.Hanging) { h.Below = in("2") - 1 }), ""},
		{"a sawtooth below it", sawtooth(func(h *hang.Hanging) { h.Below = in("2") }), "warning hang.sawtooth_off_wood"},
		{"a sawtooth on a nail that shows", sawtooth(func(h *hang.Hanging) { h.NailAbove = in("1") }), "warning hang.hook_shows"},
		{"a sawtooth without a rating", sawtooth(func(h *hang.Hanging) { h.Ratings.HangerHolds = 0 }), "advice hang.hanger_unrated"},
		{"a sawtooth that does not hold", sawtooth(func(h *hang.Hanging) { h.Ratings.HangerHolds = lbf("4") - 1 }), "warning hang.hanger_gives"},
	}
	for _, row := range rows {
		h, g := worked()
		row.change(&h)
		if h.By == hang.Sawtooth {
			g.Outside, g.Mass, g.Heaviest = measure.Size{Width: in("12"), Height: in("14")}, lb("4"), lb("4")
		}
		if got := codes(notes(t, h, g)); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestCautions: no field of the order removes one.
func TestCautions(t *testing.T) {
	h, g := worked()
	h.Hooks = 2
	g.Heaviest = hang.Heavy - 1
	h.Ratings = hang.Ratings{WireBreaks: explain.MaxForce, HangerHolds: explain.MaxForce, HookHolds: explain.MaxForce, Factor: 1}
	if got := codes(notes(t, h, g)); got != "" {
		t.Errorf("a light piece: %s", got)
	}
	g.Heaviest++
	if got := codes(notes(t, h, g)); got != "caution caution.heavy_piece" {
		t.Errorf("a heavy piece: %s", got)
	}
	g.MassKnown = false
	if got := codes(notes(t, h, g)); got != "caution hang.mass_unknown; caution caution.heavy_piece" {
		t.Errorf("a heavy piece of which not all was weighed: %s", got)
	}
	eachRandom(t, 500, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		g.Heaviest = hang.Heavy
		find(t, notes(t, h, g), hang.CautionHeavy) // and notes requires those of the wall
	})
}

// TestUnknownWeight: nothing is asked of hardware for a weight of nothing.
func TestUnknownWeight(t *testing.T) {
	h, g := worked()
	h.Hooks, h.Ratings = 2, hang.Ratings{Factor: 4}
	g.Mass, g.Heaviest, g.MassKnown = 0, 0, false
	if got := codes(notes(t, h, g)); got != "caution hang.mass_unknown" {
		t.Errorf("nothing known: %s", got)
	}
}

// TestThreeRatings: 7.5 lb on a wire at 30 degrees, two hooks rated 5 lb and
// hangers rated 5 lb: each hanger is over, the hooks are not.
func TestThreeRatings(t *testing.T) {
	h, g := onWire(in("20"), lb("7.5"), 2, byAngle(30))
	h.NailAbove = in("1")
	h.Ratings = hang.Ratings{WireBreaks: lbf("31"), HangerHolds: lbf("5"), HookHolds: lbf("5"), Factor: 4}
	ns := notes(t, h, g)
	if got := codes(ns); got != "warning hang.hanger_gives" {
		t.Fatalf("%s", got)
	}
	n := ns[0]
	if got := inPounds(measure.Force(value(t, n, "hanger"))); !within(got, 7.5, 0.005) {
		t.Errorf("the hanger carries %.3f lb", got)
	}
	// More rise would do it, while the wire stays hidden: T = 5 at sin u = .75, 48.6
	// degrees.
	if len(n.Changes) != 3 || n.Changes[0].Path != places.Hang+"/ratings/hanger_holds" || n.Changes[1].To != explain.Of(48_600_000_000*measure.Nanodegree) || n.Changes[2].Word != string(hang.Rings) {
		t.Errorf("changes %+v", n.Changes)
	}
}

// TestRefused: 100 lb on one hook at 15 degrees, and a wire that was tested to
// 100: it carries 193 lb and, at a quarter, would have to break at 773.
func TestRefused(t *testing.T) {
	h, g := onWire(in("20"), lb("100"), 1, byAngle(15))
	h.Ratings.WireBreaks = lbf("100")
	n := find(t, notes(t, h, g), hang.WireBreaks)
	if n.Level != explain.Warning || n.Changes == nil || n.Changes[0].To != explain.Of(measure.Force(value(t, n, "needed"))) {
		t.Errorf("%+v", n)
	}
	if got := inPounds(measure.Force(value(t, n, "tension"))); !within(got, 193, 0.5) {
		t.Errorf("the wire carries %.2f lb", got)
	}
	if got := inPounds(measure.Force(value(t, n, "needed"))); !within(got, 773, 0.5) {
		t.Errorf("it has to break at %.2f lb", got)
	}
	text := n.Text(measure.Format{Style: measure.Fraction, Step: in("1/16")})
	for _, part := range []string{"two rings", "cleat", "4 times"} {
		if !strings.Contains(text, part) {
			t.Errorf("%q says nothing of %s", text, part)
		}
	}
}

// TestTilt: rings 2 1/8 and 1 7/8 below the top, 16 apart, a frame of 20: on
// level nails it hangs out of level by .9 degrees, 5/16 over the frame (C).
func TestTilt(t *testing.T) {
	h, g := worked()
	h.By, h.Below, h.BelowRight, h.Inset = hang.Rings, in("2 1/8"), in("1 7/8"), in("2")
	n := find(t, notes(t, h, g), hang.UnevenRings)
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	const want = "The rings differ by 1/4 in in height, and so must the nails. On level nails the frame hangs out of level by 0.9 deg, which is 5/16 in over its width."
	if got := n.Text(f); got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
}

// TestTimesTheWeight: a rise of .36 over 20 makes it fourteen times the weight.
func TestTimesTheWeight(t *testing.T) {
	h, g := onWire(in("20"), lb("10"), 1, hang.Taut{By: hang.ByRise, Rise: in("0.36")})
	n := find(t, notes(t, h, g), hang.FlatWire)
	if got := value(t, n, "ratio"); got != int64(1390*explain.Percent) {
		t.Errorf("%d ppm of the weight", got)
	}
}

// changed makes a change to the hanging.
func changed(t *testing.T, h hang.Hanging, c explain.Change) hang.Hanging {
	t.Helper()
	field, _ := c.Path.After(places.Hang)
	lengths := map[explain.Path]*measure.Length{
		"/below": &h.Below, "/below_right": &h.BelowRight, "/inset": &h.Inset, "/spread": &h.Spread, "/center": &h.Center,
		"/nail_above": &h.NailAbove, "/taut/rise": &h.Taut.Rise, "/taut/wire": &h.Taut.Wire,
	}
	forces := map[explain.Path]*measure.Force{
		"/ratings/wire_breaks": &h.Ratings.WireBreaks, "/ratings/hanger_holds": &h.Ratings.HangerHolds, "/ratings/hook_holds": &h.Ratings.HookHolds,
	}
	kind := explain.LengthKind
	switch {
	case field == "/by":
		h.By = hang.Way(c.Word)
		return h
	case lengths[field] != nil:
		*lengths[field] = measure.Length(c.To.N)
	case forces[field] != nil:
		kind, *forces[field] = explain.ForceKind, measure.Force(c.To.N)
	case field == "/hooks":
		kind, h.Hooks = explain.CountKind, int(c.To.N)
	case field == "/part":
		kind, h.Part = explain.RatioKind, explain.Ratio(c.To.N)
	case field == "/taut/angle":
		kind, h.Taut.Angle = explain.AngleKind, measure.Angle(c.To.N)
	default:
		t.Errorf("a change of %s", c.Path)
	}
	if c.To.Kind != kind {
		t.Errorf("%s to %v", c.Path, c.To)
	}
	return h
}

// gravity ranks levels; a caution is not mended.
var gravity = map[explain.Level]int{explain.Advice: 1, explain.Warning: 2}

// unasked are the notes on what was not given, and once a piece that did not
// hang does, on loads that were not known before.
func unasked(code explain.Code, hung bool) bool {
	switch code {
	case hang.WireUnrated, hang.HangerUnrated, hang.HookUnrated, hang.NailUnknown:
		return true
	case hang.WireBreaks, hang.HangerGives, hang.HookGives:
		return !hung
	case hang.NearTop, hang.LowWire, hang.OnlyFriction, hang.UnevenRings, hang.SawtoothLarge:
		return !hung
	}
	return false
}

// kind is what a note is about: a hook shows, whether its wire does or not.
func kind(code explain.Code) explain.Code {
	if code == hang.WireShows {
		return hang.HookShows
	}
	return code
}

// checkChanges makes each change: after it the note is gone, the hanging still
// passes its check, and there is no new note of the same gravity or a higher one.
// No change sets a wire under 30 degrees, or asks for what is there already.
func checkChanges(t *testing.T, h hang.Hanging, g hang.Given, ns []explain.Note) map[explain.Code]int {
	t.Helper()
	made := make(map[explain.Code]int)
	hung := h.Lay(g).Hangs()
	for _, n := range ns {
		for _, c := range n.Changes {
			better := changed(t, h, c)
			made[n.Code]++
			if better == h {
				t.Errorf("%s: %s is what it is already", n.Code, c.Text(measure.Format{}))
			}
			if field := c.Path.Parent().Last(); field == "taut" && better.Lay(g).Angle < hang.LowAngle {
				t.Errorf("%s, changed to %s: a wire at %v", n.Code, c.Text(measure.Format{}), better.Lay(g).Angle)
			}
			if problems := check(better); problems != nil {
				t.Errorf("%s, changed to %s: %v", n.Code, c.Text(measure.Format{}), problems)
			}
			for _, again := range better.Notes(g, better.Lay(g), places) {
				if again.Code == n.Code {
					t.Errorf("%s, changed to %s: still there", n.Code, c.Text(measure.Format{}))
				}
				is := func(m explain.Note) bool {
					return kind(m.Code) == kind(again.Code) && gravity[m.Level] >= gravity[again.Level]
				}
				if gravity[again.Level] >= gravity[n.Level] && !slices.ContainsFunc(ns, is) && !unasked(again.Code, hung) {
					t.Errorf("%s, changed to %s: now %s", n.Code, c.Text(measure.Format{}), again.Code)
				}
			}
		}
	}
	return made
}

func TestChangesMend(t *testing.T) {
	made := make(map[explain.Code]int)
	eachRandom(t, 8000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		for code, n := range checkChanges(t, h, g, notes(t, h, g)) {
			made[code] += n
		}
	})
	for _, code := range []explain.Code{
		hang.NoSpan, hang.OffWood, hang.SawtoothOff, hang.WideSpread, hang.ShortWire, hang.TopHeavy, hang.ThroughFloor, hang.WireShows, hang.HookShows, hang.NearTop, hang.WireBreaks,
		hang.HangerGives, hang.HookGives, hang.WireUnrated, hang.HangerUnrated, hang.HookUnrated, hang.FlatWire, hang.LowWire, hang.OnlyFriction, hang.UnevenRings,
		hang.SawtoothHeavy, hang.SawtoothLarge,
	} {
		if made[code] < 20 {
			t.Errorf("only %d changes of %s were tried", made[code], code)
		}
	}
}

// TestLeastRise: the rise that a refused wire is given is the least that holds: a
// nanometer less does not, or is under 30 degrees.
func TestLeastRise(t *testing.T) {
	tried := 0
	eachRandom(t, 6000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		if h.Taut.By != hang.ByRise {
			return
		}
		for _, n := range notes(t, h, g) {
			if n.Code != hang.WireBreaks && n.Code != hang.HangerGives {
				continue
			}
			for _, c := range n.Changes {
				if c.Path.Last() != "rise" {
					continue
				}
				tried++
				less := changed(t, h, c)
				less.Taut.Rise -= 2
				if less.Lay(g).Angle < hang.LowAngle {
					continue
				}
				less.Taut.Rise++
				find(t, notes(t, less, g), n.Code)
			}
		}
	})
	if tried < 20 {
		t.Errorf("only %d", tried)
	}
}

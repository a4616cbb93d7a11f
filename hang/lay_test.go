package hang_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// shown is a length in decimal inches of so many places.
func shown(l measure.Length, step measure.Length) string {
	return measure.Format{Style: measure.DecimalInch, Step: step}.Number(l, measure.Nearest)
}

// TestOneHook: 10 lb on one hook over a span of 20 (C): at 15 degrees the rise is
// 2.68 and the wire carries 19.3 lb; a rise of .36 makes it 14 times the weight.
// A cord of 50 cm between hangers 20 cm apart with 10 N on it carries 5.46 N,
// once and not for each half.
func TestOneHook(t *testing.T) {
	h, g := onWire(in("20"), lb("10"), 1, byAngle(15))
	l := h.Lay(g)
	if got := shown(l.Rise, in("0.01")); got != "2.68" || !within(inPounds(l.Tension.Nominal), 19.3, 0.05) {
		t.Errorf("at 15 degrees: rise %s, %.2f lb", got, inPounds(l.Tension.Nominal))
	}
	if l.Hook != (hang.Load{Nominal: lbf("10"), Heaviest: lbf("10")}) || l.Hanger != l.Tension || l.Spread != 0 {
		t.Errorf("at 15 degrees: hook %+v, hangers %+v", l.Hook, l.Hanger)
	}

	h, g = onWire(in("20"), lb("10"), 1, hang.Taut{By: hang.ByRise, Rise: in("0.36")})
	if got := inPounds(h.Lay(g).Tension.Nominal); !within(got, 140, 2) {
		t.Errorf("a rise of .36: %.2f lb", got)
	}

	h, g = onWire(in("20 cm"), newtons(10), 1, hang.Taut{By: hang.ByWire, Wire: in("50 cm")})
	l = h.Lay(g)
	if got := float64(l.Tension.Nominal) / 1000; !within(got, 5.46, 0.005) || l.Leg != in("25 cm") || l.Taut != in("50 cm") {
		t.Errorf("a cord of 50 cm: %.3f N, legs of %v", got, l.Leg)
	}
}

// TestThreeLoads: 7.5 lb on a wire at 30 degrees over two hooks: the wire and
// each hanger carry 7.5, each hook 3.88 (C).
func TestThreeLoads(t *testing.T) {
	h, g := onWire(in("20"), lb("7.5"), 2, byAngle(30))
	l := h.Lay(g)
	for what, row := range map[string]struct {
		got  measure.Force
		want float64
	}{"wire": {l.Tension.Heaviest, 7.5}, "hanger": {l.Hanger.Heaviest, 7.5}, "hook": {l.Hook.Heaviest, 3.88}} {
		if got := inPounds(row.got); !within(got, row.want, 0.005) {
			t.Errorf("%s: %.3f lb, want %.2f", what, got, row.want)
		}
	}
	if l.Spread != in("10") || l.Taut != 2*l.Leg+in("10") {
		t.Errorf("hooks %v apart on %v of wire", l.Spread, l.Taut)
	}
}

// TestRings: rings 2 1/8 and 1 7/8 below the top and 16 apart: the nails differ
// by a quarter, the higher one on the side of the higher ring (C).
func TestRings(t *testing.T) {
	h, g := worked()
	h.By, h.Below, h.BelowRight, h.Inset, h.NailAbove = hang.Rings, in("2 1/8"), in("1 7/8"), in("2"), 0
	l := h.Lay(g)
	if len(l.Marks) != 2 || l.Span != in("16") {
		t.Fatalf("%+v", l)
	}
	left, right := l.Marks[0], l.Marks[1]
	if right.Nail-left.Nail != in("1/4") || left.Across != -in("8") || right.Across != in("8") {
		t.Errorf("marks %+v", l.Marks)
	}
	// Back from the nails: hung there, the top is level at center + half the height.
	if top := h.Center + in("12"); left.Nail+in("2 1/8") != top || right.Nail+in("1 7/8") != top {
		t.Errorf("the top is not level at %v: %+v", top, l.Marks)
	}
	if l.Hook.Nominal != lbf("5") || l.Hanger != l.Hook || l.Tension != (hang.Load{}) || l.Wire != 0 {
		t.Errorf("each ring carries %+v", l.Hanger)
	}
}

// TestBearing: center 57, height 20, drop 2: the hook bears at 65, and the nail
// is higher by the hook (C; a gallery's rule, V).
func TestBearing(t *testing.T) {
	for _, row := range []struct {
		name   string
		change func(*hang.Hanging)
	}{
		{"rings 2 below", func(h *hang.Hanging) { h.By, h.Below = hang.Rings, in("2") }},
		{"a sawtooth 2 below", func(h *hang.Hanging) { h.By, h.Below = hang.Sawtooth, in("2") }},
		{"a sawtooth in the middle of a rail of 4", func(h *hang.Hanging) { h.By, h.Below = hang.Sawtooth, 0 }},
		{"a wire that rises 4 from 6", func(h *hang.Hanging) { h.Below, h.Taut = in("6"), hang.Taut{By: hang.ByRise, Rise: in("4")} }},
		{"a wire that rises 3 from a quarter down", func(h *hang.Hanging) {
			h.Below, h.Part, h.Taut = 0, 25*h.Part/30, hang.Taut{By: hang.ByRise, Rise: in("3")}
		}},
	} {
		h, g := worked()
		g.Outside.Height, g.Face, h.NailAbove = in("20"), in("4"), in("1 1/8")
		row.change(&h)
		for _, m := range h.Lay(g).Marks {
			if m.Bearing != in("65") || m.Nail != in("66 1/8") {
				t.Errorf("%s: bears at %v, nail at %v", row.name, m.Bearing, m.Nail)
			}
		}
		if n := len(h.Lay(g).Marks); n == 0 {
			t.Errorf("%s: no marks", row.name)
		}
	}
}

// TestHangersByPart: 30 % of 24 is 7.2 in, in the middle of a rail of 2.
func TestHangersByPart(t *testing.T) {
	h, g := worked()
	h.Below, h.Inset = 0, 0
	l := h.Lay(g)
	if l.Below != (hang.Pair{Left: in("7.2"), Right: in("7.2")}) || l.Span != in("18") {
		t.Errorf("hangers %+v, %v apart", l.Below, l.Span)
	}
}

// TestCentered: a wall of 120 and a frame of 30 leave 45 on each side (C).
func TestCentered(t *testing.T) {
	rows := []struct{ wall, width, left, right measure.Length }{
		{in("120"), in("30"), in("45"), in("45")},
		{in("120"), in("120"), 0, 0},
		{10, 5, 2, 3},
		{in("20"), in("30"), -in("5"), -in("5")},
	}
	for _, row := range rows {
		if left, right := hang.Centered(row.wall, row.width); left != row.left || right != row.right {
			t.Errorf("%v on %v: %v and %v, want %v and %v", row.width, row.wall, left, right, row.left, row.right)
		}
	}
}

// TestCannotHang: what cannot be laid out has no marks and no figures.
func TestCannotHang(t *testing.T) {
	for name, change := range map[string]func(*hang.Hanging){
		"hangers that meet":            func(h *hang.Hanging) { h.Inset = in("10") },
		"rings that meet":              func(h *hang.Hanging) { h.By, h.Inset = hang.Rings, in("10") },
		"hooks as far apart":           func(h *hang.Hanging) { h.Hooks, h.Spread = 2, in("18") },
		"a wire as long as the span":   func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByWire, Wire: in("18")} },
		"a wire shorter than the span": func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByWire, Wire: in("3")} },
	} {
		h, g := worked()
		if !h.Lay(g).Hangs() {
			t.Fatal("what should hang does not")
		}
		change(&h)
		l := h.Lay(g)
		if l.Hangs() || h.Figures(l) != nil || l.Tension != (hang.Load{}) || l.Hook != (hang.Load{}) {
			t.Errorf("%s: %+v", name, l)
		}
		if _, ok := h.Explain(g, "/below/left", places); ok {
			t.Errorf("%s: explains its hangers", name)
		}
	}
}

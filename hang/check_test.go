package hang_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

func TestUsual(t *testing.T) {
	for _, inches := range []bool{true, false} {
		h := hang.Usual(inches)
		if problems := check(h); problems != nil || h.IsZero() {
			t.Errorf("what is usual has problems: %v", problems)
		}
		if h.Ratings.WireBreaks != 0 || h.Ratings.HangerHolds != 0 || h.Ratings.HookHolds != 0 {
			t.Errorf("a rating that nobody gave: %+v", h.Ratings)
		}
	}
	// Center: 57 in (art handler, shipper of art), 145 to 150 cm (gallery); hidden:
	// 2 in (gallery's rule); a quarter of the breaking load (hardware supplier).
	h := hang.Usual(true)
	if h.Center != in("57") || h.Hidden != in("2") || h.Ratings.Factor != 4 || h.Taut.Angle != hang.LowAngle {
		t.Errorf("usual in inches: %+v", h)
	}
	if h := hang.Usual(false); h.Center != in("145 cm") || h.Hidden != in("50 mm") {
		t.Errorf("usual in millimeters: %+v", h)
	}
}

func TestZero(t *testing.T) {
	var h hang.Hanging
	if !h.IsZero() || h.Lay(hang.Given{}).Hangs() {
		t.Error("the zero hanging hangs")
	}
	_, g := worked()
	if l := h.Lay(g); l.Hangs() || h.Figures(l) != nil {
		t.Errorf("the zero hanging lays out %+v", l)
	}
	if _, ok := h.Explain(g, "/below/left", places); ok {
		t.Error("the zero hanging explains its hangers")
	}
}

// TestCheck: what is refused, where, and its neighbor that is not.
func TestCheck(t *testing.T) {
	const longer = explain.MaxLength + 1
	rows := []struct {
		name   string
		change func(*hang.Hanging)
		at     explain.Path // of the one problem; none where empty
		code   explain.Code
	}{
		{"as it is", func(*hang.Hanging) {}, "", ""},
		{"no way", func(h *hang.Hanging) { h.By = "" }, "/by", explain.NotAChoice},
		{"a cleat", func(h *hang.Hanging) { h.By = "cleat" }, "/by", explain.NotAChoice},
		{"the wrong case", func(h *hang.Hanging) { h.By = "Wire" }, "/by", explain.WrongCase},
		{"no hook", func(h *hang.Hanging) { h.Hooks = 0 }, "/hooks", explain.OutOfRange},
		{"three hooks", func(h *hang.Hanging) { h.Hooks = 3 }, "/hooks", explain.OutOfRange},
		{"hangers at the top", func(h *hang.Hanging) { h.Part = 0 }, "/part", explain.OutOfRange},
		{"hangers at the bottom", func(h *hang.Hanging) { h.Part = explain.Whole }, "/part", explain.OutOfRange},
		{"one in a hundred", func(h *hang.Hanging) { h.Part = explain.Percent }, "", ""},
		{"hangers above the top", func(h *hang.Hanging) { h.Below = -1 }, "/below", explain.OutOfRange},
		{"hangers far below", func(h *hang.Hanging) { h.Below = longer }, "/below", explain.OutOfRange},
		{"one ring above the top", func(h *hang.Hanging) { h.By, h.BelowRight = hang.Rings, -1 }, "/below_right", explain.OutOfRange},
		{"a wire at two heights", func(h *hang.Hanging) { h.BelowRight = 1 }, "", ""},
		{"a sawtooth at two heights", func(h *hang.Hanging) { h.By, h.BelowRight = hang.Sawtooth, 1 }, "", ""},
		{"rings at two heights", func(h *hang.Hanging) { h.By, h.BelowRight = hang.Rings, 1 }, "", ""},
		{"outside the frame", func(h *hang.Hanging) { h.Inset = -1 }, "/inset", explain.OutOfRange},
		{"not said how tight", func(h *hang.Hanging) { h.Taut.By = "" }, "/taut/by", explain.NotAChoice},
		{"flat", func(h *hang.Hanging) { h.Taut.Angle = hang.LeastAngle - 1 }, "/taut/angle", explain.OutOfRange},
		{"a degree", func(h *hang.Hanging) { h.Taut.Angle = hang.LeastAngle }, "", ""},
		{"no angle", func(h *hang.Hanging) { h.Taut.Angle = 0 }, "/taut/angle", explain.OutOfRange},
		{"no angle, by rise", func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByRise, Rise: 1} }, "", ""},
		{"no angle, on rings", func(h *hang.Hanging) { h.By, h.Taut.Angle = hang.Rings, 0 }, "", ""},
		{"too steep", func(h *hang.Hanging) { h.Taut.Angle = hang.MostAngle + 1 }, "/taut/angle", explain.OutOfRange},
		{"steep", func(h *hang.Hanging) { h.Taut.Angle = hang.MostAngle }, "", ""},
		{"no rise", func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByRise} }, "/taut/rise", explain.Missing},
		{"a fall", func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByRise, Rise: -1} }, "/taut/rise", explain.OutOfRange},
		{"no wire", func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByWire} }, "/taut/wire", explain.Missing},
		{"less than no wire, by angle", func(h *hang.Hanging) { h.Taut.Wire = -1 }, "/taut/wire", explain.OutOfRange},
		{"hooks crossed", func(h *hang.Hanging) { h.Spread = -1 }, "/spread", explain.OutOfRange},
		{"less than no tails", func(h *hang.Hanging) { h.Tails = -1 }, "/tails", explain.OutOfRange},
		{"a nail below", func(h *hang.Hanging) { h.NailAbove = -1 }, "/nail_above", explain.OutOfRange},
		{"less than hidden", func(h *hang.Hanging) { h.Hidden = -1 }, "/hidden", explain.OutOfRange},
		{"on the floor", func(h *hang.Hanging) { h.Center = 0 }, "/center", explain.OutOfRange},
		{"a tower", func(h *hang.Hanging) { h.Center = longer }, "/center", explain.OutOfRange},
		{"wire that pushes", func(h *hang.Hanging) { h.Ratings.WireBreaks = -1 }, "/ratings/wire_breaks", explain.OutOfRange},
		{"hangers that push", func(h *hang.Hanging) { h.Ratings.HangerHolds = -1 }, "/ratings/hanger_holds", explain.OutOfRange},
		{"hooks that push", func(h *hang.Hanging) { h.Ratings.HookHolds = -1 }, "/ratings/hook_holds", explain.OutOfRange},
		{"no factor", func(h *hang.Hanging) { h.Ratings.Factor = 0 }, "/ratings/factor", explain.OutOfRange},
		{"a factor too high", func(h *hang.Hanging) { h.Ratings.Factor = hang.MaxFactor + 1 }, "/ratings/factor", explain.OutOfRange},
	}
	for _, row := range rows {
		h := hang.Usual(true)
		row.change(&h)
		problems := check(h)
		switch {
		case row.at == "" && problems != nil:
			t.Errorf("%s: %v", row.name, problems)
		case row.at != "" && (len(problems) != 1 || problems[0].Path != row.at || problems[0].Code != row.code):
			t.Errorf("%s: %v, want %s at %s", row.name, problems, row.code, row.at)
		}
	}
}

// TestCheckAll: all that is wrong is said at once, below the path that is given.
func TestCheckAll(t *testing.T) {
	var c explain.Checker
	h := hang.Hanging{Hidden: -1, Tails: -measure.Inch}
	h.Check(&c, "/pieces/0/hang")
	problems := c.Problems()
	if len(problems) < 6 {
		t.Errorf("only %d problems: %v", len(problems), problems)
	}
	for _, p := range problems {
		if !p.Path.Under("/pieces/0/hang") {
			t.Errorf("a problem at %s", p.Path)
		}
	}
}

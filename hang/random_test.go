package hang_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// checkIdentities requires what is so for every layout, to the nanometer.
func checkIdentities(t *testing.T, h hang.Hanging, g hang.Given, l hang.Layout) {
	t.Helper()
	if !l.Hangs() {
		return
	}
	count := map[hang.Way]int{hang.Wire: h.Hooks, hang.Rings: 2, hang.Sawtooth: 1}[h.By]
	if len(l.Marks) != count {
		t.Fatalf("%d marks, want %d", len(l.Marks), count)
	}
	first, last := l.Marks[0], l.Marks[count-1]
	// The marks mirror, but for an odd nanometer that goes to the right.
	if odd := first.Across + last.Across; odd != 0 && odd != 1 || first.Across > 0 {
		t.Errorf("marks at %v and %v", first.Across, last.Across)
	}
	for _, m := range l.Marks {
		if m.Nail-m.Bearing != h.NailAbove {
			t.Errorf("a nail %v above its hook of %v", m.Nail-m.Bearing, h.NailAbove)
		}
	}
	// The frame's top, come to from each mark, is half the height above the center.
	top := func(m hang.Mark, drop measure.Length) {
		if odd := 2*(m.Bearing+drop-h.Center) - g.Outside.Height; odd != 0 && odd != -1 {
			t.Errorf("the top is at %v, the center at %v", m.Bearing+drop, h.Center)
		}
	}
	if h.By != hang.Wire {
		top(first, l.Below.Left)
		top(last, map[bool]measure.Length{true: l.Below.Right, false: l.Below.Left}[h.By == hang.Rings])
		if l.Rise != 0 || l.Wire != 0 || l.Tension != (hang.Load{}) || l.StableRise != 0 {
			t.Errorf("a wire without a wire: %+v", l)
		}
		return
	}
	top(first, l.Below.Left-l.Rise)
	top(last, l.Below.Left-l.Rise)
	if l.Below.Left != l.Below.Right {
		t.Errorf("a wire at two heights: %+v", l.Below)
	}
	if d := l.Taut - 2*l.Leg - l.Spread; d != 0 && d != 1 {
		t.Errorf("a path of %v from legs of %v and %v between", l.Taut, l.Leg, l.Spread)
	}
	if l.Wire-l.Taut != 2*h.Tails || l.Wire < l.Span {
		t.Errorf("a wire of %v over %v", l.Wire, l.Taut)
	}
	if l.Rise <= 0 || l.Leg <= 0 || l.Angle < 0 || l.Angle > measure.RightAngle {
		t.Errorf("rise %v, leg %v, angle %v", l.Rise, l.Leg, l.Angle)
	}
	if l.Tension.Nominal > l.Tension.Heaviest || l.Hanger != l.Tension {
		t.Errorf("loads %+v, %+v", l.Tension, l.Hanger)
	}
	// The wire carries at least half of the weight, and more than it pulls.
	if 2*l.Tension.Heaviest+1 < measure.Weight(g.Heaviest) || l.Pull.Heaviest > l.Tension.Heaviest {
		t.Errorf("tension %v, pull %v of %v", l.Tension, l.Pull, measure.Weight(g.Heaviest))
	}
}

func TestIdentities(t *testing.T) {
	hung := make(map[hang.Way]int)
	eachRandom(t, 8000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		l := h.Lay(g)
		if l.Hangs() {
			hung[h.By]++
		}
		checkIdentities(t, h, g, l)
	})
	for _, way := range hang.Wire.Choices() {
		if hung[hang.Way(way)] < 200 {
			t.Errorf("only %d by %s", hung[hang.Way(way)], way)
		}
	}
}

// TestPerturbation: a hair more rise, or a hair more wire, and the wire carries
// less; a heavier piece, and it carries more.
func TestPerturbation(t *testing.T) {
	tried := 0
	eachRandom(t, 4000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		g.Mass, g.Heaviest = g.Mass+measure.Kilogram, g.Heaviest+measure.Kilogram
		before := h.Lay(g)
		if h.By != hang.Wire || !before.Hangs() || before.Angle > 60*measure.Degree {
			return
		}
		tried++
		more := h
		more.Taut.Angle += measure.Degree / 100
		more.Taut.Rise += in("1/64")
		more.Taut.Wire += in("1/64")
		after := more.Lay(g)
		if after.Rise <= before.Rise || after.Angle <= before.Angle {
			t.Errorf("a hair more: rise %v to %v", before.Rise, after.Rise)
		}
		if after.Tension.Heaviest >= before.Tension.Heaviest && before.Tension.Heaviest > measure.Weight(g.Heaviest)*6/10 {
			t.Errorf("a hair more: tension %v to %v", before.Tension, after.Tension)
		}
		if after.WireTop >= before.WireTop {
			t.Errorf("a hair more: %v to %v below the top", before.WireTop, after.WireTop)
		}
		heavy := g
		heavy.Heaviest += measure.Kilogram / 100
		if l := h.Lay(heavy); l.Tension.Heaviest <= before.Tension.Heaviest || l.Tension.Nominal != before.Tension.Nominal || l.Hook.Heaviest <= before.Hook.Heaviest {
			t.Errorf("heavier: %+v to %+v", before.Tension, l.Tension)
		}
	})
	if tried < 500 {
		t.Errorf("only %d wires", tried)
	}
}

// TestMoves: what one nanometer more does to the marks.
func TestMoves(t *testing.T) {
	eachRandom(t, 2000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		before := h.Lay(g)
		if !before.Hangs() {
			return
		}
		moved := func(what string, h hang.Hanging, bearing, nail measure.Length) {
			for i, m := range h.Lay(g).Marks {
				if was := before.Marks[i]; m.Bearing-was.Bearing != bearing || m.Nail-was.Nail != nail || m.Across != was.Across {
					t.Errorf("%s: mark %+v, was %+v", what, m, was)
				}
			}
		}
		higher := h
		higher.Center++
		moved("center", higher, 1, 1)
		hook := h
		hook.NailAbove++
		moved("a higher hook", hook, 0, 1)
		if lower := h; h.Below != 0 && h.BelowRight == 0 {
			lower.Below++
			moved("hangers farther down", lower, -1, -1)
		}
	})
}

// TestWorkings: the formula of each figure works out to the figure, and there
// are no others.
func TestWorkings(t *testing.T) {
	eachRandom(t, 4000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		checkWorkings(t, h, g)
	})
}

func checkWorkings(t *testing.T, h hang.Hanging, g hang.Given) {
	t.Helper()
	l := h.Lay(g)
	want, listed := figures(h, l), h.Figures(l)
	if len(listed) != len(want) {
		t.Errorf("%d figures listed, %d in the layout", len(listed), len(want))
	}
	for _, path := range listed {
		value, ok := want[path]
		if !ok {
			t.Errorf("%s is no figure", path)
		}
		w, ok := h.Explain(g, path, places)
		if !ok {
			t.Errorf("%s is not explained", path)
			continue
		}
		if got, err := w.Formula.Evaluate(); err != nil || got != value || w.Exact != value {
			t.Errorf("%s: the working says %v and works out to %v %v, want %v", path, w.Exact, got, err, value)
		}
		if w.Path != places.Worked+path || w.Key == "" || w.Source.Title == "" || w.Source.Status == "" {
			t.Errorf("%s: working of %q, key %q, source %v", path, w.Path, w.Key, w.Source)
		}
		for _, term := range w.Formula.Terms() {
			checkTerm(t, path, term, want)
		}
	}
}

// checkTerm looks up the value of a term that is itself a figure.
func checkTerm(t *testing.T, of explain.Path, term explain.Term, figures map[explain.Path]explain.Value) {
	t.Helper()
	if at, ok := term.Path.After(places.Worked); ok {
		if value, ok := figures[at]; !ok || value != term.Value {
			t.Errorf("%s: %v stands at %s, and not %v", of, value, at, term.Value)
		}
	}
}

package hang_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// A frame of 22 x 28 that weighs ten pounds, on a wire over two hooks that
// measure 7/8 in from where they bear to the nail.
func ExampleHanging_Lay() {
	const in = measure.Inch
	h := hang.Usual(true)
	h.NailAbove = 7 * in / 8
	mass, _ := measure.ParseMass("10 lb", measure.NoUnit)
	l := h.Lay(hang.Given{
		Outside: measure.Size{Width: 22 * in, Height: 28 * in}, Face: 3 * in / 2,
		Mass: mass, Heaviest: mass, MassKnown: true,
	})

	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	show := func(l measure.Length) string { return f.Number(l, measure.Nearest) }
	load := func(l hang.Load) string {
		_, text := measure.ShowForce(l.Heaviest, true)
		return text
	}
	fmt.Println("hangers", show(l.Below.Left), "below the top,", show(l.Span), "apart")
	fmt.Println("wire", show(l.Wire), "long, its top", show(l.WireTop), "below the frame's")
	fmt.Println("in the wire", load(l.Tension), "and on each hook", load(l.Hook))
	for _, m := range l.Marks {
		fmt.Println("nail", show(m.Across), "from the middle,", show(m.Nail), "above the floor")
	}
	// Output:
	// hangers 8 3/8 below the top, 20 1/2 apart
	// wire 34 1/16 long, its top 5 7/16 below the frame's
	// in the wire 10.0 lb and on each hook 5.2 lb
	// nail -5 1/8 from the middle, 66 7/16 above the floor
	// nail 5 1/8 from the middle, 66 7/16 above the floor
}

// Ten pounds on one hook, with a rise of 2 3/4 over a span of 20: the wire
// carries nearly twice the weight.
func ExampleHanging_Explain() {
	const in = measure.Inch
	h := hang.Usual(true)
	h.Hooks, h.Below, h.Taut = 1, 8*in, hang.Taut{By: hang.ByRise, Rise: 11 * in / 4}
	mass, _ := measure.ParseMass("10 lb", measure.NoUnit)
	g := hang.Given{Outside: measure.Size{Width: 22 * in, Height: 28 * in}, Face: 2 * in, Mass: mass, Heaviest: mass, MassKnown: true}
	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	for _, figure := range []explain.Path{"/span", "/wire_top", "/stable_rise", "/marks/0/bearing", "/tension/nominal"} {
		w, _ := h.Explain(g, figure, hang.Places{})
		fmt.Println(w.Text(f))
	}
	// Output:
	// span 20 = outside 22 - 2 x half of (face 2)
	// wire below the top 5 1/4 = hangers below the top 8 - rise 2 3/4
	// rise that keeps level 423.333333 mm = span 20 x span 20 / (2 x (outside 28 - 2 x hangers below the top 8))
	// hook bears at 65 3/4 = center line 57 + half of (outside 28) - wire below the top 5 1/4
	// load in the wire 83.879 N = the weight of (weight 4535.924 g) x sloping wire 263.42935 mm / (2 x rise 2 3/4)
}

// The same piece: what to know about it, but for what has to be looked up.
func ExampleHanging_Notes() {
	const in = measure.Inch
	h := hang.Usual(true)
	h.Hooks, h.Below, h.NailAbove, h.Taut = 1, 8*in, 7*in/8, hang.Taut{By: hang.ByRise, Rise: 11 * in / 4}
	rating, _ := measure.ParseForce("20 lb", measure.NoUnit) // the wire breaks at 40
	h.Ratings.WireBreaks, h.Ratings.HangerHolds, h.Ratings.HookHolds = 2*rating, rating, rating
	mass, _ := measure.ParseMass("10 lb", measure.NoUnit)
	g := hang.Given{Outside: measure.Size{Width: 22 * in, Height: 28 * in}, Face: 2 * in, Mass: mass, Heaviest: mass, MassKnown: true}
	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	for _, n := range h.Notes(g, h.Lay(g), hang.Places{Hang: "/hang"}) {
		if n.Level != explain.Caution {
			fmt.Println(n.Level, n.Text(f))
			for _, c := range n.Changes {
				fmt.Println("-", c.Text(f))
			}
		}
	}
	// Output:
	// warning The wire carries 18.9 lb and, at 4 times its load, has to break at no less than 75.5 lb; this one breaks at 40.0 lb: it will not hold. Take a stronger one, or hang the piece on two rings, or on a cleat laid out by hand.
	// - breaking load of the wire at least 75.5 lb
	// - rise of the wire at least 5 13/16 in
	// - hanging by two rings
	// advice The wire stands at 15.3 deg, less than 30 degrees: it carries 189 % of the weight, 18.9 lb, and so does each hanger.
	// - rise of the wire at least 5 13/16 in
	// - hanging by two rings
	// advice On one smooth hook the piece keeps level by itself only where the wire rises more than about 16.667 in, and it rises 2 3/4 in: only friction holds it level. Two hooks would.
	// - wall hooks 2
	// - hanging by two rings
}

// A frame of 30 in the middle of a wall of 120.
func ExampleCentered() {
	left, right := hang.Centered(120*measure.Inch, 30*measure.Inch)
	f := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	fmt.Println(f.Number(left, measure.Nearest), f.Number(right, measure.Nearest))
	// Output: 45 45
}

package molding_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// The rails around a mat of 16 1/2 x 20 7/8, in a molding 1 1/4 wide with a lip
// of 1/4.
func ExampleFrame_Around() {
	const in = measure.Inch
	f := molding.Frame{Kind: molding.Rabbeted, Face: in + in/4, Lip: in / 4, Allowance: in / 8}
	r := f.Around(measure.Size{Width: 16*in + in/2, Height: 20*in + 7*in/8})

	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	show := func(name string, s measure.Size) {
		fmt.Println(name, fraction.Number(s.Width, measure.Nearest), "x", fraction.Number(s.Height, measure.Nearest))
	}
	show("opening", r.Opening)
	show("sight", r.Sight)
	show("long points", r.Outside)
	fmt.Println("molding", fraction.Text(r.Footage, measure.Up))
	// Output:
	// opening 16 5/8 x 21
	// sight 16 1/8 x 20 1/2
	// long points 18 5/8 x 23
	// molding 83 1/4 in
}

// A pane of 15 1/2 x 19 1/2 in an opening of 16 1/8 x 20 1/8: it goes in and
// falls out.
func ExampleFrame_FitOf() {
	const in = measure.Inch
	f := molding.Frame{Face: 2 * in, Lip: in / 4, Allowance: in / 8}
	fit := f.FitOf(
		measure.Size{Width: 16*in + in/8, Height: 20*in + in/8},
		measure.Size{Width: 15*in + in/2, Height: 19*in + in/2})
	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	fmt.Println("play", fraction.Text(fit.Play.Width, measure.Nearest), "bite", fraction.Text(fit.Bite.Width, measure.Nearest))
	// Output: play 5/8 in bite -3/8 in
}

// A corner that measures 93 degrees takes 43.5 on the saw's scale.
func ExampleMiter() {
	saw, edge := molding.Miter(93 * measure.Degree)
	fmt.Println(saw, edge)
	// Output: 43.5 deg 46.5 deg
}

// A canvas of 16 x 20 in a floater with a face of 1/2 and a gap of 1/4 all
// round; at its smallest it is 1/8 less high.
func ExampleFloatOf() {
	const in = measure.Inch
	f := molding.Frame{Kind: molding.Floater, Face: in / 2, Gap: in / 4}
	canvas := measure.Size{Width: 16 * in, Height: 20 * in}
	r := f.Around(canvas)
	smallest := measure.Size{Width: canvas.Width, Height: canvas.Height - in/8}
	float := molding.FloatOf(r.Opening, canvas, smallest)

	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	fmt.Println("opening", fraction.Number(r.Opening.Width, measure.Nearest), "x", fraction.Number(r.Opening.Height, measure.Nearest))
	fmt.Println("long points", fraction.Number(r.Outside.Width, measure.Nearest), "x", fraction.Number(r.Outside.Height, measure.Nearest))
	fmt.Println("gap", fraction.Number(float.Least.Height, measure.Nearest), "to", fraction.Text(float.Most.Height, measure.Nearest))
	// Output:
	// opening 16 1/2 x 20 1/2
	// long points 17 1/2 x 21 1/2
	// gap 1/4 to 5/16 in
}

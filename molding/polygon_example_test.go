package molding_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// A mirror of eight sides, 18 in across flats, in a molding 2 1/2 wide with a lip of
// 3/8 and an allowance of 1/8.
func ExampleFrame_AroundRegular() {
	const in = measure.Inch
	f := molding.Frame{Kind: molding.Rabbeted, Face: 2*in + in/2, Lip: 3 * in / 8, Allowance: in / 8}
	r := f.AroundRegular(molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: 18 * in})
	fraction := measure.Format{Style: measure.Fraction, Step: in / 32}
	fmt.Println("long point", fraction.Text(r.LongPoint, measure.Up))
	fmt.Println("outside", fraction.Text(r.Outside, measure.Nearest), "across flats")
	fmt.Println("saw", r.Saw, "from square,", r.Edge, "to the edge")
	// Output:
	// long point 9 9/32 in
	// outside 22 3/8 in across flats
	// saw 22.5 deg from square, 67.5 deg to the edge
}

// A triangle of 16, 16 and 22 in: its sides decide its corners, and they are not 45,
// 45 and 90.
func ExamplePolygonFrame_Around() {
	const in = measure.Inch
	panel, err := plane.Measured([]measure.Length{16 * in, 16 * in, 22 * in}, nil, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	f := molding.PolygonFrame{Sections: []molding.Section{{Face: in + in/2, Lip: in / 4}}, Allowance: in / 8}
	p, err := f.Around(panel)
	if err != nil {
		fmt.Println(err)
		return
	}
	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	tenth := func(a measure.Angle) measure.Angle {
		a, _ = measure.RoundTo(a, measure.Degree/10, measure.Nearest)
		return a
	}
	for _, r := range p.Rails {
		fmt.Println(fraction.Text(r.Outer, measure.Up), "saw", tenth(r.Start.Saw), "and", tenth(r.Finish.Saw))
	}
	// Output:
	// 20 7/16 in saw 66.7 deg and 46.6 deg
	// 20 7/16 in saw 46.6 deg and 66.7 deg
	// 28 1/8 in saw 66.7 deg and 66.7 deg
}

// A rail 3 in wide under sides of 2 in: the two cuts of a corner differ, and the 2 in
// rail's is past what most saws reach.
func ExampleMiterBetween() {
	bottom, side := molding.MiterBetween(measure.RightAngle, 3*measure.Inch, 2*measure.Inch)
	hundredth := func(a measure.Angle) measure.Angle {
		a, _ = measure.RoundTo(a, measure.Degree/100, measure.Nearest)
		return a
	}
	fmt.Println("bottom: saw", hundredth(bottom.Saw), "edge", hundredth(bottom.Edge))
	fmt.Println("side: saw", hundredth(side.Saw), "edge", hundredth(side.Edge))
	// Output:
	// bottom: saw 33.69 deg edge 56.31 deg
	// side: saw 56.31 deg edge 33.69 deg
}

// A sheet that is 1/8 in narrower at its top, and out of square: the largest window
// that shows none of its edges.
func ExampleCleanWithin() {
	const in = measure.Inch
	art, err := molding.OutOfSquare{
		Bottom: 16 * in, Right: 20*in + in/8, Top: 15*in + 7*in/8, Left: 20 * in, Rising: 25*in + 3*in/4,
	}.Outline(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	clean, err := molding.CleanWithin(art)
	if err != nil {
		fmt.Println(err)
		return
	}
	fraction := measure.Format{Style: measure.Fraction, Step: in / 32}
	show := func(what string, s measure.Size) {
		fmt.Println(what, fraction.Number(s.Width, measure.Down), "x", fraction.Text(s.Height, measure.Down))
	}
	show("upright", clean.Upright.Size)
	show("turned", clean.Turned.Size)
	// Output:
	// upright 15 25/32 x 19 31/32 in
	// turned 15 27/32 x 19 15/16 in
}

// The smallest octagon frame that shows all of an 8 x 10 in picture.
func ExampleFrame_RegularShowing() {
	const in = measure.Inch
	f := molding.Frame{Kind: molding.Rabbeted, Face: 2 * in, Lip: in / 4, Allowance: in / 8}
	shows, err := f.RegularShowing(8, measure.Size{Width: 8 * in, Height: 10 * in})
	if err != nil {
		fmt.Println(err)
		return
	}
	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	for _, s := range shows {
		fmt.Println("on its", s.Stand, "panel", fraction.Text(s.Panel, measure.Up), "across flats")
	}
	// Output:
	// on its side panel 13 1/8 in across flats
	// on its point panel 12 11/16 in across flats
}

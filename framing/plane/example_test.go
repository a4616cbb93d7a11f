package plane_test

import (
	"errors"
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A mirror with eight sides, 18 in across flats: its side, and the side of the same
// outline moved out by 2 in.
func Example() {
	const in = measure.Inch
	panel, err := plane.Regular(8, plane.Flats, 18*in)
	if err != nil {
		fmt.Println(err)
		return
	}
	outside, err := panel.Offset(2 * in)
	if err != nil {
		fmt.Println(err)
		return
	}
	fraction := measure.Format{Style: measure.Fraction, Step: in / 32}
	fmt.Println("side", fraction.Text(panel.Side(0).Length, measure.Nearest), "corner", panel.Interior(0))
	fmt.Println("moved out", fraction.Text(outside.Side(0).Length, measure.Nearest))
	fmt.Println("turns", outside.Turning())
	// Output:
	// side 7 15/32 in corner 135 deg
	// moved out 9 1/8 in
	// turns 360 deg
}

// Three sides say everything; some three say that they were misread.
func ExampleMeasured() {
	const in = measure.Inch
	p, err := plane.Measured([]measure.Length{16 * in, 16 * in, 22 * in}, nil, 0)
	fmt.Println(p.Interior(1), err)

	_, err = plane.Measured([]measure.Length{16 * in, 16 * in, 34 * in}, nil, 0)
	fmt.Println(err)
	// Output:
	// 86.865073116 deg <nil>
	// three sides make no triangle: one is as long as the two others, or longer (3 and 1): 863.6 mm; accepted: at most 812.799999 mm
}

// A five-point star from its sides and turns.
func ExampleClosed() {
	var sides []plane.Side
	for range 5 {
		sides = append(sides,
			plane.Side{Length: 6 * measure.Inch, Turn: -72 * measure.Degree},
			plane.Side{Length: 6 * measure.Inch, Turn: 144 * measure.Degree})
	}
	p, err := plane.Closed(sides, plane.Tolerance)
	fmt.Println(p.Len(), p.Interior(0), p.Interior(1), p.Turning(), err)
	// Output: 10 36 deg 252 deg 360 deg <nil>
}

// An offset that would lose a side is refused, and says how far it would go.
func ExamplePolygon_Offset() {
	square, _ := plane.Box(measure.Size{Width: 4 * measure.Inch, Height: 4 * measure.Inch})
	_, err := square.Offset(-3 * measure.Inch)
	var e *plane.Error
	if errors.As(err, &e) {
		fmt.Println(e.Code, "at most", e.Limit)
	}
	// Output: plane.lost_side at most 50.799999 mm
}

// The smallest octagon whose sight edge shows a picture of 8 x 10 in.
func ExampleRegularAround() {
	const in = measure.Inch
	ways, _ := plane.RegularAround(8, measure.Size{Width: 8 * in, Height: 10 * in})
	fraction := measure.Format{Style: measure.Fraction, Step: in / 16}
	for _, way := range ways {
		fmt.Println("on its", way.Stand, fraction.Text(way.Flats, measure.Up))
	}
	// Output:
	// on its side 12 3/4 in
	// on its point 12 5/16 in
}

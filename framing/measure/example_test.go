package measure_test

import (
	"encoding/json"
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// A rail from the opening it must make: the opening and, at each end, the face
// less the lip.
func Example() {
	opening, err := measure.Parse(`16 5/8`, measure.Inches)
	if err != nil {
		fmt.Println(err)
		return
	}
	face := measure.Inch + measure.Inch/4
	lip := measure.Inch / 4
	rail := opening + 2*(face-lip)

	inches := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	metric := measure.Format{Style: measure.Metric, Step: measure.Millimeter}
	fmt.Println(inches.Text(rail, measure.Up))
	fmt.Println(metric.Text(rail, measure.Up))
	fmt.Println(rail)
	// Output:
	// 18 5/8 in
	// 474 mm
	// 473.075 mm
}

func ExampleParse() {
	for _, text := range []string{`20 13/16`, `1' 8 13/16"`, `4 1/2 + 9`, `528.64 mm`, `1,250`, `2013/16`} {
		length, err := measure.Parse(text, measure.Inches)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(text, "=", length)
	}
	// Output:
	// 20 13/16 = 528.6375 mm
	// 1' 8 13/16" = 528.6375 mm
	// 4 1/2 + 9 = 342.9 mm
	// 528.64 mm = 528.64 mm
	// measure: "1,250" at byte 1: a comma before exactly three digits may be a decimal mark or a thousands mark; accepted: 1250, or 1.250
	// measure: "2013/16" at byte 0: a space may be missing before the fraction; accepted: 20 13/16, or 125 13/16
}

func ExampleRead() {
	third, _ := measure.Read("1/3 in", measure.NoUnit)
	fmt.Println(third.Length, "rounded:", third.Rounded)
	sum, _ := measure.Read("1/3 in + 1/3 in + 1/3 in", measure.NoUnit)
	fmt.Println(sum.Length, "rounded:", sum.Rounded)
	// Output:
	// 8.466667 mm rounded: true
	// 25.4 mm rounded: false
}

func ExampleParseAngle() {
	miter, _ := measure.ParseAngle("22° 30′", measure.NoUnit)
	fmt.Println(miter)
	// Output: 22.5 deg
}

func ExampleParseMass() {
	mass, _ := measure.ParseMass("3 lb 4 oz", measure.NoUnit)
	fmt.Println(mass)
	// Output: 1474.175 g
}

// A pane must not come out large, a rail must not come out short.
func ExampleFormat() {
	l := 20*measure.Inch + 53*measure.Inch/64
	for _, f := range []measure.Format{
		{},
		{Style: measure.Fraction, Step: measure.Inch / 16},
		{Style: measure.FeetInches, Step: measure.Inch / 16},
		{Style: measure.DecimalInch, Step: measure.Inch / 100},
		{Style: measure.Metric, Step: measure.Millimeter / 2},
	} {
		fmt.Printf("%s to %s\n", f.Text(l, measure.Down), f.Text(l, measure.Up))
	}
	// Output:
	// 529.034375 mm to 529.034375 mm
	// 20 13/16 in to 20 7/8 in
	// 1' 8 13/16" to 1' 8 7/8"
	// 20.82 in to 20.83 in
	// 529 mm to 529.5 mm
}

func ExampleFormat_Append() {
	f := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	text, left := f.Append(nil, 5*measure.Millimeter, measure.Down)
	fmt.Printf("%s in and %v\n", text, left)
	// Output: 3/16 in and 0.2375 mm
}

func ExampleFormat_Spoken() {
	f := measure.Format{Style: measure.FeetInches, Step: measure.Inch / 16}
	fmt.Println(f.Spoken(20*measure.Inch+13*measure.Inch/16, measure.Nearest))
	// Output: 1 foot 8 and 13 sixteenths inches
}

func ExampleFormat_Finer() {
	for f, ok := (measure.Format{Style: measure.Fraction, Step: measure.Inch / 8}), true; ok; f, ok = f.Finer() {
		fmt.Println(f.Text(9*measure.Inch+measure.Inch/5, measure.Nearest))
	}
	// Output:
	// 9 1/4 in
	// 9 3/16 in
	// 9 3/16 in
	// 9 13/64 in
}

// Three equal openings in a 20 inch bar leave a nanometer and a bit over: the
// remainder says so.
func ExampleLength_Split() {
	part, rest := (20 * measure.Inch).Split(3)
	fmt.Println(part, rest)
	fmt.Println(3*part+rest == 20*measure.Inch)
	// Output:
	// 169.333333 mm 0.000001 mm
	// true
}

func ExampleLength_MarshalText() {
	text, _ := json.Marshal(measure.Size{Width: 16 * measure.Inch, Height: 20 * measure.Inch})
	fmt.Println(string(text))
	// Output: {"width":"406.4 mm","height":"508 mm"}
}

// A 4-ply board of 1.4 mm, beveled at 45 and at 60 degrees.
func ExampleLength_OverTan() {
	board := 14 * measure.Millimeter / 10
	fmt.Println(board.OverTan(45 * measure.Degree))
	fmt.Println(board.OverTan(60 * measure.Degree))
	// Output:
	// 1.4 mm
	// 0.80829 mm
}

// Eyes 16 in apart, a wire that rises 2 in to its hook: how steep it is, and how
// hard it pulls at a frame of 10 lb.
func ExampleSlope() {
	angle := measure.Slope(2*measure.Inch, 8*measure.Inch)
	half, _ := measure.ParseForce("5 lb", measure.NoUnit)
	_, tension := measure.ShowForce(half.OverSin(angle), true)
	fmt.Println(angle, tension)
	fmt.Println(2 * measure.Hypot(2*measure.Inch, 8*measure.Inch))
	// Output:
	// 14.036243468 deg 20.7 lb
	// 418.907532 mm
}

func ExampleShowMass() {
	_, pounds := measure.ShowMass(1_032_256*measure.Milligram, true)
	_, kilograms := measure.ShowMass(1_032_256*measure.Milligram, false)
	fmt.Println(pounds, kilograms)
	// Output: 2.3 lb 1.05 kg
}

func ExampleParseDensity() {
	glass, _ := measure.ParseDensity("156 lb/cu ft", measure.NoUnit)
	fmt.Println(glass)
	// Output: 2498.88 kg/m3
}

package explain_test

import (
	"errors"
	"fmt"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A note is data first: a level, a code, values, and the change that would
// mend it. Its English comes last, in the units of whoever reads it.
func Example() {
	rabbet := explain.Path("/order/pieces").Index(0).Child("frame").Child("rabbet")
	note := explain.Note{
		Level: explain.Warning, Code: "depth.proud", Path: "/pieces/0/depth/clear",
		Values: []explain.Term{
			explain.NewTerm("package", measure.Inch, "/pieces/0/depth/package"),
			explain.NewTerm("rabbet", 3*measure.Inch/8, rabbet),
			explain.NewTerm("proud", 5*measure.Inch/8, ""),
			explain.NewTerm("strip", 3*measure.Inch/4, ""),
			explain.NewTerm("wanted", measure.Inch+measure.Inch/8, "/pieces/0/depth/wanted"),
		},
		Changes: []explain.Change{{
			Path: rabbet, To: explain.Of(measure.Inch + measure.Inch/8), Bound: explain.AtLeast,
		}},
	}
	f := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	fmt.Println(note.Text(f))
	fmt.Println(note.Changes[0].Text(f))
	// Output:
	// The package is 1 in and the rabbet 3/8 in: it stands 5/8 in proud. Build the back of the frame up by 3/4 in, hold the package with offset clips, the next size that is no less than 5/8 in, or take a rabbet of 1 1/8 in. Rings, wire and bumpers have to clear it.
	// rabbet depth at least 1 1/8 in
}

func ExampleWorking() {
	opening, face, lip := 20*measure.Inch+measure.Inch/8, measure.Inch+measure.Inch/2, measure.Inch/4
	w := explain.Working{
		Key: "long_point", Exact: explain.Of(22*measure.Inch + 5*measure.Inch/8),
		Formula: explain.Sum(
			explain.T("opening", opening, "/pieces/0/frame/opening/width"),
			explain.Times(explain.N(2), explain.Minus(
				explain.T("face", face, "/order/pieces/0/frame/face"),
				explain.T("lip", lip, "/order/pieces/0/frame/lip"),
			)),
		),
	}
	again, err := w.Formula.Evaluate()
	fmt.Println(again == w.Exact, err)
	fmt.Println(w.Text(measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}))
	fmt.Println(w.Text(measure.Format{Style: measure.Metric, Step: measure.Millimeter}))
	// Output:
	// true <nil>
	// long point 22 5/8 = opening 20 1/8 + 2 x (face 1 1/2 - lip 1/4)
	// long point 574.675 = opening 511.175 + 2 x (face 38.1 - lip 6.35)
}

func ExampleProblems() {
	var c explain.Checker
	c.Choice("/units", "furlongs", []string{"in", "mm", "cm"})
	c.NotNegative("/pieces/0/frame/lip", -measure.Inch/4)
	c.Text("/job", "hall mirror\n")
	err := c.Problems().Err()

	var first explain.Problem
	if errors.As(err, &first) {
		fmt.Println(first.Path, first.Code)
	}
	fmt.Println(err)
	// Output:
	// /job text_control
	// /job: the name holds a control character: given "hall mirror\n" at character 12
	// /pieces/0/frame/lip: this is outside what makes sense here: given "-6.35 mm"; accepted: 0 mm to 50000 mm
	// /units: this is none of the choices: given "furlongs"; accepted: in, mm, cm
}

func ExamplePath() {
	p := explain.Path("/order/pieces").Index(2).Child("frame").Child("lip")
	fmt.Println(p, p.Last(), p.Parent(), p.Under("/order"))
	fmt.Println(explain.Path("").Child("a/b").Child("m~n"))
	// Output:
	// /order/pieces/2/frame/lip lip /order/pieces/2/frame true
	// /a~1b/m~0n
}

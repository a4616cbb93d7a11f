package framing_test

import (
	"errors"
	"fmt"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A whole job: a linocut, matted and glazed, from its order to the numbers at
// the bench, and what to know before cutting.
func Example() {
	order, err := framing.Read([]byte(`{
		"version": 2,
		"units": "in",
		"pieces": [{
			"name": "Linocut, two pears",
			"art": {"width": "11 3/8", "height": "15 1/4", "thickness": "0.012"},
			"mat": {"borders": {"left": "2 1/2", "right": "2 1/2", "top": "2 1/2", "bottom": "3"}},
			"glazing": {"material": "glass"},
			"mount": {"material": "board"},
			"backing": {"material": "foam_board", "thickness": "3/16"},
			"frame": {"molding": "ash, square", "face": "1 1/4", "lip": "1/4", "rabbet": "3/8", "height": "3/4", "wood": "ash_white"}
		}]
	}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	plan, err := framing.Work(order)
	if err != nil {
		fmt.Println(err)
		return
	}
	piece := plan.Pieces[0]
	fmt.Println(piece.Name)
	fmt.Println("top and bottom rail ", piece.Frame.Horizontal.LongPoint.Text())
	fmt.Println("two side rails      ", piece.Frame.Vertical.LongPoint.Text())
	fmt.Println("weight              ", piece.Mass.Total.Text())
	fmt.Println("saw                 ", piece.Frame.Horizontal.Saw.Text())
	fmt.Println("mat board           ", piece.Mat.Blank.Text())
	fmt.Println("window              ", piece.Mat.Window.Text())
	fmt.Println("borders as cut      ", piece.Mat.Cut.Left.Text(), "bottom", piece.Mat.Cut.Bottom.Text())
	for _, layer := range piece.Layers {
		fmt.Printf("%-20s %s\n", layer.Part, layer.Size.Text())
	}
	for _, n := range piece.Notes {
		fmt.Println("mind:", n.Code)
	}
	// Output:
	// Linocut, two pears
	// top and bottom rail  18 5/8
	// two side rails       23
	// weight               5.3 lb
	// saw                  45
	// mat board            16 1/2 x 20 7/8
	// window               11 1/8 x 15
	// borders as cut       2 11/16 bottom 3 3/16
	// glazing              16 1/2 x 20 7/8
	// mat                  16 1/2 x 20 7/8
	// mount                16 1/2 x 20 7/8
	// backing              16 1/2 x 20 7/8
	// mind: depth.proud
	// mind: caution.saw
	// mind: caution.mat_blade
	// mind: caution.glass_edges
	// mind: mass.uncertain
}

// All that is wrong with an order comes at once, each with its place.
func ExampleRead() {
	_, err := framing.Read([]byte(`{
		"version": 1,
		"units": "in",
		"pieces": [{
			"art": {"kind": "Paper", "width": "1,250", "height": 10},
			"frame": {"face": "1 1/4", "lip": "1/4", "colour": "black"}
		}]
	}`))
	var problems explain.Problems
	if errors.As(err, &problems) {
		for _, p := range problems {
			fmt.Println(p.Path, p.Code)
		}
	}
	// Output:
	// /pieces/0/art/height wrong_type
	// /pieces/0/art/kind wrong_case
	// /pieces/0/art/width measure.comma
	// /pieces/0/frame/colour unknown_field
}

// An order can be built in Go as well. Lengths are integers: the fineness
// decides only how they are shown.
func ExampleWork() {
	shop := framing.DefaultShop(framing.Inches)
	mirror := framing.NewPiece(shop)
	mirror.Art = framing.Art{
		Kind: framing.Mirror, Width: 22 * measure.Inch, Height: 34*measure.Inch + measure.Inch/2, Thickness: measure.Inch / 4,
	}
	mirror.Frame.Face, mirror.Frame.Lip, mirror.Frame.Rabbet = 2*measure.Inch, 3*measure.Inch/8, measure.Inch/2
	plan, err := framing.Work(framing.Order{
		Version: framing.OrderVersion, Units: framing.Inches, Show: framing.DefaultShow(framing.Inches),
		Shop: shop, Pieces: []framing.Piece{mirror},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	frame := plan.Pieces[0].Frame
	fmt.Println("rails", frame.Outside.Text())
	fmt.Println("opening", frame.Opening.Text())
	fmt.Println("shows", frame.Sight.Text())
	fmt.Println("exactly", frame.Outside.Width.Exact, "x", frame.Outside.Height.Exact)
	// Output:
	// rails 25 3/8 x 37 7/8
	// opening 22 1/8 x 34 5/8
	// shows 21 3/8 x 33 7/8
	// exactly 644.525 mm x 962.025 mm
}

// Every number of a plan says how it came to be.
func ExamplePlan_Explain() {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		fmt.Println(err)
		return
	}
	format, _ := plan.Order.Show.Format()
	for _, path := range []explain.Path{
		"/pieces/0/frame/horizontal/long_point",
		"/pieces/0/frame/opening/width",
		"/pieces/0/mat/cut/bottom",
		"/pieces/0/mat/window/height",
	} {
		working, ok := plan.Explain(path)
		fmt.Println(ok, working.Text(format))
	}
	_, ok := plan.Explain("/pieces/0/frame/color")
	fmt.Println(ok)
	// Output:
	// true long point 16 1/4 = opening 14 1/2 + 2 x (face 1 1/8 - lip 1/4)
	// true opening 14 1/2 = package 14 3/8 + allowance 1/8
	// true border as cut 2 15/16 = bottom border as seen 2 3/4 + cover at the bottom 3/16
	// true window 13 1/4 = art 13 1/2 - 2 x each side 1/8
	// false
}

// The sample is an order to start from.
func ExampleSample() {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		fmt.Println(err)
		return
	}
	piece := plan.Pieces[0]
	fmt.Println(piece.Name)
	fmt.Println("rails", piece.Frame.Outside.Text())
	fmt.Println("blank", piece.Mat.Blank.Text())
	// Output:
	// Tide table, letterpress
	// rails 16 1/4 x 20 1/2
	// blank 14 3/8 x 18 5/8
}

// Figures lists what can be explained.
func ExamplePlan_Figures() {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		fmt.Println(err)
		return
	}
	figures := plan.Figures(0)
	fmt.Println(len(figures), "figures, from", figures[0])
	// Output:
	// 117 figures, from /pieces/0/mat/window/width
}

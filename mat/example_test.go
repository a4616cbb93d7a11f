package mat_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// A print of 11 3/8 x 15 1/4 under a mat that covers it by 1/8 each side, with
// borders of 2 1/2 and 3 at the bottom, in a frame with a lip of 1/4.
func ExampleMat_Lay() {
	const in = measure.Inch
	m := mat.Mat{
		Thickness: 55 * in / 1000,
		Bevel:     45 * measure.Degree,
		Window:    mat.Window{By: mat.ByOverlap, EachSide: in / 8},
		Borders: mat.Borders{
			By:     mat.ByVisible,
			To:     mat.ToTop,
			Sides:  measure.Sides{Left: 5 * in / 2, Right: 5 * in / 2, Top: 5 * in / 2, Bottom: 3 * in},
			Weight: mat.Unweighted,
		},
	}
	art := measure.Size{Width: 11*in + 3*in/8, Height: 15*in + in/4}
	l := m.Lay(mat.Given{Least: art, Greatest: art, Lip: measure.AllSides(in / 4), Allowance: in / 8})

	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	show := func(name string, a, b measure.Length) {
		fmt.Println(name, f.Number(a, measure.Nearest), "x", f.Number(b, measure.Nearest))
	}
	show("window", l.Window.Width, l.Window.Height)
	show("blank", l.Blank.Width, l.Blank.Height)
	fmt.Println("cut", f.Number(l.Cut.Left, measure.Nearest), "and at the bottom", f.Number(l.Cut.Bottom, measure.Nearest))
	fmt.Println("seated, the top shows", f.Number(l.Seated.Top, measure.Nearest), "and the bottom", f.Number(l.Seated.Bottom, measure.Nearest))
	// Output:
	// window 11 1/8 x 15
	// blank 16 1/2 x 20 7/8
	// cut 2 11/16 and at the bottom 3 3/16
	// seated, the top shows 2 9/16 and the bottom 2 15/16
}

// A window of 11 1/8 x 15 in a board of 16 x 20, a little above the middle.
func ExampleOpticalTop() {
	const in = measure.Inch
	board := measure.Size{Width: 16 * in, Height: 20 * in}
	window := measure.Size{Width: 11*in + in/8, Height: 15 * in}
	top := mat.OpticalTop(board, window)
	f := measure.Format{Style: measure.DecimalInch, Step: in / 1000}
	fmt.Println(f.Text(top, measure.Nearest), "above,", f.Text(board.Height-window.Height-top, measure.Nearest), "below")
	// Output: 2.119 in above, 2.881 in below
}

// The layout is drawn on the back, where left is right.
func ExampleFromBack() {
	const in = measure.Inch
	fmt.Println(mat.FromBack(40*in, 5*in, 4*in) == 31*in)
	// Output: true
}

// A double mat: a board of .055 under the top one, 1/4 of it from line to line,
// trimmed by 1/8 each side. The borders are cut 2 3/4 and 3 1/4 wide.
func ExampleMat_Lay_double() {
	const in = measure.Inch
	m := mat.Mat{
		Thickness: 55 * in / 1000, Bevel: 45 * measure.Degree,
		Window: mat.Window{By: mat.ByOverlap, EachSide: in / 8},
		Borders: mat.Borders{
			By: mat.ByCut, To: mat.ToTop, Weight: mat.Unweighted,
			Sides: measure.Sides{Left: 11 * in / 4, Right: 11 * in / 4, Top: 11 * in / 4, Bottom: 13 * in / 4},
		},
		Under: mat.UnderMats{{
			Thickness: 55 * in / 1000, Bevel: 45 * measure.Degree, By: mat.ByLine, Reveal: in / 4, Trim: in / 8,
		}},
	}
	art := measure.Size{Width: 11*in + 3*in/8, Height: 15*in + in/4}
	l := m.Lay(mat.Given{Least: art, Greatest: art, Lip: measure.AllSides(in / 4), Allowance: in / 8})

	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	show := func(name string, window, blank measure.Size, border measure.Length) {
		fmt.Println(name, "window", f.Number(window.Width, measure.Nearest), "x", f.Number(window.Height, measure.Nearest),
			"in", f.Number(blank.Width, measure.Nearest), "x", f.Number(blank.Height, measure.Nearest),
			"border", f.Number(border, measure.Nearest))
	}
	under := l.Under[0]
	show("top:", l.Window, l.Blank, l.Cut.Left)
	show("under:", under.Window, under.Blank, under.Own.Left)
	thousandths := measure.Format{Style: measure.DecimalInch, Step: in / 1000}
	fmt.Println("of its 1/4,", thousandths.Text(under.Seen, measure.Nearest), "is color and",
		thousandths.Text(under.Bevel.Run, measure.Nearest), "bevel")
	// Output:
	// top: window 11 5/8 x 15 1/2 in 17 1/8 x 21 1/2 border 2 3/4
	// under: window 11 1/8 x 15 in 16 7/8 x 21 1/4 border 2 7/8
	// of its 1/4, 0.195 in is color and 0.055 in bevel
}

package framing_test

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// A mat of 16 x 20 for a picture of 11 x 17: an overlap is each side, and the
// half of it gives other borders.
func overlapEachSide(r *recorder) {
	for _, c := range []struct{ each, sides, ends, window string }{
		{"1/4", "2 3/4", "1 3/4", "10 1/2"},
		{"1/8", "2 5/8", "1 5/8", "10 3/4"}, // 1/4 in total
	} {
		p := r.piece("in", tape, `{"art": {"width": "11", "height": "17"}, `+strip+`, "mat": {
			"window": {"by": "overlap", "each_side": "`+c.each+`"},
			"borders": {"by": "board", "board": {"width": "16", "height": "20"}}}}`)
		r.is("window", p.Mat.Window.Width.Shown, c.window)
		r.is("left", p.Mat.Cut.Left.Shown, c.sides)
		r.is("right", p.Mat.Cut.Right.Shown, c.sides)
		r.is("top", p.Mat.Cut.Top.Shown, c.ends)
		r.is("bottom", p.Mat.Cut.Bottom.Shown, c.ends)
		r.size("covered each side", p.Mat.Covered.Shown(), c.each, c.each)
		r.untold(p, mat.FallsThrough, mat.ThinOverlap)
	}
}

// A window of 8 x 9 11/16 in a board of 16 x 20: the border of 5 5/32 is no
// sixteenth. Shown to one, the two borders still add up and the window keeps
// its size.
func bordersKeepTheSum(r *recorder) {
	piece := `{"art": {"width": "8 1/4", "height": "10"}, ` + strip + `, "mat": {
		"window": {"by": "size", "width": "8", "height": "9 11/16"},
		"borders": {"by": "board", "board": {"width": "16", "height": "20"}}}}`
	p := r.piece("in", tape, piece)
	r.is("top, exactly", p.Mat.Cut.Top.Exact, "5 5/32")
	r.is("bottom, exactly", p.Mat.Cut.Bottom.Exact, "5 5/32")
	r.is("left", p.Mat.Cut.Left.Shown, "4")
	r.is("right", p.Mat.Cut.Right.Shown, "4")
	r.size("window", p.Mat.Window.Shown(), "8", "9 11/16")
	r.is("top", p.Mat.Cut.Top.Shown, "5 1/8")
	r.is("bottom", p.Mat.Cut.Bottom.Shown, "5 3/16")
	r.is("sum", p.Mat.Cut.Top.Shown+p.Mat.Window.Height.Shown+p.Mat.Cut.Bottom.Shown, "20")
	fine := r.piece("in", rule, piece)
	r.is("top on a rule", fine.Mat.Cut.Top.Shown, "5 5/32")
	r.is("bottom on a rule", fine.Mat.Cut.Bottom.Shown, "5 5/32")
}

// A window of 4 that lies 5 from the left in a board of 40 lies 31 from the
// left on the back.
func backIsMirrored(r *recorder) {
	r.is("on the back", mat.FromBack(in(r, "40"), in(r, "5"), in(r, "4")), "31")
	p := r.piece("in", tape, `{"art": {"width": "4 1/4", "height": "4 1/4"}, `+strip+`, "mat": {
		"window": {"by": "size", "width": "4", "height": "4"},
		"borders": {"by": "cut", "left": "5", "right": "31", "top": "3", "bottom": "4"}}}`)
	r.size("blank", p.Mat.Blank.Shown(), "40", "11")
	r.is("back, from the left", p.Mat.Back.Left.Shown, "31")
	r.is("back, from the top", p.Mat.Back.Top.Shown, "3")
	r.isNot("back, from the left", p.Mat.Back.Left.Shown, "5")
}

// Borders of 50/65, 65/75 and 75/90 mm were all called 20 percent more: they
// are 30, 15.4 and 20.
func bottomWeight(r *recorder) {
	for _, c := range []struct{ top, bottom, ppm int64 }{{50, 65, 300_000}, {65, 75, 153_846}, {75, 90, 200_000}} {
		top, bottom := measure.Length(c.top)*mm, measure.Length(c.bottom)*mm
		r.number("extra", int64(mat.BottomExtra(top, bottom)), c.ppm)
		side := strconv.FormatInt(c.top, 10)
		p := r.piece("mm", tenth, `{"art": {"width": "200", "height": "250"}, `+strip+`, "mat": {"borders": {
			"left": "`+side+`", "right": "`+side+`", "top": "`+side+`", "weight": "ratio", "ratio": "`+explain.Ratio(c.ppm).String()+`"}}}`)
		r.number("top, mm", int64(p.Mat.Visible.Top.Shown/mm), c.top)
		shown, _ := p.Mat.Visible.Bottom.Exact.Round(mm/10, measure.Nearest)
		r.number("bottom, nm", int64(shown), int64(bottom))
		if twenty := top * 6 / 5; c.ppm != 200_000 && p.Mat.Visible.Bottom.Exact == twenty {
			r.Errorf("bottom border %v is 20 percent more", twenty)
		}
	}
}

// A window as large as the print does not hold it.
func windowAsLargeAsArt(r *recorder) {
	p := r.piece("in", tape, `{"art": {"width": "4", "height": "6.5"}, `+strip+`, "mat": {
		"window": {"by": "size", "width": "4", "height": "6.5"}}}`)
	r.size("covered", p.Mat.Covered.Exact(), "0", "0")
	n := r.told(p, explain.Warning, mat.FallsThrough)
	if len(n.Changes) != 1 || n.Changes[0].Bound != explain.AtMost {
		r.Fatalf("changes: %+v", n.Changes)
	}
	r.is("the window to cut", measure.Length(n.Changes[0].To.N), "3 3/4")
}

// A window of 414 x 291 mm for an A3 sheet in a board of 20 x 16 in.
func metricWindowInInchBoard(r *recorder) {
	piece := `{"art": {"width": "420 mm", "height": "297 mm"}, ` + strip + `, "mat": {
		"window": {"by": "size", "width": "414 mm", "height": "291 mm"},
		"borders": {"by": "board", "board": {"width": "20", "height": "16"}}}}`
	p := r.piece("in", tenth, piece)
	r.size("covered", p.Mat.Covered.Shown(), "3 mm", "3 mm")
	r.is("left", p.Mat.Cut.Left.Shown, "47 mm")
	r.is("right", p.Mat.Cut.Right.Shown, "47 mm")
	r.is("top", p.Mat.Cut.Top.Shown, "57.7 mm")
	r.is("bottom", p.Mat.Cut.Bottom.Shown, "57.7 mm")
	r.text("left", p.Mat.Cut.Left.Text(), "47")
	// To whole millimeters the board lies between two marks: the window is set
	// off from the top, as near to the middle as a mark is.
	coarse := r.piece("in", `{"as": "metric", "fineness": "1 mm"}`, piece)
	r.is("top, whole millimeters", coarse.Mat.Cut.Top.Shown, "58 mm")
	r.is("bottom, what is left", coarse.Mat.Cut.Bottom.Shown, "57.4 mm")
	r.untold(p, mat.FallsThrough, mat.OffBoard)
}

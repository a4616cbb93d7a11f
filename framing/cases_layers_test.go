package framing_test

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// version2 works an order of one piece with the fields of the second version.
func (r *recorder) version2(units, show, text string) framing.PiecePlan {
	r.Helper()
	return worked(r, `{"version": 2, "units": "`+units+`", "show": `+show+`, "pieces": [`+text+`]}`).Pieces[0]
}

// A lower mat trimmed by 1/8 each side: its border of 2 7/8 from its own edge is
// 3 from the top mat's. A ticket has to say from which edge.
func lowerMatFromWhichEdge(r *recorder) {
	p := r.version2("in", tape, `{"art": {"width": "11", "height": "14"}, `+strip+`, "mat": {
		"borders": {"by": "cut", "left": "2 3/4", "right": "2 3/4", "top": "2 3/4", "bottom": "2 3/4"},
		"under": [{"reveal": "1/4", "trim": "1/8"}]}}`)
	u := p.Mat.Under[0]
	for i, own := range []measure.Length{u.Own.Left.Shown, u.Own.Right.Shown, u.Own.Top.Shown, u.Own.Bottom.Shown} {
		r.is("border from its own edge", own, "2 7/8")
		r.is("border from the top mat's edge", []measure.Length{u.FromTop.Left.Shown, u.FromTop.Right.Shown, u.FromTop.Top.Shown, u.FromTop.Bottom.Shown}[i], "3")
	}
	r.size("lower blank", u.Blank.Shown(), "16 1/2", "19 1/2")
	r.is("reveal", (p.Mat.Window.Width.Shown-u.Window.Width.Shown)/2, "1/4")
	r.untold(p, mat.NoStrip, mat.ShortUnder)
}

// A reveal of 1/4 from line to line shows less than that, by the run of the lower
// board's bevel; one of 1/4 as it is seen is cut that much wider.
func revealAndBevel(r *recorder) {
	for _, c := range []struct{ thickness, by, line, seen string }{
		{".055", "line", "1/4", ".195"}, {".110", "line", "1/4", ".140"},
		{".055", "seen", ".305", "1/4"}, {".110", "seen", ".360", "1/4"},
	} {
		p := r.version2("in", tape, `{"art": {"width": "11", "height": "14"}, `+strip+`, "mat": {
			"thickness": ".055", "under": [{"thickness": "`+c.thickness+`", "by": "`+c.by+`", "reveal": "1/4"}]}}`)
		u := p.Mat.Under[0]
		r.is("line to line", u.Reveal.Exact, c.line)
		r.is("strip seen", u.Seen.Exact, c.seen)
		r.is("run of the bevel", u.Bevel.Run.Exact, c.thickness)
		r.is("upper window", (p.Mat.Window.Width.Exact-u.Window.Width.Exact)/2, c.line)
	}
}

// Spacer strips of 2 in behind a border of 2 in: the edge shows in the window.
func stripAsWideAsBorder(r *recorder) {
	box := func(width string) framing.PiecePlan {
		return r.version2("in", tape, `{"art": {"width": "7 1/4", "height": "10 1/4", "kind": "panel", "thickness": "1/4"}, `+strip+`,
			"mat": {"borders": {"by": "cut", "left": "2", "right": "2", "top": "2", "bottom": "2"}},
			"glazing": {}, "spacer": {"under": "mat", "width": "`+width+`", "depth": "1"}}`)
	}
	p := box("2")
	r.size("blank", p.Mat.Blank.Shown(), "11", "14")
	n := r.told(p, explain.Warning, glazing.SpacerShows)
	r.number("remedies", int64(len(n.Changes)), 1)
	narrower := box("1 15/16")
	r.untold(narrower, glazing.SpacerShows, glazing.SpacerMay)
}

// Stretching is sold by the united inch: bars of 30 x 40 are 70.
func unitedInchesOfBars(r *recorder) {
	p := r.version2("in", tape, `{"art": {"kind": "canvas", "width": "30", "height": "40", "thickness": "1 1/2", "stretch": {}},
		"frame": {"kind": "floater", "face": "1/2", "lip": "0"}}`)
	r.is("united inches", p.Canvas.United.Shown, "70")
	cents := int64(p.Canvas.United.Exact) * 125 / int64(measure.Inch)
	r.number("at 1.25 each, in cents", cents, 8750)
}

// A rabbet of 3/8 takes a canvas of 3/4 and mats of 1/4 only to a part.
func canvasStandsProud(r *recorder) {
	piece := func(backing string) framing.PiecePlan {
		return r.version2("in", tape, `{"art": {"kind": "canvas", "width": "16", "height": "20", "thickness": "3/4"},
			"mat": {"thickness": "1/8", "under": [{"thickness": "1/8"}]}, `+backing+`
			"frame": {"face": "2", "lip": "1/4", "rabbet": "3/8"}}`)
	}
	for _, c := range []struct{ backing, proud, strip, rabbet string }{
		{"", "5/8", "3/4", "1 1/8"},
		{`"backing": {"material": "hardboard", "thickness": "1/8"},`, "3/4", "7/8", "1 1/4"},
	} {
		p := piece(c.backing)
		r.is("clear", -p.Depth.Clear.Shown, c.proud)
		n := r.told(p, explain.Warning, molding.Proud)
		r.is("clip", measure.Length(valueOf(r, n, "proud").N), c.proud)
		r.is("build-up", measure.Length(valueOf(r, n, "strip").N), c.strip)
		r.is("deeper rabbet", measure.Length(n.Changes[0].To.N), c.rabbet)
	}
}

// A spacer of 3/16 behind a lip of 1/4: with a play of 1/8 all on one side its
// edge is 5/16 in, and 1/16 of it shows; with 1/16 of play it just does not.
func spacerAndPlay(r *recorder) {
	piece := func(allowance string) framing.PiecePlan {
		return r.version2("in", tape, `{"art": {"width": "11", "height": "14"}, "glazing": {}, "backing": {},
			"spacer": {"width": "3/16", "depth": "1/8"},
			"frame": {"face": "1", "lip": "1/4", "rabbet": "3/4", "allowance": "`+allowance+`"}}`)
	}
	n := r.told(piece("1/8"), explain.Warning, glazing.SpacerMay)
	r.is("shows", measure.Length(valueOf(r, n, "shows").N), "1/16")
	r.is("narrower", measure.Length(n.Changes[0].To.N), "1/8")
	r.untold(piece("1/16"), glazing.SpacerMay, glazing.SpacerShows, framing.TouchesGlazing)
	r.told(piece("1/16 + 1/64"), explain.Warning, glazing.SpacerMay)
}

// A canvas of 16 x 20 on bars 1 1/2 deep, with 1 1/2 to staple and pull; and bars
// of 19 x 30, 5/8 thick, with 1 in round the back: 22 x 33 would be short.
func canvasToCut(r *recorder) {
	p := r.version2("in", tape, `{"art": {"kind": "canvas", "width": "16", "height": "20", "thickness": "1 1/2", "stretch": {"turn": "1 1/2"}},
		"frame": {"kind": "floater", "face": "1/2", "lip": "0"}}`)
	r.size("canvas", p.Canvas.Cut.Shown(), "22", "26")
	r.size("bars", p.Canvas.Bars.Shown(), "16", "20")
	r.is("turned with 4 in all", (p.Canvas.Bars.Width.Exact+4*measure.Inch-p.Canvas.Bars.Width.Exact-2*(3*measure.Inch/2))/2, "1/2")
}

func canvasRoundTheBack(r *recorder) {
	coarse := `{"as": "fraction", "fineness": "1/8 in"}`
	p := r.version2("in", coarse, `{"art": {"kind": "canvas", "width": "19", "height": "30", "thickness": "5/8", "stretch": {"turn": "1"}},
		"frame": {"kind": "floater", "face": "1/2", "lip": "0"}}`)
	r.size("canvas", p.Canvas.Cut.Shown(), "22 1/4", "33 1/4")
	odd := r.version2("in", coarse, `{"art": {"kind": "canvas", "width": "19", "height": "30", "thickness": "21/32", "stretch": {"turn": "1"}},
		"frame": {"kind": "floater", "face": "1/2", "lip": "0"}}`)
	r.size("exactly", odd.Canvas.Cut.Exact(), "22 5/16", "33 5/16")
	r.size("rounded up", odd.Canvas.Cut.Shown(), "22 3/8", "33 3/8")
}

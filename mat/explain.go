package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Sources of the formulas.
var (
	windowSource  = explain.Geometry("the mat covers, or stands clear of, both edges of the art")
	coverSource   = explain.Geometry("a mat in the middle of its play")
	seatedSource  = explain.Geometry("a mat that rests on the lower lip")
	revealSource  = explain.Geometry("a reveal shows on each side of the window below")
	bevelSource   = explain.Geometry("the slope of the cut through the board")
	trimSource    = explain.CommonPractice("a lower board is trimmed on each side")
	borderSource  = explain.Geometry("border as cut = border as seen + cover")
	boardSource   = explain.Geometry("window and borders make the board")
	givenSource   = explain.AsGiven()
	weightSource  = explain.CommonPractice("a bottom border wider than the top one")
	opticalSource = explain.Source{
		Title:  "optical center by straightedge, rec.photo.darkroom",
		Place:  "as kept, with the formula, at russellcottrell.com/photo/centering.htm",
		Status: explain.Verified,
	}
)

// Explain returns how the figure at path figure of the layout came to be:
// "/window/width", "/cut/left", "/back/top" and so on, as the fields of
// [Layout] are named in a plan. Nothing is shown yet: that is for the one who
// rounds.
func (m Mat) Explain(g Given, figure explain.Path, at Places) (explain.Working, bool) {
	e := explainer{m, g, m.Lay(g), at}
	segments := figure.Segments()
	if len(segments) < 2 {
		return explain.Working{}, false
	}
	var w explain.Working
	var ok bool
	switch {
	case segments[0] == "bevel":
		top := cutBoard{m.Thickness, m.Bevel, e.l.Bevel, e.l.Window, at.Mat, at.Worked}
		w, ok = top.explain(segments[1:])
	case segments[0] == "under":
		w, ok = e.underFigure(segments[1:])
	case len(segments) == 2:
		w, ok = e.figure(segments[0], segments[1])
	}
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

// explainer holds what the formulas speak of.
type explainer struct {
	Mat
	g  Given
	l  Layout
	at Places
}

func (e *explainer) figure(group, name string) (explain.Working, bool) {
	horizontal := name == "width" || name == "left" || name == "right"
	switch group {
	case "window", "covered", "blank":
		if name != "width" && name != "height" {
			return explain.Working{}, false
		}
	case "cover", "cut", "visible", "seated":
		if name != "left" && name != "right" && name != "top" && name != "bottom" {
			return explain.Working{}, false
		}
	case "back":
		if name != "left" && name != "top" {
			return explain.Working{}, false
		}
	}
	a := e.axis(horizontal)
	switch group {
	case "window":
		return e.window(a)
	case "covered":
		return working("covered", a.covered, windowSource,
			explain.Half(explain.Minus(a.artLeast(), e.lowestTerm(a))))
	case "blank":
		return e.blank(a)
	case "cover":
		return e.cover(a, name == a.firstName)
	case "cut":
		return e.cut(a, name == a.firstName)
	case "visible":
		return e.visible(a, name == a.firstName)
	case "seated":
		return e.seated(a, name == a.firstName)
	case "back":
		if horizontal {
			return working("back.left", e.l.Back.Left, explain.Geometry("the back is the front mirrored"), a.side("cut", false))
		}
		return working("back.top", e.l.Back.Top, explain.Geometry("the back is the front mirrored"), a.side("cut", true))
	}
	return explain.Working{}, false
}

// working is a working of which the value is known.
func working(key explain.Key, l measure.Length, source explain.Source, formula explain.Expr) (explain.Working, bool) {
	return explain.Working{Key: key, Exact: explain.Of(l), Formula: formula, Source: source}, true
}

// window is the window of the top board: that of the board below and a reveal
// each side, or the one that lies on the art.
func (e *explainer) window(a axis) (explain.Working, bool) {
	if e.Under.IsZero() {
		return e.onArt(a)
	}
	return e.aboveReveal(a, 0, a.window)
}

// aboveReveal is the window above the i-th board under the top one.
func (e *explainer) aboveReveal(a axis, i int, window measure.Length) (explain.Working, bool) {
	b, at := e.l.Under[i], (e.at.Worked + "/under").Index(i)
	below := explain.T("under.window", b.Window.Along(a.name), at+explain.Path("/window/"+a.name))
	return working("window", window, revealSource, explain.Sum(below,
		explain.Times(explain.N(2), explain.T("reveal", b.Reveal, at+"/reveal"))))
}

// onArt is the window that lies on the art.
func (e *explainer) onArt(a axis) (explain.Working, bool) {
	at := e.at.Mat + "/window"
	each := explain.Times(explain.N(2), explain.T("each_side", e.Window.EachSide, at+"/each_side"))
	switch e.Window.By {
	case BySize:
		return working("window", a.lowest, givenSource, explain.T("given", a.givenWindow, at+explain.Path("/"+a.name)))
	case ByGap:
		return working("window", a.lowest, windowSource, explain.Sum(a.artGreatest(), each))
	}
	return working("window", a.lowest, windowSource, explain.Minus(a.artLeast(), each))
}

func (e *explainer) blank(a axis) (explain.Working, bool) {
	return working("blank", a.blank, boardSource,
		explain.Sum(a.side("cut", true), a.windowTerm(), a.side("cut", false)))
}

// cover is half of what both lips hide; the second side takes the odd
// nanometer.
func (e *explainer) cover(a axis, first bool) (explain.Working, bool) {
	both := explain.Minus(explain.Sum(a.lip(true), a.lip(false)), a.allowance())
	if first {
		return working("cover", a.cover[0], coverSource, explain.Half(both))
	}
	return working("cover", a.cover[1], coverSource, explain.Minus(both, a.side("cover", true)))
}

func (e *explainer) cut(a axis, first bool) (explain.Working, bool) {
	i := index(first)
	switch e.Borders.By {
	case ByBoard:
		return e.inBoard(a, first)
	case ByCut:
		return e.given("cut", a, first, a.cut[i])
	}
	return working("cut", a.cut[i], borderSource, explain.Sum(a.side("visible", first), a.side("cover", first)))
}

func (e *explainer) visible(a axis, first bool) (explain.Working, bool) {
	i := index(first)
	if e.Borders.By != ByVisible {
		return working("visible", a.visible[i], borderSource, explain.Minus(a.side("cut", first), a.side("cover", first)))
	}
	return e.given("visible", a, first, a.visible[i])
}

// given is a border that the order gives, or the bottom one by its weight. One
// that is given to the lowest window is without the reveals on the top board.
func (e *explainer) given(group explain.Path, a axis, first bool, l measure.Length) (explain.Working, bool) {
	at := e.at.Mat + "/borders"
	key := explain.Key(group)
	within := e.reveals()
	less := func(x explain.Expr) explain.Expr {
		if len(within) == 0 {
			return x
		}
		return explain.Minus(x, within...)
	}
	if a.name == "width" || first || e.Borders.Weight == Unweighted {
		given := side(e.Borders.Sides, a.name, first)
		return working(key, l, givenSource, less(explain.T("given", given, at+explain.Path("/"+a.sideName(first)))))
	}
	top := a.side(group, true)
	if len(within) > 0 {
		return e.weightedToLowest(key, l, a, less)
	}
	switch e.Borders.Weight {
	case Extra:
		return working(key, l, weightSource, explain.Sum(top, explain.T("extra", e.Borders.Extra, at+"/extra")))
	case Ratio:
		return working(key, l, weightSource, explain.Sum(top,
			explain.Times(top, explain.T("ratio", e.Borders.Ratio, at+"/ratio"))))
	}
	// Of the optical center as a straightedge finds it.
	across := e.axis(true)
	left, window, right := across.side(group, true), across.windowTerm(), across.side(group, false)
	board := explain.Sum(left, window, right)
	return working(key, l, opticalSource, explain.Quot(top,
		explain.Minus(explain.Times(explain.N(3), board), window), explain.Sum(board, window)))
}

// inBoard is a border of a window in a given board.
func (e *explainer) inBoard(a axis, first bool) (explain.Working, bool) {
	i := index(first)
	left := explain.Minus(a.board(), a.windowTerm())
	if !first {
		return working("cut", a.cut[i], explain.Geometry("what the window and the other border leave of the board"),
			explain.Minus(left, a.side("cut", true)))
	}
	weight := e.Borders.weightInBoard(e.l.Window, e.l.Cover.Sum())
	if a.name == "width" || weight == Unweighted {
		return working("cut", a.cut[i], explain.Geometry("the window in the middle of the board"), explain.Half(left))
	}
	at := e.at.Mat + "/borders"
	seen := explain.Minus(left, a.side("cover", true), a.side("cover", false))
	source, formula := weightSource, explain.Expr{}
	switch weight {
	case Extra:
		formula = explain.Half(explain.Minus(seen, explain.T("extra", e.Borders.Extra, at+"/extra")))
	case Ratio:
		both := explain.Sum(explain.Const(2*explain.Whole), explain.T("ratio", e.Borders.Ratio, at+"/ratio"))
		formula = explain.Quot(seen, explain.Const(explain.Whole), both)
	default:
		across := e.axis(true)
		board := explain.Minus(across.board(), across.side("cover", true), across.side("cover", false))
		source = opticalSource
		formula = explain.Quot(seen, explain.Sum(board, across.windowTerm()), explain.Times(explain.N(4), board))
	}
	return working("cut", a.cut[i], source, explain.Sum(formula, a.side("cover", true)))
}

func (e *explainer) seated(a axis, first bool) (explain.Working, bool) {
	i := index(first)
	switch {
	case a.name == "width":
		return working("seated", a.seated[i], coverSource, a.side("visible", first))
	case first:
		return working("seated", a.seated[i], seatedSource,
			explain.Minus(a.side("cut", true), explain.Minus(a.lip(true), a.allowance())))
	}
	return working("seated", a.seated[i], seatedSource, explain.Minus(a.side("cut", false), a.lip(false)))
}

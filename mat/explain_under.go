package mat

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// lowest is the window that lies on the art.
func (e *explainer) lowest() measure.Size { return e.l.Lowest(e.Under.Count()) }

// reveals are the terms of what the reveals take of a border that is given to
// the lowest window.
func (e *explainer) reveals() []explain.Expr {
	if e.Borders.To != ToLowest {
		return nil
	}
	var terms []explain.Expr
	for i := range e.Under.Count() {
		terms = append(terms, explain.T("reveal", e.l.Under[i].Reveal, (e.at.Worked+"/under").Index(i)+"/reveal"))
	}
	return terms
}

// weightedToLowest is a bottom border that is weighted as it is measured to the
// lowest window, and then left without the reveals.
func (e *explainer) weightedToLowest(key explain.Key, l measure.Length, a axis, less func(explain.Expr) explain.Expr) (explain.Working, bool) {
	at := e.at.Mat + "/borders"
	top := explain.T("top", e.Borders.Top, at+"/top")
	switch e.Borders.Weight {
	case Extra:
		return working(key, l, weightSource, less(explain.Sum(top, explain.T("extra", e.Borders.Extra, at+"/extra"))))
	case Ratio:
		return working(key, l, weightSource, less(explain.Sum(top,
			explain.Times(top, explain.T("ratio", e.Borders.Ratio, at+"/ratio")))))
	}
	across := e.axis(true)
	window := e.lowestTerm(across)
	board := explain.Sum(explain.T("given", e.Borders.Left, at+"/left"), window, explain.T("given", e.Borders.Right, at+"/right"))
	return working(key, l, opticalSource, less(explain.Quot(top,
		explain.Minus(explain.Times(explain.N(3), board), window), explain.Sum(board, window))))
}

// underFigure explains a figure of a board under the top one; segments begin
// with its number.
func (e *explainer) underFigure(segments []string) (explain.Working, bool) {
	i, err := strconv.Atoi(segments[0])
	if err != nil || i < 0 || i >= e.Under.Count() || strconv.Itoa(i) != segments[0] || len(segments) < 2 {
		return explain.Working{}, false
	}
	u, b := e.Under[i], e.l.Under[i]
	given, worked := (e.at.Mat + "/under").Index(i), (e.at.Worked + "/under").Index(i)
	run := explain.T("run", b.Bevel.Run, worked+"/bevel/run")
	if len(segments) == 2 {
		switch segments[1] {
		case "reveal":
			if u.By == BySeen {
				formula := explain.Sum(explain.T("given", u.Reveal, given+"/reveal"), run)
				if over := e.l.OverhangTerms(i, e.at.Worked); len(over) > 0 {
					formula = explain.Minus(formula, over...)
				}
				return working("reveal", b.Reveal, revealSource, formula)
			}
			return working("reveal", b.Reveal, givenSource, explain.T("given", u.Reveal, given+"/reveal"))
		case "seen":
			strip := explain.T("reveal", b.Reveal, worked+"/reveal")
			if over := e.l.OverhangTerms(i, e.at.Worked); len(over) > 0 {
				strip = explain.Sum(append([]explain.Expr{strip}, over...)...)
			}
			return working("seen", b.Seen, revealSource, explain.Minus(strip, run))
		}
		return explain.Working{}, false
	}
	group, name := segments[1], segments[2]
	if group == "bevel" {
		return cutBoard{u.Thickness, u.Bevel, b.Bevel, b.Window, given, worked}.explain(segments[2:])
	}
	if len(segments) != 3 {
		return explain.Working{}, false
	}
	horizontal := name == "width" || name == "left" || name == "right"
	a := e.axis(horizontal)
	isSize, isSide := name == a.name, name == a.firstName || name == a.lastName
	trim := explain.T("trim", u.Trim, given+"/trim")
	switch {
	case group == "window" && isSize && i == e.Under.Count()-1:
		return e.onArt(a)
	case group == "window" && isSize:
		return e.aboveReveal(a, i+1, b.Window.Along(name))
	case group == "blank" && isSize:
		return working("blank", b.Blank.Along(name), trimSource,
			explain.Minus(explain.T("blank", a.blank, e.at.Worked+explain.Path("/blank/"+name)), explain.Times(explain.N(2), trim)))
	case group == "from_top" && isSide:
		above := a.side("cut", name == a.firstName)
		if i > 0 {
			above = explain.T("from_top", side(e.l.Under[i-1].FromTop, a.name, name == a.firstName),
				(e.at.Worked+"/under").Index(i-1)+explain.Path("/from_top/"+name))
		}
		return working("from_top", side(b.FromTop, a.name, name == a.firstName), revealSource,
			explain.Sum(above, explain.T("reveal", b.Reveal, worked+"/reveal")))
	case group == "own" && isSide:
		return working("own", side(b.Own, a.name, name == a.firstName), trimSource, explain.Minus(
			explain.T("from_top", side(b.FromTop, a.name, name == a.firstName), worked+explain.Path("/from_top/"+name)), trim))
	}
	return explain.Working{}, false
}

// OverhangTerms are the terms of what [Layout.Overhang] is of board i, for a layout
// that stands at a path: the run of a reverse bevel, which is negative, and the
// reveals between. Their sum is the overhang, negative; there are none where it is
// nothing.
func (l *Layout) OverhangTerms(i int, worked explain.Path) []explain.Expr {
	over, k := l.Overhang(i)
	if over == 0 {
		return nil
	}
	under := worked + "/under"
	run, at := l.Bevel.Run, worked
	if k > 0 {
		run, at = l.Under[k-1].Bevel.Run, under.Index(k-1)
	}
	var terms []explain.Expr
	if run < 0 {
		terms = append(terms, explain.T("run_above", run, at+"/bevel/run"))
	}
	for j := k; j < i; j++ {
		terms = append(terms, explain.T("reveal", l.Under[j].Reveal, under.Index(j)+"/reveal"))
	}
	return terms
}

// side is the first or the last side of a dimension.
func side(s measure.Sides, dimension string, first bool) measure.Length {
	both := across(s)
	if dimension == "height" {
		both = upright(s)
	}
	return both[index(first)]
}

// A cutBoard is a board with the edge of its window.
type cutBoard struct {
	thickness     measure.Length
	angle         measure.Angle
	bevel         Bevel
	window        measure.Size
	given, worked explain.Path
}

// explain explains a figure of the bevel: run, slope, face/width, face/height.
func (b cutBoard) explain(segments []string) (explain.Working, bool) {
	thickness := explain.T("thickness", b.thickness, b.given+"/thickness")
	angle := explain.T("bevel", b.angle, b.given+"/bevel")
	switch {
	case len(segments) == 1 && segments[0] == "run":
		return working("run", b.bevel.Run, bevelSource, explain.OverTan(thickness, angle))
	case len(segments) == 1 && segments[0] == "slope":
		return working("slope", b.bevel.Slope, bevelSource, explain.OverSin(thickness, angle))
	case len(segments) == 2 && segments[0] == "face" && (segments[1] == "width" || segments[1] == "height"):
		name := segments[1]
		return working("face_window", b.bevel.Face.Along(name), bevelSource, explain.Sum(
			explain.T("window", b.window.Along(name), b.worked+explain.Path("/window/"+name)),
			explain.Times(explain.N(2), explain.T("run", b.bevel.Run, b.worked+"/bevel/run"))))
	}
	return explain.Working{}, false
}

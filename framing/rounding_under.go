package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// underAt is where a board under the top one is worked out.
func (e *explainer) underAt(i int) explain.Path { return (e.at.worked + "/mat/under").Index(i) }

// shownLowest is the shown window of the lowest board.
func (e *explainer) shownLowest(name string) explain.Expr {
	n := e.Mat.Under.Count()
	if n == 0 {
		return e.shownWindow(name)
	}
	return e.underWindow(n-1, name)
}

func (e *explainer) underWindow(i int, name string) explain.Expr {
	return explain.T("under.window", e.s.mat.Under[i].Window.Along(name), e.underAt(i)+pathOf([]string{"window", name}))
}

func (e *explainer) shownReveal(i int) explain.Expr {
	return explain.T("reveal", e.s.mat.Under[i].Reveal, e.underAt(i)+"/reveal")
}

// shownStrip is the shown reveal of board i, without what a board above it
// hides.
func (e *explainer) shownStrip(i int) explain.Expr {
	over := e.s.mat.OverhangTerms(i, e.at.worked+"/mat")
	if len(over) == 0 {
		return e.shownReveal(i)
	}
	return explain.Sum(append([]explain.Expr{e.shownReveal(i)}, over...)...)
}

// shownAbove is the window above the i-th board under the top one: the shown one
// of that board, and its shown reveal on each side.
func (e *explainer) shownAbove(i int, name string) explain.Expr {
	return explain.Sum(e.underWindow(i, name), explain.Times(explain.N(2), e.shownReveal(i)))
}

// showBevel is how a figure of a bevel is shown: run and slope are no lengths to
// set, and stay exact.
func (e *explainer) showBevel(rest []string, window measure.Size, run measure.Length, worked explain.Path, w explain.Working) explain.Expr {
	if rest[0] != "face" {
		return itself(w)
	}
	return explain.Sum(explain.T("window", window.Along(rest[1]), worked+pathOf([]string{"window", rest[1]})),
		explain.Times(explain.N(2), explain.T("run", run, worked+"/bevel/run")))
}

// showUnderFigure is how a figure of a board under the top one is shown.
func (e *explainer) showUnderFigure(rest []string, w explain.Working) explain.Expr {
	i, _ := strconv.Atoi(rest[0])
	b, worked := e.s.mat.Under[i], e.underAt(i)
	switch rest[1] {
	case "bevel":
		return e.showBevel(rest[2:], b.Window, b.Bevel.Run, worked, w)
	case "reveal":
		return e.towards(measure.Nearest, itself(w))
	case "seen":
		return explain.Minus(e.shownStrip(i), explain.T("run", b.Bevel.Run, worked+"/bevel/run"))
	}
	group, name := rest[1], rest[2]
	switch group {
	case "window":
		if i == e.Mat.Under.Count()-1 {
			return e.towards(e.windowDirection(), itself(w))
		}
		return e.shownAbove(i+1, name)
	case "blank":
		return e.towards(measure.Down, explain.Minus(e.shownBlank(name),
			explain.Times(explain.N(2), explain.T("trim", e.Mat.Under[i].Trim, (e.at.order+"/mat/under").Index(i)+"/trim"))))
	case "from_top":
		above := e.shownSide("cut", name, e.s.mat.Cut)
		if i > 0 {
			above = explain.T("from_top", side(e.s.mat.Under[i-1].FromTop, name), e.underAt(i-1)+pathOf([]string{"from_top", name}))
		}
		return explain.Sum(above, e.shownReveal(i))
	}
	// Its own border: without what the trimmed blank lacks on this side.
	along := dimension(name)
	lacks := explain.Minus(e.shownBlank(along), explain.T("blank", b.Blank.Along(along), worked+pathOf([]string{"blank", along})))
	half := explain.Half(lacks)
	if name == "right" || name == "bottom" {
		half = explain.Minus(lacks, half)
	}
	return explain.Minus(explain.T("from_top", side(b.FromTop, name), worked+pathOf([]string{"from_top", name})), half)
}

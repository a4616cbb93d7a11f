package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// The formulas of shown values. They say in terms what shown.go works out in
// numbers; a test holds one against the other.

// step is the fineness as a term.
func (e explainer) step() explain.Expr {
	return explain.T("fineness", e.format.Step, orderRoot+"/show/fineness")
}

// towards rounds an exact value to the fineness.
func (e explainer) towards(d measure.Direction, x explain.Expr) explain.Expr {
	switch d {
	case measure.Up:
		return explain.Up(x, e.step())
	case measure.Down:
		return explain.Down(x, e.step())
	}
	return explain.ToNearest(x, e.step())
}

// itself is the exact value of a working as a term.
func itself(w explain.Working) explain.Expr {
	return explain.Expr{Term: explain.Term{Key: "exact", Value: w.Exact, Path: w.Path}}
}

func (e explainer) shownOutside(name string) explain.Expr {
	return explain.T("outside", e.s.outside.Along(name), e.at.worked+pathOf([]string{"frame", "outside", name}))
}

func (e explainer) shownOpening(name string) explain.Expr {
	return explain.T("opening", e.s.opening.Along(name), e.at.worked+pathOf([]string{"frame", "opening", name}))
}

func (e explainer) shownSight(name string) explain.Expr {
	return explain.T("sight", e.s.sight.Along(name), e.at.worked+pathOf([]string{"frame", "sight", name}))
}

// showFrameFigure is how a figure of the frame is shown: the rails up, the
// opening as they make it, what is seen down.
func (e explainer) showFrameFigure(rest []string, w explain.Working) explain.Expr {
	if rest[0] == "footage" {
		return explain.Times(explain.N(2), explain.Sum(e.shownOutside("width"), e.shownOutside("height")))
	}
	group, name := rest[0], rest[1]
	if group == "horizontal" || group == "vertical" {
		dimension := "width"
		if group == "vertical" {
			dimension = "height"
		}
		switch name {
		case "long_point":
			group, name = "outside", dimension
		case "short_point":
			group, name = "sight", dimension
		default:
			return explain.ToNearest(itself(w), explain.Const(AngleStep))
		}
	}
	face := explain.T("face", e.Frame.Face, e.at.order+"/frame/face")
	switch group {
	case "outside":
		return e.towards(measure.Up, itself(w))
	case "opening":
		return explain.Minus(e.shownOutside(name), explain.Times(explain.N(2), explain.Minus(face, e.lip())))
	}
	return e.towards(measure.Down, explain.Minus(e.shownOpening(name), explain.Times(explain.N(2), e.lip())))
}

// showInsert is the size of a part that is cut to fit the opening that the
// shown rails make.
func (e explainer) showInsert(l layer, name string) explain.Expr {
	allowance := explain.T("allowance", e.Frame.Allowance, e.at.order+"/frame/allowance")
	play := allowance
	if l.cut.Clearance > 0 {
		play = explain.Most(allowance, explain.T("clearance", l.cut.Clearance, l.at+"/clearance"))
	}
	return e.towards(measure.Down, explain.Minus(e.shownOpening(name), play))
}

// showDepth rounds the build-up up; what it leaves of the rabbet, and the rabbet
// that it wants, follow from it.
func (e explainer) showDepth(name string, w explain.Working) explain.Expr {
	pkg := explain.T("package", e.s.depth[0], e.at.worked+"/depth/package")
	switch name {
	case "clear":
		return e.towards(measure.Down, explain.Minus(explain.T("rabbet", e.Frame.Rabbet, e.at.order+"/frame/rabbet"), pkg))
	case "wanted":
		return e.towards(measure.Up, explain.Sum(pkg, explain.T("points", e.shop.Points, orderRoot+"/shop/points")))
	}
	return e.towards(measure.Up, itself(w))
}

// showMatFigure is how a figure of the mat is shown.
func (e explainer) showMatFigure(group, name string, w explain.Working) explain.Expr {
	switch group {
	case "window":
		return e.towards(e.windowDirection(), itself(w))
	case "covered":
		return explain.Half(explain.Minus(
			explain.T("art", e.Art.Least().Along(name), (e.at.order+"/art").Child(name)), e.shownWindow(name)))
	case "blank":
		if e.boardGiven() {
			return itself(w)
		}
		for _, l := range e.x.layers {
			if l.part == MatLayer {
				return e.showInsert(l, name)
			}
		}
	case "cut":
		return e.shareCut(name, w)
	case "visible":
		return explain.Minus(e.shownSide("cut", name, e.s.mat.Cut), e.shownSide("cover", name, e.s.mat.Cover))
	case "cover":
		both := explain.Minus(e.shownBlank(dimension(name)), e.shownSight(dimension(name)))
		switch name {
		case "left", "top":
			return explain.Half(both)
		case "right":
			return explain.Minus(both, e.shownSide("cover", "left", e.s.mat.Cover))
		}
		return explain.Minus(both, e.shownSide("cover", "top", e.s.mat.Cover))
	case "seated":
		switch name {
		case "bottom":
			return explain.Minus(e.shownSide("cut", name, e.s.mat.Cut), e.lip())
		case "top":
			return explain.Minus(e.shownSight("height"), e.shownWindow("height"), e.shownSide("seated", "bottom", e.s.mat.Seated))
		}
		return e.shownSide("visible", name, e.s.mat.Visible)
	}
	if name == "left" { // of the back
		return e.shownSide("cut", "right", e.s.mat.Cut)
	}
	return e.shownSide("cut", "top", e.s.mat.Cut)
}

// shareCut is one of two borders that share what the blank leaves beside the
// window; see share.
func (e explainer) shareCut(name string, w explain.Working) explain.Expr {
	first, last := "left", "right"
	if dimension(name) == "height" {
		first, last = "top", "bottom"
	}
	exact, shown := e.x.mat.Cut, e.s.mat.Cut
	left := explain.Minus(e.shownBlank(dimension(name)), e.shownWindow(dimension(name)))
	equal := halved(side(exact, first), side(exact, last))
	switch {
	case equal && side(shown, first) == side(shown, last):
		return explain.Half(left)
	case name == last:
		return explain.Minus(left, e.shownSide("cut", first, shown))
	case equal:
		return e.towards(shareDirection(e.format, side(shown, first)+side(shown, last)), explain.Half(left))
	}
	return e.towards(measure.Nearest, itself(w))
}

func (e explainer) shownWindow(name string) explain.Expr {
	return explain.T("window", e.s.mat.Window.Along(name), e.at.worked+pathOf([]string{"mat", "window", name}))
}

func (e explainer) shownBlank(name string) explain.Expr {
	return explain.T("blank", e.s.mat.Blank.Along(name), e.at.worked+pathOf([]string{"mat", "blank", name}))
}

func (e explainer) shownSide(group explain.Key, name string, s measure.Sides) explain.Expr {
	return explain.T(group+"."+explain.Key(name), side(s, name), e.at.worked+pathOf([]string{"mat", string(group), name}))
}

// dimension is the one that a side belongs to.
func dimension(side string) string {
	if side == "left" || side == "right" {
		return "width"
	}
	return "height"
}

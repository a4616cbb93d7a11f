package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// The formulas of shown values. They say in terms what shown.go works out in
// numbers; a test holds one against the other.

// step is the fineness as a term.
func (e *explainer) step() explain.Expr {
	return explain.T("fineness", e.format.Step, orderRoot+"/show/fineness")
}

// towards rounds an exact value to the fineness.
func (e *explainer) towards(d measure.Direction, x explain.Expr) explain.Expr {
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
	return explain.Term{Key: "exact", Value: w.Exact, Path: w.Path}.Expr()
}

func (h *held) shownOutside(name string) explain.Expr {
	return explain.T("outside", h.shown.outside.Along(name), h.at.Worked+pathOf([]string{"outside", name}))
}

func (h *held) shownOpening(name string) explain.Expr {
	return explain.T("opening", h.shown.opening.Along(name), h.at.Worked+pathOf([]string{"opening", name}))
}

func (h *held) shownSight(name string) explain.Expr {
	return explain.T("sight", h.shown.sight.Along(name), h.at.Worked+pathOf([]string{"sight", name}))
}

// behindLip is how much of the face lies outside the opening, both sides.
func (h *held) behindLip() explain.Expr {
	return explain.Times(explain.N(2), explain.Minus(explain.T("face", h.Face, h.at.Frame+"/face"), h.lip()))
}

// room is the play that the frame gives what it is made for.
func (h *held) room() explain.Expr {
	if h.Kind == molding.Floater {
		return explain.Times(explain.N(2), explain.T("gap", h.Gap, h.at.Frame+"/gap"))
	}
	return explain.T("allowance", h.Allowance, h.at.Frame+"/allowance")
}

// showFrameFigure is how a figure of a frame is shown: the rails up, or down where
// the outside is fixed, the opening as they make it, what is seen down.
func (e *explainer) showFrameFigure(h held, rest []string, w explain.Working) explain.Expr {
	if rest[0] == "footage" {
		return explain.Times(explain.N(2), explain.Sum(h.shownOutside("width"), h.shownOutside("height")))
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
	switch group {
	case "outside":
		if e.lined() && h.part == FrameLayer { // around the liner as it is shown
			liner := explain.T("liner", e.s.inner.outside.Along(name), e.at.worked+pathOf([]string{"liner", "outside", name}))
			return e.towards(h.Made.Direction(), explain.Sum(liner, h.room(), h.behindLip()))
		}
		return e.towards(h.Made.Direction(), itself(w))
	case "opening":
		return explain.Minus(h.shownOutside(name), h.behindLip())
	}
	return e.towards(measure.Down, explain.Minus(h.shownOpening(name), explain.Times(explain.N(2), h.lip())))
}

// showInsert is the size of a part that is cut to fit the opening that the
// shown rails make.
func (e *explainer) showInsert(h held, l layer, name string) explain.Expr {
	play := h.room()
	if l.cut.Clearance > 0 {
		play = explain.Most(play, explain.T("clearance", l.cut.Clearance, l.at+"/clearance"))
	}
	return e.towards(measure.Down, explain.Minus(h.shownOpening(name), play))
}

// showDepth rounds the build-up up; what it leaves of the rabbet, and the rabbet
// that it wants, follow from it.
func (e *explainer) showDepth(h held, name string, w explain.Working, s shownDepth, worked explain.Path, points measure.Length) explain.Expr {
	pkg := explain.T("package", s.pkg, worked+"/package")
	switch name {
	case "clear":
		return e.towards(measure.Down, explain.Minus(explain.T("rabbet", h.Rabbet, h.at.Frame+"/rabbet"), pkg))
	case "wanted":
		if h.Kind == molding.Floater {
			return e.towards(measure.Up, pkg)
		}
		return e.towards(measure.Up, explain.Sum(pkg, explain.T("points", points, orderRoot+"/shop/points")))
	}
	return e.towards(measure.Up, itself(w))
}

// showMatFigure is how a figure of the mat is shown.
func (e *explainer) showMatFigure(rest []string, w explain.Working) explain.Expr {
	switch rest[0] {
	case "bevel":
		return e.showBevel(rest[1:], e.s.mat.Window, e.x.mat.Bevel.Run, e.at.worked+"/mat", w)
	case "under":
		return e.showUnderFigure(rest[1:], w)
	}
	group, name := rest[0], rest[1]
	h := e.holding(e.innerPart())
	switch group {
	case "window":
		if e.Mat.Under.IsZero() {
			return e.towards(e.windowDirection(), itself(w))
		}
		return e.shownAbove(0, name)
	case "covered":
		return explain.Half(explain.Minus(
			explain.T("art", e.Art.Least().Along(name), e.artAt.Child(name)), e.shownLowest(name)))
	case "blank":
		if e.boardGiven() {
			return itself(w)
		}
		for _, l := range e.x.layers {
			if l.part == MatLayer {
				return e.showInsert(h, l, name)
			}
		}
	case "cut":
		return e.shareCut(name, w)
	case "visible":
		return explain.Minus(e.shownSide("cut", name, e.s.mat.Cut), e.shownSide("cover", name, e.s.mat.Cover))
	case "cover":
		both := explain.Minus(e.shownBlank(dimension(name)), h.shownSight(dimension(name)))
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
			return explain.Minus(e.shownSide("cut", name, e.s.mat.Cut), h.lip())
		case "top":
			return explain.Minus(h.shownSight("height"), e.shownWindow("height"), e.shownSide("seated", "bottom", e.s.mat.Seated))
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
func (e *explainer) shareCut(name string, w explain.Working) explain.Expr {
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

func (e *explainer) shownWindow(name string) explain.Expr {
	return explain.T("window", e.s.mat.Window.Along(name), e.at.worked+pathOf([]string{"mat", "window", name}))
}

func (e *explainer) shownBlank(name string) explain.Expr {
	return explain.T("blank", e.s.mat.Blank.Along(name), e.at.worked+pathOf([]string{"mat", "blank", name}))
}

func (e *explainer) shownSide(group explain.Key, name string, s measure.Sides) explain.Expr {
	return explain.T(group+"."+explain.Key(name), side(s, name), e.at.worked+pathOf([]string{"mat", string(group), name}))
}

// dimension is the one that a side belongs to.
func dimension(side string) string {
	if side == "left" || side == "right" {
		return "width"
	}
	return "height"
}

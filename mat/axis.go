package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// An axis is one dimension of a mat: width with left and right, or height with
// top and bottom. The formulas of both read the same.
type axis struct {
	name, firstName, lastName string
	at                        Places

	art, artLargest, window, lowest, givenWindow, covered, blank, givenBoard measure.Length
	lips                                                                     [2]measure.Length
	cover, cut, visible, seated                                              [2]measure.Length
	play                                                                     measure.Length
}

// axis returns the width where horizontal, else the height.
func (e *explainer) axis(horizontal bool) axis {
	g, l, b := e.g, e.l, e.Borders
	if horizontal {
		return axis{
			name: "width", firstName: "left", lastName: "right", at: e.at,
			art: g.Least.Width, artLargest: g.Greatest.Width, window: l.Window.Width, lowest: e.lowest().Width,
			givenWindow: e.Window.Width, covered: l.Covered.Width, blank: l.Blank.Width, givenBoard: b.Board.Width,
			lips: across(g.Lip), cover: across(l.Cover), cut: across(l.Cut), visible: across(l.Visible),
			seated: across(l.Seated), play: g.Allowance,
		}
	}
	return axis{
		name: "height", firstName: "top", lastName: "bottom", at: e.at,
		art: g.Least.Height, artLargest: g.Greatest.Height, window: l.Window.Height, lowest: e.lowest().Height,
		givenWindow: e.Window.Height, covered: l.Covered.Height, blank: l.Blank.Height, givenBoard: b.Board.Height,
		lips: upright(g.Lip), cover: upright(l.Cover), cut: upright(l.Cut), visible: upright(l.Visible),
		seated: upright(l.Seated), play: g.Allowance,
	}
}

func across(s measure.Sides) [2]measure.Length  { return [2]measure.Length{s.Left, s.Right} }
func upright(s measure.Sides) [2]measure.Length { return [2]measure.Length{s.Top, s.Bottom} }

func index(first bool) int {
	if first {
		return 0
	}
	return 1
}

func (a *axis) sideName(first bool) string {
	if first {
		return a.firstName
	}
	return a.lastName
}

// side is the term of one border of the layout.
func (a *axis) side(group explain.Path, first bool) explain.Expr {
	values := a.visible
	switch group {
	case "cover":
		values = a.cover
	case "cut":
		values = a.cut
	}
	name := a.sideName(first)
	key := explain.Key(string(group) + "." + name)
	return explain.T(key, values[index(first)], a.at.Worked+"/"+group+explain.Path("/"+name))
}

func (a *axis) artLeast() explain.Expr {
	return explain.T("art", a.art, a.at.Art+explain.Path("/"+a.name))
}

// artGreatest is the art where it is largest: what was measured and how much
// it varies.
func (a *axis) artGreatest() explain.Expr {
	if a.artLargest == a.art {
		return a.artLeast()
	}
	return explain.Sum(a.artLeast(),
		explain.T("varies", a.artLargest-a.art, a.at.Art+explain.Path("/varies/"+a.name)))
}

func (a *axis) windowTerm() explain.Expr {
	return explain.T("window", a.window, a.at.Worked+explain.Path("/window/"+a.name))
}

// lowestTerm is the window of the lowest board.
func (e *explainer) lowestTerm(a axis) explain.Expr {
	n := e.Under.Count()
	if n == 0 {
		return a.windowTerm()
	}
	return explain.T("window", a.lowest, (a.at.Worked+"/under").Index(n-1)+explain.Path("/window/"+a.name))
}

func (a *axis) board() explain.Expr {
	return explain.T("board", a.givenBoard, a.at.Mat+explain.Path("/borders/board/"+a.name))
}

func (a *axis) lip(first bool) explain.Expr {
	return explain.T("lip", a.lips[index(first)], a.at.Frame+"/lip")
}

func (a *axis) allowance() explain.Expr {
	if a.at.Play.Node != nil {
		return a.at.Play
	}
	return explain.T("allowance", a.play, a.at.Frame+"/allowance")
}

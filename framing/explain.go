package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Explain returns how the figure at path came to be, such as
// /pieces/0/frame/outside/width; false where the plan has no such figure. The
// working is made anew from the plan's own order: its formula by the room that
// owns the figure, its rounding by the shown set.
func (p Plan) Explain(path explain.Path) (explain.Working, bool) {
	segments := path.Segments()
	if len(segments) < 4 || segments[0] != "pieces" {
		return explain.Working{}, false
	}
	i, err := strconv.Atoi(segments[1])
	if err != nil || i < 0 || i >= len(p.Pieces) || !p.Pieces[i].Worked || i >= len(p.Order.Pieces) {
		return explain.Working{}, false
	}
	figure, ok := path.After(placesOf(i).worked)
	if !ok { // "00" is not "0"
		return explain.Working{}, false
	}
	format, err := p.Order.Show.Format()
	if err != nil {
		format = measure.Format{}
	}
	w := worker{&p.Order.Pieces[i], p.Order.Shop, format, placesOf(i)}
	return w.explain(figure, segments[2:])
}

// explain explains one figure of the piece: its exact value by the room that
// owns it, its shown value by the shown set.
func (w worker) explain(figure explain.Path, segments []string) (explain.Working, bool) {
	x := w.exactly()
	e := explainer{worker: w, x: x, s: w.show(x, w.format)}
	working, shown, ok := e.figure(segments)
	if !ok {
		return explain.Working{}, false
	}
	working.Path = w.at.worked + figure
	working.Rounding = shown
	value, err := shown.Evaluate()
	if err != nil {
		return explain.Working{}, false
	}
	working.Shown = value
	return working, true
}

// An explainer explains the figures of one piece.
type explainer struct {
	worker
	x exactPiece
	s shownPiece
}

// figure returns the working of a figure and the formula of its shown value.
func (e explainer) figure(segments []string) (explain.Working, explain.Expr, bool) {
	group, rest := segments[0], segments[1:]
	relative := pathOf(rest)
	switch group {
	case "mat":
		if e.Mat.IsZero() {
			return explain.Working{}, explain.Expr{}, false
		}
		working, ok := e.Mat.Explain(e.given(e.shop), relative, e.matPlaces())
		if !ok {
			return working, explain.Expr{}, false
		}
		return working, e.showMatFigure(rest[0], rest[1], working), true
	case "frame":
		if len(rest) == 2 && rest[0] == "package" {
			return e.pkg(rest[1])
		}
		working, ok := e.Frame.Explain(e.x.frame, relative, e.framePlaces())
		if !ok {
			return working, explain.Expr{}, false
		}
		return working, e.showFrameFigure(rest, working), true
	case "layers":
		return e.layer(rest)
	case "depth":
		working, ok := e.Frame.ExplainDepth(e.x.depth, e.shop.Points, e.thicknesses(), relative, e.at.worked+"/depth", e.framePlaces())
		return working, e.showDepth(rest[0], working), ok
	}
	return explain.Working{}, explain.Expr{}, false
}

func pathOf(segments []string) explain.Path {
	var p explain.Path
	for _, s := range segments {
		p = p.Child(s)
	}
	return p
}

// pkg explains what the frame is made for: the mat's blank, or the art where
// it is largest.
func (e explainer) pkg(name string) (explain.Working, explain.Expr, bool) {
	if name != "width" && name != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	w := explain.Working{Key: "package", Exact: explain.Of(e.x.frame.Package.Along(name))}
	if e.Mat.IsZero() {
		w.Source = explain.CommonPractice("an opening is made for the art where it is largest")
		w.Formula = e.art(name)
		return w, w.Formula, true
	}
	w.Source = explain.Geometry("the mat's board is the largest part")
	w.Formula = explain.T("blank", e.x.mat.Blank.Along(name), e.at.worked+pathOf([]string{"mat", "blank", name}))
	return w, explain.T("blank", e.s.mat.Blank.Along(name), e.at.worked+pathOf([]string{"mat", "blank", name})), true
}

// art is the art where it is largest.
func (e explainer) art(name string) explain.Expr {
	at := e.at.order + "/art"
	least := explain.T("art", e.Art.Least().Along(name), at.Child(name))
	if varies := e.Art.Varies.Along(name); varies != 0 {
		return explain.Sum(least, explain.T("varies", varies, at+pathOf([]string{"varies", name})))
	}
	return least
}

// thicknesses are the terms of the package's depth.
func (e explainer) thicknesses() []explain.Expr {
	terms := make([]explain.Expr, len(e.x.layers))
	for i, l := range e.x.layers {
		terms[i] = explain.T(explain.Key(l.part), l.thickness, l.at+"/thickness")
	}
	return terms
}

// layer explains a figure of a part in the rabbet.
func (e explainer) layer(rest []string) (explain.Working, explain.Expr, bool) {
	l, i, ok := e.looseLayer(rest[0])
	if !ok || len(rest) != 3 || rest[2] != "width" && rest[2] != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	group, name := rest[1], rest[2]
	worked := (e.at.worked + "/layers").Child(rest[0])
	exact := e.fit(e.x.frame.Opening, l.size, l.least)
	shown := e.fit(e.s.opening, e.s.layers[i], shownLeast(l, e.s.layers[i]))
	relative := pathOf(rest[1:])

	var w explain.Working
	switch {
	case group == "size" && l.part == ArtLayer:
		w = explain.Working{Key: "size", Exact: explain.Of(exact.Size.Along(name)), Formula: e.art(name),
			Source: explain.CommonPractice("an opening is made for the art where it is largest")}
		return w, w.Formula, true
	case group == "size" && l.part == MatLayer:
		blank := e.at.worked + pathOf([]string{"mat", "blank", name})
		w = explain.Working{Key: "size", Exact: explain.Of(exact.Size.Along(name)),
			Formula: explain.T("blank", exact.Size.Along(name), blank), Source: explain.Geometry("the mat's board")}
		return w, explain.T("blank", shown.Size.Along(name), blank), true
	case group == "size":
		w, ok = e.Frame.ExplainFit(e.x.frame.Opening, l.cut, relative, l.at, worked, e.framePlaces())
		if !l.toFit {
			return w, w.Formula, ok
		}
		return w, e.showInsert(l, name), ok
	case group == "bite" && l.least != l.size:
		// Art that varies holds least where it is smallest.
		w = explain.Working{Key: "bite", Exact: explain.Of(exact.Bite.Along(name)), Formula: e.artBite(e.x.frame.Opening, name),
			Source: explain.Geometry("art pushed all the way to one side, where it is smallest")}
		return w, e.artBite(e.s.opening, name), true
	}
	w, ok = e.Frame.ExplainLying(exact, relative, worked, e.x.frame.Opening, e.framePlaces())
	again, _ := e.Frame.ExplainLying(shown, relative, worked, e.s.opening, e.framePlaces())
	return w, again.Formula, ok
}

// artBite is lip - (opening - art where it is smallest).
func (e explainer) artBite(opening measure.Size, name string) explain.Expr {
	return explain.Minus(e.lip(), explain.Minus(
		explain.T("opening", opening.Along(name), e.at.worked+pathOf([]string{"frame", "opening", name})),
		explain.T("art", e.Art.Least().Along(name), (e.at.order+"/art").Child(name))))
}

// looseLayer finds the layer that stands at an index of the plan's layers.
func (e explainer) looseLayer(index string) (l layer, i int, ok bool) {
	wanted, err := strconv.Atoi(index)
	if err != nil || strconv.Itoa(wanted) != index {
		return layer{}, 0, false
	}
	for i, l := range e.x.layers {
		if !l.loose {
			continue
		}
		if wanted == 0 {
			return l, i, true
		}
		wanted--
	}
	return layer{}, 0, false
}

func (e explainer) lip() explain.Expr { return explain.T("lip", e.Frame.Lip, e.at.order+"/frame/lip") }

func side(s measure.Sides, name string) measure.Length {
	switch name {
	case "left":
		return s.Left
	case "right":
		return s.Right
	case "top":
		return s.Top
	}
	return s.Bottom
}

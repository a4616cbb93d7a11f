package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
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
	w := newWorker(&p.Order.Pieces[i], p.Order.Shop, format, placesOf(i))
	return w.explain(figure, segments[2:])
}

// explain explains one figure of the piece: its exact value by the room that
// owns it, its shown value by the shown set.
func (w *worker) explain(figure explain.Path, segments []string) (explain.Working, bool) {
	x := w.exactly()
	e := explainer{worker: *w, x: x, s: w.show(x, w.format)}
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
func (e *explainer) figure(segments []string) (explain.Working, explain.Expr, bool) {
	group, rest := segments[0], segments[1:]
	switch group {
	case "canvas":
		return e.canvas(rest)
	case "mat":
		return e.mat(rest)
	case "liner":
		if e.lined() {
			return e.frame(LinerLayer, rest)
		}
	case "frame":
		return e.frame(FrameLayer, rest)
	case "shape":
		if Shapes {
			return e.shape(rest)
		}
	case "float":
		return e.float(rest)
	case "layers":
		return e.layer(rest)
	case "depth":
		return e.depth(e.innerPart(), rest)
	case "liner_depth":
		if e.lined() {
			return e.depth(FrameLayer, rest)
		}
	case "mass":
		return e.mass(rest)
	case "hang":
		return e.hang(rest)
	}
	return explain.Working{}, explain.Expr{}, false
}

// mat explains a figure of the mat.
func (e *explainer) mat(rest []string) (explain.Working, explain.Expr, bool) {
	if e.Mat.IsZero() {
		return explain.Working{}, explain.Expr{}, false
	}
	working, ok := e.Mat.Explain(e.given(e.shop), pathOf(rest), e.matPlaces())
	if !ok {
		return working, explain.Expr{}, false
	}
	return working, e.showMatFigure(rest, working), true
}

// A held is a frame with what it holds: as decided, exact and shown.
type held struct {
	molding.Frame
	part  LayerPart
	exact molding.Rectangle
	shown shownFrame
	at    molding.Places
}

// holding returns the liner or the frame.
func (e *explainer) holding(part LayerPart) held {
	if part == LinerLayer {
		return held{e.Liner, part, e.x.inner, e.s.inner, e.linerPlaces()}
	}
	return held{e.Frame, part, e.x.frame, e.s.frame, e.framePlaces()}
}

// frame explains a figure of the liner or of the frame.
func (e *explainer) frame(part LayerPart, rest []string) (explain.Working, explain.Expr, bool) {
	h := e.holding(part)
	switch {
	case len(rest) == 2 && rest[0] == "package":
		return e.pkg(h, rest[1])
	case len(rest) == 2 && rest[0] == "dust_cover" && part == FrameLayer:
		return e.dust(h, rest[1])
	}
	if Shapes && part == FrameLayer && e.shaped() {
		if w, shown, ok, own := e.shapedFrame(h, rest); own {
			return w, shown, ok
		}
	}
	working, ok := h.Explain(h.exact, pathOf(rest), h.at)
	if !ok {
		return working, explain.Expr{}, false
	}
	return working, e.showFrameFigure(h, rest, working), true
}

func pathOf(segments []string) explain.Path {
	var p explain.Path
	for _, s := range segments {
		p = p.Child(s)
	}
	return p
}

// pkg explains what a frame is made for: the liner, the mat's blank, or the art
// where it is largest.
func (e *explainer) pkg(h held, name string) (explain.Working, explain.Expr, bool) {
	if name != "width" && name != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	w := explain.Working{Key: "package", Exact: explain.Of(h.exact.Package.Along(name))}
	from := func(key explain.Key, exact, shown measure.Size, at explain.Path) (explain.Working, explain.Expr, bool) {
		w.Formula = explain.T(key, exact.Along(name), at.Child(name))
		return w, explain.T(key, shown.Along(name), at.Child(name)), true
	}
	switch {
	case e.lined() && h.part == FrameLayer:
		w.Source = explain.Geometry("the liner lies in the frame")
		return from("liner", e.x.inner.Outside, e.s.inner.outside, e.at.worked+"/liner/outside")
	case e.Mat.IsZero():
		w.Source = explain.CommonPractice("an opening is made for the art where it is largest")
		w.Formula = e.art(name)
		return w, w.Formula, true
	}
	w.Source = explain.Geometry("the mat's board is the largest part")
	return from("blank", e.x.mat.Blank, e.s.mat.Blank, e.at.worked+"/mat/blank")
}

// dust explains the paper over the back.
func (e *explainer) dust(h held, name string) (explain.Working, explain.Expr, bool) {
	if name != "width" && name != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	less := func(outside measure.Size) explain.Expr {
		return explain.Minus(explain.T("outside", outside.Along(name), (h.at.Worked+"/outside").Child(name)),
			explain.Times(explain.N(2), explain.T("dust", e.shop.Dust, orderRoot+"/shop/dust")))
	}
	w := explain.Working{Key: "dust_cover", Exact: explain.Of(h.exact.Outside.Along(name) - 2*e.shop.Dust),
		Formula: less(h.exact.Outside), Source: explain.CommonPractice("a dust cover ends inside the outside edge")}
	return w, e.towards(measure.Down, less(h.shown.outside)), true
}

// art is the art where it is largest.
func (e *explainer) art(name string) explain.Expr {
	at, least := e.artAt, e.artLeast(name)
	if varies := e.Art.Varies.Along(name); varies != 0 {
		return explain.Sum(least, explain.T("varies", varies, at+pathOf([]string{"varies", name})))
	}
	return least
}

// artLeast is the art where it is smallest.
func (e *explainer) artLeast(name string) explain.Expr {
	return explain.T("art", e.Art.Least().Along(name), e.artAt.Child(name))
}

// depth explains a figure of how things lie in the depth of the liner's or the
// frame's rabbet.
func (e *explainer) depth(in LayerPart, rest []string) (explain.Working, explain.Expr, bool) {
	h, exact, shown, worked, points := e.holding(in), e.x.depth, e.s.depth, e.at.worked+"/depth", e.points(e.inner())
	if e.lined() && in == FrameLayer {
		exact, shown, worked, points = e.x.linerDepth, e.s.linerDepth, e.at.worked+"/liner_depth", e.points(e.Frame)
	}
	terms := e.thicknesses(in)
	if len(rest) == 3 && rest[0] == "stack" && rest[2] == "thickness" {
		i, err := strconv.Atoi(rest[1])
		if err != nil || i < 0 || i >= len(terms) || strconv.Itoa(i) != rest[1] {
			return explain.Working{}, explain.Expr{}, false
		}
		w := explain.Working{Key: "thickness", Exact: terms[i].Term.Value, Formula: terms[i], Source: explain.AsGiven()}
		if terms[i].Op != explain.OpTerm {
			w.Exact, w.Source = explain.Of(e.proudOfLiner(e.x)), explain.Geometry("what stands out behind the liner")
			w.Path = (worked + "/stack").Index(i) + "/thickness"
			return w, itself(w), true
		}
		return w, w.Formula, true
	}
	if len(rest) != 1 {
		return explain.Working{}, explain.Expr{}, false
	}
	w, ok := h.ExplainDepth(exact, points, e.deep(in, terms), pathOf(rest), worked, h.at)
	return w, e.showDepth(h, rest[0], w, shown, worked, points), ok
}

// thicknesses are the terms of what lies in one frame's depth.
func (e *explainer) thicknesses(in LayerPart) []explain.Expr {
	terms := make([]explain.Expr, 0, len(e.x.layers)+1)
	for _, l := range e.x.layers {
		if l.in == in {
			terms = append(terms, explain.T(explain.Key(l.part), l.thickness, l.thicknessAt))
		}
	}
	if in == FrameLayer && e.lined() && e.proudOfLiner(e.x) > 0 {
		terms = append(terms, explain.Minus(explain.Const(measure.Length(0)),
			explain.T("clear", e.x.depth.Clear, e.at.worked+"/depth/clear")))
	}
	return terms
}

// layer explains a figure of a part in a rabbet.
func (e *explainer) layer(rest []string) (explain.Working, explain.Expr, bool) {
	l, i, ok := e.looseLayer(rest[0])
	if !ok || len(rest) != 3 || rest[2] != "width" && rest[2] != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	group, name := rest[1], rest[2]
	worked := (e.at.worked + "/layers").Child(rest[0])
	h := e.holding(l.in)
	exact := fit(h.Frame, h.exact.Opening, l.size, l.least)
	shown := fit(h.Frame, h.shown.opening, e.s.layers[i], shownLeast(l, e.s.layers[i]))
	relative := pathOf(rest[1:])

	var w explain.Working
	same := func(key explain.Key, at explain.Path, why string) (explain.Working, explain.Expr, bool) {
		w = explain.Working{Key: "size", Exact: explain.Of(exact.Size.Along(name)),
			Formula: explain.T(key, exact.Size.Along(name), at.Child(name)), Source: explain.Geometry(why)}
		return w, explain.T(key, shown.Size.Along(name), at.Child(name)), true
	}
	switch {
	case group == "size" && l.part == ArtLayer:
		w = explain.Working{Key: "size", Exact: explain.Of(exact.Size.Along(name)), Formula: e.art(name),
			Source: explain.CommonPractice("an opening is made for the art where it is largest")}
		return w, w.Formula, true
	case group == "size" && l.part == MatLayer:
		return same("blank", e.at.worked+"/mat/blank", "the mat's board")
	case group == "size" && l.part == LinerLayer:
		return same("outside", e.at.worked+"/liner/outside", "the liner's outside")
	case group == "size":
		w, ok = h.ExplainFit(h.exact.Opening, l.cut, relative, l.at, worked, h.at)
		if !l.toFit {
			return w, w.Formula, ok
		}
		return w, e.showInsert(h, l, name), ok
	case group == "bite" && l.least != l.size:
		// Art that varies holds least where it is smallest.
		w = explain.Working{Key: "bite", Exact: explain.Of(exact.Bite.Along(name)), Formula: e.artBite(h, h.exact.Opening, name),
			Source: explain.Geometry("art pushed all the way to one side, where it is smallest")}
		return w, e.artBite(h, h.shown.opening, name), true
	}
	w, ok = h.ExplainLying(exact, relative, worked, h.exact.Opening, h.at)
	again, _ := h.ExplainLying(shown, relative, worked, h.shown.opening, h.at)
	return w, again.Formula, ok
}

// artBite is lip - (opening - art where it is smallest).
func (e *explainer) artBite(h held, opening measure.Size, name string) explain.Expr {
	return explain.Minus(h.lip(), explain.Minus(
		explain.T("opening", opening.Along(name), h.at.Worked+pathOf([]string{"opening", name})),
		explain.T("art", e.Art.Least().Along(name), e.artAt.Child(name))))
}

// looseLayer finds the layer that stands at an index of the plan's layers.
func (e *explainer) looseLayer(index string) (l layer, i int, ok bool) {
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

func (h *held) lip() explain.Expr { return explain.T("lip", h.Lip, h.at.Frame+"/lip") }

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

package draw

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// frontRows puts the dimensions around the piece: what is seen and the outside
// above and to the left, borders, window and art below and to the right.
func (s *sheet) frontRows(v face, r *rows) {
	size := func(at explain.Path, b box, f framing.SizeFigure) {
		r.add(top, span{b.x0, b.x1, s.worked(at+"/width", f.Width)})
		r.add(left, span{b.y0, b.y1, s.worked(at+"/height", f.Height)})
	}
	if !s.piece.Liner.IsZero() {
		size("/liner/sight", v.sight, s.piece.Liner.Sight)
	}
	if framing.Shapes && s.shaped() {
		s.faceRows(v, r)
	} else {
		size("/frame/sight", v.frame, s.piece.Frame.Sight)
	}
	size("/frame/outside", v.outside, s.piece.Frame.Outside)

	if v.boards > 0 {
		w := v.windows[0]
		r.add(bottom,
			span{v.sight.x0, w.x0, s.border("left", s.piece.Mat.Visible.Left)},
			span{w.x0, w.x1, s.window("width", s.piece.Mat.Window.Width)},
			span{w.x1, v.sight.x1, s.border("right", s.piece.Mat.Visible.Right)})
		r.add(right,
			span{v.sight.y0, w.y0, s.border("top", s.piece.Mat.Visible.Top)},
			span{w.y0, w.y1, s.window("height", s.piece.Mat.Window.Height)},
			span{w.y1, v.sight.y1, s.border("bottom", s.piece.Mat.Visible.Bottom)})
	}
	if framing.Shapes && s.skewed() {
		edge, sides := s.skewedEdge(v), s.order.Art.Sides
		r.add(bottom, span{edge[0], edge[2], s.given("/art/sides/bottom", sides.Bottom)})
		r.add(right, span{edge[3], edge[5], s.given("/art/sides/right", sides.Right)})
		return
	}
	r.add(bottom, span{v.art.x0, v.art.x1, s.given("/art/width", s.order.Art.Width)})
	r.add(right, span{v.art.y0, v.art.y1, s.given("/art/height", s.order.Art.Height)})
}

// faceRows puts the widths of rails that differ, or slope, beside what is seen.
func (s *sheet) faceRows(v face, r *rows) {
	f := s.piece.Frame.Sight
	r.add(top,
		span{v.outside.x0, v.frame.x0, s.faceLabel(3)},
		span{v.frame.x0, v.frame.x1, s.worked("/frame/sight/width", f.Width)},
		span{v.frame.x1, v.outside.x1, s.faceLabel(1)})
	r.add(left,
		span{v.outside.y0, v.frame.y0, s.faceLabel(2)},
		span{v.frame.y0, v.frame.y1, s.worked("/frame/sight/height", f.Height)},
		span{v.frame.y1, v.outside.y1, s.faceLabel(0)})
}

// skewList are the other measures of art out of square.
func (s *sheet) skewList() []callout {
	if !framing.Shapes || !s.skewed() {
		return nil
	}
	a := s.order.Art.Sides
	var list []callout
	for _, l := range [...]label{
		s.given("/art/sides/top", a.Top).named("art's top edge"),
		s.given("/art/sides/left", a.Left).named("art's left edge"),
		s.given("/art/sides/rising", a.Rising).named("diagonal rising to the right"),
		s.given("/art/sides/falling", a.Falling).named("diagonal falling to the right"),
	} {
		if l.text != "0" {
			list = append(list, callout{label: l})
		}
	}
	return list
}

// border is how wide a border of the top board is seen: given where the order
// gives just that.
func (s *sheet) border(side string, f framing.Figure) label {
	b := s.order.Mat.Borders
	given := b.By == mat.ByVisible && (b.To == mat.ToTop || len(s.piece.Mat.Under) == 0) && (side != "bottom" || b.Weight == mat.Unweighted)
	if !given {
		return s.worked("/mat/visible/"+explain.Path(side), f)
	}
	l := b.Left
	switch side {
	case "right":
		l = b.Right
	case "top":
		l = b.Top
	case "bottom":
		l = b.Bottom
	}
	return s.given("/mat/borders/"+explain.Path(side), l)
}

// window is a dimension of the top board's window: given where the order gives
// the one window there is.
func (s *sheet) window(dimension string, f framing.Figure) label {
	if s.order.Mat.Window.By == mat.BySize && len(s.piece.Mat.Under) == 0 {
		return s.given("/mat/window/"+explain.Path(dimension), s.order.Mat.Window.Along(dimension))
	}
	return s.worked("/mat/window/"+explain.Path(dimension), f)
}

// A callout is a number with a word and a line to the part that it is about.
type callout struct {
	label
	part calloutPart
	n    int // which board
}

type calloutPart uint8

const (
	onFrame calloutPart = iota
	onLiner
	onGap
	onReveal
	onLayer
)

// callouts are the numbers of what is too narrow for a dimension line.
func (s *sheet) callouts() []callout {
	list := make([]callout, 0, 8)
	for i := range s.piece.Layers {
		if l := &s.piece.Layers[i]; s.bad(l) {
			list = append(list, callout{s.badLabel(i, l), onLayer, i})
		}
	}
	if !framing.Shapes || !s.shaped() {
		list = append(list, callout{s.given("/frame/face", s.order.Frame.Face).named("face"), onFrame, 0})
	}
	if s.order.Frame.Kind == molding.Floater {
		list = append(list, callout{s.given("/frame/gap", s.order.Frame.Gap).named("gap"), onGap, 0})
	}
	if !s.piece.Liner.IsZero() {
		list = append(list, callout{s.given("/liner/face", s.order.Liner.Face).named("liner face"), onLiner, 0})
	}
	under := s.order.Mat.Under
	for i := range min(len(s.piece.Mat.Under), len(under)) {
		at := explain.Path("/mat/under").Index(i) + "/reveal"
		list = append(list, callout{s.given(at, under[i].Reveal).named("reveal"), onReveal, i + 1})
	}
	return list
}

// badLabel is the number that says what is wrong with a part: how much it is
// too large, or how little holds it.
func (s *sheet) badLabel(i int, l *framing.LayerPlan) label {
	at := explain.Path("/layers").Index(i)
	word := partWord(l.Part)
	switch {
	case l.Play.Width.Shown < 0 && l.Play.Width.Shown <= l.Play.Height.Shown:
		return s.aside(at+"/play/width", l.Play.Width, word+", play", word+", too wide by").wrong(true)
	case l.Play.Height.Shown < 0:
		return s.aside(at+"/play/height", l.Play.Height, word+", play", word+", too high by").wrong(true)
	case l.Bite.Width.Shown <= l.Bite.Height.Shown:
		return s.aside(at+"/bite/width", l.Bite.Width, word+", bite", word+", clear of the lip by").wrong(true)
	}
	return s.aside(at+"/bite/height", l.Bite.Height, word+", bite", word+", clear of the lip by").wrong(true)
}

// stairs writes the callouts above the piece, side by side or, where that is
// too narrow, one step lower each; lines go down from them. What is too narrow
// even for that is left for the list.
func (s *sheet) stairs(v face, calls []callout, r *rows) []callout {
	const step, before = 14 * px, 5 * px
	x, room := v.sight.x0+pad, v.sight.x1-pad
	wide, tall := x, 0
	for i, c := range calls {
		wide += before + c.width() + 2*pad
		tall = max(tall, x+i*step+before+c.width())
	}
	var levels int
	switch {
	case wide <= room:
		levels = 1
	case tall <= room:
		levels = len(calls)
	default:
		return calls
	}
	for i, c := range calls {
		level := 0
		if levels > 1 {
			level = levels - 1 - i
		}
		y := -pad - level*line
		s.leader(x, y, s.calloutAt(v, c), c.bad)
		s.write(c.label, x+before, y-numberSize*descent/100, start, false)
		if levels > 1 {
			x += step
		} else {
			x += before + c.width() + 2*pad
		}
	}
	r.base[top] = levels*line + pad - pitch + 7*px
	return nil
}

// calloutAt is how far down the top of the piece a callout points.
func (s *sheet) calloutAt(v face, c callout) int {
	switch c.part {
	case onLiner:
		return (v.frame.y0 + v.sight.y0) / 2
	case onGap:
		return (v.frame.y0 + v.art.y0) / 2
	case onReveal:
		if c.n < v.boards {
			upper, lower := v.windows[c.n-1], v.windows[c.n]
			return (upper.y0 + lower.y0) / 2
		}
	case onLayer:
		return v.sized(v.sight, s.piece.Layers[c.n].Size.Shown()).y0
	}
	return (v.outside.y0 + v.frame.y0) / 2
}

// leader draws a line down from a callout, with a dot where it ends.
func (s *sheet) leader(x, y, to int, bad bool) {
	look := lineOf(bad)
	s.pen.path(look, x+4*px, y, x, y, x, to)
	s.pen.circle(x, to, 150, dotLook)
}

// list writes callouts one below the other, under everything.
func (s *sheet) list(calls []callout) {
	x, y := s.pen.bounds.x0, s.pen.bounds.y1+pad
	for _, c := range calls {
		y += line
		s.write(c.label, x, y, start, false)
	}
}

// partWord is what a part is called.
func partWord(p framing.LayerPart) string { return words(string(p)) }

// words is the English of a code, readable where there is none.
func words(code string) string {
	text := explain.English(code)
	if text != code {
		return text
	}
	b := []byte(code)
	for i := range b {
		if b[i] == '_' {
			b[i] = ' '
		}
	}
	return string(b)
}

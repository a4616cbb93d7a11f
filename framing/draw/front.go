package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// A face is what is seen of a piece from the front, laid on the paper.
type face struct {
	plot               // the scale; of rails that differ, where they lie
	outside, frame box // the frame, and what it leaves to be seen
	sight          box // what the liner leaves too
	windows        [1 + mat.MaxUnder]box
	boards         int // how many of the windows there are
	art, shown     box // the art, and what of it is seen
}

// layFace lays the piece on the paper.
func (s *sheet) layFace(width, height int) face {
	var v face
	f, m := s.piece.Frame, &s.piece.Mat
	if framing.Shapes && s.shaped() {
		v.plot = s.plot(width, height, false)
		v.outside, v.frame = v.rails, v.inside
	} else {
		out := f.Outside.Shown()
		v.scale = fit(out, width, height)
		v.outside = box{0, 0, v.of(out.Width), v.of(out.Height)}
		v.frame = v.sized(v.outside, f.Sight.Shown())
	}
	sc := v.scale
	v.sight = v.frame
	if !s.piece.Liner.IsZero() {
		around := v.outside
		if framing.Shapes && s.shaped() {
			around = v.frame
		}
		v.sight = sc.sized(around, s.piece.Liner.Sight.Shown())
	}
	v.art = sc.sized(v.sight, s.artSize())
	v.shown = v.art.within(v.sight)
	if m.IsZero() {
		return v
	}
	w := m.Window.Shown()
	x, y := v.sight.x0+sc.of(m.Visible.Left.Shown), v.sight.y0+sc.of(m.Visible.Top.Shown)
	v.windows[0] = box{x, y, x + sc.of(w.Width), y + sc.of(w.Height)}
	v.boards = 1
	for _, u := range m.Under {
		if v.boards == len(v.windows) {
			break
		}
		v.windows[v.boards] = sc.sized(v.windows[0], u.Window.Shown())
		v.boards++
	}
	lowest := v.windows[v.boards-1]
	v.art = sc.sized(lowest, s.artSize())
	v.shown = v.art.within(lowest).within(v.sight)
	return v
}

// artSize is the art's own size, or that of the largest rectangle within measured
// sides.
func (s *sheet) artSize() measure.Size {
	if framing.Shapes && s.skewed() {
		return measure.Size{Width: s.piece.Art.Width, Height: s.piece.Art.Height}
	}
	return s.order.Art.Least()
}

// skewed reports whether the art is given by four sides.
func (s *sheet) skewed() bool { return len(s.piece.Art.Outline) == 4 }

// skewedEdge is the edge of such art on the paper, its largest rectangle where the
// art is taken to be.
func (s *sheet) skewedEdge(v face) []int {
	clean := s.piece.Art.Clean
	p := plot{scale: v.scale, x: clean.Corner.X, y: clean.Corner.Y + clean.Size.Height}
	xy := p.xy(s.piece.Art.Outline)
	for i := 0; i < len(xy); i += 2 {
		xy[i] += v.art.x0
		xy[i+1] += v.art.y0
	}
	return xy
}

// front draws the piece as it hangs, with its dimensions.
func (s *sheet) front() {
	width, height := s.paper()
	calls := s.callouts()
	rowsAcross, list := 2, 0
	if !s.piece.Liner.IsZero() {
		rowsAcross++
	}
	if len(calls) > 0 {
		list = line
	}
	around := pitch*(rowsAcross+2) + 4*pad
	v := s.layFace(width-around, height-around-list-2*wordSize)
	s.pen.touch(v.outside)

	s.behind(v)
	s.artSeen(v)
	s.mats(v)
	s.rails(v)
	s.unfit(v)

	r := &rows{around: v.outside, base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	rest := s.stairs(v, calls, r)
	s.frontRows(v, r)
	s.rows(r)
	s.list(append(rest, s.skewList()...))
	if framing.Shapes && s.shaped() {
		s.slopeWords(s.pen.bounds.x0, s.pen.bounds.y1+pad/2)
	}
	s.sayFront()
}

// behind draws what is seen where there is neither art nor mat: the shade in a
// floater's gap, or the board that the art lies on.
func (s *sheet) behind(v face) {
	if s.order.Frame.Kind == molding.Floater {
		s.pen.rect(v.frame, depthLook)
		return
	}
	s.pen.rect(v.sight, behindLook)
}

// mats draws the boards from the lowest up, each with the white of its bevel.
func (s *sheet) mats(v face) {
	for i := v.boards - 1; i >= 0; i-- {
		id, name, bevel := "mat", "mat", s.piece.Mat.Bevel
		outer := v.sight
		if i > 0 {
			n := strconv.Itoa(i - 1)
			id, name, bevel = "mat-under-"+n, "mat/under/"+n, s.piece.Mat.Under[i-1].Bevel
		}
		window := v.windows[i].within(outer)
		s.part(id, name, partWord(framing.MatLayer), false)
		s.pen.ring(outer, window, boardLook[i])
		if bevel.Run.Shown > 0 && !window.empty() {
			// A bevel too narrow for the scale is still drawn as a hair.
			run := max(v.of(bevel.Run.Shown), 70)
			s.pen.ring(window.inset(-run).within(outer), window, boardEdge)
		} else {
			s.pen.rect(window, thinLook)
		}
		s.close()
	}
}

// rails draws the liner and the frame.
func (s *sheet) rails(v face) {
	if !s.piece.Liner.IsZero() {
		s.part("liner", "liner", partWord(framing.LinerLayer), false)
		s.fourRails(v.frame, v.sight, false, true)
		s.close()
	}
	s.part("frame", "frame", "frame", false)
	if framing.Shapes && s.shaped() {
		s.railAreas(v.plot, func(d side) string { return railLook(s.metal(), false, d) })
		s.pen.rect(v.frame, inkLook)
	} else {
		s.fourRails(v.outside, v.frame, s.metal(), false)
	}
	s.close()
}

// metal reports whether the frame is of metal.
func (s *sheet) metal() bool {
	return s.order.Frame.Wood == material.Aluminum
}

// fourRails draws four mitered rails between two boxes, the light from the left
// above, and two quiet lines along the profile.
func (s *sheet) fourRails(o, i box, metal, liner bool) {
	p := &s.pen
	p.area(railLook(metal, liner, top), o.x0, o.y0, o.x1, o.y0, i.x1, i.y0, i.x0, i.y0)
	p.area(railLook(metal, liner, right), o.x1, o.y0, o.x1, o.y1, i.x1, i.y1, i.x1, i.y0)
	p.area(railLook(metal, liner, bottom), o.x0, o.y1, o.x1, o.y1, i.x1, i.y1, i.x0, i.y1)
	p.area(railLook(metal, liner, left), o.x0, o.y0, o.x0, o.y1, i.x0, i.y1, i.x0, i.y0)
	face := min(i.x0-o.x0, i.y0-o.y0)
	if face > 6*px {
		p.rect(o.inset(face/5), thinLook)
		p.rect(o.inset(face*4/5), thinLook)
	}
	p.rect(i, inkLook)
}

// artSeen draws what is seen of the art as a calm stand-in for it.
func (s *sheet) artSeen(v face) {
	s.part("art", "art", partWord(framing.ArtLayer), false)
	defer s.close()
	b := v.shown
	if b.empty() {
		return
	}
	p := &s.pen
	w, h := b.width(), b.height()
	p.rect(b, s.artFill())
	switch s.order.Art.Kind {
	case framing.Mirror:
		s.gleam(b)
	case framing.Canvas:
		s.picture(b)
		s.weave(b)
	case framing.Panel:
		s.picture(b)
	default:
		s.picture(b.inset(min(w, h) / 9))
	}
}

// artFill is the surface of the art.
func (s *sheet) artFill() string {
	switch s.order.Art.Kind {
	case framing.Mirror:
		return `class="sheet mirror" fill="#dfe8ea" stroke="#26211b" stroke-width=".5"`
	case framing.Canvas:
		return `class="sheet canvas" fill="#eae1cf" stroke="#26211b" stroke-width=".6"`
	case framing.Panel:
		return `class="sheet panel" fill="#e8d9bd" stroke="#26211b" stroke-width=".6"`
	}
	return artLook
}

// gleam draws the light in a mirror.
func (s *sheet) gleam(b box) {
	w, h := b.width(), b.height()
	d := min(w, h)
	s.pen.raw(`<path d="`)
	for _, k := range [...]int{30, 38, 62} {
		s.pen.stroke(b.x0+w*k/100-d/6, b.y0+h/2+d/6, b.x0+w*k/100+d/6, b.y0+h/2-d/6)
	}
	s.pen.raw(`" class="gleam" fill="none" stroke="#ffffff" stroke-width="2.2" stroke-linecap="round"/>`, "\n")
}

// picture draws water, a far shore and a low sun.
func (s *sheet) picture(i box) {
	p := &s.pen
	if i.width() < 12*px || i.height() < 12*px {
		return
	}
	x := func(n int) int { return i.x0 + i.width()*n/100 }
	y := func(n int) int { return i.y0 + i.height()*n/100 }
	p.rect(i, `class="picture sky" fill="#ebe4d3"`)
	p.circle(x(70), y(38), min(i.width(), i.height())/13, `class="picture sun" fill="#dfc9a0"`)
	p.area(`class="picture shore" fill="#c3c5b4"`, x(0), y(58), x(18), y(50), x(37), y(55), x(58), y(47), x(83), y(55), x(100), y(52), x(100), y(66), x(0), y(66))
	p.rect(box{i.x0, y(64), i.x1, i.y1}, `class="picture water" fill="#b5c1bf"`)
	p.raw(`<path d="`)
	p.stroke(x(12), y(74), x(46), y(74))
	p.stroke(x(52), y(80), x(88), y(80))
	p.stroke(x(24), y(88), x(60), y(88))
	p.raw(`" class="picture wave" fill="none" stroke="#f2eee3" stroke-width=".8"/>`, "\n")
}

// weave draws some threads of a canvas.
func (s *sheet) weave(b box) {
	const threads = 24
	step := max(b.width(), b.height())/threads + 1
	s.pen.raw(`<path d="`)
	for x := b.x0 + step; x < b.x1; x += step {
		s.pen.stroke(x, b.y0, x, b.y1)
	}
	for y := b.y0 + step; y < b.y1; y += step {
		s.pen.stroke(b.x0, y, b.x1, y)
	}
	s.pen.raw(`" class="weave" fill="none" stroke="#8f8263" stroke-opacity=".35" stroke-width=".4"/>`, "\n")
}

// unfit draws the edge of the art, which one does not see, and the edges of the
// parts that do not go in or do not stay in.
func (s *sheet) unfit(v face) {
	if framing.Shapes && s.skewed() {
		s.pen.area(hiddenLook, s.skewedEdge(v)...)
	} else if v.art != v.shown && s.order.Frame.Kind != molding.Floater {
		s.pen.rect(v.art, hiddenLook)
	}
	for i := range s.piece.Layers {
		if l := &s.piece.Layers[i]; s.bad(l) {
			s.pen.rect(v.sized(v.sight, l.Size.Shown()), badLook)
		}
	}
}

// bad reports whether a part does not go in, or could fall out.
func (s *sheet) bad(l *framing.LayerPlan) bool {
	if min(l.Play.Width.Shown, l.Play.Height.Shown) < 0 {
		return true
	}
	if l.In == framing.FrameLayer && s.order.Frame.Kind == molding.Floater {
		return false // no lip is meant to cover it
	}
	return min(l.Bite.Width.Shown, l.Bite.Height.Shown) <= 0
}

package draw

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// back draws the piece from behind, hanging as it hangs: left and right have
// changed places.
func (s *sheet) back() {
	width, height := s.paper()
	around := pitch*6 + 4*pad
	out := s.piece.Frame.Outside.Shown()
	c := fit(out, width-around, height-around-3*line)
	frame := box{0, 0, c.of(out.Width), c.of(out.Height)}
	s.pen.touch(frame)
	h := &s.piece.Hang

	s.part("frame", "frame", "frame", false)
	inner := c.sized(frame, s.piece.Frame.Opening.Shown())
	if inner.empty() {
		inner = frame.inset(frame.width() / 8)
	}
	s.backRails(frame, inner)
	s.close()
	s.backing(c, frame, inner)

	r := &rows{around: frame, base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	var notes []label
	if !h.IsZero() {
		notes = s.hanging(c, frame, r)
	}
	r.add(top, span{frame.x0, frame.x1, s.worked("/frame/outside/width", s.piece.Frame.Outside.Width)})
	r.add(left, span{frame.y0, frame.y1, s.worked("/frame/outside/height", s.piece.Frame.Outside.Height)})
	s.rows(r)
	x, y := s.pen.bounds.x0, s.pen.bounds.y1+pad/2
	for _, l := range notes {
		y += line
		if l.text == "" {
			s.word(l.word, x, y)
			continue
		}
		s.write(l, x, y, start, false)
	}
	s.sayBack()
}

// backRails draws the back of the molding, flat and mitered.
func (s *sheet) backRails(o, i box) {
	s.pen.ring(o, i, backLook(s.metal()))
	s.pen.raw(`<path d="`)
	s.pen.stroke(o.x0, o.y0, i.x0, i.y0)
	s.pen.stroke(o.x1, o.y0, i.x1, i.y0)
	s.pen.stroke(o.x1, o.y1, i.x1, i.y1)
	s.pen.stroke(o.x0, o.y1, i.x0, i.y1)
	s.pen.raw(`" `, inkLook, "/>\n")
}

// backLook is the back of a molding.
func backLook(metal bool) string {
	if metal {
		return `class="metal" fill="#b4b8ba" stroke="#26211b" stroke-width=".8" stroke-linejoin="round"`
	}
	return `class="wood" fill="#d9c199" stroke="#26211b" stroke-width=".8" stroke-linejoin="round"`
}

// backing draws what closes the back: the dust cover of a piece that is ready
// to hang, else the last part in the rabbet and its points.
func (s *sheet) backing(c scale, frame, inner box) {
	if !s.piece.Hang.IsZero() && (s.piece.Frame.DustCover != framing.SizeFigure{}) {
		s.part("dust-cover", "dust_cover", "dust cover", false)
		s.pen.rect(c.sized(frame, s.piece.Frame.DustCover.Shown()), coverLook)
		s.close()
		s.pen.rect(inner, hiddenLook)
		return
	}
	if len(s.piece.Layers) == 0 {
		return
	}
	l := &s.piece.Layers[len(s.piece.Layers)-1]
	s.part("layer", string(l.Part), partWord(l.Part), s.bad(l))
	s.pen.rect(inner, depthLook)
	b := c.sized(inner, l.Size.Shown())
	s.pen.rect(b, `class="sheet" fill="#e3d8c4" stroke="#26211b" stroke-width=".7"`)
	if s.bad(l) {
		s.pen.rect(b, badLook)
	}
	s.close()
	s.points(inner)
}

// points draws the points that hold the package, every hand's breadth or so.
func (s *sheet) points(b box) {
	const d = 5 * px
	across := max(2, min(8, b.width()/(90*px)))
	down := max(2, min(8, b.height()/(90*px)))
	s.pen.raw(`<path d="`)
	for i := range across {
		x := b.x0 + b.width()*(2*i+1)/(2*across)
		s.pen.stroke(x, b.y0-d/2, x, b.y0+d)
		s.pen.stroke(x, b.y1+d/2, x, b.y1-d)
	}
	for i := range down {
		y := b.y0 + b.height()*(2*i+1)/(2*down)
		s.pen.stroke(b.x0-d/2, y, b.x0+d, y)
		s.pen.stroke(b.x1+d/2, y, b.x1-d, y)
	}
	s.pen.raw(`" class="points" fill="none" stroke="#5a5e60" stroke-width="1.6"/>`, "\n")
}

// hanging draws hangers, wire and hooks, and puts their dimensions into rows.
// It returns what stands below: the wire to cut, and the hooks above the floor.
func (s *sheet) hanging(c scale, frame box, r *rows) []label {
	h := &s.piece.Hang
	mid := frame.width() / 2
	reach := c.of(h.Span.Shown)
	// From behind the left hanger is at the right.
	rx, ry := mid+(reach+1)/2, c.of(h.Below.Left.Shown)
	lx, ly := mid-reach/2, c.of(h.Below.Right.Shown)
	wired := h.Wire.Shown > 0
	hooks := make([]int, 0, len(h.Marks)) // across, from the left as seen here
	for _, m := range h.Marks {
		hooks = append(hooks, mid-c.of(m.Across.Shown))
	}
	slices.Reverse(hooks) // they stand from the left of the front
	hookY := c.of(h.WireTop.Shown)
	over := wired && h.WireTop.Shown < 0

	if wired {
		s.part("wire", "wire", "wire", over)
		xy := make([]int, 0, 8)
		xy = append(xy, lx, ly)
		for _, x := range hooks {
			xy = append(xy, x, hookY)
		}
		s.pen.path(wireLook, append(xy, rx, ry)...)
		s.close()
	}
	s.part("hangers", "hanger", "hangers", false)
	s.hanger(lx, ly, wired, reach > 0)
	if reach > 0 {
		s.hanger(rx, ry, wired, true)
	}
	s.close()
	s.part("hooks", "hook", "hooks", false)
	for i, x := range hooks {
		y := hookY
		if !wired {
			y = ly
			if i > 0 {
				y = ry
			}
		}
		s.hook(x, y)
	}
	s.close()

	if over { // the dimensions of the top go over the hooks
		r.base[top] += 14*px - hookY
	}
	if wired && len(hooks) == 2 && hooks[0] != hooks[1] {
		r.add(top, span{hooks[0], hooks[1], s.worked("/hang/spread", h.Spread)})
	}
	if reach > 0 {
		r.add(top, span{lx, rx, s.worked("/hang/span", h.Span)})
	}
	if wired {
		up := span{0, hookY, s.aside("/hang/wire_top", h.WireTop, "", "above the top").wrong(over)}
		rise := span{hookY, ry, s.worked("/hang/rise", h.Rise)}
		if over {
			r.add(right, up)
			r.add(right, rise)
		} else {
			r.add(right, up, rise)
		}
	}
	r.add(right, span{0, ry, s.bears("/hang/below/left", h.Below.Left)})
	if h.Below.Left != h.Below.Right {
		r.add(left, span{0, ly, s.bears("/hang/below/right", h.Below.Right)})
	}

	var notes []label
	if wired {
		notes = append(notes, s.worked("/hang/wire", h.Wire).named("wire to cut"))
	}
	return append(notes, s.marks(h)...)
}

// bears is how far below the top a hanger bears.
func (s *sheet) bears(at explain.Path, f framing.Figure) label {
	return s.aside(at, f, "", "above the top").wrong(f.Shown < 0)
}

// hanger draws a ring on its strap, or a sawtooth.
func (s *sheet) hanger(x, y int, wired, ring bool) {
	if !ring && !wired {
		s.pen.area(metalLook, x-16*px, y-4*px, x+16*px, y-4*px, x+16*px, y, x+8*px, y+3*px, x, y, x-8*px, y+3*px, x-16*px, y)
		return
	}
	s.pen.rect(box{x - 3*px, y, x + 3*px, y + 13*px}, metalLook)
	s.pen.circle(x, y, 4*px, `class="ring" fill="none" stroke="#4b4f52" stroke-width="1.5"`)
}

// hook draws a hook in the wall and the mark of its nail.
func (s *sheet) hook(x, y int) {
	s.pen.path(`class="hook" fill="none" stroke="#26211b" stroke-width="1.6" stroke-linecap="round" stroke-linejoin="round"`,
		x, y-12*px, x, y, x+3*px, y+2*px, x+5*px, y-2*px)
	s.pen.circle(x, y-12*px, 170, dotLook)
}

// sayBack tells what the back shows.
func (s *sheet) sayBack() {
	f := s.piece.Frame
	list := []string{"The piece from behind: what is left from the front is right here.",
		"The frame is " + by(f.Outside.Width.Spoken(), f.Outside.Height.Spoken()) + " outside, width by height."}
	s.say("seen from behind", append(list, s.hangSaid()...)...)
}

// hangSaid tells how the piece hangs.
func (s *sheet) hangSaid() []string {
	h := &s.piece.Hang
	if h.IsZero() {
		return []string{"How it hangs is not decided."}
	}
	list := []string{"The hangers bear " + h.Below.Left.Spoken() + " below the top."}
	if h.Wire.Shown > 0 {
		list = append(list, "The taut wire rises "+h.Rise.Spoken()+"; cut "+h.Wire.Spoken()+" of wire.")
		if h.WireTop.Shown < 0 {
			list = append(list, "It stands above the frame's top: that does not work.")
		}
	}
	return list
}

package draw

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// outlineBack draws a frame that is no plain rectangle from behind: its rails, what
// closes it, and how it hangs. A dust cover is not drawn.
func (s *sheet) outlineBack() {
	width, height := s.paper()
	p := s.plot(width-pitch*6-4*pad, height-pitch*6-4*pad-4*line, true)
	all := p.all()
	s.pen.touch(all)
	s.part("frame", "frame", "frame", false)
	look := backLook(s.metal())
	s.railAreas(p, func(side) string { return look })
	s.close()

	panel := p.xy(s.piece.Shape.Outlines.Panel)
	last, bad := framing.ArtLayer, false
	if stack := s.piece.Depth.Stack; len(stack) > 0 {
		last = stack[len(stack)-1].Part
	}
	for i := range s.piece.Layers {
		bad = bad || s.bad(&s.piece.Layers[i])
	}
	s.part("layer", string(last), partWord(last), bad)
	s.pen.area(`class="sheet" fill="#e3d8c4" stroke="#26211b" stroke-width=".7"`, panel...)
	if bad {
		s.pen.area(badLook, panel...)
	}
	s.close()

	r := &rows{around: all, base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	notes := []label{saying("seen: " + partWord(last))}
	if !s.piece.Hang.IsZero() {
		notes = append(notes, s.hanging(p.scale, p.rails, r)...)
	}
	across, down := s.outsideLabels()
	r.add(top, span{p.rails.x0, p.rails.x1, across})
	r.add(left, span{p.rails.y0, p.rails.y1, down})
	s.rows(r)
	x, y := s.pen.bounds.x0, s.pen.bounds.y1+pad/2
	for _, l := range notes {
		y += line
		s.text(l, x, y)
	}
	if s.piece.Shape.Slope != nil {
		s.wrapped("The sides slope: drawn are their joints as they look from straight ahead.", x, y, max(s.pen.bounds.x1-x, leastPaper*px))
	}
	s.say("seen from behind", "The piece from behind: what is left from the front is right here.", s.outsideSaid(), s.all(), strings.Join(s.hangSaid(), " "))
}

// outsideLabels are how wide and how high the frame is.
func (s *sheet) outsideLabels() (across, down label) {
	shape := &s.piece.Shape
	if s.boxed() {
		f := s.piece.Frame.Outside
		return s.worked("/frame/outside/width", f.Width), s.worked("/frame/outside/height", f.Height)
	}
	across, down = s.outside(shape.Bounds.Width), s.outside(shape.Bounds.Height)
	if !s.regular() {
		return across, down
	}
	at, reg := explain.Path("/shape/regular"), &shape.Regular
	for _, whole := range [...]struct {
		label
		framing.Figure
	}{{s.worked(at+"/outside", reg.Outside), reg.Outside}, {s.worked(at+"/points", reg.Points), reg.Points}} {
		l := whole.label
		if isLength(shape.Bounds.Width, whole.Exact) {
			across, l = l, l.unplaced()
		}
		if isLength(shape.Bounds.Height, whole.Exact) {
			down = l
		}
	}
	return across, down
}

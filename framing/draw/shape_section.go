package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// cutRail is the frame's molding where the section goes through it: along the first
// side that has a rail.
func (s *sheet) cutRail() molding.Frame {
	f := s.order.Frame
	if s.shaped() {
		f.Face = f.FaceOf(s.firstRail())
	}
	return f
}

// slopeSection draws a board that slopes cut through, its front upward. How its
// rabbet is cut is left to the bench.
func (s *sheet) slopeSection() {
	slope := &s.piece.Shape.Slope[0]
	at := explain.Path("/shape/slope/0")
	side := slope.Side
	width, height := s.paper()
	t := s.table()
	pitch_ := side.Pitch.Flat()
	run, depth := side.Run(), side.Depth()
	outX, outY := side.Thickness.Sin(pitch_), side.Thickness.Cos(pitch_)
	across := width - 2*pitch - 6*pad - fan - t.width()
	below := across < 2*width/5
	if below {
		across = width - 2*pitch - 6*pad
	}
	c := fit(measure.Size{Width: run + outX, Height: depth + outY}, min(across, 320*px), height-6*pitch-4*pad)
	// The rim lies at the left and foremost, the sight edge at the right.
	x0, y0 := c.of(outX), 0
	x1, y1 := c.of(outX+run), c.of(depth)
	bx, by := -c.of(outX), c.of(outY)
	s.part("frame", "frame", "frame", false)
	s.pen.area(endLook, x0, y0, x1, y1, x1+bx, y1+by, x0+bx, y0+by)
	s.pen.path(`class="front" fill="none" stroke="#26211b" stroke-width="2.6"`, x0, y0, x1, y1)
	for _, k := range [...]int{1, 2, 3} { // the grain of its end
		s.pen.path(hatchLook, x0+bx*k/4, y0+by*k/4, x1+bx*k/4, y1+by*k/4)
	}
	s.close()
	r := &rows{around: box{0, 0, x1, y1 + by}, base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	wide, deep := s.worked(at+"/run", slope.Run).named("run"), s.worked(at+"/depth", slope.Depth).named("depth")
	s.tell(wide)
	s.tell(deep)
	r.add(top, span{x0, x1, wide})
	r.add(left, span{y0, y1, deep})
	s.rows(r)
	if b := s.pen.bounds; len(t.rows) > 0 {
		if below {
			s.fanOut(cut{}, t, nil, b.x0, b.y1+pad+len(t.rows)*line/2)
		} else {
			s.fanOut(cut{}, t, nil, b.x1+fan, (b.y0+b.y1)/2)
		}
	}
	x, y := s.pen.bounds.x0, s.pen.bounds.y1+pad/2
	through := s.railNames(slope.Sides)
	if s.regular() {
		through = "one side of " + strconv.Itoa(len(slope.Sides))
	}
	y = s.wrapped("Cut through: "+through+"; "+pitchWords(side.Pitch)+".", x, y, width-4*pad)
	s.text(s.molding(slope.Sides[0]).named("board, along its front"), x, y+line)
	s.text(s.given("/frame/slope/thickness", side.Thickness).named("board, thick"), x, y+2*line)
	s.wrapped("The heavy line is the front. The rabbet behind the sight edge is not drawn.", x, y+2*line, width-4*pad)
	s.say("section through a sloping side", s.all())
}

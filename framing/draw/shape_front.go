package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// outlineFront draws a frame around an outline that is no rectangle as it hangs.
func (s *sheet) outlineFront() {
	width, height := s.paper()
	o := &s.piece.Shape.Outlines
	lines := len(o.Rails) + len(s.piece.Shape.Slope)
	if s.regular() {
		lines = 4
	}
	p := s.plot(width-2*pitch-5*pad, height-4*pitch-4*pad-min(lines*line, height/3), false)
	all := p.all()
	s.pen.touch(all)

	s.part("art", "art", partWord(framing.ArtLayer), false)
	fill := s.artFill()
	if s.upright() {
		fill = behindLook
	}
	s.pen.area(fill, p.xy(o.Panel)...)
	s.inOutline(p)
	s.close()
	s.part("frame", "frame", "frame", false)
	s.railAreas(p, func(d side) string { return railLook(s.metal(), false, d) })
	s.pen.area(inkLook, p.xy(o.Sight)...)
	s.close()
	s.panelEdge(p)

	r := &rows{around: all, base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	s.outlineRows(p, r)
	s.rows(r)
	s.outlineList(p)
	s.say("seen from the front", s.outsideSaid(), s.all())
}

// inOutline draws what tells the art from a plain surface: the gleam of a mirror, or
// the art that the outline goes around.
func (s *sheet) inOutline(p plot) {
	switch {
	case s.order.Art.Kind == framing.Mirror:
		s.gleam(p.inside)
	case s.upright():
		x, y := p.at(plane.Point{})
		b := p.sized(box{x, y, x, y}, s.order.Art.Least())
		s.pen.rect(b, s.artFill())
		s.picture(b.inset(min(b.width(), b.height()) / 9))
	}
}

// upright reports whether a rectangle of art lies in the middle of the outline that
// goes around it. With an odd number of sides it lies elsewhere.
func (s *sheet) upright() bool {
	o := &s.order.Art.Outline
	return o.By == framing.ByAround && o.Stand != plane.Sideways && o.Sides%2 == 0 && s.order.Art.Kind != framing.Mirror
}

// panelEdge draws the edge of the panel, which one does not see under the rails, and
// a letter inside each side.
func (s *sheet) panelEdge(p plot) {
	o := &s.piece.Shape.Outlines
	panel, sight := p.xy(o.Panel), p.xy(o.Sight)
	s.pen.area(hiddenLook, panel...)
	if s.regular() || len(sight) != len(panel) {
		return
	}
	turn := 1
	if !leftward(panel) {
		turn = -1
	}
	var written []box
	for i := 0; i < len(panel); i += 2 {
		j := (i + 2) % len(panel)
		ax, ay, bx, by := sight[i], sight[i+1], sight[j], sight[j+1]
		dx, dy := bx-ax, by-ay
		long := max(abs(dx)+abs(dy), 1) // between the length and 1.4 of it
		x := (ax+bx)/2 + turn*dy*17*px/long
		y := (ay+by)/2 - turn*dx*17*px/long
		name := s.railName(i / 2)
		b := textBox(x, y+wordSize*35/100, textWidth(name, wordSize, false), wordSize, middle, false)
		free := true
		for _, w := range written {
			free = free && b.inset(-px).within(w).empty()
		}
		if !free {
			continue
		}
		written = append(written, b)
		s.pen.num(`<text class="mark" x="`, x)
		s.pen.num(`" y="`, y+wordSize*35/100)
		s.pen.raw(`" font-size="13" text-anchor="middle" fill="#26211b">`, name, "</text>\n")
	}
}

// outlineRows puts what is seen and the outside above and to the left, and the two
// edges of a level rail at the bottom.
func (s *sheet) outlineRows(p plot, r *rows) {
	shape := &s.piece.Shape
	least, most := corners(shape.Outlines.Sight)
	if s.regular() {
		sight := s.worked("/shape/regular/sight", shape.Regular.Sight)
		s.tell(sight.named("all sides are alike; seen across flats"))
		if isLength(most.X-least.X, shape.Regular.Sight.Exact) {
			r.add(top, span{p.inside.x0, p.inside.x1, sight})
			sight = sight.unplaced()
		}
		if isLength(most.Y-least.Y, shape.Regular.Sight.Exact) {
			r.add(left, span{p.inside.y0, p.inside.y1, sight})
		}
	}
	across, down := s.outsideLabels()
	r.add(top, span{p.rails.x0, p.rails.x1, across})
	r.add(left, span{p.rails.y0, p.rails.y1, down})
	if rail := s.levelRail(p); rail != nil {
		q := p.xy(rail)
		short, long := s.worked("/shape/regular/short_point", shape.Regular.ShortPoint), s.worked("/shape/regular/long_point", shape.Regular.LongPoint)
		s.tell(short.named("each rail, short point"))
		s.tell(long.named("long point"))
		r.add(bottom, span{q[0], q[2], short})
		r.add(bottom, span{q[6], q[4], long})
	}
}

// levelRail is the lowest rail of a regular frame that lies flat and stands on a
// side.
func (s *sheet) levelRail(p plot) []plane.Point {
	if !s.regular() || s.piece.Shape.Slope != nil {
		return nil
	}
	for _, rail := range s.piece.Shape.Outlines.Rails {
		if len(rail) == 4 {
			if q := p.xy(rail); q[5] == q[7] && q[5] == p.rails.y1 {
				return rail
			}
		}
	}
	return nil
}

// outlineList writes below the piece what has no place beside it: the rails one by
// one, or what is true of all of them.
func (s *sheet) outlineList(p plot) {
	shape := &s.piece.Shape
	list := []label{s.molding(s.firstRail()).named("face")}
	if len(s.order.Frame.Faces) > 0 {
		list = nil
	}
	if s.regular() {
		list = append(list, s.panelSize())
		if s.levelRail(p) == nil && shape.Slope == nil {
			list = append(list,
				s.edgeOf("/shape/regular/long_point", shape.Regular.LongPoint, "each rail, long point"),
				s.edgeOf("/shape/regular/short_point", shape.Regular.ShortPoint, "each rail, short point"))
		}
		if shape.Slope != nil {
			list = append(list,
				s.edgeOf("/shape/slope/0/front_rim", shape.Slope[0].FrontRim, "each side, rim"),
				s.edgeOf("/shape/slope/0/front_sight", shape.Slope[0].FrontSight, "each side, sight edge"))
		}
	}
	if art := s.order.Art; art.Width > 0 { // what the outline goes around
		list = append(list, s.given("/art/width", art.Width).named("art's width"), s.given("/art/height", art.Height).named("art's height"))
	}
	x, y := s.pen.bounds.x0, s.pen.bounds.y1+pad/2
	for _, l := range list {
		y += line
		s.text(l, x, y)
	}
	if !s.regular() {
		y = s.railList(x, y)
	}
	s.slopeWords(x, y)
}

// firstRail is the first side that has a rail.
func (s *sheet) firstRail() int {
	for i, section := range s.piece.Shape.Frame.Sections {
		if !section.IsZero() {
			return i
		}
	}
	return 0
}

// railList writes the outer and the sight edge of each rail, column by column.
func (s *sheet) railList(x, y int) int {
	shape := &s.piece.Shape
	lines := make([][]label, len(shape.Sides))
	for i := range lines {
		at, slope := s.sloped(i)
		line := []label{saying(s.railName(i))}
		switch {
		case slope != nil && i == slope.Sides[0]:
			line = append(line, s.edgeOf(at+"/front_rim", slope.FrontRim, "rim"), s.edgeOf(at+"/front_sight", slope.FrontSight, "sight"))
		case slope != nil:
			line = append(line, saying("as "+s.railName(slope.Sides[0])))
		case i >= len(shape.Rails) || shape.Rails[i].IsZero():
			line = append(line, s.plain(shape.Sides[i].Length).named("no rail, the panel's edge is bare"))
		default:
			line = append(line, s.edgeOf(railAt(i)+"/outer", shape.Rails[i].Outer, "outer"), s.edgeOf(railAt(i)+"/sight", shape.Rails[i].Sight, "sight"))
		}
		if i < len(s.order.Frame.Faces) && len(line) == 3 {
			line = append(line, s.molding(i).named("face"))
		}
		lines[i] = line
	}
	var column [5]int // where each begins
	for k := range 4 {
		for _, line := range lines {
			if k == 1 && len(line) == 2 { // it runs on
				continue
			}
			if k < len(line) {
				column[k+1] = max(column[k+1], column[k]+line[k].width()+2*pad)
			}
		}
		column[k+1] = max(column[k+1], column[k])
	}
	for _, list := range lines {
		y += line
		for k, l := range list {
			s.text(l, x+column[k], y)
		}
	}
	return y
}

// edgeOf is the length of a rail's edge, or by how much there is none.
func (s *sheet) edgeOf(at explain.Path, f framing.Figure, name string) label {
	return s.aside(at, f, name, name+": short by").wrong(f.Shown < 0)
}

// slopeWords says how far sides slope that are drawn as wide as they look.
func (s *sheet) slopeWords(x, y int) {
	slopes := s.piece.Shape.Slope
	if slopes == nil {
		return
	}
	width := max(s.pen.bounds.x1-x, leastPaper*px)
	if s.order.Frame.Slope.Alike() {
		y = s.wrapped("each side: "+pitchWords(slopes[0].Side.Pitch), x, y, width)
	} else {
		for k := range slopes {
			y = s.wrapped(s.railNames(slopes[k].Sides)+": "+pitchWords(slopes[k].Side.Pitch), x, y, width)
		}
	}
	s.wrapped("sides are drawn as wide as they look, which is their run", x, y, width)
}

// panelSize is the size of a regular panel, as the order gives it where it does.
func (s *sheet) panelSize() label {
	o, p := &s.order.Art.Outline, &s.piece.Shape.Panel
	word := "panel across " + string(p.Across)
	if p.Across == plane.OneSide {
		word = "panel, along one side"
	}
	if o.Size == p.Size && o.Size > 0 {
		return s.given("/art/outline/size", o.Size).named(word)
	}
	return s.worked("/shape/regular/panel", s.piece.Shape.Regular.Panel).named("panel across flats")
}

// outsideSaid tells how large a frame is that is no rectangle.
func (s *sheet) outsideSaid() string {
	across, down := s.outsideLabels()
	return "The frame has " + strconv.Itoa(len(s.piece.Shape.Sides)) + " sides and is " + by(across.spoken, down.spoken) + " outside, width by height."
}

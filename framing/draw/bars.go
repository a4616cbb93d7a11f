package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A bar is a rail laid flat, or several that are cut alike, its sight edge above:
// so lies the rail at the bottom of a frame, seen from the front.
type bar struct {
	name        string
	face, sight measure.Length
	ends        [2]barEnd // left and right
	back        bool      // it slopes: back edges reach farther than the front's
	above       []edge    // dimensions, row by row outward
	below       []edge
	notes       []string
}

// A barEnd is one end of a bar.
type barEnd struct {
	growth, back measure.Length // of the outer edge past the sight edge, of the back past the front
	lines        []label
}

// An edge is a dimension of a bar, from how far left of its sight edge to how far
// right of it.
type edge struct {
	left, right measure.Length
	label
}

// over and under add a dimension outward of those that the bar has, put a line to
// those about an end.
func (b *bar) over(left, right measure.Length, l label) {
	b.above = append(b.above, edge{left, right, l})
}
func (b *bar) under(left, right measure.Length, l label) {
	b.below = append(b.below, edge{left, right, l})
}
func (e *barEnd) put(l label) { e.lines = append(e.lines, l) }

// mostBar is how wide a rail is drawn at most.
const mostBar = 90 * px

// bars draws each different rail, one below the other.
func (s *sheet) bars() {
	list := s.listBars()
	width, _ := s.paper()
	long, face := measure.Length(1), measure.Length(1)
	for i := range list {
		a, b := list[i].reach()
		long, face = max(long, a+b), max(face, list[i].face)
	}
	c := fit(measure.Size{Width: long, Height: face}, width-6*pad, mostBar)
	y := 0
	for i := range list {
		y = s.bar(c, i, &list[i], y) + 2*pad
	}
	if l := s.footage(); l.text != "" {
		y += line
		s.text(l.named("molding in all, without kerfs and waste"), 0, y)
	}
	for i, section := range s.piece.Shape.Frame.Sections {
		if section.IsZero() {
			y += line
			s.text(saying("Side "+s.railName(i)+" has no rail."), 0, y)
		}
	}
	s.say("rails laid flat", "Each rail that differs, laid flat with its front upward.", s.all())
}

// reach is how far the bar goes to the left of where its sight edge begins, and to
// the right of there.
func (b *bar) reach() (left, right measure.Length) {
	a, z := &b.ends[0], &b.ends[1]
	return max(0, a.growth, a.back, a.growth+a.back), b.sight + max(0, z.growth, z.back, z.growth+z.back)
}

// bar draws one bar below y, and returns how far down it reaches.
func (s *sheet) bar(c scale, n int, b *bar, y int) int {
	y += line
	s.text(saying(b.name), 0, y)
	from, to := b.reach()
	r := &rows{base: [4]int{pad / 2, pad / 2, pad / 2, pad / 2}}
	above := len(b.above)*pitch + 30*px
	x0, y0 := c.of(from), y+above
	x := func(l measure.Length) int { return x0 + c.of(l) }
	y1 := y0 + max(c.of(b.face), 2*px)
	left, right := &b.ends[0], &b.ends[1]
	s.part("rail-"+strconv.Itoa(n), "frame", "rail", false)
	if b.back {
		s.pen.area(endLook, x(-left.back), y0, x(b.sight+right.back), y0, x(b.sight+right.growth+right.back), y1, x(-left.growth-left.back), y1)
	}
	s.pen.area(railLook(s.metal(), false, top), x(0), y0, x(b.sight), y0, x(b.sight+right.growth), y1, x(-left.growth), y1)
	if b.back && (left.back < 0 || right.back < 0) {
		s.pen.area(hiddenLook, x(-left.back), y0, x(b.sight+right.back), y0, x(b.sight+right.growth+right.back), y1, x(-left.growth-left.back), y1)
	}
	for i, e := range b.ends {
		at := x(0)
		if i == 1 {
			at = x(b.sight)
		}
		if e.growth != 0 {
			s.pen.path(hiddenLook, at, y0, at, y1)
		}
	}
	s.close()

	r.around = box{x(-from), y0, x(to), y1}
	for _, e := range b.above {
		s.tell(e.label)
		r.add(top, span{x(-e.left), x(b.sight + e.right), e.label})
	}
	for _, e := range b.below {
		s.tell(e.label)
		r.add(bottom, span{x(-e.left), x(b.sight + e.right), e.label})
	}
	s.rows(r)
	return s.barEnds(b, r.around.x0, r.around.x1, y1+r.extent(bottom)+pad/2)
}

// barEnds writes how both ends are cut: side by side, or where that is too wide one
// below the other.
func (s *sheet) barEnds(b *bar, x0, x1, y int) int {
	width := [2]int{}
	for i, e := range b.ends {
		for _, l := range e.lines {
			width[i] = max(width[i], l.width())
		}
	}
	paper, _ := s.paper()
	right := max(x1, x0+width[0]+width[1]+3*pad)
	beside := right <= paper-2*pad
	deepest, at := y, y
	for i, e := range b.ends {
		x := x0
		if i == 1 {
			if beside {
				at, x = y, right-width[1]
			} else {
				at = deepest
			}
		}
		for _, l := range e.lines {
			at += line * 9 / 10
			s.text(l, x, at)
		}
		deepest = max(deepest, at)
	}
	for _, n := range b.notes {
		deepest = s.wrapped(n, x0, deepest, paper-4*pad)
	}
	return deepest
}

// text writes a number with its words, or words alone.
func (s *sheet) text(l label, x, y int) {
	s.tell(l)
	if l.text == "" {
		s.word(l.word, x, y)
		return
	}
	s.write(l, x, y, start, false)
}

// angle is an angle of the piece's plan, with words about it.
func (s *sheet) angle(at explain.Path, a framing.AngleFigure, before, after string) label {
	if a.Shown < 0 { // nobody reads a minus off a scale: the words say which way
		a.Shown = -a.Shown
	}
	return label{&written{word: before, text: a.Text(), spoken: a.Text() + " degrees", path: s.at("/pieces") + at, after: "°" + after}}
}

// footage is what all rails take of the molding.
func (s *sheet) footage() label {
	shape := &s.piece.Shape
	switch {
	case shape.Slope != nil:
		return saying("")
	case s.regular():
		return s.worked("/shape/regular/footage", shape.Regular.Footage)
	case s.shaped():
		return s.worked("/shape/footage", shape.Footage)
	}
	return s.worked("/frame/footage", s.piece.Frame.Footage)
}

package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// shaped reports whether the frame is no plain rectangle.
func (s *sheet) shaped() bool { return !s.piece.Shape.IsZero() }

// regular reports whether all its sides and corners are equal, boxed whether it is
// around a rectangle all the same: of rails that differ, or that slope.
func (s *sheet) regular() bool { return s.piece.Shape.Panel.Sides > 0 }
func (s *sheet) boxed() bool {
	return s.shaped() && !s.regular() && !s.piece.Frame.IsZero()
}

// A plot lays the plan's plane on the paper, where Y runs up; from behind left and
// right change places.
type plot struct {
	scale
	size          measure.Size
	x, y          measure.Length // what comes to the left top of the paper
	behind        bool
	rails, inside box // around the rails, and around what one sees in them
}

// plot lays the frame's outlines on paper of this size.
func (s *sheet) plot(width, height int, behind bool) plot {
	o := &s.piece.Shape.Outlines
	least, most := corners(o.Panel, o.Rails...)
	p := plot{size: measure.Size{Width: most.X - least.X, Height: most.Y - least.Y}, x: least.X, y: most.Y, behind: behind}
	if behind {
		p.x = most.X
	}
	p.scale = fit(p.size, width, height)
	p.rails = p.around(corners(nil, o.Rails...))
	p.inside = p.around(corners(o.Sight))
	return p
}

// corners are the least and the greatest of places.
func corners(points []plane.Point, more ...[]plane.Point) (least, most plane.Point) {
	first := true
	for i := -1; i < len(more); i++ {
		if i >= 0 {
			points = more[i]
		}
		for _, p := range points {
			if first {
				least, most, first = p, p, false
			}
			least = plane.Point{X: min(least.X, p.X), Y: min(least.Y, p.Y)}
			most = plane.Point{X: max(most.X, p.X), Y: max(most.Y, p.Y)}
		}
	}
	return least, most
}

// at is where a point of the plane lies on the paper.
func (p plot) at(q plane.Point) (x, y int) {
	across := q.X - p.x
	if p.behind {
		across = -across
	}
	return p.of(across), p.of(p.y - q.Y)
}

func (p plot) around(a, b plane.Point) box {
	x0, y0 := p.at(a)
	x1, y1 := p.at(b)
	return box{min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)}
}

// all is the box around everything.
func (p plot) all() box { return box{0, 0, p.of(p.size.Width), p.of(p.size.Height)} }

// xy are the places of an outline as the pen takes them.
func (p plot) xy(outline []plane.Point) []int {
	list := make([]int, 0, 2*len(outline))
	for _, q := range outline {
		x, y := p.at(q)
		list = append(list, x, y)
	}
	return list
}

// leftward reports whether an outline on the paper runs so that its inside lies to
// the left.
func leftward(xy []int) bool {
	sum := int64(0)
	for i := 0; i+1 < len(xy); i += 2 {
		j := (i + 2) % len(xy)
		sum += int64(xy[i])*int64(xy[j+1]) - int64(xy[j])*int64(xy[i+1])
	}
	return sum < 0 // Y runs down
}

// railAreas draws each rail as it lies, its joints between them: lit from the left
// above, with two quiet lines along the profile.
func (s *sheet) railAreas(p plot, look func(outward side) string) {
	for _, rail := range s.piece.Shape.Outlines.Rails {
		if len(rail) != 4 {
			continue
		}
		q := p.xy(rail)
		dx, dy := q[4]+q[6]-q[0]-q[2], q[5]+q[7]-q[1]-q[3] // outward
		outward := left
		switch {
		case 5*dy < -6*abs(dx):
			outward = top
		case 5*dy > 6*abs(dx):
			outward = bottom
		case dx > 0:
			outward = right
		}
		s.pen.area(look(outward), q...)
		if max(abs(dx), abs(dy)) < 12*px || p.behind {
			continue
		}
		for _, part := range [...]int{1, 4} {
			along := func(i, j int) int { return q[i] + (q[j]-q[i])*part/5 }
			s.pen.path(thinLook, along(0, 6), along(1, 7), along(2, 4), along(3, 5))
		}
	}
}

// railName is what the rail along a side is called: where it lies in a rectangle,
// else a letter.
func (s *sheet) railName(i int) string {
	if s.boxed() {
		return [...]string{"bottom", "right", "top", "left"}[i%4]
	}
	if i < 26 {
		return string(rune('A' + i))
	}
	return "A" + strconv.Itoa(i-25)
}

// railWord is a rail in a sentence.
func (s *sheet) railWord(i int) string {
	if s.boxed() {
		return "the " + s.railName(i) + " rail"
	}
	return "rail " + s.railName(i)
}

// railNames lists sides: "left and right".
func (s *sheet) railNames(sides []int) string {
	text := ""
	for n, i := range sides {
		switch {
		case n > 0 && n == len(sides)-1:
			text += " and "
		case n > 0:
			text += ", "
		}
		text += s.railName(i)
	}
	return text
}

// sloped is how side i slopes, where it does.
func (s *sheet) sloped(i int) (at explain.Path, slope *framing.SlopePlan) {
	for k := range s.piece.Shape.Slope {
		slope := &s.piece.Shape.Slope[k]
		for _, side := range slope.Sides {
			if side == i {
				return explain.Path("/shape/slope").Index(k), slope
			}
		}
	}
	return "", nil
}

// faceLabel is how wide the rail along a side is, or looks where it slopes.
func (s *sheet) faceLabel(i int) label {
	if at, slope := s.sloped(i); slope != nil {
		if i != slope.Sides[0] {
			return s.worked(at+"/run", slope.Run).unplaced()
		}
		return s.worked(at+"/run", slope.Run)
	}
	return s.molding(i)
}

// molding is the width of the molding along a side, as the order gives it.
func (s *sheet) molding(i int) label {
	if i < len(s.order.Frame.Faces) {
		return s.given(explain.Path("/frame/faces").Index(i), s.order.Frame.Faces[i])
	}
	return s.given("/frame/face", s.order.Frame.Face)
}

// outside is how far the frame reaches along one dimension, said as an outside: never
// too small.
func (s *sheet) outside(l measure.Length) label {
	l, _ = s.format.Round(l, measure.Up)
	return s.plain(l)
}

// plain is a length of the plan that is no figure: nobody can ask for its working.
func (s *sheet) plain(l measure.Length) label {
	f := framing.FigureOf(l, s.format)
	return label{&written{text: f.Text(), spoken: f.Spoken()}}
}

// unplaced is a number that is written once more: it has its place where it was
// written first.
func (l label) unplaced() label {
	n := *l.written
	n.path = ""
	return label{&n}
}

// roundOff is how far a size taken from corners lies from the figure that it was
// drawn after: each corner is rounded to a nanometer, along and across.
const roundOff measure.Length = 4

func isLength(a, b measure.Length) bool { return max(a-b, b-a) <= roundOff }

// degrees writes an angle: "22.5°".
func degrees(a measure.Angle) string {
	return framing.AngleFigure{Exact: a, Shown: a}.Text() + "°"
}

// pitchWords says how far a side slopes, counted both ways.
func pitchWords(p molding.Pitch) string {
	return "pitch " + degrees(p.Flat()) + " from flat, " + degrees(p.Vertical()) + " from vertical"
}

// railAt is where the rail along a side stands.
func railAt(i int) explain.Path { return explain.Path("/shape/rails").Index(i) }

// undrawn is the sheet of what cannot be drawn, which says why.
func (s *sheet) undrawn(why ...string) {
	width, _ := s.paper()
	y := 0
	for _, w := range why {
		y = s.wrapped(w, 0, y, width-4*pad)
	}
	s.say("in words", s.all())
}

// wrapped writes words in as many lines as they need, and returns where the last one
// stands.
func (s *sheet) wrapped(text string, x, y, width int) int {
	s.tell(saying(text))
	for text != "" {
		line1 := text
		if textWidth(text, wordSize, false) > width {
			cut := 0
			for i := range len(text) {
				if text[i] == ' ' && (cut == 0 || textWidth(text[:i], wordSize, false) <= width) {
					cut = i
				}
			}
			if cut > 0 {
				line1 = text[:cut]
			}
		}
		y += line * 9 / 10
		s.word(line1, x, y)
		text = text[len(line1):]
		if text != "" {
			text = text[1:]
		}
	}
	return y
}

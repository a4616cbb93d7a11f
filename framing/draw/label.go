package draw

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A label is a number to be written beside a dimension line, or with a word
// before it. It is passed on by value and never changed.
type label struct{ *written }

type written struct {
	word   string
	text   string
	spoken string
	path   explain.Path
	given  bool
	bad    bool
	after  string // words behind the number
}

// worked is a figure of the piece's plan, at a path below it.
func (s *sheet) worked(at explain.Path, f framing.Figure) label {
	return label{&written{text: f.Text(), spoken: f.Spoken(), path: s.at("/pieces") + at}}
}

// given is a length of the piece's order, at a path below it.
func (s *sheet) given(at explain.Path, l measure.Length) label {
	f := framing.FigureOf(l, s.format)
	return label{&written{text: f.Text(), spoken: f.Spoken(), path: s.at("/order/pieces") + at, given: true}}
}

// at is where the piece stands in a list of pieces.
func (s *sheet) at(list explain.Path) explain.Path { return list.Index(s.number) }

// aside is a figure that is measured to one side or the other.
func (s *sheet) aside(at explain.Path, f framing.Figure, word, other string) label {
	f, word = f.Aside(word, other)
	return s.worked(at, f).named(word)
}

// named puts a word before a number.
func (l label) named(word string) label {
	n := *l.written
	n.word = word
	return label{&n}
}

// wrong marks a number that says what does not fit.
func (l label) wrong(bad bool) label {
	n := *l.written
	n.bad = bad
	return label{&n}
}

// saying is words without a number.
func saying(word string) label { return label{&written{word: word}} }

// width is how wide the label is at most.
func (l label) width() int {
	w := textWidth(l.text, numberSize, l.given || l.bad)
	if l.word != "" {
		w += textWidth(l.word+" ", wordSize, false)
	}
	return w + textWidth(l.after, wordSize, false)
}

// anchor says which point of a text is given.
type anchor uint8

const (
	start anchor = iota
	middle
	end
)

var anchors = [...]string{"", ` text-anchor="middle"`, ` text-anchor="end"`}

// textBox is where a text can be at most.
func textBox(x, y, width, size int, a anchor, upright bool) box {
	x0 := 0
	switch a {
	case middle:
		x0 = -(width + 1) / 2
	case end:
		x0 = -width
	}
	up, down := size*ascent/100, size*descent/100
	if upright { // turned to be read from the right: along is up, above is left
		return box{x - up, y - x0 - width, x + down, y - x0}
	}
	return box{x + x0, y - up, x + x0 + width, y + down}
}

// write writes a label; an upright one is read from the right.
func (s *sheet) write(l label, x, y int, a anchor, upright bool) {
	p := &s.pen
	b := textBox(x, y, l.width(), numberSize, a, upright)
	p.touch(b)
	tap := s.Interactive && l.path != ""
	if tap {
		s.open(l)
		p.rect(box{b.x0 - 6*px, b.y0 - 4*px, b.x1 + 6*px, b.y1 + 4*px}, hitLook)
	}
	p.num(`<text x="`, x)
	p.num(`" y="`, y)
	p.raw(`"`, anchors[a])
	if upright {
		p.num(` transform="rotate(-90 `, x)
		p.num(" ", y)
		p.raw(`)"`)
	}
	p.raw(` class="text" font-size="15" fill="#26211b">`)
	if l.word != "" {
		s.aword(l.word + "\u00a0") // which no reader of SVG drops
	}
	p.raw(`<tspan class="dim `)
	switch {
	case l.bad:
		p.raw(`worked bad" font-weight="700" fill="#b3361b"`)
	case l.given && s.usual(l.path):
		p.raw(`given usual" font-weight="600" text-decoration="underline"`)
	case l.given:
		p.raw(`given" font-weight="600" text-decoration="underline"`)
	default:
		p.raw(`worked"`)
	}
	if !s.Interactive && l.path != "" {
		s.identify(l)
	}
	p.raw(">")
	p.fractions(l.text)
	p.raw("</tspan>")
	if l.after != "" {
		s.aword(l.after)
	}
	p.raw("</text>\n")
	if tap {
		p.raw("</g>\n")
	}
}

// aword writes words beside a number.
func (s *sheet) aword(text string) {
	s.pen.raw(`<tspan class="word" font-size="13" fill="#6b6156">`)
	s.pen.escape(text)
	s.pen.raw("</tspan>")
}

// open begins the group that one taps for a number.
func (s *sheet) open(l label) {
	s.pen.raw(`<g class="tap" role="button" tabindex="0"`)
	s.identify(l)
	s.pen.raw(` aria-description="`) // beside the name, which is what one sees
	s.pen.escape(l.spoken)
	s.pen.raw(`">`, "\n")
}

func (s *sheet) identify(l label) {
	s.pen.raw(` id="`)
	s.id(l.path)
	s.pen.raw(`" data-path="`)
	s.pen.escape(string(l.path))
	s.pen.raw(`"`)
}

// id writes the name of what stands at a path: "front-frame-outside-width".
func (s *sheet) id(at explain.Path) {
	s.prefix()
	rest := strings.TrimPrefix(strings.TrimPrefix(string(at), string(s.at("/order/pieces"))), string(s.at("/pieces")))
	for i := range len(rest) {
		c := rest[i]
		if c == '/' || c == '_' {
			c = '-'
		}
		s.pen.b = append(s.pen.b, c)
	}
}

// prefix begins the names of a view: "front", "front2" for the second piece.
func (s *sheet) prefix() {
	s.pen.raw(string(s.view))
	if s.number > 0 {
		s.pen.b = strconv.AppendInt(s.pen.b, int64(s.number+1), 10)
	}
}

// usual reports whether the order left a field to the shop.
func (s *sheet) usual(at explain.Path) bool {
	for _, d := range s.plan.Defaults {
		if at.Under(d) {
			return true
		}
	}
	return false
}

package draw

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// fan is how wide the lines from the parts to the table are.
const fan = 34 * px

// A table is the sum beside a section: what lies in the rabbet, part by part,
// what that is together, and what the rabbet leaves.
type table struct {
	rows []entry
}

// An entry is a line of a table; it points at a place where points is not
// negative.
type entry struct {
	label
	points int
	ruled  bool // a line over it: the sum follows
}

// table lists the parts of the depth.
func (s *sheet) table() table {
	d := &s.piece.Depth
	t := table{rows: make([]entry, 0, len(d.Stack)+8)}
	floater := s.piece.Liner.IsZero() && s.order.Frame.Kind == "floater"
	holder, at, rabbet := "rabbet", explain.Path("/frame/rabbet"), s.order.Frame.Rabbet
	if !s.piece.Liner.IsZero() {
		holder, at, rabbet = "liner's rabbet", "/liner/rabbet", s.order.Liner.Rabbet
	}
	clearing := entry{label: s.clear("/depth/clear", d.Clear, floater, words("clear"), "stands proud"), points: len(d.Stack)}
	known := rabbet > 0 && len(d.Stack) > 0
	if floater && known {
		t.rows = append(t.rows, clearing)
	}
	t.parts(s, "/depth", d, 0)
	if len(d.Stack) > 0 {
		t.rows = append(t.rows, entry{label: s.worked("/depth/package", d.Package).named(words("package")), points: -1, ruled: true})
	}
	if known && !floater {
		if !s.piece.Liner.IsZero() { // the frame's own is a dimension
			t.rows = append(t.rows, entry{label: s.given(at, rabbet).named(holder), points: -1})
		}
		t.rows = append(t.rows, clearing)
	}
	if l := &s.piece.LinerDepth; len(l.Stack) > 0 {
		t.parts(s, "/liner_depth", l, -1)
		clearing := s.clear("/liner_depth/clear", l.Clear, s.order.Frame.Kind == "floater", "behind liner", "liner proud")
		t.rows = append(t.rows, entry{label: clearing, points: -1})
	}
	return t
}

// clear is what a depth leaves, or in words how far what lies in it stands out:
// proud of the back, or in front of a floater, where it may.
func (s *sheet) clear(at explain.Path, f framing.Figure, floater bool, name, proud string) label {
	if floater {
		return s.aside(at, f, name, "in front")
	}
	return s.aside(at, f, name, proud).wrong(f.Shown < 0)
}

// parts appends the parts of a depth; they point from place n on, nowhere where
// n is negative.
func (t *table) parts(s *sheet, at explain.Path, d *framing.DepthPlan, n int) {
	under := 0
	for i := range d.Stack {
		p := d.Stack[i]
		path, l := s.thickness(p.Part, under)
		if p.Part == framing.UnderMatLayer {
			under++
		}
		e := entry{points: -1}
		if n >= 0 {
			e.points = n + i
		}
		if path != "" && l == p.Thickness.Exact {
			e.label = s.thick(s.given(path, l), l)
		} else {
			e.label = s.worked(at+"/stack"+explain.Path("").Index(i)+"/thickness", p.Thickness)
		}
		word := partWord(p.Part)
		if p.Inside {
			word += ", inside"
		}
		if p.Part == framing.PackageLayer {
			word = "package proud"
		}
		e.label = e.named(word)
		t.rows = append(t.rows, e)
	}
}

// thick writes a thickness, which is known in millimeters as often as in inches.
func (s *sheet) thick(l label, n measure.Length) label {
	if s.format.Unit() == measure.Inches && n%(measure.Millimeter/10) == 0 && n%(measure.Inch/64) != 0 {
		f := measure.Format{Style: measure.Metric, Step: measure.Millimeter / 10}
		w := *l.written
		w.text, w.spoken = f.Text(n, measure.Nearest), f.Spoken(n, measure.Nearest)
		return label{&w}
	}
	return l
}

// columns are how wide the words and the numbers are.
func (t table) columns() (word, number int) {
	for _, e := range t.rows {
		word = max(word, textWidth(e.word, wordSize, false))
		number = max(number, textWidth(e.text, numberSize, true))
	}
	return word, number
}

func (t table) width() int {
	word, number := t.columns()
	return word + number + 3*pad
}

// fanOut writes the table from x on, its middle at mid, and draws the lines from
// it to the places of the parts.
func (s *sheet) fanOut(c cut, t table, places []place, x, mid int) {
	word, number := t.columns()
	y := mid - len(t.rows)*line/2
	for _, e := range t.rows {
		y += line
		base := y - line/2 + numberSize*ascent/300
		if e.ruled {
			s.pen.path(inkLook, x, y-line+2*px, x+word+2*pad+number, y-line+2*px)
		}
		s.word(e.word, x, base)
		s.write(e.named(""), x+word+2*pad+t.numbers(), base, end, false)
		if e.points >= 0 && e.points < len(places) {
			p, to := places[e.points], y-line/2
			s.pen.path(lineOf(e.bad), p.x, p.y, c.right()+6*px, p.y, x-8*px, to, x-3*px, to)
			s.pen.circle(p.x, p.y, 130, dotLook)
		}
	}
}

func (t table) numbers() int {
	_, number := t.columns()
	return number
}

// word writes a word.
func (s *sheet) word(text string, x, y int) {
	if text == "" {
		return
	}
	s.pen.touch(textBox(x, y, textWidth(text, wordSize, false), wordSize, start, false))
	s.pen.num(`<text class="word" x="`, x)
	s.pen.num(`" y="`, y)
	s.pen.raw(`" font-size="13" fill="#6b6156">`)
	s.pen.escape(text)
	s.pen.raw("</text>\n")
}

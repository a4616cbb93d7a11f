package ticket

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Options says what a ticket holds beside the numbers.
type Options struct {
	// Working adds how each figure came to be.
	Working bool
}

// Text returns the ticket of a plan as plain text, lines of at most 80
// characters but for names and workings. The same plan gives the same bytes.
func Text(p framing.Plan, o Options) string {
	t := writer{plan: p}
	t.format, _ = p.Order.Show.Format() // figures of a plan without a format are exact
	t.head()
	for i := range p.Pieces {
		if i >= len(p.Order.Pieces) {
			break
		}
		t.piece(i)
		if o.Working {
			t.workings(i)
		}
	}
	t.cautions()
	if o.Working {
		t.defaults()
	}
	return t.b.String()
}

// A writer writes one ticket.
type writer struct {
	plan   framing.Plan
	format measure.Format
	b      strings.Builder
}

// line writes words, joined as they are. What could break the line or drive a
// terminal is left out: an order with problems can hold anything.
func (t *writer) line(words ...string) {
	for _, w := range words {
		t.b.WriteString(strings.Map(printable, w))
	}
	t.b.WriteByte('\n')
}

func printable(r rune) rune {
	if unicode.IsPrint(r) {
		return r
	}
	return -1
}

// How wide the columns of names and of shown values are.
const (
	labelWidth = 20
	valueWidth = 22
)

// lineWidth is how long a line may be, in characters.
const lineWidth = 80

// row writes a name and what stands beside it, indented. Text that is too long
// goes on below, at the same indent.
func (t *writer) row(label string, words ...string) {
	const indent = 3
	text := []rune(strings.Join(words, ""))
	room := lineWidth - indent - labelWidth
	for len(text) > room {
		cut := room
		for cut > 0 && text[cut] != ' ' {
			cut--
		}
		if cut == 0 {
			break // one long word
		}
		t.line("   ", pad(label, labelWidth), strings.TrimRight(string(text[:cut]), " "))
		label, text = "", text[cut+1:]
	}
	t.line("   ", pad(label, labelWidth), string(text))
}

func pad(s string, width int) string {
	if n := width - len([]rune(s)); n > 0 {
		return s + strings.Repeat(" ", n)
	}
	return s + " "
}

func (t *writer) head() {
	o := t.plan.Order
	t.line("WORK TICKET")
	if o.Job != "" {
		t.line(pad("Job", 7), o.Job)
	}
	if o.Date != "" {
		t.line(pad("Date", 7), string(o.Date))
	}
	t.line(pad("Sizes", 7), "width x height as seen from the front, in ", t.units())
	t.line(pad("", 7), "shown first, [exact behind it]")
	if len(t.plan.Defaults) > 0 {
		t.line(pad("", 7), "(usual): not given, so as the shop usually does")
	}
	for _, n := range t.plan.Notes {
		t.note("* ", n)
	}
	if len(t.plan.Problems) > 0 {
		t.line()
		t.line("NOT TO BE CUT FROM: the order has problems")
		for _, p := range t.plan.Problems {
			p.Path, _ = p.Path.After("/order")
			t.paragraph("! ", t.subject("/order"+p.Path)+p.Explanation())
		}
	}
}

// units says in what and how finely lengths are shown.
func (t *writer) units() string {
	step := string(t.format.AppendExact(nil, t.format.Step))
	switch t.format.Style {
	case measure.Fraction, measure.DecimalInch:
		return "inches, to " + step
	case measure.FeetInches:
		return "feet and inches, to " + step
	case measure.Metric:
		return "millimeters, to " + step
	}
	return "millimeters, exact"
}

func (t *writer) piece(i int) {
	p, order := &t.plan.Pieces[i], &t.plan.Order.Pieces[i]
	t.line()
	t.line("PIECE ", strconv.Itoa(i+1), " of ", strconv.Itoa(len(t.plan.Pieces)), title(p.Name), times(p.Quantity))
	if !p.Worked {
		t.line("   not worked out: the order has problems here")
		return
	}
	t.row(string(order.Art.Kind), t.given(order.Art.Width), " x ", t.given(order.Art.Height))
	if v := order.Art.Varies; v != (measure.Size{}) {
		t.row("", t.given(v.Width), " x ", t.given(v.Height), " more where it is largest")
	}
	t.notes(p.Notes, explain.Warning, "! ")
	t.notes(p.Notes, explain.Advice, "* ")

	n := 0
	section := func(name string) {
		n++
		t.line()
		t.line(strconv.Itoa(n), "  ", name)
	}
	if p.Mat != (framing.MatPlan{}) {
		at := t.order(i) + "/mat"
		section("Mat" + title(order.Mat.Name) + ", " + t.thick(order.Mat.Thickness) + " thick" + t.usual(at+"/thickness"))
		t.mat(p, order, at)
	}
	section("Rails" + title(order.Frame.Molding))
	t.rails(p, order, t.order(i)+"/frame")
	section("Rabbet, from the front" + times(p.Quantity))
	t.rabbet(p, order, t.order(i))
}

// order is where piece i stands in the plan's order.
func (t *writer) order(i int) explain.Path { return explain.Path("/order/pieces").Index(i) }

// usual marks a value that was not given.
func (t *writer) usual(field explain.Path) string {
	if slices.ContainsFunc(t.plan.Defaults, field.Under) {
		return " (usual)"
	}
	return ""
}

// cautions writes what to mind, each once for the whole ticket.
func (t *writer) cautions() {
	var said []explain.Note
	for _, p := range t.plan.Pieces {
		for _, n := range p.Notes {
			if n.Level != explain.Caution || slices.ContainsFunc(said, func(o explain.Note) bool { return t.says(o) == t.says(n) }) {
				continue
			}
			if len(said) == 0 {
				t.line()
				t.line("MIND")
			}
			said = append(said, n)
			t.paragraph("", t.says(n))
		}
	}
}

func (t *writer) says(n explain.Note) string { return n.Text(t.format) }

// title is ": name", nothing where there is none.
func title(name string) string {
	if name == "" {
		return ""
	}
	return ": " + name
}

func times(quantity int) string {
	if quantity == 1 {
		return ""
	}
	return " (make " + strconv.Itoa(quantity) + ")"
}

// given is a length to read: exactly where that is short.
func (t *writer) given(l measure.Length) string {
	return string(explain.Of(l).AppendReadable(nil, t.format))
}

// thick is a thickness, which is known in millimeters as often as in inches.
func (t *writer) thick(l measure.Length) string {
	if l%(measure.Millimeter/10) == 0 && l%(measure.Inch/64) != 0 {
		return l.String()
	}
	return t.given(l)
}

// size is a shown size and behind it the exact one: "5 x 6 7/8   [5 1/16 in x
// 6 15/16 in]".
func (t *writer) size(s framing.SizeFigure) string {
	if s.Exact() == s.Shown() {
		return pad(s.Text(), valueWidth) + "[exact]"
	}
	return pad(s.Text(), valueWidth) + "[" + t.given(s.Width.Exact) + " x " + t.given(s.Height.Exact) + "]"
}

// one is a single figure in the same way.
func (t *writer) one(f framing.Figure) string {
	if f.Exact == f.Shown {
		return pad(f.Text(), valueWidth) + "[exact]"
	}
	return pad(f.Text(), valueWidth) + "[" + t.given(f.Exact) + "]"
}

// notes writes the notes of one level, a paragraph each.
func (t *writer) notes(notes []explain.Note, level explain.Level, mark string) {
	first := true
	for _, n := range notes {
		if n.Level != level {
			continue
		}
		if first {
			t.line()
			first = false
		}
		t.note(mark, n)
	}
}

// note writes what a note says, which field it is about, and what would mend
// it.
func (t *writer) note(mark string, n explain.Note) {
	text := t.subject(n.Path) + t.says(n)
	for i, c := range n.Changes {
		if i == 0 {
			text += " Mend: "
		} else {
			text += "; or "
		}
		text += c.Text(t.format)
	}
	if len(n.Changes) > 0 {
		text += "."
	}
	t.paragraph(mark, text)
}

// paragraph writes text in lines of at most 80 characters behind a mark.
func (t *writer) paragraph(mark, text string) {
	indent := "   " + strings.Repeat(" ", len(mark))
	line := "   " + mark
	empty := true
	for _, word := range strings.Fields(text) {
		if !empty && len([]rune(line))+1+len([]rune(word)) > lineWidth {
			t.line(line)
			line, empty = indent, true
		}
		if !empty {
			line += " "
		}
		line += word
		empty = false
	}
	t.line(line)
}

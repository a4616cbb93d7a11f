package ticket

import (
	"strconv"
	"strings"

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
		t.piece(i)
		if o.Working {
			t.workings(i)
		}
	}
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

// line writes words, joined as they are.
func (t *writer) line(words ...string) {
	for _, w := range words {
		t.b.WriteString(w)
	}
	t.b.WriteByte('\n')
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
	for _, n := range t.plan.Notes {
		t.note("* ", n)
	}
	if n := len(t.plan.Defaults); n > 0 {
		t.line(pad("", 7), strconv.Itoa(n), " fields not given: the shop's usual values were taken")
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
	t.row(string(order.Art.Kind), t.given(order.Art.Width), " x ", t.given(order.Art.Height), t.varies(order.Art.Varies))
	t.notes(p.Notes, explain.Warning, "! ")

	n := 0
	section := func(name string) {
		n++
		t.line()
		t.line(strconv.Itoa(n), "  ", name)
	}
	if p.Mat != (framing.MatPlan{}) {
		section("Mat" + title(order.Mat.Name) + ", " + t.given(order.Mat.Thickness) + " thick")
		t.mat(p)
	}
	section("Rails" + title(order.Frame.Molding))
	t.rails(p, order)
	section("Rabbet, from the front")
	t.rabbet(p, order)

	t.notes(p.Notes, explain.Caution, "Mind: ")
	t.notes(p.Notes, explain.Advice, "* ")
}

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

// given is a length of the order, exactly as it is.
func (t *writer) given(l measure.Length) string { return string(t.format.AppendExact(nil, l)) }

func (t *writer) varies(s measure.Size) string {
	if s == (measure.Size{}) {
		return ""
	}
	return ", up to " + t.given(s.Width) + " x " + t.given(s.Height) + " more where it is largest"
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
	text := t.subject(n.Path) + n.Text(t.format)
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

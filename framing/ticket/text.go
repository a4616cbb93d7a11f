package ticket

import (
	"slices"
	"strconv"

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
func Text(p framing.Plan, o Options) string { return write(p, o, &plain{}) }

// write writes the ticket of a plan on a sheet.
func write(p framing.Plan, o Options, on sheet) string {
	t := writer{plan: p, sheet: on}
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
	return t.sheet.end()
}

// A writer writes one ticket.
type writer struct {
	plan   framing.Plan
	format measure.Format
	sheet  sheet
	flats  bool // the sizes of the piece are across flats
}

// row writes a name and what stands beside it.
func (t *writer) row(label string, words ...string) { t.sheet.row(clean(label), clean(words...)) }

// paragraph writes a text behind a mark.
func (t *writer) paragraph(mark, text string) { t.sheet.paragraph(mark, clean(text)) }

func (t *writer) head() {
	o := t.plan.Order
	t.sheet.title("Work ticket")
	if o.Job != "" {
		t.sheet.fact("Job", clean(o.Job))
	}
	if o.Date != "" {
		t.sheet.fact("Date", clean(string(o.Date)))
	}
	t.sheet.fact("Sizes", clean("width x height as seen from the front, in ", t.units()))
	t.sheet.fact("", "shown first, [exact behind it]")
	if len(t.plan.Defaults) > 0 {
		t.sheet.fact("", "(usual): not given, so as the shop usually does")
	}
	for _, n := range t.plan.Notes {
		t.note("* ", n)
	}
	if len(t.plan.Problems) > 0 {
		t.sheet.heading("NOT TO BE CUT FROM: the order has problems")
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
	t.sheet.piece(i, clean(strconv.Itoa(i+1), " of ", strconv.Itoa(len(t.plan.Pieces)), title(p.Name), times(p.Quantity)))
	if !p.Worked {
		t.sheet.item("not worked out: the order has problems here")
		return
	}
	t.flats = isRegular(p)
	t.artRow(p, order)
	t.notes(p.Notes, explain.Warning, "! ")
	t.notes(p.Notes, explain.Advice, "* ")

	t.sections(p, order, t.order(i))
}

// sections writes a piece in the order of work.
func (t *writer) sections(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	n := 0
	section := func(name string) {
		n++
		t.sheet.section(n, clean(name))
	}
	if framing.Shapes && isPanel(order) && !p.Shape.IsZero() {
		section("Panel" + panelKind(order.Art.Kind))
		t.panel(p, order, at)
	}
	if framing.Shapes && p.Art.Outline != nil {
		section("Art out of square")
		t.outOfSquare(p, order)
	}
	if (p.Canvas != framing.CanvasPlan{}) {
		section("Canvas" + times(p.Quantity))
		t.canvas(p, order, at+"/art/stretch")
	}
	if !p.Mat.IsZero() {
		section("Mat" + title(order.Mat.Name) + ", " + t.thick(order.Mat.Thickness) + " thick" + t.usual(at+"/mat/thickness"))
		t.mat(p, order, at+"/mat")
	}
	if !p.Liner.IsZero() {
		section("Liner" + title(order.Liner.Molding))
		t.rails(p, p.Liner, order.Liner, at+"/liner")
		section("In the liner, from the front" + times(p.Quantity))
		t.rabbet(p, order, order.Liner, framing.LinerLayer, p.Depth, at)
	}
	section("Rails" + title(order.Frame.Molding))
	if !framing.Shapes || p.Shape.IsZero() {
		t.rails(p, p.Frame, order.Frame, at+"/frame")
	} else {
		t.shapedRails(p, order, at+"/frame")
	}
	depth := p.Depth
	if !p.Liner.IsZero() {
		depth = p.LinerDepth
	}
	section("Rabbet, from the front" + times(p.Quantity))
	t.rabbet(p, order, order.Frame, framing.FrameLayer, depth, at)
	section("Weight")
	t.mass(p)
	if !p.Hang.IsZero() {
		section("Hanging" + times(p.Quantity))
		t.hang(p, order, at+"/hang")
	}
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
				t.sheet.heading("MIND")
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
// 6 15/16 in]". That of a regular outline is one size, across flats.
func (t *writer) size(s framing.SizeFigure) string {
	if t.flats {
		return t.flat(s.Width)
	}
	if s.Exact() == s.Shown() {
		return pad(s.Text(), valueWidth) + "[exact]"
	}
	return pad(s.Text(), valueWidth) + "[" + t.given(s.Width.Exact) + " x " + t.given(s.Height.Exact) + "]"
}

// one is a single figure in the same way.
func (t *writer) one(f framing.Figure) string { return pad(f.Text(), valueWidth) + t.bracket(f) }

// notes writes the notes of one level, a paragraph each.
func (t *writer) notes(notes []explain.Note, level explain.Level, mark string) {
	first := true
	for _, n := range notes {
		if n.Level != level {
			continue
		}
		if first {
			t.sheet.gap()
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

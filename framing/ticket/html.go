package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
)

// A Picture is a drawing for a ticket: SVG text, as package draw makes it, and
// what it shows.
type Picture struct {
	Caption string
	SVG     string
}

// HTML returns the ticket of a plan as HTML to be printed: an article without
// any style of its own. Pictures gives the drawings of a piece, which stand
// beside its numbers; nil is none. They are put in as they are; all other text
// is escaped. The same plan and pictures give the same bytes.
//
// Classes: ticket, ticket-piece, ticket-pictures, ticket-rows, ticket-problem,
// ticket-warning, ticket-advice, ticket-caution.
func HTML(p framing.Plan, o Options, pictures func(piece int) []Picture) string {
	return write(p, o, &page{pictures: pictures})
}

// A page is a sheet of HTML.
type page struct {
	b        strings.Builder
	pictures func(piece int) []Picture
	rows     bool // within a table
	inPiece  bool
}

// escape makes text inert in HTML, as html.EscapeString does, which would make the
// page's module larger.
func escape(text string) string {
	if !strings.ContainsAny(text, `&<>"'`) {
		return text
	}
	var b strings.Builder
	for i := range len(text) {
		switch c := text[i]; c {
		case '&':
			b.WriteString("&amp;")
		case '<':
			b.WriteString("&lt;")
		case '>':
			b.WriteString("&gt;")
		case '"':
			b.WriteString("&#34;")
		case '\'':
			b.WriteString("&#39;")
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}

// element writes text in an element of its own.
func (p *page) element(name, class, text string) {
	p.open(name, class)
	p.b.WriteString(escape(text))
	p.b.WriteString("</" + name + ">\n")
}

func (p *page) open(name, class string) {
	p.close()
	p.b.WriteString("<" + name)
	if class != "" {
		p.b.WriteString(` class="` + class + `"`)
	}
	p.b.WriteString(">")
}

// close ends a table that is open.
func (p *page) close() {
	if p.rows {
		p.b.WriteString("</table>\n")
		p.rows = false
	}
}

func (p *page) title(text string) {
	p.b.WriteString("<article class=\"ticket\">\n")
	p.element("h1", "", text)
}

func (p *page) fact(label, text string) { p.row(label, text) }
func (p *page) gap()                    { p.close() }
func (p *page) item(text string)        { p.element("p", "", text) }
func (p *page) under(text string)       { p.element("h4", "", text) }

func (p *page) heading(text string) {
	p.endPiece()
	p.element("h2", "", text)
}

func (p *page) endPiece() {
	p.close()
	if p.inPiece {
		p.b.WriteString("</section>\n")
		p.inPiece = false
	}
}

func (p *page) piece(i int, text string) {
	p.endPiece()
	p.b.WriteString("<section class=\"ticket-piece\">\n")
	p.inPiece = true
	p.element("h2", "", "Piece "+text)
	if p.pictures == nil {
		return
	}
	if pictures := p.pictures(i); len(pictures) > 0 {
		p.b.WriteString("<div class=\"ticket-pictures\">\n")
		for _, picture := range pictures {
			p.b.WriteString("<figure>" + picture.SVG + "<figcaption>" + escape(clean(picture.Caption)) + "</figcaption></figure>\n")
		}
		p.b.WriteString("</div>\n")
	}
}

func (p *page) section(number int, text string) {
	p.element("h3", "", strconv.Itoa(number)+"  "+text)
}

func (p *page) row(label, text string) {
	if !p.rows {
		p.b.WriteString("<table class=\"ticket-rows\">\n")
		p.rows = true
	}
	head := "<td></td>" // what has no name goes on from the row before
	if label != "" {
		head = `<th scope="row">` + escape(label) + "</th>"
	}
	p.b.WriteString("<tr>" + head + "<td>" +
		escape(strings.Join(strings.Fields(text), " ")) + "</td></tr>\n")
}

func (p *page) paragraph(mark, text string) {
	class := "ticket-caution"
	switch {
	case strings.HasPrefix(mark, "!"):
		class = "ticket-warning"
	case strings.HasPrefix(mark, "*"):
		class = "ticket-advice"
	}
	p.element("p", class, mark+text)
}

func (p *page) end() string {
	p.endPiece()
	p.b.WriteString("</article>\n")
	return p.b.String()
}

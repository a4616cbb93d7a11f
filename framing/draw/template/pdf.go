package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// PDF writes the template over as many sheets of paper as it takes, upright or on
// their side, whichever are fewer. Sheets beside each other show the same strip, as
// wide as the overlap (0 to [MostOverlap]; [Overlap] is usual), with the line to cut
// along in its middle and marks at the ends of that. Each bears its name, A1 at the
// upper left, and a ruler of 50 mm. A sheet before them has the title, the notes, a map
// of the sheets, and a square of 100 mm with rulers in millimeters and inches: they
// prove that the printer left the size alone.
//
// A template that takes more than [MaxTiles] is refused with the code [TooLarge].
func (t Template) PDF(paper Paper, overlap measure.Length) ([]byte, error) {
	if err := t.Check(); err != nil {
		return nil, err
	}
	g, err := t.grid(paper, overlap)
	if err != nil {
		return nil, err
	}
	d := document{t: t, g: g}
	d.front(paper.size())
	for row := range g.rows {
		for column := range g.columns {
			d.tile(row, column)
		}
	}
	return d.file(), nil
}

// A document gathers pages.
type document struct {
	t     Template
	g     grid
	pages []page
}

type page struct {
	size    measure.Size
	content []byte
}

// Objects of a file by their number; the forms, then the pages and their contents,
// follow.
const (
	catalogAt = iota + 1
	pagesAt
	infoAt
	fontAt
	resourcesAt
	formsAt
)

const pagesFrom = formsAt + len(looks)

// A file writes objects and remembers where they begin.
type file struct {
	b       []byte
	offsets []int
}

func (f *file) text(parts ...string) {
	for _, s := range parts {
		f.b = append(f.b, s...)
	}
}

func (f *file) begin() {
	f.offsets = append(f.offsets, len(f.b))
	f.text(strconv.Itoa(len(f.offsets)), " 0 obj\n")
}

func (f *file) object(parts ...string) {
	f.begin()
	f.text(parts...)
	f.text("\nendobj\n")
}

func (f *file) stream(entries string, content []byte) {
	f.begin()
	f.text("<<", entries, "/Length ", strconv.Itoa(len(content)), ">>\nstream\n")
	f.b = append(f.b, content...)
	f.text("\nendstream\nendobj\n")
}

func ref(number int) string { return strconv.Itoa(number) + " 0 R" }

// file writes the document: PDF 1.4, its streams as they are.
func (d *document) file() []byte {
	var f file
	f.text("%PDF-1.4\n%\xe2\xe3\xcf\xd3\n")
	f.object("<</Type/Catalog/Pages ", ref(pagesAt), "/Lang(en-US)/ViewerPreferences<</PrintScaling/None/DisplayDocTitle true>>>>")
	kids := ""
	for i := range d.pages {
		kids += ref(pagesFrom+2*i) + " "
	}
	f.object("<</Type/Pages/Count ", strconv.Itoa(len(d.pages)), "/Kids[", kids, "]>>")
	f.object("<</Creator(Fairmiter)/Title ", utf16Text(d.t.Title), ">>")
	f.object("<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>")
	forms := ""
	for i, l := range looks {
		forms += "/" + string(l.layer) + " " + ref(formsAt+i)
	}
	f.object("<</ProcSet[/PDF/Text]/Font<</F ", ref(fontAt), ">>/XObject<<", forms, ">>>>")
	whole := d.g.whole()
	for _, l := range looks {
		f.stream(d.formEntries(whole), d.form(l.layer))
	}
	for i, p := range d.pages {
		box := appendPoints([]byte("/MediaBox[0 0 "), p.size.Width)
		box = append(appendPoints(append(box, ' '), p.size.Height), ']')
		f.object("<</Type/Page/Parent ", ref(pagesAt), string(box), "/Resources ", ref(resourcesAt), "/Contents ", ref(pagesFrom+2*i+1), ">>")
		f.stream("", p.content)
	}
	return f.end()
}

// end writes the table of where the objects are.
func (f *file) end() []byte {
	at := len(f.b)
	count := strconv.Itoa(len(f.offsets) + 1)
	f.text("xref\n0 ", count, "\n0000000000 65535 f \n")
	for _, offset := range f.offsets {
		digits := strconv.Itoa(offset)
		f.text("0000000000"[len(digits):], digits, " 00000 n \n")
	}
	f.text("trailer\n<</Size ", count, "/Root ", ref(catalogAt), "/Info ", ref(infoAt), ">>\nstartxref\n", strconv.Itoa(at), "\n%%EOF\n")
	return f.b
}

// appendPoints writes a length in points of 1/72 in, to 0.0001 of them.
func appendPoints(b []byte, l measure.Length) []byte {
	n, _ := l.Scale(18, 635) // 72 x 10,000 over 25,400,000
	return appendDecimal(b, int64(n), 4)
}

// utf16Text is text for what a viewer shows itself: in any script.
func utf16Text(s string) string {
	b := []byte("<FEFF")
	for _, r := range clean(s) {
		units(r, func(u uint16) { b = appendHex(b, u) })
	}
	return string(append(b, '>'))
}

// formEntries are those of the forms that the sheets show parts of.
func (d *document) formEntries(whole measure.Size) string {
	b := appendMillimeters([]byte("/Type/XObject/Subtype/Form/Resources "+ref(resourcesAt)+"/BBox[0 0 "), whole.Width, 4)
	return string(append(appendMillimeters(append(b, ' '), whole.Height, 4), ']'))
}

// form is all that the template has on a layer, in millimeters from the lower left
// corner of what the sheets show together.
func (d *document) form(layer Layer) []byte {
	low := d.low()
	p := pen{move: plane.Point{X: -low.X, Y: -low.Y}}
	for _, path := range d.t.Paths {
		if path.Layer == layer {
			p.path(path.flat(exact))
		}
	}
	for _, s := range d.t.Spots {
		if s.Layer == layer {
			p.spot(s)
		}
	}
	if layer == Text {
		for _, w := range d.t.Words {
			p.word(w)
		}
	}
	return p.b
}

// low is the lower left corner of what the sheets show together.
func (d *document) low() plane.Point { return d.g.corner(d.g.rows-1, 0) }

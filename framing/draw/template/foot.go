package template

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

const mm = measure.Millimeter

// Words of the files themselves.
const (
	wordLine     explain.Code = "template.line"
	wordPrint    explain.Code = "template.print"
	wordSquare   explain.Code = "template.square"
	wordAssemble explain.Code = "template.assemble"
	wordMap      explain.Code = "template.map"
	wordUnits    explain.Code = "template.units"
	wordWithin   explain.Code = "template.within"
	wordSheet    explain.Code = "template.sheet"
)

func english(c explain.Code) string { return explain.English(string(c)) }

// Proved is how long the line is that proves the size of SVG and DXF, and how wide
// the square in PDF.
const Proved = 100 * mm

// footed is t with what stands below its shape in SVG and DXF: a line of 100 mm, by
// which the reader sees that the size is true, the title and the notes.
func (t Template) footed() Template {
	least, _ := t.bounds()
	x, y := least.X, least.Y-12*mm
	end := x + Proved
	t.Paths = append(t.Paths[:len(t.Paths):len(t.Paths)],
		Line(Proof, plane.Point{X: x, Y: y}, plane.Point{X: end, Y: y}),
		Line(Proof, plane.Point{X: x, Y: y - 2*mm}, plane.Point{X: x, Y: y + 2*mm}),
		Line(Proof, plane.Point{X: end, Y: y - 2*mm}, plane.Point{X: end, Y: y + 2*mm}),
	)
	t.Words = t.Words[:len(t.Words):len(t.Words)]
	word := func(text string, height, down measure.Length) {
		if text = clean(text); text == "" {
			return
		}
		y -= down
		t.Words = append(t.Words, Word{At: plane.Point{X: x, Y: y}, Height: height, Text: text})
	}
	word(english(wordLine), 3*mm, 6*mm)
	word(t.Title, 5*mm, 11*mm)
	for _, note := range t.Notes {
		word(note, 3*mm, 6*mm)
	}
	return t
}

// extent is the bounds of t with its words.
func (t Template) extent() (least, most plane.Point) {
	b := bounds{used: true}
	b.least, b.most = t.bounds()
	for _, w := range t.Words {
		long := width(pdfText(w.Text), w.Height)
		at := w.At
		if w.Centered {
			at.X -= long / 2
		}
		b.point(plane.Point{X: at.X, Y: at.Y - w.Height/3})
		b.point(plane.Point{X: at.X + long, Y: at.Y + w.Height})
	}
	return b.least, b.most
}

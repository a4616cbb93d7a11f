package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Lettering of the first sheet.
const (
	small     = 27 * mm / 10
	smallLine = 9 * mm / 2
	titleLine = 8 * mm
)

// front adds the sheet with the title, the map and the proof, and sheets for the notes
// that found no room there.
func (d *document) front(paper measure.Size) {
	var p pen
	p.text(millimeters)
	left, wide := Margin, paper.Width-2*Margin
	y := paper.Height - Margin
	for i, line := range wrap(pdfText(d.t.Title), 5*mm, wide) {
		if i == 3 {
			break // it stands in full in what the viewer shows of the file
		}
		p.letters(plane.Point{X: left, Y: y - 5*mm}, 5*mm, line)
		y -= titleLine
	}
	y -= mm
	words := english(wordPrint)
	if d.g.rows*d.g.columns > 1 {
		words += " " + english(wordAssemble)
	}
	for _, line := range wrap(pdfText(words), small, wide) {
		p.letters(plane.Point{X: left, Y: y - small}, small, line)
		y -= smallLine
	}

	y -= 3 * mm
	p.say(left, y-small, small, english(wordMap))
	y -= smallLine + 2*mm
	const square = Margin + 30*mm // where the square begins
	bottom := square + Proved + 6*mm
	d.chart(&p, plane.Point{X: left, Y: bottom}, measure.Size{Width: wide, Height: y - bottom})

	p.stroke("#000000", hair, nil)
	p.proof(left, square)
	var lines [][]byte
	for _, note := range d.t.Notes {
		lines = append(lines, wrap(pdfText(note), small, wide-Proved-8*mm)...)
	}
	y = square + Proved
	for len(lines) > 0 && y-smallLine >= square {
		p.letters(plane.Point{X: left + Proved + 8*mm, Y: y - small}, small, lines[0])
		lines, y = lines[1:], y-smallLine
	}
	d.pages = append(d.pages, page{paper, p.b})
	for len(lines) > 0 {
		p := pen{}
		p.text(millimeters)
		for y := paper.Height - Margin; len(lines) > 0 && y-smallLine >= Margin; y -= smallLine {
			p.letters(plane.Point{X: left, Y: y - small}, small, lines[0])
			lines = lines[1:]
		}
		d.pages = append(d.pages, page{paper, p.b})
	}
}

// proof draws the square at its lower left corner and the rulers below it.
func (p *pen) proof(x, y measure.Length) {
	p.rect(x, y, Proved, Proved)
	p.text("S\n")
	for i, line := range wrap(pdfText(english(wordSquare)), small, Proved-10*mm) {
		p.letters(plane.Point{X: x + 5*mm, Y: y + Proved/2 - measure.Length(i)*smallLine}, small, line)
	}
	const letters = 2 * mm
	at := y - 13*mm
	p.ruler(x, at, mm, 150, millimeterTick)
	for i := 0; i <= 150; i += 10 {
		p.say(x+measure.Length(i)*mm+mm/2, at+9*mm/2, letters, strconv.Itoa(i))
	}
	p.say(x+154*mm, at, letters, "mm")
	at -= 14 * mm
	p.ruler(x, at, measure.Inch/16, 96, func(i int) measure.Length {
		switch {
		case i%16 == 0:
			return 6 * mm
		case i%8 == 0:
			return 5 * mm
		case i%4 == 0:
			return 4 * mm
		case i%2 == 0:
			return 3 * mm
		}
		return 2 * mm
	})
	for i := range measure.Length(7) {
		p.say(x+i*measure.Inch+mm/2, at+13*mm/2, letters, strconv.Itoa(int(i)))
	}
	p.say(x+156*mm, at, letters, "in")
}

// chart draws the shape small, and the sheets over it, into a box.
func (d *document) chart(p *pen, low plane.Point, box measure.Size) {
	whole := d.g.whole()
	// The scale in parts of one million.
	const one = 1_000_000
	scale := min(int64(box.Width/(whole.Width/one+1)), int64(box.Height/(whole.Height/one+1)), one/2)
	small := func(l measure.Length) measure.Length { l, _ = l.Scale(scale, one); return l }
	low.X += (box.Width - small(whole.Width)) / 2
	low.Y += (box.Height - small(whole.Height)) / 2

	p.text("q\n")
	factor := string(appendDecimal(nil, scale, 6))
	p.text(factor, " 0 0 ", factor, " ")
	p.numbers(low.X, low.Y)
	p.text("cm\n")
	for _, l := range looks {
		if l.layer == Text || l.layer == Proof {
			continue
		}
		wide, _ := l.wide.Scale(one, scale)
		p.stroke(l.color, wide, nil)
		p.text("/", string(l.layer), " Do\n")
	}
	p.text("Q\n")

	p.stroke(furniture, hair, nil)
	p.rect(low.X, low.Y, small(whole.Width), small(whole.Height))
	// Sheets are parted where they are cut.
	joint := func(i int, window measure.Length) measure.Length {
		return small(measure.Length(i)*(window-d.g.overlap) + d.g.overlap/2)
	}
	top, right := low.Y+small(whole.Height), low.X+small(whole.Width)
	xs, ys := []measure.Length{low.X}, []measure.Length{top}
	for i := 1; i < d.g.columns; i++ {
		x := low.X + joint(i, d.g.window.Width)
		p.line(x, low.Y, x, top)
		xs = append(xs, x)
	}
	for i := 1; i < d.g.rows; i++ {
		y := top - joint(i, d.g.window.Height)
		p.line(low.X, y, right, y)
		ys = append(ys, y)
	}
	p.text("S\n")
	xs, ys = append(xs, right), append(ys, low.Y)
	for row := range d.g.rows {
		for column := range d.g.columns {
			letters := min(4*mm, (ys[row]-ys[row+1])/2, (xs[column+1]-xs[column])/4)
			at := plane.Point{X: xs[column] + letters/2, Y: ys[row] - 3*letters/2}
			p.letters(at, letters, pdfText(name(row, column)))
		}
	}
}

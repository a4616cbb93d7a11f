package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// millimeters is what makes a millimeter the unit of a page: 72 over 25.4.
const millimeters = "2.8346456693 0 0 2.8346456693 0 0 cm\n"

const (
	furniture = "#606060" // color of what is no part of the shape
	hair      = 3 * mm / 20
)

// tile adds the sheet of a row and a column.
func (d *document) tile(row, column int) {
	g := d.g
	var p pen
	p.text(millimeters)
	left, bottom := Margin, Margin+footHigh
	right := left + g.window.Width
	p.joins(g, row, column)

	p.text("q\n")
	p.rect(left, bottom, g.window.Width, g.window.Height)
	p.text("W n\n1 0 0 1 ")
	low, corner := d.low(), g.corner(row, column)
	p.numbers(left+low.X-corner.X, bottom+low.Y-corner.Y)
	p.text("cm\n")
	for _, l := range looks {
		p.stroke(l.color, l.wide, l.dash)
		p.text("/", string(l.layer), " Do\n")
	}
	p.text("Q\n")

	sheet := name(row, column)
	p.say(left, Margin+mm, 7*mm, sheet)
	x := left + width(pdfText(sheet), 7*mm) + 4*mm
	const ruler = 50 * mm
	p.letters(plane.Point{X: x, Y: Margin + 5*mm}, 3*mm, cut(pdfText(d.t.Title), 3*mm, right-ruler-6*mm-x))
	p.say(x, Margin+mm, 2*mm, english(wordSheet)+" "+strconv.Itoa(row*g.columns+column+1)+" / "+strconv.Itoa(g.rows*g.columns))
	p.stroke("#000000", hair, nil)
	p.ruler(right-ruler, Margin+mm, mm, 50, millimeterTick)
	p.say(right-ruler, Margin+6*mm, 2*mm, "50 mm")
	d.pages = append(d.pages, page{g.paper, p.b})
}

func millimeterTick(i int) measure.Length {
	switch {
	case i%10 == 0:
		return 4 * mm
	case i%5 == 0:
		return 3 * mm
	}
	return 2 * mm
}

// joins draws where the sheet is cut and joined to its neighbors, and their names.
func (p *pen) joins(g grid, row, column int) {
	left, bottom := Margin, Margin+footHigh
	right, top := left+g.window.Width, bottom+g.window.Height
	half := g.overlap / 2
	nearX, nearY := left+g.window.Width/4, top-g.window.Height/4 // middle lines often run through the middle
	const letters = 2 * mm
	for _, side := range [...]struct {
		row, column int
		at          measure.Length
	}{{row, column - 1, left + half}, {row, column + 1, right - half}, {row - 1, column, top - half}, {row + 1, column, bottom + half}} {
		if side.row < 0 || side.row >= g.rows || side.column < 0 || side.column >= g.columns {
			continue
		}
		text := pdfText(name(side.row, side.column))
		long := width(text, letters)
		upright := side.row == row
		p.stroke(furniture, hair, []measure.Length{2 * mm, 2 * mm})
		if upright {
			p.line(side.at, bottom, side.at, top)
		} else {
			p.line(left, side.at, right, side.at)
		}
		p.text("S\n")
		p.stroke("#000000", hair, nil)
		at := plane.Point{X: nearX - long/2, Y: side.at + mm}
		if upright {
			p.line(side.at, bottom-5*mm, side.at, bottom-mm)
			p.line(side.at, top+mm, side.at, top+5*mm)
			at = plane.Point{X: side.at + mm/2, Y: nearY}
			if side.column < column {
				at.X = side.at - mm/2 - long
			}
		} else {
			p.line(left-5*mm, side.at, left-mm, side.at)
			p.line(right+mm, side.at, right+5*mm, side.at)
			if side.row > row {
				at.Y = side.at - mm - letters
			}
		}
		p.text("S\n")
		p.letters(at, letters, text)
	}
}

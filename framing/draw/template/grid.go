package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A Paper is a size of paper.
type Paper string

// The papers.
const (
	Letter Paper = "letter" // 8 1/2 x 11 in
	A4     Paper = "a4"     // 210 x 297 mm, ISO 216
)

// Choices lists the papers.
func (Paper) Choices() []string { return []string{string(Letter), string(A4)} }

// size is that of the paper held upright.
func (p Paper) size() measure.Size {
	if p == A4 {
		return measure.Size{Width: 210 * mm, Height: 297 * mm}
	}
	return measure.Size{Width: 17 * measure.Inch / 2, Height: 11 * measure.Inch}
}

// What a template in PDF is divided by.
const (
	Margin      = 10 * mm // of every sheet, which printers leave white
	Overlap     = 10 * mm // what is usual; see [Template.PDF]
	MostOverlap = 50 * mm
	MaxTiles    = 400
)

// TooLarge is the code of the problem of a template that takes more than [MaxTiles].
const TooLarge explain.Code = "template.tiles"

const (
	footHigh = 14 * mm // below what a sheet shows of the shape: marks, its name, a ruler
	breadth  = mm      // around the shape, for lines to show their full width
)

// A grid is how the shape is spread over sheets. Each sheet has a window of the same
// size onto it, and windows beside each other share the overlap.
type grid struct {
	paper, window measure.Size
	overlap       measure.Length
	rows, columns int
	origin        plane.Point // of the shape, where the window of A1 has its upper left corner
}

// Tiles returns how many rows and columns of sheets [Template.PDF] spreads the template
// over; one sheet more, the first, holds the map.
func (t Template) Tiles(p Paper, overlap measure.Length) (rows, columns int, err error) {
	if err := t.Check(); err != nil {
		return 0, 0, err
	}
	g, err := t.grid(p, overlap)
	return g.rows, g.columns, err
}

// grid is that of the paper upright or on its side, whichever takes fewer sheets.
func (t Template) grid(p Paper, overlap measure.Length) (grid, error) {
	var c explain.Checker
	if p != Letter && p != A4 {
		c.Add(explain.Problem{Code: explain.NotAChoice, Path: "/paper", Given: string(p), Accepted: "letter, a4"})
	}
	c.Length("/overlap", overlap, 0, MostOverlap)
	if problems := c.Problems(); problems != nil {
		return grid{}, problems
	}
	least, most := t.extent()
	shape := measure.Size{Width: most.X - least.X + 2*breadth, Height: most.Y - least.Y + 2*breadth}
	upright := p.size()
	best := gridOf(upright, shape, overlap)
	if side := gridOf(measure.Size{Width: upright.Height, Height: upright.Width}, shape, overlap); side.rows*side.columns < best.rows*best.columns {
		best = side
	}
	if n := best.rows * best.columns; n > MaxTiles {
		return grid{}, explain.Problem{Code: TooLarge, Path: "/paper", Given: strconv.Itoa(n), Accepted: strconv.Itoa(MaxTiles)}
	}
	whole := best.whole()
	best.origin = plane.Point{
		X: least.X - breadth - (whole.Width-shape.Width)/2,
		Y: most.Y + breadth + (whole.Height-shape.Height)/2,
	}
	return best, nil
}

func gridOf(paper, shape measure.Size, overlap measure.Length) grid {
	g := grid{paper: paper, overlap: overlap}
	g.window = measure.Size{Width: paper.Width - 2*Margin, Height: paper.Height - 2*Margin - footHigh}
	g.columns = sheets(shape.Width, g.window.Width, overlap)
	g.rows = sheets(shape.Height, g.window.Height, overlap)
	return g
}

// sheets is how many windows it takes side by side.
func sheets(shape, window, overlap measure.Length) int {
	step := window - overlap
	return int(max(1, (shape-overlap+step-1)/step))
}

// whole is the size of all windows together.
func (g grid) whole() measure.Size {
	return measure.Size{
		Width:  g.window.Width + measure.Length(g.columns-1)*(g.window.Width-g.overlap),
		Height: g.window.Height + measure.Length(g.rows-1)*(g.window.Height-g.overlap),
	}
}

// corner is where the window of a sheet has its lower left corner on the shape.
func (g grid) corner(row, column int) plane.Point {
	return plane.Point{
		X: g.origin.X + measure.Length(column)*(g.window.Width-g.overlap),
		Y: g.origin.Y - measure.Length(row)*(g.window.Height-g.overlap) - g.window.Height,
	}
}

// name is that of a sheet: a letter for its row, A at the top, and a number for its
// column, 1 at the left. After row Z comes row AA.
func name(row, column int) string {
	number := strconv.Itoa(column + 1)
	for {
		number = string(rune('A'+row%26)) + number
		if row = row/26 - 1; row < 0 {
			return number
		}
	}
}

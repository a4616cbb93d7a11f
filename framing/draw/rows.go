package draw

import "slices"

// A side is a side of what is dimensioned.
type side uint8

const (
	top side = iota
	right
	bottom
	left
)

// upright reports whether the dimensions of a side run up and down.
func (d side) upright() bool { return d == left || d == right }

// A span is one dimension: from and to along its side, and its number.
type span struct {
	a, b int
	label
}

// rows are the dimensions of the four sides of a box, row by row from the box
// outward.
type rows struct {
	around box
	base   [4]int // between the box and the first row
	row    [4][][]span
	reach  [4]int // how far inside the box extension lines begin
}

// add puts a row of dimensions, a chain where there are several, outside those
// that a side has. A dimension of nothing is left out.
func (r *rows) add(d side, spans ...span) {
	var row []span
	for _, s := range spans {
		if s.a > s.b {
			s.a, s.b = s.b, s.a
		}
		if s.a != s.b {
			row = append(row, s)
		}
	}
	if len(row) > 0 {
		r.row[d] = append(r.row[d], row)
	}
}

// settle gives a row of its own to each number in the middle of a chain that is
// too wide for its place: those at the ends are drawn out.
func (r *rows) settle(d side) {
	for n := 0; n < len(r.row[d]); n++ {
		for i := 1; i+1 < len(r.row[d][n]); i++ {
			row := r.row[d][n]
			if _, ok := room(row[i], r.crossing(d, n)); ok {
				continue
			}
			r.row[d] = append(r.row[d], []span{row[i]})
			r.row[d][n] = slices.Delete(row, i, i+1)
			i--
		}
	}
}

// extent is how far the rows of a side reach from the box.
func (r *rows) extent(d side) int {
	if len(r.row[d]) == 0 {
		return r.base[d]
	}
	return r.base[d] + len(r.row[d])*pitch + tick
}

// at turns a place along a side, and a distance from the box, into a place on
// the paper.
func (r *rows) at(d side, along, out int) (x, y int) {
	switch d {
	case top:
		return along, r.around.y0 - out
	case right:
		return r.around.x1 + out, along
	case bottom:
		return along, r.around.y1 + out
	}
	return r.around.x0 - out, along
}

// draw writes all the rows.
func (s *sheet) rows(r *rows) {
	for d := top; d <= left; d++ {
		r.settle(d)
	}
	for d := top; d <= left; d++ {
		for i := range r.row[d] {
			s.row(r, d, i)
		}
	}
}

// row writes one row: extension lines from the box, dimension lines with their
// strokes, numbers.
func (s *sheet) row(r *rows, d side, n int) {
	out := r.base[d] + (n+1)*pitch
	crossing := r.crossing(d, n)
	row := r.row[d][n]
	drawn := r.far(d) // how far the row is drawn out already
	for i, sp := range row {
		s.extension(r, d, out, sp.bad, sp.a, sp.b)
		l, u := sp.a, sp.b
		at, within := room(sp, crossing)
		a := middle
		switch {
		case within:
		case i == 0 && len(row) > 1: // out to the near end
			at = min(sp.a, r.near(d), first(crossing)) - 2*space
			l, a = at-sp.width(), end
		default:
			at = max(sp.b, drawn, last(crossing)) + 2*space
			u, a = at+sp.width(), start
			drawn = u
		}
		if d.upright() { // read upward: the start is the greater
			if a == start {
				a = end
			} else if a == end {
				a = start
			}
		}
		s.dimensionLine(r, d, out, sp, l, u)
		x, y := r.at(d, at, out)
		if d.upright() {
			x -= space + numberSize*descent/100
		} else {
			y -= space + numberSize*descent/100 - px
		}
		s.write(sp.label, x, y, a, d.upright())
	}
}

// crossing are the places at which extension lines of rows further out, and of
// the row itself, cross row n of a side, in order.
func (r *rows) crossing(d side, n int) []int {
	var list []int
	for _, row := range r.row[d][n:] {
		for _, s := range row {
			list = insert(insert(list, s.a), s.b)
		}
	}
	return list
}

// insert puts n into a list in order; lists are short, and all of a sort makes the
// page's module larger by kilobytes.
func insert(list []int, n int) []int {
	i, _ := slices.BinarySearch(list, n)
	list = append(list, n)
	copy(list[i+1:], list[i:])
	list[i] = n
	return list
}

func first(list []int) int { return list[0] }
func last(list []int) int  { return list[len(list)-1] }

// near and far are where a row that is drawn out is past the rows of the sides
// beside it.
func (r *rows) near(d side) int {
	if d.upright() {
		return r.around.y0 - r.extent(top)
	}
	return r.around.x0 - r.extent(left)
}

func (r *rows) far(d side) int {
	if d.upright() {
		return r.around.y1 + r.extent(bottom)
	}
	return r.around.x1 + r.extent(right)
}

// room is the middle of the room for a number on its dimension line: between
// the lines that cross it, nearest to the middle. It reports whether there is
// room enough.
func room(s span, crossing []int) (at int, ok bool) {
	need, mid := s.width()+2*space, (s.a+s.b)/2
	nearest := -1
	a := s.a
	for _, b := range crossing {
		if b <= a || b > s.b {
			continue
		}
		if b-a >= need {
			c := max(a+need/2+1, min(mid, b-need/2-1))
			if off := abs(c - mid); nearest < 0 || off < nearest {
				at, nearest = c, off
			}
		}
		a = b
	}
	return at, nearest >= 0
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

// extension draws the two lines from the box past the dimension line.
func (s *sheet) extension(r *rows, d side, out int, bad bool, ends ...int) {
	p := &s.pen
	p.raw(`<path d="`)
	for _, e := range ends {
		x0, y0 := r.at(d, e, 3*px-r.reach[d])
		x1, y1 := r.at(d, e, out+tick)
		p.stroke(x0, y0, x1, y1)
	}
	p.raw(`" `, lineOf(bad), "/>\n")
}

// dimensionLine draws the line from l to u with a stroke at both ends of the
// span.
func (s *sheet) dimensionLine(r *rows, d side, out int, sp span, l, u int) {
	p := &s.pen
	x0, y0 := r.at(d, l, out)
	x1, y1 := r.at(d, u, out)
	p.path(lineOf(sp.bad), x0, y0, x1, y1)
	p.raw(`<path d="`)
	for _, e := range [...]int{sp.a, sp.b} {
		x, y := r.at(d, e, out)
		p.stroke(x-tick*3/4, y+tick*3/4, x+tick*3/4, y-tick*3/4)
	}
	p.raw(`" `, tickLook, "/>\n")
}

func lineOf(bad bool) string {
	if bad {
		return badLine
	}
	return lineLook
}

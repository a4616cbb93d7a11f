package template

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A pen writes the content of a page or a form in millimeters.
type pen struct {
	b    []byte
	move plane.Point // where the origin of what is drawn lies
}

func (p *pen) text(parts ...string) {
	for _, s := range parts {
		p.b = append(p.b, s...)
	}
}

// numbers writes lengths, each with a space behind it.
func (p *pen) numbers(lengths ...measure.Length) {
	for _, l := range lengths {
		p.b = append(appendMillimeters(p.b, l, 4), ' ')
	}
}

func (p *pen) point(at plane.Point) { p.numbers(at.X+p.move.X, at.Y+p.move.Y) }

// stroke sets how lines are drawn.
func (p *pen) stroke(color string, wide measure.Length, dash []measure.Length) {
	p.color(color)
	p.text("RG ")
	p.numbers(wide)
	p.text("w [")
	p.numbers(dash...)
	p.text("] 0 d\n")
}

// color writes red, green and blue of #rrggbb as parts of one.
func (p *pen) color(color string) {
	for i := 1; i < len(color); i += 2 {
		v := 16*digit(color[i]) + digit(color[i+1])
		p.b = append(appendDecimal(p.b, v*1000/255, 3), ' ')
	}
}

func digit(c byte) int64 {
	if c >= 'a' {
		return int64(c-'a') + 10
	}
	return int64(c - '0')
}

// line adds a straight line to the path that is being written.
func (p *pen) line(x0, y0, x1, y1 measure.Length) {
	p.point(plane.Point{X: x0, Y: y0})
	p.text("m ")
	p.point(plane.Point{X: x1, Y: y1})
	p.text("l\n")
}

func (p *pen) rect(x, y, width, height measure.Length) {
	p.point(plane.Point{X: x, Y: y})
	p.numbers(width, height)
	p.text("re\n")
}

// path strokes a path, its arcs as Bezier curves.
func (p *pen) path(path Path) {
	p.point(path.Vertices[0].Point)
	p.text("m\n")
	path.arcs(func(a arc) {
		if a.sweep == 0 {
			p.point(a.to)
			p.text("l\n")
			return
		}
		a.split(fine, func(a arc) {
			one, two := a.controls()
			p.point(one)
			p.point(two)
			p.point(a.to)
			p.text("c\n")
		})
	})
	if path.Closed {
		p.text("s\n")
	} else {
		p.text("S\n")
	}
}

func (p *pen) spot(s Spot) {
	arm := s.arm()
	p.line(s.At.X-arm, s.At.Y, s.At.X+arm, s.At.Y)
	p.line(s.At.X, s.At.Y-arm, s.At.X, s.At.Y+arm)
	p.text("S\n")
	if r := s.Diameter / 2; r > 0 {
		left, right := plane.Point{X: s.At.X - r, Y: s.At.Y}, plane.Point{X: s.At.X + r, Y: s.At.Y}
		p.path(Path{Closed: true, Vertices: []Vertex{{left, measure.Turn / 2}, {right, measure.Turn / 2}}})
	}
}

func (p *pen) word(w Word) {
	text := pdfText(w.Text)
	if w.Centered {
		w.At.X -= width(text, w.Height) / 2
	}
	p.letters(w.At, w.Height, text)
}

// letters writes text in WinAnsiEncoding.
func (p *pen) letters(at plane.Point, height measure.Length, text []byte) {
	if len(text) == 0 {
		return
	}
	p.text("BT /F ")
	p.numbers(size(height))
	p.text("Tf ")
	p.point(at)
	p.text("Td (")
	for _, c := range text {
		switch {
		case c == '(' || c == ')' || c == '\\':
			p.b = append(p.b, '\\', c)
		case c > '~':
			p.b = append(p.b, '\\', '0'+c>>6, '0'+c>>3&7, '0'+c&7)
		default:
			p.b = append(p.b, c)
		}
	}
	p.text(") Tj ET\n")
}

// say writes plain words of ours.
func (p *pen) say(x, y, height measure.Length, text string) {
	p.letters(plane.Point{X: x, Y: y}, height, pdfText(text))
}

// ruler draws one from x to the right, with ticks upward, as long as tick says.
func (p *pen) ruler(x, y, step measure.Length, count int, tick func(i int) measure.Length) {
	p.line(x, y, x+measure.Length(count)*step, y)
	for i := range count + 1 {
		at := x + measure.Length(i)*step
		p.line(at, y, at, y+tick(i))
	}
	p.text("S\n")
}

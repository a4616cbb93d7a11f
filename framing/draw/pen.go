package draw

import (
	"strconv"
	"strings"
)

// px is a pixel in the pen's units: hundredths of a pixel.
const px = 100

// A box is a place on the paper, from its left top to its right bottom.
type box struct{ x0, y0, x1, y1 int }

func (b box) width() int  { return b.x1 - b.x0 }
func (b box) height() int { return b.y1 - b.y0 }

// empty reports whether nothing of b can be seen.
func (b box) empty() bool { return b.x1 <= b.x0 || b.y1 <= b.y0 }

// inset is b smaller by n on each side.
func (b box) inset(n int) box { return box{b.x0 + n, b.y0 + n, b.x1 - n, b.y1 - n} }

// within is the part of b that lies in o.
func (b box) within(o box) box {
	return box{max(b.x0, o.x0), max(b.y0, o.y0), min(b.x1, o.x1), min(b.y1, o.y1)}
}

// around is the least box with both.
func (b box) around(o box) box {
	return box{min(b.x0, o.x0), min(b.y0, o.y0), max(b.x1, o.x1), max(b.y1, o.y1)}
}

// A pen writes shapes and keeps the bounds of what it wrote.
type pen struct {
	b      []byte
	bounds box
	used   bool
}

func (p *pen) touch(b box) {
	if !p.used {
		p.bounds, p.used = b, true
	}
	p.bounds = p.bounds.around(b)
}

func (p *pen) raw(parts ...string) {
	for _, s := range parts {
		p.b = append(p.b, s...)
	}
}

// appendUnits writes n hundredths as a decimal without zeros at its end.
func appendUnits(b []byte, n int) []byte {
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	b = strconv.AppendInt(b, int64(n/px), 10)
	if rest := n % px; rest != 0 {
		b = append(b, '.', byte('0'+rest/10))
		if rest%10 != 0 {
			b = append(b, byte('0'+rest%10))
		}
	}
	return b
}

// num writes one coordinate, with what stands before it.
func (p *pen) num(before string, n int) {
	p.b = appendUnits(append(p.b, before...), n)
}

// rect draws a rectangle; look are its attributes.
func (p *pen) rect(b box, look string) {
	if b.empty() {
		return
	}
	p.touch(b)
	p.num(`<rect x="`, b.x0)
	p.num(`" y="`, b.y0)
	p.num(`" width="`, b.width())
	p.num(`" height="`, b.height())
	p.raw(`" `, look, "/>\n")
}

// ring draws what outer has and inner has not.
func (p *pen) ring(outer, inner box, look string) {
	if inner.empty() {
		p.rect(outer, look)
		return
	}
	if outer.empty() {
		return
	}
	p.touch(outer)
	p.raw(`<path fill-rule="evenodd" d="`)
	p.loop(outer)
	p.loop(inner)
	p.raw(`" `, look, "/>\n")
}

func (p *pen) loop(b box) {
	p.num("M", b.x0)
	p.num(" ", b.y0)
	p.num("H", b.x1)
	p.num("V", b.y1)
	p.num("H", b.x0)
	p.raw("Z")
}

// area draws a closed outline through points, given as x and y in turn.
func (p *pen) area(look string, xy ...int) {
	p.raw(`<path d="`)
	p.points(xy)
	p.raw(`Z" `, look, "/>\n")
}

// path draws a line through points, given as x and y in turn.
func (p *pen) path(look string, xy ...int) {
	p.raw(`<path d="`)
	p.points(xy)
	p.raw(`" `, look, "/>\n")
}

func (p *pen) points(xy []int) {
	for i := 0; i+1 < len(xy); i += 2 {
		x, y := xy[i], xy[i+1]
		p.touch(box{x, y, x, y})
		if i == 0 {
			p.num("M", x)
		} else {
			p.num("L", x)
		}
		p.num(" ", y)
	}
}

// circle draws a circle.
func (p *pen) circle(x, y, r int, look string) {
	p.touch(box{x - r, y - r, x + r, y + r})
	p.num(`<circle cx="`, x)
	p.num(`" cy="`, y)
	p.num(`" r="`, r)
	p.raw(`" `, look, "/>\n")
}

// stroke is one straight line of a path that is being written.
func (p *pen) stroke(x0, y0, x1, y1 int) {
	p.touch(box{min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)})
	p.num("M", x0)
	p.num(" ", y0)
	p.num("L", x1)
	p.num(" ", y1)
}

// escape writes text for XML, in content as in an attribute.
func (p *pen) escape(s string) {
	for i := 0; i < len(s); i++ {
		switch c := s[i]; c {
		case '&':
			p.raw("&amp;")
		case '<':
			p.raw("&lt;")
		case '>':
			p.raw("&gt;")
		case '"':
			p.raw("&quot;")
		default:
			p.b = append(p.b, c)
		}
	}
}

// fractions writes text with every fraction in a span of its own, to be set
// diagonally: the font makes all figures of such a span small.
func (p *pen) fractions(s string) {
	for {
		slash := strings.IndexByte(s, '/')
		a, b := slash, slash+1
		for a > 0 && isDigit(s[a-1]) {
			a--
		}
		for slash >= 0 && b < len(s) && isDigit(s[b]) {
			b++
		}
		if slash < 0 || a == slash || b == slash+1 {
			p.escape(s)
			return
		}
		p.escape(s[:a])
		p.raw(`<tspan class="frac">`, s[a:b], `</tspan>`)
		s = s[b:]
	}
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

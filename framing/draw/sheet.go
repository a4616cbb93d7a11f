package draw

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A sheet is one drawing as it is made.
type sheet struct {
	Options
	view   View
	number int
	plan   *framing.Plan
	piece  *framing.PiecePlan
	order  *framing.Piece
	format measure.Format

	pen         pen
	title, desc string
	boards      int    // drawn at the saw
	told        string // what was written to be listened to
}

// Spaces on the paper.
const (
	pad   = 8 * px  // around everything, and between a piece and its first row
	pitch = 25 * px // from one row of dimensions to the next
	line  = 20 * px // from one line of a list to the next
	tick  = 4 * px  // half of the oblique stroke at an end of a dimension line
	space = 4 * px  // between a number and any line
)

// caption writes the piece's name below everything.
func (s *sheet) caption() {
	b := s.pen.bounds
	name := shorten(s.piece.Name, wordSize, max(b.width(), leastPaper*px/2))
	if name == "" {
		return
	}
	y := b.y1 + pad + wordSize
	s.pen.touch(textBox(b.x0, y, textWidth(name, wordSize, false), wordSize, start, false))
	s.pen.num(`<text class="name" x="`, b.x0)
	s.pen.num(`" y="`, y)
	s.pen.raw(`" font-size="13" fill="#6b6156" direction="ltr">`)
	s.pen.escape(name)
	s.pen.raw("</text>\n")
}

// finish puts the drawing into its frame: just as large as it is or, where one says
// how large the paper is, in the middle of that. The frame then stays from one
// drawing to the next, which costs a browser less than another one.
func (s *sheet) finish(dst []byte) []byte {
	s.caption()
	body, b := s.pen.b, s.pen.bounds.inset(-pad)
	sheet := b
	width, height := s.paper()
	fits := s.Width > 0 && s.Height > 0 && b.width() <= width && b.height() <= height
	if fits {
		sheet = box{0, 0, width, height}
	}
	s.pen.b = append(dst, `<svg xmlns="http://www.w3.org/2000/svg"`...)
	s.pen.num(` viewBox="`, sheet.x0)
	s.pen.num(" ", sheet.y0)
	s.pen.num(" ", sheet.width())
	s.pen.num(" ", sheet.height())
	s.pen.num(`" width="`, sheet.width())
	s.pen.num(`" height="`, sheet.height())
	s.pen.raw(`" class="drawing `, string(s.view), `"`)
	s.pen.raw(` font-family="'Fairmiter Sans','Source Sans 3',sans-serif" aria-labelledby="`)
	s.prefix()
	s.pen.raw(`-title `)
	s.prefix()
	if s.Interactive {
		s.pen.raw(`-desc" role="graphics-document document">`, "\n")
	} else {
		s.pen.raw(`-desc" role="img">`, "\n")
	}
	for _, e := range [...][3]string{{"title", s.title}, {"desc", s.desc}} {
		s.pen.raw("<", e[0], ` id="`)
		s.prefix()
		s.pen.raw("-", e[0], `">`)
		s.pen.escape(e[1])
		s.pen.raw("</", e[0], ">\n")
	}
	s.pen.rect(sheet, paperLook)
	if fits {
		s.pen.num(`<g transform="translate(`, (sheet.width()-b.width())/2-b.x0)
		s.pen.num(" ", (sheet.height()-b.height())/2-b.y0)
		s.pen.raw(")\">\n")
	}
	s.pen.b = append(s.pen.b, body...)
	if fits {
		s.pen.raw("</g>\n")
	}
	s.pen.raw("</svg>\n")
	return s.pen.b
}

// empty is the sheet of a piece that has no figures.
func (s sheet) empty(dst []byte) []byte {
	if !s.view.known() {
		s.view = Front
	}
	if s.piece == nil {
		s.piece = &framing.PiecePlan{}
	}
	w, h := s.paper()
	s.title, s.desc = "Nothing to draw", "There is no worked piece to draw here."
	s.pen.touch(box{0, 0, w / 2, h / 2})
	s.pen.path(lineLook, 0, 0, w/2, 0, w/2, h/2, 0, h/2, 0, 0)
	return s.finish(dst)
}

func (v View) known() bool { return slices.Contains(v.Choices(), string(v)) }

// part begins the group of a part of the piece. Close it with [sheet.close].
func (s *sheet) part(id, name, label string, bad bool) {
	p := &s.pen
	p.raw(`<g id="`)
	s.prefix()
	p.raw("-", id, `" data-part="`, name, `" class="part`)
	if bad {
		p.raw(" bad")
	}
	if s.Interactive {
		p.raw(`" role="button" tabindex="0" aria-label="`, label)
	}
	p.raw(`">`, "\n")
}

func (s *sheet) close() { s.pen.raw("</g>\n") }

// A scale lays lengths on the paper: a length of den is num units long.
type scale struct{ num, den int64 }

// fit is the scale at which a size just fits into a width and a height.
func fit(size measure.Size, width, height int) scale {
	w, h := int64(bounded(size.Width)), int64(bounded(size.Height))
	a, b := int64(max(width, 40*px)), int64(max(height, 40*px))
	w, h = max(w, 1), max(h, 1)
	if a*h <= b*w { // the width decides; both products stay below 10^17
		return scale{a, w}
	}
	return scale{b, h}
}

// of is how long a length is on the paper, rounded to the nearest.
func (c scale) of(l measure.Length) int {
	n := int64(bounded(l)) * c.num
	if n < 0 {
		return -int((-n + c.den/2) / c.den)
	}
	return int((n + c.den/2) / c.den)
}

// bounded keeps a length where no product passes the range: a plan's own are
// well within.
func bounded(l measure.Length) measure.Length {
	const most = 8 * explain.MaxLength
	return max(-most, min(l, most))
}

// sized is the box of a size whose middle is that of b.
func (c scale) sized(b box, size measure.Size) box {
	w, h := c.of(size.Width), c.of(size.Height)
	x, y := b.x0+(b.width()-w)/2, b.y0+(b.height()-h)/2
	return box{x, y, x + w, y + h}
}

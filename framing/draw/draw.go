package draw

import "github.com/fairmiter/fairmiter/framing"

// A View is a side from which a piece is drawn.
type View string

// The views.
const (
	Front   View = "front"   // to scale, as it hangs
	Section View = "section" // cut through one rail, enlarged
	Back    View = "back"    // from behind: left and right change places
	Rails   View = "rails"   // each different rail laid flat, with both its ends
	Setup   View = "setup"   // how boards lie at the saw that take more than a plain miter
)

// Choices lists the views, for readers and forms.
func (View) Choices() []string {
	return []string{string(Front), string(Section), string(Back), string(Rails), string(Setup)}
}

// Options say what a drawing is for.
type Options struct {
	// Width and Height are the paper in pixels; 0 is 720 by 640. They are kept
	// between 240 and 4000. Where both are given, the drawing stands in the middle of
	// the paper if it goes on it; else it is just as large as it is.
	Width, Height int
	// Interactive makes parts and numbers reachable by keyboard and finger.
	// Otherwise the drawing is one picture with one description.
	Interactive bool
}

// The paper.
const (
	usualWidth, usualHeight = 720, 640
	leastPaper, mostPaper   = 240, 4000
)

// paper is the size of the paper in the pen's units.
func (o Options) paper() (width, height int) {
	of := func(n, usual int) int {
		if n == 0 {
			n = usual
		}
		return max(leastPaper, min(n, mostPaper)) * px
	}
	return of(o.Width, usualWidth), of(o.Height, usualHeight)
}

// SVG returns the drawing of a piece of a plan, counted from 0. A piece that
// was not worked, or that has no size, is drawn as an empty sheet that says so, and a piece or view
// that does not exist as an empty sheet.
func SVG(p framing.Plan, piece int, v View, o Options) string {
	return string(AppendSVG(nil, p, piece, v, o))
}

// AppendSVG appends what [SVG] returns.
func AppendSVG(dst []byte, p framing.Plan, piece int, v View, o Options) []byte {
	if piece < 0 || piece >= len(p.Pieces) || piece >= len(p.Order.Pieces) {
		return sheet{view: v, Options: o}.empty(dst)
	}
	s := sheet{
		Options: o, view: v, number: piece, plan: &p,
		piece: &p.Pieces[piece], order: &p.Order.Pieces[piece],
	}
	s.format, _ = p.Order.Show.Format() // what has no format is written exactly
	if outside := s.piece.Frame.Outside.Shown(); !s.piece.Worked || (!framing.Shapes || !s.shaped()) && (outside.Width <= 0 || outside.Height <= 0) {
		return s.empty(dst)
	}
	s.pen.b = make([]byte, 0, 24<<10)
	lost := framing.Shapes && s.shaped() && s.piece.Shape.Outlines.Sight == nil
	switch {
	case framing.Shapes && lost && (v == Front || v == Back):
		s.undrawn("The lips leave nothing to be seen in this frame: how it looks cannot be drawn. Its rails can.")
	case framing.Shapes && v == Front && s.shaped() && !s.boxed():
		s.outlineFront()
	case v == Front:
		s.front()
	case framing.Shapes && v == Section && s.shaped() && s.piece.Shape.Slope != nil:
		s.slopeSection()
	case v == Section:
		s.section()
	case framing.Shapes && v == Back && s.shaped():
		s.outlineBack()
	case v == Back:
		s.back()
	case framing.Shapes && v == Rails:
		s.bars()
	case framing.Shapes && v == Setup:
		s.setup()
	default:
		return s.empty(dst)
	}
	return s.finish(dst)
}

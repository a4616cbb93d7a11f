package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// shownPiece is a piece in the lengths that are shown, solved as one set:
// first the rails, up; then what lies in the opening that those rails make,
// down; then the window; and the last border takes what is left, so that the
// shown numbers add up.
type shownPiece struct {
	outside, opening, sight, pkg measure.Size
	layers                       []measure.Size // in the order of exactPiece.layers
	mat                          matLayout
	depth                        [3]measure.Length // package, clear, wanted
}

type matLayout = mat.Layout

// show solves the shown set for one way of showing.
func (w worker) show(x exactPiece, f measure.Format) shownPiece {
	var s shownPiece
	s.outside = roundSize(f, x.frame.Outside, measure.Up)
	s.opening = w.Frame.OpeningOf(s.outside)
	s.sight = roundSize(f, s.opening.Grown(-2*w.Frame.Lip), measure.Down)
	s.layers = make([]measure.Size, len(x.layers))
	for i, l := range x.layers {
		s.layers[i] = l.size
		if l.toFit {
			s.layers[i] = roundSize(f, s.opening.Grown(-w.play(l)), measure.Down)
		}
		if l.part == MatLayer {
			s.mat = w.showMat(x, s, s.layers[i], f)
		}
	}
	s.pkg = x.frame.Package
	if !w.Mat.IsZero() {
		s.pkg = s.mat.Blank
	}
	s.depth[0], _ = f.Round(x.depth.Package, measure.Up)
	s.depth[1], _ = f.Round(w.Frame.Rabbet-s.depth[0], measure.Down)
	s.depth[2], _ = f.Round(s.depth[0]+w.shop.Points, measure.Up)
	return s
}

// showMat shows a mat on a blank of a shown size.
func (w worker) showMat(x exactPiece, s shownPiece, blank measure.Size, f measure.Format) matLayout {
	m := matLayout{Blank: blank}
	m.Window = roundSize(f, x.mat.Window, w.windowDirection())
	least := w.Art.Least()
	m.Covered.Width, _ = (least.Width - m.Window.Width).Half()
	m.Covered.Height, _ = (least.Height - m.Window.Height).Half()

	m.Cut.Left, m.Cut.Right = share(f, blank.Width-m.Window.Width, x.mat.Cut.Left, x.mat.Cut.Right)
	m.Cut.Top, m.Cut.Bottom = share(f, blank.Height-m.Window.Height, x.mat.Cut.Top, x.mat.Cut.Bottom)
	m.Cover = mat.Shared(measure.Size{Width: blank.Width - s.sight.Width, Height: blank.Height - s.sight.Height})
	m.Visible = m.Cut.Minus(m.Cover)

	m.Seated = m.Visible
	m.Seated.Bottom = m.Cut.Bottom - w.Frame.Lip
	m.Seated.Top = s.sight.Height - m.Window.Height - m.Seated.Bottom
	m.Back = mat.Corner{Left: m.Cut.Right, Top: m.Cut.Top}
	return m
}

// windowDirection is the safe way to round a window: down over an edge that
// must be covered, up around one that must show.
func (w worker) windowDirection() measure.Direction {
	if w.Mat.Window.By == mat.ByGap {
		return measure.Up
	}
	return measure.Down
}

// boardGiven reports whether the mat's board has a size of its own.
func (w worker) boardGiven() bool { return w.Mat.Borders.By == mat.ByBoard }

// share divides what is left between two borders whose exact widths are a and
// b. Equal ones share it if it divides; else the first is rounded and the last
// takes the remainder.
func share(f measure.Format, left, a, b measure.Length) (first, last measure.Length) {
	if !halved(a, b) {
		first, _ = f.Round(a, measure.Nearest)
		return first, left - first
	}
	half, rest := left.Half()
	first, odd := f.Round(half, shareDirection(f, left))
	if rest == 0 && odd == 0 {
		return half, half
	}
	return first, left - first
}

// shareDirection is how the first of two equal borders is rounded. Between
// marks, the odd step goes to the last one; a board that was not cut to a mark
// has its window as near to the middle as the marks allow.
func shareDirection(f measure.Format, left measure.Length) measure.Direction {
	if _, off := f.Round(left, measure.Down); off != 0 {
		return measure.Nearest
	}
	return measure.Down
}

// halved reports whether two borders are equal, but for an odd nanometer that
// one of them takes.
func halved(a, b measure.Length) bool { return b-a >= -1 && b-a <= 1 }

func roundSize(f measure.Format, s measure.Size, d measure.Direction) measure.Size {
	s.Width, _ = f.Round(s.Width, d)
	s.Height, _ = f.Round(s.Height, d)
	return s
}

package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// shownPiece is a piece in the lengths that are shown, solved as one set:
// first the rails, up; then what lies in the opening that those rails make,
// down; then the window; and the last border takes what is left, so that the
// shown numbers add up.
type shownPiece struct {
	inner, frame shownFrame     // as in exactPiece
	layers       []measure.Size // in the order of exactPiece.layers
	mat          matLayout
	depth        shownDepth
	linerDepth   shownDepth
}

// A shownFrame is a frame in shown lengths.
type shownFrame struct{ outside, opening, sight, pkg measure.Size }

// A shownDepth is a depth in shown lengths.
type shownDepth struct{ pkg, clear, wanted measure.Length }

// show solves the shown set for one way of showing: from the inside out, since
// what lies in a frame has to go into it as it is shown.
func (w *worker) show(x exactPiece, f measure.Format) shownPiece {
	var s shownPiece
	inner := w.inner()
	s.inner = showFrame(f, inner, x.inner.Outside)
	if Shapes && !w.lined() && w.shaped() {
		s.inner = w.showShaped(f, x)
	}
	s.frame = s.inner
	if w.lined() {
		pkg := s.inner.outside
		s.frame = showFrame(f, w.Frame, pkg.Grown(w.Frame.Room()+2*(w.Frame.Face-w.Frame.Lip)))
		if Shapes && w.shaped() {
			s.frame = w.showShaped(f, x)
		}
		s.frame.pkg = pkg
	}
	s.layers = make([]measure.Size, len(x.layers))
	under := 0
	for i, l := range x.layers {
		s.layers[i] = l.size
		if l.toFit {
			s.layers[i] = roundSize(f, s.inner.opening.Grown(-w.play(l)), measure.Down)
		}
		switch l.part {
		case MatLayer:
			s.mat = w.showMat(x, s, s.layers[i], f)
		case UnderMatLayer:
			s.layers[i] = s.mat.Under[under].Blank
			under++
		case LinerLayer:
			s.layers[i] = s.inner.outside
		}
	}
	s.inner.pkg = x.inner.Package
	if !w.Mat.IsZero() {
		s.inner.pkg = s.mat.Blank
	}
	if !w.lined() {
		s.frame = s.inner
	}
	s.depth = showDepth(f, inner, x.depth, w.points(inner))
	if w.lined() {
		s.linerDepth = showDepth(f, w.Frame, x.linerDepth, w.points(w.Frame))
	}
	return s
}

// showFrame shows a frame of this outside: up, so that everything goes in, but
// down where the outside is fixed.
func showFrame(f measure.Format, frame molding.Frame, outside measure.Size) shownFrame {
	var s shownFrame
	s.outside = roundSize(f, outside, frame.Made.Direction())
	s.opening = frame.OpeningOf(s.outside)
	s.sight = roundSize(f, s.opening.Grown(-2*frame.Lip), measure.Down)
	return s
}

// showDepth rounds the build-up up; what it leaves of the rabbet, and the rabbet
// that it wants, follow from it.
func showDepth(f measure.Format, frame molding.Frame, d molding.Depth, points measure.Length) shownDepth {
	var s shownDepth
	s.pkg, _ = f.Round(d.Package, measure.Up)
	s.clear, _ = f.Round(frame.Rabbet-s.pkg, measure.Down)
	s.wanted, _ = f.Round(s.pkg+points, measure.Up)
	return s
}

// showMat shows a mat on a blank of a shown size.
func (w *worker) showMat(x exactPiece, s shownPiece, blank measure.Size, f measure.Format) matLayout {
	m := matLayout{Blank: blank, Bevel: x.mat.Bevel}
	w.showWindows(x, &m, f)
	m.Bevel.Face = m.Window.Grown(2 * m.Bevel.Run)

	m.Cut.Left, m.Cut.Right = share(f, blank.Width-m.Window.Width, x.mat.Cut.Left, x.mat.Cut.Right)
	m.Cut.Top, m.Cut.Bottom = share(f, blank.Height-m.Window.Height, x.mat.Cut.Top, x.mat.Cut.Bottom)
	m.Cover = mat.Shared(measure.Size{Width: blank.Width - s.inner.sight.Width, Height: blank.Height - s.inner.sight.Height})
	m.Visible = m.Cut.Minus(m.Cover)

	m.Seated = m.Visible
	m.Seated.Bottom = m.Cut.Bottom - w.inner().Lip
	m.Seated.Top = s.inner.sight.Height - m.Window.Height - m.Seated.Bottom
	m.Back = mat.Corner{Left: m.Cut.Right, Top: m.Cut.Top}
	w.showUnder(&m, f)
	return m
}

// showWindows shows the windows from the lowest board up: each is the one below
// it and the shown reveals.
func (w *worker) showWindows(x exactPiece, m *matLayout, f measure.Format) {
	n := w.Mat.Under.Count()
	window := roundSize(f, x.mat.Lowest(n), w.windowDirection())
	least := w.Art.Least()
	m.Covered.Width, _ = (least.Width - window.Width).Half()
	m.Covered.Height, _ = (least.Height - window.Height).Half()
	for i := n - 1; i >= 0; i-- {
		b := &m.Under[i]
		b.Bevel = x.mat.Under[i].Bevel
		b.Reveal, _ = f.Round(x.mat.Under[i].Reveal, measure.Nearest)
		b.Window = window
		b.Bevel.Face = window.Grown(2 * b.Bevel.Run)
		window = window.Grown(2 * b.Reveal)
	}
	m.Window = window
}

// showUnder shows the boards under the top one, whose borders follow from its
// own.
func (w *worker) showUnder(m *matLayout, f measure.Format) {
	cut := m.Cut
	for i, u := range w.Mat.Under.All() {
		b := &m.Under[i]
		over, _ := m.Overhang(i)
		b.Seen = b.Reveal - b.Bevel.Run - over
		cut = cut.Plus(measure.AllSides(b.Reveal))
		b.FromTop = cut
		b.Blank = roundSize(f, m.Blank.Grown(-2*u.Trim), measure.Down)
		b.Own = cut.Minus(mat.Shared(measure.Size{Width: m.Blank.Width - b.Blank.Width, Height: m.Blank.Height - b.Blank.Height}))
	}
}

// windowDirection is the safe way to round a window: down over an edge that
// must be covered, up around one that must show.
func (w *worker) windowDirection() measure.Direction {
	if w.Mat.Window.By == mat.ByGap {
		return measure.Up
	}
	return measure.Down
}

// boardGiven reports whether the mat's board has a size of its own.
func (w *worker) boardGiven() bool { return w.Mat.Borders.By == mat.ByBoard }

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

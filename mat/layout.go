package mat

import "github.com/fairmiter/fairmiter/framing/measure"

// A Layout is a mat worked out.
type Layout struct {
	// Window is the size of the top board's window along the line on its back.
	Window measure.Size
	// Bevel is the edge of that window.
	Bevel Bevel
	// Covered is how far the mat covers the art's edge on each side, where the
	// art measures smallest and lies in the middle; negative for a gap. Of an
	// odd nanometer the half below is taken.
	Covered measure.Size
	// Cover is how much of each border the lip hides, with the mat in the
	// middle of its play.
	Cover measure.Sides
	// Cut, Visible and Seated are the borders as cut, as seen with the mat in
	// the middle, and as seen once it has dropped onto the lower lip.
	Cut, Visible, Seated measure.Sides
	// Blank is the board to cut.
	Blank measure.Size
	// Back is where the window's near corner lies on the back of the blank.
	Back Corner
	// Under are the boards under the top one, from the top down.
	Under [MaxUnder]Board
}

// A Board is a board under the top one, worked out.
type Board struct {
	// Reveal is how much smaller the window is than the one above, each side,
	// line to line.
	Reveal measure.Length
	// Seen is the strip of the board that shows, without its bevel: what the
	// reveal leaves beside it, and beside a reverse bevel above that reaches in
	// over it.
	Seen measure.Length
	// Window is the size of the window along the line on the back.
	Window measure.Size
	// Bevel is the edge of that window.
	Bevel Bevel
	// Blank is the board to cut.
	Blank measure.Size
	// Own are the borders measured from the board's own, trimmed edges, FromTop
	// those measured from the edges of the top board.
	Own, FromTop measure.Sides
}

// A Corner is a place on a board: from its left edge and from its top.
type Corner struct {
	Left measure.Length `json:"left"`
	Top  measure.Length `json:"top"`
}

// Lay works m out for what it finds. It takes any values; [Mat.Check] says
// which make sense.
func (m Mat) Lay(g Given) Layout {
	lowest := m.Window.size(g)
	l := Layout{Cover: Cover(g.Lip, g.Allowance)}
	m.layReveals(&l)
	reveals := l.reveals()
	l.Window = lowest.Grown(2 * reveals)
	l.Bevel = bevelOf(m.Thickness, m.Bevel, l.Window)
	l.Covered.Width, _ = (g.Least.Width - lowest.Width).Half()
	l.Covered.Height, _ = (g.Least.Height - lowest.Height).Half()
	within := measure.AllSides(m.Borders.within(reveals))

	switch m.Borders.By {
	case ByBoard:
		l.Cut = m.Borders.inBoard(l.Window, l.Cover)
		l.Visible = l.Cut.Minus(l.Cover)
	case ByCut:
		l.Cut = m.Borders.weighted(m.Borders.measuredTo(l.Window, lowest).Width).Minus(within)
		l.Visible = l.Cut.Minus(l.Cover)
	default:
		l.Visible = m.Borders.weighted(m.Borders.measuredTo(l.Window, lowest).Width).Minus(within)
		l.Cut = l.Visible.Plus(l.Cover)
	}
	l.Seated = l.Visible
	l.Seated.Top = l.Cut.Top - (g.Lip.Top - g.Allowance)
	l.Seated.Bottom = l.Cut.Bottom - g.Lip.Bottom

	sum := l.Cut.Sum()
	l.Blank = measure.Size{Width: l.Window.Width + sum.Width, Height: l.Window.Height + sum.Height}
	l.Back = Corner{Left: l.Cut.Right, Top: l.Cut.Top}
	m.layUnder(&l)
	return l
}

// layUnder lays the boards under the top one.
func (m *Mat) layUnder(l *Layout) {
	window, cut := l.Window, l.Cut
	for i, u := range m.Under.All() {
		b := &l.Under[i]
		window, cut = window.Grown(-2*b.Reveal), cut.Plus(measure.AllSides(b.Reveal))
		b.Window, b.FromTop = window, cut
		b.Bevel = bevelOf(u.Thickness, u.Bevel, window)
		b.Blank = l.Blank.Grown(-2 * u.Trim)
		b.Own = cut.Minus(measure.AllSides(u.Trim))
	}
}

// Lowest is the window of the lowest board, which lies on the art.
func (l Layout) Lowest(boards int) measure.Size {
	if boards == 0 {
		return l.Window
	}
	return l.Under[boards-1].Window
}

// within is how much of the borders, as they are given, the reveals take.
func (b Borders) within(reveals measure.Length) measure.Length {
	if b.To == ToLowest {
		return reveals
	}
	return 0
}

// measuredTo is the window that the borders are measured to.
func (b Borders) measuredTo(top, lowest measure.Size) measure.Size {
	if b.To == ToLowest {
		return lowest
	}
	return top
}

// size is the window. An overlap must hold where the art is smallest, a gap
// where it is largest.
func (w Window) size(g Given) measure.Size {
	switch w.By {
	case BySize:
		return w.Size
	case ByGap:
		return g.Greatest.Grown(2 * w.EachSide)
	}
	return g.Least.Grown(-2 * w.EachSide)
}

// Cover is how much of a mat's borders the lip hides when the mat lies in the
// middle of its play: half of lip + lip - allowance each. The odd nanometer
// goes right and down.
func Cover(lip measure.Sides, allowance measure.Length) measure.Sides {
	return Shared(lip.Sum().Grown(-allowance))
}

// Shared divides what both sides of each dimension have together between them.
// The odd nanometer goes right and down.
func Shared(both measure.Size) measure.Sides {
	left, odd := both.Width.Half()
	top, rest := both.Height.Half()
	return measure.Sides{Left: left, Right: left + odd, Top: top, Bottom: top + rest}
}

// weighted is the four borders as given, with the bottom one by its weight.
func (b Borders) weighted(window measure.Length) measure.Sides {
	s := b.Sides
	switch b.Weight {
	case Extra:
		s.Bottom = s.Top + b.Extra
	case Ratio:
		s.Bottom = s.Top + partOf(s.Top, b)
	case Optical:
		s.Bottom = OpticalBottom(s.Left+window+s.Right, window, s.Top)
	}
	return s
}

// inBoard is the four borders of a window in a given board. Weighted ones are
// weighted as they are seen, on what the lip leaves of the board.
func (b Borders) inBoard(window measure.Size, cover measure.Sides) measure.Sides {
	var s measure.Sides
	width, height := b.Board.Width-window.Width, b.Board.Height-window.Height
	s.Left, _ = width.Half()
	s.Right = width - s.Left
	covered := cover.Sum()
	seen := height - covered.Height
	switch b.weightInBoard(window, covered) {
	case Extra:
		s.Top, _ = (seen - b.Extra).Half()
		s.Top += cover.Top
	case Ratio:
		s.Top, _ = seen.Scale(whole, 2*whole+int64(b.Ratio))
		s.Top += cover.Top
	case Optical:
		s.Top = cover.Top + OpticalTop(measure.Size{
			Width: b.Board.Width - covered.Width, Height: b.Board.Height - covered.Height,
		}, window)
	default:
		s.Top, _ = height.Half()
	}
	s.Bottom = height - s.Top
	return s
}

// weightInBoard is the weight, none where the lip leaves too little of the board
// to find the window's optical center on.
func (b Borders) weightInBoard(window, covered measure.Size) Weight {
	if b.Weight == Optical && b.Board.Width-covered.Width <= window.Width {
		return Unweighted
	}
	return b.Weight
}

// FromBack returns how far the left edge of a window lies from the left edge
// of the board when the board is turned over, where from the front it is at
// left and width wide.
func FromBack(board, left, width measure.Length) measure.Length { return board - left - width }

package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

const whole = int64(explain.Whole)

// partOf is the part of the top border that the bottom one has more.
func partOf(top measure.Length, b Borders) measure.Length {
	part, _ := top.Scale(int64(b.Ratio), whole)
	return part
}

// OpticalTop is the top border of a window at the optical center of a board,
// as a straightedge finds it: lay the window in the board's upper left corner,
// halve the strip left over at its right and the one below it, draw a line
// from the window's lower left corner to where the lower halving line meets
// the board's right edge; where it crosses the other halving line is the
// window's lower right corner. Worked out, with W and H of the board and w and
// h of the window,
//
//	top = (W + w) (H - h) / (4 W)
//
// Source: the construction as printed for mounting photographs (rec.photo.darkroom,
// kept with this formula at russellcottrell.com/photo/centering.htm).
// A board of no width gives 0.
func OpticalTop(board, window measure.Size) measure.Length {
	top, _ := (board.Height - window.Height).Scale(
		int64(board.Width+window.Width), 4*int64(board.Width))
	return top
}

// OpticalBottom is the bottom border that goes with a top border so that the
// window lies at the optical center of the board they make: [OpticalTop] turned
// round,
//
//	bottom = top (3 W - w) / (W + w)
func OpticalBottom(board, window, top measure.Length) measure.Length {
	bottom, _ := top.Scale(int64(3*board-window), int64(board+window))
	return bottom
}

// BottomExtra is how much more the bottom border has than the top one, as a
// part of the top one: 50 over 65 is 30 %. A top border of nothing gives 0.
func BottomExtra(top, bottom measure.Length) explain.Ratio {
	extra, _ := measure.MulDiv(bottom-top, whole, int64(top))
	return explain.Ratio(extra)
}

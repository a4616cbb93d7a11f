// Package mat works out window mats: the window, the borders, the blank, and
// where the window is drawn on the back of the board.
//
// # Words
//
// The window is measured on the back of the board, along the line that the
// cutter follows. The art's edge lies under the mat by the overlap, or the
// window stands clear of the art by the gap; both are always each side, so an
// overlap of 1/8 makes the window 1/4 smaller than the art.
//
// A border is cut wider than it is seen, because the frame's lip hides the
// edge of the mat. How much it hides is the cover. The mat lies in an opening
// that is larger than itself by the allowance, so per axis
//
//	2 x cover = lip + lip - allowance
//
// with the mat in the middle of its play. A mat does not stay in the middle:
// it drops onto the lower lip. The seated borders are what is seen then.
//
// # The bottom border
//
// A window in the very middle looks low. [Borders].Weight says what is done
// about it: nothing, a fixed extra, a ratio of the top border, or the optical
// center that a straightedge finds on the board.
package mat

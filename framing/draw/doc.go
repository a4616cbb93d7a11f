// Package draw draws one worked piece as SVG text, as a shop drawing would show
// it: from the front, cut through one rail, and from behind; its rails laid flat,
// and how boards lie at the saw that take more than a plain miter.
//
// It computes no trade math. Every number that is written is the text of a
// figure of the plan, or of a length of the order; every line lies where the
// plan's shown lengths put it, scaled to the paper. So the borders of a drawing
// add up as its numbers do, and what does not fit is drawn as not fitting. A frame
// that is no plain rectangle is drawn from the plan's outlines, which are exact.
// What cannot be drawn is said in words.
//
// # Paper
//
// A unit of the paper is a pixel of the page. [Options] say how large the paper
// is; the piece is scaled into it, and lettering and lines keep their size. The
// paper grows where numbers need more room than it has. Coordinates have at most
// two decimals and come from integers: the same plan gives the same bytes
// everywhere.
//
// # Lines
//
// Outlines are drawn as ISO 128 has them, edges that one does not see dashed,
// dimensions as in ISO 129-1: extension lines, a dimension line with oblique
// strokes, the number above it, to be read from below or from the right. A
// number too wide for its place stands beside it, on the dimension line drawn
// out past the piece.
//
// # Classes and names
//
// There is no style in a drawing, only presentation attributes to stand alone
// with, and classes by which a page can color it otherwise:
//
//	part        a part of the piece, with its name in data-part: "frame",
//	            "liner", "mat", "mat/under/0", "art", "glazing", "spacer",
//	            "mount", "backing", "wire", "hanger", "hook", "dust_cover"
//	dim given   a number that the order gives; underlined and heavier
//	dim worked  a number that was worked out
//	frac        a fraction within a number, to be set diagonally
//	usual       beside given: the order left it to the shop's default
//	bad         what does not fit
//	ink, line, hidden, hatch, word, name, mark
//	            outlines, dimension lines, hidden edges, hatching, words,
//	            the piece's name, and the letter of a side
//
// A dimension has the place of its figure in data-path, a JSON Pointer into the
// plan ("/pieces/0/frame/outside/width", or "/order/pieces/0/frame/face" for
// what is given), and an id that keeps from one drawing to the next:
// "front-frame-outside-width". The drawings of a second piece begin "front2-". A
// number that is no figure of the plan, or that stands there already, has neither.
//
// Lettering is in Fairmiter Sans, which the page brings along. The table of its
// widths says how much room a text needs at most, with fractions set plain or
// diagonal; characters that the font does not have are taken to be 1.4 times as
// wide as the lettering is high. With another font numbers can come closer than
// they should.
package draw

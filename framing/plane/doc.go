// Package plane lays outlines out in the plane: the panel, the sight edge and
// the outside of a frame that has more or fewer than four sides, or whose
// corners are not square.
//
// # Outlines
//
// A [Polygon] is a closed outline of straight sides that nowhere meets itself.
// Its corners may point inward, as those of a star. It is made from what one
// has: corners ([New]), three or more sides and the diagonals between them
// ([Measured]), sides and angles ([Closed], [Closing]), a count and a size
// ([Regular]). Whatever cannot be an outline is refused with an [*Error] that
// says which side or corner is at fault and what would do.
//
//	p, err := plane.Measured([]measure.Length{16 * in, 16 * in, 22 * in}, nil, 0)
//	p.Interior(0) // 46.567... degrees
//
// # Which way is up
//
// X runs to the right and Y up, seen from the front. Side i goes from corner i
// to corner i+1, the last one back to corner 0. An outline may run either way
// round; outward is away from what it encloses, and a turn is counted toward the
// inside. So the turns of every outline add up to 360 degrees, exactly, and the
// corner between two sides measures 180 degrees less the turn.
//
// # How exact
//
// Corners are held to 2^-20 nm and handed out in whole nanometers. A side is as
// long as its corners are apart, a turn the difference of two headings, each
// rounded once. Crossing, touching and lying inside are decided exactly on the
// corners as they are held. No tolerance is hidden: where one is needed, it is a
// parameter in real units, and [Tolerance], 1 nm, is what rounding alone takes.
//
// # Limits
//
// Corners lie within [Reach] of the origin, and there are at most [MaxCorners].
// Whether an outline meets itself is found by comparing the sides that overlap
// from left to right: nearly in the time of sorting them for outlines of the
// trade, and never more than 50 million comparisons.
package plane

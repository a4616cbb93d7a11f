// Package material says what the parts of a frame are made of, and what that
// weighs.
//
// Each material is an [Entry] with two densities: the usual one, and the highest
// that a piece of that name can well have. A piece is judged by the second where
// something has to hold it. Every figure names its source and how well that is
// known; those that differ from one make to the next, or that nobody looked up,
// are marked uncertain.
//
// # Mass
//
// The mass of a sheet is its area times its thickness times its density. The
// thickness is the metric one that is really there: a pane sold as 1/8 in is
// 3.0 mm and not 3.175 mm, so tables made from the fraction read 6 percent
// heavy.
//
// The density of wood follows from its specific gravity, which handbooks give as
// dry mass over the volume at 12 percent moisture. The moisture weighs too:
//
//	density = 1000 kg/m3 x specific gravity x 1.12
package material

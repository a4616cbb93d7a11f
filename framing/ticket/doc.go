// Package ticket writes a plan down for the bench.
//
// [Text] writes a plain text ticket: per piece what it is, what is wrong with
// it first of all, then the mat, the rails, the parts in the rabbet and the
// depth in the order of work, each size as it is shown and, behind it, as it
// is exactly; last, what to mind and what most framers would do otherwise. With
// [Options].Working every figure follows with how it came to be.
//
// A frame that is no plain rectangle has its panel first, and then each different rail
// once, for the sides that it is for: both angles of each end, always which one is on
// the saw's scale and which lies between the cut and the edge; of a board at a slope
// every way to lay it. Sizes of a regular frame are across flats and say so.
//
// The ticket reads a plan and does no trade math: its numbers stand in the plan,
// and it only counts pieces. A plan with problems says so first, and piece by
// piece: nothing is to be cut from it.
package ticket

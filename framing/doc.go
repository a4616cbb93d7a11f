// Package framing works out a whole framed piece: from what a tape and a caliper
// say to every number at the bench.
//
// An [Order] is what the shop knows: its own habits ([Shop]), how it likes its
// numbers ([Show]) and the pieces to frame. [Work] turns it into a [Plan]:
//
//	order, err := framing.Read(data) // or build it: framing.NewOrder
//	plan, err := framing.Work(order)
//
// A page that shows an order while it is typed uses a [Reading], which works the
// pieces that are sound and says which fields took their default.
//
// # Exact and shown
//
// Every figure of a plan has two values. The exact one follows from the order
// to the nanometer. The shown one is what one can read on a tape, to the
// fineness that the order asks for. Shown values are not rounded one by one:
// they are solved as a set. The rails come first and are rounded up. What lies
// in the rabbet is then cut to the opening that those rails make, and rounded
// down. The window is rounded so that it covers, or clears, the art. One border
// of each pair takes what is left, so that the shown numbers add up on the
// blank and in the sight opening. So everything goes in. That every edge that
// the lip covers stays covered, wherever its part slides, is then checked on the
// shown set, in integers. Where the fineness is too coarse for that, a note says
// which one would do.
//
// # Problems and notes
//
// Input that cannot be understood is a problem; [Read] and [Work] return all
// of them at once. A piece that can be worked out but will not fit, will not
// hold or can hurt someone is worked out, and carries a note that says so and
// what would mend it.
//
// # Workings
//
// [Plan.Explain] says how any figure came to be, as a formula whose terms have
// names, values and places. It is what a page shows when one taps a number.
package framing

//go:generate go run ./internal/schema

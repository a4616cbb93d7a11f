// Package ticket writes a plan down for the bench.
//
// [Text] writes a plain text ticket: per piece what it is, what is wrong with
// it first of all, then the mat, the rails, the parts in the rabbet and the
// depth in the order of work, each size as it is shown and, behind it, as it
// is exactly; last, what to mind and what most framers would do otherwise. With
// [Options].Working every figure follows with how it came to be.
//
// The ticket reads a plan and computes nothing: every number on it stands in
// the plan.
package ticket

// Package explain says where a number came from, what is wrong with an input,
// and what to look out for, as data that a program can use and as English that
// a framer can read.
//
// Four things cross every boundary of the library:
//
//   - A [Path] names one field of an order or one figure of a plan. It is a
//     JSON Pointer (RFC 6901), such as /pieces/0/frame/lip.
//
//   - A [Working] is how one figure came to be: a formula whose terms have
//     keys, values and places. [Working.Evaluate] works the formula again, so a
//     test can hold it against the figure, and [Working.Append] writes it the
//     way one would say it at the bench:
//
//     long point 22 5/8 = opening 20 1/8 + 2 x (face 1 1/2 - lip 1/4)
//
//   - A [Problem] is input that cannot be understood: which field, what was
//     given, what is accepted. [Problems] is an error that holds all of them,
//     sorted by path.
//
//   - A [Note] is what a framer must know about a piece that could be worked
//     out: it does not fit, it will fall out, mind the blade. It carries the
//     values it speaks of and the [Change] that would mend it.
//
// Codes and keys are for programs and stay as they are. What they say in
// English stands in one place, the table that [Table] returns, ready for
// another language.
package explain

package explain

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// The operations that lead back from sides to angles.
const (
	OpArcTan Op = "arc_tan" // the angle whose tangent is a / b
	OpArcSin Op = "arc_sin" // the angle whose sine is a / b
)

// Radius is what sines and cosines are multiples of in a formula that is about
// angles alone, as in the old tables of sines: [Cos] of it is a cosine to 18
// places. In a text it reads as the 1 that it stands for, and is left out where
// 1 would be.
func Radius() Expr { return Const(radius) }

// radius stays so far within the range that three times as much does too.
const radius = measure.Length(1_000_000_000_000_000_000)

// isRadius reports whether e is [Radius].
func (e Expr) isRadius() bool {
	return e.Node != nil && e.Op == OpTerm && e.Term.Key == "" && e.Term.Value == Of(radius)
}

// ArcTan is the angle across from a side of a right triangle, by its two legs,
// rounded to the nanodegree; in all four quadrants, as [measure.ArcTan].
func ArcTan(opposite, adjacent Expr) Expr { return Apply(OpArcTan, opposite, adjacent) }

// ArcSin is the angle across from a side of a right triangle, by that side and
// the longest, rounded to the nanodegree, as [measure.ArcSin].
func ArcSin(opposite, hypotenuse Expr) Expr { return Apply(OpArcSin, opposite, hypotenuse) }

// arc works the operations of this file out.
func arc(op Op, a, b Value) (Value, error) {
	if a.Kind != b.Kind {
		return Value{}, ErrKinds
	}
	if op == OpArcSin {
		return Of(measure.ArcSin(measure.Length(a.N), measure.Length(b.N))), nil
	}
	return Of(measure.ArcTan(measure.Length(a.N), measure.Length(b.N))), nil
}

// appendArc writes "the angle whose tangent is a / b".
func (e Expr) appendArc(dst []byte, f measure.Format) []byte {
	dst = append(append(dst, English("op."+string(e.Op))...), ' ')
	dst = e.Args[0].appendInside(dst, f)
	if e.Args[1].isRadius() {
		return dst
	}
	return e.Args[1].appendInside(append(dst, " / "...), f)
}

// appendTurned writes "a x sin b", and "sin b" for a sine of [Radius]. A product
// stands in brackets: the sine is that of the whole of it.
func (e Expr) appendTurned(dst []byte, f measure.Format) []byte {
	sign := English("op." + string(e.Op))
	if len(e.Args) != 2 {
		return e.appendInfix(dst, f, " "+sign+" ")
	}
	if rest, ok := strings.CutPrefix(sign, "x "); ok && e.Args[0].isRadius() {
		dst = append(append(dst, rest...), ' ')
	} else {
		dst = e.Args[0].appendInside(dst, f)
		dst = append(append(append(dst, ' '), sign...), ' ')
	}
	if angle := e.Args[1]; angle.Node != nil && angle.Op == OpTimes {
		return append(angle.Append(append(dst, '('), f), ')')
	}
	return e.Args[1].appendInside(dst, f)
}

//go:build !rectangles

package explain

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/natural"
)

// curve works out how long curves are. The ellipse does not go the way of package plane.
func curve(op Op, args []Value) (Value, error) {
	a, b := args[0], args[1]
	switch op {
	case OpArc:
		if a.Kind != LengthKind || b.Kind != AngleKind {
			return Value{}, ErrKinds
		}
		return Of(measure.Length(a.N).Arc(measure.Angle(b.N))), nil
	case OpOval:
		if a.Kind != LengthKind || b.Kind != LengthKind {
			return Value{}, ErrKinds
		}
		if a.N <= 0 || b.N <= 0 {
			return Of(measure.Length(0)), nil
		}
		n, ok := integer{size: natural.EllipsePerimeter(uint64(a.N), uint64(b.N))}.int64()
		if !ok {
			return Value{}, ErrRange
		}
		return Value{LengthKind, n}, nil
	}
	return Value{}, ErrOp
}

package explain

import (
	"errors"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// Errors of [Expr.Evaluate], wrapped with the operation at fault.
var (
	ErrKinds     = errors.New("the kinds of the values do not go together")
	ErrArguments = errors.New("the wrong number of arguments")
	ErrRange     = errors.New("the result is out of range")
	ErrOp        = errors.New("unknown operation")
)

// Evaluate works e out from its terms, in exact integers. It is the second
// road to a figure: the room that made the figure did not come this way.
func (e Expr) Evaluate() (Value, error) {
	if e.Node == nil {
		return Value{}, nil
	}
	if e.Op == OpTerm {
		return e.Term.Value, nil
	}
	if e.Op == OpOnce && len(e.Args) == 1 {
		return e.evaluateOnce()
	}
	args := make([]Value, len(e.Args))
	for i, a := range e.Args {
		v, err := a.Evaluate()
		if err != nil {
			return Value{}, err
		}
		args[i] = v
	}
	v, err := apply(e.Op, args)
	if err != nil {
		return Value{}, operationError{e.Op, args, err}
	}
	return v, nil
}

// An operationError is one that an operation made of its arguments.
type operationError struct {
	op   Op
	args []Value
	err  error
}

func (e operationError) Error() string {
	text := string(e.op) + " of ["
	for i, a := range e.args {
		if i > 0 {
			text += " "
		}
		text += a.String()
	}
	return text + "]: " + e.err.Error()
}

func (e operationError) Unwrap() error { return e.err }

// arity is how many arguments an operation takes; -1 is one or more.
func arity(op Op) int {
	switch op {
	case OpHalf, OpWeight, OpUpTenthPound, OpOnce:
		return 1
	case OpTimes, OpDown, OpUp, OpNearest, OpHypotenuse, OpLeg, OpSlope, OpTan, OpOverTan, OpSin, OpOverSin, OpCos, OpArcTan, OpArcSin, OpArc, OpOval:
		return 2
	case OpMass:
		return 4
	case OpQuot:
		return 3
	}
	return -1
}

func apply(op Op, args []Value) (Value, error) {
	if n := arity(op); len(args) == 0 || n >= 0 && n != len(args) {
		return Value{}, ErrArguments
	}
	switch op {
	case OpTimes:
		return multiply(args[0], args[1], Value{CountKind, 1})
	case OpQuot:
		return multiply(args[0], args[1], args[2])
	case OpHalf:
		half, _ := measure.Length(args[0].N).Half()
		return Value{args[0].Kind, int64(half)}, nil
	case OpDown, OpUp, OpNearest, OpSum, OpMinus, OpLeast, OpMost:
		return fold(op, args)
	case OpMass, OpWeight, OpUpTenthPound, OpHypotenuse, OpLeg, OpSlope, OpTan, OpOverTan, OpSin, OpOverSin, OpCos:
		return turn(op, args)
	case OpArcTan, OpArcSin:
		return arc(op, args[0], args[1])
	case OpArc, OpOval:
		return curve(op, args)
	}
	return Value{}, ErrOp
}

// fold takes values of one kind together from left to right.
func fold(op Op, args []Value) (Value, error) {
	total := args[0]
	for _, a := range args[1:] {
		if a.Kind != total.Kind {
			return Value{}, ErrKinds
		}
		n, ok := combine(op, total.N, a.N)
		if !ok {
			return Value{}, ErrRange
		}
		total.N = n
	}
	return total, nil
}

func combine(op Op, a, b int64) (int64, bool) {
	switch op {
	case OpSum:
		c := a + b
		return c, (c > a) == (b > 0)
	case OpMinus:
		c := a - b
		return c, (c < a) == (b > 0)
	case OpLeast:
		return min(a, b), true
	case OpMost:
		return max(a, b), true
	}
	direction := measure.Nearest
	switch op {
	case OpDown:
		direction = measure.Down
	case OpUp:
		direction = measure.Up
	}
	rounded, _ := measure.RoundTo(a, b, direction)
	return rounded, true
}

// multiply is a x b / c. At most one of a and b has a unit; where c has one, it
// cancels against that of a or b, and the other may have its own, as in force x
// length / length. A ratio counts as parts of its whole.
func multiply(a, b, c Value) (Value, error) {
	kind, ok := unitOf(a.Kind, b.Kind, c.Kind)
	if !ok {
		return Value{}, ErrKinds
	}
	// A ratio in the product counts in millionths; one in the divisor takes a
	// factor of a million back out.
	wholes := 0
	for _, v := range []Value{a, b} {
		if v.Kind == RatioKind {
			wholes++
		}
	}
	if c.Kind == RatioKind {
		wholes--
	}
	if wholes > 1 {
		return Value{}, ErrKinds
	}
	product, divisor := signed(a.N).times(b.N), signed(c.N)
	switch {
	case wholes < 0:
		product = product.times(int64(Whole))
	case wholes > 0:
		divisor = divisor.times(int64(Whole))
	}
	n, ok := divide(product, divisor)
	if !ok {
		return Value{}, ErrRange
	}
	return Value{kind, n}, nil
}

// unitOf is the kind of a x b / c.
func unitOf(a, b, c Kind) (kind Kind, ok bool) {
	plain := func(k Kind) bool { return k == CountKind || k == RatioKind }
	switch {
	case plain(c):
	case c == a:
		a = CountKind
	case c == b:
		b = CountKind
	default:
		return NoKind, false
	}
	switch {
	case plain(a) && plain(b):
		return CountKind, true
	case plain(a):
		return b, true
	}
	return a, plain(b)
}

package explain

import "math"

// OpOnce is a formula whose lengths are worked out in 1024ths of a nanometer, so
// that only its result is rounded: a sum of products with sines is then as exact as
// one of them.
const OpOnce Op = "once"

// onceUnit is how much finer [OpOnce] counts.
const onceUnit = 1024

// Once is e, a length, rounded once, half away from zero: its terms are what they
// are, and nothing between them and the result is rounded to less than 1024ths of a
// nanometer. It reads as e does.
func Once(e Expr) Expr { return Apply(OpOnce, e) }

// evaluateOnce works out what stands in an [OpOnce].
func (e Expr) evaluateOnce() (Value, error) {
	fine, ok := e.Args[0].finer()
	if !ok {
		return Value{}, operationError{OpOnce, nil, ErrRange}
	}
	v, err := fine.Evaluate()
	if err != nil {
		return Value{}, err
	}
	if v.Kind != LengthKind {
		return Value{}, operationError{OpOnce, []Value{v}, ErrKinds}
	}
	v.N, _ = divide(signed(v.N), signed(onceUnit))
	return v, nil
}

// finer is e with the lengths among its terms counted in finer units.
func (e Expr) finer() (Expr, bool) {
	if e.Node == nil {
		return e, true
	}
	if e.Op == OpTerm {
		t := e.Term
		if t.Value.Kind != LengthKind {
			return e, true
		}
		if t.Value.N > math.MaxInt64/onceUnit || t.Value.N < math.MinInt64/onceUnit {
			return e, false
		}
		t.Value.N *= onceUnit
		return t.Expr(), true
	}
	args := make([]Expr, len(e.Args))
	for i, a := range e.Args {
		fine, ok := a.finer()
		if !ok {
			return e, false
		}
		args[i] = fine
	}
	return Apply(e.Op, args...), true
}

package explain

import "github.com/fairmiter/fairmiter/framing/measure"

// A Working is how one figure came to be.
type Working struct {
	// Path is where the figure stands in the plan.
	Path Path `json:"path"`
	// Key names the figure.
	Key Key `json:"key"`
	// Exact is the figure's exact value, Formula how it follows.
	Exact   Value `json:"exact"`
	Formula Expr  `json:"formula"`
	// Shown is the value printed for the bench and Rounding how it follows
	// from other shown values.
	Shown    Value `json:"shown"`
	Rounding Expr  `json:"rounding"`
	// Source is where the formula comes from.
	Source Source `json:"source"`
}

// Evaluate works the formula and the rounding out again from their terms. They
// must equal Exact and Shown.
func (w Working) Evaluate() (exact, shown Value, err error) {
	if exact, err = w.Formula.Evaluate(); err != nil {
		return Value{}, Value{}, err
	}
	shown, err = w.Rounding.Evaluate()
	return exact, shown, err
}

// Text returns the exact working as one line, lengths written exactly in the
// manner of f, without the unit where it is f's own.
func (w Working) Text(f measure.Format) string { return string(w.Append(nil, f)) }

// Append writes "key value = formula". A formula that only repeats the value
// of another term reads "key value = that term".
func (w Working) Append(dst []byte, f measure.Format) []byte {
	return appendEquation(dst, f, w.Key, w.Exact, w.Formula)
}

// AppendRounding writes how the shown value follows, in the same way.
func (w Working) AppendRounding(dst []byte, f measure.Format) []byte {
	return appendEquation(dst, f, w.Key, w.Shown, w.Rounding)
}

func appendEquation(dst []byte, f measure.Format, key Key, v Value, e Expr) []byte {
	dst = append(append(dst, English(string(key))...), ' ')
	dst = v.appendBare(dst, f)
	dst = append(dst, " = "...)
	return e.Append(dst, f)
}

// Append writes e the way one would say it: the name before each value, x for
// times, brackets where they matter.
func (e Expr) Append(dst []byte, f measure.Format) []byte {
	if e.Node == nil {
		return dst
	}
	switch e.Op {
	case OpTerm:
		if e.Term.Key != "" {
			dst = append(append(dst, English(string(e.Term.Key))...), ' ')
		}
		if e.isRadius() {
			return append(dst, '1')
		}
		return e.Term.Value.appendBare(dst, f)
	case OpOnce: // says how it is rounded, not what it is
		if len(e.Args) == 1 {
			return e.Args[0].Append(dst, f)
		}
	case OpSum:
		return e.appendInfix(dst, f, " + ")
	case OpMinus:
		return e.appendInfix(dst, f, " - ")
	case OpTimes, OpMass:
		return e.appendInfix(dst, f, " x ")
	case OpSin, OpCos, OpTan, OpOverTan, OpOverSin:
		return e.appendTurned(dst, f)
	case OpArcTan, OpArcSin:
		if len(e.Args) == 2 {
			return e.appendArc(dst, f)
		}
	case OpUpTenthPound:
		if len(e.Args) == 1 {
			dst = e.Args[0].appendInside(dst, f)
			return append(append(dst, ", "...), English("op."+string(e.Op))...)
		}
	case OpQuot:
		if len(e.Args) == 3 {
			dst = e.Args[0].appendInside(dst, f)
			dst = append(dst, " x "...)
			dst = e.Args[1].appendInside(dst, f)
			dst = append(dst, " / "...)
			if e.Args[2].Op == OpTimes { // a x b / 4 x c is not a x b / (4 x c)
				dst = append(dst, '(')
				return append(e.Args[2].Append(dst, f), ')')
			}
			return e.Args[2].appendInside(dst, f)
		}
	case OpDown, OpUp, OpNearest:
		if len(e.Args) == 2 {
			dst = e.Args[0].appendInside(dst, f)
			dst = append(append(append(dst, ", "...), English("op."+string(e.Op))...), ' ')
			return e.Args[1].Append(dst, f)
		}
	}
	dst = append(append(dst, English("op."+string(e.Op))...), ' ', '(')
	for i, a := range e.Args {
		if i > 0 {
			dst = append(dst, ", "...)
		}
		dst = a.Append(dst, f)
	}
	return append(dst, ')')
}

func (e Expr) appendInfix(dst []byte, f measure.Format, sign string) []byte {
	for i, a := range e.Args {
		if i > 0 {
			dst = append(dst, sign...)
		}
		if e.Op == OpSum && a.Op != OpDown && a.Op != OpUp && a.Op != OpNearest && a.Op != OpUpTenthPound {
			dst = a.Append(dst, f)
			continue
		}
		dst = a.appendInside(dst, f)
	}
	return dst
}

// appendInside writes e as an argument: in brackets, but for a term, and for a
// product or a function, which hold together by themselves.
func (e Expr) appendInside(dst []byte, f measure.Format) []byte {
	if e.Node == nil {
		return dst
	}
	switch e.Op {
	case OpOnce:
		if len(e.Args) == 1 {
			return e.Args[0].appendInside(dst, f)
		}
	case OpTerm, OpTimes, OpHalf, OpLeast, OpMost, OpMass, OpWeight, OpHypotenuse, OpLeg, OpSlope, OpArc, OpOval:
		return e.Append(dst, f)
	case OpSin, OpCos, OpTan: // "sin 30 deg" by itself
		if len(e.Args) == 2 && e.Args[0].isRadius() {
			return e.Append(dst, f)
		}
	}
	dst = append(dst, '(')
	return append(e.Append(dst, f), ')')
}

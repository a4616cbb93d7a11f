package explain

// An Op is what a formula does with its arguments.
type Op string

// The operations. Kinds must agree where values are added or compared; a
// length times or over a plain number or a ratio stays a length.
const (
	OpTerm    Op = ""        // the term itself
	OpSum     Op = "sum"     // a + b + ...
	OpMinus   Op = "minus"   // a - b - ...
	OpTimes   Op = "times"   // a x b, at most one of them with a unit
	OpHalf    Op = "half"    // the half of a, rounded down; the other side gets the rest
	OpQuot    Op = "over"    // a x b / c, rounded half away from zero
	OpLeast   Op = "least"   // the smallest of a, b, ...
	OpMost    Op = "most"    // the largest of a, b, ...
	OpDown    Op = "down"    // a rounded down to a multiple of b
	OpUp      Op = "up"      // a rounded up to a multiple of b
	OpNearest Op = "nearest" // a rounded to the nearest multiple of b
)

// An Expr is a formula as data: a term, or an operation on arguments. Build it
// with [T], [N], [Sum], [Minus] and their like. The zero Expr is none.
type Expr struct{ *Node }

// A Node is what an [Expr] holds. It is shared between the formulas that it is
// part of, and never changed.
type Node struct {
	Op   Op     `json:"op,omitzero"`
	Term Term   `json:"term,omitzero"`
	Args []Expr `json:"args,omitempty"`
}

// Apply is an operation on arguments.
func Apply(op Op, args ...Expr) Expr { return Expr{&Node{Op: op, Args: args}} }

// Expr is the formula that is the term itself.
func (t Term) Expr() Expr { return Expr{&Node{Term: t}} }

// T is the term of q under key, standing at path.
func T[Q Quantity](key Key, q Q, path Path) Expr { return NewTerm(key, q, path).Expr() }

// N is a plain number that belongs to the formula: the 2 of "2 x face".
func N(n int) Expr { return Term{Value: Of(n)}.Expr() }

// Const is a value with a unit that belongs to the formula: the quarter turn
// of a right angle.
func Const[Q Quantity](q Q) Expr { return Term{Value: Of(q)}.Expr() }

// Sum is the sum of args.
func Sum(args ...Expr) Expr { return Apply(OpSum, args...) }

// Minus is first less all the others.
func Minus(first Expr, others ...Expr) Expr {
	return Apply(OpMinus, append([]Expr{first}, others...)...)
}

// Times is the product of a and b.
func Times(a, b Expr) Expr { return Apply(OpTimes, a, b) }

// Half is the half of a, rounded down.
func Half(a Expr) Expr { return Apply(OpHalf, a) }

// Quot is a x b / c, rounded half away from zero.
func Quot(a, b, c Expr) Expr { return Apply(OpQuot, a, b, c) }

// Least is the smallest of args.
func Least(args ...Expr) Expr { return Apply(OpLeast, args...) }

// Most is the largest of args.
func Most(args ...Expr) Expr { return Apply(OpMost, args...) }

// Down is a rounded down to a multiple of step.
func Down(a, step Expr) Expr { return Apply(OpDown, a, step) }

// Up is a rounded up to a multiple of step.
func Up(a, step Expr) Expr { return Apply(OpUp, a, step) }

// ToNearest is a rounded to the nearest multiple of step.
func ToNearest(a, step Expr) Expr { return Apply(OpNearest, a, step) }

// Terms returns the terms of e that have a key, in the order they are read.
func (e Expr) Terms() []Term {
	var terms []Term
	e.Walk(func(t Term) {
		if t.Key != "" {
			terms = append(terms, t)
		}
	})
	return terms
}

// Walk calls visit with every term of e, in the order they are read.
func (e Expr) Walk(visit func(Term)) {
	if e.Node == nil {
		return
	}
	if e.Op == OpTerm {
		visit(e.Term)
		return
	}
	for _, a := range e.Args {
		a.Walk(visit)
	}
}

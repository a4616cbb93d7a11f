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
// with [T], [N], [Sum], [Minus] and their like.
type Expr struct {
	Op   Op     `json:"op,omitzero"`
	Term Term   `json:"term,omitzero"`
	Args []Expr `json:"args,omitempty"`
}

// T is the term of q under key, standing at path.
func T[Q Quantity](key Key, q Q, path Path) Expr { return Expr{Term: NewTerm(key, q, path)} }

// N is a plain number that belongs to the formula: the 2 of "2 x face".
func N(n int) Expr { return Expr{Term: Term{Value: Of(n)}} }

// Const is a value with a unit that belongs to the formula: the quarter turn
// of a right angle.
func Const[Q Quantity](q Q) Expr { return Expr{Term: Term{Value: Of(q)}} }

// Sum is the sum of args.
func Sum(args ...Expr) Expr { return Expr{Op: OpSum, Args: args} }

// Minus is first less all the others.
func Minus(first Expr, others ...Expr) Expr {
	return Expr{Op: OpMinus, Args: append([]Expr{first}, others...)}
}

// Times is the product of a and b.
func Times(a, b Expr) Expr { return Expr{Op: OpTimes, Args: []Expr{a, b}} }

// Half is the half of a, rounded down.
func Half(a Expr) Expr { return Expr{Op: OpHalf, Args: []Expr{a}} }

// Quot is a x b / c, rounded half away from zero.
func Quot(a, b, c Expr) Expr { return Expr{Op: OpQuot, Args: []Expr{a, b, c}} }

// Least is the smallest of args.
func Least(args ...Expr) Expr { return Expr{Op: OpLeast, Args: args} }

// Most is the largest of args.
func Most(args ...Expr) Expr { return Expr{Op: OpMost, Args: args} }

// Down is a rounded down to a multiple of step.
func Down(a, step Expr) Expr { return Expr{Op: OpDown, Args: []Expr{a, step}} }

// Up is a rounded up to a multiple of step.
func Up(a, step Expr) Expr { return Expr{Op: OpUp, Args: []Expr{a, step}} }

// ToNearest is a rounded to the nearest multiple of step.
func ToNearest(a, step Expr) Expr { return Expr{Op: OpNearest, Args: []Expr{a, step}} }

// Terms returns the terms of e that have a key, in the order they are read.
func (e Expr) Terms() []Term {
	var terms []Term
	e.Walk(func(t *Term) {
		if t.Key != "" {
			terms = append(terms, *t)
		}
	})
	return terms
}

// Walk calls visit with every term of e, in the order they are read. A visit
// that changes a term changes e: only the maker of an Expr should.
func (e *Expr) Walk(visit func(*Term)) {
	if e.Op == OpTerm {
		visit(&e.Term)
		return
	}
	for i := range e.Args {
		e.Args[i].Walk(visit)
	}
}

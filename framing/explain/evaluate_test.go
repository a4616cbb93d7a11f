package explain_test

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func mm(n int) explain.Expr   { return explain.Const(measure.Length(n) * measure.Millimeter) }
func nm(n int64) explain.Expr { return explain.Const(measure.Length(n)) }

func ratio(r explain.Ratio) explain.Expr { return explain.Const(r) }

func length(l measure.Length) explain.Value { return explain.Of(l) }

func TestEvaluate(t *testing.T) {
	const one = measure.Millimeter
	rows := []struct {
		name    string
		formula explain.Expr
		want    explain.Value
	}{
		{"term", explain.T("lip", 6*one, "/lip"), length(6 * one)},
		{"sum of one", explain.Sum(mm(3)), length(3 * one)},
		{"sum", explain.Sum(mm(3), mm(4), mm(-9)), length(-2 * one)},
		{"minus of one", explain.Minus(mm(3)), length(3 * one)},
		{"minus", explain.Minus(mm(9), mm(4), mm(3)), length(2 * one)},
		{"count times length", explain.Times(explain.N(2), mm(7)), length(14 * one)},
		{"length times count", explain.Times(mm(7), explain.N(2)), length(14 * one)},
		{"counts", explain.Times(explain.N(6), explain.N(7)), explain.Of(42)},
		{"length times ratio", explain.Times(mm(50), ratio(explain.Whole*30/100)), length(15 * one)},
		{"ratio, half up", explain.Times(nm(1), ratio(explain.Whole/2)), length(1)},
		{"ratio, half away", explain.Times(nm(-1), ratio(explain.Whole/2)), length(-1)},
		{"ratio of a count", explain.Times(explain.N(5), ratio(20*explain.Percent)), explain.Of(1)},
		{"half", explain.Half(nm(8)), length(4)},
		{"half of odd", explain.Half(nm(7)), length(3)},
		{"half of odd, below", explain.Half(nm(-7)), length(-4)},
		{"half of an angle", explain.Half(explain.Const(measure.RightAngle)), explain.Of(45 * measure.Degree)},
		{"over", explain.Quot(mm(10), explain.N(3), explain.N(4)), length(75 * one / 10)},
		{"over, thirds", explain.Quot(nm(2), explain.N(1), explain.N(3)), length(1)},
		{"over, half away", explain.Quot(nm(-1), explain.N(1), explain.N(2)), length(-1)},
		{"over a negative", explain.Quot(nm(7), explain.N(1), explain.N(-2)), length(-4)},
		{"lengths cancel", explain.Quot(mm(6), mm(5), mm(3)), length(10 * one)},
		{"length over length", explain.Quot(mm(6), explain.N(5), mm(3)), explain.Of(10)},
		{"force times length over length", explain.Quot(explain.Const(10*measure.Newton), mm(206), mm(100)), explain.Of(20600 * measure.Millinewton)},
		{"length times force over length", explain.Quot(mm(206), explain.Const(10*measure.Newton), mm(100)), explain.Of(20600 * measure.Millinewton)},
		{"mass times angle over angle", explain.Quot(explain.Const(3*measure.Gram), explain.Const(measure.RightAngle), explain.Const(measure.Degree)), explain.Of(270 * measure.Gram)},
		{"over a ratio", explain.Quot(mm(12), explain.N(1), ratio(2*explain.Whole)), length(6 * one)},
		{"ratio over ratio", explain.Quot(mm(110), ratio(explain.Whole), ratio(explain.Whole*22/10)), length(50 * one)},
		{"least", explain.Least(mm(4), mm(-2), mm(3)), length(-2 * one)},
		{"most", explain.Most(mm(4), mm(-2), mm(5)), length(5 * one)},
		{"down", explain.Down(mm(-7), mm(5)), length(-10 * one)},
		{"down on the step", explain.Down(mm(10), mm(5)), length(10 * one)},
		{"up", explain.Up(mm(7), mm(5)), length(10 * one)},
		{"up, below zero", explain.Up(mm(-7), mm(5)), length(-5 * one)},
		{"nearest", explain.ToNearest(mm(7), mm(5)), length(5 * one)},
		{"nearest, half away", explain.ToNearest(mm(-5), mm(10)), length(-10 * one)},
		{"no step rounds nothing", explain.Down(nm(7), nm(0)), length(7)},
		{"nested", explain.Sum(mm(20), explain.Times(explain.N(2), explain.Minus(mm(15), mm(6)))), length(38 * one)},
		{"near the end", explain.Minus(nm(math.MinInt64), nm(-1)), length(math.MinInt64 + 1)},
		{"a wide product", explain.Quot(nm(math.MaxInt64), explain.N(math.MaxInt), explain.N(math.MaxInt)), length(math.MaxInt64)},
		{"a wide ratio", explain.Quot(nm(math.MaxInt64), ratio(math.MaxInt64), ratio(math.MaxInt64)), length(math.MaxInt64)},
		{"a wide divisor", explain.Quot(nm(math.MaxInt64), ratio(explain.Whole), explain.N(math.MaxInt)), length(math.MaxInt64 / math.MaxInt)},
	}
	for _, row := range rows {
		if got, err := row.formula.Evaluate(); err != nil || got != row.want {
			t.Errorf("%s: %v %v, want %v", row.name, got, err, row.want)
		}
	}
}

func TestEvaluateErrors(t *testing.T) {
	degree := explain.Const(measure.Degree)
	op := func(op explain.Op, args ...explain.Expr) explain.Expr { return explain.Apply(op, args...) }
	rows := []struct {
		name    string
		formula explain.Expr
		want    error
	}{
		{"sum of kinds", explain.Sum(mm(1), degree), explain.ErrKinds},
		{"sum with a count", explain.Sum(mm(1), explain.N(1)), explain.ErrKinds},
		{"minus of kinds", explain.Minus(degree, mm(1)), explain.ErrKinds},
		{"least of kinds", explain.Least(mm(1), explain.N(0)), explain.ErrKinds},
		{"most of kinds", explain.Most(mm(1), explain.N(0)), explain.ErrKinds},
		{"step of another kind", explain.Up(mm(1), degree), explain.ErrKinds},
		{"length times length", explain.Times(mm(1), mm(1)), explain.ErrKinds},
		{"ratio times ratio", explain.Times(ratio(1), ratio(1)), explain.ErrKinds},
		{"count over length", explain.Quot(explain.N(1), explain.N(1), mm(1)), explain.ErrKinds},
		{"length over angle", explain.Quot(mm(1), explain.N(1), degree), explain.ErrKinds},
		{"length times angle over angle of another", explain.Quot(mm(1), degree, explain.Const(measure.Newton)), explain.ErrKinds},
		{"length times ratio over angle", explain.Quot(mm(1), ratio(1), degree), explain.ErrKinds},
		{"two lengths over a count", explain.Quot(mm(1), mm(1), explain.N(1)), explain.ErrKinds},
		{"sum of nothing", explain.Sum(), explain.ErrArguments},
		{"half of two", op(explain.OpHalf, mm(1), mm(2)), explain.ErrArguments},
		{"times of one", op(explain.OpTimes, mm(1)), explain.ErrArguments},
		{"times of three", op(explain.OpTimes, mm(1), explain.N(1), explain.N(1)), explain.ErrArguments},
		{"over of two", op(explain.OpQuot, mm(1), explain.N(1)), explain.ErrArguments},
		{"down of one", op(explain.OpDown, mm(1)), explain.ErrArguments},
		{"nearest of three", op(explain.OpNearest, mm(1), mm(1), mm(1)), explain.ErrArguments},
		{"sum too large", explain.Sum(nm(math.MaxInt64), nm(1)), explain.ErrRange},
		{"sum too small", explain.Sum(nm(math.MinInt64), nm(-1)), explain.ErrRange},
		{"minus too large", explain.Minus(nm(math.MaxInt64), nm(-1)), explain.ErrRange},
		{"minus the least", explain.Minus(nm(0), nm(math.MinInt64)), explain.ErrRange},
		{"product too large", explain.Times(nm(math.MaxInt64), explain.N(2)), explain.ErrRange},
		{"product too small", explain.Times(nm(math.MinInt64), explain.N(2)), explain.ErrRange},
		{"ratio too small", explain.Quot(nm(math.MaxInt64), explain.N(1), ratio(1)), explain.ErrRange},
		{"over nothing", explain.Quot(mm(1), explain.N(1), explain.N(0)), explain.ErrRange},
		{"unknown", op("cube", mm(1)), explain.ErrOp},
		{"deep inside", explain.Half(explain.Sum(mm(1), explain.Times(explain.N(2), degree))), explain.ErrKinds},
	}
	for _, row := range rows {
		got, err := row.formula.Evaluate()
		if !errors.Is(err, row.want) || got != (explain.Value{}) {
			t.Errorf("%s: %v %v, want %v", row.name, got, err, row.want)
		}
	}
}

// TestEvaluateSaysTheSum: an error names the operation and its values.
func TestEvaluateSaysTheSum(t *testing.T) {
	_, err := explain.Sum(mm(1), explain.Const(measure.Degree)).Evaluate()
	const want = "sum of [1 mm 1 deg]: the kinds of the values do not go together"
	if err == nil || err.Error() != want {
		t.Errorf("error reads %v, want %s", err, want)
	}
}

// TestQuotSecondRoad holds a x b / c against fractions: |a b / c| + 1/2, cut to
// a whole number, with its sign.
func TestQuotSecondRoad(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 29))
	for range 20_000 {
		a, b, c := wide(r), wide(r), wide(r)
		if c == 0 {
			continue
		}
		x := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(a), big.NewInt(b)), big.NewInt(c))
		sign := int64(x.Sign())
		x.Add(x.Abs(x), big.NewRat(1, 2))
		want := new(big.Int).Div(x.Num(), x.Denom())
		want.Mul(want, big.NewInt(sign))

		got, err := explain.Quot(explain.Const(measure.Length(a)), explain.N(int(b)), explain.N(int(c))).Evaluate()
		switch {
		case !want.IsInt64():
			if !errors.Is(err, explain.ErrRange) {
				t.Fatalf("%d x %d / %d is %v, which is no int64; got %v %v", a, b, c, want, got, err)
			}
		case err != nil || got != length(measure.Length(want.Int64())):
			t.Fatalf("%d x %d / %d: %v %v, want %v", a, b, c, got, err, want)
		}
	}
}

// wide returns a number of a random number of bits, 31 at most where int is
// that short.
func wide(r *rand.Rand) int64 {
	n := int64(r.Uint64() >> r.IntN(64))
	return int64(int(n))
}

// TestPerturbation: one nanometer more in a term moves the figure by what its
// place in the formula says.
func TestPerturbation(t *testing.T) {
	outside := func(opening, face, lip measure.Length) int64 {
		v, err := explain.Sum(explain.Const(opening), explain.Times(explain.N(2),
			explain.Minus(explain.Const(face), explain.Const(lip)))).Evaluate()
		if err != nil {
			t.Fatal(err)
		}
		return v.N
	}
	const in = measure.Inch
	base := outside(20*in, 2*in, in/4)
	for name, row := range map[string][2]int64{
		"opening": {outside(20*in+1, 2*in, in/4) - base, 1},
		"face":    {outside(20*in, 2*in+1, in/4) - base, 2},
		"lip":     {outside(20*in, 2*in, in/4+1) - base, -2},
	} {
		if row[0] != row[1] {
			t.Errorf("1 nm more of %s moves the long point by %d nm, want %d", name, row[0], row[1])
		}
	}
}

func TestTermsAndWalk(t *testing.T) {
	e := explain.Minus(explain.T("opening", measure.Inch, "/o"), explain.Times(explain.N(2), explain.T("lip", measure.Inch, "/l")))
	terms := e.Terms()
	if len(terms) != 2 || terms[0].Key != "opening" || terms[1].Key != "lip" {
		t.Errorf("the terms with a key are %v", terms)
	}
	seen := 0
	e.Walk(func(explain.Term) { seen++ })
	if seen != 3 {
		t.Errorf("walked over %d terms", seen)
	}
	explain.Expr{}.Walk(func(explain.Term) { t.Error("the zero formula has a term") })
}

package explain_test

import (
	"encoding/json"
	"go/ast"
	"go/parser"
	"go/token"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

const in = measure.Inch

var sixteenths = measure.Format{Style: measure.Fraction, Step: in / 16}

// longPoint is the working that the package comment shows: a rail round an
// opening of 20 1/8, face 1 1/2, lip 1/4. Common practice: the opening and
// twice what the molding reaches past it.
func longPoint() explain.Working {
	formula := explain.Sum(
		explain.T("opening", 20*in+in/8, "/pieces/0/frame/opening/width"),
		explain.Times(explain.N(2), explain.Minus(
			explain.T("face", in+in/2, "/order/pieces/0/frame/face"),
			explain.T("lip", in/4, "/order/pieces/0/frame/lip"))))
	return explain.Working{
		Path: "/pieces/0/frame/horizontal/long_point", Key: "long_point",
		Exact: explain.Of(22*in + 5*in/8), Formula: formula,
		Shown:    explain.Of(22*in + 5*in/8),
		Rounding: explain.Up(explain.T("exact", 22*in+5*in/8, ""), explain.T("fineness", in/16, "/order/show/fineness")),
		Source:   explain.CommonPractice("rail = opening + 2 x (face - lip)"),
	}
}

func TestWorking(t *testing.T) {
	w := longPoint()
	exact, shown, err := w.Evaluate()
	if err != nil || exact != w.Exact || shown != w.Shown {
		t.Errorf("works out to %v, %v, %v; want %v, %v", exact, shown, err, w.Exact, w.Shown)
	}
	rows := []struct {
		format measure.Format
		want   string
	}{
		{sixteenths, "long point 22 5/8 = opening 20 1/8 + 2 x (face 1 1/2 - lip 1/4)"},
		{measure.Format{Style: measure.DecimalInch, Step: in / 100}, "long point 22.625 = opening 20.125 + 2 x (face 1.5 - lip 0.25)"},
		{measure.Format{Style: measure.FeetInches, Step: in / 16}, `long point 1' 10 5/8" = opening 1' 8 1/8" + 2 x (face 1 1/2" - lip 1/4")`},
		{measure.Format{Style: measure.Metric, Step: measure.Millimeter}, "long point 574.675 = opening 511.175 + 2 x (face 38.1 - lip 6.35)"},
		{measure.Format{}, "long point 574.675 = opening 511.175 + 2 x (face 38.1 - lip 6.35)"},
	}
	for _, row := range rows {
		if got := w.Text(row.format); got != row.want {
			t.Errorf("%v reads\n%s, want\n%s", row.format, got, row.want)
		}
	}
	const rounding = "long point 22 5/8 = exact 22 5/8, up to fineness 1/16"
	if got := string(w.AppendRounding(nil, sixteenths)); got != rounding {
		t.Errorf("the rounding reads %q, want %q", got, rounding)
	}
}

// TestWorkingFails: an error of either formula comes out.
func TestWorkingFails(t *testing.T) {
	w := longPoint()
	w.Formula = explain.Sum()
	if _, _, err := w.Evaluate(); err == nil {
		t.Error("a formula of nothing worked out")
	}
	w = longPoint()
	w.Rounding = explain.Half(explain.N(1))
	w.Rounding.Args = nil
	if _, _, err := w.Evaluate(); err == nil {
		t.Error("a rounding of nothing worked out")
	}
}

// TestUnitKept: a length that the format's own unit cannot write keeps its
// unit, so that nobody takes millimeters for inches.
func TestUnitKept(t *testing.T) {
	e := explain.Sum(explain.T("art", 9*in, ""), explain.T("allowance", measure.Millimeter, ""))
	if got := string(e.Append(nil, sixteenths)); got != "art 9 + allowance 1 mm" {
		t.Errorf("reads %q", got)
	}
}

func TestExprText(t *testing.T) {
	a, b, c, d := explain.N(1), explain.N(2), explain.N(3), explain.N(4)
	rows := []struct {
		formula explain.Expr
		want    string
	}{
		{explain.T("lip", in/4, ""), "lip 1/4"},
		{explain.Const(measure.RightAngle), "90 deg"},
		{explain.Const(explain.Whole), "100 %"},
		{explain.Sum(a, explain.Sum(b, c)), "1 + 2 + 3"},
		{explain.Sum(a, explain.Minus(b, c)), "1 + 2 - 3"},
		{explain.Minus(a, explain.Sum(b, c)), "1 - (2 + 3)"},
		{explain.Minus(a, explain.Minus(b, c), d), "1 - (2 - 3) - 4"},
		{explain.Minus(a, explain.Times(b, c)), "1 - 2 x 3"},
		{explain.Times(explain.Sum(a, b), c), "(1 + 2) x 3"},
		{explain.Times(explain.Quot(a, b, c), d), "(1 x 2 / 3) x 4"},
		{explain.Quot(a, b, c), "1 x 2 / 3"},
		{explain.Quot(a, explain.Minus(b, c), explain.Sum(b, d)), "1 x (2 - 3) / (2 + 4)"},
		{explain.Quot(a, b, explain.Times(c, d)), "1 x 2 / (3 x 4)"},
		{explain.Half(explain.Minus(a, b)), "half of (1 - 2)"},
		{explain.Least(a, b), "the least of (1, 2)"},
		{explain.Minus(a, explain.Most(b, c)), "1 - the most of (2, 3)"},
		{explain.Down(a, b), "1, down to 2"},
		{explain.Up(explain.Minus(a, b), c), "(1 - 2), up to 3"},
		{explain.Sum(explain.ToNearest(a, b), c), "(1, to the nearest 2) + 3"},
		{explain.Apply(explain.OpQuot, a), "op.over (1)"},
	}
	for _, row := range rows {
		if got := string(row.formula.Append(nil, sixteenths)); got != row.want {
			t.Errorf("reads %q, want %q", got, row.want)
		}
	}
}

// TestTextMeansTheFormula reads random formulas back the way arithmetic is
// read everywhere, products before sums and from the left, and works both out
// in fractions. A bracket too few would change the value.
func TestTextMeansTheFormula(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 9))
	for range 3000 {
		e := randomFormula(r, 4)
		want, ok := rational(e)
		if !ok {
			continue
		}
		text := string(e.Append(nil, measure.Format{}))
		tree, err := parser.ParseExpr(strings.ReplaceAll(text, " x ", " * "))
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		if got := readBack(t, tree); got.Cmp(want) != 0 {
			t.Fatalf("%s reads as %v and is %v", text, got, want)
		}
	}
}

func randomFormula(r *rand.Rand, depth int) explain.Expr {
	if depth == 0 || r.IntN(4) == 0 {
		return explain.N(1 + r.IntN(9))
	}
	a, b := randomFormula(r, depth-1), randomFormula(r, depth-1)
	switch r.IntN(4) {
	case 0:
		return explain.Sum(a, b, randomFormula(r, depth-1))
	case 1:
		return explain.Minus(a, b)
	case 2:
		return explain.Times(a, b)
	}
	return explain.Quot(a, b, randomFormula(r, depth-1))
}

func rational(e explain.Expr) (*big.Rat, bool) {
	if e.Op == explain.OpTerm {
		return big.NewRat(e.Term.Value.N, 1), true
	}
	total := new(big.Rat)
	for i, a := range e.Args {
		v, ok := rational(a)
		if !ok {
			return nil, false
		}
		switch {
		case i == 0:
			total.Set(v)
		case e.Op == explain.OpSum:
			total.Add(total, v)
		case e.Op == explain.OpMinus:
			total.Sub(total, v)
		case i == 2 && v.Sign() == 0:
			return nil, false
		case i == 2:
			total.Quo(total, v)
		default:
			total.Mul(total, v)
		}
	}
	return total, true
}

func readBack(t *testing.T, tree ast.Expr) *big.Rat {
	t.Helper()
	switch x := tree.(type) {
	case *ast.ParenExpr:
		return readBack(t, x.X)
	case *ast.BasicLit:
		v, ok := new(big.Rat).SetString(x.Value)
		if !ok {
			t.Fatalf("no number: %s", x.Value)
		}
		return v
	case *ast.BinaryExpr:
		a, b := readBack(t, x.X), readBack(t, x.Y)
		switch x.Op {
		case token.ADD:
			return a.Add(a, b)
		case token.SUB:
			return a.Sub(a, b)
		case token.MUL:
			return a.Mul(a, b)
		case token.QUO:
			return a.Quo(a, b)
		}
	}
	t.Fatalf("cannot read %T", tree)
	return nil
}

func TestWorkingJSON(t *testing.T) {
	b, err := json.Marshal(explain.Half(explain.T("lip", in/2, "/lip")))
	const want = `{"op":"half","args":[{"term":{"key":"lip","value":"12.7 mm","path":"/lip"}}]}`
	if err != nil || string(b) != want {
		t.Errorf("a formula in JSON is %s %v, want %s", b, err, want)
	}
}

package explain_test

import (
	"errors"
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestEvaluateCurves(t *testing.T) {
	for _, row := range []struct {
		name    string
		formula explain.Expr
		want    measure.Length
	}{
		{"half a turn", explain.Arc(mm(1000), degrees(180)), 3_141_592_654},
		{"back", explain.Arc(mm(1000), degrees(-180)), -3_141_592_654},
		{"a circle", explain.Around(mm(2000), mm(2000)), 6_283_185_307},
		{"16 x 12 in", explain.Around(nm(406_400_000), nm(304_800_000)), 1_122_857_402},
		{"12 x 16 in", explain.Around(nm(304_800_000), nm(406_400_000)), 1_122_857_402},
		{"no width", explain.Around(mm(0), mm(5)), 0},
		{"less than no height", explain.Around(mm(5), mm(-5)), 0},
		{"in fine units", explain.Once(explain.Sum(explain.Around(nm(3), nm(2)), explain.Arc(nm(1), degrees(180)))), 11}, // 7.93 + 3.14
	} {
		if got, err := row.formula.Evaluate(); err != nil || got != explain.Of(row.want) {
			t.Errorf("%s: %v %v, want %d", row.name, got, err, row.want)
		}
	}
}

func TestEvaluateCurveErrors(t *testing.T) {
	long := nm(math.MaxInt64)
	for _, row := range []struct {
		name    string
		formula explain.Expr
		want    error
	}{
		{"arc of an angle", explain.Arc(degrees(1), degrees(1)), explain.ErrKinds},
		{"arc through a length", explain.Arc(mm(1), mm(1)), explain.ErrKinds},
		{"arc of one", explain.Apply(explain.OpArc, mm(1)), explain.ErrArguments},
		{"ellipse of a mass", explain.Around(grams(1), mm(1)), explain.ErrKinds},
		{"ellipse of an angle", explain.Around(mm(1), degrees(1)), explain.ErrKinds},
		{"ellipse of three", explain.Apply(explain.OpOval, mm(1), mm(1), mm(1)), explain.ErrArguments},
		{"ellipse too long", explain.Around(long, long), explain.ErrRange},
	} {
		if got, err := row.formula.Evaluate(); !errors.Is(err, row.want) {
			t.Errorf("%s: %v %v, want %v", row.name, got, err, row.want)
		}
	}
}

func TestCurveText(t *testing.T) {
	e := explain.Minus(explain.T("width", 16*measure.Inch, ""), explain.Arc(explain.T("face", 2*measure.Inch, ""), degrees(180)),
		explain.Around(explain.Const(16*measure.Inch), explain.Const(12*measure.Inch)))
	const want = "width 16 - the arc of (face 2, 180 deg) - the perimeter of the ellipse (16, 12)"
	if got := string(e.Append(nil, inches)); got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
}

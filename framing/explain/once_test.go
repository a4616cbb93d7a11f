package explain_test

import (
	"errors"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestOnce: three times 10.4 nm are 31, and 30 where each is rounded.
func TestOnce(t *testing.T) {
	part := explain.Quot(explain.T("face", measure.Length(52), "/face"), explain.N(1), explain.N(5))
	sum := explain.Sum(part, part, part)
	for _, row := range []struct {
		name string
		e    explain.Expr
		want measure.Length
	}{
		{"each", sum, 30},
		{"once", explain.Once(sum), 31},
		{"once within once", explain.Once(explain.Sum(explain.Once(part), part, part)), 31},
		{"below nothing", explain.Once(explain.Minus(part, sum)), -21},
		{"half a nanometer", explain.Once(explain.Quot(explain.Const(measure.Length(1)), explain.N(1), explain.N(2))), 1},
		{"less than half", explain.Once(explain.Quot(explain.Const(measure.Length(49)), explain.N(1), explain.N(100))), 0},
		{"nothing", explain.Once(explain.Const(measure.Length(0))), 0},
		{"by a sine", explain.Once(explain.Sum(explain.Sin(explain.Const(measure.Length(7)), explain.Const(measure.Degree)), explain.Const(measure.Length(1)))), 1},
	} {
		got, err := row.e.Evaluate()
		if err != nil || got != explain.Of(row.want) {
			t.Errorf("%s: %v, %v, want %v", row.name, got, err, row.want)
		}
	}
	sixteenths := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	face := explain.T("face", 2*measure.Inch, "/face")
	once := explain.Once(explain.Sum(face, face))
	if got, want := string(once.Append(nil, sixteenths)), string(explain.Sum(face, face).Append(nil, sixteenths)); got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
	if got, want := string(explain.Times(explain.N(2), once).Append(nil, sixteenths)), "2 x (face 2 + face 2)"; got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
	if terms := once.Terms(); len(terms) != 2 || terms[0].Value != explain.Of(2*measure.Inch) {
		t.Errorf("its terms are %v", terms)
	}
}

func TestOnceErrors(t *testing.T) {
	one, angle := explain.Const(measure.Length(1)), explain.Const(measure.Degree)
	for _, row := range []struct {
		name string
		e    explain.Expr
		want error
	}{
		{"of nothing", explain.Apply(explain.OpOnce), explain.ErrArguments},
		{"of two", explain.Apply(explain.OpOnce, one, one), explain.ErrArguments},
		{"of an angle", explain.Once(angle), explain.ErrKinds},
		{"of what does not go together", explain.Once(explain.Sum(one, angle)), explain.ErrKinds},
		{"out of range", explain.Once(explain.Sum(one, explain.Const(measure.Length(1<<54)))), explain.ErrRange},
		{"out of range below", explain.Once(explain.Const(measure.Length(-1<<53 - 1))), explain.ErrRange},
		{"the last within", explain.Once(explain.Const(measure.Length(-1 << 53))), nil},
	} {
		if _, err := row.e.Evaluate(); !errors.Is(err, row.want) {
			t.Errorf("%s: %v, want %v", row.name, err, row.want)
		}
		if len(row.e.Append(nil, measure.Format{})) == 0 {
			t.Errorf("%s reads as nothing", row.name)
		}
	}
}

package framing_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// slow is where fewer orders are drawn; see slow_test.go.
var slow bool

// in reads a length in inches.
func in(t testing.TB, s string) measure.Length {
	t.Helper()
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// worked reads an order and works it.
func worked(t testing.TB, text string) framing.Plan {
	t.Helper()
	plan, err := framing.NewReading([]byte(text)).Work()
	if err != nil {
		t.Fatalf("Read and Work: %v", err)
	}
	return plan
}

func work(t testing.TB, order framing.Order) framing.Plan {
	t.Helper()
	plan, err := framing.Work(order)
	if err != nil {
		t.Fatalf("Work: %v", err)
	}
	return plan
}

func marshal(t testing.TB, v any) []byte {
	t.Helper()
	data, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// note finds the first note of a piece with a code.
func note(p framing.PiecePlan, code explain.Code) (explain.Note, bool) {
	i := slices.IndexFunc(p.Notes, func(n explain.Note) bool { return n.Code == code })
	if i < 0 {
		return explain.Note{}, false
	}
	return p.Notes[i], true
}

func hasNote(p framing.PiecePlan, codes ...explain.Code) bool {
	return slices.ContainsFunc(codes, func(code explain.Code) bool { _, ok := note(p, code); return ok })
}

// layer finds a part in the rabbet.
func layer(t testing.TB, p framing.PiecePlan, part framing.LayerPart) framing.LayerPlan {
	t.Helper()
	i := slices.IndexFunc(p.Layers, func(l framing.LayerPlan) bool { return l.Part == part })
	if i < 0 {
		t.Fatalf("no layer %q", part)
	}
	return p.Layers[i]
}

// problems returns the problems in an error; any other error fails.
func problems(t testing.TB, err error) explain.Problems {
	t.Helper()
	if err == nil {
		return nil
	}
	var ps explain.Problems
	if !errors.As(err, &ps) {
		t.Fatalf("the error is no explain.Problems but %T: %v", err, err)
	}
	if len(ps) == 0 {
		t.Fatal("an error without problems")
	}
	return ps
}

func paths(ps explain.Problems) []explain.Path {
	list := make([]explain.Path, len(ps))
	for i, p := range ps {
		list[i] = p.Path
	}
	return list
}

// sortedPaths fails where problems are not sorted by path, or two share one.
func sortedPaths(t testing.TB, ps explain.Problems) {
	t.Helper()
	for i := 1; i < len(ps); i++ {
		if a, b := ps[i-1], ps[i]; a.Path.Compare(b.Path) >= 0 {
			t.Errorf("problems are out of order or share a path: %v, %v", a, b)
		}
	}
}

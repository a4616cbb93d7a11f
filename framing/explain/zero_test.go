package explain_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestZeroValues: the zero value of every type is one to work with.
func TestZeroValues(t *testing.T) {
	var p explain.Path
	if p.Segments() != nil || p.Last() != "" || p.Parent() != "" || !p.Under("") || p.Compare("") != 0 {
		t.Error("the empty path is not the whole document")
	}
	var v explain.Value
	if v.Kind != explain.NoKind || v.String() != "0" || v == explain.Of(0) {
		t.Error("the zero value counts something")
	}
	var e explain.Expr
	if got, err := e.Evaluate(); err != nil || got != v {
		t.Errorf("the zero formula works out to %v %v", got, err)
	}
	if terms := e.Terms(); terms != nil {
		t.Errorf("the zero formula has terms: %v", terms)
	}
	var w explain.Working
	if exact, shown, err := w.Evaluate(); err != nil || exact != w.Exact || shown != w.Shown {
		t.Errorf("the zero working works out to %v %v %v", exact, shown, err)
	}
	var ps explain.Problems
	if ps.Err() != nil || ps.Error() != "" || ps.Sorted() != nil || ps.Under("") != nil || len(ps.Unwrap()) != 0 {
		t.Error("no problems are some")
	}
	var c explain.Checker
	if !c.Clean("", "/a") || c.Problems() != nil {
		t.Error("the zero checker found something")
	}
	var n explain.Note
	if got := n.Text(measure.Format{}); got != "" {
		t.Errorf("the zero note says %q", got)
	}
	if got := (explain.Source{}).String(); got != " ()" {
		t.Errorf("the zero source reads %q", got)
	}
	var r explain.Ratio
	if got := r.String(); got != "0 %" {
		t.Errorf("the zero ratio reads %q", got)
	}
}

package framing_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// TestGivens: every quantity of a piece and of the shop is there once, reads as the
// plan writes lengths, and stands where its path says.
func TestGivens(t *testing.T) {
	order, err := framing.Read([]byte(fullOrder))
	if err != nil {
		t.Fatal(err)
	}
	plan := work(t, order)
	texts := make(map[explain.Path]framing.GivenText)
	for _, g := range plan.Givens(0) {
		if _, twice := texts[g.Path]; twice || g.Text == "" || g.Spoken == "" {
			t.Errorf("%+v, there already: %v", g, twice)
		}
		texts[g.Path] = g
	}
	for path, want := range map[explain.Path]string{
		"/pieces/0/frame/face": "1 1/2", "/shop/overlap": "3/16", "/pieces/0/art/varies/height": "1/8",
		"/pieces/0/mat/under/0/bevel": "50 deg", "/pieces/0/hang/ratings/wire_breaks": "80.0 lb",
		"/pieces/0/art/mass": "2.0 lb", "/pieces/0/mat/borders/ratio": "15 %", "/pieces/0/glazing/thickness": "3 mm",
	} {
		if got := texts[path].Text; got != want {
			t.Errorf("%s reads %q, want %q", path, got, want)
		}
	}
	for name, text := range fullOrders {
		listed := make(map[explain.Path]bool)
		for _, g := range worked(t, text).Givens(0) {
			listed[g.Path] = true
		}
		for _, s := range spots(parseDoc(t, []byte(text))) {
			quantity := s.kind.Kind() == reflect.Int64
			if !strings.HasPrefix(string(s.path), "/show") && listed[s.path] != quantity {
				t.Errorf("%s: %s, a %s: listed is %v", name, s.path, s.kind, listed[s.path])
			}
		}
	}
	if plan.Givens(-1) != nil || plan.Givens(1) != nil {
		t.Error("a piece that is not there has givens")
	}
}

func BenchmarkGivens(b *testing.B) {
	plan := work(b, framing.Sample())
	b.ReportAllocs()
	for b.Loop() {
		plan.Givens(0)
	}
}

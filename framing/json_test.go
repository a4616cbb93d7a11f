package framing_test

import (
	"bytes"
	"encoding"
	"encoding/json"
	"os"
	"reflect"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// theirs is v as encoding/json writes it.
func theirs(t testing.TB, v any) string {
	t.Helper()
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		t.Fatal(err)
	}
	return string(bytes.TrimSuffix(b.Bytes(), []byte("\n")))
}

// TestJSON: our writer gives the bytes of encoding/json for all that a page is
// given.
func TestJSON(t *testing.T) {
	entries, err := os.ReadDir("../testdata/orders")
	if err != nil {
		t.Fatal(err)
	}
	values := []any{explain.Table(), framing.Sample(), framing.Order{}, framing.Plan{}, framing.Solution{}, explain.Working{}, explain.Note{}}
	for _, entry := range entries {
		if entry.IsDir() {
			continue
		}
		text, err := os.ReadFile("../testdata/orders/" + entry.Name())
		if err != nil {
			t.Fatal(err)
		}
		plan, _ := framing.NewReading(text).Work()
		half, _ := framing.NewReading(bytes.Replace(text, []byte(`"width"`), []byte("\"wi<\u2028dth\""), 1)).Work()
		values = append(values, plan, half)
		for i := range plan.Pieces {
			for _, path := range plan.Figures(i) {
				working, _ := plan.Explain(path)
				values = append(values, working)
			}
		}
		solution, _ := framing.Solve(plan.Order, framing.Question{Free: "/pieces/0/frame/face", Want: "/pieces/0/frame/outside/width", Value: "30"})
		with := []explain.Path{"/pieces/0/art/width", "/pieces/0/art/height"}
		moved, _ := framing.Solve(plan.Order, framing.Question{Free: "/pieces/0/frame/face", With: with, Move: framing.InStep, Want: "/pieces/0/frame/outside/width", Value: "30"})
		values = append(values, solution, moved)
	}
	for _, v := range values {
		if got, want := string(jsontext.Append(nil, v)), theirs(t, v); got != want {
			t.Fatalf("%T: got\n%s\nwant\n%s", v, got, want)
		}
	}
}

// TestJSONMethods: what has a say in its JSON text has it in both ways.
func TestJSONMethods(t *testing.T) {
	seen := make(map[reflect.Type]bool)
	methods := 0
	var walk func(reflect.Type)
	walk = func(typ reflect.Type) {
		if seen[typ] {
			return
		}
		seen[typ] = true
		implements := func(typ reflect.Type, i any) bool { return typ.Implements(reflect.TypeOf(i).Elem()) }
		pointer := reflect.PointerTo(typ)
		for _, both := range [][2]any{{(*json.Marshaler)(nil), (*jsontext.Appender)(nil)}, {(*encoding.TextMarshaler)(nil), (*encoding.TextAppender)(nil)}} {
			value := implements(typ, both[0])
			if value {
				methods++
			}
			if value != implements(typ, both[1]) || value != implements(pointer, both[0]) || value != implements(pointer, both[1]) {
				t.Errorf("%v has one of two methods", typ)
			}
		}
		switch typ.Kind() {
		case reflect.Struct:
			for i := range typ.NumField() {
				walk(typ.Field(i).Type)
			}
		case reflect.Slice, reflect.Array, reflect.Pointer, reflect.Map:
			walk(typ.Elem())
		}
	}
	for _, v := range []any{framing.Plan{}, framing.Solution{}, explain.Working{}, explain.Entry{}} {
		walk(reflect.TypeOf(v))
	}
	if methods < 9 {
		t.Errorf("only %d types write themselves", methods)
	}
}

func BenchmarkJSON(b *testing.B) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		b.Fatal(err)
	}
	b.Run("ours", func(b *testing.B) {
		b.ReportAllocs()
		for dst := []byte(nil); b.Loop(); {
			dst = jsontext.Append(dst[:0], &plan)
		}
	})
	b.Run("theirs", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			theirs(b, &plan)
		}
	})
}

package main

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// refused are requests that are not understood, and what the reply says. With
// the id 7 where one can be read.
var refused = []struct {
	name, request string
	id            int64
	code          explain.Code
	path          explain.Path
}{
	{"nothing", ``, 0, explain.NotJSON, ""},
	{"no JSON", `work`, 0, explain.NotJSON, ""},
	{"half", `{"id": 7, "call": "wo`, 0, explain.NotJSON, ""},
	{"null", `null`, 0, explain.Missing, "/call"},
	{"a list", `[1]`, 0, explain.WrongType, ""},
	{"two", `{"id": 7, "call": "hello", "protocol": 1} {}`, 7, explain.Trailing, ""},
	{"too large", `"` + strings.Repeat("x", maxRequest) + `"`, 0, explain.TooLarge, ""},
	{"no call", `{"id": 7}`, 7, explain.Missing, "/call"},
	{"another call", `{"id": 7, "call": "paint"}`, 7, explain.NotAChoice, "/call"},
	{"another field", `{"id": 7, "call": "work", "peice": 1}`, 7, explain.UnknownField, "/peice"},
	{"another field first", `{"peice": 1, "id": 7, "call": "work"}`, 7, explain.UnknownField, "/peice"},
	{"an id of text", `{"id": "7", "call": "hello"}`, 0, explain.WrongType, "/id"},
	{"an id of parts", `{"id": 7.5, "call": "hello"}`, 0, explain.WrongType, "/id"},
	{"a call of no text", `{"call": 3, "id": 7}`, 7, explain.WrongType, "/call"},
	{"views of no list", `{"id": 7, "call": "work", "views": "front", "order": {}}`, 7, explain.WrongType, "/views"},
	{"paper of text", `{"id": 7, "call": "work", "paper": {"width": "wide"}, "order": {}}`, 7, explain.WrongType, "/paper/width"},
	{"an old page", `{"id": 7, "call": "hello", "protocol": 0}`, 7, otherVersion, "/protocol"},
	{"a page that does not say", `{"id": 7, "call": "hello"}`, 7, otherVersion, "/protocol"},
	{"no order", `{"id": 7, "call": "work"}`, 7, explain.Missing, "/order"},
	{"no order for a ticket", `{"id": 7, "call": "ticket"}`, 7, explain.Missing, "/order"},
	{"an order twice", `{"id": 7, "call": "work", "order": {}, "text": "{}"}`, 7, explain.Duplicate, "/text"},
	{"another view", `{"id": 7, "call": "work", "views": ["front", "above"], "order": ` + order + `}`, 7, explain.NotAChoice, "/views/1"},
	{"no question", `{"id": 7, "call": "solve", "order": ` + order + `}`, 7, explain.Missing, "/question"},
	{"half a question", `{"id": 7, "call": "solve", "question": {"want": "/pieces/0/frame/outside/width", "value": "10"}, "order": ` + order + `}`, 7, explain.Missing, "/question/free"},
	{"a question about half a piece", `{"id": 7, "call": "solve", "question": {"free": "/pieces/0/frame/face", "want": "/pieces/0/frame/outside/width", "value": "10"}, "order": ` +
		strings.Replace(order, `"10"`, `"ten"`, 1) + `}`, 7, explain.MeasureCode(measure.RuleNotANumber), "/order/pieces/0/art/height"},
	{"another form", `{"id": 7, "call": "ticket", "form": "pdf", "order": ` + order + `}`, 7, explain.NotAChoice, "/form"},
	{"no path", `{"id": 7, "call": "explain", "order": ` + order + `}`, 7, noSuchFigure, "/path"},
	{"another path", `{"id": 7, "call": "explain", "path": "/pieces/0/mat/window/width", "order": ` + order + `}`, 7, noSuchFigure, "/path"},
	{"a path of nothing worked", `{"id": 7, "call": "explain", "path": "/pieces/0/frame/outside/width", "order": 5}`, 7, noSuchFigure, "/path"},
}

func TestRefused(t *testing.T) {
	for _, row := range refused {
		t.Run(row.name, func(t *testing.T) {
			got := ask(t, row.request)
			if got.ID != row.id || len(got.Problems) != 1 || got.Problems[0].Code != row.code || got.Problems[0].Path != row.path {
				t.Errorf("got %d, %v; want %d, %s at %q", got.ID, got.Problems, row.id, row.code, row.path)
			}
			if explain.English(string(row.code)) == string(row.code) {
				t.Errorf("%s has no English", row.code)
			}
		})
	}
}

// TestFault: a fault within is a problem of that reply alone.
func TestFault(t *testing.T) {
	for name, do := range map[string]func(request) (any, explain.Problems){
		"a nil pointer":      func(request) (any, explain.Problems) { var p *request; return p.Call, nil },
		"out of range":       func(r request) (any, explain.Problems) { return r.Views[3], nil },
		"no JSON of a reply": func(request) (any, explain.Problems) { return func() {}, nil },
		"a nil panic":        func(request) (any, explain.Problems) { panic(nil) },
	} {
		t.Run(name, func(t *testing.T) {
			var r reply
			if err := json.Unmarshal(appendAnswer(nil, do, []byte(`{"id": 7, "call": "work"}`)), &r); err != nil {
				t.Fatal(err)
			}
			if r.ID != 7 || len(r.Problems) != 1 || r.Problems[0].Code != programFailed || r.Problems[0].Given == "" {
				t.Errorf("%+v", r)
			}
			if after := ask(t, `{"id": 8, "call": "work", "order": `+order+`}`); after.ID != 8 || after.Problems != nil {
				t.Errorf("afterwards: %v", after.Problems)
			}
		})
	}
}

// FuzzAnswer: whatever is asked, the reply is JSON, holds data or problems, and
// the program did not fail.
func FuzzAnswer(f *testing.F) {
	for _, row := range refused {
		if len(row.request) < 10_000 {
			f.Add([]byte(row.request))
		}
	}
	for _, call := range []string{`"work", "views": ["front", "section", "back"]`, `"explain", "path": "/pieces/0/frame/outside/width"`, `"ticket", "form": "html", "working": true`} {
		f.Add([]byte(`{"id": 7, "call": ` + call + `, "order": ` + order + `}`))
		f.Add([]byte(`{"id": 7, "call": ` + call + `, "order": ` + string(file(f, "linocut.json")) + `}`))
	}
	f.Fuzz(func(t *testing.T, request []byte) {
		r := ask(t, string(request))
		for _, p := range r.Problems {
			if p.Code == programFailed {
				t.Errorf("the program failed: %s", p.Given)
			}
		}
	})
}

// BenchmarkWork is the call that a page makes at every key.
func BenchmarkWork(b *testing.B) {
	for _, row := range []struct{ name, views string }{{"plan", `[]`}, {"front", `["front"]`}} {
		b.Run(row.name, func(b *testing.B) {
			request := []byte(`{"id": 7, "call": "work", "views": ` + row.views + `, "order": ` + string(file(b, "linocut.json")) + `}`)
			b.SetBytes(int64(len(request)))
			b.ReportAllocs()
			for b.Loop() {
				answer(request)
			}
		})
	}
}

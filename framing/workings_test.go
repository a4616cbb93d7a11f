package framing_test

import (
	"encoding/json"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// found is one figure of a plan, found by walking its Go values.
type found struct {
	exact, shown explain.Value
}

// figuresOf finds every figure below v by reflection; paths follow the names
// that the fields have in JSON.
func figuresOf(v reflect.Value, at explain.Path, into map[explain.Path]found) {
	switch f := v.Interface().(type) {
	case framing.Figure:
		into[at] = found{explain.Of(f.Exact), explain.Of(f.Shown)}
		return
	case framing.AngleFigure:
		into[at] = found{explain.Of(f.Exact), explain.Of(f.Shown)}
		return
	case framing.MassFigure:
		into[at] = found{explain.Of(f.Exact), explain.Of(f.Shown)}
		return
	case framing.ForceFigure:
		into[at] = found{explain.Of(f.Exact), explain.Of(f.Shown)}
		return
	case framing.Order:
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if field := v.Type().Field(i); field.IsExported() && (field.Tag.Get("json") != "" || field.Anonymous) {
				name, options, _ := strings.Cut(field.Tag.Get("json"), ",")
				if options == "omitzero" && v.Field(i).IsZero() {
					continue
				}
				below := at
				if name != "" {
					below = at.Child(name)
				}
				figuresOf(v.Field(i), below, into)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			figuresOf(v.Index(i), at.Index(i), into)
		}
	}
}

// TestWorkings finds every figure of a plan and works its formulas again.
func TestWorkings(t *testing.T) {
	d := newDice(2)
	orders := 1000
	if slow {
		orders = 200
	}
	for range orders {
		checkWorkings(t, work(t, d.order(1+int(d.below(2)))))
		if t.Failed() {
			return
		}
	}
	checkWorkings(t, work(t, framing.Sample()))
	for name, order := range sampleOrders(t) {
		t.Run(name, func(t *testing.T) { checkWorkings(t, work(t, order)) })
	}
}

func checkWorkings(t *testing.T, plan framing.Plan) {
	t.Helper()
	figures := make(map[explain.Path]found)
	figuresOf(reflect.ValueOf(plan), "", figures)
	var document any
	if err := json.Unmarshal(marshal(t, plan), &document); err != nil {
		t.Fatal(err)
	}
	var listed []explain.Path
	for i := range plan.Pieces {
		listed = append(listed, plan.Figures(i)...)
	}
	if len(figures) < 20*len(plan.Pieces) || len(listed) != len(figures) {
		t.Fatalf("%d figures found in %d pieces, %d listed", len(figures), len(plan.Pieces), len(listed))
	}
	for _, path := range listed {
		figure, ok := figures[path]
		if !ok {
			t.Fatalf("%s is listed and no figure", path)
		}
		w, ok := plan.Explain(path)
		if !ok {
			t.Fatalf("no working of %s", path)
		}
		exact, shown, err := w.Evaluate()
		if err != nil || exact != figure.exact || w.Exact != figure.exact || shown != figure.shown || w.Shown != figure.shown {
			t.Errorf("%s is %v, shown %v; the working says %v, %v and works out to %v, %v, %v:\n%s\n%s",
				path, figure.exact, figure.shown, w.Exact, w.Shown, exact, shown, err,
				w.AppendRounding(w.Append(nil, format(plan)), format(plan)), marshal(t, plan.Order))
		}
		if w.Path != path || w.Key == "" || w.Source.Title == "" || w.Source.Status == "" {
			t.Errorf("%s: working of %q, key %q, source %v", path, w.Path, w.Key, w.Source)
		}
		for _, term := range w.Formula.Terms() {
			checkTerm(t, document, path, term, "exact")
		}
		for _, term := range w.Rounding.Terms() {
			kind := "shown"
			if term.Key == "exact" {
				kind = "exact"
			}
			checkTerm(t, document, path, term, kind)
		}
	}
	for i, p := range plan.Pieces {
		for _, n := range p.Notes {
			at := n.Path
			if _, ok := resolve(document, at); !ok {
				t.Errorf("piece %d: the note %s speaks of %s, which is not there", i, n.Code, at)
			}
			for _, term := range n.Values {
				checkTerm(t, document, at, term, "exact")
			}
		}
	}
}

// format is how a plan shows lengths.
func format(plan framing.Plan) measure.Format {
	f, _ := plan.Order.Show.Format()
	return f
}

// checkTerm looks a term's value up where the term says it stands.
func checkTerm(t *testing.T, document any, of explain.Path, term explain.Term, kind string) {
	t.Helper()
	if term.Path == "" {
		return
	}
	node, ok := resolve(document, term.Path)
	if !ok {
		t.Errorf("%s: the term %s stands at %s, where nothing is", of, term.Key, term.Path)
		return
	}
	want := term.Value.String()
	switch n := node.(type) {
	case map[string]any:
		node = n[kind]
	case float64:
		node, want = strconv.FormatFloat(n, 'f', -1, 64), strconv.FormatInt(term.Value.N, 10)
	}
	if node != want {
		t.Errorf("%s: the term %s is %s, but %v stands at %s", of, term.Key, want, node, term.Path)
	}
}

// resolve follows a JSON Pointer.
func resolve(document any, path explain.Path) (any, bool) {
	for _, segment := range path.Segments() {
		switch holder := document.(type) {
		case map[string]any:
			below, ok := holder[segment]
			if !ok {
				return nil, false
			}
			document = below
		case []any:
			i, err := strconv.Atoi(segment)
			if err != nil || i < 0 || i >= len(holder) || strconv.Itoa(i) != segment {
				return nil, false
			}
			document = holder[i]
		default:
			return nil, false
		}
	}
	return document, true
}

// TestNoWorking asks for figures that no plan has.
func TestNoWorking(t *testing.T) {
	plan := work(t, framing.Sample())
	figures := plan.Figures(0)
	outside := []explain.Path{
		"", "/", "pieces", "/pieces", "/pieces/", "/pieces/0", "/order/pieces/0/frame/face", "/notes/0/path",
		"/pieces/1/frame/outside/width", "/pieces/-1/frame/outside/width", "/pieces/x/frame/outside/width",
		"/pieces/99999999999999999999/frame/outside/width", "/pieces/0/frame/outside/depth",
		"/pieces/0/layers/4/size/width/exact", "/pieces/0/layers/9/size/width", "/pieces/0/layers/-1/size/width",
		"/pieces/0/layers//size/width", "/pieces/0/mat/back/width", "/pieces/0/mat/cut/width", "/pieces/0/mat/window/left",
		"/pieces/0/frame/package/left", "/pieces/0/frame/horizontal/face", "/pieces/0/depth/play", "/pieces/0/depth/package/width",
		"/pieces/0/quantity/a/b", "/pieces/0/frame/top/saw", "/pieces/0/frame/rail/long_point",
	}
	for _, path := range figures {
		s := string(path)
		outside = append(outside, path+"/", path+"/exact", "/"+path, path.Parent(), explain.Path(s[1:]),
			explain.Path(strings.Replace(s, "/0/", "/00/", 1)), explain.Path(strings.Replace(s, "/0/", "/+0/", 1)),
			explain.Path(strings.Replace(s, "/0/", "/-0/", 1)), explain.Path(strings.ToUpper(s)),
			explain.Path(strings.Replace(s, "layers/", "layers/0", 1)), explain.Path(strings.Replace(s, "layers/", "layers/+", 1)))
	}
	for _, path := range outside {
		if slices.Contains(figures, path) {
			continue
		}
		if w, ok := plan.Explain(path); ok {
			t.Errorf("%q has a working: %+v", path, w)
		}
	}
	bare := framing.Sample()
	bare.Pieces[0].Mat = framing.Piece{}.Mat
	if _, ok := work(t, bare).Explain("/pieces/0/mat/window/width"); ok {
		t.Error("a piece without a mat explains a window")
	}
	for _, plan := range []framing.Plan{{}, {Pieces: []framing.PiecePlan{{}}}, {Pieces: []framing.PiecePlan{{Worked: true}}}} {
		if _, ok := plan.Explain("/pieces/0/frame/outside/width"); ok || len(plan.Figures(1)) > 0 || len(plan.Figures(-1)) > 0 {
			t.Errorf("%+v has figures", plan)
		}
	}
}

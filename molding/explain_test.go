package molding_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// figures are the figures of one bench by their path in the plan.
type figures map[explain.Path]explain.Value

func (f figures) size(at explain.Path, s measure.Size) {
	f[at+"/width"], f[at+"/height"] = explain.Of(s.Width), explain.Of(s.Height)
}

func figuresOf(r molding.Rectangle, fit molding.Fit, d molding.Depth) figures {
	f := figures{
		places.Worked + "/footage":                explain.Of(r.Footage),
		places.Worked + "/horizontal/long_point":  explain.Of(r.Outside.Width),
		places.Worked + "/horizontal/short_point": explain.Of(r.Sight.Width),
		places.Worked + "/vertical/long_point":    explain.Of(r.Outside.Height),
		places.Worked + "/vertical/short_point":   explain.Of(r.Sight.Height),
		"/pieces/0/depth/package":                 explain.Of(d.Package),
		"/pieces/0/depth/clear":                   explain.Of(d.Clear),
		"/pieces/0/depth/wanted":                  explain.Of(d.Wanted),
	}
	for _, pair := range []explain.Path{"/horizontal", "/vertical"} {
		f[places.Worked+pair+"/saw"] = explain.Of(45 * measure.Degree)
		f[places.Worked+pair+"/edge"] = explain.Of(45 * measure.Degree)
	}
	f.size(places.Worked+"/package", r.Package)
	f.size(places.Worked+"/opening", r.Opening)
	f.size(places.Worked+"/sight", r.Sight)
	f.size(places.Worked+"/outside", r.Outside)
	f.size(worked+"/size", fit.Size)
	f.size(worked+"/play", fit.Play)
	f.size(worked+"/bite", fit.Bite)
	return f
}

// TestExplain: every figure has a formula that works out to it, from terms
// that are themselves figures or fields.
func TestExplain(t *testing.T) {
	const depth explain.Path = "/pieces/0/depth"
	r := rand.New(rand.NewPCG(7, 7))
	for range 1500 {
		b := randomBench(r)
		b.parts = append(b.parts, in("1/16"))
		rect := b.frame.Around(b.pkg)
		fit := b.frame.Fit(rect.Opening, b.cut)
		d := b.frame.DepthOf(b.points, b.parts...)
		var thick []explain.Expr
		for _, p := range b.parts {
			thick = append(thick, explain.T("thickness", p, "/order/pieces/0/x/thickness"))
		}
		all := figuresOf(rect, fit, d)
		for path, want := range all {
			var w explain.Working
			var ok bool
			if figure, is := path.After(worked); is {
				w, ok = b.frame.ExplainFit(rect.Opening, b.cut, figure, part, worked, places)
				if again, lies := b.frame.ExplainLying(fit, figure, worked, rect.Opening, places); lies && again.Text(sixteenths) != w.Text(sixteenths) {
					t.Errorf("%s: %s and %s", path, w.Text(sixteenths), again.Text(sixteenths))
				}
			} else if figure, is := path.After(depth); is {
				w, ok = b.frame.ExplainDepth(d, b.points, thick, figure, depth, places)
			} else if path.Under(places.Worked + "/package") {
				continue // for the caller to explain
			} else {
				figure, _ := path.After(places.Worked)
				w, ok = b.frame.Explain(rect, figure, places)
			}
			got, err := w.Formula.Evaluate()
			if !ok || err != nil || got != want || w.Exact != want || w.Path != path || w.Key == "" || w.Source.Status == "" {
				t.Fatalf("%s: %v %v %v, want %v\n%+v", path, ok, got, err, want, w)
			}
			for _, term := range w.Formula.Terms() {
				if value, is := all[term.Path]; is && value != term.Value || term.Path == path {
					t.Fatalf("%s: the term %s is %v, the figure %v", path, term.Path, term.Value, value)
				}
			}
		}
	}
}

// TestExplainText reads a few workings the way a framer does.
func TestExplainText(t *testing.T) {
	f := frame("1 1/2", "1/4", "1/8")
	r := f.Around(size("16", "20"))
	rows := []struct{ path, want string }{
		{"/vertical/long_point", "long point 22 5/8 = opening 20 1/8 + 2 x (face 1 1/2 - lip 1/4)"},
		{"/horizontal/short_point", "short point 15 5/8 = opening 16 1/8 - 2 x lip 1/4"},
		{"/opening/width", "opening 16 1/8 = package 16 + allowance 1/8"},
		{"/footage", "molding in the rails 82 1/2 = 2 x (outside 18 5/8 + outside 22 5/8)"},
		{"/horizontal/saw", "saw setting 45 deg = 90 deg - angle to the edge 45 deg"},
	}
	for _, row := range rows {
		w, ok := f.Explain(r, explain.Path(row.path), places)
		if got := w.Text(sixteenths); !ok || got != row.want {
			t.Errorf("%s reads\n%s, want\n%s", row.path, got, row.want)
		}
	}
	w, ok := f.ExplainFit(r.Opening, molding.Cut{Clearance: in("1/4")}, "/size/width", part, worked, places)
	const want = "size 15 7/8 = opening 16 1/8 - the most of (allowance 1/8, clearance 1/4)"
	if got := w.Text(sixteenths); !ok || got != want {
		t.Errorf("reads %s, want %s", got, want)
	}
}

func TestExplainNothing(t *testing.T) {
	f := frame("1 1/2", "1/4", "1/8")
	r := f.Around(size("16", "20"))
	for _, path := range []explain.Path{
		"", "/", "/opening", "/opening/left", "/package/width", "/x/width", "/footage/width", "/horizontal", "/horizontal/x",
		"/vertical/width", "/opening/width/x", "/top/saw",
	} {
		if w, ok := f.Explain(r, path, places); ok {
			t.Errorf("%q is explained: %+v", path, w)
		}
	}
	fit := f.Fit(r.Opening, molding.Cut{})
	for _, path := range []explain.Path{"", "/size", "/x/width", "/play/left", "/bite/width/x", "/play"} {
		if w, ok := f.ExplainFit(r.Opening, molding.Cut{}, path, part, worked, places); ok {
			t.Errorf("%q of a part is explained: %+v", path, w)
		}
		if w, ok := f.ExplainLying(fit, path, worked, r.Opening, places); ok {
			t.Errorf("%q of a lying part is explained: %+v", path, w)
		}
	}
	if w, ok := f.ExplainLying(fit, "/size/width", worked, r.Opening, places); ok {
		t.Errorf("a size is explained by how it lies: %+v", w)
	}
	if w, ok := f.ExplainDepth(molding.Depth{}, 0, nil, "/depth", "/d", places); ok {
		t.Errorf("no figure of the depth is explained: %+v", w)
	}
}

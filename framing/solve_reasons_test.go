package framing_test

import (
	"bytes"
	"reflect"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// noAnswers are questions without an answer, the reason, and the values that come
// nearest.
var noAnswers = []struct {
	name, piece string
	q           framing.Question
	code        explain.Code
	nearest     []string // of the free field
	problems    []explain.Path
}{
	{
		"the width says nothing about the height", boardPanel,
		framing.Question{Free: p("/art/width"), Want: p("/frame/outside/height"), Value: "20"},
		framing.Independent, []string{"12"}, nil,
	},
	{
		"borders as seen keep the sight size, whatever the lip", mattedPrint,
		framing.Question{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "15"},
		framing.Independent, []string{"1/4"}, nil,
	},
	{
		"square art in a board of 16 x 20: borders 2 apart", boardedPrint,
		framing.Question{Free: p("/art/width"), With: with(p("/art/height")), Move: framing.InStep, Want: p("/mat/cut/left"), Equal: p("/mat/cut/top")},
		framing.Apart, []string{"11"}, nil,
	},
	{
		"a frame of 8 around a window of 10 3/4", mattedPrint,
		framing.Question{Free: p("/mat/borders/left"), With: with(p("/mat/borders/right")), Move: framing.Alike, Want: p("/frame/opening/width"), Value: "8"},
		framing.OutOfReach, []string{"0"}, nil,
	},
	{
		"a wall of 100 m", hallMirror,
		framing.Question{Free: p("/art/width"), Want: p("/frame/outside/width"), Value: "100 m"},
		framing.OutOfReach, []string{"50000 mm"}, nil,
	},
	{
		"a sight of 5, with a lip wider than the face", boardPanel,
		framing.Question{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "5"},
		framing.Refused, []string{"38.099999 mm"}, []explain.Path{p("/frame/lip")},
	},
	{
		"an overlap of half the art", mattedPrint,
		framing.Question{Free: p("/mat/window/each_side"), Want: p("/mat/window/width"), Value: "0"},
		framing.Refused, []string{"5 1/2 in - 1 nm"}, []explain.Path{p("/mat/window/each_side")},
	},
	{
		"an odd nanometer that two lips would have to halve", boardPanel,
		framing.Question{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "292.100001 mm"},
		framing.BetweenTwo, []string{"7.937499 mm", "7.9375 mm"}, nil,
	},
}

// TestSolveNone: none, with the reason, is an answer.
func TestSolveNone(t *testing.T) {
	for _, c := range noAnswers {
		t.Run(c.name, func(t *testing.T) {
			order := read(t, "in", c.piece)
			s, err := framing.Solve(order, c.q)
			if err != nil {
				t.Fatal(err)
			}
			if s.Found || s.Reason.Code != c.code || s.Reason.Path != "/order"+c.q.Free {
				t.Fatalf("found %v (%v), %s: %s", s.Found, s.Answer.Value, s.Reason.Code, s.Reason.Text(measure.Format{}))
			}
			if !bytes.Equal(marshal(t, s.Order), marshal(t, order)) {
				t.Error("without an answer the order is changed")
			}
			if strings.ContainsAny(s.Reason.Text(measure.Format{}), "{}") {
				t.Errorf("a value is missing: %s", s.Reason.Text(measure.Format{}))
			}
			if len(s.Nearest) != len(c.nearest) {
				t.Fatalf("nearest %v", s.Nearest)
			}
			for i, text := range c.nearest {
				want := measure.Length(0)
				if first, ok := strings.CutSuffix(text, " in - 1 nm"); ok {
					want = in(t, first) - 1
				} else {
					want = in(t, text)
				}
				if got := measure.Length(s.Nearest[i].Value.N); got != want && len(c.nearest) == 1 {
					t.Errorf("nearest is %v, want %s", got, text)
				} else if distance := max(got-want, want-got); distance > 1 {
					t.Errorf("nearest is %v, want %s", got, text)
				}
			}
			if got := paths(s.Problems); len(got) != len(c.problems) || len(got) > 0 && got[0] != c.problems[0] {
				t.Errorf("problems %v, want at %q", s.Problems, c.problems)
			}
			missed(t, order, c.q, s)
		})
	}
}

// missed works the nearest tries: they give what is said, and it is not what was
// wanted.
func missed(t testing.TB, order framing.Order, q framing.Question, s framing.Solution) {
	t.Helper()
	for _, n := range s.Nearest {
		d := parseDoc(t, marshal(t, order)).with(q.Free, `"`+n.Value.String()+`"`)
		moved := n.With()
		if len(moved) != len(q.With) {
			t.Fatalf("with %v moved %v", n.Value, moved)
		}
		for i, path := range q.With {
			d = d.with(path, `"`+moved[i].String()+`"`)
		}
		plan, err := framing.NewReading(d.text()).Work()
		if err != nil {
			t.Errorf("with %v the order has problems: %v", n.Value, err)
			continue
		}
		if got := figureOf(t, plan, q.Want); got != n.Figure {
			t.Errorf("with %v the figure is %v and was said to be %v", n.Value, got, n.Figure)
		}
	}
}

// TestSolveSeveral: of several values that do, the one that asks for no change, or
// the nearest that stands on a tape.
func TestSolveSeveral(t *testing.T) {
	const pane = `{"art": {"width": "10", "height": "12"}, "glazing": {"material": "glass", "clearance": "CLEARANCE"},
		"frame": {"face": "1", "lip": "1/4", "allowance": "1/8"}}`
	q := framing.Question{Free: p("/glazing/clearance"), Want: p("/layers/0/size/width"), Value: "10"}
	// The pane has the larger of the frame's play and its own clearance.
	for _, c := range []struct{ clearance, want string }{{"0", "0"}, {"1/16", "1/16"}, {"1/8", "1/8"}, {"1/2", "1/8"}} {
		s := solved(t, read(t, "in", strings.ReplaceAll(pane, "CLEARANCE", c.clearance)), q)
		if got := measure.Length(s.Answer.Value.N); got != in(t, c.want) {
			t.Errorf("from %s: %v, want %s", c.clearance, got, c.want)
		}
		if s.Least.Value.N != 0 || measure.Length(s.Most.Value.N) != in(t, "1/8") {
			t.Errorf("from %s: from %v to %v do", c.clearance, s.Least.Value, s.Most.Value)
		}
	}
	// Of two nanometers that a halved border cannot tell apart, the one on the tape.
	crop := read(t, "in", `{"art": {"width": "9", "height": "2"}, "mat": {"window": {"by": "size", "width": "10", "height": "8"}},
		"frame": {"face": "1", "lip": "1/4"}}`)
	covered := framing.Question{Free: p("/art/height"), Want: p("/mat/covered/height"), Value: "0"}
	for _, from := range []string{"2", "20"} {
		crop.Pieces[0].Art.Height = in(t, from)
		if s := solved(t, crop, covered); measure.Length(s.Answer.Value.N) != in(t, "8") || s.Most.Value.N-s.Least.Value.N != 1 {
			t.Errorf("from %s: %v, from %v to %v do", from, s.Answer.Value, s.Least.Value, s.Most.Value)
		}
	}
	// Every value does.
	s := solved(t, crop, framing.Question{Free: p("/art/width"), Want: p("/mat/window/height"), Value: "8"})
	if s.Reason.Code != framing.AnyValue || s.Answer.Value.N != int64(in(t, "9")) {
		t.Errorf("%v: %s", s.Answer.Value, s.Reason.Code)
	}
}

// TestSolveUnknown: what is asked for may not be known yet.
func TestSolveUnknown(t *testing.T) {
	order := read(t, "in", boardPanel)
	order.Pieces[0].Art.Width = 0
	s := solved(t, order, framing.Question{Free: p("/art/width"), Want: p("/frame/opening/width"), Value: "16"})
	if got := measure.Length(s.Answer.Value.N); got != in(t, "15 7/8") {
		t.Errorf("the art is %v", got)
	}
	// A lip as wide as the face is a problem, and which face would do is not.
	order = read(t, "in", boardPanel)
	order.Pieces[0].Frame.Face = order.Pieces[0].Frame.Lip
	s = solved(t, order, framing.Question{Free: p("/frame/face"), Want: p("/frame/outside/width"), Value: "14"})
	if got := measure.Length(s.Answer.Value.N); got != in(t, "1 3/16") {
		t.Errorf("the face is %v", got)
	}
}

// TestSolveOtherPieces: a piece with a problem is no hindrance to another, and only
// the piece that was asked about is changed.
func TestSolveOtherPieces(t *testing.T) {
	panel, print := read(t, "in", boardPanel), read(t, "in", mattedPrint)
	order := panel
	order.Pieces = append(append([]framing.Piece(nil), panel.Pieces...), print.Pieces...)
	order.Pieces[0].Art.Width = -1
	before := marshal(t, order)
	q := framing.Question{Free: "/pieces/1/mat/borders/left", With: with("/pieces/1/mat/borders/right"), Move: framing.Alike, Want: "/pieces/1/frame/opening/width", Value: "16"}
	s, err := framing.Solve(order, q)
	if err != nil || !s.Found {
		t.Fatal(err, s.Reason.Code)
	}
	if !bytes.Equal(before, marshal(t, order)) {
		t.Error("Solve changes its order")
	}
	if got := s.Order.Pieces[1].Mat.Borders.Sides; got.Left != in(t, "2 3/8") || got.Right != got.Left || got.Top != in(t, "2 1/2") {
		t.Errorf("borders %v", got)
	}
	if !reflect.DeepEqual(s.Order.Pieces[0], order.Pieces[0]) || order.Pieces[1].Mat.Borders.Left != in(t, "2 1/2") {
		t.Error("another piece is changed, or the order that was given")
	}
}

// TestSolveRefused: questions that cannot be understood, and where.
func TestSolveRefused(t *testing.T) {
	good := framing.Question{Free: p("/art/width"), Want: p("/frame/outside/width"), Value: "20"}
	for _, c := range []struct {
		name  string
		spoil func(q *framing.Question, o *framing.Order)
		code  explain.Code
		path  explain.Path
	}{
		{"no such field", func(q *framing.Question, _ *framing.Order) { q.Free = p("/art/depth") }, explain.UnknownField, "/question/free"},
		{"no slash", func(q *framing.Question, _ *framing.Order) { q.Free = "shop" }, explain.UnknownField, "/question/free"},
		{"the whole order", func(q *framing.Question, _ *framing.Order) { q.Free = "" }, explain.WrongType, "/question/free"},
		{"no such piece", func(q *framing.Question, _ *framing.Order) { q.Free = "/pieces/7/art/width" }, explain.UnknownField, "/question/free"},
		{"two ways to write a piece", func(q *framing.Question, _ *framing.Order) { q.Free = "/pieces/00/art/width" }, explain.UnknownField, "/question/free"},
		{"a word", func(q *framing.Question, _ *framing.Order) { q.Free = p("/art/kind") }, explain.WrongType, "/question/free"},
		{"a count", func(q *framing.Question, _ *framing.Order) { q.Free = p("/quantity") }, explain.WrongType, "/question/free"},
		{"a size", func(q *framing.Question, _ *framing.Order) { q.Free = p("/art/varies") }, explain.WrongType, "/question/free"},
		{"below a length", func(q *framing.Question, _ *framing.Order) { q.Free = p("/art/width/0") }, explain.UnknownField, "/question/free"},
		{"no figure", func(q *framing.Question, _ *framing.Order) { q.Want = p("/frame/girth") }, framing.NoFigure, "/question/want"},
		{"a size of figures", func(q *framing.Question, _ *framing.Order) { q.Want = p("/frame/outside") }, framing.NoFigure, "/question/want"},
		{"a part that is not there", func(q *framing.Question, _ *framing.Order) { q.Want = p("/mat/window/width") }, framing.NoFigure, "/question/want"},
		{"a layer that is not there", func(q *framing.Question, _ *framing.Order) { q.Want = p("/layers/9/size/width") }, framing.NoFigure, "/question/want"},
		{"the order's own field", func(q *framing.Question, _ *framing.Order) { q.Want = "/order/pieces/0/art/width" }, framing.NoFigure, "/question/want"},
		{"a figure of no piece", func(q *framing.Question, _ *framing.Order) { q.Want = "/pieces/3/frame/outside/width" }, framing.NoFigure, "/question/want"},
		{"nothing wanted", func(q *framing.Question, _ *framing.Order) { q.Value = "" }, explain.Missing, "/question/value"},
		{"no length", func(q *framing.Question, _ *framing.Order) { q.Value = "20 %" }, "", "/question/value"},
		{"wanted twice", func(q *framing.Question, _ *framing.Order) { q.Equal = p("/frame/outside/height") }, framing.TwoWants, "/question/equal"},
		{"equal to nothing", func(q *framing.Question, _ *framing.Order) { q.Value, q.Equal = "", p("/frame/girth") }, framing.NoFigure, "/question/equal"},
		{"equal to another kind", func(q *framing.Question, _ *framing.Order) { q.Value, q.Equal = "", p("/frame/horizontal/saw") }, explain.WrongType, "/question/equal"},
		{"no such move", func(q *framing.Question, _ *framing.Order) { q.With, q.Move = with(p("/art/height")), "both" }, explain.NotAChoice, "/question/move"},
		{"no move", func(q *framing.Question, _ *framing.Order) { q.With = with(p("/art/height")) }, explain.NotAChoice, "/question/move"},
		{"moves with no field", func(q *framing.Question, _ *framing.Order) { q.With, q.Move = with(p("/art/depth")), framing.Alike }, explain.UnknownField, "/question/with/0"},
		{"moves with another kind", func(q *framing.Question, _ *framing.Order) {
			q.With, q.Move = with(p("/art/height"), p("/mat/borders/ratio")), framing.Alike
		}, explain.WrongType, "/question/with/1"},
		{"too many move", func(q *framing.Question, _ *framing.Order) {
			q.With, q.Move = make([]explain.Path, framing.MaxWith+1), framing.Alike
		}, explain.TooMany, "/question/with"},
		{"a ratio to nothing", func(q *framing.Question, o *framing.Order) {
			q.With, q.Move = with(p("/art/height")), framing.AsPart
			o.Pieces[0].Art.Width = 0
		}, framing.NoRatio, "/question/free"},
		{"a problem elsewhere", func(_ *framing.Question, o *framing.Order) { o.Pieces[0].Frame.Lip = -1 }, explain.OutOfRange, p("/frame/lip")},
		{"no units", func(_ *framing.Question, o *framing.Order) { o.Units = "" }, explain.NotAChoice, "/units"},
		{"no pieces", func(_ *framing.Question, o *framing.Order) { o.Pieces = nil }, framing.NoFigure, "/question/want"},
	} {
		t.Run(c.name, func(t *testing.T) {
			order, q := read(t, "in", boardPanel), good
			c.spoil(&q, &order)
			before := marshal(t, order)
			s, err := framing.Solve(order, q)
			ps := problems(t, err)
			if len(ps) != 1 || ps[0].Path != c.path || c.code != "" && ps[0].Code != c.code {
				t.Errorf("problems %v, want %s at %s", ps, c.code, c.path)
			}
			if s.Found || !bytes.Equal(before, marshal(t, s.Order)) || !bytes.Equal(before, marshal(t, order)) {
				t.Error("an answer, or a changed order, to a question that was not understood")
			}
		})
	}
	two := read(t, "in", boardPanel)
	two.Pieces = append(two.Pieces, two.Pieces[0])
	for path, q := range map[explain.Path]framing.Question{
		"/question/free":   {Free: "/pieces/1/art/width", Want: p("/frame/outside/width"), Value: "20"},
		"/question/equal":  {Free: p("/art/width"), Want: p("/frame/outside/width"), Equal: "/pieces/1/frame/outside/width"},
		"/question/with/0": {Free: p("/art/width"), With: with("/pieces/1/art/width"), Move: framing.Alike, Want: p("/frame/outside/width"), Value: "20"},
	} {
		_, err := framing.Solve(two, q)
		if ps := problems(t, err); len(ps) != 1 || ps[0].Path != path || ps[0].Code != framing.OtherPiece {
			t.Errorf("%s: %v", path, ps)
		}
	}
}

// TestReadQuestion reads questions from text.
func TestReadQuestion(t *testing.T) {
	q, err := framing.ReadQuestion([]byte(`{"free": "/pieces/0/art/width", "with": ["/pieces/0/art/height"], "move": "ratio",
		"want": "/pieces/0/frame/outside/width", "value": "20 1/4 in"}`))
	if err != nil || q.Free != p("/art/width") || len(q.With) != 1 || q.Move != framing.AsPart || q.Value != "20 1/4 in" {
		t.Errorf("%+v, %v", q, err)
	}
	if again, err := framing.ReadQuestion(marshal(t, q)); err != nil || !bytes.Equal(marshal(t, again), marshal(t, q)) {
		t.Errorf("written and read again: %+v, %v", again, err)
	}
	for text, path := range map[string]explain.Path{
		`{`: "/question", `[]`: "/question", `{"want": "/pieces/0/frame/outside/width"}`: "/question/free",
		`{"free": 1, "want": ""}`: "/question/free", `{"free": "", "want": "", "Value": "1"}`: "/question/Value",
		`{"free": "", "want": "", "value": 1}`: "/question/value", `{"free": "", "want": "", "with": "/shop"}`: "/question/with",
		`{"free": "", "want": "", "with": [2]}`: "/question/with/0", `{"free": "", "want": "", "move": "Ratio"}`: "/question/move",
	} {
		_, err := framing.ReadQuestion([]byte(text))
		if ps := problems(t, err); len(ps) != 1 || ps[0].Path != path {
			t.Errorf("%s: %v", text, ps)
		}
	}
}

package framing_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// figureOf reads the exact value of a figure by its working, and not by its path
// in the plan.
func figureOf(t testing.TB, plan framing.Plan, path explain.Path) explain.Value {
	t.Helper()
	w, ok := plan.Explain(path)
	if !ok {
		t.Fatalf("the plan has no %s", path)
	}
	return w.Exact
}

// A solveJob is a job that is worked backwards: an order of one piece, questions
// that follow one another, each on the order of the answer before, and the fields
// that come out.
type solveJob struct {
	name, units, piece string
	questions          []framing.Question
	answers            []string // one for each question
}

// p is a path of the first piece.
func p(rest explain.Path) explain.Path { return "/pieces/0" + rest }

func with(paths ...explain.Path) []explain.Path { return paths }

// Pieces of the jobs.
const (
	mattedPrint = `{"art": {"width": "11", "height": "14"}, "mat": {"window": {"by": "overlap", "each_side": "1/8"}},
		"frame": {"face": "1 1/4", "lip": "1/4", "allowance": "1/8"}}`
	boardedPrint = `{"art": {"width": "11", "height": "14"}, "mat": {"window": {"by": "overlap", "each_side": "1/8"},
		"borders": {"by": "board", "board": {"width": "16", "height": "20"}}}, "frame": {"face": "1 1/4", "lip": "1/4", "allowance": "1/8"}}`
	// Its art is as yet only a ratio.
	ratioPrint = `{"art": {"width": "2", "height": "3"}, "mat": {"window": {"by": "overlap", "each_side": "1/8"},
		"borders": {"by": "board", "board": {"width": "16", "height": "20"}}}, "frame": {"face": "1 1/4", "lip": "1/4", "allowance": "1/8"}}`
	windowedPrint = `{"art": {"width": "8 3/4", "height": "11"}, "mat": {"window": {"by": "size", "width": "8", "height": "10"},
		"borders": {"by": "board", "board": {"width": "14", "height": "17"}}}, "frame": {"face": "1", "lip": "1/4"}}`
	boardPanel    = `{"art": {"kind": "panel", "width": "12", "height": "16"}, "frame": {"face": "1 1/2", "lip": "1/4", "allowance": "1/8"}}`
	octagonMirror = `{"art": {"kind": "mirror", "outline": {"by": "regular", "size": "18"}}, "frame": {"face": "2 1/2", "lip": "3/8", "allowance": "1/8"}}`
	hallMirror    = `{"art": {"kind": "mirror", "width": "24", "height": "36"}, "frame": {"face": "3", "lip": "3/8", "allowance": "1/8"}}`
)

// solveJobs were worked by hand. Their sums stand beside them.
var solveJobs = []solveJob{
	{
		// Board 15 7/8 x 19 7/8, window 10 3/4 x 13 3/4: cut 2 9/16 and 3 1/16, of
		// which the lip hides 1/4 - 1/16 = 3/16.
		"a ready-made frame of 16 x 20, borders as seen", "in", mattedPrint,
		[]framing.Question{
			{Free: p("/mat/borders/left"), With: with(p("/mat/borders/right")), Move: framing.Alike, Want: p("/frame/opening/width"), Value: "16"},
			{Free: p("/mat/borders/top"), With: with(p("/mat/borders/bottom")), Move: framing.Alike, Want: p("/frame/opening/height"), Value: "20"},
		},
		[]string{"2 3/8", "2 7/8"},
	},
	{
		// With the bottom border 1/2 wider, they share 5 3/4: 2 5/8 and 3 1/8.
		"the same, weighted below", "in", `{"art": {"width": "11", "height": "14"},
			"mat": {"window": {"by": "overlap", "each_side": "1/8"}, "borders": {"weight": "extra", "extra": "1/2"}},
			"frame": {"face": "1 1/4", "lip": "1/4", "allowance": "1/8"}}`,
		[]framing.Question{{Free: p("/mat/borders/top"), Want: p("/frame/opening/height"), Value: "20"}},
		[]string{"2 5/8"},
	},
	{
		// Board 19 3/8, less the window of 13 3/4 and 3/8 under the lip: 5 1/4, of
		// which the bottom has 1/2 more.
		"borders that keep their difference", "in", `{"art": {"width": "11", "height": "14"},
			"mat": {"window": {"by": "overlap", "each_side": "1/8"}, "borders": {"top": "2 1/2", "bottom": "3"}},
			"frame": {"face": "1 1/4", "lip": "1/4", "allowance": "1/8"}}`,
		[]framing.Question{{Free: p("/mat/borders/top"), With: with(p("/mat/borders/bottom")), Move: framing.InStep, Want: p("/frame/opening/height"), Value: "19 1/2"}},
		[]string{"2 3/8"},
	},
	{
		// Opening 20 - 2 x (1 1/2 - 1/4) = 17 1/2, less the play of 1/8.
		"a ready-made frame sold by its outside of 20 x 24", "in", boardPanel,
		[]framing.Question{
			{Free: p("/art/width"), Want: p("/frame/outside/width"), Value: "20"},
			{Free: p("/art/height"), Want: p("/frame/outside/height"), Value: "24"},
		},
		[]string{"17 3/8", "21 3/8"},
	},
	{
		// 40 - 2 x (3 - 3/8) - 1/8.
		"a mirror in a recess 40 wide", "in", hallMirror,
		[]framing.Question{{Free: p("/art/width"), Want: p("/frame/outside/width"), Value: "40"}},
		[]string{"34 5/8"},
	},
	{
		// The other way round: 40 = 34 5/8 + 1/8 + 2 x (face - 3/8).
		"the face that fills a recess of 40 around a mirror of 24", "in", hallMirror,
		[]framing.Question{{Free: p("/frame/face"), Want: p("/frame/outside/width"), Value: "40"}},
		[]string{"8 5/16"}, // (40 - 24 1/8) / 2 + 3/8
	},
	{
		"the lip that shows 11 1/2 of a panel of 12", "in", boardPanel,
		[]framing.Question{{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "11 1/2"}},
		[]string{"5/16"}, // (12 1/8 - 11 1/2) / 2
	},
	{
		"a window with borders of 3 in a board of 14 x 17", "in", windowedPrint,
		[]framing.Question{
			{Free: p("/mat/window/width"), Want: p("/mat/cut/left"), Value: "3 1/4"},
			{Free: p("/mat/window/height"), Want: p("/mat/cut/top"), Value: "3 1/4"},
		},
		[]string{"7 1/2", "10 1/2"},
	},
	{
		"a board with borders of 3 1/4 around a window of 8 x 10", "in", windowedPrint,
		[]framing.Question{
			{Free: p("/mat/borders/board/width"), Want: p("/mat/cut/left"), Value: "3 1/4"},
			{Free: p("/mat/borders/board/height"), Want: p("/mat/cut/bottom"), Value: "3 1/4"},
		},
		[]string{"14 1/2", "16 1/2"},
	},
	{
		"the overlap that makes a window of 10 1/2 over art of 11", "in", mattedPrint,
		[]framing.Question{{Free: p("/mat/window/each_side"), Want: p("/mat/window/width"), Value: "10 1/2"}},
		[]string{"1/4"},
	},
	{
		"art for a window of 8 x 10 with an overlap of 1/8", "in", mattedPrint,
		[]framing.Question{
			{Free: p("/art/width"), Want: p("/mat/window/width"), Value: "8"},
			{Free: p("/art/height"), Want: p("/mat/window/height"), Value: "10"},
		},
		[]string{"8 1/4", "10 1/4"},
	},
	{
		// 16 - A + 2 o = 20 - 3/2 A + 2 o.
		"art of 2 : 3 with equal borders in a board of 16 x 20", "in", ratioPrint,
		[]framing.Question{{Free: p("/art/width"), With: with(p("/art/height")), Move: framing.AsPart, Want: p("/mat/visible/left"), Equal: p("/mat/visible/top")}},
		[]string{"8"},
	},
	{
		// 18 + 1/8 + 2 x (face - 3/8) = 23: face = 4 7/8 / 2 + 3/8.
		"the face that makes an octagon of 23 across flats", "in", octagonMirror,
		[]framing.Question{{Free: p("/frame/face"), Want: p("/shape/regular/outside"), Value: "23"}},
		[]string{"2 13/16"},
	},
	{
		// The other way round: 22 1/4 - 2 x (2 1/2 - 3/8) - 1/8.
		"an octagon for a space of 22 1/4", "in", octagonMirror,
		[]framing.Question{{Free: p("/art/outline/size"), Want: p("/shape/regular/outside"), Value: "22 1/4"}},
		[]string{"17 7/8"},
	},
	{
		// 8 + 1/8 - 2 x 1/4 + 3 + the bottom rail.
		"the bottom rail that makes a frame 13 high", "in", `{"art": {"kind": "panel", "width": "8", "height": "8"},
			"frame": {"face": "2", "lip": "1/4", "allowance": "1/8", "faces": ["2", "2", "3", "2"]}}`,
		[]framing.Question{{Free: p("/frame/faces/0"), Want: p("/frame/outside/height"), Value: "13"}},
		[]string{"2 3/8"},
	},
	{
		// A side of a triangle moves the whole of its rail: 22 + what its corners add.
		"a longer bottom edge in a triangle of three equal sides", "in", `{"art": {"kind": "panel", "outline": {"by": "edges", "edges": ["12", "12", "12"]}},
			"frame": {"face": "1", "lip": "0", "allowance": "0"}}`,
		[]framing.Question{{Free: p("/art/outline/edges/0"), With: with(p("/art/outline/edges/1"), p("/art/outline/edges/2")), Move: framing.Alike, Want: p("/shape/rails/0/sight"), Value: "15"}},
		[]string{"15"},
	},
	{
		"a passe-partout in millimeters: art of 297 x 420 in an opening of 500", "mm",
		`{"art": {"width": "297", "height": "420"}, "mat": {"window": {"by": "overlap", "each_side": "3"}},
			"frame": {"face": "20", "lip": "6", "allowance": "3"}}`,
		[]framing.Question{{Free: p("/mat/borders/left"), With: with(p("/mat/borders/right")), Move: framing.Alike, Want: p("/frame/opening/width"), Value: "500"}},
		[]string{"98.5 mm"}, // (500 - 2 x 6 - 291) / 2: the sight less the window
	},
}

// TestSolveJobs works each job backwards and its answer forwards.
func TestSolveJobs(t *testing.T) {
	for _, job := range solveJobs {
		t.Run(job.name, func(t *testing.T) {
			order := read(t, job.units, job.piece)
			for i, q := range job.questions {
				s := solved(t, order, q)
				order = s.Order
				got, want := measure.Length(s.Answer.Value.N), in(t, job.answers[i])
				if got != want {
					t.Errorf("%s is %v (%s in), want %s", q.Free, got, inches(got), job.answers[i])
				}
			}
		})
	}
}

func read(t testing.TB, units, piece string) framing.Order {
	t.Helper()
	order, err := framing.Read([]byte(`{"version": 3, "units": "` + units + `", "pieces": [` + piece + `]}`))
	if err != nil {
		t.Fatal(err)
	}
	return order
}

// solved asks a question that has an answer, and works the answer forward.
func solved(t testing.TB, order framing.Order, q framing.Question) framing.Solution {
	t.Helper()
	s, err := framing.Solve(order, q)
	if err != nil {
		t.Fatal(err)
	}
	if !s.Found {
		t.Fatalf("none: %s", s.Reason.Text(measure.Format{}))
	}
	forward(t, q, s)
	return s
}

// forward works an answer, and requires that the figure comes out.
func forward(t testing.TB, q framing.Question, s framing.Solution) {
	t.Helper()
	plan := work(t, s.Order)
	got := figureOf(t, plan, q.Want)
	if got != s.Answer.Figure {
		t.Errorf("worked, the figure is %v and was said to be %v", got, s.Answer.Figure)
	}
	if q.Equal != "" {
		if other := figureOf(t, plan, q.Equal); other != got {
			t.Errorf("%s is %v and %s %v", q.Want, got, q.Equal, other)
		}
		return
	}
	if got.Kind == explain.LengthKind {
		want, err := measure.Parse(q.Value, plan.Order.Units.Bare())
		if err != nil || got.N != int64(want) {
			t.Errorf("the figure comes to %v, want %s (%v)", got, q.Value, err)
		}
	}
}

// An image of 3 : 2 in a window of 10 x 8. Cropped, it fills the height and loses
// a sixth of its width; whole, it is 10 wide and 6 2/3 high. 6 2/3 in is no whole
// number of nanometers, which is said.
func TestSolveCrop(t *testing.T) {
	order := read(t, "in", `{"art": {"width": "3", "height": "2"}, "mat": {"window": {"by": "size", "width": "10", "height": "8"}},
		"frame": {"face": "1", "lip": "1/4"}}`)
	fill := framing.Question{Free: p("/art/height"), With: with(p("/art/width")), Move: framing.AsPart, Want: p("/mat/covered/height"), Value: "0"}
	s := solved(t, order, fill)
	art := s.Order.Pieces[0].Art
	if art.Height != in(t, "8") || art.Width != in(t, "12") || len(s.Rounded) > 0 {
		t.Errorf("filled, the image is %v x %v, rounded %q", art.Width, art.Height, s.Rounded)
	}
	lost, _ := measure.MulDiv(art.Width-in(t, "10"), 1000, int64(art.Width))
	if lost != 167 {
		t.Errorf("%d thousandths are lost, want 167", lost)
	}
	whole := framing.Question{Free: p("/art/width"), With: with(p("/art/height")), Move: framing.AsPart, Want: p("/frame/package/width"), Value: "10"}
	s = solved(t, read(t, "in", `{"art": {"width": "3", "height": "2"}, "frame": {"face": "1", "lip": "1/4"}}`), whole)
	if art := s.Order.Pieces[0].Art; art.Height != 169_333_333 || len(s.Rounded) != 1 || s.Rounded[0] != p("/art/height") {
		t.Errorf("whole, the image is %v x %v, rounded %q", art.Width, art.Height, s.Rounded)
	}
}

// The art of a ratio that has equal borders in a board, by the closed form: the
// board's difference over the ratio's excess. The overlap drops out.
func TestSolveEqualBorders(t *testing.T) {
	q := framing.Question{Free: p("/art/width"), With: with(p("/art/height")), Move: framing.AsPart, Want: p("/mat/cut/left"), Equal: p("/mat/cut/top")}
	for _, c := range []struct{ a, b, width, height measure.Length }{
		{2, 3, 16, 20}, {3, 4, 16, 18}, {4, 5, 22, 26}, {5, 7, 14, 16}, {1, 2, 20, 30}, {3, 5, 12, 15},
	} {
		order := read(t, "in", ratioPrint)
		art, board := &order.Pieces[0].Art, &order.Pieces[0].Mat.Borders.Board
		art.Width, art.Height = c.a*measure.Inch, c.b*measure.Inch
		board.Width, board.Height = c.width*measure.Inch, c.height*measure.Inch
		s := solved(t, order, q)
		want := (c.height - c.width) * measure.Inch * c.a / (c.b - c.a)
		if got := s.Order.Pieces[0].Art.Width; got != want {
			t.Errorf("%d : %d in %d x %d: %v, want %v", c.a, c.b, c.width, c.height, got, want)
		}
	}
}

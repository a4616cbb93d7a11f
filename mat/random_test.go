package mat_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// randomLength is up to most, on a tape's marks or between them.
func randomLength(r *rand.Rand, most measure.Length) measure.Length {
	l := measure.Length(r.Int64N(int64(most) + 1))
	if r.IntN(2) == 0 {
		l -= l % (measure.Inch / 64)
	}
	return l
}

func randomSides(r *rand.Rand, most measure.Length) measure.Sides {
	return measure.Sides{
		Left: randomLength(r, most), Right: randomLength(r, most),
		Top: randomLength(r, most), Bottom: randomLength(r, most),
	}
}

// random returns a mat that passes its check, and what it finds.
func random(r *rand.Rand) (mat.Mat, mat.Given) {
	const most = 2 * measure.Meter
	art := measure.Size{Width: in("2") + randomLength(r, most), Height: in("2") + randomLength(r, most)}
	g := mat.Given{Least: art, Greatest: art, Lip: randomSides(r, in("1/2")), Allowance: randomLength(r, in("1/4")), Overlap: randomLength(r, in("1/4"))}
	if r.IntN(2) == 0 {
		g.Greatest.Width += randomLength(r, in("1/4"))
		g.Greatest.Height += randomLength(r, in("1/4"))
	}
	pick := func(choices []string) string { return choices[r.IntN(len(choices))] }
	m := mat.Mat{Thickness: in("0.055"), Bevel: randomBevel(r)}
	m.Window = mat.Window{
		By: mat.WindowBy(pick(mat.ByGap.Choices())), EachSide: randomLength(r, in("1/2")),
		Size: measure.Size{Width: art.Width - in("1") + randomLength(r, in("2")), Height: art.Height - in("1") + randomLength(r, in("2"))},
	}
	m.Borders = mat.Borders{
		By: mat.BordersBy(pick(mat.ByCut.Choices())), To: mat.BordersTo(pick(mat.ToTop.Choices())), Weight: mat.Weight(pick(mat.Extra.Choices())),
		Sides: randomSides(r, in("5")), Extra: randomLength(r, in("2")), Ratio: explain.Ratio(r.IntN(1_000_000)),
		Board: measure.Size{Width: art.Width + randomLength(r, in("10")), Height: art.Height + randomLength(r, in("10"))},
	}
	for i := range r.IntN(mat.MaxUnder + 1) {
		m.Under[i] = mat.UnderMat{
			Thickness: in("0.03") + randomLength(r, in("0.1")), Bevel: randomBevel(r), By: mat.RevealBy(pick(mat.BySeen.Choices())),
			Reveal: randomLength(r, in("1/2")), Trim: randomLength(r, in("1/4")),
		}
	}
	return m, g
}

// randomBevel is a usual angle, a straight cut, a reverse bevel, or any other.
func randomBevel(r *rand.Rand) measure.Angle {
	switch r.IntN(6) {
	case 0, 1:
		return 45 * measure.Degree
	case 2:
		return 90 * measure.Degree
	case 3:
		return 135 * measure.Degree
	}
	return mat.LeastBevel + measure.Angle(r.Int64N(int64(mat.MostBevel-mat.LeastBevel)+1))
}

// eachRandom runs check on many random mats, the same ones each time.
func eachRandom(t *testing.T, n int, check func(t *testing.T, r *rand.Rand, m mat.Mat, g mat.Given)) {
	t.Helper()
	r := rand.New(rand.NewPCG(20, 16))
	for range n {
		m, g := random(r)
		var c explain.Checker
		m.Check(&c, "", g, "/art")
		if err := c.Problems().Err(); err != nil {
			t.Fatalf("no mat to test with: %v", err)
		}
		if check(t, r, m, g); t.Failed() {
			t.Fatalf("mat %+v\ngiven %+v\nlaid %+v", m, g, m.Lay(g))
		}
	}
}

// checkIdentities requires what is so for every mat, to the nanometer.
func checkIdentities(t *testing.T, m mat.Mat, g mat.Given, l mat.Layout) {
	t.Helper()
	equal := func(what string, a, b measure.Length) {
		if a != b {
			t.Errorf("%s: %d and %d", what, a, b)
		}
	}
	equal("blank = borders + window across", l.Blank.Width, l.Cut.Left+l.Window.Width+l.Cut.Right)
	equal("blank = borders + window upright", l.Blank.Height, l.Cut.Top+l.Window.Height+l.Cut.Bottom)
	// The sight opening, come to from outside: the blank's opening less both lips.
	sight := measure.Size{
		Width:  l.Blank.Width + g.Allowance - g.Lip.Left - g.Lip.Right,
		Height: l.Blank.Height + g.Allowance - g.Lip.Top - g.Lip.Bottom,
	}
	equal("sight across", sight.Width, l.Visible.Left+l.Window.Width+l.Visible.Right)
	equal("sight upright", sight.Height, l.Visible.Top+l.Window.Height+l.Visible.Bottom)
	equal("sight across, seated", sight.Width, l.Seated.Left+l.Window.Width+l.Seated.Right)
	equal("sight upright, seated", sight.Height, l.Seated.Top+l.Window.Height+l.Seated.Bottom)
	// A mat in the middle of its play drops by half of it.
	if drop := 2 * (l.Seated.Top - l.Visible.Top); g.Lip.Top == g.Lip.Bottom && (drop < g.Allowance-1 || drop > g.Allowance+1) {
		t.Errorf("drops by %d of %d", drop/2, g.Allowance)
	}
	if d := l.Cover.Right - l.Cover.Left; d < 0 || d > 1 {
		t.Errorf("the odd nanometer of the cover: %+v", l.Cover)
	}
	if d := l.Cover.Bottom - l.Cover.Top; d < 0 || d > 1 {
		t.Errorf("the odd nanometer of the cover: %+v", l.Cover)
	}
	equal("back", l.Back.Left, mat.FromBack(l.Blank.Width, l.Cut.Left, l.Window.Width))
	equal("back again", mat.FromBack(l.Blank.Width, l.Back.Left, l.Window.Width), l.Cut.Left)
	if m.Borders.By == mat.ByBoard && l.Blank != m.Borders.Board {
		t.Errorf("the blank is not the board")
	}
	checkUnder(t, m, l)
}

func TestIdentities(t *testing.T) {
	eachRandom(t, 5000, func(t *testing.T, _ *rand.Rand, m mat.Mat, g mat.Given) {
		checkIdentities(t, m, g, m.Lay(g))
	})
}

// TestPerturbation: what one nanometer more does to the mat.
func TestPerturbation(t *testing.T) {
	eachRandom(t, 2000, func(t *testing.T, _ *rand.Rand, m mat.Mat, g mat.Given) {
		m.Borders.Weight = mat.Unweighted
		before := m.Lay(g)
		moved := func(what string, m mat.Mat, g mat.Given, window, blank measure.Length) {
			after := m.Lay(g)
			if got := after.Window.Width - before.Window.Width; got != window {
				t.Errorf("%s: the window grew by %d, want %d", what, got, window)
			}
			if got := after.Blank.Width - before.Blank.Width; got != blank {
				t.Errorf("%s: the blank grew by %d, want %d", what, got, blank)
			}
		}
		window := map[mat.WindowBy]measure.Length{mat.ByOverlap: -2, mat.ByGap: 2}[m.Window.By]
		byVisible := map[mat.BordersBy]measure.Length{mat.ByVisible: 1}[m.Borders.By]
		free := measure.Length(1) // does the blank follow the window?
		if m.Borders.By == mat.ByBoard {
			free = 0
		}
		n := m
		n.Window.EachSide++
		moved("overlap or gap", n, g, window, window*free)
		n = m
		n.Borders.Left++
		moved("left border", n, g, 0, free)
		n = m
		n.Borders.Board.Width++
		moved("board", n, g, 0, 1-free)
		h := g
		h.Lip.Right++
		moved("right lip", m, h, 0, byVisible)
		h = g
		h.Allowance++
		moved("allowance", m, h, 0, -byVisible)
		h = g
		h.Least.Width++
		h.Greatest.Width++
		window = map[mat.WindowBy]measure.Length{mat.ByOverlap: 1, mat.ByGap: 1}[m.Window.By]
		moved("art", m, h, window, window*free)
	})
}

// figures are the paths of every figure of a layout, with its value.
func figures(m mat.Mat, l mat.Layout) map[explain.Path]measure.Length {
	f := map[explain.Path]measure.Length{"/back/left": l.Back.Left, "/back/top": l.Back.Top}
	for name, s := range map[explain.Path]measure.Size{"/window": l.Window, "/covered": l.Covered, "/blank": l.Blank} {
		f[name+"/width"], f[name+"/height"] = s.Width, s.Height
	}
	for name, s := range map[explain.Path]measure.Sides{"/cover": l.Cover, "/cut": l.Cut, "/visible": l.Visible, "/seated": l.Seated} {
		f[name+"/left"], f[name+"/right"], f[name+"/top"], f[name+"/bottom"] = s.Left, s.Right, s.Top, s.Bottom
	}
	addBevel(f, "", l.Bevel)
	for i, b := range l.Under[:m.Under.Count()] {
		at := explain.Path("/under").Index(i)
		f[at+"/reveal"], f[at+"/seen"] = b.Reveal, b.Seen
		for name, s := range map[explain.Path]measure.Size{"/window": b.Window, "/blank": b.Blank} {
			f[at+name+"/width"], f[at+name+"/height"] = s.Width, s.Height
		}
		for name, s := range map[explain.Path]measure.Sides{"/own": b.Own, "/from_top": b.FromTop} {
			name = at + name
			f[name+"/left"], f[name+"/right"], f[name+"/top"], f[name+"/bottom"] = s.Left, s.Right, s.Top, s.Bottom
		}
		addBevel(f, at, b.Bevel)
	}
	return f
}

func addBevel(f map[explain.Path]measure.Length, at explain.Path, b mat.Bevel) {
	at += "/bevel"
	f[at+"/run"], f[at+"/slope"], f[at+"/face/width"], f[at+"/face/height"] = b.Run, b.Slope, b.Face.Width, b.Face.Height
}

var places = mat.Places{Art: "/order/pieces/0/art", Mat: "/order/pieces/0/mat", Frame: "/order/pieces/0/frame", Worked: "/pieces/0/mat"}

// TestExplain: every figure has a formula that works out to it, from terms
// that stand where they say and that are themselves figures or fields.
func TestExplain(t *testing.T) {
	eachRandom(t, 1500, func(t *testing.T, _ *rand.Rand, m mat.Mat, g mat.Given) {
		all := figures(m, m.Lay(g))
		for path, want := range all {
			w, ok := m.Explain(g, path, places)
			got, err := w.Formula.Evaluate()
			if !ok || err != nil || got != explain.Of(want) || w.Exact != got {
				t.Errorf("%s: %v %v %v, exact %v, want %v\n%s", path, ok, got, err, w.Exact, want, w.Text(measure.Format{}))
			}
			if w.Path != places.Worked+path || w.Key == "" || w.Source.Title == "" || w.Source.Status == "" {
				t.Errorf("%s: working %+v", path, w)
			}
			for _, term := range w.Formula.Terms() {
				if term.Path == w.Path {
					t.Errorf("%s is explained by itself", path)
				}
				if figure, ok := term.Path.After(places.Worked); ok && explain.Of(all[figure]) != term.Value {
					t.Errorf("%s: the term %s is %v, the figure %v", path, term.Path, term.Value, all[figure])
				}
			}
		}
	})
}

func TestExplainNothing(t *testing.T) {
	m, g := double("1/4", mat.ByLine, "0.055")
	for _, path := range []explain.Path{
		"", "/window", "/window/left", "/window/width/x", "/cut", "/cut/width", "/cover/height", "/visible/", "/seated/width",
		"/blank/top", "/covered/bottom", "/back/right", "/back/bottom", "/x/width", "/x/left", "window/width/height",
		"/bevel", "/bevel/width", "/bevel/face", "/bevel/face/left", "/bevel/run/x", "/bevel/face/width/x",
		"/under", "/under/0", "/under/-1/reveal", "/under/01/reveal", "/under/x/reveal", "/under/1/reveal", "/under/2/reveal",
		"/under/0/run", "/under/0/window", "/under/0/window/left", "/under/0/own/width", "/under/0/from_top/height", "/under/0/blank/top",
		"/under/0/bevel", "/under/0/bevel/x", "/under/0/reveal/x", "/under/0/cut/left", "/under/0/own/left/x",
	} {
		if w, ok := m.Explain(g, path, places); ok {
			t.Errorf("%q is explained: %+v", path, w)
		}
	}
}

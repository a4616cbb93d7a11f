package mat_test

import (
	"encoding/json"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// under is a board cut at 45 degrees, trimmed by 1/8 each side.
func under(reveal string, by mat.RevealBy, thickness string) mat.UnderMat {
	return mat.UnderMat{Thickness: in(thickness), Bevel: 45 * measure.Degree, By: by, Reveal: in(reveal), Trim: in("1/8")}
}

// double is the worked example with a board under it.
func double(reveal string, by mat.RevealBy, thickness string) (mat.Mat, mat.Given) {
	m, g := worked()
	m.Under = mat.UnderMats{under(reveal, by, thickness)}
	return m, g
}

// triple is two boards under the top one: 1/4 and 3/16, line to line.
func triple() mat.UnderMats {
	return mat.UnderMats{under("1/4", mat.ByLine, "0.055"), under("3/16", mat.ByLine, "0.055")}
}

// TestRun: thickness / tan bevel, each side. At 45 degrees it is the thickness;
// 60 degrees take it over the root of 3, 30 times that, 1.397 mm over or times
// 1.7320508 (plane geometry); a reverse bevel is as far the other way.
func TestRun(t *testing.T) {
	rows := []struct{ thickness, degrees, run, slope string }{
		{"0.055", "45", "0.055", "1.975656 mm"},
		{"0.110", "45", "0.110", "3.951313 mm"},
		{"0.055", "90", "0", "0.055"},
		{"0.055", "135", "-0.055", "1.975656 mm"},
		{"0.055", "60", "0.806558 mm", "1.613117 mm"},
		{"0.055", "30", "2.419675 mm", "2.794 mm"}, // twice the thickness
		{"0.055", "150", "-2.419675 mm", "2.794 mm"},
	}
	for _, row := range rows {
		angle, err := measure.ParseAngle(row.degrees, measure.Degrees)
		if err != nil {
			t.Fatal(err)
		}
		if got := mat.Run(in(row.thickness), angle); got != in(row.run) {
			t.Errorf("%s at %s: run %v, want %v", row.thickness, row.degrees, got, in(row.run))
		}
		m, g := worked()
		m.Thickness, m.Bevel = in(row.thickness), angle
		l := m.Lay(g)
		want := mat.Bevel{Run: in(row.run), Slope: in(row.slope), Face: size("11 1/8", "15").Grown(2 * in(row.run))}
		if l.Bevel != want {
			t.Errorf("%s at %s: %+v, want %+v", row.thickness, row.degrees, l.Bevel, want)
		}
		m.Bevel = 45 * measure.Degree
		if flat := m.Lay(g); flat.Window != l.Window || flat.Cut != l.Cut || flat.Blank != l.Blank {
			t.Errorf("%s at %s: the bevel changes what is cut", row.thickness, row.degrees)
		}
	}
}

// TestReveal: a reveal of 1/4 from line to line shows .195 of a board of .055
// cut at 45 degrees and .140 of one of .110; to see 1/4 takes .305 and .360
// (plane geometry). The window of the lowest board lies on the art, and each one
// above is larger by the reveal on each side.
func TestReveal(t *testing.T) {
	rows := []struct {
		reveal    string
		by        mat.RevealBy
		thickness string
		bevel     measure.Angle
		line      string
		seen      string
		top       measure.Size // window
	}{
		{"1/4", mat.ByLine, "0.055", 45, "1/4", "0.195", size("11 5/8", "15 1/2")},
		{"1/4", mat.ByLine, "0.110", 45, "1/4", "0.140", size("11 5/8", "15 1/2")},
		{"1/4", mat.BySeen, "0.055", 45, "0.305", "1/4", size("11.735", "15.61")},
		{"1/4", mat.BySeen, "0.110", 45, "0.360", "1/4", size("11.845", "15.72")},
		{"1/4", mat.ByLine, "0.055", 90, "1/4", "1/4", size("11 5/8", "15 1/2")}, // straight
		{"1/4", mat.BySeen, "0.055", 90, "1/4", "1/4", size("11 5/8", "15 1/2")},
		{"1/4", mat.ByLine, "0.055", 135, "1/4", "0.305", size("11 5/8", "15 1/2")}, // reverse
		{"1/4", mat.BySeen, "0.055", 135, "0.195", "1/4", size("11.515", "15.39")},
		{"0.055", mat.ByLine, "0.055", 45, "0.055", "0", size("11.235", "15.11")},
		{"0", mat.ByLine, "0.055", 45, "0", "-0.055", size("11 1/8", "15")},
	}
	for _, row := range rows {
		m, g := double(row.reveal, row.by, row.thickness)
		m.Under[0].Bevel = row.bevel * measure.Degree
		l := m.Lay(g)
		b := l.Under[0]
		if b.Reveal != in(row.line) || b.Seen != in(row.seen) || l.Window != row.top {
			t.Errorf("%s by %s, %s at %d: reveal %v, seen %v, window %+v", row.reveal, row.by, row.thickness, row.bevel, b.Reveal, b.Seen, l.Window)
		}
		if b.Window != size("11 1/8", "15") || l.Covered != size("1/8", "1/8") || l.Lowest(1) != b.Window {
			t.Errorf("%s by %s, %s at %d: %+v lies on the art and covers %+v", row.reveal, row.by, row.thickness, row.bevel, b.Window, l.Covered)
		}
	}
}

// TestReverseAbove: a reverse bevel of 135 degrees reaches in over the board
// below by its own thickness, and hides so much of a reveal of 1/4; a straight cut
// and one of 45 degrees do not (plane geometry, by hand).
func TestReverseAbove(t *testing.T) {
	rows := []struct {
		name               string
		top, first, second measure.Angle
		thickness          string // of the top board
		reveals            [2]string
		by                 mat.RevealBy
		seen, seen2        string
		line, line2        string
		from               int // the board that reaches farthest over the second
		over, overSecond   string
	}{
		{"45 above", 45, 45, 45, "0.055", [2]string{"1/4", "1/4"}, mat.ByLine, "0.195", "0.195", "1/4", "1/4", 0, "0", "0"},
		{"straight above", 90, 45, 45, "0.055", [2]string{"1/4", "1/4"}, mat.ByLine, "0.195", "0.195", "1/4", "1/4", 0, "0", "0"},
		{"reverse above", 135, 45, 45, "0.055", [2]string{"1/4", "1/4"}, mat.ByLine, "0.140", "0.195", "1/4", "1/4", 0, "0.055", "0"},
		{"reverse above, to be seen", 135, 45, 45, "0.055", [2]string{"1/4", "1/4"}, mat.BySeen, "1/4", "1/4", "0.360", "0.305", 0, "0.055", "0"},
		{"reverse in the middle", 45, 135, 45, "0.055", [2]string{"1/4", "1/4"}, mat.ByLine, "0.305", "0.140", "1/4", "1/4", 1, "0", "0.055"},
		{"all reverse", 135, 135, 135, "0.055", [2]string{"1/4", "1/4"}, mat.ByLine, "1/4", "1/4", "1/4", "1/4", 1, "0.055", "0.055"},
		{"past two lines", 135, 45, 45, "0.110", [2]string{"0.080", "1/4"}, mat.ByLine, "-0.085", "0.165", "0.080", "1/4", 0, "0.110", "0.030"},
		{"just to the second line", 135, 45, 45, "0.110", [2]string{"0.110", "1/4"}, mat.ByLine, "-0.055", "0.195", "0.110", "1/4", 0, "0.110", "0"},
	}
	for _, row := range rows {
		m, g := worked()
		m.Under = mat.UnderMats{under(row.reveals[0], row.by, "0.055"), under(row.reveals[1], row.by, "0.055")}
		m.Thickness, m.Bevel = in(row.thickness), row.top*measure.Degree
		m.Under[0].Bevel, m.Under[1].Bevel = row.first*measure.Degree, row.second*measure.Degree
		l := m.Lay(g)
		a, b := l.Under[0], l.Under[1]
		if a.Seen != in(row.seen) || b.Seen != in(row.seen2) || a.Reveal != in(row.line) || b.Reveal != in(row.line2) {
			t.Errorf("%s: %v and %v seen of %v and %v", row.name, a.Seen, b.Seen, a.Reveal, b.Reveal)
		}
		over, _ := l.Overhang(0)
		second, from := l.Overhang(1)
		if over != in(row.over) || second != in(row.overSecond) || from != row.from {
			t.Errorf("%s: reaches in %v, and %v by board %d", row.name, over, second, from)
		}
		checkUnder(t, m, l)
	}
}

// TestTwoBoards: what is cut of a double mat, by hand. The lower blank is trimmed
// by 1/8 each side, so a border of 3 from the top board's edge is one of 2 7/8
// from its own (common practice).
func TestTwoBoards(t *testing.T) {
	m, g := double("1/4", mat.ByLine, "0.055")
	m.Borders.By, m.Borders.Sides = mat.ByCut, sides("2 3/4", "2 3/4", "2 3/4", "3 1/4")
	l := m.Lay(g)
	want := mat.Board{
		Reveal: in("1/4"), Seen: in("0.195"), Window: size("11 1/8", "15"),
		Bevel:   mat.Bevel{Run: in("0.055"), Slope: in("1.975656 mm"), Face: size("11.235", "15.11")},
		Blank:   size("16 7/8", "21 1/4"),
		Own:     sides("2 7/8", "2 7/8", "2 7/8", "3 3/8"),
		FromTop: sides("3", "3", "3", "3 1/2"),
	}
	if l.Under[0] != want || l.Blank != size("17 1/8", "21 1/2") || l.Under[1] != (mat.Board{}) {
		t.Errorf("laid as\n%+v, want\n%+v\non a blank of %+v", l.Under, want, l.Blank)
	}
}

// TestThreeBoards: 1/4 and 3/16 from line to line, borders of 2 1/2 and 3 seen to
// the top window, worked by hand.
func TestThreeBoards(t *testing.T) {
	m, g := worked()
	m.Under = triple()
	m.Under[1].Trim = in("1/4")
	l := m.Lay(g)
	windows := [3]measure.Size{size("12", "15 7/8"), size("11 1/2", "15 3/8"), size("11 1/8", "15")}
	if got := [3]measure.Size{l.Window, l.Under[0].Window, l.Under[1].Window}; got != windows || l.Lowest(2) != windows[2] {
		t.Errorf("windows %+v, want %+v", got, windows)
	}
	blanks := [3]measure.Size{size("17 3/8", "21 3/4"), size("17 1/8", "21 1/2"), size("16 7/8", "21 1/4")}
	if got := [3]measure.Size{l.Blank, l.Under[0].Blank, l.Under[1].Blank}; got != blanks {
		t.Errorf("blanks %+v, want %+v", got, blanks)
	}
	own := [3]measure.Sides{
		sides("2 11/16", "2 11/16", "2 11/16", "3 3/16"),
		sides("2 13/16", "2 13/16", "2 13/16", "3 5/16"),
		sides("2 7/8", "2 7/8", "2 7/8", "3 3/8"),
	}
	if got := [3]measure.Sides{l.Cut, l.Under[0].Own, l.Under[1].Own}; got != own {
		t.Errorf("borders %+v, want %+v", got, own)
	}
	if l.Under[1].Seen != in("0.1325") { // 3/16 - .055
		t.Errorf("of the lowest board %v is seen", l.Under[1].Seen)
	}
}

// TestToLowest: borders that are given to the lowest window include the reveals,
// 7/16 together here: the top board shows so much less, and a bottom border is
// weighted by what is measured. The optical row is that of TestBorders, whose
// window is the lowest one here: 2.5 x 37.25 / 27.25 = 86.802752 mm, and 7/16 in
// = 11.1125 mm less.
func TestToLowest(t *testing.T) {
	rows := []struct {
		weight              mat.Weight
		left, right, bottom string
	}{
		{mat.Unweighted, "1 13/16", "1 15/16", "2 13/16"},
		{mat.Extra, "1 13/16", "1 15/16", "2 11/16"},
		{mat.Ratio, "1 13/16", "1 15/16", "3 1/16"},
		{mat.Optical, "2 1/16", "2 1/16", "75.690252 mm"},
	}
	for _, row := range rows {
		for _, by := range []mat.BordersBy{mat.ByVisible, mat.ByCut} {
			m, g := worked()
			m.Under = triple()
			m.Borders = mat.Borders{
				By: by, To: mat.ToLowest, Weight: row.weight, Extra: in("5/8"), Ratio: 40 * explain.Percent,
				Sides: sides("2 1/4", "2 3/8", "2 1/2", "3 1/4"),
			}
			if row.weight == mat.Optical {
				m.Borders.Left, m.Borders.Right = in("2 1/2"), in("2 1/2")
			}
			l := m.Lay(g)
			got, cover := l.Cut, measure.Sides{}
			if by == mat.ByVisible {
				got, cover = l.Visible, l.Cover
			}
			if want := sides(row.left, row.right, "2 1/16", row.bottom); got != want {
				t.Errorf("%s, %s: %+v, want %+v", by, row.weight, got, want)
			}
			if top := l.Under[1].FromTop.Minus(cover).Top; top != in("2 1/2") {
				t.Errorf("%s, %s: to the lowest window it is %v, want 2 1/2 in", by, row.weight, top)
			}
			// Without boards there is one window to measure to.
			m.Under = mat.UnderMats{}
			lowest := m.Lay(g)
			m.Borders.To = mat.ToTop
			if top := m.Lay(g); top != lowest {
				t.Errorf("%s, %s: a single board differs\n%+v and\n%+v", by, row.weight, top, lowest)
			}
		}
	}
}

// TestToInBoard: in a given board the window is centered, whatever the borders
// would be measured to.
func TestToInBoard(t *testing.T) {
	for _, weight := range mat.Extra.Choices() {
		m, g := worked()
		m.Under = triple()
		m.Borders = mat.Borders{By: mat.ByBoard, To: mat.ToTop, Weight: mat.Weight(weight), Board: size("18", "24"), Extra: in("1/2")}
		top := m.Lay(g)
		m.Borders.To = mat.ToLowest
		if lowest := m.Lay(g); lowest != top {
			t.Errorf("%s: %+v and %+v", weight, top, lowest)
		}
		if top.Window != size("12", "15 7/8") || top.Cut.Left != in("3") {
			t.Errorf("%s: window %+v, borders %+v", weight, top.Window, top.Cut)
		}
	}
}

// checkUnder requires what is so for the boards of every mat, to the nanometer.
// Each board is come to from the one above, and its edge by floating tangents.
func checkUnder(t *testing.T, m mat.Mat, l mat.Layout) {
	t.Helper()
	checkBevel(t, m.Thickness, m.Bevel, l.Window, l.Bevel)
	above, left, top := l.Window, l.Cut.Left, l.Cut.Top
	edge := min(l.Window.Width, l.Bevel.Face.Width) // what is open from the front
	for i, b := range l.Under[:m.Under.Count()] {
		u := m.Under[i]
		checkBevel(t, u.Thickness, u.Bevel, b.Window, b.Bevel)
		if above.Width-b.Window.Width != 2*b.Reveal || above.Height-b.Window.Height != 2*b.Reveal {
			t.Errorf("board %d: reveal %d between %+v and %+v", i, b.Reveal, above, b.Window)
		}
		left, top, above = left+b.Reveal, top+b.Reveal, b.Window
		if b.FromTop.Left != left || b.FromTop.Top != top {
			t.Errorf("board %d: from the top board's edge %+v, want %d and %d", i, b.FromTop, left, top)
		}
		if b.FromTop.Left+b.Window.Width+b.FromTop.Right != l.Blank.Width || b.FromTop.Top+b.Window.Height+b.FromTop.Bottom != l.Blank.Height {
			t.Errorf("board %d: borders from the top board's edge and window do not make its blank", i)
		}
		if b.Own.Left+b.Window.Width+b.Own.Right != b.Blank.Width || b.Own.Top+b.Window.Height+b.Own.Bottom != b.Blank.Height {
			t.Errorf("board %d: own borders and window do not make its blank", i)
		}
		if l.Blank.Width-b.Blank.Width != 2*u.Trim || b.FromTop.Right-b.Own.Right != u.Trim {
			t.Errorf("board %d: trimmed by %d", i, u.Trim)
		}
		given := b.Reveal
		if u.By == mat.BySeen {
			given = b.Seen
		}
		if given != u.Reveal || 2*b.Seen != edge-b.Bevel.Face.Width {
			t.Errorf("board %d: reveal %d by %s, of which %d is seen between %d and %d", i, u.Reveal, u.By, b.Seen, edge, b.Bevel.Face.Width)
		}
		edge = min(edge, b.Window.Width, b.Bevel.Face.Width)
	}
}

// checkBevel holds an edge against triangles in floats: exact to a nanometer for
// what boards there are.
func checkBevel(t *testing.T, thickness measure.Length, angle measure.Angle, window measure.Size, b mat.Bevel) {
	t.Helper()
	if window.Width+2*b.Run != b.Face.Width || window.Height+2*b.Run != b.Face.Height {
		t.Errorf("bevel %+v of window %+v", b, window)
	}
	if thickness > in("1") {
		return
	}
	radians := float64(angle) / 180e9 * math.Pi
	if run := float64(thickness) / math.Tan(radians); math.Abs(run-float64(b.Run)) > 1 {
		t.Errorf("%d at %v: run %d, want %.2f", thickness, angle, b.Run, run)
	}
	if slope := math.Hypot(float64(thickness), float64(b.Run)); math.Abs(slope-float64(b.Slope)) > 1.5 {
		t.Errorf("%d at %v: slope %d, want %.2f", thickness, angle, b.Slope, slope)
	}
}

// TestUnderPerturbation: what one nanometer more does to the boards.
func TestUnderPerturbation(t *testing.T) {
	eachRandom(t, 2000, func(t *testing.T, r *rand.Rand, m mat.Mat, g mat.Given) {
		if m.Under.IsZero() {
			return
		}
		m.Borders.Weight = mat.Unweighted
		n := m.Under.Count()
		before := m.Lay(g)
		i := r.IntN(n)
		more := m
		more.Under[i].Reveal++
		after := more.Lay(g)
		taken := measure.Length(1)
		if i+1 < n && m.Under[i+1].By == mat.BySeen {
			if over, k := before.Overhang(i + 1); over > 0 && k <= i { // the next board need reach out less far
				taken = 0
			}
		}
		if after.Window != before.Window.Grown(2*taken) || after.Lowest(n) != before.Lowest(n) || after.Covered != before.Covered {
			t.Errorf("1 nm more reveal: window %+v, lowest %+v", after.Window, after.Lowest(n))
		}
		if after.Under[i].Seen != before.Under[i].Seen+1 {
			t.Errorf("1 nm more reveal shows %d more", after.Under[i].Seen-before.Under[i].Seen)
		}
		grown := 2 * taken // the blank follows the window
		if m.Borders.By == mat.ByBoard || m.Borders.To == mat.ToLowest {
			grown = 0
		}
		if after.Blank != before.Blank.Grown(grown) {
			t.Errorf("1 nm more reveal: the blank goes from %+v to %+v", before.Blank, after.Blank)
		}
		more = m
		more.Under[i].Trim++
		after = more.Lay(g)
		if after.Under[i].Blank != before.Under[i].Blank.Grown(-2) || after.Under[i].Own != before.Under[i].Own.Minus(measure.AllSides(1)) {
			t.Errorf("1 nm more trim: %+v", after.Under[i])
		}
		after.Under[i].Blank, after.Under[i].Own = before.Under[i].Blank, before.Under[i].Own
		if after != before {
			t.Error("1 nm more trim changes more than the board")
		}
	})
}

// TestUnderMats: the boards are those before the first that is none.
func TestUnderMats(t *testing.T) {
	one := under("1/4", mat.ByLine, "0.055")
	rows := []struct {
		under mat.UnderMats
		count int
		zero  bool
		json  string
	}{
		{mat.UnderMats{}, 0, true, "[]"},
		{mat.UnderMats{{Name: "x"}}, 1, false, ""},
		{mat.UnderMats{one, one}, 2, false, ""},
		{mat.UnderMats{{}, one}, 0, false, "[]"},
	}
	for _, row := range rows {
		text, err := json.Marshal(row.under)
		if row.under.Count() != row.count || len(row.under.All()) != row.count || row.under.IsZero() != row.zero || err != nil {
			t.Errorf("%+v: %d boards, zero %v, %v", row.under, row.under.Count(), row.under.IsZero(), err)
		}
		var list []map[string]any
		if err := json.Unmarshal(text, &list); err != nil || len(list) != row.count || row.json != "" && string(text) != row.json {
			t.Errorf("%d boards are written as %s", row.count, text)
		}
	}
}

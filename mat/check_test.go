package mat_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// check lists the problems of m as "path code".
func check(m mat.Mat, g mat.Given) []string {
	var c explain.Checker
	m.Check(&c, "/mat", g, "/art")
	var list []string
	for _, p := range c.Problems() {
		list = append(list, string(p.Path)+" "+string(p.Code))
	}
	return list
}

func TestCheck(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*mat.Mat)
		want   []string
	}{
		{"as it is", func(*mat.Mat) {}, nil},
		{"name too long", func(m *mat.Mat) { m.Name = strings.Repeat("x", explain.MaxText+1) }, []string{"/mat/name text_too_long"}},
		{"name with a control", func(m *mat.Mat) { m.Name = "a\tb" }, []string{"/mat/name text_control"}},
		{"no thickness", func(m *mat.Mat) { m.Thickness = 0 }, []string{"/mat/thickness missing"}},
		{"thin as can be", func(m *mat.Mat) { m.Thickness = 1 }, nil},
		{"too thick", func(m *mat.Mat) { m.Thickness = most + 1 }, []string{"/mat/thickness out_of_range"}},
		{"no bevel", func(m *mat.Mat) { m.Bevel = 0 }, []string{"/mat/bevel out_of_range"}},
		{"flattest bevel", func(m *mat.Mat) { m.Bevel = mat.LeastBevel }, nil},
		{"bevel too flat", func(m *mat.Mat) { m.Bevel = mat.LeastBevel - 1 }, []string{"/mat/bevel out_of_range"}},
		{"flattest reverse bevel", func(m *mat.Mat) { m.Bevel = mat.MostBevel }, nil},
		{"reverse bevel too flat", func(m *mat.Mat) { m.Bevel = mat.MostBevel + 1 }, []string{"/mat/bevel out_of_range"}},
		{"to no window", func(m *mat.Mat) { m.Borders.To = "" }, []string{"/mat/borders/to not_a_choice"}},
		{"to some window", func(m *mat.Mat) { m.Borders.To = "art" }, []string{"/mat/borders/to not_a_choice"}},
		{"to the lowest window", func(m *mat.Mat) { m.Borders.To = mat.ToLowest }, nil},
		{"case of the window", func(m *mat.Mat) { m.Borders.To = "Top_window" }, []string{"/mat/borders/to wrong_case"}},
		{"no way to size", func(m *mat.Mat) { m.Window.By = "" }, []string{"/mat/window/by not_a_choice"}},
		{"case", func(m *mat.Mat) { m.Window.By = "Gap" }, []string{"/mat/window/by wrong_case"}},
		{"negative overlap", func(m *mat.Mat) { m.Window.EachSide = -1 }, []string{"/mat/window/each_side out_of_range"}},
		{"no overlap", func(m *mat.Mat) { m.Window.EachSide = 0 }, nil},
		{"widest overlap", func(m *mat.Mat) { m.Window.EachSide = in("11 3/8")/2 - 1 }, nil},
		{"overlap of all", func(m *mat.Mat) { m.Window.EachSide = in("11 3/8") / 2 }, []string{"/mat/window/each_side out_of_range"}},
		{"gap of that", func(m *mat.Mat) { m.Window.By = mat.ByGap; m.Window.EachSide = in("11 3/8") / 2 }, nil},
		{"gap too wide", func(m *mat.Mat) { m.Window.By = mat.ByGap; m.Window.EachSide = most + 1 }, []string{"/mat/window/each_side out_of_range"}},
		{"unused window", func(m *mat.Mat) { m.Window.Width = 1; m.Window.Height = most }, nil},
		{"negative unused window", func(m *mat.Mat) { m.Window.Height = -1 }, []string{"/mat/window/height out_of_range"}},
		{"size without a window", func(m *mat.Mat) { m.Window.By = mat.BySize },
			[]string{"/mat/window/height missing", "/mat/window/width missing"}},
		{"size of a nanometer", func(m *mat.Mat) { m.Window.By = mat.BySize; m.Window.Size = measure.Size{Width: 1, Height: 1} }, nil},
		{"window too wide", func(m *mat.Mat) { m.Window.By = mat.BySize; m.Window.Size = measure.Size{Width: most + 1, Height: 1} },
			[]string{"/mat/window/width out_of_range"}},
		{"no way to border", func(m *mat.Mat) { m.Borders.By = "seen" }, []string{"/mat/borders/by not_a_choice"}},
		{"negative borders", func(m *mat.Mat) { m.Borders.Sides = measure.AllSides(-1) }, []string{
			"/mat/borders/bottom out_of_range", "/mat/borders/left out_of_range",
			"/mat/borders/right out_of_range", "/mat/borders/top out_of_range",
		}},
		{"no borders", func(m *mat.Mat) { m.Borders.Sides = measure.Sides{} }, nil},
		{"border too wide", func(m *mat.Mat) { m.Borders.Right = most + 1 }, []string{"/mat/borders/right out_of_range"}},
		{"no weight", func(m *mat.Mat) { m.Borders.Weight = "" }, []string{"/mat/borders/weight not_a_choice"}},
		{"negative extra", func(m *mat.Mat) { m.Borders.Extra = -1 }, []string{"/mat/borders/extra out_of_range"}},
		{"extra too wide", func(m *mat.Mat) { m.Borders.Extra = most + 1 }, []string{"/mat/borders/extra out_of_range"}},
		{"negative ratio", func(m *mat.Mat) { m.Borders.Ratio = -1 }, []string{"/mat/borders/ratio out_of_range"}},
		{"largest ratio", func(m *mat.Mat) { m.Borders.Ratio = mat.MaxRatio }, nil},
		{"ratio too large", func(m *mat.Mat) { m.Borders.Ratio = mat.MaxRatio + 1 }, []string{"/mat/borders/ratio out_of_range"}},
		{"negative unused board", func(m *mat.Mat) { m.Borders.Board.Width = -1 }, []string{"/mat/borders/board/width out_of_range"}},
		{"board not given", func(m *mat.Mat) { m.Borders.By = mat.ByBoard },
			[]string{"/mat/borders/board/height missing", "/mat/borders/board/width missing"}},
		{"half a board", func(m *mat.Mat) { m.Borders.By = mat.ByBoard; m.Borders.Board.Width = 1 }, []string{"/mat/borders/board/height missing"}},
		{"board too long", func(m *mat.Mat) {
			m.Borders.By = mat.ByBoard
			m.Borders.Board = measure.Size{Width: 1, Height: most + 1}
		},
			[]string{"/mat/borders/board/height out_of_range"}},
	}
	for _, row := range rows {
		m, g := worked()
		row.change(&m)
		if got := check(m, g); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestCheckOverlapAsksForArt: without a size of the art nobody can say what
// overlap is too wide.
func TestCheckOverlapAsksForArt(t *testing.T) {
	m, g := worked()
	m.Window.EachSide = in("8")
	for _, path := range []explain.Path{"/art/width", "/art/height", "/art", "/mat/window/by"} {
		var c explain.Checker
		c.Add(explain.Problem{Code: explain.Missing, Path: path})
		m.Check(&c, "/mat", g, "/art")
		if got := len(c.Problems()); got != 1 {
			t.Errorf("with a problem at %s there are %d", path, got)
		}
	}
	if got := check(m, g); len(got) != 1 {
		t.Errorf("an overlap of 8 in on art 11 3/8 wide: %q", got)
	}
}

// TestUnused: a field that does not count in the way chosen, and says
// something the shop did not write itself.
func TestUnused(t *testing.T) {
	usual, _ := worked()
	all, _ := worked()
	all.Window.Size = size("8", "10")
	all.Window.EachSide = in("3/16")
	all.Borders = mat.Borders{By: all.Borders.By, To: all.Borders.To, Weight: all.Borders.Weight, Sides: sides("1", "1 1/4", "1 1/2", "2"),
		Extra: in("1/2"), Ratio: explain.Percent, Board: size("16", "20")}
	const board, size = "/borders/board/width /borders/board/height", "/window/width /window/height"
	const three = "/borders/left /borders/right /borders/top"
	rows := []struct {
		window mat.WindowBy
		by     mat.BordersBy
		weight mat.Weight
		want   string
	}{
		{mat.ByOverlap, mat.ByVisible, mat.Unweighted, size + " /borders/extra /borders/ratio " + board},
		{mat.ByGap, mat.ByCut, mat.Extra, size + " /borders/bottom /borders/ratio " + board},
		{mat.BySize, mat.ByCut, mat.Ratio, "/window/each_side /borders/bottom /borders/extra " + board},
		{mat.ByOverlap, mat.ByVisible, mat.Optical, size + " /borders/bottom /borders/extra /borders/ratio " + board},
		{mat.BySize, mat.ByBoard, mat.Unweighted, "/window/each_side " + three + " /borders/bottom /borders/extra /borders/ratio"},
		{mat.BySize, mat.ByBoard, mat.Extra, "/window/each_side " + three + " /borders/bottom /borders/ratio"},
	}
	for _, row := range rows {
		m := all
		m.Window.By, m.Borders.By, m.Borders.Weight = row.window, row.by, row.weight
		var got []string
		for _, p := range m.Unused(usual) {
			got = append(got, string(p))
		}
		if strings.Join(got, " ") != row.want {
			t.Errorf("%s, %s, %s: %q, want %q", row.window, row.by, row.weight, got, row.want)
		}
		// What the shop writes itself is no decision, and neither is nothing.
		m.Window.EachSide, m.Window.Size = usual.Window.EachSide, measure.Size{}
		m.Borders.Sides, m.Borders.Extra, m.Borders.Ratio, m.Borders.Board = usual.Borders.Sides, 0, 0, measure.Size{}
		if unused := m.Unused(usual); len(unused) > 0 {
			t.Errorf("%s, %s, %s: %q is the shop's own", row.window, row.by, row.weight, unused)
		}
	}
}

// TestCheckUnder: each field of the boards under the top one, of the lower one of
// two where nothing else is said.
func TestCheckUnder(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*mat.UnderMats)
		want   []string
	}{
		{"as they are", func(*mat.UnderMats) {}, nil},
		{"one", func(u *mat.UnderMats) { u[1] = mat.UnderMat{} }, nil},
		{"none", func(u *mat.UnderMats) { *u = mat.UnderMats{} }, nil},
		{"a gap", func(u *mat.UnderMats) { u[0] = mat.UnderMat{} }, []string{"/mat/under/0 missing"}},
		{"a gap, and a board that is not looked at", func(u *mat.UnderMats) { *u = mat.UnderMats{{}, {Reveal: -1}} }, []string{"/mat/under/0 missing"}},
		{"name too long", func(u *mat.UnderMats) { u[1].Name = strings.Repeat("x", explain.MaxText+1) }, []string{"/mat/under/1/name text_too_long"}},
		{"name with a control", func(u *mat.UnderMats) { u[0].Name = "a\nb" }, []string{"/mat/under/0/name text_control"}},
		{"no thickness", func(u *mat.UnderMats) { u[1].Thickness = 0 }, []string{"/mat/under/1/thickness missing"}},
		{"too thick", func(u *mat.UnderMats) { u[1].Thickness = most + 1 }, []string{"/mat/under/1/thickness out_of_range"}},
		{"thickness less than nothing", func(u *mat.UnderMats) { u[1].Thickness = -1 }, []string{"/mat/under/1/thickness out_of_range"}},
		{"no bevel", func(u *mat.UnderMats) { u[1].Bevel = 0 }, []string{"/mat/under/1/bevel out_of_range"}},
		{"flattest bevel", func(u *mat.UnderMats) { u[1].Bevel = mat.LeastBevel }, nil},
		{"bevel too flat", func(u *mat.UnderMats) { u[1].Bevel = mat.LeastBevel - 1 }, []string{"/mat/under/1/bevel out_of_range"}},
		{"flattest reverse bevel", func(u *mat.UnderMats) { u[1].Bevel = mat.MostBevel }, nil},
		{"reverse bevel too flat", func(u *mat.UnderMats) { u[1].Bevel = mat.MostBevel + 1 }, []string{"/mat/under/1/bevel out_of_range"}},
		{"no way to reveal", func(u *mat.UnderMats) { u[1].By = "" }, []string{"/mat/under/1/by not_a_choice"}},
		{"another way", func(u *mat.UnderMats) { u[1].By = "strip" }, []string{"/mat/under/1/by not_a_choice"}},
		{"case", func(u *mat.UnderMats) { u[1].By = "Line" }, []string{"/mat/under/1/by wrong_case"}},
		{"no reveal", func(u *mat.UnderMats) { u[1].Reveal = 0 }, nil},
		{"negative reveal", func(u *mat.UnderMats) { u[1].Reveal = -1 }, []string{"/mat/under/1/reveal out_of_range"}},
		{"widest reveal", func(u *mat.UnderMats) { u[1].Reveal = most }, nil},
		{"reveal too wide", func(u *mat.UnderMats) { u[1].Reveal = most + 1 }, []string{"/mat/under/1/reveal out_of_range"}},
		{"no trim", func(u *mat.UnderMats) { u[1].Trim = 0 }, nil},
		{"negative trim", func(u *mat.UnderMats) { u[1].Trim = -1 }, []string{"/mat/under/1/trim out_of_range"}},
		{"widest trim", func(u *mat.UnderMats) { u[1].Trim = most }, nil},
		{"trim too wide", func(u *mat.UnderMats) { u[1].Trim = most + 1 }, []string{"/mat/under/1/trim out_of_range"}},
		{"all of it", func(u *mat.UnderMats) { *u = mat.UnderMats{{Reveal: -1, Trim: -1}} }, []string{
			"/mat/under/0/bevel out_of_range", "/mat/under/0/by not_a_choice", "/mat/under/0/reveal out_of_range",
			"/mat/under/0/thickness missing", "/mat/under/0/trim out_of_range",
		}},
		{"none to be seen of a reverse bevel", func(u *mat.UnderMats) { u[1].By, u[1].Bevel, u[1].Reveal = mat.BySeen, 135*measure.Degree, 0 }, nil},
	}
	for _, row := range rows {
		m, g := worked()
		m.Under = triple()
		row.change(&m.Under)
		if got := check(m, g); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestCheckTopWindow: a reverse bevel of 3 in reaches in 3 in at 135 degrees, so
// of a window of 6 on the art none is left above it, and a nanometer more of the
// strip leaves two.
func TestCheckTopWindow(t *testing.T) {
	for reveal, want := range map[measure.Length][]string{0: {"/mat/under/0/reveal out_of_range"}, 1: nil} {
		m, g := double("0", mat.BySeen, "3")
		m.Under[0].Bevel, m.Under[0].Reveal = 135*measure.Degree, reveal
		m.Window = mat.Window{By: mat.BySize, Size: size("6", "8")}
		if got := check(m, g); !slices.Equal(got, want) {
			t.Errorf("a strip of %d: %q, want %q", reveal, got, want)
		}
		if got := m.Lay(g).Window; got != (measure.Size{Width: 2 * reveal, Height: in("2") + 2*reveal}) {
			t.Errorf("a strip of %d: window %+v", reveal, got)
		}
		var c explain.Checker // without the art, or the window, nobody can say
		c.Add(explain.Problem{Code: explain.Missing, Path: "/art/width"})
		if m.Check(&c, "/mat", g, "/art"); len(c.Problems()) != 1 {
			t.Errorf("a strip of %d without art: %v", reveal, c.Problems())
		}
	}
}

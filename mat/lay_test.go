package mat_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// in reads inches as a tape says them: in("11 3/8"). Other units are marked.
func in(s string) measure.Length {
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

func size(width, height string) measure.Size {
	return measure.Size{Width: in(width), Height: in(height)}
}

func sides(left, right, top, bottom string) measure.Sides {
	return measure.Sides{Left: in(left), Right: in(right), Top: in(top), Bottom: in(bottom)}
}

// given is square art under one lip.
func given(art measure.Size, lip, allowance string) mat.Given {
	return mat.Given{Least: art, Greatest: art, Lip: measure.AllSides(in(lip)), Allowance: in(allowance), Overlap: in("1/8")}
}

// worked is the example that most tests start from: art 11 3/8 x 15 1/4 under
// an overlap of 1/8 each side, borders of 2 1/2 and 3 at the bottom, lip 1/4,
// allowance 1/8.
func worked() (mat.Mat, mat.Given) {
	m := mat.Mat{
		Thickness: in("0.055"),
		Bevel:     45 * measure.Degree,
		Window:    mat.Window{By: mat.ByOverlap, EachSide: in("1/8")},
		Borders:   mat.Borders{By: mat.ByVisible, To: mat.ToTop, Sides: sides("2 1/2", "2 1/2", "2 1/2", "3"), Weight: mat.Unweighted},
	}
	return m, given(size("11 3/8", "15 1/4"), "1/4", "1/8")
}

// TestWorkedExample: the numbers were worked by hand, by common practice: the
// mat hides 1/8 of the art each side, half of 1/4 + 1/4 - 1/8 hides under the
// lip, and a mat that drops shows 1/16 more at the top. A bevel of 45 degrees
// runs in as far as the board is thick, and is .055 x 1.41421356 = 1.975656 mm
// wide (plane geometry).
func TestWorkedExample(t *testing.T) {
	m, g := worked()
	want := mat.Layout{
		Window:  size("11 1/8", "15"),
		Bevel:   mat.Bevel{Run: in("0.055"), Slope: in("1.975656 mm"), Face: size("11.235", "15.11")},
		Covered: size("1/8", "1/8"),
		Cover:   measure.AllSides(in("3/16")),
		Cut:     sides("2 11/16", "2 11/16", "2 11/16", "3 3/16"),
		Visible: sides("2 1/2", "2 1/2", "2 1/2", "3"),
		Seated:  sides("2 1/2", "2 1/2", "2 9/16", "2 15/16"),
		Blank:   size("16 1/2", "20 7/8"),
		Back:    mat.Corner{Left: in("2 11/16"), Top: in("2 11/16")},
	}
	if got := m.Lay(g); got != want {
		t.Errorf("laid as\n%+v, want\n%+v", got, want)
	}
}

// TestWindow: the mat covers, or stands clear of, both edges; an overlap must
// hold where the art is smallest, a gap where it is largest (common practice).
func TestWindow(t *testing.T) {
	m, g := worked()
	g.Greatest = g.Least.Grown(in("1/16"))
	rows := []struct {
		window           mat.Window
		size, coverWidth string // the width of the window, and of the art it covers
	}{
		{mat.Window{By: mat.ByOverlap, EachSide: in("1/8")}, "11 1/8", "1/8"},
		{mat.Window{By: mat.ByOverlap}, "11 3/8", "0"},
		{mat.Window{By: mat.ByGap, EachSide: in("1/4")}, "11 15/16", "-9/32"}, // 11 7/16 + 1/2
		{mat.Window{By: mat.ByGap}, "11 7/16", "-1/32"},
		{mat.Window{By: mat.BySize, Size: size("11", "14 3/4"), EachSide: in("9")}, "11", "3/16"},
	}
	for _, row := range rows {
		m.Window = row.window
		l := m.Lay(g)
		if l.Window.Width != in(row.size) || l.Covered.Width != in(row.coverWidth) {
			t.Errorf("%+v: window %v covers %v, want %v and %v", row.window, l.Window.Width, l.Covered.Width, in(row.size), in(row.coverWidth))
		}
		if l.Window.Height-l.Window.Width != in("3 7/8") && row.window.By != mat.BySize {
			t.Errorf("%+v: the window is no longer 3 7/8 higher than wide: %+v", row.window, l.Window)
		}
	}
}

// TestBorders goes through every way to size borders and to weight the bottom
// one, around the window 11 1/8 x 15 under a cover of 3/16. Ratio and extra are
// common practice; the optical rows are held against the construction in
// optical_test.go and were worked here by hand: the visible board is 16 1/8
// wide, 2 1/2 x (3 x 16 1/8 - 11 1/8) / (16 1/8 + 11 1/8) = 2.5 x 37.25 / 27.25;
// of the board of 16 x 20, 15 5/8 x 19 5/8 is seen, and of its top border
// (15 5/8 + 11 1/8) x 4 5/8 / (4 x 15 5/8) = 1.9795, under the lip 3/16 more.
func TestBorders(t *testing.T) {
	rows := []struct {
		by          mat.BordersBy
		weight      mat.Weight
		top, bottom string // as the way counts them: seen or cut
		left, right string
	}{
		{mat.ByVisible, mat.Unweighted, "2 1/2", "3 1/4", "2 1/4", "2 3/8"},
		{mat.ByVisible, mat.Extra, "2 1/2", "3 1/8", "2 1/4", "2 3/8"},
		{mat.ByVisible, mat.Ratio, "2 1/2", "3 1/2", "2 1/4", "2 3/8"},
		{mat.ByVisible, mat.Optical, "2 1/2", "86.802752 mm", "2 1/2", "2 1/2"},
		{mat.ByCut, mat.Unweighted, "2 1/2", "3 1/4", "2 1/4", "2 3/8"},
		{mat.ByCut, mat.Extra, "2 1/2", "3 1/8", "2 1/4", "2 3/8"},
		{mat.ByCut, mat.Ratio, "2 1/2", "3 1/2", "2 1/4", "2 3/8"},
		{mat.ByCut, mat.Optical, "2 1/2", "86.802752 mm", "2 1/2", "2 1/2"},
		{mat.ByBoard, mat.Unweighted, "2 1/2", "2 1/2", "2 7/16", "2 7/16"},
		{mat.ByBoard, mat.Extra, "2 3/16", "2 13/16", "2 7/16", "2 7/16"},
		{mat.ByBoard, mat.Ratio, "53.710417 mm", "73.289583 mm", "2 7/16", "2 7/16"}, // 4 5/8 x 100/240 and 3/16
		{mat.ByBoard, mat.Optical, "55.0418 mm", "71.9582 mm", "2 7/16", "2 7/16"},
	}
	for _, row := range rows {
		m, g := worked()
		m.Borders = mat.Borders{
			By: row.by, To: mat.ToTop, Weight: row.weight, Sides: sides(row.left, row.right, row.top, "3 1/4"),
			Extra: in("5/8"), Ratio: 40 * explain.Percent, Board: size("16", "20"),
		}
		l := m.Lay(g)
		want := sides(row.left, row.right, row.top, row.bottom)
		got, other := l.Cut, l.Visible.Plus(l.Cover)
		if row.by == mat.ByVisible {
			got, other = l.Visible, l.Cut.Minus(l.Cover)
		}
		if got != want || other != got {
			t.Errorf("%s, %s: %+v and again %+v, want %+v", row.by, row.weight, got, other, want)
		}
	}
}

// TestPrintedBorders are borders that were printed, or told by people who cut
// them; each says whose.
func TestPrintedBorders(t *testing.T) {
	mm := func(w, h string) measure.Size { return size(w+" mm", h+" mm") }
	rows := []struct {
		name         string
		window       mat.Window
		art, board   measure.Size
		side, height string // borders left and right, above and below
	}{
		{"a trade page prints 2 1/8 and 1 5/8 for a 14 x 11 glass and a 9 3/4 x 7 3/4 window",
			mat.Window{By: mat.BySize, Size: size("9 3/4", "7 3/4")}, size("10", "8"), size("14", "11"), "2 1/8", "1 5/8"},
		{"an overlap said each side (common practice)",
			mat.Window{By: mat.ByOverlap, EachSide: in("1/4")}, size("11", "17"), size("16", "20"), "2 3/4", "1 3/4"},
		{"the same quarter in total",
			mat.Window{By: mat.ByOverlap, EachSide: in("1/8")}, size("11", "17"), size("16", "20"), "2 5/8", "1 5/8"},
		{"width first, and thirty-seconds kept (common practice)",
			mat.Window{By: mat.BySize, Size: size("8", "9 11/16")}, size("8 1/4", "10"), size("16", "20"), "4", "5 5/32"},
		{"A3 in a 20 x 16 in mount: millimeters and inches in one mat",
			mat.Window{By: mat.BySize, Size: mm("414", "291")}, mm("420", "297"), size("20", "16"), "47 mm", "57.7 mm"},
		{"the overlap of 2 mm a side of one printed example, around A4 in 30 x 40 cm",
			mat.Window{By: mat.ByOverlap, EachSide: in("2 mm")}, mm("210", "297"), mm("300", "400"), "47 mm", "53.5 mm"},
	}
	for _, row := range rows {
		m := mat.Mat{Window: row.window, Borders: mat.Borders{By: mat.ByBoard, To: mat.ToTop, Board: row.board, Weight: mat.Unweighted}}
		l := m.Lay(given(row.art, "1/4", "1/8"))
		if want := sides(row.side, row.side, row.height, row.height); l.Cut != want {
			t.Errorf("%s: %+v, want %+v", row.name, l.Cut, want)
		}
		if l.Blank != row.board {
			t.Errorf("%s: the blank is %+v", row.name, l.Blank)
		}
	}
}

// TestCover: both lips hide lip + lip - allowance between them; the odd
// nanometer goes right and down.
func TestCover(t *testing.T) {
	rows := []struct {
		lip       measure.Sides
		allowance measure.Length
		want      measure.Sides
	}{
		{measure.AllSides(8), 4, measure.AllSides(6)},
		{measure.AllSides(8), 3, measure.Sides{Left: 6, Right: 7, Top: 6, Bottom: 7}},
		{measure.Sides{Left: 8, Right: 4, Top: 9, Bottom: 2}, 2, measure.Sides{Left: 5, Right: 5, Top: 4, Bottom: 5}},
		{measure.AllSides(1), 5, measure.Sides{Left: -2, Right: -1, Top: -2, Bottom: -1}}, // the mat's edge shows
		{measure.Sides{}, 0, measure.Sides{}},
	}
	for _, row := range rows {
		if got := mat.Cover(row.lip, row.allowance); got != row.want {
			t.Errorf("lips %+v, allowance %d: %+v, want %+v", row.lip, row.allowance, got, row.want)
		}
	}
}

// TestBack: the back is the front mirrored, so a window 5 from the left of a
// board 40 wide, and 4 wide itself, is drawn at 31; turned again it is back.
func TestBack(t *testing.T) {
	if got := mat.FromBack(in("40"), in("5"), in("4")); got != in("31") {
		t.Errorf("on the back at %v, want 31 in", got)
	}
	if got := mat.FromBack(in("40"), in("31"), in("4")); got != in("5") {
		t.Errorf("turned again at %v, want 5 in", got)
	}
	m, g := worked()
	m.Borders.Sides = sides("2", "3", "2 1/2", "4")
	l := m.Lay(g)
	if l.Back.Left != l.Cut.Right || l.Back.Left != mat.FromBack(l.Blank.Width, l.Cut.Left, l.Window.Width) || l.Back.Top != l.Cut.Top {
		t.Errorf("on the back at %+v with borders %+v", l.Back, l.Cut)
	}
}

// TestBottomExtra: three pairs of borders that were all sold as "20 % more".
func TestBottomExtra(t *testing.T) {
	rows := []struct{ top, bottom, want string }{
		{"50 mm", "65 mm", "30 %"},
		{"65 mm", "75 mm", "15.3846 %"},
		{"75 mm", "90 mm", "20 %"},
		{"3", "3", "0 %"},
		{"4", "3", "-25 %"},
		{"0", "3", "0 %"},
	}
	for _, row := range rows {
		if got := mat.BottomExtra(in(row.top), in(row.bottom)).String(); got != row.want {
			t.Errorf("%s over %s is %s more, want %s", row.bottom, row.top, got, row.want)
		}
	}
}

func TestZeroMat(t *testing.T) {
	var m mat.Mat
	if !m.IsZero() {
		t.Error("the zero mat is one")
	}
	if l := m.Lay(mat.Given{}); l != (mat.Layout{}) {
		t.Errorf("the zero mat is laid as %+v", l)
	}
	if m, _ := worked(); m.IsZero() {
		t.Error("a mat is none")
	}
}

package mat_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// TestUnderNotes: each code comes exactly where it must, at the nanometer of its
// limit and one to either side. The top board's borders are cut 2 11/16 wide.
func TestUnderNotes(t *testing.T) {
	const (
		no    = "warning mat.no_strip /under/"
		hides = "warning mat.reverse_hides /under/"
		short = "warning mat.short_under /under/"
	)
	rows := []struct {
		name   string
		change func(*mat.Mat)
		want   string
	}{
		{"as it is", func(*mat.Mat) {}, ""},
		{"a strip of a nanometer", func(m *mat.Mat) { m.Under[0].Reveal = in("0.055") + 1 }, ""},
		{"a reveal as wide as the bevel", func(m *mat.Mat) { m.Under[0].Reveal = in("0.055") }, no + "0/seen"},
		{"no reveal", func(m *mat.Mat) { m.Under[1].Reveal = 0 }, no + "1/seen"},
		{"no reveal of a straight cut", func(m *mat.Mat) { m.Under[0].Reveal, m.Under[0].Bevel = 0, 90*measure.Degree }, no + "0/seen"},
		{"a nanometer of a straight cut", func(m *mat.Mat) { m.Under[0].Reveal, m.Under[0].Bevel = 1, 90*measure.Degree }, ""},
		{"a reverse bevel without a reveal", func(m *mat.Mat) { m.Under[0].Reveal, m.Under[0].Bevel = 0, 135*measure.Degree }, ""},
		{"none to be seen", func(m *mat.Mat) { m.Under[0].By, m.Under[0].Reveal = mat.BySeen, 0 }, no + "0/seen"},
		{"a nanometer to be seen", func(m *mat.Mat) { m.Under[0].By, m.Under[0].Reveal = mat.BySeen, 1 }, ""},
		{"both", func(m *mat.Mat) { m.Under[0].Reveal, m.Under[1].Reveal = 0, 0 }, no + "0/seen; " + no + "1/seen"},
		{"a reverse bevel above and what is left", func(m *mat.Mat) { m.Bevel, m.Under[0].Reveal = 135*measure.Degree, in("0.110")+1 }, ""},
		{"a reverse bevel above and nothing left", func(m *mat.Mat) { m.Bevel, m.Under[0].Reveal = 135*measure.Degree, in("0.110") }, hides + "0/seen"},
		{"trimmed to a nanometer of the window above", func(m *mat.Mat) { m.Under[0].Trim = in("2 11/16") - 1 }, ""},
		{"trimmed to the window above", func(m *mat.Mat) { m.Under[0].Trim = in("2 11/16") }, short + "0/own/left"},
		{"the third board has the reveal more", func(m *mat.Mat) { m.Under[1].Trim = in("2 15/16") - 1 }, ""},
		{"and not more", func(m *mat.Mat) { m.Under[1].Trim = in("2 15/16") }, short + "1/own/left"},
		{"a narrow border at the right", func(m *mat.Mat) { m.Borders.Right = in("1"); m.Under[0].Trim = in("1 3/16") }, short + "0/own/right"},
		{"a board that is not under another", func(m *mat.Mat) { m.Under = mat.UnderMats{{}, {Trim: in("9")}} }, ""},
	}
	for _, row := range rows {
		m, g := worked()
		m.Under = triple()
		row.change(&m)
		if got := codes(notes(t, m, g)); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestLowestCovers: the board that lies on the art is the lowest one, and its
// window is what the notes speak of.
func TestLowestCovers(t *testing.T) {
	m, g := worked()
	m.Under = triple()
	m.Window = mat.Window{By: mat.BySize, Size: size("11 3/8", "15")}
	ns := notes(t, m, g)
	if len(ns) != 1 || ns[0].Code != mat.FallsThrough {
		t.Fatalf("notes %+v", ns)
	}
	want := explain.NewTerm("window", in("11 3/8"), places.Worked+"/under/1/window/width")
	if ns[0].Values[0] != want {
		t.Errorf("speaks of %+v, want %+v", ns[0].Values[0], want)
	}
}

// TestUnderNoteText reads the notes the way a framer does.
func TestUnderNoteText(t *testing.T) {
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	m, g := double("1/16", mat.ByLine, "1/16")
	m.Under[0].Trim = in("2 11/16")
	ns := notes(t, m, g)
	want := []string{
		"The reveal is 1/16 in from line to line and the bevel of the lower board 1/16 in wide: no strip of it shows.",
		"The lower board is trimmed by 2 11/16 in each side and the border above it is 2 11/16 in: its edge shows in the window.",
	}
	changes := []string{"reveal at least 1/8 in", "trim at most 5/8 in"} // of 43/64, on its own side
	if len(ns) != len(want) {
		t.Fatalf("notes %+v", ns)
	}
	for i, n := range ns {
		if got := n.Text(f); got != want[i] {
			t.Errorf("reads %q, want %q", got, want[i])
		}
		if len(n.Changes) != 1 || n.Changes[0].Text(f) != changes[i] {
			t.Errorf("changes %+v, want %q", n.Changes, changes[i])
		}
	}
}

// TestReverseNoteText reads the note on a reverse bevel, and does what it says.
func TestReverseNoteText(t *testing.T) {
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	for _, by := range mat.ByLine.Choices() {
		m, g := double("0", mat.RevealBy(by), "1/16")
		m.Thickness, m.Bevel = in("1/8"), 135*measure.Degree
		ns := notes(t, m, g)
		if len(ns) != 1 || ns[0].Code != mat.ReverseHides || len(ns[0].Changes) != 1 {
			t.Fatalf("%s: notes %+v", by, ns)
		}
		if by == string(mat.ByLine) {
			const want = "A reverse bevel above reaches in 1/8 in past its window's line: of a reveal of 0 in from line to line, with the bevel of the lower board 1/16 in wide, no strip shows."
			if got := ns[0].Text(f); got != want {
				t.Errorf("reads %q, want %q", got, want)
			}
		}
		m.Under[0].Reveal = measure.Length(ns[0].Changes[0].To.N)
		if got := m.Lay(g).Under[0].Seen; got != in("1/16") {
			t.Errorf("%s: mended, %v is seen", by, got)
		}
	}
}

// workingsRead requires workings to read so, to 1/32 in.
func workingsRead(t *testing.T, m mat.Mat, g mat.Given, rows []struct{ path, want string }) {
	t.Helper()
	f := measure.Format{Style: measure.Fraction, Step: in("1/32")}
	for _, row := range rows {
		w, ok := m.Explain(g, explain.Path(row.path), places)
		if got := w.Text(f); !ok || got != row.want {
			t.Errorf("%s reads %q, want %q", row.path, got, row.want)
		}
	}
}

// TestExplainReverse: the workings name the bevel that hides a part of the strip.
func TestExplainReverse(t *testing.T) {
	m, g := worked()
	m.Thickness, m.Bevel = in("1/8"), 135*measure.Degree
	m.Under = mat.UnderMats{under("3/32", mat.ByLine, "1/16"), under("1/4", mat.BySeen, "1/16")}
	rows := []struct{ path, want string }{
		{"/under/0/seen", "strip seen -3/32 = (reveal 3/32 + run of the bevel above -1/8) - bevel run 1/16"},
		{"/under/1/reveal", "reveal 11/32 = (given 1/4 + bevel run 1/16) - run of the bevel above -1/8 - reveal 3/32"},
		{"/under/1/seen", "strip seen 1/4 = (reveal 11/32 + run of the bevel above -1/8 + reveal 3/32) - bevel run 1/16"},
	}
	workingsRead(t, m, g, rows)
}

// TestExplainUnderText reads a few workings the way a framer does.
func TestExplainUnderText(t *testing.T) {
	m, g := double("1/4", mat.ByLine, "1/16")
	m.Borders.To = mat.ToLowest
	rows := []struct{ path, want string }{
		{"/bevel/run", "bevel run 0.055 = thickness 0.055 / tan bevel 45 deg"},
		{"/under/0/bevel/slope", "slope of the bevel 2.245064 mm = thickness 1/16 / sin bevel 45 deg"},
		{"/bevel/face/width", "window on the face 11.735 = window 11 5/8 + 2 x bevel run 0.055"},
		{"/window/width", "window 11 5/8 = window below 11 1/8 + 2 x reveal 1/4"},
		{"/under/0/window/width", "window 11 1/8 = art 11 3/8 - 2 x each side 1/8"},
		{"/under/0/reveal", "reveal 1/4 = given 1/4"},
		{"/under/0/seen", "strip seen 3/16 = reveal 1/4 - bevel run 1/16"},
		{"/visible/left", "border as seen 2 1/4 = given 2 1/2 - reveal 1/4"},
		{"/visible/bottom", "border as seen 2 3/4 = given 3 - reveal 1/4"},
		{"/under/0/blank/height", "blank 20 5/8 = blank 20 7/8 - 2 x trim 1/8"},
		{"/under/0/from_top/left", "border from the top board's edge 2 11/16 = left border as cut 2 7/16 + reveal 1/4"},
		{"/under/0/own/left", "border from its own edge 2 9/16 = border from the top board's edge 2 11/16 - trim 1/8"},
	}
	workingsRead(t, m, g, rows)
}

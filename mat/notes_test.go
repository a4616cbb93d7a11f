package mat_test

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// notes returns the notes of m but for the caution that every mat has.
func notes(t *testing.T, m mat.Mat, g mat.Given) []explain.Note {
	t.Helper()
	all := m.Notes(g, m.Lay(g), places)
	if len(all) == 0 || all[0].Code != mat.CautionBlades || all[0].Level != explain.Caution || all[0].Changes != nil {
		t.Fatalf("no caution for the blade: %+v", all)
	}
	for _, n := range all {
		if text := n.Text(measure.Format{}); text == string(n.Code) || strings.ContainsAny(text, "{}") {
			t.Errorf("%s reads %q", n.Code, text)
		}
		for _, c := range n.Changes {
			if field := "field." + c.Path.Last(); explain.English(field) == field {
				t.Errorf("%s would change a field without a name: %s", n.Code, c.Path)
			}
		}
	}
	return all[1:]
}

func codes(ns []explain.Note) string {
	var list []string
	for _, n := range ns {
		at, _ := n.Path.After(places.Worked)
		list = append(list, string(n.Level)+" "+string(n.Code)+" "+string(at))
	}
	return strings.Join(list, "; ")
}

// TestNotes: each code comes exactly where it must, at the nanometer of its
// limit and one to either side. The limit of a thin overlap, 1/16 in, is
// common practice: half of what is usual.
func TestNotes(t *testing.T) {
	const (
		thin     = "advice mat.thin_overlap /covered"
		falls    = "warning mat.falls_through /covered"
		noBorder = "warning mat.no_border /visible"
		off      = "warning mat.off_board /cut"
		narrow   = "advice mat.bottom_narrow /visible/bottom"
	)
	bySize := func(width, height measure.Length) func(*mat.Mat) {
		return func(m *mat.Mat) {
			m.Window = mat.Window{By: mat.BySize, Size: measure.Size{Width: in("11 3/8") - width, Height: in("15 1/4") - height}}
		}
	}
	board := func(width, height measure.Length) func(*mat.Mat) {
		return func(m *mat.Mat) {
			m.Borders = mat.Borders{By: mat.ByBoard, To: mat.ToTop, Weight: mat.Unweighted,
				Board: measure.Size{Width: in("11 1/8") + width, Height: in("15") + height}}
		}
	}
	sixteenth, cover := in("1/16"), in("3/16")
	rows := []struct {
		name   string
		change func(*mat.Mat)
		want   string
	}{
		{"as it is", func(*mat.Mat) {}, ""},
		{"overlap 1/16", func(m *mat.Mat) { m.Window.EachSide = sixteenth }, ""},
		{"overlap under 1/16", func(m *mat.Mat) { m.Window.EachSide = sixteenth - 1 }, thin + "/width"},
		{"overlap of a nanometer", func(m *mat.Mat) { m.Window.EachSide = 1 }, thin + "/width"},
		{"no overlap", func(m *mat.Mat) { m.Window.EachSide = 0 }, falls + "/width"},
		{"no gap", func(m *mat.Mat) { m.Window = mat.Window{By: mat.ByGap} }, "warning mat.falls_through /covered/width"},
		{"a gap of a nanometer", func(m *mat.Mat) { m.Window = mat.Window{By: mat.ByGap, EachSide: 1} }, ""},
		{"a quarter covered each side", func(m *mat.Mat) { m.Window.EachSide = in("2 27/32") }, ""},
		{"a nanometer more", func(m *mat.Mat) { m.Window.EachSide = in("2 27/32") + 1 }, "advice mat.thick_overlap /covered/width"},
		{"an extra of nothing", func(m *mat.Mat) { m.Borders.Weight = mat.Extra }, "advice mat.no_weight "},
		{"a ratio of nothing", func(m *mat.Mat) { m.Borders.Weight = mat.Ratio }, "advice mat.no_weight "},
		{"window 1/8 less", bySize(2*sixteenth, 2*sixteenth), ""},
		{"window wider", bySize(2*sixteenth-1, 2*sixteenth), thin + "/width"},
		{"window higher", bySize(2*sixteenth, 2*sixteenth-1), thin + "/height"},
		{"window just smaller", bySize(2, 2), thin + "/width; " + thin + "/height"},
		{"window as large as the art", bySize(0, 0), falls + "/width; " + falls + "/height"},
		{"covered on one side only, by a nanometer", bySize(1, 2), falls + "/width; " + thin + "/height"},
		{"window too large one way", bySize(2*sixteenth, -in("1/4")), falls + "/height"},
		{"bottom as the top", func(m *mat.Mat) { m.Borders.Bottom = m.Borders.Top }, ""},
		{"the odd nanometer", func(m *mat.Mat) { m.Borders.Bottom = m.Borders.Top - 1 }, ""},
		{"bottom narrower", func(m *mat.Mat) { m.Borders.Bottom = m.Borders.Top - 2 }, narrow},
		{"a border of a nanometer", func(m *mat.Mat) { m.Borders.Left = 1 }, ""},
		{"no left border", func(m *mat.Mat) { m.Borders.Left = 0 }, noBorder + "/left"},
		{"no right border", func(m *mat.Mat) { m.Borders.Right = 0 }, noBorder + "/right"},
		{"no top border", func(m *mat.Mat) { m.Borders.Top = 0 }, noBorder + "/top"},
		{"no bottom border", func(m *mat.Mat) { m.Borders.Bottom = 0 }, noBorder + "/bottom; " + narrow},
		{"a board for a nanometer of border", board(2*cover+2, 2*cover+2), ""},
		{"a board for none", board(2*cover+2, 2*cover), noBorder + "/top"},
		{"a board as the window", board(0, 0), noBorder + "/left; " + noBorder + "/top"},
		{"a board smaller by a nanometer", board(-1, 0), off + "/left"},
		{"a board lower by two", board(0, -2), off + "/top"},
		{"an extra that pushes the window off", func(m *mat.Mat) {
			board(in("5"), in("5"))(m)
			m.Borders.Weight, m.Borders.Extra = mat.Extra, in("5")+2
		}, off + "/top"},
	}
	for _, row := range rows {
		m, g := worked()
		row.change(&m)
		if got := codes(notes(t, m, g)); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestOddAllowance: 1/64 in is an odd number of nanometers, and so is what both
// lips hide then. Equal borders stay equal all the same.
func TestOddAllowance(t *testing.T) {
	for _, by := range []mat.BordersBy{mat.ByVisible, mat.ByCut, mat.ByBoard} {
		m, g := worked()
		g.Allowance = in("1/64")
		m.Borders.By, m.Borders.Sides, m.Borders.Board = by, measure.AllSides(in("2 1/2")), size("16", "20")
		if ns := notes(t, m, g); len(ns) != 0 {
			t.Errorf("by %s: %s", by, codes(ns))
		}
	}
}

// TestNoteValues: the print of 4 x 6 1/2 in a window of 4 x 6 1/2 falls
// through, and the note says the sizes.
func TestNoteValues(t *testing.T) {
	m, _ := worked()
	m.Window = mat.Window{By: mat.BySize, Size: size("4", "6 1/2")}
	ns := notes(t, m, given(size("4", "6 1/2"), "1/4", "1/8"))
	if len(ns) != 2 {
		t.Fatalf("notes %+v", ns)
	}
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	const want = "The window is 6 1/2 in and the art 6 1/2 in: the mat does not cover the art's edge, and the art falls through."
	if got := ns[1].Text(f); got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
	change := explain.Change{Path: places.Mat + "/window/height", To: explain.Of(in("6 1/4")), Bound: explain.AtMost}
	if !slices.Equal(ns[1].Changes, []explain.Change{change}) {
		t.Errorf("changes %+v, want %+v", ns[1].Changes, change)
	}
}

// apply makes a change to the mat.
func apply(t *testing.T, m *mat.Mat, c explain.Change) {
	t.Helper()
	field, _ := c.Path.After(places.Mat)
	to := measure.Length(c.To.N)
	switch field {
	case "/window/each_side":
		m.Window.EachSide = to
	case "/window/width":
		m.Window.Width = to
	case "/window/height":
		m.Window.Height = to
	case "/borders/left":
		m.Borders.Left = to
	case "/borders/right":
		m.Borders.Right = to
	case "/borders/top":
		m.Borders.Top = to
	case "/borders/bottom":
		m.Borders.Bottom = to
	case "/borders/board/width":
		m.Borders.Board.Width = to
	case "/borders/board/height":
		m.Borders.Board.Height = to
	case "/under/0/reveal":
		m.Under[0].Reveal = to
	case "/under/1/reveal":
		m.Under[1].Reveal = to
	case "/under/0/trim":
		m.Under[0].Trim = to
	case "/under/1/trim":
		m.Under[1].Trim = to
	default:
		t.Errorf("a change of %s", c.Path)
	}
	if c.To.Kind != explain.LengthKind {
		t.Errorf("a change to %+v", c.To)
	}
}

// TestChangesMend: after a change the note is gone, and the mat still passes
// its check.
func TestChangesMend(t *testing.T) {
	mended := make(map[explain.Code]int)
	eachRandom(t, 5000, func(t *testing.T, r *rand.Rand, m mat.Mat, g mat.Given) {
		if r.IntN(2) == 0 {
			m.Window.EachSide = randomLength(r, in("1/16"))
		}
		g.Border = in("2")
		if r.IntN(2) == 0 { // narrow borders, and boards about as large as the window
			m.Borders.Left, m.Borders.Top = randomLength(r, in("1/8")), randomLength(r, in("1/8"))
			m.Borders.Board = m.Lay(g).Window.Grown(randomLength(r, in("1")) - in("1/2"))
			m.Borders.Board.Width, m.Borders.Board.Height = max(1, m.Borders.Board.Width), max(1, m.Borders.Board.Height)
		}
		if r.IntN(2) == 0 { // reveals about as wide as the bevel, trims about as wide as the border
			for i := range m.Under.Count() {
				m.Under[i].Reveal = randomLength(r, in("1/8"))
				m.Under[i].Trim = max(0, randomLength(r, in("4")))
			}
		}
		before := notes(t, m, g)
		hidden := slices.ContainsFunc(before, func(n explain.Note) bool { return n.Code == mat.NoBorder })
		for _, n := range before {
			for _, c := range n.Changes {
				better := m
				apply(t, &better, c)
				if problems := check(better, g); problems != nil {
					t.Errorf("%s, changed to %s: %q", n.Code, c.Text(measure.Format{}), problems)
				}
				mended[n.Code]++
				for _, again := range notes(t, better, g) {
					// A border that shows again may still be narrower than the top one, and one
					// that is as wide as the top one may be hidden with it, as it was before.
					if n.Code == mat.BottomNarrow && again.Code == mat.NoBorder && hidden {
						continue
					}
					if again.Path == n.Path && (again.Code != mat.BottomNarrow || n.Code == mat.BottomNarrow) {
						t.Errorf("%s, changed to %s: still %s", n.Code, c.Text(measure.Format{}), again.Code)
					}
				}
			}
		}
	})
	all := 0
	for _, n := range mended {
		all += n
	}
	if all < 1000 {
		t.Errorf("only %d changes were tried", all)
	}
	for _, code := range []explain.Code{
		mat.FallsThrough, mat.ThinOverlap, mat.NoBorder, mat.OffBoard, mat.BottomNarrow, mat.NoStrip, mat.ShortUnder,
	} {
		if mended[code] < 5 {
			t.Errorf("%s: only %d changes were tried", code, mended[code])
		}
	}
}

// TestNoChangeForTinyArt: art too small for any usual overlap has a note and
// no change.
func TestNoChangeForTinyArt(t *testing.T) {
	for _, by := range []mat.WindowBy{mat.ByOverlap, mat.BySize} {
		m, _ := worked()
		m.Window = mat.Window{By: by, Size: size("1/8", "1/8")}
		ns := notes(t, m, given(size("1/8", "1/8"), "1/16", "1/16"))
		if len(ns) == 0 || ns[0].Code != mat.FallsThrough || ns[0].Changes != nil {
			t.Errorf("by %s: %+v", by, ns)
		}
	}
}

package molding_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

const floatAt explain.Path = "/pieces/0/float"

// floater is 1/2 wide and 1 1/2 deep in front of a ledge of 1.
func floater(gap string) molding.Frame {
	return molding.Frame{
		Kind: molding.Floater, Face: in("1/2"), Gap: in(gap), Rabbet: in("1 1/2"), Ledge: in("1"),
		Made: molding.ToFit, Wood: material.Wood,
	}
}

func randomFloater(r *rand.Rand) molding.Frame {
	f := randomFrame(r)
	f.Kind, f.Lip, f.Gap, f.Ledge = molding.Floater, 0, randomLength(r, in("1/2")), randomLength(r, in("1 1/2"))
	return f
}

// TestFloater: art and a gap on each side make the opening, and twice the face
// more the outside (common practice; plane geometry). An allowance has no part.
func TestFloater(t *testing.T) {
	rows := []struct {
		gap              string
		art              measure.Size
		opening, outside measure.Size
	}{
		{"1/4", size("16", "20"), size("16 1/2", "20 1/2"), size("17 1/2", "21 1/2")},
		{"0", size("16", "20"), size("16", "20"), size("17", "21")},
		{"6 mm", size("400 mm", "500 mm"), size("412 mm", "512 mm"), size("437.4 mm", "537.4 mm")},
	}
	for _, row := range rows {
		f := floater(row.gap)
		f.Allowance = in("1/8")
		r := f.Around(row.art)
		if r.Opening != row.opening || r.Sight != row.opening || r.Outside != row.outside || f.Room() != 2*in(row.gap) {
			t.Errorf("gap %s: %+v, want opening %+v, outside %+v", row.gap, r, row.opening, row.outside)
		}
	}
	if f := frame("2", "1/4", "1/8"); f.Room() != in("1/8") {
		t.Errorf("the room of a rabbet is %v", f.Room())
	}
}

// TestFloatOf: the gap where the art is largest and where it is smallest, in the
// middle of the opening; of an odd nanometer the half below.
func TestFloatOf(t *testing.T) {
	rows := []struct {
		opening, greatest, least, small, wide measure.Size
	}{
		{size("16 1/2", "20 1/2"), size("16", "20"), size("16", "20"), size("1/4", "1/4"), size("1/4", "1/4")},
		{size("16 1/2", "20 1/2"), size("16", "20"), size("15 7/8", "19 3/4"), size("1/4", "1/4"), size("5/16", "3/8")},
		{measure.Size{Width: 10, Height: 10}, measure.Size{Width: 7, Height: 13}, measure.Size{Width: 6, Height: 11},
			measure.Size{Width: 1, Height: -2}, measure.Size{Width: 2, Height: -1}},
		{},
	}
	for _, row := range rows {
		if got, want := molding.FloatOf(row.opening, row.greatest, row.least), (molding.Float{Least: row.small, Most: row.wide}); got != want {
			t.Errorf("%+v in %+v: %+v, want %+v", row.greatest, row.opening, got, want)
		}
	}
}

// TestDirection: what goes into a space, or is there already, is rounded down.
func TestDirection(t *testing.T) {
	for made, want := range map[molding.Made]measure.Direction{
		molding.ToFit: measure.Up, molding.ToSpace: measure.Down, molding.ReadyMade: measure.Down,
	} {
		if got := made.Direction(); got != want {
			t.Errorf("%s is rounded %v, want %v", made, got, want)
		}
	}
}

func TestChoices(t *testing.T) {
	rows := []struct{ got, want []string }{
		{molding.Floater.Choices(), []string{"rabbet", "floater"}},
		{molding.ToFit.Choices(), []string{"to_fit", "to_space", "ready_made"}},
		{molding.Wood("").Choices(), material.Moldings()},
	}
	for _, row := range rows {
		if !slices.Equal(row.got, row.want) {
			t.Errorf("choices %q, want %q", row.got, row.want)
		}
	}
}

// TestFloaterNotes: each code comes exactly where it must. The gap of 1/4 is
// uneven where it goes from less than a half of it more, and a ledge has to reach
// 1/2 in past the widest gap to hold a screw (both common practice).
func TestFloaterNotes(t *testing.T) {
	const (
		none   = "warning float.no_gap /frame/gap"
		wide   = "advice float.uneven_gap /float/most/"
		short  = "advice float.short_ledge /frame/ledge, ledge at least "
		stands = "warning float.short_ledge /frame/ledge, ledge at least "
	)
	eighth := in("1/8")
	rows := []struct {
		name, gap string
		ledge     measure.Length
		less      measure.Size // of the art where it is smallest
		want      string
	}{
		{"square art", "1/4", in("1"), measure.Size{}, ""},
		{"no gap", "0", in("1"), measure.Size{}, none + ", gap 1/4 in"},
		{"no gap, and art that varies", "0", in("1"), size("1/4", "1/4"), none + ", gap 1/4 in"},
		{"varies by a quarter", "1/4", in("1"), size("1/4", "1/4"), ""}, // 1/8 on a side
		{"wider by a hair", "1/4", in("1"), measure.Size{Width: 2*eighth + 2}, wide + "width"},
		{"higher by a hair", "1/4", in("1"), measure.Size{Height: 2*eighth + 2}, wide + "height"},
		{"both", "1/4", in("1"), size("3/8", "3/8"), wide + "width; " + wide + "height"},
		{"no ledge known", "1/4", 0, measure.Size{}, ""},
		{"a ledge that holds a screw", "1/4", in("3/4"), measure.Size{}, ""},
		{"a hair short", "1/4", in("3/4") - 1, measure.Size{}, short + "3/4 in"},
		{"art that varies wants more", "1/4", in("3/4"), size("0", "1/16"), short + "25/32 in"}, // 1/32 on a side
		{"a hair under the art", "1/4", in("1/4") + 1, measure.Size{}, short + "3/4 in"},
		{"nothing under the art", "1/4", in("1/4"), measure.Size{}, stands + "3/4 in"},
		{"a ledge of a nanometer", "1/4", 1, measure.Size{}, stands + "3/4 in"},
	}
	for _, row := range rows {
		f := floater(row.gap)
		f.Ledge = row.ledge
		art := size("16", "20")
		least := measure.Size{Width: art.Width - row.less.Width, Height: art.Height - row.less.Height}
		ns := f.FloatNotes(molding.FloatOf(f.Around(art).Opening, art, least), in("1/4"), floatAt, places)
		if got := summary(t, ns); got != row.want {
			t.Errorf("%s:\n%s, want\n%s", row.name, got, row.want)
		}
	}
	f := floater("0")
	if got := summary(t, f.FloatNotes(molding.Float{}, 0, floatAt, places)); got != none {
		t.Errorf("of a shop without a gap: %s", got)
	}
}

// TestFloatDepthNotes: art that is as thick as the floater is deep is flush; a
// nanometer more stands out.
func TestFloatDepthNotes(t *testing.T) {
	const at = " /depth/clear, rabbet depth at least 1 1/2 in"
	rows := []struct {
		name   string
		rabbet measure.Length
		part   string
		want   string
	}{
		{"deeper than the art", in("1 3/4"), "1 1/2", ""},
		{"flush", in("1 1/2"), "1 1/2", ""},
		{"a nanometer proud", in("1 1/2") - 1, "1 1/2", "advice float.proud" + at},
		{"in a shallow floater", in("3/4"), "1 1/2", "advice float.proud" + at},
		{"not given", 0, "1 1/2", "advice float.depth_unknown" + at},
		{"not given, with nothing in it", 0, "0", "advice float.depth_unknown /depth/clear"},
	}
	for _, row := range rows {
		f := floater("1/4")
		f.Rabbet = row.rabbet
		if got := summary(t, f.FloatDepthNotes(f.DepthOf(0, in(row.part)), "/pieces/0/depth", places)); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestFloaterNoteText reads the notes the way a framer does.
func TestFloaterNoteText(t *testing.T) {
	f := floater("1/4")
	f.Ledge, f.Rabbet = in("1/2"), in("3/4")
	art := size("16", "20")
	ns := f.FloatNotes(molding.FloatOf(f.Around(art).Opening, art, size("16", "19 1/2")), in("1/4"), floatAt, places)
	ns = append(ns, f.FloatDepthNotes(f.DepthOf(0, in("1 1/2")), "/pieces/0/depth", places)...)
	want := []string{
		"The art is not square or not straight: in the middle of the floater, the gap goes from 1/4 in to 1/2 in.",
		"The ledge reaches in 1/2 in and the gap is 1/4 in: to hold a screw under the art it wants 1 in.",
		"The art is 1 1/2 in thick and the floater 3/4 in deep in front of its ledge: it stands 3/4 in in front of the frame.",
	}
	if len(ns) != len(want) {
		t.Fatalf("notes %s", summary(t, ns))
	}
	for i, n := range ns {
		if got := n.Text(sixteenths); got != want[i] {
			t.Errorf("reads %q, want %q", got, want[i])
		}
	}
}

// floats are the notes on art as large as the package in a floater, that is
// smaller elsewhere by the part's clearance.
func floats(b bench) []explain.Note {
	x := molding.FloatOf(b.opening(), b.pkg, b.pkg.Grown(-b.cut.Clearance))
	ns := b.frame.FloatNotes(x, in("1/4"), floatAt, places)
	ns = append(ns, b.frame.FloatDepthNotes(b.frame.DepthOf(0, b.parts...), "/pieces/0/depth", places)...)
	return append(ns, b.frame.Notes(b.frame.Around(b.pkg), in("1/8"), places)...)
}

// checkFloatChanges: each change takes its note away, one nanometer past its bound
// brings it back, and none makes the frame one that cannot be.
func checkFloatChanges(t *testing.T, b bench) (tried int) {
	t.Helper()
	said := func(c explain.Change, n explain.Note) bool {
		better := b
		switch to := measure.Length(c.To.N); c.Path {
		case places.Frame + "/gap":
			better.frame.Gap = to
		case places.Frame + "/ledge":
			better.frame.Ledge = to
		case places.Frame + "/rabbet":
			better.frame.Rabbet = to
		default:
			t.Errorf("a change of %s", c.Path)
		}
		better.check(t)
		return slices.ContainsFunc(floats(better), func(again explain.Note) bool { return again.Path == n.Path })
	}
	for _, n := range floats(b) {
		for _, c := range n.Changes {
			tried++
			if said(c, n) {
				t.Errorf("%s, %s: still so", n.Code, change(c))
			}
			if c.To.N--; c.Bound == explain.AtLeast && c.To.N > 0 && !said(c, n) {
				t.Errorf("%s: %s would do as well", n.Code, change(c))
			}
		}
	}
	return tried
}

func TestFloatChangesMend(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 16))
	tried := 0
	for range 5000 {
		b := randomBench(r)
		b.frame, b.cut = randomFloater(r), molding.Cut{Clearance: randomLength(r, in("1/2"))}
		if r.IntN(4) == 0 {
			b.frame.Gap = 0
		}
		b.check(t)
		if tried += checkFloatChanges(t, b); t.Failed() {
			t.Fatalf("bench %+v", b)
		}
	}
	if tried < 1000 {
		t.Errorf("only %d changes were tried", tried)
	}
}

// TestExplainFloater: every figure of a floater has a formula that works out to
// it, from terms that are themselves figures or fields.
func TestExplainFloater(t *testing.T) {
	const depth explain.Path = "/pieces/0/depth"
	r := rand.New(rand.NewPCG(5, 25))
	for range 1000 {
		f, pkg, thick := randomFloater(r), randomSize(r), randomLength(r, in("2"))
		rect, d := f.Around(pkg), f.DepthOf(0, thick)
		all := figuresOf(rect, molding.Fit{}, d)
		for path, want := range all {
			if path.Under(worked) || path.Under(places.Worked+"/package") {
				continue // nothing lies in a rabbet; the package is for the caller to explain
			}
			var w explain.Working
			var ok bool
			if figure, is := path.After(depth); is {
				parts := []explain.Expr{explain.T("thickness", thick, "/order/pieces/0/art/thickness")}
				w, ok = f.ExplainDepth(d, 0, parts, figure, depth, places)
			} else {
				figure, _ := path.After(places.Worked)
				w, ok = f.Explain(rect, figure, places)
			}
			got, err := w.Formula.Evaluate()
			if !ok || err != nil || got != want || w.Exact != want || w.Path != path || w.Key == "" || w.Source.Status == "" {
				t.Fatalf("%s: %v %v %v, want %v\n%+v", path, ok, got, err, want, w)
			}
			for _, term := range w.Formula.Terms() {
				if value, is := all[term.Path]; is && value != term.Value || term.Path == path || term.Path == places.Frame+"/allowance" {
					t.Fatalf("%s: the term %s is %v, the figure %v", path, term.Path, term.Value, value)
				}
			}
		}
	}
	f := floater("1/4")
	w, _ := f.Explain(f.Around(size("16", "20")), "/opening/width", places)
	if got, want := w.Text(sixteenths), "opening 16 1/2 = package 16 + 2 x gap 1/4"; got != want {
		t.Errorf("reads %s, want %s", got, want)
	}
}

package molding_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

const (
	part   explain.Path = "/order/pieces/0/glazing"
	worked explain.Path = "/pieces/0/layers/0"
)

var places = molding.Places{Frame: "/order/pieces/0/frame", Worked: "/pieces/0/frame", Shop: "/order/shop"}

var sixteenths = measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}

// summary lists notes as "level code figure", each with what it would change.
func summary(t *testing.T, ns []explain.Note) string {
	t.Helper()
	var list []string
	for _, n := range ns {
		if text := n.Text(sixteenths); text == string(n.Code) || strings.ContainsAny(text, "{}") {
			t.Errorf("%s reads %q", n.Code, text)
		}
		at := n.Path
		for _, root := range []explain.Path{worked, places.Worked, "/order/pieces/0", "/pieces/0"} {
			if after, ok := at.After(root); ok {
				at = after
				break
			}
		}
		line := string(n.Level) + " " + string(n.Code) + " " + string(at)
		for _, c := range n.Changes {
			if field := "field." + c.Path.Last(); explain.English(field) == field {
				t.Errorf("%s would change a field without a name: %s", n.Code, c.Path)
			}
			line += ", " + change(c)
		}
		list = append(list, line)
	}
	return strings.Join(list, "; ")
}

// change is what c asks for, to the nanometer.
func change(c explain.Change) string {
	text := explain.English("field."+c.Path.Last()) + " "
	if c.Bound != explain.Exactly {
		text += explain.English("bound."+string(c.Bound)) + " "
	}
	return string(c.To.Append([]byte(text), sixteenths))
}

// TestFitNotes: each code comes exactly where it must, at the nanometer of
// its limit and one to either side. Opening 16 x 20, face 2, lip 1/4, allowance
// 1/8, and 1/8 in of hold wanted (common practice).
func TestFitNotes(t *testing.T) {
	const (
		tight   = "advice fit.tight /play/"
		no      = "warning fit.no_play /play/"
		not     = "warning fit.does_not_go_in /play/"
		thin    = "advice fit.thin_bite /bite/"
		drops   = "warning fit.drops_out /bite/"
		lessW   = "width, width at most 15 7/8 in"
		lessH   = "height, height at most 19 7/8 in"
		moreW   = "width, width at least 15 7/8 in"
		moreH   = "height, height at least 19 7/8 in"
		lip     = ", lip at least "
		nothing = ""
	)
	cut := func(width, height measure.Length) molding.Cut {
		return molding.Cut{Size: measure.Size{Width: in("16") - width, Height: in("20") - height}}
	}
	eighth, quarter := in("1/8"), in("1/4")
	rows := []struct {
		name string
		cut  molding.Cut
		want string
	}{
		{"cut to fit", molding.Cut{}, nothing},
		{"with the play and the hold that are wanted", cut(eighth, eighth), nothing},
		{"a nanometer tight", cut(eighth-1, eighth), tight + lessW},
		{"a nanometer of play", cut(eighth, 1), tight + lessH},
		{"as large as the opening", cut(0, 0), no + lessW + "; " + no + lessH},
		{"a nanometer too large", cut(-1, eighth), not + lessW},
		{"a nanometer less hold", cut(eighth+1, eighth), thin + moreW},
		{"a nanometer of hold", cut(eighth, quarter-1), thin + moreH},
		{"no hold", cut(quarter, eighth), drops + moreW},
		{"hardly any hold", cut(eighth, in("1 7/8")), drops + moreH},
		{"needing more than the hold allows", molding.Cut{Clearance: eighth + 1}, thin + "width, clearance at most 1/8 in" + lip + "6.350001 mm"},
		{"needing as much as the lip", molding.Cut{Clearance: quarter}, drops + "width, clearance at most 1/8 in" + lip + "3/8 in"},
		{"cut already, and needing more than the hold allows", molding.Cut{Clearance: 3 * in("1/16"), Size: size("15 3/4", "19 13/16")},
			drops + "width; " + thin + "height"},
		{"needing less than the allowance", molding.Cut{Clearance: eighth - 1}, nothing},
	}
	f := frame("2", "1/4", "1/8")
	opening := size("16", "20")
	for _, row := range rows {
		got := summary(t, f.FitNotes(opening, molding.Lying{
			Fit: f.Fit(opening, row.cut), Cut: row.cut, Part: part, Worked: worked, Bite: eighth,
		}, places))
		if got != row.want {
			t.Errorf("%s:\n%s, want\n%s", row.name, got, row.want)
		}
	}
}

// TestTwoDimensions: a part that lies the same both ways is spoken of once; art
// that varies one way more than the other is not.
func TestTwoDimensions(t *testing.T) {
	f := frame("2", "1/8", "1/8")
	opening := size("16", "20")
	lying := molding.Lying{Fit: f.Fit(opening, molding.Cut{}), Part: part, Worked: worked, Bite: in("1/8")}
	if ns := f.FitNotes(opening, lying, places); len(ns) != 1 {
		t.Errorf("the same both ways: %s", summary(t, ns))
	}
	lying.Fit.Bite.Height = -in("1/16")
	if ns := f.FitNotes(opening, lying, places); len(ns) != 2 {
		t.Errorf("less hold one way: %s", summary(t, ns))
	}
}

// TestVaryingArtAddsUp: where art is smaller than it is elsewhere it slides
// farther, and the note says a lip and a play whose difference is the bite.
func TestVaryingArtAddsUp(t *testing.T) {
	f := frame("2", "1/4", "1/8")
	opening := size("16 1/8", "20 1/8")
	fit := f.FitOf(opening, size("16", "20"))
	fit.Bite = f.FitOf(opening, size("15 15/16", "20")).Bite
	ns := f.FitNotes(opening, molding.Lying{Fit: fit, Part: part, Worked: worked, Bite: in("1/8")}, places)
	const want = "The lip is 1/4 in and the play 3/16 in: pushed to one side, the lip holds the other edge by only 1/16 in."
	if len(ns) != 1 || ns[0].Text(sixteenths) != want {
		t.Errorf("notes %+v, want %q", ns, want)
	}
}

func TestFrameNotes(t *testing.T) {
	rows := []struct {
		allowance, usual measure.Length
		want             string
	}{
		{1, in("1/8"), ""},
		{0, in("1/8"), "; warning fit.no_allowance /frame/allowance, allowance 1/8 in"},
		{0, 0, "; warning fit.no_allowance /frame/allowance"},
	}
	for _, row := range rows {
		f := molding.Frame{Face: in("2"), Allowance: row.allowance}
		ns := f.Notes(f.Around(size("16", "20")), row.usual, places)
		if got, want := summary(t, ns), "caution caution.saw /outside"+row.want; got != want {
			t.Errorf("allowance %v: %s, want %s", row.allowance, got, want)
		}
		if ns[0].Changes != nil {
			t.Error("a caution can be changed away")
		}
	}
}

// TestNoSaw: nothing of a ready-made frame is cut.
func TestNoSaw(t *testing.T) {
	f := frame("2", "1/4", "1/8")
	for made, want := range map[molding.Made]string{molding.ToSpace: "caution caution.saw /outside", molding.ReadyMade: ""} {
		f.Made = made
		if got := summary(t, f.Notes(f.Around(measure.Size{Width: in("8"), Height: in("10")}), in("1/8"), places)); got != want {
			t.Errorf("a frame made %s: %s", made, got)
		}
	}
}

// TestNothingSeen: two lips of 1/4 hide a strip of 1/2 whole, and leave a
// nanometer of one that much wider.
func TestNothingSeen(t *testing.T) {
	f := frame("2", "1/4", "1/8")
	for more, want := range map[measure.Length]string{0: "caution caution.saw /outside; warning fit.nothing_seen /sight/width", 1: "caution caution.saw /outside"} {
		pkg := measure.Size{Width: in("3/8") + more, Height: in("4")}
		if got := summary(t, f.Notes(f.Around(pkg), in("1/8"), places)); got != want {
			t.Errorf("%v wide: %s, want %s", pkg.Width, got, want)
		}
	}
}

// TestDepthNotes: points want 1/8 in behind the package (common practice; a
// museum's guide leaves at least that much).
func TestDepthNotes(t *testing.T) {
	const at = " /depth/clear"
	deeper := func(rabbet string) string { return ", rabbet depth at least " + rabbet + " in" }
	rows := []struct {
		name, rabbet, points, part string
		nanometers                 measure.Length // more of the rabbet
		want                       string
	}{
		{"room enough", "3/8", "1/8", "1/4", 0, ""},
		{"a nanometer short", "3/8", "1/8", "1/4", -1, "advice depth.little_room" + at + deeper("3/8")},
		{"a nanometer of room", "1/4", "1/8", "1/4", 1, "advice depth.little_room" + at + deeper("3/8")},
		{"a mirror of 1/8 in a recess of 1/8", "1/8", "1/8", "1/8", 0, "warning depth.no_room" + at + deeper("1/4")},
		{"a nanometer proud", "1/4", "1/8", "1/4", -1, "warning depth.proud" + at + deeper("3/8")},
		{"canvas, mats and backing", "3/8", "1/8", "1 1/8", 0, "warning depth.proud" + at + deeper("1 1/4")},
		{"no rabbet given", "0", "1/8", "1/4", 0, "advice depth.unknown" + at + deeper("3/8")},
		{"a rabbet of a nanometer", "0", "1/8", "1/4", 1, "warning depth.proud" + at + deeper("3/8")},
		{"no rabbet and nothing in it", "0", "0", "0", 0, "advice depth.unknown" + at},
		{"no points wanted", "1/4", "0", "1/4", 0, ""},
		{"no points wanted, proud", "1/4", "0", "1/4", -1, "warning depth.proud" + at + deeper("1/4")},
	}
	for _, row := range rows {
		f := molding.Frame{Face: in("2"), Rabbet: in(row.rabbet) + row.nanometers}
		d := f.DepthOf(in(row.points), in(row.part))
		if got := summary(t, f.DepthNotes(d, in(row.points), "/pieces/0/depth", places)); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestSection: what a metal section is put together with, and the depth of its
// channel at the limits that a rabbet has (common practice; a framers' newsletter
// fills the channel with board where clips would press on the art).
func TestSection(t *testing.T) {
	const at = " /depth/clear, rabbet depth at least "
	rows := []struct {
		name, rabbet string
		nanometers   measure.Length
		want         string
	}{
		{"room for the clips", "3/8", 0, ""},
		{"a nanometer short", "3/8", -1, "advice metal.little_room" + at + "3/8 in"},
		{"full", "1/4", 0, "warning metal.no_room" + at + "3/8 in"},
		{"too thick", "1/4", -1, "warning metal.does_not_go_in" + at + "3/8 in"},
		{"not given", "0", 0, "advice metal.depth_unknown" + at + "3/8 in"},
	}
	section := func(f molding.Frame) bool {
		return slices.ContainsFunc(f.Notes(f.Around(size("8", "10")), in("1/8"), places), func(n explain.Note) bool {
			return n.Code == molding.MetalSection && n.Level == explain.Advice && n.Path == places.Frame+"/wood"
		})
	}
	for _, row := range rows {
		f := molding.Frame{Kind: molding.Rabbeted, Face: in("1/4"), Lip: in("3/16"), Rabbet: in(row.rabbet) + row.nanometers, Allowance: in("1/8"), Wood: "aluminum"}
		d := f.DepthOf(in("1/8"), in("1/4"))
		ns := f.DepthNotes(d, in("1/8"), "/pieces/0/depth", places)
		if got := summary(t, ns); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
		for _, n := range ns {
			if text := n.Text(sixteenths); strings.Contains(text, "points") || strings.ContainsAny(text, "{}") {
				t.Errorf("%s reads %q", row.name, text)
			}
		}
		if !section(f) {
			t.Errorf("%s: nothing says what holds it", row.name)
		}
		w, _ := f.ExplainDepth(d, in("1/8"), nil, "/wanted", "/pieces/0/depth", places)
		if strings.Contains(w.Source.String(), "points") {
			t.Errorf("%s: %s", row.name, w.Source)
		}
		for _, other := range []func(*molding.Frame){
			func(f *molding.Frame) { f.Wood = "oak_red" },
			func(f *molding.Frame) { f.Kind = molding.Floater },
		} {
			f := f
			other(&f)
			if f.Section() || section(f) {
				t.Errorf("%s: %s of %s is a section", row.name, f.Kind, f.Wood)
			}
		}
	}
}

// TestRabbetWithinHeight: no change asks for a rabbet that the molding is not
// high enough for.
func TestRabbetWithinHeight(t *testing.T) {
	for height, want := range map[measure.Length]int{0: 1, in("3/8"): 0, in("3/8") + 1: 1} {
		f := molding.Frame{Face: in("2"), Rabbet: in("1/4"), Height: height}
		ns := f.DepthNotes(f.DepthOf(in("1/8"), in("1/4")), in("1/8"), "/pieces/0/depth", places)
		if len(ns) != 1 || len(ns[0].Changes) != want {
			t.Errorf("a molding %v high: %s", height, summary(t, ns))
		}
	}
}

// TestDepthNoteText: the numbers of the two canvases add up in words too.
func TestDepthNoteText(t *testing.T) {
	f := molding.Frame{Rabbet: in("3/8")}
	ns := f.DepthNotes(f.DepthOf(in("1/8"), in("3/4"), in("1/4")), in("1/8"), "/pieces/0/depth", places)
	const want = "The package is 1 in and the rabbet 3/8 in: it stands 5/8 in proud. Build the back of the frame up by 3/4 in, hold the package with offset clips, the next size that is no less than 5/8 in, or take a rabbet of 1 1/8 in. Rings, wire and bumpers have to clear it."
	if len(ns) != 1 || ns[0].Text(sixteenths) != want {
		t.Errorf("notes %+v, want %q", ns, want)
	}
}

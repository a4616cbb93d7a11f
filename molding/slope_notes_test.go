package molding_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// TestRimNotes: rims meet where face x sin pitch agrees, and each change brings
// them together.
func TestRimNotes(t *testing.T) {
	const own, other explain.Path = "/own", "/other"
	a := molding.SlopedSide{Pitch: lean(10), Face: in("3"), Thickness: in("1/2")}
	b := molding.SlopedSide{Pitch: lean(25), Face: in("3"), Thickness: in("1/2")}
	notes := molding.RimNotes(a, b, measure.Micrometer, own, other)
	if len(notes) != 1 || notes[0].Code != molding.RimsApart || len(notes[0].Changes) != 2 {
		t.Fatalf("%+v", notes)
	}
	const want = "With the sight edges level, one rim stands about 2.954 in and the other about 2.719 in above them: they do not meet, by about 0.235 in. Another face for one of them brings them together."
	if got := notes[0].Text(sixteenths); got != want {
		t.Errorf("reads\n%s, want\n%s", got, want)
	}
	// 3 cos 10 / cos 25 (computed).
	if got := measure.Length(notes[0].Changes[0].To.N); !isAbout(got, 3.259845, 0.000002) {
		t.Errorf("the other's face: %v", got)
	}
	for _, c := range notes[0].Changes {
		x, y := a, b
		switch c.Path {
		case own + "/face":
			x.Face = measure.Length(c.To.N)
		case other + "/face":
			y.Face = measure.Length(c.To.N)
		default:
			t.Errorf("changes %s", c.Path)
		}
		if left := molding.RimNotes(x, y, 1, own, other); len(left) != 0 {
			t.Errorf("%s: still %+v", c.Text(sixteenths), left)
		}
		if left := molding.RimNotes(x, y, -1, own, other); len(left) != 1 {
			t.Errorf("rims apart by more than less than nothing: %+v", left)
		}
	}
	if got := notes[0].Changes[1].Text(sixteenths); !strings.HasPrefix(got, "face ") {
		t.Errorf("the change reads %q", got)
	}
	b = a
	b.Thickness = in("3/4")
	notes = molding.RimNotes(a, b, 0, own, other)
	if len(notes) != 1 || notes[0].Code != molding.BacksApart || len(notes[0].Changes) != 2 {
		t.Errorf("%+v", notes)
	}
	// A flat one has no face that would do, and one that would be endless is none.
	b = molding.SlopedSide{Pitch: flat(0), Face: in("3"), Thickness: in("1/2")}
	if notes = molding.RimNotes(a, b, 0, own, other); len(notes) != 1 || len(notes[0].Changes) != 0 {
		t.Errorf("beside a flat one: %+v", notes)
	}
}

// TestReachNotes: past the saw's reach, the same joint cut another way.
func TestReachNotes(t *testing.T) {
	saw := molding.Reach{Miter: 50 * measure.Degree, Tilt: 45 * measure.Degree}
	rows := []struct {
		name   string
		corner molding.SlopedCorner
		laid   molding.Position
		saw    molding.Reach
		code   explain.Code
		says   string
	}{
		{"within reach", molding.RegularSlopedCorner(4, flat(45)), molding.LaidFlat, saw, "", ""},
		{"just within reach", molding.RegularSlopedCorner(4, lean(0)), molding.LaidFlat, saw, "", ""},
		{"three sides, upright, flat on the table", molding.RegularSlopedCorner(3, flat(85)), molding.LaidFlat, saw, molding.BeyondEveryWay,
			"This cut takes a miter of 8.58 deg and a blade tilt of 59.62 deg; the saw reaches 50 deg and 45 deg. No other way"},
		{"a saw of little tilt", molding.RegularSlopedCorner(4, flat(80)), molding.LaidFlat, molding.Reach{Miter: 50 * measure.Degree, Tilt: 30 * measure.Degree}, molding.BeyondOnEdge,
			"Stood on edge, rim down and back against the fence, the same joint takes a miter of 44.56 deg and a tilt of 7.05 deg."},
		{"a saw that does not tilt", molding.RegularSlopedCorner(4, flat(45)), molding.LaidFlat, molding.Reach{Miter: 50 * measure.Degree}, molding.BeyondPropped,
			"Propped at its pitch, sight edge down and rim against the fence, the same joint takes a miter of 45 deg and a tilt of 0 deg."},
		{"too much for the miter gauge on edge", molding.RegularSlopedCorner(3, flat(80)), molding.OnEdge, molding.Reach{Miter: 45 * measure.Degree, Tilt: 60 * measure.Degree}, molding.BeyondLaidFlat,
			"Laid flat, back down and rim against the fence, the same joint takes a miter of 16.74 deg and a tilt of 58.53 deg."},
	}
	for _, row := range rows {
		notes := row.corner.ReachNotes(row.laid, row.saw, "/settings")
		if row.code == "" {
			if len(notes) != 0 {
				t.Errorf("%s: %+v", row.name, notes)
			}
			continue
		}
		if len(notes) != 1 || notes[0].Code != row.code || notes[0].Path != explain.Path("/settings").Child(string(row.laid)) {
			t.Errorf("%s: %+v", row.name, notes)
			continue
		}
		if got := notes[0].Text(sixteenths); !strings.Contains(got, row.says) || strings.Contains(got, "{") {
			t.Errorf("%s reads\n%s, want\n%s", row.name, got, row.says)
		}
	}
}

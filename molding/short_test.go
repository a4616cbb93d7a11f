package molding_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// TestShortRails: of rails shorter than six inches the shortest is spoken of; a
// nanometer decides.
func TestShortRails(t *testing.T) {
	for _, row := range []struct {
		width, height measure.Length // of the panel, two faces less than the rails
		at            explain.Path   // of the one that is said
	}{
		{4 * measure.Inch, 20 * measure.Inch, ""},
		{4*measure.Inch - 1, 20 * measure.Inch, "/f/rails/0/long"},
		{20 * measure.Inch, 4*measure.Inch - 1, "/f/rails/1/long"},
		{4*measure.Inch - 1, 4*measure.Inch - 2, "/f/rails/1/long"},
		{20 * measure.Inch, 20 * measure.Inch, ""},
	} {
		f := one("1", "0", "0")
		p := rails(f, shape(plane.Box(measure.Size{Width: row.width, Height: row.height})))
		n := noteOf(f.Notes(p, polygonPlaces), molding.CautionShort)
		if row.at == "" {
			if n != nil {
				t.Errorf("%v x %v: %+v", row.width, row.height, n)
			}
			continue
		}
		least := min(row.width, row.height) + 2*measure.Inch
		if n == nil || n.Level != explain.Caution || n.Path != row.at || n.Values[0].Value != explain.Of(least) || n.Values[1].Value != explain.Of(molding.ShortRail) {
			t.Errorf("%v x %v: %+v", row.width, row.height, n)
		}
	}
	// A side without a rail is not a short one; the rail at its side may be.
	f := one("1", "0", "0")
	f.Sections = slices.Repeat(f.Sections, 4)
	f.Sections[0], f.Sections[2] = molding.Section{}, molding.Section{}
	if n := noteOf(f.Notes(rails(f, shape(plane.Box(size("2", "20")))), polygonPlaces), molding.CautionShort); n != nil {
		t.Errorf("%+v", n)
	}
	// 24 sides of 2 ft across flats.
	g := molding.Frame{Kind: molding.Rabbeted, Face: in("2"), Lip: in("1/4"), Allowance: in("1/8")}
	for n, want := range map[int]bool{8: false, 24: true} {
		panel := molding.RegularPanel{Sides: n, Across: plane.Flats, Size: in("24")}
		r := g.AroundRegular(panel)
		got := noteOf(g.RegularNotes(panel, r, 0, polygonPlaces), molding.CautionShort)
		if (got != nil) != want || got != nil && (got.Values[0].Value != explain.Of(r.LongPoint) || got.Path != "/f/long_point") {
			t.Errorf("%d sides: %+v", n, got)
		}
		if got != nil {
			is(t, "text", got.Text(sixteenths), "A rail of about 3.637 in is too short to hold by hand: below 6 in, cut it against a stop block and under a hold-down, or off the end of a longer piece. Fingers never come near the blade.")
		}
	}
}

// TestCutNotes: a short board, and a blade that tilts past 30 degrees, as the board is
// laid.
func TestCutNotes(t *testing.T) {
	long := 20 * measure.Inch
	for _, row := range []struct {
		name        string
		left, right molding.SlopedCorner
		laid        molding.Position
		sight       measure.Length
		want        string
	}{
		{"45 of four sides tilts by 30 to the nanodegree", molding.RegularSlopedCorner(4, lean(45)), molding.RegularSlopedCorner(4, lean(45)), molding.LaidFlat, long, ""},
		{"a hair more upright", molding.RegularSlopedCorner(4, lean(44.999)), molding.RegularSlopedCorner(4, lean(44.999)), molding.LaidFlat, long, "caution.trapped_offcut"},
		{"the same on edge", molding.RegularSlopedCorner(4, lean(44.999)), molding.RegularSlopedCorner(4, lean(44.999)), molding.OnEdge, long, ""},
		{"nearly flat on edge", molding.RegularSlopedCorner(4, lean(70)), molding.RegularSlopedCorner(4, lean(70)), molding.OnEdge, long, "caution.trapped_offcut"},
		{"propped", molding.RegularSlopedCorner(4, lean(10)), molding.RegularSlopedCorner(4, lean(10)), molding.Propped, long, ""},
		{"at its other end only", molding.RegularSlopedCorner(8, lean(10)), molding.RegularSlopedCorner(4, lean(10)), molding.LaidFlat, long, "caution.trapped_offcut"},
		{"at its first end only", molding.RegularSlopedCorner(4, lean(10)), molding.RegularSlopedCorner(8, lean(10)), molding.LaidFlat, long, "caution.trapped_offcut"},
		{"inward", molding.SlopedCorner{Plain: deg(-45), Own: lean(10), Other: lean(10)}, molding.RegularSlopedCorner(8, lean(10)), molding.LaidFlat, long, "caution.trapped_offcut"},
		{"short and steep", molding.RegularSlopedCorner(4, lean(10)), molding.RegularSlopedCorner(4, lean(10)), molding.LaidFlat, measure.Inch, "caution.short_rail caution.trapped_offcut"},
		{"short", molding.RegularSlopedCorner(12, lean(10)), molding.RegularSlopedCorner(12, lean(10)), molding.LaidFlat, measure.Inch, "caution.short_rail"},
	} {
		side := molding.SlopedSide{Pitch: row.left.Own, Face: in("3"), Thickness: in("1/2")}
		rail := side.Rail(row.sight, row.left, row.right)
		var codes []string
		for _, n := range side.CutNotes(rail, row.left, row.right, row.laid, "/rail") {
			codes = append(codes, string(n.Code))
			if text := n.Text(sixteenths); n.Level != explain.Caution || !n.Path.Under("/rail") || strings.Contains(text, "{") {
				t.Errorf("%s: %+v", row.name, n)
			}
		}
		is(t, row.name, strings.Join(codes, " "), row.want)
	}
	// The longest edge counts, whichever that is: a nanometer decides.
	side := molding.SlopedSide{Pitch: lean(80), Face: in("3"), Thickness: in("1/2")}
	c := molding.RegularSlopedCorner(12, side.Pitch)
	for more, want := range map[measure.Length]int{0: 0, -1: 1} {
		rail := molding.SlopedRail{FrontSight: 1, FrontRim: molding.ShortRail + more, BackSight: 1, BackRim: 2}
		if got := side.CutNotes(rail, c, c, molding.LaidFlat, "/rail"); len(got) != want {
			t.Errorf("six inches and %v: %+v", more, got)
		}
	}
	if got := (molding.SlopedRail{FrontSight: 4, FrontRim: 3, BackSight: 2, BackRim: 1}).Longest(); got != 4 {
		t.Errorf("the longest edge is %v", got)
	}
}

package molding_test

import (
	"errors"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

func polygonFigures(p molding.Polygon) figures {
	f := figures{polygonPlaces.Worked + "/footage": explain.Of(p.Footage)}
	for i, r := range p.Rails {
		if r.IsZero() {
			continue
		}
		here := (polygonPlaces.Worked + "/rails").Index(i)
		f[here+"/sight"], f[here+"/outer"], f[here+"/long"] = explain.Of(r.Sight), explain.Of(r.Outer), explain.Of(r.Long)
		for name, e := range map[explain.Path]molding.RailEnd{"/start": r.Start, "/finish": r.Finish} {
			f[here+name+"/saw"], f[here+name+"/edge"] = explain.Of(e.Saw), explain.Of(e.Edge)
			f[here+name+"/growth"], f[here+name+"/joint"] = explain.Of(e.Growth), explain.Of(e.Joint)
		}
	}
	return f
}

func regularFigures(r molding.Regular) figures {
	f := figures{}
	for name, l := range map[explain.Path]measure.Length{
		"/panel": r.Panel, "/opening": r.Opening, "/sight": r.Sight, "/outside": r.Outside, "/points": r.Points,
		"/long_point": r.LongPoint, "/short_point": r.ShortPoint, "/growth": r.Growth, "/footage": r.Footage,
	} {
		f[polygonPlaces.Worked+name] = explain.Of(l)
	}
	f[polygonPlaces.Worked+"/saw"], f[polygonPlaces.Worked+"/edge"] = explain.Of(r.Saw), explain.Of(r.Edge)
	return f
}

// explained holds every figure against its formula, and the terms of that against the
// figures that they name.
func explained(t *testing.T, all figures, of func(explain.Path) (explain.Working, bool)) {
	t.Helper()
	for path, want := range all {
		figure, _ := path.After(polygonPlaces.Worked)
		w, ok := of(figure)
		got, err := w.Formula.Evaluate()
		if !ok || err != nil || got != want || w.Exact != want || w.Path != path || w.Key == "" || w.Source.Status == "" {
			t.Fatalf("%s: %v %v %v, want %v\n%s", path, ok, got, err, want, w.Text(sixteenths))
		}
		for _, term := range w.Formula.Terms() {
			if value, is := all[term.Path]; is && value != term.Value {
				t.Fatalf("%s takes %v from %s, which is %v", path, term.Value, term.Path, value)
			}
		}
	}
}

func TestExplainPolygon(t *testing.T) {
	r := rand.New(rand.NewPCG(25, 26))
	worked := 0
	for range 600 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		if p, err := f.Around(panel); err == nil {
			worked++
			explained(t, polygonFigures(p), func(figure explain.Path) (explain.Working, bool) { return f.Explain(p, figure, polygonPlaces) })
		}
	}
	if worked < 300 {
		t.Errorf("only %d were worked", worked)
	}
}

func TestExplainRegular(t *testing.T) {
	r := rand.New(rand.NewPCG(27, 28))
	for range 600 {
		f := randomBench(r).frame
		if r.IntN(4) == 0 {
			f.Kind, f.Lip, f.Gap = molding.Floater, 0, in("1/4")
		}
		panel := molding.RegularPanel{Sides: 3 + r.IntN(20), Size: 1 + measure.Length(r.Int64N(int64(in("100"))))}
		panel.Across = []plane.Across{plane.Flats, plane.Points, plane.OneSide}[r.IntN(3)]
		reg := f.AroundRegular(panel)
		explained(t, regularFigures(reg), func(figure explain.Path) (explain.Working, bool) {
			return f.ExplainRegular(panel, reg, figure, polygonPlaces)
		})
	}
}

// TestPolygonText reads workings as a framer would.
func TestPolygonText(t *testing.T) {
	f := molding.Frame{Face: in("2 1/2"), Lip: in("3/8"), Allowance: in("1/8")}
	panel := molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: in("18")}
	r := f.AroundRegular(panel)
	p := one("2", "1/4", "1/8")
	p.Sections = []molding.Section{p.Sections[0], {Face: in("3"), Lip: in("1/4")}, p.Sections[0], p.Sections[0]}
	rect := rails(p, shape(plane.Box(size("16", "20"))))
	for _, row := range []struct {
		figure explain.Path
		want   string
	}{
		{"/opening", "opening 18 1/8 = panel across flats 18 + allowance 1/8"},
		{"/outside", "outside 22 3/8 = opening 18 1/8 + 2 x (face 2 1/2 - lip 3/8)"},
		{"/long_point", "long point 235.407923 mm = outside 22 3/8 x tan saw setting 22.5 deg"},
		{"/rails/0/outer", "outer edge 20 5/8 = side of the panel 16 + (half of (allowance 1/8) - lip 1/4 + face 2) x tan half of (turn 90 deg) + " +
			"((half of (allowance 1/8) - lip 1/4 + face 3) / sin turn 90 deg) - ((half of (allowance 1/8) - lip 1/4 + face 2) / tan turn 90 deg)"},
		{"/rails/0/finish/saw", "saw setting 56.309932474 deg = 90 deg - angle to the edge 33.690067526 deg"},
	} {
		w, ok := f.ExplainRegular(panel, r, row.figure, polygonPlaces)
		if strings.HasPrefix(string(row.figure), "/rails") {
			w, ok = p.Explain(rect, row.figure, polygonPlaces)
		}
		if got := w.Text(sixteenths); !ok || got != row.want {
			t.Errorf("%s reads\n%s, want\n%s", row.figure, got, row.want)
		}
	}
}

func TestNoSuchFigure(t *testing.T) {
	f := one("2", "1/4", "1/8")
	f.Sections = append(f.Sections, molding.Section{}, f.Sections[0], f.Sections[0])
	p := rails(f, shape(plane.Box(size("16", "20"))))
	for _, figure := range []explain.Path{"", "/", "/rails", "/rails/0", "/rails/4/long", "/rails/-1/long", "/rails/x/long", "/rails/1/long",
		"/rails/0/longer", "/rails/0/start", "/rails/0/middle/saw", "/rails/0/start/saws", "/rails/0/start/saw/x", "/footage/x"} {
		if w, ok := f.Explain(p, figure, polygonPlaces); ok || w.Path != "" {
			t.Errorf("%q is explained: %v", figure, w)
		}
		if w, ok := (molding.Frame{}).ExplainRegular(molding.RegularPanel{}, molding.Regular{}, figure, polygonPlaces); figure != "/footage" && (ok || w.Path != "") {
			t.Errorf("%q is explained: %v", figure, w)
		}
	}
}

// TestLostSight: a lip that hides a side says how far it may reach, and that lip a
// hair less shows it.
func TestLostSight(t *testing.T) {
	panel := shape(plane.Regular(8, plane.Flats, in("6")))
	f := one("4", "3 1/4", "1/8")
	notes := f.Notes(rails(f, panel), polygonPlaces)
	n := noteOf(notes, molding.NoSight)
	if n == nil || n.Level != explain.Warning || len(n.Changes) != 1 || n.Changes[0].Path != "/order/frame/sections/0/lip" || n.Changes[0].Bound != explain.AtMost {
		t.Fatalf("%+v", notes)
	}
	f.Sections[0].Lip = measure.Length(n.Changes[0].To.N)
	if again := f.Notes(rails(f, panel), polygonPlaces); noteOf(again, molding.NoSight) != nil {
		t.Errorf("mended: %+v", again)
	}
	f.Sections[0].Lip++
	if again := f.Notes(rails(f, panel), polygonPlaces); noteOf(again, molding.NoSight) == nil {
		t.Error("a nanometer more is not said")
	}
}

// TestRailsClash: in the notch of a bracket two wide faces meet.
func TestRailsClash(t *testing.T) {
	panel := shape(plane.New(plane.Point{}, plane.Point{X: in("12")}, plane.Point{X: in("12"), Y: in("12")}, plane.Point{X: in("8"), Y: in("12")},
		plane.Point{X: in("8"), Y: in("4")}, plane.Point{X: in("4"), Y: in("4")}, plane.Point{X: in("4"), Y: in("12")}, plane.Point{Y: in("12")}))
	f := one("3", "1/4", "1/8")
	n := noteOf(f.Notes(rails(f, panel), polygonPlaces), molding.RailsClash)
	if n == nil || len(n.Changes) != 1 {
		t.Fatalf("%+v", n)
	}
	f.Sections[0].Face = measure.Length(n.Changes[0].To.N)
	lies(t, "widest face", f.Sections[0].Face, in("2 3/16"), 1)
	if noteOf(f.Notes(rails(f, panel), polygonPlaces), molding.RailsClash) != nil {
		t.Error("not mended")
	}
	f.Sections[0].Face++
	if noteOf(f.Notes(rails(f, panel), polygonPlaces), molding.RailsClash) == nil {
		t.Error("a nanometer more is not said")
	}
}

func noteOf(notes []explain.Note, code explain.Code) *explain.Note {
	for _, n := range notes {
		if n.Code == code {
			return &n
		}
	}
	return nil
}

func TestReachOfAnEnd(t *testing.T) {
	for _, row := range []struct {
		saw, reach measure.Angle
		code       explain.Code
		jig, wedge string
	}{
		{72, 50, molding.PastReach, "18.00", "22.00"},
		{-72, 50, molding.PastReach, "18.00", "22.00"},
		{50, 50, "", "", ""},
		{51, 50, molding.PastReach, "39.00", "1.00"},
		{50, 30, molding.NoReach, "40.00", "20.00"},
		{89, 0, "", "", ""},
	} {
		e := molding.RailEnd{Saw: row.saw * measure.Degree}
		notes := e.ReachNotes(row.reach*measure.Degree, "/end")
		if row.code == "" {
			if notes != nil {
				t.Errorf("%v of %v: %+v", row.saw, row.reach, notes)
			}
			continue
		}
		if len(notes) != 1 || notes[0].Code != row.code || notes[0].Path != "/end/saw" {
			t.Fatalf("%v of %v: %+v", row.saw, row.reach, notes)
		}
		is(t, "jig", degreesOf(measure.Angle(notes[0].Values[2].Value.N), 2), row.jig)
		is(t, "wedge", degreesOf(measure.Angle(notes[0].Values[3].Value.N), 2), row.wedge)
		if text := notes[0].Text(sixteenths); strings.Contains(text, "{") {
			t.Errorf("reads %q", text)
		}
	}
	// A hair past it counts.
	e := molding.RailEnd{Saw: 50*measure.Degree + 1}
	if len(e.ReachNotes(50*measure.Degree, "")) != 1 {
		t.Error("a nanodegree past the reach is not said")
	}
}

func TestRegularNotes(t *testing.T) {
	f := molding.Frame{Kind: molding.Rabbeted, Face: in("2"), Lip: in("1/4"), Allowance: in("1/8")}
	codes := func(f molding.Frame, p molding.RegularPanel, reach measure.Angle) string {
		var list []string
		for _, n := range f.RegularNotes(p, f.AroundRegular(p), reach, polygonPlaces) {
			list = append(list, string(n.Code))
			if text := n.Text(sixteenths); strings.Contains(text, "{") || text == string(n.Code) {
				t.Errorf("%s reads %q", n.Code, text)
			}
		}
		return strings.Join(list, " ")
	}
	is(t, "octagon", codes(f, molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: in("18")}, 50*measure.Degree), "caution.saw")
	is(t, "pentagon", codes(f, molding.RegularPanel{Sides: 5, Across: plane.Flats, Size: in("18")}, 0), "caution.saw polygon.odd_flats fit.thin_bite")
	is(t, "pentagon by points", codes(f, molding.RegularPanel{Sides: 5, Across: plane.Points, Size: in("18")}, 0), "caution.saw polygon.odd_points fit.thin_bite")
	is(t, "pentagon by its side", codes(f, molding.RegularPanel{Sides: 5, Across: plane.OneSide, Size: in("18")}, 0), "caution.saw fit.thin_bite")
	is(t, "triangle", codes(f, molding.RegularPanel{Sides: 3, Across: plane.OneSide, Size: in("18")}, 50*measure.Degree), "caution.saw fit.thin_bite corner.past_reach")
	is(t, "all lip", codes(f, molding.RegularPanel{Sides: 6, Across: plane.Flats, Size: in("3/8")}, 0), "caution.saw caution.short_rail fit.nothing_seen")
	f.Allowance = 0
	is(t, "no play", codes(f, molding.RegularPanel{Sides: 6, Across: plane.Flats, Size: in("9")}, 0), "caution.saw fit.no_allowance")
}

// TestFarIsSaid: errors of the plane come with what they speak of.
func TestFarIsSaid(t *testing.T) {
	_, err := molding.PolygonFrame{Sections: make([]molding.Section, 3)}.Around(shape(plane.Box(size("16", "20"))))
	var e *plane.Error
	if !errors.As(err, &e) || e.Given != explain.Of(3) || e.Limit != explain.Of(4) || e.Bound != explain.AtLeast {
		t.Errorf("%+v", e)
	}
}

package molding_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

func wayFrom(a, b plane.Point) measure.Length { return measure.Hypot(b.X-a.X, b.Y-a.Y) }

// TestLie: the rails of a closed frame lie between its two outlines; those of an open
// one are as long as was worked out, with ends that are square.
func TestLie(t *testing.T) {
	r := rand.New(rand.NewPCG(35, 36))
	closed, square := 0, 0
	for range 1500 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		p, err := f.Around(panel)
		if err != nil {
			continue
		}
		lie := f.Lie(p)
		sight, errSight := f.SightEdge(panel)
		outside, errOutside := f.Outside(panel)
		for i, rail := range p.Rails {
			c := lie[i]
			if rail.IsZero() {
				if c != (molding.RailCorners{}) {
					t.Fatalf("a side without molding lies at %+v", c)
				}
				continue
			}
			if rail.Sight > 0 && rail.Outer > 0 {
				lies(t, "sight edge", wayFrom(c.Sight[0], c.Sight[1]), rail.Sight, 3)
				lies(t, "outer edge", wayFrom(c.Outer[0], c.Outer[1]), rail.Outer, 3)
			}
			for end, e := range []molding.RailEnd{rail.Start, rail.Finish} {
				lies(t, "joint", wayFrom(c.Sight[end], c.Outer[end]), e.Joint, 3)
				if e.Square {
					square++
				}
				if errSight == nil {
					lies(t, "corner of the sight edge", wayFrom(c.Sight[end], sight.Corner(i+end)), 0, 3)
				}
				if p.Closed() && errOutside == nil {
					closed++
					lies(t, "corner of the outside", wayFrom(c.Outer[end], outside.Corner(i+end)), 0, 3)
				}
			}
		}
	}
	if closed < 1000 || square < 100 {
		t.Errorf("%d corners of closed frames and %d square ends", closed, square)
	}
}

// TestRailsCross: rails of an open frame that lie on one another, which no outline of
// it shows.
func TestRailsCross(t *testing.T) {
	bracket := outlineOf(0, 0, 12, 0, 12, 12, 8, 12, 8, 4, 4, 4, 4, 12, 0, 12)
	stair := outlineOf(0, 0, 12, 0, 12, 5, 8, 5, 8, 4, 0, 4)
	for _, row := range []struct {
		name       string
		panel      plane.Polygon
		face       string
		bare       []int
		one, other int64 // 0 is not said
	}{
		{"in the notch", bracket, "3", []int{4}, 3, 6},
		{"in the notch, the outside open", bracket, "3", []int{0}, 3, 6},
		{"room enough", bracket, "2", []int{4}, 0, 0},
		{"only one of them", bracket, "3", []int{3, 4}, 0, 0},
		{"of one nothing is left", stair, "3", []int{2}, 4, 5},
		{"of one something is left", stair, "1", []int{2}, 0, 0},
	} {
		f := one(row.face, "1/4", "1/8")
		f.Sections = slices.Repeat(f.Sections, row.panel.Len())
		for _, i := range row.bare {
			f.Sections[i] = molding.Section{}
		}
		n := noteOf(f.Notes(rails(f, row.panel), polygonPlaces), molding.RailsCross)
		if row.one == 0 {
			if n != nil {
				t.Errorf("%s: %s", row.name, n.Text(sixteenths))
			}
			continue
		}
		if n == nil || n.Level != explain.Warning || n.Values[0].Value.N != row.one || n.Values[1].Value.N != row.other || n.Path != explain.Path("/f/rails").Index(int(row.one)-1) {
			t.Errorf("%s: %+v", row.name, n)
		}
	}
	// They touch when each stands out by half of the notch; the corners are good to
	// two nanometers.
	for _, row := range []struct {
		more measure.Length
		said bool
	}{{-4, false}, {4, true}} {
		f := one("2 3/16", "1/4", "1/8")
		f.Sections[0].Face += row.more
		f.Sections = slices.Repeat(f.Sections, bracket.Len())
		f.Sections[4] = molding.Section{}
		if n := noteOf(f.Notes(rails(f, bracket), polygonPlaces), molding.RailsCross); (n != nil) != row.said {
			t.Errorf("%v from touching: %+v", row.more, n)
		}
	}
	// A narrow rail that lies on a wide one altogether crosses none of its edges.
	niche := outlineOf(0, 0, 12, 0, 12, 12, 8, 12, 8, 4, 4, 4, 4, 6, 3, 6, 3, 10, 4, 10, 4, 12, 0, 12)
	for face, said := range map[string]bool{"4": false, "9": true} {
		f := molding.PolygonFrame{Sections: make([]molding.Section, niche.Len())}
		f.Sections[3], f.Sections[7] = molding.Section{Face: in(face), Lip: in("1/4")}, molding.Section{Face: in("1/2"), Lip: in("1/4")}
		if n := noteOf(f.Notes(rails(f, niche), polygonPlaces), molding.RailsCross); (n != nil) != said {
			t.Errorf("one rail on another, %s wide: %+v", face, n)
		}
	}
}

// TestConvexNeverCrosses: around an outline without corners that point inward, rails
// that are clear of each other all round are so with one of them left out.
func TestConvexNeverCrosses(t *testing.T) {
	r := rand.New(rand.NewPCG(37, 38))
	open := 0
	for range 1500 {
		f, panel, ok := chance(r)
		if !ok || !panel.Convex() || len(f.Sections) == 1 {
			continue
		}
		if p, err := f.Around(panel); err != nil || !p.Closed() || noteOf(f.Notes(p, polygonPlaces), molding.RailsClash) != nil {
			continue
		}
		f.Sections[r.IntN(len(f.Sections))] = molding.Section{}
		p, err := f.Around(panel)
		if err != nil {
			continue
		}
		if _, err := f.SightEdge(panel); err != nil {
			continue
		}
		open++
		if n := noteOf(f.Notes(p, polygonPlaces), molding.RailsCross); n != nil {
			t.Fatalf("%v with %+v: %s", panel.Corners(), f.Sections, n.Text(sixteenths))
		}
	}
	if open < 100 {
		t.Errorf("only %d were open", open)
	}
}

// TestRailsMeet: walls that come together before any rail is lost are said of a
// closed frame, with the face that keeps them apart.
func TestRailsMeet(t *testing.T) {
	keyhole := outlineOf(0, 0, 20, 0, 20, 20, 11, 20, 11, 10, 15, 10, 15, 5, 5, 5, 5, 10, 9, 10, 9, 20, 0, 20)
	f := one("1 1/2", "1/4", "1/8")
	n := noteOf(f.Notes(rails(f, keyhole), polygonPlaces), molding.RailsClash)
	if n == nil || len(n.Changes) != 1 {
		t.Fatalf("%+v", n)
	}
	for i, r := range rails(f, keyhole).Rails {
		if r.Outer <= 0 {
			t.Errorf("rail %d is lost: the wrong thing is tried", i)
		}
	}
	f.Sections[0].Face = measure.Length(n.Changes[0].To.N)
	lies(t, "widest face", f.Sections[0].Face, in("1 3/16")-1, 0)
	if noteOf(f.Notes(rails(f, keyhole), polygonPlaces), molding.RailsClash) != nil {
		t.Error("not mended")
	}
	f.Sections[0].Face++
	if noteOf(f.Notes(rails(f, keyhole), polygonPlaces), molding.RailsClash) == nil {
		t.Error("a nanometer more is not said")
	}
}

package molding_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// TestPlayByHand: a rectangle gives its allowance, a triangle half as much again: it
// moves into its corner until both its neighbors stop it.
func TestPlayByHand(t *testing.T) {
	f := one("2", "1/4", "1/8")
	triangle := shape(plane.Measured([]measure.Length{in("16"), in("16"), in("22")}, nil, 0))
	for _, row := range []struct {
		name  string
		panel plane.Polygon
		side  int
		want  string // inches
	}{
		{"rectangle", shape(plane.Box(size("16", "20"))), 0, "0.12500"},
		{"octagon", shape(plane.Regular(8, plane.Flats, in("18"))), 3, "0.12500"},
		{"most corners", shape(plane.Regular(molding.MostCorners, plane.Flats, in("18"))), 5, "0.12500"},
		{"even triangle", shape(plane.Regular(3, plane.OneSide, in("18"))), 1, "0.18750"},
		{"pentagon", shape(plane.Regular(5, plane.OneSide, in("18"))), 4, "0.13975"},
		// From a height of the triangle over its inner circle: the way around over the
		// side, 54 / 22 and 54 / 16, times half the allowance.
		{"its long side", triangle, 2, "0.15341"},
		{"its short side", triangle, 0, "0.21094"},
		{"star, whose sides lie along those of a pentagon", star(t), 0, "0.13975"},
	} {
		is(t, row.name, decimals(f.Play(row.panel, row.side), 5), row.want)
		back := row.panel.Corners()
		for i, j := 0, len(back)-1; i < j; i, j = i+1, j-1 {
			back[i], back[j] = back[j], back[i]
		}
		// Side i of the one runs from corner i, of the other to it.
		lies(t, row.name+" the other way round", f.Play(shape(plane.New(back...)), len(back)-2-row.side), f.Play(row.panel, row.side), 2)
	}
}

// TestPlayByPushing: the second road is to push: of all places where two sides stop
// the panel and none is in the way, the one farthest from the rail.
func TestPlayByPushing(t *testing.T) {
	r := rand.New(rand.NewPCG(33, 34))
	tried := 0
	for range 1000 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		tried++
		f.Allowance = in("1/8")
		n, h := panel.Len(), float64(f.Allowance)/2
		normals := make([][2]float64, n)
		for i := range normals {
			a, b := panel.Corner(i), panel.Corner(i+1)
			x, y := float64(b.Y-a.Y), float64(a.X-b.X)
			if panel.Clockwise() {
				x, y = -x, -y
			}
			l := math.Hypot(x, y)
			normals[i] = [2]float64{x / l, y / l}
		}
		for i, u := range normals {
			far := 0.0
			for j, v := range normals {
				for _, w := range normals[j+1:] {
					det := v[0]*w[1] - v[1]*w[0]
					if math.Abs(det) < 1e-6 {
						continue
					}
					x, y := h*(w[1]-v[1])/det, h*(v[0]-w[0])/det
					free := true
					for _, k := range normals {
						free = free && k[0]*x+k[1]*y <= h*(1+1e-9)
					}
					if away := -u[0]*x - u[1]*y; free && away > far {
						far = away
					}
				}
			}
			if got := f.Play(panel, i); math.Abs(float64(got)-h-far) > 3+far*1e-8 {
				t.Fatalf("side %d of %v: %v, by pushing %v", i, panel.Corners(), got, h+far)
			}
		}
	}
	if tried < 500 {
		t.Errorf("only %d were tried", tried)
	}
}

// holdOf is the note on the hold of a lip.
func holdOf(notes []explain.Note) *explain.Note {
	if n := noteOf(notes, molding.DropsOut); n != nil {
		return n
	}
	return noteOf(notes, molding.ThinBite)
}

// TestDropsOut: a lip no wider than the play lets the panel drop out, one hardly
// wider holds it thinly; each change mends it, and a hair less does not.
func TestDropsOut(t *testing.T) {
	box, triangle := shape(plane.Box(size("16", "20"))), shape(plane.Regular(3, plane.OneSide, in("18")))
	for _, row := range []struct {
		name           string
		panel          plane.Polygon
		lip, allowance string
		code           explain.Code
	}{
		{"well held", box, "1/4", "1/8", ""},
		{"as held as is asked", box, "5/16", "3/16", ""},
		{"thin", box, "1/4", "3/16", molding.ThinBite},
		{"as wide as the play", box, "1/4", "1/4", molding.DropsOut},
		{"narrower than the play", box, "3/16", "1/4", molding.DropsOut},
		{"no lip", box, "0", "0", molding.DropsOut},
		{"a triangle moves farther", triangle, "1/4", "1/8", molding.ThinBite},
		{"and out", triangle, "3/16", "1/8", molding.DropsOut},
		{"and is held", triangle, "5/16", "1/8", ""},
	} {
		f := one("2", row.lip, row.allowance)
		n := holdOf(f.Notes(rails(f, row.panel), polygonPlaces))
		if row.code == "" {
			if n != nil {
				t.Errorf("%s: %+v", row.name, n)
			}
			continue
		}
		if n == nil || n.Code != row.code || n.Path != "/f/rails/0" || (n.Level == explain.Warning) != (n.Code == molding.DropsOut) {
			t.Errorf("%s: %+v", row.name, n)
			continue
		}
		if text := n.Text(sixteenths); strings.Contains(text, "{") || !strings.Contains(text, "pushed to one side") {
			t.Errorf("%s reads %q", row.name, text)
		}
		if len(n.Changes) == 0 {
			t.Errorf("%s: nothing mends it", row.name)
		}
		for _, c := range n.Changes {
			hair := measure.Length(-1)
			change := func(to measure.Length) molding.PolygonFrame {
				g := one("2", row.lip, row.allowance)
				switch c.Path {
				case "/order/frame/allowance":
					g.Allowance, hair = to, 2 // a nanometer of rounding
				case "/order/frame/sections/0/lip":
					g.Sections[0].Lip = to
				default:
					t.Errorf("%s changes %s", row.name, c.Path)
				}
				return g
			}
			g := change(measure.Length(c.To.N))
			if left := holdOf(g.Notes(rails(g, row.panel), polygonPlaces)); left != nil {
				t.Errorf("%s, %s: still %+v", row.name, c.Text(sixteenths), left)
			}
			g = change(measure.Length(c.To.N) + hair)
			if holdOf(g.Notes(rails(g, row.panel), polygonPlaces)) == nil {
				t.Errorf("%s, %s and a hair: nothing is said", row.name, c.Text(sixteenths))
			}
		}
	}
}

// TestDropsOutEach: each molding of its own is spoken of at its own rail, and a side
// without one not at all; no change asks for a lip that the face does not have, nor
// for an allowance that nobody can cut to.
func TestDropsOutEach(t *testing.T) {
	f := one("2", "1/4", "1/8")
	wide := f.Sections[0]
	f.Sections = []molding.Section{
		wide, {Face: in("1"), Lip: in("1/8")}, {}, {Face: in("1/4"), Lip: in("3/16")}, wide,
		{Face: in("1"), Lip: in("5/32")}, wide, {Face: in("1"), Lip: in("9/64")},
	}
	var said []string
	for _, n := range f.Notes(rails(f, shape(plane.Regular(8, plane.Flats, in("20")))), polygonPlaces) {
		if n.Code == molding.DropsOut || n.Code == molding.ThinBite {
			said = append(said, string(n.Code)+" "+string(n.Path))
			for _, c := range n.Changes {
				said = append(said, string(c.Path))
			}
		}
	}
	is(t, "said", strings.Join(said, "; "), "fit.drops_out /f/rails/1; /order/frame/sections/1/lip; fit.thin_bite /f/rails/3; /order/frame/allowance; "+
		"fit.thin_bite /f/rails/5; /order/frame/allowance; /order/frame/sections/5/lip; fit.thin_bite /f/rails/7; /order/frame/sections/7/lip")
}

// TestRegularHold: a regular frame says the same of its lip as its outline does.
func TestRegularHold(t *testing.T) {
	for n := 3; n <= 12; n++ {
		for _, lip := range []string{"1/8", "5/32", "1/4", "9/32", "3/8"} {
			f := molding.Frame{Kind: molding.Rabbeted, Face: in("2"), Lip: in(lip), Allowance: in("1/8")}
			panel := molding.RegularPanel{Sides: n, Across: plane.Flats, Size: in("18")}
			got := holdOf(f.RegularNotes(panel, f.AroundRegular(panel), 0, polygonPlaces))
			g := one("2", lip, "1/8")
			want := holdOf(g.Notes(rails(g, shape(plane.Regular(n, plane.Flats, in("18")))), polygonPlaces))
			if (got == nil) != (want == nil) || got != nil && (got.Code != want.Code || len(got.Changes) != len(want.Changes)) {
				t.Fatalf("%d sides, lip %s: %+v, as an outline %+v", n, lip, got, want)
			}
			if got != nil {
				lies(t, "play", measure.Length(got.Values[1].Value.N), measure.Length(want.Values[1].Value.N), 1)
			}
			f.Kind, f.Lip = molding.Floater, 0
			if n := holdOf(f.RegularNotes(panel, f.AroundRegular(panel), 0, polygonPlaces)); n != nil {
				t.Errorf("a floater holds by screws: %+v", n)
			}
		}
	}
}

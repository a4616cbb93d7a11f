package molding_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// decimals writes inches with so many decimals, degreesOf degrees.
func decimals(l measure.Length, places int) string {
	return big.NewRat(int64(l), int64(measure.Inch)).FloatString(places)
}

func degreesOf(a measure.Angle, places int) string {
	return big.NewRat(int64(a), int64(measure.Degree)).FloatString(places)
}

// shape is an outline that may not fail.
func shape(p plane.Polygon, err error) plane.Polygon {
	if err != nil {
		panic(err)
	}
	return p
}

func rails(f molding.PolygonFrame, panel plane.Polygon) molding.Polygon {
	p, err := f.Around(panel)
	if err != nil {
		panic(err)
	}
	return p
}

// one is a frame of one molding all round.
func one(face, lip, allowance string) molding.PolygonFrame {
	return molding.PolygonFrame{Sections: []molding.Section{{Face: in(face), Lip: in(lip)}}, Allowance: in(allowance)}
}

func is(t *testing.T, what, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("%s is %s, want %s", what, got, want)
	}
}

// TestPolygonCases are faults that people in the trade met.
func TestPolygonCases(t *testing.T) {
	t.Run("POLY-02", func(t *testing.T) {
		f := molding.Frame{Face: in("1")}
		r := f.AroundRegular(molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: in("18 1/4")})
		is(t, "inner side", decimals(r.ShortPoint, 3), "7.559")
		is(t, "long point", decimals(r.LongPoint, 3), "8.388")
		// "Round" is no way to measure.
		var c explain.Checker
		molding.RegularPanel{Sides: 8, Across: "round", Size: in("18 1/4")}.Check(&c, "/panel")
		if got := found(&c); !slices.Equal(got, []string{"/panel/across not_a_choice"}) {
			t.Errorf("round: %q", got)
		}
	})
	t.Run("POLY-03", func(t *testing.T) {
		for face, want := range map[string]string{"0": "14.485", "1": "12.485", "1 1/4": "11.985", "2": "10.485"} {
			got := molding.Frame{Face: in(face)}.RegularOpening(8, in("6"))
			is(t, "opening of face "+face, decimals(got, 3), want)
		}
	})
	t.Run("POLY-04", func(t *testing.T) {
		cm := measure.Centimeter
		f := molding.Frame{Face: 22 * measure.Millimeter}
		r := f.AroundRegular(molding.RegularPanel{Sides: 6, Across: plane.Flats, Size: 86 * cm})
		is(t, "inner side", big.NewRat(int64(r.ShortPoint), int64(cm)).FloatString(3), "49.652")
		is(t, "outer side", big.NewRat(int64(r.LongPoint), int64(cm)).FloatString(2), "52.19")
		is(t, "growth in faces", big.NewRat(int64(r.Growth), int64(f.Face)).FloatString(3), "1.155")
	})
	t.Run("POLY-07", func(t *testing.T) {
		p := rails(one("1 1/2", "0", "0"), shape(plane.Measured([]measure.Length{in("16"), in("16"), in("22")}, nil, 0)))
		for i, want := range [][2]string{{"66.72", "46.57"}, {"46.57", "66.72"}, {"66.72", "66.72"}} {
			is(t, "start", degreesOf(p.Rails[i].Start.Saw, 2), want[0])
			is(t, "finish", degreesOf(p.Rails[i].Finish.Saw, 2), want[1])
		}
	})
	t.Run("POLY-09", func(t *testing.T) {
		p := rails(one("1 1/2", "0", "0"), star(t))
		for i, r := range p.Rails {
			tip, notch := r.Finish, r.Start
			if i%2 == 1 {
				tip, notch = notch, tip
			}
			is(t, "tip", degreesOf(tip.Saw, 3), "72.000")
			is(t, "inner corner", degreesOf(notch.Saw, 3), "-36.000")
			is(t, "tip joint", decimals(tip.Joint, 2), "4.85")
			lies(t, "in all", r.Long, r.Outer-notch.Growth, 1) // the sight edge stands out in the inner corner
		}
		if sum := total(p.Settings()); sum != 5*144*measure.Degree-5*72*measure.Degree {
			t.Errorf("the settings add up to %v", sum)
		}
	})
	t.Run("RAIL-05", func(t *testing.T) {
		four, three := molding.MiterBetween(measure.RightAngle, in("4"), in("3 1/2"))
		is(t, "on the 4", degreesOf(four.Saw, 2), "41.19")
		is(t, "on the 3 1/2", degreesOf(three.Saw, 2), "48.81")
		top, side, bottom := in("1 1/4"), in("2"), in("3")
		f := molding.PolygonFrame{Reach: 50 * measure.Degree,
			Sections: []molding.Section{{Face: bottom}, {Face: side}, {Face: top}, {Face: side}}}
		p := rails(f, shape(plane.Box(size("16", "20"))))
		is(t, "bottom", degreesOf(p.Rails[0].Start.Saw, 2), "33.69")
		is(t, "side, lower end", degreesOf(p.Rails[1].Start.Saw, 2), "56.31")
		is(t, "side, upper end", degreesOf(p.Rails[1].Finish.Saw, 2), "32.01")
		is(t, "top", degreesOf(p.Rails[2].Start.Saw, 2), "57.99")
		for i, want := range []string{"20", "24 1/4", "20", "24 1/4"} {
			if got := p.Rails[i].Outer; got != in(want) {
				t.Errorf("rail %d is %v, want %s", i, got, want)
			}
		}
		// Of eight ends, both of the top and the lower ones of the sides are past 50.
		var past []string
		for _, n := range f.Notes(p, polygonPlaces) {
			if n.Code == molding.PastReach {
				past = append(past, string(n.Path))
				if n.Level != explain.Warning || n.Values[2].Key != "jig" || n.Values[2].Value.N > int64(40*measure.Degree) {
					t.Errorf("%+v", n)
				}
			}
		}
		if want := []string{"/f/rails/1/start/saw", "/f/rails/2/start/saw", "/f/rails/2/finish/saw", "/f/rails/3/finish/saw"}; !slices.Equal(past, want) {
			t.Errorf("past the reach are %q, want %q", past, want)
		}
	})
	t.Run("RAIL-06", func(t *testing.T) {
		for corner, want := range map[measure.Angle][2]string{93 * measure.Degree: {"43.50", "46.50"}, 90_500_000_000: {"44.75", "45.25"}} {
			a, b := molding.MiterBetween(corner, in("2"), in("2"))
			is(t, "saw", degreesOf(a.Saw, 2), want[0])
			is(t, "angle to the edge", degreesOf(a.Edge, 2), want[1])
			if a != b {
				t.Errorf("the two ends differ: %+v %+v", a, b)
			}
		}
	})
	t.Run("S-11", func(t *testing.T) {
		loss := molding.SledLoss(in("1/8"), 45*measure.Degree)
		is(t, "loss", decimals(loss, 3), "0.177")
		is(t, "short by", decimals(loss-in("1/8"), 3), "0.052")
		lies(t, "right at .088", molding.SledLoss(in("0.08839"), 45*measure.Degree), in("1/8"), in("0.0001"))
	})
	t.Run("S-12", func(t *testing.T) {
		f := one("1 1/2", "1/4", "0")
		s := f.Sections[0]
		f.Sections = []molding.Section{{}, s, s, s, s}
		p := rails(f, shape(plane.Regular(5, plane.OneSide, in("10"))))
		square, mitered := 0, 0
		for _, r := range p.Rails[1:] {
			for _, e := range []molding.RailEnd{r.Start, r.Finish} {
				if e.Square {
					square++
					if e.Saw != 0 || e.Edge != measure.RightAngle || e.Joint != s.Face {
						t.Errorf("square: %+v", e)
					}
				} else {
					mitered++
					is(t, "saw", degreesOf(e.Saw, 3), "36.000")
				}
			}
		}
		if square != 2 || mitered != 6 || p.Closed() || p.Rails[0].Long != 0 {
			t.Errorf("%d square ends and %d mitered ones", square, mitered)
		}
		notes := 0
		for _, n := range f.Notes(p, polygonPlaces) {
			if n.Code == molding.SquareEnds {
				notes++
			}
		}
		if notes != 2 {
			t.Errorf("%d notes on square ends", notes)
		}
	})
}

var polygonPlaces = molding.PolygonPlaces{Frame: "/order/frame", Panel: "/order/panel", Worked: "/f"}

// star is a five-point star with sides of 10 in.
func star(t *testing.T) plane.Polygon {
	t.Helper()
	var sides []plane.Side
	for range 5 {
		sides = append(sides, plane.Side{Length: in("10"), Turn: 144 * measure.Degree}, plane.Side{Length: in("10"), Turn: -72 * measure.Degree})
	}
	return shape(plane.Closed(sides, plane.Tolerance))
}

func total(angles []measure.Angle) measure.Angle {
	var sum measure.Angle
	for _, a := range angles {
		sum += a
	}
	return sum
}

func lies(t *testing.T, what string, got, want, tolerance measure.Length) {
	t.Helper()
	if d := got - want; d < -tolerance || d > tolerance {
		t.Errorf("%s is %v, want %v to %v", what, got, want, tolerance)
	}
}

// TestOctagonCheck: computed elsewhere from the formulas of Machinery's Handbook, 31st
// ed., p. 82 (C): 18 across flats, allowance 1/8, face 2 1/2, lip 3/8.
func TestOctagonCheck(t *testing.T) {
	f := molding.Frame{Kind: molding.Rabbeted, Face: in("2 1/2"), Lip: in("3/8"), Allowance: in("1/8")}
	r := f.AroundRegular(molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: in("18")})
	is(t, "outside", decimals(r.Outside, 3), "22.375")
	is(t, "rail", decimals(r.LongPoint, 5), "9.26803")
	is(t, "sight", decimals(r.ShortPoint, 5), "7.19696")
	is(t, "saw", degreesOf(r.Saw, 1), "22.5")
	shown := measure.Format{Style: measure.Fraction, Step: measure.Inch / 32}
	is(t, "shown", shown.Number(r.LongPoint, measure.Up), "9 9/32")
	p := rails(one("2 1/2", "3/8", "1/8"), shape(plane.Regular(8, plane.Flats, in("18"))))
	for _, rail := range p.Rails {
		lies(t, "rail as a polygon", rail.Outer, r.LongPoint, 3)
		lies(t, "sight as a polygon", rail.Sight, r.ShortPoint, 3)
		if rail.Start.Saw != r.Saw || rail.Finish.Saw != r.Saw || rail.Long != rail.Outer {
			t.Errorf("rail %+v", rail)
		}
	}
}

// TestRegularBothWays: every regular frame is what the outline of its panel makes,
// and its rail makes its opening again.
func TestRegularBothWays(t *testing.T) {
	f := molding.Frame{Kind: molding.Rabbeted, Face: in("2"), Lip: in("1/4"), Allowance: in("1/8")}
	for n := 3; n <= molding.MostCorners; n++ {
		for _, across := range []plane.Across{plane.Flats, plane.Points, plane.OneSide} {
			panel := molding.RegularPanel{Sides: n, Across: across, Size: in("17 3/16")}
			r := f.AroundRegular(panel)
			p := rails(one("2", "1/4", "1/8"), shape(plane.Regular(n, across, panel.Size)))
			for _, rail := range p.Rails {
				lies(t, "rail", rail.Outer, r.LongPoint, 6)
				lies(t, "sight", rail.Sight, r.ShortPoint, 6)
				lies(t, "growth", rail.Outer-rail.Sight, r.Growth, 2)
			}
			lies(t, "opening from the rail", f.RegularOpening(n, r.LongPoint), r.Opening, measure.Length(n))
			lies(t, "points", r.Points.Cos(r.Saw), r.Outside, 1)
			if total(molding.RegularSettings(n)) != measure.Turn || total(p.Settings()) != measure.Turn {
				t.Errorf("n = %d: the settings add up to %v and %v", n, total(molding.RegularSettings(n)), total(p.Settings()))
			}
			for _, a := range molding.RegularSettings(n) {
				if d := a - r.Saw; d < -1 || d > 1 {
					t.Errorf("n = %d: a setting of %v, not %v", n, a, r.Saw)
				}
			}
		}
	}
	if molding.RegularSettings(molding.MostSides+1) != nil || molding.RegularSettings(2) != nil {
		t.Error("settings of what is no frame")
	}
}

// chance is a chance frame around a chance panel.
func chance(r *rand.Rand) (molding.PolygonFrame, plane.Polygon, bool) {
	n := 3 + r.IntN(8)
	corners := make([]plane.Point, n)
	for i := range corners {
		a := measure.Turn/measure.Angle(n)*measure.Angle(i) + measure.Angle(r.Int64N(int64(measure.Turn)/int64(n)/2))
		d := in("12") + measure.Length(r.Int64N(int64(in("12"))))
		corners[i] = plane.Point{X: d.Cos(a), Y: d.Sin(a)}
	}
	if r.IntN(2) == 0 {
		slices.Reverse(corners)
	}
	panel, err := plane.New(corners...)
	if err != nil {
		return molding.PolygonFrame{}, panel, false
	}
	f := molding.PolygonFrame{Allowance: 2 * measure.Length(r.Int64N(int64(in("1/8"))))}
	for range n {
		lip := measure.Length(r.Int64N(int64(in("1/2"))))
		f.Sections = append(f.Sections, molding.Section{Face: lip + 1 + measure.Length(r.Int64N(int64(in("2")))), Lip: lip})
	}
	switch r.IntN(4) {
	case 0:
		f.Sections = f.Sections[:1]
	case 1:
		f.Sections[r.IntN(n)] = molding.Section{}
	}
	return f, panel, true
}

// TestRailsAgainstLines: the rails, worked out by angles, are what lines make that
// are moved: the second road is package plane's, which is held against fractions of
// any size. Closed rails come home and turn once.
func TestRailsAgainstLines(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	closed, open := 0, 0
	for range 3000 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		p, err := f.Around(panel)
		if err != nil {
			continue
		}
		sight, err := f.SightEdge(panel)
		if err != nil {
			continue
		}
		for i, rail := range p.Rails {
			if !rail.IsZero() {
				lies(t, "sight edge", rail.Sight, sight.Side(i).Length, 4)
			}
		}
		if !p.Closed() {
			open++
			continue
		}
		if sum := total(p.Settings()); sum != measure.Turn {
			t.Fatalf("the settings add up to %v", sum)
		}
		outside, err := f.Outside(panel)
		if err != nil {
			continue
		}
		closed++
		n := len(p.Rails)
		for i, rail := range p.Rails {
			lies(t, "outer edge", rail.Outer, outside.Side(i).Length, 8)
			before := p.Rails[(i+n-1)%n]
			// The joint lies between the two corners, and both rails have it.
			a, b := sight.Corner(i), outside.Corner(i)
			lies(t, "joint", rail.Start.Joint, measure.Hypot(b.X-a.X, b.Y-a.Y), 3)
			lies(t, "joint", before.Finish.Joint, rail.Start.Joint, 3)
			if got := before.Finish.Edge + rail.Start.Edge; got != panel.Interior(i) || rail.Start.Edge <= 0 || before.Finish.Edge <= 0 {
				t.Fatalf("the edges at corner %d add up to %v, not %v", i, got, panel.Interior(i))
			}
			lies(t, "growth", rail.Face.Tan(rail.Start.Saw), rail.Start.Growth, 4+rail.Start.Joint/100_000_000)
		}
		way := plane.Walk(plane.Point{}, 0, p.Sides()...)
		end := way[len(way)-1]
		lies(t, "home", measure.Hypot(end.X, end.Y), 0, measure.Length(n))
	}
	if closed < 500 || open < 100 {
		t.Errorf("%d closed and %d open", closed, open)
	}
}

// TestQuarterTurn: a frame is the same frame on its side, and from any corner on.
func TestQuarterTurn(t *testing.T) {
	r := rand.New(rand.NewPCG(23, 24))
	for range 200 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		p, err := f.Around(panel)
		q, err2 := f.Around(shape(shape(panel.Turned(measure.RightAngle)).Moved(plane.Point{X: 1234, Y: -77})))
		if (err == nil) != (err2 == nil) || !slices.Equal(p.Rails, q.Rails) || p.Footage != q.Footage {
			t.Fatalf("%+v and %+v", p.Rails, q.Rails)
		}
	}
}

// TestWiderByNanometers: a hair more face is a hair more rail, by tan of half the
// turn at each end.
func TestWiderByNanometers(t *testing.T) {
	panel := shape(plane.Regular(4, plane.Flats, in("20")))
	f := one("2", "1/4", "1/8")
	base := rails(f, panel)
	f.Sections[0].Face++
	if got := rails(f, panel); got.Rails[0].Outer != base.Rails[0].Outer+2 || got.Rails[0].Sight != base.Rails[0].Sight {
		t.Errorf("%+v after %+v", got.Rails[0], base.Rails[0])
	}
	f.Sections[0].Face--
	f.Sections[0].Lip++
	if got := rails(f, panel); got.Rails[0].Outer != base.Rails[0].Outer-2 || got.Rails[0].Sight != base.Rails[0].Sight-2 {
		t.Errorf("%+v after %+v", got.Rails[0], base.Rails[0])
	}
}

func TestPolygonRefused(t *testing.T) {
	box := shape(plane.Box(size("16", "20")))
	straight := shape(plane.New(plane.Point{}, plane.Point{X: in("8")}, plane.Point{X: in("16")}, plane.Point{X: in("16"), Y: in("20")}, plane.Point{Y: in("20")}))
	needle := shape(plane.Closing([]measure.Length{in("30"), in("30")}, []measure.Angle{1000}))
	s := molding.Section{Face: in("2")}
	for _, row := range []struct {
		name     string
		panel    plane.Polygon
		sections []molding.Section
		code     explain.Code
	}{
		{"one for all", box, []molding.Section{s}, ""},
		{"each its own", box, []molding.Section{s, s, {}, s}, ""},
		{"none", box, nil, explain.TooFew},
		{"too few", box, []molding.Section{s, s, s}, explain.TooFew},
		{"too many", box, []molding.Section{s, s, s, s, s}, explain.TooMany},
		{"no panel", plane.Polygon{}, []molding.Section{s}, explain.TooFew},
		{"most corners", shape(plane.Regular(molding.MostCorners, plane.Flats, in("20"))), []molding.Section{s}, ""},
		{"too many corners", shape(plane.Regular(molding.MostCorners+1, plane.Flats, in("20"))), []molding.Section{s}, explain.TooMany},
		{"a splice", straight, []molding.Section{s}, ""},
		{"a splice of two widths", straight, []molding.Section{s, {Face: in("1")}, s, s, s}, plane.Step},
		{"a needle", needle, []molding.Section{s}, plane.Far},
	} {
		_, err := molding.PolygonFrame{Sections: row.sections}.Around(row.panel)
		var code explain.Code
		if e := (*plane.Error)(nil); errors.As(err, &e) {
			code = e.Code
		}
		if code != row.code || (err == nil) != (row.code == "") {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
}

func TestPolygonCheck(t *testing.T) {
	const most = explain.MaxLength
	for _, row := range []struct {
		name   string
		change func(*molding.PolygonFrame)
		want   []string
	}{
		{"as it is", func(*molding.PolygonFrame) {}, nil},
		{"one for all", func(f *molding.PolygonFrame) { f.Sections = f.Sections[:1] }, nil},
		{"one without", func(f *molding.PolygonFrame) { f.Sections[2] = molding.Section{} }, nil},
		{"none", func(f *molding.PolygonFrame) { f.Sections = nil }, []string{"/f/sections too_few"}},
		{"two", func(f *molding.PolygonFrame) { f.Sections = f.Sections[:2] }, []string{"/f/sections too_few"}},
		{"five", func(f *molding.PolygonFrame) { f.Sections = append(f.Sections, f.Sections[0]) }, []string{"/f/sections too_many"}},
		{"all without", func(f *molding.PolygonFrame) { f.Sections = make([]molding.Section, 4) }, []string{"/f/sections missing"}},
		{"a lip without a face", func(f *molding.PolygonFrame) { f.Sections[1].Face = 0 }, []string{"/f/sections/1/face out_of_range"}},
		{"face too wide", func(f *molding.PolygonFrame) { f.Sections[1].Face = most + 1 }, []string{"/f/sections/1/face out_of_range"}},
		{"negative lip", func(f *molding.PolygonFrame) { f.Sections[3].Lip = -1 }, []string{"/f/sections/3/lip out_of_range"}},
		{"lip as wide as the face", func(f *molding.PolygonFrame) { f.Sections[3].Lip = f.Sections[3].Face }, []string{"/f/sections/3/lip out_of_range"}},
		{"negative allowance", func(f *molding.PolygonFrame) { f.Allowance = -1 }, []string{"/f/allowance out_of_range"}},
		{"negative reach", func(f *molding.PolygonFrame) { f.Reach = -1 }, []string{"/f/reach out_of_range"}},
		{"reach past square", func(f *molding.PolygonFrame) { f.Reach = measure.RightAngle + 1 }, []string{"/f/reach out_of_range"}},
	} {
		f := one("2", "1/4", "1/8")
		f.Sections = slices.Repeat(f.Sections, 4)
		row.change(&f)
		var c explain.Checker
		f.Check(&c, "/f", 4)
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	for _, row := range []struct {
		panel molding.RegularPanel
		want  []string
	}{
		{molding.RegularPanel{Sides: 3, Across: plane.Flats, Size: 1}, nil},
		{molding.RegularPanel{Sides: molding.MostSides, Across: plane.OneSide, Size: most}, nil},
		{molding.RegularPanel{Sides: 2, Across: plane.Points, Size: 1}, []string{"/p/sides out_of_range"}},
		{molding.RegularPanel{Sides: molding.MostSides + 1, Across: plane.Points, Size: 1}, []string{"/p/sides out_of_range"}},
		{molding.RegularPanel{Sides: 8, Across: "Flats", Size: 0}, []string{"/p/across wrong_case", "/p/size out_of_range"}},
	} {
		var c explain.Checker
		row.panel.Check(&c, "/p")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%+v: %q, want %q", row.panel, got, row.want)
		}
	}
}

// TestOutlines: the rabbet lies half the allowance outside the panel, the sight edge
// the lip inside the rabbet, the outside a face outside the sight edge; a side without
// molding stays.
func TestOutlines(t *testing.T) {
	panel := shape(plane.Box(size("16", "20")))
	f := one("2", "1/4", "1/8")
	for _, row := range []struct {
		name          string
		of            func(plane.Polygon) (plane.Polygon, error)
		width, height string
	}{
		{"opening", f.Opening, "16 1/8", "20 1/8"},
		{"sight edge", f.SightEdge, "15 5/8", "19 5/8"},
		{"outside", f.Outside, "19 5/8", "23 5/8"},
	} {
		if got := shape(row.of(panel)).Size(); got != size(row.width, row.height) {
			t.Errorf("%s is %v, want %s x %s", row.name, got, row.width, row.height)
		}
	}
	s := f.Sections[0]
	f.Sections = []molding.Section{s, s, {}, s}
	if got := shape(f.SightEdge(panel)).Corner(2); got.Y != in("20") {
		t.Errorf("the side without molding lies at %v", got.Y)
	}
}

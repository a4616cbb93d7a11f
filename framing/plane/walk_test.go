package plane_test

import (
	"errors"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// star is a five-point star by its ten sides: tips of 36 degrees, notches of 252.
func star(side measure.Length) []plane.Side {
	var sides []plane.Side
	for range 5 {
		sides = append(sides, plane.Side{Length: side, Turn: -72 * deg}, plane.Side{Length: side, Turn: 144 * deg})
	}
	return sides
}

func TestStar(t *testing.T) {
	p := must(plane.Closed(star(10*inch), 1))
	if p.Turning() != 5*144*deg-5*72*deg || p.Convex() || p.Clockwise() {
		t.Errorf("the star turns by %v", p.Turning())
	}
	for i, s := range p.Sides() {
		if want := star(10 * inch)[i]; s != want {
			t.Errorf("side %d is %v, want %v", i, s, want)
		}
	}
	// The tips of a star are the corners of a regular pentagon.
	tips := must(plane.New(p.Corner(0), p.Corner(2), p.Corner(4), p.Corner(6), p.Corner(8)))
	for i := range 5 {
		near(t, "tip to tip", tips.Side(i).Length, tips.Side(0).Length, 1)
	}
}

// TestClosedAgain: walking along the sides of any outline comes home, within a
// nanometer a side, and makes that outline again.
func TestClosedAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 10))
	for range 500 {
		n := 3 + r.IntN(40)
		p, err := plane.New(spread(r, n, 10*inch, 60*inch)...)
		if err != nil {
			continue
		}
		a, b := p.Corner(0), p.Corner(1)
		way := plane.Walk(a, measure.Slope(b.Y-a.Y, b.X-a.X), p.Sides()...)
		for i, c := range way {
			near(t, "walked X", c.X, p.Corner(i).X, measure.Length(n))
			near(t, "walked Y", c.Y, p.Corner(i).Y, measure.Length(n))
		}
		q, err := plane.Closed(p.Sides(), measure.Length(n))
		if err != nil {
			t.Fatal(err)
		}
		for i := range n {
			near(t, "side", q.Side(i).Length, p.Side(i).Length, 1)
			near(t, "diagonal", q.Diagonal(0, i), p.Diagonal(0, i), measure.Length(n))
		}
	}
}

// TestCompass: a gap within the tolerance is spread, one past it is said.
func TestCompass(t *testing.T) {
	square := func(last measure.Length) []plane.Side {
		return []plane.Side{{10 * inch, 90 * deg}, {10 * inch, 90 * deg}, {10 * inch, 90 * deg}, {last, 90 * deg}}
	}
	_, err := plane.Closed(square(10*inch+inch/8), inch/8-1)
	var e *plane.Error
	if !errors.As(err, &e) || e.Code != plane.Open || e.Given != explain.Of(inch/8) || e.Limit != explain.Of(inch/8-1) {
		t.Errorf("%+v", e)
	}
	p := must(plane.Closed(square(10*inch+inch/8), inch/8))
	if p.Turning() != measure.Turn {
		t.Errorf("turns by %v", p.Turning())
	}
	for i := range 4 {
		near(t, "side", p.Side(i).Length, 10*inch+inch/16, inch/16)
	}
	p = must(plane.Closed(square(10*inch), 0))
	for i := range 4 {
		if (p.Side(i) != plane.Side{Length: 10 * inch, Turn: 90 * deg}) {
			t.Errorf("side %d is %v", i, p.Side(i))
		}
	}
}

func TestClosedRefused(t *testing.T) {
	side := func(l measure.Length, turn measure.Angle) plane.Side { return plane.Side{Length: l, Turn: turn} }
	for _, row := range []struct {
		name  string
		sides []plane.Side
		code  explain.Code
	}{
		{"none", nil, explain.TooFew},
		{"two", []plane.Side{side(1, 180*deg-1), side(1, 180*deg-1)}, explain.TooFew},
		{"too many", make([]plane.Side, plane.MaxMeasured+1), explain.TooMany},
		{"a side of nothing", []plane.Side{side(0, 120*deg), side(1, 120*deg), side(1, 120*deg)}, plane.NoLength},
		{"a side too long", []plane.Side{side(explain.MaxLength+1, 120*deg), side(1, 120*deg), side(1, 120*deg)}, explain.OutOfRange},
		{"a corner of nothing", []plane.Side{side(inch, 180*deg), side(inch, 120*deg), side(inch, 60*deg)}, explain.OutOfRange},
		{"a corner of a whole turn", []plane.Side{side(inch, -180*deg), side(inch, 170*deg), side(inch, 170*deg)}, explain.OutOfRange},
		{"angles that leave a gap", []plane.Side{side(inch, 120*deg), side(inch, 120*deg), side(inch, 119*deg)}, plane.AngleSum},
		{"a nanodegree each", []plane.Side{side(inch, 120*deg), side(inch, 120*deg+1), side(inch, 120*deg+2)}, ""},
		{"a nanodegree more", []plane.Side{side(inch, 120*deg), side(inch, 120*deg+2), side(inch, 120*deg+2)}, plane.AngleSum},
		{"twice around", []plane.Side{side(inch, 144*deg), side(inch, 144*deg), side(inch, 144*deg), side(inch, 144*deg), side(inch, 144*deg)}, plane.AngleSum},
		{"45-45-90 does not close 16, 16, 22", []plane.Side{side(16*inch, 90*deg), side(16*inch, 135*deg), side(22*inch, 135*deg)}, plane.Open},
	} {
		if _, err := plane.Closed(row.sides, 1); code(t, err) != row.code {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
}

func TestClosing(t *testing.T) {
	// Five of six: the sixth and its corners follow.
	p := must(plane.Closing(ins("9", "9", "9", "9", "9"), []measure.Angle{120 * deg, 120 * deg, 120 * deg, 120 * deg}))
	for i := range 6 {
		if (p.Side(i) != plane.Side{Length: 9 * inch, Turn: 60 * deg}) {
			t.Errorf("side %d is %v", i, p.Side(i))
		}
	}
	// The third side of a right triangle.
	if q := must(plane.Closing(ins("9", "12"), []measure.Angle{90 * deg})); q.Side(2).Length != 15*inch {
		t.Errorf("3-4-5 closes with %v", q.Side(2).Length)
	}
	for _, row := range []struct {
		name     string
		lengths  []measure.Length
		interior []measure.Angle
		code     explain.Code
	}{
		{"one side", ins("9"), nil, explain.TooFew},
		{"too few angles", ins("9", "9"), nil, explain.TooFew},
		{"too many angles", ins("9", "9"), []measure.Angle{deg, deg}, explain.TooMany},
		{"a side of nothing", ins("9", "0"), []measure.Angle{deg}, plane.NoLength},
		{"a corner of nothing", ins("9", "9"), []measure.Angle{0}, explain.OutOfRange},
		{"a corner of a turn", ins("9", "9"), []measure.Angle{measure.Turn}, explain.OutOfRange},
		{"a straight line", ins("9", "9"), []measure.Angle{180 * deg}, plane.Reverses},
		{"home already", ins("9", "9", "9"), []measure.Angle{60 * deg, 60 * deg}, plane.NoLength},
		{"through itself", ins("9", "9", "9", "9"), []measure.Angle{30 * deg, 30 * deg, 60 * deg}, plane.Crosses},
		{"out of reach", []measure.Length{explain.MaxLength, explain.MaxLength, explain.MaxLength}, []measure.Angle{179 * deg, 179 * deg}, plane.Far},
	} {
		if _, err := plane.Closing(row.lengths, row.interior); code(t, err) != row.code {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
}

// TestMisses: POLY-05 and POLY-11, chains of rails that were cut a little off do
// not come home.
func TestMisses(t *testing.T) {
	miss := func(n int, rail measure.Length, cut measure.Angle) measure.Length {
		sides := make([]plane.Side, n)
		for i := range sides {
			sides[i] = plane.Side{Length: rail, Turn: 2 * cut}
		}
		end := plane.Walk(plane.Point{}, 0, sides...)[n]
		return measure.Hypot(end.X, end.Y)
	}
	for _, row := range []struct {
		id     string
		n      int
		rail   string
		cut    measure.Angle
		places int
		want   string
	}{
		{"POLY-05", 6, "12", 30_800_000_000, 2, "1.96"},
		{"POLY-05", 6, "12", 29_200_000_000, 2, "2.06"},
		{"POLY-05", 6, "12", 30_500_000_000, 2, "1.24"},
		{"POLY-11", 8, "6", 22_528_000_000, 3, "0.061"},
		{"square", 4, "12", 45 * deg, 2, "0.00"},
	} {
		t.Run(row.id, func(t *testing.T) {
			if got := inches(miss(row.n, in(row.rail), row.cut), row.places); got != row.want {
				t.Errorf("%d rails of %s cut at %v miss by %s, want %s", row.n, row.rail, row.cut, got, row.want)
			}
		})
	}
}

package plane_test

import (
	"math/big"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// handbook is the table "Area, Length of Side, and Inscribed and Circumscribed
// Radii of Regular Polygons", Machinery's Handbook, 31st ed., p. 82, which prints
// four decimals (V); the further ones are computed from the formulas (C). The row
// of 11 is not printed there; its area for a side of 4, 149.85023851, is in a
// metric table (V). A is the surface, S a side, R the way from the middle to a
// corner, r that to a side.
var handbook = []struct {
	n                                                       int
	areaS, areaR, areaFlat, cornerS, flatS, sideR, sideFlat string
	miter, interior                                         string
}{
	{3, "0.4330127019", "1.2990381057", "5.1961524227", "0.5773502692", "0.2886751346", "1.7320508076", "3.4641016151", "60", "60"},
	{4, "1", "2", "4", "0.7071067812", "0.5", "1.4142135624", "2", "45", "90"},
	{5, "1.7204774006", "2.3776412907", "3.6327126400", "0.8506508084", "0.6881909602", "1.1755705046", "1.4530850560", "36", "108"},
	{6, "2.5980762114", "2.5980762114", "3.4641016151", "1", "0.8660254038", "1", "1.1547005384", "30", "120"},
	{7, "3.6339124440", "2.7364101886", "3.3710223317", "1.1523824355", "1.0382606983", "0.8677674782", "0.9631492376", "25.714286", "128.571429"},
	{8, "4.8284271247", "2.8284271247", "3.3137084990", "1.3065629649", "1.2071067812", "0.7653668647", "0.8284271247", "22.5", "135"},
	{9, "6.1818241938", "2.8925442436", "3.2757321084", "1.4619022001", "1.3737387097", "0.6840402867", "0.7279404685", "20", "140"},
	{10, "7.6942088429", "2.9389262615", "3.2491969623", "1.6180339887", "1.5388417686", "0.6180339887", "0.6498393925", "18", "144"},
	{11, "9.3656399069", "2.9735244960", "3.2298914223", "1.7747327664", "1.7028436194", "0.5634651137", "0.5872529859", "16.363636", "147.272727"},
	{12, "11.1961524227", "3", "3.2153903092", "1.9318516526", "1.8660254038", "0.5176380902", "0.5358983849", "15", "150"},
}

// cornerFlat are R/r of that table, sideAcross what a side is of the size across
// flats, F, of which only an even count has one (C).
var (
	cornerFlat = map[int]string{
		3: "2", 4: "1.4142135624", 5: "1.2360679775", 6: "1.1547005384", 7: "1.1099162642", 8: "1.0823922003",
		9: "1.0641777725", 10: "1.0514622242", 11: "1.0422171162", 12: "1.0352761804",
	}
	sideAcross = map[int]string{4: "1", 6: "0.5773502692", 8: "0.4142135624", 10: "0.3249196962", 12: "0.2679491924"}
)

func ratOf(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

// printedAs compares a / b with a number: to the handbook's four decimals, and to
// a unit of the ninth.
func printedAs(t *testing.T, n int, what string, a, b int64, want string) {
	t.Helper()
	got := big.NewRat(a, b)
	if got.FloatString(4) != ratOf(want).FloatString(4) {
		t.Errorf("n = %d: %s is %s, printed %s", n, what, got.FloatString(4), ratOf(want).FloatString(4))
	}
	if off := new(big.Rat).Sub(got, ratOf(want)); off.Abs(off).Cmp(ratOf("0.000000001")) > 0 {
		t.Errorf("n = %d: %s is %s, want %s", n, what, got.FloatString(12), want)
	}
}

func TestHandbook(t *testing.T) {
	const size = 20 * measure.Meter
	square := int64(size/measure.Micrometer) * int64(size/measure.Micrometer)
	for _, row := range handbook {
		bySide := must(plane.Regular(row.n, plane.OneSide, size))
		byCorner := must(plane.Regular(row.n, plane.Points, 2*size))
		byFlat := must(plane.Regular(row.n, plane.Flats, 2*size))
		printedAs(t, row.n, "A/S2", int64(bySide.Area()), square, row.areaS)
		printedAs(t, row.n, "A/R2", int64(byCorner.Area()), square, row.areaR)
		printedAs(t, row.n, "A/r2", int64(byFlat.Area()), square, row.areaFlat)
		printedAs(t, row.n, "S/R", int64(byCorner.Side(0).Length), int64(size), row.sideR)
		printedAs(t, row.n, "S/r", int64(byFlat.Side(0).Length), int64(size), row.sideFlat)
		c, low := bySide.Corner(0), bySide.Corner(0).Y
		printedAs(t, row.n, "R/S", int64(measure.Hypot(c.X, c.Y)), int64(size), row.cornerS)
		printedAs(t, row.n, "r/S", int64(-low), int64(size), row.flatS)
		d := byFlat.Corner(0)
		printedAs(t, row.n, "R/r", int64(measure.Hypot(d.X, d.Y)), int64(size), cornerFlat[row.n])
		// Standing on a side, an even one is as high as its size across flats, an odd
		// one as from a side to the corner across.
		if across, even := sideAcross[row.n]; even {
			printedAs(t, row.n, "S/F", int64(byFlat.Side(0).Length), int64(2*size), across)
			near(t, "height", byFlat.Size().Height, 2*size, 1)
		} else {
			near(t, "height", byFlat.Size().Height, size+measure.Hypot(d.X, d.Y), 2)
		}
		if got, want := degrees(plane.HalfTurn(row.n), 6), ratOf(row.miter).FloatString(6); got != want {
			t.Errorf("n = %d: saw %s, want %s", row.n, got, want)
		}
		if got, want := degrees(bySide.Interior(1), 6), ratOf(row.interior).FloatString(6); got != want {
			t.Errorf("n = %d: corner %s, want %s", row.n, got, want)
		}
	}
	// The same handbook, p. 78 (V): 12 sides in a circle of radius 8 cm.
	p := must(plane.Regular(12, plane.Points, 16*measure.Centimeter))
	if got := big.NewRat(int64(p.Side(0).Length), int64(measure.Centimeter)).FloatString(3); got != "4.141" {
		t.Errorf("a side is %s cm, printed 4.141", got)
	}
	if got := p.Area() / measure.SquareMillimeter; got != 19200 && got != 19199 {
		t.Errorf("the surface is %v, want 192 cm2", p.Area())
	}
}

// TestRegular: every count closes, level at the bottom, turns to a whole turn, and
// goes through its size whichever way it is measured.
func TestRegular(t *testing.T) {
	counts := []int{1000, plane.MaxCorners}
	for n := 3; n <= 130; n++ {
		counts = append(counts, n)
	}
	for _, n := range counts {
		size := 700 * measure.Millimeter
		p, err := plane.Regular(n, plane.Flats, size)
		if err != nil {
			t.Fatalf("n = %d: %v", n, err)
		}
		if p.Len() != n || p.Turning() != measure.Turn || !p.Convex() || p.Clockwise() {
			t.Errorf("n = %d: %d corners, turns by %v", n, p.Len(), p.Turning())
		}
		low, _ := p.Bounds()
		near(t, "bottom", -low.Y, size/2, 1)
		near(t, "bottom left", p.Corner(0).Y, -size/2, 1)
		near(t, "bottom right", p.Corner(1).Y, -size/2, 1)
		side := p.Side(0).Length
		for i := range n {
			if p.Side(i).Length != side || p.Side(i).Turn-measure.Turn/measure.Angle(n) > 1 {
				t.Fatalf("n = %d: side %d is %v", n, i, p.Side(i))
			}
			near(t, "corner to corner", p.Diagonal(i, i+1), side, 1)
		}
		if n <= 130 {
			q := must(plane.Regular(n, plane.OneSide, side))
			near(t, "by side", q.Diagonal(0, n/2), p.Diagonal(0, n/2), measure.Length(n))
			c := p.Corner(0)
			points := must(plane.Regular(n, plane.Points, 2*measure.Hypot(c.X, c.Y)))
			near(t, "by points", points.Side(0).Length, side, 3)
		}
	}
}

func TestRegularRefused(t *testing.T) {
	for _, row := range []struct {
		n      int
		across plane.Across
		size   measure.Length
		code   explain.Code
	}{
		{2, plane.Flats, inch, explain.TooFew},
		{-1, plane.Flats, inch, explain.TooFew},
		{plane.MaxCorners + 1, plane.Flats, inch, explain.TooMany},
		{8, plane.Flats, 0, plane.NoLength},
		{8, plane.Flats, -1, explain.OutOfRange},
		{8, plane.Flats, plane.Reach + 1, explain.OutOfRange},
		{8, "round", inch, explain.NotAChoice},
		{plane.MaxCorners, plane.OneSide, 4 * inch, plane.Far},
		{3, plane.Flats, plane.Reach, ""},
	} {
		if _, err := plane.Regular(row.n, row.across, row.size); code(t, err) != row.code {
			t.Errorf("%d sides, %v %s: %v, want %q", row.n, row.size, row.across, err, row.code)
		}
	}
	for _, choice := range plane.Flats.Choices() {
		if _, err := plane.Regular(5, plane.Across(choice), inch); err != nil {
			t.Errorf("%s is a choice and refused: %v", choice, err)
		}
	}
	if plane.Turns(2) != nil || plane.Turns(plane.MaxCorners+1) != nil || plane.HalfTurn(0) != 60*deg {
		t.Error("turns of what is no polygon")
	}
}

package plane_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// precision is what the second road counts with, in bits.
const precision = 160

func bigOf(v float64) *big.Float { return new(big.Float).SetPrec(precision).SetFloat64(v) }

func bigInt(v measure.Length) *big.Float {
	return new(big.Float).SetPrec(precision).SetInt64(int64(v))
}

func add(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(precision).Add(a, b) }
func sub(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(precision).Sub(a, b) }
func mul(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(precision).Mul(a, b) }
func quo(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(precision).Quo(a, b) }
func root(a *big.Float) *big.Float   { return new(big.Float).SetPrec(precision).Sqrt(a) }

func parsed(s string) *big.Float {
	v, _, err := big.ParseFloat(s, 10, precision, big.ToNearestEven)
	if err != nil {
		panic(err)
	}
	return v
}

var bigPi = parsed("3.14159265358979323846264338327950288419716939937510582097494459")

// bigPerimeter is the perimeter of an ellipse with these whole axes by the rule of
// Ivory and Bessel, run from the far end: P(a, b) = 2 P(a', b') - 2 pi a b / M, with
// a' and b' the means of a and b, and M what the means come to.
func bigPerimeter(a, b *big.Float) *big.Float {
	var products []*big.Float
	for range 12 {
		products = append(products, mul(a, b))
		a, b = quo(add(a, b), bigOf(2)), root(mul(a, b))
	}
	around := mul(bigPi, a) // a circle
	for i := len(products) - 1; i >= 0; i-- {
		around = sub(mul(around, bigOf(2)), quo(mul(bigPi, products[i]), a))
	}
	return around
}

// summed is the same by the trapezoid rule: the mean of sqrt(a^2 sin^2 + b^2 cos^2)
// around the whole turn, whose error falls like a power of (a - b)/(a + b). The
// sines come from halving the angle.
func summed(a, b *big.Float, halvings int) *big.Float {
	one, half := bigOf(1), bigOf(0.5)
	cosines := []*big.Float{bigOf(0)} // of 90, 45, 22.5 ... degrees
	for range halvings {
		cosines = append(cosines, root(mul(add(one, cosines[len(cosines)-1]), half)))
	}
	n := 1 << halvings
	c, s := one, bigOf(0)
	stepC := cosines[halvings]
	stepS := root(sub(one, mul(stepC, stepC)))
	total := bigOf(0)
	for i := 0; i <= n; i++ {
		y := root(add(mul(mul(a, a), mul(s, s)), mul(mul(b, b), mul(c, c))))
		if i == 0 || i == n {
			y = mul(y, half)
		}
		total = add(total, y)
		c, s = sub(mul(c, stepC), mul(s, stepS)), add(mul(s, stepC), mul(c, stepS))
	}
	// A quarter of it is half of pi over n, times the sum of halves of whole axes.
	return quo(mul(bigPi, total), bigOf(float64(n)))
}

// units is how many units in the last place v is off.
func units(v float64, want *big.Float) float64 {
	unit := math.Nextafter(v, math.Inf(1)) - v
	off, _ := sub(bigOf(v), want).Float64()
	return math.Abs(off) / unit
}

// TestPerimeterToTheLastPlace: from a circle to ovals a thousand times as long as
// wide, and as far as the plane goes.
func TestPerimeterToTheLastPlace(t *testing.T) {
	r := rand.New(rand.NewPCG(41, 42))
	worst := 0.0
	try := func(w, h measure.Length) {
		v := plane.PerimeterFloat(w, h)
		if v != plane.PerimeterFloat(h, w) {
			t.Errorf("%d x %d: not the same lying and standing", w, h)
		}
		want := bigPerimeter(bigInt(max(w, h)), bigInt(min(w, h)))
		off := units(v, want)
		if worst = max(worst, off); off >= 1 {
			t.Errorf("%d x %d: %v, off by %v units in the last place", w, h, v, off)
		}
		got := plane.Ellipse{Width: w, Height: h}.Perimeter()
		if off, _ := sub(bigInt(got), want).Float64(); math.Abs(off) > 0.5+1e-6 {
			t.Errorf("%d x %d: %d, off by %v nm", w, h, got, off)
		}
	}
	for i := range 8000 {
		long := measure.Length(math.Exp(r.Float64() * math.Log(float64(plane.Reach))))
		ratio := math.Exp(r.Float64() * math.Log([]float64{1.0001, 2, 3.1, 1000}[i%4]))
		try(long, max(measure.Length(float64(long)/ratio), 1))
	}
	for _, row := range [][2]measure.Length{
		{1, 1}, {2, 1}, {3, 1}, {4, 1}, {300, 100}, {301, 100}, {plane.Reach, plane.Reach}, {plane.Reach, plane.Reach - 1},
		{plane.Reach, 1}, {plane.Reach, plane.Reach / 3}, {plane.Reach, plane.Reach/3 - 1}, {plane.Reach, plane.Reach / 1000}, {1000, 1},
	} {
		try(row[0], row[1])
	}
	if worst < 0.5 {
		t.Errorf("at worst %v units: the rounding alone takes half of one", worst)
	}
}

// The two roads of the test come to the same.
func TestPerimeterRoads(t *testing.T) {
	for _, row := range [][2]float64{{1, 1}, {9, 8}, {3, 2}, {2, 1}, {4, 1}} {
		a, b := bigOf(row[0]), bigOf(row[1])
		off, _ := quo(sub(bigPerimeter(a, b), summed(a, b, 8)), a).Float64()
		if math.Abs(off) > 1e-40 {
			t.Errorf("%v: the means and the trapezoids differ by %v", row, off)
		}
	}
}

// handbookE is Table 17.1 of Abramowitz and Stegun, Handbook of Mathematical
// Functions: E of the parameter m. What is printed at .15 differs from the true value
// in the ninth place, and stands here as it should.
var handbookE = []struct {
	hundredths int64
	printed    string
}{
	{0, "1.570796327"}, {5, "1.550973352"}, {10, "1.530757637"}, {15, "1.510121832"}, {20, "1.489035058"}, {25, "1.467462209"},
	{30, "1.445363064"}, {35, "1.422691133"}, {40, "1.399392139"}, {45, "1.375401972"}, {50, "1.350643881"},
	{75, "1.211056028"}, {90, "1.104774733"}, {99, "1.015993545"},
}

// ovalOf is an ellipse 10 m long whose parameter is m, to a nanometer.
func ovalOf(m float64) plane.Ellipse {
	const long = 10 * measure.Meter
	return plane.Ellipse{Width: long, Height: measure.Length(math.Round(float64(long) * math.Sqrt(1-m)))}
}

func TestHandbookE(t *testing.T) {
	printed := func(e plane.Ellipse) string {
		return big.NewRat(int64(e.Perimeter()), 2*int64(e.Width)).FloatString(9)
	}
	for _, row := range handbookE {
		m := float64(row.hundredths) / 100
		if got := printed(ovalOf(m)); got != row.printed {
			t.Errorf("E(%v) is %s, printed %s", m, got, row.printed)
		}
		// The slip: m taken for the modulus, whose square the parameter is.
		if got := printed(ovalOf(m * m)); got == row.printed && m != 0 {
			t.Errorf("E(%v) is printed for the modulus %v, too", m, m)
		}
	}
	// The parameter .25 is the modulus .5.
	if got := printed(ovalOf(0.5 * 0.5)); got != "1.467462209" {
		t.Errorf("the modulus .5 gives %s", got)
	}
}

// perimeters are computed with 30 digits by two programs for numbers of any length;
// those of 9, 8 and 3, 2 are printed in a listing for pocket calculators as well.
var perimeters = []struct{ a, b, around string }{
	{"1", "1", "6.28318530717959"}, {"9", "8", "53.45328500297188"}, {"5", "4", "28.36166788897448"}, {"8", "5", "41.38627607222883"},
	{"5", "3", "25.52699886339813"}, {"3", "2", "15.86543958929059"}, {"2", "1", "9.688448220547676"}, {"4", "1", "17.15684355031367"},
	{"10", "1", "40.63974180100896"}, {"100", "1", "400.1098329722652"}, {"203.2", "152.4", "1122.857401764043"},
}

func TestPerimeters(t *testing.T) {
	for _, row := range perimeters {
		unit := int64(100 * measure.Millimeter)
		if row.a == "203.2" {
			unit = int64(measure.Millimeter)
		}
		whole := func(half string) measure.Length {
			return measure.Length(new(big.Rat).Mul(ratOf(half), big.NewRat(2*unit, 1)).Num().Int64())
		}
		e := plane.Ellipse{Width: whole(row.a), Height: whole(row.b)}
		want := new(big.Rat).Mul(ratOf(row.around), big.NewRat(unit, 1))
		got := new(big.Rat).Sub(big.NewRat(int64(e.Perimeter()), 1), want)
		if got.Abs(got).Cmp(ratOf("0.51")) > 0 {
			t.Errorf("%s, %s: %d nm around, want %s", row.a, row.b, e.Perimeter(), want.FloatString(3))
		}
	}
	// With the second axis nothing it would be twice the first one, there and back.
	if e := (plane.Ellipse{Width: plane.Reach, Height: 1}); e.Perimeter() != 2*plane.Reach {
		t.Errorf("a line is %v around", e.Perimeter())
	}
}

// TestRamanujan: the usual short formula is off by as much as it is known to be, and
// not the float.
func TestRamanujan(t *testing.T) {
	for _, row := range []struct{ a, b, off float64 }{
		{5, 3, -2.39e-11}, {2, 1, -4.56e-10}, {4, 1, -2.499e-7}, {10, 1, -1.1558e-5}, {100, 1, -2.38977e-4},
	} {
		h := (row.a - row.b) * (row.a - row.b) / (row.a + row.b) / (row.a + row.b)
		short := math.Pi * (row.a + row.b) * (1 + 3*h/(10+math.Sqrt(4-3*h)))
		const meter = float64(measure.Meter)
		p := plane.PerimeterFloat(measure.Length(2*row.a*meter/10), measure.Length(2*row.b*meter/10)) * 10 / meter
		if off := short/p - 1; math.Abs(off-row.off) > math.Abs(row.off)*1e-2 {
			t.Errorf("%v, %v: off by %v, want %v", row.a, row.b, off, row.off)
		}
	}
}

package measure

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"testing"
)

// The second road: sines in floats of 400 bits by their series without any
// reduction to a part of the turn, and everything else from them.

const bigBits = 400

func bigInt(v int64) *big.Float { return new(big.Float).SetPrec(bigBits).SetInt64(v) }

func bigQuo(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bigBits).Quo(a, b) }

func bigMul(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bigBits).Mul(a, b) }

func bigAdd(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bigBits).Add(a, b) }

func bigSub(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bigBits).Sub(a, b) }

// bigArc is the arc tangent of 1/n by its series.
func bigArc(n int64) *big.Float {
	power, sum := bigQuo(bigInt(1), bigInt(n)), bigInt(0)
	for k := int64(1); k < 400; k += 2 {
		term := bigQuo(power, bigInt(k))
		if k%4 == 1 {
			sum = bigAdd(sum, term)
		} else {
			sum = bigSub(sum, term)
		}
		power = bigQuo(power, bigInt(n*n))
	}
	return sum
}

// bigPi is by Machin's formula, 16 arctan 1/5 - 4 arctan 1/239.
var bigPi = bigSub(bigMul(bigInt(16), bigArc(5)), bigMul(bigInt(4), bigArc(239)))

// bigSinCos is the sine and the cosine of a, which is less than a turn either way.
func bigSinCos(a Angle) (sin, cos *big.Float) {
	x := bigQuo(bigMul(bigInt(int64(a)), bigPi), bigInt(int64(Turn/2)))
	sin, cos = bigInt(0), bigInt(0)
	term := bigInt(1)
	for k := int64(0); k < 120; k++ {
		switch k % 4 {
		case 0:
			cos = bigAdd(cos, term)
		case 1:
			sin = bigAdd(sin, term)
		case 2:
			cos = bigSub(cos, term)
		case 3:
			sin = bigSub(sin, term)
		}
		term = bigQuo(bigMul(term, x), bigInt(k+1))
	}
	return sin, cos
}

// bigRound is x rounded half away from zero, held within the range. A fraction
// that is within 1e-60 of a half is one: the floats are not exact.
func bigRound(x *big.Float) int64 {
	half := big.NewFloat(0.5).SetPrec(bigBits)
	hair, _ := new(big.Float).SetPrec(bigBits).SetString("1e-60")
	m := bigAdd(bigAdd(new(big.Float).SetPrec(bigBits).Abs(x), half), hair)
	whole, _ := m.Int(nil)
	if x.Sign() < 0 {
		whole.Neg(whole)
	}
	if !whole.IsInt64() {
		return saturated(x.Sign() < 0)
	}
	return whole.Int64()
}

// turned is one of the products with a turn, and how it is on the second road.
var turned = []struct {
	name string
	got  func(Length, Angle) Length
	// want has no value where the divisor is nothing.
	want func(l, sin, cos *big.Float) (num, den *big.Float)
}{
	{"sin", Length.Sin, func(l, sin, cos *big.Float) (num, den *big.Float) { return bigMul(l, sin), bigInt(1) }},
	{"cos", Length.Cos, func(l, sin, cos *big.Float) (num, den *big.Float) { return bigMul(l, cos), bigInt(1) }},
	{"tan", Length.Tan, func(l, sin, cos *big.Float) (num, den *big.Float) { return bigMul(l, sin), cos }},
	{"over tan", Length.OverTan, func(l, sin, cos *big.Float) (num, den *big.Float) { return bigMul(l, cos), sin }},
	{"over sin", Length.OverSin, func(l, sin, cos *big.Float) (num, den *big.Float) { return l, sin }},
}

// checkTurned holds all five against the second road, where they have a value.
func checkTurned(t *testing.T, l Length, a Angle) {
	t.Helper()
	sin, cos := bigSinCos(a % Turn)
	tiny, _ := new(big.Float).SetString("1e-60")
	for _, f := range turned {
		num, den := f.want(bigInt(int64(l)), sin, cos)
		if new(big.Float).Abs(den).Cmp(tiny) < 0 {
			continue
		}
		if got, want := f.got(l, a), Length(bigRound(bigQuo(num, den))); got != want {
			t.Errorf("%d %s %v is %d, want %d", l, f.name, a, got, want)
		}
	}
}

const most = 50 * Meter

func TestTurned(t *testing.T) {
	var angles []Angle
	for a := -Turn; a <= Turn; a += RightAngle / 6 {
		angles = append(angles, a-1, a, a+1)
	}
	for _, a := range angles {
		for _, l := range []Length{0, 1, -1, 2, 3, 5, -7, most, most - 1, 1 - most, -most} {
			checkTurned(t, l, a)
		}
	}
	r := rand.New(rand.NewPCG(45, 90))
	for range 3000 {
		checkTurned(t, Length(r.Int64N(2*int64(most)+1))-most, Angle(r.Int64N(2*int64(Turn)))-Turn)
		checkTurned(t, Length(int64(r.Uint64())>>r.IntN(63)), Angle(int64(r.Uint64())>>r.IntN(63)))
	}
}

// TestTurnedRational: where the sine or the tangent is rational the product is
// the rational one, and a half goes away from zero.
func TestTurnedRational(t *testing.T) {
	r := rand.New(rand.NewPCG(30, 60))
	halfAway := func(l Length) Length { return (l + l%2) / 2 }
	for range 2000 {
		l := Length(r.Int64N(2*int64(most)+1)) - most
		turns := Angle(r.IntN(9)-4) * Turn
		for _, row := range []struct {
			name      string
			got, want Length
		}{
			{"sin 0", l.Sin(turns), 0},
			{"sin 30", l.Sin(turns + 30*Degree), halfAway(l)},
			{"sin 90", l.Sin(turns + 90*Degree), l},
			{"sin 150", l.Sin(turns + 150*Degree), halfAway(l)},
			{"sin 180", l.Sin(turns + 180*Degree), 0},
			{"sin 210", l.Sin(turns + 210*Degree), -halfAway(l)},
			{"sin 270", l.Sin(turns + 270*Degree), -l},
			{"cos 0", l.Cos(turns), l},
			{"cos 60", l.Cos(turns + 60*Degree), halfAway(l)},
			{"cos 90", l.Cos(turns + 90*Degree), 0},
			{"cos 180", l.Cos(turns + 180*Degree), -l},
			{"tan 0", l.Tan(turns), 0},
			{"tan 45", l.Tan(turns + 45*Degree), l},
			{"tan 135", l.Tan(turns + 135*Degree), -l},
			{"tan 225", l.Tan(turns + 225*Degree), l},
			{"over tan 45", l.OverTan(turns + 45*Degree), l},
			{"over tan 90", l.OverTan(turns + 90*Degree), 0},
			{"over sin 30", l.OverSin(turns + 30*Degree), 2 * l},
			{"over sin 90", l.OverSin(turns + 90*Degree), l},
			{"over sin 270", l.OverSin(turns + 270*Degree), -l},
		} {
			if row.got != row.want {
				t.Fatalf("%d x %s is %d, want %d", l, row.name, row.got, row.want)
			}
		}
	}
}

// TestTurnedWithoutValue: at a pole, and past the range, the end of the range.
func TestTurnedWithoutValue(t *testing.T) {
	const greatest, least = Length(maxInt64), Length(minInt64)
	for _, row := range []struct {
		name      string
		got, want Length
	}{
		{"tan 90", Inch.Tan(RightAngle), greatest},
		{"-tan 90", (-Inch).Tan(RightAngle), least},
		{"tan 270", Inch.Tan(3 * RightAngle), greatest},
		{"tan -90", Inch.Tan(-RightAngle), greatest},
		{"nothing x tan 90", Length(0).Tan(RightAngle), 0},
		{"over tan 0", Inch.OverTan(0), greatest},
		{"-over tan 180", (-Inch).OverTan(180 * Degree), least},
		{"over sin 0", Inch.OverSin(0), greatest},
		{"-over sin 180", (-Inch).OverSin(180 * Degree), least},
		{"nothing over sin 0", Length(0).OverSin(0), 0},
		{"past the range", most.Tan(RightAngle - 1), greatest},
		{"past the range below", most.Tan(RightAngle + 1), least},
		{"past the range over sin", most.OverSin(-1), least},
		{"the least length", least.Sin(-RightAngle), greatest},
		{"the least length kept", least.Sin(RightAngle), least},
		{"the least length over sin", least.OverSin(30 * Degree), least},
	} {
		if row.got != row.want {
			t.Errorf("%s is %d, want %d", row.name, row.got, row.want)
		}
	}
}

// A force turns as a length does.
func TestTurnedForce(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 4))
	for range 500 {
		v, a := r.Int64N(1<<40)-1<<39, Angle(r.Int64N(int64(Turn)))
		f, l := Force(v), Length(v)
		if f.Sin(a) != Force(l.Sin(a)) || f.Cos(a) != Force(l.Cos(a)) || f.Tan(a) != Force(l.Tan(a)) ||
			f.OverTan(a) != Force(l.OverTan(a)) || f.OverSin(a) != Force(l.OverSin(a)) {
			t.Fatalf("%d at %v turns in another way as a force", v, a)
		}
	}
}

// checkSlope checks that a is atan2(y, x) to the nearest nanodegree: the point lies
// between the rays at half a nanodegree to either side. Hairs of 2^-25 are let
// through, as the comment says.
func checkSlope(t *testing.T, y, x *big.Float, a Angle) {
	t.Helper()
	sin, cos := bigSinCos(a)
	// The distance from the ray over the distance along it is the rest of the angle.
	across := bigSub(bigMul(y, cos), bigMul(x, sin))
	along := bigAdd(bigMul(x, cos), bigMul(y, sin))
	rest, _ := bigMul(bigQuo(across, along), bigQuo(bigInt(int64(Turn/2)), bigPi)).Float64()
	if along.Sign() <= 0 || rest > 0.5+1.0/(1<<25) || rest < -0.5-1.0/(1<<25) {
		t.Errorf("the slope of %v over %v is %v, and %v nanodegrees more", y, x, a, rest)
	}
}

func TestSlope(t *testing.T) {
	for _, row := range []struct {
		rise, run Length
		want      Angle
	}{
		{0, 0, 0}, {0, Inch, 0}, {0, -Inch, 180 * Degree},
		{Inch, 0, 90 * Degree}, {-Inch, 0, -90 * Degree},
		{Inch, Inch, 45 * Degree}, {Inch, -Inch, 135 * Degree}, {-Inch, Inch, -45 * Degree}, {-Inch, -Inch, -135 * Degree},
		{minInt64, maxInt64, -45 * Degree}, {minInt64, minInt64, -135 * Degree},
		{-1, minInt64, 180 * Degree}, // a hair under level, never -180
		{1, minInt64, 180 * Degree},
		{-1, maxInt64, 0},
	} {
		if got := Slope(row.rise, row.run); got != row.want {
			t.Errorf("Slope(%d, %d) is %v, want %v", row.rise, row.run, got, row.want)
		}
		if got := ArcTan(row.rise, row.run); got != row.want {
			t.Errorf("ArcTan(%d, %d) is %v, want %v", row.rise, row.run, got, row.want)
		}
	}
	r := rand.New(rand.NewPCG(2, 12))
	for range 3000 {
		y, x := int64(r.Uint64())>>r.IntN(63), int64(r.Uint64())>>r.IntN(63)
		if x|y != 0 {
			checkSlope(t, bigInt(y), bigInt(x), Slope(Length(y), Length(x)))
			checkSlope(t, bigInt(y), bigInt(x), ArcTan(Length(y), Length(x)))
		}
	}
}

func TestArcs(t *testing.T) {
	for _, row := range []struct {
		side, long Length
		want       Angle
	}{
		{0, 0, 0}, {0, Inch, 0}, {Inch, 2 * Inch, 30 * Degree}, {-Inch, 2 * Inch, -30 * Degree}, {Inch, -2 * Inch, -30 * Degree},
		{Inch, Inch, 90 * Degree}, {2 * Inch, Inch, 90 * Degree}, {-2 * Inch, Inch, -90 * Degree}, {Inch, 0, 90 * Degree},
		{1, 2, 30 * Degree}, {minInt64, minInt64, 90 * Degree},
	} {
		if got := ArcSin(row.side, row.long); got != row.want {
			t.Errorf("ArcSin(%d, %d) is %v, want %v", row.side, row.long, got, row.want)
		}
		if got := ArcCos(row.side, row.long); got != 90*Degree-row.want {
			t.Errorf("ArcCos(%d, %d) is %v, want %v", row.side, row.long, got, 90*Degree-row.want)
		}
	}
	r := rand.New(rand.NewPCG(5, 13))
	for i := range 3000 {
		long := 2 + int64(r.Uint64()>>1)>>r.IntN(61)
		side := 1 + r.Int64N(long-1)
		if i%3 == 0 {
			side = long - 1 - r.Int64N(min(long-1, 5))
		}
		b := bigMul(bigInt(long-side), bigInt(long))
		b = bigAdd(b, bigMul(bigInt(long-side), bigInt(side)))
		other := new(big.Float).SetPrec(bigBits).Sqrt(b)
		checkSlope(t, bigInt(side), other, ArcSin(Length(side), Length(long)))
		checkSlope(t, other, bigInt(side), ArcCos(Length(side), Length(long)))
	}
}

// bigRoot is the root of v rounded half up.
func bigRoot(v *big.Int) int64 {
	root := new(big.Int).Sqrt(new(big.Int).Lsh(v, 2)) // of 4v: twice the root
	root.Add(root, big.NewInt(1)).Rsh(root, 1)
	if !root.IsInt64() {
		return maxInt64
	}
	return root.Int64()
}

func checkRoots(t *testing.T, a, b int64) {
	t.Helper()
	aa := new(big.Int).Mul(big.NewInt(a), big.NewInt(a))
	bb := new(big.Int).Mul(big.NewInt(b), big.NewInt(b))
	if got, want := Hypot(Length(a), Length(b)), Length(bigRoot(new(big.Int).Add(aa, bb))); got != want {
		t.Errorf("Hypot(%d, %d) is %d, want %d", a, b, got, want)
	}
	want := Length(0)
	if d := aa.Sub(aa, bb); d.Sign() > 0 {
		want = Length(bigRoot(d))
	}
	if got := Leg(Length(a), Length(b)); got != want {
		t.Errorf("Leg(%d, %d) is %d, want %d", a, b, got, want)
	}
}

func TestRoots(t *testing.T) {
	ends := []int64{0, 1, -1, 2, 3, 4, 5, 12, 13, 1 << 31, 1<<32 - 1, 1 << 32, 1<<32 + 1, 1 << 61, 1 << 62, 1<<62 + 1, maxInt64 - 1, maxInt64, minInt64, minInt64 + 1}
	for _, a := range ends {
		for _, b := range ends {
			checkRoots(t, a, b)
		}
	}
	r := rand.New(rand.NewPCG(3, 4))
	for range 50_000 {
		a, b := int64(r.Uint64())>>r.IntN(64), int64(r.Uint64())>>r.IntN(64)
		checkRoots(t, a, b)
		checkRoots(t, a, a/2+b%4)
	}
	// Right triangles of whole numbers, as laid out for a square corner.
	if Hypot(3*Foot, 4*Foot) != 5*Foot || Leg(13*Inch, 5*Inch) != 12*Inch {
		t.Error("3, 4, 5 is no right triangle")
	}
}

// TestSlings: the load on each of two legs of a sling for 1 of load in all, over
// half of it: 1/sin. Printed in the catalogs of two sling makers (read there);
// 65, 40 and 35 degrees are printed up to 0.0014 off and left out.
func TestSlings(t *testing.T) {
	for _, row := range []struct {
		degrees Angle
		printed string
	}{
		{90, "1.000"}, {85, "1.004"}, {80, "1.015"}, {75, "1.035"}, {70, "1.064"}, {60, "1.155"},
		{55, "1.221"}, {50, "1.305"}, {45, "1.414"}, {30, "2.000"},
	} {
		f := Newton.OverSin(row.degrees * Degree)
		if got := fmt.Sprintf("%d.%03d", f/Newton, f%Newton); got != row.printed {
			t.Errorf("%d degrees: %s, printed %s", row.degrees, got, row.printed)
		}
	}
}

// TestEyes: the force on each of two screw eyes of a frame of 10 lb, in whole
// pounds, by the slope of its wire. A framers' chart (read there).
func TestEyes(t *testing.T) {
	five, _ := ParseForce("5 lb", NoUnit)
	for _, row := range []struct {
		degrees Angle
		printed int64
	}{{60, 6}, {45, 7}, {30, 10}, {15, 19}, {10, 29}, {5, 57}, {2, 143}} {
		f := five.OverSin(row.degrees * Degree)
		if got, _ := mulDiv(int64(f), 1, 4448); got != row.printed {
			t.Errorf("%d degrees: %d lb, printed %d", row.degrees, got, row.printed)
		}
	}
}

// TestPolygons: the side and the circle of regular polygons, Machinery's
// Handbook, 31st ed., p. 82 (read there to four places; these were computed).
func TestPolygons(t *testing.T) {
	const one = 10_000_000_000 // ten places
	for _, row := range []struct {
		n                Angle
		side, rim, flats Length // S/R, S/r, R/r
	}{
		{3, 17320508076, 34641016151, 20000000000},
		{4, 14142135624, 20000000000, 14142135624},
		{5, 11755705046, 14530850560, 12360679775},
		{6, 10000000000, 11547005384, 11547005384},
		{8, 7653668647, 8284271247, 10823922003},
		{9, 6840402867, 7279404685, 10641777725},
		{10, 6180339887, 6498393925, 10514622242},
		{12, 5176380902, 5358983849, 10352761804},
	} {
		miter := 180 * Degree / row.n
		if got := Length(2 * one).Sin(miter); got != row.side {
			t.Errorf("%d sides: S/R %d, printed %d", row.n, got, row.side)
		}
		if got := Length(2 * one).Tan(miter); got != row.rim {
			t.Errorf("%d sides: S/r %d, printed %d", row.n, got, row.rim)
		}
		if got := Length(one).OverSin(RightAngle - miter); got != row.flats {
			t.Errorf("%d sides: R/r %d, printed %d", row.n, got, row.flats)
		}
	}
}

// TestTurnPerturbation: a wider angle has a greater sine, a steeper wire a
// greater slope.
func TestTurnPerturbation(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	for range 2000 {
		a := Angle(r.Int64N(int64(RightAngle)))
		if most.Sin(a) > most.Sin(a+1) || most.Tan(a) > most.Tan(a+1) || most.Cos(a) < most.Cos(a+1) || most.OverTan(a) < most.OverTan(a+1) {
			t.Fatalf("a hair more than %v turns the wrong way", a)
		}
		y, x := Length(r.Int64N(int64(Meter))), Length(1+r.Int64N(int64(Meter)))
		if Slope(y+1, x) < Slope(y, x) || Slope(y, x+1) > Slope(y, x) || Hypot(y+1, x) < Hypot(y, x) {
			t.Fatalf("a hair more than %d over %d slopes the wrong way", y, x)
		}
	}
}

func FuzzTurned(f *testing.F) {
	f.Add(int64(most), int64(RightAngle-1))
	f.Add(int64(minInt64), int64(minInt64))
	f.Add(int64(3), int64(4))
	f.Add(int64(maxInt64), int64(1))
	f.Fuzz(func(t *testing.T, v, w int64) {
		checkTurned(t, Length(v), Angle(w))
		checkRoots(t, v, w)
		if v|w != 0 {
			checkSlope(t, bigInt(v), bigInt(w), Slope(Length(v), Length(w)))
		}
	})
}

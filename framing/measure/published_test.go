package measure

import (
	"math/big"
	"testing"
)

// Figures that others fixed. V: read in the source. V2: read in a named copy
// that quotes it. C: worked out here from the formula named. M: from memory.
func TestPublished(t *testing.T) {
	for _, c := range []struct {
		text string
		got  int64
		want int64
	}{
		// 1 in = 25.4 mm: NIST, Federal Register notice 59-5442, 1 July 1959. V2
		{"1 in", int64(Inch), 25_400_000},
		// 1 ft = 0.3048 m, same notice. V2
		{"1 ft", int64(Foot), 304_800_000},
		// From 25.4 mm squared. C
		{"1 sq in", int64(SquareInch), 645_160_000},
		// 144 of them. C
		{"1 sq ft", int64(SquareFoot), 92_903_040_000},
	} {
		if c.got != c.want {
			t.Errorf("%s is %d, want %d", c.text, c.got, c.want)
		}
	}
	// 1 lb = 0.45359237 kg: same notice. V2
	pound := ratio("0.45359237")
	// Standard gravity, 9.80665 m/s2: 3rd CGPM, 1901. M
	gravity := ratio("9.80665")
	for _, c := range []struct {
		unit   Unit
		source string
		want   *big.Rat // in the smallest unit
	}{
		{Pounds, "Federal Register 59-5442", mul(pound, ratio("1000000"))},
		{Ounces, "a sixteenth of it", mul(pound, ratio("62500"))},
		{PoundsForce, "pound x standard gravity", mul(mul(pound, gravity), ratio("1000"))},
		{ArcMinutes, "a sixtieth of a degree", ratio("1000000000/60")},
		{ArcSeconds, "a sixtieth of that", ratio("1000000000/3600")},
	} {
		num, den := c.unit.factor()
		got := new(big.Rat).SetFrac(new(big.Int).SetUint64(num), new(big.Int).SetUint64(den))
		if got.Cmp(c.want) != 0 {
			t.Errorf("%v (%s) is %v, want %v", c.unit, c.source, got, c.want)
		}
	}
	// 1 lbf = 4.4482216152605 N exactly. C, pound x standard gravity
	if got := mul(pound, gravity); got.Cmp(ratio("4.4482216152605")) != 0 {
		t.Errorf("pound x gravity is %v", got.FloatString(16))
	}
}

func ratio(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("test: not a ratio: " + s)
	}
	return r
}

func mul(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }

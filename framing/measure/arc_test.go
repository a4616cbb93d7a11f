package measure_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestArc(t *testing.T) {
	const m, straight = measure.Meter, measure.Turn / 2
	for _, row := range []struct {
		radius measure.Length
		sweep  measure.Angle
		want   measure.Length
	}{
		{m, straight, 3_141_592_654},
		{-m, straight, -3_141_592_654},
		{m, -straight, -3_141_592_654},
		{-m, -straight, 3_141_592_654},
		{m, measure.Turn, 6_283_185_307},
		{m, 0, 0},
		{0, straight, 0},
		{1, 28_647_889_756, 0}, // half a radian, less a third of a nanodegree
		{1, 28_647_889_757, 1},
		{-1, 28_647_889_757, -1},
		{math.MaxInt64, measure.Turn, math.MaxInt64},
		{math.MinInt64, measure.Turn, math.MinInt64},
		{math.MaxInt64, -measure.Turn, math.MinInt64},
		{2_935_890_503_282_001_225, straight, 9_223_372_036_854_775_803},
	} {
		if got := row.radius.Arc(row.sweep); got != row.want {
			t.Errorf("%d through %d: %d, want %d", row.radius, row.sweep, got, row.want)
		}
	}
}

// TestArcAgain goes by fractions of any size.
func TestArcAgain(t *testing.T) {
	pi, _ := new(big.Rat).SetString("3.14159265358979323846264338327950288419716939937510582097")
	r := rand.New(rand.NewPCG(31, 41))
	for range 5000 {
		l := measure.Length(r.Int64N(1 << (1 + r.IntN(58))))
		a := measure.Angle(r.Int64N(int64(measure.Turn) + 1))
		arc := new(big.Rat).SetFrac64(int64(a), int64(measure.Turn/2))
		arc.Mul(arc, pi).Mul(arc, new(big.Rat).SetInt64(int64(l)))
		arc.Mul(arc, big.NewRat(2, 1)).Add(arc, big.NewRat(1, 1)) // half up
		want := new(big.Int).Quo(arc.Num(), new(big.Int).Mul(arc.Denom(), big.NewInt(2))).Int64()
		if got := l.Arc(a); int64(got) != want {
			t.Fatalf("%d through %d: %d, want %d", l, a, got, want)
		}
	}
}

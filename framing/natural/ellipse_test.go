package natural_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/natural"
)

// TestEllipsePerimeter: the perimeters were worked out to 15 places with mpmath and PARI
// from semi-axes of these many; here an axis is 2e12 or 2e14 of them.
func TestEllipsePerimeter(t *testing.T) {
	const unit = 1_000_000_000_000
	for _, row := range []struct{ a, b, want uint64 }{
		{1, 1, 6_283_185_307_180}, {9, 8, 53_453_285_002_972}, {5, 4, 28_361_667_888_974}, {8, 5, 41_386_276_072_229},
		{5, 3, 25_526_998_863_398}, {3, 2, 15_865_439_589_291}, {2, 1, 9_688_448_220_548}, {4, 1, 17_156_843_550_314},
		{10, 1, 40_639_741_801_009}, {100, 1, 400_109_832_972_265},
	} {
		for _, turned := range []bool{false, true} {
			a, b := row.a, row.b
			if turned {
				a, b = b, a
			}
			if got, ok := natural.EllipsePerimeter(2*a*unit, 2*b*unit).Uint64(); !ok || got != row.want {
				t.Errorf("%d x %d: %d, want %d", a, b, got, row.want)
			}
		}
	}
	for _, none := range [][2]uint64{{0, 5}, {5, 0}, {0, 0}} {
		if got := natural.EllipsePerimeter(none[0], none[1]); !got.IsZero() {
			t.Errorf("%v: %v", none, got)
		}
	}
	// A thin one is there and back, nearly; the largest number of 64 bits is no limit.
	if got, _ := natural.EllipsePerimeter(1_000_000_000, 1).Uint64(); got != 2_000_000_000 {
		t.Errorf("a thin one: %d", got)
	}
	if got := natural.EllipsePerimeter(1<<64-1, 1<<64-1); got.Compare(natural.Nat{0x243f6a8885a308d0, 3}) != 0 {
		t.Errorf("a circle of 2^64 - 1: %x", got)
	}
}

package measure

import (
	"math/big"
	"math/rand/v2"
	"testing"
)

// samples returns numbers of every size, both signs, and the ends of the range.
func samples(seed uint64, n int) []int64 {
	s := []int64{0, 1, -1, 2, -2, 3, -3, maxInt64, maxInt64 - 1, minInt64, minInt64 + 1, 25_400_000, -25_400_000}
	rng := rand.New(rand.NewPCG(seed, seed+1))
	for len(s) < n {
		s = append(s, int64(rng.Uint64())>>rng.IntN(64))
	}
	return s
}

func TestHalfAndSplit(t *testing.T) {
	for _, v := range samples(10, 3000) {
		l := Length(v)
		half, rest := l.Half()
		if half+half+rest != l || rest < 0 || rest > 1 {
			t.Fatalf("Half(%d) = %d, %d", l, half, rest)
		}
		for _, n := range []int{1, 2, 3, 4, 7, 12, 1000, 1 << 30, maxInt} {
			part, rest := l.Split(n)
			if Length(n)*part+rest != l || rest < 0 || rest >= Length(n) {
				t.Fatalf("Split(%d, %d) = %d, %d", l, n, part, rest)
			}
		}
		for _, n := range []int{0, -1, minInt} {
			if part, rest := l.Split(n); part != l || rest != 0 {
				t.Fatalf("Split(%d, %d) = %d, %d", l, n, part, rest)
			}
		}
	}
}

const (
	maxInt = int(^uint(0) >> 1)
	minInt = -maxInt - 1
)

// mulDiv against big rationals: another road to the same figure.
func TestMulDiv(t *testing.T) {
	checkMulDiv(t, 253921, 145295143558111, 2)  // 2^64 - 1/2: rounding up leaves 64 bits
	checkMulDiv(t, 253921, -145295143558111, 2) // and on the other side
	checkMulDiv(t, minInt64, minInt64, minInt64)
	checkMulDiv(t, minInt64, -1, 1)
	pool := samples(20, 40)
	for _, a := range pool {
		for _, b := range pool {
			for _, c := range pool {
				checkMulDiv(t, a, b, c)
			}
		}
	}
	rng := rand.New(rand.NewPCG(21, 22))
	for range 50_000 {
		checkMulDiv(t, int64(rng.Uint64())>>rng.IntN(64), int64(rng.Uint64())>>rng.IntN(64), int64(rng.Uint64())>>rng.IntN(64))
	}
}

func checkMulDiv(t *testing.T, a, b, c int64) {
	t.Helper()
	got, exact := mulDiv(a, b, c)
	if c == 0 {
		if got != 0 || exact {
			t.Fatalf("mulDiv(%d, %d, 0) = %d, %v", a, b, got, exact)
		}
		return
	}
	r := new(big.Rat).SetFrac(new(big.Int).Mul(big.NewInt(a), big.NewInt(b)), big.NewInt(c))
	want := roundHalfAway(r)
	wantExact := r.IsInt()
	if !want.IsInt64() {
		wantExact = false
		if want.Sign() > 0 {
			want.SetInt64(maxInt64)
		} else {
			want.SetInt64(minInt64)
		}
	}
	if got != want.Int64() || exact != wantExact {
		t.Fatalf("mulDiv(%d, %d, %d) = %d, %v; want %d, %v", a, b, c, got, exact, want, wantExact)
	}
	if l, e := Length(a).Scale(b, c); l != Length(got) || e != exact {
		t.Fatalf("Scale differs from mulDiv")
	}
	if m, e := MulDiv(Mass(a), b, c); m != Mass(got) || e != exact {
		t.Fatalf("MulDiv differs from mulDiv")
	}
}

func roundHalfAway(r *big.Rat) *big.Int {
	twice := new(big.Int).Lsh(new(big.Int).Abs(r.Num()), 1)
	twice.Add(twice, r.Denom())
	q := twice.Quo(twice, new(big.Int).Lsh(r.Denom(), 1))
	if r.Sign() < 0 {
		q.Neg(q)
	}
	return q
}

// The laws of rounding, and that they are tight: a nanometer decides.
func TestRoundLaws(t *testing.T) {
	steps := []Length{1, 2, 3, 10, Inch / 8, sixteenth, sixtyFourth, Millimeter / 10, Millimeter, maxInt64, maxInt64 - 1}
	for _, v := range samples(30, 3000) {
		for _, step := range steps {
			l := Length(v)
			down, overDown := l.Round(step, Down)
			up, overUp := l.Round(step, Up)
			near, overNear := l.Round(step, Nearest)
			for _, c := range []struct{ rounded, remainder Length }{{down, overDown}, {up, overUp}, {near, overNear}} {
				if c.rounded%step != 0 || c.rounded+c.remainder != l || magnitude(int64(c.remainder)) >= uint64(step) {
					t.Fatalf("%d to %d: %d and %d", l, step, c.rounded, c.remainder)
				}
			}
			if near != down && near != up {
				t.Fatalf("%d to %d: nearest %d is neither %d nor %d", l, step, near, down, up)
			}
			inside := step <= maxInt64/4 && magnitude(v) <= maxInt64/4 // TestRoundAtTheEnds has the rest
			if !inside {
				continue
			}
			if down > l || up < l || up-down > step || (up == down) != (l%step == 0) {
				t.Fatalf("%d to %d: down %d, up %d", l, step, down, up)
			}
			if 2*magnitude(int64(overNear)) > uint64(step) || 2*magnitude(int64(overNear)) == uint64(step) && (near > l) != (l > 0) {
				t.Fatalf("%d to %d: nearest %d", l, step, near)
			}
			if mirrored, _ := (-l).Round(step, Down); mirrored != -up {
				t.Fatalf("%d to %d: up %d is not the mirror of down %d", l, step, up, mirrored)
			}
			if mirrored, _ := (-l).Round(step, Nearest); mirrored != -near {
				t.Fatalf("%d to %d: nearest %d, mirrored %d", l, step, near, mirrored)
			}
			// A multiple is where the directions turn: a nanometer more goes up to
			// the next, a nanometer less down to the one before.
			if got, _ := (down + 1).Round(step, Up); step > 1 && got != down+step {
				t.Fatalf("1 nm over %d goes up to %d", down, got)
			}
			if got, _ := (down - 1).Round(step, Down); step > 1 && got != down-step {
				t.Fatalf("1 nm under %d goes down to %d", down, got)
			}
			// Halfway between two is where the nearest turns.
			if half := step / 2; step%2 == 0 && down >= 0 && half > 0 {
				if got, _ := (down + half).Round(step, Nearest); got != down+step {
					t.Fatalf("%d and a half step goes to %d", down, got)
				}
				if got, _ := (down + half - 1).Round(step, Nearest); got != down {
					t.Fatalf("%d and 1 nm under a half step goes to %d", down, got)
				}
			}
		}
		for _, step := range []Length{0, -1, minInt64} {
			for d := Nearest; d <= Up; d++ {
				if got, r := Length(v).Round(step, d); got != Length(v) || r != 0 {
					t.Fatalf("step %d rounds %d to %d", step, v, got)
				}
			}
		}
	}
}

func TestRoundAtTheEnds(t *testing.T) {
	for _, c := range []struct {
		l, step            Length
		d                  Direction
		rounded, remainder Length
	}{
		{maxInt64, 10, Up, maxInt64 - 7, 7},
		{maxInt64, 10, Nearest, maxInt64 - 7, 7},
		{maxInt64, 10, Down, maxInt64 - 7, 7},
		{minInt64, 10, Down, minInt64 + 8, -8},
		{minInt64, 10, Nearest, minInt64 + 8, -8},
		{minInt64, 10, Up, minInt64 + 8, -8},
		{minInt64, maxInt64, Down, -maxInt64, -1},
		{minInt64, 2, Down, minInt64, 0},
	} {
		if rounded, remainder := c.l.Round(c.step, c.d); rounded != c.rounded || remainder != c.remainder {
			t.Errorf("%d to %d %v: %d, %d; want %d, %d", c.l, c.step, c.d, rounded, remainder, c.rounded, c.remainder)
		}
	}
}

func TestSize(t *testing.T) {
	s := Size{16*Inch + 5*Inch/8, 21 * Inch}
	if got := s.Area(); got.String() != "225241.485 mm2" { // 349.125 sq in x 645.16
		t.Errorf("area %v", got)
	}
	if got := s.Grown(Inch / 8); got != (Size{16*Inch + 3*Inch/4, 21*Inch + Inch/8}) {
		t.Errorf("grown %v", got)
	}
	if got := s.UnitedLength(); got != 37*Inch+5*Inch/8 {
		t.Errorf("united %v", got)
	}
	if got := (Size{maxInt64, maxInt64}).Area(); got != maxInt64 {
		t.Errorf("area past the range is %d", got)
	}
	if got := (Size{minInt64, maxInt64}).Area(); got != minInt64 {
		t.Errorf("negative area past the range is %d", got)
	}
	if got := (Size{1, 500}).Area(); got != 0 {
		t.Errorf("500 square nanometers are %d square micrometers", got)
	}
	if got := (Size{1000, 500}).Area(); got != 1 {
		t.Errorf("half a square micrometer is %d", got)
	}
	v := Sides{1, 2, 3, 4}
	if v.Sum() != (Size{3, 7}) || v.Plus(AllSides(1)) != (Sides{2, 3, 4, 5}) || v.Minus(v) != (Sides{}) {
		t.Error("sums of sides are wrong")
	}
}

package natural_test

import (
	"encoding/binary"
	"fmt"
	"math/big"
	"testing"

	"github.com/fairmiter/fairmiter/framing/natural"
)

func Example() {
	// 20 boards of 1,000,000,000,000,000,000 and a third of them each.
	a := natural.Of(20).Times(natural.Of(1_000_000_000_000_000_000))
	third, rest := a.Over(natural.Of(3))
	v, fits := third.Uint64()
	fmt.Println(v, fits, rest)
	fmt.Println(natural.Of(1369).Root())
	// Output:
	// 6666666666666666666 true [2]
	// [37]
}

func toBig(a natural.Nat) *big.Int {
	v := new(big.Int)
	for i := len(a) - 1; i >= 0; i-- {
		v.Or(v.Lsh(v, 64), new(big.Int).SetUint64(a[i]))
	}
	return v
}

// ofBytes takes eight bytes for a digit.
func ofBytes(b []byte) natural.Nat {
	n := natural.Nat(nil)
	shift := natural.Of(1)
	word := natural.Of(1 << 32).Times(natural.Of(1 << 32))
	for ; len(b) >= 8; b = b[8:] {
		n = n.Plus(natural.Of(binary.LittleEndian.Uint64(b)).Times(shift))
		shift = shift.Times(word)
	}
	return n
}

// compare holds everything against math/big.
func compare(t *testing.T, a, b natural.Nat) {
	t.Helper()
	same := func(what string, got natural.Nat, want *big.Int) {
		t.Helper()
		if toBig(got).Cmp(want) != 0 || len(got) > 0 && got[len(got)-1] == 0 {
			t.Errorf("%s of %v and %v: got %v, want %v", what, a, b, got, want)
		}
	}
	x, y := toBig(a), toBig(b)
	same("sum", a.Plus(b), new(big.Int).Add(x, y))
	same("product", a.Times(b), new(big.Int).Mul(x, y))
	same("root", a.Root(), new(big.Int).Sqrt(x))
	if got, want := a.Compare(b), x.Cmp(y); (got < 0) != (want < 0) || (got > 0) != (want > 0) {
		t.Errorf("%v against %v: got %d, want %d", a, b, got, want)
	}
	if a.Compare(b) >= 0 {
		same("difference", a.Minus(b), new(big.Int).Sub(x, y))
	}
	if v, ok := a.Uint64(); ok != x.IsUint64() || ok && v != x.Uint64() {
		t.Errorf("%v as 64 bits is %d, %t", a, v, ok)
	}
	if a.IsZero() != (x.Sign() == 0) {
		t.Errorf("%v is zero: %t", a, a.IsZero())
	}
	if b.IsZero() {
		return
	}
	q, r := a.Over(b)
	wantQ, wantR := new(big.Int).QuoRem(x, y, new(big.Int))
	same("quotient", q, wantQ)
	same("rest", r, wantR)
	near, exact := a.Nearest(b)
	twice := new(big.Int).Add(new(big.Int).Lsh(x, 1), y)
	same("nearest", near, twice.Quo(twice, new(big.Int).Lsh(y, 1)))
	if exact != (wantR.Sign() == 0) {
		t.Errorf("%v over %v exact: %t", a, b, exact)
	}
}

// edges are digits at which a carry begins or ends.
var edges = []uint64{0, 1, 2, 3, 10, 1<<32 - 1, 1 << 32, 1<<63 - 1, 1 << 63, 1<<63 + 1, 1<<64 - 2, 1<<64 - 1}

func TestAgainstBig(t *testing.T) {
	var all []natural.Nat
	for _, low := range edges {
		all = append(all, natural.Of(low))
		for _, high := range edges {
			all = append(all, natural.Of(high).Times(natural.Of(1<<63)).Times(natural.Of(2)).Plus(natural.Of(low)))
		}
	}
	for i := range 8 {
		all = append(all, all[len(all)-1].Times(all[3*i]).Plus(natural.Of(uint64(i))))
	}
	for _, a := range all {
		for _, b := range all {
			compare(t, a, b)
		}
	}
}

func FuzzAgainstBig(f *testing.F) {
	f.Add(make([]byte, 24), []byte("12345678"))
	f.Add([]byte("0123456789abcdef01234567"), []byte("12345678\x00\x00\x00\x00\x00\x00\x00\x80"))
	f.Fuzz(func(t *testing.T, a, b []byte) {
		if len(a)+len(b) < 400 {
			compare(t, ofBytes(a), ofBytes(b))
		}
	})
}

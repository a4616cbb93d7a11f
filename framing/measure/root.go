package measure

import "math/bits"

// Hypot returns the root of a^2 + b^2, rounded half up: the diagonal of a
// rectangle, the wire between two points. It is exact for every a and b; past the
// range it is the greatest Length. Signs do not count.
func Hypot(a, b Length) Length {
	h1, l1 := bits.Mul64(magnitude(int64(a)), magnitude(int64(a)))
	h2, l2 := bits.Mul64(magnitude(int64(b)), magnitude(int64(b)))
	lo, carry := bits.Add64(l1, l2, 0)
	hi, _ := bits.Add64(h1, h2, carry) // at most 2^127
	return Length(signed(nearestRoot(hi, lo), false))
}

// Leg returns the root of hypotenuse^2 - leg^2, rounded to the nearest: the
// other leg of a right triangle. It is exact, and nothing where the leg is as
// long as the hypotenuse or longer. Signs do not count.
func Leg(hypotenuse, leg Length) Length {
	h, l := magnitude(int64(hypotenuse)), magnitude(int64(leg))
	if l >= h {
		return 0
	}
	return Length(signed(nearestRoot(squaresLess(h, l)), false))
}

// squaresLess is h^2 - l^2 for an h that is not below l.
func squaresLess(h, l uint64) (hi, lo uint64) {
	h1, l1 := bits.Mul64(h, h)
	h2, l2 := bits.Mul64(l, l)
	lo, borrow := bits.Sub64(l1, l2, 0)
	hi, _ = bits.Sub64(h1, h2, borrow)
	return hi, lo
}

// nearestRoot is the root of a whole number, which is never just a half.
func nearestRoot(hi, lo uint64) uint64 {
	shift := rootShift(hi, lo)
	r := root(shifted(hi, lo, shift)) >> (shift / 2)
	sh, sl := bits.Mul64(r, r)
	rest, borrow := bits.Sub64(lo, sl, 0)
	over, _ := bits.Sub64(hi, sh, borrow)
	if (over != 0 || rest > r) && r != 1<<64-1 { // over r^2 + r there is only (r + 1/2)^2 less a quarter
		r++
	}
	return r
}

// rootShift is the even number of places by which a number is shifted to begin
// in one of its first two bits.
func rootShift(hi, lo uint64) uint {
	if hi != 0 {
		return uint(bits.LeadingZeros64(hi)) &^ 1
	}
	return 64 + uint(bits.LeadingZeros64(lo))&^1
}

func shifted(hi, lo uint64, shift uint) (uint64, uint64) {
	return hi<<shift | lo>>(64-shift) | lo<<(shift-64), lo << shift
}

// root is the root, rounded down, of a number that begins in one of its first
// two bits, or of nothing.
func root(hi, lo uint64) uint64 {
	if hi == 0 {
		return 0
	}
	// The upper half's root by Newton's method, from a line that is nowhere below
	// it and at most a twelfth above.
	r := (hi>>32 + 0x9000_0000) / 3 * 2
	r = (r + hi/r) / 2
	r = (r + hi/r) / 2
	r = (r + hi/r) / 2
	for r > 1<<32-1 || r*r > hi {
		r--
	}
	// The rest over twice the root gives the lower half, or a little too much.
	rest := hi - r*r // below 2^33
	q := min((rest<<31|lo>>33)/r, 1<<32-1)
	s := r<<32 + q
	for {
		h, l := bits.Mul64(s, s)
		if h < hi || h == hi && l <= lo {
			return s
		}
		s--
	}
}

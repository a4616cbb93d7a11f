package measure

import "math/bits"

// Half returns the half of l rounded down and the rest, 0 or 1 nm, such that
// half + half + rest == l. Where a length is shared by two sides, the house
// rule gives the rest to the right and to the bottom.
func (l Length) Half() (half, rest Length) { return l.Split(2) }

// Split returns the n-th part of l rounded down and the rest, such that
// n*part + rest == l and 0 <= rest < n. An n below 1 is taken as 1.
func (l Length) Split(n int) (part, rest Length) {
	if n < 1 {
		n = 1
	}
	part, rest = l/Length(n), l%Length(n)
	if rest < 0 {
		part, rest = part-1, rest+Length(n)
	}
	return part, rest
}

// Scale returns l*num/den rounded half away from zero, and whether nothing had
// to be rounded. The product is held in 128 bits, so only the result can be
// out of range; it is then the nearest Length there is, and not exact. A den
// of zero gives zero, not exact.
func (l Length) Scale(num, den int64) (scaled Length, exact bool) {
	v, exact := mulDiv(int64(l), num, den)
	return Length(v), exact
}

// MulDiv returns a*num/den as [Length.Scale] does, for any of the quantities.
func MulDiv[Q ~int64](a Q, num, den int64) (scaled Q, exact bool) {
	v, exact := mulDiv(int64(a), num, den)
	return Q(v), exact
}

const (
	maxInt64 = 1<<63 - 1
	minInt64 = -1 << 63
)

// mulDiv is a*b/c rounded half away from zero, saturating.
func mulDiv(a, b, c int64) (quotient int64, exact bool) {
	if c == 0 {
		return 0, false
	}
	negative := (a < 0) != (b < 0) != (c < 0)
	hi, lo := bits.Mul64(magnitude(a), magnitude(b))
	d := magnitude(c)
	if hi >= d {
		return saturated(negative), false
	}
	q, r := bits.Div64(hi, lo, d)
	if r >= d-r { // 2r >= d, without overflow
		q++
		if q == 0 {
			return saturated(negative), false
		}
	}
	if negative {
		if q > 1<<63 {
			return minInt64, false
		}
		return -int64(q), r == 0 // 1<<63 converts to minInt64, its own negative
	}
	if q > maxInt64 {
		return maxInt64, false
	}
	return int64(q), r == 0
}

// magnitude is |v|, which for minInt64 only fits unsigned.
func magnitude(v int64) uint64 {
	if v < 0 {
		return -uint64(v)
	}
	return uint64(v)
}

func saturated(negative bool) int64 {
	if negative {
		return minInt64
	}
	return maxInt64
}

package measure

import "math/bits"

// A wide is a fraction of one in 128 bits: hi/2^64 + lo/2^128. It is what sines
// are worked out in: whole numbers come out the same on every machine, where the
// last bits of a float's sine do not.
type wide struct{ hi, lo uint64 }

// times is the product, rounded down.
func (a wide) times(b wide) wide {
	h, m := bits.Mul64(a.hi, b.hi)
	h1, m1 := bits.Mul64(a.hi, b.lo)
	h2, m2 := bits.Mul64(a.lo, b.hi)
	h3, _ := bits.Mul64(a.lo, b.lo)
	low, c1 := bits.Add64(m1, m2, 0)
	_, c2 := bits.Add64(low, h3, 0)
	m, c3 := bits.Add64(m, h1, c1)
	m, c4 := bits.Add64(m, h2, c2)
	return wide{h + c3 + c4, m}
}

// minus is a - b; where that is below nothing, one more than it.
func (a wide) minus(b wide) wide {
	lo, borrow := bits.Sub64(a.lo, b.lo, 0)
	hi, _ := bits.Sub64(a.hi, b.hi, borrow)
	return wide{hi, lo}
}

// scaled is n*a with its fraction.
func (a wide) scaled(n uint64) (whole uint64, fraction wide) {
	h0, l0 := bits.Mul64(n, a.lo)
	h1, l1 := bits.Mul64(n, a.hi)
	mid, carry := bits.Add64(l1, h0, 0)
	return h1 + carry, wide{mid, l0}
}

// over is (whole + fraction)/a rounded half up; it is not ok where that needs
// more than 64 bits. The upper half of a is not zero: no sine is that small.
func (a wide) over(whole uint64, fraction wide) (quotient uint64, ok bool) {
	n2, n1, n0 := whole, fraction.hi, fraction.lo
	if n2 > a.hi || n2 == a.hi && n1 >= a.lo {
		return 0, false
	}
	// The school's long division with digits of 64 bits: shifted so that the
	// divisor begins with a one, the first two digits give the quotient, or one
	// or two too much.
	shift := uint(bits.LeadingZeros64(a.hi))
	d1, d0 := a.hi<<shift|a.lo>>(64-shift), a.lo<<shift
	n2 = n2<<shift | n1>>(64-shift)
	n1 = n1<<shift | n0>>(64-shift)
	n0 <<= shift
	q := uint64(1<<64 - 1)
	if n2 < d1 {
		q, _ = bits.Div64(n2, n1, d1)
	}
	p1, p0 := bits.Mul64(q, d0)
	h, l := bits.Mul64(q, d1)
	p1, carry := bits.Add64(p1, l, 0)
	p2 := h + carry
	r0, borrow := bits.Sub64(n0, p0, 0)
	r1, borrow := bits.Sub64(n1, p1, borrow)
	r2, _ := bits.Sub64(n2, p2, borrow)
	for r2 != 0 { // below nothing: at most twice
		q--
		r0, carry = bits.Add64(r0, d0, 0)
		r1, carry = bits.Add64(r1, d1, carry)
		r2 += carry
	}
	s0, borrow := bits.Sub64(d0, r0, 0)
	s1, _ := bits.Sub64(d1, r1, borrow)
	if r1 > s1 || r1 == s1 && r0 >= s0 { // the rest is half of the divisor or more
		q++
		return q, q != 0
	}
	return q, true
}

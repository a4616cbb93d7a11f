// Package natural counts with whole numbers of any size, none of them negative.
// It does what the few places need where 64 bits are not enough and nobody
// waits: a second road to a figure, a decimal of nineteen digits. Package
// math/big would do as well, and make the page a twentieth larger.
package natural

import "math/bits"

// A Nat is a whole number in digits of 64 bits, the lowest first, the highest not
// zero. The zero Nat is nothing. A Nat is never changed.
type Nat []uint64

// Of returns v.
func Of(v uint64) Nat { return Nat{v}.trimmed() }

func (a Nat) trimmed() Nat {
	for len(a) > 0 && a[len(a)-1] == 0 {
		a = a[:len(a)-1]
	}
	return a
}

// IsZero reports whether a is nothing.
func (a Nat) IsZero() bool { return len(a) == 0 }

// Uint64 returns a, and whether it fits.
func (a Nat) Uint64() (v uint64, ok bool) {
	if len(a) == 0 {
		return 0, true
	}
	return a[0], len(a) == 1
}

// Compare is below zero where a < b, zero where they are equal, else above.
func (a Nat) Compare(b Nat) int {
	if len(a) != len(b) {
		return len(a) - len(b)
	}
	for i := len(a) - 1; i >= 0; i-- {
		switch {
		case a[i] < b[i]:
			return -1
		case a[i] > b[i]:
			return 1
		}
	}
	return 0
}

// Plus is a + b.
func (a Nat) Plus(b Nat) Nat {
	if len(a) < len(b) {
		a, b = b, a
	}
	sum := make(Nat, len(a)+1)
	var carry uint64
	for i, digit := range a {
		var other uint64
		if i < len(b) {
			other = b[i]
		}
		sum[i], carry = bits.Add64(digit, other, carry)
	}
	sum[len(a)] = carry
	return sum.trimmed()
}

// Minus is a - b. It is only for a b up to a.
func (a Nat) Minus(b Nat) Nat {
	rest := append(Nat(nil), a...)
	rest.take(b)
	return rest.trimmed()
}

// take takes b, no more than a, away from a itself.
func (a Nat) take(b Nat) {
	var borrow uint64
	for i := range a {
		var other uint64
		if i < len(b) {
			other = b[i]
		}
		a[i], borrow = bits.Sub64(a[i], other, borrow)
	}
}

// Times is a x b.
func (a Nat) Times(b Nat) Nat {
	product := make(Nat, len(a)+len(b))
	for i, x := range a {
		var carry uint64
		for j, y := range b {
			hi, lo := bits.Mul64(x, y)
			lo, c := bits.Add64(lo, product[i+j], 0)
			hi += c
			lo, c = bits.Add64(lo, carry, 0)
			product[i+j], carry = lo, hi+c
		}
		product[i+len(b)] = carry
	}
	return product.trimmed()
}

// Over is a / b, rounded down, and what is left over. It is only for a b above
// nothing.
func (a Nat) Over(b Nat) (quotient, rest Nat) {
	quotient = make(Nat, len(a))
	if len(b) == 1 {
		var left uint64
		for i := len(a) - 1; i >= 0; i-- {
			quotient[i], left = bits.Div64(left, a[i], b[0])
		}
		return quotient.trimmed(), Of(left)
	}
	// The school's long division with digits of one bit.
	rest = make(Nat, len(b)+1)
	for i := len(a) - 1; i >= 0; i-- {
		for bit := 63; bit >= 0; bit-- {
			carry := a[i] >> bit & 1
			for j, digit := range rest {
				rest[j], carry = digit<<1|carry, digit>>63
			}
			if rest.trimmed().Compare(b) >= 0 {
				rest.take(b)
				quotient[i] |= 1 << bit
			}
		}
	}
	return quotient.trimmed(), rest.trimmed()
}

// Nearest is a / b rounded to the nearest, up where it lies halfway. It is only
// for a b above nothing.
func (a Nat) Nearest(b Nat) (quotient Nat, exact bool) {
	quotient, rest := a.Over(b)
	if rest.Plus(rest).Compare(b) >= 0 {
		quotient = quotient.Plus(Of(1))
	}
	return quotient, rest.IsZero()
}

// Root is the square root of a, rounded down.
func (a Nat) Root() Nat {
	if a.IsZero() {
		return nil
	}
	// Newton's way comes down to the root from above it.
	length := 64*(len(a)-1) + bits.Len64(a[len(a)-1])
	root := make(Nat, length/128+1)
	root[length/128] = 1 << (length / 2 % 64)
	root = root.Plus(root) // 2^(length/2+1) is above the root
	for {
		next, _ := a.Over(root)
		next, _ = next.Plus(root).Over(Of(2))
		if next.Compare(root) >= 0 {
			return root
		}
		root = next
	}
}

package measure

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/natural"
)

// A total is an exact sum of terms, none of them negative, in the smallest unit
// of a quantity. It is held as whole + num/den with num < den. Where that does
// not fit 64 bits, which takes long decimals of a pound or fractions that
// nobody measures, wide takes over. Since no term is negative, a whole part past
// 64 bits cannot come back: over is final.
type total struct {
	whole    uint64
	num, den uint64 // a zero den stands for 1
	over     bool
	wide     *vulgar
}

// add adds n counted in u.
func (t *total) add(n *number, u Unit) {
	num, den := u.factor()
	if n.form == decimal {
		t.product(n.integer, num, powerOfTen(n.places), den)
		return
	}
	if n.integer > 0 {
		t.product(n.integer, num, 1, den)
	}
	if n.num > 0 {
		t.product(n.num, num, n.den, den)
	}
}

// product adds a*b/(c*d).
func (t *total) product(a, b, c, d uint64) {
	hi, lo := bits.Mul64(a, b)
	carry, divisor := bits.Mul64(c, d)
	var quotient, rest uint64
	switch {
	case carry != 0 || t.wide != nil:
		t.productWide(a, b, c, d)
		return
	case hi >= divisor:
		t.over = true
		return
	case divisor == 1: // most units, and a division takes as long as all the rest
		quotient = lo
	case hi == 0:
		quotient, rest = lo/divisor, lo%divisor
	default:
		quotient, rest = bits.Div64(hi, lo, divisor)
	}
	t.count(quotient)
	if rest != 0 && !t.part(rest, divisor) {
		t.productWide(rest, 1, divisor, 1)
	}
}

// count adds n whole units.
func (t *total) count(n uint64) {
	sum, carry := bits.Add64(t.whole, n, 0)
	t.whole = sum
	t.over = t.over || carry != 0
}

// part adds num/den, a fraction below one, and says whether it could.
func (t *total) part(num, den uint64) bool {
	if t.num == 0 {
		t.num, t.den = num, den
		return true
	}
	if t.den != den {
		g := gcd(t.den, den)
		scale, scaleOther := den/g, t.den/g
		carry, common := bits.Mul64(t.den, scale)
		if carry != 0 {
			return false
		}
		t.num, t.den = t.num*scale, common
		num, den = num*scaleOther, common
	}
	sum, carry := bits.Add64(t.num, num, 0)
	if carry != 0 || sum >= den {
		sum -= den
		t.count(1)
	}
	t.num = sum
	return true
}

// A vulgar fraction is num/den in as many digits as it takes.
type vulgar struct{ num, den natural.Nat }

// add adds a*b/(c*d).
func (r *vulgar) add(a, b, c, d uint64) {
	up := natural.Of(a).Times(natural.Of(b))
	down := natural.Of(c).Times(natural.Of(d))
	r.num = r.num.Times(down).Plus(up.Times(r.den))
	r.den = r.den.Times(down)
}

func (t *total) productWide(a, b, c, d uint64) {
	if t.wide == nil {
		t.wide = &vulgar{natural.Of(t.whole), natural.Of(1)}
		if t.num != 0 {
			t.wide.add(t.num, 1, t.den, 1)
		}
	}
	t.wide.add(a, b, c, d)
}

// rounded returns the total, or its negative, rounded half away from zero, and
// whether that changed nothing. It is not ok outside the range of int64.
func (t *total) rounded(negative bool) (value int64, exact, ok bool) {
	if t.over {
		return 0, false, false
	}
	m, exact := t.whole, t.num == 0
	switch {
	case t.wide != nil:
		var quotient natural.Nat
		quotient, exact = t.wide.num.Nearest(t.wide.den)
		if m, ok = quotient.Uint64(); !ok {
			return 0, false, false
		}
	case t.num != 0 && t.num >= t.den-t.num:
		if m++; m == 0 {
			return 0, false, false
		}
	}
	if negative {
		return -int64(m), exact, m <= 1<<63 // 1<<63 converts to its own negative
	}
	return int64(m), exact, m <= maxInt64
}

func gcd(a, b uint64) uint64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// powerOfTen returns 10^n for n up to 19.
func powerOfTen(n int) uint64 {
	p := uint64(1)
	for ; n > 0; n-- {
		p *= 10
	}
	return p
}

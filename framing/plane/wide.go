package plane

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/natural"
)

// A wide is a whole number of 128 bits, negative ones as two's complement.
type wide struct {
	hi int64
	lo uint64
}

func product(a, b int64) wide {
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	return wide{int64(hi) - a>>63&b - b>>63&a, lo}
}

func (a wide) plus(b wide) wide {
	lo, carry := bits.Add64(a.lo, b.lo, 0)
	return wide{a.hi + b.hi + int64(carry), lo}
}

func (a wide) minus(b wide) wide {
	lo, borrow := bits.Sub64(a.lo, b.lo, 0)
	return wide{a.hi - b.hi - int64(borrow), lo}
}

func (a wide) sign() int {
	switch {
	case a.hi < 0:
		return -1
	case a.hi == 0 && a.lo == 0:
		return 0
	}
	return 1
}

func (a wide) less(b wide) bool { return a.hi < b.hi || a.hi == b.hi && a.lo < b.lo }

// size is a without its sign.
func (a wide) size() natural.Nat {
	if a.hi < 0 {
		a = wide{}.minus(a)
	}
	if a.hi == 0 {
		return natural.Of(a.lo)
	}
	return natural.Nat{a.lo, uint64(a.hi)}
}

// cross is above zero where b lies to the left of a, both arrows: the surface
// that they span.
func cross(a, b spot) wide { return product(a.x, b.y).minus(product(a.y, b.x)) }

// dot is above zero where a and b point the same way rather than against each
// other.
func dot(a, b spot) wide { return product(a.x, b.x).plus(product(a.y, b.y)) }

// side says where c lies: 1 to the left of the line from a to b, -1 to the right
// of it, 0 on it.
func side(a, b, c spot) int { return cross(b.minus(a), c.minus(a)).sign() }

// quotient is a x b x c / (d x 2^shift), rounded half away from zero, and whether
// it lies within the plane twice over.
func quotient(a, b, c int64, d wide, shift uint) (int64, bool) {
	negative := (a < 0) != (b < 0) != (c < 0) != (d.hi < 0)
	top := natural.Of(size(a)).Times(natural.Of(size(b))).Times(natural.Of(size(c)))
	q, _ := top.Nearest(d.size().Times(natural.Of(1 << shift)))
	v, ok := q.Uint64()
	if !ok || v > uint64(2*edge) {
		return 0, false
	}
	if negative {
		return -int64(v), true
	}
	return int64(v), true
}

func size(v int64) uint64 {
	if v < 0 {
		return -uint64(v)
	}
	return uint64(v)
}

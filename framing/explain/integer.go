package explain

import (
	"math"

	"github.com/fairmiter/fairmiter/framing/natural"
)

// An integer is a whole number of any size, with its sign.
type integer struct {
	negative bool
	size     natural.Nat
}

func signed(v int64) integer {
	if v < 0 {
		return integer{true, natural.Of(-uint64(v))}
	}
	return integer{false, natural.Of(uint64(v))}
}

func (a integer) times(v int64) integer {
	b := signed(v)
	return integer{a.negative != b.negative, a.size.Times(b.size)}
}

// int64 returns a, and whether it fits.
func (a integer) int64() (int64, bool) {
	v, ok := a.size.Uint64()
	if a.negative {
		return -int64(v), ok && v <= 1<<63 // 1<<63 converts to its own negative
	}
	return int64(v), ok && v <= math.MaxInt64
}

// divide is a / b rounded half away from zero, where there is such a number.
func divide(a, b integer) (int64, bool) {
	if b.size.IsZero() {
		return 0, false
	}
	quotient, _ := a.size.Nearest(b.size)
	return integer{a.negative != b.negative, quotient}.int64()
}

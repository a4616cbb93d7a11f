package explain

import "github.com/fairmiter/fairmiter/framing/measure"

// A rough is a step that values are written in for reading: num/den of them
// make one step, and 10^places steps one unit.
type rough struct {
	num, den int64
	places   int
	unit     string
}

func massSteps(m measure.Mass, inches bool) rough {
	switch small := m < 100*measure.Gram && m > -100*measure.Gram; {
	case inches && small:
		return rough{45_359_237, 16_000, 1, " oz"}
	case inches:
		return rough{45_359_237, 1000, 1, " lb"}
	case small:
		return rough{int64(measure.Gram) / 10, 1, 1, " g"}
	}
	return rough{int64(measure.Kilogram) / 100, 1, 2, " kg"}
}

func forceSteps(inches bool) rough {
	if inches {
		return rough{8_896_443_230_521, 20_000_000_000, 1, " lb"}
	}
	return rough{int64(measure.Newton) / 10, 1, 1, " N"}
}

// append writes n in steps, with "about" where it is not so many steps,
// themselves rounded to the unit that n counts: 222.411 N is 50 lb.
func (r rough) append(dst []byte, n int64) []byte {
	steps, _ := measure.MulDiv(n, r.den, r.num)
	if back, _ := measure.MulDiv(steps, r.num, r.den); back != n {
		dst = append(dst, "about "...)
	}
	return append(appendFixed(dst, steps, r.places), r.unit...)
}

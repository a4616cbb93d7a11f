package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// appendMillimeters writes a length in millimeters with up to so many decimals, 6 at
// most, rounded half away from zero.
func appendMillimeters(b []byte, l measure.Length, places int) []byte {
	unit := int64(1)
	for i := places; i < 6; i++ {
		unit *= 10
	}
	n := int64(l)
	if n < 0 {
		n = -((-n + unit/2) / unit)
	} else {
		n = (n + unit/2) / unit
	}
	return appendDecimal(b, n, places)
}

// appendDecimal writes n over 10^places without zeros at its end.
func appendDecimal(b []byte, n int64, places int) []byte {
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	for places > 0 && n%10 == 0 {
		n, places = n/10, places-1
	}
	digits := strconv.AppendInt(make([]byte, 0, 20), n, 10)
	if places == 0 {
		return append(b, digits...)
	}
	if whole := len(digits) - places; whole > 0 {
		b = append(b, digits[:whole]...)
		digits = digits[whole:]
	} else {
		b = append(b, '0')
	}
	b = append(b, '.')
	for i := len(digits); i < places; i++ {
		b = append(b, '0')
	}
	return append(b, digits...)
}

package measure

import "strconv"

// Weight returns what a mass weighs under standard gravity, rounded half away
// from zero: 9.80665 m/s2 by definition (3rd General Conference on Weights and
// Measures, 1901; ISO 80000-3), which is within 0.3 percent of the ground
// anywhere on earth.
func Weight(m Mass) Force {
	f, _ := MulDiv(int64(m), 980_665, 100_000_000) // mg x m/s2 is a thousandth of a mN
	return Force(f)
}

// A weight is something that is shown in one of two units: a mass in pounds or
// kilograms, a load in pounds or newtons.
type weight struct {
	// num/den is a tenth of a pound, step the step in the other unit, of which
	// places decimals are written and one is a whole one.
	num, den, step, one int64
	places              int
	unit, word          string
}

var (
	massWeight  = weight{45_359_237, 1000, int64(Kilogram) / 20, int64(Kilogram), 2, " kg", " kilogram"}
	forceWeight = weight{8_896_443_230_521, 20_000_000_000, int64(Newton), int64(Newton), 0, " N", " newton"}
)

// ShowMass returns a mass as it is shown, rounded up so that what is shown is
// enough: to a tenth of a pound, or else to 0.05 kg. A tenth of a pound is
// 45,359.237 mg, so the mass that is shown is the one that its text reads as.
//
//	2.4 lb    1.10 kg
func ShowMass(m Mass, inches bool) (shown Mass, text string) {
	b, shown := AppendMass(make([]byte, 0, longestText), m, inches)
	return shown, string(b)
}

// AppendMass appends the text of [ShowMass] and returns the mass that is shown.
func AppendMass(dst []byte, m Mass, inches bool) ([]byte, Mass) {
	dst, shown := massWeight.append(dst, int64(m), inches)
	return dst, Mass(shown)
}

// AppendSpokenMass appends what [ShowMass] shows, worded for a screen reader:
// "2.4 pounds", "1 kilogram".
func AppendSpokenMass(dst []byte, m Mass, inches bool) []byte {
	return massWeight.spoken(dst, int64(m), inches)
}

// ShowForce returns a load as it is shown, rounded up so that what is shown is
// enough: to a tenth of a pound-force, which the trade calls a pound, or else to
// 1 N.
//
//	19.3 lb    86 N
func ShowForce(f Force, inches bool) (shown Force, text string) {
	b, shown := AppendForce(make([]byte, 0, longestText), f, inches)
	return shown, string(b)
}

// AppendForce appends the text of [ShowForce] and returns the load that is shown.
func AppendForce(dst []byte, f Force, inches bool) ([]byte, Force) {
	dst, shown := forceWeight.append(dst, int64(f), inches)
	return dst, Force(shown)
}

// AppendSpokenForce appends what [ShowForce] shows, worded for a screen reader:
// "19.3 pounds", "86 newtons".
func AppendSpokenForce(dst []byte, f Force, inches bool) []byte {
	return forceWeight.spoken(dst, int64(f), inches)
}

// UpTenthPound returns m rounded up to a tenth of a pound, itself rounded to the
// milligram: what [ShowMass] shows in pounds.
func (m Mass) UpTenthPound() Mass {
	_, shown := massWeight.tenths(int64(m))
	return Mass(shown)
}

// UpTenthPound returns f rounded up to a tenth of a pound-force, itself rounded
// to the millinewton: what [ShowForce] shows in pounds.
func (f Force) UpTenthPound() Force {
	_, shown := forceWeight.tenths(int64(f))
	return Force(shown)
}

// tenths is the least number of tenths of a pound that is v or more, and how
// much that is.
func (w weight) tenths(v int64) (n, shown int64) {
	n, _ = mulDiv(v, w.den, w.num)
	shown, _ = mulDiv(n, w.num, w.den)
	if shown < v {
		n++
		shown, _ = mulDiv(n, w.num, w.den)
	}
	return n, max(shown, v) // past the last tenth inside the range it is v itself
}

// show is the number that is shown, with its decimals, and how much it is.
func (w weight) show(v int64, inches bool) (n, shown int64, places int) {
	if inches {
		n, shown = w.tenths(v)
		return n, shown, 1
	}
	shown, _ = RoundTo(v, w.step, Up)
	n = shown / (w.one / int64(powerOfTen(w.places)))
	return n, shown, w.places
}

func (w weight) append(dst []byte, v int64, inches bool) ([]byte, int64) {
	n, shown, places := w.show(v, inches)
	dst = appendPlaces(dst, n, places)
	if inches {
		return append(dst, " lb"...), shown
	}
	return append(dst, w.unit...), shown
}

func (w weight) spoken(dst []byte, v int64, inches bool) []byte {
	n, _, places := w.show(v, inches)
	if n < 0 {
		dst = append(dst, "minus "...)
	}
	one := powerOfTen(places)
	m := magnitude(n)
	dst = appendMagnitude(dst, m, one)
	word := w.word
	if inches {
		word = " pound"
	}
	dst = append(dst, word...)
	return append(dst, plural("", "s", m == one)...)
}

// appendPlaces appends n/10^places with all its decimals.
func appendPlaces(dst []byte, n int64, places int) []byte {
	if n < 0 {
		dst = append(dst, '-')
	}
	m, one := magnitude(n), powerOfTen(places)
	dst = strconv.AppendUint(dst, m/one, 10)
	if places == 0 {
		return dst
	}
	point := len(dst)
	dst = strconv.AppendUint(dst, one+m%one, 10) // its leading 1 gives its place to the point
	dst[point] = '.'
	return dst
}

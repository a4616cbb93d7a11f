package measure

import "strconv"

// Every quantity has one canonical text: its exact value as a decimal with the
// unit that makes each smallest unit a whole decimal, without trailing zeros.
// It is what JSON holds, whatever unit a screen shows.

// AppendText appends the canonical text of l to b: the exact millimeters, as
// "471.4875 mm". The error is always nil. The text is exact for every Length,
// since a nanometer is a millionth of a millimeter; inches would not be, for
// 1 mm is not a whole decimal of them.
func (l Length) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(l), 1_000_000, " mm"), nil
}

// AppendText appends the canonical text of a to b: the exact square
// millimeters, as "645.16 mm2". The error is always nil.
func (a Area) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(a), 1_000_000, " mm2"), nil
}

// AppendText appends the canonical text of a to b: the exact degrees, as
// "22.5 deg". The error is always nil. 22° 30′ is exactly 22.5 deg, but 20′ is
// a third of a degree and stands as "0.333333333 deg".
func (a Angle) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(a), 1_000_000_000, " deg"), nil
}

// AppendText appends the canonical text of m to b: the exact grams, as
// "453.592 g". The error is always nil.
func (m Mass) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(m), 1000, " g"), nil
}

// AppendText appends the canonical text of f to b: the exact newtons, as
// "4.448 N". The error is always nil.
func (f Force) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(f), 1000, " N"), nil
}

// AppendText appends the canonical text of d to b: the exact kilograms per
// cubic meter, as "2500 kg/m3". The error is always nil.
func (d Density) AppendText(b []byte) ([]byte, error) {
	return appendCanonical(b, int64(d), 1000, " kg/m3"), nil
}

// longestText is above the longest canonical text: a sign, 19 digits, a point,
// a space and "kg/m3".
const longestText = 32

// String returns the canonical text, as [Length.AppendText] writes it.
func (l Length) String() string {
	b, _ := l.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// String returns the canonical text, as [Area.AppendText] writes it.
func (a Area) String() string {
	b, _ := a.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// String returns the canonical text, as [Angle.AppendText] writes it.
func (a Angle) String() string {
	b, _ := a.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// String returns the canonical text, as [Mass.AppendText] writes it.
func (m Mass) String() string {
	b, _ := m.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// String returns the canonical text, as [Force.AppendText] writes it.
func (f Force) String() string {
	b, _ := f.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// String returns the canonical text, as [Density.AppendText] writes it.
func (d Density) String() string {
	b, _ := d.AppendText(make([]byte, 0, longestText))
	return string(b)
}

// MarshalText returns the canonical text, so that encoding/json writes l as a
// string. The error is always nil.
func (l Length) MarshalText() ([]byte, error) { return l.AppendText(nil) }

// MarshalText returns the canonical text, so that encoding/json writes a as a
// string. The error is always nil.
func (a Area) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// MarshalText returns the canonical text, so that encoding/json writes a as a
// string. The error is always nil.
func (a Angle) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// MarshalText returns the canonical text, so that encoding/json writes m as a
// string. The error is always nil.
func (m Mass) MarshalText() ([]byte, error) { return m.AppendText(nil) }

// MarshalText returns the canonical text, so that encoding/json writes f as a
// string. The error is always nil.
func (f Force) MarshalText() ([]byte, error) { return f.AppendText(nil) }

// MarshalText returns the canonical text, so that encoding/json writes d as a
// string. The error is always nil.
func (d Density) MarshalText() ([]byte, error) { return d.AppendText(nil) }

// UnmarshalText reads any text that [Parse] reads, but every number in it needs
// a unit. On an error, a *[ParseError], l keeps what it was. encoding/json
// refuses a JSON number here, which has no unit.
func (l *Length) UnmarshalText(text []byte) error {
	v, err := Parse(string(text), NoUnit)
	if err == nil {
		*l = v
	}
	return err
}

// UnmarshalText reads any text that [ParseArea] reads, but every number in it
// needs a unit. On an error, a *[ParseError], a keeps what it was.
func (a *Area) UnmarshalText(text []byte) error {
	v, err := ParseArea(string(text), NoUnit)
	if err == nil {
		*a = v
	}
	return err
}

// UnmarshalText reads any text that [ParseAngle] reads, but every number in it
// needs a unit. On an error, a *[ParseError], a keeps what it was.
func (a *Angle) UnmarshalText(text []byte) error {
	v, err := ParseAngle(string(text), NoUnit)
	if err == nil {
		*a = v
	}
	return err
}

// UnmarshalText reads any text that [ParseMass] reads, but every number in it
// needs a unit. On an error, a *[ParseError], m keeps what it was.
func (m *Mass) UnmarshalText(text []byte) error {
	v, err := ParseMass(string(text), NoUnit)
	if err == nil {
		*m = v
	}
	return err
}

// UnmarshalText reads any text that [ParseForce] reads, but every number in it
// needs a unit. On an error, a *[ParseError], f keeps what it was.
func (f *Force) UnmarshalText(text []byte) error {
	v, err := ParseForce(string(text), NoUnit)
	if err == nil {
		*f = v
	}
	return err
}

// UnmarshalText reads any text that [ParseDensity] reads, but every number in it
// needs a unit. On an error, a *[ParseError], d keeps what it was.
func (d *Density) UnmarshalText(text []byte) error {
	v, err := ParseDensity(string(text), NoUnit)
	if err == nil {
		*d = v
	}
	return err
}

func appendCanonical(dst []byte, v int64, one uint64, unit string) []byte {
	return append(appendDecimal(dst, v, one), unit...)
}

// appendDecimal appends v/one, which is exact as one is a power of ten, without
// trailing zeros.
func appendDecimal(dst []byte, v int64, one uint64) []byte {
	if v < 0 {
		dst = append(dst, '-')
	}
	return appendMagnitude(dst, magnitude(v), one)
}

func appendMagnitude(dst []byte, m, one uint64) []byte {
	whole := m / one
	dst = strconv.AppendUint(dst, whole, 10)
	rest := m - whole*one
	if rest == 0 {
		return dst
	}
	// one + rest has a leading 1 and then every decimal, zeros included; the 1
	// gives its place to the point.
	point := len(dst)
	dst = strconv.AppendUint(dst, one+rest, 10)
	dst[point] = '.'
	for dst[len(dst)-1] == '0' {
		dst = dst[:len(dst)-1]
	}
	return dst
}

package explain

import (
	"bytes"
	"strconv"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Kind says what a [Value] counts.
type Kind uint8

// The kinds of values. The zero Kind counts nothing.
const (
	NoKind      Kind = iota
	LengthKind       // nanometers
	AreaKind         // square micrometers
	AngleKind        // nanodegrees
	MassKind         // milligrams
	ForceKind        // millinewtons
	RatioKind        // parts per million
	CountKind        // a plain number
	DensityKind      // grams per cubic meter
)

// A Value is one integer with its kind: a length of so many nanometers, an
// angle of so many nanodegrees. Values compare with ==.
type Value struct {
	Kind Kind
	N    int64
}

// A Quantity is what a [Value] can be made from.
type Quantity interface {
	measure.Length | measure.Area | measure.Angle | measure.Mass | measure.Force | measure.Density | Ratio | int
}

// Of returns q as a Value of its kind.
func Of[Q Quantity](q Q) Value {
	kind := CountKind
	switch any(q).(type) {
	case measure.Length:
		kind = LengthKind
	case measure.Area:
		kind = AreaKind
	case measure.Angle:
		kind = AngleKind
	case measure.Mass:
		kind = MassKind
	case measure.Force:
		kind = ForceKind
	case measure.Density:
		kind = DensityKind
	case Ratio:
		kind = RatioKind
	}
	return Value{kind, int64(q)}
}

// String writes v exactly, with its unit: "31.75 mm", "45 deg", "20 %", "2".
func (v Value) String() string { return string(v.Append(nil, measure.Format{})) }

// Append writes v exactly, lengths as f writes them exactly, everything else
// in its canonical text.
func (v Value) Append(dst []byte, f measure.Format) []byte {
	switch v.Kind {
	case LengthKind:
		return f.AppendExact(dst, measure.Length(v.N))
	case AreaKind:
		return append(dst, measure.Area(v.N).String()...)
	case AngleKind:
		return append(dst, measure.Angle(v.N).String()...)
	case MassKind:
		return append(dst, measure.Mass(v.N).String()...)
	case ForceKind:
		return append(dst, measure.Force(v.N).String()...)
	case DensityKind:
		return append(dst, measure.Density(v.N).String()...)
	case RatioKind:
		return append(dst, Ratio(v.N).String()...)
	}
	return strconv.AppendInt(dst, v.N, 10)
}

// AppendReadable writes v for someone to read, in the manner of f: exactly where
// that is short, else as "about" so much:
//
//	a length   in thousandths of an inch or tenths of a millimeter; whole tenths
//	           of a millimeter are written as such
//	an area    in tenths of a square foot or hundredths of a square meter
//	a mass     in tenths of a pound or hundredths of a kilogram; a small one in
//	           tenths of an ounce or of a gram
//	a force    in tenths of a pound or of a newton
//
// The zero Format writes every length, mass and force exactly.
func (v Value) AppendReadable(dst []byte, f measure.Format) []byte {
	inches := f.Unit() == measure.Inches
	switch {
	case v.Kind == AreaKind:
		return appendArea(dst, measure.Area(v.N), inches)
	case f.Style == measure.Exact:
		return v.Append(dst, f)
	case v.Kind == MassKind:
		return massSteps(measure.Mass(v.N), inches).append(dst, v.N)
	case v.Kind == ForceKind:
		return forceSteps(inches).append(dst, v.N)
	}
	exact := v.Append(nil, f)
	if v.Kind != LengthKind {
		return append(dst, exact...)
	}
	rough := measure.Format{Style: measure.Metric, Step: measure.Millimeter / 10}
	readable := decimals(exact) <= 2
	if inches {
		rough = measure.Format{Style: measure.DecimalInch, Step: measure.Inch / 1000}
		readable = decimals(exact) <= 4
		if bytes.HasSuffix(exact, []byte(" mm")) {
			readable = decimals(exact) <= 1 // 2 mm glass is called so by all
		}
	}
	if readable {
		return append(dst, exact...)
	}
	dst, _ = rough.AppendMarked(append(dst, "about "...), measure.Length(v.N), measure.Nearest)
	return dst
}

// appendArea writes an area in the unit that one has a feeling for.
func appendArea(dst []byte, a measure.Area, inches bool) []byte {
	step, places, unit := measure.SquareMeter/100, 2, " m2"
	if inches {
		step, places, unit = measure.SquareFoot/10, 1, " sq ft"
	}
	steps, exact := measure.MulDiv(a, 1, int64(step))
	if !exact {
		dst = append(dst, "about "...)
	}
	return append(appendFixed(dst, int64(steps), places), unit...)
}

// decimals counts the digits behind the decimal point of a number with its
// unit.
func decimals(text []byte) int {
	number, _, _ := bytes.Cut(text, []byte(" "))
	_, fraction, _ := bytes.Cut(number, []byte("."))
	return len(fraction)
}

// appendBare is Append without the unit where that is f's own: in a formula
// it would stand behind every number.
func (v Value) appendBare(dst []byte, f measure.Format) []byte {
	dst = v.Append(dst, f)
	if v.Kind == LengthKind {
		dst = bytes.TrimSuffix(dst, []byte(" "+f.Unit().String()))
	}
	return dst
}

// MarshalText writes v as [Value.String] does; a number without a unit stays a
// JSON string, so that every value of a document reads the same way.
func (v Value) MarshalText() ([]byte, error) { return v.AppendText(nil) }

// AppendText appends what MarshalText returns.
func (v Value) AppendText(dst []byte) ([]byte, error) { return v.Append(dst, measure.Format{}), nil }

// appendFixed writes n/10^places without trailing zeros.
func appendFixed(dst []byte, n int64, places int) []byte {
	u := uint64(n)
	if n < 0 {
		dst, u = append(dst, '-'), -u
	}
	digits := strconv.AppendUint(nil, u, 10)
	for len(digits) <= places {
		digits = append([]byte{'0'}, digits...)
	}
	point := len(digits) - places
	dst = append(dst, digits[:point]...)
	fraction := digits[point:]
	for len(fraction) > 0 && fraction[len(fraction)-1] == '0' {
		fraction = fraction[:len(fraction)-1]
	}
	if len(fraction) > 0 {
		dst = append(append(dst, '.'), fraction...)
	}
	return dst
}

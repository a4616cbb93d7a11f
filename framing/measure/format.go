package measure

import (
	"errors"
	"math/bits"
	"strconv"
)

// A Format says how lengths are shown: in which style and to which step.
//
// The zero Format is valid: it writes every nanometer in millimeters, as
// [Length.String] does. So does a Format whose step is not one of its style's
// [Steps]: what cannot be shown as asked is shown exactly, never wrongly.
//
// A method that rounds takes the direction with each length, since in one plan
// a rail is rounded up and a pane down. Numbers are written without trailing
// zeros and fractions in their lowest terms.
type Format struct {
	Style Style
	Step  Length
}

// NewFormat returns the Format of a style and a step. The step must be one of
// the style's [Steps], or 0 for [Exact]; else the error says which would do.
func NewFormat(style Style, step Length) (Format, error) {
	if style.has(step) {
		return Format{style, step}, nil
	}
	b := append([]byte("measure: the style "), style.String()...)
	b = append(b, " has no step of "...)
	b, _ = step.AppendText(b)
	b = append(b, "; accepted: "...)
	if style.coarsest() == 0 {
		return Format{}, errors.New(string(append(b, "0"...)))
	}
	for s := style.coarsest(); s != 0; s = style.finer(s) {
		if s != style.coarsest() {
			b = append(b, ", "...)
		}
		b, _ = Format{style, s}.AppendMarked(b, s, Nearest)
	}
	return Format{}, errors.New(string(b))
}

// style is the style that f really writes in.
func (f Format) style() Style {
	if f.Style.has(f.Step) {
		return f.Style
	}
	return Exact
}

// Finer returns the Format of the same style with the next finer step, and
// whether there is one; without, it returns f.
func (f Format) Finer() (Format, bool) {
	if step := f.Style.finer(f.Step); step != 0 {
		return Format{f.Style, step}, true
	}
	return f, false
}

// Unit returns the unit that f's numbers count in: the bare unit with which
// [Parse] reads what [Format.Append] writes. For [FeetInches] it is Inches,
// though the marks already say it.
func (f Format) Unit() Unit {
	switch f.style() {
	case Fraction, FeetInches, DecimalInch:
		return Inches
	}
	return Millimeters
}

// Round returns the length that f shows for l in the direction d, and the
// remainder l - shown. [Exact] shows l itself.
func (f Format) Round(l Length, d Direction) (shown, remainder Length) {
	if f.style() == Exact {
		return l, 0
	}
	return RoundTo(l, f.Step, d)
}

// Append appends the number that f shows for l in the direction d, without its
// unit, and returns the remainder l - shown. [FeetInches] needs its marks and
// has them here too.
//
//	Fraction      20 13/16    -1/8      3
//	FeetInches    1' 8 13/16" 5' 3/4"   8"   1' 0"
//	DecimalInch   20.813      0.5
//	Metric        528.5       528
//	Exact         528.6375
func (f Format) Append(dst []byte, l Length, d Direction) ([]byte, Length) {
	style := f.style()
	if style == Exact {
		return appendDecimal(dst, int64(l), 1_000_000), 0
	}
	shown, remainder := RoundTo(l, f.Step, d)
	switch style {
	case Fraction:
		dst = appendFraction(dst, shown)
	case FeetInches:
		dst = appendFeetInches(dst, shown)
	case DecimalInch:
		dst = appendDecimal(dst, int64(shown/(Inch/1000)), 1000)
	default:
		dst = appendDecimal(dst, int64(shown/(Millimeter/10)), 10)
	}
	return dst, remainder
}

// AppendMarked appends what [Format.Append] does, with the unit: "20 13/16 in",
// "528.5 mm", `1' 8 13/16"`.
func (f Format) AppendMarked(dst []byte, l Length, d Direction) ([]byte, Length) {
	dst, remainder := f.Append(dst, l, d)
	switch f.style() {
	case FeetInches:
	case Fraction, DecimalInch:
		dst = append(dst, " in"...)
	default:
		dst = append(dst, " mm"...)
	}
	return dst, remainder
}

// Number returns what [Format.Append] appends.
func (f Format) Number(l Length, d Direction) string {
	b, _ := f.Append(make([]byte, 0, longestText), l, d)
	return string(b)
}

// Text returns what [Format.AppendMarked] appends.
func (f Format) Text(l Length, d Direction) string {
	b, _ := f.AppendMarked(make([]byte, 0, longestText), l, d)
	return string(b)
}

// AppendExact appends l exactly and always with its unit; the step plays no
// part. [Fraction] and [FeetInches] write a multiple of 1/64 in as a fraction.
// What is none, and every length in [DecimalInch], is written in decimal inches
// where six places hold it. What they do not hold, and every length in [Metric]
// and [Exact], is written in millimeters: 1 mm is 0.03937007874... in without
// end.
func (f Format) AppendExact(dst []byte, l Length) []byte {
	const place = 127 // nm: 5 millionths of an inch, the least whole number of both
	switch style := f.style(); {
	case style == Fraction && l%(Inch/64) == 0:
		return append(appendFraction(dst, l), " in"...)
	case style == FeetInches && l%(Inch/64) == 0:
		return appendFeetInches(dst, l)
	case f.Unit() == Inches && l%place == 0:
		return append(appendDecimal(dst, int64(l/place*5), 1_000_000), " in"...)
	}
	dst, _ = l.AppendText(dst)
	return dst
}

// appendFraction appends l, a multiple of 1/64 in, as inches.
func appendFraction(dst []byte, l Length) []byte {
	if l < 0 {
		dst = append(dst, '-')
	}
	return appendInches(dst, magnitude(int64(l)))
}

// appendFeetInches appends l, a multiple of 1/64 in, with its marks.
func appendFeetInches(dst []byte, l Length) []byte {
	if l < 0 {
		dst = append(dst, '-')
	}
	m := magnitude(int64(l))
	if feet := m / uint64(Foot); feet > 0 {
		dst = strconv.AppendUint(dst, feet, 10)
		dst = append(dst, "' "...)
		m -= feet * uint64(Foot)
	}
	return append(appendInches(dst, m), '"')
}

func appendInches(dst []byte, m uint64) []byte {
	whole, num, den := inches(m)
	if whole > 0 || num == 0 {
		dst = strconv.AppendUint(dst, whole, 10)
		if num == 0 {
			return dst
		}
		dst = append(dst, ' ')
	}
	dst = strconv.AppendUint(dst, num, 10)
	dst = append(dst, '/')
	return strconv.AppendUint(dst, den, 10)
}

// inches splits m, a multiple of 1/64 in, into whole inches and a fraction in
// lowest terms.
func inches(m uint64) (whole, num, den uint64) {
	whole = m / uint64(Inch)
	num = (m - whole*uint64(Inch)) / uint64(Inch/64)
	if num == 0 {
		return whole, 0, 1
	}
	twos := bits.TrailingZeros64(num)
	return whole, num >> twos, 64 >> twos
}

package measure

import "strconv"

// AppendSpoken appends what [Format.AppendMarked] shows, worded for a screen
// reader, which would read "20 13/16 in" as a date or a division:
//
//	20 and 13 sixteenths inches    one half inch    1 and one quarter inches
//	1 foot 8 and 13 sixteenths inches    5 feet and 3 quarters inch    1 foot
//	528.5 millimeters    1 millimeter    minus 1 inch    0 inches
//
// A minus is the word. "and" stands before every fraction that follows a
// number. The part 1 is spelled "one", so that "1 one quarter" cannot sound
// like eleven; other counts stay in digits for the reader to speak in its own
// voice. A unit is singular after a lone 1 and after a lone fraction. Feet
// alone have no inches behind them. It is for the ear: [Parse] does not read it.
func (f Format) AppendSpoken(dst []byte, l Length, d Direction) []byte {
	shown, _ := f.Round(l, d)
	if shown < 0 {
		dst = append(dst, "minus "...)
	}
	m := magnitude(int64(shown))
	switch f.style() {
	case Fraction:
		return appendSpokenInches(dst, m)
	case FeetInches:
		feet := m / uint64(Foot)
		if feet == 0 {
			return appendSpokenInches(dst, m)
		}
		dst = strconv.AppendUint(dst, feet, 10)
		dst = append(dst, plural(" foot", " feet", feet == 1)...)
		m -= feet * uint64(Foot)
		if m == 0 {
			return dst
		}
		if m < uint64(Inch) {
			dst = append(dst, " and"...)
		}
		return appendSpokenInches(append(dst, ' '), m)
	case DecimalInch:
		dst = appendMagnitude(dst, m/uint64(Inch/1000), 1000)
		return append(dst, plural(" inch", " inches", m == uint64(Inch))...)
	}
	dst = appendMagnitude(dst, m, uint64(Millimeter))
	return append(dst, plural(" millimeter", " millimeters", m == uint64(Millimeter))...)
}

// Spoken returns what [Format.AppendSpoken] appends.
func (f Format) Spoken(l Length, d Direction) string {
	return string(f.AppendSpoken(make([]byte, 0, 64), l, d))
}

func appendSpokenInches(dst []byte, m uint64) []byte {
	whole, num, den := inches(m)
	if num == 0 {
		dst = strconv.AppendUint(dst, whole, 10)
		return append(dst, plural(" inch", " inches", whole == 1)...)
	}
	if whole > 0 {
		dst = strconv.AppendUint(dst, whole, 10)
		dst = append(dst, " and "...)
	}
	if num == 1 {
		dst = append(dst, "one "...)
	} else {
		dst = strconv.AppendUint(dst, num, 10)
		dst = append(dst, ' ')
	}
	dst = append(dst, part(den)...)
	if num > 1 {
		dst = append(dst, 's')
	}
	return append(dst, plural(" inch", " inches", whole == 0)...)
}

// part names one den-th of an inch.
func part(den uint64) string {
	switch den {
	case 2:
		return "half" // never plural: 2/2 is whole
	case 4:
		return "quarter"
	case 8:
		return "eighth"
	case 16:
		return "sixteenth"
	case 32:
		return "thirty-second"
	}
	return "sixty-fourth"
}

func plural(one, many string, single bool) string {
	if single {
		return one
	}
	return many
}

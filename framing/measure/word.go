package measure

import "unicode/utf8"

// unit reads the unit at the scanner, one of dim's. It is NoUnit where the text
// or the term ends instead.
func (s *scanner) unit(dim dimension) (Unit, bool) {
	switch c := s.c; {
	case c == endOfText || c == '+':
		return NoUnit, true
	case isLetter(c):
		return s.word(dim)
	}
	if u := s.mark(dim); u != NoUnit {
		return u, true
	}
	if s.c < utf8.RuneSelf && s.c != '%' && s.c != '"' && s.c != '\'' {
		return NoUnit, s.fail(RuleTrailing, s.i, acceptedEnd)
	}
	return NoUnit, s.fail(RuleUnknownUnit, s.i, dim.units())
}

// mark reads a mark: a quote, a prime or the degree sign. Two single marks of
// one kind are a double one.
func (s *scanner) mark(dim dimension) Unit {
	single, double := Feet, Inches
	switch {
	case dim == ofAngle && s.c == '°':
		s.pass()
		return Degrees
	case dim == ofAngle:
		single, double = ArcMinutes, ArcSeconds
	case dim != ofLength:
		return NoUnit
	}
	switch c := s.c; c {
	case '"', '\u2033', '\u201D':
		s.pass()
		return double
	case '\'', '\u2032', '\u2019':
		s.pass()
		if s.c == c {
			s.pass()
			return double
		}
		return single
	}
	return NoUnit
}

// longestWord is the length of "millinewtons".
const longestWord = 12

// word reads a unit in letters. Case does not matter, but for the m of milli:
// MN is a meganewton and Mg a tonne.
func (s *scanner) word(dim dimension) (Unit, bool) {
	at := s.i
	var buf [longestWord]byte
	w, ok := s.letters(&buf)
	if ok && string(w) == "e" {
		if isDigit(s.c) || s.c == '-' || s.c == '+' {
			return NoUnit, s.fail(RuleExponent, at, "every digit written out, as 1500")
		}
	}
	var u Unit
	switch {
	case !ok:
	case dim == ofLength:
		u = lengthWord(w)
	case dim == ofArea:
		u = s.areaWord(w)
	case dim == ofAngle:
		u = angleWord(w)
	case dim == ofMass:
		u = massWord(w)
	case dim == ofForce:
		u = s.forceWord(w)
	case dim == ofDensity:
		return s.density(w, at)
	}
	if (u == Milligrams || u == Millinewtons) && len(w) == 2 && s.s[at] == 'M' {
		u = NoUnit
	}
	if u == NoUnit {
		return NoUnit, s.fail(RuleUnknownUnit, at, dim.units())
	}
	return u, s.dot(w)
}

// letters reads a run of letters into buf, in lower case. It is not ok for a
// run that is longer than any unit.
func (s *scanner) letters(buf *[longestWord]byte) (word []byte, ok bool) {
	n := 0
	for i := s.i; i < len(s.s) && isLetter(rune(s.s[i])); i++ {
		if n < longestWord {
			buf[n] = s.s[i] | 0x20
		}
		n++
	}
	s.i += n
	s.load()
	if n > longestWord {
		return nil, false
	}
	return buf[:n], true
}

// dot passes over the point of an abbreviation. Before a digit it could be a
// decimal point, so there it is refused.
func (s *scanner) dot(w []byte) bool {
	if s.c != '.' {
		return true
	}
	switch string(w) {
	case "in", "ft", "sq", "cu", "lb", "lbs", "oz", "deg", "min", "sec":
		if s.i+1 == len(s.s) || !isDigit(rune(s.s[s.i+1])) {
			s.pass()
			return true
		}
	}
	return s.fail(RuleTrailing, s.i, acceptedEnd)
}

func lengthWord(w []byte) Unit {
	switch string(w) {
	case "mm", "millimeter", "millimeters", "millimetre", "millimetres":
		return Millimeters
	case "cm", "centimeter", "centimeters", "centimetre", "centimetres":
		return Centimeters
	case "m", "meter", "meters", "metre", "metres":
		return Meters
	case "in", "inch", "inches":
		return Inches
	case "ft", "foot", "feet":
		return Feet
	}
	return NoUnit
}

// areaWord reads on from the first word of a unit of area: "sq in", or "in"
// with a 2 behind it.
func (s *scanner) areaWord(w []byte) Unit {
	if string(w) == "sq" || string(w) == "square" {
		if !s.dot(w) {
			return NoUnit
		}
		s.spaces()
		var buf [longestWord]byte
		second, ok := s.letters(&buf)
		if !ok {
			return NoUnit
		}
		u := lengthWord(second)
		if u != NoUnit && !s.dot(second) {
			return NoUnit
		}
		return squared(u)
	}
	u := lengthWord(w)
	if u != NoUnit && s.c == '^' {
		s.pass()
	}
	switch {
	case u == NoUnit:
	case s.c == '2' || s.c == '²':
		s.pass()
		return squared(u)
	}
	return NoUnit
}

func squared(u Unit) Unit {
	if u == NoUnit {
		return NoUnit
	}
	return u + SquareMillimeters - Millimeters
}

func angleWord(w []byte) Unit {
	switch string(w) {
	case "deg", "degree", "degrees":
		return Degrees
	case "min", "minute", "minutes", "arcmin", "arcminute", "arcminutes":
		return ArcMinutes
	case "sec", "second", "seconds", "arcsec", "arcsecond", "arcseconds":
		return ArcSeconds
	}
	return NoUnit
}

func massWord(w []byte) Unit {
	switch string(w) {
	case "mg", "milligram", "milligrams":
		return Milligrams
	case "g", "gram", "grams":
		return Grams
	case "kg", "kilogram", "kilograms":
		return Kilograms
	case "oz", "ounce", "ounces":
		return Ounces
	case "lb", "lbs", "pound", "pounds":
		return Pounds
	}
	return NoUnit
}

// forceWord reads on from the first word of a unit of force, as "pounds-force".
func (s *scanner) forceWord(w []byte) Unit {
	switch string(w) {
	case "mn", "millinewton", "millinewtons":
		return Millinewtons
	case "n", "newton", "newtons":
		return Newtons
	case "kn", "kilonewton", "kilonewtons":
		return Kilonewtons
	case "lbf":
		return PoundsForce
	case "ozf":
		return OuncesForce
	case "kgf":
		return KilogramsForce
	case "gf":
		return GramsForce
	case "pound", "pounds":
		s.force()
	}
	switch massWord(w) {
	case Pounds:
		return PoundsForce
	case Ounces:
		return OuncesForce
	case Kilograms:
		return KilogramsForce
	case Grams:
		return GramsForce
	}
	return NoUnit
}

// force passes over the "-force" of "pounds-force", where it is there.
func (s *scanner) force() {
	if s.c != '-' && !isSpace(s.c) {
		return
	}
	at := s.i
	s.pass()
	var buf [longestWord]byte
	if second, ok := s.letters(&buf); !ok || string(second) != "force" {
		s.i = at
		s.load()
	}
}

// density reads on from the first word of a unit of density, which began at at:
// "kg/m3", "lb/cu ft".
func (s *scanner) density(w []byte, at int) (Unit, bool) {
	mass := massWord(w)
	if mass == NoUnit || !s.dot(w) || !isSlash(s.c) {
		return NoUnit, s.fail(RuleUnknownUnit, at, ofDensity.units())
	}
	s.pass()
	var buf [longestWord]byte
	u := NoUnit
	if second, ok := s.letters(&buf); ok {
		u = s.perVolume(mass, second)
	}
	if u == NoUnit {
		return NoUnit, s.fail(RuleUnknownUnit, at, ofDensity.units())
	}
	return u, true
}

// perVolume reads on from the first word of a unit of volume: "cu ft", or "ft"
// with a 3 behind it.
func (s *scanner) perVolume(mass Unit, w []byte) Unit {
	length := lengthWord(w)
	if cubic := string(w) == "cu" || string(w) == "cubic"; cubic {
		if !s.dot(w) {
			return NoUnit
		}
		s.spaces()
		var buf [longestWord]byte
		second, ok := s.letters(&buf)
		if !ok {
			return NoUnit
		}
		if length = lengthWord(second); length != NoUnit && !s.dot(second) {
			return NoUnit
		}
	} else {
		if s.c == '^' {
			s.pass()
		}
		if s.c != '3' && s.c != '³' {
			return NoUnit
		}
		s.pass()
	}
	switch {
	case mass == Kilograms && length == Meters:
		return KilogramsPerCubicMeter
	case mass == Grams && length == Meters:
		return GramsPerCubicMeter
	case mass == Grams && length == Centimeters:
		return GramsPerCubicCentimeter
	case mass == Pounds && length == Feet:
		return PoundsPerCubicFoot
	}
	return NoUnit
}

// units lists what can be written, for the errors.
func (d dimension) units() string {
	switch d {
	case ofLength:
		return "mm, cm, m, in or ft"
	case ofArea:
		return "mm2, cm2, m2, sq in or sq ft"
	case ofAngle:
		return "deg, arcmin or arcsec"
	case ofMass:
		return "mg, g, kg, oz or lb"
	case ofForce:
		return "N, kN, lb, oz, kg or g"
	case ofDensity:
		return "kg/m3, g/cm3, g/m3 or lb/ft3"
	}
	return ""
}

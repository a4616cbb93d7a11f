package measure

const (
	maxText  = 100 // bytes of one text
	maxTerms = 16  // terms of one sum
)

// A reading is a [Reading] of any quantity, without its value.
type reading struct {
	unit          Unit
	bare, rounded bool
}

// A reader reads one text for one quantity.
type reader struct {
	scanner
	dim   dimension
	bare  Unit
	how   reading
	total total
	// other says that some term was written in a unit that is not the bare one.
	other bool
}

// read reads s as dim, in dim's smallest unit.
func read(s string, dim dimension, bare Unit) (int64, reading, error) {
	r := reader{scanner: scanner{s: s}, dim: dim, bare: bare}
	value, ok := r.text()
	if !ok {
		return 0, reading{}, &ParseError{Text: s, Offset: r.at, Rule: r.rule, Accepted: r.accepted}
	}
	return value, r.how, nil
}

func (r *reader) text() (int64, bool) {
	switch {
	case r.bare != NoUnit && r.bare.dimension() != r.dim:
		return 0, r.fail(RuleWrongBare, 0, r.dim.units()+", or none")
	case len(r.s) > maxText:
		return 0, r.fail(RuleTooLong, maxText, "at most 100 bytes")
	}
	r.load()
	r.spaces()
	sign := r.i
	if r.c == endOfText {
		return 0, r.fail(RuleEmpty, r.i, r.dim.example())
	}
	negative := isMinus(r.c)
	if negative {
		r.pass()
		r.spaces()
	}
	if !r.term() {
		return 0, false
	}
	for terms := 1; ; terms++ {
		if r.c == endOfText {
			break
		}
		at := r.i
		r.pass() // term stops at the end or at a plus
		r.spaces()
		switch {
		case negative:
			return 0, r.fail(RuleSignedSum, sign, acceptedPlus)
		case isMinus(r.c):
			return 0, r.fail(RuleSignedSum, r.i, acceptedPlus)
		case terms == maxTerms:
			return 0, r.fail(RuleTooManyTerms, at, "at most 16 terms")
		case !r.term():
			return 0, false
		}
	}
	value, exact, ok := r.total.rounded(negative)
	if !ok {
		return 0, r.fail(RuleRange, 0, r.dim.limits())
	}
	r.how.rounded = !exact
	return value, true
}

// term reads one term of a sum: a number, or the numbers of one measure in
// falling units, as 1' 8". It stops at the end or at a plus, or fails.
func (r *reader) term() bool {
	start := r.i
	var n number
	if !r.number(&n) {
		return false
	}
	u, ok := r.unit(r.dim)
	if !ok {
		return false
	}
	bare := u == NoUnit
	if bare {
		if r.bare == NoUnit {
			return r.fail(RuleNoUnit, n.end, "a unit after the number: "+r.dim.units())
		}
		u = r.bare
	}
	if r.how.unit == NoUnit {
		r.how.unit = u
	}
	r.total.add(&n, u)
	for !bare {
		spaced := r.spaces()
		if r.c == endOfText || r.c == '+' {
			break
		}
		if !r.joined(u, spaced) {
			return false
		}
		if n.form != whole {
			return r.fail(RuleFeetFraction, n.at, u.wholeExample())
		}
		last := u
		n = number{}
		if u, ok = r.smaller(&n, u); !ok {
			return false
		}
		if n.atLeast(last.divided(u)) {
			return r.fail(RulePartTooLarge, n.at, u.belowExample())
		}
		r.total.add(&n, u)
	}
	if bare && r.other || !bare && u != r.bare && r.how.bare {
		return r.fail(RuleMixedUnits, start, "a unit on every number of the sum")
	}
	r.how.bare = r.how.bare || bare
	r.other = r.other || !bare && u != r.bare
	return true
}

// joined checks that a smaller unit may follow on u here, and passes over the
// hyphen that a drawing puts between feet and inches.
func (r *reader) joined(u Unit, spaced bool) bool {
	at := r.i
	c := r.c
	if isDigit(c) && u.leads() {
		return true
	}
	if isHyphen(c) || c == minusSign {
		r.pass()
		spaced = r.spaces() || spaced
		switch {
		case !startsNumber(r.c), r.c == ',':
			return r.fail(RuleTrailing, at, acceptedEnd)
		case u != Feet || c == minusSign:
			return r.fail(RuleSubtraction, at, acceptedSum)
		case spaced:
			return r.fail(RuleHyphenSpaced, at, `1'-8" or 1' 8" for one measure; work a difference out first`)
		}
		return true
	}
	if !startsNumber(c) || c == ',' || !u.leads() { // 1',5 is no better than a list
		return r.fail(RuleTrailing, at, acceptedEnd)
	}
	return true
}

// smaller reads the number after a unit u and its own, smaller unit, which may
// be left out after feet only: there it is inches.
func (r *reader) smaller(n *number, u Unit) (Unit, bool) {
	if !r.number(n) {
		return NoUnit, false
	}
	at := r.i
	v, ok := r.unit(r.dim)
	switch {
	case !ok:
		return NoUnit, false
	case v == NoUnit && u == Feet:
		return Inches, true
	case v == NoUnit:
		return NoUnit, r.fail(RuleNoUnit, n.end, "a unit after the number: "+u.partNames())
	case u.divided(v) == 0:
		return NoUnit, r.fail(RuleMixedUnits, at, u.partNames())
	}
	return v, true
}

// atLeast says whether n >= limit.
func (n *number) atLeast(limit uint64) bool {
	if n.integer < limit && n.num < n.den {
		return false
	}
	if n.form == decimal {
		return n.integer/powerOfTen(n.places) >= limit
	}
	return n.integer >= limit || n.num/n.den >= limit
}

const acceptedPlus = "a sum of measures without a minus"

// example is one text that reads.
func (d dimension) example() string {
	switch d {
	case ofArea:
		return "an area, as 5 sq ft or 0.5 m2"
	case ofAngle:
		return "an angle, as 22.5 deg"
	case ofMass:
		return "a mass, as 3 lb 4 oz or 1.5 kg"
	case ofForce:
		return "a force, as 50 lb or 220 N"
	case ofDensity:
		return "a density, as 2500 kg/m3"
	}
	return "a length, as 20 13/16 in or 528.5 mm"
}

// limits is about where a type ends.
func (d dimension) limits() string {
	switch d {
	case ofArea:
		return "at most about 9.2 million square meters"
	case ofAngle:
		return "at most about 9.2 billion degrees"
	case ofMass:
		return "at most about 9.2 million tonnes"
	case ofForce:
		return "at most about 9.2 trillion kilonewtons"
	case ofDensity:
		return "at most about 9.2 quadrillion kg/m3"
	}
	return "at most about 9.2 million kilometers"
}

func (u Unit) partNames() string {
	switch u {
	case Degrees:
		return "arcmin or arcsec"
	case ArcMinutes:
		return "arcsec"
	case Pounds, PoundsForce:
		return "oz"
	}
	return "inches"
}

func (u Unit) wholeExample() string {
	switch u {
	case Degrees, ArcMinutes:
		return "22.5 deg, or 22 deg 30 min"
	case Pounds, PoundsForce:
		return "3.25 lb, or 3 lb 4 oz"
	}
	return `1.5', or 1' 6"`
}

func (u Unit) belowExample() string {
	switch {
	case u == Inches:
		return "less than 12 inches after feet"
	case u == Ounces || u == OuncesForce:
		return "less than 16 ounces after pounds"
	}
	return "less than 60 after the larger unit"
}

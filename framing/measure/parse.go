package measure

// Parse reads a length the way a tape, a rule or a drawing says it; the grammar
// stands in the package comment. bare is the unit of a number without one;
// NoUnit refuses such a number. A text that is not a whole number of nanometers
// is rounded half away from zero: "1/3 in" is 8,466,667 nm. [Read] tells.
//
// The error is a *[ParseError]. It is never a guess: text that a framer could
// take two ways, such as "1,250", is refused with what would do.
func Parse(s string, bare Unit) (Length, error) {
	v, _, err := read(s, ofLength, bare)
	return Length(v), err
}

// A Reading is what [Read] found in a text.
type Reading struct {
	Length Length
	// Unit is the unit that the first number was written in, and the bare unit
	// where it had none. It is Feet for 1' 8".
	Unit Unit
	// Bare says that some number had no unit of its own and took the bare one.
	// The 8 of "1' 8" does not count: after feet it is inches by rule.
	Bare bool
	// Rounded says that the text was not a whole number of nanometers, as 1/3 in
	// and 1/128 in are not. Every 1/64 in and every 0.01 mm is.
	Rounded bool
}

// Read reads a length as [Parse] does and also says how it was written.
func Read(s string, bare Unit) (Reading, error) {
	v, how, err := read(s, ofLength, bare)
	if err != nil {
		return Reading{}, err
	}
	return Reading{Length(v), how.unit, how.bare, how.rounded}, nil
}

// ParseArea reads a surface, as "5 sq ft", "645.16 mm²" or "20 1/2 in2", by the
// grammar of the package comment. It is rounded half away from zero to a square
// micrometer; square inches and square feet are whole, a third of one is not.
func ParseArea(s string, bare Unit) (Area, error) {
	v, _, err := read(s, ofArea, bare)
	return Area(v), err
}

// ParseAngle reads an angle, as "22.5°", "22 1/2 deg" or "22° 30′", by the
// grammar of the package comment. It is rounded half away from zero to a
// nanodegree: 30′ is exactly half a degree, 20′ is 333,333,333 nanodegrees.
func ParseAngle(s string, bare Unit) (Angle, error) {
	v, _, err := read(s, ofAngle, bare)
	return Angle(v), err
}

// ParseMass reads a mass, as "2.5 kg" or "3 lb 4 oz", by the grammar of the
// package comment. It is rounded half away from zero to a milligram: 100 lb is
// exactly 45,359,237 mg, 1 lb is 453,592 mg and 0.37 mg are lost.
func ParseMass(s string, bare Unit) (Mass, error) {
	v, _, err := read(s, ofMass, bare)
	return Mass(v), err
}

// ParseForce reads a force, as "50 lbf" or "220 N", by the grammar of the
// package comment. It is rounded half away from zero to a millinewton: 1 lbf is
// 4.4482216152605 N and becomes 4,448 mN.
//
// It reads weights as hooks and wires are sold by: "50 lb" and "10 kg" are what
// so much mass weighs under standard gravity, as [Weight] has it. What is written
// in them counts as [PoundsForce], [OuncesForce], [KilogramsForce] or [GramsForce].
func ParseForce(s string, bare Unit) (Force, error) {
	v, _, err := read(s, ofForce, bare)
	return Force(v), err
}

// ParseDensity reads a density, as "2500 kg/m3", "1.19 g/cm3" or "156 lb/cu ft",
// by the grammar of the package comment. It is rounded half away from zero to a
// gram per cubic meter: 156 lb/ft3 is 2498.88 kg/m3.
func ParseDensity(s string, bare Unit) (Density, error) {
	v, _, err := read(s, ofDensity, bare)
	return Density(v), err
}

package measure

// A Unit is what a number is counted in. NoUnit, the zero value, stands for a
// number that says nothing about its unit.
type Unit uint8

// The units that text can be written in. Each is a whole number of its type's
// own smallest unit, or a fraction of whole numbers, so that none of them needs
// a float: a pound is 45,359,237/100 mg.
const (
	NoUnit Unit = iota

	Millimeters
	Centimeters
	Meters
	Inches
	Feet

	SquareMillimeters
	SquareCentimeters
	SquareMeters
	SquareInches
	SquareFeet

	Degrees
	ArcMinutes
	ArcSeconds

	Milligrams
	Grams
	Kilograms
	Ounces
	Pounds

	Millinewtons
	Newtons
	Kilonewtons
	PoundsForce
	OuncesForce
	KilogramsForce
	GramsForce

	KilogramsPerCubicMeter
	GramsPerCubicMeter
	GramsPerCubicCentimeter
	PoundsPerCubicFoot
)

// String returns the symbol of u as the library writes it: "mm", "in2", "deg",
// "lbf". [Parse] and its sisters read every one of them. It is empty for NoUnit
// and for a value that is no unit.
func (u Unit) String() string {
	switch u {
	case Millimeters:
		return "mm"
	case Centimeters:
		return "cm"
	case Meters:
		return "m"
	case Inches:
		return "in"
	case Feet:
		return "ft"
	case SquareMillimeters:
		return "mm2"
	case SquareCentimeters:
		return "cm2"
	case SquareMeters:
		return "m2"
	case SquareInches:
		return "in2"
	case SquareFeet:
		return "ft2"
	case Degrees:
		return "deg"
	case ArcMinutes:
		return "arcmin"
	case ArcSeconds:
		return "arcsec"
	case Milligrams:
		return "mg"
	case Grams:
		return "g"
	case Kilograms:
		return "kg"
	case Ounces:
		return "oz"
	case Pounds:
		return "lb"
	case Millinewtons:
		return "mN"
	case Newtons:
		return "N"
	case Kilonewtons:
		return "kN"
	case PoundsForce:
		return "lbf"
	case OuncesForce:
		return "ozf"
	case KilogramsForce:
		return "kgf"
	case GramsForce:
		return "gf"
	case KilogramsPerCubicMeter:
		return "kg/m3"
	case GramsPerCubicMeter:
		return "g/m3"
	case GramsPerCubicCentimeter:
		return "g/cm3"
	case PoundsPerCubicFoot:
		return "lb/ft3"
	}
	return ""
}

// factor returns u as num/den of its type's smallest unit. NoUnit is 1/1, which
// the reader never asks for.
func (u Unit) factor() (num, den uint64) {
	switch u {
	case Millimeters:
		return uint64(Millimeter), 1
	case Centimeters:
		return uint64(Centimeter), 1
	case Meters:
		return uint64(Meter), 1
	case Inches:
		return uint64(Inch), 1
	case Feet:
		return uint64(Foot), 1
	case SquareMillimeters:
		return uint64(SquareMillimeter), 1
	case SquareCentimeters:
		return 100 * uint64(SquareMillimeter), 1
	case SquareMeters:
		return uint64(SquareMeter), 1
	case SquareInches:
		return uint64(SquareInch), 1
	case SquareFeet:
		return uint64(SquareFoot), 1
	case Degrees:
		return uint64(Degree), 1
	case ArcMinutes:
		return uint64(Degree) / 20, 3
	case ArcSeconds:
		return uint64(Degree) / 400, 9
	case Milligrams:
		return uint64(Milligram), 1
	case Grams:
		return uint64(Gram), 1
	case Kilograms:
		return uint64(Kilogram), 1
	case Pounds: // 453.59237 g, Federal Register notice 59-5442
		return 45_359_237, 100
	case Ounces: // a sixteenth of it
		return 45_359_237, 1600
	case Millinewtons:
		return uint64(Millinewton), 1
	case Newtons:
		return uint64(Newton), 1
	case Kilonewtons:
		return uint64(Kilonewton), 1
	case PoundsForce: // 0.45359237 kg x 9.80665 m/s2 = 4.4482216152605 N
		return 8_896_443_230_521, 2_000_000_000
	case OuncesForce: // a sixteenth of it
		return 8_896_443_230_521, 32_000_000_000
	case KilogramsForce: // 1 kg x 9.80665 m/s2
		return 980_665, 100
	case GramsForce:
		return 980_665, 100_000
	case KilogramsPerCubicMeter:
		return uint64(KilogramPerCubicMeter), 1
	case GramsPerCubicMeter:
		return uint64(GramPerCubicMeter), 1
	case GramsPerCubicCentimeter:
		return uint64(GramPerCubicCentimeter), 1
	case PoundsPerCubicFoot: // 453.59237 g / (0.3048 m)^3
		return 453_592_370_000_000, 28_316_846_592
	}
	return 1, 1
}

// A dimension is what a unit measures.
type dimension uint8

const (
	ofNothing dimension = iota
	ofLength
	ofArea
	ofAngle
	ofMass
	ofForce
	ofDensity
)

func (u Unit) dimension() dimension {
	switch {
	case u == NoUnit:
		return ofNothing
	case u <= Feet:
		return ofLength
	case u <= SquareFeet:
		return ofArea
	case u <= ArcSeconds:
		return ofAngle
	case u <= Pounds:
		return ofMass
	case u <= GramsForce:
		return ofForce
	case u <= PoundsPerCubicFoot:
		return ofDensity
	}
	return ofNothing
}

// divided returns the limit that a count of the smaller unit v stays under
// where it follows u in one measure, as the inches of 1' 8". It is 0 where v
// does not follow u.
func (u Unit) divided(v Unit) uint64 {
	switch {
	case u == Feet && v == Inches:
		return 12
	case u == Degrees && (v == ArcMinutes || v == ArcSeconds), u == ArcMinutes && v == ArcSeconds:
		return 60
	case u == Pounds && v == Ounces, u == PoundsForce && v == OuncesForce:
		return 16
	}
	return 0
}

// leads says whether a smaller unit may follow u in one measure.
func (u Unit) leads() bool {
	return u == Feet || u == Degrees || u == ArcMinutes || u == Pounds || u == PoundsForce
}

package measure

import "testing"

// others are texts of areas, angles, masses, forces and densities.
var others = []struct {
	dim     dimension
	text    string
	bare    Unit
	want    int64
	rounded bool
}{
	{ofArea, "1 sq in", NoUnit, int64(SquareInch), false},
	{ofArea, "1 sq. in.", NoUnit, int64(SquareInch), false},
	{ofArea, "1 square inch", NoUnit, int64(SquareInch), false},
	{ofArea, "20 1/2 in2", NoUnit, 41 * int64(SquareInch) / 2, false},
	{ofArea, "20½ in²", NoUnit, 41 * int64(SquareInch) / 2, false},
	{ofArea, "2 in^2", NoUnit, 2 * int64(SquareInch), false},
	{ofArea, "5 sq ft", NoUnit, 5 * int64(SquareFoot), false},
	{ofArea, "5 ft²", NoUnit, 5 * int64(SquareFoot), false},
	{ofArea, "645.16 mm²", NoUnit, int64(SquareInch), false},
	{ofArea, "6.4516 cm2", NoUnit, int64(SquareInch), false},
	{ofArea, "0,5 m²", NoUnit, int64(SquareMeter) / 2, false},
	{ofArea, "1 square metre", NoUnit, int64(SquareMeter), false},
	{ofArea, "2 sq feet + 12 sq inches", NoUnit, 2*int64(SquareFoot) + 12*int64(SquareInch), false},
	{ofArea, "12", SquareInches, 12 * int64(SquareInch), false},
	{ofArea, "1/7 sq in", NoUnit, 92_165_714, true},
	{ofArea, "-1 mm2", NoUnit, -1_000_000, false},

	{ofAngle, "45", Degrees, 45 * int64(Degree), false},
	{ofAngle, "22.5°", NoUnit, 22_500_000_000, false},
	{ofAngle, "22 1/2 deg", NoUnit, 22_500_000_000, false},
	{ofAngle, "22½ degrees", NoUnit, 22_500_000_000, false},
	{ofAngle, "22° 30′", NoUnit, 22_500_000_000, false},
	{ofAngle, "22°30'", NoUnit, 22_500_000_000, false},
	{ofAngle, "22 deg 30 min", NoUnit, 22_500_000_000, false},
	{ofAngle, "22° 30′ 36″", NoUnit, 22_510_000_000, false},
	{ofAngle, `22° 30' 36"`, NoUnit, 22_510_000_000, false},
	{ofAngle, "22° 36″", NoUnit, 22_010_000_000, false},
	{ofAngle, "30' 36\"", NoUnit, 510_000_000, false},
	{ofAngle, "36''", NoUnit, 10_000_000, false},
	{ofAngle, "1 arcmin", NoUnit, 16_666_667, true},
	{ofAngle, "1 arcsec", NoUnit, 277_778, true},
	{ofAngle, "20′ + 20′ + 20′", NoUnit, int64(Degree), false},
	{ofAngle, "-45°", NoUnit, -45 * int64(Degree), false},

	{ofMass, "1 kg", NoUnit, int64(Kilogram), false},
	{ofMass, "250 g", NoUnit, 250 * int64(Gram), false},
	{ofMass, "3 mg", NoUnit, 3, false},
	{ofMass, "100 lb", NoUnit, 45_359_237, false},
	{ofMass, "1 lb", NoUnit, 453_592, true},
	{ofMass, "1 oz", NoUnit, 28_350, true}, // 28,349.523125
	{ofMass, "16 oz", NoUnit, 453_592, true},
	{ofMass, "1600 oz", NoUnit, 45_359_237, false},
	{ofMass, "3 lb 4 oz", NoUnit, 1_474_175, true}, // 1,474,175.2025
	{ofMass, "3 lbs. 4 oz.", NoUnit, 1_474_175, true},
	{ofMass, "3 pounds 4 ounces", NoUnit, 1_474_175, true},
	{ofMass, "25", Pounds, 11_339_809, true}, // 11,339,809.25
	{ofMass, "0.123456789012345678 lb", NoUnit, 55_999, true},

	{ofForce, "1 N", NoUnit, int64(Newton), false},
	{ofForce, "1.5 kN", NoUnit, 1_500_000, false},
	{ofForce, "1.5 KN", NoUnit, 1_500_000, false},
	{ofForce, "12 mN", NoUnit, 12, false},
	{ofForce, "1 lbf", NoUnit, 4_448, true}, // 4,448.2216152605
	{ofForce, "2000000000 lbf", NoUnit, 8_896_443_230_521, false},
	{ofForce, "50 pounds-force", NoUnit, 222_411, true},
	{ofForce, "50 pound force", NoUnit, 222_411, true},
	{ofForce, "3 newtons", NoUnit, 3 * int64(Newton), false},
	{ofForce, "50", PoundsForce, 222_411, true},
	{ofForce, "50 lb", NoUnit, 222_411, true}, // 222,411.080763025
	{ofForce, "50 lbs.", NoUnit, 222_411, true},
	{ofForce, "50 pounds", NoUnit, 222_411, true},
	{ofForce, "50 pound", NoUnit, 222_411, true},
	{ofForce, "50 lbs + 8 oz", NoUnit, 224_635, true}, // 224,635.19...
	{ofForce, "50 pounds 8 ounces", NoUnit, 224_635, true},
	{ofForce, "8 ozf", NoUnit, 2_224, true},
	{ofForce, "10 kg", NoUnit, 98_067, true}, // 98,066.5
	{ofForce, "20 kgf", NoUnit, 196_133, false},
	{ofForce, "500 g", NoUnit, 4_903, true},
	{ofForce, "500 grams", NoUnit, 4_903, true},
	{ofForce, "100 kg", NoUnit, 980_665, false},
	{ofForce, "100 Kilograms", NoUnit, 980_665, false},
	{ofForce, "100", KilogramsForce, 980_665, false},

	{ofDensity, "2500 kg/m3", NoUnit, 2_500_000, false},
	{ofDensity, "2500 kg/m³", NoUnit, 2_500_000, false},
	{ofDensity, "2500 kg/m^3", NoUnit, 2_500_000, false},
	{ofDensity, "2500 kilograms/cubic meter", NoUnit, 2_500_000, false},
	{ofDensity, "1.19 g/cm3", NoUnit, 1_190_000, false},
	{ofDensity, "1,2 g/cm³", NoUnit, 1_200_000, false},
	{ofDensity, "640 g/m3", NoUnit, 640, false},
	{ofDensity, "156 lb/ft3", NoUnit, 2_498_880, true},
	{ofDensity, "156 lb/cu ft", NoUnit, 2_498_880, true},
	{ofDensity, "156 lb./cu. ft.", NoUnit, 2_498_880, true},
	{ofDensity, "156 pounds/cubic foot", NoUnit, 2_498_880, true},
	{ofDensity, "43 1/2", PoundsPerCubicFoot, 696_803, true},
	{ofDensity, "2500", KilogramsPerCubicMeter, 2_500_000, false},
}

func TestOtherQuantities(t *testing.T) {
	for _, c := range others {
		got, how, err := read(c.text, c.dim, c.bare)
		if err != nil || got != c.want || how.rounded != c.rounded {
			t.Errorf("%q: %d, rounded %v, %v; want %d, %v", c.text, got, how.rounded, err, c.want, c.rounded)
		}
		text, err := textOf(c.dim, got)
		if err != nil {
			t.Fatal(err)
		}
		if back, how, err := read(string(text), c.dim, NoUnit); back != got || err != nil || how.rounded {
			t.Errorf("%q is %d, written %q, which reads as %d, %v", c.text, got, text, back, err)
		}
	}
}

func textOf(dim dimension, v int64) ([]byte, error) {
	switch dim {
	case ofArea:
		return Area(v).MarshalText()
	case ofAngle:
		return Angle(v).MarshalText()
	case ofMass:
		return Mass(v).MarshalText()
	case ofForce:
		return Force(v).MarshalText()
	case ofDensity:
		return Density(v).MarshalText()
	}
	return Length(v).MarshalText()
}

// otherFaults are texts that the five refuse.
var otherFaults = []struct {
	dim    dimension
	text   string
	bare   Unit
	rule   Rule
	offset int
}{
	{ofArea, "5", NoUnit, RuleNoUnit, 1},
	{ofArea, "5 in", NoUnit, RuleUnknownUnit, 2},
	{ofArea, "5 mm3", NoUnit, RuleUnknownUnit, 2},
	{ofArea, "5 sq", NoUnit, RuleUnknownUnit, 2},
	{ofArea, "5 sq kg", NoUnit, RuleUnknownUnit, 2},
	{ofArea, "5 sq.5 in", NoUnit, RuleTrailing, 4},
	{ofArea, "5 sq mm.", NoUnit, RuleTrailing, 7},
	{ofArea, "5 in^3", NoUnit, RuleUnknownUnit, 2},
	{ofArea, `5"`, NoUnit, RuleUnknownUnit, 1},
	{ofArea, "5 square millimeterssss", NoUnit, RuleUnknownUnit, 2},
	{ofArea, "5 sq ft 3 sq in", NoUnit, RuleTrailing, 8},
	{ofArea, "5", Inches, RuleWrongBare, 0},
	{ofArea, "9223372036855 mm2", NoUnit, RuleRange, 0},
	{ofArea, "", NoUnit, RuleEmpty, 0},

	{ofAngle, "22", NoUnit, RuleNoUnit, 2},
	{ofAngle, "22 rad", NoUnit, RuleUnknownUnit, 3},
	{ofAngle, "22° 30", Degrees, RuleNoUnit, 7},
	{ofAngle, "22′ 30", Degrees, RuleNoUnit, 8},
	{ofAngle, "22° 60′", NoUnit, RulePartTooLarge, 5},
	{ofAngle, "22° 30′ 60″", NoUnit, RulePartTooLarge, 11},
	{ofAngle, "22.5° 30′", NoUnit, RuleFeetFraction, 0},
	{ofAngle, "22° 30.5′ 6″", NoUnit, RuleFeetFraction, 5},
	{ofAngle, "22° 30°", NoUnit, RuleMixedUnits, 7},
	{ofAngle, "30′ 22°", NoUnit, RuleMixedUnits, 8},
	{ofAngle, "22°-30′", NoUnit, RuleSubtraction, 4},
	{ofAngle, "22°-", NoUnit, RuleTrailing, 4},
	{ofAngle, "9223372037 deg", NoUnit, RuleRange, 0},
	{ofAngle, "22", Meters, RuleWrongBare, 0},
	{ofAngle, "", NoUnit, RuleEmpty, 0},

	{ofMass, "3 lb 4", Ounces, RuleNoUnit, 6},
	{ofMass, "3 lb 16 oz", NoUnit, RulePartTooLarge, 5},
	{ofMass, "3.5 lb 4 oz", NoUnit, RuleFeetFraction, 0},
	{ofMass, "3 lb 4 g", NoUnit, RuleMixedUnits, 7},
	{ofMass, "3 Mg", NoUnit, RuleUnknownUnit, 2}, // a tonne
	{ofMass, "3 lbf", NoUnit, RuleUnknownUnit, 2},
	{ofMass, `3"`, NoUnit, RuleUnknownUnit, 1},
	{ofMass, "9999999999999 kg", NoUnit, RuleRange, 0},
	{ofMass, "3", PoundsForce, RuleWrongBare, 0},
	{ofMass, "", NoUnit, RuleEmpty, 0},

	{ofForce, "3 MN", NoUnit, RuleUnknownUnit, 2}, // a meganewton
	{ofForce, "50 lbm", NoUnit, RuleUnknownUnit, 3},
	{ofForce, "50 mg", NoUnit, RuleUnknownUnit, 3},
	{ofForce, "50 pounds-farce", NoUnit, RuleTrailing, 9},
	{ofForce, "50 pounds farce", NoUnit, RuleTrailing, 10},
	{ofForce, "50 kilograms-force", NoUnit, RuleTrailing, 12},
	{ofForce, "50 lb 16 oz", NoUnit, RulePartTooLarge, 6},
	{ofForce, "50.5 lb 4 oz", NoUnit, RuleFeetFraction, 0},
	{ofForce, "50 lb 4", NoUnit, RuleNoUnit, 7},
	{ofForce, "50 lb 4 kg", NoUnit, RuleMixedUnits, 8},
	{ofForce, "9999999999999 kN", NoUnit, RuleRange, 0},
	{ofForce, "3", Pounds, RuleWrongBare, 0},
	{ofForce, "", NoUnit, RuleEmpty, 0},

	{ofDensity, "2500", NoUnit, RuleNoUnit, 4},
	{ofDensity, "2500 kg", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/m2", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/m", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/cubic", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/cu millimeterssss", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 kg/ft3", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 lb/m3", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 g/mm3", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 N/m3", NoUnit, RuleUnknownUnit, 5},
	{ofDensity, "2500 lb/cu.5 ft", NoUnit, RuleTrailing, 10},
	{ofDensity, "2500 lb/ft34", NoUnit, RuleTrailing, 11},
	{ofDensity, "9999999999999999 kg/m3", NoUnit, RuleRange, 0},
	{ofDensity, "2500", Kilograms, RuleWrongBare, 0},
	{ofDensity, "", NoUnit, RuleEmpty, 0},
}

func TestOtherFaults(t *testing.T) {
	for _, c := range otherFaults {
		checkFault(t, c.text, c.rule, c.offset, func() (err error) {
			switch c.dim {
			case ofArea:
				_, err = ParseArea(c.text, c.bare)
			case ofAngle:
				_, err = ParseAngle(c.text, c.bare)
			case ofMass:
				_, err = ParseMass(c.text, c.bare)
			case ofForce:
				_, err = ParseForce(c.text, c.bare)
			case ofDensity:
				_, err = ParseDensity(c.text, c.bare)
			}
			return err
		})
	}
}

// Every unit's symbol reads as that unit, and its factor is what one of it is.
func TestUnitSymbols(t *testing.T) {
	for u := Millimeters; u <= PoundsPerCubicFoot; u++ {
		num, den := u.factor()
		got, how, err := read("600 "+u.String(), u.dimension(), NoUnit)
		if want, exact := mulDiv(600, int64(num), int64(den)); err != nil || got != want || exact == how.rounded || how.unit != u {
			t.Errorf("600 %v reads as %d %v, rounded %v, %v; want %d", u, got, how.unit, how.rounded, err, want)
		}
	}
	for u := PoundsPerCubicFoot + 1; u != 0; u++ {
		if u.dimension() != ofNothing || u.String() != "" {
			t.Errorf("unit %d is something", u)
		}
	}
}

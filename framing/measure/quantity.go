package measure

// A Length is a distance in nanometers. It reaches about 9.2 million
// kilometers either way, so no frame, wall or stick comes near its ends.
//
// One inch is exactly 25,400,000 nm, so every 1/64 in and every 0.01 mm is a
// whole Length and sums and differences of them are exact. 1/128 in and 1/3 in
// are not whole: [Length.Half], [Length.Split] and [Length.Scale] say what was
// left over.
type Length int64

// Common lengths. To make a Length from a count, multiply:
//
//	rail := 18*measure.Inch + 5*measure.Inch/8
//
// There is no Yard, no Point and no Mil: a framer reads none of them off a
// tape, and a mil is a thousandth of an inch to one reader and a millimeter to
// the next. There is no survey foot: the international inch of 1 July 1959
// (25.4 mm, Federal Register notice 59-5442) is the only inch here.
const (
	Nanometer  Length = 1
	Micrometer        = 1000 * Nanometer
	Millimeter        = 1000 * Micrometer
	Centimeter        = 10 * Millimeter
	Meter             = 1000 * Millimeter
	Inch              = 254 * Millimeter / 10
	Foot              = 12 * Inch
)

// An Area is a surface in square micrometers, up to about 9.2 million square
// meters.
type Area int64

// Common areas. All five are exact.
const (
	SquareMicrometer Area = 1
	SquareMillimeter      = 1_000_000 * SquareMicrometer
	SquareMeter           = 1_000_000 * SquareMillimeter
	SquareInch            = 64_516 * SquareMillimeter / 100
	SquareFoot            = 144 * SquareInch
)

// An Angle is in nanodegrees, up to about 25 million turns either way. A
// degree is the framer's unit and 22.5 and 45 are whole in it; no binary
// fraction of a radian is.
type Angle int64

// Common angles. A minute of arc is not among them: at 1/60 degree it is not a
// whole number of nanodegrees.
const (
	Nanodegree Angle = 1
	Degree           = 1_000_000_000 * Nanodegree
	RightAngle       = 90 * Degree
	Turn             = 360 * Degree
)

// A Mass is in milligrams, up to about 9.2 million tonnes.
type Mass int64

// Common masses. The pound and the ounce are not among them: a pound is
// 453,592.37 mg, which is not whole. [ParseMass] reads both.
const (
	Milligram Mass = 1
	Gram           = 1000 * Milligram
	Kilogram       = 1000 * Gram
)

// A Force is in millinewtons, up to about 9.2 million meganewtons.
type Force int64

// Common forces. The pound-force is not among them: it is 4,448.2216152605 mN,
// which is not whole. [ParseForce] reads it, and weights in pounds and kilograms.
const (
	Millinewton Force = 1
	Newton            = 1000 * Millinewton
	Kilonewton        = 1000 * Newton
)

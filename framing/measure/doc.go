// Package measure holds what a tape, a rule, a protractor and a scale say, as
// integers, and reads and writes it the way a framer does.
//
// # Quantities
//
// A [Length] is a whole number of nanometers, and 1/64 in is exactly 396,875 of
// them: lengths add up, compare with == and come out the same on every machine.
// [Area], [Angle], [Mass], [Force] and [Density] are integers in the same way. Nothing
// here is a float, nothing is rounded unless a step and a [Direction] are named,
// and what rounding took away is handed back as a remainder.
//
//	opening := 16*measure.Inch + 5*measure.Inch/8
//	half, rest := opening.Half() // 8 5/16 in, 0
//
// # Reading
//
// [Parse] reads a length: 20 13/16, 20-13/16", 1' 8 13/16", 20.8125, 20½,
// 528.64 mm, 52,8 cm, 4 1/2 + 9. The caller says what a number without a unit
// counts; with [NoUnit] it must have one. A sum is worked out exactly and
// rounded once, at its end, so 1/3 + 1/3 + 1/3 in is 1 in. What is not a whole
// number of the smallest unit is rounded half away from zero and never refused;
// [Read] says that it happened.
//
// What can be taken two ways is refused, with the place, the [Rule] and what
// would do: 1,250 may be one and a quarter or twelve hundred and fifty; 2013/16
// may have lost the space of 20 13/16; 20 - 13/16 may be joined or subtracted.
// A hyphen joins a whole number and its fraction, or feet and inches, only where
// it touches both; it is never a minus inside a measure.
//
// # Writing
//
// A [Format] writes a length as inches and a fraction, as feet and inches, as
// decimal inches or as millimeters, rounded to its step; the zero Format writes
// it exactly. What it writes, [Parse] reads with [Format.Unit]. String and JSON
// always use the exact canonical text, 528.6375 mm, whatever a screen shows.
//
// A mass and a load are shown rounded up by [ShowMass] and [ShowForce], so that
// what is shown is enough.
//
// # Triangles
//
// [Hypot], [Leg], [Slope] and the products with a sine or a tangent are worked
// out in whole numbers too, and rounded once.
//
//	run := thickness.OverTan(bevel) // how far a bevel runs in
//
// # Grammar
//
// This is everything that Parse, [Read], [ParseArea], [ParseAngle], [ParseMass],
// [ParseForce] and [ParseDensity] read, in the EBNF of ISO/IEC 14977 but without the commas.
// sp is any run of spaces, also none.
//
//	text        = sp [ minus sp ] term sp | sp term sp { "+" sp term sp } ;
//	term        = number sp [ unit ] | compound ;
//
//	compound    = length | angle | mass ;   (* by the function called; a force as a mass *)
//	length      = whole sp feet ( sp | hyphen ) number sp [ inches ] ;
//	angle       = whole sp degrees sp number sp minutes
//	            | whole sp degrees sp [ whole sp minutes sp ] number sp seconds
//	            | whole sp minutes sp number sp seconds ;
//	mass        = whole sp pounds sp number sp ounces ;
//
//	number      = whole | decimal | fraction | mixed ;
//	whole       = digit { digit } ;
//	decimal     = { digit } ( "." | "," ) digit { digit } ;
//	fraction    = whole slash bottom | raised ;
//	raised      = glyph | super { super } slash bottom ;
//	bottom      = whole | sub { sub } ;
//	mixed       = whole ( space sp | hyphen ) fraction | whole raised ;
//
//	digit       = "0" | ... | "9" ;
//	super       = "⁰" | ... | "⁹" ;
//	sub         = "₀" | ... | "₉" ;
//	glyph       = "½" | "⅓" | "⅔" | "¼" | "¾" | "⅕" | "⅖" | "⅗" | "⅘" | "⅙" | "⅚"
//	            | "⅐" | "⅛" | "⅜" | "⅝" | "⅞" | "⅑" | "⅒" ;
//	slash       = "/" | U+2044 | U+2215 ;
//	hyphen      = "-" | U+2010 | U+2011 | U+2013 ;
//	minus       = "-" | U+2212 ;
//	space       = " " | tab | U+00A0 | U+2000 | ... | U+200A | U+202F | U+205F | U+3000 ;
//	sp          = { space } ;
//
//	single      = "'" | U+2032 | U+2019 ;
//	double      = '"' | U+2033 | U+201D | two of the same single ;
//	feet        = single | "ft" [ "." ] | "foot" | "feet" ;
//	inches      = double | "in" [ "." ] | "inch" | "inches" ;
//	degrees     = "°" | "deg" [ "." ] | "degree" | "degrees" ;
//	minutes     = single | "min" [ "." ] | "minute" | "minutes"
//	            | "arcmin" | "arcminute" | "arcminutes" ;
//	seconds     = double | "sec" [ "." ] | "second" | "seconds"
//	            | "arcsec" | "arcsecond" | "arcseconds" ;
//	pounds      = "lb" [ "." ] | "lbs" [ "." ] | "pound" | "pounds" ;
//	ounces      = "oz" [ "." ] | "ounce" | "ounces" ;
//
//	unit        = feet | inches | metric            (* Parse *)
//	            | area                              (* ParseArea *)
//	            | degrees | minutes | seconds       (* ParseAngle *)
//	            | pounds | ounces | "mg" | "g" | "kg" | "milligram" | "milligrams"
//	            | "gram" | "grams" | "kilogram" | "kilograms"      (* ParseMass *)
//	            | "mN" | "N" | "kN" | "lbf" | "millinewton" | "millinewtons"
//	            | "newton" | "newtons" | "kilonewton" | "kilonewtons"
//	            | ( "pound" | "pounds" ) ( "-" | space ) "force"
//	            | pounds | ounces | "g" | "kg" | "gf" | "kgf" | "ozf"
//	            | "gram" | "grams" | "kilogram" | "kilograms"      (* ParseForce *)
//	            | density ;                                        (* ParseDensity *)
//	metric      = "mm" | "cm" | "m" | "millimeter" | "millimeters" | "millimetre"
//	            | "millimetres" | "centimeter" | ... | "meter" | ... ;
//	linear      = metric | "in" [ "." ] | "inch" | "inches"
//	            | "ft" [ "." ] | "foot" | "feet" ;
//	area        = ( "sq" [ "." ] | "square" ) sp linear
//	            | linear-without-a-point ( "2" | "²" | "^2" ) ;
//	density     = "kg" slash cube-of-m | "g" slash ( cube-of-m | cube-of-cm )
//	            | pounds slash cube-of-ft ;     (* and their words *)
//	cube-of-x   = ( "cu" [ "." ] | "cubic" ) sp x | x ( "3" | "³" | "^3" ) ;
//
// Words are read in any case, but the m of milli is small: MN would be a
// meganewton and Mg a tonne. Beyond the grammar these rules hold:
//
//   - A comma does not stand before exactly three digits.
//   - The fraction of a mixed number is below one, and no fraction is over zero.
//   - A fraction alone may be above one, as 5/4, unless its digits can also be
//     parted into a whole number and a proper fraction, as 12/8 and 2013/16.
//   - Inches after feet are below 12, minutes and seconds below 60, ounces below
//     16. After feet a number without a unit is inches.
//   - A point right behind a word does not stand before a digit, and the smaller
//     part of a compound does not begin with a comma: 3 ft.5 and 3 ft,5 have two
//     readings.
//   - In a sum, numbers without a unit go together only with the bare unit: with
//     bare inches 4 + 9 in reads and 4 + 9 cm does not. A compound counts as its
//     last unit.
//   - A text has at most 100 bytes, a sum at most 16 terms, a run of digits (in a
//     decimal: the digits on both sides of the mark) at most 19.
package measure

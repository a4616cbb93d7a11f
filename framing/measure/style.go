package measure

// A Style is the way a length is written.
type Style uint8

// The styles.
const (
	Exact       Style = iota // every nanometer, in millimeters: 528.6375 mm
	Fraction                 // inches and a fraction: 20 13/16
	FeetInches               // feet, inches and a fraction: 1' 8 13/16"
	DecimalInch              // inches and decimals: 20.813
	Metric                   // millimeters, whole, halves or tenths: 528.5
)

// String returns "exact", "fraction", "feet and inches", "decimal inch" or
// "metric", and "exact" for a value that is no style, as that is how it writes.
func (s Style) String() string {
	switch s {
	case Fraction:
		return "fraction"
	case FeetInches:
		return "feet and inches"
	case DecimalInch:
		return "decimal inch"
	case Metric:
		return "metric"
	}
	return "exact"
}

// Steps returns the steps that a style can be written in, coarsest first, in a
// new slice. It is empty for [Exact], which has none.
//
//	Fraction, FeetInches   1/8 1/16 1/32 1/64 in
//	DecimalInch            0.1 0.01 0.001 in
//	Metric                 1 0.5 0.1 mm
//
// Each is a whole number of nanometers. 1/128 in is not, at 198,437.5 nm, and
// no common rule shows it.
func Steps(s Style) []Length {
	var steps []Length
	for step := s.coarsest(); step != 0; step = s.finer(step) {
		steps = append(steps, step)
	}
	return steps
}

func (s Style) coarsest() Length {
	switch s {
	case Fraction, FeetInches:
		return Inch / 8
	case DecimalInch:
		return Inch / 10
	case Metric:
		return Millimeter
	}
	return 0
}

// finer returns the step after step, 0 after the last and for what is no step.
func (s Style) finer(step Length) Length {
	switch s {
	case Fraction, FeetInches:
		switch step {
		case Inch / 8, Inch / 16, Inch / 32:
			return step / 2
		}
	case DecimalInch:
		switch step {
		case Inch / 10, Inch / 100:
			return step / 10
		}
	case Metric:
		switch step {
		case Millimeter:
			return Millimeter / 2
		case Millimeter / 2:
			return Millimeter / 10
		}
	}
	return 0
}

// has says whether step is one that the style can be written in.
func (s Style) has(step Length) bool {
	switch s {
	case Exact:
		return step == 0
	case Fraction, FeetInches:
		return step == Inch/8 || step == Inch/16 || step == Inch/32 || step == Inch/64
	case DecimalInch:
		return step == Inch/10 || step == Inch/100 || step == Inch/1000
	case Metric:
		return step == Millimeter || step == Millimeter/2 || step == Millimeter/10
	}
	return false
}

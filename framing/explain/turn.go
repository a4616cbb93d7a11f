package explain

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/natural"
)

// The operations on boxes, triangles and weights.
const (
	OpMass         Op = "mass"           // three lengths and a density: the mass of a box
	OpWeight       Op = "weight"         // what a mass weighs
	OpUpTenthPound Op = "up_tenth_pound" // a mass or a load rounded up to a tenth of a pound
	OpHypotenuse   Op = "hypotenuse"     // the root of a^2 + b^2
	OpLeg          Op = "leg"            // the root of a^2 - b^2, or nothing
	OpSlope        Op = "slope"          // the angle of a rise over a run
	OpSin          Op = "sin"            // a x sin b, and so on, b an angle
	OpCos          Op = "cos"
	OpTan          Op = "tan"
	OpOverTan      Op = "over_tan" // a / tan b
	OpOverSin      Op = "over_sin"
)

// Mass3 is the mass of a box of three lengths and a density, rounded once, half
// away from zero to the milligram.
func Mass3(a, b, c, density Expr) Expr { return Apply(OpMass, a, b, c, density) }

// WeightOf is what a mass weighs under standard gravity, rounded half away from
// zero.
func WeightOf(mass Expr) Expr { return Apply(OpWeight, mass) }

// UpTenthPound is a mass or a force rounded up to a tenth of a pound, as it is
// shown to those who weigh in pounds.
func UpTenthPound(a Expr) Expr { return Apply(OpUpTenthPound, a) }

// Hypotenuse is the longest side of a right triangle of the legs a and b,
// rounded half up. Two forces at a right angle go together in the same way.
func Hypotenuse(a, b Expr) Expr { return Apply(OpHypotenuse, a, b) }

// LegOf is the other leg of a right triangle, rounded to the nearest; nothing
// where leg is as long as the hypotenuse or longer.
func LegOf(hypotenuse, leg Expr) Expr { return Apply(OpLeg, hypotenuse, leg) }

// SlopeOf is the angle of a rise over a run, rounded to the nanodegree.
func SlopeOf(rise, run Expr) Expr { return Apply(OpSlope, rise, run) }

// Sin is a, a length or a force, times the sine of an angle, rounded half away
// from zero.
func Sin(a, angle Expr) Expr { return Apply(OpSin, a, angle) }

// Cos is a times the cosine of an angle, as [Sin].
func Cos(a, angle Expr) Expr { return Apply(OpCos, a, angle) }

// Tan is a times the tangent of an angle, as [Sin].
func Tan(a, angle Expr) Expr { return Apply(OpTan, a, angle) }

// OverTan is a over the tangent of an angle, as [Sin]: the run of a bevel.
func OverTan(a, angle Expr) Expr { return Apply(OpOverTan, a, angle) }

// OverSin is a over the sine of an angle, as [Sin]: the slope of a bevel, the
// tension of a wire.
func OverSin(a, angle Expr) Expr { return Apply(OpOverSin, a, angle) }

// turn works the operations of this file out. Masses, weights and roots do not
// go the way of package measure.
func turn(op Op, args []Value) (Value, error) {
	switch a := args[0]; op {
	case OpMass:
		return boxMass(args)
	case OpWeight:
		if a.Kind != MassKind {
			return Value{}, ErrKinds
		}
		// 9.80665 m/s2: mN from mg.
		return fraction(ForceKind, signed(a.N).times(980_665), signed(100_000_000))
	case OpUpTenthPound:
		return upTenthPound(a)
	case OpHypotenuse, OpLeg:
		return side(op, a, args[1])
	case OpSlope:
		if a.Kind != args[1].Kind {
			return Value{}, ErrKinds
		}
		return Of(measure.Slope(measure.Length(a.N), measure.Length(args[1].N))), nil
	}
	return turned(op, args[0], args[1])
}

// fraction is a / b rounded half away from zero, of a kind.
func fraction(kind Kind, a, b integer) (Value, error) {
	n, ok := divide(a, b)
	if !ok {
		return Value{}, ErrRange
	}
	return Value{kind, n}, nil
}

func boxMass(args []Value) (Value, error) {
	product := signed(1)
	for i, a := range args {
		if a.Kind != LengthKind && i < 3 || a.Kind != DensityKind && i == 3 {
			return Value{}, ErrKinds
		}
		product = product.times(a.N)
	}
	// nm3 x g/m3 is 1e-27 g.
	return fraction(MassKind, product, signed(1_000_000_000_000).times(1_000_000_000_000))
}

// upTenthPound is the least tenth of a pound, rounded to a milligram or a
// millinewton, that is a or more.
func upTenthPound(a Value) (Value, error) {
	pound, one := signed(45_359_237), signed(1000) // a tenth of a pound in mg
	switch a.Kind {
	case MassKind:
	case ForceKind:
		pound = pound.times(980_665)
		one = one.times(100_000_000)
	default:
		return Value{}, ErrKinds
	}
	// The tenth before the next whole one can be enough when it is rounded.
	product := integer{a.N < 0, signed(a.N).size.Times(one.size)}
	whole, rest := product.size.Over(pound.size)
	tenths, _ := integer{product.negative, whole}.int64() // below a.N
	if product.negative && !rest.IsZero() {
		tenths--
	}
	for ; ; tenths++ {
		v, err := fraction(a.Kind, pound.times(tenths), one)
		if err != nil || v.N >= a.N {
			return v, err
		}
	}
}

// side is a side of a right triangle.
func side(op Op, a, b Value) (Value, error) {
	if a.Kind != b.Kind {
		return Value{}, ErrKinds
	}
	x, y := signed(a.N).times(a.N).size, signed(b.N).times(b.N).size
	square := x.Plus(y)
	if op == OpLeg {
		if x.Compare(y) <= 0 {
			return Value{a.Kind, 0}, nil
		}
		square = x.Minus(y)
	}
	// The root of four times as much is twice the root: half up from there.
	twice := square.Times(natural.Of(4)).Root()
	root, _ := twice.Plus(natural.Of(1)).Over(natural.Of(2))
	n, ok := integer{size: root}.int64()
	if !ok {
		return Value{}, ErrRange
	}
	return Value{a.Kind, n}, nil
}

func turned(op Op, a, b Value) (Value, error) {
	if a.Kind != LengthKind && a.Kind != ForceKind || b.Kind != AngleKind {
		return Value{}, ErrKinds
	}
	l, angle := measure.Length(a.N), measure.Angle(b.N)
	switch op {
	case OpSin:
		l = l.Sin(angle)
	case OpCos:
		l = l.Cos(angle)
	case OpTan:
		l = l.Tan(angle)
	case OpOverTan:
		l = l.OverTan(angle)
	case OpOverSin:
		l = l.OverSin(angle)
	}
	return Value{a.Kind, int64(l)}, nil
}

package measure

import (
	"strconv"
	"testing"
)

const benchLength = 20*Inch + 13*sixteenth + 7*Nanometer

const benchAngle = 27*Degree + 123_456_789*Nanodegree

// hotPaths are the calls that a page makes for every figure at every key
// stroke. Each must not allocate, and each is timed.
func hotPaths(tb testing.TB) map[string]func() {
	paths := map[string]func(){
		"ParseArea":         func() { _, _ = ParseArea("20 1/2 sq in", NoUnit) },
		"ParseAngle":        func() { _, _ = ParseAngle("22° 30′", NoUnit) },
		"ParseMass":         func() { _, _ = ParseMass("3 lb 4 oz", NoUnit) },
		"ParseForce":        func() { _, _ = ParseForce("50 lbf", NoUnit) },
		"ParseDensity":      func() { _, _ = ParseDensity("156 lb/cu ft", NoUnit) },
		"ParseForce weight": func() { _, _ = ParseForce("50 lb 4 oz", NoUnit) },
		"Hypot":             func() { _ = Hypot(16*Inch, 20*Inch) },
		"Leg":               func() { _ = Leg(20*Inch, 16*Inch) },
		"Slope":             func() { _ = Slope(3*Inch, 8*Inch) },
		"ArcTan":            func() { _ = ArcTan(3*Inch, -8*Inch) },
		"ArcSin":            func() { _ = ArcSin(3*Inch, 8*Inch) },
		"Sin":               func() { _ = Length(benchLength).Sin(benchAngle) },
		"Cos":               func() { _ = Length(benchLength).Cos(benchAngle) },
		"Tan":               func() { _ = Length(benchLength).Tan(benchAngle) },
		"OverTan":           func() { _ = Length(benchLength).OverTan(benchAngle) },
		"OverSin":           func() { _ = (85 * Newton).OverSin(benchAngle) },
		"UpTenthPound":      func() { _ = Weight(Kilogram).UpTenthPound() },
		"Scale":             func() { _, _ = Length(benchLength).Scale(355, 113) },
		"Round":             func() { _, _ = Length(benchLength).Round(sixteenth, Up) },
	}
	for _, text := range []string{
		"20 13/16", "528.64 mm", `1' 8 13/16"`, "20.8125", "20 ½", "4 1/2 + 9", "20¹³⁄₁₆", "52,8 cm", "1/3 + 1/7 + 1/9",
	} {
		if _, err := Parse(text, Inches); err != nil {
			tb.Fatal(err) // a refusal would be measured in its place
		}
		paths["Parse "+text] = func() { _, _ = Parse(text, Inches) }
		paths["Read "+text] = func() { _, _ = Read(text, Inches) }
	}
	buf := make([]byte, 0, 128)
	for _, f := range []Format{
		{}, {Fraction, sixteenth}, {FeetInches, sixteenth}, {DecimalInch, Inch / 1000}, {Metric, Millimeter / 10},
	} {
		style := f.Style.String()
		paths["Append "+style] = func() { _, _ = f.Append(buf, benchLength, Up) }
		paths["AppendMarked "+style] = func() { _, _ = f.AppendMarked(buf, benchLength, Up) }
		paths["AppendExact "+style] = func() { _ = f.AppendExact(buf, benchLength) }
		paths["AppendSpoken "+style] = func() { _ = f.AppendSpoken(buf, benchLength, Up) }
	}
	paths["AppendText length"] = func() { _, _ = Length(benchLength).AppendText(buf) }
	paths["AppendText area"] = func() { _, _ = SquareInch.AppendText(buf) }
	paths["AppendText angle"] = func() { _, _ = (45 * Degree / 2).AppendText(buf) }
	paths["AppendText mass"] = func() { _, _ = Kilogram.AppendText(buf) }
	paths["AppendText density"] = func() { _, _ = KilogramPerCubicMeter.AppendText(buf) }
	for _, inches := range []bool{true, false} {
		paths["AppendMass "+strconv.FormatBool(inches)] = func() { _, _ = AppendMass(buf, Kilogram, inches) }
		paths["AppendSpokenForce "+strconv.FormatBool(inches)] = func() { _ = AppendSpokenForce(buf, Newton, inches) }
	}
	paths["AppendText force"] = func() { _, _ = Newton.AppendText(buf) }
	return paths
}

func TestNoAllocations(t *testing.T) {
	for name, f := range hotPaths(t) {
		if n := testing.AllocsPerRun(100, f); n != 0 {
			t.Errorf("%s allocates %v times", name, n)
		}
	}
}

func BenchmarkHotPaths(b *testing.B) {
	for name, f := range hotPaths(b) {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				f()
			}
		})
	}
}

func BenchmarkRefused(b *testing.B) {
	for _, text := range []string{"1,250", "2013/16", "20 kg"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, _ = Parse(text, Inches)
			}
		})
	}
}

// BenchmarkWide reads what does not fit 64 bits: the slow path.
func BenchmarkWide(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = Parse("1/9999999999999999989 in + 1/9999999999999999943 in", NoUnit)
	}
}

package material_test

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

const (
	squareMeter = measure.SquareMeter
	mm          = measure.Millimeter
	kg          = material.KilogramPerCubicMeter
)

// TestPrintedMasses: areal masses and panes, each row with its source.
func TestPrintedMasses(t *testing.T) {
	pane := func(w, h measure.Length) measure.Area { return measure.Size{Width: w, Height: h}.Area() }
	rows := []struct {
		name      string
		area      measure.Area
		thickness measure.Length
		density   material.Density
		want      measure.Mass
	}{
		// EN 572-1: 2500 kg/m3, 2.5 kg/m2 for each millimeter (read in copies that quote it).
		{"float glass 1 mm", squareMeter, mm, 2500 * kg, 2500 * measure.Gram},
		{"float glass 4 mm", squareMeter, 4 * mm, 2500 * kg, 10 * measure.Kilogram},
		{"float glass 600 x 800 x 2.5", pane(600*mm, 800*mm), 5 * mm / 2, 2500 * kg, 3 * measure.Kilogram},
		// The next two were computed, and are 1.0323 and 6.1935 kg to four places.
		{"float glass 16 x 20 in x 2.0", pane(16*measure.Inch, 20*measure.Inch), 2 * mm, 2500 * kg, 1_032_256},
		{"float glass 32 x 40 in x 3.0", pane(32*measure.Inch, 40*measure.Inch), 3 * mm, 2500 * kg, 6_193_536},
		// PMMA: 1.19 g/cm3 (ISO 1183, read in makers' sheets); the masses are computed.
		{"acrylic 2 mm", squareMeter, 2 * mm, 1190 * kg, 2380 * measure.Gram},
		{"acrylic 3 mm", squareMeter, 3 * mm, 1190 * kg, 3570 * measure.Gram},
		{"acrylic 4.5 mm", squareMeter, 9 * mm / 2, 1190 * kg, 5355 * measure.Gram},
		{"acrylic 32 x 40 in x 3", pane(32*measure.Inch, 40*measure.Inch), 3 * mm, 1190 * kg, 2_948_123}, // 2.9481 kg
		// Polycarbonate: 1.20 g/cm3 and 2.4 to 7.2 kg/m2, printed by makers.
		{"polycarbonate 2 mm", squareMeter, 2 * mm, 1200 * kg, 2400 * measure.Gram},
		{"polycarbonate 3 mm", squareMeter, 3 * mm, 1200 * kg, 3600 * measure.Gram},
		{"polycarbonate 4 mm", squareMeter, 4 * mm, 1200 * kg, 4800 * measure.Gram},
		{"polycarbonate 5 mm", squareMeter, 5 * mm, 1200 * kg, 6 * measure.Kilogram},
		{"polycarbonate 6 mm", squareMeter, 6 * mm, 1200 * kg, 7200 * measure.Gram},
	}
	for _, row := range rows {
		if got := material.SheetMass(row.area, row.thickness, row.density); got != row.want {
			t.Errorf("%s: %v, want %v", row.name, got, row.want)
		}
	}
}

// pounds writes m in pounds to a number of places, half up; a pound is
// 453.59237 g.
func pounds(m measure.Mass, places int) string {
	return new(big.Rat).Quo(big.NewRat(int64(m), 1000), big.NewRat(45359237, 100000)).FloatString(places)
}

// TestPrintedPounds: trade tables print a square foot of glass by the fraction
// it is sold as. They do not say their density; 156 and 157 lb/cu ft, both in
// use, give what they print, and 1/8 is printed as 1.63 and as 1.64.
func TestPrintedPounds(t *testing.T) {
	rows := []struct {
		thirtySeconds measure.Length
		density       int64
		printed       string
	}{
		{3, 156, "1.22"}, {4, 156, "1.63"}, {4, 157, "1.64"}, {6, 157, "2.45"},
		{8, 157, "3.27"}, {12, 157, "4.91"}, {16, 157, "6.54"},
	}
	for _, row := range rows {
		thickness := row.thirtySeconds * measure.Inch / 32
		if got := pounds(material.SheetMass(measure.SquareFoot, thickness, material.PoundsPerCubicFoot(row.density)), 2); got != row.printed {
			t.Errorf("%v at %d lb/cu ft: %s lb/sq ft, printed %s", thickness, row.density, got, row.printed)
		}
	}
	glass := material.PoundsPerCubicFoot(156)
	// 24 square feet of 1/8 in glass at 156 lb/cu ft (common practice).
	if got := pounds(material.SheetMass(24*measure.SquareFoot, measure.Inch/8, glass), 1); got != "39.0" {
		t.Errorf("24 sq ft of 1/8 in glass: %s lb, want 39.0", got)
	}
}

// TestFractionReadsHeavy: a pane sold as 1/8 in is 3.0 mm, and a table made
// from the fraction reads 5.8 % heavy.
func TestFractionReadsHeavy(t *testing.T) {
	fraction := material.SheetMass(squareMeter, measure.Inch/8, 2500*kg)
	metric := material.SheetMass(squareMeter, 3*mm, 2500*kg)
	if got := fmt.Sprintf("%.1f", 100*float64(fraction-metric)/float64(metric)); got != "5.8" {
		t.Errorf("reads %s %% heavy, want 5.8", got)
	}
}

func TestPoundsPerCubicFoot(t *testing.T) {
	// 453.59237 g and 0.3048 m are exact by definition.
	foot := big.NewRat(3048, 10000)
	cubic := new(big.Rat).Mul(new(big.Rat).Mul(foot, foot), foot)
	for _, n := range []int64{0, 1, 62, 156, 490, -1} {
		x := new(big.Rat).Quo(new(big.Rat).Mul(big.NewRat(n, 1), big.NewRat(45359237, 100000)), cubic)
		if got, want := fmt.Sprint(int64(material.PoundsPerCubicFoot(n))), x.FloatString(0); got != want {
			t.Errorf("%d lb/cu ft is %s g/m3, want %s", n, got, want)
		}
	}
	if got := material.PoundsPerCubicFoot(156); got != 2_498_880 {
		t.Errorf("156 lb/cu ft is %d g/m3, want 2498880", got)
	}
}

// exactMass is area x thickness x density in fractions, rounded half up and
// held at the greatest Mass.
func exactMass(area measure.Area, thickness measure.Length, d material.Density) measure.Mass {
	if area <= 0 || thickness <= 0 || d <= 0 {
		return 0
	}
	x := new(big.Rat).SetInt64(int64(area))
	x.Mul(x, big.NewRat(int64(thickness), 1_000_000_000))         // um2 x m
	x.Mul(x, new(big.Rat).SetFrac64(int64(d), 1_000_000_000_000)) // um2 to m2: grams
	x.Add(x.Mul(x, big.NewRat(1000, 1)), big.NewRat(1, 2))        // milligrams, and a half
	whole := new(big.Int).Div(x.Num(), x.Denom())
	if !whole.IsInt64() {
		return math.MaxInt64
	}
	return measure.Mass(whole.Int64())
}

func TestSheetMassSecondRoad(t *testing.T) {
	r := rand.New(rand.NewPCG(25, 12))
	wide := func() int64 { return int64(r.Uint64()>>1) >> r.IntN(63) }
	for range 50_000 {
		a, l, d := measure.Area(wide()), measure.Length(wide()), material.Density(wide())
		if got, want := material.SheetMass(a, l, d), exactMass(a, l, d); got != want {
			t.Fatalf("%d x %d x %d: %d, want %d", a, l, d, got, want)
		}
	}
}

func TestSheetMassExtremes(t *testing.T) {
	const most = math.MaxInt64
	// The product of the first row is one short of 2^64 mg: rounding it up once
	// came round to nothing.
	const root = 1 << 41 * 1_953_125
	rows := []struct {
		area      measure.Area
		thickness measure.Length
		density   material.Density
	}{
		{root - 1, root + 1, 1},
		{root, root, 1},
		{most, most, most}, {most, most, 1}, {most, 1, most}, {1, most, most},
		{most, 1_000_000_000, 1_000_000_000}, // exactly the greatest Mass
		{most, 1_000_000_000, 1_000_000_001},
		{most - 27, 1, 1_000_000_000_000_000_003}, // the greatest Mass and 0.67 mg
		{1, 1_000_000_000, 500_000_000},           // half a milligram
		{1, 1_000_000_000, 499_999_999},
		{0, most, most}, {most, 0, most}, {most, most, 0},
		{-1, most, most}, {most, math.MinInt64, most}, {most, most, -1}, {-most, -most, 1},
	}
	for _, row := range rows {
		want := exactMass(row.area, row.thickness, row.density)
		if got := material.SheetMass(row.area, row.thickness, row.density); got != want {
			t.Errorf("%d x %d x %d: %d, want %d", row.area, row.thickness, row.density, got, want)
		}
	}
}

// TestSheetMassPerturbation: more of anything never weighs less.
func TestSheetMassPerturbation(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 190))
	for range 5000 {
		a, l, d := measure.Area(r.Int64N(1e16)), measure.Length(r.Int64N(1e8)), material.Density(r.Int64N(1e7))
		m := material.SheetMass(a, l, d)
		if material.SheetMass(a+1, l, d) < m || material.SheetMass(a, l+1, d) < m || material.SheetMass(a, l, d+1) < m {
			t.Fatalf("%d x %d x %d: more weighs less than %d", a, l, d, m)
		}
	}
}

func FuzzSheetMass(f *testing.F) {
	f.Add(int64(1)<<41*1_953_125-1, int64(1)<<41*1_953_125+1, int64(1))
	f.Add(int64(squareMeter), int64(3*mm), int64(2500*kg))
	f.Add(int64(math.MaxInt64), int64(math.MinInt64), int64(-1))
	f.Fuzz(func(t *testing.T, area, thickness, density int64) {
		a, l, d := measure.Area(area), measure.Length(thickness), material.Density(density)
		if got, want := material.SheetMass(a, l, d), exactMass(a, l, d); got != want {
			t.Errorf("%d x %d x %d: %d, want %d", a, l, d, got, want)
		}
		material.PoundsPerCubicFoot(density)
	})
}

func BenchmarkSheetMass(b *testing.B) {
	area := measure.Size{Width: 600 * mm, Height: 800 * mm}.Area()
	b.ReportAllocs()
	for b.Loop() {
		if material.SheetMass(area, 5*mm/2, 2500*kg) != 3*measure.Kilogram {
			b.Fatal("not 3 kg")
		}
	}
}

// A pane of 600 x 800 mm in float glass of 2.5 mm.
func ExampleSheetMass() {
	pane := measure.Size{Width: 600 * measure.Millimeter, Height: 800 * measure.Millimeter}
	fmt.Println(material.SheetMass(pane.Area(), 25*measure.Millimeter/10, 2500*material.KilogramPerCubicMeter))
	// Output: 3000 g
}

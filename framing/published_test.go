package framing_test

import (
	"fmt"
	"math"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// TestPublished holds the library against testdata/published/checks.tsv: what
// was printed elsewhere, where, and how far the source was followed. Each row
// has a computation here that writes the figure with the printed number of
// digits, and each computation a row.
func TestPublished(t *testing.T) {
	computations := published()
	counts := make(map[explain.Status]int)
	seen := make(map[string]bool)
	for _, row := range publishedRows(t) {
		if seen[row.check] {
			t.Errorf("%s stands twice", row.check)
		}
		seen[row.check] = true
		counts[row.status]++
		compute, ok := computations[row.check]
		if !ok {
			t.Errorf("%s has no computation", row.check)
			continue
		}
		if got := compute(); got != row.printed {
			t.Errorf("%s: %s %s, printed %s (%s, %s)", row.check, got, row.unit, row.printed, row.source, row.place)
		}
	}
	for check := range computations {
		if !seen[check] {
			t.Errorf("%s is computed and has no row", check)
		}
	}
	var line []string
	for _, s := range publishedStatuses {
		line = append(line, fmt.Sprintf("%s %d", s, counts[s]))
	}
	summary := "published checks: " + strings.Join(line, ", ")
	t.Log(summary)
	fmt.Println(summary)
}

var publishedStatuses = []explain.Status{explain.Verified, explain.Secondary, explain.Computed, explain.Memory, explain.Practice}

type publishedRow struct {
	check, computed, printed, unit, source, place string
	status                                        explain.Status
}

// publishedRows reads the table and refuses a line that is not whole.
func publishedRows(t *testing.T) []publishedRow {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "testdata", "published", "checks.tsv"))
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(string(data), "\n"), "\n")
	if lines[0] != "check\tcomputed\tprinted\tunit\tsource\tplace\tstatus" {
		t.Fatalf("the header is %q", lines[0])
	}
	var rows []publishedRow
	for i, line := range lines[1:] {
		f := strings.Split(line, "\t")
		if len(f) != 7 || slices.ContainsFunc(f, func(s string) bool { return s == "" || strings.TrimSpace(s) != s }) {
			t.Fatalf("line %d: %q", i+2, line)
		}
		row := publishedRow{f[0], f[1], f[2], f[3], f[4], f[5], explain.Status(f[6])}
		if !slices.Contains(publishedStatuses, row.status) {
			t.Errorf("line %d has the status %q", i+2, row.status)
		}
		rows = append(rows, row)
	}
	return rows
}

// printedLength reads inches as a tape says them; other units are marked.
func printedLength(s string) measure.Length {
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

func printedSize(width, height string) measure.Size {
	return measure.Size{Width: printedLength(width), Height: printedLength(height)}
}

// printedRatio writes a / b with so many places, half away from zero.
func printedRatio(a, b int64, places int) string { return big.NewRat(a, b).FloatString(places) }

// fraction writes inches as a tape says them, exactly.
func fraction(l measure.Length) string {
	f := measure.Format{Style: measure.Fraction, Step: measure.Inch / 64}
	return strings.TrimSuffix(string(f.AppendExact(nil, l)), " in")
}

func fractions(a, b measure.Length) string { return fraction(a) + " x " + fraction(b) }

// millimeters writes exact millimeters.
func millimeters(l measure.Length) string { return strings.TrimSuffix(l.String(), " mm") }

// perSquareMeter writes the mass of a square meter in kilograms.
func perSquareMeter(thickness measure.Length, density material.Density, places int) string {
	return printedRatio(int64(material.SheetMass(measure.SquareMeter, thickness, density)), int64(measure.Kilogram), places)
}

// inPounds writes a mass in pounds of 453.59237 g.
func inPounds(m measure.Mass, places int) string {
	return new(big.Rat).Quo(big.NewRat(int64(m), 1000), big.NewRat(45_359_237, 100_000)).FloatString(places)
}

// published are the computations, by check.
func published() map[string]func() string {
	c := map[string]func() string{
		"unit-inch": func() string { return millimeters(printedLength("1 in")) },
		"unit-foot": func() string { return millimeters(printedLength("1 ft")) },
		"unit-yard": func() string { return millimeters(printedLength("3 ft")) },
		"unit-60x80cm": func() string {
			return printedRatio(int64(printedLength("60 cm")), int64(measure.Inch), 3) + " x " + printedRatio(int64(printedLength("80 cm")), int64(measure.Inch), 3)
		},
		"unit-a1": func() string {
			return printedRatio(int64(printedLength("594 mm")), int64(measure.Inch), 2) + " x " + printedRatio(int64(printedLength("841 mm")), int64(measure.Inch), 2)
		},
		"mat-margins": func() string {
			l := mat.Mat{
				Window:  mat.Window{By: mat.BySize, Size: printedSize("9 3/4", "7 3/4")},
				Borders: mat.Borders{By: mat.ByBoard, Board: printedSize("14", "11"), Weight: mat.Unweighted},
			}.Lay(mat.Given{})
			return fractions(l.Cut.Left, l.Cut.Top)
		},
		"safety-area":  func() string { return printedRatio(int64(glazing.SafetyArea), int64(measure.SquareMeter), 2) },
		"safety-floor": func() string { return printedRatio(int64(printedLength("18")), int64(measure.Millimeter), 0) },
		"safety-top":   func() string { return printedRatio(int64(printedLength("36")), int64(measure.Millimeter), 0) },
		"points":       func() string { return fraction(framing.DefaultShop(framing.Inches).Points) },
		"allowance":    func() string { return fraction(framing.DefaultShop(framing.Inches).Allowance) },
		"overlap":      func() string { return fraction(framing.DefaultShop(framing.Inches).Overlap) },
		"ply-shop": func() string {
			return printedRatio(int64(framing.DefaultShop(framing.Inches).Thickness.Board), int64(measure.Inch), 3)
		},
		"point": func() string { return printedRatio(int64(measure.Inch/1000), int64(measure.Inch), 3) },
	}
	publishedPaper(c)
	publishedRails(c)
	publishedPolygons(c)
	publishedSlopes(c)
	publishedMasses(c)
	publishedMaterials(c)
	publishedReveals(c)
	publishedHanging(c)
	for ply, thickness := range map[string]string{"2": "0.030", "4": "0.055", "6": "0.085", "8": "0.110"} {
		c["ply-"+ply] = func() string { return printedRatio(int64(printedLength(thickness)), int64(measure.Millimeter), 1) }
	}
	return c
}

// publishedPaper adds the paper sizes. A0 has a square meter and B0 a side of
// one meter, both with sides as 1 to the root of 2; each further size is the
// one before with its long side halved and rounded down.
func publishedPaper(c map[string]func() string) {
	for series, short := range map[string]float64{"a": math.Pow(2, -0.25), "b": 1} {
		for n := range 11 {
			c["iso216-"+series+strconv.Itoa(n)] = func() string {
				var s measure.Size
				s.Width, _ = (measure.Length(math.Round(short * 1e9))).Round(measure.Millimeter, measure.Nearest)
				s.Height, _ = (measure.Length(math.Round(short * math.Sqrt2 * 1e9))).Round(measure.Millimeter, measure.Nearest)
				for range n {
					half, _ := s.Height.Half()
					half, _ = half.Round(measure.Millimeter, measure.Down)
					s = measure.Size{Width: half, Height: s.Width}
				}
				return millimeters(s.Width) + " x " + millimeters(s.Height)
			}
		}
	}
	for name, s := range map[string][2]string{
		"a": {"8.5", "11"}, "b": {"11", "17"}, "c": {"17", "22"}, "d": {"22", "34"}, "e": {"34", "44"},
	} {
		c["ansi-"+name] = func() string { return millimeters(printedLength(s[0])) + " x " + millimeters(printedLength(s[1])) }
	}
}

// publishedRails adds rails, miters and the example that is worked by hand.
func publishedRails(c map[string]func() string) {
	around := func(face, lip, allowance, width, height string) molding.Rectangle {
		return molding.Frame{Kind: molding.Rabbeted, Face: printedLength(face), Lip: printedLength(lip), Allowance: printedLength(allowance)}.Around(printedSize(width, height))
	}
	c["rail-8"] = func() string { return fraction(around("2", "1/8", "0", "8", "10").Outside.Width) }
	c["rail-16"] = func() string { return fraction(around("2", "0", "0", "16", "20").Outside.Width) }
	c["rail-20"] = func() string { return fraction(around("2", "0", "0", "16", "20").Outside.Height) }
	c["footage"] = func() string { return fraction(around("2", "0", "1/16", "16", "20").Footage) }
	c["rail-practice"] = func() string { return fraction(around("1 7/16", "1/4", "1/16", "14", "18 7/16").Outside.Height) }

	example := func() (mat.Layout, molding.Rectangle) {
		f := molding.Frame{Face: printedLength("1 1/4"), Lip: printedLength("1/4"), Allowance: printedLength("1/8")}
		m := mat.Mat{
			Window: mat.Window{By: mat.ByOverlap, EachSide: printedLength("1/8")},
			Borders: mat.Borders{By: mat.ByVisible, Weight: mat.Unweighted, Sides: measure.Sides{
				Left: printedLength("2 1/2"), Right: printedLength("2 1/2"), Top: printedLength("2 1/2"), Bottom: printedLength("3"),
			}},
		}
		art := printedSize("11 3/8", "15 1/4")
		l := m.Lay(mat.Given{Least: art, Greatest: art, Lip: f.Lips(), Allowance: f.Allowance})
		return l, f.Around(l.Blank)
	}
	for name, figure := range map[string]func(mat.Layout, molding.Rectangle) measure.Size{
		"window":  func(l mat.Layout, _ molding.Rectangle) measure.Size { return l.Window },
		"blank":   func(l mat.Layout, _ molding.Rectangle) measure.Size { return l.Blank },
		"opening": func(_ mat.Layout, r molding.Rectangle) measure.Size { return r.Opening },
		"rails":   func(_ mat.Layout, r molding.Rectangle) measure.Size { return r.Outside },
		"sight":   func(_ mat.Layout, r molding.Rectangle) measure.Size { return r.Sight },
		"seated": func(l mat.Layout, _ molding.Rectangle) measure.Size {
			return measure.Size{Width: l.Seated.Top, Height: l.Seated.Bottom}
		},
	} {
		c["example-"+name] = func() string { s := figure(example()); return fractions(s.Width, s.Height) }
	}

	degrees := func(a measure.Angle, places int) string {
		text := printedRatio(int64(a), int64(measure.Degree), places)
		return strings.TrimSuffix(text, ".0")
	}
	for n := 4; n <= 10; n++ {
		c["miter-"+strconv.Itoa(n)] = func() string {
			saw, _ := molding.Miter(measure.Turn/2 - measure.Turn/measure.Angle(n))
			return degrees(saw, 1)
		}
	}
	c["miter-93"] = func() string { saw, _ := molding.Miter(93 * measure.Degree); return degrees(saw, 1) }
	c["miter-90.5"] = func() string { saw, _ := molding.Miter(905 * measure.Degree / 10); return degrees(saw, 2) }
}

// publishedMasses adds what sheets weigh.
func publishedMasses(c map[string]func() string) {
	const (
		glass         = 2500 * material.KilogramPerCubicMeter
		acrylic       = 1190 * material.KilogramPerCubicMeter
		polycarbonate = 1200 * material.KilogramPerCubicMeter
	)
	kilograms := func(size measure.Size, thickness string, density material.Density, places int) func() string {
		return func() string {
			p := glazing.Pane{Thickness: printedLength(thickness)}
			return printedRatio(int64(p.Mass(size, density)), int64(measure.Kilogram), places)
		}
	}
	sheet := func(check, thickness string, density material.Density, places int) {
		c[check] = func() string { return perSquareMeter(printedLength(thickness+" mm"), density, places) }
	}
	sheet("glass-1mm", "1", glass, 1)
	for thickness, places := range map[string]int{"2.0": 2, "2.5": 2, "3.0": 2, "4": 1, "6": 1} {
		sheet("glass-kg-"+thickness, thickness, glass, places)
	}
	for thickness, places := range map[string]int{"2": 2, "3": 2, "4.5": 3} {
		sheet("acrylic-"+thickness, thickness, acrylic, places)
	}
	for _, thickness := range []string{"2", "3", "4", "5", "6"} {
		sheet("polycarbonate-"+thickness, thickness, polycarbonate, 1)
	}
	for _, thickness := range []string{"2.0", "2.5", "3.0", "6.0"} {
		c["glass-lb-"+thickness] = func() string {
			return inPounds(material.SheetMass(measure.SquareFoot, printedLength(thickness+" mm"), glass), 4)
		}
	}
	c["glass-pane-600x800"] = kilograms(printedSize("600 mm", "800 mm"), "2.5 mm", glass, 3)
	c["glass-pane-16x20"] = kilograms(printedSize("16", "20"), "2 mm", glass, 4)
	c["glass-pane-32x40"] = kilograms(printedSize("32", "40"), "3 mm", glass, 4)
	c["acrylic-32x40"] = kilograms(printedSize("32", "40"), "3 mm", acrylic, 4)
	for thickness, density := range map[string]int64{"3/32": 156, "1/8": 156, "3/16": 157, "1/4": 157, "3/8": 157, "1/2": 157} {
		c["glass-table-"+thickness] = func() string {
			return inPounds(material.SheetMass(measure.SquareFoot, printedLength(thickness), material.PoundsPerCubicFoot(density)), 2)
		}
	}
	c["glass-156"] = func() string {
		return inPounds(material.SheetMass(measure.SquareInch, measure.Inch, material.PoundsPerCubicFoot(156)), 4)
	}
	c["glass-24sqft"] = func() string {
		return inPounds(material.SheetMass(24*measure.SquareFoot, printedLength("1/8"), material.PoundsPerCubicFoot(156)), 1)
	}
}

// publishedMaterials adds what materials weigh by volume, and how thick a sheet
// of a nominal thickness can be.
func publishedMaterials(c map[string]func() string) {
	density := func(check, key string, unit material.Density, places int) {
		c[check] = func() string {
			e, _ := material.Of(key)
			return printedRatio(int64(e.Nominal), int64(unit), places)
		}
	}
	density("density-ash", "ash_white", material.KilogramPerCubicMeter, 0)
	density("density-poplar", "poplar_yellow", material.KilogramPerCubicMeter, 1)
	density("density-oak", "oak_white", material.KilogramPerCubicMeter, 1)
	density("density-ponderosa", "pine_ponderosa", material.KilogramPerCubicMeter, 1)
	density("density-glass", material.Glass, material.KilogramPerCubicMeter, 0)
	density("density-acrylic", "acrylic", material.GramPerCubicCentimeter, 2)
	density("density-polycarbonate", "polycarbonate", material.GramPerCubicCentimeter, 2)
	thickest := func(check, key, nominal string) {
		c[check] = func() string {
			return printedRatio(int64(material.HeaviestThickness(key, printedLength(nominal+" mm"))), int64(measure.Millimeter), 2)
		}
	}
	for _, nominal := range []string{"2.0", "2.5", "2.7", "3.0", "4", "5", "6", "8", "10", "12"} {
		thickest("glass-most-"+nominal, material.Glass, nominal)
	}
	thickest("acrylic-most-2", "acrylic", "2")
	thickest("acrylic-most-3", "acrylic", "3")
	c["box-16x20"] = func() string { // the pane once more, as a block
		e, _ := material.Of(material.Glass)
		return printedRatio(int64(material.BoxMass(printedLength("16"), printedLength("20"), printedLength("2 mm"), e.Nominal)), int64(measure.Kilogram), 4)
	}
	c["spacer"] = func() string { return fraction(glazing.LeastSpacer) }
}

// publishedReveals adds what shows of a double mat.
func publishedReveals(c map[string]func() string) {
	lay := func(thickness string, by mat.RevealBy) mat.Board {
		return mat.Mat{
			Window:  mat.Window{By: mat.BySize, Size: printedSize("10", "12")},
			Borders: mat.Borders{By: mat.ByCut, To: mat.ToTop, Weight: mat.Unweighted, Sides: measure.AllSides(printedLength("2 3/4"))},
			Under: mat.UnderMats{{
				Thickness: printedLength(thickness), Bevel: 45 * measure.Degree, By: by,
				Reveal: printedLength("1/4"), Trim: printedLength("1/8"),
			}},
		}.Lay(mat.Given{}).Under[0]
	}
	thousandths := func(l measure.Length) string { return printedRatio(int64(l), int64(measure.Inch), 3) }
	for _, thickness := range []string{"0.055", "0.110"} {
		c["bevel-run-"+thickness] = func() string { return thousandths(mat.Run(printedLength(thickness), 45*measure.Degree)) }
		c["reveal-seen-"+thickness] = func() string { return thousandths(lay(thickness, mat.ByLine).Seen) }
		c["reveal-line-"+thickness] = func() string { return thousandths(lay(thickness, mat.BySeen).Reveal) }
	}
	c["under-own"] = func() string { return fraction(lay("0.055", mat.ByLine).Own.Left) }
}

// publishedHanging adds the load of a wire. It is worked for a thousand times the
// weight, so that a load that is held in millinewtons has the printed digits.
func publishedHanging(c map[string]func() string) {
	const thousand = 1000
	lay := func(mass measure.Mass, halfSpan measure.Length, taut hang.Taut) hang.Layout {
		h := hang.Usual(true)
		h.Hooks, h.Inset, h.Below, h.Taut = 1, measure.Inch, 20*measure.Inch, taut
		return h.Lay(hang.Given{
			Outside: measure.Size{Width: 2*halfSpan + 2*measure.Inch, Height: 80 * measure.Inch}, Face: 2 * measure.Inch,
			Mass: mass, Heaviest: mass, MassKnown: true,
		})
	}
	const pound = 453_592_370 // micrograms
	steep := func(pounds, degrees int64) hang.Layout {
		mass := measure.Mass(pounds * pound * thousand / 1000)
		return lay(mass, 10*measure.Inch, hang.Taut{By: hang.ByAngle, Angle: measure.Angle(degrees) * measure.Degree})
	}
	// inPoundsForce writes a load in pounds of 4.4482216152605 N.
	inPoundsForce := func(f measure.Force, places int) string {
		newtons := big.NewRat(int64(f), 1000*thousand)
		return newtons.Quo(newtons, big.NewRat(44_482_216_152_605, 10_000_000_000_000)).FloatString(places)
	}
	// leg writes what a leg bears over what it would bear upright.
	leg := func(degrees int64, places int) string {
		l := steep(100, degrees)
		return printedRatio(2*int64(l.Tension.Nominal), int64(measure.Weight(100*pound*thousand/1000)), places)
	}
	for _, degrees := range []int64{60, 45, 30, 15, 10, 5, 2} {
		at := strconv.FormatInt(degrees, 10)
		c["eye-"+at] = func() string { return inPoundsForce(steep(10, degrees).Tension.Nominal, 0) }
		c["eye-exact-"+at] = func() string { return inPoundsForce(steep(10, degrees).Tension.Nominal, 3) }
	}
	for _, degrees := range []int64{85, 80, 75, 70, 60, 55, 50, 45, 30} {
		c["sling-"+strconv.FormatInt(degrees, 10)] = func() string { return leg(degrees, 3) }
	}
	for _, degrees := range []int64{65, 40, 35} {
		c["sling-exact-"+strconv.FormatInt(degrees, 10)] = func() string { return leg(degrees, 4) }
	}
	for _, degrees := range []int64{60, 45, 30} {
		c["sling-10000-"+strconv.FormatInt(degrees, 10)] = func() string { // by the factor as printed
			factor, _ := new(big.Rat).SetString(leg(degrees, 3))
			return factor.Mul(factor, big.NewRat(5000, 1)).FloatString(0)
		}
	}
	for _, degrees := range []int64{15, 2} {
		c["wire-times-"+strconv.FormatInt(degrees, 10)] = func() string { return inPoundsForce(steep(1, degrees).Tension.Nominal, 2) }
	}
	for check, row := range map[string][3]int64{"10": {10, 200, 50}, "5": {5, 150, 30}, "20": {20, 300, 100}} {
		wire := func() hang.Layout {
			mass, _ := measure.MulDiv(measure.Mass(row[0]*thousand), 100_000_000_000, 980_665) // newtons over 9.80665 m/s2
			return lay(mass, measure.Length(row[1])*measure.Millimeter, hang.Taut{By: hang.ByRise, Rise: measure.Length(row[2]) * measure.Millimeter})
		}
		c["wire-newtons-"+check] = func() string { return printedRatio(int64(wire().Tension.Nominal), 1000*thousand, 3) }
		c["wire-angle-"+check] = func() string { return printedRatio(int64(wire().Angle), int64(measure.Degree), 2) }
	}
	c["hang-center"] = func() string { return fraction(hang.Usual(true).Center) }
	c["hang-hidden"] = func() string { return fraction(hang.Usual(true).Hidden) }
	c["hang-breaking"] = func() string { return printedRatio(100, int64(hang.Usual(true).Ratings.Factor), 0) }
}

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
	publishedMasses(c)
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
		return molding.Frame{Face: printedLength(face), Lip: printedLength(lip), Allowance: printedLength(allowance)}.Around(printedSize(width, height))
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

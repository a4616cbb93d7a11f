package material_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// decimal writes a over b to a number of places, half up.
func decimal(a, b int64, places int) string { return big.NewRat(a, b).FloatString(places) }

// TestPrintedBoxes: the printed and computed masses of sheets, each row with its
// source, by their three dimensions and the densities of the table.
func TestPrintedBoxes(t *testing.T) {
	const in, foot, meter = measure.Inch, measure.Foot, measure.Meter
	rows := []struct {
		name    string
		a, b, c measure.Length
		key     string
		places  int
		unit    measure.Mass
		want    string
	}{
		// EN 572-1: 2500 kg/m3 (read in copies); 2.5 kg/m2 for each millimeter.
		{"glass 2.0 mm", meter, meter, 2 * mm, material.Glass, 2, measure.Kilogram, "5.00"},
		{"glass 2.5 mm", meter, meter, 5 * mm / 2, material.Glass, 2, measure.Kilogram, "6.25"},
		{"glass 3.0 mm", meter, meter, 3 * mm, material.Glass, 2, measure.Kilogram, "7.50"},
		{"glass 6 mm", meter, meter, 6 * mm, material.Glass, 1, measure.Kilogram, "15.0"},
		// Computed from it: panes, and pounds in a square foot.
		{"glass 600 x 800 x 2.5", 600 * mm, 800 * mm, 5 * mm / 2, material.Glass, 3, measure.Kilogram, "3.000"},
		{"glass 16 x 20 in x 2.0", 16 * in, 20 * in, 2 * mm, material.Glass, 4, measure.Kilogram, "1.0323"},
		{"glass 32 x 40 in x 3.0", 32 * in, 40 * in, 3 * mm, material.Glass, 4, measure.Kilogram, "6.1935"},
		{"glass 1 sq ft x 2.0", foot, foot, 2 * mm, material.Glass, 4, 0, "1.0241"},
		{"glass 1 sq ft x 2.5", foot, foot, 5 * mm / 2, material.Glass, 4, 0, "1.2801"},
		{"glass 1 sq ft x 3.0", foot, foot, 3 * mm, material.Glass, 4, 0, "1.5361"},
		{"glass 1 sq ft x 6.0", foot, foot, 6 * mm, material.Glass, 4, 0, "3.0722"},
		// ISO 1183, 1.19 g/cm3 (read in makers' sheets); the masses are computed.
		{"acrylic 2 mm", meter, meter, 2 * mm, "acrylic", 2, measure.Kilogram, "2.38"},
		{"acrylic 3 mm", meter, meter, 3 * mm, "acrylic", 2, measure.Kilogram, "3.57"},
		{"acrylic 4.5 mm", meter, meter, 9 * mm / 2, "acrylic", 3, measure.Kilogram, "5.355"},
		{"acrylic 32 x 40 in x 3", 32 * in, 40 * in, 3 * mm, "acrylic", 4, measure.Kilogram, "2.9481"},
		// Printed by makers.
		{"polycarbonate 2 mm", meter, meter, 2 * mm, "polycarbonate", 1, measure.Kilogram, "2.4"},
		{"polycarbonate 6 mm", meter, meter, 6 * mm, "polycarbonate", 1, measure.Kilogram, "7.2"},
	}
	for _, row := range rows {
		e, _ := material.Of(row.key)
		m := material.BoxMass(row.a, row.b, row.c, e.Nominal)
		got := pounds(m, row.places)
		if row.unit > 0 {
			got = decimal(int64(m), int64(row.unit), row.places)
		}
		if got != row.want {
			t.Errorf("%s: %s, want %s", row.name, got, row.want)
		}
		// The three dimensions are alike.
		for _, again := range []measure.Mass{
			material.BoxMass(row.b, row.c, row.a, e.Nominal), material.BoxMass(row.c, row.a, row.b, e.Nominal),
		} {
			if again != m {
				t.Errorf("%s: turned it weighs %v, not %v", row.name, again, m)
			}
		}
	}
}

// TestMoldingsComeFirst: what moldings can be made of are the first entries, in
// their order, and none of them is a sheet; every entry has a source whose letter
// is one of the known ones.
func TestMoldingsComeFirst(t *testing.T) {
	all := material.All()
	moldings := material.Moldings()
	if len(moldings) == 0 || len(moldings) >= len(all) {
		t.Fatalf("%d moldings of %d materials", len(moldings), len(all))
	}
	for i, key := range moldings {
		if all[i].Key != key {
			t.Errorf("molding %d is %s, the material %s", i, key, all[i].Key)
		}
	}
	if next := all[len(moldings)].Key; next != material.Glass {
		t.Errorf("after the moldings comes %s, not the first sheet", next)
	}
	for _, e := range all {
		switch e.Source.Status {
		case explain.Verified, explain.Secondary, explain.Practice, explain.Memory:
		default:
			t.Errorf("%s has the status %q", e.Key, e.Source.Status)
		}
		if e.Source.Title == "" || e.Source.Place == "" {
			t.Errorf("%s is from %+v", e.Key, e.Source)
		}
	}
	moldings[0] = "x"
	if material.Moldings()[0] != material.Wood {
		t.Error("the list can be changed from outside")
	}
}

// TestThickestRows: every row of ASTM C1036's upper limits (from memory), thicker
// for a thicker nominal, and beside each row the general tolerance.
func TestThickestRows(t *testing.T) {
	rows := []struct{ nominal, most measure.Length }{ // hundredths of a millimeter
		{200, 213}, {250, 257}, {270, 290}, {300, 340}, {400, 419}, {500, 505}, {600, 620}, {800, 843}, {1000, 1031}, {1200, 1349},
	}
	before := measure.Length(0)
	for _, row := range rows {
		nominal := row.nominal * mm / 100
		got := material.HeaviestThickness(material.Glass, nominal)
		if got != row.most*mm/100 || got <= before {
			t.Errorf("glass of %v is up to %v, want %d hundredths and more than %v", nominal, got, row.most, before)
		}
		before = got
		general := 20 * mm / 100 // EN 572-2 (from memory)
		if row.nominal > 600 {
			general = 30 * mm / 100
		}
		if got := material.HeaviestThickness(material.Glass, nominal-1); got != nominal-1+general {
			t.Errorf("glass a nanometer under %v is up to %v", nominal, got)
		}
	}
}

// TestNeverThinner: no sheet's heaviest is thinner than its nominal thickness, and
// within one rule a thicker nominal is thicker. Across rules it is not: 2.99 mm of
// acrylic may vary by a tenth and 3 mm by a twentieth.
func TestNeverThinner(t *testing.T) {
	r := rand.New(rand.NewPCG(10, 36))
	for _, e := range material.All() {
		for range 500 {
			nominal := 1 + measure.Length(r.Int64N(int64(15*mm)))
			got := material.HeaviestThickness(e.Key, nominal)
			if got < nominal || got > nominal+max(nominal/10, 149*mm/100) {
				t.Fatalf("%s of %v is up to %v", e.Key, nominal, got)
			}
		}
	}
	for _, key := range []string{"acrylic", "polycarbonate"} {
		for range 500 {
			nominal := 1 + measure.Length(r.Int64N(int64(15*mm)))
			if nominal == 3*mm-1 {
				continue
			}
			if more := material.HeaviestThickness(key, nominal+1); more < material.HeaviestThickness(key, nominal) {
				t.Fatalf("%s of a nanometer more than %v is only up to %v", key, nominal, more)
			}
		}
	}
}

// FuzzBoxMass: the product of four numbers is that of fractions, and a flat one
// weighs what the sheet does.
func FuzzBoxMass(f *testing.F) {
	const most = int64(math.MaxInt64)
	f.Add(int64(600*mm), int64(800*mm), int64(5*mm/2), int64(2500*kg))
	f.Add(most, most, most, most)
	f.Add(most, int64(1e12), int64(1e12), int64(1))
	f.Add(int64(1e7), int64(1e7), int64(1e7), int64(500)) // half a milligram
	f.Add(int64(-1), most, int64(math.MinInt64), int64(0))
	f.Fuzz(func(t *testing.T, a, b, c, density int64) {
		x, y, z, d := measure.Length(a), measure.Length(b), measure.Length(c), material.Density(density)
		got := material.BoxMass(x, y, z, d)
		if want := exactBox(x, y, z, d); got != want {
			t.Errorf("%d x %d x %d x %d: %d, want %d", a, b, c, density, got, want)
		}
		if a%1000 == 0 && b%1000 == 0 && max(a, b) < 1e12 && min(a, b) > 0 { // the area is a whole number of um2
			if sheet := material.SheetMass(measure.Size{Width: x, Height: y}.Area(), z, d); sheet != got {
				t.Errorf("%d x %d x %d x %d: as a sheet %d, as a block %d", a, b, c, density, sheet, got)
			}
		}
	})
}

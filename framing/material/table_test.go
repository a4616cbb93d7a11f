package material_test

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestPrintedDensities: 1000 G (1 + 12/100), Wood Handbook ch. 4 (from memory);
// G at 12 % from its Table 5-3 with the status beside it.
func TestPrintedDensities(t *testing.T) {
	for _, row := range []struct {
		key    string
		text   string
		status explain.Status
	}{
		{"ash_white", "672 kg/m3", explain.Secondary},
		{"poplar_yellow", "470.4 kg/m3", explain.Secondary},
		{"oak_white", "761.6 kg/m3", explain.Secondary},
		{"pine_ponderosa", "448 kg/m3", explain.Verified},
		{"pine_sugar", "403.2 kg/m3", explain.Verified},
		{"oak_red", "705.6 kg/m3", explain.Secondary},
		{"basswood", "414.4 kg/m3", explain.Secondary},
		{"walnut_black", "616 kg/m3", explain.Secondary},
		{"pine_white", "392 kg/m3", explain.Memory},
		// EN 572-1 in copies; ISO 1183 in makers' sheets.
		{material.Glass, "2500 kg/m3", explain.Secondary},
		{"acrylic", "1190 kg/m3", explain.Verified},
		{"polycarbonate", "1200 kg/m3", explain.Verified},
	} {
		e, ok := material.Of(row.key)
		if !ok || e.Nominal.String() != row.text || e.Source.Status != row.status {
			t.Errorf("%s: %v, %v %s; want %s %s", row.key, ok, e.Nominal, e.Source.Status, row.text, row.status)
		}
	}
}

// TestEntries: every entry is found by its key, once, and says where it is from.
func TestEntries(t *testing.T) {
	all := material.All()
	seen := make(map[string]bool)
	oak, _ := material.Of("oak_white")
	for _, e := range all {
		got, ok := material.Of(e.Key)
		if !ok || got != e || seen[e.Key] {
			t.Errorf("%s is not found, or stands twice", e.Key)
		}
		seen[e.Key] = true
		if e.Nominal <= 0 || e.Heaviest < e.Nominal || e.Heaviest > explain.MaxDensity {
			t.Errorf("%s: %v to %v", e.Key, e.Nominal, e.Heaviest)
		}
		if e.Source.Title == "" || e.Source.Status == explain.Memory && !e.Uncertain {
			t.Errorf("%s: source %v, uncertain %v", e.Key, e.Source, e.Uncertain)
		}
	}
	all[0] = material.Entry{}
	if e, ok := material.Of(material.Wood); !ok || e.Nominal != 500*kg || e.Heaviest < oak.Heaviest {
		t.Errorf("an unknown wood is %v to %v, and white oak %v", e.Nominal, e.Heaviest, oak.Heaviest)
	}
	for _, key := range []string{material.Paper, material.Panel, material.Bars, material.SpacerPlastic, "mdf", "aluminum", "polystyrene", "board", "foam_board", "corrugated", "plywood", "hardboard", "metal"} {
		if e, ok := material.Of(key); !ok || !e.Uncertain {
			t.Errorf("%s is not known, or certain", key)
		}
	}
	for _, key := range []string{"", "Glass", "other", "oak"} {
		if e, ok := material.Of(key); ok || e != (material.Entry{}) {
			t.Errorf("%q is %v", key, e)
		}
	}
	moldings := material.Moldings()
	if moldings[0] != material.Wood || !slices.Contains(moldings, "resin") || slices.Contains(moldings, material.Glass) {
		t.Errorf("moldings are made of %q", moldings)
	}
}

// TestThickest: glass by ASTM C1036's limits (from memory), or EN 572-2 (from
// memory); acrylic by ISO 7823-2 (read in a sheet maker's text).
func TestThickest(t *testing.T) {
	for _, row := range []struct {
		key           string
		nominal, most string
	}{
		{material.Glass, "2 mm", "2.13 mm"}, {material.Glass, "2.5 mm", "2.57 mm"}, {material.Glass, "3 mm", "3.4 mm"},
		{material.Glass, "6 mm", "6.2 mm"}, {material.Glass, "12 mm", "13.49 mm"},
		{material.Glass, "3.2 mm", "3.4 mm"}, {material.Glass, "7 mm", "7.3 mm"},
		{material.Glass, "2.000001 mm", "2.200001 mm"}, // a hair off the table
		{"acrylic", "2 mm", "2.2 mm"}, {"acrylic", "3 mm", "3.15 mm"}, {"acrylic", "4.5 mm", "4.725 mm"},
		{"polycarbonate", "2 mm", "2.2 mm"},
		{"board", "1.4 mm", "1.4 mm"}, {"", "3 mm", "3 mm"},
		{material.Glass, "0 mm", "0 mm"}, {"acrylic", "-3 mm", "-3 mm"},
	} {
		nominal, err := measure.Parse(row.nominal, measure.NoUnit)
		if got := material.HeaviestThickness(row.key, nominal); err != nil || got.String() != row.most {
			t.Errorf("%s of %s is up to %v, %v; want %s", row.key, row.nominal, got, err, row.most)
		}
	}
}

// exactBox is a x b x c x density in fractions, rounded half up and held at the
// greatest Mass.
func exactBox(a, b, c measure.Length, d material.Density) measure.Mass {
	if a <= 0 || b <= 0 || c <= 0 || d <= 0 {
		return 0
	}
	x := big.NewRat(1000, 1) // mg in a gram
	for _, side := range []measure.Length{a, b, c} {
		x.Mul(x, big.NewRat(int64(side), 1_000_000_000))
	}
	x.Mul(x, new(big.Rat).SetInt64(int64(d)))
	x.Add(x, big.NewRat(1, 2))
	whole := new(big.Int).Div(x.Num(), x.Denom())
	if !whole.IsInt64() {
		return math.MaxInt64
	}
	return measure.Mass(whole.Int64())
}

func TestBoxMass(t *testing.T) {
	const most = math.MaxInt64
	for _, row := range [][4]int64{
		{int64(600 * mm), int64(800 * mm), int64(5 * mm / 2), int64(2500 * kg)},
		{1e7, 1e7, 1e7, 500}, {1e7, 1e7, 1e7, 499}, // half a milligram, and less
		{most, most, most, most}, {most, 1_000_000_000_000, 1_000_000_000_000, 1},
		{most, 1_000_000_000_000, 1_000_000_000_001, 1}, {most - 1, 1_000_000_000_000, 1_000_000_000_000, 1},
		{0, 1, 1, 1}, {1, -1, 1, 1}, {1, 1, math.MinInt64, 1}, {1, 1, 1, -1},
	} {
		a, b, c, d := measure.Length(row[0]), measure.Length(row[1]), measure.Length(row[2]), material.Density(row[3])
		if got, want := material.BoxMass(a, b, c, d), exactBox(a, b, c, d); got != want {
			t.Errorf("%v: %d, want %d", row, got, want)
		}
	}
	r := rand.New(rand.NewPCG(25, 13))
	wide := func() int64 { return int64(r.Uint64()>>1) >> r.IntN(63) }
	for range 30_000 {
		a, b, c, d := measure.Length(wide()), measure.Length(wide()), measure.Length(wide()), material.Density(wide())
		got := material.BoxMass(a, b, c, d)
		if want := exactBox(a, b, c, d); got != want {
			t.Fatalf("%d x %d x %d x %d: %d, want %d", a, b, c, d, got, want)
		}
		if got > material.BoxMass(a, b, c+1, d) && c < most {
			t.Fatalf("a hair thicker than %d weighs less", c)
		}
	}
}

func BenchmarkBoxMass(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if material.BoxMass(600*mm, 800*mm, 5*mm/2, 2500*kg) != 3*measure.Kilogram {
			b.Fatal("not 3 kg")
		}
	}
}

// A pane of picture glass, 16 x 20 in and 2 mm thick, and the same in acrylic.
func Example() {
	const in, mm = measure.Inch, measure.Millimeter
	for _, key := range []string{material.Glass, "acrylic"} {
		m, _ := material.Of(key)
		mass := material.BoxMass(16*in, 20*in, 2*mm, m.Nominal)
		_, shown := measure.ShowMass(mass, true)
		fmt.Println(key, m.Nominal, m.Source.Status, mass, "or", shown)
	}
	// Output:
	// glass 2500 kg/m3 V2 1032.256 g or 2.3 lb
	// acrylic 1190 kg/m3 V 491.354 g or 1.1 lb
}

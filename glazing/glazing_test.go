package glazing_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
)

const (
	mm   = measure.Millimeter
	inch = measure.Inch
)

func TestCheck(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*glazing.Pane)
		want   []string
	}{
		{"as it is", func(*glazing.Pane) {}, nil},
		{"acrylic", func(p *glazing.Pane) { p.Material = glazing.Acrylic }, nil},
		{"no material", func(p *glazing.Pane) { p.Material = "" }, []string{"/glazing/material not_a_choice"}},
		{"case", func(p *glazing.Pane) { p.Material = "Glass" }, []string{"/glazing/material wrong_case"}},
		{"name too long", func(p *glazing.Pane) { p.Name = strings.Repeat("x", explain.MaxText+1) }, []string{"/glazing/name text_too_long"}},
		{"no thickness", func(p *glazing.Pane) { p.Thickness = 0 }, []string{"/glazing/thickness missing"}},
		{"too thick", func(p *glazing.Pane) { p.Thickness = most + 1 }, []string{"/glazing/thickness out_of_range"}},
		{"negative clearance", func(p *glazing.Pane) { p.Clearance = -1 }, []string{"/glazing/clearance out_of_range"}},
		{"clearance too much", func(p *glazing.Pane) { p.Clearance = most + 1 }, []string{"/glazing/clearance out_of_range"}},
		{"half a size", func(p *glazing.Pane) { p.Size.Width = 1 }, []string{"/glazing/size/height missing"}},
		{"the other half", func(p *glazing.Pane) { p.Size.Height = 1 }, []string{"/glazing/size/width missing"}},
		{"negative size", func(p *glazing.Pane) { p.Size = measure.Size{Width: -1, Height: -1} },
			[]string{"/glazing/size/height out_of_range", "/glazing/size/width out_of_range"}},
		{"too large", func(p *glazing.Pane) { p.Size = measure.Size{Width: most, Height: most + 1} }, []string{"/glazing/size/height out_of_range"}},
	}
	for _, row := range rows {
		p := glazing.Pane{Material: glazing.Glass, Thickness: 2 * mm}
		row.change(&p)
		var c explain.Checker
		p.Check(&c, "/glazing")
		var got []string
		for _, problem := range c.Problems() {
			got = append(got, string(problem.Path)+" "+string(problem.Code))
		}
		if !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestNotes: glass cuts, plastic holds a charge, and above 9 square feet
// (IBC 2406.4.3, read in plan sheets that reproduce it) glass may have to be
// safety glazing.
func TestNotes(t *testing.T) {
	const edges, static, safety = "caution.glass_edges", "caution.static", "caution.safety_glazing"
	nine := measure.Size{Width: 36 * inch, Height: 36 * inch}
	wider := nine
	wider.Width++ // a strip of 914.4 um2
	rows := []struct {
		material glazing.Material
		size     measure.Size
		want     string
	}{
		{glazing.Glass, measure.Size{Width: 16 * inch, Height: 20 * inch}, edges},
		{glazing.Glass, nine, edges},
		{glazing.Glass, wider, edges + " " + safety},
		{glazing.Glass, measure.Size{}, edges},
		{glazing.Acrylic, wider, static},
		{glazing.Polycarbonate, nine, static},
	}
	for _, row := range rows {
		p := glazing.Pane{Material: row.material, Thickness: 3 * mm}
		var codes []string
		for _, n := range p.Notes(row.size, row.size, "/order/pieces/0/glazing") {
			codes = append(codes, string(n.Code))
			if n.Level != explain.Caution || n.Path != "/order/pieces/0/glazing" || n.Changes != nil {
				t.Errorf("%s %+v: %+v", row.material, row.size, n)
			}
			if text := n.Text(measure.Format{}); text == string(n.Code) || strings.ContainsAny(text, "{}") {
				t.Errorf("%s reads %q", n.Code, text)
			}
		}
		if got := strings.Join(codes, " "); got != row.want {
			t.Errorf("%s %+v: %s, want %s", row.material, row.size, got, row.want)
		}
	}
	if got := glazing.GlassNotes(wider, "/order/pieces/0/art"); len(got) != 2 || got[1].Path != "/order/pieces/0/art" {
		t.Errorf("a mirror has the notes %+v", got)
	}
}

// TestThin: a pane wants to be stronger beyond each size, to the nanometer of the
// size in both directions and of the least thickness of each nominal one: 2.16 mm
// for 2.5 and 2.92 for 3 (ASTM E1300, read in two copies), 5 % below 3 and 4.5 for
// extruded plastic (ISO 7823-2, read in a maker's text). The sizes are common
// practice.
func TestThin(t *testing.T) {
	hundredth := mm / 100
	rows := []struct {
		material    glazing.Material
		short, long measure.Length // the largest that this thickness does for
		thin        measure.Length // the most that does no more beyond it
		wanted      measure.Length
		code        explain.Code
	}{
		{glazing.Glass, 32 * inch, 40 * inch, 216*hundredth - 1, 25 * mm / 10, glazing.ThinGlass},
		{glazing.Glass, 36 * inch, 48 * inch, 292*hundredth - 1, 3 * mm, glazing.ThinGlass},
		{glazing.Acrylic, 24 * inch, 36 * inch, 285*hundredth - 1, 3 * mm, glazing.ThinSheet},
		{glazing.Acrylic, 40 * inch, 60 * inch, 4275*mm/1000 - 1, 45 * mm / 10, glazing.ThinSheet},
		{glazing.Polycarbonate, 24 * inch, 36 * inch, 285*hundredth - 1, 3 * mm, glazing.ThinSheet},
	}
	for _, row := range rows {
		thin := func(thickness, width, height measure.Length) []explain.Note {
			p := glazing.Pane{Material: row.material, Thickness: thickness}
			size := measure.Size{Width: width, Height: height}
			return slices.DeleteFunc(p.Notes(size, size, "/glazing"), func(n explain.Note) bool { return n.Level == explain.Caution })
		}
		if got := thin(row.thin, row.short, row.long); len(got) > 0 {
			t.Errorf("%s of %v at its size: %+v", row.material, row.thin, got)
		}
		for _, size := range [][2]measure.Length{{row.short + 1, row.long}, {row.short, row.long + 1}, {row.long + 1, row.short}, {row.long, row.short + 1}} {
			got := thin(row.thin, size[0], size[1])
			if len(got) != 1 || got[0].Code != row.code || got[0].Level != explain.Advice || got[0].Path != "/glazing/thickness" ||
				len(got[0].Changes) != 1 || got[0].Changes[0].To != explain.Of(row.wanted) {
				t.Fatalf("%s of %v, a nanometer beyond: %+v", row.material, row.thin, got)
			}
			for _, thickness := range []measure.Length{row.thin + 1, row.wanted} {
				if got := thin(thickness, size[0], size[1]); len(got) > 0 {
					t.Errorf("%s of %v: %+v", row.material, thickness, got)
				}
			}
		}
	}
}

// TestThinText reads the notes the way a framer does.
func TestThinText(t *testing.T) {
	size := measure.Size{Width: 48 * inch, Height: 72 * inch}
	for _, row := range []struct {
		material glazing.Material
		want     string
		change   string
	}{
		{glazing.Glass, "Glass 2 mm thick is thin for a pane of 48 in x 72 in: it bends and breaks easily in handling. Beyond about 32 x 40 in (80 x 100 cm) 2.5 mm is usual, beyond about 36 x 48 in (90 x 120 cm) 3 mm, or acrylic.", "thickness at least 1/8 in"},
		{glazing.Acrylic, "A plastic sheet 2 mm thick is thin for a pane of 48 in x 72 in: it bows. Beyond about 24 x 36 in (60 x 90 cm) 1/8 in (3 mm) is usual, beyond about 40 x 60 in (100 x 150 cm) 3/16 in (4.5 mm) or more.", "thickness at least 3/16 in"},
	} {
		notes := glazing.Pane{Material: row.material, Thickness: 2 * mm}.Notes(size, size, "/glazing")
		last := notes[len(notes)-1]
		if got := last.Text(sixteenths); got != row.want {
			t.Errorf("reads %q, want %q", got, row.want)
		}
		if got := last.Changes[0].Text(sixteenths); got != row.change {
			t.Errorf("changes %q, want %q", got, row.change)
		}
	}
}

// TestGrowth: acrylic of 36 in grows by .0576 in over 40 F at 4.0e-5 / F and by
// .072 in at .2 % of moisture, .1296 in together (worked from the printed rates
// of a data sheet and of a sheet maker); polycarbonate of 50 in by .076 in over
// 40 F at 3.8e-5 / F; glass by nothing here.
func TestGrowth(t *testing.T) {
	for _, row := range []struct {
		material glazing.Material
		inches   measure.Length
		want     measure.Length
	}{
		{glazing.Acrylic, 36, 1296 * inch / 10000},
		{glazing.Polycarbonate, 50, 76 * inch / 1000},
		{glazing.Glass, 36, 0},
	} {
		p := glazing.Pane{Material: row.material}
		if got := p.Growth(row.inches * inch); got != row.want || p.Grows() != (row.want > 0) {
			t.Errorf("%s of %d in grows by %v, want %v", row.material, row.inches, got, row.want)
		}
	}
}

// TestLittlePlay: a pane with exactly the play it grows by has room, one with a
// nanometer less does not, and the clearance that is proposed gives it.
func TestLittlePlay(t *testing.T) {
	p := glazing.Pane{Material: glazing.Acrylic, Thickness: 3 * mm}
	size := measure.Size{Width: 36 * inch, Height: 20 * inch}
	room := measure.Size{Width: p.Growth(size.Width), Height: p.Growth(size.Height)}
	if got := p.Notes(size, room, "/glazing"); len(got) != 1 {
		t.Errorf("room enough, and %+v", got)
	}
	for _, short := range []measure.Size{{Width: room.Width - 1, Height: room.Height}, {Width: room.Width, Height: room.Height - 1}} {
		got := p.Notes(size, short, "/glazing")
		if len(got) != 2 || got[1].Code != glazing.LittlePlay || got[1].Level != explain.Advice {
			t.Fatalf("a nanometer short, and %+v", got)
		}
		p.Clearance = measure.Length(got[1].Changes[0].To.N)
		if wide := p.Growth(size.Width); short.Width < wide && p.Clearance != wide {
			t.Errorf("clearance %v, want %v", p.Clearance, wide)
		}
	}
	p.Size = size
	if got := p.Notes(size, measure.Size{}, "/glazing"); len(got) != 2 || got[1].Changes != nil {
		t.Errorf("a pane that is cut already has a change of its clearance: %+v", got)
	}
}

// TestSafetyArea: 9 square feet are printed beside as 0.84 m2.
func TestSafetyArea(t *testing.T) {
	if got := fmt.Sprintf("%.2f", float64(glazing.SafetyArea)/float64(measure.SquareMeter)); got != "0.84" {
		t.Errorf("9 sq ft are %s m2, want 0.84", got)
	}
	if glazing.SafetyArea != 36*36*measure.SquareInch {
		t.Error("9 sq ft are not 36 x 36 in")
	}
}

// TestMass: a pane of 600 x 800 x 2.5 mm is 3.000 kg at the 2500 kg/m3 of
// EN 572-1 (read in copies that quote it).
func TestMass(t *testing.T) {
	p := glazing.Pane{Material: glazing.Glass, Thickness: 25 * mm / 10}
	size := measure.Size{Width: 600 * mm, Height: 800 * mm}
	if got := p.Mass(size, 2500*material.KilogramPerCubicMeter); got != 3*measure.Kilogram {
		t.Errorf("weighs %v, want 3 kg", got)
	}
	p.Thickness += 8 // 600 x 800 mm of 8 nm are 9.6 mg
	if got := p.Mass(size, 2500*material.KilogramPerCubicMeter); got != 3*measure.Kilogram+10 {
		t.Errorf("8 nm thicker weighs %v", got)
	}
}

func TestZeroPane(t *testing.T) {
	var p glazing.Pane
	if !p.IsZero() || (glazing.Pane{Clearance: 1}).IsZero() {
		t.Error("what is a pane and what is none")
	}
	if got := p.Mass(measure.Size{Width: inch, Height: inch}, 2500*material.KilogramPerCubicMeter); got != 0 {
		t.Errorf("no pane weighs %v", got)
	}
}

// FuzzPane: no value panics, and a caution for large glass comes exactly
// where the sides multiply to more than 9 square feet.
func FuzzPane(f *testing.F) {
	f.Add(int64(36*inch), int64(36*inch), int64(2*mm))
	f.Add(int64(36*inch)+1, int64(36*inch), int64(0))
	f.Add(int64(math.MinInt64), int64(math.MaxInt64), int64(math.MinInt64))
	f.Fuzz(func(t *testing.T, width, height, thickness int64) {
		size := measure.Size{Width: measure.Length(width), Height: measure.Length(height)}
		p := glazing.Pane{Material: glazing.Glass, Thickness: measure.Length(thickness), Size: size}
		var c explain.Checker
		p.Check(&c, "")
		p.Mass(size, material.Density(thickness))
		notes := p.Notes(size, measure.Size{}, "")
		if c.Problems() != nil || width == 0 {
			return
		}
		// The area is rounded to a square micrometer, so a surplus below half of
		// one does not count.
		surplus := size.Area() - 9*measure.SquareFoot
		if slices.ContainsFunc(notes, func(n explain.Note) bool { return n.Code == glazing.CautionSafety }) != (surplus > 0) {
			t.Errorf("%+v, %d um2 over 9 sq ft: %+v", size, surplus, notes)
		}
	})
}

// A pane of 40 x 36 in of glass is over 9 square feet.
func ExamplePane_Notes() {
	p := glazing.Pane{Material: glazing.Glass, Thickness: 3 * measure.Millimeter}
	for _, n := range p.Notes(measure.Size{Width: 40 * measure.Inch, Height: 36 * measure.Inch}, measure.Size{}, "/order/pieces/0/glazing") {
		fmt.Println(n.Level, n.Code)
	}
	// Output:
	// caution caution.glass_edges
	// caution caution.safety_glazing
}

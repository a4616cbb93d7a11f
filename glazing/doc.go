// Package glazing works with the clear sheet in front of a picture: what it is
// made of, what it weighs, and what to mind about it.
//
// A pane is cut smaller than the opening by its play. Glass takes the frame's
// allowance; a plastic sheet grows with heat and moisture and may need a
// clearance of its own. How a pane lies in the rabbet is worked out by package
// molding.
//
// Thickness is the metric one. Picture glass is 2.0 mm and double strength 3.0
// mm whatever fraction it is sold by.
package glazing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Pane is what is decided about the glazing. The zero Pane is none.
type Pane struct {
	Material Material `json:"material"`
	// Name is what the shop calls it.
	Name      string         `json:"name,omitzero"`
	Thickness measure.Length `json:"thickness"`
	// Clearance is the total play per dimension that the pane needs; it gets
	// the frame's allowance where that is more.
	Clearance measure.Length `json:"clearance"`
	// Size is the pane's size where it is cut already; the zero Size is cut to
	// fit.
	Size measure.Size `json:"size,omitzero"`
}

// IsZero reports whether there is no glazing.
func (p Pane) IsZero() bool { return p == Pane{} }

// A Material is what a pane is made of.
type Material string

// The materials of panes.
const (
	Glass         Material = "glass"
	Acrylic       Material = "acrylic" // PMMA
	Polycarbonate Material = "polycarbonate"
)

// Choices lists the materials, for readers and forms.
func (Material) Choices() []string {
	return []string{string(Glass), string(Acrylic), string(Polycarbonate)}
}

// Check adds to c what is wrong with p, whose fields lie at path at.
func (p Pane) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/material", string(p.Material), p.Material.Choices())
	c.Text(at+"/name", p.Name)
	c.Measured(at+"/thickness", p.Thickness)
	c.NotNegative(at+"/clearance", p.Clearance)
	c.GivenSize(at+"/size", p.Size, p.Size != measure.Size{})
}

// Mass returns what a pane of this size and density weighs, rounded to a
// milligram.
func (p Pane) Mass(size measure.Size, d material.Density) measure.Mass {
	return material.SheetMass(size.Area(), p.Thickness, d)
}

// Codes of the notes of this room.
const (
	CautionEdges  explain.Code = "caution.glass_edges"
	CautionStatic explain.Code = "caution.static"
	CautionSafety explain.Code = "caution.safety_glazing"
	LittlePlay    explain.Code = "glazing.little_play"
)

// Growth of a plastic sheet from a cold dry room to a hot damp one, in parts per
// million of its length: a swing of 40 degrees Fahrenheit, and for acrylic from
// dry to 60 percent humidity.
const (
	// acrylicGrowth is 40 F x 4.0e-5 / F (ASTM D696, extruded sheet, as makers'
	// data sheets print it) and 0.2 % at 60 % humidity (a sheet maker's text).
	acrylicGrowth = 1600*explain.PartPerMillion + 2000*explain.PartPerMillion
	// polycarbonateGrowth is 40 F x 3.8e-5 / F (makers' data sheets).
	polycarbonateGrowth = 1520 * explain.PartPerMillion
)

// Grows reports whether the pane moves with heat and moisture enough to need
// room for it.
func (p Pane) Grows() bool { return p.growth() > 0 }

func (p Pane) growth() explain.Ratio {
	switch p.Material {
	case Acrylic:
		return acrylicGrowth
	case Polycarbonate:
		return polycarbonateGrowth
	}
	return 0
}

// Growth returns how much a length of the pane grows from a cold dry room to a
// hot damp one: 36 in of acrylic by .1296 in. It is a figure to choose a
// clearance by; glass returns nothing.
func (p Pane) Growth(l measure.Length) measure.Length {
	growth, _ := l.Scale(int64(p.growth()), int64(explain.Whole))
	return growth
}

// SafetyArea is the pane size above which building codes begin to ask for
// safety glazing near walking surfaces: 9 square feet, IBC 2406.4.3 (read in
// plan sheets that reproduce it). It triggers a caution and is no statement of
// compliance.
const SafetyArea = 9 * measure.SquareFoot

// Notes says what to mind about a pane of this size with this play, which
// stands at path at in the order.
func (p Pane) Notes(size, play measure.Size, at explain.Path) []explain.Note {
	if !p.Grows() {
		return p.appendThin(GlassNotes(size, at), size, at)
	}
	notes := []explain.Note{{Level: explain.Caution, Code: CautionStatic, Path: at}}
	long, room := size.Width, play.Width
	if p.Growth(size.Height)-play.Height > p.Growth(size.Width)-play.Width {
		long, room = size.Height, play.Height
	}
	if growth := p.Growth(long); room < growth {
		n := explain.Note{
			Level: explain.Advice, Code: LittlePlay, Path: at + "/clearance",
			Values: []explain.Term{
				explain.NewTerm("size", long, ""),
				explain.NewTerm("growth", growth, ""),
				explain.NewTerm("play", room, ""),
			},
		}
		if (p.Size == measure.Size{}) {
			n.Changes = []explain.Change{{Path: n.Path, To: explain.Of(growth), Bound: explain.AtLeast}}
		}
		notes = append(notes, n)
	}
	return p.appendThin(notes, size, at)
}

// GlassNotes says what to mind about anything made of glass, a mirror too.
func GlassNotes(size measure.Size, at explain.Path) []explain.Note {
	notes := []explain.Note{{Level: explain.Caution, Code: CautionEdges, Path: at}}
	if area := size.Area(); area > SafetyArea {
		notes = append(notes, explain.Note{
			Level: explain.Caution, Code: CautionSafety, Path: at,
			Values: []explain.Term{
				explain.NewTerm("area", area, ""),
				explain.NewTerm("limit", SafetyArea, ""),
			},
		})
	}
	return notes
}

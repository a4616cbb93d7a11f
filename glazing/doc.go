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
	c.Positive(at+"/thickness", p.Thickness)
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
)

// SafetyArea is the pane size above which building codes begin to ask for
// safety glazing near walking surfaces: 9 square feet, IBC 2406.4.3 (read in
// plan sheets that reproduce it). It triggers a caution and is no statement of
// compliance.
const SafetyArea = 9 * measure.SquareFoot

// Notes says what to mind about a pane of this size, whose size stands at path
// at in the plan.
func (p Pane) Notes(size measure.Size, at explain.Path) []explain.Note {
	if p.Material != Glass {
		return []explain.Note{{Level: explain.Caution, Code: CautionStatic, Path: at}}
	}
	return GlassNotes(size, at)
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

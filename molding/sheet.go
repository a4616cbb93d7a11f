package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Sheet is a flat part behind the art: a mount or a backing. The zero Sheet
// is none.
type Sheet struct {
	Material SheetMaterial `json:"material"`
	// Name is what the shop calls it.
	Name      string         `json:"name,omitzero"`
	Thickness measure.Length `json:"thickness"`
	Cut
}

// IsZero reports whether there is no such part.
func (s Sheet) IsZero() bool { return s == Sheet{} }

// A SheetMaterial is what a mount or a backing is made of.
type SheetMaterial string

// The materials of mounts and backings.
const (
	Board      SheetMaterial = "board"      // mat board, museum board
	FoamBoard  SheetMaterial = "foam_board" // paper-faced foam
	Corrugated SheetMaterial = "corrugated" // corrugated board or plastic
	Plywood    SheetMaterial = "plywood"
	Hardboard  SheetMaterial = "hardboard" // also MDF
	Metal      SheetMaterial = "metal"     // also metal-faced composites
	OtherSheet SheetMaterial = "other"
)

// Choices lists the materials, for readers and forms.
func (SheetMaterial) Choices() []string {
	return []string{
		string(Board), string(FoamBoard), string(Corrugated), string(Plywood),
		string(Hardboard), string(Metal), string(OtherSheet),
	}
}

// Check adds to c what is wrong with s, whose fields lie at path at.
func (s Sheet) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/material", string(s.Material), s.Material.Choices())
	c.Text(at+"/name", s.Name)
	c.Measured(at+"/thickness", s.Thickness)
	s.Cut.Check(c, at)
}

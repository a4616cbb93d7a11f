package framing

import (
	"encoding/json"
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// PlanVersion is the version of the plans that this package writes.
const PlanVersion = 1

// A Plan is an order worked out, to be read, printed and asked. It is not read
// back from its JSON text: keep the order, and work it again. Its paths, in notes and workings, are JSON
// Pointers into the plan's own JSON text.
type Plan struct {
	Version int `json:"version"`
	// Order is the order as it was worked, every default written out.
	Order Order `json:"order"`
	// Defaults are the fields of the order that were absent when it was read
	// and took their default; an object stands for all its fields.
	Defaults []explain.Path `json:"defaults,omitempty"`
	// Problems are what is wrong with the order. A plan with problems is not to be
	// cut from until they are mended.
	Problems explain.Problems `json:"problems,omitempty"`
	// Pieces are the pieces of the order, one for one.
	Pieces []PiecePlan `json:"pieces"`
	// Notes are about the order as a whole.
	Notes []explain.Note `json:"notes,omitempty"`
}

// A PiecePlan is one piece worked out.
type PiecePlan struct {
	Name     string `json:"name,omitzero"`
	Quantity int    `json:"quantity"`
	// Worked is false for a piece that has problems; it has no figures then.
	Worked bool `json:"worked"`
	// Mat is the mat to cut; the zero value is none.
	Mat MatPlan `json:"mat,omitzero"`
	// Frame is the frame to cut.
	Frame FramePlan `json:"frame,omitzero"`
	// Layers are what lies in the rabbet, from the front.
	Layers []LayerPlan `json:"layers,omitempty"`
	// Depth is how the package lies in the rabbet's depth.
	Depth DepthPlan `json:"depth,omitzero"`
	// Notes are what to know about the piece: warnings, then cautions, then
	// advice.
	Notes []explain.Note `json:"notes,omitempty"`
}

// A MatPlan is a mat worked out; see [mat.Layout].
type MatPlan struct {
	Window  SizeFigure   `json:"window"`
	Covered SizeFigure   `json:"covered"`
	Cover   SidesFigure  `json:"cover"`
	Cut     SidesFigure  `json:"cut"`
	Visible SidesFigure  `json:"visible"`
	Seated  SidesFigure  `json:"seated"`
	Blank   SizeFigure   `json:"blank"`
	Back    CornerFigure `json:"back"`
}

// A CornerFigure is a place on a board: from its left edge and from its top.
type CornerFigure struct {
	Left Figure `json:"left"`
	Top  Figure `json:"top"`
}

// A FramePlan is a frame worked out; see [molding.Rectangle].
type FramePlan struct {
	Package SizeFigure `json:"package"`
	Opening SizeFigure `json:"opening"`
	Sight   SizeFigure `json:"sight"`
	Outside SizeFigure `json:"outside"`
	// Horizontal is the top and the bottom rail, Vertical the two sides.
	Horizontal RailPlan `json:"horizontal"`
	Vertical   RailPlan `json:"vertical"`
	Footage    Figure   `json:"footage"`
}

// A RailPlan is a pair of equal rails, mitered at both ends.
type RailPlan struct {
	LongPoint  Figure `json:"long_point"`
	ShortPoint Figure `json:"short_point"`
	// Saw is the setting of both ends on the saw's scale, from a square cut;
	// Edge is the angle between the cut and the rail's edge.
	Saw  AngleFigure `json:"saw"`
	Edge AngleFigure `json:"edge"`
}

// A LayerPlan is one part in the rabbet.
type LayerPlan struct {
	Part LayerPart `json:"part"`
	// CutToFit is whether the plan decides the part's size.
	CutToFit bool       `json:"cut_to_fit"`
	Size     SizeFigure `json:"size"`
	// Play is what the opening leaves, both sides together.
	Play SizeFigure `json:"play"`
	// Bite is how far the lip covers the part's edge with all the play there.
	Bite SizeFigure `json:"bite"`
}

// A LayerPart is what a layer is.
type LayerPart string

// The parts that can lie in the rabbet, from the front.
const (
	GlazingLayer LayerPart = "glazing"
	MatLayer     LayerPart = "mat"
	ArtLayer     LayerPart = "art"
	MountLayer   LayerPart = "mount"
	BackingLayer LayerPart = "backing"
)

// A DepthPlan is how the package lies in the rabbet's depth; see
// [molding.Depth].
type DepthPlan struct {
	Package Figure `json:"package"`
	Clear   Figure `json:"clear"`
	Wanted  Figure `json:"wanted"`
}

// marshalFigure writes the four texts of a figure.
func marshalFigure(exact, shown, text, spoken string) ([]byte, error) {
	return json.Marshal(struct {
		Exact  string `json:"exact"`
		Shown  string `json:"shown"`
		Text   string `json:"text"`
		Spoken string `json:"spoken"`
	}{exact, shown, text, spoken})
}

// trimUnit drops the unit behind a canonical text.
func trimUnit(s string) string {
	number, _, _ := strings.Cut(s, " ")
	return number
}

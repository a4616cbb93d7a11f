package framing

import (
	"encoding"
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// PlanVersion is the version of the plans that this package writes.
const PlanVersion = 3

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
	// Canvas is the canvas to cut and stretch; the zero value is none.
	Canvas CanvasPlan `json:"canvas,omitzero"`
	// Mat is the mat to cut; the zero value is none.
	Mat MatPlan `json:"mat,omitzero"`
	// Liner is the frame around the package within the frame; the zero value is
	// none.
	Liner FramePlan `json:"liner,omitzero"`
	// Frame is the frame to cut. Of a frame that is no plain rectangle it holds the
	// sizes, those of a regular one across flats, and Shape the rails.
	Frame FramePlan `json:"frame,omitzero"`
	// Art is what follows from an outline or from measured sides; the zero value is
	// art that has its width and height.
	Art ArtPlan `json:"art,omitzero"`
	// Shape is how the rails are cut of a frame that is no plain rectangle; the zero
	// value is none.
	Shape ShapePlan `json:"shape,omitzero"`
	// Float is how the art stands in a floater; the zero value is none.
	Float FloatPlan `json:"float,omitzero"`
	// Layers are what lies in the rabbets, from the front: first what lies in the
	// liner, and then the liner in the frame.
	Layers []LayerPlan `json:"layers,omitempty"`
	// Depth is how the package lies in the depth of the rabbet: the liner's where
	// there is one.
	Depth DepthPlan `json:"depth,omitzero"`
	// LinerDepth is how the liner lies in the depth of the frame's rabbet.
	LinerDepth DepthPlan `json:"liner_depth,omitzero"`
	// Mass is what the parts weigh.
	Mass MassPlan `json:"mass,omitzero"`
	// Hang is how the piece hangs; the zero value is none.
	Hang HangPlan `json:"hang,omitzero"`
	// Notes are what to know about the piece: warnings, then cautions, then
	// advice.
	Notes []explain.Note `json:"notes,omitempty"`
}

// A CanvasPlan is a canvas to stretch.
type CanvasPlan struct {
	// Cut is the canvas to cut.
	Cut SizeFigure `json:"cut"`
	// Bars are the stretcher bars, long point to long point: two of each.
	Bars SizeFigure `json:"bars"`
	// United is the width and the height of the bars together, by which stretching
	// is sold.
	United Figure `json:"united"`
}

// A FloatPlan is how art stands in a floater.
type FloatPlan struct {
	// Least and Most are the gap on each side where the art is largest and where
	// it is smallest, in the middle of the opening.
	Least SizeFigure `json:"least"`
	Most  SizeFigure `json:"most"`
}

// A MatPlan is a mat worked out: the top board, and those under it; see
// [mat.Layout].
type MatPlan struct {
	Window  SizeFigure   `json:"window"`
	Bevel   BevelPlan    `json:"bevel"`
	Covered SizeFigure   `json:"covered"`
	Cover   SidesFigure  `json:"cover"`
	Cut     SidesFigure  `json:"cut"`
	Visible SidesFigure  `json:"visible"`
	Seated  SidesFigure  `json:"seated"`
	Blank   SizeFigure   `json:"blank"`
	Back    CornerFigure `json:"back"`
	Under   []UnderPlan  `json:"under,omitempty"`
}

// IsZero reports whether there is no mat.
func (m MatPlan) IsZero() bool { return m.Window == SizeFigure{} && m.Blank == SizeFigure{} }

// An UnderPlan is a board under the top one; see [mat.Board].
type UnderPlan struct {
	Reveal  Figure      `json:"reveal"`
	Seen    Figure      `json:"seen"`
	Window  SizeFigure  `json:"window"`
	Bevel   BevelPlan   `json:"bevel"`
	Blank   SizeFigure  `json:"blank"`
	Own     SidesFigure `json:"own"`
	FromTop SidesFigure `json:"from_top"`
}

// A BevelPlan is the edge of a window; see [mat.Bevel].
type BevelPlan struct {
	Run   Figure     `json:"run"`
	Slope Figure     `json:"slope"`
	Face  SizeFigure `json:"face"`
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
	// A frame that is no plain rectangle has neither, nor a footage: see [ShapePlan].
	Horizontal RailPlan `json:"horizontal,omitzero"`
	Vertical   RailPlan `json:"vertical,omitzero"`
	Footage    Figure   `json:"footage,omitzero"`
	// DustCover is the paper over the back, smaller than the outside by the
	// shop's margin; only the outermost frame has one.
	DustCover SizeFigure `json:"dust_cover,omitzero"`
}

// IsZero reports whether there is no frame.
func (f FramePlan) IsZero() bool { return f == FramePlan{} }

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
	// In is the frame that the part lies in: "liner" or "frame".
	In LayerPart `json:"in"`
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
	GlazingLayer  LayerPart = "glazing"
	SpacerLayer   LayerPart = "spacer"
	MatLayer      LayerPart = "mat"
	UnderMatLayer LayerPart = "under_mat"
	ArtLayer      LayerPart = "art"
	MountLayer    LayerPart = "mount"
	BackingLayer  LayerPart = "backing"
	LinerLayer    LayerPart = "liner"
	FrameLayer    LayerPart = "frame"   // what holds the others
	PackageLayer  LayerPart = "package" // what stands out behind a liner
)

// A DepthPlan is how the package lies in the rabbet's depth; see
// [molding.Depth].
type DepthPlan struct {
	// Stack is how thick each part is, from the front.
	Stack []StackPlan `json:"stack,omitempty"`
	// Package is how thick they are together, Clear what the rabbet leaves behind
	// them, and Wanted the least rabbet that also has room for the points.
	Package Figure `json:"package"`
	Clear   Figure `json:"clear"`
	Wanted  Figure `json:"wanted"`
}

// IsZero reports whether there is nothing in the rabbet.
func (d DepthPlan) IsZero() bool { return len(d.Stack) == 0 && d.Wanted == Figure{} }

// A StackPlan is one part in the depth.
type StackPlan struct {
	Part      LayerPart `json:"part"`
	Thickness Figure    `json:"thickness"`
	// Inside is whether it lies inside the spacer before it, and not behind it: the
	// thicker of the two counts.
	Inside bool `json:"inside,omitempty"`
}

// A MassPlan is what a piece weighs.
type MassPlan struct {
	// Parts are the parts whose mass is known, from the front.
	Parts []PartMass `json:"parts,omitempty"`
	// Unknown are the parts whose mass is not known: the piece weighs more than
	// Total by them.
	Unknown []LayerPart `json:"unknown,omitempty"`
	// Total is what the parts weigh together, Heaviest what they weigh where every
	// one is as thick and as dense as it may be. What has to hold is worked out
	// for the heaviest.
	Total    MassFigure `json:"total"`
	Heaviest MassFigure `json:"heaviest"`
}

// IsZero reports whether nothing was weighed.
func (m MassPlan) IsZero() bool { return len(m.Parts) == 0 && len(m.Unknown) == 0 }

// A PartMass is what one part weighs.
type PartMass struct {
	Part LayerPart `json:"part"`
	// Mass is what it weighs, Heaviest what it can weigh.
	Mass     MassFigure `json:"mass"`
	Heaviest MassFigure `json:"heaviest"`
	// Uncertain is whether the density is from memory, or differs much from one
	// make to the next.
	Uncertain bool `json:"uncertain,omitzero"`
}

// appendFigure writes the four texts of a figure. Only the text may hold what
// JSON has to escape, the marks of feet and inches; spoken appends words.
func appendFigure[Q encoding.TextAppender](dst []byte, exact, shown Q, text string, spoken func([]byte) []byte) []byte {
	dst, _ = exact.AppendText(append(dst, `{"exact":"`...))
	dst, _ = shown.AppendText(append(dst, `","shown":"`...))
	dst = jsontext.AppendString(append(dst, `","text":`...), text)
	return append(spoken(append(dst, `,"spoken":"`...)), `"}`...)
}

// trimUnit drops the unit behind a canonical text.
func trimUnit(s string) string {
	number, _, _ := strings.Cut(s, " ")
	return number
}

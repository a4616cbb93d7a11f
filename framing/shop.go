package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// A Shop holds what a shop usually does. Its values are written into each new
// piece, where they can be changed; a 0 here means 0.
type Shop struct {
	// Allowance is the total play of a package in its frame, per dimension.
	Allowance measure.Length `json:"allowance"`
	// Overlap is how far a mat covers the art's edge, each side.
	Overlap measure.Length `json:"overlap"`
	// Border is the visible border of a mat, each side.
	Border measure.Length `json:"border"`
	// Points is the clear depth that the points behind a package need.
	Points measure.Length `json:"points"`
	// Bite is the least hold of the lip, with all the play on one side, below
	// which a plan advises otherwise.
	Bite measure.Length `json:"bite"`
	// Extra is how much wider a weighted bottom border is than the top one.
	Extra measure.Length `json:"extra"`
	// Reveal is how much of a lower mat shows, each side, line to line.
	Reveal measure.Length `json:"reveal" since:"2"`
	// Trim is how much smaller a lower mat's blank is, each side.
	Trim measure.Length `json:"trim" since:"2"`
	// Spacer is the depth of a spacer.
	Spacer measure.Length `json:"spacer" since:"2"`
	// Gap is the air around art in a floater, each side.
	Gap measure.Length `json:"gap" since:"2"`
	// Turn is the canvas that is turned round the back of its bars, each side.
	Turn measure.Length `json:"turn" since:"2"`
	// Bar is how wide stretcher bars are.
	Bar measure.Length `json:"bar" since:"2"`
	// Dust is how far inside the outside edge the dust cover ends, each side.
	Dust measure.Length `json:"dust" since:"2"`
	// Saw is what the shop's saw reaches, and how exact it is.
	Saw Saw `json:"saw" since:"3"`
	// Thickness holds the usual thickness of each material.
	Thickness Thickness `json:"thickness"`
}

// A Saw is a shop's miter saw.
type Saw struct {
	// Miter is how far it swings from square, Tilt how far its blade tilts from
	// upright, either way; 0 where that is not known.
	Miter measure.Angle `json:"miter"`
	Tilt  measure.Angle `json:"tilt"`
	// Off is the error of each cut as a test frame shows it: above nothing, cuts come
	// out too far from square.
	Off measure.Angle `json:"off"`
	// Seen is the widest gap in a joint that one does not see.
	Seen measure.Length `json:"seen"`
}

// MostOff is how far the cuts of a saw may be off, either way, to be worked out.
const MostOff = 5 * measure.Degree

func (s Saw) check(c *explain.Checker, at explain.Path) {
	c.Angle(at+"/miter", s.Miter, 0, measure.RightAngle)
	c.Angle(at+"/tilt", s.Tilt, 0, measure.RightAngle)
	c.Angle(at+"/off", s.Off, -MostOff, MostOff)
	c.NotNegative(at+"/seen", s.Seen)
}

// Thickness holds the usual thickness of each material. A sheet of another
// material has none: it must be measured.
type Thickness struct {
	// Board is mat board and mount board.
	Board         measure.Length `json:"board"`
	Glass         measure.Length `json:"glass"`
	Acrylic       measure.Length `json:"acrylic"`
	Polycarbonate measure.Length `json:"polycarbonate"`
	FoamBoard     measure.Length `json:"foam_board"`
	Corrugated    measure.Length `json:"corrugated"`
	Plywood       measure.Length `json:"plywood"`
	Hardboard     measure.Length `json:"hardboard"`
	Metal         measure.Length `json:"metal"`
}

// DefaultShop returns what most shops do (common practice), in inches or in
// whole millimeters: an allowance of 1/8 in, an overlap of 1/8 in each side,
// borders of 2 1/2 in and 1/2 in more below where they are weighted, 1/8 in for
// the points, a bite of 1/8 in, 4-ply board of .055 in, picture glass of 2 mm,
// plastics of 3 mm, foam board of 3/16 in.
func DefaultShop(u Units) Shop {
	const mm = measure.Millimeter
	if u != Inches {
		return Shop{
			Allowance: 3 * mm, Overlap: 3 * mm, Border: 65 * mm, Points: 3 * mm, Bite: 3 * mm, Extra: 15 * mm,
			Reveal: 6 * mm, Trim: 3 * mm, Spacer: 6 * mm, Gap: 6 * mm, Turn: 40 * mm, Bar: 38 * mm, Dust: 3 * mm,
			Saw: Saw{Seen: mm / 10},
			Thickness: Thickness{
				Board: 14 * mm / 10, Glass: 2 * mm, Acrylic: 3 * mm, Polycarbonate: 3 * mm,
				FoamBoard: 5 * mm, Corrugated: 4 * mm, Plywood: 6 * mm, Hardboard: 3 * mm, Metal: 3 * mm,
			},
		}
	}
	const eighth = measure.Inch / 8
	return Shop{
		Allowance: eighth, Overlap: eighth, Border: 20 * eighth, Points: eighth, Bite: eighth, Extra: 4 * eighth,
		Reveal: 2 * eighth, Trim: eighth, Spacer: 2 * eighth, Gap: 2 * eighth, Turn: 12 * eighth, Bar: 12 * eighth, Dust: eighth,
		Saw: Saw{Seen: measure.Inch / 250},
		Thickness: Thickness{
			Board: 55 * measure.Inch / 1000, Glass: 2 * mm, Acrylic: 3 * mm, Polycarbonate: 3 * mm,
			FoamBoard: 3 * eighth / 2, Corrugated: 5 * eighth / 4, Plywood: 2 * eighth, Hardboard: eighth, Metal: eighth,
		},
	}
}

// pane is the usual thickness of a pane.
func (t Thickness) pane(m glazing.Material) measure.Length {
	switch m {
	case glazing.Acrylic:
		return t.Acrylic
	case glazing.Polycarbonate:
		return t.Polycarbonate
	}
	return t.Glass
}

// sheet is the usual thickness of a sheet; nothing for another material.
func (t Thickness) sheet(m molding.SheetMaterial) measure.Length {
	switch m {
	case molding.Board:
		return t.Board
	case molding.FoamBoard:
		return t.FoamBoard
	case molding.Corrugated:
		return t.Corrugated
	case molding.Plywood:
		return t.Plywood
	case molding.Hardboard:
		return t.Hardboard
	case molding.Metal:
		return t.Metal
	}
	return 0
}

func (s Shop) check(c *explain.Checker, at explain.Path) {
	c.NotNegative(at+"/allowance", s.Allowance)
	c.NotNegative(at+"/overlap", s.Overlap)
	c.NotNegative(at+"/border", s.Border)
	c.NotNegative(at+"/points", s.Points)
	c.NotNegative(at+"/bite", s.Bite)
	c.NotNegative(at+"/extra", s.Extra)
	c.NotNegative(at+"/reveal", s.Reveal)
	c.NotNegative(at+"/trim", s.Trim)
	c.NotNegative(at+"/spacer", s.Spacer)
	c.NotNegative(at+"/gap", s.Gap)
	c.NotNegative(at+"/turn", s.Turn)
	c.NotNegative(at+"/bar", s.Bar)
	c.NotNegative(at+"/dust", s.Dust)
	s.Saw.check(c, at+"/saw")
	t := s.Thickness
	c.NotNegative(at+"/thickness/board", t.Board)
	c.NotNegative(at+"/thickness/glass", t.Glass)
	c.NotNegative(at+"/thickness/acrylic", t.Acrylic)
	c.NotNegative(at+"/thickness/polycarbonate", t.Polycarbonate)
	c.NotNegative(at+"/thickness/foam_board", t.FoamBoard)
	c.NotNegative(at+"/thickness/corrugated", t.Corrugated)
	c.NotNegative(at+"/thickness/plywood", t.Plywood)
	c.NotNegative(at+"/thickness/hardboard", t.Hardboard)
	c.NotNegative(at+"/thickness/metal", t.Metal)
}

// NewOrder returns an order without pieces, with every default written out.
func NewOrder(u Units) Order {
	return Order{Version: OrderVersion, Units: u, Show: DefaultShow(u), Shop: DefaultShop(u)}
}

// NewPiece returns a piece with every default of the shop written out: one
// work on paper, no mat, no glazing, no backing. What it is and its frame are
// for the caller to fill in.
func NewPiece(s Shop) Piece {
	return Piece{
		Quantity: 1,
		Art:      Art{Kind: Paper},
		Frame:    NewFrame(s),
	}
}

// NewFrame returns a frame, or a liner, with every default of the shop written
// out. Face and lip are for the caller to fill in.
func NewFrame(s Shop) molding.Frame {
	return molding.Frame{
		Kind: molding.Rabbeted, Allowance: s.Allowance, Gap: s.Gap, Made: molding.ToFit, Wood: material.Wood,
	}
}

// NewUnderMat returns a board under the shop's usual mat.
func NewUnderMat(s Shop) mat.UnderMat {
	return mat.UnderMat{
		Thickness: s.Thickness.Board, Bevel: usualBevel, By: mat.ByLine, Reveal: s.Reveal, Trim: s.Trim,
	}
}

// NewSpacer returns a spacer behind the glazing. Its width is for the caller to
// fill in.
func NewSpacer(s Shop) glazing.Spacer {
	return glazing.Spacer{Under: glazing.UnderGlazing, Depth: s.Spacer}
}

// NewStretch returns how the shop stretches a canvas.
func NewStretch(s Shop) Stretch { return Stretch{Turn: s.Turn, Bar: s.Bar} }

// NewHanging returns how most pieces hang: on a wire.
func NewHanging(u Units) hang.Hanging { return hang.Usual(u == Inches) }

// usualBevel is what a hand-held mat cutter cuts (common practice).
const usualBevel = 45 * measure.Degree

// NewMat returns the shop's usual mat.
func NewMat(s Shop) mat.Mat {
	return mat.Mat{
		Thickness: s.Thickness.Board, Bevel: usualBevel,
		Window: mat.Window{By: mat.ByOverlap, EachSide: s.Overlap},
		Borders: mat.Borders{
			By: mat.ByVisible, To: mat.ToTop, Sides: measure.AllSides(s.Border), Weight: mat.Unweighted, Extra: s.Extra,
		},
	}
}

// NewGlazing returns a pane of a material in the shop's usual thickness.
func NewGlazing(s Shop, m glazing.Material) glazing.Pane {
	return glazing.Pane{Material: m, Thickness: s.Thickness.pane(m)}
}

// NewSheet returns a mount or a backing of a material in the shop's usual
// thickness; nothing for a material without one.
func NewSheet(s Shop, m molding.SheetMaterial) molding.Sheet {
	return molding.Sheet{Material: m, Thickness: s.Thickness.sheet(m)}
}

func count(least, most int) string { return strconv.Itoa(least) + " to " + strconv.Itoa(most) }

func tooManyPieces(n int) explain.Problem {
	return explain.Problem{Code: explain.TooMany, Path: "/pieces", Given: strconv.Itoa(n), Accepted: count(1, MaxPieces)}
}

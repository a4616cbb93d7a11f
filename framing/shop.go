package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
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
	// MatBoard, Glass, Mount and Backing are the usual thicknesses.
	MatBoard measure.Length `json:"mat_board"`
	Glass    measure.Length `json:"glass"`
	Mount    measure.Length `json:"mount"`
	Backing  measure.Length `json:"backing"`
}

// DefaultShop returns what most shops do (common practice), in inches or in
// whole millimeters: an allowance of 1/8 in, an overlap of 1/8 in each side,
// borders of 2 1/2 in, 1/8 in for the points, a bite of 1/8 in, 4-ply board of
// .055 in, picture glass of 2 mm.
func DefaultShop(u Units) Shop {
	if u != Inches {
		const mm = measure.Millimeter
		return Shop{
			Allowance: 3 * mm, Overlap: 3 * mm, Border: 65 * mm, Points: 3 * mm, Bite: 3 * mm,
			MatBoard: 14 * mm / 10, Glass: 2 * mm, Mount: 14 * mm / 10, Backing: 3 * mm,
		}
	}
	const eighth = measure.Inch / 8
	return Shop{
		Allowance: eighth, Overlap: eighth, Border: 20 * eighth, Points: eighth, Bite: eighth,
		MatBoard: 55 * measure.Inch / 1000, Glass: 2 * measure.Millimeter,
		Mount: 55 * measure.Inch / 1000, Backing: eighth,
	}
}

func (s Shop) check(c *explain.Checker, at explain.Path) {
	c.NotNegative(at+"/allowance", s.Allowance)
	c.NotNegative(at+"/overlap", s.Overlap)
	c.NotNegative(at+"/border", s.Border)
	c.NotNegative(at+"/points", s.Points)
	c.NotNegative(at+"/bite", s.Bite)
	c.NotNegative(at+"/mat_board", s.MatBoard)
	c.NotNegative(at+"/glass", s.Glass)
	c.NotNegative(at+"/mount", s.Mount)
	c.NotNegative(at+"/backing", s.Backing)
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
		Frame:    molding.Frame{Allowance: s.Allowance},
	}
}

// NewMat returns the shop's usual mat.
func NewMat(s Shop) mat.Mat {
	return mat.Mat{
		Thickness: s.MatBoard,
		Window:    mat.Window{By: mat.ByOverlap, EachSide: s.Overlap},
		Borders:   mat.Borders{By: mat.ByVisible, Sides: measure.AllSides(s.Border), Weight: mat.Unweighted},
	}
}

// NewGlazing returns the shop's usual glass.
func NewGlazing(s Shop) glazing.Pane {
	return glazing.Pane{Material: glazing.Glass, Thickness: s.Glass}
}

// NewMount returns the shop's usual board behind the art.
func NewMount(s Shop) molding.Sheet {
	return molding.Sheet{Material: molding.Board, Thickness: s.Mount}
}

// NewBacking returns the shop's usual backing.
func NewBacking(s Shop) molding.Sheet {
	return molding.Sheet{Material: molding.Board, Thickness: s.Backing}
}

func count(least, most int) string { return strconv.Itoa(least) + " to " + strconv.Itoa(most) }

func tooManyPieces(n int) explain.Problem {
	return explain.Problem{Code: explain.TooMany, Path: "/pieces", Given: strconv.Itoa(n), Accepted: count(1, MaxPieces), Offset: -1}
}

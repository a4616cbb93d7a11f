package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/molding"
)

// Sample returns an order to start from: a letterpress print of a tide table,
// matted, glazed and framed in a plain oak molding. It is what the examples
// work when they are given nothing.
func Sample() Order {
	const in = measure.Inch
	shop := DefaultShop(Inches)
	p := NewPiece(shop)
	p.Name = "Tide table, letterpress"
	p.Art.Width, p.Art.Height = 9*in+3*in/4, 13*in+in/2
	p.Art.Thickness = 3 * measure.Millimeter / 10
	p.Mat = NewMat(shop)
	p.Mat.Name = "warm white, 4-ply"
	p.Mat.Borders.Sides = measure.Sides{Left: 2*in + in/4, Right: 2*in + in/4, Top: 2*in + in/4, Bottom: 2*in + 3*in/4}
	p.Glazing = NewGlazing(shop, glazing.Glass)
	p.Mount = NewSheet(shop, molding.Board)
	p.Backing = NewSheet(shop, molding.Corrugated)
	f := &p.Frame
	f.Molding, f.Face, f.Lip = "oak, plain, 1 1/8", in+in/8, in/4
	f.Rabbet, f.Height, f.Wood = in/2, in-in/8, "oak_red"
	p.Hang = NewHanging(Inches)
	o := NewOrder(Inches)
	o.Job, o.Pieces = "Harbor office, one print", []Piece{p}
	return o
}

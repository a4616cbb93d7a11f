package main

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/molding"
)

const in = measure.Inch

// order returns four pieces for one bench, whose saw swings to 50 degrees either way.
func order() framing.Order {
	o := framing.NewOrder(framing.Inches)
	o.Job = "four frames that are no plain rectangles"
	o.Show.Fineness = in / 32
	o.Shop.Saw.Miter, o.Shop.Saw.Tilt = 50*measure.Degree, 45*measure.Degree
	o.Pieces = []framing.Piece{octagon(o.Shop), box(o.Shop), wideBottom(o.Shop), triangle(o.Shop)}
	return o
}

// octagon is a mirror with eight equal sides, 18 in from one side to the one across
// from it. Its rails follow by hand: (18 + 1/8 + 2 x (2 1/2 - 3/8)) x tan 22.5 =
// 9.26803 in.
func octagon(shop framing.Shop) framing.Piece {
	p := framing.NewPiece(shop)
	p.Name = "octagon mirror"
	p.Art.Kind, p.Art.Thickness = framing.Mirror, in/4
	p.Art.Outline = framing.NewOutline() // eight sides, across flats
	p.Art.Outline.By, p.Art.Outline.Size = framing.ByRegular, 18*in
	p.Backing = framing.NewSheet(shop, molding.Hardboard)
	f := &p.Frame
	f.Molding, f.Face, f.Lip, f.Rabbet = "flat cherry, 2 1/2", 2*in+in/2, 3*in/8, 5*in/8
	f.Height, f.Wood = in, "cherry_black"
	return p
}

// box is square and its sides slope: boards at 30 degrees from vertical, which is 60
// from flat.
func box(shop framing.Shop) framing.Piece {
	p := framing.NewPiece(shop)
	p.Name = "canted box"
	p.Art.Kind, p.Art.Width, p.Art.Height, p.Art.Thickness = framing.Panel, 8*in, 8*in, in/4
	f := &p.Frame
	f.Molding, f.Face, f.Lip, f.Rabbet = "basswood boards", 2*in+in/2, in/4, 3*in/8
	f.Slope = molding.Slope{
		Pitches:   []molding.Pitch{{Angle: 30 * measure.Degree, From: molding.FromVertical}}, // one for all
		Thickness: in / 2,
	}
	return p
}

// wideBottom is a print in a frame whose bottom rail is the widest: its miters are not
// at 45 degrees.
func wideBottom(shop framing.Shop) framing.Piece {
	p := framing.NewPiece(shop)
	p.Name = "wide bottom rail"
	p.Art.Width, p.Art.Height = 11*in, 14*in
	p.Mat = framing.NewMat(shop)
	p.Glazing = framing.NewGlazing(shop, glazing.Acrylic)
	p.Backing = framing.NewSheet(shop, molding.FoamBoard)
	f := &p.Frame
	f.Molding, f.Face, f.Lip, f.Rabbet = "white oak, made here", 2*in, in/4, 5*in/8
	f.Height, f.Wood = in, "oak_white"
	f.Faces = []measure.Length{3*in + in/2, 2 * in, 2 * in, 2 * in} // bottom, right, top, left
	return p
}

// triangle is a case for a thing with three sides, measured along each.
func triangle(shop framing.Shop) framing.Piece {
	p := framing.NewPiece(shop)
	p.Name = "triangle case"
	p.Art.Kind, p.Art.Thickness = framing.Panel, in/4
	p.Art.Outline = framing.NewOutline()
	p.Art.Outline.By = framing.ByEdges
	p.Art.Outline.Edges = []measure.Length{20 * in, 15 * in, 15 * in} // from the bottom one on
	f := &p.Frame
	f.Molding, f.Face, f.Lip, f.Rabbet = "walnut, square", in+in/8, in/4, in/2
	f.Height, f.Wood = 7*in/8, "walnut_black"
	return p
}

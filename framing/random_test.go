package framing_test

import (
	"math/rand/v2"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// dice draw from a fixed stream. Only the generator's Uint64 is used, with
// arithmetic of its own, so that the stream is the same on every platform and
// under every Go.
type dice struct{ source *rand.PCG }

func newDice(seed uint64) dice { return dice{rand.NewPCG(seed, 0x6d69746572)} }

// below draws from 0 to n-1.
func (d dice) below(n int64) int64 { return int64(d.source.Uint64() % uint64(n)) }

// in is true in one draw of n.
func (d dice) in(n int64) bool { return d.below(n) == 0 }

func draw[T any](d dice, from ...T) T { return from[d.below(int64(len(from)))] }

// length draws from least to most: on a tape's grid, on a rule's, or at any
// nanometer.
func (d dice) length(least, most measure.Length) measure.Length {
	grid := draw(d, measure.Inch/16, measure.Inch/64, measure.Inch/100, measure.Millimeter/2,
		measure.Millimeter/10, measure.Nanometer)
	l := least + measure.Length(d.below(int64(most-least)+1))
	if on, _ := l.Round(grid, measure.Up); on <= most {
		return on
	}
	return l
}

func (d dice) size(least, most measure.Length) measure.Size {
	return measure.Size{Width: d.length(least, most), Height: d.length(least, most)}
}

const mm = measure.Millimeter

// order draws an order that has no problems.
func (d dice) order(pieces int) framing.Order {
	units := draw(d, framing.Inches, framing.Millimeters, framing.Centimeters)
	shop := framing.DefaultShop(units)
	if d.in(4) {
		shop.Allowance, shop.Bite = d.length(0, 4*mm), d.length(0, 4*mm)
		shop.Overlap, shop.Points = d.length(0, 4*mm), d.length(0, 4*mm)
	}
	o := framing.Order{
		Version: framing.OrderVersion, Job: draw(d, "", "Two for the stairs", "Ærø “Färgeläge” №1"),
		Date: draw(d, framing.Date(""), "2028-02-29"), Units: units, Show: d.show(), Shop: shop,
	}
	for range pieces {
		o.Pieces = append(o.Pieces, d.piece(shop))
	}
	return o
}

func (d dice) show() framing.Show {
	as := draw(d, framing.AsFraction, framing.AsFeet, framing.AsDecimal, framing.AsMetric)
	return framing.Show{As: as, Fineness: draw(d, measure.Steps(as.Style())...)}
}

func (d dice) piece(shop framing.Shop) framing.Piece {
	p := framing.NewPiece(shop)
	p.Name, p.Quantity = draw(d, "", "Ferry at noon"), 1+int(d.below(3))
	p.Art.Kind = draw(d, framing.Paper, framing.Mirror, framing.Panel, framing.Canvas)
	p.Art.Width, p.Art.Height = d.length(20*mm, 1500*mm), d.length(20*mm, 1500*mm)
	p.Art.Thickness = d.length(0, 20*mm)
	if d.in(3) {
		p.Art.Varies = d.size(0, 5*mm)
	}
	p.Art.Mass = draw(d, 0, 0, measure.Mass(d.below(20_000_000)))
	if d.in(4) {
		p.Art.Stretch = framing.Stretch{Turn: d.length(1, 60*mm), Bar: d.length(1, 60*mm)}
	}
	p.Frame = d.frame(shop)
	if d.in(4) {
		p.Liner = d.frame(shop)
	}
	if !d.in(3) {
		p.Mat = d.mat(shop, p.Art)
	}
	if d.in(4) {
		p.Spacer = framing.NewSpacer(shop)
		p.Spacer.Under = draw(d, glazing.UnderGlazing, glazing.UnderMat)
		p.Spacer.Width, p.Spacer.Depth = d.length(1, 30*mm), d.length(0, 30*mm)
	}
	if d.in(3) {
		p.Hang = d.hang(p.Frame.Face < 20*mm)
	}
	around := p.Art.Greatest().Grown(d.length(0, 150*mm))
	if d.in(2) {
		p.Glazing = framing.NewGlazing(shop, draw(d, glazing.Glass, glazing.Acrylic, glazing.Polycarbonate))
		cut := d.cut(around)
		p.Glazing.Clearance, p.Glazing.Size = cut.Clearance, cut.Size
	}
	if d.in(2) {
		p.Mount = framing.NewSheet(shop, molding.Board)
		p.Mount.Cut = d.cut(around)
	}
	if d.in(2) {
		p.Backing = framing.NewSheet(shop, molding.FoamBoard)
		p.Backing.Material = draw(d, molding.Board, molding.Plywood, molding.OtherSheet)
		p.Backing.Cut = d.cut(around)
	}
	return p
}

func (d dice) frame(shop framing.Shop) molding.Frame {
	f := framing.NewFrame(shop)
	f.Molding = draw(d, "", "ash, cushion")
	f.Face = d.length(4*mm, 100*mm)
	f.Lip = d.length(0, min(f.Face-measure.Nanometer, 13*mm))
	f.Rabbet = draw(d, 0, d.length(0, 40*mm))
	f.Height = draw(d, 0, f.Rabbet+measure.Nanometer+d.length(0, 20*mm))
	f.Allowance = draw(d, shop.Allowance, d.length(0, 8*mm))
	f.Made = draw(d, molding.ToFit, molding.ToFit, molding.ToSpace, molding.ReadyMade)
	f.Wood = molding.Wood(draw(d, f.Wood.Choices()...))
	if d.in(6) {
		f.Kind, f.Lip = molding.Floater, 0
		f.Gap, f.Ledge = d.length(0, 20*mm), draw(d, 0, d.length(0, 40*mm))
	}
	return f
}

func (d dice) cut(around measure.Size) molding.Cut {
	var c molding.Cut
	if d.in(2) {
		c.Clearance = d.length(0, 10*mm)
	}
	if d.in(4) {
		c.Size = measure.Size{Width: around.Width + d.length(-10*mm, 10*mm), Height: around.Height + d.length(-10*mm, 10*mm)}
	}
	return c
}

func (d dice) mat(shop framing.Shop, art framing.Art) mat.Mat {
	m := framing.NewMat(shop)
	m.Thickness = d.length(1*mm, 4*mm)
	m.Bevel = d.bevel()
	for i := range d.below(mat.MaxUnder + 1) {
		u := framing.NewUnderMat(shop)
		u.Thickness, u.Bevel = d.length(1*mm, 4*mm), d.bevel()
		u.By, u.Reveal, u.Trim = draw(d, mat.ByLine, mat.BySeen), d.length(0, 12*mm), d.length(0, 6*mm)
		m.Under[i] = u
	}
	m.Window.By = draw(d, mat.ByOverlap, mat.ByGap, mat.BySize)
	m.Window.EachSide = d.length(0, 6*mm)
	if m.Window.By == mat.BySize || d.in(8) {
		m.Window.Width = d.length(art.Width/2, art.Width+2*mm)
		m.Window.Height = d.length(art.Height/2, art.Height+2*mm)
	}
	b := &m.Borders
	b.By = draw(d, mat.ByVisible, mat.ByCut, mat.ByBoard)
	b.To = draw(d, mat.ToTop, mat.ToLowest)
	switch d.below(3) {
	case 0:
		b.Sides = measure.AllSides(d.length(0, 100*mm))
	case 1:
		side := d.length(0, 100*mm)
		b.Sides = measure.Sides{Left: side, Right: side, Top: d.length(0, 100*mm), Bottom: d.length(0, 120*mm)}
	default:
		b.Sides = measure.Sides{Left: d.length(0, 90*mm), Right: d.length(0, 90*mm), Top: d.length(0, 90*mm), Bottom: d.length(0, 90*mm)}
	}
	b.Weight = draw(d, mat.Unweighted, mat.Extra, mat.Ratio, mat.Optical)
	b.Extra = draw(d, 0, d.length(0, 30*mm))
	b.Ratio = draw(d, 0, explain.Ratio(d.below(int64(explain.Whole))))
	if b.By == mat.ByBoard {
		b.Board = measure.Size{Width: art.Width + d.length(-5*mm, 200*mm), Height: art.Height + d.length(-5*mm, 200*mm)}
	}
	return m
}

// hang draws how a piece hangs; tight is a frame too narrow for much.
func (d dice) hang(tight bool) hang.Hanging {
	h := hang.Usual(d.in(2))
	h.By = draw(d, hang.Wire, hang.Wire, hang.Rings, hang.Sawtooth)
	h.Hooks = 1 + int(d.below(2))
	if d.in(3) {
		h.Below = d.length(1, 400*mm)
	}
	if h.By == hang.Rings && d.in(2) {
		h.BelowRight = d.length(1, 400*mm)
	}
	if !tight && d.in(3) {
		h.Inset = d.length(1, 60*mm)
	}
	h.Taut = hang.Taut{By: draw(d, hang.ByAngle, hang.ByRise, hang.ByWire), Angle: hang.LeastAngle + measure.Angle(d.below(int64(hang.MostAngle-hang.LeastAngle))),
		Rise: d.length(1, 200*mm), Wire: d.length(1, 2000*mm)}
	h.Spread, h.NailAbove = draw(d, 0, d.length(1, 500*mm)), draw(d, 0, d.length(0, 20*mm))
	h.Ratings.WireBreaks = draw(d, 0, measure.Force(d.below(1_000_000)))
	h.Ratings.HangerHolds, h.Ratings.HookHolds = draw(d, 0, measure.Force(d.below(300_000))), draw(d, 0, measure.Force(d.below(300_000)))
	return h
}

// bevel draws the angle of a cut: mostly what cutters are set to.
func (d dice) bevel() measure.Angle {
	return draw(d, 45*measure.Degree, 45*measure.Degree, 90*measure.Degree, 135*measure.Degree,
		mat.LeastBevel+measure.Angle(d.below(int64(mat.MostBevel-mat.LeastBevel))))
}

// shows lists every way to show lengths, coarsest first within each manner.
func shows() []framing.Show {
	var all []framing.Show
	for _, as := range (framing.As("")).Choices() {
		for _, step := range measure.Steps(framing.As(as).Style()) {
			all = append(all, framing.Show{As: framing.As(as), Fineness: step})
		}
	}
	return all
}

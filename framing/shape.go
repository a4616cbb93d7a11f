package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// A form is what a piece's frame goes around.
type form int

const (
	rectangular form = iota // a plain rectangle, or one of rails that differ or slope
	regular                 // equal sides and corners: sizes are across flats
	polygonal               // any other outline, or one with a side that has no rail
)

// form is what the piece's frame goes around.
func (p *Piece) form() form {
	switch {
	case p.Art.Outline.regular() && p.Frame.Faces == nil && p.Frame.Slope.Alike():
		return regular
	case !p.Art.Outline.IsZero() || p.Frame.Bare():
		return polygonal
	}
	return rectangular
}

// shaped reports whether the frame is no plain rectangle.
func (p *Piece) shaped() bool { return !p.Art.Outline.IsZero() || !p.Frame.Plain() }

// checkShape adds what of the piece does not go together with the shape of its art
// or of its frame.
func (p *Piece) checkShape(c *explain.Checker, at explain.Path) {
	if !p.Liner.Plain() {
		c.Add(explain.Problem{Code: NotTogether, Path: at + "/liner", Given: "faces, slope", Accepted: "a plain rectangle; the frame may have them"})
	}
	if !p.shaped() || !c.Clean(at+"/art/outline/by", at+"/frame/faces", at+"/frame/slope") {
		return
	}
	if p.form() != rectangular {
		without := func(there bool, name explain.Path) {
			if there {
				c.Add(explain.Problem{Code: NotTogether, Path: at + name, Given: string(name[1:]), Accepted: "none around an outline that is no rectangle"})
			}
		}
		without(!p.Mat.IsZero(), "/mat")
		without(!p.Spacer.IsZero(), "/spacer")
		without(!p.Liner.IsZero(), "/liner")
	}
	if p.form() == polygonal {
		without := func(there bool, name explain.Path) {
			if there {
				c.Add(explain.Problem{Code: NotTogether, Path: at + name, Given: string(name[1:]), Accepted: "none behind an outline of sides that differ, or with a side that has no rail"})
			}
		}
		without(!p.Hang.IsZero(), "/hang")
		without(p.Frame.Kind == molding.Floater, "/frame/kind")
	}
	if !c.Clean(at+"/art", at+"/frame", at+"/mat", at+"/liner", at+"/spacer") {
		return
	}
	p.checkRails(c, at)
}

// checkRails adds what keeps the rails from being worked out.
func (p *Piece) checkRails(c *explain.Checker, at explain.Path) {
	n := p.sides()
	for _, list := range []struct {
		name explain.Path
		n    int
		one  string
	}{{"/frame/faces", len(p.Frame.Faces), ""}, {"/frame/slope/pitches", len(p.Frame.Slope.Pitches), "1 or "}} {
		if list.n == 0 || list.n == n || list.n == 1 && list.one != "" {
			continue
		}
		code := explain.TooFew
		if list.n > n {
			code = explain.TooMany
		}
		c.Add(explain.Problem{Code: code, Path: at + list.name, Given: explain.Of(list.n).String(), Accepted: list.one + explain.Of(n).String() + ", one for each side"})
	}
	if !c.Clean(at + "/frame") {
		return
	}
	if bareAll(p.Frame) {
		c.Add(explain.Problem{Code: explain.Missing, Path: at + "/frame/faces"})
		return
	}
	if p.Frame.Bare() && !p.Frame.Slope.IsZero() {
		c.Add(explain.Problem{Code: NotTogether, Path: at + "/frame/faces", Given: "0", Accepted: "a rail along each side of a frame that slopes"})
		return
	}
	w := worker{Piece: p, artAt: at + "/art"}
	w.derive()
	x, err := w.shape(w.Art.Greatest())
	addFault(c, err, func(e *plane.Error) explain.Path {
		if e.At >= 0 && e.At < len(p.Frame.Faces) {
			return (at + "/frame/faces").Index(e.At)
		}
		return at + "/frame/face"
	})
	if err == nil && !p.Frame.Slope.Alike() {
		p.checkPitches(c, at+"/frame/slope/pitches", x.panel)
	}
}

// checkPitches adds corners at which pitches differ and that are too straight or too
// sharp for it: no line parts two boards that stand differently in one row.
func (p *Piece) checkPitches(c *explain.Checker, at explain.Path, panel plane.Polygon) {
	n := panel.Len()
	for i := range n {
		corner := molding.SlopedCornerAt(panel.Interior(i), p.Frame.Slope.Of((i+n-1)%n), p.Frame.Slope.Of(i))
		plain := max(corner.Plain, -corner.Plain)
		if corner.Own.Flat() == corner.Other.Flat() || plain >= molding.LeastPlain && plain <= molding.MostPlain {
			continue
		}
		c.Add(explain.Problem{Code: explain.OutOfRange, Path: at.Index(i), Given: panel.Interior(i).String(), Accepted: "the same pitch as the side before, or a corner from " +
			(measure.Turn/2 - 2*molding.MostPlain).String() + " to " + (measure.Turn/2 - 2*molding.LeastPlain).String()})
	}
}

// checkReach adds a package of a mat or a liner that is out of the plane's reach.
func (p *Piece) checkReach(c *explain.Checker, at explain.Path) {
	if !p.shaped() || p.Mat.IsZero() && p.Liner.IsZero() || !c.Clean(at) {
		return
	}
	w := worker{Piece: p, artAt: at + "/art"}
	w.derive()
	pkg, from := w.Art.Greatest(), at+"/liner"
	if !w.Mat.IsZero() {
		pkg, from = w.Mat.Lay(w.given(Shop{})).Blank, at+"/mat"
	}
	if w.lined() {
		pkg = w.Liner.Around(pkg).Outside
	}
	_, err := w.shape(pkg)
	addFault(c, err, func(*plane.Error) explain.Path { return from })
}

func bareAll(f molding.Frame) bool {
	for _, face := range f.Faces {
		if face > 0 {
			return false
		}
	}
	return f.Faces != nil
}

// sides is how many sides the panel has.
func (p *Piece) sides() int {
	switch o := p.Art.Outline; {
	case o.IsZero():
		return 4
	case o.regular():
		return o.Sides
	case o.By == ByAngles:
		return len(o.Edges) + 1
	default:
		return len(o.Edges)
	}
}

// derive takes over the size that follows from the art's outline or sides. Where
// there is neither, nothing changes.
func (w *worker) derive() {
	a := w.Art
	if a.Outline.IsZero() && (a.Sides == molding.OutOfSquare{}) {
		return
	}
	var d ArtPlan
	switch {
	case !a.Outline.IsZero() && a.Outline.regular():
		panel, err := a.Outline.regularPanel(a.Least(), w.Frame)
		if err != nil {
			return
		}
		w.panel = panel
		d.Width = panel.Flats()
		d.Height = d.Width
	case !a.Outline.IsZero():
		outline, err := a.Outline.panel(a.Least())
		if err != nil {
			return
		}
		size := outline.Size()
		d.Width, d.Height = size.Width, size.Height
		d.corners(outline)
	default:
		d = outOfSquare(a.Sides)
	}
	if d.Width <= 0 || d.Height <= 0 {
		return
	}
	w.derived, w.artAt = d, w.at.worked+"/art"
	piece := *w.Piece // the order's own is not changed
	piece.Art.Width, piece.Art.Height, piece.Art.Varies = d.Width, d.Height, d.Varies
	w.Piece = &piece
}

func (d *ArtPlan) corners(outline plane.Polygon) {
	for i := range outline.Len() {
		d.Corners = append(d.Corners, outline.Interior(i))
	}
}

// outOfSquare is what follows from measured sides, but for the turned rectangle.
func outOfSquare(o molding.OutOfSquare) ArtPlan {
	outline, err := o.Outline(sidesWithin)
	if err != nil {
		return ArtPlan{}
	}
	clean, err := outline.LargestUpright()
	if err != nil {
		return ArtPlan{}
	}
	box := outline.Size()
	d := ArtPlan{Width: clean.Size.Width, Height: clean.Size.Height, Clean: clean, Outline: outline.Corners()}
	d.Varies = measure.Size{Width: box.Width - d.Width, Height: box.Height - d.Height}
	d.corners(outline)
	rising, falling := outline.Diagonal(0, 2), outline.Diagonal(1, 3)
	d.Skew = molding.Skew(measure.Size{Width: outline.Side(0).Length, Height: outline.Side(1).Length}, rising, falling)
	return d
}

// turn looks for the largest rectangle with the art turned. It costs more than all
// else, and no figure follows from it.
func (w *worker) turn() {
	if w.derived.Outline == nil {
		return
	}
	outline, err := w.Art.Sides.Outline(sidesWithin)
	if err != nil {
		return
	}
	if clean, err := molding.CleanWithin(outline); err == nil {
		w.derived.Turned = clean.Turned
	}
}

// An exactShape is a frame that is no plain rectangle in exact lengths.
type exactShape struct {
	panel   plane.Polygon
	frame   molding.PolygonFrame
	polygon molding.Polygon
	regular molding.Regular
	slope   []sloped
	ring    molding.Ring
	// outlines is where everything lies, bounds the box around it.
	outlines Outlines
	bounds   measure.Size
}

// A sloped is one sloped side, or several that are cut alike.
type sloped struct {
	sides       []int
	side        molding.SlopedSide
	left, right molding.SlopedCorner
	rail        molding.SlopedRail
}

// shape works out the rails around a package: a rectangle of this size, or the art's
// outline.
func (w *worker) shape(pkg measure.Size) (exactShape, error) {
	var x exactShape
	var err error
	o := w.Art.Outline
	switch {
	case o.IsZero():
		x.panel, err = plane.Box(pkg)
	case o.regular():
		x.panel, err = regularOutline(w.panel, o.Stand)
	default:
		x.panel, err = o.panel(measure.Size{})
	}
	if err != nil {
		return x, err
	}
	n := x.panel.Len()
	x.frame = w.Frame.Polygon(n, w.shop.Saw.Miter)
	if w.form() == regular {
		x.regular = w.seen().AroundRegular(w.panel)
		x.polygon.Panel = x.panel
		if most := molding.MostOff(n); w.Frame.Slope.IsZero() && w.shop.Saw.Off <= most && w.shop.Saw.Off >= -most {
			x.ring = molding.Ring{Sides: n, Long: x.regular.LongPoint, Face: w.Frame.Face, Off: w.shop.Saw.Off}
		}
	} else if x.polygon, err = x.frame.Around(x.panel); err != nil {
		return x, err
	}
	return x, nil
}

// seen is the frame as it looks from straight ahead.
func (w *worker) seen() molding.Frame {
	f := w.Frame
	f.Face = f.Seen(0)
	return f
}

// slopes works out the sides that slope; sides that are cut alike once.
func (w *worker) slopes(x *exactShape) {
	n, f := x.panel.Len(), w.Frame
	if w.form() == regular {
		s := sloped{sides: make([]int, n), side: f.Side(0)}
		for i := range s.sides {
			s.sides[i] = i
		}
		s.left = molding.RegularSlopedCorner(n, s.side.Pitch)
		s.right = s.left
		s.rail = s.side.Rail(x.regular.ShortPoint, s.left, s.right)
		x.slope = []sloped{s}
		return
	}
	for i := range n {
		s := sloped{sides: []int{i}, side: f.Side(i)}
		before, after := f.Slope.Of((i+n-1)%n), f.Slope.Of((i+1)%n)
		s.left = molding.SlopedCornerAt(x.panel.Interior(i), s.side.Pitch, before)
		s.right = molding.SlopedCornerAt(x.panel.Interior((i+1)%n), s.side.Pitch, after)
		s.rail.FrontSight = x.polygon.Rails[i].Sight
		alike := false
		for j := range x.slope {
			if o := &x.slope[j]; o.side == s.side && o.left == s.left && o.right == s.right && o.rail.FrontSight == s.rail.FrontSight {
				o.sides, alike = append(o.sides, i), true
				break
			}
		}
		if !alike {
			s.rail = s.side.Rail(s.rail.FrontSight, s.left, s.right)
			x.slope = append(x.slope, s)
		}
	}
}

// slopeOf is how side i slopes.
func (x *exactShape) slopeOf(i int) (at int, s *sloped) {
	for k := range x.slope {
		for _, side := range x.slope[k].sides {
			if side == i {
				return k, &x.slope[k]
			}
		}
	}
	return 0, nil
}

// outside is how far the frame reaches along each dimension: the longer of two rails
// of a rectangle.
func (x *exactShape) outside() measure.Size {
	along := func(i int) measure.Length {
		if _, s := x.slopeOf(i); s != nil {
			return s.rail.FrontRim
		}
		if i >= len(x.polygon.Rails) {
			return 0
		}
		return x.polygon.Rails[i].Outer
	}
	return measure.Size{Width: max(along(0), along(2)), Height: max(along(1), along(3))}
}

package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// exactShape works out the rails of a frame that is no plain rectangle, and how far
// it reaches. [Piece.check] has seen that it can be.
func (w *worker) exactShape(x *exactPiece) {
	pkg := x.frame.Package
	x.shape, _ = w.shape(pkg)
	if !w.Frame.Slope.IsZero() {
		w.slopes(&x.shape)
	}
	switch w.form() {
	case rectangular:
		x.frame.Outside = x.shape.outside()
	case regular:
		outside := x.shape.regular.Outside
		x.frame.Outside = measure.Size{Width: outside, Height: outside}
	}
	x.shape.outlines = w.outlines(&x.shape)
	x.shape.bounds = x.shape.outlines.bounds()
	if !w.lined() {
		x.inner = x.frame
	}
}

// shapedBody is the body of a layer behind a regular outline; that of other outlines
// is not known where it was not weighed.
func (w *worker) shapedBody(x exactPiece, l layer, thick dim) body {
	if l.part == ArtLayer && w.Art.Mass != 0 {
		return w.artBody(thick)
	}
	if w.form() != regular || l.part == ArtLayer && w.Art.Outline.By == ByAround && w.Art.Kind != Mirror {
		return body{}
	}
	var b body
	switch l.part {
	case ArtLayer:
		b = w.artBody(thick)
	case GlazingLayer:
		b = sheetBody(w.layerSize(x, l), thick, string(w.Glazing.Material))
		b.thicker = material.HeaviestThickness(string(w.Glazing.Material), l.thickness) - l.thickness
	case MountLayer:
		b = sheetBody(w.layerSize(x, l), thick, string(w.Mount.Material))
	case BackingLayer:
		b = sheetBody(w.layerSize(x, l), thick, string(w.Backing.Material))
	}
	if w.Art.Kind == Canvas && l.part == ArtLayer {
		return body{} // bars of another outline than four
	}
	// A regular outline is n triangles of a side and half its size across flats.
	saw := x.shape.regular.Saw
	for i := range b.boxes {
		flats := b.boxes[i].long
		b.boxes[i].times, b.boxes[i].over = w.panel.Sides, 4
		b.boxes[i].wide = dim{value: flats.value.Tan(saw), key: "panel_side"}
	}
	return b
}

// shapedRails are the rails of a frame that is no plain rectangle, each of its mean
// length. What the rabbet takes out is left in, so that the frame is rather too heavy.
func (w *worker) shapedRails(x exactPiece) body {
	m, ok := material.Of(string(w.Frame.Wood))
	if !ok {
		return body{}
	}
	b := body{material: m}
	at, shape := w.at.worked+"/shape", &x.shape
	field := func(l measure.Length, name string) dim {
		return dim{value: l, key: "molding_height", root: w.at.order, group: "/frame/height"}
	}
	if !w.Frame.Slope.IsZero() {
		for k, s := range shape.slope {
			here := (at + "/slope").Index(k)
			face := dim{value: s.side.Face, key: "face", root: here, group: "/side/face"}
			thick := dim{value: s.side.Thickness, key: "thickness", root: here, group: "/side/thickness"}
			for _, edge := range [...]dim{
				{value: s.rail.FrontSight, key: "front_sight", root: here, group: "/front_sight"},
				{value: s.rail.FrontRim, key: "front_rim", root: here, group: "/front_rim"},
				{value: s.rail.BackSight, key: "back_sight", root: here, group: "/back_sight"},
				{value: s.rail.BackRim, key: "back_rim", root: here, group: "/back_rim"},
			} {
				if edge.value <= 0 || face.value <= 0 {
					continue // a side that cannot be: its note says so
				}
				b.boxes = append(b.boxes, box{times: len(s.sides), over: 4, long: edge, wide: face, thick: thick})
			}
		}
		return b
	}
	if w.Frame.Height == 0 {
		return body{}
	}
	height := field(w.Frame.Height, "/height")
	add := func(n int, face dim, edges ...dim) {
		for _, edge := range edges {
			if edge.value <= 0 {
				continue
			}
			b.boxes = append(b.boxes, box{times: n, over: 2, long: edge, wide: face, thick: height})
		}
	}
	if w.form() == regular {
		face := dim{value: w.Frame.Face, key: "face", root: w.at.order, group: "/frame/face"}
		add(w.panel.Sides, face,
			dim{value: shape.regular.LongPoint, key: "long_point", root: at, group: "/regular/long_point"},
			dim{value: shape.regular.ShortPoint, key: "short_point", root: at, group: "/regular/short_point"})
		return b
	}
	for i, r := range shape.polygon.Rails {
		if r.IsZero() {
			continue
		}
		here := (at + "/rails").Index(i)
		face := dim{value: r.Face, key: "face", root: (at + "/frame/sections").Index(i), group: "/face"}
		add(1, face,
			dim{value: r.Outer, key: "outer_edge", root: here, group: "/outer"},
			dim{value: r.Sight, key: "sight_edge", root: here, group: "/sight"})
	}
	return b
}

// hangFace is how wide the narrower of the two rails looks that hangers go into, and
// where that stands.
func (w *worker) hangFace(x *exactShape) (measure.Length, explain.Path) {
	i, at := 1, w.at.worked+"/shape"
	if w.Frame.Seen(3) < w.Frame.Seen(1) {
		i = 3
	}
	switch {
	case w.form() == regular && w.Frame.Slope.IsZero():
		return w.Frame.Face, w.at.order + "/frame/face"
	case w.form() == regular:
		return w.Frame.Seen(0), at + "/seen/face"
	case w.Frame.Slope.IsZero():
		return w.Frame.FaceOf(i), (at + "/frame/sections").Index(i) + "/face"
	}
	k, _ := x.slopeOf(i)
	return w.Frame.Seen(i), (at + "/slope").Index(k) + "/run"
}

// outlines is where everything lies; nothing where it cannot be drawn.
func (w *worker) outlines(x *exactShape) Outlines {
	if w.form() != regular && w.Frame.Slope.IsZero() {
		return flatOutlines(x)
	}
	n := x.panel.Len()
	moves, outer := make([]measure.Length, n), make([]measure.Length, n)
	half, _ := w.Frame.Room().Half()
	for i := range n {
		if w.Frame.FaceOf(i) > 0 {
			moves[i] = half - w.Frame.Lip
			outer[i] = w.Frame.Seen(i)
		}
	}
	sight, err := x.panel.Offset(moves...)
	if err != nil {
		return Outlines{Panel: x.panel.Corners()}
	}
	o := Outlines{Panel: x.panel.Corners(), Sight: sight.Corners(), Rails: make([][]plane.Point, n)}
	clockwise := x.panel.Clockwise()
	for i := range n {
		if w.Frame.FaceOf(i) == 0 {
			continue
		}
		start, finish := w.ends(x, i)
		o.Rails[i] = railCorners(sight.Corner(i), sight.Corner(i+1), outer[i], start, finish, clockwise)
	}
	return o
}

// ends is how much farther a rail's outer edge reaches at its two ends than its sight
// edge, seen from straight ahead.
func (w *worker) ends(x *exactShape, i int) (start, finish measure.Length) {
	if w.form() == regular {
		half, rest := x.regular.Growth.Half()
		return half, half + rest
	}
	if _, s := x.slopeOf(i); s != nil {
		n := x.panel.Len()
		grow := func(corner, other int) measure.Length {
			return plane.Growth(w.Frame.Seen(i), w.Frame.Seen(other), x.panel.Turn(corner))
		}
		return grow(i, (i+n-1)%n), grow(i+1, (i+1)%n)
	}
	half, rest := x.regular.Growth.Half()
	return half, half + rest
}

// flatOutlines is where the rails lie of a frame whose rails differ.
func flatOutlines(x *exactShape) Outlines {
	o := Outlines{Panel: x.panel.Corners()}
	sight, err := x.frame.SightEdge(x.panel)
	if err != nil {
		return o
	}
	o.Sight, o.Rails = sight.Corners(), make([][]plane.Point, x.panel.Len())
	for i, r := range x.frame.Lie(x.polygon) {
		if !x.polygon.Rails[i].IsZero() {
			o.Rails[i] = []plane.Point{r.Sight[0], r.Sight[1], r.Outer[1], r.Outer[0]}
		}
	}
	return o
}

// railCorners are the corners of a rail: its sight edge, and its outer edge back.
func railCorners(a, b plane.Point, face, start, finish measure.Length, clockwise bool) []plane.Point {
	dx, dy := b.X-a.X, b.Y-a.Y
	long := measure.Hypot(dx, dy)
	if long == 0 {
		return nil
	}
	along := func(l measure.Length) (x, y measure.Length) {
		x, _ = l.Scale(int64(dx), int64(long))
		y, _ = l.Scale(int64(dy), int64(long))
		return x, y
	}
	fx, fy := along(face)
	out := plane.Point{X: fy, Y: -fx} // to the right of the way, which is outward
	if clockwise {
		out = plane.Point{X: -fy, Y: fx}
	}
	sx, sy := along(start)
	ex, ey := along(finish)
	return []plane.Point{a, b, {X: b.X + ex + out.X, Y: b.Y + ey + out.Y}, {X: a.X - sx + out.X, Y: a.Y - sy + out.Y}}
}

// bounds is the upright box around all rails.
func (o Outlines) bounds() measure.Size {
	first, least, most := true, plane.Point{}, plane.Point{}
	for _, rail := range o.Rails {
		for _, p := range rail {
			if first {
				least, most, first = p, p, false
			}
			least = plane.Point{X: min(least.X, p.X), Y: min(least.Y, p.Y)}
			most = plane.Point{X: max(most.X, p.X), Y: max(most.Y, p.Y)}
		}
	}
	return measure.Size{Width: most.X - least.X, Height: most.Y - least.Y}
}

// gapsOf are the settings that the saw's scales have nearest to a cut.
func gapsOf(s *sloped, c molding.SlopedCorner, p molding.Position) []NearestPlan {
	list := make([]NearestPlan, 0, 3)
	for _, r := range c.RoundedToSteps(s.side, p) {
		list = append(list, NearestPlan{r.Step, r.Setting, widest(r.Gap)})
	}
	return list
}

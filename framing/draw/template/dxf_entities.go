package template

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// path writes a polyline. No piece of it turns by more than half a turn, so that no
// bulge is more than 1.
func (d *dxf) path(p Path) {
	d.pair(0, "POLYLINE")
	d.pair(8, string(p.Layer))
	d.pair(66, "1")
	d.point(10, plane.Point{})
	if p.Closed {
		d.pair(70, "1")
	} else {
		d.pair(70, "0")
	}
	p.arcs(func(a arc) {
		a.split(measure.Turn/2, func(a arc) { d.vertex(p.Layer, a.from, a.sweep) })
	})
	if !p.Closed {
		d.vertex(p.Layer, p.Vertices[len(p.Vertices)-1].Point, 0)
	}
	d.pair(0, "SEQEND")
	d.pair(8, string(p.Layer))
}

// vertex writes one with its bulge, the tangent of a quarter of the angle that the arc
// to the next one turns through, above nothing to the left.
func (d *dxf) vertex(layer Layer, at plane.Point, sweep measure.Angle) {
	d.pair(0, "VERTEX")
	d.pair(8, string(layer))
	d.point(10, at)
	if sweep != 0 {
		d.code(42)
		const one = 1_000_000_000_000_000
		d.b = append(appendReal(d.b, int64(measure.Length(one).Tan(sweep/4)), 15), '\n')
	}
}

// spot writes a cross of two lines, and the circle where there is one.
func (d *dxf) spot(s Spot) {
	arm := s.arm()
	d.line(s.Layer, plane.Point{X: s.At.X - arm, Y: s.At.Y}, plane.Point{X: s.At.X + arm, Y: s.At.Y})
	d.line(s.Layer, plane.Point{X: s.At.X, Y: s.At.Y - arm}, plane.Point{X: s.At.X, Y: s.At.Y + arm})
	if s.Diameter > 0 {
		d.pair(0, "CIRCLE")
		d.pair(8, string(s.Layer))
		d.point(10, s.At)
		d.code(40)
		d.b = append(appendReal(d.b, int64(s.Diameter)*5, 7), '\n') // a half may have half a nanometer
	}
	d.pair(0, "POINT")
	d.pair(8, string(s.Layer))
	d.point(10, s.At)
}

func (d *dxf) line(layer Layer, from, to plane.Point) {
	d.pair(0, "LINE")
	d.pair(8, string(layer))
	d.point(10, from)
	d.point(11, to)
}

func (d *dxf) word(w Word) {
	text := dxfText(w.Text)
	if text == "" {
		return
	}
	d.pair(0, "TEXT")
	d.pair(8, string(Text))
	d.point(10, w.At)
	d.number(40, w.Height)
	d.pair(1, text)
	if w.Centered {
		d.pair(72, "1")
		d.point(11, w.At)
	}
}

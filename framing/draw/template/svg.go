package template

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A look is how the lines of a layer are drawn.
type look struct {
	layer Layer
	color string
	wide  measure.Length
	dash  []measure.Length
}

var looks = [...]look{
	{layer: Cut, color: "#000000", wide: mm / 4},
	{layer: Mark, color: "#0050a0", wide: mm / 5},
	{layer: Center, color: "#007030", wide: 3 * mm / 20, dash: []measure.Length{8 * mm, 2 * mm, 2 * mm, 2 * mm}},
	{layer: Hidden, color: "#606060", wide: mm / 5, dash: []measure.Length{3 * mm, 3 * mm / 2}},
	{layer: Text, color: "#000000", wide: mm / 5},
	{layer: Proof, color: "#a03000", wide: mm / 5},
}

// SVG writes the template with its size in millimeters: a unit of its coordinates is a
// millimeter, written to 0.0001 mm. Each layer is a group whose id is the layer's
// name. Arcs are arcs. Text stays text, in the reader's sans serif.
func (t Template) SVG() ([]byte, error) {
	if err := t.Check(); err != nil {
		return nil, err
	}
	title := t.Title
	desc := english(wordUnits)
	t = t.footed()
	least, most := t.extent()
	const rim = 5 * mm
	least, most = plane.Point{X: least.X - rim, Y: least.Y - rim}, plane.Point{X: most.X + rim, Y: most.Y + rim}
	s := svg{}
	s.text(`<svg xmlns="http://www.w3.org/2000/svg" width="`)
	s.number(most.X - least.X)
	s.text(`mm" height="`)
	s.number(most.Y - least.Y)
	s.text(`mm" viewBox="`)
	s.point("", plane.Point{X: least.X, Y: most.Y})
	s.text(" ")
	s.number(most.X - least.X)
	s.text(" ")
	s.number(most.Y - least.Y)
	s.text("\">\n<title>")
	s.b = appendXML(s.b, title)
	s.text("</title>\n<desc>")
	s.b = appendXML(s.b, desc)
	s.text("</desc>\n")
	for _, l := range looks {
		s.layer(t, l)
	}
	s.text("</svg>\n")
	return s.b, nil
}

type svg struct{ b []byte }

func (s *svg) text(text string) { s.b = append(s.b, text...) }

func (s *svg) number(l measure.Length) { s.b = appendMillimeters(s.b, l, 4) }

// point writes a point, which has its Y downward here.
func (s *svg) point(before string, p plane.Point) {
	s.text(before)
	s.number(p.X)
	s.text(" ")
	s.number(-p.Y)
}

// layer writes a group with what t has on a layer, if that is anything.
func (s *svg) layer(t Template, l look) {
	begin := len(s.b)
	s.text(`<g id="` + string(l.layer) + `" fill="none" stroke="` + l.color + `" stroke-width="`)
	s.number(l.wide)
	if l.dash != nil {
		s.text(`" stroke-dasharray="`)
		for i, d := range l.dash {
			if i > 0 {
				s.text(" ")
			}
			s.number(d)
		}
	}
	s.text("\">\n")
	empty := len(s.b)
	for _, p := range t.Paths {
		if p.Layer == l.layer {
			s.path(p.flat(exact))
		}
	}
	for _, p := range t.Spots {
		if p.Layer == l.layer {
			s.spot(p)
		}
	}
	if l.layer == Text && len(t.Words) > 0 {
		s.text(`<g font-family="Helvetica, Arial, sans-serif" fill="` + l.color + "\" stroke=\"none\">\n")
		for _, w := range t.Words {
			s.word(w)
		}
		s.text("</g>\n")
	}
	if len(s.b) == empty {
		s.b = s.b[:begin]
		return
	}
	s.text("</g>\n")
}

func (s *svg) word(w Word) {
	s.text(`<text x="`)
	s.number(w.At.X)
	s.text(`" y="`)
	s.number(-w.At.Y)
	s.text(`" font-size="`)
	s.number(size(w.Height))
	if w.Centered {
		s.text(`" text-anchor="middle`)
	}
	s.text(`">`)
	s.b = appendXML(s.b, w.Text)
	s.text("</text>\n")
}

// path writes arcs of up to a right angle each: a larger one would move by more than
// what its radius is rounded by. One that is nearly straight is a Bezier curve.
func (s *svg) path(p Path) {
	s.text(`<path d="`)
	s.point("M", p.Vertices[0].Point)
	p.arcs(func(a arc) {
		switch {
		case a.sweep == 0:
			s.point("L", a.to)
		case -measure.Degree < a.sweep && a.sweep < measure.Degree:
			one, two := a.controls()
			s.point("C", one)
			s.point(" ", two)
			s.point(" ", a.to)
		default:
			a.split(measure.RightAngle, func(a arc) {
				r := a.radius()
				s.point("A", plane.Point{X: r, Y: -r})
				if a.sweep > 0 {
					s.point(" 0 0 0 ", a.to)
				} else {
					s.point(" 0 0 1 ", a.to)
				}
			})
		}
	})
	if p.Closed {
		s.text("Z")
	}
	s.text("\"/>\n")
}

func (s *svg) spot(p Spot) {
	arm := p.arm()
	s.point(`<path d="M`, plane.Point{X: p.At.X - arm, Y: p.At.Y})
	s.point("L", plane.Point{X: p.At.X + arm, Y: p.At.Y})
	s.point("M", plane.Point{X: p.At.X, Y: p.At.Y - arm})
	s.point("L", plane.Point{X: p.At.X, Y: p.At.Y + arm})
	s.text("\"/>\n")
	if p.Diameter > 0 {
		s.text(`<circle cx="`)
		s.number(p.At.X)
		s.text(`" cy="`)
		s.number(-p.At.Y)
		s.text(`" r="`)
		s.number(p.Diameter / 2)
		s.text("\"/>\n")
	}
}

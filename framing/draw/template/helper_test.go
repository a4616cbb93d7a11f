package template_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

const (
	mm = measure.Millimeter
	in = measure.Inch
)

func must[T any](t testing.TB) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func at(x, y measure.Length) plane.Point { return plane.Point{X: x, Y: y} }

// hexagon is a frame of six rails.
func hexagon(t testing.TB) template.Template {
	p := must[plane.Polygon](t)(plane.Regular(6, plane.OneSide, 12*in))
	s := must[template.Template](t)(template.OfPolygon(p, 2*in))
	s.Title, s.Notes = "Hexagon of 12 in, face 2 in", []string{"Seen from the front", "Rails are numbered along the sides"}
	return s
}

// arched is a window with a round head, and a hole whose arcs turn the other way, one
// through more than half a turn.
func arched() template.Template {
	return template.Template{
		Title: "Arch, 300 mm wide",
		Paths: []template.Path{
			{Layer: template.Cut, Closed: true, Vertices: []template.Vertex{
				{Point: at(0, 0)}, {Point: at(300*mm, 0)},
				{Point: at(300*mm, 200*mm), Sweep: 180 * measure.Degree}, {Point: at(0, 200*mm)},
			}},
			{Layer: template.Hidden, Closed: true, Vertices: []template.Vertex{
				{Point: at(100*mm, 100*mm), Sweep: -270 * measure.Degree}, {Point: at(150*mm, 150*mm), Sweep: -90 * measure.Degree},
			}},
			template.Line(template.Center, at(150*mm, -5*mm), at(150*mm, 355*mm)),
		},
		Spots: []template.Spot{{Layer: template.Mark, At: at(150*mm, 200*mm), Diameter: 5 * mm}},
		Words: []template.Word{{At: at(150*mm, 30*mm), Height: 8 * mm, Centered: true, Text: "up ↑ 10 % < 20 %%d"}},
	}
}

func block(t testing.TB) template.Template {
	s := must[template.Template](t)(template.CornerBlock(4*in, 3*in, 90*measure.Degree))
	s.Title = "Corner block"
	return s
}

func strip(t testing.TB) template.Template {
	s := must[template.Template](t)(template.HangerStrip(600*mm, 40*mm,
		template.Place{At: 100 * mm, Diameter: 4 * mm, Word: "ring"}, template.Place{At: 300 * mm, Word: "nail"}, template.Place{At: 500 * mm, Diameter: 4 * mm, Word: "ring"}))
	s.Title = "Hangers of “Żółw”, 李"
	return s
}

// A sample is a template and how long its ovals are, by the layer, in mm.
type sample struct {
	template.Template
	ovals map[template.Layer]float64
}

// ring is an oval frame, equally wide all round, with its axes.
func ring(t testing.TB) sample {
	sight := plane.Ellipse{Width: 14 * in, Height: 10 * in}
	s := sample{template.Template{Title: "Oval, sight 14 x 10 in, face 1 1/2 in"}, make(map[template.Layer]float64)}
	for _, row := range []struct {
		layer template.Layer
		by    measure.Length
	}{{template.Cut, 3 * in / 2}, {template.Mark, 0}} {
		edge := must[plane.Parallel](t)(sight.Parallel(row.by))
		s.ovals[row.layer] = float64(edge.Perimeter()) / 1e6
		s.Paths = append(s.Paths, must[template.Path](t)(template.Oval(row.layer, at(9*in, 7*in), edge)))
	}
	s.Paths = append(s.Paths, template.Line(template.Center, at(in/2, 7*in), at(35*in/2, 7*in)), template.Line(template.Center, at(9*in, in/2), at(9*in, 27*in/2)))
	return s
}

// arches are a pointed arch and the sight edge within it.
func arches(t testing.TB) template.Template {
	s := template.Template{Title: "Pointed arch"}
	for _, row := range []struct {
		layer template.Layer
		by    measure.Length
	}{{template.Cut, 30 * mm}, {template.Cut, 0}} {
		edge := must[plane.ArchParallel](t)(plane.Arch{Kind: plane.Pointed, Width: 240 * mm, Height: 400 * mm}.Parallel(row.by))
		s.Paths = append(s.Paths, must[template.Path](t)(template.Arch(row.layer, at(0, 0), edge)))
	}
	return s
}

// set is what one frame may need.
func set(t testing.TB) map[string]sample {
	return map[string]sample{
		"hexagon": {Template: hexagon(t)}, "arch": {Template: arched()}, "block": {Template: block(t)},
		"strip": {Template: strip(t)}, "oval": ring(t), "pointed": {Template: arches(t)},
	}
}

// lengths is how long the paths of each layer are, worked out apart: straight pieces
// by their ends, arcs by radius and angle in floats, ovals by their perimeters.
func lengths(s sample) map[template.Layer]float64 {
	sums := make(map[template.Layer]float64)
	for layer, long := range s.ovals {
		sums[layer] = long
	}
	for _, p := range s.Paths {
		for i, v := range p.Vertices {
			if !p.Closed && i+1 == len(p.Vertices) {
				break
			}
			w := p.Vertices[(i+1)%len(p.Vertices)]
			sums[p.Layer] += arcLength(float64(w.X-v.X)/1e6, float64(w.Y-v.Y)/1e6, float64(v.Sweep)/1e9)
		}
	}
	return sums
}

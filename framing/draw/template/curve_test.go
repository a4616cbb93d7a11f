package template_test

import (
	"errors"
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// The arcs of an oval in DXF lie no farther from the ellipse than was asked for: seen at
// many points of each, by the ellipse's equation, whose value over the length of its
// gradient is the distance of a near point.
func TestOvalWithin(t *testing.T) {
	for _, e := range []plane.Ellipse{
		{Width: 16 * in, Height: 20 * in}, {Width: 10 * mm, Height: 8 * mm}, {Width: 500 * mm, Height: 500 * mm},
		{Width: 3 * measure.Meter, Height: 1 * measure.Meter}, {Width: 200 * mm, Height: 20 * mm}, {Width: 300 * mm, Height: 299 * mm},
	} {
		for _, within := range []measure.Length{measure.Micrometer, 10 * measure.Micrometer, mm / 10} {
			edge := must[plane.Parallel](t)(e.Parallel(0))
			s := template.Template{Paths: []template.Path{must[template.Path](t)(template.Oval(template.Cut, at(0, 0), edge))}}
			a, b := float64(e.Width)/2e6, float64(e.Height)/2e6
			most, arcs := 0.0, 0
			for _, v := range readDXF(t, must[[]byte](t)(s.DXF(within))).arcs {
				if v.y0 < -b-1 {
					continue // the line of 100 mm
				}
				arcs++
				for i := range 50 {
					x, y := v.at(float64(i) / 50)
					value := x*x/a/a + y*y/b/b - 1
					most = math.Max(most, math.Abs(value)/(2*math.Hypot(x/a/a, y/b/b)))
				}
			}
			if most > float64(within)/1e6 || arcs < 4 || arcs > 1000 {
				t.Errorf("%v within %v: off by %.6f mm, %d arcs", e, within, most, arcs)
			}
		}
	}
}

// Every file of an oval beside an ellipse, and of an arch, is as long as the curve is and
// as large.
func TestCurves(t *testing.T) {
	type curve struct {
		path template.Path
		long measure.Length
		size measure.Size
	}
	curves := make(map[string]curve)
	for name, row := range map[string]struct {
		e  plane.Ellipse
		by measure.Length
	}{
		"ellipse": {plane.Ellipse{Width: 10 * in, Height: 8 * in}, 0},
		"outward": {plane.Ellipse{Width: 10 * in, Height: 8 * in}, 2 * in},
		"inward":  {plane.Ellipse{Width: 10 * in, Height: 8 * in}, -3 * in},
		"circle":  {plane.Ellipse{Width: 301*mm + 1, Height: 301*mm + 1}, 0},
		"narrow":  {plane.Ellipse{Width: 20 * mm, Height: 300 * mm}, 0},
	} {
		p := must[plane.Parallel](t)(row.e.Parallel(row.by))
		curves[name] = curve{must[template.Path](t)(template.Oval(template.Cut, at(31*mm, -7*mm), p)), p.Perimeter(), p.Size()}
	}
	for name, row := range map[string]struct {
		a  plane.Arch
		by measure.Length
	}{
		"half round":       {plane.Arch{Kind: plane.HalfRound, Width: 300 * mm, Height: 400 * mm}, 40 * mm},
		"half round alone": {plane.Arch{Kind: plane.HalfRound, Width: 300 * mm, Height: 150 * mm}, 0},
		"segmental":        {plane.Arch{Kind: plane.Segmental, Width: 300 * mm, Height: 400 * mm, Rise: 60 * mm}, -20 * mm},
		"horseshoe":        {plane.Arch{Kind: plane.Horseshoe, Width: 300 * mm, Height: 400 * mm, Rise: 250 * mm}, 10 * mm},
		"pointed":          {plane.Arch{Kind: plane.Pointed, Width: 300 * mm, Height: 400 * mm}, 33 * mm},
		"lancet":           {plane.Arch{Kind: plane.Pointed, Width: 201 * mm, Height: 400 * mm, Rise: 400 * mm}, 0},
	} {
		p := must[plane.ArchParallel](t)(row.a.Parallel(row.by))
		curves[name] = curve{must[template.Path](t)(template.Arch(template.Cut, at(31*mm, -7*mm), p)), p.Perimeter(), p.Size()}
	}
	for name, c := range curves {
		t.Run(name, func(t *testing.T) {
			s := template.Template{Paths: []template.Path{c.path}}
			want := float64(c.long) / 1e6
			svg := readSVG(t, must[[]byte](t)(s.SVG()))
			pdf := readPDF(t, must[[]byte](t)(s.PDF(template.A4, template.Overlap)))
			long, box := strokes(t, pdf.forms(t)["cut"])
			for file, got := range map[string]float64{
				"SVG": svg.layers[template.Cut], "DXF": readDXF(t, must[[]byte](t)(s.DXF(0))).layers[template.Cut], "PDF": long,
			} {
				if math.Abs(got-want) > 0.01 {
					t.Errorf("%s is %.4f mm long, want %.4f", file, got, want)
				}
			}
			// The line of 100 mm and words stand below, and are narrower.
			if wide, want := svg.width-10, float64(c.size.Width)/1e6; want > 101 && math.Abs(wide-want) > 0.001 {
				t.Errorf("SVG is %.4f mm wide, want %.4f", wide, want)
			}
			if high, want := svg.height-29, float64(c.size.Height)/1e6; math.Abs(high-want) > 0.001 {
				t.Errorf("SVG is %.4f mm high, want %.4f", high, want)
			}
			// Ends of Bezier curves stand at the ends of the axes of an oval.
			if high, want := box[3]-box[1], float64(c.size.Height)/1e6; math.Abs(high-want) > 0.001 {
				t.Errorf("PDF is %.4f mm high, want %.4f", high, want)
			}
		})
	}
}

func TestCurvesRefused(t *testing.T) {
	e := plane.Ellipse{Width: 10 * in, Height: 8 * in}
	for name, err := range map[string]error{
		"no oval":      second(template.Oval(template.Cut, at(0, 0), plane.Parallel{})),
		"a fold":       second(template.Oval(template.Cut, at(0, 0), plane.Parallel{Of: e, By: -4 * in})),
		"no arch":      second(template.Arch(template.Cut, at(0, 0), plane.ArchParallel{})),
		"nothing left": second(template.Arch(template.Cut, at(0, 0), plane.ArchParallel{Of: plane.Arch{Kind: plane.HalfRound, Width: 2 * in, Height: 3 * in}, By: -in})),
	} {
		var fault *plane.Error
		if !errors.As(err, &fault) {
			t.Errorf("%s: %v", name, err)
		}
	}
	far := must[template.Path](t)(template.Oval(template.Cut, at(plane.Reach, 0), must[plane.Parallel](t)(e.Parallel(0))))
	var problem explain.Problem
	if err := (template.Template{Paths: []template.Path{far}}).Check(); !errors.As(err, &problem) || problem.Path != "/paths/0/middle/x" {
		t.Errorf("far: %v", err)
	}
}

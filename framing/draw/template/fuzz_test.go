package template_test

import (
	"math"
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// FuzzNames: no name breaks a file, and each file has all of it.
func FuzzNames(f *testing.F) {
	for _, name := range []string{"", "Oak", "Żółw", "李 😀", "</svg><!--", "\\(x", "a\n0\nEOF\n", "%%d^J\\U+0041", "\xff\x00\u0085\u2028", "]]>&lt;"} {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		s := bar(100*mm, 100*mm)
		s.Title = name
		s.Words = []template.Word{{Height: 3 * mm, Text: name}}
		if len(name) > template.MaxText {
			if s.Check() == nil {
				t.Fatalf("%d bytes are taken", len(name))
			}
			return
		}
		// What a name comes to in a file: by another way than the package takes.
		want := strings.Map(func(r rune) rune {
			switch {
			case strings.ContainsRune("\t\n\u2028\u2029", r):
				return ' '
			case unicode.IsControl(r), unicode.Is(unicode.Noncharacter_Code_Point, r):
				return -1
			}
			return r
		}, string([]rune(name)))
		svg := readSVG(t, must[[]byte](t)(s.SVG()))
		count := func(texts []string) (n int) {
			for _, text := range texts {
				if text == want {
					n++
				}
			}
			return n
		}
		if svg.title != want || want != "" && count(svg.texts) < 2 {
			t.Errorf("SVG has %q and %q, want %q", svg.title, svg.texts, want)
		}
		dxf := must[[]byte](t)(s.DXF(0))
		if slices.ContainsFunc(dxf, func(c byte) bool { return c > '~' || c < ' ' && c != '\n' }) {
			t.Error("DXF is not ASCII")
		}
		if got := readDXF(t, dxf).layers[template.Cut]; math.Abs(got-400) > near {
			t.Errorf("DXF cuts %g mm", got)
		}
		pdf := readPDF(t, must[[]byte](t)(s.PDF(template.A4, 0)))
		if got := pdf.title(t); got != want {
			t.Errorf("PDF is of %q, want %q", got, want)
		}
	})
}

// FuzzArc: an arc that is taken is as long in every file as it is.
func FuzzArc(f *testing.F) {
	f.Add(int64(0), int64(0), int64(100*mm), int64(0), int64(180*measure.Degree))
	f.Add(int64(-5*mm), int64(7), int64(100*mm), int64(31*mm), int64(-359*measure.Degree))
	f.Add(int64(0), int64(0), int64(100*mm), int64(1), int64(1))
	f.Add(int64(0), int64(0), int64(1), int64(1), int64(measure.Degree))
	f.Fuzz(func(t *testing.T, x0, y0, x1, y1, sweep int64) {
		const most = int64(measure.Meter)
		from, to := at(measure.Length(x0%most), measure.Length(y0%most)), at(measure.Length(x1%most), measure.Length(y1%most))
		s := template.Template{Paths: []template.Path{{Layer: template.Cut, Vertices: []template.Vertex{{Point: from, Sweep: measure.Angle(sweep)}, {Point: to}}}}}
		if s.Check() != nil {
			return
		}
		want := lengths(sample{Template: s})[template.Cut]
		if want > 50_000 {
			return // larger than what is cut from paper
		}
		if got := readDXF(t, must[[]byte](t)(s.DXF(0))).layers[template.Cut]; math.Abs(got-want) > 0.01 {
			t.Errorf("DXF: %.6f mm, want %.6f", got, want)
		}
		if got := readSVG(t, must[[]byte](t)(s.SVG())).layers[template.Cut]; math.Abs(got-want) > 0.01 {
			t.Errorf("SVG: %.6f mm, want %.6f", got, want)
		}
		file, err := s.PDF(template.A4, 0)
		if err != nil {
			return // too large
		}
		d := readPDF(t, file)
		got, box := strokes(t, d.forms(t)["cut"])
		if math.Abs(got-want) > 0.01 || box[0] < 1 || box[1] < 1 {
			t.Errorf("PDF: %.6f mm from %g, %g, want %.6f", got, box[0], box[1], want)
		}
	})
}

// FuzzOval: an oval that is taken, however narrow, is as long in DXF as it is: short of
// it by no more than arcs within the tolerance can be, a thousandth.
func FuzzOval(f *testing.F) {
	f.Add(int64(20*in), int64(16*in), int64(2*in), int64(0))
	f.Add(int64(3*measure.Meter), int64(mm), int64(0), int64(1000))
	f.Add(int64(1), int64(1), int64(0), int64(100_000))
	f.Add(int64(300*mm), int64(300*mm), int64(-149*mm), int64(0))
	f.Fuzz(func(t *testing.T, width, height, by, within int64) {
		const most = int64(3 * measure.Meter)
		edge, err := plane.Ellipse{Width: measure.Length(width % most), Height: measure.Length(height % most)}.Parallel(measure.Length(by % most))
		if err != nil {
			return
		}
		s := template.Template{Paths: []template.Path{must[template.Path](t)(template.Oval(template.Cut, plane.Point{}, edge))}}
		file, err := s.DXF(measure.Length(within % (101 * int64(measure.Micrometer))))
		if err != nil {
			return
		}
		want := float64(edge.Perimeter()) / 1e6
		if got := readDXF(t, file).layers[template.Cut]; math.Abs(got-want) > 0.01+want/1000 {
			t.Errorf("%.6f mm, want %.6f", got, want)
		}
	})
}

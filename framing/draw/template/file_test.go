package template_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// near is how far a length that was read may be from the true one, in mm: the arcs of
// one path are written in numbers that are rounded to 0.0001 mm.
const near = 0.002

// sameLengths holds the layers of a file against the paths of the template. Marks of
// spots are not among the paths.
func sameLengths(t *testing.T, d drawing, s sample) {
	t.Helper()
	want := lengths(s)
	for _, p := range s.Spots {
		want[p.Layer] += 4 * math.Max(3, float64(p.Diameter)/2e6+1)
	}
	want[template.Proof] += 108 // the line of 100 mm, and its ends of 4 mm
	for layer, long := range want {
		if math.Abs(d.layers[layer]-long) > near {
			t.Errorf("%s is %.4f mm long, want %.4f", layer, d.layers[layer], long)
		}
	}
	if len(d.layers) != len(want) {
		t.Errorf("layers %v, want %v", d.layers, want)
	}
}

func TestSVG(t *testing.T) {
	for name, s := range set(t) {
		t.Run(name, func(t *testing.T) {
			d := readSVG(t, must[[]byte](t)(s.SVG()))
			sameLengths(t, d, s)
			if d.title != s.Title || !slices.Contains(d.texts, s.Title) {
				t.Errorf("the title is %q, the texts %q, want %q", d.title, d.texts, s.Title)
			}
			for _, w := range s.Words {
				if !slices.Contains(d.texts, w.Text) {
					t.Errorf("%q is not among %q", w.Text, d.texts)
				}
			}
		})
	}
}

func TestDXF(t *testing.T) {
	for name, s := range set(t) {
		t.Run(name, func(t *testing.T) {
			file := must[[]byte](t)(s.DXF(0))
			sameLengths(t, readDXF(t, file), s)
			for _, line := range []string{"999\nA unit of this drawing is a millimeter; it is at true size.\n", "999\nCurves are arcs no farther from the true ones than: 0.01 mm\n", "\nAC1009\n"} {
				if !strings.Contains(string(file), line) {
					t.Errorf("no %q", line)
				}
			}
			if i := slices.IndexFunc(file, func(c byte) bool { return c > '~' || c < ' ' && c != '\n' }); i >= 0 {
				t.Errorf("byte %d is %#x", i, file[i])
			}
		})
	}
}

// The size of SVG is that of the shape where no word reaches beyond it.
func TestSize(t *testing.T) {
	s := template.Template{Paths: arched().Paths[:1]}
	d := readSVG(t, must[[]byte](t)(s.SVG()))
	// 350 high to the crown; below the line of 100 mm, its words and their descenders
	// 12 + 6 + 1 mm, and a rim of 5 mm around.
	if math.Abs(d.width-310) > 1e-4 || math.Abs(d.height-(350+19+10)) > 1e-4 {
		t.Errorf("%g x %g mm", d.width, d.height)
	}
}

// How text stands in DXF: in ASCII, so that no reader takes it for something else.
func TestTextOfDXF(t *testing.T) {
	for _, row := range []struct{ title, want string }{
		{"Anna's \"Oak\" <&>", "Anna's \"Oak\" <&>"},
		{"Żółw", `\U+017B\U+00F3\U+0142w`},
		{"李", `\U+674E`},
		{"😀", `\U+D83D\U+DE00`},
		{"100 %", "100 %"},
		{"%%d", `%\U+0025d`},
		{"%%%c", `%\U+0025\U+0025c`},
		{`C:\U+0041`, `C:\U+005CU+0041`},
		{"^J", `\U+005EJ`},
		{"a\x00b\x1b\x7f\u0085c", "abc"},
		{"a\nb\tc\r", "a b c"},
		{"a\xffb", `a\U+FFFDb`},
		{"\uffff\ufdd0x", "x"},
		{"مرحبا", `\U+0645\U+0631\U+062D\U+0628\U+0627`},
	} {
		s := arched()
		s.Title, s.Words = row.title, nil
		d := readDXF(t, must[[]byte](t)(s.DXF(0)))
		if !slices.Contains(d.texts, row.want) {
			t.Errorf("%q is among %q as none, want %q", row.title, d.texts, row.want)
		}
	}
}

// A polyline in DXF bulges by the tangent of a quarter of the angle.
func TestBulge(t *testing.T) {
	for _, row := range []struct {
		sweep measure.Angle
		want  string
	}{
		{180 * measure.Degree, "1.0"},
		{-180 * measure.Degree, "-1.0"},
		{90 * measure.Degree, "0.414213562373095"}, // the root of 2 less 1
		{120 * measure.Degree, "0.577350269189626"},
		{0, ""},
	} {
		s := template.Template{Paths: []template.Path{{Layer: template.Cut, Vertices: []template.Vertex{{Sweep: row.sweep}, {Point: at(100*mm, 0)}}}}}
		file := string(must[[]byte](t)(s.DXF(0)))
		if _, after, _ := strings.Cut(file, "\n42\n3.0\n3\n"); strings.Contains(after, "\n42\n") != (row.want != "") || !strings.Contains(after, "\n42\n"+row.want) && row.want != "" {
			t.Errorf("%v is not %q", row.sweep, row.want)
		}
	}
}

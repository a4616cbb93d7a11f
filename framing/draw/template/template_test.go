package template_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Each thing that a template may not hold is refused by its place, and the files with
// it; without it the template is taken.
func TestRefused(t *testing.T) {
	far := plane.Reach + 1
	for _, row := range []struct {
		name string
		turn func(*template.Template)
		code explain.Code
		path explain.Path
	}{
		{"nothing", func(s *template.Template) { s.Paths, s.Spots = nil, nil }, explain.TooFew, "/paths"},
		{"one vertex", func(s *template.Template) { s.Paths[0].Vertices = s.Paths[0].Vertices[:1] }, explain.TooFew, "/paths/0/vertices"},
		{"far", func(s *template.Template) { s.Paths[0].Vertices[1].X = far }, explain.OutOfRange, "/paths/0/vertices/1/x"},
		{"a whole turn", func(s *template.Template) { s.Paths[0].Vertices[2].Sweep = measure.Turn }, explain.OutOfRange, "/paths/0/vertices/2/sweep"},
		{"an arc of no chord", func(s *template.Template) { s.Paths[0].Vertices[3] = s.Paths[0].Vertices[2] }, explain.OutOfRange, "/paths/0/vertices/2/sweep"},
		{"an arc out of reach", func(s *template.Template) { s.Paths[0].Vertices[2].Sweep = measure.Turn - 1 }, explain.OutOfRange, "/paths/0/vertices/2/sweep"},
		{"a layer", func(s *template.Template) { s.Paths[1].Layer = "Cut" }, explain.NotAChoice, "/paths/1/layer"},
		{"a spot's layer", func(s *template.Template) { s.Spots[0].Layer = "" }, explain.NotAChoice, "/spots/0/layer"},
		{"a spot's size", func(s *template.Template) { s.Spots[0].Diameter = -1 }, explain.OutOfRange, "/spots/0/diameter"},
		{"a spot far", func(s *template.Template) { s.Spots[0].At.Y = -far }, explain.OutOfRange, "/spots/0/at/y"},
		{"a word far", func(s *template.Template) { s.Words[0].At.X = far }, explain.OutOfRange, "/words/0/at/x"},
		{"small letters", func(s *template.Template) { s.Words[0].Height = 0 }, explain.OutOfRange, "/words/0/height"},
		{"a long word", func(s *template.Template) { s.Words[0].Text = strings.Repeat("a", 501) }, explain.TextTooLong, "/words/0/text"},
		{"a long title", func(s *template.Template) { s.Title = strings.Repeat("a", 501) }, explain.TextTooLong, "/title"},
		{"a long note", func(s *template.Template) { s.Notes = []string{strings.Repeat("a", 501)} }, explain.TextTooLong, "/notes/0"},
		{"notes", func(s *template.Template) { s.Notes = make([]string, 41) }, explain.TooMany, "/notes"},
		{"paths", func(s *template.Template) { s.Paths = make([]template.Path, 1001) }, explain.TooMany, "/paths"},
		{"vertices", func(s *template.Template) { s.Paths[0].Vertices = make([]template.Vertex, 100_001) }, explain.TooMany, "/paths"},
		{"spots", func(s *template.Template) { s.Spots = make([]template.Spot, 1001) }, explain.TooMany, "/spots"},
		{"words", func(s *template.Template) { s.Words = make([]template.Word, 1001) }, explain.TooMany, "/words"},
	} {
		t.Run(row.name, func(t *testing.T) {
			s := arched()
			if err := s.Check(); err != nil {
				t.Fatal(err)
			}
			row.turn(&s)
			_, svg := s.SVG()
			_, dxf := s.DXF(0)
			for _, err := range []error{s.Check(), svg, dxf} {
				var problem explain.Problem
				if !errors.As(err, &problem) || problem.Code != row.code || problem.Path != row.path {
					t.Errorf("%v, want %s at %s", err, row.code, row.path)
				}
			}
		})
	}
}

func TestWithin(t *testing.T) {
	for _, row := range []struct {
		within measure.Length
		ok     bool
	}{{0, true}, {999, false}, {1000, true}, {mm / 10, true}, {mm/10 + 1, false}, {-1, false}} {
		if _, err := arched().DXF(row.within); (err == nil) != row.ok {
			t.Errorf("%v: %v", row.within, err)
		}
	}
}

func TestShapesRefused(t *testing.T) {
	for name, err := range map[string]error{
		"edge":      second(template.CornerBlock(0, 3*in, 90*measure.Degree)),
		"corner":    second(template.CornerBlock(4*in, 3*in, 180*measure.Degree)),
		"strip":     second(template.HangerStrip(600*mm, 0)),
		"place":     second(template.HangerStrip(600*mm, 40*mm, template.Place{At: 601 * mm})),
		"hole":      second(template.HangerStrip(600*mm, 40*mm, template.Place{Diameter: 41 * mm})),
		"too wide":  second(template.OfPolygon(must[plane.Polygon](t)(plane.Box(measure.Size{Width: 4 * in, Height: 5 * in})), 2*in)),
		"no corner": second(first(template.OfPolygon(plane.Polygon{}, 0)).SVG()),
	} {
		if err == nil {
			t.Errorf("%s is taken", name)
		}
	}
}

func second[T any](_ T, err error) error { return err }

func first[T any](v T, _ error) T { return v }

// The middle line of a corner block parts its corner into equal angles, to what a nanometer
// at its end turns it by, and its edges
// are as long as was asked.
func TestCornerBlock(t *testing.T) {
	for _, corner := range []measure.Angle{60 * measure.Degree, 90 * measure.Degree, 120 * measure.Degree} {
		s := must[template.Template](t)(template.CornerBlock(4*in, 3*in, corner))
		v := s.Paths[0].Vertices
		end := s.Paths[1].Vertices[1]
		if half := measure.Slope(end.Y, end.X); half < corner/2-1000 || half > corner/2+1000 {
			t.Errorf("%v is parted at %v", corner, half)
		}
		if a, b := measure.Hypot(v[1].X, v[1].Y), measure.Hypot(v[2].X, v[2].Y); a != 4*in || b != 3*in {
			t.Errorf("edges of %v and %v", a, b)
		}
	}
}

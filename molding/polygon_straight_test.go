package molding_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// outlineOf is an outline by whole inches.
func outlineOf(inches ...int64) plane.Polygon {
	var corners []plane.Point
	for i := 0; i < len(inches); i += 2 {
		corners = append(corners, plane.Point{X: measure.Inch * measure.Length(inches[i]), Y: measure.Inch * measure.Length(inches[i+1])})
	}
	return shape(plane.New(corners...))
}

// TestStraightEnd: in one line with a side without molding, a rail ends square where
// its own side does, and the outlines step there.
func TestStraightEnd(t *testing.T) {
	panel := outlineOf(0, 0, 8, 0, 16, 0, 16, 20, 0, 20)
	s := molding.Section{Face: in("2"), Lip: in("1/4")}
	f := molding.PolygonFrame{Allowance: in("1/8"), Sections: []molding.Section{s, {}, s, s, s}}
	for _, clockwise := range []bool{false, true} {
		sections, panel, i := f.Sections, panel, 0
		if clockwise {
			corners := panel.Corners()
			slices.Reverse(corners)
			panel = shape(plane.New(corners...))
			sections, i = []molding.Section{s, s, {}, s, s}, 3
		}
		f := molding.PolygonFrame{Allowance: f.Allowance, Sections: sections}
		p := rails(f, panel)
		rail, straight, mitered := p.Rails[i], p.Rails[i].Finish, p.Rails[i].Start
		if clockwise {
			straight, mitered = mitered, straight
		}
		if !straight.Square || mitered.Square || straight.Saw != 0 || straight.Joint != s.Face {
			t.Errorf("ends %+v %+v", straight, mitered)
		}
		// The other end is the corner of a rectangle.
		lies(t, "sight edge", rail.Sight, in("7 13/16"), 0)
		lies(t, "outer edge", rail.Outer, in("9 13/16"), 0)
		sight := shape(f.SightEdge(panel))
		if sight.Len() != 6 || sight.Turning() != measure.Turn {
			t.Errorf("the sight edge has %d corners", sight.Len())
		}
		outside := shape(f.Outside(panel))
		if low, high := outside.Bounds(); outside.Len() != 6 || low.Y != -in("1 13/16") || low.X != -in("1 13/16") || high.X != in("17 13/16") {
			t.Errorf("the outside goes from %v to %v with %d corners", low, high, outside.Len())
		}
		if opening := shape(f.Opening(panel)); opening.Len() != 6 {
			t.Errorf("the opening has %d corners", opening.Len())
		}
		explained(t, polygonFigures(p), func(figure explain.Path) (explain.Working, bool) { return f.Explain(p, figure, polygonPlaces) })
		var codes []string
		for _, n := range f.Notes(p, polygonPlaces) {
			codes = append(codes, string(n.Code))
		}
		is(t, "notes", strings.Join(codes, " "), "caution.saw polygon.square_ends polygon.square_ends")
	}
	// Two widths in one line are no step of an outline that rails could follow.
	f.Sections[1] = molding.Section{Face: in("1"), Lip: in("1/4")}
	var e *plane.Error
	if _, err := f.Outside(panel); !errors.As(err, &e) || e.Code != plane.Step || e.At != 1 {
		t.Errorf("two faces in one line: %v", err)
	}
	if _, err := f.SightEdge(panel); err != nil {
		t.Errorf("one lip in one line: %v", err)
	}
}

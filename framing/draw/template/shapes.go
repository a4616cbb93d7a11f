package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// OfPolygon is the template of a frame of straight rails: its outside to cut, and,
// where the face is above nothing, its sight edge, the face within it, with the lines of
// the miters between. Each rail bears its number in the order of the sides. A face that
// leaves no sight edge is refused as [plane.Polygon.Offset] does it, a polygon without
// corners by [Template.Check].
func OfPolygon(outside plane.Polygon, face measure.Length) (Template, error) {
	t := Template{Paths: []Path{Outline(Cut, outside)}}
	inside := outside
	if face > 0 {
		sight, err := outside.Offset(-face)
		if err != nil {
			return Template{}, err
		}
		inside = sight
		t.Paths = append(t.Paths, Outline(Cut, sight))
		for i := range sight.Len() {
			t.Paths = append(t.Paths, Line(Mark, outside.Corner(i), sight.Corner(i)))
		}
	}
	const most = 6 * mm
	height := most
	if face > 0 {
		height = min(most, face/2)
	}
	if height < measure.Millimeter {
		return t, nil // no room for a number
	}
	for i := range outside.Len() {
		a, b, c, d := outside.Corner(i), outside.Corner(i+1), inside.Corner(i), inside.Corner(i+1)
		at := plane.Point{X: (a.X + b.X + c.X + d.X) / 4, Y: (a.Y+b.Y+c.Y+d.Y)/4 - height/2}
		t.Words = append(t.Words, Word{At: at, Height: height, Centered: true, Text: strconv.Itoa(i + 1)})
	}
	return t, nil
}

// CornerBlock is the template of a block that is glued or screwed into a corner: a
// triangle with the corner's own angle between two edges of these lengths, the first
// along X. Its edges are the true ones: the saw's kerf is off the waste beside them. The
// line from the corner, halfway between the edges, is the one that lies on the miter.
//
// The edges are above nothing and at most [plane.Reach], the angle lies from 1 to 179
// degrees.
func CornerBlock(along, up measure.Length, corner measure.Angle) (Template, error) {
	var c explain.Checker
	c.Length("/along", along, measure.Millimeter, plane.Reach/2)
	c.Length("/up", up, measure.Millimeter, plane.Reach/2)
	c.Angle("/corner", corner, measure.Degree, 179*measure.Degree)
	if problems := c.Problems(); problems != nil {
		return Template{}, problems
	}
	a, b := plane.Point{X: along}, plane.Point{X: up.Cos(corner), Y: up.Sin(corner)}
	// The line that halves the angle cuts the side across from it in the ratio of
	// the edges (Euclid VI.3).
	part := func(from, to measure.Length) measure.Length {
		way, _ := (to - from).Scale(int64(along), int64(along+up))
		return from + way
	}
	end := plane.Point{X: part(a.X, b.X), Y: part(a.Y, b.Y)}
	return Template{Paths: []Path{
		{Layer: Cut, Closed: true, Vertices: []Vertex{{}, {Point: a}, {Point: b}}},
		Line(Mark, plane.Point{}, end),
	}}, nil
}

// A Place is where something goes on a strip: so far from its left end, with a hole
// of this diameter, a prick where it is 0, and a word beside it.
type Place struct {
	At       measure.Length
	Diameter measure.Length
	Word     string
}

// HangerStrip is the template of a strip that is laid against the wall or along a rail,
// to mark the places of hangers, screws and nails through it: its outline to cut, its
// middle line, a line across its middle, and the places on the middle line.
//
// The strip is from 1 mm to [plane.Reach] long and wide, and the places lie within it.
func HangerStrip(long, wide measure.Length, places ...Place) (Template, error) {
	var c explain.Checker
	c.Length("/long", long, measure.Millimeter, plane.Reach)
	c.Length("/wide", wide, measure.Millimeter, plane.Reach)
	checkCount(&c, "/places", len(places), MaxPaths)
	if problems := c.Problems(); problems != nil {
		return Template{}, problems
	}
	middle, half := wide/2, long/2
	t := Template{Paths: []Path{
		{Layer: Cut, Closed: true, Vertices: []Vertex{
			{}, {Point: plane.Point{X: long}}, {Point: plane.Point{X: long, Y: wide}}, {Point: plane.Point{Y: wide}},
		}},
		Line(Center, plane.Point{Y: middle}, plane.Point{X: long, Y: middle}),
		Line(Center, plane.Point{X: half}, plane.Point{X: half, Y: wide}),
	}}
	height := min(3*mm, wide/6)
	for i, p := range places {
		at := explain.Path("/places").Index(i)
		c.Length(at+"/at", p.At, 0, long)
		c.Length(at+"/diameter", p.Diameter, 0, wide)
		t.Spots = append(t.Spots, Spot{Layer: Mark, At: plane.Point{X: p.At, Y: middle}, Diameter: p.Diameter})
		if p.Word != "" && height >= measure.Millimeter {
			t.Words = append(t.Words, Word{At: plane.Point{X: p.At, Y: 3*wide/4 - height/2}, Height: height, Centered: true, Text: p.Word})
		}
	}
	if problems := c.Problems(); problems != nil {
		return Template{}, problems
	}
	return t, nil
}

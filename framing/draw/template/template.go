package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Limits of a template.
const (
	MaxText     = 500     // bytes of a title, a note or a word
	MaxNotes    = 40      // notes
	MaxPaths    = 1000    // paths, and as many marks and words
	MaxVertices = 100_000 // vertices of all paths
)

// A Layer says what a line is for. It is the name of the group in SVG and of the
// layer in DXF, so that a machine or a reader can be told what to do with each.
type Layer string

// The layers.
const (
	Cut    Layer = "cut"    // what the saw, the knife or the router follows
	Mark   Layer = "mark"   // what is drawn onto the work: miters, places of screws
	Center Layer = "center" // middle lines, which nothing is cut or marked along
	Hidden Layer = "hidden" // edges that lie behind or below
	Text   Layer = "text"   // words and numbers
	Proof  Layer = "proof"  // what proves that the size is true, no part of the work
)

var layers = [...]Layer{Cut, Mark, Center, Hidden, Text, Proof}

// Choices lists the layers.
func (Layer) Choices() []string {
	choices := make([]string, len(layers))
	for i, l := range layers {
		choices[i] = string(l)
	}
	return choices
}

func (l Layer) known() bool {
	for _, known := range layers {
		if l == known {
			return true
		}
	}
	return false
}

// A Template is a shape at true size, to be cut along, drilled through or laid
// against. X runs to the right and Y up, as in package plane; where the shape
// lies in the plane does not matter. The title and the notes stand below it.
type Template struct {
	Title string
	Notes []string
	Paths []Path
	Spots []Spot
	Words []Word
}

// A Spot is a place to drill, to prick or to set something at: a cross, in a circle
// of this diameter where it is above nothing.
type Spot struct {
	Layer    Layer
	At       plane.Point
	Diameter measure.Length
}

// A Word is lettering at a place on the shape, on the layer [Text]: At is the left end
// of its base line, or its middle where it is centered. Height is that of a capital.
type Word struct {
	At       plane.Point
	Height   measure.Length
	Centered bool
	Text     string
}

// Check reports all that lies outside the domain of a template as
// [explain.Problems]: paths, spots and words out of [plane.Reach], more of
// something than its limit, a layer that is none, nothing to draw at all.
func (t Template) Check() error {
	var c explain.Checker
	c.Format = measure.Format{}
	checkText(&c, "/title", t.Title)
	checkCount(&c, "/notes", len(t.Notes), MaxNotes)
	checkCount(&c, "/paths", len(t.Paths), MaxPaths)
	checkCount(&c, "/spots", len(t.Spots), MaxPaths)
	checkCount(&c, "/words", len(t.Words), MaxPaths)
	if !c.Clean("/notes", "/paths", "/spots", "/words") {
		return c.Problems().Err()
	}
	if len(t.Paths)+len(t.Spots) == 0 {
		c.Add(explain.Problem{Code: explain.TooFew, Path: "/paths", Given: "0", Accepted: "1"})
	}
	for i, note := range t.Notes {
		checkText(&c, explain.Path("/notes").Index(i), note)
	}
	vertices := 0
	for i, p := range t.Paths {
		vertices += len(p.Vertices)
		if vertices > MaxVertices {
			checkCount(&c, "/paths", vertices, MaxVertices)
			break
		}
		p.check(&c, explain.Path("/paths").Index(i))
	}
	for i, s := range t.Spots {
		at := explain.Path("/spots").Index(i)
		checkLayer(&c, at, s.Layer)
		checkPoint(&c, at+"/at", s.At)
		c.Length(at+"/diameter", s.Diameter, 0, plane.Reach)
	}
	for i, w := range t.Words {
		at := explain.Path("/words").Index(i)
		checkPoint(&c, at+"/at", w.At)
		c.Length(at+"/height", w.Height, measure.Millimeter/10, measure.Meter)
		checkText(&c, at+"/text", w.Text)
	}
	return c.Problems().Err()
}

func checkCount(c *explain.Checker, at explain.Path, n, most int) {
	if n > most {
		c.Add(explain.Problem{Code: explain.TooMany, Path: at, Given: strconv.Itoa(n), Accepted: strconv.Itoa(most)})
	}
}

func checkText(c *explain.Checker, at explain.Path, s string) {
	if len(s) > MaxText {
		c.Add(explain.Problem{Code: explain.TextTooLong, Path: at, Given: s, Accepted: strconv.Itoa(MaxText)})
	}
}

func checkLayer(c *explain.Checker, at explain.Path, l Layer) {
	if !l.known() {
		accepted := ""
		for i, known := range layers {
			if i > 0 {
				accepted += ", "
			}
			accepted += string(known)
		}
		c.Add(explain.Problem{Code: explain.NotAChoice, Path: at + "/layer", Given: string(l), Accepted: accepted})
	}
}

func checkPoint(c *explain.Checker, at explain.Path, p plane.Point) {
	c.Length(at+"/x", p.X, -plane.Reach, plane.Reach)
	c.Length(at+"/y", p.Y, -plane.Reach, plane.Reach)
}

// bounds is the least upright rectangle that all but the words lie in.
func (t Template) bounds() (least, most plane.Point) {
	var b bounds
	for _, p := range t.Paths {
		if p.isOval() {
			size := p.oval.Size()
			x, y := (size.Width+1)/2, (size.Height+1)/2
			b.point(plane.Point{X: p.middle.X - x, Y: p.middle.Y - y})
			b.point(plane.Point{X: p.middle.X + x, Y: p.middle.Y + y})
			continue
		}
		p.arcs(func(a arc) { b.arc(a) })
	}
	for _, s := range t.Spots {
		r := s.arm()
		b.point(plane.Point{X: s.At.X - r, Y: s.At.Y - r})
		b.point(plane.Point{X: s.At.X + r, Y: s.At.Y + r})
	}
	return b.least, b.most
}

// cross is how wide and high the cross of a spot is, at least.
const cross = 6 * measure.Millimeter

// arm is how far the cross of s reaches from its middle.
func (s Spot) arm() measure.Length { return max(s.Diameter/2+measure.Millimeter, cross/2) }

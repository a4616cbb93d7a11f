package framing

import (
	"errors"
	"reflect"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// An Outline is the outline of art, a mirror or a panel with straight edges that is
// no rectangle. By says which of the other fields count; the zero Outline is none.
type Outline struct {
	// By says how the outline is given.
	By OutlineBy `json:"by" order:"required"`
	// Sides is how many equal sides there are.
	Sides int `json:"sides"`
	// Across says where Size is measured.
	Across plane.Across `json:"across"`
	// Size is the size of a regular outline.
	Size measure.Length `json:"size"`
	// Stand is how a regular outline hangs.
	Stand plane.Stand `json:"stand"`
	// Edges are the lengths of the sides, seen from the front from the bottom one on
	// to the left.
	Edges []measure.Length `json:"edges,omitzero"`
	// Diagonals are measured between corners: corner 0 is where the first edge begins.
	Diagonals []plane.Diagonal `json:"diagonals,omitzero"`
	// Angles are those of the corners on the inside, from the end of the first edge on:
	// one less than there are edges. The last edge is then the one that is not given.
	Angles []measure.Angle `json:"angles,omitzero"`
	// Within is how far measures may disagree that say one thing twice.
	Within measure.Length `json:"within"`
}

// IsZero reports whether there is no outline.
func (o Outline) IsZero() bool {
	return o.By == "" && o.Sides == 0 && o.Across == "" && o.Size == 0 && o.Stand == "" &&
		o.Edges == nil && o.Diagonals == nil && o.Angles == nil && o.Within == 0
}

// An OutlineBy says how an outline is given.
type OutlineBy string

// How an outline is given.
const (
	ByRegular OutlineBy = "regular" // equal sides and corners: sides, across, size, stand
	ByAround  OutlineBy = "around"  // the smallest regular one that shows all of the art: sides, stand
	ByEdges   OutlineBy = "edges"   // edges, and the diagonals that hold them
	ByAngles  OutlineBy = "angles"  // all edges but the last, and the angles between them
)

// Choices lists how an outline can be given, for readers and forms.
func (OutlineBy) Choices() []string {
	return []string{string(ByRegular), string(ByAround), string(ByEdges), string(ByAngles)}
}

// NewOutline returns an outline with every default written out: eight sides that are
// measured across flats, a side at the bottom, and measures that agree within 1/16
// in.
func NewOutline() Outline {
	return Outline{Sides: 8, Across: plane.Flats, Stand: plane.OnSide, Within: measure.Inch / 16}
}

// NotTogether is the code of fields that cannot be had together.
const NotTogether explain.Code = "shape.not_together"

// NoShapes is the code of a piece that this build leaves out; see [Shapes].
const NoShapes explain.Code = "shape.not_in_this_build"

// Shaped reports whether the piece is more than a plain rectangle: its art has an
// outline or measured sides, or its frame's rails differ or slope.
func (p *Piece) Shaped() bool {
	return !p.Art.Outline.IsZero() || p.Art.Sides != molding.OutOfSquare{} || !p.Frame.Plain() || !p.Liner.Plain()
}

// sized reports whether the art has a width and a height of its own.
func (a Art) sized() bool {
	return a.Outline.IsZero() && (a.Sides == molding.OutOfSquare{}) || a.Outline.By == ByAround
}

// regular reports whether the outline has equal sides and corners.
func (o Outline) regular() bool { return o.By == ByRegular || o.By == ByAround }

// excused reports whether a required field need not stand in an object: art with an
// outline or measured sides has no size of its own.
func excused(spelled map[string]*node, t reflect.Type, name string) bool {
	if t != reflect.TypeFor[Art]() || name != "width" && name != "height" {
		return false
	}
	if outline := spelled["outline"]; outline != nil {
		return outline.word("by", "") != string(ByAround)
	}
	return spelled["sides"] != nil
}

// checkShape adds what is wrong with an outline or with measured sides.
func (a Art) checkShape(c *explain.Checker, at explain.Path) {
	square := a.Sides == molding.OutOfSquare{}
	switch {
	case !a.Outline.IsZero() && !square:
		c.Add(explain.Problem{Code: NotTogether, Path: at + "/sides", Given: "outline, sides", Accepted: "one of them"})
	case !a.Outline.IsZero():
		a.Outline.check(c, at+"/outline", a.Least())
	case !square:
		a.checkSides(c, at+"/sides")
	default:
		return
	}
	if a.Varies != (measure.Size{}) {
		c.Add(explain.Problem{Code: NotTogether, Path: at + "/varies", Given: "varies", Accepted: "none beside an outline or sides"})
	}
	if !a.Stretch.IsZero() {
		c.Add(explain.Problem{Code: NotTogether, Path: at + "/stretch", Given: "stretch", Accepted: "none beside an outline or sides"})
	}
	if a.sized() || !c.Clean(at+"/outline/by", at+"/sides") {
		return
	}
	for _, name := range [...]string{"width", "height"} {
		if l := a.Least().Along(name); l != 0 {
			c.Add(explain.Problem{Code: NotTogether, Path: at.Child(name), Given: c.Write(l), Accepted: c.Write(0) + ": it follows from the outline"})
		}
	}
}

func (a Art) checkSides(c *explain.Checker, at explain.Path) {
	a.Sides.Check(c, at)
	if !c.Clean(at+"/bottom", at+"/right", at+"/top", at+"/left", at+"/rising", at+"/falling") {
		return
	}
	outline, err := a.Sides.Outline(sidesWithin)
	if err == nil {
		_, err = outline.LargestUpright()
	}
	addFault(c, err, func(e *plane.Error) explain.Path { return at + sideField(e) })
}

// sideField is the field of measured sides that is at fault.
func sideField(e *plane.Error) explain.Path {
	switch {
	case e.At < 0 || e.At > 3 || e.Code == plane.NotConvex:
		return ""
	case e.Other < 0 || e.Other == (e.At+1)%4:
		return [...]explain.Path{"/bottom", "/right", "/top", "/left"}[e.At]
	case e.At == 0 || e.At == 2:
		return "/rising"
	}
	return "/falling"
}

// sidesWithin is how far a second diagonal may differ from what four edges and the
// first one say: what one reads off a tape over a picture.
const sidesWithin = measure.Inch / 16

// addFault adds what the plane says of an outline, at the field that is at fault;
// lengths are written as the order's are.
func addFault(c *explain.Checker, err error, field func(*plane.Error) explain.Path) {
	var fault *plane.Error
	if !errors.As(err, &fault) {
		return
	}
	p := fault.Problem("")
	p.Path = field(fault)
	if fault.Given.Kind == explain.LengthKind {
		p.Given = c.Write(measure.Length(fault.Given.N))
	}
	if fault.Limit.Kind == explain.LengthKind {
		p.Accepted = c.Write(measure.Length(fault.Limit.N))
		if fault.Bound != explain.Exactly {
			p.Accepted = explain.English("bound."+string(fault.Bound)) + " " + p.Accepted
		}
	}
	c.Add(p)
}

// addCount adds that a list is too short or too long.
func addCount(c *explain.Checker, at explain.Path, n, least, most int) {
	code := explain.TooFew
	switch {
	case n > most:
		code = explain.TooMany
	case n >= least:
		return
	}
	accepted := explain.Of(least).String()
	if most != least {
		accepted = count(least, most)
	}
	c.Add(explain.Problem{Code: code, Path: at, Given: explain.Of(n).String(), Accepted: accepted})
}

// check adds what is wrong with the outline; shown is the art that one around it
// shows.
func (o Outline) check(c *explain.Checker, at explain.Path, shown measure.Size) {
	c.Choice(at+"/by", string(o.By), o.By.Choices())
	c.Choice(at+"/across", string(o.Across), o.Across.Choices())
	c.Choice(at+"/stand", string(o.Stand), o.Stand.Choices())
	c.Number(at+"/sides", int64(o.Sides), 3, molding.MostCorners)
	c.NotNegative(at+"/within", o.Within)
	c.NotNegative(at+"/size", o.Size)
	edges, diagonals, angles := at+"/edges", at+"/diagonals", at+"/angles"
	n, corners := len(o.Edges), molding.MostCorners
	switch o.By {
	case ByRegular:
		c.Positive(at+"/size", o.Size)
	case ByEdges:
		addCount(c, edges, n, 3, molding.MostCorners)
		if c.Clean(edges) {
			addCount(c, diagonals, len(o.Diagonals), n-3, 2*molding.MostCorners)
		}
	case ByAngles:
		addCount(c, edges, n, 2, molding.MostCorners-1)
		if c.Clean(edges) {
			addCount(c, angles, len(o.Angles), n-1, n-1)
		}
	}
	addCount(c, edges, n, 0, molding.MostCorners)
	addCount(c, diagonals, len(o.Diagonals), 0, 2*molding.MostCorners)
	addCount(c, angles, len(o.Angles), 0, molding.MostCorners)
	if o.By == ByEdges && c.Clean(edges) {
		corners = n
	}
	for i, l := range o.Edges[:min(n, molding.MostCorners)] {
		c.Positive(edges.Index(i), l)
	}
	for i, d := range o.Diagonals[:min(len(o.Diagonals), 2*molding.MostCorners)] {
		here := diagonals.Index(i)
		c.Number(here+"/from", int64(d.From), 0, int64(corners-1))
		c.Number(here+"/to", int64(d.To), 0, int64(corners-1))
		if d.From == d.To {
			c.Add(explain.Problem{Code: explain.OutOfRange, Path: here + "/to", Given: explain.Of(d.To).String(), Accepted: "another corner"})
		}
		c.Positive(here+"/length", d.Length)
	}
	for i, a := range o.Angles[:min(len(o.Angles), molding.MostCorners)] {
		c.Angle(angles.Index(i), a, 1, measure.Turn-1)
	}
	if !c.Clean(at) || o.By == ByAround && !c.Clean(at.Parent()+"/width", at.Parent()+"/height") {
		return
	}
	_, err := o.panel(shown)
	addFault(c, err, func(e *plane.Error) explain.Path { return at + o.field(e) })
}

// field is the field of the outline that is at fault.
func (o Outline) field(e *plane.Error) explain.Path {
	if o.regular() {
		if o.By == ByRegular {
			return "/size"
		}
		return ""
	}
	if o.By == ByEdges && (e.Code == plane.Loose || e.Code == plane.Differs || e.Code == plane.NoTriangle) {
		if e.Code == plane.NoTriangle && e.Other == (e.At+1)%len(o.Edges) {
			return explain.Path("/edges").Index(e.At)
		}
		for i, d := range o.Diagonals {
			if d.From == e.At && d.To == e.Other || d.From == e.Other && d.To == e.At {
				return explain.Path("/diagonals").Index(i) + "/length"
			}
		}
		return "/diagonals"
	}
	if e.At >= 0 && e.At < len(o.Edges) {
		return explain.Path("/edges").Index(e.At)
	}
	return "/edges"
}

// panel returns the outline in the plane. What stands at the bottom is level.
func (o Outline) panel(shown measure.Size) (plane.Polygon, error) {
	switch o.By {
	case ByRegular, ByAround:
		p, err := o.regularPanel(shown, molding.Frame{})
		if err != nil {
			return plane.Polygon{}, err
		}
		return regularOutline(p, o.Stand)
	case ByEdges:
		return plane.Measured(o.Edges, o.Diagonals, o.Within)
	}
	return plane.Closing(o.Edges, o.Angles)
}

// regularPanel is a regular outline's count and size: for one around art, the panel
// whose frame f shows all of it.
func (o Outline) regularPanel(shown measure.Size, f molding.Frame) (molding.RegularPanel, error) {
	if o.By == ByRegular {
		return molding.RegularPanel{Sides: o.Sides, Across: o.Across, Size: o.Size}, nil
	}
	ways, err := f.RegularShowing(o.Sides, shown)
	if err != nil {
		return molding.RegularPanel{}, err
	}
	way := ways[0]
	for _, w := range ways {
		if w.Stand == o.Stand {
			way = w
		}
	}
	return molding.RegularPanel{Sides: o.Sides, Across: plane.Flats, Size: way.Panel}, nil
}

// regularOutline is a regular outline as it hangs.
func regularOutline(p molding.RegularPanel, stand plane.Stand) (plane.Polygon, error) {
	outline, err := plane.Regular(p.Sides, p.Across, p.Size)
	if err != nil {
		return outline, err
	}
	switch {
	case stand == plane.OnPoint && p.Sides%2 == 0:
		return outline.Turned(plane.HalfTurn(p.Sides))
	case stand == plane.OnPoint:
		return outline.Turned(measure.Turn / 2)
	case stand == plane.Sideways:
		return outline.Turned(-measure.RightAngle)
	}
	return outline, nil
}

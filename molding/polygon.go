package molding

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// MostCorners is how many sides the panel of a [PolygonFrame] may have.
const MostCorners = 64

// A Section is the molding along one side. The zero Section is none: that side has
// no rail, and those beside it end square.
type Section struct {
	// Face is from the sight edge to the outermost point, square across.
	Face measure.Length `json:"face"`
	// Lip is how far the molding covers the package.
	Lip measure.Length `json:"lip"`
}

// IsZero reports whether there is no molding.
func (s Section) IsZero() bool { return s == Section{} }

// A PolygonFrame is a frame with a rail along each side of a panel that need not
// have four sides, nor square corners, nor only such as point outward.
type PolygonFrame struct {
	// Sections are the moldings, in the order of the panel's sides: one for each, or
	// one for all.
	Sections []Section `json:"sections"`
	// Allowance is the total play of the panel, half of it along each side.
	Allowance measure.Length `json:"allowance"`
	// Reach is how far the saw swings from square, either way; 0 where that is not
	// known.
	Reach measure.Angle `json:"reach"`
}

// Check adds to c what is wrong with f, whose fields lie at path at, for a panel of
// so many sides.
func (f PolygonFrame) Check(c *explain.Checker, at explain.Path, sides int) {
	if n := len(f.Sections); n != 1 && n < sides {
		c.Add(explain.Problem{Code: explain.TooFew, Path: at + "/sections", Given: explain.Of(n).String(), Accepted: "1 or " + explain.Of(sides).String()})
	} else if n > sides {
		c.Add(explain.Problem{Code: explain.TooMany, Path: at + "/sections", Given: explain.Of(n).String(), Accepted: "1 or " + explain.Of(sides).String()})
	}
	bare := true
	for i, s := range f.Sections[:min(len(f.Sections), MostCorners)] {
		here := (at + "/sections").Index(i)
		if s.IsZero() {
			continue
		}
		bare = false
		c.Positive(here+"/face", s.Face)
		c.NotNegative(here+"/lip", s.Lip)
		if c.Clean(here+"/face", here+"/lip") && s.Lip >= s.Face {
			c.Add(explain.Problem{Code: explain.OutOfRange, Path: here + "/lip", Given: c.Write(s.Lip), Accepted: c.Write(0) + " to less than the face, " + c.Write(s.Face)})
		}
	}
	if bare && c.Clean(at+"/sections") {
		c.Add(explain.Problem{Code: explain.Missing, Path: at + "/sections"})
	}
	c.NotNegative(at+"/allowance", f.Allowance)
	c.Angle(at+"/reach", f.Reach, 0, measure.RightAngle)
}

// section is the molding along side i, none where it is not said.
func (f PolygonFrame) section(i int) Section {
	switch {
	case len(f.Sections) == 1:
		return f.Sections[0]
	case i < len(f.Sections):
		return f.Sections[i]
	}
	return Section{}
}

// sight is how far the sight edge of a section lies outside the panel: below
// nothing, since a lip covers more than the play. Of an odd nanometer of allowance
// the half below is taken.
func (f PolygonFrame) sight(s Section) measure.Length {
	half, _ := f.Allowance.Half()
	return half - s.Lip
}

// A PolygonRail is the rail along one side, seen from the front with the sight edge
// toward the middle. A side without molding has a rail of no length.
type PolygonRail struct {
	Section
	// Sight is the length of the sight edge, Outer that of the outer edge, from
	// point to point. Which one is longer depends on the corners.
	Sight, Outer measure.Length
	// Long is the whole rail from the outermost point of one end to that of the
	// other: what it takes of a stick.
	Long measure.Length
	// Start is the end at the corner where the side begins, Finish that where it
	// ends, in the order of the panel's corners.
	Start, Finish RailEnd
}

// A Polygon is the frame around a panel, worked out.
type Polygon struct {
	Panel plane.Polygon
	// Rails are one for each side of the panel.
	Rails []PolygonRail
	// Footage is the sum of the rails' whole lengths: the molding that they take,
	// without kerfs and waste.
	Footage measure.Length
}

// Around works out the frame around a panel, either way round. It refuses a count of
// sections that is neither one nor that of the sides, a panel of more than
// [MostCorners], and rails that do not meet: two in one line that differ in width, or
// a corner so sharp that its point lies past [plane.Reach], each with a
// [*plane.Error]. That nothing may be seen in the frame is for [PolygonFrame.Notes].
//
// A rail's sight edge is the panel's side moved by half the allowance less the lip,
// its outer edge farther by the face; what both gain at the corners, [plane.Growth]
// says. Each length is rounded once, so that rails come home within a nanometer each.
// An end without a neighbor is cut square where the sight edge comes to the line of the
// side without molding, or at the corner where both lie in one line.
func (f PolygonFrame) Around(panel plane.Polygon) (Polygon, error) {
	n := panel.Len()
	if err := countFault(n, 3, MostCorners); err != nil {
		return Polygon{}, err
	}
	if len(f.Sections) != 1 {
		if err := countFault(len(f.Sections), n, n); err != nil {
			return Polygon{}, err
		}
	}
	p := Polygon{Panel: panel, Rails: make([]PolygonRail, n)}
	for i := range p.Rails {
		r := &p.Rails[i]
		r.Section = f.section(i)
		if r.IsZero() {
			continue
		}
		r.Start, r.Finish = squareEnd(r.Face), squareEnd(r.Face)
		before, after := f.beside(n, i, 0), f.beside(n, i, 1)
		if !before.IsZero() {
			_, r.Start = MiterBetween(panel.Interior(i), before.Face, r.Face)
		}
		if !after.IsZero() {
			r.Finish, _ = MiterBetween(panel.Interior(i+1), r.Face, after.Face)
		}
		side := fineUnit * panel.Side(i).Length
		var inner, outer [2]measure.Length
		for j := range inner {
			inner[j], outer[j] = f.grown(panel, i, j)
			if least, most := min(inner[j], outer[j]), max(inner[j], outer[j]); least < -fineUnit*plane.Reach || most > fineUnit*plane.Reach {
				return Polygon{}, &plane.Error{Code: farOrStep(panel.Turn(i + j)), At: (i + j) % n, Other: -1}
			}
		}
		r.Sight = fromFine(side + inner[0] + inner[1])
		r.Outer = fromFine(side + outer[0] + outer[1])
		r.Long = fromFine(side + max(inner[0], outer[0]) + max(inner[1], outer[1]))
		p.Footage += r.Long
	}
	return p, nil
}

// beside is the molding next to side i of n: before it, or after it.
func (f PolygonFrame) beside(n, i, after int) Section { return f.section((i + n - 1 + 2*after) % n) }

// grown is how much longer than the panel's side i its rail's two edges get at the
// start, or at the finish, in fine units. In one line with a side without molding the
// rail ends where its own side does: its sight edge never comes to the other.
func (f PolygonFrame) grown(panel plane.Polygon, i, finish int) (inner, outer measure.Length) {
	section, beside, turn := f.section(i), f.beside(panel.Len(), i, finish), panel.Turn(i+finish)
	if beside.IsZero() && turn == 0 {
		return 0, 0
	}
	own, other := f.fineSight(section), f.fineSight(beside)
	inner = plane.Growth(own, other, turn)
	if beside.IsZero() {
		return inner, inner
	}
	return inner, plane.Growth(own+fineUnit*section.Face, other+fineUnit*beside.Face, turn)
}

// fineUnit is how much finer than in nanometers the rails are added up, as in
// [explain.Once].
const fineUnit = 1024

// fineSight is [PolygonFrame.sight] in fine units, of which half the allowance is a
// whole number.
func (f PolygonFrame) fineSight(s Section) measure.Length {
	if s.IsZero() {
		return 0
	}
	return fineUnit/2*f.Allowance - fineUnit*s.Lip
}

func fromFine(l measure.Length) measure.Length {
	l, _ = l.Scale(1, fineUnit)
	return l
}

// countFault refuses too few or too many of something.
func countFault(n, least, most int) error {
	e := &plane.Error{At: -1, Other: -1, Given: explain.Of(n)}
	switch {
	case n < least:
		e.Code, e.Limit, e.Bound = explain.TooFew, explain.Of(least), explain.AtLeast
	case n > most:
		e.Code, e.Limit, e.Bound = explain.TooMany, explain.Of(most), explain.AtMost
	default:
		return nil
	}
	return e
}

func farOrStep(turn measure.Angle) explain.Code {
	if turn == 0 {
		return plane.Step
	}
	return plane.Far
}

// Closed reports whether there is a rail along each side.
func (p Polygon) Closed() bool {
	return !slices.ContainsFunc(p.Rails, func(r PolygonRail) bool { return r.IsZero() })
}

// Settings returns the saw settings of all ends, rail by rail, start before finish.
// Those of a closed frame add up to what its outline turns, 360 degrees, exactly.
func (p Polygon) Settings() []measure.Angle {
	settings := make([]measure.Angle, 0, 2*len(p.Rails))
	for _, r := range p.Rails {
		if !r.IsZero() {
			settings = append(settings, r.Start.Saw, r.Finish.Saw)
		}
	}
	return settings
}

// Sides returns the outer edges of a closed frame with their turns: whoever walks
// along them comes home within a nanometer a rail.
func (p Polygon) Sides() []plane.Side {
	sides := make([]plane.Side, len(p.Rails))
	for i, r := range p.Rails {
		sides[i] = plane.Side{Length: r.Outer, Turn: p.Panel.Turn(i + 1)}
	}
	return sides
}

// Opening is the outline of the rabbet, around the same origin as the panel; a side
// without molding stays the panel's own. As SightEdge and Outside it refuses what has
// no such outline, with the limit, as [plane.Polygon.Offset] does.
func (f PolygonFrame) Opening(panel plane.Polygon) (plane.Polygon, error) {
	half, _ := f.Allowance.Half()
	return f.moved(panel, func(Section) measure.Length { return half })
}

// SightEdge is the outline of what is seen of the panel.
func (f PolygonFrame) SightEdge(panel plane.Polygon) (plane.Polygon, error) {
	return f.moved(panel, f.sight)
}

// Outside is the outline of the whole frame.
func (f PolygonFrame) Outside(panel plane.Polygon) (plane.Polygon, error) {
	return f.moved(panel, func(s Section) measure.Length { return f.sight(s) + s.Face })
}

func (f PolygonFrame) moved(panel plane.Polygon, by func(Section) measure.Length) (plane.Polygon, error) {
	n := panel.Len()
	moves := make([]measure.Length, len(f.Sections))
	for i, s := range f.Sections {
		if !s.IsZero() {
			moves[i] = by(s)
		}
	}
	for i, s := range f.Sections { // only beside no molding is there a step
		if next := (i + 1) % len(moves); len(moves) == n && moves[i] != moves[next] && panel.Turn(next) == 0 && !s.IsZero() && !f.Sections[next].IsZero() {
			return plane.Polygon{}, &plane.Error{Code: plane.Step, At: next, Other: -1}
		}
	}
	return panel.Stepped(moves...)
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on sloped sides.
const (
	RimsApart      explain.Code = "slope.rims_apart"
	BacksApart     explain.Code = "slope.backs_apart"
	BeyondLaidFlat explain.Code = "slope.beyond_lay_flat"
	BeyondOnEdge   explain.Code = "slope.beyond_stand_on_edge"
	BeyondPropped  explain.Code = "slope.beyond_prop"
	BeyondEveryWay explain.Code = "slope.beyond_every_way"
)

// RimNotes says whether the rims of two sides that meet lie equally high when
// their sight edges do, and whether the boards are equally thick; and if not,
// what width would bring the rims together. Within is the difference that is let
// pass; no width is more exact than a nanometer. The sides lie at the paths own
// and other.
//
// Rims meet where own face x sin of its pitch from flat equals the other's.
func RimNotes(side, neighbor SlopedSide, within measure.Length, own, other explain.Path) []explain.Note {
	var notes []explain.Note
	depth, against := side.Depth(), neighbor.Depth()
	if apart := max(depth-against, against-depth); apart > within {
		n := explain.Note{
			Level: explain.Warning, Code: RimsApart, Path: other + "/face",
			Values: []explain.Term{
				explain.NewTerm("depth", depth, ""),
				explain.NewTerm("against", against, ""),
				explain.NewTerm("apart", apart, ""),
			},
		}
		n.Changes = addFace(n.Changes, other, depth, neighbor)
		n.Changes = addFace(n.Changes, own, against, side)
		notes = append(notes, n)
	}
	if side.Thickness != neighbor.Thickness {
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: BacksApart, Path: other + "/thickness",
			Values: []explain.Term{
				explain.NewTerm("thickness", side.Thickness, own+"/thickness"),
				explain.NewTerm("against", neighbor.Thickness, other+"/thickness"),
			},
			Changes: []explain.Change{
				{Path: other + "/thickness", To: explain.Of(side.Thickness)},
				{Path: own + "/thickness", To: explain.Of(neighbor.Thickness)},
			},
		})
	}
	return notes
}

// addFace adds the face with which a side gets so deep, where there is one.
func addFace(changes []explain.Change, at explain.Path, depth measure.Length, s SlopedSide) []explain.Change {
	face := depth.OverSin(s.Pitch.Flat())
	if s.Pitch.Flat() == 0 || face <= 0 || face > explain.MaxLength {
		return changes
	}
	return append(changes, explain.Change{Path: at + "/face", To: explain.Of(face)})
}

// A Reach is how far a saw's two scales go, either way.
type Reach struct {
	Miter measure.Angle `json:"miter"`
	Tilt  measure.Angle `json:"tilt"`
}

// Check adds to c what is wrong with r, whose fields lie at path at.
func (r Reach) Check(c *explain.Checker, at explain.Path) {
	c.Angle(at+"/miter", r.Miter, 0, measure.RightAngle)
	c.Angle(at+"/tilt", r.Tilt, 0, measure.RightAngle)
}

// Takes reports whether the saw can be set so.
func (r Reach) Takes(s Setting) bool {
	return max(s.Miter, -s.Miter) <= r.Miter && max(s.Tilt, -s.Tilt) <= r.Tilt
}

// ReachNotes says whether a cut in a position is past the saw's reach, and which
// other way to cut the same joint is not. Worked is where the corner's settings
// stand. Angles are said to the hundredth of a degree.
func (c SlopedCorner) ReachNotes(p Position, saw Reach, worked explain.Path) []explain.Note {
	asked := c.Setting(p)
	if saw.Takes(asked) {
		return nil
	}
	n := explain.Note{
		Level: explain.Warning, Code: BeyondEveryWay, Path: worked.Child(string(p)),
		Values: []explain.Term{
			explain.NewTerm("miter", shownAngle(asked.Miter), ""),
			explain.NewTerm("blade", shownAngle(asked.Tilt), ""),
			explain.NewTerm("reach_miter", shownAngle(saw.Miter), ""),
			explain.NewTerm("reach_tilt", shownAngle(saw.Tilt), ""),
		},
	}
	for _, way := range []struct {
		position Position
		code     explain.Code
	}{{LaidFlat, BeyondLaidFlat}, {OnEdge, BeyondOnEdge}, {Propped, BeyondPropped}} {
		other := c.Setting(way.position)
		if way.position == p || !saw.Takes(other) {
			continue
		}
		n.Code = way.code
		n.Values = append(n.Values,
			explain.NewTerm("other_miter", shownAngle(other.Miter), ""),
			explain.NewTerm("other_tilt", shownAngle(other.Tilt), ""))
		break
	}
	return []explain.Note{n}
}

// shownAngle is an angle as a note says it: to the hundredth of a degree.
func shownAngle(a measure.Angle) measure.Angle {
	a, _ = measure.RoundTo(a, measure.Degree/100, measure.Nearest)
	return a
}

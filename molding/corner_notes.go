package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on ends that a saw does not reach.
const (
	PastReach explain.Code = "corner.past_reach"
	NoReach   explain.Code = "corner.no_reach"
)

// ReachNotes says where a saw that swings so far from square does not reach the
// end, and how it is cut then. A reach of nothing is not known, and nothing is said.
// Worked is where the end stands in the plan. Angles are said to the hundredth of
// a degree.
//
// A rail that stands in a jig at a right angle to the fence, instead of along it,
// takes 90 degrees less the setting, the other way; a wedge between rail and fence
// takes its own angle off the setting.
func (e RailEnd) ReachNotes(reach measure.Angle, worked explain.Path) []explain.Note {
	saw := max(e.Saw, -e.Saw)
	if reach <= 0 || saw <= reach {
		return nil
	}
	wedge, _ := measure.RoundTo(saw-reach, measure.Degree/100, measure.Up)
	n := explain.Note{
		Level: explain.Warning, Code: PastReach, Path: worked + "/saw",
		Values: []explain.Term{
			explain.NewTerm("saw", shownAngle(saw), ""),
			explain.NewTerm("reach_miter", shownAngle(reach), ""),
			explain.NewTerm("jig", shownAngle(measure.RightAngle-saw), ""),
			explain.NewTerm("fence_wedge", wedge, ""),
		},
	}
	if measure.RightAngle-saw > reach {
		n.Code = NoReach
	}
	return []explain.Note{n}
}

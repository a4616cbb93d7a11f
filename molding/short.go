package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the cautions on how pieces are cut.
const (
	CautionShort explain.Code = "caution.short_rail"
	CautionSteep explain.Code = "caution.trapped_offcut"
)

// From where on a cut is dangerous in itself (common practice).
const (
	// ShortRail is the length of a rail below which it is not held by hand.
	ShortRail = 6 * measure.Inch
	// SteepTilt is the blade's tilt past which the offcut can be trapped beneath it.
	SteepTilt = 30 * measure.Degree
)

// shortNote says that a rail is too short to be held by hand.
func shortNote(notes []explain.Note, long measure.Length, worked explain.Path) []explain.Note {
	if long >= ShortRail {
		return notes
	}
	return append(notes, explain.Note{Level: explain.Caution, Code: CautionShort, Path: worked, Values: []explain.Term{
		explain.NewTerm("rail_overall", long, worked),
		explain.NewTerm("limit", ShortRail, ""),
	}})
}

// Longest returns the longest of the rail's four edges: what it takes of a stick,
// where both of its ends are cut the same way.
func (r SlopedRail) Longest() measure.Length {
	return max(r.FrontSight, r.FrontRim, r.BackSight, r.BackRim)
}

// CutNotes says what is dangerous in cutting the rail r of a side, in a position,
// between two corners whose own pitch is this side's: that it is short, and that the
// blade tilts so far that it can trap the offcut. Worked is where the rail stands;
// tilts are said to the hundredth of a degree.
func (s SlopedSide) CutNotes(r SlopedRail, left, right SlopedCorner, p Position, worked explain.Path) []explain.Note {
	var notes []explain.Note
	for _, edge := range [...]struct {
		long measure.Length
		name explain.Path
	}{{r.BackRim, "/back_rim"}, {r.FrontRim, "/front_rim"}, {r.BackSight, "/back_sight"}, {r.FrontSight, "/front_sight"}} {
		if edge.long == r.Longest() {
			notes = shortNote(notes, edge.long, worked+edge.name)
			break
		}
	}
	var most measure.Angle
	for _, c := range []SlopedCorner{left, right} {
		tilt := c.Setting(p).Tilt
		most = max(most, tilt, -tilt)
	}
	if most > SteepTilt {
		notes = append(notes, explain.Note{Level: explain.Caution, Code: CautionSteep, Path: worked, Values: []explain.Term{
			explain.NewTerm("blade", shownAngle(most), ""),
			explain.NewTerm("limit", SteepTilt, ""),
		}})
	}
	return notes
}

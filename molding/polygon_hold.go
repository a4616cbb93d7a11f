package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// LeastHold is the hold of a lip, with all the play on one side, below which the
// notes on polygons advise otherwise (common practice).
const LeastHold = measure.Inch / 8

// Play is how far side i of the panel can come away from the back of its rabbet: half
// the allowance, and as far again as the panel moves when it is pushed away from the
// rail, into the corner across from it. In a rectangle that is the allowance. With an
// odd number of equal sides it is more: half as much again in a triangle. A side
// without molding is taken to stop the panel as a rail does.
//
// The corner across lies between two sides; with the angles by which these turn from
// being parallel to side i, one to each side,
//
//	play = allowance x cos(one / 2) x cos(other / 2) / cos((one + other) / 2)
func (f PolygonFrame) Play(panel plane.Polygon, i int) measure.Length {
	one, other := across(panel, i)
	return played(f.Allowance, one, other)
}

// across are the two angles of [PolygonFrame.Play]. Two sides that are parallel make
// both nothing.
func across(panel plane.Polygon, i int) (one, other measure.Angle) {
	one, other = straight, straight
	var turned measure.Angle
	for k := 1; k < panel.Len(); k++ {
		turned += panel.Turn(i + k)
		off := turned % measure.Turn
		if off < 0 {
			off += measure.Turn
		}
		if off -= straight; off < 0 {
			one = min(one, -off)
		} else {
			other = min(other, off)
		}
	}
	if other == 0 {
		return 0, 0
	}
	return one, other
}

// played is the play of an allowance, no more than [plane.Reach]: a needle has no end
// of it.
func played(allowance measure.Length, one, other measure.Angle) measure.Length {
	l := (fineUnit * allowance).Cos(one / 2).Cos(other / 2)
	l = l.OverSin(measure.RightAngle - (one+other)/2)
	if l < 0 || l > fineUnit*plane.Reach {
		return plane.Reach
	}
	return fromFine(l)
}

// holdNotes say of each molding where its lip does not hold the panel, or hardly.
func (f PolygonFrame) holdNotes(notes []explain.Note, p Polygon, at PolygonPlaces) []explain.Note {
	for j, s := range f.Sections {
		worst, most := -1, measure.Length(-1)
		for i := range p.Rails {
			if len(f.Sections) > 1 && i != j || s.IsZero() {
				continue
			}
			if play := f.Play(p.Panel, i); play > most {
				worst, most = i, play
			}
		}
		if worst < 0 {
			continue
		}
		one, other := across(p.Panel, worst)
		notes = hold{
			section: s, allowance: f.Allowance, one: one, other: other,
			path: (at.Worked + "/rails").Index(worst), lip: (at.Frame + "/sections").Index(j) + "/lip", total: at.Frame + "/allowance",
		}.notes(notes)
	}
	return notes
}

// A hold is of one lip, across from a corner.
type hold struct {
	section          Section
	allowance        measure.Length
	one, other       measure.Angle
	path, lip, total explain.Path
}

func (h hold) notes(notes []explain.Note) []explain.Note {
	play := played(h.allowance, h.one, h.other)
	bite := h.section.Lip - play
	if bite >= LeastHold {
		return notes
	}
	n := explain.Note{Level: explain.Advice, Code: ThinBite, Path: h.path, Values: []explain.Term{
		explain.NewTerm("lip", h.section.Lip, h.lip),
		explain.NewTerm("play", play, ""),
		explain.NewTerm("bite", bite, ""),
	}}
	if bite <= 0 {
		n.Level, n.Code = explain.Warning, DropsOut
	}
	// The play goes with the allowance, but for a nanometer of rounding.
	if wanted := h.section.Lip - LeastHold; wanted > 0 && 0 < play && play < plane.Reach {
		to, _ := h.allowance.Scale(int64(wanted), int64(play))
		for range 2 {
			if played(to, h.one, h.other) > wanted {
				to--
			}
		}
		if to >= leastPlay && played(to, h.one, h.other) <= wanted {
			n.Changes = append(n.Changes, explain.Change{Path: h.total, To: explain.Of(to), Bound: explain.AtMost})
		}
	}
	if lip := play + LeastHold; lip < h.section.Face {
		n.Changes = append(n.Changes, explain.Change{Path: h.lip, To: explain.Of(lip), Bound: explain.AtLeast})
	}
	return append(notes, n)
}

package molding

import (
	"errors"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Codes of the notes on frames of other than four sides.
const (
	OddFlats   explain.Code = "polygon.odd_flats"
	OddPoints  explain.Code = "polygon.odd_points"
	NoSight    explain.Code = "polygon.no_sight"
	RailsClash explain.Code = "polygon.rails_clash"
	RailsCross explain.Code = "polygon.rails_cross"
	SquareEnds explain.Code = "polygon.square_ends"
)

// PolygonPlaces are where the fields stand that formulas and notes speak of.
type PolygonPlaces struct {
	Frame  explain.Path // the frame as decided
	Panel  explain.Path // the panel as decided
	Worked explain.Path // the frame worked out
}

// RegularNotes says what to know about a frame around a regular panel, cut on a saw
// that swings so far from square, 0 where that is not known: also where its lip does
// not hold the panel, and where its rails are short.
func (f Frame) RegularNotes(p RegularPanel, r Regular, reach measure.Angle, at PolygonPlaces) []explain.Note {
	notes := []explain.Note{{Level: explain.Caution, Code: CautionSaw, Path: at.Worked + "/long_point"}}
	notes = shortNote(notes, r.LongPoint, at.Worked+"/long_point")
	if p.Sides%2 == 1 && p.Across != plane.OneSide {
		n := explain.Note{Level: explain.Advice, Code: OddFlats, Path: at.Panel + "/across", Values: []explain.Term{
			explain.NewTerm("sides", p.Sides, at.Panel+"/sides"), explain.NewTerm("size", p.Size, at.Panel+"/size")}}
		if p.Across == plane.Points {
			n.Code = OddPoints
		}
		notes = append(notes, n)
	}
	if r.Sight <= 0 {
		notes = append(notes, explain.Note{Level: explain.Warning, Code: NothingSeen, Path: at.Worked + "/sight", Values: []explain.Term{
			explain.NewTerm("lip", f.Lip, at.Frame+"/lip"), explain.NewTerm("opening", r.Opening, at.Worked+"/opening")}})
	}
	if f.Kind != Floater {
		if f.Allowance == 0 {
			notes = append(notes, explain.Note{Level: explain.Warning, Code: NoAllowance, Path: at.Frame + "/allowance"})
		}
		h := hold{
			section: Section{Face: f.Face, Lip: f.Lip}, allowance: f.Allowance,
			path: at.Worked + "/opening", lip: at.Frame + "/lip", total: at.Frame + "/allowance",
		}
		if p.Sides%2 == 1 { // the corner across
			h.one, h.other = r.Saw, r.Saw
		}
		notes = h.notes(notes)
	}
	return append(notes, RailEnd{Saw: r.Saw, Edge: r.Edge}.ReachNotes(reach, at.Worked)...)
}

// Notes says what to know about the frame p: how it is cut, rails that are short, sight
// edges that leave nothing to see, rails that run into one another, lips that do not
// hold the panel or hardly, ends that are square, ends that the saw does not reach.
func (f PolygonFrame) Notes(p Polygon, at PolygonPlaces) []explain.Note {
	notes := []explain.Note{{Level: explain.Caution, Code: CautionSaw, Path: at.Worked + "/rails"}}
	shortest := -1
	for i, r := range p.Rails {
		if !r.IsZero() && (shortest < 0 || r.Long < p.Rails[shortest].Long) {
			shortest = i
		}
	}
	if shortest >= 0 {
		notes = shortNote(notes, p.Rails[shortest].Long, (at.Worked+"/rails").Index(shortest)+"/long")
	}
	notes = f.lostNote(notes, p, NoSight, f.SightEdge, at)
	if p.Closed() {
		notes = f.lostNote(notes, p, RailsClash, f.Outside, at)
	} else if one, other, found := f.cross(p); found {
		rails := at.Worked + "/rails"
		notes = append(notes, explain.Note{Level: explain.Warning, Code: RailsCross, Path: rails.Index(one), Values: []explain.Term{
			explain.NewTerm("rail_number", one+1, ""),
			explain.NewTerm("other_number", other+1, ""),
		}})
	}
	if f.Allowance == 0 {
		notes = append(notes, explain.Note{Level: explain.Warning, Code: NoAllowance, Path: at.Frame + "/allowance"})
	}
	notes = f.holdNotes(notes, p, at)
	for i, r := range p.Rails {
		here := (at.Worked + "/rails").Index(i)
		for _, e := range []struct {
			end  RailEnd
			name explain.Path
		}{{r.Start, "/start"}, {r.Finish, "/finish"}} {
			switch {
			case r.IsZero():
			case e.end.Square:
				notes = append(notes, explain.Note{Level: explain.Advice, Code: SquareEnds, Path: here + e.name})
			default:
				notes = append(notes, e.end.ReachNotes(f.Reach, here+e.name)...)
			}
		}
	}
	return notes
}

// lostNote says that there is no such outline, and how far its sides may move.
func (f PolygonFrame) lostNote(notes []explain.Note, p Polygon, code explain.Code, of func(plane.Polygon) (plane.Polygon, error), at PolygonPlaces) []explain.Note {
	_, err := of(p.Panel)
	var e *plane.Error
	if !errors.As(err, &e) {
		return notes
	}
	n := explain.Note{Level: explain.Warning, Code: code, Path: at.Worked + "/rails"}
	if e.At >= 0 {
		n.Path = n.Path.Index(e.At)
	}
	most := measure.Length(e.Limit.N)
	if e.Limit.Kind != explain.LengthKind {
		most = 0
	}
	n.Values = []explain.Term{explain.NewTerm("limit", most, "")}
	// With one molding all round, that is the lip, or the face beyond the rabbet.
	if half, _ := f.Allowance.Half(); len(f.Sections) == 1 && most > 0 {
		s := f.Sections[0]
		switch {
		case code == NoSight && f.sight(s) < 0:
			n.Changes = []explain.Change{{Path: at.Frame + "/sections/0/lip", To: explain.Of(most + half), Bound: explain.AtMost}}
		case code == RailsClash && most > half-s.Lip:
			n.Changes = []explain.Change{{Path: at.Frame + "/sections/0/face", To: explain.Of(most - half + s.Lip), Bound: explain.AtMost}}
		}
	}
	return append(notes, n)
}

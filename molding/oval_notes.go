package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on oval frames.
const (
	CautionRouter explain.Code = "caution.router"
	OvalWidth     explain.Code = "oval.width_differs"
	OvalSharp     explain.Code = "oval.sharp_bend"
)

// LeastBend is the radius of a bend below which the notes on ovals say that a usual
// cutter does not get into it (common practice: router bits for rabbets are 1 1/4 in
// wide).
const LeastBend = 5 * measure.Inch / 8

// WidthSeen is the difference in a face's width from which on the notes on ovals speak
// of it: a 64th of an inch, the finest mark of a rule.
const WidthSeen = measure.Inch / 64

// OvalNotes says what to know about the oval frame o: how it is shaped, lips that hide
// everything or do not hold, how much narrower a turned face gets between the axes, and
// bends too sharp for a cutter.
func (f Frame) OvalNotes(o Oval, at Places) []explain.Note {
	var notes []explain.Note
	if f.Made != ReadyMade {
		notes = append(notes, explain.Note{Level: explain.Caution, Code: CautionRouter, Path: at.Worked + "/outside"})
	}
	for _, name := range []string{"width", "height"} {
		if o.Sight.Along(name) <= 0 {
			notes = append(notes, explain.Note{
				Level: explain.Warning, Code: NothingSeen, Path: (at.Worked + "/sight").Child(name),
				Values: []explain.Term{
					explain.NewTerm("lip", f.Lip, at.Frame+"/lip"),
					explain.NewTerm("opening", o.Opening.Along(name), (at.Worked + "/opening").Child(name)),
				},
			})
		}
	}
	if f.Kind != Floater {
		if f.Allowance == 0 {
			notes = append(notes, explain.Note{Level: explain.Warning, Code: NoAllowance, Path: at.Frame + "/allowance"})
		}
		notes = hold{
			section: Section{Face: f.Face, Lip: f.Lip}, allowance: f.Allowance,
			path: at.Worked + "/opening", lip: at.Frame + "/lip", total: at.Frame + "/allowance",
		}.notes(notes)
	}
	if narrower := turnedNarrower(o); narrower >= WidthSeen {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: OvalWidth, Path: at.Worked + "/outside/apart/most", Values: []explain.Term{
			explain.NewTerm("face", f.Face, at.Frame+"/face"),
			explain.NewTerm("narrower", narrower, ""),
		}})
	}
	if t := o.Sight.Tightest; 0 < t && t < LeastBend {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: OvalSharp, Path: at.Worked + "/sight/tightest", Values: []explain.Term{
			explain.NewTerm("tightest", t, at.Worked+"/sight/tightest"),
			explain.NewTerm("limit", LeastBend, ""),
		}})
	}
	return notes
}

// turnedNarrower is how much narrower than along the axes a turned face is between
// them: what its outside lacks of a parallel to its sight edge.
func turnedNarrower(o Oval) measure.Length {
	if o.Ring.Rings != Turned {
		return 0
	}
	return OvalRing{True: TrueSight, Rings: Turned}.curve(o.Outside.Size, o.Sight.Size).Apart.Most
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on floaters.
const (
	NoGap        explain.Code = "float.no_gap"
	UnevenGap    explain.Code = "float.uneven_gap"
	ShortLedge   explain.Code = "float.short_ledge"
	FloatProud   explain.Code = "float.proud"
	FloatUnknown explain.Code = "float.depth_unknown"
	FloatHeld    explain.Code = "float.nothing_holds"
)

// A Float is how art stands in a floater: the gap on each side where the art is
// largest and where it is smallest, in the middle of the opening.
type Float struct{ Least, Most measure.Size }

// FloatOf returns how art of these sizes stands in an opening. Of an odd
// nanometer the half below is taken.
func FloatOf(opening, greatest, least measure.Size) Float {
	return Float{Least: halfOf(opening, greatest), Most: halfOf(opening, least)}
}

func halfOf(opening, art measure.Size) measure.Size {
	var gap measure.Size
	gap.Width, _ = (opening.Width - art.Width).Half()
	gap.Height, _ = (opening.Height - art.Height).Half()
	return gap
}

// screwBed is what a ledge has to offer a screw under the art (common practice).
const screwBed = measure.Inch / 2

// FloatNotes says whether the gap of a floater is one, and even, and whether the
// art has a ledge to stand on. Worked is where the float stands in the plan,
// usual the gap that the shop usually leaves.
func (f Frame) FloatNotes(x Float, usual measure.Length, worked explain.Path, at Places) []explain.Note {
	var notes []explain.Note
	gap := explain.NewTerm("gap", f.Gap, at.Frame+"/gap")
	if f.Gap == 0 {
		n := explain.Note{Level: explain.Warning, Code: NoGap, Path: at.Frame + "/gap"}
		if usual > 0 {
			n.Changes = []explain.Change{{Path: n.Path, To: explain.Of(usual)}}
		}
		notes = append(notes, n)
	}
	for _, name := range []string{"width", "height"} {
		least, most := x.Least.Along(name), x.Most.Along(name)
		if f.Gap > 0 && most-least > f.Gap/2 {
			notes = append(notes, explain.Note{Level: explain.Advice, Code: UnevenGap, Path: (worked + "/most").Child(name),
				Values: []explain.Term{
					explain.NewTerm("least", least, (worked + "/least").Child(name)),
					explain.NewTerm("most", most, (worked + "/most").Child(name)),
				}})
		}
	}
	if widest := max(x.Most.Width, x.Most.Height); f.Ledge > 0 && f.Ledge < widest+screwBed {
		n := explain.Note{Level: explain.Advice, Code: ShortLedge, Path: at.Frame + "/ledge",
			Values: []explain.Term{explain.NewTerm("ledge", f.Ledge, at.Frame+"/ledge"), gap,
				explain.NewTerm("wanted", widest+screwBed, "")},
			Changes: []explain.Change{{Path: at.Frame + "/ledge", To: explain.Of(widest + screwBed), Bound: explain.AtLeast}}}
		if f.Ledge <= widest {
			n.Level = explain.Warning // the art stands on nothing
		}
		notes = append(notes, n)
	}
	return notes
}

// FloatDepthNotes says whether the art stands out in front of the floater.
// Worked is where the depth stands in the plan.
func (f Frame) FloatDepthNotes(d Depth, worked explain.Path, at Places) []explain.Note {
	n := explain.Note{
		Level: explain.Advice, Path: worked + "/clear",
		Values: []explain.Term{
			explain.NewTerm("package", d.Package, worked+"/package"),
			explain.NewTerm("rabbet", f.Rabbet, at.Frame+"/rabbet"),
			explain.NewTerm("wanted", d.Wanted, worked+"/wanted"),
		},
		Changes: f.deeper(d.Wanted, at),
	}
	switch {
	case f.Rabbet == 0:
		n.Code = FloatUnknown
	case d.Clear < 0:
		n.Code = FloatProud
		n.Values = append(n.Values, explain.NewTerm("proud", -d.Clear, ""))
	default:
		return nil
	}
	return []explain.Note{n}
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes of this room.
const (
	CautionSaw   explain.Code = "caution.saw"
	NoAllowance  explain.Code = "fit.no_allowance"
	NothingSeen  explain.Code = "fit.nothing_seen"
	WideFace     explain.Code = "fit.wide_face"
	DoesNotGoIn  explain.Code = "fit.does_not_go_in"
	NoPlay       explain.Code = "fit.no_play"
	Tight        explain.Code = "fit.tight"
	DropsOut     explain.Code = "fit.drops_out"
	ThinBite     explain.Code = "fit.thin_bite"
	DepthUnknown explain.Code = "depth.unknown"
	Proud        explain.Code = "depth.proud"
	NoRoom       explain.Code = "depth.no_room"
	LittleRoom   explain.Code = "depth.little_room"
)

// Notes says what to know about the frame r as such: how it is cut, lips that
// hide everything, an allowance of nothing. Usual is the allowance that the shop
// usually takes.
func (f Frame) Notes(r Rectangle, usual measure.Length, at Places) []explain.Note {
	var notes []explain.Note
	if f.Made != ReadyMade { // of a frame that is there, no rail is cut
		notes = append(notes, explain.Note{Level: explain.Caution, Code: CautionSaw, Path: at.Worked + "/outside"})
	}
	if f.Section() {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: MetalSection, Path: at.Frame + "/wood"})
	}
	for _, name := range []string{"width", "height"} {
		if sight := r.Sight.Along(name); sight <= 0 {
			opening := (at.Worked + "/opening").Child(name)
			notes = append(notes, explain.Note{
				Level: explain.Warning, Code: NothingSeen, Path: (at.Worked + "/sight").Child(name),
				Values: []explain.Term{
					explain.NewTerm("lip", f.Lip, at.Frame+"/lip"),
					explain.NewTerm("opening", r.Opening.Along(name), opening),
				},
			})
		}
	}
	if largest := max(r.Package.Width, r.Package.Height); f.Face > largest {
		notes = append(notes, explain.Note{
			Level: explain.Advice, Code: WideFace, Path: at.Frame + "/face",
			Values: []explain.Term{
				explain.NewTerm("face", f.Face, at.Frame+"/face"),
				explain.NewTerm("package", largest, ""),
			},
		})
	}
	if f.Allowance > 0 || f.Kind == Floater {
		return notes
	}
	n := explain.Note{Level: explain.Warning, Code: NoAllowance, Path: at.Frame + "/allowance"}
	if usual > 0 {
		n.Changes = []explain.Change{{Path: n.Path, To: explain.Of(usual)}}
	}
	return append(notes, n)
}

// A Lying is a part in the rabbet of which [Frame.FitNotes] speaks.
type Lying struct {
	Fit Fit
	Cut Cut
	// Part is where the part stands in the order, Worked where its fit stands
	// in the plan.
	Part, Worked explain.Path
	// Bite is the hold below which the notes advise otherwise.
	Bite measure.Length
	// Grows is a part that needs its clearance: less of it is no way to hold the
	// part better.
	Grows bool
}

// FitNotes says whether a part goes in and stays in, once per dimension in
// which it does not.
func (f Frame) FitNotes(opening measure.Size, l Lying, at Places) []explain.Note {
	notes := f.fitNotes(nil, "width", opening.Width, l.Fit.Size.Width, l.Fit.Play.Width, l.Fit.Bite.Width, l, at)
	if !l.Cut.Given() && l.Fit.Play.Width == l.Fit.Play.Height && l.Fit.Bite.Width == l.Fit.Bite.Height {
		return notes // the same would be said twice
	}
	return f.fitNotes(notes, "height", opening.Height, l.Fit.Size.Height, l.Fit.Play.Height, l.Fit.Bite.Height, l, at)
}

func (f Frame) fitNotes(notes []explain.Note, name explain.Path, opening, size, play, bite measure.Length, l Lying, at Places) []explain.Note {
	axis := "/" + name
	values := []explain.Term{
		explain.NewTerm("size", size, l.Worked+"/size"+axis),
		explain.NewTerm("opening", opening, at.Worked+"/opening"+axis),
		explain.NewTerm("play", play, l.Worked+"/play"+axis),
		explain.NewTerm("lip", f.Lip, at.Frame+"/lip"),
		explain.NewTerm("bite", bite, l.Worked+"/bite"+axis),
	}
	needed := l.Cut.Play(f.Allowance)
	var smaller []explain.Change
	if to := opening - needed; l.Cut.Given() && needed > 0 && to > 0 && needed < f.Lip { // the lip still holds it
		smaller = []explain.Change{{Path: l.Part + "/size" + axis, To: explain.Of(to), Bound: explain.AtMost}}
	}
	switch {
	case play < 0:
		return append(notes, explain.Note{
			Level: explain.Warning, Code: DoesNotGoIn, Path: l.Worked + "/play" + axis,
			Values: append(values, explain.NewTerm("over", -play, "")), Changes: smaller,
		})
	case play == 0 && l.Cut.Given():
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: NoPlay, Path: l.Worked + "/play" + axis, Values: values, Changes: smaller,
		})
	case play < needed:
		notes = append(notes, explain.Note{
			Level: explain.Advice, Code: Tight, Path: l.Worked + "/play" + axis,
			Values: append(values, explain.NewTerm("needed", needed, "")), Changes: smaller,
		})
	}
	if bite >= l.Bite && bite > 0 {
		return notes
	}
	if slack := f.Lip - bite; slack != play { // art that varies slides farther where it is smallest
		values[2] = explain.NewTerm("play", slack, "")
	}
	n := explain.Note{Level: explain.Advice, Code: ThinBite, Path: l.Worked + "/bite" + axis, Values: values}
	if bite <= 0 {
		n.Level, n.Code = explain.Warning, DropsOut
	}
	n.Changes = f.holdBetter(axis, opening, play, bite, l, at)
	return append(notes, n)
}

// leastPlay is the least play that a change proposes: a package cannot be cut
// much closer (common practice).
const leastPlay = measure.Inch / 32

// holdBetter lists what would give a part a bite: a larger part, less
// clearance, less allowance, a wider lip.
func (f Frame) holdBetter(axis explain.Path, opening, play, bite measure.Length, l Lying, at Places) []explain.Change {
	wanted := max(l.Bite, measure.Nanometer)
	most := play - (wanted - bite) // the play that leaves the wanted bite
	var changes []explain.Change
	switch {
	case most < leastPlay: // nothing can be cut that close
	case l.Cut.Given() && most >= l.Cut.Play(f.Allowance):
		changes = append(changes, explain.Change{Path: l.Part + "/size" + axis, To: explain.Of(opening - most), Bound: explain.AtLeast})
	case !l.Cut.Given() && !l.Grows && l.Cut.Clearance > f.Allowance && most >= f.Allowance:
		changes = append(changes, explain.Change{Path: l.Part + "/clearance", To: explain.Of(most), Bound: explain.AtMost})
	case !l.Cut.Given() && most >= l.Cut.Clearance && play == f.Allowance:
		changes = append(changes, explain.Change{Path: at.Frame + "/allowance", To: explain.Of(most), Bound: explain.AtMost})
	}
	// Nobody changes the molding for a part that was cut too small.
	if lip := f.Lip + wanted - bite; lip < f.Face && !l.Cut.Given() {
		changes = append(changes, explain.Change{Path: at.Frame + "/lip", To: explain.Of(lip), Bound: explain.AtLeast})
	}
	return changes
}

// deeper is the change to a rabbet so deep. There is none to a rabbet of
// nothing, which is not given, nor to one that the molding is not high enough
// for: that takes another molding.
func (f Frame) deeper(wanted measure.Length, at Places) []explain.Change {
	if wanted <= 0 || f.Height > 0 && wanted >= f.Height {
		return nil
	}
	return []explain.Change{{Path: at.Frame + "/rabbet", To: explain.Of(wanted), Bound: explain.AtLeast}}
}

// DepthNotes says whether the package fits the rabbet's depth with room for
// the points, or for the spring clips of a metal section. Worked is where the depth
// stands in the plan.
func (f Frame) DepthNotes(d Depth, points measure.Length, worked explain.Path, at Places) []explain.Note {
	n := explain.Note{
		Level: explain.Warning, Path: worked + "/clear",
		Values: []explain.Term{
			explain.NewTerm("package", d.Package, worked+"/package"),
			explain.NewTerm("rabbet", f.Rabbet, at.Frame+"/rabbet"),
			explain.NewTerm("clear", d.Clear, worked+"/clear"),
			explain.NewTerm("points", points, at.Shop+"/points"),
			explain.NewTerm("wanted", d.Wanted, worked+"/wanted"),
		},
		Changes: f.deeper(d.Wanted, at),
	}
	switch {
	case f.Rabbet == 0:
		n.Level, n.Code = explain.Advice, DepthUnknown
	case d.Clear < 0:
		n.Code = Proud
		n.Values = append(n.Values, explain.NewTerm("proud", -d.Clear, ""), explain.NewTerm("strip", points-d.Clear, ""))
	case d.Clear >= points:
		return nil
	case d.Clear == 0:
		n.Code = NoRoom
	default:
		n.Level, n.Code = explain.Advice, LittleRoom
	}
	if f.Section() {
		n.Code = inChannel(n.Code)
	}
	return []explain.Note{n}
}

package framing

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// Codes of the notes about the piece as a whole.
const (
	Rounded        explain.Code = "order.rounded"
	Unused         explain.Code = "order.unused"
	Turned         explain.Code = "order.turned"
	TouchesGlazing explain.Code = "art.touches_glazing"
	CloseToGlazing explain.Code = "art.close_to_glazing"
	NoThickness    explain.Code = "art.no_thickness"
	NothingBehind  explain.Code = "art.nothing_behind"
	NoBacking      explain.Code = "art.no_backing"
	NoGlazing      explain.Code = "art.no_glazing"
)

// closeToGlazing is the least that a mat should keep art off the glazing: a
// thin 4-ply board (.040 in, a supplier's guide; the Library of Congress guide
// to matting asks for 4-ply at least).
const closeToGlazing = 40 * measure.Inch / 1000

// notes gathers what the rooms and the whole have to say, in the order of rank.
func (w worker) notes(x exactPiece, s shownPiece) []explain.Note {
	frame := w.framePlaces()
	notes := w.Frame.Notes(x.frame, w.shop.Allowance, frame)
	if !w.Mat.IsZero() {
		notes = append(notes, w.Mat.Notes(w.given(w.shop), x.mat, w.matPlaces())...)
		notes = w.appendUnused(notes)
	}
	notes = w.appendFits(notes, x, frame)
	notes = w.appendCoveredArt(notes, x, frame)
	notes = append(notes, w.Frame.DepthNotes(x.depth, w.shop.Points, w.at.worked+"/depth", frame)...)
	notes = w.appendGlass(notes, x)
	notes = w.appendArt(notes)
	notes = w.appendTurned(notes)
	notes = w.appendShown(notes, x, s)
	slices.SortStableFunc(notes, func(a, b explain.Note) int { return rank(a.Level) - rank(b.Level) })
	for i := range notes {
		notes[i] = notes[i].In(w.format)
	}
	return notes
}

// rank orders the levels: what keeps the piece from going together, what can
// hurt, what one would do otherwise.
func rank(l explain.Level) int {
	return slices.Index([]explain.Level{explain.Warning, explain.Caution, explain.Advice}, l)
}

func (w worker) framePlaces() molding.Places {
	return molding.Places{Frame: w.at.order + "/frame", Worked: w.at.worked + "/frame", Shop: orderRoot + "/shop"}
}

func (w worker) matPlaces() mat.Places {
	return mat.Places{
		Art: w.at.order + "/art", Mat: w.at.order + "/mat",
		Frame: w.at.order + "/frame", Worked: w.at.worked + "/mat",
	}
}

func (w worker) appendUnused(notes []explain.Note) []explain.Note {
	for _, p := range w.Mat.Unused(NewMat(w.shop)) {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: Unused, Path: w.at.order + "/mat" + p})
	}
	return notes
}

// appendFits looks at every part in the rabbet. A part that lies there just as
// the package does has nothing of its own to say.
func (w worker) appendFits(notes []explain.Note, x exactPiece, at molding.Places) []explain.Note {
	opening := x.frame.Opening
	var pkg molding.Fit
	for _, l := range x.layers {
		if l.part == MatLayer || l.part == ArtLayer && l.loose {
			pkg = w.fit(opening, l.size, l.least)
		}
	}
	number := 0
	for _, l := range x.layers {
		if !l.loose {
			continue
		}
		worked := (w.at.worked + "/layers").Index(number)
		number++
		fit := w.fit(opening, l.size, l.least)
		isPackage := l.part == MatLayer || l.part == ArtLayer
		if !isPackage && l.toFit && fit.Play == pkg.Play && fit.Bite == pkg.Bite {
			continue
		}
		fits := w.Frame.FitNotes(opening, molding.Lying{
			Fit: fit, Cut: l.cut, Part: l.at, Worked: worked, Bite: w.shop.Bite,
			Grows: l.part == GlazingLayer && w.Glazing.Grows(),
		}, at)
		notes = append(notes, fits...)
	}
	return notes
}

// appendCoveredArt looks at the room that art under a mat has, which lies loose
// in no opening of its own.
func (w worker) appendCoveredArt(notes []explain.Note, x exactPiece, at molding.Places) []explain.Note {
	if w.Mat.IsZero() {
		return notes
	}
	art := w.Art.Greatest()
	for _, name := range []string{"width", "height"} {
		play := x.frame.Opening.Along(name) - art.Along(name)
		n := explain.Note{Level: explain.Warning, Path: (w.at.order + "/art").Child(name)}
		switch {
		case play < 0:
			n.Code = molding.DoesNotGoIn
		case play == 0:
			n.Code = molding.NoPlay
		case play < w.Frame.Allowance:
			n.Level, n.Code = explain.Advice, molding.Tight
		default:
			continue
		}
		n.Values = []explain.Term{
			explain.NewTerm("size", art.Along(name), ""),
			explain.NewTerm("opening", x.frame.Opening.Along(name), (at.Worked + "/opening").Child(name)),
			explain.NewTerm("over", -play, ""),
			explain.NewTerm("play", play, ""),
			explain.NewTerm("needed", w.Frame.Allowance, at.Frame+"/allowance"),
		}
		n.Changes = w.roomForArt(name, w.Frame.Allowance-play)
		notes = append(notes, n)
	}
	return notes
}

// roomForArt is the change that makes the mat, and the opening with it, larger
// by so much.
func (w worker) roomForArt(name string, more measure.Length) []explain.Change {
	b, at := w.Mat.Borders, w.at.order+"/mat/borders"
	c := explain.Change{Path: at + "/right", To: explain.Of(b.Right + more), Bound: explain.AtLeast}
	switch {
	case b.By == mat.ByBoard:
		c.Path, c.To = (at + "/board").Child(name), explain.Of(b.Board.Along(name)+more)
	case name == "width":
	case b.Weight == mat.Unweighted:
		c.Path, c.To = at+"/bottom", explain.Of(b.Bottom+more)
	default:
		c.Path, c.To = at+"/top", explain.Of(b.Top+more)
	}
	return []explain.Change{c}
}

// appendGlass adds the cautions of panes and mirrors.
func (w worker) appendGlass(notes []explain.Note, x exactPiece) []explain.Note {
	if !w.Glazing.IsZero() {
		pane := w.fit(x.frame.Opening, x.layers[0].size, x.layers[0].least)
		notes = append(notes, w.Glazing.Notes(pane.Size, pane.Play, w.at.order+"/glazing")...)
	}
	if w.Art.Kind == Mirror {
		notes = append(notes, glazing.GlassNotes(w.Art.Greatest(), w.at.order+"/art")...)
	}
	return notes
}

// appendArt looks at what the art lies against and how thick it is.
func (w worker) appendArt(notes []explain.Note) []explain.Note {
	if !w.Glazing.IsZero() && w.Art.Kind != Mirror {
		n := explain.Note{Path: w.at.order + "/glazing"}
		switch {
		case w.Mat.IsZero():
			n.Level, n.Code = explain.Warning, TouchesGlazing
			notes = append(notes, n)
		case w.Mat.Thickness < closeToGlazing:
			n.Level, n.Code = explain.Advice, CloseToGlazing
			n.Values = []explain.Term{
				explain.NewTerm("thickness", w.Mat.Thickness, w.at.order+"/mat/thickness"),
				explain.NewTerm("wanted", closeToGlazing, ""),
			}
			n.Changes = []explain.Change{{Path: w.at.order + "/mat/thickness", To: explain.Of(closeToGlazing), Bound: explain.AtLeast}}
			notes = append(notes, n)
		}
	}
	if w.Art.Kind == Paper && w.Glazing.IsZero() {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoGlazing, Path: w.at.order + "/art"})
	}
	switch {
	case !w.Backing.IsZero():
	case w.Mat.Window.By == mat.ByGap && w.Mount.IsZero():
		notes = append(notes, explain.Note{Level: explain.Warning, Code: NothingBehind, Path: w.at.order + "/art"})
	case w.Art.Kind == Paper || w.Art.Kind == Canvas:
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoBacking, Path: w.at.order + "/art"})
	}
	if w.Art.Kind != Paper && w.Art.Thickness == 0 {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoThickness, Path: w.at.order + "/art/thickness"})
	}
	return notes
}

// appendTurned says where a given size lies across the art: perhaps its width
// and height were exchanged.
func (w worker) appendTurned(notes []explain.Note) []explain.Note {
	given := []struct {
		at   explain.Path
		size measure.Size
	}{
		{"/mat/window", w.Mat.Window.Size},
		{"/mat/borders/board", w.Mat.Borders.Board},
		{"/glazing/size", w.Glazing.Size},
		{"/mount/size", w.Mount.Size},
		{"/backing/size", w.Backing.Size},
	}
	art := w.Art.Least()
	for _, g := range given {
		if (art.Width < art.Height && g.size.Width > g.size.Height) || (art.Width > art.Height && g.size.Width < g.size.Height) {
			notes = append(notes, explain.Note{Level: explain.Advice, Code: Turned, Path: w.at.order + g.at})
		}
	}
	return notes
}

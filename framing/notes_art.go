package framing

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/molding"
)

// closeToGlazing is the least that a mat should keep art off the glazing: a
// thin 4-ply board (.040 in, a supplier's guide; the Library of Congress guide
// to matting asks for 4-ply at least).
const closeToGlazing = 40 * measure.Inch / 1000

// appendGlass adds the cautions of panes and mirrors.
func (w *worker) appendGlass(notes []explain.Note, x exactPiece) []explain.Note {
	if !w.Glazing.IsZero() {
		pane := fit(w.inner(), x.inner.Opening, x.layers[0].size, x.layers[0].least)
		for _, n := range w.Glazing.Notes(pane.Size, pane.Play, w.at.order+"/glazing") {
			notes = append(notes, w.growsUnderLip(n))
		}
	}
	if w.Art.Kind == Mirror {
		notes = append(notes, glazing.GlassNotes(w.Art.Greatest(), w.at.order+"/art")...)
	}
	return notes
}

// growsUnderLip is a note of the glazing as it is in this frame: room for a pane to
// grow in is no remedy where the lip would no longer hold the pane.
func (w *worker) growsUnderLip(n explain.Note) explain.Note {
	if n.Code != glazing.LittlePlay || len(n.Changes) == 0 {
		return n
	}
	lip, bite := w.inner().Lip, w.shop.Bite
	clearance := measure.Length(n.Changes[0].To.N)
	if clearance <= lip-bite {
		return n
	}
	n.Code, n.Changes = WiderLip, nil
	n.Values = append(n.Values, explain.NewTerm("lip", lip, w.innerPlaces().Frame+"/lip"), explain.NewTerm("wanted", clearance+bite, ""))
	return n
}

// appendSpacer looks at whether a spacer shows.
func (w *worker) appendSpacer(notes []explain.Note, x exactPiece) []explain.Note {
	if w.Spacer.IsZero() {
		return notes
	}
	at := w.innerPlaces()
	hides := glazing.Hides{
		Cover: w.inner().Lip, Name: "lip", Path: at.Frame + "/lip",
		Play: w.inner().Room(), PlayPath: at.Frame + "/allowance",
	}
	if w.floats() {
		hides.PlayPath = ""
	}
	if !w.spacerUnderGlazing() { // the mat hides it up to its own window, and slides with it
		border, borders := x.mat.Cut, w.at.worked+"/mat/cut"
		if n := w.Mat.Under.Count(); n > 0 {
			border, borders = x.mat.Under[n-1].FromTop, (w.at.worked+"/mat/under").Index(n-1)+"/from_top"
		}
		hides = glazing.Hides{Mat: true, Cover: border.Left, Name: "border", Path: borders + "/left"}
		for _, name := range []string{"right", "top", "bottom"} {
			if b := side(border, name); b < hides.Cover {
				hides.Cover, hides.Path = b, borders.Child(name)
			}
		}
	}
	return append(notes, w.Spacer.Notes(hides, w.at.order+"/spacer")...)
}

// appendMass says of which parts the mass is not known, or not for certain.
func (w *worker) appendMass(notes []explain.Note, x exactPiece) []explain.Note {
	for _, part := range x.masses.unknown {
		n := explain.Note{Level: explain.Advice, Code: MassUnknown, Path: w.at.order.Child(string(part))}
		switch part {
		case ArtLayer:
			n.Changes = nil
		case FrameLayer, LinerLayer:
			n.Code, n.Path = HeightUnknown, n.Path+"/height"
		case UnderMatLayer, MatLayer:
			n.Path = w.at.order + "/mat"
		}
		notes = append(notes, n)
	}
	if slices.ContainsFunc(x.masses.parts, partMass.uncertain) {
		at := w.at.worked + "/mass"
		notes = append(notes, explain.Note{Level: explain.Advice, Code: MassUncertain, Path: at + "/total", Values: []explain.Term{
			explain.NewTerm("total", x.masses.total, at+"/total"), explain.NewTerm("heaviest", x.masses.heaviest, at+"/heaviest"),
		}})
	}
	return notes
}

// appendArt looks at what the art lies against and how thick it is.
func (w *worker) appendArt(notes []explain.Note, x exactPiece) []explain.Note {
	if !w.Glazing.IsZero() && w.Art.Kind != Mirror {
		var off measure.Length // how far the art is kept off the glazing
		for _, l := range x.layers {
			switch l.part {
			case SpacerLayer, MatLayer, UnderMatLayer:
				off += l.thickness
			case ArtLayer:
				if l.inside {
					off -= min(l.thickness, w.Spacer.Depth)
				}
			}
		}
		n := explain.Note{Path: w.at.order + "/glazing"}
		switch {
		case off == 0 && w.Mat.IsZero():
			n.Level, n.Code = explain.Warning, TouchesGlazing
			notes = append(notes, n)
		case off < closeToGlazing:
			n.Level, n.Code = explain.Advice, CloseToGlazing
			n.Values = []explain.Term{
				explain.NewTerm("thickness", off, ""),
				explain.NewTerm("wanted", closeToGlazing, ""),
			}
			if !w.Mat.IsZero() && w.Spacer.IsZero() && w.Mat.Under.IsZero() {
				n.Changes = []explain.Change{{Path: w.at.order + "/mat/thickness", To: explain.Of(closeToGlazing), Bound: explain.AtLeast}}
			}
			notes = append(notes, n)
		}
	}
	if w.floats() && (!w.Glazing.IsZero() || !w.Mat.IsZero() || !w.Backing.IsZero() || !w.Mount.IsZero()) {
		notes = append(notes, explain.Note{Level: explain.Warning, Code: molding.FloatHeld, Path: w.innerPlaces().Frame + "/kind"})
	}
	if w.Art.Kind == Paper && w.Glazing.IsZero() {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoGlazing, Path: w.at.order + "/art"})
	}
	notes = w.appendBehind(notes)
	if w.Art.Kind != Paper && w.Art.Thickness == 0 {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoThickness, Path: w.at.order + "/art/thickness"})
	}
	return notes
}

// appendTurned says where a given size lies across the art: perhaps its width
// and height were exchanged.
func (w *worker) appendTurned(notes []explain.Note) []explain.Note {
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

package framing

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/hang"
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
	NoMount        explain.Code = "art.no_mount"
	NoBacking      explain.Code = "art.no_backing"
	MirrorBack     explain.Code = "art.mirror_back"
	NoGlazing      explain.Code = "art.no_glazing"
	WiderLip       explain.Code = "fit.wider_lip"
	Brace          explain.Code = "stretch.brace"
	LinerHeight    explain.Code = "liner.no_height"
	MassUnknown    explain.Code = "mass.unknown"
	HeightUnknown  explain.Code = "mass.no_height"
	MassUncertain  explain.Code = "mass.uncertain"
)

// notes gathers what the rooms and the whole have to say, in the order of rank.
func (w *worker) notes(x exactPiece, s shownPiece) []explain.Note {
	var notes []explain.Note
	if !Shapes || w.form() != polygonal {
		notes = w.frameNotes(x)
	}
	if Shapes && w.shaped() {
		notes = w.appendShape(notes, x)
	}
	if Shapes {
		notes = w.appendSkew(notes)
	}
	if !w.Mat.IsZero() {
		notes = append(notes, w.Mat.Notes(w.given(w.shop), x.mat, w.matPlaces())...)
	}
	notes = w.appendUnused(notes)
	notes = w.appendFits(notes, x)
	notes = w.appendCoveredArt(notes, x)
	notes = w.appendDepth(notes, x)
	notes = w.appendGlass(notes, x)
	notes = w.appendSpacer(notes, x)
	notes = w.appendWell(notes, x)
	notes = w.appendArt(notes, x)
	notes = w.appendBrace(notes)
	notes = w.appendTurned(notes)
	notes = w.appendMass(notes, x)
	if !w.Hang.IsZero() {
		notes = append(notes, w.Hang.Notes(w.hanging(x), x.hang, w.hangPlaces(x))...)
	}
	notes = w.appendShown(notes, x, s)
	ranked := make([]explain.Note, 0, len(notes))
	for _, level := range [...]explain.Level{explain.Warning, explain.Caution, explain.Advice} {
		for _, n := range notes {
			if n.Level == level {
				ranked = append(ranked, n.In(w.format))
			}
		}
	}
	return ranked
}

// frameNotes is what to know about the frame, and about the liner what is not
// the same for both.
func (w *worker) frameNotes(x exactPiece) []explain.Note {
	notes := w.Frame.Notes(x.frame, w.shop.Allowance, w.framePlaces())
	if !w.lined() {
		return notes
	}
	for _, n := range w.Liner.Notes(x.inner, w.shop.Allowance, w.linerPlaces()) {
		same := func(o explain.Note) bool { return o.Code == n.Code }
		if n.Level != explain.Caution || !slices.ContainsFunc(notes, same) {
			notes = append(notes, n)
		}
	}
	return notes
}

// appendDepth looks at the depth of the rabbets, and at the gap of a floater.
func (w *worker) appendDepth(notes []explain.Note, x exactPiece) []explain.Note {
	inner, at, depth := w.inner(), w.innerPlaces(), w.at.worked+"/depth"
	if w.floats() {
		float := molding.FloatOf(x.inner.Opening, w.Art.Greatest(), w.Art.Least())
		notes = append(notes, inner.FloatNotes(float, w.shop.Gap, w.at.worked+"/float", at)...)
		notes = append(notes, inner.FloatDepthNotes(x.depth, depth, at)...)
	} else {
		notes = append(notes, inner.DepthNotes(x.depth, w.points(inner), depth, at)...)
	}
	if !w.lined() {
		return notes
	}
	if w.Liner.Height == 0 {
		return append(notes, explain.Note{Level: explain.Advice, Code: LinerHeight, Path: at.Frame + "/height"})
	}
	if w.Frame.Kind == molding.Floater {
		return append(notes, w.Frame.FloatDepthNotes(x.linerDepth, w.at.worked+"/liner_depth", w.framePlaces())...)
	}
	return append(notes, w.Frame.DepthNotes(x.linerDepth, w.shop.Points, w.at.worked+"/liner_depth", w.framePlaces())...)
}

func (w *worker) framePlaces() molding.Places {
	return molding.Places{Frame: w.at.order + "/frame", Worked: w.at.worked + "/frame", Shop: orderRoot + "/shop"}
}

func (w *worker) linerPlaces() molding.Places {
	return molding.Places{Frame: w.at.order + "/liner", Worked: w.at.worked + "/liner", Shop: orderRoot + "/shop"}
}

// innerPlaces are those of the frame that the package lies in.
func (w *worker) innerPlaces() molding.Places {
	if w.lined() {
		return w.linerPlaces()
	}
	return w.framePlaces()
}

// holderPlaces are those of the frame that a layer lies in.
func (w *worker) holderPlaces(l layer) molding.Places {
	if l.in == LinerLayer {
		return w.linerPlaces()
	}
	return w.framePlaces()
}

func (w *worker) matPlaces() mat.Places {
	at := mat.Places{
		Art: w.artAt, Mat: w.at.order + "/mat",
		Frame: w.innerPlaces().Frame, Worked: w.at.worked + "/mat",
	}
	if w.floats() {
		at.Play = explain.Times(explain.N(2), explain.T("gap", w.inner().Gap, at.Frame+"/gap"))
	}
	return at
}

// appendUnused names the fields that hold something and do not count.
func (w *worker) appendUnused(notes []explain.Note) []explain.Note {
	unused := func(path explain.Path) {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: Unused, Path: path})
	}
	if !w.Mat.IsZero() {
		for _, p := range w.Mat.Unused(NewMat(w.shop)) {
			unused(w.at.order + "/mat" + p)
		}
	}
	if !w.Art.Stretch.IsZero() && w.Art.Kind != Canvas {
		unused(w.at.order + "/art/stretch")
	}
	if w.Hang.BelowRight != 0 && w.Hang.By != hang.Rings {
		unused(w.at.order + "/hang/below_right")
	}
	return notes
}

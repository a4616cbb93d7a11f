package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes about a fineness that is too coarse for the piece.
const (
	Uncovered     explain.Code = "shown.uncovered"
	UncoveredEver explain.Code = "shown.uncovered_at_any"
	Binds         explain.Code = "shown.binds"
	BindsEver     explain.Code = "shown.binds_at_any"
	Vanishes      explain.Code = "shown.vanishes"
	VanishesEver  explain.Code = "shown.vanishes_at_any"
)

// appendShown says where the shown set lets an edge slip that the exact one
// covers, or shows nothing of what is there, and which fineness would not.
func (w *worker) appendShown(notes []explain.Note, x exactPiece, s shownPiece) []explain.Note {
	if w.slips(x, s) {
		notes = append(notes, w.tooCoarse(x, Uncovered, UncoveredEver, func(s shownPiece) bool { return w.slips(x, s) }))
	}
	if w.binds(x, s) {
		notes = append(notes, w.tooCoarse(x, Binds, BindsEver, func(s shownPiece) bool { return w.binds(x, s) }))
	}
	if w.vanishes(x, s) {
		notes = append(notes, w.tooCoarse(x, Vanishes, VanishesEver, func(s shownPiece) bool { return w.vanishes(x, s) }))
	}
	return notes
}

// tooCoarse is the note on a fault of the shown set, with the coarsest finer
// step that does not have it.
func (w *worker) tooCoarse(x exactPiece, code, ever explain.Code, fault func(shownPiece) bool) explain.Note {
	fineness := explain.NewTerm("fineness", w.format.Step, orderRoot+"/show/fineness")
	n := explain.Note{Level: explain.Warning, Code: ever, Path: fineness.Path, Values: []explain.Term{fineness}}
	for f, ok := w.format.Finer(); ok; f, ok = f.Finer() {
		if fault(w.show(x, f)) {
			continue
		}
		n.Code = code
		n.Values = append(n.Values, explain.NewTerm("finer", f.Step, ""))
		n.Changes = []explain.Change{{Path: fineness.Path, To: explain.Of(f.Step)}}
		break
	}
	return n
}

// slips reports whether, in the shown set, an edge can slip from under the
// lip that the exact set covers wherever its part slides.
func (w *worker) slips(x exactPiece, s shownPiece) bool {
	for i, l := range x.layers {
		if !l.loose {
			continue
		}
		frame, r := w.holder(x, l)
		exact := fit(frame, r.Opening, l.size, l.least).Bite
		shown := fit(frame, s.holder(l).opening, s.layers[i], shownLeast(l, s.layers[i])).Bite
		if lost(exact, shown) {
			return true
		}
	}
	return false
}

// binds reports whether, in the shown set, a part that is not cut to fit has less
// play than it needs and exactly has. It can where the outside is fixed and the
// rails are rounded down.
func (w *worker) binds(x exactPiece, s shownPiece) bool {
	for i, l := range x.layers {
		if !l.loose || l.toFit {
			continue
		}
		frame, r := w.holder(x, l)
		needed := w.play(l)
		exact, shown := frame.FitOf(r.Opening, l.size).Play, frame.FitOf(s.holder(l).opening, s.layers[i]).Play
		if exact.Width >= needed && shown.Width < needed || exact.Height >= needed && shown.Height < needed {
			return true
		}
	}
	return false
}

// vanishes reports whether something that is to be cut or seen is shown as
// nothing.
func (w *worker) vanishes(x exactPiece, s shownPiece) bool {
	if lost(x.frame.Sight, s.frame.sight) || lost(x.inner.Sight, s.inner.sight) {
		return true
	}
	for i, l := range x.layers {
		if l.loose && lost(l.size, s.layers[i]) {
			return true
		}
	}
	for i := range w.Mat.Under.Count() {
		if exact, shown := x.mat.Under[i], s.mat.Under[i]; lost(exact.Window, shown.Window) || exact.Seen > 0 && shown.Seen <= 0 {
			return true
		}
	}
	return !w.Mat.IsZero() && (lost(x.mat.Window, s.mat.Window) ||
		lostSide(x.mat.Cut, s.mat.Cut) || lostSide(x.mat.Visible, s.mat.Visible))
}

// lost reports whether a dimension is there exactly and not shown.
func lost(exact, shown measure.Size) bool {
	return exact.Width > 0 && shown.Width <= 0 || exact.Height > 0 && shown.Height <= 0
}

// lostSide reports whether a side is there exactly and not shown.
func lostSide(exact, shown measure.Sides) bool {
	return exact.Left > 0 && shown.Left <= 0 || exact.Right > 0 && shown.Right <= 0 ||
		exact.Top > 0 && shown.Top <= 0 || exact.Bottom > 0 && shown.Bottom <= 0
}

// holder is the frame that a layer lies in.
func (s shownPiece) holder(l layer) shownFrame {
	if l.in == LinerLayer {
		return s.inner
	}
	return s.frame
}

// shownLeast is the smallest a layer of a shown size can be.
func shownLeast(l layer, shown measure.Size) measure.Size {
	if l.toFit || l.part == LinerLayer {
		return shown
	}
	return l.least
}

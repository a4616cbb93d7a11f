package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// appendFits looks at every part in the rabbets. A part that lies there just as
// the package does has nothing of its own to say.
func (w *worker) appendFits(notes []explain.Note, x exactPiece) []explain.Note {
	var pkg molding.Fit
	for _, l := range x.layers {
		if l.loose && (l.part == MatLayer || l.part == ArtLayer) {
			frame, r := w.holder(x, l)
			pkg = fit(frame, r.Opening, l.size, l.least)
		}
	}
	number := 0
	for _, l := range x.layers {
		if !l.loose {
			continue
		}
		worked := (w.at.worked + "/layers").Index(number)
		number++
		frame, r := w.holder(x, l)
		lies := fit(frame, r.Opening, l.size, l.least)
		isPackage := l.part == MatLayer || l.part == ArtLayer
		if !isPackage && l.toFit && lies.Play == pkg.Play && lies.Bite == pkg.Bite {
			continue
		}
		fits := frame.FitNotes(r.Opening, molding.Lying{
			Fit: lies, Cut: l.cut, Part: l.at, Worked: worked, Bite: w.shop.Bite,
			Grows: l.part == GlazingLayer && w.Glazing.Grows(),
		}, w.holderPlaces(l))
		notes = append(notes, fits...)
	}
	return notes
}

// appendCoveredArt looks at the room that art under a mat has, which lies loose
// in no opening of its own.
func (w *worker) appendCoveredArt(notes []explain.Note, x exactPiece) []explain.Note {
	if w.Mat.IsZero() || w.floats() {
		return notes
	}
	art, at, wanted := w.Art.Greatest(), w.innerPlaces(), w.inner().Room()
	for _, name := range []string{"width", "height"} {
		play := x.inner.Opening.Along(name) - art.Along(name)
		n := explain.Note{Level: explain.Warning, Path: (w.at.order + "/art").Child(name)}
		switch {
		case play < 0:
			n.Code = molding.DoesNotGoIn
		case play == 0:
			n.Code = molding.NoPlay
		case play < wanted:
			n.Level, n.Code = explain.Advice, molding.Tight
		default:
			continue
		}
		n.Values = []explain.Term{
			explain.NewTerm("size", art.Along(name), ""),
			explain.NewTerm("opening", x.inner.Opening.Along(name), (at.Worked + "/opening").Child(name)),
			explain.NewTerm("over", -play, ""),
			explain.NewTerm("play", play, ""),
			explain.NewTerm("needed", wanted, at.Frame+"/allowance"),
		}
		n.Changes = w.roomForArt(name, wanted-play)
		notes = append(notes, n)
	}
	return notes
}

// roomForArt is the change that makes the mat, and the opening with it, larger
// by so much.
func (w *worker) roomForArt(name string, more measure.Length) []explain.Change {
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

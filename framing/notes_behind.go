package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// appendBehind looks at what lies behind the art: what it is fixed to, and what
// closes the package.
func (w *worker) appendBehind(notes []explain.Note) []explain.Note {
	n := explain.Note{Level: explain.Advice, Path: w.at.order + "/art"}
	gap := w.Mat.Window.By == mat.ByGap && w.Mount.IsZero()
	switch bare := w.Backing.IsZero(); {
	case gap && bare:
		n.Level, n.Code = explain.Warning, NothingBehind
	case w.floats(): // the art is screwed to the ledge, and open behind
		return notes
	case gap:
		n.Code = NoMount
	case !bare:
		return notes
	case w.Art.Kind == Mirror:
		n.Code = MirrorBack
	case w.Art.Kind == Paper || w.Art.Kind == Canvas:
		n.Code = NoBacking
	default:
		return notes
	}
	return append(notes, n)
}

// longestUnbraced is how long a bar under a canvas does without a brace: makers of
// stretchers print 24 to 44 in (60 to 112 cm), and common practice lies between.
const longestUnbraced = 30 * measure.Inch

// appendBrace says where a canvas that is to be stretched wants a brace across
// its bars.
func (w *worker) appendBrace(notes []explain.Note) []explain.Note {
	bars := w.Art.Least()
	bar, name := bars.Width, explain.Path("/width")
	if bars.Height > bar {
		bar, name = bars.Height, "/height"
	}
	if !w.stretched() || bar <= longestUnbraced {
		return notes
	}
	return append(notes, explain.Note{
		Level: explain.Advice, Code: Brace, Path: w.at.order + "/art/stretch",
		Values: []explain.Term{explain.NewTerm("bars", bar, w.at.worked+"/canvas/bars"+name)},
	})
}

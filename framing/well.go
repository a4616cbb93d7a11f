package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// WellShallow is the code of the warning that art is thicker than the spacer around it.
const WellShallow explain.Code = "spacer.well_shallow"

// inWell reports whether the art lies in the well that a spacer under the mat leaves
// in its middle. The spacer then stands on what is behind the art, and what counts in
// the depth is the thicker of the two (geometry). Art that reaches under the strips on
// any side lies behind them.
func (w *worker) inWell(x exactPiece) bool {
	if w.Mat.IsZero() || w.Spacer.IsZero() || w.spacerUnderGlazing() {
		return false
	}
	art, window := w.Art.Greatest(), x.mat.Window
	over := func(name string) measure.Length { // past the window, on each side
		half, rest := (art.Along(name) - window.Along(name)).Half()
		return half + rest
	}
	wide, high, strip := over("width"), over("height"), w.Spacer.Width
	return x.mat.Cut.Left-wide >= strip && x.mat.Cut.Right-wide >= strip && x.mat.Cut.Top-high >= strip && x.mat.Cut.Bottom-high >= strip
}

// appendWell looks at whether art in a well is thicker than that is deep.
func (w *worker) appendWell(notes []explain.Note, x exactPiece) []explain.Note {
	at := w.at.order + "/spacer/depth"
	for i := range x.layers {
		l := &x.layers[i]
		if !l.inside || l.thickness <= w.Spacer.Depth {
			continue
		}
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: WellShallow, Path: at,
			Values: []explain.Term{
				explain.NewTerm("thickness", l.thickness, l.thicknessAt), explain.NewTerm("spacer", w.Spacer.Depth, at),
			},
			Changes: []explain.Change{{Path: at, To: explain.Of(l.thickness), Bound: explain.AtLeast}},
		})
	}
	return notes
}

// deep are the terms of what a frame's depth holds: those of its parts, where art and
// the spacer around it are the thicker of both.
func (e *explainer) deep(in LayerPart, parts []explain.Expr) []explain.Expr {
	i := 0
	for _, l := range e.x.layers {
		if l.in != in {
			continue
		}
		if l.inside {
			both := explain.Most(parts[i-1], parts[i])
			return append(append(append([]explain.Expr(nil), parts[:i-1]...), both), parts[i+1:]...)
		}
		i++
	}
	return parts
}

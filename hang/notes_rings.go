package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// appendRings looks at rings that stand at two heights: level nails would tilt
// the piece.
func (m *mender) appendRings(notes []explain.Note) []explain.Note {
	if !m.has(uneven) {
		return notes
	}
	differ := m.l.Below.Left - m.l.Below.Right
	differ = max(differ, -differ)
	angle, _ := measure.RoundTo(measure.Slope(differ, m.l.Span), angleStep, measure.Nearest)
	// Across the width of the frame, as it would be seen against a level line.
	tilt, _ := m.g.Outside.Width.Scale(int64(differ), int64(m.l.Span))
	n := explain.Note{Level: explain.Advice, Code: UnevenRings, Path: m.at.Worked + "/below/right", Values: []explain.Term{
		explain.NewTerm("differ", differ, ""),
		explain.NewTerm("angle", angle, ""),
		explain.NewTerm("tilt", tilt, ""),
	}}
	h := m.h
	h.BelowRight = m.l.Below.Left
	n.Changes = m.add(nil, uneven, h, explain.Change{Path: m.at.Hang + "/below_right", To: explain.Of(h.BelowRight)})
	return append(notes, n)
}

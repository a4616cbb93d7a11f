package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
)

// appendWood looks at where the hangers are screwed on: beside the rabbet there
// is wood, over it and past the rail there is none.
func (m *mender) appendWood(notes []explain.Note) []explain.Note {
	if !m.has(offWood) {
		return notes
	}
	h, middle := m.h, m.g.middle()
	n := explain.Note{Level: explain.Warning, Code: OffWood, Path: m.at.Hang + "/inset"}
	screw := explain.NewTerm("inset", m.h.screw(m.g, m.l), n.Path)
	h.Inset = middle
	if m.h.By == Sawtooth {
		n.Code, n.Path = SawtoothOff, m.at.Hang+"/below"
		screw.Key, screw.Path = "below", n.Path
		h.Below, h.Inset = middle, m.h.Inset
	}
	n.Values = []explain.Term{screw, explain.NewTerm("wood", m.g.wood(), "")}
	n.Changes = m.add(nil, offWood, h, explain.Change{Path: n.Path, To: explain.Of(middle)})
	return append(notes, n)
}

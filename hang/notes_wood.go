package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
)

// appendWood looks at where the hangers are screwed on: beside the rabbet there
// is wood, over it and past the rail there is none.
func (m *mender) appendWood(notes []explain.Note) []explain.Note {
	h, wood := m.h, explain.NewTerm("wood", m.g.wood(), "")
	if m.has(offWood) {
		n := explain.Note{Level: explain.Warning, Code: OffWood, Path: m.at.Hang + "/inset"}
		n.Values = []explain.Term{explain.NewTerm("inset", m.h.inset(m.g), n.Path), wood}
		h.Inset = m.g.middle()
		n.Changes = m.add(nil, offWood, h, explain.Change{Path: n.Path, To: explain.Of(h.Inset)})
		notes = append(notes, n)
	}
	if m.has(offTop) {
		n := explain.Note{Level: explain.Warning, Code: SawtoothOff, Path: m.at.Hang + "/below"}
		n.Values = []explain.Term{explain.NewTerm("below", m.l.Below.Left, n.Path), wood}
		h.Below = m.g.middle()
		n.Changes = m.add(nil, offTop, h, explain.Change{Path: n.Path, To: explain.Of(h.Below)})
		n.Changes = m.rings(n.Changes, offTop)
		notes = append(notes, n)
	}
	return notes
}

package hang

import "github.com/fairmiter/fairmiter/framing/explain"

// appendSawtooth looks at whether one sawtooth is enough for the piece, whatever
// it is rated for: two short nails in the top rail carry all of it.
func (m *mender) appendSawtooth(notes []explain.Note) []explain.Note {
	if m.has(tooHeavy) {
		n := explain.Note{Level: explain.Warning, Code: SawtoothHeavy, Path: m.at.Hang + "/by", Values: []explain.Term{
			explain.NewTerm("heaviest", m.g.Heaviest, m.at.Heaviest),
			explain.NewTerm("most", SawtoothMass, ""),
		}}
		n.Changes = m.rings(nil, tooHeavy)
		n.Changes = m.by(n.Changes, tooHeavy, Wire)
		notes = append(notes, n)
	}
	if m.has(tooLarge) {
		width, height := m.g.Outside.Width, m.g.Outside.Height
		side := explain.NewTerm("side", width, m.at.Outside+"/width")
		if height < width {
			side = explain.NewTerm("side", height, m.at.Outside+"/height")
		}
		n := explain.Note{Level: explain.Advice, Code: SawtoothLarge, Path: m.at.Hang + "/by", Values: []explain.Term{
			side, explain.NewTerm("most", SawtoothSide, ""),
		}}
		n.Changes = m.rings(nil, tooLarge)
		n.Changes = m.by(n.Changes, tooLarge, Wire)
		notes = append(notes, n)
	}
	return notes
}

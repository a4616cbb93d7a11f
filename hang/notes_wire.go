package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// appendWire looks at how steep a wire is and whether the piece keeps level.
func (m *mender) appendWire(notes []explain.Note) []explain.Note {
	if m.l.Rise == 0 {
		return notes
	}
	// Whole percent: how many times the weight the wire carries.
	part, _ := measure.MulDiv(explain.Whole, int64(m.l.Leg), int64(2*m.l.Rise))
	part, _ = measure.RoundTo(part, explain.Percent, measure.Nearest)
	angle, _ := measure.RoundTo(m.l.Angle, angleStep, measure.Down)
	values := []explain.Term{
		explain.NewTerm("angle", angle, ""),
		explain.NewTerm("ratio", part, ""),
		explain.NewTerm("tension", m.l.Tension.Heaviest, m.at.Worked+"/tension/heaviest"),
	}
	if m.has(flat | low) {
		n := explain.Note{Level: explain.Advice, Code: LowWire, Path: m.at.Worked + "/angle", Values: values}
		if m.has(flat) {
			n.Level, n.Code = explain.Warning, FlatWire
		}
		if m.atAngle(LowAngle) < m.highest() {
			n.Changes = m.rise(n.Changes, flat|low, 0, explain.AtLeast)
		}
		n.Changes = m.twoHooks(n.Changes, flat|low)
		n.Changes = m.rings(n.Changes, flat|low)
		notes = append(notes, n)
	}
	if m.has(slides) {
		n := explain.Note{Level: explain.Advice, Code: OnlyFriction, Path: m.at.Worked + "/stable_rise", Values: []explain.Term{
			explain.NewTerm("stable_rise", m.l.StableRise, m.at.Worked+"/stable_rise"),
			explain.NewTerm("rise", m.l.Rise, m.at.Worked+"/rise"),
		}}
		n.Changes = m.twoHooks(nil, slides)
		if rise := m.l.StableRise + 1; max(rise, m.atAngle(LowAngle)+1) <= m.highest() {
			n.Changes = m.rise(n.Changes, slides, rise, explain.AtLeast)
		}
		n.Changes = m.rings(n.Changes, slides)
		notes = append(notes, n)
	}
	return notes
}

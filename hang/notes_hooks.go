package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// appendTop looks at what comes near the frame's top, or shows above it.
func (m *mender) appendTop(notes []explain.Note) []explain.Note {
	if !m.has(shows | nearTop) {
		return notes
	}
	n := explain.Note{Level: explain.Advice, Code: NearTop, Path: m.at.Worked + "/below/left"}
	drop := explain.NewTerm("drop", m.l.drop(), n.Path)
	switch {
	case m.l.Rise != 0:
		n.Path = m.at.Worked + "/wire_top"
	case m.l.Below.Right < m.l.Below.Left:
		n.Path = m.at.Worked + "/below/right"
	}
	drop.Path = n.Path
	n.Values = []explain.Term{
		drop,
		explain.NewTerm("below", m.l.Below.Left, m.at.Worked+"/below/left"),
		explain.NewTerm("nail_above", m.h.NailAbove, m.at.Hang+"/nail_above"),
		explain.NewTerm("hidden", m.h.Hidden, m.at.Hang+"/hidden"),
	}
	if m.l.Rise != 0 {
		n.Values = append(n.Values, explain.NewTerm("rise", m.l.Rise, m.at.Worked+"/rise"))
	}
	if m.has(shows) {
		n.Level, n.Code = explain.Warning, HookShows
		if m.l.drop() <= 0 {
			n.Code = WireShows
			n.Values = append(n.Values, explain.NewTerm("over", -m.l.drop(), ""))
		}
	}
	if m.l.Rise != 0 {
		n.Changes = m.rise(n.Changes, shows|nearTop, m.highest(), explain.AtMost)
	}
	n.Changes = m.twoHooks(n.Changes, shows|nearTop)
	n.Changes = m.lower(n.Changes, shows|nearTop, m.l.Rise+max(m.h.Hidden, m.h.NailAbove+measure.Nanometer))
	if m.has(shows) && m.l.drop() > 1 { // a shorter hook
		h := m.h
		h.NailAbove = tidy(h.NailAbove, m.l.drop()-1, measure.Down)
		n.Changes = m.add(n.Changes, shows, h, explain.Change{Path: m.at.Hang + "/nail_above", To: explain.Of(h.NailAbove), Bound: explain.AtMost})
	}
	if m.has(shows) {
		n.Changes = m.rings(n.Changes, shows)
	}
	return append(notes, n)
}

// appendNail says that the nails are not where the hooks bear. A sawtooth bears
// on the nail itself.
func (m *mender) appendNail(notes []explain.Note) []explain.Note {
	if m.h.NailAbove != 0 || m.h.By == Sawtooth {
		return notes
	}
	return append(notes, explain.Note{Level: explain.Advice, Code: NailUnknown, Path: m.at.Hang + "/nail_above"})
}

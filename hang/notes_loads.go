package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// appendHolds holds each of the three loads against what it hangs from.
func (m *mender) appendHolds(notes []explain.Note) []explain.Note {
	r, at := m.h.Ratings, m.at.Hang+"/ratings"
	// A piece that weighs nothing is one of unknown weight, and is said to be.
	unrated := func(notes []explain.Note, code explain.Code, field explain.Path, values ...explain.Term) []explain.Note {
		needed := measure.Force(values[0].Value.N)
		if needed <= 0 {
			return notes
		}
		return append(notes, explain.Note{Level: explain.Advice, Code: code, Path: at + field, Values: values, Changes: m.rating(field, needed)})
	}
	hanger := explain.NewTerm("hanger", m.l.Hanger.Heaviest, m.at.Worked+"/hanger/heaviest")
	hook := explain.NewTerm("hook", m.l.Hook.Heaviest, m.at.Worked+"/hook/heaviest")
	if m.l.Rise != 0 {
		needed := explain.NewTerm("needed", m.h.breaking(m.l), "")
		tension := explain.NewTerm("tension", m.l.Tension.Heaviest, m.at.Worked+"/tension/heaviest")
		factor := explain.NewTerm("factor", r.Factor, at+"/factor")
		switch {
		case m.has(breaks):
			n := explain.Note{Level: explain.Warning, Code: WireBreaks, Path: tension.Path, Values: []explain.Term{
				needed, tension, factor, explain.NewTerm("wire_breaks", r.WireBreaks, at+"/wire_breaks"),
			}}
			n.Changes = m.rating("/wire_breaks", m.h.breaking(m.l))
			n.Changes = m.steeper(n.Changes, breaks, r.WireBreaks/measure.Force(max(1, r.Factor)))
			n.Changes = m.twoHooks(n.Changes, breaks)
			n.Changes = m.rings(n.Changes, breaks)
			notes = append(notes, n)
		case r.WireBreaks == 0:
			notes = unrated(notes, WireUnrated, "/wire_breaks", needed, tension, factor)
		}
	}
	switch {
	case m.has(hangerGives):
		n := explain.Note{Level: explain.Warning, Code: HangerGives, Path: hanger.Path, Values: []explain.Term{
			hanger, explain.NewTerm("hanger_holds", r.HangerHolds, at+"/hanger_holds"),
		}}
		n.Changes = m.rating("/hanger_holds", m.l.Hanger.Heaviest)
		if m.l.Rise != 0 {
			n.Changes = m.steeper(n.Changes, hangerGives, r.HangerHolds)
			n.Changes = m.twoHooks(n.Changes, hangerGives)
		}
		n.Changes = m.rings(n.Changes, hangerGives)
		notes = append(notes, n)
	case r.HangerHolds == 0:
		notes = unrated(notes, HangerUnrated, "/hanger_holds", hanger)
	}
	switch {
	case m.has(hookGives):
		n := explain.Note{Level: explain.Warning, Code: HookGives, Path: hook.Path, Values: []explain.Term{
			hook, explain.NewTerm("hook_holds", r.HookHolds, at+"/hook_holds"),
		}}
		n.Changes = m.rating("/hook_holds", m.l.Hook.Heaviest)
		n.Changes = m.twoHooks(n.Changes, hookGives)
		n.Changes = m.rings(n.Changes, hookGives)
		notes = append(notes, n)
	case r.HookHolds == 0:
		notes = unrated(notes, HookUnrated, "/hook_holds", hook)
	}
	return notes
}

package framing_test

import (
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// slips reports whether some edge that the exact lengths cover, with all the
// play there, is not covered by the shown ones; drops whether the exact ones
// leave one bare already.
func slips(p framing.PiecePlan) (slips, drops bool) {
	for _, part := range p.Layers {
		for i, exact := range each(part.Bite.Exact()) {
			switch shown := each(part.Bite.Shown())[i]; {
			case exact <= 0:
				drops = true
			case shown <= 0:
				slips = true
			}
		}
	}
	return slips, drops
}

// vanishes reports whether something that is there exactly, to be cut or to be
// seen, is shown as nothing.
func vanishes(p framing.PiecePlan) bool {
	there := []framing.Figure{p.Frame.Sight.Width, p.Frame.Sight.Height, p.Liner.Sight.Width, p.Liner.Sight.Height}
	for _, u := range p.Mat.Under {
		there = append(there, u.Window.Width, u.Window.Height, u.Seen)
	}
	for _, l := range p.Layers {
		there = append(there, l.Size.Width, l.Size.Height)
	}
	m := p.Mat
	there = append(there, m.Window.Width, m.Window.Height)
	for _, s := range []framing.SidesFigure{m.Cut, m.Visible} {
		there = append(there, s.Left, s.Right, s.Top, s.Bottom)
	}
	return slices.ContainsFunc(there, func(f framing.Figure) bool { return f.Exact > 0 && f.Shown <= 0 })
}

// notes: an edge that can slip from under the lip is always told, and what the
// note promises holds when the order is worked again.
func (l *law) notes(t *testing.T, o framing.Order, seen map[string]int) {
	slip, drop := slips(l.plan)
	_, gone := note(l.plan, framing.Vanishes)
	_, goneEver := note(l.plan, framing.VanishesEver)
	l.that(!(gone && goneEver), "both notes on what vanishes at once")
	l.that(vanishes(l.plan) == (gone || goneEver), "something vanishes, or does not, and the note is wrong")
	uncovered, finer := note(l.plan, framing.Uncovered)
	_, ever := note(l.plan, framing.UncoveredEver)
	l.that(!(finer && ever), "both notes at once")
	l.that(slip == (finer || ever), "an edge slips from under the lip, or does not, and the note is wrong")
	l.that(drop == hasNote(l.plan, molding.DropsOut), "an edge drops out exactly, or does not, and the note is wrong")
	if !slip {
		seen["holds"]++
	}
	if drop {
		seen[string(molding.DropsOut)]++
	}
	if !slip || len(l.broken) > 0 {
		return
	}
	all := measure.Steps(o.Show.As.Style())
	rest := all[slices.Index(all, l.step)+1:] // the finer ones, coarsest first
	if ever {
		seen[string(framing.UncoveredEver)]++
	} else {
		seen[string(framing.Uncovered)]++
		named := measure.Length(uncovered.Changes[0].To.N)
		at := slices.Index(rest, named)
		if at < 0 {
			l.that(false, "the named fineness is not a finer one", named)
			return
		}
		o.Show.Fineness = named
		again, _ := slips(work(t, o).Pieces[0])
		l.that(!again, "an edge still slips at the named fineness", named)
		rest = rest[:at]
	}
	for _, o.Show.Fineness = range rest {
		again, _ := slips(work(t, o).Pieces[0])
		l.that(again, "a coarser fineness than the named one would do", o.Show.Fineness)
	}
}

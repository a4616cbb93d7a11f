package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A mender looks for changes that mend a layout.
type mender struct {
	h  Hanging
	g  Given
	l  Layout
	at Places
	f  fault // all that is wrong with the layout
}

// angleStep is how fine a change of an angle is.
const angleStep = measure.Degree / 10

// takes reports whether h, changed, is without the fault and has no new one that
// is as grave. Each change is worked out whole before it is proposed. What a
// piece that did not hang at all would have to hold was not known, and is not
// asked.
func (m *mender) takes(h Hanging, mended fault) bool {
	var c explain.Checker
	h.Check(&c, "")
	if c.Problems() != nil {
		return false
	}
	l := h.Lay(m.g)
	f := h.faults(m.g, l)
	fresh := f &^ m.f
	switch {
	case f&mended != 0:
		return false
	case !m.l.Hangs():
		return fresh&refused&^loads == 0 && (l.Hangs() || mended&unlaid == 0)
	case m.f&mended&refused != 0:
		return fresh&refused == 0
	}
	return fresh == 0
}

// add appends a change that turns h into changed, where it takes.
func (m *mender) add(changes []explain.Change, mended fault, changed Hanging, c explain.Change) []explain.Change {
	if !m.takes(changed, mended) {
		return changes
	}
	return append(changes, c)
}

// twoHooks proposes two hooks for a wire that has one.
func (m *mender) twoHooks(changes []explain.Change, mended fault) []explain.Change {
	if m.h.By != Wire || m.h.Hooks == 2 {
		return changes
	}
	h := m.h
	h.Hooks = 2
	return m.add(changes, mended, h, explain.Change{Path: m.at.Hang + "/hooks", To: explain.Of(2)})
}

// rings proposes two rings for what hangs by something else.
func (m *mender) rings(changes []explain.Change, mended fault) []explain.Change {
	return m.by(changes, mended, Rings)
}

// by proposes another way to hang.
func (m *mender) by(changes []explain.Change, mended fault, way Way) []explain.Change {
	if m.h.By == way {
		return changes
	}
	h := m.h
	h.By = way
	return m.add(changes, mended, h, explain.Change{Path: m.at.Hang + "/by", Word: string(way)})
}

// rise proposes another rise, in the field that says how tight the wire is. It
// never proposes a wire under [LowAngle]: where that is too high, something else
// has to mend it.
func (m *mender) rise(changes []explain.Change, mended fault, rise measure.Length, b explain.Bound) []explain.Change {
	low := m.atAngle(LowAngle) + 1 // which is no hair under it
	if rise < low {
		if b == explain.AtMost {
			return changes
		}
		rise = low
	}
	h, run := m.h, m.l.run()
	c := explain.Change{Bound: b}
	switch h.Taut.By {
	case ByRise:
		h.Taut.Rise = rise
		c.Path, c.To = "/taut/rise", explain.Of(rise)
	case ByWire:
		wire := 2*measure.Hypot(run, rise) + m.l.Spread
		if b == explain.AtLeast {
			wire += 4 // two legs, each rounded once here and once in its layout
		} else {
			wire -= 4
		}
		h.Taut.Wire = wire
		c.Path, c.To = "/taut/wire", explain.Of(wire)
	default:
		direction := measure.Down
		if b == explain.AtLeast {
			direction = measure.Up
		}
		angle, _ := measure.RoundTo(measure.Slope(rise, run), angleStep, direction)
		if rise == low {
			angle = LowAngle
		}
		h.Taut.Angle = angle
		c.Path, c.To = "/taut/angle", explain.Of(angle)
	}
	c.Path = m.at.Hang + c.Path
	return m.add(changes, mended, h, c)
}

// highest is the greatest rise that keeps the wire hidden, and the hook too.
func (m *mender) highest() measure.Length {
	return m.l.Below.Left - max(m.h.Hidden, m.h.NailAbove+measure.Nanometer)
}

// steeper proposes the least rise, hidden by the frame, with which the wire
// carries no more than limit.
func (m *mender) steeper(changes []explain.Change, mended fault, limit measure.Force) []explain.Change {
	weight := measure.Weight(m.g.Heaviest)
	run := m.l.run()
	holds := func(rise measure.Length) bool {
		tension, _ := measure.MulDiv(weight, int64(measure.Hypot(run, rise)), int64(2*rise))
		return tension <= limit
	}
	lo, hi := m.l.Rise, m.highest()
	if hi <= lo || !holds(hi) {
		return changes
	}
	for hi-lo > 1 { // the rise lo carries too much, hi does not
		if mid := lo + (hi-lo)/2; holds(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return m.rise(changes, mended, hi, explain.AtLeast)
}

// atAngle is the rise of a wire at an angle.
func (m *mender) atAngle(a measure.Angle) measure.Length { return m.l.run().Tan(a) }

// tidy brings a length that is to be set to where a tape has a mark: to whole
// millimeters, or to sixteenths of an inch where the present one is in inches.
// Below the first mark it is left as it is.
func tidy(present, l measure.Length, d measure.Direction) measure.Length {
	step := measure.Millimeter
	if present%(measure.Inch/64) == 0 {
		step = measure.Inch / 16
	}
	if rounded, _ := measure.RoundTo(l, step, d); rounded > 0 {
		return rounded
	}
	return l
}

// lower proposes hangers farther down.
func (m *mender) lower(changes []explain.Change, mended fault, below measure.Length) []explain.Change {
	h := m.h
	if below <= h.Below || h.By == Rings && h.BelowRight != 0 {
		return changes
	}
	h.Below = below
	return m.add(changes, mended, h, explain.Change{Path: m.at.Hang + "/below", To: explain.Of(below), Bound: explain.AtLeast})
}

// rating proposes hardware that holds what it has to.
func (m *mender) rating(field explain.Path, needed measure.Force) []explain.Change {
	if needed <= 0 || needed > explain.MaxForce {
		return nil
	}
	return []explain.Change{{Path: m.at.Hang + "/ratings" + field, To: explain.Of(needed), Bound: explain.AtLeast}}
}

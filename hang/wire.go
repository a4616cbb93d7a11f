package hang

import "github.com/fairmiter/fairmiter/framing/measure"

// layWire stretches the wire and works out what hangs on it. Where it cannot be
// stretched so, there are no marks.
func (h Hanging) layWire(l *Layout, g Given, weight Load) {
	l.Span = h.span(g)
	if h.Hooks == 2 {
		l.Spread = h.Spread
		if l.Spread == 0 {
			l.Spread, _ = l.Span.Half()
		}
	}
	if l.Span <= 0 || l.run() <= 0 || !h.stretch(l) {
		return
	}
	l.Wire = l.Taut + 2*h.Tails
	l.WireTop = l.Below.Left - l.Rise
	if h.Hooks != 2 && 2*l.Below.Left < g.Outside.Height {
		l.StableRise, _ = l.Span.Scale(int64(l.Span), int64(2*(g.Outside.Height-2*l.Below.Left)))
	}
	l.load(weight, h.Hooks)
	if h.Hooks == 2 {
		left, right := apart(l.Spread)
		l.Marks = []Mark{h.mark(g, left, l.WireTop), h.mark(g, right, l.WireTop)}
	} else {
		l.Marks = []Mark{h.mark(g, 0, l.WireTop)}
	}
}

// stretch works out rise, angle and path of the wire, and reports whether there
// is a rise.
func (h Hanging) stretch(l *Layout) bool {
	run := l.run()
	switch h.Taut.By {
	case ByRise:
		l.Rise = h.Taut.Rise
	case ByWire:
		l.Taut = h.Taut.Wire
		if l.Leg, _ = (l.Taut - l.Spread).Half(); l.Leg <= run {
			return false
		}
		l.Rise = measure.Leg(l.Leg, run)
	default:
		l.Angle = h.Taut.Angle
		l.Rise = run.Tan(l.Angle)
	}
	if l.Rise <= 0 {
		return false
	}
	if h.Taut.By == ByRise || h.Taut.By == ByWire {
		l.Angle = measure.Slope(l.Rise, run)
	}
	if h.Taut.By != ByWire {
		l.Leg = measure.Hypot(run, l.Rise)
		l.Taut = 2*l.Leg + l.Spread
	}
	return true
}

// run is how far a sloping part of the wire goes across.
func (l Layout) run() measure.Length {
	run, _ := (l.Span - l.Spread).Half()
	return run
}

// load works out the loads of a stretched wire.
func (l *Layout) load(weight Load, hooks int) {
	each := func(w measure.Force) (tension, pull, hook measure.Force) {
		tension, _ = measure.MulDiv(w, int64(l.Leg), int64(2*l.Rise))
		pull, _ = measure.MulDiv(w, int64(l.run()), int64(2*l.Rise))
		hook = w
		if hooks == 2 {
			hook = measure.Force(measure.Hypot(measure.Length(halfOf(w)), measure.Length(tension-pull)))
		}
		return tension, pull, hook
	}
	l.Tension.Nominal, l.Pull.Nominal, l.Hook.Nominal = each(weight.Nominal)
	l.Tension.Heaviest, l.Pull.Heaviest, l.Hook.Heaviest = each(weight.Heaviest)
	l.Hanger = l.Tension
}

// halfOf is the half of a load, half a millinewton away from zero.
func halfOf(f measure.Force) measure.Force {
	half, _ := measure.MulDiv(f, 1, 2)
	return half
}

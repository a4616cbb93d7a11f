package hang

import "github.com/fairmiter/fairmiter/framing/explain"

// length explains a figure of the wire and its hangers.
func (e *explainer) length(name string) (explain.Working, bool) {
	if name == "span" && (e.By == Rings || e.l.Rise != 0) {
		inset := e.middle()
		if e.Inset != 0 {
			inset = explain.T("inset", e.Inset, e.at.Hang+"/inset")
		}
		return working("span", e.l.Span, spanSource,
			explain.Minus(explain.T("outside", e.g.Outside.Width, e.at.Outside+"/width"), two(inset)))
	}
	if e.l.Rise == 0 {
		return explain.Working{}, false
	}
	switch name {
	case "spread":
		switch {
		case e.Hooks != 2:
			return explain.Working{}, false
		case e.Spread != 0:
			return working("spread", e.l.Spread, explain.AsGiven(), explain.T("given", e.Spread, e.at.Hang+"/spread"))
		}
		return working("spread", e.l.Spread, spreadSource, explain.Half(e.span()))
	case "rise", "angle", "leg", "taut":
		return e.stretched(name)
	case "wire":
		return working("wire", e.l.Wire, cutSource, explain.Sum(e.taut(), two(explain.T("tails", e.Tails, e.at.Hang+"/tails"))))
	case "wire_top":
		return working("wire_top", e.l.WireTop, topSource, explain.Minus(e.leftTerm(), e.rise()))
	case "stable_rise":
		if e.l.StableRise == 0 {
			return explain.Working{}, false
		}
		height := explain.T("outside", e.g.Outside.Height, e.at.Outside+"/height")
		return working("stable_rise", e.l.StableRise, stableSource,
			explain.Quot(e.span(), e.span(), two(explain.Minus(height, two(e.leftTerm())))))
	}
	return explain.Working{}, false
}

// stretched explains rise, angle, leg and path, by what says how tight the wire
// is.
func (e *explainer) stretched(name string) (explain.Working, bool) {
	at := e.at.Hang + "/taut"
	by := e.Taut.By
	switch name {
	case "rise":
		switch by {
		case ByRise:
			return working("rise", e.l.Rise, explain.AsGiven(), explain.T("given", e.Taut.Rise, at+"/rise"))
		case ByWire:
			return working("rise", e.l.Rise, wireSource, explain.LegOf(e.leg(), e.run()))
		}
		return working("rise", e.l.Rise, wireSource, explain.Tan(e.run(), explain.T("angle", e.l.Angle, e.at.Worked+"/angle")))
	case "angle":
		if by == ByRise || by == ByWire {
			return working("angle", e.l.Angle, wireSource, explain.SlopeOf(e.rise(), e.run()))
		}
		return working("angle", e.l.Angle, explain.AsGiven(), explain.T("given", e.Taut.Angle, at+"/angle"))
	case "leg":
		if by == ByWire {
			return working("leg", e.l.Leg, wireSource, explain.Half(e.less(e.taut())))
		}
		return working("leg", e.l.Leg, wireSource, explain.Hypotenuse(e.run(), e.rise()))
	}
	if by == ByWire {
		return working("taut", e.l.Taut, explain.AsGiven(), explain.T("given", e.Taut.Wire, at+"/wire"))
	}
	if e.Hooks == 2 {
		return working("taut", e.l.Taut, wireSource, explain.Sum(two(e.leg()), e.spread()))
	}
	return working("taut", e.l.Taut, wireSource, two(e.leg()))
}

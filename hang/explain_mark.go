package hang

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// mark explains where a hook goes.
func (e *explainer) mark(index, name string) (explain.Working, bool) {
	i, err := strconv.Atoi(index)
	if err != nil || i < 0 || i >= len(e.l.Marks) || strconv.Itoa(i) != index {
		return explain.Working{}, false
	}
	m, at := e.l.Marks[i], (e.at.Worked + "/marks").Index(i)
	switch name {
	case "across":
		return e.across(m, i)
	case "bearing":
		drop := e.leftTerm()
		switch {
		case e.l.Rise != 0:
			drop = explain.T("wire_top", e.l.WireTop, e.at.Worked+"/wire_top")
		case i == 1:
			drop = explain.T("below", e.l.Below.Right, e.at.Worked+"/below/right")
		}
		return working("bearing", m.Bearing, markSource, explain.Sum(explain.T("center", e.Center, e.at.Hang+"/center"),
			explain.Minus(explain.Half(explain.T("outside", e.g.Outside.Height, e.at.Outside+"/height")), drop)))
	case "nail":
		if e.NailAbove == 0 {
			return working("bare_nail", m.Nail, bareSource, explain.T("bearing", m.Bearing, at+"/bearing"))
		}
		return working("nail", m.Nail, nailSource, explain.Sum(explain.T("bearing", m.Bearing, at+"/bearing"),
			explain.T("nail_above", e.NailAbove, e.at.Hang+"/nail_above")))
	}
	return explain.Working{}, false
}

func (e *explainer) across(m Mark, i int) (explain.Working, bool) {
	apart := e.span()
	if e.l.Rise != 0 {
		apart = e.spread()
	}
	middle := explain.T("middle", measure.Length(0), "")
	switch {
	case len(e.l.Marks) == 1:
		return working("across", m.Across, middleSource, middle)
	case i == 0:
		return working("across", m.Across, apartSource, explain.Minus(middle, explain.Half(apart)))
	}
	return working("across", m.Across, apartSource, explain.Minus(apart, explain.Half(apart)))
}

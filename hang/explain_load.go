package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// load explains a load by what the piece weighs, or by what it can weigh.
func (e *explainer) load(group, name string) (explain.Working, bool) {
	pick := func(l Load) measure.Force { return l.Nominal }
	weight := explain.WeightOf(explain.T("mass", e.g.Mass, e.at.Mass))
	switch name {
	case "nominal":
	case "heaviest":
		pick = func(l Load) measure.Force { return l.Heaviest }
		weight = explain.WeightOf(explain.T("heaviest", e.g.Heaviest, e.at.Heaviest))
	default:
		return explain.Working{}, false
	}
	hung := e.l.Rise != 0
	half := explain.Quot(weight, explain.N(1), explain.N(2))
	below := explain.Path("/" + name)
	tension := explain.T("tension", pick(e.l.Tension), e.at.Worked+"/tension"+below)
	switch group {
	case "tension":
		if hung {
			return working("tension", pick(e.l.Tension), chartSource, explain.Quot(weight, e.leg(), two(e.rise())))
		}
	case "pull":
		if hung {
			return working("pull", pick(e.l.Pull), pullSource, explain.Quot(weight, e.run(), two(e.rise())))
		}
	case "hanger":
		switch {
		case hung:
			return working("hanger", pick(e.l.Hanger), hangerSource, tension)
		case e.By == Rings:
			return working("hanger", pick(e.l.Hanger), shareSource, half)
		}
		return working("hanger", pick(e.l.Hanger), wholeSource, weight)
	case "hook":
		switch {
		case hung && e.Hooks == 2:
			return working("hook", pick(e.l.Hook), bothSource, explain.Hypotenuse(half,
				explain.Minus(tension, explain.T("pull", pick(e.l.Pull), e.at.Worked+"/pull"+below))))
		case e.By == Rings:
			return working("hook", pick(e.l.Hook), shareSource, half)
		}
		return working("hook", pick(e.l.Hook), wholeSource, weight)
	}
	return explain.Working{}, false
}

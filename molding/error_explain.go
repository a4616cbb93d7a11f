package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// ringSource is the source of the last joint's figures.
var ringSource = explain.Geometry("each made joint turns too far by twice the error of a cut")

// Explain returns how a figure of the last joint came to be: "/turn", "/joint",
// "/miss" or "/wedge". The ring lies at the path at, its last joint at worked.
func (r Ring) Explain(figure, at, worked explain.Path) (explain.Working, bool) {
	j := r.Last()
	off := explain.T("off", r.Off, at+"/off")
	sides := explain.T("sides", r.Sides, at+"/sides")
	cut := explain.Sum(explain.Quot(explain.Const(measure.Turn/2), explain.N(1), sides), off)
	turns := explain.Times(sides, off)
	if r.Off < 0 {
		turns = explain.Times(explain.Times(sides, off), explain.N(-1))
	}
	var w explain.Working
	var ok bool
	switch figure {
	case "/turn":
		w, ok = explain.Working{
			Key: "over_turn", Exact: explain.Of(j.Turn), Source: ringSource,
			Formula: explain.Times(explain.N(2), explain.Times(sides, off)),
		}, true
	case "/joint":
		w, ok = working("joint", j.Joint, ringSource, explain.OverSin(
			explain.T("face", r.Face, at+"/face"), explain.Minus(explain.Const(measure.RightAngle), cut)))
	case "/miss":
		w, ok = working("miss", j.Miss, ringSource, explain.OverSin(
			explain.Sin(explain.T("long_point", r.Long, at+"/long"), turns), cut))
	case "/wedge":
		w, ok = working("wedge", j.Wedge, ringSource, explain.Sin(
			explain.Times(explain.N(2), explain.T("joint", j.Joint, worked+"/joint")), turns))
	}
	w.Path = worked + figure
	return w, ok
}

// Explain returns how a figure of the chain's end came to be: "/along", "/across",
// "/miss", "/turned", "/over", "/open" or "/slide". The rails lie at the path at,
// the end at worked.
func (c Chain) Explain(figure, at, worked explain.Path) (explain.Working, bool) {
	if len(c) == 0 {
		return explain.Working{}, false
	}
	e, n := c.End(), len(c)-1
	along := explain.T("along_first", e.Along, worked+"/along")
	across := explain.T("across_first", e.Across, worked+"/across")
	turned := explain.T("turned", e.Turned, worked+"/turned")
	last := explain.Sum(turned, explain.T("miter", c[n].Right, at.Index(n)+"/right"))
	var w explain.Working
	var ok bool
	switch figure {
	case "/along", "/across":
		w, ok = c.explainWay(figure, at)
	case "/miss":
		w, ok = working("miss", e.Miss, chainSource, explain.Hypotenuse(along, across))
	case "/turned":
		turns := c.turns(at)
		w, ok = explain.Working{Key: "turned", Exact: explain.Of(e.Turned), Source: chainSource, Formula: turns[n]}, true
	case "/over":
		w, ok = explain.Working{Key: "over_turn", Exact: explain.Of(e.Over), Source: chainSource,
			Formula: explain.Minus(explain.Sum(last, explain.T("miter", c[0].Left, at.Index(0)+"/left")), explain.Const(measure.Turn))}, true
	case "/open":
		w, ok = working("open", e.Open, chainSource, explain.Minus(explain.Const(measure.Length(0)), explain.Cos(along, last), explain.Sin(across, last)))
	case "/slide":
		w, ok = working("slide", e.Slide, chainSource, explain.Minus(explain.Sin(along, last), explain.Cos(across, last)))
	}
	w.Path = worked + figure
	return w, ok
}

// chainSource is the source of where a chain ends.
var chainSource = explain.Geometry("the outer edges laid end to end, each turned by its joint's two cuts")

// turns are how far each rail has turned.
func (c Chain) turns(at explain.Path) []explain.Expr {
	turns := make([]explain.Expr, len(c))
	turns[0] = explain.Const(measure.Angle(0))
	for i := 1; i < len(c); i++ {
		turns[i] = explain.Sum(turns[i-1],
			explain.T("miter", c[i-1].Right, at.Index(i-1)+"/right"),
			explain.T("miter", c[i].Left, at.Index(i)+"/left"))
	}
	return turns
}

func (c Chain) explainWay(figure, at explain.Path) (explain.Working, bool) {
	e, turns := c.End(), c.turns(at)
	ways := make([]explain.Expr, len(c))
	for i, r := range c {
		long := explain.T("long_point", r.Long, at.Index(i)+"/long")
		ways[i] = explain.Cos(long, turns[i])
		if figure == "/across" {
			ways[i] = explain.Sin(long, turns[i])
		}
	}
	if figure == "/across" {
		return working("across_first", e.Across, chainSource, explain.Sum(ways...))
	}
	return working("along_first", e.Along, chainSource, explain.Sum(ways...))
}

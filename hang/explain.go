package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
)

// Sources of the formulas.
var (
	partSource   = explain.CommonPractice("hangers a quarter to a third of the height down")
	railSource   = explain.CommonPractice("a hanger in the middle of the rail's wood, beside the rabbet")
	spanSource   = explain.Geometry("a hanger stands in from each outside edge")
	spreadSource = explain.CommonPractice("two hooks half of the hangers' distance apart")
	wireSource   = explain.Geometry("the taut wire and its rise make a triangle with the line through the hangers")
	cutSource    = explain.CommonPractice("a tail at each end for the wraps")
	topSource    = explain.Geometry("the wire rises from the hangers toward the frame's top")
	stableSource = explain.Geometry("a hook moves over the back on an ellipse with the hangers as its foci; level is stable where the curve is flatter than the circle around the center of gravity")
	chartSource  = explain.Source{
		Title:  "framers' chart of the force on each screw eye",
		Place:  "10 lb frame, on a trade forum: half the weight / the sine of the angle",
		Status: explain.Verified,
	}
	pullSource   = explain.Source{Title: "statics", Place: "the level part of the wire's tension", Status: explain.Computed}
	hangerSource = explain.Source{Title: "statics", Place: "the wire draws each hanger with its tension", Status: explain.Computed}
	shareSource  = explain.Source{Title: "statics", Place: "two hangers at equal distances share the weight", Status: explain.Computed}
	wholeSource  = explain.Source{Title: "statics", Place: "one hook carries the weight", Status: explain.Computed}
	bothSource   = explain.Source{Title: "statics", Place: "half the weight down and the wire's pull inward", Status: explain.Computed}
	markSource   = explain.Source{
		Title:  "a gallery's rule for the height of a hook",
		Place:  "center + half of the frame - top edge to the taut wire or ring",
		Status: explain.Verified,
	}
	middleSource = explain.Geometry("the middle of the piece")
	apartSource  = explain.Geometry("two marks at equal distances from the middle")
	bareSource   = explain.Geometry("the piece bears on a bare nail itself; the hole of a hook's nail is higher")
	nailSource   = explain.Geometry("the nail hole is above the place where the hook bears")
)

// Figures lists the figures of l that [Hanging.Explain] explains, in the order
// of the fields; none where the piece cannot hang as decided.
func (h Hanging) Figures(l Layout) []explain.Path {
	if !l.Hangs() {
		return nil
	}
	figures := []explain.Path{"/below/left", "/below/right"}
	if h.By == Rings || l.Rise != 0 {
		figures = append(figures, "/span")
	}
	loads := []explain.Path{"/hanger", "/hook"}
	if l.Rise != 0 {
		if h.Hooks == 2 {
			figures = append(figures, "/spread")
		}
		figures = append(figures, "/rise", "/angle", "/leg", "/taut", "/wire", "/wire_top")
		if l.StableRise != 0 {
			figures = append(figures, "/stable_rise")
		}
		loads = []explain.Path{"/tension", "/pull", "/hanger", "/hook"}
	}
	for _, load := range loads {
		figures = append(figures, load+"/nominal", load+"/heaviest")
	}
	for i := range l.Marks {
		mark := explain.Path("/marks").Index(i)
		figures = append(figures, mark+"/across", mark+"/bearing", mark+"/nail")
	}
	return figures
}

// Explain returns how a figure of the layout came to be: "/below/left", "/span",
// "/rise", "/angle", "/wire_top", "/tension/nominal", "/hook/heaviest",
// "/marks/0/bearing" and so on, as [Hanging.Figures] lists them.
func (h Hanging) Explain(g Given, figure explain.Path, at Places) (explain.Working, bool) {
	e := explainer{h, g, h.Lay(g), at}
	segments := figure.Segments()
	if !e.l.Hangs() || len(segments) == 0 || figure[0] != '/' {
		return explain.Working{}, false
	}
	var w explain.Working
	var ok bool
	switch len(segments) {
	case 1:
		w, ok = e.length(segments[0])
	case 2:
		if segments[0] == "below" {
			w, ok = e.below(segments[1])
		} else {
			w, ok = e.load(segments[0], segments[1])
		}
	case 3:
		if segments[0] == "marks" {
			w, ok = e.mark(segments[1], segments[2])
		}
	}
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

// explainer holds what the formulas speak of.
type explainer struct {
	Hanging
	g  Given
	l  Layout
	at Places
}

// working is a working of which the value is known.
func working[Q explain.Quantity](key explain.Key, q Q, source explain.Source, formula explain.Expr) (explain.Working, bool) {
	return explain.Working{Key: key, Exact: explain.Of(q), Formula: formula, Source: source}, true
}

// two times a formula.
func two(x explain.Expr) explain.Expr { return explain.Times(explain.N(2), x) }

func (e *explainer) below(side string) (explain.Working, bool) {
	height := explain.T("outside", e.g.Outside.Height, e.at.Outside+"/height")
	switch {
	case side == "right" && e.BelowRight != 0 && e.By == Rings:
		return working("below", e.l.Below.Right, explain.AsGiven(), explain.T("given", e.BelowRight, e.at.Hang+"/below_right"))
	case side == "right":
		return working("below", e.l.Below.Right, explain.Geometry("both hangers at one height"), e.leftTerm())
	case side != "left":
		return explain.Working{}, false
	case e.Below != 0:
		return working("below", e.l.Below.Left, explain.AsGiven(), explain.T("given", e.Below, e.at.Hang+"/below"))
	case e.By == Sawtooth:
		return working("below", e.l.Below.Left, railSource, e.middle())
	}
	return working("below", e.l.Below.Left, partSource, explain.Times(height, explain.T("part", e.Part, e.at.Hang+"/part")))
}

func (e *explainer) leftTerm() explain.Expr {
	return explain.T("below", e.l.Below.Left, e.at.Worked+"/below/left")
}

// middle is the middle of the wood that takes a screw.
func (e *explainer) middle() explain.Expr {
	wood := explain.T("face", e.g.Face, e.at.Face)
	if e.g.Lip != 0 {
		wood = explain.Minus(wood, explain.T("lip", e.g.Lip, e.at.Lip))
	}
	if e.g.Ledge != 0 {
		wood = explain.Sum(wood, explain.T("ledge", e.g.Ledge, e.at.Ledge))
	}
	return explain.Half(wood)
}

func (e *explainer) span() explain.Expr { return explain.T("span", e.l.Span, e.at.Worked+"/span") }
func (e *explainer) rise() explain.Expr { return explain.T("rise", e.l.Rise, e.at.Worked+"/rise") }
func (e *explainer) leg() explain.Expr  { return explain.T("leg", e.l.Leg, e.at.Worked+"/leg") }
func (e *explainer) taut() explain.Expr { return explain.T("taut", e.l.Taut, e.at.Worked+"/taut") }

func (e *explainer) spread() explain.Expr {
	return explain.T("spread", e.l.Spread, e.at.Worked+"/spread")
}

// less takes the spread of two hooks away.
func (e *explainer) less(x explain.Expr) explain.Expr {
	if e.Hooks == 2 {
		return explain.Minus(x, e.spread())
	}
	return x
}

// run is how far a sloping part of the wire goes across.
func (e *explainer) run() explain.Expr { return explain.Half(e.less(e.span())) }

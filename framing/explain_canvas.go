package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// canvas explains a figure of a canvas to stretch: "cut/width", "bars/height",
// "united".
func (e *explainer) canvas(rest []string) (explain.Working, explain.Expr, bool) {
	none := func() (explain.Working, explain.Expr, bool) { return explain.Working{}, explain.Expr{}, false }
	if !e.stretched() {
		return none()
	}
	bars := e.Art.Least()
	if len(rest) == 1 && rest[0] == "united" {
		w := explain.Working{Key: "united", Exact: explain.Of(bars.UnitedLength()), Source: explain.CommonPractice("stretching is sold by width and height together"),
			Formula: explain.Sum(e.bar("width"), e.bar("height"))}
		return w, w.Formula, true
	}
	if len(rest) != 2 || rest[1] != "width" && rest[1] != "height" {
		return none()
	}
	name := rest[1]
	switch rest[0] {
	case "bars":
		w := explain.Working{Key: "bars", Exact: explain.Of(bars.Along(name)), Formula: e.artLeast(name),
			Source: explain.CommonPractice("bars are bought by the size of the art, without its folds")}
		return w, w.Formula, true
	case "cut":
		around := explain.Sum(explain.T("depth", e.Art.Thickness, e.at.order+"/art/thickness"),
			explain.T("turn", e.Art.Stretch.Turn, e.at.order+"/art/stretch/turn"))
		w := explain.Working{Key: "canvas_cut", Exact: explain.Of(e.canvasCut().Along(name)),
			Formula: explain.Sum(e.bar(name), explain.Times(explain.N(2), around)),
			Source:  explain.CommonPractice("canvas goes round the edge of the bars and is stapled behind them")}
		return w, e.towards(measure.Up, itself(w)), true
	}
	return none()
}

// bar is the length of a pair of stretcher bars.
func (e *explainer) bar(name string) explain.Expr {
	return explain.T("bars", e.Art.Least().Along(name), e.at.worked+pathOf([]string{"canvas", "bars", name}))
}

// float explains the air around art in a floater: "least/width", "most/height".
func (e *explainer) float(rest []string) (explain.Working, explain.Expr, bool) {
	h := e.holding(e.innerPart())
	if h.Kind != molding.Floater || len(rest) != 2 || rest[1] != "width" && rest[1] != "height" {
		return explain.Working{}, explain.Expr{}, false
	}
	name, art, key := rest[1], e.art(rest[1]), explain.Key("gap.least")
	switch rest[0] {
	case "least":
	case "most":
		key = explain.Key("gap.most")
		art = explain.T("art", e.Art.Least().Along(name), e.artAt.Child(name))
	default:
		return explain.Working{}, explain.Expr{}, false
	}
	gap := func(opening measure.Size) explain.Expr {
		return explain.Half(explain.Minus(
			explain.T("opening", opening.Along(name), h.at.Worked+pathOf([]string{"opening", name})), art))
	}
	w := explain.Working{Key: key, Formula: gap(h.exact.Opening),
		Source: explain.Geometry("art in the middle of the opening")}
	exact, err := w.Formula.Evaluate()
	w.Exact = exact
	return w, gap(h.shown.opening), err == nil
}

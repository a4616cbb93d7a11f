package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// polygonPlaces are where a frame of rails that differ stands.
func (w *worker) polygonPlaces() molding.PolygonPlaces {
	at := w.at.worked + "/shape"
	return molding.PolygonPlaces{Frame: at + "/frame", Panel: at, Worked: at}
}

// regularPlaces are where a regular frame stands.
func (w *worker) regularPlaces() molding.PolygonPlaces {
	at := w.at.worked + "/shape"
	return molding.PolygonPlaces{Frame: w.at.order + "/frame", Panel: at + "/panel", Worked: at + "/regular"}
}

// shape explains a figure of a frame that is no plain rectangle.
func (e *explainer) shape(rest []string) (w explain.Working, shown explain.Expr, ok bool) {
	if !e.shaped() || len(rest) == 0 {
		return w, shown, false
	}
	last := rest[len(rest)-1]
	x := &e.x.shape
	switch rest[0] {
	case "regular":
		if e.form() != regular {
			return w, shown, false
		}
		w, ok = e.explainRegular(rest)
		if ok && last == "footage" {
			long := e.shownAs("long_point", x.regular.LongPoint)
			return w, explain.Times(explain.T("sides", e.panel.Sides, e.at.worked+"/shape/panel/sides"),
				explain.T("long_point", long, e.at.worked+"/shape/regular/long_point")), true
		}
		if ok && last == "opening" {
			return w, itself(w), true
		}
	case "rails":
		w, ok = x.frame.Explain(x.polygon, pathOf(rest), e.polygonPlaces())
		if last == "sight" {
			last = "sight_edge"
		}
	case "footage":
		w, ok = x.frame.Explain(x.polygon, "/footage", e.polygonPlaces())
		var rails []explain.Expr
		for i, r := range x.polygon.Rails {
			if !r.IsZero() {
				rails = append(rails, explain.T("rail_overall", e.shownAs("long", r.Long), (e.at.worked+"/shape/rails").Index(i)+"/long"))
			}
		}
		return w, explain.Sum(rails...), ok
	case "slope":
		w, ok = e.slope(rest[1:])
	case "end":
		w, ok = e.chain(x, e.shop.Saw.Off, exactly).Explain(pathOf(rest[1:]), e.at.worked+"/shape/chain", e.at.worked+"/shape/end")
	case "last":
		w, ok = x.ring.Explain(pathOf(rest[1:]), e.at.worked+"/shape/ring", e.at.worked+"/shape/last")
	}
	if !ok {
		return w, shown, false
	}
	if w.Exact.Kind == explain.AngleKind {
		return w, explain.ToNearest(itself(w), explain.Const(AngleStep)), true
	}
	return w, e.towards(e.shapeDirection(last), itself(w)), true
}

// shownAs is how a length of a shape is shown.
func (w *worker) shownAs(name string, exact measure.Length) measure.Length {
	shown, _ := w.format.Round(exact, w.shapeDirection(name))
	return shown
}

func (e *explainer) explainRegular(rest []string) (explain.Working, bool) {
	figure, at := pathOf(rest[1:]), e.regularPlaces()
	if !e.Frame.Slope.IsZero() { // as wide as its sides look
		at.Frame = e.at.worked + "/shape/seen"
		return e.seen().ExplainRegular(e.panel, e.x.shape.regular, figure, at)
	}
	return e.Frame.ExplainRegular(e.panel, e.x.shape.regular, figure, at)
}

// slope explains a figure of the sides that slope.
func (e *explainer) slope(rest []string) (w explain.Working, ok bool) {
	x := &e.x.shape
	if len(rest) < 2 {
		return w, false
	}
	k, err := strconv.Atoi(rest[0])
	if err != nil || k < 0 || k >= len(x.slope) || strconv.Itoa(k) != rest[0] {
		return w, false
	}
	here, s := (e.at.worked + "/shape/slope").Index(k), &x.slope[k]
	figure := pathOf(rest[1:])
	switch rest[1] {
	case "left", "right":
		corner, at := s.left, here+"/left"
		if rest[1] == "right" {
			corner, at = s.right, here+"/right"
		}
		return corner.Explain(pathOf(rest[2:]), molding.CornerPlaces{Corner: at + "/corner", Worked: at})
	case "front_sight":
		if e.form() == regular {
			w, ok = e.explainRegular([]string{"regular", "short_point"})
		} else {
			w, ok = x.frame.Explain(x.polygon, (explain.Path("/rails")).Index(s.sides[0])+"/sight", e.polygonPlaces())
		}
		w.Key, w.Path = "front_sight", here+figure
		return w, ok
	}
	return s.side.Explain(s.rail.FrontSight, s.left, s.right, figure, molding.SidePlaces{
		Side: here + "/side", Left: here + "/left/corner", Right: here + "/right/corner", Worked: here,
	})
}

// shapedFrame explains what is not as in a plain rectangle; own is false where it is.
func (e *explainer) shapedFrame(h held, rest []string) (w explain.Working, shown explain.Expr, ok, own bool) {
	if e.form() == polygonal || len(rest) != 2 || rest[1] != "width" && rest[1] != "height" {
		return w, shown, false, true
	}
	group, name := rest[0], rest[1]
	x, first := &e.x.shape, 0
	if name == "height" {
		first = 1
	}
	at := e.at.worked + "/frame"
	exactOutside, shownOutside := h.exact.Outside.Along(name), h.shown.outside.Along(name)
	switch {
	case group == "outside" && e.form() == regular:
		w = explain.Working{Key: "outside", Exact: explain.Of(exactOutside), Source: explain.Geometry("across flats"), Path: at + pathOf(rest),
			Formula: explain.T("outside", exactOutside, e.at.worked+"/shape/regular/outside")}
		return w, itself(w), true, true
	case group == "outside":
		edge := func(i int) explain.Expr {
			if k, s := x.slopeOf(i); s != nil {
				return explain.T("front_rim", s.rail.FrontRim, (e.at.worked+"/shape/slope").Index(k)+"/front_rim")
			}
			return explain.T("outer_edge", x.polygon.Rails[i].Outer, (e.at.worked+"/shape/rails").Index(i)+"/outer")
		}
		w = explain.Working{Key: "outside", Exact: explain.Of(exactOutside), Source: explain.Geometry("the longer of two rails"), Path: at + pathOf(rest),
			Formula: explain.Most(edge(first), edge(first+2))}
		return w, e.towards(h.Made.Direction(), itself(w)), true, true
	case group == "opening":
		w, ok = h.Explain(h.exact, pathOf(rest), h.at)
		if e.form() == regular {
			return w, itself(w), ok, true
		}
		return w, explain.Sum(itself(w), explain.Minus(explain.T("outside", shownOutside, at+"/outside"+pathOf(rest[1:])),
			explain.Const(exactOutside))), ok, true
	}
	return w, shown, false, false
}

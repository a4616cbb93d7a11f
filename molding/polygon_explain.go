package molding

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Sources of the formulas.
var (
	regularSource = explain.Source{
		Title:  "Machinery's Handbook, 31st ed.",
		Place:  "p. 82, area, length of side, and inscribed and circumscribed radii of regular polygons",
		Status: explain.Verified,
	}
	jointSource  = explain.Geometry("the joint runs from where the sight edges meet to where the outer edges do")
	outlineLines = explain.Geometry("two lines that move by their own distances meet where they meet")
)

const straight = measure.Turn / 2

// ExplainRegular returns how a figure of r came to be: "/panel", "/opening",
// "/sight", "/outside", "/points", "/long_point", "/short_point", "/growth",
// "/saw", "/edge", "/footage".
func (f Frame) ExplainRegular(p RegularPanel, r Regular, figure explain.Path, at PolygonPlaces) (explain.Working, bool) {
	w, ok := f.explainRegular(p, r, figure, at)
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

func (f Frame) explainRegular(p RegularPanel, r Regular, figure explain.Path, at PolygonPlaces) (explain.Working, bool) {
	two := func(e explain.Expr) explain.Expr { return explain.Times(explain.N(2), e) }
	saw := explain.T("saw", r.Saw, at.Worked+"/saw")
	edge := explain.T("edge", r.Edge, at.Worked+"/edge")
	opening := explain.T("opening", r.Opening, at.Worked+"/opening")
	outside := explain.T("outside", r.Outside, at.Worked+"/outside")
	face := explain.T("face", f.Face, at.Frame+"/face")
	lip := explain.T("lip", f.Lip, at.Frame+"/lip")
	sides := explain.T("sides", p.Sides, at.Panel+"/sides")
	switch figure {
	case "/panel":
		size := explain.T("size", p.Size, at.Panel+"/size")
		switch p.Across {
		case plane.Points:
			return working("panel", r.Panel, regularSource, explain.Cos(size, saw))
		case plane.OneSide:
			return working("panel", r.Panel, regularSource, explain.OverTan(size, saw))
		}
		return working("panel", r.Panel, explain.AsGiven(), size)
	case "/opening":
		panel := explain.T("panel", r.Panel, at.Worked+"/panel")
		if f.Kind == Floater {
			return working("opening", r.Opening, gapSource, explain.Sum(panel, two(explain.T("gap", f.Gap, at.Frame+"/gap"))))
		}
		return working("opening", r.Opening, openingSource, explain.Sum(panel, explain.T("allowance", f.Allowance, at.Frame+"/allowance")))
	case "/sight":
		return working("sight", r.Sight, sightSource, explain.Minus(opening, two(lip)))
	case "/outside":
		return working("outside", r.Outside, railSource, explain.Sum(opening, two(explain.Minus(face, lip))))
	case "/points":
		return working("across_points", r.Points, regularSource, explain.OverSin(outside, edge))
	case "/long_point":
		return working("long_point", r.LongPoint, regularSource, explain.Tan(outside, saw))
	case "/short_point":
		return working("short_point", r.ShortPoint, regularSource, explain.Tan(explain.T("sight", r.Sight, at.Worked+"/sight"), saw))
	case "/growth":
		return working("growth", r.Growth, regularSource, explain.Tan(two(face), saw))
	case "/saw":
		return explain.Working{Key: "saw", Exact: explain.Of(r.Saw), Source: miterSource,
			Formula: explain.Quot(explain.Const(straight), explain.N(1), sides)}, true
	case "/edge":
		return explain.Working{Key: "edge", Exact: explain.Of(r.Edge), Source: miterSource,
			Formula: explain.Minus(explain.Const(measure.RightAngle), saw)}, true
	case "/footage":
		return working("footage", r.Footage, explain.Geometry("equal rails"),
			explain.Times(sides, explain.T("long_point", r.LongPoint, at.Worked+"/long_point")))
	}
	return explain.Working{}, false
}

// Explain returns how a figure of p came to be: "/footage", or of a rail
// "/rails/0/sight", "/rails/0/outer", "/rails/0/long", and of its ends
// "/rails/0/start/saw", "/edge", "/growth", "/joint", and the same of "/finish".
func (f PolygonFrame) Explain(p Polygon, figure explain.Path, at PolygonPlaces) (explain.Working, bool) {
	w, ok := f.explainFigure(p, figure, at)
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

func (f PolygonFrame) explainFigure(p Polygon, figure explain.Path, at PolygonPlaces) (explain.Working, bool) {
	s := figure.Segments()
	if len(s) == 1 && s[0] == "footage" {
		var rails []explain.Expr
		for i, r := range p.Rails {
			if !r.IsZero() {
				rails = append(rails, explain.T("rail_overall", r.Long, (at.Worked+"/rails").Index(i)+"/long"))
			}
		}
		return working("footage", p.Footage, explain.Geometry("one rail after the other"), explain.Sum(rails...))
	}
	if len(s) < 3 || s[0] != "rails" {
		return explain.Working{}, false
	}
	i, err := strconv.Atoi(s[1])
	if err != nil || i < 0 || i >= len(p.Rails) || p.Rails[i].IsZero() {
		return explain.Working{}, false
	}
	e := railExplainer{f: f, p: p, i: i, at: at}
	switch {
	case len(s) == 3:
		return e.rail(s[2])
	case len(s) == 4 && (s[2] == "start" || s[2] == "finish"):
		return e.end(s[2] == "finish", s[3])
	}
	return explain.Working{}, false
}

// A railExplainer explains the figures of rail i.
type railExplainer struct {
	f  PolygonFrame
	p  Polygon
	i  int
	at PolygonPlaces
}

func (e railExplainer) here() explain.Path { return (e.at.Worked + "/rails").Index(e.i) }

func (e railExplainer) rail(name string) (explain.Working, bool) {
	r := e.p.Rails[e.i]
	side := explain.T("panel_side", e.p.Panel.Side(e.i).Length, (e.at.Panel+"/sides").Index(e.i)+"/length")
	sum := func(edge func(finish bool) explain.Expr) explain.Expr {
		return explain.Once(explain.Sum(side, edge(false), edge(true)))
	}
	inner := func(finish bool) explain.Expr { return e.reach(finish, false) }
	outer := func(finish bool) explain.Expr { return e.reach(finish, true) }
	switch name {
	case "sight":
		return working("sight_edge", r.Sight, outlineLines, sum(inner))
	case "outer":
		return working("outer_edge", r.Outer, outlineLines, sum(outer))
	case "long":
		return working("rail_overall", r.Long, explain.Geometry("from the outermost point of one end to that of the other"),
			sum(func(finish bool) explain.Expr { return explain.Most(inner(finish), outer(finish)) }))
	}
	return explain.Working{}, false
}

// beside is the side next to one end, and the corner there.
func (e railExplainer) beside(finish bool) (side, corner int) {
	n := len(e.p.Rails)
	if finish {
		return (e.i + 1) % n, (e.i + 1) % n
	}
	return (e.i + n - 1) % n, e.i
}

func (e railExplainer) turn(corner int) explain.Expr {
	n := len(e.p.Rails)
	return explain.T("turn_of_corner", e.p.Panel.Turn(corner), (e.at.Panel+"/sides").Index((corner+n-1)%n)+"/turn")
}

// of is a field of the section along a side.
func (e railExplainer) of(side int, name string) explain.Expr {
	index := side
	if len(e.f.Sections) == 1 {
		index = 0
	}
	at, s := (e.at.Frame + "/sections").Index(index), e.f.section(side)
	if name == "face" {
		return explain.T("face", s.Face, at+"/face")
	}
	return explain.T("lip", s.Lip, at+"/lip")
}

// out is how far outside the panel the sight edge along a side lies.
func (e railExplainer) out(side int) explain.Expr {
	if e.f.section(side).IsZero() {
		return explain.Const(measure.Length(0))
	}
	return explain.Minus(explain.Half(explain.T("allowance", e.f.Allowance, e.at.Frame+"/allowance")), e.of(side, "lip"))
}

// reach is how much longer than the panel's side an edge of the rail gets at one
// end.
func (e railExplainer) reach(finish, outer bool) explain.Expr {
	beside, corner := e.beside(finish)
	own, other := e.f.section(e.i), e.f.section(beside)
	if other.IsZero() && e.p.Panel.Turn(corner) == 0 {
		return explain.Const(measure.Length(0))
	}
	a, b := e.out(e.i), e.out(beside)
	equal := e.f.fineSight(own) == e.f.fineSight(other)
	if outer && !other.IsZero() {
		a, b = explain.Sum(a, e.of(e.i, "face")), explain.Sum(b, e.of(beside, "face"))
		equal = own.Face-own.Lip == other.Face-other.Lip
	}
	return grownAt(a, b, e.turn(corner), equal)
}

// grownAt is [plane.Growth].
func grownAt(own, next, turn explain.Expr, equal bool) explain.Expr {
	if equal {
		return explain.Tan(own, explain.Half(turn))
	}
	return explain.Minus(explain.OverSin(next, turn), explain.OverTan(own, turn))
}

func (e railExplainer) end(finish bool, name string) (explain.Working, bool) {
	r, at := e.p.Rails[e.i], e.here()+"/start"
	end := r.Start
	if finish {
		end, at = r.Finish, e.here()+"/finish"
	}
	angle := func(key explain.Key, a measure.Angle, formula explain.Expr) (explain.Working, bool) {
		return explain.Working{Key: key, Exact: explain.Of(a), Formula: formula, Source: jointSource}, true
	}
	beside, corner := e.beside(finish)
	face := e.of(e.i, "face")
	switch name {
	case "saw":
		return angle("saw", end.Saw, explain.Minus(explain.Const(measure.RightAngle), explain.T("edge", end.Edge, at+"/edge")))
	case "edge":
		if end.Square {
			return angle("edge", end.Edge, explain.Const(measure.RightAngle))
		}
		return angle("edge", end.Edge, e.edge(finish, beside, corner))
	case "growth":
		if end.Square {
			return working("growth", end.Growth, explain.Geometry("a square end"), explain.Const(measure.Length(0)))
		}
		return working("growth", end.Growth, jointSource,
			explain.Once(grownAt(face, e.of(beside, "face"), e.turn(corner), r.Face == e.f.section(beside).Face)))
	case "joint":
		if end.Square {
			return working("joint", end.Joint, explain.Geometry("a square end"), face)
		}
		return working("joint", end.Joint, jointSource, explain.Hypotenuse(face, explain.T("growth", end.Growth, at+"/growth")))
	}
	return explain.Working{}, false
}

// edge is the angle between cut and edge: by the faces for the rail that comes first
// in the outline, what is left of the corner for the second.
func (e railExplainer) edge(finish bool, beside, corner int) explain.Expr {
	angle := explain.Minus(explain.Const(straight), e.turn(corner))
	first, second := e.i, beside
	if !finish {
		other := e.p.Rails[beside].Finish
		return explain.Minus(angle, explain.T("edge", other.Edge, (e.at.Worked+"/rails").Index(beside)+"/finish/edge"))
	}
	one, two := e.f.section(first).Face, e.f.section(second).Face
	var formula explain.Expr
	switch {
	case one == two:
		return explain.Half(angle)
	case one < two:
		own := explain.Quot(explain.Radius(), e.of(first, "face"), e.of(second, "face"))
		formula = explain.ArcTan(explain.Sin(own, angle), explain.Sum(explain.Radius(), explain.Cos(own, angle)))
	default:
		other := explain.Quot(explain.Radius(), e.of(second, "face"), e.of(first, "face"))
		formula = explain.ArcTan(explain.Sin(explain.Radius(), angle), explain.Sum(other, explain.Cos(explain.Radius(), angle)))
	}
	if e.p.Panel.Interior(corner) > straight {
		return explain.Sum(formula, explain.Const(straight))
	}
	return formula
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Sources of the formulas; functions, so that a build without shapes need not hold them.
func ellipseSource() explain.Source {
	return explain.Source{
		Title:  "Abramowitz and Stegun, Handbook of Mathematical Functions",
		Place:  "table 17.1, the complete elliptic integral of the second kind: 4 a E(m), m = 1 - b^2/a^2",
		Status: explain.Computed,
	}
}

func steinerSource() explain.Source {
	return explain.Source{
		Title:  "Steiner's formula for parallel curves",
		Place:  "the perimeter of the ellipse and of a circle of the distance between",
		Status: explain.Verified,
	}
}

func bendSource() explain.Source {
	return explain.Geometry("the sharpest bend of an ellipse has the radius b^2 / a")
}

func besideBend() explain.Source {
	return explain.Geometry("a parallel has the radius of the ellipse and the distance between")
}

func apartSource() explain.Source {
	return explain.Geometry("where two curves lie farthest apart they have one normal, and their tangents are as far apart")
}

// ExplainOval returns how a figure of o came to be, of one of its edges "/package",
// "/opening", "/sight", "/outside": its "/width", "/height", "/by", "/perimeter",
// "/tightest", "/apart/most", "/apart/heading", "/apart/at/x", "/apart/at/y". The width
// and the height of the package are for the caller to explain.
func (f Frame) ExplainOval(o Oval, figure explain.Path, at Places) (explain.Working, bool) {
	w, ok := f.explainOval(o, figure.Segments(), at)
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

// curve is an edge by its name.
func (o *Oval) curve(name string) *OvalCurve {
	switch name {
	case "package":
		return &o.Package
	case "opening":
		return &o.Opening
	case "sight":
		return &o.Sight
	case "outside":
		return &o.Outside
	}
	return nil
}

// edge is the name of the true edge in a plan.
func (e OvalEdge) edge() string {
	switch e {
	case TrueSight:
		return "sight"
	case TrueOutside:
		return "outside"
	}
	return "package"
}

func (f Frame) explainOval(o Oval, segments []string, at Places) (explain.Working, bool) {
	if len(segments) < 2 || o.curve(segments[0]) == nil {
		return explain.Working{}, false
	}
	name, figure := segments[0], segments[1:]
	if len(figure) == 1 && (figure[0] == "width" || figure[0] == "height") {
		r := Rectangle{Package: o.Package.Size, Opening: o.Opening.Size, Sight: o.Sight.Size, Outside: o.Outside.Size}
		return f.explainFigure(r, segments, at)
	}
	c, from := o.curve(name), o.Ring.True.edge()
	e := ovalExplainer{c: *c, from: *o.curve(from), at: at.Worked.Child(name), fromAt: at.Worked.Child(from)}
	return e.figure(figure)
}

// An ovalExplainer explains the figures of one edge beside the true one.
type ovalExplainer struct {
	c, from    OvalCurve
	at, fromAt explain.Path
}

func (e ovalExplainer) figure(figure []string) (explain.Working, bool) {
	parallel := e.c.Curve == ParallelCurve
	switch {
	case len(figure) == 1 && figure[0] == "by" && parallel:
		return working("oval.by", e.c.By, explain.Geometry("half of what the axes differ by"), e.by())
	case len(figure) == 1 && figure[0] == "perimeter" && parallel:
		return working("perimeter", e.c.Perimeter, steinerSource(), explain.Once(explain.Sum(
			explain.Around(e.true("width"), e.true("height")), explain.Arc(e.byTerm(), explain.Const(measure.Turn)))))
	case len(figure) == 1 && figure[0] == "perimeter":
		return working("perimeter", e.c.Perimeter, ellipseSource(), explain.Around(e.own("width"), e.own("height")))
	case len(figure) == 1 && figure[0] == "tightest" && parallel:
		return working("tightest", e.c.Tightest, besideBend(), explain.Once(explain.Sum(bend(e.from.Size, e.true), e.byTerm())))
	case len(figure) == 1 && figure[0] == "tightest":
		if e.c.Tightest == 0 { // nothing is seen, or rounded away
			return working("tightest", 0, bendSource(), explain.Const(measure.Length(0)))
		}
		return working("tightest", e.c.Tightest, bendSource(), bend(e.c.Size, e.own))
	case len(figure) == 2 && figure[0] == "apart" && e.c.Apart != OvalApart{}:
		return e.apart(figure[1])
	case len(figure) == 3 && figure[0] == "apart" && figure[1] == "at" && e.c.Apart != OvalApart{}:
		return e.place(figure[2])
	}
	return explain.Working{}, false
}

// own is an axis of the edge, true one of the true edge.
func (e ovalExplainer) own(name string) explain.Expr {
	return explain.T("axis", e.c.Along(name), e.at.Child(name))
}

func (e ovalExplainer) true(name string) explain.Expr {
	return explain.T("true_axis", e.from.Along(name), e.fromAt.Child(name))
}

// by is how far outside the true edge this one lies, byTerm the same as a term where
// it is a figure of its own.
func (e ovalExplainer) by() explain.Expr {
	return explain.Half(explain.Minus(e.own("width"), e.true("width")))
}

func (e ovalExplainer) byTerm() explain.Expr {
	if e.c.Curve == ParallelCurve {
		return explain.T("oval.by", e.c.By, e.at+"/by")
	}
	return explain.T("oval.by", outward(e.c.Size, e.from.Size), "")
}

// bend is b^2/a of the half axes, by whole ones.
func bend(s measure.Size, axis func(string) explain.Expr) explain.Expr {
	long, short := axis("width"), axis("height")
	if s.Height > s.Width {
		long, short = short, long
	}
	return explain.Quot(short, short, explain.Times(explain.N(2), long))
}

// turned is an axis of the ellipse that an oval lathe turns beside the true one.
func (e ovalExplainer) turned(name string) explain.Expr {
	return explain.Sum(e.true(name), explain.Times(explain.N(2), e.byTerm()))
}

func (e ovalExplainer) apart(name string) (explain.Working, bool) {
	a := e.c.Apart
	switch name {
	case "most":
		heading := explain.T("oval.heading", a.Heading, e.at+"/apart/heading")
		reach := func(axis func(string) explain.Expr) explain.Expr {
			return explain.Hypotenuse(explain.Cos(explain.Half(axis("width")), heading), explain.Sin(explain.Half(axis("height")), heading))
		}
		farther, less := explain.Sum(reach(e.true), e.byTerm()), reach(e.turned)
		if outward(e.c.Size, e.from.Size) < 0 {
			farther, less = less, farther
		}
		return working("oval.apart", a.Most, apartSource(), explain.Once(explain.Minus(farther, less)))
	case "heading":
		// The cosine squared is the mean of b / (a + b) of both ellipses.
		part := func(axis func(string) explain.Expr) explain.Expr {
			return explain.Quot(explain.Radius(), axis("height"), explain.Sum(axis("width"), axis("height")))
		}
		cos := explain.Half(explain.Sum(part(e.true), part(e.turned)))
		sin := explain.Minus(explain.Radius(), cos)
		root := func(part explain.Expr) explain.Expr { // of one times the part
			return explain.LegOf(explain.Half(explain.Sum(explain.Radius(), part)), explain.Half(explain.Minus(explain.Radius(), part)))
		}
		return explain.Working{Key: "oval.heading", Exact: explain.Of(a.Heading), Source: apartSource(),
			Formula: explain.ArcTan(root(sin), root(cos))}, true
	}
	return explain.Working{}, false
}

// place is where the parallel's normal has the heading at which both lie farthest
// apart.
func (e ovalExplainer) place(name string) (explain.Working, bool) {
	a := e.c.Apart
	heading := explain.T("oval.heading", a.Heading, e.at+"/apart/heading")
	wide, high := explain.Half(e.true("width")), explain.Half(e.true("height"))
	along, up := explain.Cos(wide, heading), explain.Sin(high, heading)
	reach := explain.Hypotenuse(along, up)
	switch name {
	case "x":
		return working("oval.at_x", a.At.X, apartSource(), explain.Once(explain.Sum(explain.Quot(wide, along, reach), explain.Cos(e.byTerm(), heading))))
	case "y":
		return working("oval.at_y", a.At.Y, apartSource(), explain.Once(explain.Sum(explain.Quot(high, up, reach), explain.Sin(e.byTerm(), heading))))
	}
	return explain.Working{}, false
}

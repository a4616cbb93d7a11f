package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

var (
	chordSource = explain.Geometry("two chords that cross: radius = (half the width squared / rise + rise) / 2")
	archSource  = explain.Geometry("the arcs of parallel arches have the same middles")
	arcSource   = explain.Geometry("an arc and its sides")
)

// ArchPlaces are where an arch and a parallel of it stand.
type ArchPlaces struct {
	Arch   explain.Path // the arch as decided: width, height, rise
	Worked explain.Path // the parallel: what [ArchParallel.Explain] explains
}

// Explain returns how a figure of p came to be: "/width", "/across", "/height", "/rise",
// "/side", "/radius", "/sweep", "/arc", "/perimeter". The distance "/by" is for the
// caller to explain.
func (p ArchParallel) Explain(figure explain.Path, at ArchPlaces) (explain.Working, bool) {
	w, ok := p.explain(figure, at)
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

func (p ArchParallel) explain(figure explain.Path, at ArchPlaces) (explain.Working, bool) {
	e := archExprs{p, at}
	two := func(x explain.Expr) explain.Expr { return explain.Times(explain.N(2), x) }
	width := explain.T("arch.width", p.Width(), at.Worked+"/width")
	height := explain.T("arch.height", p.Height(), at.Worked+"/height")
	rise := explain.T("arch.rise", p.Rise(), at.Worked+"/rise")
	side := explain.T("arch.side", p.Side(), at.Worked+"/side")
	radius := explain.T("arch.radius", p.Radius(), at.Worked+"/radius")
	sweep := explain.T("arch.sweep", p.Sweep(), at.Worked+"/sweep")
	length := func(key explain.Key, l measure.Length, source explain.Source, formula explain.Expr) (explain.Working, bool) {
		return explain.Working{Key: key, Exact: explain.Of(l), Source: source, Formula: formula}, true
	}
	switch figure {
	case "/width":
		return length(explain.Key("arch.width"), p.Width(), archSource, explain.Sum(e.width(), two(e.by())))
	case "/across":
		if p.Of.Kind == Horseshoe {
			return length(explain.Key("arch.across"), p.Across(), archSource, two(radius))
		}
		return length(explain.Key("arch.across"), p.Across(), archSource, width)
	case "/height":
		if p.Of.Kind == Pointed {
			return length(explain.Key("arch.height"), p.Height(), archSource,
				explain.Once(explain.Sum(explain.Minus(e.height(), e.rise()), e.risen(), e.by())))
		}
		return length(explain.Key("arch.height"), p.Height(), archSource, explain.Sum(e.height(), two(e.by())))
	case "/rise":
		return length(explain.Key("arch.rise"), p.Rise(), archSource, explain.Once(e.risen()))
	case "/side":
		return length(explain.Key("arch.side"), p.Side(), arcSource, explain.Minus(height, rise))
	case "/radius":
		return length(explain.Key("arch.radius"), p.Radius(), chordSource, explain.Once(explain.Sum(e.radius(), e.by())))
	case "/sweep":
		w := explain.Working{Key: "arch.sweep", Exact: explain.Of(p.Sweep()), Source: arcSource}
		switch p.Of.Kind {
		case HalfRound:
			w.Formula = explain.Const(measure.Turn / 2)
		case Pointed:
			w.Formula = explain.ArcTan(two(rise), explain.Minus(two(radius), width))
		default:
			w.Formula = explain.Times(explain.N(4), explain.ArcTan(two(rise), width))
		}
		return w, true
	case "/arc":
		return length(explain.Key("arch.arc"), p.Arc(), arcSource, explain.Arc(radius, sweep))
	case "/perimeter":
		arc := explain.T("arch.arc", p.Arc(), at.Worked+"/arc")
		if p.Arcs() == 2 {
			arc = two(arc)
		}
		return length(explain.Key("perimeter"), p.Perimeter(), arcSource, explain.Sum(width, two(side), arc))
	}
	return explain.Working{}, false
}

// archExprs are the formulas of the arch itself.
type archExprs struct {
	ArchParallel
	at ArchPlaces
}

func (e archExprs) by() explain.Expr { return explain.T("arch.by", e.By, e.at.Worked+"/by") }

func (e archExprs) width() explain.Expr {
	return explain.T("arch.width", e.Of.Width, e.at.Arch+"/width")
}

func (e archExprs) height() explain.Expr {
	return explain.T("arch.height", e.Of.Height, e.at.Arch+"/height")
}

func (e archExprs) half() explain.Expr { return explain.Half(e.width()) }

func (e archExprs) rise() explain.Expr {
	switch {
	case e.Of.Kind == HalfRound:
		return e.half()
	case e.Of.Kind == Pointed && e.Of.Rise == 0:
		return explain.LegOf(e.width(), e.half())
	}
	return explain.T("arch.rise", e.Of.Rise, e.at.Arch+"/rise")
}

func (e archExprs) radius() explain.Expr {
	switch {
	case e.Of.Kind == HalfRound:
		return e.half()
	case e.Of.Kind == Pointed && e.Of.Rise == 0:
		return e.width()
	case e.Of.Kind == Pointed:
		return explain.Sum(explain.Quot(e.rise(), e.rise(), e.width()), explain.Half(e.half()))
	}
	return explain.Half(explain.Sum(explain.Quot(e.half(), e.half(), e.rise()), e.rise()))
}

func (e archExprs) risen() explain.Expr {
	out := explain.Sum(e.radius(), e.by())
	leg := explain.LegOf(out, explain.Sum(e.half(), e.by()))
	switch e.Of.Kind {
	case HalfRound:
		return explain.Sum(e.half(), e.by())
	case Pointed:
		return explain.LegOf(out, explain.Minus(e.radius(), e.half()))
	case Horseshoe:
		return explain.Sum(e.radius(), e.by(), leg)
	}
	return explain.Minus(out, leg)
}

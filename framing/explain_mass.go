package framing

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// expr is the dimension as a term, or as the formula that it follows from.
func (d dim) expr() explain.Expr {
	if d.from != nil {
		less := d.less.expr()
		if d.times != 1 {
			less = explain.Times(explain.N(d.times), less)
		}
		return explain.Most(explain.Const(measure.Length(0)), explain.Minus(d.from.expr(), less))
	}
	return explain.T(d.key, d.value, d.path())
}

// formula is how the mass of the body follows.
func (b body) formula(heaviest bool) explain.Expr {
	if b.given != 0 {
		return explain.T("given", b.given, b.givenAt)
	}
	density := b.material.Nominal
	if heaviest {
		density = b.material.Heaviest
	}
	var more, less []explain.Expr
	for _, x := range b.boxes {
		thick := x.thick.expr()
		if t := b.more(x); heaviest && t > 0 {
			thick = explain.Sum(thick, explain.T("tolerance", t, ""))
		}
		mass := explain.Mass3(x.long.expr(), x.wide.expr(), thick, explain.T("density", density, ""))
		if x.over != 0 {
			mass = explain.Quot(mass, explain.N(x.times), explain.N(x.over))
		} else if x.times != 1 {
			mass = explain.Times(explain.N(x.times), mass)
		}
		if x.less {
			less = append(less, mass)
		} else {
			more = append(more, mass)
		}
	}
	all := more[0]
	if len(more) > 1 {
		all = explain.Sum(more...)
	}
	if len(less) > 0 {
		all = explain.Minus(all, less...)
	}
	return all
}

// mass explains a figure of what the piece weighs: "total", "heaviest",
// "parts/2/mass", "parts/2/heaviest".
func (e *explainer) mass(rest []string) (explain.Working, explain.Expr, bool) {
	m := e.x.masses
	switch {
	case len(rest) == 1 && rest[0] == "total":
		return e.massTotal("total", m.total, func(p partMass) measure.Mass { return p.mass }, "mass")
	case len(rest) == 1 && rest[0] == "heaviest":
		return e.massTotal("heaviest", m.heaviest, func(p partMass) measure.Mass { return p.heaviest }, "heaviest")
	case len(rest) != 3 || rest[0] != "parts":
		return explain.Working{}, explain.Expr{}, false
	}
	i, err := strconv.Atoi(rest[1])
	if err != nil || i < 0 || i >= len(m.parts) || strconv.Itoa(i) != rest[1] {
		return explain.Working{}, explain.Expr{}, false
	}
	p := m.parts[i]
	source := p.body.material.Source
	if p.body.given != 0 {
		source = explain.AsGiven()
	}
	w := explain.Working{Key: "mass", Exact: explain.Of(p.mass), Source: source, Formula: p.body.formula(false)}
	switch rest[2] {
	case "mass":
	case "heaviest":
		w.Key, w.Exact, w.Formula = "heaviest", explain.Of(p.heaviest), p.body.formula(true)
	default:
		return explain.Working{}, explain.Expr{}, false
	}
	return w, e.showMass(w), true
}

func (e *explainer) massTotal(key explain.Key, total measure.Mass, of func(partMass) measure.Mass, field explain.Path) (explain.Working, explain.Expr, bool) {
	terms := make([]explain.Expr, 0, len(e.x.masses.parts))
	for i, p := range e.x.masses.parts {
		terms = append(terms, explain.T(explain.Key(p.part), of(p), (e.at.worked+"/mass/parts").Index(i)+"/"+field))
	}
	if len(terms) == 0 {
		terms = append(terms, explain.Const(measure.Mass(0)))
	}
	w := explain.Working{Key: key, Exact: explain.Of(total), Formula: explain.Sum(terms...),
		Source: explain.Geometry("the parts together")}
	return w, e.showMass(w), true
}

package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/molding"
)

// hanging is the piece as it hangs: its frame and all its weight.
func (w *worker) hanging(x exactPiece) hang.Given {
	g := hang.Given{
		Outside: x.frame.Outside, Face: w.Frame.Face, Lip: w.Frame.Lip,
		Mass: x.masses.total, Heaviest: x.masses.heaviest, MassKnown: len(x.masses.unknown) == 0,
	}
	if w.Frame.Kind == molding.Floater {
		g.Ledge = w.Frame.Ledge
	}
	if Shapes && w.shaped() {
		g.Face, _ = w.hangFace(&x.shape)
	}
	if Shapes && w.form() == regular {
		g.Outside = x.shape.bounds
	}
	return g
}

func (w *worker) hangPlaces(x exactPiece) hang.Places {
	at := hang.Places{
		Hang: w.at.order + "/hang", Worked: w.at.worked + "/hang",
		Outside: w.at.worked + "/frame/outside",
		Face:    w.at.order + "/frame/face", Lip: w.at.order + "/frame/lip", Ledge: w.at.order + "/frame/ledge",
		Mass: w.at.worked + "/mass/total", Heaviest: w.at.worked + "/mass/heaviest",
	}
	if Shapes && w.shaped() {
		_, at.Face = w.hangFace(&x.shape)
	}
	if Shapes && w.form() == regular {
		at.Outside = w.at.worked + "/shape/bounds"
	}
	return at
}

// assembleHang puts exact and shown lengths and loads together. What holds is
// rounded up, wall marks to the nearest.
func (w *worker) assembleHang(m figures, x exactPiece) HangPlan {
	l := x.hang
	if !l.Hangs() {
		return HangPlan{}
	}
	figure := func(path explain.Path, exact measure.Length) Figure {
		shown, _ := m.format.Round(exact, hangDirection(path))
		return m.length(exact, shown)
	}
	load := func(l hang.Load) LoadFigure { return LoadFigure{m.force(l.Nominal), m.force(l.Heaviest)} }
	plan := HangPlan{
		Below:  PairFigure{figure("/below", l.Below.Left), figure("/below", l.Below.Right)},
		Hanger: load(l.Hanger), Hook: load(l.Hook),
	}
	for _, path := range w.Hang.Figures(l) {
		switch path {
		case "/span":
			plan.Span = figure(path, l.Span)
		case "/spread":
			plan.Spread = figure(path, l.Spread)
		case "/rise":
			plan.Rise = figure(path, l.Rise)
		case "/angle":
			plan.Angle = angleFigure(l.Angle)
		case "/leg":
			plan.Leg = figure(path, l.Leg)
		case "/taut":
			plan.Taut = figure(path, l.Taut)
		case "/wire":
			plan.Wire = figure(path, l.Wire)
		case "/wire_top":
			plan.WireTop = figure(path, l.WireTop)
		case "/stable_rise":
			plan.StableRise = figure(path, l.StableRise)
		case "/tension/nominal":
			plan.Tension = load(l.Tension)
		case "/pull/nominal":
			plan.Pull = load(l.Pull)
		}
	}
	for _, mark := range l.Marks {
		plan.Marks = append(plan.Marks, MarkPlan{
			Across: figure("/marks", mark.Across), Bearing: figure("/marks", mark.Bearing), Nail: figure("/marks", mark.Nail),
		})
	}
	return plan
}

// hangDirection is the safe way to round a length of hanging: more wire, more
// rise that keeps level, less cover over the wire; everything else as near as
// it goes.
func hangDirection(path explain.Path) measure.Direction {
	switch path {
	case "/wire", "/stable_rise":
		return measure.Up
	case "/wire_top":
		return measure.Down
	}
	return measure.Nearest
}

// hang explains a figure of how the piece hangs.
func (e *explainer) hang(rest []string) (explain.Working, explain.Expr, bool) {
	path := pathOf(rest)
	w, ok := e.Hang.Explain(e.hanging(e.x), path, e.hangPlaces(e.x))
	if !ok || e.Hang.IsZero() {
		return explain.Working{}, explain.Expr{}, false
	}
	switch w.Exact.Kind {
	case explain.ForceKind:
		return w, e.showForce(w), true
	case explain.AngleKind:
		return w, explain.ToNearest(itself(w), explain.Const(AngleStep)), true
	}
	return w, e.towards(hangDirection(path), itself(w)), true
}

// showForce is how a load is shown.
func (e *explainer) showForce(w explain.Working) explain.Expr {
	if (figures{e.format}).inches() {
		return explain.UpTenthPound(itself(w))
	}
	return explain.Up(itself(w), explain.Const(ForceStep))
}

// showMass is how a mass is shown.
func (e *explainer) showMass(w explain.Working) explain.Expr {
	if (figures{e.format}).inches() {
		return explain.UpTenthPound(itself(w))
	}
	return explain.Up(itself(w), explain.Const(MassStep))
}

// hang lists the figures of how a piece hangs.
func (l *lister) hang(h *HangPlan) {
	l.add("/hang/below", "left", "right")
	for _, f := range []struct {
		name  explain.Path
		there bool
	}{
		{"span", h.Span != Figure{}}, {"spread", h.Spread != Figure{}}, {"rise", h.Rise != Figure{}},
		{"angle", h.Angle != AngleFigure{}}, {"leg", h.Leg != Figure{}}, {"taut", h.Taut != Figure{}},
		{"wire", h.Wire != Figure{}}, {"wire_top", h.WireTop != Figure{}}, {"stable_rise", h.StableRise != Figure{}},
	} {
		if f.there {
			l.add("/hang", f.name)
		}
	}
	for _, load := range []struct {
		name  explain.Path
		there bool
	}{
		{"tension", h.Tension != LoadFigure{}}, {"pull", h.Pull != LoadFigure{}}, {"hanger", true}, {"hook", true},
	} {
		if load.there {
			l.add("/hang/"+load.name, "nominal", "heaviest")
		}
	}
	for i := range h.Marks {
		l.add(explain.Path("/hang/marks").Index(i), "across", "bearing", "nail")
	}
}

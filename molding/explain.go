package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Sources of the formulas.
var (
	railSource = explain.Source{
		Title:  "Fine Woodworking no. 275",
		Place:  "rail length of a picture frame: rabbet size + 2 x the width from rabbet to outside",
		Status: explain.Verified,
	}
	openingSource = explain.CommonPractice("the package and its total play per dimension")
	gapSource     = explain.CommonPractice("a floater leaves a gap on each side of the art")
	sightSource   = explain.Geometry("both lips cover the package")
	miterSource   = explain.Geometry("equal faces halve the corner")
	fitSource     = explain.Geometry("a part pushed all the way to one side")
	cutSource     = explain.CommonPractice("each part has the frame's allowance, or its own clearance where that is more")
	ledgeSource   = explain.CommonPractice("screws through the ledge hold what is in a floater")
	clipSource    = explain.CommonPractice("spring clips need room behind the package")
	depthSource   = explain.CommonPractice("points need room behind the package")
)

// Places are where the fields stand that formulas and notes speak of.
type Places struct {
	Frame  explain.Path // the frame as decided
	Worked explain.Path // the frame worked out
	Shop   explain.Path // the shop's settings
}

// Explain returns how a figure of r came to be: "/opening/width",
// "/sight/height", "/outside/width", "/footage", or of a pair of rails
// "/horizontal/long_point", "/horizontal/short_point", "/vertical/saw",
// "/vertical/edge". Package is for the caller to explain.
func (f Frame) Explain(r Rectangle, figure explain.Path, at Places) (explain.Working, bool) {
	w, ok := f.explainFigure(r, figure.Segments(), at)
	if ok {
		w.Path = at.Worked + figure
	}
	return w, ok
}

func (f Frame) explainFigure(r Rectangle, segments []string, at Places) (explain.Working, bool) {
	if len(segments) == 1 && segments[0] == "footage" {
		return working("footage", r.Footage, explain.Geometry("two rails of each length"), explain.Times(explain.N(2),
			explain.Sum(outsideTerm(r, "width", at), outsideTerm(r, "height", at))))
	}
	if len(segments) != 2 {
		return explain.Working{}, false
	}
	group, name := segments[0], segments[1]
	if group == "horizontal" || group == "vertical" {
		return f.explainRail(r, group, name, at)
	}
	if name != "width" && name != "height" {
		return explain.Working{}, false
	}
	opening := explain.T("opening", r.Opening.Along(name), at.Worked+explain.Path("/opening/"+name))
	lip := explain.T("lip", f.Lip, at.Frame+"/lip")
	switch group {
	case "opening":
		if f.Kind == Floater {
			return working("opening", r.Opening.Along(name), gapSource, explain.Sum(
				explain.T("package", r.Package.Along(name), at.Worked+explain.Path("/package/"+name)),
				explain.Times(explain.N(2), explain.T("gap", f.Gap, at.Frame+"/gap"))))
		}
		return working("opening", r.Opening.Along(name), openingSource, explain.Sum(
			explain.T("package", r.Package.Along(name), at.Worked+explain.Path("/package/"+name)),
			explain.T("allowance", f.Allowance, at.Frame+"/allowance")))
	case "sight":
		return working("sight", r.Sight.Along(name), sightSource,
			explain.Minus(opening, explain.Times(explain.N(2), lip)))
	case "outside":
		return working("outside", r.Outside.Along(name), railSource, explain.Sum(opening,
			explain.Times(explain.N(2), explain.Minus(explain.T("face", f.Face, at.Frame+"/face"), lip))))
	}
	return explain.Working{}, false
}

// explainRail explains a rail's own figures; "horizontal" is the pair of top
// and bottom, "vertical" the pair of sides.
func (f Frame) explainRail(r Rectangle, pair, name string, at Places) (explain.Working, bool) {
	dimension := "width"
	if pair == "vertical" {
		dimension = "height"
	}
	saw, edge := Miter(measure.RightAngle)
	half := explain.Half(explain.Const(measure.RightAngle))
	switch name {
	case "long_point":
		w, ok := f.explainFigure(r, []string{"outside", dimension}, at)
		w.Key = "long_point"
		return w, ok
	case "short_point":
		w, ok := f.explainFigure(r, []string{"sight", dimension}, at)
		w.Key = "short_point"
		return w, ok
	case "saw":
		return explain.Working{Key: "saw", Exact: explain.Of(saw), Source: miterSource,
			Formula: explain.Minus(explain.Const(measure.RightAngle),
				explain.T("edge", edge, at.Worked+explain.Path("/"+pair+"/edge")))}, true
	case "edge":
		return explain.Working{Key: "edge", Exact: explain.Of(edge), Source: miterSource, Formula: half}, true
	}
	return explain.Working{}, false
}

// ExplainFit returns how a figure of a part's fit came to be: "/size/width",
// "/play/height", "/bite/width". Part is where the part stands in the order,
// worked where its fit stands in the plan.
func (f Frame) ExplainFit(opening measure.Size, c Cut, figure, part, worked explain.Path, at Places) (explain.Working, bool) {
	fit := f.Fit(opening, c)
	segments := figure.Segments()
	if len(segments) != 2 || segments[1] != "width" && segments[1] != "height" {
		return explain.Working{}, false
	}
	name := segments[1]
	room := explain.T("opening", opening.Along(name), at.Worked+explain.Path("/opening/"+name))
	allowance := explain.T("allowance", f.Allowance, at.Frame+"/allowance")
	clearance := explain.T("clearance", c.Clearance, part+"/clearance")
	var w explain.Working
	var ok bool
	switch segments[0] {
	case "size":
		if c.Given() {
			w, ok = working("size", c.Size.Along(name), explain.AsGiven(),
				explain.T("given", c.Size.Along(name), part+explain.Path("/size/"+name)))
		} else {
			w, ok = working("size", fit.Size.Along(name), cutSource, explain.Minus(room, explain.Most(allowance, clearance)))
		}
	default:
		w, ok = f.explainLying(fit, segments[0], name, worked, opening, at)
	}
	if ok {
		w.Path = worked + figure
	}
	return w, ok
}

// ExplainLying returns how the play or the bite of a part came to be:
// "/play/width", "/bite/height".
func (f Frame) ExplainLying(fit Fit, figure, worked explain.Path, opening measure.Size, at Places) (explain.Working, bool) {
	segments := figure.Segments()
	if len(segments) != 2 || segments[1] != "width" && segments[1] != "height" {
		return explain.Working{}, false
	}
	w, ok := f.explainLying(fit, segments[0], segments[1], worked, opening, at)
	if ok {
		w.Path = worked + figure
	}
	return w, ok
}

func (f Frame) explainLying(fit Fit, group, name string, worked explain.Path, opening measure.Size, at Places) (explain.Working, bool) {
	switch group {
	case "play":
		return working("play", fit.Play.Along(name), fitSource, explain.Minus(
			explain.T("opening", opening.Along(name), at.Worked+explain.Path("/opening/"+name)),
			explain.T("size", fit.Size.Along(name), worked+explain.Path("/size/"+name))))
	case "bite":
		return working("bite", fit.Bite.Along(name), fitSource, explain.Minus(
			explain.T("lip", f.Lip, at.Frame+"/lip"),
			explain.T("play", fit.Play.Along(name), worked+explain.Path("/play/"+name))))
	}
	return explain.Working{}, false
}

// ExplainDepth returns how a figure of d came to be: "/package", "/clear" or
// "/wanted". Parts are the thicknesses that make the package.
func (f Frame) ExplainDepth(d Depth, points measure.Length, parts []explain.Expr, figure, worked explain.Path, at Places) (explain.Working, bool) {
	pkg := explain.T("package", d.Package, worked+"/package")
	w, ok := explain.Working{}, true
	switch figure {
	case "/package":
		w, _ = working("package", d.Package, explain.Geometry("the parts lie on one another"), explain.Sum(parts...))
	case "/clear":
		w, _ = working("clear", d.Clear, depthSource, explain.Minus(explain.T("rabbet", f.Rabbet, at.Frame+"/rabbet"), pkg))
	case "/wanted":
		if f.Kind == Floater { // held by screws
			w, _ = working("wanted", d.Wanted, ledgeSource, pkg)
			break
		}
		source := depthSource
		if f.Section() {
			source = clipSource
		}
		w, _ = working("wanted", d.Wanted, source, explain.Sum(pkg, explain.T("points", points, at.Shop+"/points")))
	default:
		ok = false
	}
	if ok {
		w.Path = worked + figure
	}
	return w, ok
}

// working is a working of which the value is known.
func working(key explain.Key, l measure.Length, source explain.Source, formula explain.Expr) (explain.Working, bool) {
	return explain.Working{Key: key, Exact: explain.Of(l), Formula: formula, Source: source}, true
}

func outsideTerm(r Rectangle, name string, at Places) explain.Expr {
	return explain.T("outside", r.Outside.Along(name), at.Worked+explain.Path("/outside/"+name))
}

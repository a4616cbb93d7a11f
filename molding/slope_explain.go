package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Sources of the formulas.
var (
	slopeSource = explain.Source{
		Title:  "geometry in space",
		Place:  "the cut halves the angle between the two fronts",
		Status: explain.Computed,
	}
	pitchSource = explain.Geometry("a side at its pitch is the longest side of a right triangle")
)

// CornerPlaces are where a sloped corner and its settings stand.
type CornerPlaces struct {
	Corner explain.Path // the corner as decided
	Worked explain.Path // its settings
}

// Explain returns how a figure of the corner came to be: "/flat/miter",
// "/flat/tilt", the same of "/on_edge" and "/propped", or "/dihedral".
func (c SlopedCorner) Explain(figure explain.Path, at CornerPlaces) (explain.Working, bool) {
	w, ok := c.explainFigure(figure, at)
	w.Path = at.Worked + figure
	return w, ok
}

func (c SlopedCorner) explainFigure(figure explain.Path, at CornerPlaces) (explain.Working, bool) {
	segments := figure.Segments()
	if figure == "/dihedral" {
		return explain.Working{
			Key: "dihedral", Exact: explain.Of(c.Dihedral()), Source: slopeSource,
			Formula: explain.Minus(explain.Const(measure.Turn/2), explain.Times(explain.N(2),
				explain.T("blade", c.Setting(LaidFlat).Tilt, at.Worked+"/flat/tilt"))),
		}, true
	}
	if len(segments) != 2 {
		return explain.Working{}, false
	}
	p := Position(segments[0])
	if p != LaidFlat && p != OnEdge && p != Propped {
		return explain.Working{}, false
	}
	s, e := c.Setting(p), c.exprs(at)
	w := explain.Working{Source: slopeSource}
	switch segments[1] {
	case "miter":
		w.Key, w.Exact = "miter", explain.Of(s.Miter)
		w.Formula = e.sign(explain.ArcTan(e.placed(p)))
	case "tilt":
		w.Key, w.Exact = "blade", explain.Of(s.Tilt)
		w.Formula = e.sign(e.tilt(p))
	default:
		return explain.Working{}, false
	}
	if p == Propped && c.equal() {
		w.Formula = explain.T("plain", c.Plain, at.Corner+"/plain")
		if segments[1] == "tilt" {
			w.Formula = explain.Const(measure.Angle(0))
		}
	}
	return w, true
}

// cornerExprs are the formulas of a corner's plane, as of one that points outward.
type cornerExprs struct {
	inward, equal     bool
	plain, own, other explain.Expr
	along, rim, back  explain.Expr // the plane
	fence, table      explain.Expr // the plane as the frame stands, of sides that differ
}

func (c SlopedCorner) exprs(at CornerPlaces) cornerExprs {
	e := cornerExprs{
		inward: c.Plain < 0, equal: c.equal(),
		plain: explain.T("plain", c.Plain, at.Corner+"/plain"),
		own:   c.Own.expr(explain.Key("pitch"), explain.Key("lean"), at.Corner+"/own"),
		other: c.Other.expr(explain.Key("other_pitch"), explain.Key("other_lean"), at.Corner+"/other"),
	}
	if e.inward {
		e.plain = explain.Times(explain.N(-1), e.plain)
	}
	sin := func(a explain.Expr) explain.Expr { return explain.Sin(explain.Radius(), a) }
	cos := func(a explain.Expr) explain.Expr { return explain.Cos(explain.Radius(), a) }
	if e.equal {
		e.along = cos(e.plain)
		e.rim = explain.Sin(cos(e.own), e.plain)
		e.back = explain.Sin(sin(e.own), e.plain)
		return e
	}
	turn := explain.Times(explain.N(2), e.plain)
	e.along = explain.Sin(sin(e.other), turn)
	e.rim = explain.Minus(explain.Cos(sin(e.own), e.other), explain.Cos(explain.Sin(cos(e.own), e.other), turn))
	e.back = explain.Minus(explain.Radius(), explain.Cos(explain.Sin(sin(e.own), e.other), turn), explain.Cos(cos(e.own), e.other))
	e.fence = explain.Minus(sin(e.own), explain.Cos(sin(e.other), turn))
	e.table = explain.Minus(cos(e.own), cos(e.other))
	return e
}

// expr is the pitch counted from flat; one that is given as a lean is taken from
// a right angle.
func (p Pitch) expr(pitch, lean explain.Key, at explain.Path) explain.Expr {
	if p.From == FromVertical {
		return explain.Minus(explain.Const(measure.RightAngle), explain.NewTerm(lean, p.Angle, at+"/angle").Expr())
	}
	return explain.NewTerm(pitch, p.Angle, at+"/angle").Expr()
}

// sign turns a formula round where the corner points inward.
func (e cornerExprs) sign(formula explain.Expr) explain.Expr {
	if e.inward {
		return explain.Times(explain.N(-1), formula)
	}
	return formula
}

// placed is the way toward the fence over that along the board.
func (e cornerExprs) placed(p Position) (fence, along explain.Expr) {
	switch p {
	case OnEdge:
		return e.back, e.along
	case Propped:
		return e.fence, e.along
	}
	return e.rim, e.along
}

func (e cornerExprs) tilt(p Position) explain.Expr {
	table := e.back
	switch p {
	case OnEdge:
		table = e.rim
	case Propped:
		table = e.table
	}
	if e.equal {
		return explain.ArcSin(table, explain.Radius())
	}
	fence, along := e.placed(p)
	return explain.ArcTan(table, explain.Hypotenuse(along, fence))
}

// SidePlaces are where a sloped side, its two corners and its figures stand.
type SidePlaces struct {
	Side        explain.Path // the side as decided
	Left, Right explain.Path // its corners as decided
	Worked      explain.Path // its figures
}

// Explain returns how a figure of a side between two corners came to be: "/depth",
// "/run", "/front_rim", "/back_sight" or "/back_rim" of its rail.
func (s SlopedSide) Explain(sight measure.Length, left, right SlopedCorner, figure explain.Path, at SidePlaces) (explain.Working, bool) {
	r := s.Rail(sight, left, right)
	face := explain.T("face", s.Face, at.Side+"/face")
	thickness := explain.T("thickness", s.Thickness, at.Side+"/thickness")
	pitch := s.Pitch.expr(explain.Key("pitch"), explain.Key("lean"), at.Side+"/pitch")
	front := explain.T("front_sight", sight, at.Worked+"/front_sight")
	back := explain.T("back_sight", r.BackSight, at.Worked+"/back_sight")
	a := left.exprs(CornerPlaces{Corner: at.Left})
	b := right.exprs(CornerPlaces{Corner: at.Right})
	grown := func(from, way, toLeft, toRight explain.Expr) explain.Expr {
		return explain.Sum(from, a.sign(explain.Quot(way, toLeft, a.along)), b.sign(explain.Quot(way, toRight, b.along)))
	}
	var w explain.Working
	var ok bool
	switch figure {
	case "/depth":
		w, ok = working("slope.depth", s.Depth(), pitchSource, explain.Sin(face, pitch))
	case "/run":
		w, ok = working("slope.run", s.Run(), pitchSource, explain.Cos(face, pitch))
	case "/front_rim":
		w, ok = working("front_rim", r.FrontRim, slopeSource, grown(front, face, a.rim, b.rim))
	case "/back_sight":
		w, ok = working("back_sight", r.BackSight, slopeSource, grown(front, thickness, a.back, b.back))
	case "/back_rim":
		w, ok = working("back_rim", r.BackRim, slopeSource, grown(back, face, a.rim, b.rim))
	}
	w.Path = at.Worked + figure
	return w, ok
}

// ExplainShare returns how a figure of [SlopedCorner.Share] came to be: "/rim" or
// "/back". Setting is where the setting stands, worked where the share does.
func (c SlopedCorner) ExplainShare(side SlopedSide, p Position, s Setting, figure, sideAt, setting, worked explain.Path, at CornerPlaces) (explain.Working, bool) {
	share, e := c.Share(side, p, s), c.exprs(at)
	miter, tilt := explain.T("miter", s.Miter, setting+"/miter"), explain.T("blade", s.Tilt, setting+"/tilt")
	along := explain.Cos(explain.Cos(explain.Radius(), tilt), miter)
	fence, table := explain.Sin(explain.Cos(explain.Radius(), tilt), miter), explain.Sin(explain.Radius(), tilt)
	rim, back := fence, table
	switch p {
	case OnEdge:
		rim, back = table, fence
	case Propped:
		rim = explain.Minus(explain.Cos(fence, e.own), explain.Sin(table, e.own))
		back = explain.Sum(explain.Sin(fence, e.own), explain.Cos(table, e.own))
	}
	size := explain.Hypotenuse(explain.Hypotenuse(e.along, e.rim), e.back)
	formula := func(way, got, wanted explain.Expr) explain.Expr {
		return explain.Quot(explain.Minus(explain.Quot(way, got, along), e.sign(explain.Quot(way, wanted, e.along))), e.along, size)
	}
	var w explain.Working
	var ok bool
	switch figure {
	case "/rim":
		w, ok = working("share.rim", share.Rim, slopeSource, formula(explain.T("face", side.Face, sideAt+"/face"), rim, e.rim))
	case "/back":
		w, ok = working("share.back", share.Back, slopeSource, formula(explain.T("thickness", side.Thickness, sideAt+"/thickness"), back, e.back))
	}
	w.Path = worked + figure
	return w, ok
}

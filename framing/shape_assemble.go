package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// showShaped shows a frame that is no plain rectangle: the rails of one with four
// sides up, as those of any. The size of a regular frame across flats is not cut to
// and stays as it is: its parts are cut to the opening that is promised.
func (w *worker) showShaped(f measure.Format, x exactPiece) shownFrame {
	r := x.frame
	s := shownFrame{outside: r.Outside, opening: r.Opening, sight: r.Sight}
	if w.form() == rectangular {
		s.outside = roundSize(f, r.Outside, w.Frame.Made.Direction())
		s.opening.Width += s.outside.Width - r.Outside.Width
		s.opening.Height += s.outside.Height - r.Outside.Height
		s.sight = s.opening.Grown(-2 * w.Frame.Lip)
	}
	s.sight = roundSize(f, s.sight, measure.Down)
	return s
}

// shapeDirection is how a length of a shape is shown: a rail never short, a part of
// it as near as it goes. A frame for a space is never large.
func (w *worker) shapeDirection(name string) measure.Direction {
	switch name {
	case "long_point", "outer", "long", "front_rim", "back_rim", "back_sight":
		return w.Frame.Made.Direction()
	case "sight":
		return measure.Down
	case "outside", "points":
		return measure.Up
	}
	return measure.Nearest
}

// assembleShape writes the rails of a frame that is no plain rectangle.
func (w *worker) assembleShape(m figures, piece *PiecePlan, x exactPiece, s shownPiece) {
	piece.Frame.Horizontal, piece.Frame.Vertical, piece.Frame.Footage = RailPlan{}, RailPlan{}, Figure{}
	shape := &x.shape
	figure := func(name string, exact measure.Length) Figure {
		shown, _ := m.format.Round(exact, w.shapeDirection(name))
		return m.length(exact, shown)
	}
	p := ShapePlan{Sides: shape.panel.Sides(), Frame: shape.frame, Outlines: shape.outlines, Bounds: shape.bounds}
	flat := w.Frame.Slope.IsZero()
	if w.form() == regular {
		r := shape.regular
		p.Panel = w.panel
		if !flat {
			p.Seen = SeenPlan{w.seen().Face, w.Frame.Lip, w.Frame.Allowance, w.Frame.Gap}
		}
		p.Regular = RegularPlan{
			Panel: figure("panel", r.Panel), Opening: m.length(r.Opening, r.Opening), Sight: figure("sight", r.Sight),
			Outside: figure("outside", r.Outside), Points: figure("points", r.Points),
			LongPoint: figure("long_point", r.LongPoint), ShortPoint: figure("short_point", r.ShortPoint),
			Growth: figure("growth", r.Growth), Saw: angleFigure(r.Saw), Edge: angleFigure(r.Edge),
		}
		p.Regular.Footage = m.length(r.Footage, measure.Length(w.panel.Sides)*p.Regular.LongPoint.Shown)
		if flat {
			p.ByWedge, p.ByMiss = molding.Ring{Sides: w.panel.Sides, Long: r.LongPoint, Face: w.Frame.Face}.Finest(w.shop.Saw.Seen)
		}
		if p.Ring = shape.ring; p.Ring.Sides > 0 {
			last := p.Ring.Last()
			p.Last = LastPlan{Turn: angleFigure(last.Turn), Joint: figure("joint", last.Joint),
				Miss: figure("miss", last.Miss), Wedge: figure("wedge", last.Wedge), Opens: last.Opens}
		}
	} else if flat {
		p.Rails = w.assembleCuts(shape, figure)
		var shown measure.Length
		for _, r := range p.Rails {
			shown += r.Long.Shown
		}
		p.Footage = m.length(shape.polygon.Footage, shown)
		if w.shop.Saw.Off != 0 {
			if p.Chain = w.chain(shape, w.shop.Saw.Off, exactly); p.Chain != nil {
				p.End = assembleChain(p.Chain, figure)
			}
		}
	}
	for k := range shape.slope {
		p.Slope = append(p.Slope, assembleSlope(&shape.slope[k], figure))
	}
	piece.Shape = p
}

func (w *worker) assembleCuts(x *exactShape, figure func(string, measure.Length) Figure) []CutPlan {
	cuts := make([]CutPlan, len(x.polygon.Rails))
	end := func(e molding.RailEnd) EndPlan {
		return EndPlan{
			Saw: angleFigure(e.Saw), Edge: angleFigure(e.Edge), Growth: figure("growth", e.Growth),
			Joint: figure("joint", e.Joint), Square: e.Square,
		}
	}
	for i, r := range x.polygon.Rails {
		if !r.IsZero() {
			cuts[i] = CutPlan{
				Sight: figure("sight_edge", r.Sight), Outer: figure("outer", r.Outer), Long: figure("long", r.Long),
				Start: end(r.Start), Finish: end(r.Finish),
			}
		}
	}
	return cuts
}

func assembleSlope(s *sloped, figure func(string, measure.Length) Figure) SlopePlan {
	setting := func(c molding.SlopedCorner, p molding.Position) SettingPlan {
		cut := c.Setting(p)
		return SettingPlan{angleFigure(cut.Miter), angleFigure(cut.Tilt), gapsOf(s, c, p)}
	}
	end := func(c molding.SlopedCorner) SlopeEndPlan {
		return SlopeEndPlan{
			Corner: c, Flat: setting(c, molding.LaidFlat), OnEdge: setting(c, molding.OnEdge), Propped: setting(c, molding.Propped),
			Dihedral: angleFigure(c.Dihedral()),
		}
	}
	left := end(s.left)
	right := left
	if s.right != s.left {
		right = end(s.right)
	}
	return SlopePlan{
		Sides: s.sides, Side: s.side,
		FrontSight: figure("front_sight", s.rail.FrontSight), FrontRim: figure("front_rim", s.rail.FrontRim),
		BackSight: figure("back_sight", s.rail.BackSight), BackRim: figure("back_rim", s.rail.BackRim),
		Depth: figure("depth", s.side.Depth()), Run: figure("run", s.side.Run()),
		Left: left, Right: right,
	}
}

// shape lists the figures of a frame that is no plain rectangle.
func (l *lister) shape(s *ShapePlan) {
	if s.Panel.Sides > 0 {
		l.add("/shape/regular", "panel", "opening", "sight", "outside", "points", "long_point", "short_point", "growth", "saw", "edge", "footage")
	}
	for i, r := range s.Rails {
		if r.IsZero() {
			continue
		}
		rail := explain.Path("/shape/rails").Index(i)
		l.add(rail, "sight", "outer", "long")
		l.add(rail+"/start", "saw", "edge", "growth", "joint")
		l.add(rail+"/finish", "saw", "edge", "growth", "joint")
	}
	for k := range s.Slope {
		slope := explain.Path("/shape/slope").Index(k)
		l.add(slope, "front_sight", "front_rim", "back_sight", "back_rim", "depth", "run")
		for _, end := range [...]string{"/left", "/right"} {
			for _, p := range [...]string{"/flat", "/on_edge", "/propped"} {
				l.add(slope+explain.Path(end)+explain.Path(p), "miter", "tilt")
			}
			l.add(slope+explain.Path(end), "dihedral")
		}
	}
	if s.Footage != (Figure{}) {
		l.add("/shape", "footage")
	}
	if s.Chain != nil {
		l.add("/shape/end", "along", "across", "miss", "turned", "over", "open", "slide")
	}
	if s.Ring.Sides > 0 {
		l.add("/shape/last", "turn", "joint", "miss", "wedge")
	}
}

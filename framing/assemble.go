package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// assemble puts exact and shown lengths together into the figures of a plan.
func (w worker) assemble(x exactPiece, s shownPiece) PiecePlan {
	m := figures{w.format}
	plan := PiecePlan{Name: w.Name, Quantity: w.Quantity, Worked: true}
	plan.Frame = w.assembleFrame(m, x, s)
	if !w.Mat.IsZero() {
		plan.Mat = assembleMat(m, x.mat, s.mat)
	}
	plan.Layers = make([]LayerPlan, 0, len(x.layers))
	for i, l := range x.layers {
		if !l.loose {
			continue
		}
		exactFit := w.fit(x.frame.Opening, l.size, l.least)
		shownFit := w.fit(s.opening, s.layers[i], shownLeast(l, s.layers[i]))
		plan.Layers = append(plan.Layers, LayerPlan{
			Part: l.part, CutToFit: l.toFit,
			Size: m.size(exactFit.Size, shownFit.Size),
			Play: m.size(exactFit.Play, shownFit.Play),
			Bite: m.size(exactFit.Bite, shownFit.Bite),
		})
	}
	plan.Depth = DepthPlan{
		Package: m.length(x.depth.Package, s.depth[0]),
		Clear:   m.length(x.depth.Clear, s.depth[1]),
		Wanted:  m.length(x.depth.Wanted, s.depth[2]),
	}
	return plan
}

func (w worker) assembleFrame(m figures, x exactPiece, s shownPiece) FramePlan {
	r := x.frame
	saw, edge := molding.Miter(measure.RightAngle)
	rail := RailPlan{Saw: angleFigure(saw), Edge: angleFigure(edge)}
	f := FramePlan{
		Package: m.size(r.Package, s.pkg),
		Opening: m.size(r.Opening, s.opening),
		Sight:   m.size(r.Sight, s.sight),
		Outside: m.size(r.Outside, s.outside),
		Footage: m.length(r.Footage, 2*s.outside.UnitedLength()),
	}
	f.Horizontal, f.Vertical = rail, rail
	f.Horizontal.LongPoint, f.Horizontal.ShortPoint = f.Outside.Width, f.Sight.Width
	f.Vertical.LongPoint, f.Vertical.ShortPoint = f.Outside.Height, f.Sight.Height
	return f
}

func assembleMat(m figures, x, s matLayout) MatPlan {
	return MatPlan{
		Window:  m.size(x.Window, s.Window),
		Covered: m.size(x.Covered, s.Covered),
		Cover:   m.sides(x.Cover, s.Cover),
		Cut:     m.sides(x.Cut, s.Cut),
		Visible: m.sides(x.Visible, s.Visible),
		Seated:  m.sides(x.Seated, s.Seated),
		Blank:   m.size(x.Blank, s.Blank),
		Back:    CornerFigure{m.length(x.Back.Left, s.Back.Left), m.length(x.Back.Top, s.Back.Top)},
	}
}

package framing

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// assemble puts exact and shown lengths together into the figures of a plan.
func (w *worker) assemble(x exactPiece, s shownPiece) PiecePlan {
	m := figures{w.format}
	plan := PiecePlan{Name: w.Name, Quantity: w.Quantity, Worked: true}
	if w.stretched() {
		plan.Canvas = w.assembleCanvas(m)
	}
	if !Shapes || w.form() != polygonal {
		plan.Frame = assembleFrame(m, x.frame, s.frame)
		plan.Frame.DustCover = w.assembleDust(m, x, s)
	}
	if Shapes && w.shaped() {
		w.assembleShape(m, &plan, x, s)
	}
	plan.Art = w.derived
	if w.lined() {
		plan.Liner = assembleFrame(m, x.inner, s.inner)
	}
	if !w.Mat.IsZero() {
		plan.Mat = w.assembleMat(m, x.mat, s.mat)
	}
	if w.floats() {
		plan.Float = w.assembleFloat(m, x, s)
	}
	plan.Layers = make([]LayerPlan, 0, len(x.layers))
	for i, l := range x.layers {
		if !l.loose {
			continue
		}
		frame, r := w.holder(x, l)
		exactFit := fit(frame, r.Opening, l.size, l.least)
		shownFit := fit(frame, s.holder(l).opening, s.layers[i], shownLeast(l, s.layers[i]))
		plan.Layers = append(plan.Layers, LayerPlan{
			Part: l.part, In: l.in, CutToFit: l.toFit,
			Size: m.size(exactFit.Size, shownFit.Size),
			Play: m.size(exactFit.Play, shownFit.Play),
			Bite: m.size(exactFit.Bite, shownFit.Bite),
		})
	}
	plan.Depth = w.assembleDepth(m, x.depth, s.depth, w.stackOf(x, w.innerPart()))
	if w.lined() {
		plan.LinerDepth = w.assembleDepth(m, x.linerDepth, s.linerDepth, w.stackOf(x, FrameLayer))
	}
	plan.Mass = w.assembleMass(m, x.masses)
	if !w.Hang.IsZero() {
		plan.Hang = w.assembleHang(m, x)
	}
	return plan
}

func assembleFrame(m figures, r molding.Rectangle, s shownFrame) FramePlan {
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

// assembleDust is the paper over the back, which ends inside the outside edge.
func (w *worker) assembleDust(m figures, x exactPiece, s shownPiece) SizeFigure {
	return m.size(x.frame.Outside.Grown(-2*w.shop.Dust),
		roundSize(m.format, s.frame.outside.Grown(-2*w.shop.Dust), measure.Down))
}

func (w *worker) assembleMat(m figures, x, s matLayout) MatPlan {
	plan := MatPlan{
		Window:  m.size(x.Window, s.Window),
		Bevel:   m.bevel(x.Bevel, s.Bevel),
		Covered: m.size(x.Covered, s.Covered),
		Cover:   m.sides(x.Cover, s.Cover),
		Cut:     m.sides(x.Cut, s.Cut),
		Visible: m.sides(x.Visible, s.Visible),
		Seated:  m.sides(x.Seated, s.Seated),
		Blank:   m.size(x.Blank, s.Blank),
		Back:    CornerFigure{m.length(x.Back.Left, s.Back.Left), m.length(x.Back.Top, s.Back.Top)},
	}
	for i := range w.Mat.Under.Count() {
		b, c := x.Under[i], s.Under[i]
		plan.Under = append(plan.Under, UnderPlan{
			Reveal:  m.length(b.Reveal, c.Reveal),
			Seen:    m.length(b.Seen, c.Seen),
			Window:  m.size(b.Window, c.Window),
			Bevel:   m.bevel(b.Bevel, c.Bevel),
			Blank:   m.size(b.Blank, c.Blank),
			Own:     m.sides(b.Own, c.Own),
			FromTop: m.sides(b.FromTop, c.FromTop),
		})
	}
	return plan
}

func (m figures) bevel(x, s mat.Bevel) BevelPlan {
	return BevelPlan{Run: m.length(x.Run, s.Run), Slope: m.length(x.Slope, s.Slope), Face: m.size(x.Face, s.Face)}
}

// assembleCanvas is the canvas to cut, rounded up, and the bars it goes on: bars
// are bought by the size of the art. What it varies by are the folds of the
// canvas at its corners, and nothing to cut.
func (w *worker) assembleCanvas(m figures) CanvasPlan {
	cut, bars := w.canvasCut(), w.Art.Least()
	return CanvasPlan{
		Cut:    m.size(cut, roundSize(m.format, cut, measure.Up)),
		Bars:   m.size(bars, bars),
		United: m.length(bars.UnitedLength(), bars.UnitedLength()),
	}
}

// canvasCut is the canvas that goes round the bars: their size, and their depth
// and what is turned round the back on each side (common practice).
func (w *worker) canvasCut() measure.Size {
	return w.Art.Least().Grown(2 * (w.Art.Thickness + w.Art.Stretch.Turn))
}

// assembleFloat is the air around art in a floater.
func (w *worker) assembleFloat(m figures, x exactPiece, s shownPiece) FloatPlan {
	exact := molding.FloatOf(x.inner.Opening, w.Art.Greatest(), w.Art.Least())
	shown := molding.FloatOf(s.inner.opening, w.Art.Greatest(), w.Art.Least())
	return FloatPlan{Least: m.size(exact.Least, shown.Least), Most: m.size(exact.Most, shown.Most)}
}

// stackOf lists what lies in the rabbet of one frame, from the front.
func (w *worker) stackOf(x exactPiece, in LayerPart) []StackPlan {
	m := figures{w.format}
	stack := make([]StackPlan, 0, len(x.layers))
	for _, l := range x.layers {
		if l.in == in {
			stack = append(stack, StackPlan{l.part, m.length(l.thickness, l.thickness), l.inside})
		}
	}
	if in == FrameLayer && w.lined() {
		if proud := w.proudOfLiner(x); proud > 0 {
			stack = append(stack, StackPlan{PackageLayer, m.length(proud, proud), false})
		}
	}
	return stack
}

func (w *worker) assembleDepth(m figures, x molding.Depth, s shownDepth, stack []StackPlan) DepthPlan {
	return DepthPlan{
		Stack:   stack,
		Package: m.length(x.Package, s.pkg),
		Clear:   m.length(x.Clear, s.clear),
		Wanted:  m.length(x.Wanted, s.wanted),
	}
}

func (w *worker) assembleMass(m figures, x masses) MassPlan {
	plan := MassPlan{Unknown: x.unknown, Total: m.mass(x.total), Heaviest: m.mass(x.heaviest)}
	plan.Parts = make([]PartMass, 0, len(x.parts))
	for _, p := range x.parts {
		plan.Parts = append(plan.Parts, PartMass{
			Part: p.part, Mass: m.mass(p.mass), Heaviest: m.mass(p.heaviest), Uncertain: p.uncertain(),
		})
	}
	return plan
}

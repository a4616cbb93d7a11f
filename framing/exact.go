package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// exactPiece is a piece in exact lengths.
type exactPiece struct {
	mat matLayout
	// inner is the frame that the package lies in, and frame the outermost one;
	// they differ where there is a liner.
	inner, frame molding.Rectangle
	layers       []layer
	depth        molding.Depth
	linerDepth   molding.Depth
	masses       masses
	hang         hang.Layout
	// shape is the frame where it is no plain rectangle.
	shape exactShape
}

// A layer is one part in a rabbet.
type layer struct {
	part LayerPart
	at   explain.Path // where it stands in the order
	cut  molding.Cut
	// in is the frame that it lies in.
	in LayerPart
	// thickness counts into the depth; thicknessAt is where it stands.
	thickness   measure.Length
	thicknessAt explain.Path
	// size and least are the part where it is largest and smallest; only art
	// has two sizes.
	size, least measure.Size
	// loose is a part that lies in the opening; art under a mat does not.
	loose bool
	// inside is art that lies in the well of a spacer, not behind it.
	inside bool
	// toFit is whether the plan decides the size.
	toFit bool
}

func (w *worker) exactly() exactPiece {
	var x exactPiece
	pkg := w.Art.Greatest()
	if !w.Mat.IsZero() {
		x.mat = w.Mat.Lay(w.given(w.shop))
		pkg = x.mat.Blank
	}
	x.inner = w.inner().Around(pkg)
	x.frame = x.inner
	if w.lined() {
		x.frame = w.Frame.Around(x.inner.Outside)
	}
	if Shapes && w.shaped() {
		w.exactShape(&x)
	}
	x.layers = w.layers(x)
	w.stack(&x)
	x.masses = w.weigh(x)
	if !w.Hang.IsZero() {
		x.hang = w.Hang.Lay(w.hanging(x))
	}
	return x
}

// lined reports whether there is a liner in the frame.
func (w *worker) lined() bool { return !w.Liner.IsZero() }

// innerPart is what the package lies in.
func (w *worker) innerPart() LayerPart {
	if w.lined() {
		return LinerLayer
	}
	return FrameLayer
}

// holder is the frame that a layer lies in, as decided and as worked out.
func (w *worker) holder(x exactPiece, l layer) (molding.Frame, molding.Rectangle) {
	if l.in == LinerLayer {
		return w.Liner, x.inner
	}
	return w.Frame, x.frame
}

// layers lists the parts in the rabbets, from the front, with their exact sizes;
// last the liner, which lies in the frame.
func (w *worker) layers(x exactPiece) []layer {
	layers := make([]layer, 0, 9)
	matted := !w.Mat.IsZero()
	if !w.Glazing.IsZero() {
		layers = append(layers, layer{part: GlazingLayer, cut: w.glazingCut(), thickness: w.Glazing.Thickness, loose: true})
	}
	spacer := layer{part: SpacerLayer, thickness: w.Spacer.Depth, thicknessAt: w.at.order + "/spacer/depth"}
	if w.spacerUnderGlazing() {
		layers = append(layers, spacer)
	}
	if matted {
		blank := x.mat.Blank
		layers = append(layers, layer{part: MatLayer, thickness: w.Mat.Thickness, size: blank, least: blank, loose: true, toFit: !w.boardGiven()})
		for i, u := range w.Mat.Under.All() {
			size := x.mat.Under[i].Blank
			layers = append(layers, layer{
				part: UnderMatLayer, at: (w.at.order + "/mat/under").Index(i), thickness: u.Thickness, size: size, least: size,
			})
		}
	}
	if !w.Spacer.IsZero() && !w.spacerUnderGlazing() {
		layers = append(layers, spacer)
	}
	layers = append(layers, layer{
		part: ArtLayer, thickness: w.Art.Thickness, size: w.Art.Greatest(), least: w.Art.Least(),
		loose: !matted, inside: w.inWell(x),
	})
	if !w.Mount.IsZero() {
		layers = append(layers, layer{part: MountLayer, cut: w.Mount.Cut, thickness: w.Mount.Thickness, loose: true})
	}
	if !w.Backing.IsZero() {
		layers = append(layers, layer{part: BackingLayer, cut: w.Backing.Cut, thickness: w.Backing.Thickness, loose: true})
	}
	for i := range layers {
		w.place(&layers[i], x.inner.Opening)
	}
	if w.lined() {
		outside := x.inner.Outside
		layers = append(layers, layer{
			part: LinerLayer, at: w.at.order + "/liner", in: FrameLayer, size: outside, least: outside, loose: w.Frame.Kind != molding.Floater,
			thickness: w.Liner.Height, thicknessAt: w.at.order + "/liner/height",
		})
	}
	return layers
}

// place says where a layer of the package stands, and how large it is cut.
func (w *worker) place(l *layer, opening measure.Size) {
	l.in = w.innerPart()
	l.loose = l.loose && !w.floats() && (!Shapes || w.form() != polygonal) // screws hold what is in a floater
	if l.at == "" {
		l.at = w.at.order.Child(string(l.part))
	}
	if l.thicknessAt == "" {
		l.thicknessAt = l.at + "/thickness"
	}
	switch l.part {
	case GlazingLayer, MountLayer, BackingLayer:
		l.size = w.inner().Fit(opening, l.cut).Size
		l.least, l.toFit = l.size, !l.cut.Given()
	}
}

// stretched reports whether a canvas is to be stretched.
func (w *worker) stretched() bool { return w.Art.Kind == Canvas && !w.Art.Stretch.IsZero() }

// floats reports whether the art stands free in a floater.
func (w *worker) floats() bool { return w.inner().Kind == molding.Floater }

// spacerUnderGlazing reports whether there is a spacer right behind the glazing.
func (w *worker) spacerUnderGlazing() bool {
	return !w.Spacer.IsZero() && (w.Spacer.Under == glazing.UnderGlazing || w.Mat.IsZero())
}

// stack works out how everything lies in the depth of the rabbets.
func (w *worker) stack(x *exactPiece) {
	inner := make([]measure.Length, 0, 9)
	for _, l := range x.layers {
		switch {
		case l.inside:
			inner[len(inner)-1] = max(inner[len(inner)-1], l.thickness) // the spacer's
		case l.part != LinerLayer:
			inner = append(inner, l.thickness)
		}
	}
	x.depth = w.inner().DepthOf(w.points(w.inner()), inner...)
	if w.lined() {
		x.linerDepth = w.Frame.DepthOf(w.points(w.Frame), w.Liner.Height, w.proudOfLiner(*x))
	}
}

// points is the room behind what a frame holds that its points need; in a floater
// screws hold it.
func (w *worker) points(f molding.Frame) measure.Length {
	if f.Kind == molding.Floater {
		return 0
	}
	return w.shop.Points
}

// proudOfLiner is how far the package stands out behind its liner, which the
// frame has to take too.
func (w *worker) proudOfLiner(x exactPiece) measure.Length {
	if w.Liner.Rabbet == 0 {
		return 0
	}
	return max(0, -x.depth.Clear)
}

// play is the total play per dimension that a layer is made with: the least
// with which the plan says it goes in.
func (w *worker) play(l layer) measure.Length {
	if l.in == LinerLayer {
		return l.cut.Play(w.Liner.Room())
	}
	return l.cut.Play(w.Frame.Room())
}

// fit is how a layer of the given sizes lies in an opening.
func fit(f molding.Frame, opening, size, least measure.Size) molding.Fit {
	fit := f.FitOf(opening, size)
	fit.Bite = f.FitOf(opening, least).Bite
	return fit
}

type matLayout = mat.Layout

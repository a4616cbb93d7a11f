package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// Work works an order out. The error is [explain.Problems] and holds all that
// is wrong with the order. A piece without problems is worked all the same, so
// that a page can show the rest while one field is half typed. The order is
// not changed and the plan does not share its pieces.
func Work(o Order) (Plan, error) {
	problems := o.Check()
	plan := Plan{Version: PlanVersion, Order: o}
	plan.Order.Pieces = append([]Piece(nil), o.Pieces...)
	for _, p := range o.read.defaults {
		plan.Defaults = append(plan.Defaults, orderRoot.Join(p))
	}
	for _, p := range o.read.rounded {
		plan.Notes = append(plan.Notes, explain.Note{Level: explain.Advice, Code: Rounded, Path: orderRoot.Join(p)})
	}
	format, err := o.Show.Format()
	if err != nil { // a problem of its own; the figures stay exact
		format = measure.Format{}
	}
	if len(o.Pieces) > MaxPieces {
		return plan, problems
	}
	plan.Pieces = make([]PiecePlan, len(o.Pieces))
	for i := range o.Pieces {
		p := &o.Pieces[i]
		plan.Pieces[i] = PiecePlan{Name: p.Name, Quantity: p.Quantity}
		if len(problems) > 0 && p.faulty(explain.Path("/pieces").Index(i), problems) {
			continue
		}
		w := worker{p, o.Shop, format, placesOf(i)}
		plan.Pieces[i] = w.piece()
	}
	return plan, problems.Err()
}

// faulty reports whether the piece at a path has problems: recorded ones, or,
// where there were too many to record, any.
func (p *Piece) faulty(at explain.Path, problems explain.Problems) bool {
	if len(problems.Under(at)) > 0 {
		return true
	}
	if problems[0].Code != explain.MoreProblems { // it stands at "", before all others
		return false
	}
	var c explain.Checker
	p.check(&c, at)
	return len(c.Problems()) > 0
}

// orderRoot is where a plan holds its order.
const orderRoot explain.Path = "/order"

// places are where the parts of one piece stand in a plan.
type places struct {
	order  explain.Path // the piece as decided
	worked explain.Path // the piece worked out
}

func placesOf(i int) places {
	worked := explain.Path("/pieces").Index(i)
	return places{orderRoot.Join(worked), worked}
}

// A worker works one piece out.
type worker struct {
	*Piece
	shop   Shop
	format measure.Format
	at     places
}

// piece works everything out: exact first, then the shown set, then what to
// know about it.
func (w worker) piece() PiecePlan {
	x := w.exactly()
	s := w.show(x, w.format)
	plan := w.assemble(x, s)
	plan.Notes = w.notes(x, s)
	return plan
}

// exactPiece is a piece in exact lengths.
type exactPiece struct {
	mat    matLayout
	frame  molding.Rectangle
	layers []layer
	depth  molding.Depth
}

// A layer is one part in the rabbet.
type layer struct {
	part LayerPart
	at   explain.Path // where it stands in the order
	cut  molding.Cut
	// thickness counts into the depth.
	thickness measure.Length
	// size and least are the part where it is largest and smallest; only art
	// has two sizes.
	size, least measure.Size
	// loose is a part that lies in the opening; art under a mat does not.
	loose bool
	// toFit is whether the plan decides the size.
	toFit bool
}

func (w worker) exactly() exactPiece {
	var x exactPiece
	pkg := w.Art.Greatest()
	if !w.Mat.IsZero() {
		x.mat = w.Mat.Lay(w.given(w.shop))
		pkg = x.mat.Blank
	}
	x.frame = w.Frame.Around(pkg)
	x.layers = w.layers(x)
	var stack [5]measure.Length
	for i, l := range x.layers {
		stack[i] = l.thickness
	}
	x.depth = w.Frame.DepthOf(w.shop.Points, stack[:len(x.layers)]...)
	return x
}

// layers lists the parts in the rabbet, from the front, with their exact
// sizes.
func (w worker) layers(x exactPiece) []layer {
	layers := make([]layer, 0, 5)
	matted := !w.Mat.IsZero()
	if !w.Glazing.IsZero() {
		layers = append(layers, layer{part: GlazingLayer, cut: w.glazingCut(), thickness: w.Glazing.Thickness, loose: true})
	}
	if matted {
		blank := x.mat.Blank
		layers = append(layers, layer{part: MatLayer, thickness: w.Mat.Thickness, size: blank, least: blank, loose: true, toFit: !w.boardGiven()})
	}
	layers = append(layers, layer{part: ArtLayer, thickness: w.Art.Thickness, size: w.Art.Greatest(), least: w.Art.Least(), loose: !matted})
	if !w.Mount.IsZero() {
		layers = append(layers, layer{part: MountLayer, cut: w.Mount.Cut, thickness: w.Mount.Thickness, loose: true})
	}
	if !w.Backing.IsZero() {
		layers = append(layers, layer{part: BackingLayer, cut: w.Backing.Cut, thickness: w.Backing.Thickness, loose: true})
	}
	for i := range layers {
		l := &layers[i]
		l.at = w.at.order.Child(string(l.part))
		if l.part == MatLayer || l.part == ArtLayer {
			continue
		}
		l.size = w.Frame.Fit(x.frame.Opening, l.cut).Size
		l.least, l.toFit = l.size, !l.cut.Given()
	}
	return layers
}

// play is the total play per dimension that a layer is made with: the least
// with which the plan says it goes in.
func (w worker) play(l layer) measure.Length { return l.cut.Play(w.Frame.Allowance) }

// fit is how a layer of the given sizes lies in an opening.
func (w worker) fit(opening, size, least measure.Size) molding.Fit {
	fit := w.Frame.FitOf(opening, size)
	fit.Bite = w.Frame.FitOf(opening, least).Bite
	return fit
}

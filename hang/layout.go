package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Given is the piece that hangs. Its center of gravity is taken to be in its
// middle.
type Given struct {
	// Outside is the frame's outermost size, Face the width of its rails. Lip is
	// how much of the face has the rabbet behind it, Ledge how far the back of a
	// floater reaches in beyond its face.
	Outside          measure.Size
	Face, Lip, Ledge measure.Length
	// Mass is what the piece weighs, Heaviest what it can weigh: what has to hold
	// is judged by that.
	Mass, Heaviest measure.Mass
	// MassKnown is whether every part is in the two masses; the piece weighs more
	// where not.
	MassKnown bool
}

// A Layout is how a piece hangs, worked out. What has no part in a way of
// hanging, as the wire of a piece on two rings, is 0. A piece that cannot hang
// as decided has no marks, and the notes say why.
//
// Lengths are rounded to the nanometer and loads to the millinewton, half away
// from zero where a field does not say otherwise.
type Layout struct {
	// Below is how far below the frame's top each hanger bears.
	Below Pair
	// Span is from hanger to hanger, Spread between the two hooks of a wire; the
	// half of a span is rounded down.
	Span, Spread measure.Length
	// Rise is how much higher the taut wire is at a hook than at the hangers.
	Rise measure.Length
	// Angle is how steep the wire is, from the horizontal.
	Angle measure.Angle
	// Leg is the sloping wire from a hanger to its hook. By a wire that is given
	// it is the half of what is not between the hooks, rounded down.
	Leg measure.Length
	// Taut is the wire from hanger to hanger, Wire the wire to cut, with its tails.
	Taut, Wire measure.Length
	// WireTop is how far below the frame's top the taut wire is at its highest;
	// it stands above the top where that is negative.
	WireTop measure.Length
	// StableRise is the rise above which the piece keeps level by itself on one
	// smooth hook; 0 where it hangs by something else, or on hangers that are no
	// higher than its middle, which none keeps level.
	StableRise measure.Length
	// Tension is in the wire, and Pull the part of it that draws the rails
	// together. Hanger is the load on each hanger, Hook that on each hook in the
	// wall.
	Tension, Pull, Hanger, Hook Load
	// Marks are where the hooks go, from the left.
	Marks []Mark
}

// Hangs reports whether the piece can hang as decided; nothing else in a Layout
// is to be used where it cannot.
func (l Layout) Hangs() bool { return len(l.Marks) > 0 }

// A Pair is a length at the left and one at the right, seen from the front.
type Pair struct{ Left, Right measure.Length }

// A Load is a load by what the piece weighs, and by what it can weigh.
type Load struct{ Nominal, Heaviest measure.Force }

// A Mark is where one hook goes on the wall.
type Mark struct {
	// Across is from the piece's middle, negative to the left. An odd nanometer
	// goes to the right.
	Across measure.Length
	// Bearing is where the wire or the ring bears, Nail the hole of the hook's
	// nail, both above the floor. The half of the piece's height is rounded down.
	Bearing, Nail measure.Length
}

// Lay works out how a piece hangs. It takes any values; [Hanging.Check] says
// which make sense.
//
// Sources: the wire's tension is the framers' chart of the force on each screw
// eye, half the weight over the sine of the wire's angle; the height of a hook
// is a gallery's rule, center + half the frame - top edge to taut wire or ring.
func (h Hanging) Lay(g Given) Layout {
	if h.IsZero() {
		return Layout{}
	}
	below := h.below(g)
	l := Layout{Below: Pair{below, below}}
	weight := Load{measure.Weight(g.Mass), measure.Weight(g.Heaviest)}
	switch h.By {
	case Sawtooth:
		l.Hanger, l.Hook = weight, weight
		l.Marks = []Mark{h.mark(g, 0, below)}
	case Rings:
		if h.BelowRight != 0 {
			l.Below.Right = h.BelowRight
		}
		if l.Span = h.span(g); l.Span <= 0 {
			return l
		}
		l.Hanger = Load{halfOf(weight.Nominal), halfOf(weight.Heaviest)}
		l.Hook = l.Hanger
		left, right := apart(l.Span)
		l.Marks = []Mark{h.mark(g, left, l.Below.Left), h.mark(g, right, l.Below.Right)}
	default:
		h.layWire(&l, g, weight)
	}
	return l
}

// below is how far below the frame's top the left hanger bears.
func (h Hanging) below(g Given) measure.Length {
	switch {
	case h.Below != 0:
		return h.Below
	case h.By == Sawtooth:
		return g.middle()
	}
	below, _ := g.Outside.Height.Scale(int64(h.Part), int64(explain.Whole))
	return below
}

// inset is from the outside edge to the hanger.
func (h Hanging) inset(g Given) measure.Length {
	if h.Inset != 0 {
		return h.Inset
	}
	return g.middle()
}

// wood is how far in from its outside edge the back of a rail takes a screw: to
// the rabbet, or to the end of a floater's ledge.
func (g Given) wood() measure.Length { return g.Face - g.Lip + g.Ledge }

// middle is the middle of that wood, from the outside edge.
func (g Given) middle() measure.Length {
	half, _ := g.wood().Half()
	return half
}

// span is from hanger to hanger; nothing or less where they do not fit.
func (h Hanging) span(g Given) measure.Length { return g.Outside.Width - 2*h.inset(g) }

// apart returns where two marks so far apart are, from the middle between them.
func apart(l measure.Length) (left, right measure.Length) {
	half, rest := l.Half()
	return -half, half + rest
}

// mark is a hook that bears so far below the frame's top.
func (h Hanging) mark(g Given, across, drop measure.Length) Mark {
	half, _ := g.Outside.Height.Half()
	bearing := h.Center + half - drop
	return Mark{Across: across, Bearing: bearing, Nail: bearing + h.NailAbove}
}

// Centered returns how far a piece of some width is from the left and the right
// end of a wall when it hangs in the middle of it; an odd nanometer goes to the
// right. Both are negative where the piece is wider than the wall.
func Centered(wall, width measure.Length) (left, right measure.Length) {
	left, rest := (wall - width).Half()
	return left, left + rest
}

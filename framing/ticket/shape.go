package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// across is what stands behind a size of a regular outline.
const across = " across flats"

// isRegular reports whether the sizes of a piece are across flats.
func isRegular(p *framing.PiecePlan) bool { return p.Shape.Panel.Sides > 0 }

// isPanel reports whether the rails of a piece go around an outline, rather than a
// rectangle.
func isPanel(order *framing.Piece) bool { return !order.Art.Outline.IsZero() }

// shapedRails writes what to cut of a frame that is no plain rectangle.
func (t *writer) shapedRails(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	f, s := order.Frame, &p.Shape
	t.molding(f, at)
	t.ready(f)
	switch {
	case len(s.Slope) > 0:
		t.boards(p, order)
	case isRegular(p):
		t.alike(p, f)
	default:
		t.cuts(p, order)
	}
	t.fixed(f)
	if isRegular(p) {
		r := s.Regular
		t.row("opening", t.flat(r.Opening))
		t.row("sight size", t.flat(r.Sight))
		t.row("outside", t.flat(r.Outside))
		t.row("across its points", t.one(r.Points))
	} else if !p.Frame.IsZero() {
		t.row("opening", t.size(p.Frame.Opening))
		t.row("sight size", t.size(p.Frame.Sight))
		t.row("outside", t.size(p.Frame.Outside))
	}
	if isRegular(p) || p.Frame.IsZero() {
		t.hangs(s)
	}
	if f.Made != molding.ReadyMade {
		t.footage(t.shapedFootage(s), p.Quantity)
	}
	t.dustCover(p.Frame, p.Quantity)
}

// hangs writes the upright box around the frame as it hangs, where that is not what is
// said already.
func (t *writer) hangs(s *framing.ShapePlan) {
	outside := t.given(s.Regular.Outside.Exact)
	if w, h := t.given(s.Bounds.Width), t.given(s.Bounds.Height); s.Bounds != (measure.Size{}) && (w != outside || h != outside) {
		t.row("as it hangs", w, " x ", h, " over all")
	}
}

// shapedFootage is the molding in the rails: of boards that slope, each by its longest
// edge.
func (t *writer) shapedFootage(s *framing.ShapePlan) measure.Length {
	switch {
	case len(s.Slope) > 0:
		var sum measure.Length
		for i := range s.Slope {
			_, longest := longestEdge(&s.Slope[i])
			sum += measure.Length(len(s.Slope[i].Sides)) * longest.Shown
		}
		return sum
	case s.Regular.Footage != framing.Figure{}:
		return s.Regular.Footage.Shown
	}
	return s.Footage.Shown
}

// alike writes the rails of a regular frame that lies flat, and how exact their cuts
// have to be.
func (t *writer) alike(p *framing.PiecePlan, f molding.Frame) {
	s := &p.Shape
	r := s.Regular
	t.row("all "+strconv.Itoa(s.Panel.Sides)+" rails", t.count(s.Panel.Sides*p.Quantity), t.one(r.LongPoint))
	t.row("", pad("", 6), "long point to long point; sight edge ", r.ShortPoint.Text())
	if f.Made == molding.ReadyMade {
		return
	}
	t.row("both ends", t.saw(r.Saw, r.Edge))
	t.exactly(r.Saw, r.Edge)
	t.last(s)
}

// last writes how the last joint comes out on the shop's saw, and how exact each cut
// has to be.
func (t *writer) last(s *framing.ShapePlan) {
	saw := t.plan.Order.Shop.Saw
	if s.ByWedge > 0 {
		t.row("how exact", "for no gap above ", t.given(saw.Seen), t.usual("/order/shop/saw/seen"), " at the last joint, each cut within ",
			t.within(s.ByWedge), " if the other joints can be pulled together, within ", t.within(s.ByMiss), " if they are tight")
	}
	if s.Ring.Off == 0 {
		return
	}
	way, back := "too far from square", "nearer to square"
	if s.Ring.Off < 0 {
		way, back = "too near to square", "farther from square"
	}
	off := size(s.Ring.Off)
	t.row("the saw is off", t.degrees(off), " at each cut, ", way, ": set it ", t.degrees(off), " ", back)
	l := s.Last
	t.row("left as it is", "the last joint opens at the ", string(l.Opens), opensAt(l.Opens))
	t.row("", "with all others tight its ends miss by ", l.Miss.Text(), t.behind(l.Miss))
	t.row("", "pulled together it stands open by ", l.Wedge.Text(), t.behind(l.Wedge))
}

// opensAt says where an end of a joint lies.
func opensAt(e molding.End) string {
	if e == molding.Toe {
		return ", outside"
	}
	return ", inside"
}

// saw writes how an end is cut: both angles, always which is which.
func (t *writer) saw(saw, edge framing.AngleFigure) string {
	if saw.Exact == 0 {
		return "saw square, 0 deg (" + t.degrees(edge.Shown) + " to the edge)"
	}
	if saw.Exact < 0 {
		return "saw " + t.degrees(-saw.Shown) + " from square the other way, the sight edge longer (" + t.degrees(edge.Shown) + " to the edge)"
	}
	return "saw " + t.degrees(saw.Shown) + " from square (" + t.degrees(edge.Shown) + " to the edge)"
}

// exactly writes the two angles of a cut once more where they are not what is shown.
func (t *writer) exactly(saw, edge framing.AngleFigure) {
	if saw.Exact != saw.Shown || edge.Exact != edge.Shown {
		t.row("", "[", t.fine(size(saw.Exact)), ", ", t.fine(edge.Exact), "]")
	}
}

// degrees is an angle as it stands.
func (t *writer) degrees(a measure.Angle) string { return a.String() }

// fine is an angle to the thousandth of a degree.
func (t *writer) fine(a measure.Angle) string {
	near, rest := measure.RoundTo(a, measure.Degree/1000, measure.Nearest)
	if rest != 0 {
		return "about " + near.String()
	}
	return near.String()
}

// within is a limit to the thousandth of a degree, never above it.
func (t *writer) within(a measure.Angle) string {
	if low, _ := measure.RoundTo(a, measure.Degree/1000, measure.Down); low > 0 {
		return low.String()
	}
	return a.String()
}

// flat is a size across flats: shown, and behind it exact.
func (t *writer) flat(f framing.Figure) string {
	return pad(f.Text()+across, valueWidth) + t.bracket(f)
}

// bracket is what stands behind a shown figure.
func (t *writer) bracket(f framing.Figure) string {
	if f.Exact == f.Shown {
		return "[exact]"
	}
	return "[" + t.given(f.Exact) + "]"
}

// behind is the exact figure in the middle of a line; nothing where it is the shown
// one.
func (t *writer) behind(f framing.Figure) string {
	if f.Exact == f.Shown {
		return ""
	}
	return " [" + t.given(f.Exact) + "]"
}

// count is how many are cut.
func (t *writer) count(n int) string { return pad(strconv.Itoa(n)+" of", 6) }

// rectangleSides are the sides of a rectangle in the order of a panel's.
var rectangleSides = [...]string{"bottom", "right", "top", "left"}

// side names one side, counted from 0.
func side(i int, order *framing.Piece) string {
	if isPanel(order) || i >= len(rectangleSides) {
		return "side " + strconv.Itoa(i+1)
	}
	return rectangleSides[i]
}

// rail names the rail along one side.
func rail(i int, order *framing.Piece) string {
	if isPanel(order) {
		return side(i, order)
	}
	return "the " + side(i, order) + " rail"
}

// sideNames names the sides that something is for, of so many.
func sideNames(list []int, of int, order *framing.Piece) string {
	if len(list) == of && of > 1 {
		return "all " + strconv.Itoa(of) + " sides"
	}
	var b strings.Builder
	for k, i := range list {
		name := side(i, order)
		switch {
		case k == 0 && len(list) > 1 && isPanel(order):
			name = "sides " + strconv.Itoa(i+1)
		case k > 0 && isPanel(order):
			name = strconv.Itoa(i + 1)
		}
		switch {
		case k == 0:
		case k == len(list)-1:
			b.WriteString(" and ")
		default:
			b.WriteString(", ")
		}
		b.WriteString(name)
	}
	return b.String()
}

// named writes a row under the names of some sides, which can be too many to stand
// in front of it.
func (t *writer) named(names string, words ...string) {
	if len(names) < labelWidth {
		t.row(names, words...)
		return
	}
	t.row("these", names)
	t.row("", words...)
}

package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// artRow says what the art is and how large.
func (t *writer) artRow(p *framing.PiecePlan, order *framing.Piece) {
	a := order.Art
	switch o := a.Outline; {
	case o.By == framing.ByAround:
		t.row(string(a.Kind), t.given(a.Width), " x ", t.given(a.Height), ", shown whole in ", strconv.Itoa(o.Sides), " equal sides")
	case o.By == framing.ByRegular:
		t.row(string(a.Kind), strconv.Itoa(o.Sides), " equal sides, ", t.given(o.Size), acrossWhat(o.Across))
	case isPanel(order):
		t.row(string(a.Kind), strconv.Itoa(len(p.Shape.Sides)), " sides, in a box of ", t.given(p.Art.Width), " x ", t.given(p.Art.Height))
	case p.Art.Outline != nil:
		t.row(string(a.Kind), "out of square, about ", t.given(a.Sides.Bottom), " x ", t.given(a.Sides.Left))
	default:
		t.row(string(a.Kind), t.given(a.Width), " x ", t.given(a.Height))
	}
	if v := a.Varies; v != (measure.Size{}) {
		t.row("", t.given(v.Width), " x ", t.given(v.Height), " more where it is largest")
	}
}

// acrossWhat says where a regular panel is measured.
func acrossWhat(a plane.Across) string {
	switch a {
	case plane.Points:
		return " across points"
	case plane.OneSide:
		return " along each side"
	}
	return across
}

// panelKind says what the panel is, where that is no panel of itself.
func panelKind(k framing.ArtKind) string {
	if k == framing.Panel {
		return ""
	}
	return title(string(k))
}

// panel writes the outline that a frame goes around.
func (t *writer) panel(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	o := order.Art.Outline
	if o.By == framing.ByRegular || o.By == framing.ByAround {
		t.regularPanel(p, order, at)
		return
	}
	t.row("sides", "counted from the bottom one counterclockwise, seen from the front; corner 1 is where side 1 begins, at the left")
	for i, s := range p.Shape.Sides {
		text := t.given(s.Length)
		if i >= len(o.Edges) {
			text += ", worked out: measure it"
		}
		t.row(side(i, order), text)
	}
	for _, d := range o.Diagonals {
		t.row("diagonal", t.given(d.Length), " from corner ", strconv.Itoa(d.From+1), " to corner ", strconv.Itoa(d.To+1))
	}
	for i, corner := range p.Art.Corners {
		t.row("corner "+strconv.Itoa(i+1), t.fine(corner), " inside, between ", side((i+len(p.Art.Corners)-1)%len(p.Art.Corners), order), " and ", side(i, order))
	}
	t.row("to cut it from", t.given(p.Art.Width), " x ", t.given(p.Art.Height), " or more", pieces(p.Quantity))
}

// regularPanel writes a panel of equal sides and corners.
func (t *writer) regularPanel(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	n, o := len(p.Shape.Sides), order.Art.Outline
	t.row("sides", strconv.Itoa(n), ", all alike", pieces(p.Quantity))
	switch {
	case o.By == framing.ByRegular:
		t.row("size", t.given(o.Size), acrossWhat(o.Across), t.usual(at+"/art/outline/across"))
		if isRegular(p) && o.Across != plane.Flats {
			t.row("", t.flat(p.Shape.Regular.Panel))
		}
	case isRegular(p):
		t.row("size", t.flat(p.Shape.Regular.Panel))
		t.row("", "the smallest whose frame shows all of the art")
	}
	if n%2 == 1 {
		t.row("", "across flats is twice the way from the middle to a side, since no side lies across from another")
	}
	if n > 0 {
		first := p.Shape.Sides[0]
		t.row("each side", t.given(first.Length), "; each corner ", t.fine(measure.Turn/2-first.Turn), " inside")
	}
	if !isRegular(p) {
		t.row("", firstSide(o.Stand, n), "; the others follow counterclockwise, seen from the front")
	}
	t.row("hangs with", standing(o.Stand), t.usual(at+"/art/outline/stand"))
}

// standing says how a regular panel hangs.
func standing(s plane.Stand) string {
	switch s {
	case plane.OnPoint:
		return "a corner at the bottom"
	case plane.Sideways:
		return "a side upright at the left"
	}
	return "a side level at the bottom"
}

// firstSide says where the first of n equal sides is.
func firstSide(s plane.Stand, n int) string {
	switch {
	case s == plane.OnPoint && n%2 == 0:
		return "side 1 begins at the lowest corner"
	case s == plane.OnPoint:
		return "side 1 is at the top"
	case s == plane.Sideways:
		return "side 1 is upright at the left"
	}
	return "side 1 is at the bottom"
}

// outOfSquare writes art that was measured out of square, and the windows that show
// none of its edges.
func (t *writer) outOfSquare(p *framing.PiecePlan, order *framing.Piece) {
	a, m := &p.Art, order.Art.Sides
	t.row("measured", "bottom ", t.given(m.Bottom), ", right ", t.given(m.Right), ", top ", t.given(m.Top), ", left ", t.given(m.Left))
	var diagonals []string
	if m.Rising != 0 {
		diagonals = append(diagonals, t.given(m.Rising)+" from the lower left to the upper right")
	}
	if m.Falling != 0 {
		diagonals = append(diagonals, t.given(m.Falling)+" from the upper left to the lower right")
	}
	t.row("diagonals", strings.Join(diagonals, ", "))
	if len(a.Corners) == 4 {
		t.row("corners", "lower left ", t.fine(a.Corners[0]), ", lower right ", t.fine(a.Corners[1]), ", upper right ", t.fine(a.Corners[2]), ", upper left ", t.fine(a.Corners[3]))
	}
	switch {
	case a.Skew > 0:
		t.row("leans", "to the right by ", t.fine(a.Skew))
	case a.Skew < 0:
		t.row("leans", "to the left by ", t.fine(-a.Skew))
	}
	t.row("clean window", t.clean(a.Clean.Size), " or less, the art's bottom edge level")
	if turned := a.Turned.Turned; turned != 0 {
		way := "left"
		if turned > 0 {
			way = "right"
		}
		t.row("or, art turned", t.clean(a.Turned.Size), " or less")
		t.row("", "the art turned by ", t.fine(size(turned)), " to the ", way, " under the mat, seen from the front")
	}
	t.row("in a box of", t.given(a.Width+a.Varies.Width), " x ", t.given(a.Height+a.Varies.Height))
}

// clean is a window that shows no edge: shown no larger than it is.
func (t *writer) clean(s measure.Size) string {
	shown := func(l measure.Length) framing.Figure {
		down, _ := t.format.Round(l, measure.Down)
		return framing.FigureOf(down, t.format)
	}
	w, h := shown(s.Width), shown(s.Height)
	w.Exact, h.Exact = s.Width, s.Height
	return t.size(framing.SizeFigure{Width: w, Height: h})
}

// molding writes what is given of a frame.
func (t *writer) molding(f molding.Frame, at explain.Path) {
	face := "face " + t.given(f.Face)
	switch {
	case !f.Slope.IsZero():
		face = "boards at a slope"
	case f.Faces != nil:
		face = "faces differ"
	}
	t.row("molding", face, ", lip ", t.given(f.Lip), ", rabbet ", t.rabbetDepth(f.Rabbet))
	if f.Kind == molding.Floater {
		t.row("floater", "gap ", t.given(f.Gap), " each side", t.usual(at+"/gap"))
	} else {
		t.row("allowance", t.given(f.Allowance), " total", t.usual(at+"/allowance"))
	}
}

// ready says that there is nothing to cut, and fixed that no rail may be longer.
func (t *writer) ready(f molding.Frame) {
	if f.Made == molding.ReadyMade {
		t.row("ready-made", "nothing to cut: check that it measures as follows")
	}
}

func (t *writer) fixed(f molding.Frame) {
	if f.Made == molding.ToSpace {
		t.row("", "the outside is fixed: no rail longer than shown")
	}
}

// footage writes how much molding the rails take.
func (t *writer) footage(l measure.Length, quantity int) {
	t.row("in the rails", t.run(l), " a frame, without kerfs and waste")
	if quantity > 1 {
		t.row("", t.run(measure.Length(quantity)*l), " for all ", strconv.Itoa(quantity))
	}
}

// dustCover writes the paper over the back.
func (t *writer) dustCover(f framing.FramePlan, quantity int) {
	if (f.DustCover != framing.SizeFigure{}) {
		t.row("dust cover", t.size(f.DustCover), pieces(quantity))
	}
}

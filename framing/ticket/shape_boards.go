package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// longestEdge is the edge that a board is cut from a stick by, with its name.
func longestEdge(s *framing.SlopePlan) (string, framing.Figure) {
	edges := edgesOf(s)
	best := 0
	for i, e := range edges {
		if e.Exact > edges[best].Exact {
			best = i
		}
	}
	return edgeNames[best], edges[best]
}

var edgeNames = [...]string{"behind the rim", "front, rim", "front, sight edge", "behind sight edge"}

func edgesOf(s *framing.SlopePlan) [4]framing.Figure {
	return [...]framing.Figure{s.BackRim, s.FrontRim, s.FrontSight, s.BackSight}
}

// boards writes the sides of a frame that slope, and then how their ends are cut.
func (t *writer) boards(p *framing.PiecePlan, order *framing.Piece) {
	s := &p.Shape
	n := len(s.Sides)
	for k := range s.Slope {
		b := &s.Slope[k]
		if k == 0 || b.Side != s.Slope[k-1].Side {
			t.board(b)
		}
		name, longest := longestEdge(b)
		t.named(sideNames(b.Sides, n, order), t.count(len(b.Sides)*p.Quantity), t.one(longest))
		t.row("", pad("", 6), "over all: ", name)
		for i, e := range edgesOf(b) {
			if edgeNames[i] != name {
				t.row(edgeNames[i], t.one(e))
			}
		}
	}
	if order.Frame.Made != molding.ReadyMade {
		t.boardEnds(s, order)
	}
}

// board writes how a board stands.
func (t *writer) board(b *framing.SlopePlan) {
	pitch := b.Side.Pitch
	t.row("board", t.given(b.Side.Face), " wide, ", t.thick(b.Side.Thickness), " thick")
	t.row("stands at", pitch.Flat().String(), " from flat, ", pitch.Vertical().String(), " from vertical")
	t.row("gains", b.Depth.Text(), t.behind(b.Depth), " of depth; looks ", b.Run.Text(), t.behind(b.Run), " wide from the front")
}

// A boardEnd is one way to cut an end of a board, and the ends that it is for.
type boardEnd struct {
	*framing.SlopeEndPlan
	of   *framing.SlopePlan
	name string
}

// endsOf lists the ends of boards, each cut once.
func endsOf(s *framing.ShapePlan, order *framing.Piece) []boardEnd {
	var list []boardEnd
	add := func(b *framing.SlopePlan, e *framing.SlopeEndPlan, name string) {
		for k := range list {
			if o := &list[k]; o.Corner == e.Corner && o.of.Side == b.Side {
				o.name += "; " + name
				return
			}
		}
		list = append(list, boardEnd{e, b, name})
	}
	for k := range s.Slope {
		b := &s.Slope[k]
		names := sideNames(b.Sides, len(s.Sides), order)
		if b.Left.Corner == b.Right.Corner {
			add(b, &b.Left, "both ends of "+names)
			continue
		}
		add(b, &b.Left, "left end of "+names)
		add(b, &b.Right, "right end of "+names)
	}
	if len(list) == 1 {
		list[0].name = "all ends alike"
	}
	return list
}

// boardEnds writes the saw's settings for each different end, in every way to lay the
// board.
func (t *writer) boardEnds(s *framing.ShapePlan, order *framing.Piece) {
	list := endsOf(s, order)
	for k, e := range list {
		if len(list) == 1 {
			t.sheet.under(clean("Cut, ", e.name))
		} else {
			t.sheet.under(clean("Cut ", strconv.Itoa(k+1)))
			t.row("for", e.name)
		}
		t.row("between the fronts", t.angle(e.Dihedral))
		ways := [...]struct {
			at  molding.Position
			set *framing.SettingPlan
		}{{molding.LaidFlat, &e.Flat}, {molding.OnEdge, &e.OnEdge}, {molding.Propped, &e.Propped}}
		_, measured := laid(ways[0].at)
		if k == 0 && measured != "" {
			t.row("ends", "left and right as a board lies face up, its sight edge away from you")
			t.row("settings", measured)
			t.row("", "left and right ends are swung and tilted opposite ways")
			t.row("", "one way to lay the board is enough: take both its settings")
			t.row("", "gap: the widest of a joint whose two boards are cut so")
		}
		for _, way := range ways {
			t.setting(way.at, way.set)
		}
	}
	t.sheet.under("The frame from the front")
}

// laid is what a position says at the bench: how the board lies, and how its settings
// are measured.
func laid(p molding.Position) (lies, measured string) {
	lies, measured, _ = strings.Cut(explain.English(string(p.Key())), "; ")
	return lies, measured
}

// setting writes one way to lay a board and how the saw is set for it.
func (t *writer) setting(p molding.Position, s *framing.SettingPlan) {
	lies, _ := laid(p)
	t.row(word(string(p)), lies)
	t.row("", t.turned("miter ", s.Miter, "the fence"))
	t.row("", t.turned("tilt ", s.Tilt, "the table"))
	exact := molding.Setting{Miter: s.Miter.Exact, Tilt: s.Tilt.Exact}
	for i, n := range s.Nearest {
		switch {
		case n.Setting == exact:
			t.row("", "to ", step(n.Step), ": exact")
			return
		case i > 0 && n.Setting == s.Nearest[i-1].Setting:
			t.row("", "to ", step(n.Step), ": the same")
		default:
			t.row("", "to ", step(n.Step), ": miter ", bare(n.Setting.Miter), ", tilt ", bare(n.Setting.Tilt), "; ", t.gapOf(n.Gap))
		}
	}
}

// turned is an angle of the saw, with the place where the board is the longer.
func (t *writer) turned(name string, a framing.AngleFigure, at string) string {
	way := ", longer at "
	switch {
	case a.Exact == 0:
		return name + "0"
	case a.Exact < 0:
		way = ", shorter at "
		a.Exact, a.Shown = -a.Exact, -a.Shown
	}
	return name + t.angle(a) + way + at
}

// gapOf says how far a joint stands open.
func (t *writer) gapOf(l measure.Length) string {
	if l == 0 {
		return "no gap"
	}
	return "gap " + t.given(l)
}

// bare is how far an angle goes either way, without its unit.
func bare(a measure.Angle) string { return strings.TrimSuffix(size(a).String(), " deg") }

// size is how far an angle goes, either way.
func size(a measure.Angle) measure.Angle { return max(a, -a) }

// step names what the scales of a saw are read to.
func step(a measure.Angle) string {
	switch a {
	case measure.Degree:
		return "1 deg"
	case measure.Degree / 2:
		return "1/2 deg"
	case measure.Degree / 4:
		return "1/4 deg"
	}
	return a.String()
}

// angle is a shown angle, and behind it the exact one where that is another.
func (t *writer) angle(a framing.AngleFigure) string {
	if a.Exact == a.Shown {
		return t.degrees(a.Shown)
	}
	return t.degrees(a.Shown) + " [" + t.fine(a.Exact) + "]"
}

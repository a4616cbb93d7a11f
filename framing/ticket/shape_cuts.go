package ticket

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// A cut is one way to cut a rail, and the sides that it is for.
type cut struct {
	framing.CutPlan
	face  measure.Length
	sides []int
}

// cutsOf lists the rails of a frame whose rails differ, each cut once.
func cutsOf(s *framing.ShapePlan) []cut {
	var list []cut
	for i, r := range s.Rails {
		if r.IsZero() || i >= len(s.Frame.Sections) {
			continue
		}
		face, known := s.Frame.Sections[i].Face, false
		for k := range list {
			if list[k].CutPlan == r && list[k].face == face {
				list[k].sides, known = append(list[k].sides, i), true
			}
		}
		if !known {
			list = append(list, cut{r, face, []int{i}})
		}
	}
	return list
}

// mirrors reports whether a rail is another one with its ends changed.
func (c cut) mirrors(o cut) bool {
	return c.face == o.face && c.Sight == o.Sight && c.Outer == o.Outer && c.Long == o.Long && c.Start == o.Finish && c.Finish == o.Start
}

// known reports whether the rail along side i is cut as one before it is, or as its
// mirror image.
func known(list []cut, i int) bool {
	for k, c := range list {
		for j, s := range c.sides {
			if s != i {
				continue
			}
			for _, o := range list[:k] {
				if c.mirrors(o) {
					return true
				}
			}
			return j > 0
		}
	}
	return false
}

// cuts writes the rails of a frame whose rails differ.
func (t *writer) cuts(p *framing.PiecePlan, order *framing.Piece) {
	s := &p.Shape
	n := len(s.Sides)
	list := cutsOf(s)
	if order.Frame.Made != molding.ReadyMade {
		t.row("ends", "left and right as a rail lies face up, its sight edge away from you")
	}
	for i, r := range s.Rails {
		if r.IsZero() {
			t.row(side(i, order), "no rail")
		}
	}
	for k, c := range list {
		t.named(sideNames(c.sides, n, order), t.count(len(c.sides)*p.Quantity), t.one(c.Long))
		long, edges := longFrom(c.CutPlan)
		t.row("", pad("", 6), long)
		if edges != "" {
			t.row("", pad("", 6), edges)
		}
		if order.Frame.Faces != nil {
			t.row("", pad("", 6), "face ", t.given(c.face))
		}
		if order.Frame.Made == molding.ReadyMade {
			continue
		}
		for _, o := range list[:k] {
			if c.mirrors(o) {
				t.row("", pad("", 6), "the mirror image of ", rail(o.sides[0], order))
			}
		}
		if c.Start.Saw == c.Finish.Saw && c.Start.Square == c.Finish.Square {
			t.end("both ends", c.Start, "")
			continue
		}
		before, after := "", ""
		if len(c.sides) == 1 {
			before, after = rail((c.sides[0]+n-1)%n, order), rail((c.sides[0]+1)%n, order)
		}
		t.end("left end", c.Start, before)
		t.end("right end", c.Finish, after)
	}
}

// longFrom says from where to where the longest measure of a rail goes, and the edges
// that it is not.
func longFrom(c framing.CutPlan) (long, edges string) {
	switch c.Long.Exact {
	case c.Outer.Exact:
		if c.Sight.Exact == c.Outer.Exact {
			return "along both edges", ""
		}
		return "long point to long point; sight edge " + c.Sight.Text(), ""
	case c.Sight.Exact:
		return "long point to long point, along the sight edge", "outer edge " + c.Outer.Text()
	}
	return "over all, from point to point", "outer edge " + c.Outer.Text() + ", sight edge " + c.Sight.Text()
}

// end writes how one end of a rail is cut, and the rail that it meets.
func (t *writer) end(label string, e framing.EndPlan, meets string) {
	if e.Square {
		t.row(label, "square: no rail there")
		return
	}
	t.row(label, t.saw(e.Saw, e.Edge))
	t.exactly(e.Saw, e.Edge)
	text := "the cut is " + e.Joint.Text() + " long"
	if meets != "" {
		text = "meets " + meets + "; " + text
	}
	t.row("", text)
}

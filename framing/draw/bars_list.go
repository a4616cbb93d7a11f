package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// endLook is a cut end of a board.
const endLook = `class="wood end" fill="#ecd9ba" stroke="#26211b" stroke-width=".7" stroke-linejoin="round"`

// listBars are the rails of the piece that differ.
func (s *sheet) listBars() []bar {
	shape := &s.piece.Shape
	switch {
	case shape.Slope != nil:
		return s.slopedBars()
	case s.regular():
		r := &shape.Regular
		b := s.equalBar("/shape/regular", r.LongPoint, r.ShortPoint, r.Saw, r.Edge)
		b.name, b.face = "each side: "+strconv.Itoa(len(shape.Sides))+" alike", s.order.Frame.Face
		return []bar{b}
	case s.shaped():
		return s.cutBars()
	}
	var list []bar
	pair := func(at explain.Path, p framing.RailPlan, name string, face measure.Length) {
		b := s.equalBar(at, p.LongPoint, p.ShortPoint, p.Saw, p.Edge)
		b.name, b.face = name+": 2 alike", face
		list = append(list, b)
	}
	f := &s.piece.Frame
	if f.Horizontal.LongPoint != f.Vertical.LongPoint {
		pair("/frame/horizontal", f.Horizontal, "top and bottom", s.order.Frame.Face)
		pair("/frame/vertical", f.Vertical, "left and right", s.order.Frame.Face)
	} else {
		pair("/frame/horizontal", f.Horizontal, "all sides", s.order.Frame.Face)
		list[0].name = "all sides: 4 alike"
	}
	if l := &s.piece.Liner; !l.IsZero() {
		pair("/liner/horizontal", l.Horizontal, "liner, top and bottom", s.order.Liner.Face)
		pair("/liner/vertical", l.Vertical, "liner, left and right", s.order.Liner.Face)
	}
	return list
}

// equalBar is a rail with equal ends.
func (s *sheet) equalBar(at explain.Path, long, short framing.Figure, saw, edge_ framing.AngleFigure) bar {
	b := bar{sight: short.Exact}
	half := (long.Exact - short.Exact) / 2
	b.ends[0].growth, b.ends[1].growth = half, half
	b.over(0, 0, s.edgeOf(at+"/short_point", short, "short point"))
	b.under(half, half, s.edgeOf(at+"/long_point", long, "long point"))
	b.ends[0].put(s.angle(at+"/saw", saw, "both ends: saw", " from square").wrong(s.past(saw.Exact)))
	b.ends[0].put(s.angle(at+"/edge", edge_, "cut", " to the edge"))
	if short.Exact < 0 {
		b.notes = append(b.notes, crossing)
	}
	if s.past(saw.Exact) {
		b.notes = append(b.notes, s.pastWords())
	}
	return b
}

// past reports whether the saw does not swing so far.
func (s *sheet) past(saw measure.Angle) bool {
	reach := s.piece.Shape.Frame.Reach
	return reach > 0 && max(saw, -saw) > reach
}

func (s *sheet) pastWords() string {
	return "The saw swings to " + degrees(s.piece.Shape.Frame.Reach) + ": how the ends past it are cut, the setup shows."
}

// cutBars are rails that lie flat and differ.
func (s *sheet) cutBars() []bar {
	rails := s.piece.Shape.Rails
	n := len(rails)
	order := [2]int{0, 1}
	if !leftward(s.plot(usualWidth*px, usualHeight*px, false).xy(s.piece.Shape.Outlines.Panel)) {
		order = [2]int{1, 0} // the inside lies to the right: a rail starts at its right
	}
	var list []bar
	done := make([]bool, n)
	for i := range rails {
		r := &rails[i]
		if done[i] || r.IsZero() {
			continue
		}
		alike := []int{i}
		for j := i + 1; j < n; j++ {
			if rails[j] == *r && s.order.Frame.FaceOf(i) == s.order.Frame.FaceOf(j) {
				alike, done[j] = append(alike, j), true
			}
		}
		at := railAt(i)
		b := bar{name: s.alike(alike), face: s.order.Frame.FaceOf(i), sight: r.Sight.Exact}
		past := s.cutEnd(&b, order[0], &r.Start, at+"/start", s.beside((i+n-1)%n, alike))
		if s.cutEnd(&b, order[1], &r.Finish, at+"/finish", s.beside((i+1)%n, alike)) {
			past = true
		}
		a, z := b.ends[0].growth, b.ends[1].growth
		b.over(0, 0, s.edgeOf(at+"/sight", r.Sight, "sight"))
		b.under(a, z, s.edgeOf(at+"/outer", r.Outer, "outer"))
		if r.Long.Exact > r.Outer.Exact {
			b.under(max(a, 0), max(z, 0), s.edgeOf(at+"/long", r.Long, "overall"))
		}
		if min(r.Outer.Exact, r.Sight.Exact) < 0 {
			b.notes = append(b.notes, crossing)
		}
		if past {
			b.notes = append(b.notes, s.pastWords())
		}
		list = append(list, b)
	}
	return list
}

// cutEnd is one end of a rail that lies flat, and whether it is past the saw.
func (s *sheet) cutEnd(b *bar, n int, p *framing.EndPlan, at explain.Path, beside string) bool {
	end := &b.ends[n]
	end.growth = p.Growth.Exact
	name, saw, bad := leftRight(n)+beside, "saw", s.past(p.Saw.Exact)
	if p.Square {
		name, saw = leftRight(n)+", no rail beside it", "square, saw"
	}
	end.put(saying(name + ":"))
	end.put(s.angle(at+"/saw", p.Saw, saw, " from square"+inward(p.Saw)).wrong(bad))
	end.put(s.angle(at+"/edge", p.Edge, "cut", " to the edge"))
	return bad
}

// beside names the rail at an end, where there is one.
func (s *sheet) beside(i int, alike []int) string {
	if len(alike) > 1 {
		return ""
	}
	return ", at " + s.railWord(i)
}

func leftRight(n int) string {
	if n == 0 {
		return "left end"
	}
	return "right end"
}

// inward says of a setting below nothing that the sight edge is the longer one.
func inward(a framing.AngleFigure) string {
	if a.Shown < 0 {
		return ", the sight edge longer"
	}
	return ""
}

// alike names sides that are cut alike.
func (s *sheet) alike(sides []int) string {
	switch {
	case len(sides) == 1:
		return s.railWord(sides[0]) + ": one"
	case len(sides) == len(s.piece.Shape.Sides):
		return "each side: " + strconv.Itoa(len(sides)) + " alike"
	}
	return s.railNames(sides) + ": " + strconv.Itoa(len(sides)) + " alike"
}

// slopedBars are boards that slope, their fronts upward.
func (s *sheet) slopedBars() []bar {
	var list []bar
	for k := range s.piece.Shape.Slope {
		p := &s.piece.Shape.Slope[k]
		at := explain.Path("/shape/slope").Index(k)
		b := bar{name: s.alike(p.Sides), face: p.Side.Face, sight: p.FrontSight.Exact, back: true, notes: []string{pitchWords(p.Side.Pitch)}}
		for i, e := range [2]*framing.SlopeEndPlan{&p.Left, &p.Right} {
			end, here := &b.ends[i], at+explain.Path([...]string{"/left", "/right"}[i])
			end.growth = p.Side.Face.Tan(e.Flat.Miter.Exact)
			end.back = p.Side.Thickness.Tan(e.OnEdge.Miter.Exact)
			reach := s.plan.Order.Shop.Saw
			end.put(saying(leftRight(i) + ", laid flat:"))
			end.put(s.angle(here+"/flat/miter", e.Flat.Miter, "miter", " from square"+inward(e.Flat.Miter)).wrong(beyond(e.Flat.Miter, reach.Miter)))
			end.put(s.angle(here+"/flat/tilt", e.Flat.Tilt, "tilt", " from upright"+longer(e.Flat.Tilt, "", ", the front longer")).wrong(beyond(e.Flat.Tilt, reach.Tilt)))
		}
		l, r := &b.ends[0], &b.ends[1]
		b.over(0, 0, s.edgeOf(at+"/front_sight", p.FrontSight, "front sight"))
		b.over(l.back, r.back, s.edgeOf(at+"/back_sight", p.BackSight, "back sight"))
		b.under(l.growth, r.growth, s.edgeOf(at+"/front_rim", p.FrontRim, "front rim"))
		b.under(l.growth+l.back, r.growth+r.back, s.edgeOf(at+"/back_rim", p.BackRim, "back rim"))
		if min(p.FrontSight.Exact, p.FrontRim.Exact) < 0 {
			b.notes = append(b.notes, crossing)
		}
		list = append(list, b)
	}
	return list
}

// crossing says of a rail that it has no edge on one side.
const crossing = "The cuts cross before they reach an edge: this rail cannot be made so."

// beyond reports whether a scale does not reach a setting; a reach of nothing is not
// known.
func beyond(a framing.AngleFigure, reach measure.Angle) bool {
	return reach > 0 && max(a.Exact, -a.Exact) > reach
}

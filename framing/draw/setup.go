package draw

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// sketchSide is how large the board at the saw is drawn at most.
const sketchSide = 96 * px

// setup draws how boards lie at the saw: each way for sides that slope, a jig for
// ends that the saw does not reach.
func (s *sheet) setup() {
	shape := &s.piece.Shape
	y := 0
	for k := range shape.Slope {
		p := &shape.Slope[k]
		sides := s.cutAlike(k)
		if sides == nil {
			continue
		}
		at := explain.Path("/shape/slope").Index(k)
		ends := "left end; the right end is its mirror image"
		same := sameCut(&p.Left, &p.Right)
		if !same {
			ends = "left end"
		}
		y = s.setupEnd(p, at+"/left", &p.Left, s.alike(sides)+"; "+ends, y)
		if !same {
			y = s.setupEnd(p, at+"/right", &p.Right, s.alike(sides)+"; right end", y)
		}
	}
	if shape.Slope != nil {
		width, _ := s.paper()
		_, how, _ := strings.Cut(words(string(molding.LaidFlat.Key())), "; ")
		s.wrapped("In each way: "+how+". The heavy line is the front of the board, the bar beside it the fence.", 0, y, width-4*pad)
		s.say("at the saw", s.all())
		return
	}
	y = s.jigs(y)
	if y == 0 {
		s.undrawn("Every end of this frame is cut lying flat along the fence, with the blade upright. The rails are drawn with their settings.")
	}
}

// cutAlike are the sides whose ends are cut as those of slope k, whatever their
// lengths: nil where they were listed with an earlier one.
func (s *sheet) cutAlike(k int) []int {
	var sides []int
	p := &s.piece.Shape.Slope[k]
	for j := range s.piece.Shape.Slope {
		q := &s.piece.Shape.Slope[j]
		if q.Side != p.Side || q.Left.Corner != p.Left.Corner || q.Right.Corner != p.Right.Corner {
			continue
		}
		if j < k {
			return nil
		}
		sides = append(sides, q.Sides...)
	}
	return sides
}

func sameCut(a, b *framing.SlopeEndPlan) bool {
	return a.Flat.Miter == b.Flat.Miter && a.Flat.Tilt == b.Flat.Tilt && a.Propped.Miter == b.Propped.Miter
}

// board begins the drawing of a board at the saw.
func (s *sheet) board() {
	s.part("board-"+strconv.Itoa(s.boards), "frame", "board at the saw", false)
	s.boards++
}

// setupEnd draws one end in the three ways to lay its board.
func (s *sheet) setupEnd(p *framing.SlopePlan, at explain.Path, e *framing.SlopeEndPlan, name string, y int) int {
	width, _ := s.paper()
	y = s.wrapped(name, 0, y, width-4*pad)
	y = s.wrapped(pitchWords(p.Side.Pitch), 0, y, width-4*pad) + line
	s.text(s.angle(at+"/dihedral", e.Dihedral, "the two fronts meet at", ""), 0, y)
	for _, way := range [...]struct {
		position molding.Position
		at       explain.Path
		setting  *framing.SettingPlan
	}{{molding.LaidFlat, "/flat", &e.Flat}, {molding.OnEdge, "/on_edge", &e.OnEdge}, {molding.Propped, "/propped", &e.Propped}} {
		y = s.way(p.Side, way.position, at+way.at, way.setting, y+pad)
	}
	return y + pad
}

// way draws one way to lay a board: how it lies between table and fence, and what
// the saw is set to.
func (s *sheet) way(side molding.SlopedSide, position molding.Position, at explain.Path, p *framing.SettingPlan, y int) int {
	width, _ := s.paper()
	low := s.lying(side, position, y+pad)
	x := sketchSide + 4*pad
	room := width - 3*pad - x
	lies, _, _ := strings.Cut(words(string(position.Key())), "; ")
	saw := s.plan.Order.Shop.Saw
	beside := room > 480*px // the table
	words := room
	if beside {
		words -= column(2) + 2*pad
	}
	text := s.wrapped(lies, x, y, words) + line
	s.text(s.angle(at+"/miter", p.Miter, "miter", longer(p.Miter, ", longer at the fence", ", longer in front")).wrong(beyond(p.Miter, saw.Miter)), x, text)
	text += line
	s.text(s.angle(at+"/tilt", p.Tilt, "tilt", longer(p.Tilt, ", longer at the table", ", longer at the top")).wrong(beyond(p.Tilt, saw.Tilt)), x, text)
	if beyond(p.Miter, saw.Miter) || beyond(p.Tilt, saw.Tilt) {
		text = s.wrapped("past the saw, which reaches "+reachWords(saw), x, text, words)
	}
	if beside {
		text = max(text, s.nearest(p, x+room-column(2), y))
	} else {
		text = s.nearest(p, x, text)
	}
	return max(low, text)
}

// reachWords says how far a saw goes, as far as that is known.
func reachWords(saw framing.Saw) string {
	miter, tilt := "miter "+degrees(saw.Miter), "tilt "+degrees(saw.Tilt)
	switch {
	case saw.Tilt == 0:
		return miter
	case saw.Miter == 0:
		return tilt
	}
	return miter + ", " + tilt
}

func longer(a framing.AngleFigure, above, below string) string {
	switch {
	case a.Shown > 0:
		return above
	case a.Shown < 0:
		return below
	}
	return ""
}

// nearest writes the settings that the scales have, with the gap that each leaves.
func (s *sheet) nearest(p *framing.SettingPlan, x, y int) int {
	y += line
	s.word("scale in", x, y)
	for i, head := range [...]string{"miter", "tilt", "gap"} {
		s.ending(head, x+column(i), y)
	}
	s.pen.path(lineLook, x, y+5*px, x+column(2), y+5*px)
	y += 5 * px
	for i := range p.Nearest {
		n := &p.Nearest[i]
		y += line * 9 / 10
		gap := s.plain(n.Gap).text
		if n.Gap == 0 {
			gap = "none"
		}
		step, gap := stepWord(n.Step), strings.TrimPrefix(gap, "about ")
		miter, tilt := degrees(max(n.Setting.Miter, -n.Setting.Miter)), degrees(max(n.Setting.Tilt, -n.Setting.Tilt))
		s.word(step, x, y)
		s.ending(miter, x+column(0), y)
		s.ending(tilt, x+column(1), y)
		s.ending(gap, x+column(2), y)
		s.tell(saying("scale in " + step + ": " + miter + " and " + tilt + ", gap " + gap))
	}
	return y
}

// column is where a column of such a table ends.
func column(i int) int { return [...]int{110, 162, 212}[i] * px }

func stepWord(step measure.Angle) string {
	switch step {
	case measure.Degree:
		return "degrees"
	case measure.Degree / 2:
		return "halves"
	case measure.Degree / 4:
		return "quarters"
	}
	return degrees(step)
}

// ending writes a word that ends at x.
func (s *sheet) ending(text string, x, y int) {
	s.word(text, x-textWidth(text, wordSize, false), y)
}

// lying draws a board between the table and the fence, cut through, and returns how
// far down that reaches.
func (s *sheet) lying(side molding.SlopedSide, position molding.Position, y int) int {
	pitch := side.Pitch.Flat()
	switch position {
	case molding.LaidFlat:
		pitch = 0
	case molding.OnEdge:
		pitch = measure.RightAngle
	}
	// From the back's sight edge, up and away from the fence: the back's rim, the
	// front's, the front's sight edge.
	rimX, rimY := -side.Face.Cos(pitch), side.Face.Sin(pitch)
	outX, outY := side.Thickness.Sin(pitch), side.Thickness.Cos(pitch)
	if position == molding.OnEdge { // the rim lies below
		rimX, rimY, outX, outY = 0, -side.Face, side.Thickness, 0
	}
	high := max(rimY, 0) + max(outY, 0) - min(rimY, 0)
	c := fit(measure.Size{Width: max(side.Face, high), Height: max(side.Face, high)}, sketchSide, sketchSide)
	x0, table := 10*px, y+max(c.of(high), 30*px)+6*px
	base := table + c.of(min(rimY, 0))
	at := func(x, y measure.Length) (int, int) { return x0 + c.of(x-rimX), base - c.of(y) }
	x1, y1 := at(rimX, rimY)
	x2, y2 := at(rimX+outX, rimY+outY)
	x3, y3 := at(outX, outY)
	x4, y4 := at(0, 0)
	s.board()
	fence := box{x0 - 7*px, y, x0, table}
	s.pen.rect(fence, metalLook)
	s.hatches(4*px, true, fence)
	s.pen.path(inkLook, x0-10*px, table, x0+sketchSide+10*px, table)
	s.pen.area(endLook, x1, y1, x2, y2, x3, y3, x4, y4)
	s.pen.path(`class="front" fill="none" stroke="#26211b" stroke-width="2.6"`, x2, y2, x3, y3)
	s.close()
	return table + pad
}

// jigs draws how ends are cut past what the saw reaches, and returns how far down
// that reaches.
func (s *sheet) jigs(y int) int {
	width, _ := s.paper()
	for _, n := range s.piece.Notes {
		if n.Code != molding.PastReach && n.Code != molding.NoReach {
			continue
		}
		low := y
		if a, ok := angleOf(&n, "jig"); ok && n.Code == molding.PastReach {
			low = s.jig(a, y+pad)
		}
		y = max(low, s.wrapped(s.endWords(n.Path)+n.Text(s.format), sketchSide+4*pad, y, width-3*pad-sketchSide-4*pad)) + 2*pad
	}
	if y > 0 {
		y = s.wrapped("From above: the bar is the fence, the broken line the blade.", 0, y-pad, width-4*pad)
		s.say("at the saw", s.all())
	}
	return y
}

// endWords names the end that a note is about.
func (s *sheet) endWords(at explain.Path) string {
	for i := range s.piece.Shape.Rails {
		if at.Under(s.at("/pieces") + railAt(i)) {
			return s.railWord(i) + ", and every end of that angle: "
		}
	}
	return ""
}

func angleOf(n *explain.Note, key explain.Key) (measure.Angle, bool) {
	for _, t := range n.Values {
		if t.Key == key && t.Value.Kind == explain.AngleKind {
			return measure.Angle(t.Value.N), true
		}
	}
	return 0, false
}

// jig draws a rail at a right angle to the fence, seen from above, and the line of
// the blade across it.
func (s *sheet) jig(a measure.Angle, y int) int {
	const wide = 26 * px
	x := sketchSide / 2
	s.board()
	fence := box{0, y, sketchSide, y + 7*px}
	s.pen.rect(fence, metalLook)
	s.hatches(4*px, true, fence)
	rail := box{x - wide/2, fence.y1, x + wide/2, fence.y1 + 80*px}
	s.pen.rect(rail, endLook)
	// The blade: so far from square to the fence.
	half := measure.Length(48 * px)
	dx, dy := int(half.Sin(a)), int(half.Cos(a))
	mid := fence.y1 + 48*px
	s.pen.path(`class="blade" fill="none" stroke="#b3361b" stroke-width="1.3" stroke-dasharray="6 3"`, x-dx, mid+dy, x+dx, mid-dy)
	s.close()
	return rail.y1 + pad
}

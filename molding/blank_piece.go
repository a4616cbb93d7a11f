package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// blankSure is added to a board on each side, so that it holds its piece whatever was
// rounded: half a nanometer in each coordinate of a corner, in the width and in the
// place of the board.
const blankSure = 3 * measure.Nanometer

// A blankCut is one end of a piece: its line, and where that leaves the ring.
type blankCut struct {
	heading        measure.Angle
	run            measure.Angle // the normal of the line along the middle, at the joint
	sight, outside finePoint
	normal         measure.Angle // of the outside
	ok             bool
}

// cuts are the ends of two pieces at a joint: that of the piece before it and that of
// the piece after. Fingers reach half their length beyond the joint.
func (b Blank) cuts(r blankRing, l blankLine) (before, after blankCut) {
	run, ok := l.heading, true
	if b.Aim == AimMiddle {
		run, ok = r.middle.meets(l)
	}
	if b.Joint != FingerJoint {
		before = r.cut(l)
		before.run, before.ok = run, before.ok && ok
		return before, before
	}
	half := fineUnit / 2 * b.Finger
	before = r.cut(blankLine{l.heading, l.left + half})
	after = r.cut(blankLine{l.heading, l.left - half})
	before.run, before.ok = run, before.ok && ok
	after.run, after.ok = run, after.ok && ok
	return before, after
}

// cut is where a line leaves through the sight edge and the outside.
func (r blankRing) cut(l blankLine) blankCut {
	in, ok := r.inner.meets(l)
	normal, also := r.outer.meets(l)
	c := blankCut{heading: l.heading, normal: normal, ok: ok && also}
	if c.ok {
		c.sight, _ = r.inner.at(headingOf(in))
		c.outside, _ = r.outer.at(headingOf(normal))
	}
	return c
}

// around is the same end once around.
func (c blankCut) around() blankCut {
	c.heading, c.run, c.normal = c.heading+measure.Turn, c.run+measure.Turn, c.normal+measure.Turn
	return c
}

// piece is the piece between two ends, in no stock.
func (b Blank) piece(r blankRing, start, finish blankCut) (BlankPiece, error) {
	p := BlankPiece{Stock: -1}
	p.Right.Heading, p.Left.Heading = start.heading, finish.heading
	u := blankHull{
		outer: r.outer, from: start.normal, to: finish.normal, middle: start.heading + (finish.heading-start.heading)/2,
		exact: [4]finePoint{start.sight, start.outside, finish.outside, finish.sight},
	}
	if !start.ok || !finish.ok || finish.heading <= start.heading || finish.heading-start.heading >= straight || u.to <= u.from || u.to-u.from >= straight {
		return p, explain.Problem{Code: BlankOblique, Path: b.oblique()}
	}
	for i, to := range [...]*plane.Point{&p.Right.Sight, &p.Right.Outside, &p.Left.Outside, &p.Left.Sight} {
		*to = u.exact[i].point()
		u.corners[i] = finePointOf(*to)
	}
	best := u.narrowest()
	p.Turn = best.turn
	low, high := u.spans(p.Turn)
	left, right := u.spans(p.Turn - measure.RightAngle)
	p.Width, p.Length = fromFine(high-low)+2*blankSure, fromFine(right-left)+2*blankSure
	p.At = plane.Point{X: fromFine(left) - blankSure, Y: fromFine(low) - blankSure}
	p.Right.Saw, p.Left.Saw = p.Turn-start.heading, finish.heading-p.Turn
	p.Right.Runout, p.Left.Runout = size(p.Turn-start.run), size(p.Turn-finish.run)
	p.Right.Low, p.Right.High = p.trim(p.Right, 1)
	p.Left.Low, p.Left.High = p.trim(p.Left, -1)
	return p, nil
}

func size(a measure.Angle) measure.Angle { return max(a, -a) }

// trim is where the line of an end crosses the lower and the upper edge of its board.
// The way is 1 at the right end, -1 at the left one.
func (p BlankPiece) trim(end BlankEnd, way measure.Length) (low, high measure.Length) {
	h, corner := headingOf(p.Turn), finePointOf(end.Sight)
	x := -h.left(corner) - fineUnit*p.At.X
	y := h.out(corner) - fineUnit*p.At.Y
	low = x - way*y.Tan(end.Saw)
	high = x + way*(fineUnit*p.Width-y).Tan(end.Saw)
	return fromFine(low), fromFine(high)
}

// oblique is the field that lets an end miss the ring.
func (b Blank) oblique() explain.Path {
	switch {
	case b.Joint == FingerJoint:
		return "/finger"
	case len(b.Joints) > 0:
		return "/joints"
	}
	return "/pieces"
}

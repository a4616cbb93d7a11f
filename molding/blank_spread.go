package molding

import "github.com/fairmiter/fairmiter/framing/measure"

// A blankEqual spreads equal pieces around a ring.
type blankEqual struct {
	spread BlankSpread
	aim    BlankAim
	middle blankEdge
	arc    blankArc
	first  measure.Angle  // the eccentric angle of the first joint
	start  measure.Length // the way there from the right end
	whole  measure.Length // the way all around
}

func (b Blank) equal(r blankRing) blankEqual {
	e := blankEqual{spread: b.Spread, aim: b.Aim, middle: r.middle, arc: blankArcOf(r.middle)}
	n, _ := e.middle.meets(blankLine{heading: b.First})
	e.first = e.eccentric(n)
	e.start, _ = e.arc.to(e.first)
	quarter, _ := e.arc.to(measure.RightAngle)
	e.whole = 4 * quarter
	return e
}

// eccentric is the eccentric angle of the normal with a heading, within a right
// angle of it.
func (e blankEqual) eccentric(n measure.Angle) measure.Angle {
	h := headingOf(n)
	t := measure.Slope(h.sin.Of(e.middle.b), h.cos.Of(e.middle.a))
	turns, _ := measure.RoundTo(n-t, measure.Turn, measure.Nearest)
	return t + turns
}

// lines are the joints of n equal pieces.
func (e blankEqual) lines(n int) []blankLine {
	lines := make([]blankLine, n)
	for i := range lines {
		lines[i] = e.joint(i, n)
	}
	return lines
}

// joint is joint i of n equal pieces, less than once around.
func (e blankEqual) joint(i, n int) blankLine {
	t := e.first
	switch {
	case i == 0:
	case e.spread == EqualAngle:
		part, _ := measure.MulDiv(measure.Turn, int64(i), int64(n))
		t += part
	default:
		part, _ := e.whole.Scale(int64(i), int64(n))
		if way := e.start + part; way < e.whole {
			t = e.arc.eccentric(way)
		} else {
			t = measure.Turn + e.arc.eccentric(way-e.whole)
		}
	}
	return e.line(t)
}

// line is the joint at the eccentric angle t.
func (e blankEqual) line(t measure.Angle) blankLine {
	n := e.arc.normal(t)
	if e.aim == AimMiddle {
		p, _ := e.middle.at(headingOf(n))
		heading := measure.Slope(p.y, p.x)
		turns, _ := measure.RoundTo(t-heading, measure.Turn, measure.Nearest)
		return blankLine{heading: heading + turns}
	}
	return blankLine{n, e.middle.aside(headingOf(n))}
}

// given are the joints that the order gives.
func (b Blank) given(r blankRing) []blankLine {
	lines := make([]blankLine, len(b.Joints))
	for i, joint := range b.Joints {
		lines[i] = blankLine{heading: joint}
		if b.Aim != AimMiddle {
			n, _ := r.middle.meets(lines[i])
			lines[i] = blankLine{n, r.middle.aside(headingOf(n))}
		}
	}
	return lines
}

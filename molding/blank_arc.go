package molding

import "github.com/fairmiter/fairmiter/framing/measure"

// A blankArc measures along an edge. It holds the arithmetic-geometric means of the
// axes, from which the arc of an ellipse follows (Abramowitz and Stegun, Handbook of
// Mathematical Functions, 17.6: the descending Landen transformation): with c half
// of what two means differ by, and
//
//	tan(p' - p) = b/a tan p
//
// from one angle p to the next, the arc from the end of the shorter axis is E/K x
// p/(2^n a), all of it a^2, and the sum of all c sin p. The angles are rounded to the
// nanodegree, so it is right to a nanometer in ten meters or so.
type blankArc struct {
	edge  blankEdge
	high  bool // the longer axis stands upright
	means []blankMean
	scale measure.Length // E/K x a^2 over the last mean
}

type blankMean struct{ a, b, c measure.Length }

func blankArcOf(e blankEdge) blankArc {
	long, short := max(e.a, e.b), min(e.a, e.b)
	m := blankMean{long, short, measure.Leg(long, short)}
	arc := blankArc{edge: e, high: e.b > e.a, means: make([]blankMean, 1, 8)}
	arc.means[0] = m
	// q is E/K x a: a less the sum of 2^(n-1) c^2 over a.
	half, _ := m.c.Scale(int64(m.c), 2*int64(long))
	q := long - half
	for n := 0; m.a-m.b > 1; n++ {
		m = blankMean{(m.a + m.b) / 2, 0, (m.a - m.b) / 2}
		m.b = measure.Leg(m.a, m.c)
		less, _ := m.c.Scale(int64(m.c)<<n, int64(long))
		q -= less
		arc.means = append(arc.means, m)
	}
	arc.scale, _ = q.Scale(int64(long), int64(m.a))
	return arc
}

// to is the length of the edge from its right end to the eccentric angle t, and how
// fast it grows there: the way for one radian.
func (s blankArc) to(t measure.Angle) (length, pace measure.Length) {
	p := t - measure.RightAngle // from the end of the shorter axis
	if s.high {
		p = t
	}
	length = s.from(p)
	if !s.high {
		length += s.from(measure.RightAngle)
	}
	h := headingOf(t)
	v := measure.Hypot(h.sin.Of(s.edge.a), h.cos.Of(s.edge.b))
	if by := s.edge.by; by != 0 {
		turned, _ := by.Scale(int64(s.normal(t)), aRadian)
		length += turned
		grown, _ := by.Scale(int64(s.edge.a), int64(v))
		grown, _ = grown.Scale(int64(s.edge.b), int64(v))
		v += grown
	}
	return length, v
}

// from is the length of the ellipse from the end of its shorter axis to the
// eccentric angle p, counted from there.
func (s blankArc) from(p measure.Angle) measure.Length {
	var sum measure.Length
	last := len(s.means) - 1
	for i, m := range s.means {
		h := headingOf(p)
		if i > 0 {
			sum += h.sin.Of(m.c)
		}
		if i == last {
			break
		}
		step := measure.Slope(h.sin.Of(m.b), h.cos.Of(m.a))
		turns, _ := measure.RoundTo(p-step, measure.Turn, measure.Nearest)
		p += step + turns
	}
	arc, _ := s.scale.Scale(int64(p), aRadian<<last)
	return sum + arc
}

// normal is the heading of the normal at the eccentric angle t, within a right angle
// of it.
func (s blankArc) normal(t measure.Angle) measure.Angle {
	h := headingOf(t)
	n := measure.Slope(h.sin.Of(s.edge.a), h.cos.Of(s.edge.b))
	turns, _ := measure.RoundTo(t-n, measure.Turn, measure.Nearest)
	return n + turns
}

// eccentric is the eccentric angle at a length from the right end, at most once
// around, to the nanodegree.
func (s blankArc) eccentric(length measure.Length) measure.Angle {
	// By the quarter, whose ends are exact.
	quarter, _ := s.to(measure.RightAngle)
	whole := length / quarter
	rest := length - whole*quarter
	before := measure.Angle(whole) * measure.RightAngle
	if rest == 0 {
		return before
	}
	mirrored := whole%2 == 1 // an even quarter begins at the right or left end
	if mirrored {
		rest = quarter - rest
	}
	low, high := measure.Angle(0), measure.RightAngle
	t, _ := measure.MulDiv(measure.RightAngle, int64(rest), int64(quarter))
	for high-low > 1 {
		at, pace := s.to(t)
		missing := rest - at
		if missing >= 0 {
			low = t
		}
		if missing <= 0 {
			high = t
		}
		step, _ := measure.MulDiv(measure.Angle(missing), aRadian, int64(pace))
		if step == 0 {
			break
		}
		if t += step; t <= low || t >= high {
			t = low + (high-low)/2
		}
	}
	if mirrored {
		return before + measure.RightAngle - t
	}
	return before + t
}

package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// limitCorners is how many corners an outline may have for [Polygon.Offset] to
// look for the limit that it refuses with.
const limitCorners = 1000

// Offset returns the outline with each side moved outward by its own distance, a
// negative one inward: one distance for all sides, or one for each, in order.
// Sides are moved as lines and meet where the lines do: a pointed corner keeps
// its point, however far that lies.
//
// It refuses to lose a side ([LostSide]) and to meet itself ([Meets]). Both say
// how far the side that moves farthest may move, all others in proportion; an
// outline of more than a thousand corners is refused without that. Two sides that
// lie in one line move by one distance, or are refused ([Step]).
func (p Polygon) Offset(by ...measure.Length) (Polygon, error) { return p.moved(by, false) }

// Stepped is [Polygon.Offset] where two sides that lie in one line, at a corner of
// 180 degrees, may move by two distances: a short side, square to both, is put
// between them. So the outline has one corner more for each step; the first of its
// corners still belongs to the first of p.
func (p Polygon) Stepped(by ...measure.Length) (Polygon, error) { return p.moved(by, true) }

func (p Polygon) moved(by []measure.Length, stepped bool) (Polygon, error) {
	n := len(p.corners)
	if n == 0 {
		return Polygon{}, checkCount(0, 3, MaxCorners)
	}
	if len(by) != 1 {
		if err := checkCount(len(by), n, n); err != nil {
			return Polygon{}, err
		}
	}
	distances := make([]measure.Length, n)
	var most measure.Length
	for i := range distances {
		d := by[i%len(by)]
		if d < -Reach || d > Reach {
			return Polygon{}, limited(given(fault(explain.OutOfRange, i), d), explain.AtMost, Reach)
		}
		distances[i] = d
		most = max(most, d, -d)
	}
	q, err := p.offset(distances, stepped)
	if err == nil {
		return q, nil
	}
	if (err.Code == LostSide || err.Code == Meets) && n <= limitCorners {
		limited(err, explain.AtMost, p.limit(distances, most, stepped))
	}
	return Polygon{}, err
}

// limit is how far the farthest side may move: the last distance before one at
// which the offset is refused. Lines move steadily, so what is lost once is lost
// from there on.
func (p Polygon) limit(distances []measure.Length, most measure.Length, stepped bool) measure.Length {
	good, bad := measure.Length(0), most
	part := make([]measure.Length, len(distances))
	for bad-good > 1 {
		middle := good + (bad-good)/2
		for i, d := range distances {
			part[i], _ = d.Scale(int64(middle), int64(most))
		}
		if _, err := p.offset(part, stepped); err != nil {
			bad = middle
		} else {
			good = middle
		}
	}
	return good
}

func (p Polygon) offset(by []measure.Length, stepped bool) (Polygon, *Error) {
	n := len(p.corners)
	lines := make([]line, n)
	for i, a := range arrowsOf(p.corners) {
		lines[i] = lineOf(a, int64(by[i])<<grain, p.clockwise)
	}
	spots := make([]spot, 0, n)
	starts := make([]int, n) // the spot where a side begins; it ends at the next one
	for i, c := range p.corners {
		before := (i + n - 1) % n
		move, code := spot{}, explain.Code("")
		if stepped && by[before] != by[i] && p.sides[before].Turn == 0 {
			spots = append(spots, c.plus(lines[before].outward()))
			move = lines[i].outward()
			if !spots[len(spots)-1].within() {
				code = Far
			}
		} else {
			move, code = lines[before].meets(lines[i])
		}
		starts[i] = len(spots)
		spots = append(spots, c.plus(move))
		if code == "" && !spots[starts[i]].within() {
			code = Far
		}
		if code == Far {
			return Polygon{}, limited(fault(Far, i), explain.AtMost, Reach)
		}
		if code != "" {
			return Polygon{}, fault(code, i)
		}
	}
	arrows := arrowsOf(spots)
	for i, start := range starts {
		if dot(arrows[start], lines[i].arrow).sign() <= 0 {
			return Polygon{}, fault(LostSide, i)
		}
	}
	q, err := outline(spots)
	if err == nil && q.clockwise != p.clockwise {
		err = &Error{Code: Crosses, At: -1, Other: -1}
	}
	switch {
	case err == nil: // turns stay what they are, however short a side gets
		for i, start := range starts {
			q.sides[start].Turn = p.sides[i].Turn
			next := (i + 1) % n
			if step := (start + 1) % len(spots); step != starts[next] {
				turn := measure.RightAngle
				if by[next] > by[i] {
					turn = -turn
				}
				q.sides[start].Turn, q.sides[step].Turn = turn, -turn
			}
		}
	case err.Code == Crosses || err.Code == Reverses:
		err.Code = Meets
		err.At, err.Other = sideFrom(starts, err.At), sideFrom(starts, err.Other)
	}
	return q, err
}

// sideFrom is the side that begins at a spot, or after whose end a step does.
func sideFrom(starts []int, at int) int {
	if at < 0 {
		return at
	}
	side := len(starts) - 1
	for i, start := range starts {
		if start <= at {
			side = i
		}
	}
	return side
}

// A line is a side that moves outward.
type line struct {
	arrow  spot
	length int64 // of the arrow, times 2^shift
	shift  uint
	unit   spot // the arrow, as long as half
	by     int64
}

// half is half of one, for what is no longer than one.
const half = 1 << 61

func lineOf(arrow spot, by int64, clockwise bool) line {
	l := line{arrow: arrow, by: by}
	if clockwise { // outward is to the left of the arrow
		l.by = -by
	}
	for largest := max(size(arrow.x), size(arrow.y)); largest<<(l.shift+1) < 1<<61; l.shift++ {
	}
	l.length = spot{arrow.x << l.shift, arrow.y << l.shift}.length()
	x, _ := measure.MulDiv(arrow.x<<l.shift, half, l.length)
	y, _ := measure.MulDiv(arrow.y<<l.shift, half, l.length)
	l.unit = spot{x, y}
	return l
}

// outward is how a point of l moves.
func (l line) outward() spot {
	x, _ := measure.MulDiv(l.by, l.unit.y, half)
	y, _ := measure.MulDiv(l.by, l.unit.x, half)
	return spot{x, -y}
}

// meets is how the corner between l and the next line k moves. With unit arrows u
// and v it is (k.by u - l.by v) / sin, which for a corner that turns little is
// l.by (u' + v') / (1 + cos) + (k.by - l.by) u / sin, u' and v' being u and v
// turned outward.
func (l line) meets(k line) (spot, explain.Code) {
	sin := cross(l.arrow, k.arrow)
	if dot(l.arrow, k.arrow).sign() < 0 {
		a, ok := l.along(k.by, k, sin)
		b, fine := k.along(-l.by, l, sin)
		if !ok || !fine {
			return spot{}, Far
		}
		return a.plus(b), ""
	}
	if sin.sign() == 0 && l.by != k.by {
		return spot{}, Step
	}
	cos := dot(l.unit, k.unit) // times 2^122
	bottom := half/2 + cos.hi<<2 + int64(cos.lo>>62)
	sum := spot{(l.unit.y + k.unit.y) / 2, -(l.unit.x + k.unit.x) / 2}
	x, _ := measure.MulDiv(l.by, sum.x, bottom)
	y, _ := measure.MulDiv(l.by, sum.y, bottom)
	move := spot{x, y}
	if l.by != k.by {
		more, ok := l.along(k.by-l.by, k, sin)
		if !ok {
			return spot{}, Far
		}
		move = move.plus(more)
	}
	return move, ""
}

// along is the arrow of l, as long as by over the sine of the angle between l and
// k, of which cross is that of the arrows.
func (l line) along(by int64, k line, cross wide) (spot, bool) {
	x, ok := quotient(by, l.arrow.x, k.length, cross, k.shift)
	y, fine := quotient(by, l.arrow.y, k.length, cross, k.shift)
	return spot{x, y}, ok && fine
}

// Growth is how much longer a side gets at a corner where the outline turns by
// turn when it moves outward by own and its neighbor there by next: own x
// tan(turn / 2) where both are equal, else next / sin(turn) - own / tan(turn). A
// negative one is a side that gets shorter. It is rounded as [measure.Length.Tan]
// is, twice where the two differ. Past half of the range it is half of the greatest
// Length, or half of the least.
func Growth(own, next measure.Length, turn measure.Angle) measure.Length {
	if own == next {
		return own.Tan(turn >> 1)
	}
	const most = measure.Length(1) << 62
	far, near := next.OverSin(turn), own.OverTan(turn)
	if far > most || far < -most || near > most || near < -most {
		if next < own {
			return -most
		}
		return most
	}
	return far - near
}

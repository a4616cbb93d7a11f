package molding

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A blankEdge is an ellipse, by halves of its axes, or a parallel outside of it, in
// fine units.
type blankEdge struct{ a, b, by measure.Length }

func blankEdgeOf(p plane.Parallel) blankEdge {
	return blankEdge{fineUnit / 2 * p.Of.Width, fineUnit / 2 * p.Of.Height, fineUnit * p.By}
}

// A finePoint is a point in fine units.
type finePoint struct{ x, y measure.Length }

func finePointOf(p plane.Point) finePoint { return finePoint{fineUnit * p.X, fineUnit * p.Y} }

func (p finePoint) point() plane.Point { return plane.Point{X: fromFine(p.x), Y: fromFine(p.y)} }

// A heading is a direction, from the right turning left, with its cosine and sine.
type heading struct{ cos, sin measure.Sine }

func headingOf(a measure.Angle) heading { return heading{measure.CosineOf(a), measure.SineOf(a)} }

// out is how far p lies in the direction, and left how far to the left of it.
func (h heading) out(p finePoint) measure.Length  { return h.cos.Of(p.x) + h.sin.Of(p.y) }
func (h heading) left(p finePoint) measure.Length { return h.cos.Of(p.y) - h.sin.Of(p.x) }

// reach is how far the edge reaches in a direction: the root of
// a^2 cos^2 + b^2 sin^2, and the parallel's distance.
func (e blankEdge) reach(h heading) measure.Length {
	return measure.Hypot(h.cos.Of(e.a), h.sin.Of(e.b)) + e.by
}

// at is where the outward normal has a direction, and how far the curve bends there:
// its radius.
func (e blankEdge) at(h heading) (p finePoint, radius measure.Length) {
	x, y := h.cos.Of(e.a), h.sin.Of(e.b)
	r := measure.Hypot(x, y)
	x, _ = x.Scale(int64(e.a), int64(r))
	y, _ = y.Scale(int64(e.b), int64(r))
	k, _ := e.a.Scale(int64(e.b), int64(r))
	k, _ = k.Scale(int64(k), int64(r))
	return finePoint{x + h.cos.Of(e.by), y + h.sin.Of(e.by)}, k + e.by
}

// aside is how far the normal with a direction passes to the left of the middle.
func (e blankEdge) aside(h heading) measure.Length {
	p, _ := blankEdge{e.a, e.b, 0}.at(h)
	return h.left(p)
}

// A blankLine runs outward in a direction and passes so far to the left of the
// middle, in fine units.
type blankLine struct {
	heading measure.Angle
	left    measure.Length
}

// aRadian is how many nanodegrees an arc of one radius has, to the nearest.
const aRadian = 57_295_779_513

// meets returns the heading of the normal where a line leaves through the edge, to
// the nanodegree, and whether it does.
//
// Within a right angle from the line's own heading, the place of the normal moves
// left all the way, so there is one; it is found by Newton's method, kept between
// what is known to lie before and behind.
func (e blankEdge) meets(l blankLine) (normal measure.Angle, ok bool) {
	low, high := l.heading-measure.RightAngle, l.heading+measure.RightAngle
	if most := e.reach(headingOf(high)); l.left <= -most || l.left >= most {
		return 0, false
	}
	along := headingOf(l.heading)
	for normal = l.heading; high-low > 1; {
		n := headingOf(normal)
		p, radius := e.at(n)
		missing := l.left - along.left(p)
		switch {
		case missing == 0:
			return normal, true
		case missing > 0:
			low = normal
		default:
			high = normal
		}
		next := low + (high-low)/2
		if pace := radius.Cos(normal - l.heading); pace > 0 {
			step, _ := measure.MulDiv(measure.Angle(missing), aRadian, int64(pace))
			if to := normal + step; to > low && to < high {
				next = to
			} else if step == 0 {
				return normal, true
			}
		}
		normal = next
	}
	return normal, true
}

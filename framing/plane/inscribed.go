package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// MaxInscribed is how many corners an outline may have in which the largest
// rectangle is looked for.
const MaxInscribed = 64

// LargestUpright returns the upright rectangle of the largest surface that lies
// inside p, which is convex and has no more than [MaxInscribed] corners. It lies
// inside p to the last nanometer, and its surface is short of the largest by less
// than four nanometers along its edges.
func (p Polygon) LargestUpright() (Rectangle, error) {
	if err := p.checkInscribed(); err != nil {
		return Rectangle{}, err
	}
	return upright(p.corners, toHand).rectangle(0), nil
}

// LargestTurned is [Polygon.LargestUpright] for a rectangle turned by any angle
// from from to to: the same as p turned the other way. Some thirty angles are
// tried, and every one at which a side of p is upright or level; around the best
// one the angle is then narrowed down to the step given, a nanodegree or more.
// The rectangle lies inside p but for [Tolerance].
func (p Polygon) LargestTurned(from, to, step measure.Angle) (Rectangle, error) {
	if err := p.checkInscribed(); err != nil {
		return Rectangle{}, err
	}
	if from > to || from < -measure.Turn || to > measure.Turn {
		return Rectangle{}, fault(explain.OutOfRange, -1)
	}
	spots := make([]spot, len(p.corners))
	turnedBy := func(a measure.Angle, enough int64) inscribed {
		for i, s := range p.corners {
			spots[i] = turned(s, -a)
		}
		return upright(spots, enough)
	}
	best, at := turnedBy(from, firstLook), from
	try := func(a measure.Angle) {
		if r := turnedBy(a, firstLook); best.area().less(r.area()) {
			best, at = r, a
		}
	}
	const tries = 32
	cell := (to-from)/tries + 1
	for a := from + cell; a < to; a += cell {
		try(a)
	}
	try(to)
	for _, a := range arrowsOf(p.corners) {
		for h := a.heading() - measure.Turn - measure.Turn/2; h <= to; h += measure.RightAngle {
			if h >= from {
				try(h)
			}
		}
	}
	low, high := max(at-cell, from), min(at+cell, to)
	best = turnedBy(at, toCompare)
	keep := func(a measure.Angle) wide {
		r := turnedBy(a, toCompare)
		if best.area().less(r.area()) {
			best, at = r, a
		}
		return r.area()
	}
	a, b := low+golden(high-low), high-golden(high-low)
	one, two := keep(a), keep(b)
	for high-low > max(step, 2) {
		if one.less(two) {
			low, a, one = a, b, two
			b = high - golden(high-low)
			two = keep(b)
		} else {
			high, b, two = b, a, one
			a = low + golden(high-low)
			one = keep(a)
		}
	}
	return turnedBy(at, toHand).rectangle(at), nil
}

func (p Polygon) checkInscribed() error {
	if err := checkCount(len(p.corners), 3, MaxInscribed); err != nil {
		return err
	}
	for i, s := range p.sides {
		if s.Turn < 0 {
			return fault(NotConvex, (i+1)%len(p.sides))
		}
	}
	return nil
}

// inscribed is an upright rectangle.
type inscribed struct{ low, high spot }

func (r inscribed) area() wide {
	size := r.high.minus(r.low)
	if size.x <= 0 || size.y <= 0 {
		return wide{}
	}
	return product(size.x, size.y)
}

// rectangle is r, which was looked for upright, turned to where it is. It is
// rounded inward.
func (r inscribed) rectangle(by measure.Angle) Rectangle {
	low := spot{-(-r.low.x >> grain) << grain, -(-r.low.y >> grain) << grain}
	size := measure.Size{
		Width:  measure.Length((r.high.x - low.x) >> grain),
		Height: measure.Length((r.high.y - low.y) >> grain),
	}
	if by != 0 { // its corner is rounded to the nearest where it is
		low = turned(low, by)
	}
	return Rectangle{Corner: low.point(), Size: size, Turned: by}
}

// upright looks for the bottom and the top of the largest rectangle in a convex
// outline. Its width is that of the narrower of the two cuts there, as far as they
// overlap; the surface has one peak over the bottom and, for each bottom, one over
// the top.
func upright(spots []spot, enough int64) inscribed {
	low, high := bounds(spots)
	var best inscribed
	peak(low.y, high.y, enough, func(bottom int64) wide {
		left, right := cut(spots, bottom)
		var at inscribed
		peak(bottom, high.y, enough, func(top int64) wide {
			l, r := cut(spots, top)
			x := inscribed{spot{max(left, l), bottom}, spot{min(right, r), top}}
			if at.area().less(x.area()) {
				at = x
			}
			return x.area()
		})
		if best.area().less(at.area()) {
			best = at
		}
		return at.area()
	})
	return best
}

// cut is where a level line enters and leaves a convex outline, rounded inward.
func cut(spots []spot, y int64) (left, right int64) {
	left, right = edge, -edge
	for i, a := range spots {
		b := spots[(i+1)%len(spots)]
		if a.y > b.y {
			a, b = b, a
		}
		if y < a.y || y > b.y {
			continue
		}
		if a.y == b.y {
			left, right = min(left, a.x, b.x), max(right, a.x, b.x)
			continue
		}
		run, exact := measure.MulDiv(b.x-a.x, y-a.y, b.y-a.y)
		slack := int64(1)
		if exact {
			slack = 0
		}
		left, right = min(left, a.x+run+slack), max(right, a.x+run-slack)
	}
	return left, right
}

// How near to a peak is near enough: for a first look, to compare angles that lie close
// together, and for what is handed out, a thousandth of a nanometer.
const (
	toHand    = 1 << (grain - 10)
	toCompare = 1 << (grain + 7)
	firstLook = 1 << (grain + 14)
)

// golden is l less its golden section.
func golden[T ~int64](l T) T {
	part, _ := measure.MulDiv(int64(l), 381_966_011, 1_000_000_000)
	return T(part)
}

// peak calls f between low and high until it is near enough to where f is greatest. F
// rises to one peak and falls from there.
func peak(low, high, enough int64, f func(int64) wide) {
	a := low + golden(high-low)
	b := high - golden(high-low)
	one, two := f(a), f(b)
	for high-low > enough {
		if one.less(two) {
			low, a, one = a, b, two
			b = high - golden(high-low)
			two = f(b)
		} else {
			high, b, two = b, a, one
			a = low + golden(high-low)
			one = f(a)
		}
	}
	f(low)
	f(high)
}

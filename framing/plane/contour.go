package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Contour is a closed outline of straight lines and circular arcs that nowhere
// meets itself. It runs to the left, what it encloses lies to the left of it.
// The zero Contour has no pieces. A Contour is never changed.
type Contour struct{ pieces []piece }

// A piece runs from its spot to that of the next: straight where it sweeps nothing,
// else to the left about its middle, or to the right where the sweep is below
// nothing. Start is the direction from the middle to where it begins.
type piece struct {
	from, middle spot
	radius       int64
	start, sweep measure.Angle
}

// Contour is p as a contour. One that runs clockwise is turned round, with its
// first corner still the first.
func (p Polygon) Contour() Contour {
	n := len(p.corners)
	pieces := make([]piece, n)
	for i := range pieces {
		if p.clockwise {
			pieces[i].from = p.corners[(n-i)%n]
		} else {
			pieces[i].from = p.corners[i]
		}
	}
	return Contour{pieces}
}

// Len is how many lines and arcs there are.
func (c Contour) Len() int { return len(c.pieces) }

// to is where piece i ends.
func (c Contour) to(i int) spot { return c.pieces[(i+1)%len(c.pieces)].from }

// length is how long piece i is, in units of spots.
func (c Contour) length(i int) int64 {
	if p := c.pieces[i]; p.sweep != 0 {
		return int64(size(p.arc()))
	}
	return c.to(i).minus(c.pieces[i].from).length()
}

// arc is the radius times the sweep, in units of spots.
func (p piece) arc() int64 {
	part, _ := measure.MulDiv(p.radius, int64(p.sweep), int64(measure.Turn/2))
	// Pi to 18 decimals.
	arc, _ := measure.MulDiv(part, 3_141_592_653_589_793_238, 1_000_000_000_000_000_000)
	return arc
}

// at is where an arc is after so much of its sweep.
func (p piece) at(swept measure.Angle) spot { return p.middle.plus(arrow(p.radius, p.start+swept)) }

// Length is how long the contour is, rounded to the nearest; the sweep of an arc
// that is not a whole number of nanodegrees adds 0.01 nm for a meter of radius.
func (c Contour) Length() measure.Length {
	var whole, rest int64
	for i := range c.pieces {
		l := c.length(i)
		whole += l >> grain
		rest += l & (1<<grain - 1)
	}
	return measure.Length(whole) + coarse(rest)
}

// Area is the surface that the contour encloses, rounded to the nearest square
// micrometer: that of the corners, and between each arc and its chord half of
// r^2 (sweep - sin(sweep)).
func (c Contour) Area() measure.Area {
	if len(c.pieces) == 0 {
		return 0
	}
	const shift = grain - areaGrain
	spots := make([]spot, len(c.pieces))
	var arcs wide
	for i, p := range c.pieces {
		spots[i] = p.from
		if p.sweep != 0 {
			between := p.arc() - int64(measure.Length(p.radius).Sin(p.sweep))
			arcs = arcs.plus(product(p.radius>>shift, between>>shift))
		}
	}
	return areaOf(doubleArea(spots).plus(arcs))
}

// Bounds returns the lower left and the upper right corner of the upright
// rectangle that the contour just fits into, rounded outward.
func (c Contour) Bounds() (least, most Point) {
	if len(c.pieces) == 0 {
		return Point{}, Point{}
	}
	var spots []spot
	for i := range c.pieces {
		spots = append(spots, c.pieces[i].from)
		c.upright(i, func(_, b spot, _ bool) { spots = append(spots, b) })
		if p := c.pieces[i]; p.sweep != 0 {
			for side, s := range [...]spot{{p.radius, 0}, {}, {-p.radius, 0}} {
				if side != 1 && p.passes(measure.Angle(side)*measure.RightAngle) {
					spots = append(spots, p.middle.plus(s))
				}
			}
		}
	}
	low, high := bounds(spots)
	return Point{measure.Length(low.x >> grain), measure.Length(low.y >> grain)},
		Point{measure.Length(-(-high.x >> grain)), measure.Length(-(-high.y >> grain))}
}

// passes reports whether an arc has a point in a direction from its middle.
func (p piece) passes(heading measure.Angle) bool {
	way := heading - p.start
	if p.sweep < 0 {
		way = -way
	}
	if way %= measure.Turn; way < 0 {
		way += measure.Turn
	}
	return way < max(p.sweep, -p.sweep)
}

// upright visits the parts of arc i that run up or down only, and whether each is
// to the right of the middle.
func (c Contour) upright(i int, visit func(a, b spot, right bool)) {
	p := c.pieces[i]
	if p.sweep == 0 {
		return
	}
	const half = measure.Turn / 2
	way := measure.Angle(1)
	if p.sweep < 0 {
		way = -1
	}
	// From the bottom of the circle, how far round it begins.
	begun := (p.start + measure.RightAngle) % measure.Turn
	if begun < 0 {
		begun += measure.Turn
	}
	right := begun < half
	next := half - begun%half
	if way < 0 {
		next = begun % half
		if next == 0 {
			next, right = half, !right
		}
	}
	from := p.from
	for ; next < way*p.sweep; next += half {
		top := right == (way > 0)
		to := p.middle.plus(spot{0, p.radius})
		if !top {
			to = p.middle.minus(spot{0, p.radius})
		}
		visit(from, to, right)
		from, right = to, !right
	}
	visit(from, c.to(i), right)
}

// Size is the size of [Contour.Bounds].
func (c Contour) Size() measure.Size {
	least, most := c.Bounds()
	return measure.Size{Width: most.X - least.X, Height: most.Y - least.Y}
}

// Holds reports whether a point lies inside c or on it, decided exactly on the
// corners, middles and radii as they are held, to 2^-20 nm.
func (c Contour) Holds(at Point) bool {
	if !at.within() {
		return false
	}
	s := at.spot()
	inside := false
	for i, p := range c.pieces {
		a, b := p.from, c.to(i)
		if s == a {
			return true
		}
		if p.sweep == 0 {
			way := side(a, b, s)
			if way == 0 && min(a.x, b.x) <= s.x && s.x <= max(a.x, b.x) && min(a.y, b.y) <= s.y && s.y <= max(a.y, b.y) {
				return true
			}
			if (a.y > s.y) != (b.y > s.y) && (b.y > a.y) == (way > 0) {
				inside = !inside
			}
			continue
		}
		// Where the level line through s meets the arc, to the right of s.
		from := s.minus(p.middle)
		beyond := dot(from, from).minus(product(p.radius, p.radius)).sign()
		on := false
		c.upright(i, func(a, b spot, right bool) {
			if beyond == 0 && right == (from.x >= 0) && min(a.y, b.y) <= s.y && s.y <= max(a.y, b.y) {
				on = true
			}
			if (a.y > s.y) != (b.y > s.y) &&
				(right && (from.x < 0 || beyond < 0) || !right && from.x < 0 && beyond > 0) {
				inside = !inside
			}
		})
		if on {
			return true
		}
	}
	return inside
}

// At returns the point so far along the contour from where it begins, to the
// nearest nanometer, and the heading there, from 0 to a whole turn, of the piece
// that begins where two meet. It goes round and round, each time by [Contour.Length]. The zero Contour
// has them all at nothing.
func (c Contour) At(along measure.Length) (Point, measure.Angle) {
	total := c.Length()
	if total <= 0 {
		return Point{}, 0
	}
	if along %= total; along < 0 {
		along += total
	}
	whole, rest := int64(along), int64(0)
	for i := range c.pieces {
		l := c.length(i)
		if whole <= l>>grain {
			if d := whole<<grain + rest; d < l || i == len(c.pieces)-1 {
				return c.on(i, min(d, l), l)
			}
		}
		// What is left, its parts below a nanometer never below nothing.
		rest -= l & (1<<grain - 1)
		whole += rest>>grain - l>>grain
		rest &= 1<<grain - 1
	}
	return c.on(0, 0, 1)
}

// on is the place and the heading on piece i, d of its length l along.
func (c Contour) on(i int, d, l int64) (Point, measure.Angle) {
	p := c.pieces[i]
	if p.sweep == 0 {
		way := c.to(i).minus(p.from)
		x, _ := measure.MulDiv(way.x, d, l)
		y, _ := measure.MulDiv(way.y, d, l)
		h := way.heading()
		if h < 0 {
			h += measure.Turn
		}
		return p.from.plus(spot{x, y}).point(), h
	}
	swept, _ := measure.MulDiv(p.sweep, d, l)
	return p.at(swept).point(), p.heading(swept)
}

// heading is that of an arc after so much of its sweep, from 0 to a whole turn.
func (p piece) heading(swept measure.Angle) measure.Angle {
	h := p.start + swept + measure.RightAngle
	if p.sweep < 0 {
		h -= measure.Turn / 2
	}
	if h %= measure.Turn; h < 0 {
		h += measure.Turn
	}
	return h
}

// Moved returns the contour moved to the right and up.
func (c Contour) Moved(by Point) (Contour, error) {
	if !by.within() {
		return Contour{}, limited(fault(Far, 0), explain.AtMost, Reach)
	}
	return c.mapped(func(s spot) spot { return s.plus(by.spot()) }, 0)
}

// Turned returns the contour turned to the left about the origin.
func (c Contour) Turned(by measure.Angle) (Contour, error) {
	by %= measure.Turn
	return c.mapped(func(s spot) spot { return turned(s, by) }, by)
}

func (c Contour) mapped(move func(spot) spot, by measure.Angle) (Contour, error) {
	d := Contour{make([]piece, len(c.pieces))}
	for i, p := range c.pieces {
		p.from = move(p.from)
		if p.sweep != 0 {
			p.middle, p.start = move(p.middle), (p.start+by)%measure.Turn
		}
		if !p.from.within() || !p.middle.within() {
			return Contour{}, limited(fault(Far, i), explain.AtMost, Reach)
		}
		d.pieces[i] = p
	}
	return d, nil
}

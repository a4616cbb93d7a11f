package plane

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/natural"
)

// A Side is a straight side and how far the outline turns at its end, toward its
// inside: 90 degrees at a square corner, below nothing at one that points inward.
type Side struct {
	Length measure.Length `json:"length"`
	Turn   measure.Angle  `json:"turn"`
}

// A Polygon is a closed outline of straight sides that nowhere meets itself. The
// zero Polygon has no corners. A Polygon is never changed.
type Polygon struct {
	corners   []spot
	sides     []Side
	clockwise bool
}

// New returns the outline of these corners, 3 to [MaxCorners], in order, either
// way round. Each lies within [Reach]. It refuses two corners in one place, a
// side that turns right back, and sides that cross or touch: the codes
// [NoLength], [Reverses], [Crosses].
func New(corners ...Point) (Polygon, error) {
	if err := checkCount(len(corners), 3, MaxCorners); err != nil {
		return Polygon{}, err
	}
	spots := make([]spot, len(corners))
	for i, c := range corners {
		if !c.within() {
			return Polygon{}, limited(fault(Far, i), explain.AtMost, Reach)
		}
		spots[i] = c.spot()
	}
	p, err := outline(spots)
	if err != nil {
		return Polygon{}, err
	}
	return p, nil
}

// Box returns an upright rectangle with its lower left corner at the origin. Its
// first side is the bottom, the others follow to the left: right, top, left.
func Box(s measure.Size) (Polygon, error) {
	return New(Point{}, Point{X: s.Width}, Point{s.Width, s.Height}, Point{Y: s.Height})
}

// outline checks spots that lie within the plane. It keeps them.
func outline(spots []spot) (Polygon, *Error) {
	n := len(spots)
	arrows := arrowsOf(spots)
	for i, a := range arrows {
		if a == (spot{}) {
			return Polygon{}, fault(NoLength, i)
		}
	}
	for i, a := range arrows {
		if b := arrows[(i+1)%n]; cross(a, b).sign() == 0 && dot(a, b).sign() < 0 {
			return Polygon{}, fault(Reverses, (i+1)%n)
		}
	}
	if a, b, found := crossing(spots); found {
		return Polygon{}, &Error{Code: Crosses, At: a, Other: b}
	}
	p := Polygon{corners: spots, sides: make([]Side, n), clockwise: doubleArea(spots).sign() < 0}
	first := arrows[0].heading()
	heading := first
	for i, a := range arrows {
		next := first
		if i+1 < n {
			next = arrows[i+1].heading()
		}
		turn := turning(heading, next, cross(a, arrows[(i+1)%n]).sign())
		if p.clockwise {
			turn = -turn
		}
		p.sides[i] = Side{max(coarse(a.length()), 1), turn}
		heading = next
	}
	return p, nil
}

// arrowsOf are the sides as arrows.
func arrowsOf(spots []spot) []spot {
	arrows := make([]spot, len(spots))
	for i, s := range spots {
		arrows[i] = spots[(i+1)%len(spots)].minus(s)
	}
	return arrows
}

// turning is how far one turns left from one heading to the next; way is 1 where
// that is to the left, -1 to the right, 0 nowhere. Differences of headings add up
// exactly, whatever was rounded in them.
func turning(from, to measure.Angle, way int) measure.Angle {
	const straight = measure.Turn / 2
	turn := (to - from) % measure.Turn
	switch {
	case turn > straight || turn == straight && way < 0:
		turn -= measure.Turn
	case turn < -straight || turn == -straight && way > 0:
		turn += measure.Turn
	}
	return turn
}

// Len is how many corners, and sides, there are.
func (p Polygon) Len() int { return len(p.corners) }

// Corner returns corner i to the nearest nanometer. Corners and sides are counted
// round and round: -1 is the last one. The zero Polygon has them all at nothing.
func (p Polygon) Corner(i int) Point { return p.spot(i).point() }

// Corners returns all corners to the nearest nanometer.
func (p Polygon) Corners() []Point {
	corners := make([]Point, len(p.corners))
	for i, c := range p.corners {
		corners[i] = c.point()
	}
	return corners
}

// Side returns side i, from corner i to the next one.
func (p Polygon) Side(i int) Side {
	if len(p.sides) == 0 {
		return Side{}
	}
	return p.sides[p.index(i)]
}

// Sides returns all sides.
func (p Polygon) Sides() []Side { return slices.Clone(p.sides) }

// Turn is how far the outline turns at corner i, toward its inside.
func (p Polygon) Turn(i int) measure.Angle { return p.Side(i - 1).Turn }

// Interior is the angle that corner i measures on the inside.
func (p Polygon) Interior(i int) measure.Angle { return measure.Turn/2 - p.Turn(i) }

// Diagonal is how far corners i and j are apart, rounded to the nearest.
func (p Polygon) Diagonal(i, j int) measure.Length {
	return coarse(p.spot(i).minus(p.spot(j)).length())
}

func (p Polygon) spot(i int) spot {
	if len(p.corners) == 0 {
		return spot{}
	}
	return p.corners[p.index(i)]
}

// index counts round and round, where there is something to count.
func (p Polygon) index(i int) int {
	n := len(p.corners)
	if i %= n; i < 0 {
		i += n
	}
	return i
}

// Length is the sum of the sides.
func (p Polygon) Length() measure.Length {
	var sum measure.Length
	for _, s := range p.sides {
		sum += s.Length
	}
	return sum
}

// Turning is the sum of the turns: 360 degrees, exactly.
func (p Polygon) Turning() measure.Angle {
	var sum measure.Angle
	for _, s := range p.sides {
		sum += s.Turn
	}
	return sum
}

// Clockwise reports whether the outline runs so, seen from the front.
func (p Polygon) Clockwise() bool { return p.clockwise }

// Convex reports whether no corner points inward.
func (p Polygon) Convex() bool {
	return !slices.ContainsFunc(p.sides, func(s Side) bool { return s.Turn < 0 })
}

// Bounds returns the lower left and the upper right corner of the upright
// rectangle that the outline just fits into, rounded outward.
func (p Polygon) Bounds() (least, most Point) {
	if len(p.corners) == 0 {
		return Point{}, Point{}
	}
	low, high := bounds(p.corners)
	return Point{measure.Length(low.x >> grain), measure.Length(low.y >> grain)},
		Point{measure.Length(-(-high.x >> grain)), measure.Length(-(-high.y >> grain))}
}

// Size is the size of [Polygon.Bounds].
func (p Polygon) Size() measure.Size {
	least, most := p.Bounds()
	return measure.Size{Width: most.X - least.X, Height: most.Y - least.Y}
}

func bounds(spots []spot) (low, high spot) {
	low, high = spots[0], spots[0]
	for _, s := range spots {
		low = spot{min(low.x, s.x), min(low.y, s.y)}
		high = spot{max(high.x, s.x), max(high.y, s.y)}
	}
	return low, high
}

// areaGrain is how many binary places below a nanometer an area is worked out
// with, so that ten thousand products stay within 128 bits.
const areaGrain = 16

// doubleArea is twice the surface, above zero where spots run to the left, in
// units of 4^-areaGrain nm2.
func doubleArea(spots []spot) wide {
	var sum wide
	low := func(s spot) spot {
		s = s.minus(spots[0])
		return spot{s.x >> (grain - areaGrain), s.y >> (grain - areaGrain)}
	}
	for i := 2; i < len(spots); i++ {
		sum = sum.plus(cross(low(spots[i-1]), low(spots[i])))
	}
	return sum
}

// Area is the surface that the outline encloses, rounded to the nearest square
// micrometer from corners to 2^-16 nm.
func (p Polygon) Area() measure.Area {
	return areaOf(doubleArea(p.corners))
}

// areaOf is half of a surface, in square micrometers.
func areaOf(twice wide) measure.Area {
	const unit = 2 * int64(measure.Micrometer*measure.Micrometer) << (2 * areaGrain)
	q, _ := twice.size().Nearest(natural.Of(uint64(unit)))
	v, _ := q.Uint64()
	return measure.Area(v)
}

// Moved returns the outline moved to the right and up.
func (p Polygon) Moved(by Point) (Polygon, error) {
	return p.mapped(func(s spot) spot { return s.plus(by.spot()) }, by.within())
}

// Turned returns the outline turned to the left about the origin.
func (p Polygon) Turned(by measure.Angle) (Polygon, error) {
	return p.mapped(func(s spot) spot { return turned(s, by) }, true)
}

// turned is s turned to the left about the origin.
func turned(s spot, by measure.Angle) spot {
	x, y := measure.Length(s.x), measure.Length(s.y)
	return spot{int64(x.Cos(by) - y.Sin(by)), int64(x.Sin(by) + y.Cos(by))}
}

// mapped is p with its corners elsewhere and its sides as they are.
func (p Polygon) mapped(move func(spot) spot, near bool) (Polygon, error) {
	q := Polygon{make([]spot, len(p.corners)), p.sides, p.clockwise}
	for i, c := range p.corners {
		if near {
			q.corners[i] = move(c)
		}
		if !near || !q.corners[i].within() {
			return Polygon{}, limited(fault(Far, i), explain.AtMost, Reach)
		}
	}
	return q, nil
}

package plane

import "github.com/fairmiter/fairmiter/framing/measure"

// Limits of the plane.
const (
	// Reach is how far from the origin a corner may lie, left, right, up and down.
	Reach = 100 * measure.Meter
	// MaxCorners is how many corners an outline may have.
	MaxCorners = 10_000
	// Tolerance is the least that the rounding of corners to whole nanometers asks
	// of those who compare them.
	Tolerance = measure.Nanometer
)

// A Point is a place in the plane, X to the right and Y up.
type Point struct {
	X measure.Length `json:"x"`
	Y measure.Length `json:"y"`
}

// grain is how many binary places below a nanometer corners are held in.
const grain = 20

// A spot is a point in units of 2^-grain nm. Within Reach it takes 57 bits and a
// sign, so a difference takes 58, and a product of two of them 116.
type spot struct{ x, y int64 }

const edge = int64(Reach) << grain

func (p Point) spot() spot { return spot{int64(p.X) << grain, int64(p.Y) << grain} }

// within reports whether a point has a spot.
func (p Point) within() bool {
	return -Reach <= p.X && p.X <= Reach && -Reach <= p.Y && p.Y <= Reach
}

func (s spot) within() bool { return -edge <= s.x && s.x <= edge && -edge <= s.y && s.y <= edge }

func (s spot) minus(o spot) spot { return spot{s.x - o.x, s.y - o.y} }

func (s spot) plus(o spot) spot { return spot{s.x + o.x, s.y + o.y} }

// point is the nearest point in whole nanometers.
func (s spot) point() Point { return Point{coarse(s.x), coarse(s.y)} }

// coarse rounds to whole nanometers, a half up.
func coarse(v int64) measure.Length { return measure.Length((v + 1<<(grain-1)) >> grain) }

// length is how long s is as an arrow, in its own unit.
func (s spot) length() int64 {
	return int64(measure.Hypot(measure.Length(s.x), measure.Length(s.y)))
}

// heading is the direction of s as an arrow, from the right turning left.
func (s spot) heading() measure.Angle {
	return measure.Slope(measure.Length(s.y), measure.Length(s.x))
}

// arrow is a length in units of 2^-grain nm in a direction.
func arrow(length int64, heading measure.Angle) spot {
	l := measure.Length(length)
	return spot{int64(l.Cos(heading)), int64(l.Sin(heading))}
}

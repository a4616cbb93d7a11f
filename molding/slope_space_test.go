package molding_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// A vec is a vector in space.
type vec [3]float64

func (a vec) dot(b vec) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }
func (a vec) cross(b vec) vec {
	return vec{a[1]*b[2] - a[2]*b[1], a[2]*b[0] - a[0]*b[2], a[0]*b[1] - a[1]*b[0]}
}
func (a vec) plus(b vec, times float64) vec {
	return vec{a[0] + times*b[0], a[1] + times*b[1], a[2] + times*b[2]}
}

func sincos(a measure.Angle) (sin, cos float64) {
	return math.Sincos(float64(a) / 1e9 * math.Pi / 180)
}

// A board is a sloped side in space: the way it runs, up its front from the sight
// edge, and out of its front.
type board struct{ along, up, out vec }

// boardAt is the side whose plan is turned to the left by turn, at a pitch.
func boardAt(turn, pitch measure.Angle) board {
	s, c := sincos(turn)
	sinP, cosP := sincos(pitch)
	b := board{along: vec{c, s, 0}}
	b.up = vec{s * cosP, -c * cosP, sinP} // the outside lies to the right
	b.out = b.up.cross(b.along)
	if b.out[2] < 0 {
		b.out = vec{}.plus(b.out, -1)
	}
	return b
}

// cutInSpace is the setting of the second road: the two fronts are stood up in
// space, the cut is laid through their common line and halfway between them, and
// the board is laid on the saw's table with the fence behind it.
func cutInSpace(c molding.SlopedCorner, p molding.Position) molding.Setting {
	a, b := boardAt(0, c.Own.Flat()), boardAt(2*c.Plain, c.Other.Flat())
	line := a.out.cross(b.out)
	normal := line.cross(a.out.plus(b.out, 1))
	if normal.dot(a.along) < 0 {
		normal = vec{}.plus(normal, -1)
	}
	back := vec{}.plus(a.out, -1)
	var fence, table vec
	switch p {
	case molding.LaidFlat:
		fence, table = a.up, back
	case molding.OnEdge:
		fence, table = back, a.up
	case molding.Propped:
		fence, table = vec{0, -1, 0}, vec{0, 0, -1}
	}
	// Where the plane meets the table it runs along this line.
	trace := normal.cross(table)
	if trace.dot(fence) < 0 {
		trace = vec{}.plus(trace, -1)
	}
	miter := math.Atan2(trace.dot(a.along), trace.dot(fence))
	tilt := math.Asin(-normal.dot(table) / math.Sqrt(normal.dot(normal)))
	return molding.Setting{Miter: deg(miter * 180 / math.Pi), Tilt: deg(tilt * 180 / math.Pi)}
}

// TestSlopeInSpace: the settings against vectors in space, for both sides of any
// corner and in every position, to the nanodegree.
func TestSlopeInSpace(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 45))
	for i := range 4000 {
		c := molding.SlopedCorner{
			Plain: measure.Angle(10+r.IntN(700)) * measure.Degree / 10,
			Own:   molding.Pitch{Angle: 5*measure.Degree + measure.Angle(r.Int64N(int64(85*measure.Degree))), From: molding.FromFlat},
		}
		c.Other = c.Own
		if i%2 == 0 {
			c.Other = molding.Pitch{Angle: measure.Angle(r.Int64N(int64(85 * measure.Degree))), From: molding.FromVertical}
		}
		if i%3 == 0 {
			c.Plain = -c.Plain
		}
		for _, p := range []molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
			for _, corner := range []molding.SlopedCorner{c, c.Turned()} {
				got, want := corner.Setting(p), cutInSpace(corner, p)
				if !near(got, want, 1e-9) { // both rounded to the nanodegree
					t.Fatalf("%+v %s: %v, in space %v", corner, p, got, want)
				}
			}
		}
		if c.Dihedral()+2*c.Setting(molding.LaidFlat).Tilt != 180*measure.Degree {
			t.Errorf("%+v: fronts at %v", c, c.Dihedral())
		}
	}
}

// TestDihedral: the angle between two fronts, by the normals.
func TestDihedral(t *testing.T) {
	for _, row := range []struct {
		n    int
		p    molding.Pitch
		want float64
	}{{4, flat(0), 180}, {4, flat(90), 90}, {4, flat(45), 120}, {6, flat(90), 120}, {8, flat(90), 135}} {
		if got := molding.RegularSlopedCorner(row.n, row.p).Dihedral(); got != deg(row.want) {
			t.Errorf("%d sides at %v: %v, want %v", row.n, row.p, got, row.want)
		}
	}
	c := molding.SlopedCornerAt(70*measure.Degree, flat(50), lean(12))
	a, b := boardAt(0, c.Own.Flat()), boardAt(2*c.Plain, c.Other.Flat())
	if want := deg(180 - math.Acos(a.out.dot(b.out))*180/math.Pi); c.Dihedral()-want > 2 || want-c.Dihedral() > 2 {
		t.Errorf("fronts at %v, by the normals %v", c.Dihedral(), want)
	}
}

// TestSlopePerturbation: a steeper side takes less miter and more tilt; a corner of
// pitches that differ by a hair takes what one of equal pitches does.
func TestSlopePerturbation(t *testing.T) {
	r := rand.New(rand.NewPCG(45, 12))
	for range 2000 {
		n := 3 + r.IntN(30)
		a := measure.Degree + measure.Angle(r.Int64N(int64(88*measure.Degree)))
		c := molding.RegularSlopedCorner(n, molding.Pitch{Angle: a, From: molding.FromFlat})
		steeper := molding.RegularSlopedCorner(n, molding.Pitch{Angle: a + measure.Degree/1e6, From: molding.FromFlat})
		for _, p := range []molding.Position{molding.LaidFlat, molding.OnEdge} {
			now, then := c.Setting(p), steeper.Setting(p)
			if p == molding.OnEdge {
				now, then = then, now
			}
			if now.Miter <= then.Miter || now.Tilt >= then.Tilt {
				t.Fatalf("%d sides a hair steeper than %v, %s: %v and %v", n, a, p, now, then)
			}
		}
		c.Other.Angle++
		for _, p := range []molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
			if s := molding.RegularSlopedCorner(n, c.Own).Setting(p); !near(s, c.Setting(p), 1e-6) {
				t.Fatalf("%d sides at %v, %s: %v, with one a hair off %v", n, a, p, s, c.Setting(p))
			}
		}
	}
}

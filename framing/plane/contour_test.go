package plane_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// the takes a contour that may not fail.
func the(c plane.Contour, err error) plane.Contour {
	if err != nil {
		panic(err)
	}
	return c
}

// walked are n points along a contour, and the headings there.
func walked(c plane.Contour, n int) (points []plane.Point, headings []measure.Angle) {
	for i := range n {
		along, _ := measure.MulDiv(c.Length(), int64(i), int64(n))
		p, h := c.At(along)
		points, headings = append(points, p), append(headings, h)
	}
	return points, headings
}

// TestStraightContour: a polygon has one length, surface and inside both ways.
func TestStraightContour(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	for _, row := range outlines {
		for _, corners := range [][]plane.Point{row.corners, reversed(row.corners)} {
			p := must(plane.New(corners...))
			c := p.Contour()
			least, most := p.Bounds()
			low, high := c.Bounds()
			if c.Len() != p.Len() || c.Area() != p.Area() || least != low || most != high || c.Size() != p.Size() {
				t.Errorf("%s changed", row.name)
			}
			near(t, row.name, c.Length(), p.Length(), 3)
			if first, _ := c.At(0); first != p.Corner(0) {
				t.Errorf("%s begins at %v", row.name, first)
			}
			for range 200 {
				at := plane.Point{X: measure.Length(r.IntN(13)-2) * inch / 2, Y: measure.Length(r.IntN(13)-2) * inch / 2}
				if c.Holds(at) != p.Contains(at) {
					t.Errorf("%s holds %v: %t", row.name, at, c.Holds(at))
				}
			}
		}
	}
}

// TestAlong: so far along lies a point on the contour; from one to the next it is as
// far as the way between them, the chord being no longer than that, and the way runs
// as the heading says.
func TestAlong(t *testing.T) {
	for _, row := range arches {
		c := the(row.arch.Contour())
		const n = 5000
		points, headings := walked(c, n)
		step := float64(c.Length()) / n
		short, turned := 0, 0.0
		for i, p := range points {
			q := points[(i+1)%n]
			d := math.Hypot(float64(q.X-p.X), float64(q.Y-p.Y))
			if d > step+3 {
				t.Fatalf("%s: %d to %d is %.0f, more than %.0f", row.name, i, i+1, d, step)
			}
			if d < step*0.999 {
				short++ // around a corner
			}
			turn := math.Mod(float64(headings[(i+1)%n]-headings[i])/float64(deg)+540, 360) - 180
			turned += turn
			way := math.Atan2(float64(q.Y-p.Y), float64(q.X-p.X)) * 180 / math.Pi
			off := math.Abs(math.Mod(way-float64(headings[i])/float64(deg)+900, 360) - 180)
			if d >= step*0.9999 && off > math.Abs(turn)+1e-3 {
				t.Fatalf("%s: the heading at %d is off by %g", row.name, i, off)
			}
			if h := headings[i]; h < 0 || h >= measure.Turn {
				t.Fatalf("%s heads for %v", row.name, h)
			}
		}
		if short > 5 || math.Abs(turned-360) > 1e-6 {
			t.Errorf("%s: %d corners, turns by %g", row.name, short, turned)
		}
		a, _ := c.At(-c.Length() / 3)
		b, _ := c.At(c.Length() - c.Length()/3 + 5*c.Length())
		if a != b {
			t.Errorf("%s: round and round %v and %v", row.name, a, b)
		}
	}
}

// TestHolds: by the distance from the middles, in floats, and by a nanometer on the
// sides and at the crown.
func TestHolds(t *testing.T) {
	r := rand.New(rand.NewPCG(33, 34))
	for _, row := range arches {
		a := row.arch
		c := the(a.Contour())
		w, h, radius := float64(a.Width), float64(a.Height), float64(row.radius)
		least, most := c.Bounds()
		inside := 0
		for range 4000 {
			p := plane.Point{
				X: least.X - mm + measure.Length(r.Int64N(int64(most.X-least.X+2*mm))),
				Y: least.Y - mm + measure.Length(r.Int64N(int64(most.Y-least.Y+2*mm)))}
			x, y, s := float64(p.X), float64(p.Y), float64(row.springing)
			var want bool
			switch {
			case y < 0 || y > h:
			case y <= s && a.Kind != plane.Horseshoe:
				want = x >= 0 && x <= w
			case a.Kind == plane.Pointed:
				want = math.Hypot(x-(w-radius), y-s) <= radius && math.Hypot(x-radius, y-s) <= radius
			case y <= s:
				want = x >= 0 && x <= w
			default:
				want = math.Hypot(x-w/2, y-(h-radius)) <= radius
			}
			if c.Holds(p) != want {
				t.Fatalf("%s holds %v: %t", row.name, p, !want)
			}
			if want {
				inside++
			}
		}
		if inside < 1000 {
			t.Errorf("%s holds %d of 4000", row.name, inside)
		}
		for _, on := range []plane.Point{{}, {X: a.Width}, {X: a.Width / 2}, {X: a.Width / 2, Y: a.Height}, {X: a.Width / 3}, {Y: row.springing / 2}} {
			if !c.Holds(on) {
				t.Errorf("%s does not hold %v, which is on it", row.name, on)
			}
		}
		for _, off := range []plane.Point{{X: -1}, {X: a.Width, Y: -1}, {X: a.Width / 2, Y: -1}, {X: a.Width / 2, Y: a.Height + 1}, {X: least.X - 1, Y: a.Height / 2}, {X: plane.Reach + 1}} {
			if c.Holds(off) {
				t.Errorf("%s holds %v", row.name, off)
			}
		}
	}
}

// TestHoldsOnTheArc: 5-12-13 on a circle of 130, to the nanometer.
func TestHoldsOnTheArc(t *testing.T) {
	c := the(plane.Arch{plane.HalfRound, 260 * mm, 130 * mm, 0}.Contour())
	for _, x := range []measure.Length{-120, -50, 50, 120} {
		y := measure.Length(50)
		if x == -50 || x == 50 {
			y = 120
		}
		p := plane.Point{X: (130 + x) * mm, Y: y * mm}
		if !c.Holds(p) || c.Holds(plane.Point{X: p.X, Y: p.Y + 1}) || !c.Holds(plane.Point{X: p.X, Y: p.Y - 1}) {
			t.Errorf("%v is on it, what lies a nanometer above is not", p)
		}
	}
}

func TestContourMoved(t *testing.T) {
	for _, row := range arches {
		c := the(row.arch.Contour())
		d := the(the(c.Turned(90 * deg)).Moved(plane.Point{X: inch, Y: -inch}))
		if c.Length() != d.Length() || c.Area() != d.Area() || c.Len() != d.Len() {
			t.Errorf("%s changed", row.name)
		}
		least, most := c.Bounds()
		low, high := d.Bounds()
		if low != (plane.Point{X: inch - most.Y, Y: least.X - inch}) || high != (plane.Point{X: inch - least.Y, Y: most.X - inch}) {
			t.Errorf("%s lies between %v and %v", row.name, low, high)
		}
		points, headings := walked(c, 100)
		moved, turned := walked(d, 100)
		for i, p := range points {
			near(t, row.name, moved[i].X, inch-p.Y, 1)
			near(t, row.name, moved[i].Y, p.X-inch, 1)
			if (headings[i]+90*deg)%measure.Turn != turned[i] {
				t.Errorf("%s heads for %v", row.name, turned[i])
			}
		}
		// Askew, it still turns back to itself.
		back := the(the(c.Turned(33333333333)).Turned(-33333333333))
		points, _ = walked(c, 100)
		moved, _ = walked(back, 100)
		for i, p := range points {
			near(t, row.name, moved[i].X, p.X, 1)
			near(t, row.name, moved[i].Y, p.Y, 1)
		}
	}
	c := the(arches[0].arch.Contour())
	if _, err := c.Moved(plane.Point{X: plane.Reach}); code(t, err) != plane.Far {
		t.Errorf("moved out of reach: %v", err)
	}
	if _, err := c.Moved(plane.Point{X: plane.Reach + 1}); code(t, err) != plane.Far {
		t.Errorf("moved by more than the reach: %v", err)
	}
}

func TestZeroContour(t *testing.T) {
	var c plane.Contour
	low, high := c.Bounds()
	p, h := c.At(5)
	if c.Len() != 0 || c.Length() != 0 || c.Area() != 0 || low != high || c.Size() != (measure.Size{}) ||
		c.Holds(plane.Point{}) || p != (plane.Point{}) || h != 0 || (plane.Polygon{}).Contour().Len() != 0 {
		t.Error("a zero contour has something")
	}
	if d, err := c.Moved(plane.Point{X: 1}); err != nil || d.Len() != 0 {
		t.Errorf("moved: %v", err)
	}
}

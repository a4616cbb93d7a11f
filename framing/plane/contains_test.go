package plane_test

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// winding is the second road to what lies inside: how often the outline goes
// around a point, by quadrants.
func winding(corners []plane.Point, at plane.Point) (around int, on bool) {
	quadrant := func(p plane.Point) int {
		x, y := p.X-at.X, p.Y-at.Y
		switch {
		case x > 0 && y >= 0:
			return 0
		case x <= 0 && y > 0:
			return 1
		case x < 0 && y <= 0:
			return 2
		}
		return 3
	}
	turns := 0
	for i, a := range corners {
		b := corners[(i+1)%len(corners)]
		num := func(l measure.Length) *big.Int { return big.NewInt(int64(l)) }
		area := new(big.Int).Sub(
			new(big.Int).Mul(num(a.X-at.X), num(b.Y-at.Y)),
			new(big.Int).Mul(num(a.Y-at.Y), num(b.X-at.X))).Sign()
		if area == 0 && (a.X-at.X)*(b.X-at.X) <= 0 && (a.Y-at.Y)*(b.Y-at.Y) <= 0 {
			return 0, true
		}
		switch step := (quadrant(b) - quadrant(a) + 4) % 4; step {
		case 2:
			turns += 2 * area
		case 3:
			turns--
		default:
			turns += step
		}
	}
	return turns / 4, false
}

func TestContainsAgainstWinding(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	in, out, on := 0, 0, 0
	for range 400 {
		// A coarse grid, so that points fall on corners and sides.
		corners := spread(r, 3+r.IntN(10), 3, 9)
		p, err := plane.New(corners...)
		if err != nil {
			continue
		}
		for x := measure.Length(-10); x <= 10; x++ {
			for y := measure.Length(-10); y <= 10; y++ {
				at := plane.Point{X: x, Y: y}
				around, edge := winding(corners, at)
				if got := p.Contains(at); got != (edge || around != 0) {
					t.Fatalf("%v in %v: %t, goes around %d times, on it: %t", at, corners, got, around, edge)
				}
				switch {
				case edge:
					on++
				case around != 0:
					in++
				default:
					out++
				}
			}
		}
	}
	if in < 1000 || out < 1000 || on < 1000 {
		t.Errorf("%d in, %d out, %d on", in, out, on)
	}
}

func TestContainsRectangle(t *testing.T) {
	box := must(plane.Box(measure.Size{Width: 16 * inch, Height: 20 * inch}))
	bracket := must(plane.New(outlines[2].corners...))
	notch := must(plane.New(outlines[6].corners...))
	rect := func(x, y, w, h measure.Length) plane.Rectangle {
		return plane.Rectangle{Corner: plane.Point{X: x, Y: y}, Size: measure.Size{Width: w, Height: h}}
	}
	for _, row := range []struct {
		name  string
		p     plane.Polygon
		r     plane.Rectangle
		slack measure.Length
		want  bool
	}{
		{"itself", box, rect(0, 0, 16*inch, 20*inch), 0, true},
		{"a nanometer wider", box, rect(0, 0, 16*inch+1, 20*inch), 0, false},
		{"a nanometer to the left", box, rect(-1, 0, inch, inch), 0, false},
		{"that within a nanometer", box, rect(-1, 0, inch, inch), 1, true},
		{"two within a nanometer", box, rect(-2, 0, inch, inch), 1, false},
		{"no size", box, rect(0, 0, 0, inch), 0, false},
		{"nothing left of it", box, rect(0, 0, 2, 2), 1, false},
		{"in the foot of the bracket", bracket, rect(0, 0, 4*inch, inch), 0, true},
		{"in its arm", bracket, rect(0, 0, inch, 4*inch), 0, true},
		{"over its corner", bracket, rect(0, 0, inch+1, inch+1), 0, false},
		{"that within a nanometer of the bracket", bracket, rect(0, 0, inch+1, inch+1), 1, true},
		{"filling the notch", notch, rect(inch, inch, 2*inch, 3*inch), 0, false},
		{"across the notch", notch, rect(0, 2*inch, 4*inch, inch), 0, false},
		{"below the notch", notch, rect(0, 0, 4*inch, inch), 0, true},
	} {
		if got := row.p.ContainsRectangle(row.r, row.slack); got != row.want {
			t.Errorf("%s: %t, want %t", row.name, got, row.want)
		}
		// The same, all turned.
		p := must(row.p.Turned(30 * deg))
		r := row.r
		r.Turned = 30 * deg
		c, s := r.Corner.X, r.Corner.Y
		r.Corner = plane.Point{X: c.Cos(30*deg) - s.Sin(30*deg), Y: c.Sin(30*deg) + s.Cos(30*deg)}
		if row.want && r.Size.Width > 2 && !p.ContainsRectangle(r, row.slack+2) {
			t.Errorf("%s, turned, is not in it", row.name)
		}
	}
	// A square just fits into one of the root of 2 as much, on its corner.
	outer := must(plane.Box(measure.Size{Width: 14142136, Height: 14142136}))
	diamond := plane.Rectangle{Corner: plane.Point{X: 7071068}, Size: measure.Size{Width: 10_000_000, Height: 10_000_000}, Turned: 45 * deg}
	if !outer.ContainsRectangle(diamond, plane.Tolerance) {
		t.Error("the diamond is not in it")
	}
	diamond.Size.Width += 3
	if outer.ContainsRectangle(diamond, plane.Tolerance) {
		t.Error("a diamond 3 nm wider is in it")
	}
	for _, c := range diamond.Corners() {
		if c.X < -4 || c.X > 14142140 || c.Y < 0 || c.Y > 14142140 {
			t.Errorf("a corner of the diamond is %v", c)
		}
	}
}

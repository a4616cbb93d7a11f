package hang_test

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// A point in the plane of the back, in millimeters: across, and up.
type point struct{ x, y float64 }

func (p point) to(q point) float64 { return math.Sqrt((q.x-p.x)*(q.x-p.x) + (q.y-p.y)*(q.y-p.y)) }

// rope is the wire as it lies: hanger, one or two hooks, hanger.
func rope(l hang.Layout) []point {
	mm := func(l measure.Length) float64 { return float64(l) / 1e6 }
	half, rise := mm(l.Span)/2, mm(l.Rise)
	points := []point{{-half, 0}}
	for _, m := range l.Marks {
		points = append(points, point{mm(m.Across), rise})
	}
	return append(points, point{half, 0})
}

// length is the path of a rope of which the hangers are let down by so much.
func length(points []point, down float64) float64 {
	moved := append([]point(nil), points...)
	moved[0].y -= down
	moved[len(moved)-1].y -= down
	var sum float64
	for i := range moved[1:] {
		sum += moved[i].to(moved[i+1])
	}
	return sum
}

// TestStatics: the loads by virtual work and by adding up forces at the hooks.
// Where the piece sinks a little, the weight works against the wire, which gets
// longer by so much: T = W x sunk / longer. No angle comes into it.
func TestStatics(t *testing.T) {
	held := 0
	eachRandom(t, 4000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		l := h.Lay(g)
		if h.By != hang.Wire || !l.Hangs() || l.Angle < hang.LeastAngle {
			return
		}
		held++
		points := rope(l)
		if got := length(points, 0); !within(got, float64(l.Taut)/1e6, 1e-5) {
			t.Errorf("the wire is %f mm and lies along %f", float64(l.Taut)/1e6, got)
		}
		const sunk = 1e-3
		for _, row := range []struct {
			mass                         measure.Mass
			tension, hanger, pull, hooks measure.Force
		}{
			{g.Mass, l.Tension.Nominal, l.Hanger.Nominal, l.Pull.Nominal, l.Hook.Nominal},
			{g.Heaviest, l.Tension.Heaviest, l.Hanger.Heaviest, l.Pull.Heaviest, l.Hook.Heaviest},
		} {
			weight := float64(row.mass) * 9.80665e-3 // mN
			if weight < 1 {
				continue
			}
			work := weight * 2 * sunk / (length(points, sunk) - length(points, -sunk))
			// Half a millinewton of the weight and of the load itself, and what
			// central differences leave.
			tolerance := 2 + work/weight + work*1e-5
			if !within(float64(row.tension), work, tolerance) || row.hanger != row.tension {
				t.Errorf("%v in the wire, by virtual work %f mN", row.tension, work)
			}
			leg := points[0].to(points[1])
			if pull := work * (points[1].x - points[0].x) / leg; !within(float64(row.pull), pull, tolerance) {
				t.Errorf("%v draws the rails, by parts %f mN", row.pull, pull)
			}
			// Each hook holds what the wire on its two sides draws it with.
			var down float64
			for i := 1; i < len(points)-1; i++ {
				var x, y float64
				for _, q := range []point{points[i-1], points[i+1]} {
					d := points[i].to(q)
					x += work * (q.x - points[i].x) / d
					y += work * (q.y - points[i].y) / d
				}
				down -= y
				if got := math.Sqrt(x*x + y*y); !within(float64(row.hooks), got, tolerance) {
					t.Errorf("%v on the hook, by its forces %f mN", row.hooks, got)
				}
			}
			if !within(down, weight, tolerance) {
				t.Errorf("the hooks hold %f mN of %f", down, weight)
			}
		}
	})
	if held < 500 {
		t.Errorf("only %d wires", held)
	}
}

// TestStableSecondRoad: the piece slid a little along its wire, over one smooth
// hook. It comes back where its middle rises by that, that is where the hook
// gets nearer to the middle; it slides on where not.
func TestStableSecondRoad(t *testing.T) {
	tried := 0
	eachRandom(t, 4000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		h.By, h.Hooks, h.Taut = hang.Wire, 1, hang.Taut{By: hang.ByRise, Rise: in("1")}
		l := h.Lay(g)
		if l.StableRise < in("1/4") || l.StableRise > in("100") || float64(l.Span) < 1e7 {
			return
		}
		tried++
		above := float64(g.Outside.Height)/2 - float64(l.Below.Left)
		c := float64(l.Span) / 2
		for _, row := range []struct {
			part   float64
			stable bool
		}{{0.98, false}, {1.02, true}} {
			rise := float64(l.StableRise) * row.part
			a := math.Sqrt(c*c + rise*rise) // half of the wire
			x := a * 1e-3
			y := rise * math.Sqrt(1-x*x/(a*a)) // the wire is as long there
			if wire := (point{-c, 0}).to(point{x, y}) + (point{x, y}).to(point{c, 0}); !within(wire/(2*a), 1, 1e-9) {
				t.Fatalf("the wire stretches from %f to %f", 2*a, wire)
			}
			level, slid := rise+above, math.Sqrt(x*x+(y+above)*(y+above))
			if got := slid < level; got != row.stable {
				t.Errorf("a rise of %.2f of what keeps level: keeps level %t", row.part, got)
			}
		}
	})
	if tried < 500 {
		t.Errorf("only %d pieces", tried)
	}
}

// TestStableToTheNanometer: one nanometer under the rise that keeps level it
// does not, by whole numbers: rise x h > (span/2)^2.
func TestStableToTheNanometer(t *testing.T) {
	slides := func(h hang.Hanging, g hang.Given) bool {
		for _, n := range h.Notes(g, h.Lay(g), places) {
			if n.Code == hang.OnlyFriction {
				return true
			}
		}
		return false
	}
	tried := 0
	eachRandom(t, 3000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		h.By, h.Hooks, h.Taut = hang.Wire, 1, hang.Taut{By: hang.ByRise, Rise: in("1")}
		h.BelowRight = 0
		l := h.Lay(g)
		if l.StableRise <= 1 || l.StableRise >= explain.MaxLength {
			return
		}
		tried++
		stable := func(rise measure.Length) bool {
			left := new(big.Int).Mul(big.NewInt(int64(rise)), big.NewInt(int64(2*g.Outside.Height-4*l.Below.Left)))
			right := new(big.Int).Mul(big.NewInt(int64(l.Span)), big.NewInt(int64(l.Span)))
			return left.Cmp(right) > 0
		}
		if stable(l.StableRise-1) || !stable(l.StableRise+1) {
			t.Errorf("%v is not where it gets stable", l.StableRise)
		}
		h.Taut.Rise = l.StableRise
		if !slides(h, g) {
			t.Error("at that rise nothing is said")
		}
		h.Taut.Rise++
		if slides(h, g) {
			t.Error("a nanometer over it is said that it slides")
		}
	})
	if tried < 500 {
		t.Errorf("only %d pieces", tried)
	}
}

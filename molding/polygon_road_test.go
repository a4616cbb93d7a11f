package molding_test

import (
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// bits is how finely the second road is worked out.
const bits = 256

func big256(l measure.Length) *big.Float { return new(big.Float).SetPrec(bits).SetInt64(int64(l)) }

func op(f func(z, x, y *big.Float) *big.Float, x, y *big.Float) *big.Float {
	return f(new(big.Float).SetPrec(bits), x, y)
}

// offsetSides is the second road to the edges of rails: the panel's sides as lines,
// each moved outward by a number of half nanometers, and how far apart along it a line
// meets those before and after it. It knows no angles.
func offsetSides(panel plane.Polygon, halves []measure.Length) []*big.Float {
	add, sub, mul, quo := (*big.Float).Add, (*big.Float).Sub, (*big.Float).Mul, (*big.Float).Quo
	n := panel.Len()
	type line struct{ a, b, c, long *big.Float } // ax + by = c
	lines := make([]line, n)
	for i := range lines {
		s, e := panel.Corner(i), panel.Corner(i+1)
		a, b := big256(e.Y-s.Y), big256(s.X-e.X)
		if panel.Clockwise() {
			a, b = big256(s.Y-e.Y), big256(e.X-s.X)
		}
		long := new(big.Float).SetPrec(bits).Sqrt(op(add, op(mul, a, a), op(mul, b, b)))
		c := op(add, op(mul, a, big256(s.X)), op(mul, b, big256(s.Y)))
		lines[i] = line{a, b, op(add, c, op(quo, op(mul, long, big256(halves[i])), big256(2))), long}
	}
	type point struct{ x, y *big.Float }
	corners := make([]point, n)
	for i := range corners {
		l, k := lines[(i+n-1)%n], lines[i]
		det := op(sub, op(mul, l.a, k.b), op(mul, l.b, k.a))
		corners[i] = point{
			op(quo, op(sub, op(mul, l.c, k.b), op(mul, k.c, l.b)), det),
			op(quo, op(sub, op(mul, l.a, k.c), op(mul, k.a, l.c)), det),
		}
	}
	sides := make([]*big.Float, n)
	for i := range sides {
		from, to, l := corners[i], corners[(i+1)%n], lines[i]
		x, y := op(sub, to.x, from.x), op(sub, to.y, from.y)
		along := op(sub, op(mul, y, l.a), op(mul, x, l.b)) // the line runs along (-b, a), outward to its right
		if panel.Clockwise() {
			along = along.Neg(along)
		}
		sides[i] = op(quo, along, l.long)
	}
	return sides
}

// TestRailsByLines: rails worked out by angles against lines of 256 bits. The panel's
// turns are rounded to the nanodegree, its sides and the rails to the nanometer.
func TestRailsByLines(t *testing.T) {
	r := rand.New(rand.NewPCG(43, 44))
	compared := 0
	for range 1500 {
		f, panel, ok := chance(r)
		if !ok {
			continue
		}
		if r.IntN(2) == 0 {
			f.Allowance++ // half of it is no whole nanometer
		}
		p, err := f.Around(panel)
		if err != nil || !p.Closed() {
			continue
		}
		n := panel.Len()
		inner, outer := make([]measure.Length, n), make([]measure.Length, n)
		for i, rail := range p.Rails {
			inner[i] = f.Allowance - 2*rail.Lip
			outer[i] = inner[i] + 2*rail.Face
		}
		sight, outside := offsetSides(panel, inner), offsetSides(panel, outer)
		for i, rail := range p.Rails {
			least := 5 * measure.Degree // where faces that differ meet far out, a nanodegree counts
			if a, b := panel.Turn(i), panel.Turn(i+1); max(a, -a) < least || max(b, -b) < least {
				continue
			}
			compared++
			// What a nanodegree of turn comes to where a corner is sharp.
			slack := 1.001
			for _, e := range []molding.RailEnd{rail.Start, rail.Finish} {
				slack += float64(e.Joint) * float64(e.Joint) / float64(rail.Face) * 4e-11
			}
			for name, pair := range map[string]struct {
				got  measure.Length
				want *big.Float
			}{"sight edge": {rail.Sight, sight[i]}, "outer edge": {rail.Outer, outside[i]}} {
				if off, _ := op((*big.Float).Sub, big256(pair.got), pair.want).Float64(); off > slack || off < -slack {
					t.Fatalf("%s of rail %d around %v with %+v is %v, by lines off by %g nm of %g", name, i, panel.Corners(), f.Sections, pair.got, off, slack)
				}
			}
		}
	}
	if compared < 3000 {
		t.Errorf("only %d rails were compared", compared)
	}
}

// TestManySidesComeHome: closed frames of any number of sides, some with a face of
// each rail's own, either way round, turn once and come home to a nanometer a rail; a nanometer off
// each rail does not.
func TestManySidesComeHome(t *testing.T) {
	r := rand.New(rand.NewPCG(45, 46))
	wrong := 0
	for n := 3; n <= molding.MostCorners; n++ {
		for range 20 {
			corners := make([]plane.Point, n)
			for i := range corners {
				d := in("30") + measure.Length(r.Int64N(int64(in("1/2"))))
				a := measure.Turn / measure.Angle(n) * measure.Angle(i)
				corners[i] = plane.Point{X: d.Cos(a), Y: d.Sin(a)}
			}
			if r.IntN(2) == 0 {
				slices.Reverse(corners)
			}
			f := molding.PolygonFrame{Allowance: measure.Length(r.Int64N(int64(in("1/8"))))}
			f.Sections = []molding.Section{{Face: in("1"), Lip: in("1/4")}}
			if n <= 12 { // faces that differ do not meet where a corner hardly turns
				f.Sections = slices.Repeat(f.Sections, n)
				for i := range f.Sections {
					f.Sections[i].Face += measure.Length(r.Int64N(int64(in("1"))))
				}
			}
			p := rails(f, shape(plane.New(corners...)))
			if sum := total(p.Settings()); len(p.Settings()) != 2*n || sum != measure.Turn {
				t.Fatalf("%d sides: the settings add up to %v", n, sum)
			}
			home := func(sides []plane.Side) measure.Length {
				way := plane.Walk(plane.Point{}, 0, sides...)
				return measure.Hypot(way[n].X, way[n].Y)
			}
			if miss := home(p.Sides()); miss > measure.Length(n) {
				t.Fatalf("%d rails miss by %v", n, miss)
			}
			sides := p.Sides()
			sides[r.IntN(n)].Length += 2 * measure.Length(n)
			if home(sides) > measure.Length(n) {
				wrong++
			}
		}
	}
	if all := 20 * (molding.MostCorners - 2); wrong != all {
		t.Errorf("of %d frames with a rail too long, %d miss", all, wrong)
	}
}

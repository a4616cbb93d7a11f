package molding

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

const digits = 256 // binary

func number(v int64) *big.Float          { return new(big.Float).SetPrec(digits).SetInt64(v) }
func product(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(digits).Mul(a, b) }
func less(a, b *big.Float) *big.Float    { return new(big.Float).SetPrec(digits).Sub(a, b) }

// pi to 60 places (computed; any table has it).
var pi, _, _ = big.ParseFloat("3.141592653589793238462643383279502884197169399375105820974944", 10, digits, big.ToNearestEven)

// sinCos is by the two series, to some 60 places.
func sinCos(a measure.Angle) (sin, cos *big.Float) {
	x := new(big.Float).SetPrec(digits).Quo(product(number(int64(a)), pi), number(int64(measure.Turn/2)))
	sin, cos = number(0), number(0)
	term := number(1)
	for i := int64(0); i < 80; i++ {
		sum := cos
		if i%2 == 1 {
			sum = sin
		}
		if i%4 < 2 {
			sum.Add(sum, term)
		} else {
			sum.Sub(sum, term)
		}
		term = new(big.Float).SetPrec(digits).Quo(product(term, x), number(i+1))
	}
	return sin, cos
}

// TestPlanePrecision: before anything is rounded to the nanodegree, the plane of
// a cut agrees with the difference of the two fronts' normals, worked out to 60
// places, to 1e-12 degrees: over the whole domain, in each of the positions.
func TestPlanePrecision(t *testing.T) {
	if v, err := explain.Radius().Evaluate(); err != nil || v != explain.Of(radius) {
		t.Errorf("the radius of the formulas is %v %v", v, err)
	}
	r := rand.New(rand.NewPCG(1, 12))
	between := func(least, most measure.Angle) measure.Angle {
		switch r.IntN(8) {
		case 0:
			return least
		case 1:
			return most
		}
		return least + measure.Angle(r.Int64N(int64(most-least)))
	}
	for i := range 1500 {
		c := SlopedCorner{Plain: between(LeastPlain, MostPlain), Own: Pitch{between(0, measure.RightAngle), FromFlat}}
		c.Other = c.Own
		if i%2 == 0 {
			c.Own.Angle = between(LeastPitch, measure.RightAngle)
			c.Other.Angle = between(LeastPitch, measure.RightAngle)
		}
		if c.Own.Angle == 0 { // a flat frame: the normals agree
			continue
		}
		sinS, cosS := sinCos(c.Own.Angle)
		sinO, cosO := sinCos(c.Other.Angle)
		sinT, cosT := sinCos(2 * c.Plain)
		x, y, z := product(sinO, sinT), less(sinS, product(sinO, cosT)), less(cosS, cosO)
		rim := less(product(cosS, y), product(sinS, z))
		back := new(big.Float).SetPrec(digits).Add(product(sinS, y), product(cosS, z))
		check := func(name string, got, want [3]*big.Float) {
			// The angle between the two is their cross product over their lengths.
			var cross, a, b float64
			for k := range 3 {
				p, q := (k+1)%3, (k+2)%3
				v, _ := less(product(got[p], want[q]), product(got[q], want[p])).Float64()
				g, _ := got[k].Float64()
				w, _ := want[k].Float64()
				cross, a, b = cross+v*v, a+g*g, b+w*w
			}
			off := cross / a / b // squared
			if off > 1.745e-14*1.745e-14 {
				t.Errorf("%+v, %s: off by the root of %g", c, name, off)
			}
		}
		of := func(a, b, c measure.Length) [3]*big.Float {
			return [3]*big.Float{number(int64(a)), number(int64(b)), number(int64(c))}
		}
		p := c.plane()
		check("in the board", of(p.along, p.rim, p.back), [3]*big.Float{x, rim, back})
		if !c.equal() {
			q := c.propped()
			check("as it stands", of(q.along, q.fence, q.table), [3]*big.Float{x, y, z})
		}
	}
}

package measure_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestSineOf: a sine that is kept is the one that is worked out each time, for any
// length and angle.
func TestSineOf(t *testing.T) {
	r := rand.New(rand.NewPCG(41, 42))
	angles := []measure.Angle{0, 1, -1, math.MaxInt64, math.MinInt64, measure.RightAngle - 1, measure.RightAngle + 1}
	for i := measure.Angle(-24); i <= 24; i++ {
		angles = append(angles, i*measure.RightAngle/6)
	}
	for range 2000 {
		angles = append(angles, measure.Angle(r.Uint64()), measure.Angle(r.Int64N(int64(measure.Turn))))
	}
	for _, a := range angles {
		sin, cos := measure.SineOf(a), measure.CosineOf(a)
		for _, l := range []measure.Length{0, 1, -1, measure.Inch, math.MaxInt64, math.MinInt64, measure.Length(r.Uint64())} {
			if got, want := sin.Of(l), l.Sin(a); got != want {
				t.Fatalf("%v times the sine of %v is %v, want %v", l, a, got, want)
			}
			if got, want := cos.Of(l), l.Cos(a); got != want {
				t.Fatalf("%v times the cosine of %v is %v, want %v", l, a, got, want)
			}
		}
	}
	if got := (measure.Sine{}).Of(measure.Inch); got != 0 {
		t.Errorf("the zero sine makes %v", got)
	}
}

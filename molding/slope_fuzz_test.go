package molding_test

import (
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// FuzzSlope: no value panics, and where a corner passes its check its settings in
// the three positions are one plane.
func FuzzSlope(f *testing.F) {
	d := func(v float64) int64 { return int64(deg(v)) }
	f.Add(d(45), d(45), d(45), byte(0), d(35.5), d(30), int64(in("3")), int64(in("3/4")))
	f.Add(d(30), d(10), d(10), byte(3), d(29.62), d(4.98), int64(in("3")), int64(in("3/4")))
	f.Add(d(45), d(10), d(25), byte(3), d(24.666), d(42.896), int64(in("3")), int64(in("1/2")))
	f.Add(d(-36), d(60), d(60), byte(1), d(3), d(29), int64(in("3")), int64(0))
	f.Add(d(89), d(1), d(90), byte(0), d(0), d(0), int64(explain.MaxLength), int64(explain.MaxLength))
	f.Add(int64(math.MinInt64), int64(math.MaxInt64), int64(math.MinInt64), byte(2), int64(math.MinInt64), int64(math.MinInt64), int64(math.MinInt64), int64(math.MaxInt64))
	f.Fuzz(func(t *testing.T, plain, own, other int64, from byte, miter, tilt, face, thickness int64) {
		pitch := func(a int64, from byte) molding.Pitch {
			return molding.Pitch{Angle: measure.Angle(a), From: molding.PitchFrom(molding.FromFlat.Choices()[from%2])}
		}
		c := molding.SlopedCorner{Plain: measure.Angle(plain), Own: pitch(own, from), Other: pitch(other, from/2)}
		side := molding.SlopedSide{Pitch: c.Own, Face: measure.Length(face), Thickness: measure.Length(thickness)}
		set := molding.Setting{Miter: measure.Angle(miter), Tilt: measure.Angle(tilt)}
		saw := molding.Reach{Miter: measure.Angle(miter), Tilt: measure.Angle(tilt)}
		var s [3]molding.Setting
		for i, name := range molding.LaidFlat.Choices() {
			p := molding.Position(name)
			s[i] = c.Setting(p)
			c.Rounded(side, p, measure.Angle(tilt))
			c.Share(side, p, set)
			c.ReachNotes(p, saw, "/s")
			c.Explain(explain.Path("/"+name+"/tilt"), cornerPlaces)
		}
		rail := side.Rail(side.Face, c, c.Turned())
		molding.RimNotes(side, molding.SlopedSide{Pitch: c.Other, Face: side.Thickness, Thickness: side.Face}, side.Face, "/a", "/b")
		molding.PitchOfMiter(c.Plain, set.Miter)
		var pair, check explain.Checker
		molding.CheckPair(&pair, "/s", c.Plain, set, measure.Degree)
		c.Check(&check, "/c")
		side.Check(&check, "/s")
		if check.Problems() != nil {
			return
		}
		if inward := (molding.SlopedCorner{Plain: -c.Plain, Own: c.Own, Other: c.Other}).Setting(molding.LaidFlat); inward != (molding.Setting{Miter: -s[0].Miter, Tilt: -s[0].Tilt}) {
			t.Errorf("%+v: %v, inward %v", c, s[0], inward)
		}
		// What is toward the fence laid flat is toward the table on edge.
		rad := func(a measure.Angle) float64 { return float64(a) / 1e9 * math.Pi / 180 }
		fence := math.Cos(rad(s[0].Tilt)) * math.Sin(rad(s[0].Miter))
		if got := math.Sin(rad(s[1].Tilt)); math.Abs(got-fence) > 1e-10 {
			t.Errorf("%+v: flat %v, on edge %v", c, s[0], s[1])
		}
		along := math.Cos(rad(s[0].Tilt)) * math.Cos(rad(s[0].Miter))
		for _, other := range s[1:] {
			if got := math.Cos(rad(other.Tilt)) * math.Cos(rad(other.Miter)); math.Abs(got-along) > 1e-10 {
				t.Errorf("%+v: %v and %v", c, s[0], other)
			}
		}
		if rail.BackRim-rail.BackSight != rail.FrontRim-rail.FrontSight {
			t.Errorf("%+v: %+v", c, rail)
		}
	})
}

// FuzzChain: no ring and no chain panics; a ring is its chain.
func FuzzChain(f *testing.F) {
	for _, off := range []float64{0.8, -0.8, 0.5, 0.028} {
		f.Add(6, int64(in("12")), int64(in("2")), int64(deg(off)), int64(in("1/8")))
	}
	f.Add(3, int64(1), int64(1), int64(deg(20)), int64(0))
	f.Add(math.MinInt, int64(math.MinInt64), int64(math.MaxInt64), int64(math.MinInt64), int64(math.MinInt64))
	f.Add(math.MaxInt, int64(math.MaxInt64), int64(math.MinInt64), int64(math.MaxInt64), int64(math.MaxInt64))
	f.Fuzz(func(t *testing.T, n int, long, face, off, gap int64) {
		r := molding.Ring{Sides: n, Long: measure.Length(long), Face: measure.Length(face), Off: measure.Angle(off)}
		r.OffByWedge(measure.Length(gap), molding.Toe)
		r.Finest(measure.Length(gap))
		r.Notes(measure.Length(gap), "/r", "/l")
		r.Explain("/miss", "/r", "/l")
		j, e := r.Last(), r.Chain().End()
		var c explain.Checker
		if r.Check(&c, "/r"); c.Problems() != nil {
			return
		}
		// The chain is to a nanometer a rail, and so is a miter that is rounded.
		within := measure.Length(2*n) + r.Long/1_000_000
		if d := e.Miss - j.Miss; d > within || d < -within || j.Miss < 0 || j.Wedge < 0 {
			t.Errorf("%+v: %+v, as a chain %+v", r, j, e)
		}
	})
}

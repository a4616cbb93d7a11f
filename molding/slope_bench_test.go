package molding_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// BenchmarkSlopedFrame is all that a ticket says of a frame of twelve sloped
// sides: settings in the three positions, exact and to three steps, and lengths.
func BenchmarkSlopedFrame(b *testing.B) {
	side := molding.SlopedSide{Pitch: lean(10), Face: in("3"), Thickness: in("3/4")}
	b.ReportAllocs()
	for b.Loop() {
		c := molding.RegularSlopedCorner(12, side.Pitch)
		for _, p := range [...]molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
			if c.Setting(p).Miter == 0 {
				b.Fatal("no miter")
			}
			for _, step := range molding.SawSteps() {
				c.Rounded(side, p, step)
			}
		}
		if side.Rail(10*measure.Inch, c, c).BackRim == 0 {
			b.Fatal("no rail")
		}
	}
}

// BenchmarkSlopedRing is a frame of twelve sloped sides, each corner worked out for
// itself: the exact settings in the three positions, those to three steps in the one
// that is cut in, and the angle between the fronts; of each side its rail and its
// notes. It is to stay well below the 150 microseconds that a piece may take, also where
// no two pitches are alike.
func BenchmarkSlopedRing(b *testing.B) {
	const n = 12
	saw := molding.Reach{Miter: 50 * measure.Degree, Tilt: 45 * measure.Degree}
	for name, more := range map[string]float64{"equal": 0, "unequal": 0.25} {
		var sides [n]molding.SlopedSide
		var corners [n]molding.SlopedCorner
		for i := range sides {
			sides[i] = molding.SlopedSide{Pitch: lean(10 + float64(i)*more), Face: in("3"), Thickness: in("3/4")}
		}
		for i := range corners {
			corners[i] = molding.SlopedCorner{Plain: 15 * measure.Degree, Own: sides[i].Pitch, Other: sides[(i+1)%n].Pitch}
		}
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				for i, side := range sides {
					left, right := corners[(i+n-1)%n].Turned(), corners[i]
					for _, p := range [...]molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
						if right.Setting(p).Miter == 0 {
							b.Fatal("no miter")
						}
					}
					if right.RoundedToSteps(side, molding.LaidFlat)[0].Step == 0 {
						b.Fatal("no step")
					}
					rail := side.Rail(10*measure.Inch, left, right)
					if rail.BackRim == 0 || right.Dihedral() == 0 {
						b.Fatal("no rail")
					}
					right.ReachNotes(molding.LaidFlat, saw, "/corner")
					molding.RimNotes(side, sides[(i+1)%n], measure.Inch, "/own", "/other")
					side.CutNotes(rail, left, right, molding.LaidFlat, "/rail")
				}
			}
		})
	}
}

// BenchmarkTwelveCorners is twelve corners that all differ in pitch.
func BenchmarkTwelveCorners(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		for i := range 12 {
			c := molding.SlopedCorner{Plain: 15 * measure.Degree, Own: lean(10), Other: lean(11 + float64(i))}
			if c.Setting(molding.LaidFlat).Miter == 0 {
				b.Fatal("no miter")
			}
		}
	}
}

func BenchmarkExplainSlope(b *testing.B) {
	c := molding.RegularSlopedCorner(12, lean(10))
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := c.Explain("/flat/miter", cornerPlaces); !ok {
			b.Fatal("not explained")
		}
	}
}

func BenchmarkLastJoint(b *testing.B) {
	r := ring(12, "6", "2", 0.1)
	b.ReportAllocs()
	for b.Loop() {
		if r.Last().Miss == 0 {
			b.Fatal("no miss")
		}
	}
}

func BenchmarkFinest(b *testing.B) {
	r := ring(12, "6", "2", 0)
	gap := in("1/128")
	b.ReportAllocs()
	for b.Loop() {
		if byWedge, _ := r.Finest(gap); byWedge == 0 {
			b.Fatal("nothing is allowed")
		}
	}
}

func BenchmarkChainEnd(b *testing.B) {
	c := ring(12, "6", "2", 0.1).Chain()
	b.ReportAllocs()
	for b.Loop() {
		if c.End().Miss == 0 {
			b.Fatal("no miss")
		}
	}
}

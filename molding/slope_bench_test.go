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

package hang_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// FuzzLay: no value panics, and where a hanging passes its check the identities
// hold, every figure is explained and every change mends.
func FuzzLay(f *testing.F) {
	const longest = int64(explain.MaxLength)
	f.Add(byte(0), int64(in("20")), int64(in("24")), int64(in("7")), int64(in("1")), int64(30*measure.Degree), int64(in("4")), int64(in("3/4")), int64(lb("10")), int64(lbf("30")))
	f.Add(byte(5), int64(in("16")), int64(in("20")), int64(in("2 1/8")), int64(in("2")), int64(15*measure.Degree), int64(in("1 7/8")), int64(0), int64(lb("7.5")), int64(lbf("5")))
	f.Add(byte(9), int64(in("50 cm")), int64(in("40 cm")), int64(0), int64(0), int64(hang.LeastAngle), int64(in("52 cm")), int64(0), int64(newtons(10)), int64(0))
	f.Add(byte(30), longest, longest, longest, longest, int64(hang.MostAngle), longest, longest, int64(1)<<50, int64(explain.MaxForce))
	f.Add(byte(7), int64(3), int64(1), int64(0), int64(1), int64(hang.LeastAngle), int64(1), int64(1), int64(1), int64(1))
	f.Add(byte(14), int64(-1)<<63, int64(1)<<62, int64(-1), int64(-1)<<63, int64(-1)<<63, int64(1)<<62, int64(-1)<<63, int64(-1)<<63, int64(-1)<<63)
	f.Fuzz(func(t *testing.T, way byte, width, height, below, inset, angle, rise, nail, mass, rating int64) {
		h := hang.Usual(way&64 == 0)
		h.By = hang.Way(hang.Wire.Choices()[way%3])
		h.Taut = hang.Taut{
			By:    hang.TautBy(hang.ByRise.Choices()[way/3%3]),
			Angle: measure.Angle(angle), Rise: measure.Length(rise), Wire: measure.Length(rise),
		}
		h.Hooks = 1 + int(way/9%2)
		h.Below, h.Inset, h.NailAbove = measure.Length(below), measure.Length(inset), measure.Length(nail)
		h.BelowRight = measure.Length(rise)
		if way&32 != 0 {
			h.Spread = measure.Length(inset)
		}
		h.Ratings.WireBreaks, h.Ratings.HangerHolds, h.Ratings.HookHolds = measure.Force(rating), measure.Force(rating), measure.Force(rating/2)
		g := hang.Given{
			Outside: measure.Size{Width: measure.Length(width), Height: measure.Length(height)}, Face: measure.Length(inset),
			Mass: measure.Mass(mass), Heaviest: measure.Mass(mass), MassKnown: way&128 == 0,
		}
		l := h.Lay(g)
		notes := h.Notes(g, l, places)
		var c explain.Checker
		h.Check(&c, "")
		c.Positive("/outside/width", g.Outside.Width)
		c.Positive("/outside/height", g.Outside.Height)
		c.Positive("/face", g.Face)
		if c.Problems() != nil || mass < 0 || mass > int64(10_000*measure.Kilogram) {
			h.Explain(g, "/wire", places)
			return
		}
		checkIdentities(t, h, g, l)
		checkWorkings(t, h, g)
		checkChanges(t, h, g, notes)
	})
}

package mat_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// FuzzLay: no value panics, and where a mat passes its check the identities
// hold and every figure is explained.
func FuzzLay(f *testing.F) {
	const nothing, longest = int64(0), int64(explain.MaxLength)
	f.Add(byte(0), int64(in("11 3/8")), int64(in("15 1/4")), int64(in("1/8")), int64(in("2 1/2")), int64(in("3")), int64(in("1/4")), int64(in("1/8")), nothing, int64(45*measure.Degree), int64(in("1/4")), byte(1))
	f.Add(byte(13), longest, longest, nothing, longest, longest, longest, longest, int64(mat.MaxRatio), int64(mat.LeastBevel), longest, byte(2))
	f.Add(byte(33), int64(1000), longest, int64(10), int64(1), int64(995), nothing, nothing, nothing, int64(90*measure.Degree), int64(3), byte(4)) // a find: hardly any board to center on
	f.Add(byte(35), int64(1), int64(1), nothing, int64(1), int64(3), int64(1), int64(3), int64(7), int64(mat.MostBevel), nothing, byte(5))
	f.Add(byte(14), int64(-1)<<63, int64(1)<<62, int64(-1), int64(-1)<<63, int64(-1)<<63, int64(1)<<62, int64(-1)<<63, int64(-1)<<63, int64(-1)<<63, int64(-1)<<63, byte(5))
	f.Fuzz(func(t *testing.T, way byte, width, height, each, border, other, lip, allowance, extra, bevel, reveal int64, boards byte) {
		art := measure.Size{Width: measure.Length(width), Height: measure.Length(height)}
		border2 := measure.Length(other)
		m := mat.Mat{
			Thickness: measure.Millimeter, Bevel: measure.Angle(bevel),
			Window: mat.Window{By: mat.WindowBy(mat.ByGap.Choices()[way%3]), EachSide: measure.Length(each),
				Size: measure.Size{Width: border2, Height: measure.Length(extra)}},
			Borders: mat.Borders{By: mat.BordersBy(mat.ByCut.Choices()[way/3%3]), To: mat.BordersTo(mat.ToTop.Choices()[way/36%2]), Weight: mat.Weight(mat.Extra.Choices()[way/9%4]),
				Sides: measure.Sides{Left: measure.Length(border), Right: border2, Top: measure.Length(border), Bottom: border2},
				Extra: measure.Length(extra), Ratio: explain.Ratio(extra), Board: art},
		}
		for i := range boards % (mat.MaxUnder + 1) {
			m.Under[i] = mat.UnderMat{Thickness: measure.Millimeter, Bevel: measure.Angle(bevel), By: mat.RevealBy(mat.ByLine.Choices()[boards/3%2]),
				Reveal: measure.Length(reveal), Trim: measure.Length(each)}
		}
		g := mat.Given{Least: art, Greatest: art, Lip: measure.Sides{Left: measure.Length(lip), Right: border2, Top: measure.Length(lip), Bottom: measure.Length(lip)}, Allowance: measure.Length(allowance)}
		l := m.Lay(g)
		m.Notes(g, l, places)
		var c explain.Checker
		m.Check(&c, "/mat", g, "/art")
		c.NotNegative("/lip", measure.Length(lip))
		c.NotNegative("/allowance", measure.Length(allowance))
		c.Positive("/art/width", art.Width)
		c.Positive("/art/height", art.Height)
		if c.Problems() != nil {
			m.Explain(g, "/cut/bottom", places)
			return
		}
		checkIdentities(t, m, g, l)
		for path, want := range figures(m, l) {
			w, ok := m.Explain(g, path, places)
			if got, err := w.Formula.Evaluate(); !ok || err != nil || got != explain.Of(want) {
				t.Errorf("%s: %v %v, want %v", path, got, err, want)
			}
		}
	})
}

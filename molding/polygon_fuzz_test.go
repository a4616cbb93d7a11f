package molding_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// FuzzPolygonFrame: around any panel, whatever is checked is worked or refused, its
// closed frames turn once, and every figure has its formula.
func FuzzPolygonFrame(f *testing.F) {
	f.Add(uint64(1), int64(in("2")), int64(in("1/4")), int64(in("1/8")), int64(0))
	f.Add(uint64(2), int64(in("4")), int64(in("3 1/4")), int64(1), int64(50*measure.Degree))
	f.Add(uint64(3), int64(explain.MaxLength), int64(explain.MaxLength-1), int64(explain.MaxLength), int64(measure.RightAngle))
	f.Add(uint64(4), int64(1), int64(0), int64(0), int64(1))
	f.Fuzz(func(t *testing.T, seed uint64, face, lip, allowance, reach int64) {
		frame, panel, ok := chance(rand.New(rand.NewPCG(seed, 1)))
		if !ok {
			return
		}
		frame.Sections[0] = molding.Section{Face: measure.Length(face), Lip: measure.Length(lip)}
		frame.Allowance, frame.Reach = measure.Length(allowance), measure.Angle(reach)
		var c explain.Checker
		frame.Check(&c, "/f", panel.Len())
		p, err := frame.Around(panel)
		if len(c.Problems()) > 0 || err != nil {
			return
		}
		frame.Notes(p, polygonPlaces)
		if p.Closed() && total(p.Settings()) != measure.Turn {
			t.Fatalf("the settings add up to %v", total(p.Settings()))
		}
		explained(t, polygonFigures(p), func(figure explain.Path) (explain.Working, bool) { return frame.Explain(p, figure, polygonPlaces) })
	})
}

// FuzzOutOfSquare: any four sides and diagonals are refused or make an outline with
// a window in it.
func FuzzOutOfSquare(f *testing.F) {
	f.Add(int64(in("16")), int64(in("20")), int64(in("16")), int64(in("20")), int64(in("25 5/8")), int64(0))
	f.Add(int64(in("16")), int64(in("20 1/8")), int64(in("15 7/8")), int64(in("20")), int64(0), int64(in("25 1/2")))
	f.Add(int64(1), int64(1), int64(1), int64(1), int64(1), int64(1))
	f.Add(int64(15), int64(28), int64(14), int64(26), int64(14), int64(22))
	f.Fuzz(func(t *testing.T, bottom, right, top, left, rising, falling int64) {
		o := molding.OutOfSquare{
			Bottom: measure.Length(bottom), Right: measure.Length(right), Top: measure.Length(top), Left: measure.Length(left),
			Rising: measure.Length(rising), Falling: measure.Length(falling)}
		art, err := o.Outline(measure.Millimeter)
		if err != nil {
			return
		}
		if art.Turning() != measure.Turn {
			t.Fatalf("%+v turns by %v", o, art.Turning())
		}
		if g, err := molding.GapsIn(size("16", "20"), art); err != nil || g.Least.Left > g.Most.Left {
			t.Fatalf("%+v: %+v, %v", o, g, err)
		}
		upright, err := art.LargestUpright()
		if err == nil && upright.Size.Width > 0 && upright.Size.Height > 0 && !art.ContainsRectangle(upright, 0) {
			t.Fatalf("%+v is not in %+v", upright, o)
		}
	})
}

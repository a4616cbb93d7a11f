package molding_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// FuzzFrame: no value panics, and where a frame passes its check its numbers
// agree with one another and the changes of its notes mend them.
func FuzzFrame(f *testing.F) {
	const longest = int64(explain.MaxLength)
	f.Add(int64(in("1 1/4")), int64(in("1/4")), int64(in("1/8")), int64(in("1/2")), int64(in("16 1/2")), int64(in("20 7/8")), int64(in("1/4")), int64(0), int64(0), int64(in("1/4")), int64(in("3/4")), byte(0))
	f.Add(longest, longest, longest, longest, longest, longest, longest, longest, longest, longest, longest, byte(3))
	f.Add(int64(3), int64(1), int64(0), int64(0), int64(1), int64(1), int64(0), int64(1), int64(1), int64(1), int64(1), byte(1))
	f.Add(int64(-1)<<63, int64(1)<<62, int64(-1)<<63, int64(-1), int64(-1)<<63, int64(1)<<62, int64(-1)<<63, int64(-1)<<63, int64(5), int64(-1)<<63, int64(1)<<62, byte(5))
	f.Add(int64(in("1/2")), int64(0), int64(0), int64(in("1 1/2")), int64(in("16")), int64(in("20")), int64(in("3/4")), int64(0), int64(0), int64(in("1/4")), int64(in("1")), byte(1))
	f.Fuzz(func(t *testing.T, face, lip, allowance, rabbet, width, height, clearance, cutWidth, cutHeight, gap, ledge int64, kind byte) {
		b := bench{
			frame: molding.Frame{
				Kind: molding.Kind(molding.Floater.Choices()[kind%2]), Made: molding.Made(molding.ToFit.Choices()[kind/2%3]), Wood: "wood",
				Face: measure.Length(face), Lip: measure.Length(lip), Allowance: measure.Length(allowance), Rabbet: measure.Length(rabbet),
				Gap: measure.Length(gap), Ledge: measure.Length(ledge),
			},
			pkg:  measure.Size{Width: measure.Length(width), Height: measure.Length(height)},
			cut:  molding.Cut{Clearance: measure.Length(clearance), Size: measure.Size{Width: measure.Length(cutWidth), Height: measure.Length(cutHeight)}},
			hold: in("1/8"), points: in("1/8"), parts: []measure.Length{measure.Length(clearance)},
		}
		notes := b.notes()
		floats(b)
		r := b.frame.Around(b.pkg)
		b.frame.Explain(r, "/outside/width", places)
		if saw, edge := molding.Miter(measure.Angle(face)); saw+edge != measure.RightAngle {
			t.Errorf("a corner of %d: saw %v, edge %v", face, saw, edge)
		}
		var c explain.Checker
		b.frame.Check(&c, "/frame")
		b.cut.Check(&c, "/cut")
		c.Positive("/pkg/width", b.pkg.Width)
		c.Positive("/pkg/height", b.pkg.Height)
		if c.Problems() != nil {
			return
		}
		if r.Outside != r.Sight.Grown(2*b.frame.Face) || b.frame.OpeningOf(r.Outside) != r.Opening || r.Footage != 2*(r.Outside.Width+r.Outside.Height) {
			t.Errorf("around %+v: %+v", b.pkg, r)
		}
		fit := b.frame.Fit(r.Opening, b.cut)
		if fit.Play.Width != r.Opening.Width-fit.Size.Width || fit.Bite.Width+fit.Play.Width != b.frame.Lip {
			t.Errorf("in %+v: %+v", r.Opening, fit)
		}
		if b.frame.Room() != r.Opening.Width-b.pkg.Width {
			t.Errorf("room %v in %+v", b.frame.Room(), r)
		}
		if b.frame.Kind == molding.Floater { // nothing lies in a rabbet
			checkFloatChanges(t, b)
			return
		}
		for _, n := range notes {
			for _, change := range n.Changes {
				for _, again := range b.with(t, change).notes() {
					if again.Path == n.Path && again.Level != explain.Caution {
						t.Errorf("%s, %s: still %s", n.Code, change.Text(measure.Format{}), again.Code)
					}
				}
			}
		}
	})
}

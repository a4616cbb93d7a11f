package molding_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// A bench is one frame around a package with one part in it, to try changes on.
type bench struct {
	frame  molding.Frame
	pkg    measure.Size
	cut    molding.Cut
	hold   measure.Length
	points measure.Length
	parts  []measure.Length
}

func (b bench) opening() measure.Size { return b.frame.Around(b.pkg).Opening }

// notes are all that is said about the bench.
func (b bench) notes() []explain.Note {
	opening := b.opening()
	ns := b.frame.Notes(b.frame.Around(b.pkg), in("1/8"), places)
	ns = append(ns, b.frame.FitNotes(opening, molding.Lying{
		Fit: b.frame.Fit(opening, b.cut), Cut: b.cut, Part: part, Worked: worked, Bite: b.hold,
	}, places)...)
	return append(ns, b.frame.DepthNotes(b.frame.DepthOf(b.points, b.parts...), b.points, "/pieces/0/depth", places)...)
}

// with is the bench after a change.
func (b bench) with(t *testing.T, c explain.Change) bench {
	t.Helper()
	to := measure.Length(c.To.N)
	switch c.Path {
	case places.Frame + "/allowance":
		b.frame.Allowance = to
	case places.Frame + "/lip":
		b.frame.Lip = to
	case places.Frame + "/rabbet":
		b.frame.Rabbet = to
	case part + "/clearance":
		b.cut.Clearance = to
	case part + "/size/width":
		b.cut.Size.Width = to
	case part + "/size/height":
		b.cut.Size.Height = to
	default:
		t.Errorf("a change of %s", c.Path)
	}
	if c.To.Kind != explain.LengthKind {
		t.Errorf("a change to %+v", c.To)
	}
	return b
}

func (b bench) check(t *testing.T) {
	t.Helper()
	var c explain.Checker
	b.frame.Check(&c, "/frame")
	b.cut.Check(&c, "/cut")
	if err := c.Problems().Err(); err != nil {
		t.Errorf("not allowed: %v", err)
	}
}

func randomBench(r *rand.Rand) bench {
	b := bench{frame: randomFrame(r), pkg: randomSize(r), hold: randomLength(r, in("3/16")), points: randomLength(r, in("1/4"))}
	for range r.IntN(4) {
		b.parts = append(b.parts, randomLength(r, in("1/2")))
	}
	if r.IntN(4) == 0 {
		b.frame.Allowance = 0
	}
	if r.IntN(4) == 0 {
		b.hold = b.frame.Lip
	}
	if r.IntN(2) == 0 {
		b.cut.Clearance = randomLength(r, in("1/2"))
	}
	if r.IntN(2) == 0 {
		b.cut.Size = b.opening().Grown(in("1/16"))
		b.cut.Size.Width -= randomLength(r, in("1/2"))
		b.cut.Size.Height -= randomLength(r, in("1/2"))
	}
	return b
}

// has reports whether the same was said among notes.
func has(notes []explain.Note, n explain.Note) bool {
	return slices.ContainsFunc(notes, func(m explain.Note) bool { return m.Code == n.Code && m.Path == n.Path })
}

// TestChangesMend: each change by itself takes its note away and leaves a frame
// that passes its check; none leaves a part without play that had some.
func TestChangesMend(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 24))
	mended := make(map[explain.Code]int)
	for range 20_000 {
		b := randomBench(r)
		b.check(t)
		before := b.notes()
		for _, n := range before {
			for _, c := range n.Changes {
				better := b.with(t, c)
				better.check(t)
				mended[n.Code]++
				for _, again := range better.notes() {
					if again.Path == n.Path && again.Level != explain.Caution {
						t.Errorf("%s, %s: still %s", n.Text(sixteenths), change(c), again.Text(sixteenths))
					}
					if again.Code == molding.NoPlay && !has(before, again) {
						t.Errorf("%s, %s: now %s", n.Text(sixteenths), change(c), again.Text(sixteenths))
					}
				}
				if t.Failed() {
					t.Fatalf("bench %+v\nopening %+v", b, b.opening())
				}
			}
		}
	}
	for _, code := range []explain.Code{
		molding.NoAllowance, molding.DoesNotGoIn, molding.NoPlay, molding.Tight, molding.DropsOut, molding.ThinBite,
		molding.DepthUnknown, molding.Proud, molding.LittleRoom,
	} {
		if mended[code] < 5 {
			t.Errorf("%s: only %d changes were tried", code, mended[code])
		}
	}
}

// TestBoundIsTheLimit: the change's value is the last that does. One nanometer
// past it, away from its bound, the note is back.
func TestBoundIsTheLimit(t *testing.T) {
	r := rand.New(rand.NewPCG(24, 12))
	tried := 0
	for range 5000 {
		b := randomBench(r)
		for _, n := range b.notes() {
			for _, c := range n.Changes {
				switch c.Bound {
				case explain.AtLeast:
					c.To.N--
				case explain.AtMost:
					c.To.N++
				default:
					continue
				}
				tried++
				back := false
				for _, again := range b.with(t, c).notes() {
					back = back || again.Path == n.Path
				}
				if !back {
					t.Fatalf("%s: %s would do as well\nbench %+v", n.Text(sixteenths), change(c), b)
				}
			}
		}
	}
	if tried < 1000 {
		t.Errorf("only %d limits were tried", tried)
	}
}

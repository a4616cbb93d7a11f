package framing_test

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// FuzzRead reads any bytes. What is refused has sorted problems; what is read
// can be worked, written, and read again.
func FuzzRead(f *testing.F) {
	for _, text := range sampleFiles(f) {
		f.Add(text)
	}
	for _, text := range sampleFilesIn(f, "refused") {
		f.Add(text)
	}
	for _, c := range refusedOrders {
		if len(c.text) < 10_000 {
			f.Add([]byte(c.text))
		}
	}
	for _, text := range acceptedOrders {
		if len(text) < 10_000 {
			f.Add([]byte(text))
		}
	}
	for _, text := range fullOrders {
		f.Add([]byte(text))
	}
	for _, c := range refusedShapes() {
		f.Add([]byte(c.text))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		order, err := framing.Read(data)
		ps := problems(t, err)
		sortedPaths(t, ps)
		plan, workErr := framing.Work(order)
		if err != nil {
			if _, err := json.Marshal(plan); err != nil {
				t.Error(err)
			}
			return
		}
		if workErr != nil {
			t.Fatalf("Read takes what Work refuses: %v", workErr)
		}
		if text := marshal(t, plan); !json.Valid(text) {
			t.Fatalf("the plan is no JSON: %s", text)
		}
		again, err := framing.Read(marshal(t, order))
		if err != nil || !same(t, order, again) {
			t.Fatalf("written and read again, the order differs (%v):\n%s\n%s", err, marshal(t, order), marshal(t, again))
		}
		for i := range min(len(plan.Pieces), 2) {
			for _, path := range plan.Figures(i) {
				if w, ok := plan.Explain(path); !ok || w.Path != path {
					t.Fatalf("%s has no working", path)
				}
			}
		}
	})
}

// FuzzWork works orders of any numbers. Where nothing is wrong with one, its
// figures keep the laws of the bench.
func FuzzWork(f *testing.F) {
	d := newDice(10)
	for range 20 {
		seed := make([]byte, 0, 8*64)
		for range 64 {
			seed = binary.LittleEndian.AppendUint64(seed, uint64(d.length(0, 600*mm)))
		}
		f.Add(seed)
	}
	f.Add([]byte{})
	f.Add(bytes.Repeat([]byte{0xff}, 300))
	f.Add(bytes.Repeat([]byte{0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x7f}, 40))
	f.Add(bytes.Repeat([]byte{0, 0, 0, 0, 0, 0, 0, 0x80}, 40))
	f.Fuzz(func(t *testing.T, data []byte) {
		order := (&feed{data}).order()
		before := marshal(t, order)
		plan, err := framing.Work(order)
		ps := problems(t, err)
		sortedPaths(t, ps)
		if _, err := json.Marshal(plan); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(before, marshal(t, order)) {
			t.Fatal("Work changes its order")
		}
		// A problem of the units or the shop concerns every piece; of the job, the
		// date and the manner of showing, none.
		common := slices.ContainsFunc(ps, func(p explain.Problem) bool {
			return !slices.Contains([]string{"pieces", "job", "date", "show"}, p.Path.Segments()[0])
		})
		for i, p := range plan.Pieces {
			if clean := !common && len(ps.Under(explain.Path("/pieces").Index(i))) == 0; clean != p.Worked {
				t.Fatalf("piece %d is worked: %v, and its problems are %v", i, p.Worked, ps)
			}
		}
		if err != nil {
			return
		}
		for i, p := range plan.Pieces {
			l := law{order.Pieces[i], p, order.Show.Fineness, nil}
			l.frames()
			l.layers()
			if !order.Pieces[i].Mat.IsZero() {
				l.mat()
			}
			for _, broken := range l.broken {
				t.Errorf("piece %d: %s", i, broken)
			}
		}
		checkWorkings(t, plan)
	})
}

// feed hands out numbers from fuzzed bytes.
type feed struct{ data []byte }

func (f *feed) int64() int64 {
	var word [8]byte
	n := copy(word[:], f.data)
	f.data = f.data[n:]
	return int64(binary.LittleEndian.Uint64(word[:]))
}

// length is mostly one that a frame may have, up to 17 m; a word that begins or
// ends the range of int64 is taken as it is.
func (f *feed) length() measure.Length {
	l := measure.Length(f.int64())
	switch top := byte(l >> 56); top {
	case 0xff, 0x7f, 0x80:
		return l
	}
	return l & (1<<34 - 1)
}

func (f *feed) size() measure.Size { return measure.Size{Width: f.length(), Height: f.length()} }

// choose takes a word of a list, or now and then one that is in none.
func choose[T ~string](f *feed, list []string) T {
	i := byte(f.int64())
	if i == 0xff {
		return "other word"
	}
	return T(list[int(i)%len(list)])
}

func (f *feed) order() framing.Order {
	o := framing.Order{
		Version: framing.OrderVersion, Units: choose[framing.Units](f, framing.Inches.Choices()),
		Show: framing.ShowAs(choose[framing.As](f, framing.AsFeet.Choices())),
	}
	if steps := measure.Steps(o.Show.As.Style()); len(steps) > 0 {
		o.Show.Fineness = steps[uint64(f.int64())%uint64(len(steps))]
	}
	o.Shop = framing.Shop{Allowance: f.length(), Overlap: f.length(), Points: f.length(), Bite: f.length()}
	for range 1 + uint64(f.int64())%2 {
		o.Pieces = append(o.Pieces, f.piece())
	}
	return o
}

func (f *feed) frame() molding.Frame {
	return molding.Frame{
		Kind: choose[molding.Kind](f, molding.Floater.Choices()), Face: f.length(), Lip: f.length(), Rabbet: f.length(),
		Allowance: f.length(), Gap: f.length(), Ledge: f.length(), Height: f.length(),
		Made: choose[molding.Made](f, molding.ToFit.Choices()), Wood: choose[molding.Wood](f, molding.Wood("").Choices()),
	}
}

func (f *feed) piece() framing.Piece {
	p := framing.Piece{Quantity: 1}
	p.Art = framing.Art{Kind: choose[framing.ArtKind](f, framing.Paper.Choices()),
		Width: f.length(), Height: f.length(), Varies: f.size(), Thickness: f.length()}
	p.Frame = f.frame()
	parts := f.int64()
	if parts&8 != 0 {
		p.Liner = f.frame()
	}
	if parts&16 != 0 {
		p.Spacer = glazing.Spacer{Under: choose[glazing.SpacerUnder](f, glazing.UnderMat.Choices()), Width: f.length(), Depth: f.length()}
	}
	if parts&32 != 0 {
		p.Hang = hang.Usual(parts&64 != 0)
		p.Hang.By, p.Hang.Hooks = choose[hang.Way](f, hang.Rings.Choices()), 1+int(uint64(f.int64())%2)
		p.Hang.Below, p.Hang.Inset, p.Hang.Spread, p.Hang.Taut.Rise = f.length(), f.length(), f.length(), f.length()
	}
	if parts&128 != 0 {
		p.Art.Mass, p.Art.Stretch = measure.Mass(f.int64()), framing.Stretch{Turn: f.length(), Bar: f.length()}
	}
	if parts&1 != 0 {
		p.Mat = mat.Mat{Thickness: f.length(), Bevel: measure.Angle(f.int64())}
		for i := range uint64(f.int64()) % 3 {
			p.Mat.Under[i] = mat.UnderMat{Thickness: f.length(), Bevel: measure.Angle(f.int64()), By: choose[mat.RevealBy](f, mat.BySeen.Choices()), Reveal: f.length(), Trim: f.length()}
		}
		p.Mat.Window = mat.Window{By: choose[mat.WindowBy](f, mat.ByGap.Choices()), EachSide: f.length(), Size: f.size()}
		p.Mat.Borders = mat.Borders{
			By:     choose[mat.BordersBy](f, mat.ByCut.Choices()),
			To:     choose[mat.BordersTo](f, mat.ToTop.Choices()),
			Sides:  measure.Sides{Left: f.length(), Right: f.length(), Top: f.length(), Bottom: f.length()},
			Weight: choose[mat.Weight](f, mat.Extra.Choices()), Extra: f.length(), Ratio: explain.Ratio(f.int64()), Board: f.size(),
		}
	}
	if parts&2 != 0 {
		p.Glazing = glazing.Pane{Material: glazing.Glass, Thickness: f.length(), Clearance: f.length(), Size: f.size()}
	}
	if parts&4 != 0 {
		p.Backing = molding.Sheet{Material: molding.Board, Thickness: f.length()}
		p.Backing.Cut = molding.Cut{Clearance: f.length(), Size: f.size()}
	}
	return p
}

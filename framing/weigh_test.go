package framing_test

import (
	"math/big"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// TestRailMass weighs frames another way: the section is cut into strips, and each
// strip of the four rails is a ring between two rectangles, as thick as the wood
// is there. Source: geometry.
func TestRailMass(t *testing.T) {
	for _, kind := range []molding.Kind{molding.Rabbeted, molding.Floater} {
		o := framing.NewOrder(framing.Inches)
		p := framing.NewPiece(o.Shop)
		p.Art = framing.Art{Kind: framing.Panel, Width: in(t, "16"), Height: in(t, "20"), Thickness: in(t, "1/4")}
		f := &p.Frame
		f.Kind, f.Face, f.Rabbet, f.Height, f.Wood = kind, in(t, "1 1/2"), in(t, "1/2"), in(t, "7/8"), "ash_white"
		if kind == molding.Floater {
			f.Gap, f.Ledge = in(t, "1/4"), in(t, "3/4")
		} else {
			f.Lip = in(t, "1/4")
		}
		o.Pieces = []framing.Piece{p}
		plan := work(t, o).Pieces[0]
		ring := func(outer, inner measure.Size, thick measure.Length) *big.Int {
			area := new(big.Int).Mul(big.NewInt(int64(outer.Width)), big.NewInt(int64(outer.Height)))
			area.Sub(area, new(big.Int).Mul(big.NewInt(int64(inner.Width)), big.NewInt(int64(inner.Height))))
			return area.Mul(area, big.NewInt(int64(thick)))
		}
		frame := plan.Frame
		outside, opening, sight := frame.Outside.Exact(), frame.Opening.Exact(), frame.Sight.Exact()
		volume := ring(outside, opening, f.Height)
		if kind == molding.Floater {
			volume.Add(volume, ring(opening, opening.Grown(-2*f.Ledge), f.Height-f.Rabbet))
		} else {
			volume.Add(volume, ring(opening, sight, f.Height-f.Rabbet))
		}
		ash, _ := material.Of("ash_white")
		mass := volume.Mul(volume, big.NewInt(int64(ash.Nominal)))
		mass.Quo(mass, new(big.Int).Exp(big.NewInt(10), big.NewInt(24), nil))
		for _, part := range plan.Mass.Parts {
			if part.Part != framing.FrameLayer {
				continue
			}
			if d := int64(part.Mass.Exact) - mass.Int64(); d < -8 || d > 8 { // each box is rounded to a milligram
				t.Errorf("a %s weighs %v, by its rings %v mg", kind, part.Mass.Exact, mass)
			}
		}
	}
}

// TestMassesAddUp: the total is the parts, and the heaviest is no lighter.
func TestMassesAddUp(t *testing.T) {
	d := newDice(21)
	for range 500 {
		for _, p := range work(t, d.order(1)).Pieces {
			var total, heaviest measure.Mass
			for _, part := range p.Mass.Parts {
				total, heaviest = total+part.Mass.Exact, heaviest+part.Heaviest.Exact
				if part.Heaviest.Exact < part.Mass.Exact || part.Mass.Exact < 0 || part.Mass.Shown < part.Mass.Exact {
					t.Fatalf("%s weighs %v, at most %v, shown %v", part.Part, part.Mass.Exact, part.Heaviest.Exact, part.Mass.Shown)
				}
			}
			if total != p.Mass.Total.Exact || heaviest != p.Mass.Heaviest.Exact {
				t.Fatalf("the parts weigh %v and %v, the piece %v and %v", total, heaviest, p.Mass.Total.Exact, p.Mass.Heaviest.Exact)
			}
			if len(p.Mass.Parts)+len(p.Mass.Unknown) < 2 {
				t.Fatalf("a piece of %d parts", len(p.Mass.Parts)+len(p.Mass.Unknown))
			}
		}
	}
}

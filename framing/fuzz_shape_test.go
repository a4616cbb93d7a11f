package framing_test

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// FuzzShape works orders of any outlines, faces and pitches. Where nothing is wrong
// with one, its formulas work out, and its rails come home.
func FuzzShape(f *testing.F) {
	d := newDice(41)
	for by := range 8 {
		seed := binary.LittleEndian.AppendUint64(nil, uint64(by))
		for range 100 {
			seed = binary.LittleEndian.AppendUint64(seed, uint64(d.length(60*mm, 200*mm)))
		}
		f.Add(seed)
	}
	f.Add([]byte{})
	f.Add(bytes.Repeat([]byte{0xff}, 300))
	f.Add(bytes.Repeat([]byte{0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x7f}, 60))
	f.Add(bytes.Repeat([]byte{0, 0, 0, 0, 0, 0, 0, 0x80}, 60))
	f.Fuzz(func(t *testing.T, data []byte) {
		order := (&feed{data}).shaped()
		before := marshal(t, order)
		plan, err := framing.Work(order)
		sortedPaths(t, problems(t, err))
		if _, err := json.Marshal(plan); err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(before, marshal(t, order)) {
			t.Fatal("Work changes its order")
		}
		if err != nil {
			return
		}
		checkWorkings(t, plan)
		checkShape(t, plan.Pieces[0].Shape)
	})
}

// shaped is an order of one piece of any shape.
func (f *feed) shaped() framing.Order {
	shape := uint64(f.int64())
	o := framing.NewOrder(framing.Inches)
	o.Shop.Saw = framing.Saw{Miter: f.angle(), Tilt: f.angle(), Off: f.angle() % framing.MostOff, Seen: f.length() >> 10}
	p := framing.NewPiece(o.Shop)
	p.Art.Kind, p.Art.Thickness, p.Frame.Height = framing.Panel, 6*mm, 20*mm
	a, n := &p.Art, 4
	switch shape % 8 {
	case 0, 1:
		a.Outline = framing.NewOutline()
		a.Outline.By, a.Outline.Sides, a.Outline.Size = framing.ByRegular, 3+int(uint64(f.int64())%64), f.length()
		a.Outline.Across, a.Outline.Stand = choose[plane.Across](f, plane.Flats.Choices()), choose[plane.Stand](f, plane.OnSide.Choices())
		if shape%8 == 1 {
			a.Outline.By, a.Width, a.Height = framing.ByAround, f.length(), f.length()
		}
		n = a.Outline.Sides
	case 2, 3:
		n = 3 + int(uint64(f.int64())%5)
		a.Outline = framing.NewOutline()
		a.Outline.By, a.Outline.Within = framing.ByEdges, f.length()>>8
		for range n {
			a.Outline.Edges = append(a.Outline.Edges, f.length())
		}
		for i := range n - 3 {
			a.Outline.Diagonals = append(a.Outline.Diagonals, plane.Diagonal{From: int(uint64(f.int64()) % 3), To: 2 + i, Length: f.length()})
		}
	case 4:
		n = 3 + int(uint64(f.int64())%5)
		a.Outline = framing.NewOutline()
		a.Outline.By = framing.ByAngles
		for i := range n - 1 {
			a.Outline.Edges = append(a.Outline.Edges, f.length())
			if i > 0 {
				a.Outline.Angles = append(a.Outline.Angles, 3*f.angle())
			}
		}
	case 5:
		a.Sides = molding.OutOfSquare{Bottom: f.length(), Right: f.length(), Top: f.length(), Left: f.length(), Rising: f.length(), Falling: f.length()}
	default:
		a.Width, a.Height, p.Mat = f.length(), f.length(), mat.Mat{}
	}
	p.Frame.Face, p.Frame.Lip, p.Frame.Allowance = f.length()>>4, f.length()>>8, f.length()>>8
	if shape&8 != 0 {
		for range n {
			p.Frame.Faces = append(p.Frame.Faces, f.length()>>4)
		}
		if shape&16 != 0 {
			p.Frame.Faces[0] = 0
		}
	}
	if shape&32 != 0 {
		p.Frame.Slope.Thickness = f.length() >> 6
		for range draw(newDice(shape), 1, n) {
			p.Frame.Slope.Pitches = append(p.Frame.Slope.Pitches, molding.Pitch{Angle: f.angle(), From: choose[molding.PitchFrom](f, molding.FromFlat.Choices())})
		}
	}
	o.Pieces = []framing.Piece{p}
	return o
}

// angle is mostly from 0 to 90 degrees.
func (f *feed) angle() measure.Angle {
	a := measure.Angle(f.int64())
	if byte(a>>56) == 0xff {
		return a
	}
	return measure.Angle(uint64(a) % uint64(measure.RightAngle+1))
}

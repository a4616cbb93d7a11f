package plane_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// TestLargestUprightByHand: where the largest rectangle is known.
func TestLargestUprightByHand(t *testing.T) {
	for _, row := range []struct {
		name string
		p    plane.Polygon
		want string // square inches
	}{
		{"box", must(plane.Box(measure.Size{Width: 16 * inch, Height: 20 * inch})), "320"},
		// Half a triangle's surface, on any of its sides.
		{"right triangle", must(plane.New(points(0, 0, 6, 0, 0, 4)...)), "6"},
		{"triangle", must(plane.New(points(0, 0, 8, 0, 3, 5)...)), "10"},
		// A square on its corner: half of it.
		{"diamond", must(plane.New(points(4, 0, 8, 4, 4, 8, 0, 4)...)), "16"},
		// A parallelogram that leans by 1 over 4: all four sides touch.
		{"leaning", must(plane.New(points(0, 0, 8, 0, 9, 4, 1, 4)...)), "28"},
		// Leaning by more than half, it is better left lower: (8 - h/1) h.
		{"leaning far", must(plane.New(points(0, 0, 8, 0, 14, 6, 6, 6)...)), "16"},
	} {
		r, err := row.p.LargestUpright()
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		want, _ := measure.ParseArea(row.want, measure.SquareInches)
		edge := measure.Area(4 * r.Size.UnitedLength() / 1_000_000 * 2) // 4 nm along the edges
		if got := r.Size.Area(); got > want || got < want-edge-1 || r.Turned != 0 {
			t.Errorf("%s: %v, want %v", row.name, got, want)
		}
		if !row.p.ContainsRectangle(r, 0) {
			t.Errorf("%s: %+v is not inside", row.name, r)
		}
	}
}

// quad is a chance quadrilateral near a rectangle.
func quad(r *rand.Rand, w, h, off measure.Length) plane.Polygon {
	d := func() measure.Length { return measure.Length(r.Int64N(int64(2*off+1))) - off }
	return must(plane.New(
		plane.Point{X: d(), Y: d()}, plane.Point{X: w + d(), Y: d()},
		plane.Point{X: w + d(), Y: h + d()}, plane.Point{X: d(), Y: h + d()}))
}

// TestLargestByPerturbation: the rectangle lies inside; a search around it finds none
// that is larger.
func TestLargestByPerturbation(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 14))
	for range 15 {
		p := quad(r, 16*inch, 20*inch, inch/2)
		best, err := p.LargestUpright()
		if err != nil {
			t.Fatal(err)
		}
		if !p.ContainsRectangle(best, 0) {
			t.Fatalf("%+v is not inside", best)
		}
		x := func(step measure.Length) measure.Length { return measure.Length(r.Int64N(int64(2*step+1))) - step }
		for step := measure.Length(10); step < inch; step *= 4 {
			for range 40 {
				other := best
				other.Corner.X += x(step)
				other.Corner.Y += x(step)
				other.Size.Width += x(step)
				other.Size.Height += x(step)
				if other.Size.Area() > best.Size.Area()+measure.Area(8*best.Size.UnitedLength()/1_000_000) && p.ContainsRectangle(other, 0) {
					t.Fatalf("%+v is larger than %+v", other, best)
				}
			}
		}
		turned, err := p.LargestTurned(-2*deg, 2*deg, deg/1_000_000)
		if err != nil || turned.Size.Area() < best.Size.Area() {
			t.Fatalf("turned, %v is smaller than %v: %v", turned.Size.Area(), best.Size.Area(), err)
		}
		if !p.ContainsRectangle(turned, 2) {
			t.Fatalf("%+v is not inside", turned)
		}
		for range 12 { // no other angle gives a larger one
			at := -2*deg + measure.Angle(r.Int64N(int64(4*deg)))
			other, err := p.LargestTurned(at, at, 1)
			if err != nil || other.Size.Area() > turned.Size.Area()+measure.Area(8*best.Size.UnitedLength()/1_000_000) {
				t.Fatalf("at %v there is %v, and %v at %v (%v)", at, other.Size.Area(), turned.Size.Area(), turned.Turned, err)
			}
		}
	}
}

// TestLargestTurnedBack: a rectangle that lies askew comes out whole.
func TestLargestTurnedBack(t *testing.T) {
	for _, by := range []measure.Angle{0, deg / 3, -deg, 123456789} {
		p := must(must(plane.Box(measure.Size{Width: 16 * inch, Height: 20 * inch})).Turned(by))
		r, err := p.LargestTurned(-2*deg, 2*deg, deg/1000)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "width", r.Size.Width, 16*inch, 3)
		near(t, "height", r.Size.Height, 20*inch, 3)
		if d := r.Turned - by; d < -1 || d > 1 {
			t.Errorf("turned by %v, want %v", r.Turned, by)
		}
	}
}

func TestLargestRefused(t *testing.T) {
	if _, err := must(plane.New(outlines[2].corners...)).LargestUpright(); code(t, err) != plane.NotConvex {
		t.Errorf("a bracket: %v", err)
	}
	p := must(plane.Regular(plane.MaxInscribed, plane.Flats, inch))
	if r, err := p.LargestUpright(); err != nil || !p.ContainsRectangle(r, 0) {
		t.Errorf("64 corners: %v", err)
	}
	if _, err := must(plane.Regular(plane.MaxInscribed+1, plane.Flats, inch)).LargestUpright(); code(t, err) != explain.TooMany {
		t.Errorf("65 corners: %v", err)
	}
	for _, row := range [][2]measure.Angle{{deg, 0}, {-measure.Turn - 1, 0}, {0, measure.Turn + 1}} {
		if _, err := p.LargestTurned(row[0], row[1], 1); code(t, err) != explain.OutOfRange {
			t.Errorf("from %v to %v: %v", row[0], row[1], err)
		}
	}
}

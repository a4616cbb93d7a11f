package plane_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// TestRegularAround: a polygon of that size holds the rectangle where it is said to
// lie, and one a hair smaller does not.
func TestRegularAround(t *testing.T) {
	for n := 3; n <= 24; n++ {
		for _, inner := range []measure.Size{{Width: 8 * inch, Height: 10 * inch}, {Width: 10 * inch, Height: 8 * inch}, {Width: 10 * inch, Height: 10 * inch}, {Width: 4 * inch, Height: 20 * inch}} {
			ways, err := plane.RegularAround(n, inner)
			if err != nil || len(ways) != 2 {
				t.Fatalf("n = %d: %v, %v", n, ways, err)
			}
			for _, way := range ways {
				holds := func(flats, off measure.Length) bool {
					p := must(must(plane.Regular(n, plane.Flats, flats)).Turned(way.Turned))
					c := plane.Point{X: way.Middle.X - inner.Width/2, Y: way.Middle.Y - inner.Height/2}
					if way.Middle.X != 0 {
						c.X += off
					} else if way.Middle.Y != 0 {
						c.Y += off
					}
					return p.ContainsRectangle(plane.Rectangle{Corner: c, Size: inner}, 1)
				}
				if !holds(way.Flats, 0) {
					t.Errorf("n = %d, %s: %v does not hold %v", n, way.Stand, way.Flats, inner)
				}
				for _, off := range []measure.Length{-inch, -1000, -100, 0, 100, 1000, inch} {
					if holds(way.Flats-20, off) {
						t.Errorf("n = %d, %s: %v less 20 nm holds %v, moved by %v", n, way.Stand, way.Flats, inner, off)
					}
				}
				if n%2 == 0 && way.Middle != (plane.Point{}) {
					t.Errorf("n = %d: the middle lies at %v", n, way.Middle)
				}
			}
		}
	}
}

// TestNoBetterBetween: with an even number of sides, no way to turn between needs
// less. The second road is to turn the rectangle and ask for its extent.
func TestNoBetterBetween(t *testing.T) {
	for n := 4; n <= 16; n += 2 {
		for _, inner := range []measure.Size{{Width: 8 * inch, Height: 10 * inch}, {Width: 10 * inch, Height: 10 * inch}, {Width: 4 * inch, Height: 20 * inch}} {
			ways, _ := plane.RegularAround(n, inner)
			least := min(ways[0].Flats, ways[1].Flats)
			for step := range measure.Angle(360) {
				box := must(plane.Box(inner))
				var flats measure.Length
				for i := range measure.Angle(n / 2) {
					flats = max(flats, must(box.Turned(step*deg/measure.Angle(n)+i*measure.Turn/measure.Angle(n))).Size().Height)
				}
				if flats < least-1 {
					t.Fatalf("n = %d: %v around %v, turned by %v/%d deg, and not %v", n, flats, inner, step, n, least)
				}
			}
		}
	}
}

// TestAroundByHand: figures that follow from a drawing.
func TestAroundByHand(t *testing.T) {
	for _, row := range []struct {
		n      int
		w, h   string
		stand  plane.Stand
		flats  string // inches
		places int
	}{
		{4, "8", "10", plane.OnSide, "10.000", 3},
		{4, "8", "10", plane.OnPoint, "12.728", 3}, // 18 / root 2
		{3, "10", "10", plane.OnSide, "12.440", 3}, // 2/3 of 10 + 5 root 3: the height is three ways to a side
		{6, "10", "10", plane.OnSide, "13.660", 3}, // 10 cos 30 + 10 sin 30
		{8, "8", "10", plane.OnSide, "12.728", 3},  // 18 cos 45
	} {
		ways, err := plane.RegularAround(row.n, measure.Size{Width: in(row.w), Height: in(row.h)})
		if err != nil {
			t.Fatal(err)
		}
		for _, way := range ways {
			if way.Stand == row.stand && inches(way.Flats, row.places) != row.flats {
				t.Errorf("n = %d, %s: %s, want %s", row.n, way.Stand, inches(way.Flats, row.places), row.flats)
			}
		}
	}
}

func TestAroundRefused(t *testing.T) {
	size := measure.Size{Width: inch, Height: inch}
	for _, row := range []struct {
		n     int
		inner measure.Size
		code  explain.Code
	}{
		{2, size, explain.TooFew},
		{plane.MaxAround + 1, size, explain.TooMany},
		{plane.MaxAround, size, ""},
		{plane.MaxAround - 1, size, ""},
		{5, measure.Size{Width: inch}, plane.NoLength},
		{5, measure.Size{Width: -1, Height: inch}, explain.OutOfRange},
		{5, measure.Size{Width: inch, Height: explain.MaxLength + 1}, explain.OutOfRange},
	} {
		if _, err := plane.RegularAround(row.n, row.inner); code(t, err) != row.code {
			t.Errorf("%d around %v: %v, want %q", row.n, row.inner, err, row.code)
		}
	}
}

package plane_test

import (
	"errors"
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// arches whose radius and sweep follow from triangles of whole numbers.
var arches = []struct {
	name      string
	arch      plane.Arch
	radius    measure.Length
	sweep     string // degrees, six decimals
	springing measure.Length
	pieces    int
}{
	{"half round", plane.Arch{plane.HalfRound, 400 * mm, 700 * mm, 0}, 200 * mm, "180.000000", 500 * mm, 4},
	{"half round, said", plane.Arch{plane.HalfRound, 400 * mm, 700 * mm, 200 * mm}, 200 * mm, "180.000000", 500 * mm, 4},
	{"half a disc", plane.Arch{plane.HalfRound, 400 * mm, 200 * mm, 0}, 200 * mm, "180.000000", 0, 2},
	// 5 - 12 - 13: a chord of 24 and a rise of 8; twice the angle of 12 over 5.
	{"segmental", plane.Arch{plane.Segmental, 240 * mm, 300 * mm, 80 * mm}, 130 * mm, "134.760270", 220 * mm, 4},
	// The rest of the same circle: a rise of 18.
	{"horseshoe", plane.Arch{plane.Horseshoe, 240 * mm, 300 * mm, 180 * mm}, 130 * mm, "225.239730", 120 * mm, 4},
	{"equilateral", plane.Arch{plane.Pointed, 400 * mm, 700 * mm, 0}, 400 * mm, "60.000000", 353589838, 5},
	// 3 - 4 - 5: middles 10 inside of the far sides, (16 - 10)^2 + 8^2 = 10^2 for half of the width.
	{"drop", plane.Arch{plane.Pointed, 160 * mm, 300 * mm, 80 * mm}, 80 * mm, "90.000000", 220 * mm, 5},
	{"lancet", plane.Arch{plane.Pointed, 160 * mm, 400 * mm, 240 * mm}, 400 * mm, "36.869898", 160 * mm, 5},
}

func TestArches(t *testing.T) {
	for _, row := range arches {
		a := row.arch
		if err := a.Check(); err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		if a.Radius() != row.radius || degrees(a.Sweep(), 6) != row.sweep || a.Springing() != row.springing {
			t.Errorf("%s: radius %v, sweep %s, springing %v", row.name, a.Radius(), degrees(a.Sweep(), 6), a.Springing())
		}
		c, err := a.Contour()
		if err != nil || c.Len() != row.pieces {
			t.Errorf("%s: %d pieces, %v", row.name, c.Len(), err)
			continue
		}
		// The second road, in floats: two sides, a foot, and an arc or two.
		sweep, r, arcs := float64(a.Sweep())/float64(deg)*math.Pi/180, float64(row.radius), 1.0
		if a.Kind == plane.Pointed {
			arcs = 2
		}
		wide, side := float64(a.Width), float64(row.springing)
		if row.name == "equilateral" {
			side = float64(a.Height) - wide*math.Sqrt(3)/2
		}
		near(t, row.name+" is long", c.Length(), measure.Length(math.Round(wide+2*side+arcs*r*sweep)), 2)
		area := wide*side + arcs*r*r*(sweep-math.Sin(sweep))/2
		if arcs == 2 { // and the triangle between the two chords
			area += wide * (float64(a.Height) - side) / 2
		}
		if got := float64(c.Area()); math.Abs(got-area/1e6) > 2 {
			t.Errorf("%s encloses %v, want %.0f", row.name, c.Area(), area/1e6)
		}
		least, most := c.Bounds()
		over := measure.Length(0)
		if a.Kind == plane.Horseshoe {
			over = row.radius - a.Width/2
		}
		if least != (plane.Point{X: -over}) || most != (plane.Point{X: a.Width + over, Y: a.Height}) {
			t.Errorf("%s lies between %v and %v", row.name, least, most)
		}
		if c.Size() != (measure.Size{Width: a.Width + 2*over, Height: a.Height}) {
			t.Errorf("%s measures %v", row.name, c.Size())
		}
	}
}

// TestRadiusByCorners: the circle through both ends of the chord and the crown, by
// the surface of that triangle: abc / 4A. It runs through the odd and the slight.
func TestRadiusByCorners(t *testing.T) {
	for _, kind := range []plane.ArchKind{plane.Segmental, plane.Horseshoe} {
		for _, w := range []measure.Length{10010001, 333333333, 1219200001} {
			for _, part := range []float64{0.01, 0.3, 0.49, 0.51, 0.9, 3} {
				rise := measure.Length(float64(w) * part)
				a := plane.Arch{kind, w, w * 4, rise}
				if a.Check() != nil {
					if (kind == plane.Segmental) == (2*rise < w) && rise > 10 {
						t.Errorf("%+v: %v", a, a.Check())
					}
					continue
				}
				leg := math.Hypot(float64(w)/2, float64(rise))
				want := float64(w) * leg * leg / (2 * float64(w) * float64(rise))
				if got := float64(a.Radius()); math.Abs(got-want) > 0.51+want*1e-15 {
					t.Errorf("%+v: radius %.0f, want %.3f", a, got, want)
				}
				if got, want := float64(a.Sweep())/float64(deg), 4*math.Atan2(float64(rise), float64(w)/2)*180/math.Pi; math.Abs(got-want) > 3e-9 {
					t.Errorf("%+v: sweep %.9f, want %.9f", a, got, want)
				}
			}
		}
	}
}

func TestArchRefused(t *testing.T) {
	for _, row := range []struct {
		name  string
		arch  plane.Arch
		code  explain.Code
		at    int
		limit measure.Length
	}{
		{"nothing", plane.Arch{}, plane.NoLength, 0, 0},
		{"no height", plane.Arch{plane.HalfRound, 4, 0, 0}, plane.NoLength, 1, 0},
		{"no kind", plane.Arch{"", 4, 4, 0}, explain.NotAChoice, -1, 0},
		{"too wide", plane.Arch{plane.HalfRound, plane.Reach + 1, 4, 0}, explain.OutOfRange, 0, plane.Reach},
		{"too high", plane.Arch{plane.HalfRound, 4, plane.Reach + 1, 0}, explain.OutOfRange, 1, plane.Reach},
		{"lower than the rise", plane.Arch{plane.HalfRound, 400, 199, 0}, explain.OutOfRange, 1, 200},
		{"an odd one too", plane.Arch{plane.HalfRound, 401, 200, 0}, explain.OutOfRange, 1, 201},
		{"a half that is none", plane.Arch{plane.HalfRound, 400, 500, 201}, explain.OutOfRange, 2, 200},
		{"segmental without a rise", plane.Arch{plane.Segmental, 400 * mm, 500 * mm, 0}, explain.OutOfRange, 2, 200001},
		{"segmental as high as half", plane.Arch{plane.Segmental, 400, 500, 200}, explain.OutOfRange, 2, 199},
		{"flatter than any circle", plane.Arch{plane.Segmental, 400 * mm, 500 * mm, 200000}, explain.OutOfRange, 2, 200001},
		{"horseshoe without a rise", plane.Arch{plane.Horseshoe, 400, 500, 0}, explain.OutOfRange, 2, 201},
		{"horseshoe of just half", plane.Arch{plane.Horseshoe, 400, 500, 200}, explain.OutOfRange, 2, 201},
		{"pointed, too low", plane.Arch{plane.Pointed, 400, 500, 199}, explain.OutOfRange, 2, 200},
		{"below nothing", plane.Arch{plane.Pointed, 400, 500, -5}, explain.OutOfRange, 2, 200},
		{"past the plane", plane.Arch{plane.HalfRound, 400, 500, plane.Reach + 1}, explain.OutOfRange, 2, 200},
		{"steeper than any circle", plane.Arch{plane.Pointed, 1 * mm, 50 * measure.Meter, 400 * mm}, explain.OutOfRange, 2, 316227370},
	} {
		err := row.arch.Check()
		var e *plane.Error
		if !errors.As(err, &e) || e.Code != row.code || e.At != row.at {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		if row.limit != 0 && e.Limit != explain.Of(row.limit) {
			t.Errorf("%s: the limit is %v, want %v", row.name, e.Limit, row.limit)
		}
		if _, again := row.arch.Contour(); again == nil || row.arch.Radius() != 0 || row.arch.Sweep() != 0 || row.arch.Springing() != 0 {
			t.Errorf("%s has an outline all the same", row.name)
		}
		// What is said to do does.
		fixed, l := row.arch, row.limit
		switch {
		case l == 0:
			continue
		case e.At == 0:
			fixed.Width = l
		case e.At == 1:
			fixed.Height = l
		default:
			fixed.Rise = l
		}
		if err := fixed.Check(); errors.As(err, &e) && e.At == row.at {
			t.Errorf("%s: what is accepted is refused: %v", row.name, err)
		}
	}
}

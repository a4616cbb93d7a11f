package plane_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func points(xy ...measure.Length) []plane.Point {
	var ps []plane.Point
	for i := 0; i < len(xy); i += 2 {
		ps = append(ps, plane.Point{X: xy[i] * inch, Y: xy[i+1] * inch})
	}
	return ps
}

// outlines in whole inches: surface and turns are counted by hand.
var outlines = []struct {
	name    string
	corners []plane.Point
	area    int64 // in square inches, halves
	turns   []measure.Angle
}{
	{"square", points(0, 0, 4, 0, 4, 4, 0, 4), 32, []measure.Angle{90, 90, 90, 90}},
	{"right triangle", points(0, 0, 4, 0, 0, 4), 16, []measure.Angle{135, 135, 90}},
	{"angle bracket", points(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4), 14, []measure.Angle{90, 90, -90, 90, 90, 90}},
	{"house", points(0, 0, 4, 0, 4, 2, 2, 4, 0, 2), 24, []measure.Angle{90, 45, 90, 45, 90}},
	{"arrow", points(0, 0, 2, 2, 4, 0, 2, 4), 8, nil},
	{"straight corner", points(0, 0, 2, 0, 4, 0, 4, 4, 0, 4), 32, []measure.Angle{0, 90, 90, 90, 90}},
	{"notch", points(0, 0, 4, 0, 4, 4, 3, 4, 3, 1, 1, 1, 1, 4, 0, 4), 20, []measure.Angle{90, 90, 90, -90, -90, 90, 90, 90}},
}

func TestOutlines(t *testing.T) {
	for _, row := range outlines {
		for _, corners := range [][]plane.Point{row.corners, reversed(row.corners)} {
			p, err := plane.New(corners...)
			if err != nil {
				t.Fatalf("%s: %v", row.name, err)
			}
			if want := measure.Area(row.area) * measure.SquareInch / 2; p.Area() != want {
				t.Errorf("%s encloses %v, want %v", row.name, p.Area(), want)
			}
			if p.Turning() != measure.Turn {
				t.Errorf("%s turns by %v", row.name, p.Turning())
			}
			if !slices.Equal(p.Corners(), corners) || p.Len() != len(corners) || p.Corner(-1) != corners[len(corners)-1] {
				t.Errorf("%s has the corners %v, want %v", row.name, p.Corners(), corners)
			}
			var sum measure.Length
			for i, s := range p.Sides() {
				a, b := corners[i], corners[(i+1)%len(corners)]
				if want := measure.Hypot(b.X-a.X, b.Y-a.Y); s.Length != want || p.Diagonal(i, i+1) != want {
					t.Errorf("%s: side %d is %v, want %v", row.name, i, s.Length, want)
				}
				if s != p.Side(i) || s.Turn != p.Turn(i+1) || p.Interior(i+1) != 180*deg-s.Turn {
					t.Errorf("%s: side %d is %v and %v", row.name, i, s, p.Side(i))
				}
				sum += s.Length
			}
			if p.Length() != sum {
				t.Errorf("%s is %v long, want %v", row.name, p.Length(), sum)
			}
		}
		p := must(plane.New(row.corners...))
		if p.Clockwise() || !must(plane.New(reversed(row.corners)...)).Clockwise() {
			t.Errorf("%s runs clockwise: %t", row.name, p.Clockwise())
		}
		for i, turn := range row.turns {
			if p.Side(i).Turn != turn*deg {
				t.Errorf("%s turns by %v after side %d, want %v", row.name, p.Side(i).Turn, i, turn*deg)
			}
		}
		if convex := !slices.ContainsFunc(row.turns, func(a measure.Angle) bool { return a < 0 }); row.turns != nil && convex != p.Convex() {
			t.Errorf("%s is convex: %t", row.name, p.Convex())
		}
	}
}

func TestRefused(t *testing.T) {
	far := plane.Reach / inch
	for _, row := range []struct {
		name      string
		corners   []plane.Point
		code      explain.Code
		at, other int
	}{
		{"nothing", nil, explain.TooFew, -1, -1},
		{"two corners", points(0, 0, 1, 0), explain.TooFew, -1, -1},
		{"too many", make([]plane.Point, plane.MaxCorners+1), explain.TooMany, -1, -1},
		{"doubled point", points(0, 0, 1, 0, 1, 0, 0, 1), plane.NoLength, 1, -1},
		{"doubled point at the end", points(0, 0, 1, 0, 0, 1, 0, 0), plane.NoLength, 3, -1},
		{"doubled point later", points(0, 0, 4, 0, 2, 2, 4, 4, 0, 4, 2, 2), plane.Crosses, 1, 4},
		{"all in one place", points(1, 1, 1, 1, 1, 1), plane.NoLength, 0, -1},
		{"bow tie", points(0, 0, 4, 4, 4, 0, 0, 4), plane.Crosses, 0, 2},
		{"touches a side", points(0, 0, 4, 0, 4, 4, 2, 0, 0, 4), plane.Crosses, 0, 3},
		{"lies on a side", points(0, 0, 4, 0, 4, 4, 3, 0, 1, 0, 0, 4), plane.Crosses, 0, 4},
		{"flat", points(0, 0, 4, 0, 2, 0), plane.Reverses, 1, -1},
		{"spike", points(0, 0, 4, 0, 4, 4, 4, 9, 4, 4, 0, 4), plane.Reverses, 3, -1},
		{"too far right", points(0, 0, far+1, 0, 0, 1), plane.Far, 1, -1},
		{"too far down", points(0, 0, 1, 0, 0, -far-1), plane.Far, 2, -1},
		{"five-point star in one go", points(0, 10, 6, -8, -10, 3, 10, 3, -6, -8), plane.Crosses, 1, 3},
	} {
		p, err := plane.New(row.corners...)
		var e *plane.Error
		if !errors.As(err, &e) || e.Code != row.code || e.At != row.at || e.Other != row.other {
			t.Errorf("%s: %v (%+v), want %s at %d and %d", row.name, err, e, row.code, row.at, row.other)
			continue
		}
		if p.Len() != 0 || explain.English(string(e.Code)) == string(e.Code) {
			t.Errorf("%s: %s has no English, or there is an outline", row.name, e.Code)
		}
		problem := e.Problem("/outline")
		if want := explain.Path("/outline"); problem.Code != e.Code || e.At < 0 && problem.Path != want || e.At >= 0 && problem.Path != want.Index(e.At) {
			t.Errorf("%s: the problem is %v", row.name, problem)
		}
	}
}

// TestByNanometers: a hair decides, and exactly.
func TestByNanometers(t *testing.T) {
	touching := points(0, 0, 4, 0, 4, 4, 2, 0, 0, 4)
	touching[3].Y = 1
	if _, err := plane.New(touching...); err != nil {
		t.Errorf("a nanometer above the side: %v", err)
	}
	touching[3].Y = -1
	if _, err := plane.New(touching...); code(t, err) != plane.Crosses {
		t.Errorf("a nanometer below the side: %v", err)
	}
	flat := points(0, 0, 4, 0, 2, 0)
	flat[2].Y = 1
	p, err := plane.New(flat...)
	if err != nil || p.Turning() != measure.Turn || p.Area() != 51 /* 4 in x 1 nm, halved */ {
		t.Errorf("a nanometer high: %v, %v, %v", err, p.Turning(), p.Area())
	}
}

// TestZero: the zero Polygon has nothing, and says so.
func TestZero(t *testing.T) {
	var p plane.Polygon
	low, high := p.Bounds()
	if p.Len() != 0 || p.Length() != 0 || p.Area() != 0 || p.Turning() != 0 || low != high || p.Size() != (measure.Size{}) ||
		p.Clockwise() || p.Contains(plane.Point{}) || p.ContainsRectangle(plane.Rectangle{}, 0) || len(p.Corners())+len(p.Sides()) != 0 {
		t.Error("a zero polygon has something")
	}
	if p.Corner(3) != (plane.Point{}) || p.Side(-1) != (plane.Side{}) || p.Turn(0) != 0 || p.Interior(2) != 180*deg || p.Diagonal(0, 1) != 0 {
		t.Error("a zero polygon has corners")
	}
	if _, err := p.Offset(1); code(t, err) != explain.TooFew {
		t.Errorf("moved: %v", err)
	}
	if _, err := p.LargestUpright(); code(t, err) != explain.TooFew {
		t.Errorf("a rectangle in it: %v", err)
	}
	if q, err := p.Turned(deg); err != nil || q.Len() != 0 {
		t.Errorf("turned: %v", err)
	}
}

// TestIsACopy: who changes what he got changes nothing.
func TestIsACopy(t *testing.T) {
	corners := slices.Clone(outlines[0].corners)
	p := must(plane.New(corners...))
	corners[0].X = 77
	p.Corners()[1].X = 77
	p.Sides()[0].Length = 77
	if p.Corner(0) != outlines[0].corners[0] || p.Corner(1) != outlines[0].corners[1] || p.Side(0).Length != 4*inch {
		t.Error("the outline changed")
	}
}

// TestAreaAgainstRat: the surface by the shoelace in fractions of any size.
func TestAreaAgainstRat(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		corners := spread(r, 3+r.IntN(40), inch/4, 40*measure.Meter)
		p, err := plane.New(corners...)
		if err != nil {
			continue
		}
		sum := new(big.Int)
		for i, a := range corners {
			b := corners[(i+1)%len(corners)]
			sum.Add(sum, new(big.Int).Mul(big.NewInt(int64(a.X)), big.NewInt(int64(b.Y))))
			sum.Sub(sum, new(big.Int).Mul(big.NewInt(int64(a.Y)), big.NewInt(int64(b.X))))
		}
		want := new(big.Rat).SetFrac(sum.Abs(sum), big.NewInt(2_000_000)).FloatString(0)
		if got := big.NewInt(int64(p.Area())).String(); got != want {
			t.Fatalf("%v encloses %s, want %s", corners, got, want)
		}
	}
}

// TestTurnedAndMoved: a quarter turn takes corners to corners; no turn and no move
// changes sides, surface or turns.
func TestTurnedAndMoved(t *testing.T) {
	for _, row := range outlines {
		p := must(plane.New(row.corners...))
		q := must(p.Turned(90 * deg))
		for i, c := range p.Corners() {
			if want := (plane.Point{X: -c.Y, Y: c.X}); q.Corner(i) != want {
				t.Errorf("%s: corner %d goes to %v, want %v", row.name, i, q.Corner(i), want)
			}
		}
		m := must(must(p.Turned(33333333333)).Moved(plane.Point{X: inch, Y: -inch}))
		if !slices.Equal(m.Sides(), p.Sides()) || m.Area()-p.Area() > 1 || p.Area()-m.Area() > 1 {
			t.Errorf("%s changed: %v and %v", row.name, m.Area(), p.Area())
		}
		again := must(plane.New(m.Corners()...))
		if again.Turning() != measure.Turn {
			t.Errorf("%s, turned, turns by %v", row.name, again.Turning())
		}
		for i := range p.Len() {
			near(t, row.name+", turned", again.Side(i).Length, p.Side(i).Length, 2)
		}
	}
	p := must(plane.Box(measure.Size{Width: plane.Reach, Height: plane.Reach}))
	if _, err := p.Moved(plane.Point{X: 1}); code(t, err) != plane.Far {
		t.Errorf("moved out of reach: %v", err)
	}
	if _, err := p.Moved(plane.Point{X: plane.Reach + 1}); code(t, err) != plane.Far {
		t.Errorf("moved by more than the reach: %v", err)
	}
	if _, err := p.Turned(deg); code(t, err) != plane.Far {
		t.Errorf("turned out of reach: %v", err)
	}
}

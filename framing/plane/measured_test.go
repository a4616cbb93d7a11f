package plane_test

import (
	"errors"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func TestTriangles(t *testing.T) {
	t.Run("POLY-07", func(t *testing.T) {
		p := must(plane.Measured(ins("16", "16", "22"), nil, 0))
		for i, want := range []string{"46.57", "86.87", "46.57"} {
			if got := degrees(p.Interior(i), 2); got != want {
				t.Errorf("corner %d measures %s, want %s", i, got, want)
			}
		}
		for i, want := range ins("16", "16", "22") {
			if got := p.Side(i).Length; got != want {
				t.Errorf("side %d is %v, want %v", i, got, want)
			}
		}
		for _, sides := range [][]measure.Length{ins("16", "16", "32"), ins("40", "16", "16"), ins("16", "33", "16")} {
			if _, err := plane.Measured(sides, nil, 0); code(t, err) != plane.NoTriangle {
				t.Errorf("%v: %v", sides, err)
			}
		}
	})
	// Pythagorean triples are exact.
	for _, row := range [][4]measure.Length{{3, 4, 5, 90}, {5, 12, 13, 90}, {7, 24, 25, 90}, {1, 1, 1, 60}, {7, 8, 13, 120}, {5, 8, 7, 60}} {
		p := must(plane.Measured([]measure.Length{row[0] * inch, row[1] * inch, row[2] * inch}, nil, 0))
		if got, want := p.Interior(1), measure.Angle(row[3])*deg; got != want {
			t.Errorf("%v has a corner of %v, want %v", row[:3], got, want)
		}
	}
}

// TestTriangleByNanometers: a hair decides.
func TestTriangleByNanometers(t *testing.T) {
	if _, err := plane.Measured([]measure.Length{inch, inch, 2 * inch}, nil, 0); code(t, err) != plane.NoTriangle {
		t.Errorf("flat: %v", err)
	}
	p, err := plane.Measured([]measure.Length{inch, inch, 2*inch - 1}, nil, 0)
	if err != nil || p.Turning() != measure.Turn || p.Side(2).Length != 2*inch-1 {
		t.Errorf("a nanometer less: %v", err)
	}
	var e *plane.Error
	_, err = plane.Measured([]measure.Length{inch, 5 * inch, 2 * inch}, nil, 0)
	if !errors.As(err, &e) || e.At != 1 || e.Other != 2 || e.Given != explain.Of(5*inch) || e.Limit != explain.Of(3*inch-1) || e.Bound != explain.AtMost {
		t.Errorf("%+v", e)
	}
}

// TestMeasuredAgain: outlines that are measured along their sides and by chance
// diagonals come out again.
func TestMeasuredAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 500 {
		n := 4 + r.IntN(30)
		corners := spread(r, n, 20*inch, 30*inch)
		p, err := plane.New(corners...)
		if err != nil {
			continue
		}
		if !p.Convex() { // diagonals of any kind run inside a convex one only
			p = must(plane.Regular(n, plane.Flats, 30*inch+measure.Length(r.Int64N(int64(inch)))))
		}
		var sides []measure.Length
		for _, s := range p.Sides() {
			sides = append(sides, s.Length)
		}
		var diagonals []plane.Diagonal
		for a, b := 0, 2; len(diagonals) < n-3; {
			diagonals = append(diagonals, plane.Diagonal{From: a, To: b, Length: p.Diagonal(a, b)})
			if r.IntN(2) == 0 {
				b = (b + 1) % n
			} else {
				a = (a + n - 1) % n
			}
		}
		r.Shuffle(len(diagonals), func(i, j int) { diagonals[i], diagonals[j] = diagonals[j], diagonals[i] })
		q, err := plane.Measured(sides, diagonals, 0)
		if err != nil {
			t.Fatalf("%v %v: %v", sides, diagonals, err)
		}
		for i := range n {
			if q.Side(i).Length != sides[i] {
				near(t, "side", q.Side(i).Length, sides[i], 1)
			}
			if d := q.Interior(i) - p.Interior(i); d < -deg/1000 || d > deg/1000 { // a nanometer in a flat triangle
				t.Errorf("corner %d measures %v, want %v", i, q.Interior(i), p.Interior(i))
			}
		}
	}
}

// TestMeasuredConcave: an arrow head, held by the diagonal inside it.
func TestMeasuredConcave(t *testing.T) {
	p := must(plane.New(outlines[4].corners...))
	var sides []measure.Length
	for _, s := range p.Sides() {
		sides = append(sides, s.Length)
	}
	inside := plane.Diagonal{From: 1, To: 3, Length: p.Diagonal(1, 3)}
	q := must(plane.Measured(sides, []plane.Diagonal{inside}, 0))
	if d := q.Area() - p.Area(); d < -200 || d > 200 || q.Turn(1) >= 0 {
		t.Errorf("the arrow encloses %v, want %v; it turns by %v at its notch", q.Area(), p.Area(), q.Turn(1))
	}
}

func TestMeasuredRefused(t *testing.T) {
	four := ins("4", "4", "4", "4")
	d := func(from, to int, l string) plane.Diagonal { return plane.Diagonal{From: from, To: to, Length: in(l)} }
	for _, row := range []struct {
		name      string
		sides     []measure.Length
		diagonals []plane.Diagonal
		tolerance measure.Length
		code      explain.Code
	}{
		{"square with one diagonal", four, []plane.Diagonal{d(0, 2, "5.6568")}, 0, ""},
		{"with both", four, []plane.Diagonal{d(0, 2, "5 5/8"), d(1, 3, "5 11/16")}, inch / 64, ""},
		{"the other way round", four, []plane.Diagonal{d(3, 1, "5 11/16"), d(2, 0, "5 5/8")}, inch / 64, ""},
		{"both too long", four, []plane.Diagonal{d(0, 2, "5 11/16"), d(1, 3, "5 3/4")}, inch / 64, plane.Differs},
		{"both too short", four, []plane.Diagonal{d(0, 2, "5 5/8"), d(1, 3, "5 5/8")}, inch / 64, plane.Differs},
		{"no diagonal", four, nil, 0, explain.TooFew},
		{"two sides", four[:2], nil, 0, explain.TooFew},
		{"too many sides", make([]measure.Length, plane.MaxMeasured+1), nil, 0, explain.TooMany},
		{"a side of nothing", ins("4", "0", "4", "4"), []plane.Diagonal{d(0, 2, "5")}, 0, plane.NoLength},
		{"a side below nothing", []measure.Length{-1, 1, 1}, nil, 0, explain.OutOfRange},
		{"a side too long", []measure.Length{explain.MaxLength + 1, 1, 1}, nil, 0, explain.OutOfRange},
		{"a side for a diagonal", four, []plane.Diagonal{d(0, 1, "4")}, 0, plane.Loose},
		{"the last side for a diagonal", four, []plane.Diagonal{d(3, 0, "4")}, 0, plane.Loose},
		{"a corner with itself", four, []plane.Diagonal{d(2, 2, "4")}, 0, plane.Loose},
		{"no such corner", four, []plane.Diagonal{d(0, 4, "4")}, 0, plane.Loose},
		{"no such corner below", four, []plane.Diagonal{d(-1, 2, "4")}, 0, plane.Loose},
		{"a diagonal of nothing", four, []plane.Diagonal{d(0, 2, "0")}, 0, plane.NoLength},
		{"a diagonal too long", four, []plane.Diagonal{d(0, 2, "8")}, 0, plane.NoTriangle},
		{"one twice", ins("4", "4", "4", "4", "4"), []plane.Diagonal{d(0, 2, "6"), d(2, 0, "6")}, 0, plane.Loose},
		{"two that cross", ins("4", "4", "4", "4", "4"), []plane.Diagonal{d(0, 2, "6.4721"), d(1, 3, "6.4721")}, inch, plane.Loose},
		{"a third that holds", ins("4", "4", "4", "4", "4"), []plane.Diagonal{d(0, 2, "6.472"), d(1, 3, "6.472"), d(0, 3, "6.472")}, inch / 64, ""},
		{"a diagonal more, of nothing", four, []plane.Diagonal{d(0, 2, "5 5/8"), d(1, 3, "0")}, inch, plane.NoLength},
		{"more than a turn in a corner", ins("4", "7", "7", "7", "4"), []plane.Diagonal{d(0, 2, "4"), d(0, 3, "4")}, 0, plane.Crosses},
	} {
		if _, err := plane.Measured(row.sides, row.diagonals, row.tolerance); code(t, err) != row.code {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
}

// TestDiffersByNanometers: a hair past the tolerance is refused, and what the
// diagonal must be is said.
func TestDiffersByNanometers(t *testing.T) {
	sides := ins("12", "9", "12", "9")
	for _, off := range []measure.Length{0, 1, -1, 2, -2} {
		_, err := plane.Measured(sides, []plane.Diagonal{{From: 0, To: 2, Length: 15 * inch}, {From: 1, To: 3, Length: 15*inch + off}}, 1)
		var e *plane.Error
		if errors.As(err, &e) != (abs(off) > 1) {
			t.Errorf("off by %d nm: %v", off, err)
		} else if e != nil && (e.Limit != explain.Of(15*inch) || e.Bound != explain.Exactly) {
			t.Errorf("%+v", e)
		}
	}
}

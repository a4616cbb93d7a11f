package plane_test

import (
	"errors"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// TestSteppedByHand: a step where two sides of one line part, at any corner and
// either way round; none where they do not.
func TestSteppedByHand(t *testing.T) {
	two := points(0, 0, 2, 0, 4, 0, 4, 4, 0, 4)
	first := points(2, 0, 4, 0, 4, 4, 0, 4, 0, 0) // the straight corner is the first one
	for _, row := range []struct {
		name    string
		corners []plane.Point
		by      []measure.Length
		want    []plane.Point
		turns   []measure.Angle
	}{
		{"out", two, []measure.Length{inch, 0, 0, 0, 0}, points(0, -1, 2, -1, 2, 0, 4, 0, 4, 4, 0, 4), []measure.Angle{90, -90, 90, 90, 90, 90}},
		{"in", two, []measure.Length{-inch, 0, 0, 0, 0}, points(0, 1, 2, 1, 2, 0, 4, 0, 4, 4, 0, 4), []measure.Angle{-90, 90, 90, 90, 90, 90}},
		{"both", two, []measure.Length{inch, 2 * inch, 0, 0, 0}, points(0, -1, 2, -1, 2, -2, 4, -2, 4, 4, 0, 4), []measure.Angle{-90, 90, 90, 90, 90, 90}},
		{"the second one", two, []measure.Length{0, inch, 0, 0, 0}, points(0, 0, 2, 0, 2, -1, 4, -1, 4, 4, 0, 4), []measure.Angle{-90, 90, 90, 90, 90, 90}},
		{"at the first corner", first, []measure.Length{inch, 0, 0, 0, 0}, points(2, 0, 2, -1, 4, -1, 4, 4, 0, 4, 0, 0), []measure.Angle{90, 90, 90, 90, 90, -90}},
		{"all alike", two, []measure.Length{inch}, points(-1, -1, 2, -1, 5, -1, 5, 5, -1, 5), []measure.Angle{0, 90, 90, 90, 90}},
		{"no straight corner", points(0, 0, 4, 0, 4, 4, 0, 4), []measure.Length{inch, 0, 0, 0}, points(0, -1, 4, -1, 4, 4, 0, 4), []measure.Angle{90, 90, 90, 90}},
	} {
		q, err := must(plane.New(row.corners...)).Stepped(row.by...)
		if err != nil || q.Len() != len(row.want) {
			t.Errorf("%s: %d corners, %v", row.name, q.Len(), err)
			continue
		}
		for i, want := range row.want {
			if q.Corner(i) != want {
				t.Errorf("%s: corner %d is %v, want %v", row.name, i, q.Corner(i), want)
			}
		}
		for i, want := range row.turns {
			if got := q.Side(i).Turn; got != want*deg {
				t.Errorf("%s: side %d turns by %v, want %v", row.name, i, got, want*deg)
			}
		}
		if q.Turning() != measure.Turn {
			t.Errorf("%s turns by %v", row.name, q.Turning())
		}
	}
}

// TestSteppedTurned: wherever the outline lies, and either way round, a step is as
// long as its two sides part, the sides keep their lengths, and the surface grows by
// what was added.
func TestSteppedTurned(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	for range 300 {
		a, b := inch+measure.Length(r.Int64N(int64(9*inch))), inch+measure.Length(r.Int64N(int64(9*inch)))
		h := 2*inch + measure.Length(r.Int64N(int64(9*inch)))
		sides := []plane.Side{{Length: a, Turn: 0}, {Length: b, Turn: 90 * deg}, {Length: h, Turn: 90 * deg}, {Length: a + b, Turn: 90 * deg}, {Length: h, Turn: 90 * deg}}
		p := must(plane.Closed(sides, 0))
		p = must(p.Turned(measure.Angle(r.Int64N(int64(measure.Turn)))))
		p = must(plane.New(p.Corners()...))
		if p.Turn(1) != 0 { // rounded to whole nanometers, it need not be straight
			continue
		}
		one, two := measure.Length(r.Int64N(int64(2*inch)))-inch, measure.Length(r.Int64N(int64(2*inch)))-inch
		by := []measure.Length{one, two, 0, 0, 0}
		q := must(p.Stepped(by...))
		near(t, "step", q.Side(1).Length, abs(one-two), 1)
		near(t, "side before", q.Side(0).Length, a, 2)
		near(t, "side after", q.Side(2).Length, b, 2)
		if q.Len() != 6 || q.Turning() != measure.Turn || q.Turn(1) != -q.Turn(2) || abs(measure.Length(q.Turn(1))) != measure.Length(90*deg) || (q.Turn(1) > 0) != (one > two) {
			t.Fatalf("by %v and %v: %v", one, two, q.Sides())
		}
		back := must(plane.New(reversed(p.Corners())...))
		k := must(back.Stepped(0, 0, two, one, 0))
		if k.Area() != q.Area() || k.Turning() != measure.Turn {
			t.Fatalf("the other way round %v, %v", k.Area(), q.Area())
		}
	}
}

func TestSteppedRefused(t *testing.T) {
	p := must(plane.New(points(0, 0, 2, 0, 4, 0, 4, 4, 0, 4)...))
	for _, row := range []struct {
		name  string
		by    []measure.Length
		code  explain.Code
		at    int
		limit measure.Length
	}{
		{"too few", []measure.Length{1, 1}, explain.TooFew, -1, 0},
		{"past the side across", []measure.Length{-5 * inch, 0, 0, 0, 0}, plane.LostSide, 4, 4*inch - 1},
		{"the right one past it", []measure.Length{0, -5 * inch, 0, 0, 0}, plane.LostSide, 2, 4*inch - 1},
		{"a wall past the straight corner", []measure.Length{inch, 0, 0, 0, -3 * inch}, plane.LostSide, 0, 2*inch - 1},
		{"out of reach", []measure.Length{plane.Reach, 0, 0, 0, 0}, "", 0, 0},
		{"out of reach by an inch", []measure.Length{plane.Reach, 0, 0, 0, 0}, plane.Far, 0, plane.Reach},
	} {
		q := p
		if row.name == "out of reach by an inch" {
			q = must(p.Moved(plane.Point{Y: -inch}))
		}
		_, err := q.Stepped(row.by...)
		var e *plane.Error
		if code(t, err) != row.code || errors.As(err, &e) && (e.At != row.at || row.limit != 0 && e.Limit != explain.Of(row.limit)) {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
	// Of a step at the first corner, the end of the last side lies too far out.
	q := must(must(plane.New(points(2, 0, 4, 0, 4, 4, 0, 4, 0, 0)...)).Moved(plane.Point{Y: -inch}))
	_, err := q.Stepped(0, 0, 0, 0, plane.Reach)
	var e *plane.Error
	if !errors.As(err, &e) || e.Code != plane.Far || e.At != 0 {
		t.Errorf("%+v", e)
	}
	// A slot whose walls come together, behind a step: the sides are counted as given.
	slot := must(plane.New(points(4, 0, 20, 0, 20, 20, 11, 20, 11, 10, 15, 10, 15, 5, 5, 5, 5, 10, 9, 10, 9, 20, 0, 20, 0, 0)...))
	by := make([]measure.Length, slot.Len())
	for i := range by {
		by[i] = 2 * inch
	}
	by[0] = 0
	_, err = slot.Stepped(by...)
	if !errors.As(err, &e) || e.Code != plane.Meets || e.At != 2 || e.Other != 10 || e.Limit != explain.Of(inch-1) {
		t.Errorf("%+v", e)
	}
}

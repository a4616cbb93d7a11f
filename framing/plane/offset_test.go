package plane_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// TestOffsetByHand: outlines in whole inches, moved by whole inches.
func TestOffsetByHand(t *testing.T) {
	for _, row := range []struct {
		name    string
		corners []plane.Point
		by      []measure.Length
		want    []plane.Point
	}{
		{"square out", points(0, 0, 4, 0, 4, 4, 0, 4), []measure.Length{inch}, points(-1, -1, 5, -1, 5, 5, -1, 5)},
		{"square in", points(0, 0, 4, 0, 4, 4, 0, 4), []measure.Length{-inch}, points(1, 1, 3, 1, 3, 3, 1, 3)},
		{"each its own", points(0, 0, 4, 0, 4, 4, 0, 4), []measure.Length{inch, 2 * inch, 3 * inch, 0}, points(0, -1, 6, -1, 6, 7, 0, 7)},
		{"one side only", points(0, 0, 4, 0, 4, 4, 0, 4), []measure.Length{0, 0, -inch, 0}, points(0, 0, 4, 0, 4, 3, 0, 3)},
		{"bracket out", points(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4), []measure.Length{inch}, points(-1, -1, 5, -1, 5, 2, 2, 2, 2, 5, -1, 5)},
		{"nothing", points(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4), []measure.Length{0}, points(0, 0, 4, 0, 4, 1, 1, 1, 1, 4, 0, 4)},
		{"straight corner", points(0, 0, 2, 0, 4, 0, 4, 4, 0, 4), []measure.Length{inch}, points(-1, -1, 2, -1, 5, -1, 5, 5, -1, 5)},
		{"by the 3-4-5", points(0, 0, 12, 0, 0, 9), []measure.Length{-inch}, points(1, 1, 9, 1, 1, 7)},
		{"and out", points(0, 0, 12, 0, 0, 9), []measure.Length{inch}, points(-1, -1, 15, -1, -1, 11)},
	} {
		p := must(plane.New(row.corners...))
		q, err := p.Offset(row.by...)
		if err != nil {
			t.Errorf("%s: %v", row.name, err)
			continue
		}
		back := must(plane.New(reversed(row.corners)...))
		by := row.by
		if len(by) > 1 { // side i runs from corner i: the last one stays last
			by = append(append([]measure.Length{}, reversedLengths(by[:len(by)-1])...), by[len(by)-1])
		}
		r := must(back.Offset(by...))
		for i, want := range row.want {
			if q.Corner(i) != want || r.Corner(len(row.want)-1-i) != want {
				t.Errorf("%s: corner %d is %v and clockwise %v, want %v", row.name, i, q.Corner(i), r.Corner(len(row.want)-1-i), want)
			}
		}
	}
}

func reversedLengths(ls []measure.Length) []measure.Length {
	var back []measure.Length
	for i := range ls {
		back = append(back, ls[len(ls)-1-i])
	}
	return back
}

// lines is the second road to an offset: lines moved and met in fractions and
// roots of 300 bits.
func lines(p plane.Polygon, by []measure.Length) [][2]*big.Float {
	num := func(l measure.Length) *big.Float { return new(big.Float).SetPrec(300).SetInt64(int64(l)) }
	op := func(f func(z, x, y *big.Float) *big.Float, x, y *big.Float) *big.Float {
		return f(new(big.Float).SetPrec(300), x, y)
	}
	add, sub, mul, quo := (*big.Float).Add, (*big.Float).Sub, (*big.Float).Mul, (*big.Float).Quo
	n := p.Len()
	type line struct{ a, b, c *big.Float } // ax + by = c
	moved := make([]line, n)
	for i := range n {
		s, e := p.Corner(i), p.Corner(i+1)
		a, b := num(e.Y-s.Y), num(s.X-e.X) // outward, running to the left
		if p.Clockwise() {
			a, b = num(s.Y-e.Y), num(e.X-s.X)
		}
		long := new(big.Float).SetPrec(300).Sqrt(op(add, op(mul, a, a), op(mul, b, b)))
		c := op(add, op(mul, a, num(s.X)), op(mul, b, num(s.Y)))
		moved[i] = line{a, b, op(add, c, op(mul, long, num(by[i])))}
	}
	corners := make([][2]*big.Float, n)
	for i := range n {
		l, k := moved[(i+n-1)%n], moved[i]
		det := op(sub, op(mul, l.a, k.b), op(mul, l.b, k.a))
		corners[i] = [2]*big.Float{
			op(quo, op(sub, op(mul, l.c, k.b), op(mul, k.c, l.b)), det),
			op(quo, op(sub, op(mul, l.a, k.c), op(mul, k.a, l.c)), det),
		}
	}
	return corners
}

// TestOffsetAgainstLines: two roads to one outline. Where the library refuses to
// lose a side, the other road has lost it too.
func TestOffsetAgainstLines(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	moved, lost := 0, 0
	for range 3000 {
		n := 3 + r.IntN(12)
		corners := spread(r, n, 10*inch, 40*inch)
		if r.IntN(2) == 0 {
			corners = reversed(corners)
		}
		p, err := plane.New(corners...)
		if err != nil {
			continue
		}
		by := make([]measure.Length, n)
		for i := range by {
			by[i] = measure.Length(r.Int64N(int64(6*inch))) - 3*inch
		}
		if r.IntN(3) == 0 {
			by = []measure.Length{by[0]}
		}
		q, err := p.Offset(by...)
		each := by
		for len(each) < n {
			each = append(each, by[0])
		}
		road := lines(p, each)
		whole := true
		for i := range n {
			a, b := p.Corner(i), p.Corner(i+1)
			x, _ := new(big.Float).Sub(road[(i+1)%n][0], road[i][0]).Float64()
			y, _ := new(big.Float).Sub(road[(i+1)%n][1], road[i][1]).Float64()
			whole = whole && x*float64(b.X-a.X)+y*float64(b.Y-a.Y) > 0
		}
		if code(t, err) == plane.Far { // two sides that run nearly side by side
			continue
		}
		if lostOne := code(t, err) == plane.LostSide; lostOne == whole {
			t.Fatalf("%v by %v: %v, and by lines all sides are there: %t", corners, by, err, whole)
		}
		if err != nil {
			lost++
			continue
		}
		moved++
		if q.Turning() != measure.Turn || q.Clockwise() != p.Clockwise() {
			t.Fatalf("%v by %v turns by %v", corners, by, q.Turning())
		}
		for i, c := range q.Corners() {
			for j, got := range []measure.Length{c.X, c.Y} {
				off, _ := new(big.Float).Sub(road[i][j], new(big.Float).SetInt64(int64(got))).Float64()
				if off < -0.5001 || off > 0.5001 {
					t.Fatalf("%v by %v: corner %d is %v, off by %g nm", corners, by, i, c, off)
				}
			}
			// The third road: by angles.
			own := each[i]
			want := p.Side(i).Length + plane.Growth(own, each[(i+n-1)%n], p.Turn(i)) + plane.Growth(own, each[(i+1)%n], p.Turn(i+1))
			near(t, "side by angles", q.Side(i).Length, want, 4)
		}
	}
	if moved < 500 || lost < 200 {
		t.Errorf("%d moved and %d refused", moved, lost)
	}
}

// TestOffsetLimit: what is refused says how far it would go, and a nanometer more
// is refused indeed.
func TestOffsetLimit(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	seen := map[explain.Code]int{}
	for range 400 {
		p, err := plane.New(spread(r, 3+r.IntN(9), 4*inch, 30*inch)...)
		if err != nil {
			continue
		}
		by := (40 * inch) * measure.Length(1-2*r.IntN(2))
		_, err = p.Offset(by)
		if err == nil {
			continue
		}
		var e *plane.Error
		if !errors.As(err, &e) || e.Code != plane.LostSide && e.Code != plane.Meets {
			t.Fatalf("%v", err)
		}
		seen[e.Code]++
		limit := measure.Length(e.Limit.N)
		if e.Limit.Kind != explain.LengthKind || e.Bound != explain.AtMost || limit <= 0 {
			t.Fatalf("%+v says no limit", e)
		}
		if by < 0 {
			limit = -limit
		}
		if _, err := p.Offset(limit); err != nil {
			t.Errorf("the limit of %v is refused: %v", limit, err)
		}
		if _, err := p.Offset(limit + limit/abs(limit)); err == nil {
			t.Errorf("a nanometer more than %v is not refused", limit)
		}
	}
	if seen[plane.LostSide] < 20 {
		t.Errorf("refused %v", seen)
	}
	// A square of 4 loses its sides at 2, a notch of 2 closes at 1.
	square := must(plane.New(outlines[0].corners...))
	_, err := square.Offset(-3 * inch)
	var e *plane.Error
	if !errors.As(err, &e) || e.Code != plane.LostSide || e.Limit != explain.Of(2*inch-1) {
		t.Errorf("square: %+v", e)
	}
	notch := must(plane.New(outlines[6].corners...))
	_, err = notch.Offset(3 * inch)
	if !errors.As(err, &e) || e.Code != plane.LostSide || e.Limit != explain.Of(inch-1) {
		t.Errorf("notch: %+v", e)
	}
}

func abs(l measure.Length) measure.Length { return max(l, -l) }

// TestOffsetMeets: a keyhole whose walls come together before any side is lost.
func TestOffsetMeets(t *testing.T) {
	p := must(plane.New(points(0, 0, 20, 0, 20, 20, 11, 20, 11, 10, 15, 10, 15, 5, 5, 5, 5, 10, 9, 10, 9, 20, 0, 20)...))
	_, err := p.Offset(2 * inch)
	var e *plane.Error
	if !errors.As(err, &e) || e.Code != plane.Meets || e.Limit != explain.Of(inch-1) {
		t.Errorf("%+v", e)
	}
	if _, err := p.Offset(inch - 1); err != nil {
		t.Error(err)
	}
	if _, err := p.Offset(inch); code(t, err) != plane.Meets {
		t.Errorf("walls that touch: %v", err)
	}
}

// TestPointsStay: POLY-10, a corner is never clipped however sharp it is.
func TestPointsStay(t *testing.T) {
	t.Run("POLY-10", func(t *testing.T) {
		for _, tip := range []measure.Angle{59 * deg, 36 * deg, 10 * deg, deg} {
			p := must(plane.Closing(ins("30", "30"), []measure.Angle{tip}))
			q := must(p.Offset(inch))
			c, d := p.Corner(1), q.Corner(1)
			got := measure.Hypot(d.X-c.X, d.Y-c.Y)
			near(t, "true point of "+tip.String(), got, inch.OverSin(tip/2), 1)
			if q.Len() != 3 || q.Interior(1) != tip {
				t.Errorf("the corner of %v became %v", tip, q.Interior(1))
			}
		}
	})
}

func TestOffsetRefused(t *testing.T) {
	p := must(plane.New(outlines[5].corners...)) // with a straight corner
	for _, row := range []struct {
		name string
		by   []measure.Length
		code explain.Code
	}{
		{"nothing said", nil, explain.TooFew},
		{"too few", []measure.Length{1, 1}, explain.TooFew},
		{"too many", make([]measure.Length, 6), explain.TooMany},
		{"a step", []measure.Length{inch, 2 * inch, 0, 0, 0}, plane.Step},
		{"a step of a nanometer", []measure.Length{1, 0, 0, 0, 0}, plane.Step},
		{"too far", []measure.Length{plane.Reach + 1}, explain.OutOfRange},
		{"out of reach", []measure.Length{plane.Reach}, plane.Far},
		{"far inward", []measure.Length{-plane.Reach}, plane.LostSide},
	} {
		if _, err := p.Offset(row.by...); code(t, err) != row.code {
			t.Errorf("%s: %v, want %q", row.name, err, row.code)
		}
	}
	needle := must(plane.Closing(ins("30", "30"), []measure.Angle{1000}))
	if _, err := needle.Offset(inch); code(t, err) != plane.Far {
		t.Errorf("a needle's point lies too far out: %v", err)
	}
}

func TestGrowth(t *testing.T) {
	for _, row := range []struct {
		own, next measure.Length
		turn      measure.Angle
		want      string // inches
	}{
		{inch, inch, 90 * deg, "1.0000"},
		{2 * inch, 3 * inch, 90 * deg, "3.0000"}, // by the neighbor's width
		{inch, inch, 45 * deg, "0.4142"},
		{inch, inch, 144 * deg, "3.0777"},
		{inch, inch, -72 * deg, "-0.7265"},
		{inch, inch, 0, "0.0000"},
		{0, inch, 30 * deg, "2.0000"},
		{inch, 0, 45 * deg, "-1.0000"},
		{-inch, -inch, 90 * deg, "-1.0000"},
		{inch, 0, 120 * deg, "0.5774"},
	} {
		if got := inches(plane.Growth(row.own, row.next, row.turn), 4); got != row.want {
			t.Errorf("%v beside %v, turning by %v, grows by %s, want %s", row.own, row.next, row.turn, got, row.want)
		}
	}
	// Two widths in one line never meet.
	if a, b := plane.Growth(inch, 2*inch, 0), plane.Growth(2*inch, inch, 0); a < plane.Reach || b != -a {
		t.Errorf("in one line: %v and %v", a, b)
	}
}

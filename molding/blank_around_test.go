package molding_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// turnedRing is a ring of two ellipses, parallelRing one of a parallel around an ellipse.
func turnedRing(width, height, face measure.Length) (sight, outside plane.Parallel) {
	e := plane.Ellipse{Width: width, Height: height}
	return plane.Parallel{Of: e}, plane.Parallel{Of: e.Grown(face)}
}

func parallelRing(width, height, face measure.Length) (sight, outside plane.Parallel) {
	e := plane.Ellipse{Width: width, Height: height}
	return plane.Parallel{Of: e}, plane.Parallel{Of: e, By: face}
}

func plainBlank(pieces int) molding.Blank {
	return molding.Blank{Pieces: pieces, Joint: molding.StraightJoint, Spread: molding.EqualArc, Aim: molding.AimSquare}
}

// A round is an oval like others: what its closed formulas say must come out.
func TestBlankOfRound(t *testing.T) {
	const in = measure.Inch
	for n := molding.LeastBlankPieces; n <= 12; n++ {
		round := molding.RoundBlank{Outer: 24 * in, Inner: 20 * in, Pieces: n}
		sight, outside := turnedRing(round.Inner, round.Inner, 2*in)
		for _, spread := range molding.EqualArc.Choices() {
			b := plainBlank(n)
			b.Spread = molding.BlankSpread(spread)
			p, err := b.Around(sight, outside)
			if err != nil {
				t.Fatal(err)
			}
			want := round.Board()
			for i, piece := range p.Pieces {
				if over := piece.Width - want.Height; over < -4 || over > 8 {
					t.Errorf("%d pieces: piece %d is %v wide, not %v", n, i, piece.Width, want.Height)
				}
				if over := piece.Length - want.Width; over < -4 || over > 8 {
					t.Errorf("%d pieces: piece %d is %v long, not %v", n, i, piece.Length, want.Width)
				}
				if d := piece.Right.Saw - round.Setting(); d < -1 || d > 1 {
					t.Errorf("%d pieces: saw %v, not %v", n, piece.Right.Saw, round.Setting())
				}
			}
		}
	}
}

// A blankRoad works a piece out in floats: the outline of its hull as points.
type blankRoad struct{ x, y []float64 }

// curve is the point of a parallel whose normal has a heading in radians.
func curve(p plane.Parallel, by, h float64) (x, y float64) {
	a, b := float64(p.Of.Width)/2, float64(p.Of.Height)/2
	c, s := math.Cos(h), math.Sin(h)
	r := math.Sqrt(a*a*c*c + b*b*s*s)
	d := float64(p.By) + by
	return a*a*c/r + d*c, b*b*s/r + d*s
}

// normalAt looks for the normal whose place lies at (x, y), by the nearest of many.
func normalAt(p plane.Parallel, by float64, at plane.Point, near float64) float64 {
	best, least := near, math.Inf(1)
	for width := math.Pi / 2; width > 1e-13; width /= 3 {
		from := best
		for i := -6; i <= 6; i++ {
			h := from + width*float64(i)/6
			x, y := curve(p, by, h)
			if d := math.Hypot(x-float64(at.X), y-float64(at.Y)); d < least {
				best, least = h, d
			}
		}
	}
	return best
}

func roadOf(p molding.BlankPiece, outside plane.Parallel, turning measure.Length) blankRoad {
	var r blankRoad
	add := func(x, y float64) { r.x, r.y = append(r.x, x), append(r.y, y) }
	add(float64(p.Right.Sight.X), float64(p.Right.Sight.Y))
	add(float64(p.Left.Sight.X), float64(p.Left.Sight.Y))
	from := normalAt(outside, float64(turning), p.Right.Outside, radians(p.Right.Heading))
	to := normalAt(outside, float64(turning), p.Left.Outside, radians(p.Left.Heading))
	for i := range 2001 {
		add(curve(outside, float64(turning), from+(to-from)*float64(i)/2000))
	}
	return r
}

func radians(a measure.Angle) float64 { return float64(a) / float64(measure.Degree) * math.Pi / 180 }

// spans are how far the outline reaches, least and most, in a direction.
func (r blankRoad) spans(h float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	c, s := math.Cos(h), math.Sin(h)
	for i := range r.x {
		d := r.x[i]*c + r.y[i]*s
		least, most = min(least, d), max(most, d)
	}
	return least, most
}

func randomRing(r *rand.Rand) (sight, outside plane.Parallel) {
	width, height := 5*measure.Inch+randomLength(r, 3*measure.Foot), 5*measure.Inch+randomLength(r, 3*measure.Foot)
	face := measure.Inch/2 + randomLength(r, 4*measure.Inch)
	if r.IntN(2) == 0 {
		return turnedRing(width, height, face)
	}
	return parallelRing(width, height, face)
}

func randomBlank(r *rand.Rand) molding.Blank {
	b := molding.Blank{
		Pieces: 3 + r.IntN(8), Joint: molding.StraightJoint,
		Spread: molding.BlankSpread([]string{"arc", "angle"}[r.IntN(2)]),
		Aim:    molding.BlankAim([]string{"square", "middle"}[r.IntN(2)]),
	}
	if r.IntN(2) == 0 {
		b.First = measure.Angle(r.Int64N(int64(measure.Turn)))
	}
	if r.IntN(3) == 0 {
		b.Joint, b.Finger = molding.FingerJoint, 1+randomLength(r, measure.Inch)
	}
	if r.IntN(3) == 0 {
		b.Turning = randomLength(r, measure.Inch/4)
	}
	if r.IntN(3) == 0 {
		at := measure.Angle(r.Int64N(int64(60 * measure.Degree)))
		for at < measure.Turn {
			b.Joints = append(b.Joints, at)
			at += 20*measure.Degree + measure.Angle(r.Int64N(int64(100*measure.Degree)))
		}
	}
	return b
}

// TestBlankBoards: each board holds its piece, and none that is turned otherwise, in
// steps of a tenth of a degree, is narrower.
func TestBlankBoards(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 5))
	const flat = 200.0 // nm that the road's chords may lie within the arc
	worked := 0
	for range 60 {
		b := randomBlank(r)
		sight, outside := randomRing(r)
		plan, err := b.Around(sight, outside)
		if err != nil {
			continue
		}
		worked++
		for i, p := range plan.Pieces {
			road := roadOf(p, outside, b.Turning)
			least, most := road.spans(radians(p.Turn))
			low, high := float64(p.At.Y), float64(p.At.Y+p.Width)
			if low > least || high < most || high-low > most-least+flat {
				t.Fatalf("%+v\nof %v %v: piece %d lies from %.1f to %.1f, its board from %.1f to %.1f", b, sight, outside, i, least, most, low, high)
			}
			least, most = road.spans(radians(p.Turn - measure.RightAngle))
			if low, high := float64(p.At.X), float64(p.At.X+p.Length); low > least || high < most || high-low > most-least+flat {
				t.Fatalf("%+v: piece %d lies from %.1f to %.1f along, its board from %.1f to %.1f", b, i, least, most, low, high)
			}
			middle := radians(p.Right.Heading+p.Left.Heading) / 2
			for step := -450; step <= 450; step++ {
				least, most := road.spans(middle + float64(step)*math.Pi/1800)
				if most-least < high-low-flat {
					t.Fatalf("%+v\nof %v %v: piece %d, turned %v to a width of %.1f, is %.1f wide at %d tenths", b, sight, outside, i, p.Turn, high-low, most-least, step)
				}
			}
		}
	}
	if worked < 40 {
		t.Errorf("only %d blanks came out", worked)
	}
}

func BenchmarkBlankAround(b *testing.B) {
	sight, outside := turnedRing(20*measure.Inch, 16*measure.Inch, 2*measure.Inch)
	for b.Loop() {
		if _, err := plainBlank(4).Around(sight, outside); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBlankLeast(b *testing.B) {
	sight, outside := turnedRing(20*measure.Inch, 16*measure.Inch, 2*measure.Inch)
	blank := plainBlank(0)
	blank.First = 30 * measure.Degree
	blank.Boards = []molding.BlankBoard{{Width: 4 * measure.Inch}}
	for b.Loop() {
		if _, err := blank.Around(sight, outside); err != nil {
			b.Fatal(err)
		}
	}
}

// TestBlankEqualArcs: between the joints of equal pieces the line along the middle is
// equally long, by Simpson's rule over the heading of its normal.
func TestBlankEqualArcs(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 6))
	for range 40 {
		sight, outside := randomRing(r)
		b := plainBlank(3 + r.IntN(10))
		b.First = measure.Angle(r.Int64N(int64(measure.Turn)))
		plan, err := b.Around(sight, outside)
		if err != nil {
			t.Fatal(err)
		}
		w, h := float64(sight.Of.Width+outside.Of.Width)/4, float64(sight.Of.Height+outside.Of.Height)/4
		by := float64(sight.By+outside.By) / 2
		bend := func(n float64) float64 {
			s, c := math.Sincos(n)
			g := math.Sqrt(w*w*c*c + h*h*s*s)
			return w*w*h*h/(g*g*g) + by
		}
		var least, most float64
		for i, p := range plan.Pieces {
			const steps = 4000
			from, to := radians(p.Right.Heading), radians(p.Left.Heading)
			sum := 0.0
			for k := range steps {
				a := from + (to-from)*float64(k)/steps
				z := from + (to-from)*float64(k+1)/steps
				sum += (z - a) / 6 * (bend(a) + 4*bend((a+z)/2) + bend(z))
			}
			if i == 0 {
				least, most = sum, sum
			}
			least, most = min(least, sum), max(most, sum)
		}
		if most-least > 20 { // of a nanodegree at each joint, and of the floats
			t.Errorf("%v %v: %d pieces from %.1f to %.1f nm", sight, outside, b.Pieces, least, most)
		}
	}
}

// TestBlankSettingsClose: whatever the pieces, their settings add up to a turn.
func TestBlankSettingsClose(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 7))
	worked := 0
	for range 300 {
		b := randomBlank(r)
		sight, outside := randomRing(r)
		plan, err := b.Around(sight, outside)
		if err != nil {
			continue
		}
		worked++
		if open := molding.BlankOpen(plan.Settings()); open != 0 || plan.Closing != measure.Turn {
			t.Fatalf("%+v is open by %v, closing at %v", b, open, plan.Closing)
		}
	}
	if worked < 200 {
		t.Errorf("only %d blanks came out", worked)
	}
}

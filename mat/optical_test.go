package mat_test

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
)

// A point is a place on a board, from its upper left corner right and down.
type point struct{ x, y *big.Rat }

func at(x, y *big.Rat) point { return point{x, y} }

func rat(l measure.Length) *big.Rat        { return big.NewRat(int64(l), 1) }
func plus(a, b *big.Rat) *big.Rat          { return new(big.Rat).Add(a, b) }
func minus(a, b *big.Rat) *big.Rat         { return new(big.Rat).Sub(a, b) }
func times(a, b *big.Rat) *big.Rat         { return new(big.Rat).Mul(a, b) }
func halfway(a, b measure.Length) *big.Rat { return times(plus(rat(a), rat(b)), big.NewRat(1, 2)) }
func cross(a, b, c, d *big.Rat) *big.Rat   { return minus(times(a, d), times(b, c)) }
func through(p, q point) (a, b, c *big.Rat) {
	return minus(p.y, q.y), minus(q.x, p.x), cross(p.x, p.y, q.x, q.y)
}

// intersect is where the line through p and q meets the one through r and s.
func intersect(p, q, r, s point) point {
	a1, b1, c1 := through(p, q)
	a2, b2, c2 := through(r, s)
	det := cross(a1, b1, a2, b2)
	return at(new(big.Rat).Quo(cross(b1, c1, b2, c2), det), new(big.Rat).Quo(cross(c1, a1, c2, a2), det))
}

// straightedge finds the top border as one finds it on the board, after the
// directions posted in rec.photo.darkroom and kept at
// russellcottrell.com/photo/centering.htm: the window lies in the upper left
// corner; the strip at its right and the one below it are halved by a line
// each; the straightedge runs from where the lower line meets the board's
// right edge to the window's lower left corner; where it crosses the upright
// line goes the window's lower right corner.
func straightedge(board, window measure.Size) *big.Rat {
	upright := halfway(window.Width, board.Width)
	lower := halfway(window.Height, board.Height)
	corner := intersect(
		at(rat(board.Width), lower), at(rat(0), rat(window.Height)),
		at(upright, rat(0)), at(upright, rat(board.Height)))
	return minus(corner.y, rat(window.Height))
}

// near reports whether l is x rounded to the nearest nanometer.
func near(l measure.Length, x *big.Rat) bool {
	off := minus(rat(l), x)
	return off.Abs(off).Cmp(big.NewRat(1, 2)) <= 0
}

// TestConstruction: the construction itself, on a board where it can be done
// in the head. Window 4 x 4 on 8 x 12: the lines stand at 6 and 8, the
// straightedge falls from (8, 8) to (0, 4) and is at 7 over 6.
func TestConstruction(t *testing.T) {
	if got := straightedge(size("8", "12"), size("4", "4")); got.Cmp(rat(in("3"))) != 0 {
		t.Errorf("top border %v, want 3 in", got)
	}
	if got := mat.OpticalTop(size("8", "12"), size("4", "4")); got != in("3") {
		t.Errorf("top border %v, want 3 in", got)
	}
}

func TestOpticalTop(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 10))
	for range 5000 {
		window := measure.Size{Width: 1 + randomLength(r, in("40")), Height: 1 + randomLength(r, in("40"))}
		board := measure.Size{Width: window.Width + randomLength(r, in("12")), Height: window.Height + randomLength(r, in("12"))}
		if board.Width == window.Width {
			continue // the upright line is then the board's edge, and so is the crossing
		}
		got, want := mat.OpticalTop(board, window), straightedge(board, window)
		if !near(got, want) {
			t.Fatalf("window %+v on %+v: top %d, by straightedge %v", window, board, got, want.FloatString(3))
		}
		if bottom := board.Height - window.Height - got; got > bottom+1 {
			t.Fatalf("window %+v on %+v: lies low, %d over %d", window, board, got, bottom)
		}
	}
}

// TestOpticalBottom: the bottom border that goes with a top one puts the
// window where the straightedge puts it on the whole board.
func TestOpticalBottom(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 12))
	for range 5000 {
		window := measure.Size{Width: 1 + randomLength(r, in("40")), Height: 1 + randomLength(r, in("40"))}
		width := window.Width + 2 + randomLength(r, in("12"))
		top := randomLength(r, in("6"))
		board := measure.Size{Width: width, Height: window.Height + top + mat.OpticalBottom(width, window.Width, top)}
		// The bottom border is off by half a nanometer at most, and the top one
		// moves by less than half of that.
		off := minus(rat(top), straightedge(board, window))
		if off.Abs(off).Cmp(big.NewRat(1, 4)) > 0 {
			t.Fatalf("window %+v on %+v: top %d, by straightedge off by %v", window, board, top, off.FloatString(3))
		}
		if back := mat.OpticalTop(board, window); back != top {
			t.Fatalf("window %+v on %+v: top %d comes back as %d", window, board, top, back)
		}
	}
}

// TestOpticalPerturbation: a wider board lifts the window, a wider window
// lowers it toward the middle.
func TestOpticalPerturbation(t *testing.T) {
	board, window := size("16", "20"), size("11 1/8", "15")
	top := mat.OpticalTop(board, window)
	wider := mat.OpticalTop(measure.Size{Width: board.Width + in("1"), Height: board.Height}, window)
	if wider >= top {
		t.Errorf("on a wider board the top border is %v, not less than %v", wider, top)
	}
	wide := mat.OpticalTop(board, measure.Size{Width: window.Width + in("1"), Height: window.Height})
	if wide <= top || wide >= in("2 1/2") {
		t.Errorf("with a wider window the top border is %v, not between %v and the middle", wide, top)
	}
}

func TestOpticalOfNothing(t *testing.T) {
	if got := mat.OpticalTop(measure.Size{Height: in("20")}, measure.Size{}); got != 0 {
		t.Errorf("a board of no width has a top border of %v", got)
	}
	if got := mat.OpticalBottom(0, 0, in("2")); got != 0 {
		t.Errorf("a board of no width has a bottom border of %v", got)
	}
}

package molding_test

import (
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

func TestBlankCloses(t *testing.T) {
	t.Run("OVAL-02", func(t *testing.T) {
		var ring []molding.BlankEnds
		for i := range 8 {
			right := 30 * measure.Degree
			if i%2 == 1 {
				right = 15 * measure.Degree
			}
			ring = append(ring, molding.BlankEnds{Left: 22_500_000_000, Right: right})
		}
		if open := molding.BlankOpen(ring); open != 0 {
			t.Errorf("open by %v", open)
		}
		ring[3].Right--
		if open := molding.BlankOpen(ring); open != 1 {
			t.Errorf("a nanodegree less: open by %v", open)
		}
	})
}

// The second road walks both arcs in floats and takes what they span.
func TestRoundBlankBoard(t *testing.T) {
	for n := molding.LeastBlankPieces; n <= molding.MostBlankPieces; n++ {
		b := molding.RoundBlank{Outer: 609_600_001, Inner: 508_000_001, Pieces: n}
		high, low, wide := 0.0, math.Inf(1), 0.0
		for i := -1000; i <= 1000; i++ {
			at := math.Pi / float64(n) * float64(i) / 1000
			for _, d := range []measure.Length{b.Outer, b.Inner} {
				x, y := float64(d)/2*math.Sin(at), float64(d)/2*math.Cos(at)
				high, low, wide = max(high, y), min(low, y), max(wide, 2*x)
			}
		}
		got := b.Board()
		if over := float64(got.Height) - (high - low); over < 0 || over > 4 {
			t.Errorf("%d pieces: width %v is %v nm over", n, got.Height, over)
		}
		if over := float64(got.Width) - wide; over < 0 || over > 4 {
			t.Errorf("%d pieces: length %v is %v nm over", n, got.Width, over)
		}
		if least, ok := b.LeastPieces(got.Height); !ok || least != n {
			t.Errorf("a board for %d pieces allows %d", n, least)
		}
		if least, ok := b.LeastPieces(got.Height - 1); ok && least <= n {
			t.Errorf("a nanometer less allows %d of %d pieces", least, n)
		}
	}
}

func TestRoundBlankCheck(t *testing.T) {
	const in = measure.Inch
	for _, tt := range []struct {
		name     string
		blank    molding.RoundBlank
		problems int
	}{
		{"good", molding.RoundBlank{Outer: 24 * in, Inner: 20 * in, Pieces: 8}, 0},
		{"thinnest", molding.RoundBlank{Outer: 20*in + 1, Inner: 20 * in, Pieces: 3}, 0},
		{"no ring", molding.RoundBlank{Outer: 20 * in, Inner: 20 * in, Pieces: 8}, 1},
		{"two pieces", molding.RoundBlank{Outer: 24 * in, Inner: 20 * in, Pieces: 2}, 1},
		{"25 pieces", molding.RoundBlank{Outer: 24 * in, Inner: 20 * in, Pieces: 25}, 1},
		{"nothing", molding.RoundBlank{}, 3},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var c explain.Checker
			tt.blank.Check(&c, "/blank")
			if got := c.Problems(); len(got) != tt.problems {
				t.Errorf("%d problems, not %d: %v", len(got), tt.problems, got)
			}
		})
	}
}

func TestRoundBlankTurning(t *testing.T) {
	b := molding.RoundBlank{Outer: 24 * measure.Inch, Inner: 20 * measure.Inch, Pieces: 8}
	left := b.Turning(measure.Inch / 4)
	if left.Outer-b.Outer != measure.Inch/2 || b.Inner-left.Inner != measure.Inch/2 || left.Pieces != b.Pieces {
		t.Errorf("%v left on all around is %v", measure.Inch/4, left)
	}
	if left.Turning(-measure.Inch/4) != b {
		t.Error("what was left on does not come off")
	}
	var c explain.Checker
	if b.Turning(10*measure.Inch).Check(&c, ""); len(c.Problems()) != 1 {
		t.Error("nothing is left of the hole, and nobody says so")
	}
}

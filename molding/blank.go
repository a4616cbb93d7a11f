package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A RoundBlank is the ring of boards from which a round frame is turned: equal
// pieces with straight joints that point to the middle.
type RoundBlank struct {
	// Outer and Inner are the diameters that the pieces have to cover, above
	// nothing, Outer the greater and at most explain.MaxLength.
	Outer, Inner measure.Length
	// Pieces is how many pieces make the ring, from 3 to 24.
	Pieces int
}

// The numbers of pieces that a blank can have.
const (
	LeastBlankPieces = 3
	MostBlankPieces  = 24
)

// blankHair covers what rounding can take from a board: half a nanometer for a
// product, less than that for the angle of a ring of at most explain.MaxLength.
const blankHair measure.Length = 1

// Setting returns how far every joint stands from square to its board: 180 over
// the number of pieces, rounded half away from zero. Common practice.
func (b RoundBlank) Setting() measure.Angle {
	a, _ := measure.MulDiv(measure.Turn/2, 1, int64(b.Pieces))
	return a
}

// Board returns the smallest board that lies square to the middle of a piece and
// holds it: its length 2 R sin(180/n) as Width, its width R - r cos(180/n) as
// Height, R and r the outer and the inner radius. Both are rounded up, by 4 nm at
// most, so that the board really suffices. Common practice.
func (b RoundBlank) Board() measure.Size {
	half, rest := b.Outer.Half()
	outer := half + rest
	inner, _ := b.Inner.Half()
	a := b.Setting()
	return measure.Size{
		Width:  2 * (outer.Sin(a) + blankHair),
		Height: outer - inner.Cos(a) + blankHair,
	}
}

// LeastPieces returns the least number of pieces that boards of a width allow,
// whatever b.Pieces says, and whether there is one.
func (b RoundBlank) LeastPieces(width measure.Length) (int, bool) {
	for b.Pieces = LeastBlankPieces; b.Pieces <= MostBlankPieces; b.Pieces++ {
		if b.Board().Height <= width {
			return b.Pieces, true
		}
	}
	return 0, false
}

// Turning returns the blank of the same pieces with by left on all around for the
// lathe: by beyond the outer edge and by within the inner one.
func (b RoundBlank) Turning(by measure.Length) RoundBlank {
	b.Outer += 2 * by
	b.Inner -= 2 * by
	return b
}

// Check adds to c what is wrong with b, whose fields lie at path at.
func (b RoundBlank) Check(c *explain.Checker, at explain.Path) {
	c.Number(at+"/pieces", int64(b.Pieces), LeastBlankPieces, MostBlankPieces)
	c.Length(at+"/inner", b.Inner, 1, explain.MaxLength-1)
	if b.Inner >= 1 && b.Inner < explain.MaxLength {
		c.Length(at+"/outer", b.Outer, b.Inner+1, explain.MaxLength)
	} else {
		c.Positive(at+"/outer", b.Outer)
	}
}

// BlankEnds are the saw settings at both ends of a piece, from square to its
// board; above nothing where the piece is longer outside than inside.
type BlankEnds struct{ Left, Right measure.Angle }

// BlankOpen returns how far a ring of pieces is from closing: a whole turn less
// all settings. Nothing closes; above nothing a wedge stays open, below nothing
// the last piece will not go in. Each piece turns the ring by its two settings,
// however they are shared between its ends.
func BlankOpen(pieces []BlankEnds) measure.Angle {
	open := measure.Turn
	for _, p := range pieces {
		open -= p.Left + p.Right
	}
	return open
}

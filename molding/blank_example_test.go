package molding_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// A round frame of 24 in outside and 20 in inside, turned from 8 pieces with
// 1/4 in left on for the lathe; and the least pieces that 4 in boards allow.
func ExampleRoundBlank() {
	b := molding.RoundBlank{Outer: 24 * measure.Inch, Inner: 20 * measure.Inch, Pieces: 8}
	b = b.Turning(measure.Inch / 4)
	f, _ := measure.NewFormat(measure.Fraction, measure.Inch/16)
	board := b.Board()
	fmt.Println(b.Setting(), f.Text(board.Height, measure.Up), f.Text(board.Width, measure.Up))
	fmt.Println(b.LeastPieces(4 * measure.Inch))
	// Output:
	// 22.5 deg 3 1/4 in 9 7/16 in
	// 6 true
}

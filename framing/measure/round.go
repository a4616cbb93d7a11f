package measure

// A Direction says which way a figure is rounded. In a frame the direction is
// decided by what must not happen: a rail may not come out short, a pane may
// not come out large.
type Direction uint8

// The three directions.
const (
	Nearest Direction = iota // a tie goes away from zero
	Down                     // toward minus infinity
	Up                       // toward plus infinity
)

// String returns "nearest", "down" or "up".
func (d Direction) String() string {
	switch d {
	case Down:
		return "down"
	case Up:
		return "up"
	}
	return "nearest"
}

// Round returns the multiple of step that lies in the direction d from l, and
// the remainder l - rounded: negative after rounding up. A step below 1 rounds
// nothing. Rounding never fails: past the ends of the range it stays at the
// last multiple inside.
func (l Length) Round(step Length, d Direction) (rounded, remainder Length) {
	return RoundTo(l, step, d)
}

// RoundTo does for any of the quantities what [Length.Round] does for lengths.
func RoundTo[Q ~int64](q, step Q, d Direction) (rounded, remainder Q) {
	if step < 1 {
		return q, 0
	}
	over := q % step // how far q stands above the multiple below
	if over < 0 {
		over += step
	}
	if over == 0 {
		return q, 0
	}
	up := d == Up
	if d == Nearest {
		short := step - over
		up = over > short || over == short && q > 0
	}
	rounded = q - over
	if below := q < minInt64+over; below { // no multiple below inside the range
		return rounded + step, -(step - over)
	}
	if up && rounded <= maxInt64-step {
		return rounded + step, over - step
	}
	return rounded, over
}

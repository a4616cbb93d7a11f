package measure

import "github.com/fairmiter/fairmiter/framing/natural"

// arcUnit is pi/180e9 x 2^192, rounded to the nearest: a nanodegree in radians.
var arcUnit = natural.Nat{0x3b8cafdd30937703, 0x5be653509d2fcfe0, 0x1330aa44}

// Arc returns how long the arc is that a radius of l sweeps through an angle, rounded
// to the nearest, half away from zero; below nothing where one of the two is. Past the
// range it is the nearest Length there is. Half a turn of a length is pi times as much.
func (l Length) Arc(sweep Angle) Length {
	product := natural.Of(magnitude(int64(l))).Times(natural.Of(magnitude(int64(sweep)))).Times(arcUnit)
	product = product.Plus(natural.Nat{0, 0, 1 << 63})
	var whole natural.Nat
	if len(product) > 3 {
		whole = product[3:]
	}
	negative := (l < 0) != (sweep < 0)
	v, ok := whole.Uint64()
	if !ok || v >= 1<<63 {
		return Length(saturated(negative))
	}
	return Length(signed(v, negative))
}

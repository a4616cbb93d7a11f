package natural

// pi is 2^126 times the number, rounded to the nearest.
var pi = Nat{0xc4c6628b80dc1cd1, 0xc90fdaa22168c234}

const piBits = 126

// meanBits is how many binary places the means of [EllipsePerimeter] are held to.
const meanBits = 64

// EllipsePerimeter is the way around an ellipse, by its whole axes, rounded to the
// nearest. It is nothing where an axis is. With a and b the arithmetic and the geometric
// mean of each step, and c half of what the two before differed by, it is
//
//	pi (a1^2 - 2 c2^2 - 4 c3^2 - 8 c4^2 - ...) / a
//
// of the a that they come to.
//
// Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 17.6.
func EllipsePerimeter(width, height uint64) Nat {
	long, short := Of(max(width, height)).up(meanBits), Of(min(width, height)).up(meanBits)
	if short.IsZero() {
		return nil
	}
	a, _ := long.Plus(short).Over(Of(2))
	b := long.Times(short).Root()
	total := a.Times(a)
	for n := uint(1); ; n++ {
		c, _ := a.less(b).Over(Of(2))
		if c.IsZero() {
			break
		}
		total = total.less(c.Times(c).up(n))
		next, _ := a.Plus(b).Over(Of(2))
		a, b = next, a.Times(b).Root()
	}
	around, _ := total.Times(pi).Over(a)
	around, _ = around.Nearest(Of(1).up(meanBits + piBits))
	return around
}

// less is a - b, and nothing where b is more: two means meet within their last place.
func (a Nat) less(b Nat) Nat {
	if a.Compare(b) <= 0 {
		return nil
	}
	return a.Minus(b)
}

// up is a x 2^places.
func (a Nat) up(places uint) Nat {
	factor := make(Nat, places/64+1)
	factor[places/64] = 1 << (places % 64)
	return a.Times(factor)
}

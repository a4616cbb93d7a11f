package plane

import (
	"math"
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// perimeter is that of an ellipse with these whole axes, both above nothing and
// within [Reach], to 1 unit in the last place, and the same on every machine: it
// takes nothing but sums, products and quotients, each rounded by itself. The
// series is that of Ivory (1796), pi (a + b) (1 + h/4 + h^2/64 + h^3/256 + ...)
// with h = ((a - b)/(a + b))^2, whose factors are squares of binomials of 1/2.
//
// Up to three times as long as wide, h is at most 1/4, and what the twenty terms
// leave out is below 2^-60. There the series adds at most a fifteenth to
// pi (a + b), and that is added last, so its own rounding hardly counts.
func perimeter(width, height measure.Length) float64 {
	sum, difference := float64(width+height), float64(width-height)
	r := difference / sum
	h := float64(r * r)
	if h > 0.25 {
		around, places := meansPerimeter(max(width, height), min(width, height))
		return float64(around) / float64(uint64(1)<<places)
	}
	h2 := float64(h * h)
	h4 := float64(h2 * h2)
	c := &ivory
	series := four(c[16], c[17], c[18], c[19], h, h2)
	series = four(c[12], c[13], c[14], c[15], h, h2) + float64(series*h4)
	series = four(c[8], c[9], c[10], c[11], h, h2) + float64(series*h4)
	series = four(c[4], c[5], c[6], c[7], h, h2) + float64(series*h4)
	series = four(c[0], c[1], c[2], c[3], h, h2) + float64(series*h4)
	series = float64(series * h)
	// pi/2 to 15 bits, of which the product with a sum of 38 bits is exact, and the
	// rest of it.
	const head = 25735.0 / (1 << 14)
	rest := float64(sum*(math.Pi/2-head)) + float64(float64(sum*(math.Pi/2))*series)
	return float64(sum*head) + rest
}

// four is a + b h + c h^2 + d h^3.
func four(a, b, c, d, h, h2 float64) float64 {
	return a + float64(b*h) + float64((c+float64(d*h))*h2)
}

// ivory are the squares of the binomials of 1/2 over 1, 2, ...: those of Catalan's
// numbers, each over a power of 4.
var ivory = [20]float64{
	1.0 / (1 << 2), 1.0 / (1 << 6), 2.0 * 2 / (1 << 10), 5.0 * 5 / (1 << 14),
	14.0 * 14 / (1 << 18), 42.0 * 42 / (1 << 22), 132.0 * 132 / (1 << 26), 429.0 * 429 / (1 << 30),
	1430.0 * 1430 / (1 << 34), 4862.0 * 4862 / (1 << 38), 16796.0 * 16796 / (1 << 42), 58786.0 * 58786 / (1 << 46),
	208012.0 * 208012 / (1 << 50), 742900.0 * 742900 / (1 << 54), 2674440.0 * 2674440 / (1 << 58), 9694845.0 * 9694845 / (1 << 62),
	35357670.0 * 35357670 / (1 << 66), 129644790.0 * 129644790 / (1 << 70), 477638700.0 * 477638700 / (1 << 74), 1767263190.0 * 1767263190 / (1 << 78),
}

// meansPerimeter is [perimeter] by the arithmetic-geometric mean, whatever the axes,
// in whole numbers of 62 bits: with a and b the means of each step and c half of
// what the last ones differed by, it is pi (a1^2 - 2 c2^2 - 4 c3^2 - 8 c4^2 ...)
// over the a that they come to (Abramowitz and Stegun, Handbook of Mathematical
// Functions, 17.6, with whole axes). It is counted in units of 2^-places nm, right to
// a few of them.
func meansPerimeter(long, short measure.Length) (around uint64, places int) {
	shift := bits.LeadingZeros64(uint64(long)) - 2
	a, c := (long+short)<<shift>>1, (long-short)<<shift>>1
	b := measure.Leg(a, c) // the root of their product
	total := product(int64(a), int64(a))
	for n := 1; ; n++ {
		c = (a - b) / 2
		if c == 0 {
			break
		}
		total = total.minus(product(int64(c)<<n, int64(c)))
		a = (a + b) / 2
		b = measure.Leg(a, c)
	}
	diameter, _ := bits.Div64(uint64(total.hi), total.lo, uint64(a))
	const pi = 0xc90fdaa22168c235 // of 2^62
	around, _ = bits.Mul64(diameter, pi)
	return around, shift - 2
}

// fineBits is how many binary places below a nanometer are kept in what is rounded
// once, as [explain.Once] does it.
const fineBits = 10

// roundedPerimeter is the perimeter in units of 2^-places nm, 0 to fineBits, rounded
// to the nearest. Where the float lies close to a half, the longer way decides.
func roundedPerimeter(width, height measure.Length, places int) measure.Length {
	v := perimeter(width, height) * float64(int64(1)<<places)
	down := int64(v)
	if over := v - float64(down); over < 0.49 || over > 0.51 {
		return measure.Length(v + 0.5)
	}
	around, bits := meansPerimeter(max(width, height), min(width, height))
	bits -= places // above nothing: there are 23 or more
	return measure.Length((around + 1<<(bits-1)) >> bits)
}

// rounded takes what is counted in units of 2^-fineBits nm to the nearest nanometer,
// halves away from nothing.
func rounded(fine measure.Length) measure.Length {
	whole, _ := measure.RoundTo(fine, 1<<fineBits, measure.Nearest)
	return whole >> fineBits
}

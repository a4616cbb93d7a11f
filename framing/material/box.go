package material

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// BoxMass returns the mass of a block of three dimensions, rounded half away
// from zero to a milligram. Nothing is rounded before. A negative argument counts
// as nothing; past the range it is the greatest Mass.
func BoxMass(a, b, c measure.Length, d Density) measure.Mass {
	if a <= 0 || b <= 0 || c <= 0 || d <= 0 {
		return 0
	}
	// nm3 x g/m3 is 1e-27 g, or 1e-24 mg.
	var p [4]uint64 // little end first
	p[1], p[0] = bits.Mul64(uint64(a), uint64(b))
	scale(&p, uint64(c))
	scale(&p, uint64(d))
	const trillion = 1_000_000_000_000
	reduce(&p, trillion)
	rest := reduce(&p, trillion)
	if p[1]|p[2]|p[3] != 0 || p[0] >= maxMass {
		return maxMass
	}
	if rest >= trillion/2 {
		p[0]++
	}
	return measure.Mass(p[0])
}

// scale multiplies p by f; what passes 256 bits is out of any range that is
// asked for.
func scale(p *[4]uint64, f uint64) {
	var carry uint64
	for i := range p {
		hi, lo := bits.Mul64(p[i], f)
		sum, over := bits.Add64(lo, carry, 0)
		p[i], carry = sum, hi+over
	}
}

// reduce divides p by d and returns what is left over.
func reduce(p *[4]uint64, d uint64) (rest uint64) {
	for i := len(p) - 1; i >= 0; i-- {
		p[i], rest = bits.Div64(rest, p[i], d)
	}
	return rest
}

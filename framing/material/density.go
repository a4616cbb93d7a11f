package material

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Density is in grams per cubic meter; see [measure.Density].
type Density = measure.Density

// Common units of density.
const (
	GramPerCubicMeter      = measure.GramPerCubicMeter
	KilogramPerCubicMeter  = measure.KilogramPerCubicMeter
	GramPerCubicCentimeter = measure.GramPerCubicCentimeter
)

// PoundsPerCubicFoot returns the density of n pounds in a cubic foot, rounded
// half away from zero: 156 is 2498.880 kg/m3.
func PoundsPerCubicFoot(n int64) Density {
	// 0.45359237 kg and 0.3048 m are exact: n x 453.59237 g / 0.028316846592 m3.
	d, _ := measure.MulDiv(Density(n), 453_592_370_000_000, 28_316_846_592)
	return d
}

const maxMass = 1<<63 - 1

// SheetMass returns the mass of a flat sheet, rounded half away from zero to a
// milligram. Negative arguments count as nothing; past the range it is the
// greatest Mass.
func SheetMass(area measure.Area, thickness measure.Length, d Density) measure.Mass {
	if area <= 0 || thickness <= 0 || d <= 0 {
		return 0
	}
	// um2 x nm x g/m3 is 1e-21 g, or 1e-18 mg. Area times thickness and the
	// product with the density are kept whole in 192 bits.
	hi, lo := bits.Mul64(uint64(area), uint64(thickness))
	p1, p0 := bits.Mul64(lo, uint64(d))
	q1, q0 := bits.Mul64(hi, uint64(d))
	p1, carry := bits.Add64(p1, q0, 0)
	p2 := q1 + carry
	const unit = 1_000_000_000_000_000_000
	if p2 != 0 || p1 >= unit {
		return maxMass
	}
	q, r := bits.Div64(p1, p0, unit)
	if q >= maxMass { // before rounding: the last uint64 has no next one
		return maxMass
	}
	if r >= unit-r {
		q++
	}
	return measure.Mass(q)
}

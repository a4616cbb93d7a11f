package measure

// A Density is in grams per cubic meter, far past any matter. Float glass, at
// 2500 kg/m3, is 2_500_000.
type Density int64

// Common densities. The pound per cubic foot is not among them: it is
// 16,018.46... g/m3, which is not whole. [ParseDensity] reads it.
const (
	GramPerCubicMeter      Density = 1
	KilogramPerCubicMeter          = 1000 * GramPerCubicMeter
	GramPerCubicCentimeter         = 1000 * KilogramPerCubicMeter
)

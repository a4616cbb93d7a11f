package mat

import "github.com/fairmiter/fairmiter/framing/measure"

// The bevels that a cutter can be set to, with room to spare; 45 degrees is
// what most cut and straight is 90.
const (
	LeastBevel = 15 * measure.Degree
	MostBevel  = 165 * measure.Degree
)

// Run returns how much the window of a board is larger on its face than along
// the line on its back, each side: thickness / tan bevel. It is nothing for a
// straight cut and negative for a reverse bevel. A board of .055 in cut at 45
// degrees has a run of .055 in.
//
// Source: geometry.
func Run(thickness measure.Length, bevel measure.Angle) measure.Length {
	return thickness.OverTan(bevel)
}

// A Bevel is the edge of a window, seen from the front.
type Bevel struct {
	// Run is how wide the white of the bevel shows, each side; negative for a
	// reverse bevel, which does not show.
	Run measure.Length
	// Slope is how wide the cut itself is.
	Slope measure.Length
	// Face is the size of the window on the board's face.
	Face measure.Size
}

func bevelOf(thickness measure.Length, angle measure.Angle, window measure.Size) Bevel {
	run := Run(thickness, angle)
	return Bevel{Run: run, Slope: thickness.OverSin(angle), Face: window.Grown(2 * run)}
}

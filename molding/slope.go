package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Pitch is how far a side slopes: the side of a canted shadow box, of a flared
// frame. One shop counts it from a frame that lies flat, the next from an upright
// box, and 38 degrees of the one are 52 of the other; so a Pitch says from which.
type Pitch struct {
	// Angle is the slope, from 0 to 90 degrees.
	Angle measure.Angle `json:"angle" order:"required"`
	// From says what has a slope of nothing.
	From PitchFrom `json:"from" order:"required"`
}

// PitchFrom says from where a pitch is counted.
type PitchFrom string

// What a pitch is counted from.
const (
	FromFlat     PitchFrom = "flat"     // 0 is a flat frame, 90 an upright box
	FromVertical PitchFrom = "vertical" // 0 is an upright box, 90 a flat frame
)

// Choices lists what a pitch can be counted from, for readers and forms.
func (PitchFrom) Choices() []string { return []string{string(FromFlat), string(FromVertical)} }

// Flat returns the pitch counted from flat.
func (p Pitch) Flat() measure.Angle {
	if p.From == FromVertical {
		return measure.RightAngle - p.Angle
	}
	return p.Angle
}

// Vertical returns the pitch counted from upright: the lean.
func (p Pitch) Vertical() measure.Angle { return measure.RightAngle - p.Flat() }

// Check adds to c what is wrong with p, whose fields lie at path at.
func (p Pitch) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/from", string(p.From), p.From.Choices())
	c.Angle(at+"/angle", p.Angle, 0, measure.RightAngle)
}

// A SlopedSide is a board that stands at a pitch. Its front is the face that one
// sees from in front of the frame; its sight edge lies inside and deepest, its
// rim outside and foremost. (Where the sight edge stands foremost, front and back
// change places and all else stays.) Both edges are square to the front.
type SlopedSide struct {
	Pitch Pitch `json:"pitch"`
	// Face is the width of the front, up the slope from the sight edge to the rim.
	Face measure.Length `json:"face"`
	// Thickness is the board's, square to the front.
	Thickness measure.Length `json:"thickness"`
}

// SlopedSideOf returns the side that rises by depth over run, both measured from
// the sight edge to the rim: how deep a shadow box gets and how wide it looks.
func SlopedSideOf(depth, run, thickness measure.Length) SlopedSide {
	return SlopedSide{
		Pitch:     Pitch{measure.ArcTan(depth, run), FromFlat},
		Face:      measure.Hypot(depth, run),
		Thickness: thickness,
	}
}

// Depth returns how much deeper the sight edge lies than the rim: face x sin of
// the pitch from flat.
func (s SlopedSide) Depth() measure.Length { return s.Face.Sin(s.Pitch.Flat()) }

// Run returns how wide the front looks from straight ahead: face x cos of the
// pitch from flat.
func (s SlopedSide) Run() measure.Length { return s.Face.Cos(s.Pitch.Flat()) }

// Check adds to c what is wrong with s, whose fields lie at path at. A thickness
// of nothing is not known.
func (s SlopedSide) Check(c *explain.Checker, at explain.Path) {
	s.Pitch.Check(c, at+"/pitch")
	c.Positive(at+"/face", s.Face)
	c.NotNegative(at+"/thickness", s.Thickness)
}

// A SlopedRail is one side cut to length between two corners. Where both corners
// point outward, each edge is longer than the one before, and the last is the
// length to take from the stick.
type SlopedRail struct {
	FrontSight measure.Length // the short edge of the front
	FrontRim   measure.Length // the long edge of the front
	BackSight  measure.Length // behind the sight edge
	BackRim    measure.Length // behind the rim
}

// Rail returns the lengths of a side by that of its sight edge and by its two
// corners, whose own pitch is this side's.
func (s SlopedSide) Rail(sight measure.Length, left, right SlopedCorner) SlopedRail {
	a, b := left.plane(), right.plane()
	rim := a.growth(s.Face) + b.growth(s.Face)
	back := a.backGrowth(s.Thickness) + b.backGrowth(s.Thickness)
	return SlopedRail{sight, sight + rim, sight + back, sight + rim + back}
}

// SightOf returns the length of the sight edge by that of the front's rim: for a
// box that is given by its outside.
func (s SlopedSide) SightOf(rim measure.Length, left, right SlopedCorner) measure.Length {
	return rim - left.plane().growth(s.Face) - right.plane().growth(s.Face)
}

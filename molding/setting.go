package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Position is how a board is laid to be cut. The same joint takes other
// settings in each: a pair of numbers means nothing without it.
type Position string

// The positions.
const (
	// LaidFlat is with the back on the table and the rim against the fence.
	LaidFlat Position = "flat"
	// OnEdge is with the rim on the table and the back against the fence.
	OnEdge Position = "on_edge"
	// Propped is at the board's own pitch: the sight edge on the table, the rim
	// leaned against the fence. Sides of one pitch then take a plain miter.
	Propped Position = "propped"
)

// Choices lists the positions, for readers and forms.
func (Position) Choices() []string {
	return []string{string(LaidFlat), string(OnEdge), string(Propped)}
}

// Key returns the key of what the position says at the bench: what lies on the
// table, what is against the fence, and from where the two angles are measured.
func (p Position) Key() explain.Key {
	switch p {
	case OnEdge:
		return explain.Key("laid.on_edge")
	case Propped:
		return explain.Key("laid.propped")
	}
	return explain.Key("laid.flat")
}

// A Setting is how the saw is set for one cut.
type Setting struct {
	// Miter is on the saw's scale, away from a square cut, measured on the table.
	// Above 0 the board comes out longer at the fence than in front of it.
	Miter measure.Angle `json:"miter"`
	// Tilt is the blade's, away from upright. Above 0 the board comes out longer
	// at the table than at its top.
	Tilt measure.Angle `json:"tilt"`
}

// Setting returns how the end of the corner's own side is cut in a position. An
// unknown position is taken as [LaidFlat]. Each angle is rounded once to the
// nanodegree.
//
// Laid flat, n equal sides of the pitch s from flat take
//
//	tan miter = cos s x tan(180/n)
//	sin tilt = sin s x sin(180/n)
//
// Printed as "Compound angle setting chart" in the manuals of the miter saws
// Craftsman 315.21212 (p. 24) and Ryobi TSS121 (p. 32). On edge, sine and cosine
// of s change places.
func (c SlopedCorner) Setting(p Position) Setting { return c.settingOf(p, c.plane()) }

// settingOf is how the corner, whose plane is given, is cut in a position.
func (c SlopedCorner) settingOf(p Position, plane cutPlane) Setting {
	if p == Propped && c.equal() {
		return Setting{Miter: c.Plain}
	}
	k := c.placed(p, plane)
	if c.equal() {
		return Setting{measure.ArcTan(k.fence, k.along), measure.ArcSin(k.table, radius)}
	}
	return Setting{measure.ArcTan(k.fence, k.along), measure.ArcTan(k.table, measure.Hypot(k.along, k.fence))}
}

// A placed is a cutPlane by how much the rail grows toward the fence and toward
// the table.
type placed struct{ along, fence, table measure.Length }

func (c SlopedCorner) placed(p Position, k cutPlane) placed {
	switch p {
	case OnEdge:
		return placed{k.along, k.back, k.rim}
	case Propped:
		return c.propped()
	}
	return placed{k.along, k.rim, k.back}
}

// propped is the plane of sides that differ in pitch as the frame stands, from
// the same normals as [SlopedCorner.plane].
func (c SlopedCorner) propped() placed {
	s, o, plain := c.Own.Flat(), c.Other.Flat(), max(c.Plain, -c.Plain)
	turn, other := 2*plain, radius.Sin(o)
	p := placed{other.Sin(turn), radius.Sin(s) - other.Cos(turn), radius.Cos(s) - radius.Cos(o)}
	if c.Plain < 0 {
		p.fence, p.table = -p.fence, -p.table
	}
	return p
}

// Dihedral returns the angle between the two fronts: 180 degrees less twice the
// tilt of the cut laid flat. A flat frame has 180, an upright square box 90.
func (c SlopedCorner) Dihedral() measure.Angle {
	return measure.Turn/2 - 2*c.Setting(LaidFlat).Tilt
}

// PitchOfMiter returns the pitch of equal sides for which a cut laid flat takes
// this miter, and whether there is one: the miter goes from the plain one down to
// nothing as the sides are raised.
func PitchOfMiter(plain, miter measure.Angle) (Pitch, bool) {
	p := Pitch{0, FromFlat}
	if miter != plain { // a hair of rounding counts for much near flat
		p.Angle = measure.ArcCos(radius.Sin(miter).Cos(plain), radius.Cos(miter).Sin(plain))
	}
	return p, inside(miter, plain)
}

// PitchOfTilt returns the pitch of equal sides for which a cut laid flat takes
// this tilt, and whether there is one: the tilt goes from nothing up to the plain
// miter as the sides are raised.
func PitchOfTilt(plain, tilt measure.Angle) (Pitch, bool) {
	flat := measure.ArcSin(radius.Sin(tilt), radius.Sin(plain))
	return Pitch{flat, FromFlat}, inside(tilt, plain)
}

// inside reports whether a lies between nothing and b.
func inside(a, b measure.Angle) bool {
	if b < 0 {
		return b <= a && a <= 0
	}
	return 0 <= a && a <= b
}

// DoesNotClose is the code of a pair of settings that no pitch has.
const DoesNotClose explain.Code = "slope.does_not_close"

// CheckPair adds to checker a problem where a miter and a tilt, laid flat, belong
// to no pitch of equal sides with this plain miter: the sides would not close. It
// names the two pairs that do. Within is how far the miter may lie from the one
// that belongs to the tilt.
func CheckPair(checker *explain.Checker, at explain.Path, plain measure.Angle, s Setting, within measure.Angle) {
	byTilt, ok := PitchOfTilt(plain, s.Tilt)
	right := SlopedCorner{plain, byTilt, byTilt}.Setting(LaidFlat)
	if ok && right.Miter-within <= s.Miter && s.Miter <= right.Miter+within {
		return
	}
	accepted := ""
	if ok {
		accepted = pair(Setting{right.Miter, s.Tilt}, within)
	}
	if byMiter, ok := PitchOfMiter(plain, s.Miter); ok {
		if accepted != "" {
			accepted += " or "
		}
		accepted += pair(Setting{s.Miter, SlopedCorner{plain, byMiter, byMiter}.Setting(LaidFlat).Tilt}, within)
	}
	if accepted == "" {
		accepted = "0 deg to " + plain.String()
	}
	checker.Add(explain.Problem{Code: DoesNotClose, Path: at, Given: pair(s, within), Accepted: accepted})
}

// pair writes a setting to the hundredth of a degree, or to the millionth where
// less than a hundredth is asked about.
func pair(s Setting, within measure.Angle) string {
	step := measure.Degree / 100
	if within < step {
		step = measure.Degree / 1_000_000
	}
	s = s.Nearest(step)
	return s.Miter.String() + " / " + s.Tilt.String()
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A SlopedCorner is where two sloped sides of one thickness meet, seen from one
// of them. Both are cut in the plane that halves the angle between their fronts.
type SlopedCorner struct {
	// Plain is the miter that the same corner takes in a flat frame, away from a
	// square cut: 180 degrees over the number of equal sides, or half of what the
	// corner turns. It is negative where the corner points inward.
	Plain measure.Angle `json:"plain"`
	// Own is the pitch of the side that is cut, Other that of its neighbor.
	Own   Pitch `json:"own"`
	Other Pitch `json:"other"`
}

// Limits of a corner and of its pitches.
const (
	// LeastPlain and MostPlain bound the plain miter, whichever way it goes.
	LeastPlain = measure.Degree / 2
	MostPlain  = 89 * measure.Degree
	// LeastPitch is the least pitch from flat of sides that differ in pitch: a
	// front that lies flat meets no other along a line that could be cut.
	LeastPitch = 1 * measure.Degree
	// MostSides is how many equal sides a frame can have.
	MostSides = 360
)

// RegularSlopedCorner returns each corner of n equal sides. Where 180 degrees over
// n is no whole number of nanodegrees (7, 11, 13 sides) it is rounded to one. Fewer
// sides than 3 are taken as 3.
func RegularSlopedCorner(n int, pitch Pitch) SlopedCorner {
	plain, _ := measure.MulDiv(measure.Turn/2, 1, int64(max(n, 3)))
	return SlopedCorner{plain, pitch, pitch}
}

// SlopedCornerAt returns the corner of which the sight edges make the angle
// corner in the plane of the picture, as it is measured there: 90 degrees in a
// rectangle.
func SlopedCornerAt(corner measure.Angle, own, other Pitch) SlopedCorner {
	plain, _ := Miter(corner)
	return SlopedCorner{plain, own, other}
}

// Turned returns the corner seen from the other side.
func (c SlopedCorner) Turned() SlopedCorner { return SlopedCorner{c.Plain, c.Other, c.Own} }

// Check adds to checker what is wrong with c, whose fields lie at path at. It takes
// plain miters from [LeastPlain] to [MostPlain], and pitches from 0 to 90 degrees,
// from [LeastPitch] up where the two differ.
func (c SlopedCorner) Check(checker *explain.Checker, at explain.Path) {
	if c.Plain < 0 {
		checker.Angle(at+"/plain", c.Plain, -MostPlain, -LeastPlain)
	} else {
		checker.Angle(at+"/plain", c.Plain, LeastPlain, MostPlain)
	}
	c.Own.Check(checker, at+"/own")
	c.Other.Check(checker, at+"/other")
	if c.equal() || !checker.Clean(at+"/own", at+"/other") {
		return
	}
	for _, p := range []struct {
		at    explain.Path
		pitch Pitch
	}{{at + "/own/angle", c.Own}, {at + "/other/angle", c.Other}} {
		least, most := LeastPitch, measure.RightAngle
		if p.pitch.From == FromVertical {
			least, most = 0, measure.RightAngle-LeastPitch
		}
		checker.Angle(p.at, p.pitch.Angle, least, most)
	}
}

// equal reports whether both sides have one pitch.
func (c SlopedCorner) equal() bool { return c.Own.Flat() == c.Other.Flat() }

// radius is the 1 of sines and cosines here, as in [explain.Radius].
const radius = measure.Length(1_000_000_000_000_000_000)

// A cutPlane is the plane of a cut, by how much the rail grows along it: over a
// way of along, by rim for each way up the front and by back for each way into
// the board.
type cutPlane struct{ along, rim, back measure.Length }

// plane is the plane that halves the angle between the two fronts, worked out to
// some 1e-18. Its normal is the difference of the fronts' normals
//
//	(0, sin own, cos own) and (-sin other sin turn, sin other cos turn, cos other)
//
// the rail lying along the first axis, the inside along the second, up the third.
//
// A corner that points inward is one that points outward, cut the other way.
func (c SlopedCorner) plane() cutPlane {
	own, other, plain := c.Own.Flat(), c.Other.Flat(), max(c.Plain, -c.Plain)
	sin, cos := measure.SineOf(own), measure.CosineOf(own)
	var p cutPlane
	if own == other { // the difference lies level, along the bisector
		plainSin := measure.SineOf(plain)
		p = cutPlane{radius.Cos(plain), plainSin.Of(cos.Of(radius)), plainSin.Of(sin.Of(radius))}
	} else {
		otherSin, otherCos := measure.SineOf(other), measure.CosineOf(other)
		turnSin, turnCos := measure.SineOf(2*plain), measure.CosineOf(2*plain)
		s, k := sin.Of(radius), cos.Of(radius)
		p = cutPlane{
			along: turnSin.Of(otherSin.Of(radius)),
			rim:   otherCos.Of(s) - turnCos.Of(otherSin.Of(k)),
			back:  radius - turnCos.Of(otherSin.Of(s)) - otherCos.Of(k),
		}
	}
	if c.Plain < 0 {
		p.rim, p.back = -p.rim, -p.back
	}
	return p
}

// size is the length of the plane's normal.
func (p cutPlane) size() measure.Length {
	return measure.Hypot(measure.Hypot(p.along, p.rim), p.back)
}

// growth is how much longer a rail's rim is than its sight edge at this corner.
func (p cutPlane) growth(face measure.Length) measure.Length {
	grown, _ := measure.MulDiv(face, int64(p.rim), int64(p.along))
	return grown
}

// backGrowth is how much longer the back is than the front at this corner.
func (p cutPlane) backGrowth(thickness measure.Length) measure.Length {
	grown, _ := measure.MulDiv(thickness, int64(p.back), int64(p.along))
	return grown
}

package molding

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Slope is how the sides of a frame stand that are boards at a pitch. The frame's
// Face is then the width of the board up the slope. The zero Slope is none.
type Slope struct {
	// Pitches are those of the sides, in order: one for all, or one for each.
	Pitches []Pitch `json:"pitches" order:"required"`
	// Thickness is the board's, square to its front.
	Thickness measure.Length `json:"thickness" order:"required"`
}

// IsZero reports whether nothing slopes.
func (s Slope) IsZero() bool { return s.Pitches == nil && s.Thickness == 0 }

// Of is the pitch of side i; without pitches it is flat.
func (s Slope) Of(i int) Pitch {
	switch {
	case len(s.Pitches) == 1:
		return s.Pitches[0]
	case i < len(s.Pitches):
		return s.Pitches[i]
	}
	return Pitch{From: FromFlat}
}

// Alike reports whether all sides have one pitch, however it was counted.
func (s Slope) Alike() bool {
	for i := range s.Pitches {
		if s.Pitches[i].Flat() != s.Pitches[0].Flat() {
			return false
		}
	}
	return true
}

// checkSides adds to c what is wrong with faces and slopes as such.
func (f Frame) checkSides(c *explain.Checker, at explain.Path) {
	if len(f.Faces) > MostCorners {
		c.Add(tooManySides(at+"/faces", len(f.Faces)))
	}
	for i, face := range f.Faces[:min(len(f.Faces), MostCorners)] {
		here := (at + "/faces").Index(i)
		c.NotNegative(here, face)
		if c.Clean(here, at+"/lip") && face > 0 && f.Lip >= face {
			c.Add(explain.Problem{
				Code: explain.OutOfRange, Path: here, Given: c.Write(face),
				Accepted: c.Write(0) + ", or more than the lip, " + c.Write(f.Lip),
			})
		}
	}
	if f.Slope.IsZero() {
		return
	}
	c.Positive(at+"/slope/thickness", f.Slope.Thickness)
	if len(f.Slope.Pitches) == 0 {
		c.Add(explain.Problem{Code: explain.TooFew, Path: at + "/slope/pitches", Given: "0", Accepted: "1 to " + strconv.Itoa(MostCorners)})
	} else if len(f.Slope.Pitches) > MostCorners {
		c.Add(tooManySides(at+"/slope/pitches", len(f.Slope.Pitches)))
	}
	for i, p := range f.Slope.Pitches[:min(len(f.Slope.Pitches), MostCorners)] {
		here := (at + "/slope/pitches").Index(i)
		p.Check(c, here)
		if c.Clean(here+"/angle", here+"/from") && !f.Slope.Alike() && p.Flat() < LeastPitch {
			c.Add(explain.Problem{Code: explain.OutOfRange, Path: here + "/angle", Given: p.Angle.String(),
				Accepted: LeastPitch.String() + " from flat, or more, where pitches differ"})
		}
	}
}

func tooManySides(at explain.Path, n int) explain.Problem {
	return explain.Problem{Code: explain.TooMany, Path: at, Given: strconv.Itoa(n), Accepted: "1 to " + strconv.Itoa(MostCorners)}
}

// Plain reports whether all four rails lie flat and are equally wide.
func (f Frame) Plain() bool { return f.Faces == nil && f.Slope.IsZero() }

// FaceOf is the face of the rail along side i: 0 where there is none.
func (f Frame) FaceOf(i int) measure.Length {
	if i < len(f.Faces) {
		return f.Faces[i]
	}
	return f.Face
}

// Bare reports whether a side has no rail.
func (f Frame) Bare() bool {
	for _, face := range f.Faces {
		if face == 0 {
			return true
		}
	}
	return false
}

// Side is the board along side i of a frame that slopes.
func (f Frame) Side(i int) SlopedSide {
	return SlopedSide{Pitch: f.Slope.Of(i), Face: f.FaceOf(i), Thickness: f.Slope.Thickness}
}

// Seen is how wide the rail along side i looks from straight ahead: its face, or a
// sloped side's run.
func (f Frame) Seen(i int) measure.Length {
	if f.Slope.IsZero() || f.FaceOf(i) == 0 {
		return f.FaceOf(i)
	}
	return f.Side(i).Run()
}

// Polygon is the frame around a panel of n sides, cut on a saw that swings so far
// from square. Of sides that slope only the sight edges are those of the frame: how
// they are cut is for [SlopedSide].
func (f Frame) Polygon(n int, reach measure.Angle) PolygonFrame {
	p := PolygonFrame{Allowance: f.Room(), Reach: reach, Sections: make([]Section, n)}
	for i := range p.Sections {
		if face := f.FaceOf(i); face > 0 {
			p.Sections[i] = Section{Face: face, Lip: f.Lip}
		}
	}
	return p
}

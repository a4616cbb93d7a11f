package material

import "github.com/fairmiter/fairmiter/framing/measure"

// A Section is the section of a molding: its face seen from the front, its
// height from front to back, and the rabbet that is cut out of it, lip wide and
// rabbet deep.
type Section struct {
	Face, Height, Lip, Rabbet measure.Length
}

// RailMass returns the mass of one mitered rail from its long point: the section
// over the mean length, which is the long point less face x tan(miter), 45
// degrees for four corners (plane geometry). The block and the rabbet are each
// rounded to the milligram.
//
// The rabbet lies along the short side, where the rail is shorter than the mean:
// by lip x rabbet x (face - lip) x tan(miter) too much is taken out, which is
// about a percent of a wide rail. A rail whose miters meet weighs nothing. A
// rabbet as large as the section, or larger, is not taken out.
func RailMass(s Section, longPoint measure.Length, miter measure.Angle, d Density) measure.Mass {
	length := longPoint - s.Face.Tan(miter)
	mass := BoxMass(s.Face, s.Height, length, d)
	if s.Lip < s.Face && s.Rabbet < s.Height {
		mass -= BoxMass(s.Lip, s.Rabbet, length, d)
	}
	return mass
}

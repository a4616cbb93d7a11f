package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Frame is what is decided about a rectangular frame with the same molding
// on all four sides. The zero Frame is none.
type Frame struct {
	// Kind is how the frame takes what is in it.
	Kind Kind `json:"kind" since:"2"`
	// Molding is what the shop calls the molding.
	Molding string `json:"molding,omitzero"`
	// Face is the width seen from the front, sight edge to outside, square
	// across the rail.
	Face measure.Length `json:"face" order:"required"`
	// Lip is how far the molding covers the package.
	Lip measure.Length `json:"lip" order:"required"`
	// Rabbet is the depth of the rabbet behind the lip; 0 where it is not known.
	// It is less than the height of the molding.
	Rabbet measure.Length `json:"rabbet"`
	// Allowance is the total play of the package per dimension, both sides
	// together. A floater has its gap instead.
	Allowance measure.Length `json:"allowance"`
	// Gap is the air between a floater and the art, each side.
	Gap measure.Length `json:"gap" since:"2"`
	// Ledge is how far a floater's ledge, on which the art is screwed from behind,
	// reaches in from the opening; 0 where it is not known.
	Ledge measure.Length `json:"ledge" since:"2"`
	// Height is the molding's size from its back to its front; 0 where it is not
	// known.
	Height measure.Length `json:"height" since:"2"`
	// Made says what is fixed beforehand, and so which way the rails are rounded.
	Made Made `json:"made" since:"2"`
	// Wood is what the molding is made of.
	Wood Wood `json:"wood" since:"2"`
	// Faces are the widths of the rails where they differ, in the order of the
	// panel's sides: bottom, right, top and left of a rectangle. A side with a face
	// of 0 has no rail. None: every rail is as wide as Face.
	Faces []measure.Length `json:"faces,omitzero" since:"3"`
	// Slope is how the sides stand where they slope, as those of a canted box do; the
	// zero Slope is a frame that lies flat.
	Slope Slope `json:"slope,omitzero" since:"3"`
}

// IsZero reports whether there is no frame.
func (f Frame) IsZero() bool {
	return f.Kind == "" && f.Molding == "" && f.Face == 0 && f.Lip == 0 && f.Rabbet == 0 && f.Allowance == 0 &&
		f.Gap == 0 && f.Ledge == 0 && f.Height == 0 && f.Made == "" && f.Wood == "" && f.Faces == nil && f.Slope.IsZero()
}

// A Kind is a kind of frame.
type Kind string

// The kinds of frames.
const (
	Rabbeted Kind = "rabbet"  // a lip covers the edge of the package
	Floater  Kind = "floater" // the art stands free in it, with a gap all round
)

// Choices lists the kinds, for readers and forms.
func (Kind) Choices() []string { return []string{string(Rabbeted), string(Floater)} }

// Made says what is fixed before a frame is made.
type Made string

// What can be fixed beforehand.
const (
	ToFit     Made = "to_fit"     // the package: rails are cut to hold it, and rounded up
	ToSpace   Made = "to_space"   // the outside: rails are cut into a space, and rounded down
	ReadyMade Made = "ready_made" // everything: the frame is there, nothing of it is cut
)

// Choices lists what can be fixed, for readers and forms.
func (Made) Choices() []string {
	return []string{string(ToFit), string(ToSpace), string(ReadyMade)}
}

// Direction is how the rails of such a frame are rounded: what goes into a
// space, or is there already, is never larger than it is.
func (m Made) Direction() measure.Direction {
	if m == ToSpace || m == ReadyMade {
		return measure.Down
	}
	return measure.Up
}

// A Wood is what a molding is made of, as package material knows it.
type Wood string

// Choices lists what moldings are made of, for readers and forms.
func (Wood) Choices() []string { return material.Moldings() }

// Room is the total play per dimension that the frame gives what it is made
// for: the allowance, or a floater's gap on both sides.
func (f Frame) Room() measure.Length {
	if f.Kind == Floater {
		return 2 * f.Gap
	}
	return f.Allowance
}

// Check adds to c what is wrong with f, whose fields lie at path at.
func (f Frame) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/kind", string(f.Kind), f.Kind.Choices())
	c.Text(at+"/molding", f.Molding)
	c.Positive(at+"/face", f.Face)
	c.NotNegative(at+"/lip", f.Lip)
	c.NotNegative(at+"/rabbet", f.Rabbet)
	c.NotNegative(at+"/allowance", f.Allowance)
	c.NotNegative(at+"/gap", f.Gap)
	c.NotNegative(at+"/ledge", f.Ledge)
	c.NotNegative(at+"/height", f.Height)
	c.Choice(at+"/made", string(f.Made), f.Made.Choices())
	c.Choice(at+"/wood", string(f.Wood), f.Wood.Choices())
	f.checkSides(c, at)
	if f.Kind == Floater && c.Clean(at+"/lip") && f.Lip != 0 {
		c.Add(explain.Problem{Code: explain.OutOfRange, Path: at + "/lip", Given: c.Write(f.Lip), Accepted: c.Write(0) + ": a floater covers nothing"})
	}
	if c.Clean(at+"/height", at+"/rabbet") && f.Height > 0 && f.Rabbet >= f.Height { // nor a lip, nor a ledge
		c.Add(explain.Problem{
			Code: explain.OutOfRange, Path: at + "/rabbet", Given: c.Write(f.Rabbet),
			Accepted: c.Write(0) + " to less than the height, " + c.Write(f.Height),
		})
	}
	if c.Clean(at+"/face", at+"/lip") && f.Lip >= f.Face { // no wood would be left
		c.Add(explain.Problem{
			Code: explain.OutOfRange, Path: at + "/lip", Given: c.Write(f.Lip),
			Accepted: c.Write(0) + " to less than the face, " + c.Write(f.Face),
		})
	}
}

// Lips returns the lip of each of the four rails.
func (f Frame) Lips() measure.Sides { return measure.AllSides(f.Lip) }

// A Rectangle is a rectangular frame worked out.
type Rectangle struct {
	// Package is what the frame is made for.
	Package measure.Size
	// Opening is the rabbet's size, back edge to back edge.
	Opening measure.Size
	// Sight is what is seen of the package.
	Sight measure.Size
	// Outside is the frame's outermost size. Its width is the long point of
	// the top and the bottom rail, its height that of the two sides.
	Outside measure.Size
	// Footage is the sum of the four long points: the molding that the rails
	// take, without kerfs and waste.
	Footage measure.Length
}

// Around works out the frame around a package. It takes any values;
// [Frame.Check] says which make sense.
//
// Source of the long point: Fine Woodworking no. 275, outside length = rabbet
// size + 2 x the width from rabbet to outside.
func (f Frame) Around(pkg measure.Size) Rectangle {
	return f.AroundOpening(pkg, pkg.Grown(f.Room()))
}

// AroundOpening is [Frame.Around] for an opening that is given.
func (f Frame) AroundOpening(pkg, opening measure.Size) Rectangle {
	r := Rectangle{
		Package: pkg,
		Opening: opening,
		Sight:   opening.Grown(-2 * f.Lip),
		Outside: opening.Grown(2 * (f.Face - f.Lip)),
	}
	r.Footage = 2 * r.Outside.UnitedLength()
	return r
}

// OpeningOf returns the opening that rails of these long points make: smaller
// by twice face less lip. It is also the opening of a ready-made frame that is
// sold by its outside size.
func (f Frame) OpeningOf(outside measure.Size) measure.Size {
	return outside.Grown(-2 * (f.Face - f.Lip))
}

// Miter returns how a corner between two rails of equal face is cut: on the
// saw's scale, away from a square cut, and as the angle between the cut and
// the rail's edge. The two add up to a right angle. A corner of 90 degrees
// takes 45 and 45; one of 93 takes 43.5 on the scale, not 46.5. Of an odd
// nanodegree the edge gets the half below.
func Miter(corner measure.Angle) (saw, edge measure.Angle) {
	edge = corner / 2
	return measure.RightAngle - edge, edge
}

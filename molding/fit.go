package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Cut says how a flat part that goes into the rabbet is cut.
type Cut struct {
	// Clearance is the total play per dimension that this part needs; it gets
	// the frame's allowance where that is more.
	Clearance measure.Length `json:"clearance"`
	// Size is the part's size where it is cut already. The zero Size is cut to
	// fit.
	Size measure.Size `json:"size,omitzero"`
}

// Given reports whether the part is cut already.
func (c Cut) Given() bool { return c.Size != measure.Size{} }

// Check adds to checker what is wrong with c, whose fields lie at path at.
func (c Cut) Check(checker *explain.Checker, at explain.Path) {
	checker.NotNegative(at+"/clearance", c.Clearance)
	checker.GivenSize(at+"/size", c.Size, c.Given())
}

// Play is the total play per dimension that the part is cut with in a frame of
// this allowance.
func (c Cut) Play(allowance measure.Length) measure.Length { return max(allowance, c.Clearance) }

// A Fit is how a part of some size lies in the rabbet.
type Fit struct {
	Size measure.Size
	// Play is what the opening leaves, both sides together; negative where the
	// part does not go in.
	Play measure.Size
	// Bite is how far the lip still covers the part's edge with all the play
	// on that side; at 0 or below it can drop out.
	Bite measure.Size
}

// Fit returns how a part cut as c says lies in an opening.
func (f Frame) Fit(opening measure.Size, c Cut) Fit {
	size := c.Size
	if !c.Given() {
		size = opening.Grown(-c.Play(f.Allowance))
	}
	return f.FitOf(opening, size)
}

// FitOf returns how a part of the given size lies in an opening.
func (f Frame) FitOf(opening, size measure.Size) Fit {
	fit := Fit{Size: size, Play: measure.Size{
		Width: opening.Width - size.Width, Height: opening.Height - size.Height,
	}}
	fit.Bite = measure.Size{Width: f.Lip - fit.Play.Width, Height: f.Lip - fit.Play.Height}
	return fit
}

// A Depth is how a package lies in the rabbet's depth.
type Depth struct {
	// Package is how thick everything is together.
	Package measure.Length
	// Clear is what the rabbet leaves behind the package; negative where the
	// package stands proud.
	Clear measure.Length
	// Wanted is the least rabbet that also leaves room for the points.
	Wanted measure.Length
}

// DepthOf returns how a package of parts of these thicknesses lies in the
// rabbet, where the points that hold it need so much room behind it.
func (f Frame) DepthOf(points measure.Length, parts ...measure.Length) Depth {
	var d Depth
	for _, t := range parts {
		d.Package += t
	}
	d.Clear = f.Rabbet - d.Package
	d.Wanted = d.Package + points
	return d
}

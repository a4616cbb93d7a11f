package plane

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of what is no outline, beside [explain.TooFew], [explain.TooMany] and
// [explain.OutOfRange].
const (
	NoLength   explain.Code = "plane.no_length"   // a side of nothing: two corners in one place
	Reverses   explain.Code = "plane.back"        // a corner that turns right back on its side
	Crosses    explain.Code = "plane.crosses"     // two sides that meet where they should not
	NoTriangle explain.Code = "plane.no_triangle" // a side as long as the two others, or longer
	Loose      explain.Code = "plane.loose"       // too few diagonals, or such as do not hold the outline
	Differs    explain.Code = "plane.differs"     // a diagonal more than is needed, and not as long as it must be
	AngleSum   explain.Code = "plane.angle_sum"   // turns that are not one whole turn
	Open       explain.Code = "plane.open"        // sides and angles that do not come home
	LostSide   explain.Code = "plane.lost_side"   // an offset that leaves nothing of a side
	Meets      explain.Code = "plane.meets"       // an offset after which the outline meets itself
	Step       explain.Code = "plane.step"        // one straight side that is to move by two distances
	Far        explain.Code = "plane.far"         // a corner out of the plane's reach
	NotConvex  explain.Code = "plane.not_convex"  // an outline with a corner that points inward
	Folds      explain.Code = "plane.folds"       // a curve moved inward by the radius of its sharpest bend, or more
)

// An Error says why something is no outline, or none that can be had.
type Error struct {
	Code explain.Code
	// At is the side or the corner at fault, counted from 0, Other a second one;
	// they are -1 where there is none.
	At, Other int
	// Given is what stood there and Limit what would do, on the side of it that
	// Bound says. The zero Value is none.
	Given, Limit explain.Value
	Bound        explain.Bound
}

// Error says it in one line.
func (e *Error) Error() string {
	text := explain.English(string(e.Code))
	if e.At >= 0 {
		text += " (" + strconv.Itoa(e.At+1)
		if e.Other >= 0 {
			text += " and " + strconv.Itoa(e.Other+1)
		}
		text += ")"
	}
	if e.Given.Kind != explain.NoKind {
		text += ": " + e.Given.String()
	}
	if accepted := e.accepted(); accepted != "" {
		text += "; accepted: " + accepted
	}
	return text
}

// Problem is e for an order whose outline stands at path at.
func (e *Error) Problem(at explain.Path) explain.Problem {
	p := explain.Problem{Code: e.Code, Path: at, Accepted: e.accepted()}
	if e.Given.Kind != explain.NoKind {
		p.Given = e.Given.String()
	}
	if e.At >= 0 {
		p.Path = at.Index(e.At)
	}
	return p
}

func (e *Error) accepted() string {
	switch {
	case e.Limit.Kind == explain.NoKind:
		return ""
	case e.Bound == explain.Exactly:
		return e.Limit.String()
	}
	return explain.English("bound."+string(e.Bound)) + " " + e.Limit.String()
}

// fault is an Error at a place.
func fault(code explain.Code, at int) *Error { return &Error{Code: code, At: at, Other: -1} }

// given adds what stood there.
func given[Q explain.Quantity](e *Error, q Q) *Error {
	e.Given = explain.Of(q)
	return e
}

// limited adds what would do.
func limited[Q explain.Quantity](e *Error, bound explain.Bound, q Q) *Error {
	e.Bound, e.Limit = bound, explain.Of(q)
	return e
}

// checkLength refuses a side or a size out of (0, most].
func checkLength(l, most measure.Length, at int) *Error {
	switch {
	case l == 0:
		return fault(NoLength, at)
	case l < 0:
		return limited(given(fault(explain.OutOfRange, at), l), explain.AtLeast, measure.Nanometer)
	case l > most:
		return limited(given(fault(explain.OutOfRange, at), l), explain.AtMost, most)
	}
	return nil
}

// checkCount refuses too few or too many of something.
func checkCount(n, least, most int) *Error {
	switch {
	case n < least:
		return limited(given(fault(explain.TooFew, -1), n), explain.AtLeast, least)
	case n > most:
		return limited(given(fault(explain.TooMany, -1), n), explain.AtMost, most)
	}
	return nil
}

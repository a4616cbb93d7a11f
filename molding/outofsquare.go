package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// An OutOfSquare is art with four straight edges that was measured along each of
// them and from corner to corner, seen from the front. One diagonal says where its
// corners lie; the second one checks the tape.
type OutOfSquare struct {
	Bottom measure.Length `json:"bottom"`
	Right  measure.Length `json:"right"`
	Top    measure.Length `json:"top"`
	Left   measure.Length `json:"left"`
	// Rising goes from the lower left corner to the upper right one, Falling from the
	// upper left to the lower right; 0 is not measured.
	Rising  measure.Length `json:"rising"`
	Falling measure.Length `json:"falling"`
}

// Check adds to c what is wrong with o, whose fields lie at path at. That the
// measures do not go together, [OutOfSquare.Outline] says.
func (o OutOfSquare) Check(c *explain.Checker, at explain.Path) {
	c.Measured(at+"/bottom", o.Bottom)
	c.Measured(at+"/right", o.Right)
	c.Measured(at+"/top", o.Top)
	c.Measured(at+"/left", o.Left)
	c.NotNegative(at+"/rising", o.Rising)
	c.NotNegative(at+"/falling", o.Falling)
	if o.Rising == 0 && o.Falling == 0 {
		c.Add(explain.Problem{Code: explain.Missing, Path: at + "/rising"})
	}
}

// Outline returns where the art's corners lie: its bottom level, the lower left
// corner at the origin, the others following to the left. Of two diagonals the second,
// falling one may differ from what the others say by no more than within; sides and
// diagonals that make no outline are refused with a [*plane.Error].
func (o OutOfSquare) Outline(within measure.Length) (plane.Polygon, error) {
	var diagonals []plane.Diagonal
	if o.Rising != 0 {
		diagonals = append(diagonals, plane.Diagonal{From: 0, To: 2, Length: o.Rising})
	}
	if o.Falling != 0 {
		diagonals = append(diagonals, plane.Diagonal{From: 1, To: 3, Length: o.Falling})
	}
	return plane.Measured([]measure.Length{o.Bottom, o.Right, o.Top, o.Left}, diagonals, within)
}

// Skew returns how far art of this size leans from square, by its two diagonals:
// above nothing to the right, where the rising one is longer.
//
//	sin skew = (rising^2 - falling^2) / (4 x width x height)
//
// It is exact where opposite sides are equal, and is worked out from the first part
// of the product, in whole nanometers of the height.
func Skew(s measure.Size, rising, falling measure.Length) measure.Angle {
	return measure.ArcSin(leaning(s, rising, falling), s.Height)
}

// leaning is how far the top lies to the right of the bottom.
func leaning(s measure.Size, rising, falling measure.Length) measure.Length {
	top, _ := measure.MulDiv(rising-falling, int64(rising+falling), int64(4*s.Width))
	return top
}

// ExplainSkew returns how [Skew] came to be. The size and the diagonals stand below
// art, the skew at worked.
func ExplainSkew(s measure.Size, rising, falling measure.Length, art, worked explain.Path) explain.Working {
	one, two := explain.T("rising", rising, art+"/rising"), explain.T("falling", falling, art+"/falling")
	top := explain.Quot(explain.Minus(one, two), explain.Sum(one, two),
		explain.Times(explain.N(4), explain.T("width", s.Width, art+"/width")))
	return explain.Working{
		Path: worked, Key: "skew", Exact: explain.Of(Skew(s, rising, falling)),
		Formula: explain.ArcSin(top, explain.T("height", s.Height, art+"/height")),
		Source:  explain.Geometry("the diagonals of a parallelogram, by the law of cosines"),
	}
}

// A Clean is the largest rectangle within art that is out of square: the window
// that shows none of its edges.
type Clean struct {
	// Upright is the largest with the art's bottom edge level.
	Upright plane.Rectangle
	// Turned is the largest with the art turned under the mat. The rectangle is turned
	// so in the art; the art is turned the other way under an upright window.
	Turned plane.Rectangle
}

// CleanStep is how finely [CleanWithin] looks for the angle by which the art is
// turned: over a meter it is 0.02 micrometers.
const CleanStep = measure.Degree / 1_000_000

// CleanWithin returns the largest rectangles within art of any convex outline with
// four corners, as [OutOfSquare.Outline] returns it. The art is turned by no more than
// its edges are out of level and out of plumb, and [CleanStep]. Rectangles are of largest surface;
// see [plane.Polygon.LargestUpright] and [plane.Polygon.LargestTurned] for how exactly.
func CleanWithin(art plane.Polygon) (Clean, error) {
	if err := countFault(art.Len(), 4, 4); err != nil {
		return Clean{}, err
	}
	upright, err := art.LargestUpright()
	if err != nil {
		return Clean{}, err
	}
	least, most := measure.Angle(0), measure.Angle(0)
	for i := range 4 {
		off := offAxis(art.Corner(i), art.Corner(i+1))
		least, most = min(least, off), max(most, off)
	}
	turned, err := art.LargestTurned(least-CleanStep, most+CleanStep, CleanStep)
	if err != nil {
		return Clean{}, err
	}
	if turned.Size.Area() < upright.Size.Area() {
		turned = upright
	}
	return Clean{upright, turned}, nil
}

// offAxis is how far a side is turned to the left of the nearest upright or level
// direction.
func offAxis(a, b plane.Point) measure.Angle {
	heading := measure.Slope(b.Y-a.Y, b.X-a.X)
	level, _ := measure.RoundTo(heading, measure.RightAngle, measure.Nearest)
	return heading - level
}

// Gaps are how far the edges of art lie from the sides of the opening of a floater:
// of each side where the gap is least and where it is most. A gap below nothing is art
// that does not go in.
type Gaps struct {
	Least, Most measure.Sides
}

// GapsIn returns the gaps of art in the middle of an opening, lying as its outline
// does; [plane.Polygon.Turned] turns it. It lies in the middle by its outermost
// corners: of an odd nanometer the right and the bottom get the rest. The art has four
// corners, as [OutOfSquare.Outline] returns them.
func GapsIn(opening measure.Size, art plane.Polygon) (Gaps, error) {
	if err := countFault(art.Len(), 4, 4); err != nil {
		return Gaps{}, err
	}
	low, high := art.Bounds()
	left, _ := (opening.Width - (high.X - low.X)).Half()
	top, _ := (opening.Height - (high.Y - low.Y)).Half()
	// The opening's sides, seen from the art's origin.
	west, north := low.X-left, high.Y+top
	east, south := west+opening.Width, north-opening.Height
	corners := art.Corners()
	var g Gaps
	span := func(least, most *measure.Length, a, b measure.Length) { *least, *most = min(a, b), max(a, b) }
	span(&g.Least.Bottom, &g.Most.Bottom, corners[0].Y-south, corners[1].Y-south)
	span(&g.Least.Right, &g.Most.Right, east-corners[1].X, east-corners[2].X)
	span(&g.Least.Top, &g.Most.Top, north-corners[2].Y, north-corners[3].Y)
	span(&g.Least.Left, &g.Most.Left, corners[3].X-west, corners[0].X-west)
	return g, nil
}

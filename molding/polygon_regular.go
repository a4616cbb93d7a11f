package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A RegularPanel is a panel of equal sides and equal corners. What the trade calls
// its size round has no meaning here: across flats, across points and the way around
// differ by more than a frame forgives, so it is said which.
type RegularPanel struct {
	Sides int `json:"sides"`
	// Across says where Size is measured. With an odd number of sides, across flats
	// is twice the way from the middle to a side, across points twice that to a
	// corner.
	Across plane.Across   `json:"across"`
	Size   measure.Length `json:"size"`
}

// Check adds to c what is wrong with p, whose fields lie at path at.
func (p RegularPanel) Check(c *explain.Checker, at explain.Path) {
	c.Number(at+"/sides", int64(p.Sides), 3, MostSides)
	c.Choice(at+"/across", string(p.Across), p.Across.Choices())
	c.Positive(at+"/size", p.Size)
}

// Flats returns the panel's size across flats: of a size across points the cosine
// of 180 degrees over n, of a side what it is over that angle's tangent.
//
// Source: Machinery's Handbook, 31st ed., p. 82.
func (p RegularPanel) Flats() measure.Length {
	half := plane.HalfTurn(p.Sides)
	switch p.Across {
	case plane.Points:
		return p.Size.Cos(half)
	case plane.OneSide:
		return p.Size.OverTan(half)
	}
	return p.Size
}

// A Regular is a frame around a regular panel, worked out. Sizes are across flats
// where nothing else is said.
type Regular struct {
	Panel   measure.Length
	Opening measure.Length // of the rabbet
	Sight   measure.Length // of what is seen
	Outside measure.Length // of the whole frame
	// Points is twice the way from the middle to an outermost point.
	Points measure.Length
	// LongPoint and ShortPoint are the lengths of a rail's two edges.
	LongPoint, ShortPoint measure.Length
	// Growth is how much longer a rail gets from the sight edge to the outer edge: not
	// by one face, nor by two.
	Growth measure.Length
	// Saw is the setting away from a square cut, the same at both ends of each rail,
	// Edge the angle between the cut and the rail's edge.
	Saw, Edge measure.Angle
	// Footage is the sum of the long points.
	Footage measure.Length
}

// AroundRegular works out the frame around a regular panel, with f's face, lip and
// play. It takes any values; [RegularPanel.Check] and [Frame.Check] say which make
// sense.
//
//	long point = (panel + allowance + 2 x (face - lip)) x tan(180/n)
//
// The saw is set to 180/n, to the nanodegree, and the rails are worked out from
// that, which is less than a nanometer off in fifty meters.
func (f Frame) AroundRegular(p RegularPanel) Regular {
	n := max(p.Sides, 3)
	r := Regular{Panel: p.Flats(), Saw: plane.HalfTurn(n)}
	r.Opening = r.Panel + f.Room()
	r.Sight = r.Opening - 2*f.Lip
	r.Outside = r.Opening + 2*(f.Face-f.Lip)
	r.Edge = measure.RightAngle - r.Saw
	r.Points = r.Outside.OverSin(r.Edge)
	r.LongPoint = r.Outside.Tan(r.Saw)
	r.ShortPoint = r.Sight.Tan(r.Saw)
	r.Growth = (2 * f.Face).Tan(r.Saw)
	r.Footage = measure.Length(n) * r.LongPoint
	return r
}

// RegularOpening returns the opening across flats that n rails of these long points
// make: a long point over the tangent of 180/n, less twice what the molding stands
// out beyond the rabbet.
func (f Frame) RegularOpening(n int, longPoint measure.Length) measure.Length {
	return longPoint.OverTan(plane.HalfTurn(n)) - 2*(f.Face-f.Lip)
}

// RegularSettings returns the saw settings of all 2n ends of a regular frame: 180/n,
// by a nanodegree more or less where that is not whole, so that they add up to 360
// degrees exactly. It has none for an n below 3 or above [MostSides].
func RegularSettings(n int) []measure.Angle {
	if n > MostSides {
		return nil
	}
	var settings []measure.Angle
	for _, turn := range plane.Turns(n) {
		settings = append(settings, turn/2, turn-turn/2)
	}
	return settings
}

// A RegularShow is the smallest regular frame that shows a whole picture, hung in
// one way.
type RegularShow struct {
	plane.Around
	// Panel is the size across flats of the panel whose frame it is.
	Panel measure.Length
}

// RegularShowing returns the smallest frames of n sides whose sight edges show all
// of an upright picture, one for each way to hang them: see [plane.RegularAround].
func (f Frame) RegularShowing(n int, shown measure.Size) ([]RegularShow, error) {
	ways, err := plane.RegularAround(n, shown)
	if err != nil {
		return nil, err
	}
	shows := make([]RegularShow, len(ways))
	for i, way := range ways {
		shows[i] = RegularShow{way, way.Flats + 2*f.Lip - f.Room()}
	}
	return shows, nil
}

package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// MaxMeasured is how many sides an outline may have that is made from what was
// measured, and how long each may be is [explain.MaxLength].
const MaxMeasured = 1000

// Walk returns the corners that one comes to by walking along sides one after the
// other, from a start and into a heading, which is counted from the right toward
// up. A turn is to the left. What need not come home is an open chain: rails that
// are being joined. It holds the start and one corner more for each side. The sides
// together are less than eight kilometers long.
func Walk(start Point, heading measure.Angle, sides ...Side) []Point {
	corners := make([]Point, 1, len(sides)+1)
	corners[0] = start
	var at spot
	for _, s := range sides {
		at = at.plus(arrow(int64(s.Length)<<grain, heading))
		heading += s.Turn
		p := at.point()
		corners = append(corners, Point{start.X + p.X, start.Y + p.Y})
	}
	return corners
}

// Closed returns the outline of these sides, 3 to [MaxMeasured], each with its
// turn, that begins at the origin, runs to the right and has its inside to the
// left. The turns add up to 360 degrees, but for a nanodegree each ([AngleSum]).
// Whoever walks along the sides comes home but for a gap of up to tolerance, or
// they are refused with the gap ([Open]); the gap is spread over the corners in
// proportion to the way there: the compass rule of the surveyors.
func Closed(sides []Side, tolerance measure.Length) (Polygon, error) {
	n := len(sides)
	if err := checkCount(n, 3, MaxMeasured); err != nil {
		return Polygon{}, err
	}
	var sum measure.Angle
	var whole int64
	for i, s := range sides {
		if err := checkLength(s.Length, explain.MaxLength, i); err != nil {
			return Polygon{}, err
		}
		if err := checkTurn(s.Turn, i); err != nil {
			return Polygon{}, err
		}
		sum += s.Turn
		whole += int64(s.Length)
	}
	if off := sum - measure.Turn; off < -measure.Angle(n) || off > measure.Angle(n) {
		return Polygon{}, limited(given(fault(AngleSum, -1), sum), explain.Exactly, measure.Turn)
	}
	spots, home, err := walked(sides)
	if err != nil {
		return Polygon{}, err
	}
	if gap := coarse(home.length()); gap > max(tolerance, 0) {
		return Polygon{}, limited(given(fault(Open, -1), gap), explain.AtMost, max(tolerance, 0))
	}
	var way int64
	for i := range spots {
		x, _ := measure.MulDiv(home.x, way, whole)
		y, _ := measure.MulDiv(home.y, way, whole)
		spots[i] = spots[i].minus(spot{x, y})
		way += int64(sides[i].Length)
	}
	return checked(spots)
}

// Closing returns the outline of sides of these lengths with these angles between
// them, as they measure on the inside: one angle less than sides. The last side,
// and the two angles at its ends, follow. It lies as that of [Closed] does.
func Closing(lengths []measure.Length, interior []measure.Angle) (Polygon, error) {
	n := len(lengths)
	if err := checkCount(n, 2, MaxMeasured-1); err != nil {
		return Polygon{}, err
	}
	if err := checkCount(len(interior), n-1, n-1); err != nil {
		return Polygon{}, err
	}
	sides := make([]Side, n)
	for i, l := range lengths {
		if err := checkLength(l, explain.MaxLength, i); err != nil {
			return Polygon{}, err
		}
		sides[i].Length = l
		if i < len(interior) {
			sides[i].Turn = measure.Turn/2 - interior[i]
			if err := checkTurn(sides[i].Turn, i); err != nil {
				return Polygon{}, err
			}
		}
	}
	spots, end, err := walked(sides)
	if err != nil {
		return Polygon{}, err
	}
	return checked(append(spots, end))
}

// checkTurn refuses to turn right back.
func checkTurn(turn measure.Angle, at int) *Error {
	if interior := measure.Turn/2 - turn; interior <= 0 {
		return limited(given(fault(explain.OutOfRange, at), interior), explain.AtLeast, measure.Nanodegree)
	} else if interior >= measure.Turn {
		return limited(given(fault(explain.OutOfRange, at), interior), explain.AtMost, measure.Turn-1)
	}
	return nil
}

// walked are the corners at which the sides begin, and where the last one ends.
func walked(sides []Side) (spots []spot, end spot, err *Error) {
	spots = make([]spot, 0, len(sides)+1)
	var heading measure.Angle
	for i, s := range sides {
		spots = append(spots, end)
		end = end.plus(arrow(int64(s.Length)<<grain, heading))
		if !end.within() {
			return nil, spot{}, limited(fault(Far, i), explain.AtMost, Reach)
		}
		heading += s.Turn
	}
	return spots, end, nil
}

// checked is an outline as one hands it out: no nil Error is an error.
func checked(spots []spot) (Polygon, error) {
	p, err := outline(spots)
	if err != nil {
		return Polygon{}, err
	}
	return p, nil
}

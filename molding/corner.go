package molding

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A RailEnd is how one end of a rail is cut. Its two angles are never the same
// number but at 45 degrees, and always said which.
type RailEnd struct {
	// Saw is on the saw's scale, away from a square cut. Above 0 the outer edge
	// comes out longer than the sight edge, below 0 shorter: the saw swings the
	// other way.
	Saw measure.Angle
	// Edge is between the cut and the rail's edge: 90 degrees less Saw.
	Edge measure.Angle
	// Growth is how much farther the outer edge reaches than the sight edge; below 0
	// less far.
	Growth measure.Length
	// Joint is how long the cut is, from the sight edge to the outer edge.
	Joint measure.Length
	// Square is an end that meets no rail.
	Square bool
}

// squareEnd is how the end of a rail is cut that meets no other.
func squareEnd(face measure.Length) RailEnd {
	return RailEnd{Edge: measure.RightAngle, Joint: face, Square: true}
}

// MiterBetween returns how two rails are cut for the corner between them, by the
// angle that it measures on the inside and their faces. The joint runs from where
// the sight edges meet to where the outer edges do:
//
//	first edge = the angle whose tangent is first sin corner / (second + first cos corner)
//
// and 180 degrees more at a corner that points inward, past 180 degrees. Rails 2
// and 3 wide at a square corner make 33.69 with the edge of the 2, a saw setting of
// 56.31; the 3 takes the reverse. Equal faces halve the corner, as [Miter] does.
// The edges add up to the corner, the two saw settings to what the outline turns
// there, exactly.
//
// The corner lies between 0 and 360 degrees and both faces are more than nothing.
// Where the outer edges run side by side, at 180 degrees, and the faces differ,
// they do not meet: the growth is past the range of [plane.Reach].
func MiterBetween(corner measure.Angle, first, second measure.Length) (one, two RailEnd) {
	one.Edge = firstEdge(corner, first, second)
	two.Edge = corner - one.Edge
	turn := measure.Turn/2 - corner
	for _, end := range []struct {
		end         *RailEnd
		face, other measure.Length
	}{{&one, first, second}, {&two, second, first}} {
		e := end.end
		e.Saw = measure.RightAngle - e.Edge
		e.Growth = fromFine(plane.Growth(fineUnit*end.face, fineUnit*end.other, turn))
		e.Joint = measure.Hypot(end.face, e.Growth)
	}
	return one, two
}

// firstEdge is worked out with the wider face as the radius, so that nothing is
// lost of the narrower one.
func firstEdge(corner measure.Angle, first, second measure.Length) measure.Angle {
	if first == second {
		_, edge := Miter(corner)
		return edge
	}
	own, other := radius, radius
	if first < second {
		own, _ = radius.Scale(int64(first), int64(second))
	} else {
		other, _ = radius.Scale(int64(second), int64(first))
	}
	edge := measure.ArcTan(own.Sin(corner), other+own.Cos(corner))
	if corner > measure.Turn/2 {
		edge += measure.Turn / 2
	}
	return edge
}

// SledLoss returns what a mitering sled takes off a rail over both ends, the apex of
// its fences being in the middle of the kerf: half a kerf at each end, slanted, so
// kerf / cos saw in all. At 45 degrees that is 1.414 kerfs, and a crosscut at the
// finished length and an eighth comes out right with a kerf of .088 only.
func SledLoss(kerf measure.Length, saw measure.Angle) measure.Length {
	return kerf.OverSin(measure.RightAngle - saw)
}

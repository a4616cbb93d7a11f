package molding

import (
	"math/bits"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Ring is a frame of equal rails of which every cut is off by the same angle,
// as a saw cuts them whose scale is off. All joints but the last are put tight;
// the last one shows the errors of all.
type Ring struct {
	// Sides is how many rails there are.
	Sides int `json:"sides"`
	// Long is the length of a rail at its long points.
	Long measure.Length `json:"long"`
	// Face is the molding's width.
	Face measure.Length `json:"face"`
	// Off is the error of each cut: above nothing it is too far from a square cut,
	// 30.8 degrees in place of a hexagon's 30.
	Off measure.Angle `json:"off"`
}

// MostOff returns the largest error of a cut that a ring of n sides is worked out
// for, either way: 60 degrees over n.
func MostOff(n int) measure.Angle { return 60 * measure.Degree / measure.Angle(max(n, 3)) }

// Check adds to c what is wrong with r, whose fields lie at path at.
func (r Ring) Check(c *explain.Checker, at explain.Path) {
	c.Number(at+"/sides", int64(r.Sides), 3, MostSides)
	c.Positive(at+"/long", r.Long)
	c.Positive(at+"/face", r.Face)
	if c.Clean(at + "/sides") {
		c.Angle(at+"/off", r.Off, -MostOff(r.Sides), MostOff(r.Sides))
	}
}

// An End is an end of a joint.
type End string

// The ends of a joint.
const (
	NoEnd End = ""     // the joint is tight
	Heel  End = "heel" // at the sight edge, inside
	Toe   End = "toe"  // at the long points, outside
)

// A LastJoint is how the last joint of a ring comes out.
type LastJoint struct {
	// Turn is how much too far its two cuts turn; below nothing, too little.
	Turn measure.Angle
	// Joint is how long the cut is, from heel to toe.
	Joint measure.Length
	// Miss is how far apart the long points of its two rails lie: the chain of
	// rails does not come home. It grows with the rails' length.
	Miss measure.Length
	// Wedge is how far the joint stands open at its open end with its other end
	// pulled together: what is left if the other joints give.
	Wedge measure.Length
	// Opens is the end at which it stands open.
	Opens End
}

// plain is the miter that the ring should have.
func (r Ring) plain() measure.Angle { return RegularSlopedCorner(r.Sides, Pitch{}).Plain }

// turns is how far all cuts of one kind turn too far together: half of what the
// last joint does.
func (r Ring) turns() measure.Angle { return measure.Angle(r.Sides) * r.Off }

// Last works the last joint out. With the miter m as it is cut and n cuts of one
// kind off by e, the outer edges turn by 2m at each joint that is made, and so
//
//	miss = long x sin(n e) / sin m
//	wedge = 2 x face/cos m x sin(n e)
func (r Ring) Last() LastJoint {
	cut := r.plain() + r.Off
	j := LastJoint{
		Turn:  2 * r.turns(),
		Joint: r.Face.OverSin(measure.RightAngle - cut),
		Miss:  r.Long.Sin(max(r.turns(), -r.turns())).OverSin(cut),
	}
	j.Wedge = (2 * j.Joint).Sin(max(r.turns(), -r.turns()))
	switch {
	case r.Off > 0:
		j.Opens = Heel
	case r.Off < 0:
		j.Opens = Toe
	}
	return j
}

// Chain returns the ring's rails as they are cut, to change one of them.
func (r Ring) Chain() Chain {
	c := make(Chain, min(max(r.Sides, 0), MaxChain))
	for i := range c {
		c[i] = CutRail{r.Long, r.plain() + r.Off, r.plain() + r.Off}
	}
	return c
}

// Correction returns by how much each cut has to be set otherwise: the error, the
// other way.
func (r Ring) Correction() measure.Angle { return -r.Off }

// OffByWedge returns the ring with the error that leaves a wedge at one end of the
// last joint of a test frame, all others being tight and its other end pulled
// together. It reports false where no error up to [MostOff] leaves so much.
func (r Ring) OffByWedge(wedge measure.Length, opens End) (Ring, bool) {
	return r.offBy(wedge, opens, r.Face, func(try Ring) bool { return try.wedgeUpTo(wedge) })
}

// OffByMiss returns the ring with the error that leaves the long points of the
// last joint so far apart, all others being tight: where it turned too far, the
// joint opens at the heel. It reports false as [Ring.OffByWedge] does.
func (r Ring) OffByMiss(miss measure.Length, opens End) (Ring, bool) {
	return r.offBy(miss, opens, r.Long, func(try Ring) bool { return try.missUpTo(miss) })
}

// offBy is the ring with the greatest error that is within.
func (r Ring) offBy(gap measure.Length, opens End, way measure.Length, within func(Ring) bool) (Ring, bool) {
	sign := measure.Angle(1)
	switch {
	case gap == 0:
		r.Off = 0
		return r, true
	case gap < 0 || opens != Heel && opens != Toe || way <= 0:
		return r, false
	case opens == Toe:
		sign = -1
	}
	r.Off = sign * r.greatest(sign, within)
	return r, r.Off != sign*MostOff(r.Sides)
}

// Finest returns the largest error of each cut, whichever way it goes, that
// leaves no wedge of more than gap in the last joint, and the largest that leaves
// its ends no farther apart. The first is enough where the other joints give a
// little or are clamped; the second where they do not.
func (r Ring) Finest(gap measure.Length) (byWedge, byMiss measure.Angle) {
	byWedge, byMiss = MostOff(r.Sides), MostOff(r.Sides)
	for _, sign := range []measure.Angle{1, -1} {
		byWedge = min(byWedge, r.greatest(sign, func(try Ring) bool { return try.wedgeUpTo(gap) }))
		byMiss = min(byMiss, r.greatest(sign, func(try Ring) bool { return try.missUpTo(gap) }))
	}
	return byWedge, byMiss
}

// greatest is the largest error, up to MostOff and the way that sign says, that
// is within; all smaller ones are too.
func (r Ring) greatest(sign measure.Angle, within func(Ring) bool) measure.Angle {
	low, high := measure.Angle(0), MostOff(r.Sides)+1 // within, and not
	for high-low > 1 {
		middle := low + (high-low)/2
		r.Off = sign * middle
		if within(r) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// wedgeUpTo compares without rounding: 2 face sin(n e) <= gap cos m.
func (r Ring) wedgeUpTo(gap measure.Length) bool {
	turns := max(r.turns(), -r.turns())
	return notMore(2*r.Face, radius.Sin(turns), gap, radius.Cos(r.plain()+r.Off))
}

// missUpTo compares without rounding: long sin(n e) <= gap sin m.
func (r Ring) missUpTo(gap measure.Length) bool {
	turns := max(r.turns(), -r.turns())
	return notMore(r.Long, radius.Sin(turns), gap, radius.Sin(r.plain()+r.Off))
}

// notMore reports whether a x b is not more than c x d, none below nothing.
func notMore(a, b, c, d measure.Length) bool {
	h1, l1 := bits.Mul64(uint64(max(a, 0)), uint64(max(b, 0)))
	h2, l2 := bits.Mul64(uint64(max(c, 0)), uint64(max(d, 0)))
	return h1 < h2 || h1 == h2 && l1 <= l2
}

// LastJointOpens is the code of a last joint that shows.
const LastJointOpens explain.Code = "ring.last_joint_opens"

// Notes says whether the last joint stands open by more than can be seen, and how
// exact each cut has to be. The ring lies at the path at, its last joint at worked.
func (r Ring) Notes(seen measure.Length, at, worked explain.Path) []explain.Note {
	j := r.Last()
	if r.wedgeUpTo(seen) && r.missUpTo(seen) {
		return nil
	}
	byWedge, byMiss := r.Finest(seen)
	n := explain.Note{
		Level: explain.Warning, Code: LastJointOpens, Path: worked + "/miss",
		Values: []explain.Term{
			explain.NewTerm("off", shownAngle(r.Off), ""),
			explain.NewTerm("miss", j.Miss, worked+"/miss"),
			explain.NewTerm("wedge", j.Wedge, worked+"/wedge"),
			explain.NewTerm("seen", seen, ""),
		},
	}
	least := min(byWedge, byMiss)
	if down, _ := measure.RoundTo(least, measure.Degree/10_000, measure.Down); down > 0 {
		least = down // as it is said
	}
	change := explain.Change{Path: at + "/off", To: explain.Of(least), Bound: explain.AtMost}
	if r.Off < 0 {
		change.To, change.Bound = explain.Of(-least), explain.AtLeast
	}
	n.Changes = []explain.Change{change}
	return []explain.Note{n}
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Blank says how the ring of boards is made from which an oval frame is cut or
// turned.
type Blank struct {
	// Pieces is how many there are, from 3 to 24; 0 is the least that the boards on
	// hand allow, or 4 where none are given.
	Pieces int `json:"pieces"`
	// Joint is how the pieces meet.
	Joint BlankJoint `json:"joint"`
	// Finger is the length of the fingers of a finger joint, by which the two pieces
	// overlap.
	Finger measure.Length `json:"finger"`
	// Spread says what is equal in equal pieces.
	Spread BlankSpread `json:"spread"`
	// Aim is where the joints point.
	Aim BlankAim `json:"aim"`
	// First is where the first joint of equal pieces lies, as Joints.
	First measure.Angle `json:"first"`
	// Joints are where the joints of unequal pieces lie, seen from the middle: from
	// the right, turning left, each farther than the one before, all of 360 degrees.
	// Where they are given, they decide, and not Pieces, First and Spread.
	Joints []measure.Angle `json:"joints,omitempty"`
	// Boards are the boards on hand.
	Boards []BlankBoard `json:"boards,omitempty"`
	// Kerf is what the saw takes between two pieces of one board.
	Kerf measure.Length `json:"kerf"`
	// Turning is what is left on for the lathe or the router, all around: beyond the
	// outside and within the sight edge.
	Turning measure.Length `json:"turning"`
}

// BlankJoint says how the pieces of a blank meet.
type BlankJoint string

// The joints.
const (
	StraightJoint BlankJoint = "straight" // end to end, cut once
	FingerJoint   BlankJoint = "finger"   // fingers that overlap, half of them beyond the joint's line on either side
)

// Choices lists the joints, for readers and forms.
func (BlankJoint) Choices() []string { return []string{string(StraightJoint), string(FingerJoint)} }

// BlankSpread says what is equal in the equal pieces of a blank. In a round it is
// all the same.
type BlankSpread string

// What is equal.
const (
	EqualArc   BlankSpread = "arc"   // the length along the middle of the ring
	EqualAngle BlankSpread = "angle" // the eccentric angle: that of the circles over the axes
)

// Choices lists what can be equal, for readers and forms.
func (BlankSpread) Choices() []string { return []string{string(EqualArc), string(EqualAngle)} }

// BlankAim says where the joints of a blank point. In a round it is all the same.
type BlankAim string

// Where joints point.
const (
	AimSquare BlankAim = "square" // square to the curve along the middle of the ring
	AimMiddle BlankAim = "middle" // to the middle of the oval
)

// Choices lists where joints can point, for readers and forms.
func (BlankAim) Choices() []string { return []string{string(AimSquare), string(AimMiddle)} }

// A BlankBoard is a kind of board on hand.
type BlankBoard struct {
	Width measure.Length `json:"width" order:"required"`
	// Length is that of one board; 0 is as long as it takes.
	Length measure.Length `json:"length"`
	// Count is how many there are; 0 is as many as it takes.
	Count int `json:"count"`
}

// Limits of a blank.
const (
	// MostBlankBoards is how many kinds of boards may be on hand.
	MostBlankBoards = 16
	usualPieces     = 4
)

// Check adds to c what is wrong with b, whose fields lie at path at.
func (b Blank) Check(c *explain.Checker, at explain.Path) {
	if b.Pieces != 0 {
		c.Number(at+"/pieces", int64(b.Pieces), LeastBlankPieces, MostBlankPieces)
	}
	c.Choice(at+"/joint", string(b.Joint), b.Joint.Choices())
	if b.Joint == FingerJoint {
		c.Measured(at+"/finger", b.Finger)
	} else {
		c.NotNegative(at+"/finger", b.Finger)
	}
	c.Choice(at+"/spread", string(b.Spread), b.Spread.Choices())
	c.Choice(at+"/aim", string(b.Aim), b.Aim.Choices())
	c.Angle(at+"/first", b.First, 0, measure.Turn-1)
	b.checkJoints(c, at+"/joints")
	b.checkBoards(c, at+"/boards")
	c.NotNegative(at+"/kerf", b.Kerf)
	c.NotNegative(at+"/turning", b.Turning)
}

func (b Blank) checkJoints(c *explain.Checker, at explain.Path) {
	n := len(b.Joints)
	if n == 0 {
		return
	}
	if n < LeastBlankPieces || n > MostBlankPieces {
		code := explain.TooFew
		if n > MostBlankPieces {
			code = explain.TooMany
		}
		c.Add(explain.Problem{Code: code, Path: at, Given: explain.Of(n).String(),
			Accepted: explain.Of(LeastBlankPieces).String() + " to " + explain.Of(MostBlankPieces).String()})
		return
	}
	// A piece reaches less than half around; a whole turn after the first joint it
	// comes again.
	least := measure.Angle(0)
	for i, joint := range b.Joints {
		most := least + straight - 2
		if i == 0 {
			most = measure.Turn - 1
		}
		if most = min(most, measure.Turn-1); joint < least || joint > most {
			c.Angle(at.Index(i), joint, min(least, most), most)
			return
		}
		least = joint + 1
	}
	if last := n - 1; b.Joints[0]+measure.Turn-b.Joints[last] >= straight {
		c.Angle(at.Index(last), b.Joints[last], b.Joints[0]+straight+1, measure.Turn-1)
	}
}

func (b Blank) checkBoards(c *explain.Checker, at explain.Path) {
	if n := len(b.Boards); n > MostBlankBoards {
		c.Add(explain.Problem{Code: explain.TooMany, Path: at, Given: explain.Of(n).String(), Accepted: "0 to " + explain.Of(MostBlankBoards).String()})
		return
	}
	for i, board := range b.Boards {
		here := at.Index(i)
		c.Measured(here+"/width", board.Width)
		c.NotNegative(here+"/length", board.Length)
		c.Number(here+"/count", int64(board.Count), 0, 1000)
	}
}

package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A CutRail is a rail as it was really cut.
type CutRail struct {
	// Long is the length of the outermost edge.
	Long measure.Length `json:"long"`
	// Left and Right are the cuts at its two ends, away from a square cut; above
	// nothing the outer edge is the longer. Going along the rails, the inside of
	// the frame lies to the left, and a rail begins at its Left end.
	Left  measure.Angle `json:"left"`
	Right measure.Angle `json:"right"`
}

// A Chain is the rails of a frame as they were cut, in the order in which they
// are joined: all joints are put tight but the last one, between the last rail and
// the first. Errors that take turns cancel: what one cut turns too far, the next
// turns back.
type Chain []CutRail

// MaxChain is how many rails a chain may have.
const MaxChain = 1000

// Check adds to checker what is wrong with c, whose rails lie at path at.
func (c Chain) Check(checker *explain.Checker, at explain.Path) {
	switch {
	case len(c) < 1:
		checker.Add(explain.Problem{Code: explain.TooFew, Path: at, Given: "0", Accepted: "1 to 1000"})
	case len(c) > MaxChain:
		checker.Add(explain.Problem{Code: explain.TooMany, Path: at, Accepted: "1 to 1000"})
		return
	}
	for i, r := range c {
		checker.Positive(at.Index(i)+"/long", r.Long)
		checker.Angle(at.Index(i)+"/left", r.Left, -MostPlain, MostPlain)
		checker.Angle(at.Index(i)+"/right", r.Right, -MostPlain, MostPlain)
	}
}

// A ChainEnd is where a chain of rails ends, seen from where it began.
type ChainEnd struct {
	// Along and Across are how far the last rail's long point lies from the
	// first rail's, along the first rail and to its left.
	Along, Across measure.Length
	// Miss is how far apart the two points are. Of an open frame that lacks one
	// side it is that side's length.
	Miss measure.Length
	// Turned is how far the chain has turned over the joints that are made.
	Turned measure.Angle
	// Over is how much too far all cuts together turn, the last joint's included:
	// nothing where the cuts of a closed frame sum up to a whole turn.
	Over measure.Angle
	// Open is the gap of the last joint square to the last rail's cut, and Slide
	// how far its outer point lies in from the other's along that cut. An Open
	// below nothing: there is too much wood.
	Open, Slide measure.Length
}

// End works out where the chain ends, each rail to a nanometer.
func (c Chain) End() ChainEnd {
	var e ChainEnd
	if len(c) == 0 {
		return e
	}
	for i, r := range c {
		if i > 0 {
			e.Turned += c[i-1].Right + r.Left
		}
		e.Along += r.Long.Cos(e.Turned)
		e.Across += r.Long.Sin(e.Turned)
	}
	last := c[len(c)-1]
	e.Miss = measure.Hypot(e.Along, e.Across)
	e.Over = e.Turned + last.Right + c[0].Left - measure.Turn
	// What is square to the last cut points forward, turned to the left of the
	// rail by its miter; the cut goes inward a right angle from there.
	normal := e.Turned + last.Right
	e.Open = -e.Along.Cos(normal) - e.Across.Sin(normal)
	e.Slide = e.Along.Sin(normal) - e.Across.Cos(normal)
	return e
}

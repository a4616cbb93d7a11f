package hang

import "github.com/fairmiter/fairmiter/framing/measure"

// Angles of a wire, from the horizontal.
const (
	// LowAngle is where a wire starts to be flat: it carries the whole weight.
	// Under it a sling is not recommended (ASME B30.9, as quoted).
	LowAngle = 30 * measure.Degree
	// FlatAngle is what a single hook rarely gives more than (a framing shop's
	// page: 15 to 20 degrees, more than twice the weight in the wire).
	FlatAngle = 15 * measure.Degree
)

// Heavy is the weight from which a caution speaks of what is in the wall: about
// twenty pounds (common practice).
const Heavy = 9 * measure.Kilogram

// A fault is one or more things that are not well with a layout, as bits.
type fault uint

const (
	noSpan       fault = 1 << iota // the hangers do not fit beside each other
	wideSpread                     // the hooks are as far apart as the hangers, or more
	shortWire                      // the wire does not reach
	topHeavy                       // the hangers are no higher than the middle
	shows                          // wire or hook reach the frame's top
	nearTop                        // they come nearer to it than they should
	breaks                         // the wire
	hangerGives                    // a hanger carries more than it is rated for
	hookGives                      // so does a hook
	throughFloor                   // the piece reaches below the floor
	flat                           // the wire, under [FlatAngle]
	low                            // the wire, under [LowAngle]
	slides                         // only friction holds the piece level
	uneven                         // the rings stand at two heights
	offWood                        // a hanger's screws miss the wood of its rail

	refused = noSpan | wideSpread | shortWire | topHeavy | shows | breaks | hangerGives | hookGives | throughFloor | offWood
)

// faults looks at the layout l of h.
func (h Hanging) faults(g Given, l Layout) fault {
	var f fault
	note := func(what fault, is bool) {
		if is {
			f |= what
		}
	}
	note(throughFloor, 2*h.Center < g.Outside.Height)
	note(topHeavy, 2*max(l.Below.Left, l.Below.Right) >= g.Outside.Height)
	if !l.Hangs() {
		switch {
		case l.Span <= 0:
			note(noSpan, true)
		case l.run() <= 0:
			note(wideSpread, true)
		default:
			note(shortWire, true)
		}
		return f
	}
	note(offWood, g.wood() > 0 && h.screw(g, l) >= g.wood())
	drop := l.drop()
	note(shows, drop <= h.NailAbove && (drop <= 0 || h.NailAbove > 0))
	note(nearTop, f&shows == 0 && h.By != Sawtooth && drop < h.Hidden)
	note(hangerGives, over(l.Hanger.Heaviest, h.Ratings.HangerHolds))
	note(hookGives, over(l.Hook.Heaviest, h.Ratings.HookHolds))
	switch h.By {
	case Sawtooth:
	case Rings:
		note(uneven, l.Below.Left != l.Below.Right)
	default:
		note(breaks, h.Ratings.WireBreaks > 0 && h.breaking(l) > h.Ratings.WireBreaks)
		note(flat, l.Angle < FlatAngle)
		note(low, l.Angle >= FlatAngle && l.Angle < LowAngle)
		note(slides, l.StableRise > 0 && l.Rise <= l.StableRise)
	}
	return f
}

// screw is how far in from its rail's outside edge a hanger is fixed.
func (h Hanging) screw(g Given, l Layout) measure.Length {
	if h.By == Sawtooth {
		return l.Below.Left
	}
	return h.inset(g)
}

// over reports whether a load passes a rating that is given.
func over(load, rating measure.Force) bool { return rating > 0 && load > rating }

// drop is how far below the frame's top the highest hook bears.
func (l Layout) drop() measure.Length {
	if l.Rise != 0 {
		return l.WireTop
	}
	return min(l.Below.Left, l.Below.Right)
}

// breaking is the breaking load that the wire must have.
func (h Hanging) breaking(l Layout) measure.Force {
	needed, _ := measure.MulDiv(l.Tension.Heaviest, int64(h.Ratings.Factor), 1)
	return needed
}

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

// What one sawtooth is for (common practice: light, small pieces, up to about 5
// lb; what is larger than 16 x 20 in swings on one point).
const (
	SawtoothMass = 2268 * measure.Gram
	SawtoothSide = 16 * measure.Inch
)

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
	offWood                        // the screws of hangers miss the wood of their rails
	offTop                         // the nails of a sawtooth miss that of the top rail
	tooHeavy                       // for a sawtooth
	tooLarge                       // for a sawtooth

	// unlaid is why a piece cannot hang as decided, loads what it cannot hang on,
	// and refused all that will not hold or not hang.
	unlaid  = noSpan | wideSpread | shortWire
	loads   = breaks | hangerGives | hookGives
	refused = unlaid | loads | topHeavy | shows | throughFloor | flat | offWood | offTop | tooHeavy
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
	note(offWood, h.By != Sawtooth && g.wood() > 0 && h.inset(g) >= g.wood())
	note(offTop, h.By == Sawtooth && g.wood() > 0 && l.Below.Left >= g.wood())
	drop := l.drop()
	note(shows, drop <= h.NailAbove && (drop <= 0 || h.NailAbove > 0))
	note(nearTop, f&shows == 0 && h.By != Sawtooth && drop < h.Hidden)
	note(hangerGives, over(l.Hanger.Heaviest, h.Ratings.HangerHolds))
	note(hookGives, over(l.Hook.Heaviest, h.Ratings.HookHolds))
	switch h.By {
	case Sawtooth:
		note(tooHeavy, g.Heaviest > SawtoothMass)
		note(tooLarge, min(g.Outside.Width, g.Outside.Height) > SawtoothSide)
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

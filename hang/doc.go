// Package hang works out how one piece hangs on the wall: on a wire over one
// or two hooks, on two rings, or on a sawtooth hanger; where the hooks go, and
// what each part has to hold.
//
// # Words
//
// The hangers are what is screwed to the back of the frame: two D-rings or
// strap hangers on the sides, or one sawtooth in the middle of the top rail.
// The hooks are what is in the wall. The wire runs from hanger to hanger, and
// a hook lifts it. Span is from hanger to hanger, rise how much higher the taut
// wire is at the hook than at the hangers, and the wire's angle is measured
// from the horizontal. Below is how far a hanger bears below the frame's top.
//
// # Three loads
//
// They are never one number. With a weight W on a smooth hook and a wire at the
// angle u,
//
//	tension = W / (2 x sin u)   in the wire, and so on each hanger
//	pull    = W / (2 x tan u)   draws the two side rails together
//	hook    = W                 on the one hook in the wall
//
// Two hooks share the weight, half each, and the wire between them draws each
// inward by tension - pull. The flatter the wire, the higher the tension: at 30
// degrees it is the weight itself, at 15 nearly twice as much, at 2 fourteen
// times. Rings on a hook each carry half the weight, and nothing is multiplied.
// The wire's own weight is left out, and so is friction.
//
// Lengths are whole nanometers and loads whole millinewtons, so in place of the
// sine stands leg / rise, with a leg as long as the sloping wire from hanger to
// hook.
//
// # Level
//
// A piece can slide along its wire on one hook. The hook moves over the back on
// an ellipse with the hangers as its foci, and the piece comes back to level by
// itself only where
//
//	rise > (span / 2)^2 / h
//
// with the hangers h above the center of gravity, which is taken to be in the
// middle of the piece. Most wires are much too flat for that: only friction
// holds them level, and two hooks mend it.
//
// # Marks
//
// With the middle of the piece at some height above the floor, the wire or the
// ring bears at
//
//	bearing = center + height / 2 - drop
//
// where the drop is below - rise for a wire and below for a ring. The hole of
// the nail is higher by what the hook itself measures.
//
// # What it does not know
//
// It does not know the wall. A rating that is not given is said to be missing
// and never taken as good, and the notes defer to the makers of the hardware and
// to local practice.
package hang

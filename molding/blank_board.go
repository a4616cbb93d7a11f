package molding

import "github.com/fairmiter/fairmiter/framing/measure"

// A blankHull is what a board has to hold of one piece: the arc along the outside
// and the two ends. The sight edge bows outward between its ends, so it asks for
// nothing.
type blankHull struct {
	outer    blankEdge
	from, to measure.Angle // headings of the normals at the arc's ends, less than 180 degrees apart
	// corners are the sight edge's end and the outside's at the right, then the
	// outside's and the sight edge's at the left, to whole nanometers as the plan has
	// them; exact are the same, finer, so that equal pieces are turned alike.
	corners, exact [4]finePoint
	middle         measure.Angle // heading halfway between the joints
}

// blankTilt is how far a board may be turned from square to the middle of its piece:
// farther, its grain would run across.
const blankTilt = measure.RightAngle / 2

// A blankTry is a way to lay a board: its upper edge is square to the heading turn.
// pair are the corners whose line it goes along, -1 where it goes along none.
type blankTry struct {
	turn  measure.Angle
	width measure.Length
	pair  [2]int
}

// spans are how far a piece reaches in a direction, least and most.
func (u *blankHull) spans(a measure.Angle) (least, most measure.Length) {
	h := headingOf(a)
	least = h.out(u.corners[0])
	most = least
	for _, c := range u.corners[1:] {
		out := h.out(c)
		least, most = min(least, out), max(most, out)
	}
	if u.faces(a) {
		most = u.outer.reach(h)
	}
	if u.faces(a + straight) {
		least = -u.outer.reach(h)
	}
	return least, most
}

// faces reports whether the arc faces a direction somewhere.
func (u *blankHull) faces(a measure.Angle) bool {
	after := (a - u.from) % measure.Turn
	if after < 0 {
		after += measure.Turn
	}
	return after <= u.to-u.from
}

// narrowest is the way to lay the narrowest board of all that are turned by no more
// than blankTilt.
//
// Over the rotations, the width of a piece has its least values where a board lies
// along the line of two corners, where a corner lies square across from a place of
// the arc that bends less than the board is wide, or at the ends of what is allowed:
// anywhere else it still falls to one side (Reuleaux; the arc is a caliper's corner
// that moves). Lines that are no edge are tried, too: they are rotations like others.
func (u *blankHull) narrowest() blankTry {
	var best blankTry
	try := func(a measure.Angle, pair [2]int) {
		turns, _ := measure.RoundTo(u.middle-a, straight, measure.Nearest)
		if a += turns; a < u.middle-blankTilt || a > u.middle+blankTilt {
			return
		}
		if least, most := u.spans(a); best.width == 0 || most-least < best.width {
			best = blankTry{a, most - least, pair}
		}
	}
	for _, pair := range [...][2]int{{0, 3}, {1, 2}, {0, 1}, {2, 3}, {0, 2}, {1, 3}} {
		p, q := u.exact[pair[0]], u.exact[pair[1]]
		try(measure.Slope(q.y-p.y, q.x-p.x)+measure.RightAngle, pair)
	}
	none := [2]int{-1, -1}
	try(u.middle-blankTilt, none)
	try(u.middle+blankTilt, none)
	u.across(func(a measure.Angle) { try(a, none) })
	return best
}

// across calls try with the headings at which the lowest corner lies square across
// from a place of the arc, and farther from it than the arc bends.
func (u *blankHull) across(try func(measure.Angle)) {
	const steps = 8
	low, high := max(u.from, u.middle-blankTilt), min(u.to, u.middle+blankTilt)
	if high <= low {
		return
	}
	var before, now [4]struct{ place, up measure.Length }
	for i := range measure.Angle(steps + 1) {
		a := low + (high-low)*i/steps
		h := headingOf(a)
		p, _ := u.outer.at(h)
		place := h.left(p)
		for j, c := range u.corners {
			now[j].place, now[j].up = place-h.left(c), h.out(c)
		}
		for j := range now {
			if i == 0 || before[j].place >= 0 || now[j].place < 0 {
				continue
			}
			lowest := true
			for k := range now { // lower at both headings, it is so between them
				lowest = lowest && (before[j].up <= before[k].up || now[j].up <= now[k].up)
			}
			if lowest {
				try(u.square(j, low+(high-low)*(i-1)/steps, a))
			}
		}
		before = now
	}
}

// square is the heading between two others at which a corner lies square across from
// the arc: to the right of it before and to the left after.
func (u *blankHull) square(corner int, low, high measure.Angle) measure.Angle {
	for high-low > 1 {
		a := low + (high-low)/2
		h := headingOf(a)
		if p, _ := u.outer.at(h); h.left(p) < h.left(u.corners[corner]) {
			low = a
		} else {
			high = a
		}
	}
	return high
}

package plane

import (
	"cmp"
	"slices"
)

// crossing finds two sides, not neighbors, that have a point in common. Sides
// are compared with those that begin, from the left, before they end.
func crossing(spots []spot) (a, b int, found bool) {
	n := len(spots)
	type span struct {
		left, right, low, high int64
		side                   int
	}
	spans := make([]span, n)
	for i, s := range spots {
		t := spots[(i+1)%n]
		spans[i] = span{min(s.x, t.x), max(s.x, t.x), min(s.y, t.y), max(s.y, t.y), i}
	}
	slices.SortFunc(spans, func(s, t span) int { return cmp.Or(cmp.Compare(s.left, t.left), s.side-t.side) })
	for i := range spans {
		s := &spans[i]
		for j := i + 1; j < n && spans[j].left <= s.right; j++ {
			t := &spans[j]
			if t.low > s.high || t.high < s.low {
				continue
			}
			if apart := (s.side - t.side + n) % n; apart == 1 || apart == n-1 {
				continue
			}
			if meet(spots[s.side], spots[(s.side+1)%n], spots[t.side], spots[(t.side+1)%n]) {
				return min(s.side, t.side), max(s.side, t.side), true
			}
		}
	}
	return 0, 0, false
}

// meet reports whether the straight lines from a to b and from c to d, whose
// bounds overlap, have a point in common.
func meet(a, b, c, d spot) bool {
	return side(a, b, c)*side(a, b, d) <= 0 && side(c, d, a)*side(c, d, b) <= 0
}

// Meet reports whether the straight lines from a to b and from c to d have a point
// in common, exactly. All four lie within [Reach]; what lies outside it meets
// nothing.
func Meet(a, b, c, d Point) bool {
	if !a.within() || !b.within() || !c.within() || !d.within() ||
		max(a.X, b.X) < min(c.X, d.X) || max(c.X, d.X) < min(a.X, b.X) ||
		max(a.Y, b.Y) < min(c.Y, d.Y) || max(c.Y, d.Y) < min(a.Y, b.Y) {
		return false
	}
	return meet(a.spot(), b.spot(), c.spot(), d.spot())
}

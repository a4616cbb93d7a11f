package framing

import (
	"cmp"
	"math/bits"
	"slices"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// A trial is the piece worked with one value of the free field.
type trial struct {
	x      int64
	figure int64
	miss   int64 // by how much the figure is more than is wanted
	ok     bool  // the order takes the value, and has the figure
}

func (t trial) hit() bool { return t.ok && t.miss == 0 }

// crosses reports whether the figure goes past what is wanted between two trials.
func (t trial) crosses(u trial) bool { return t.ok && u.ok && (t.miss < 0) != (u.miss < 0) }

// A search looks for the value of the free field with which nothing is missed. It
// keeps every trial, so that none is made twice.
type search struct {
	*asked
	work   func(x int64) (figure, wanted int64, ok bool)
	trials int
	tried  []trial // by x
	start  trial   // the present value, or the nearest one found that can be worked
	spent  bool    // MaxTrials were made, and more were wanted
}

// beside is how many nanometers on both sides of a crossing are looked at: a
// figure that is halved and rounded can jump to and fro there by one.
const beside = 8

// at makes a trial, or returns the one that was made. Outside the values that are
// tried, and once too many were made, it is not ok.
func (s *search) at(x int64) trial {
	if x < 0 || x > s.most {
		return trial{x: x}
	}
	i, found := slices.BinarySearchFunc(s.tried, x, func(t trial, x int64) int { return cmp.Compare(t.x, x) })
	if found {
		return s.tried[i]
	}
	if s.trials >= MaxTrials {
		s.spent = true
		return trial{x: x}
	}
	s.trials++
	figure, wanted, ok := s.work(x)
	t := trial{x, figure, less(figure, wanted), ok}
	s.tried = append(s.tried, t)
	copy(s.tried[i+1:], s.tried[i:])
	s.tried[i] = t
	return t
}

// less is a - b, at the ends of its range where it is past them.
func less(a, b int64) int64 {
	d := a - b
	switch {
	case a >= 0 && b < 0 && d < 0:
		return 1<<63 - 1
	case a < 0 && b >= 0 && d >= 0:
		return -1 << 63
	}
	return d
}

// begin finds a value that can be worked: the present one, or one near it; then
// every half of the largest, the nearest first.
func (s *search) begin() bool {
	present := min(max(s.present, 0), s.most)
	s.tried = make([]trial, 0, 2*bits.Len64(uint64(s.most)))
	if s.start = s.at(present); s.start.ok {
		return true
	}
	halves := []int64{0}
	for x := s.most; x > 0; x /= 2 {
		halves = append(halves, x)
	}
	for len(halves) > 0 {
		nearest := 0
		for i, x := range halves {
			if distance(x, present) < distance(halves[nearest], present) {
				nearest = i
			}
		}
		if s.start = s.at(halves[nearest]); s.start.ok {
			return true
		}
		halves = slices.Delete(halves, nearest, nearest+1)
	}
	return false
}

func distance(x, y int64) int64 { return max(x-y, y-x) }

// probe is the first step away from the present value: a millimeter of a length.
func (s *search) probe() int64 { return s.most / 50_000 }

// find looks for a trial that hits.
func (s *search) find() (trial, bool) {
	if s.start.hit() {
		return s.start, true
	}
	if t, ok := s.follow(); ok {
		return t, true
	}
	for d := s.probe(); ; d *= 2 {
		s.at(max(s.start.x-d, 0))
		s.at(min(s.start.x+d, s.most))
		if t, ok := s.cross(); ok {
			return t, true
		}
		if d >= s.most {
			break
		}
	}
	s.edges()
	if t, ok := s.cross(); ok {
		return t, true
	}
	return s.turn()
}

// follow goes along the line through two trials to where it would hit, and again
// from there. Where the figure is straight it comes to within its roundings at once.
func (s *search) follow() (trial, bool) {
	a, b := s.start, s.at(s.start.x+s.probe())
	if !b.ok {
		b = s.at(s.start.x - s.probe())
	}
	for range 8 {
		if b.hit() {
			return b, true
		}
		if !a.ok || !b.ok || a.miss == b.miss {
			break
		}
		step, _ := measure.MulDiv(b.miss, less(b.x, a.x), less(b.miss, a.miss))
		if step == 0 {
			return s.look(b.x)
		}
		a, b = b, s.at(min(max(less(b.x, step), 0), s.most))
		if a.x == b.x {
			break
		}
	}
	return trial{}, false
}

// look makes the trials beside a value.
func (s *search) look(x int64) (trial, bool) {
	for d := int64(1); d <= beside; d++ {
		for _, t := range [...]trial{s.at(x - d), s.at(x + d)} {
			if t.hit() {
				return t, true
			}
		}
	}
	return trial{}, false
}

// cross halves what lies between two neighboring trials where the figure goes
// past what is wanted, the nearest to the present value first, until one hits.
func (s *search) cross() (trial, bool) {
	for !s.spent {
		best := -1
		for i := 1; i < len(s.tried); i++ {
			switch a, b := s.tried[i-1], s.tried[i]; {
			case a.hit():
				return a, true
			case b.hit():
				return b, true
			case a.crosses(b) && b.x-a.x > 1 && (best < 0 || s.away(i) < s.away(best)):
				best = i
			}
		}
		if best < 0 {
			return trial{}, false
		}
		a, b := s.tried[best-1], s.tried[best]
		for b.x-a.x > 1 {
			m := s.at(a.x + (b.x-a.x)/2)
			switch {
			case m.hit():
				return m, true
			case !m.ok:
				a = b // a hole: the trials around it no longer are neighbors
			case a.crosses(m):
				b = m
			default:
				a = m
			}
		}
		if t, ok := s.look(a.x); ok {
			return t, true
		}
	}
	return trial{}, false
}

// away is how far from the present value the trial i and the one before it are.
func (s *search) away(i int) int64 {
	return min(distance(s.tried[i-1].x, s.start.x), distance(s.tried[i].x, s.start.x))
}

// edges finds the first and the last value around the present one that the order
// takes.
func (s *search) edges() {
	for _, side := range [...]int{-1, +1} {
		good, bad, found := s.edge(side)
		for found && distance(good.x, bad.x) > 1 && !s.spent {
			if m := s.at(good.x + (bad.x-good.x)/2); m.ok {
				good = m
			} else {
				bad = m
			}
		}
	}
}

// edge is the last trial on one side of the present value that the order takes,
// and the one after it, that it does not take.
func (s *search) edge(side int) (good, bad trial, found bool) {
	i, _ := slices.BinarySearchFunc(s.tried, s.start.x, func(t trial, x int64) int { return cmp.Compare(t.x, x) })
	for good = s.start; i >= 0 && i < len(s.tried); i += side {
		if bad = s.tried[i]; !bad.ok {
			return good, bad, true
		}
		good = bad
	}
	return good, bad, false
}

// turn looks where a figure turns back, between the best trial's neighbors, for
// one that hits there or goes past.
func (s *search) turn() (trial, bool) {
	best := -1
	for i := 1; i+1 < len(s.tried); i++ {
		a, m, b := s.tried[i-1], s.tried[i], s.tried[i+1]
		turns := a.ok && m.ok && b.ok && size(m.miss) <= min(size(a.miss), size(b.miss)) && size(m.miss) < max(size(a.miss), size(b.miss))
		if turns && (best < 0 || size(m.miss) < size(s.tried[best].miss)) {
			best = i
		}
	}
	if best < 0 {
		return trial{}, false
	}
	a, m, b := s.tried[best-1], s.tried[best], s.tried[best+1]
	for b.x-a.x > 2 && !s.spent {
		x := m.x + 1 + (b.x-m.x)*381/1000 // a golden section of the larger part
		if m.x-a.x > b.x-m.x {
			x = m.x - 1 - (m.x-a.x)*381/1000
		}
		t := s.at(x)
		switch {
		case t.hit() || t.crosses(m):
			return s.cross()
		case !t.ok:
			return trial{}, false
		case size(t.miss) < size(m.miss) && x < m.x:
			b, m = m, t
		case size(t.miss) < size(m.miss):
			a, m = m, t
		case x < m.x:
			a = t
		default:
			b = t
		}
	}
	return trial{}, false
}

func size(miss int64) uint64 {
	if miss < 0 {
		return -uint64(miss)
	}
	return uint64(miss)
}

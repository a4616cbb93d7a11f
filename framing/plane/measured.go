package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Diagonal is how far two corners are apart, counted from 0.
type Diagonal struct {
	From   int            `json:"from" order:"required"`
	To     int            `json:"to" order:"required"`
	Length measure.Length `json:"length" order:"required"`
}

// Measured returns the outline of these sides, 3 to [MaxMeasured], held by
// diagonals that part it into triangles: none for three sides, one for four, and
// so on. Diagonals run inside the outline and do not cross. It begins at the
// origin, its first side runs to the right, and its inside is to the left.
//
// Three lengths that make no triangle are refused ([NoTriangle]: At is the side of
// it that is too long, as a corner and Other the next), and diagonals that do not
// hold the outline ([Loose]). Diagonals more than it takes, such as the second one
// of four sides, are compared: each may differ by tolerance ([Differs]).
func Measured(sides []measure.Length, diagonals []Diagonal, tolerance measure.Length) (Polygon, error) {
	n := len(sides)
	if err := checkCount(n, 3, MaxMeasured); err != nil {
		return Polygon{}, err
	}
	if err := checkCount(len(diagonals), n-3, 2*MaxMeasured); err != nil {
		return Polygon{}, err
	}
	m := measuring{n: n, known: make(map[[2]int]measure.Length), spots: make([]spot, n), next: make([][]int, n)}
	for i, l := range sides {
		if err := m.know(i, (i+1)%n, l, i); err != nil {
			return Polygon{}, err
		}
	}
	var more []Diagonal
	holding := 0
	for i, d := range diagonals {
		switch gap := (d.To - d.From + n) % n; {
		case d.From < 0 || d.From >= n || d.To < 0 || d.To >= n || gap < 2 || gap > n-2:
			return Polygon{}, &Error{Code: Loose, At: d.From, Other: d.To}
		case holding == n-3 || m.crossesKnown(d):
			if err := checkLength(d.Length, explain.MaxLength, i); err != nil {
				return Polygon{}, err
			}
			more = append(more, d)
			continue
		}
		if err := m.know(d.From, d.To, d.Length, i); err != nil {
			return Polygon{}, err
		}
		holding++
	}
	m.spots[1] = spot{int64(sides[0]) << grain, 0}
	if err := m.place(); err != nil {
		return Polygon{}, err
	}
	p, err := outline(m.spots)
	if err != nil {
		return Polygon{}, err
	}
	for _, d := range more {
		if is := p.Diagonal(d.From, d.To); d.Length < is-max(tolerance, 0) || d.Length > is+max(tolerance, 0) {
			return Polygon{}, limited(given(&Error{Code: Differs, At: d.From, Other: d.To}, d.Length), explain.Exactly, is)
		}
	}
	return p, nil
}

// measuring lays triangles side by side.
type measuring struct {
	n     int
	known map[[2]int]measure.Length
	next  [][]int // corners at known distances
	spots []spot
}

func (m *measuring) know(a, b int, l measure.Length, at int) error {
	if err := checkLength(l, explain.MaxLength, at); err != nil {
		return err
	}
	if _, is := m.between(a, b); is {
		return &Error{Code: Loose, At: a, Other: b}
	}
	m.known[[2]int{min(a, b), max(a, b)}] = l
	m.next[a], m.next[b] = append(m.next[a], b), append(m.next[b], a)
	return nil
}

func (m *measuring) between(a, b int) (measure.Length, bool) {
	l, is := m.known[[2]int{min(a, b), max(a, b)}]
	return l, is
}

// crossesKnown reports whether a diagonal parts the ends of one that is known.
func (m *measuring) crossesKnown(d Diagonal) bool {
	a, b := min(d.From, d.To), max(d.From, d.To)
	for i := a + 1; i < b; i++ {
		for _, j := range m.next[i] {
			if j < a || j > b {
				return true
			}
		}
	}
	return false
}

// place lays the triangle to the left of each side whose ends lie, beginning with
// the first.
func (m *measuring) place() error {
	type base struct{ from, to int }
	todo := []base{{0, 1}}
	for len(todo) > 0 {
		b := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		// The corner lies beyond the base, going round from its end to its start.
		corner := -1
		for _, c := range m.next[b.to] {
			_, is := m.between(c, b.from)
			if is && c != b.from && (c-b.to+m.n)%m.n < (b.from-b.to+m.n)%m.n {
				corner = c
				break
			}
		}
		if corner < 0 {
			return &Error{Code: Loose, At: b.from, Other: b.to}
		}
		if err := m.triangle(b.from, b.to, corner); err != nil {
			return err
		}
		if corner != (b.to+1)%m.n {
			todo = append(todo, base{corner, b.to})
		}
		if b.from != (corner+1)%m.n {
			todo = append(todo, base{b.from, corner})
		}
	}
	return nil
}

// triangle places corner c to the left of the line from a to b.
func (m *measuring) triangle(a, b, c int) error {
	ab, _ := m.between(a, b)
	bc, _ := m.between(b, c)
	ca, _ := m.between(c, a)
	for _, s := range [...]struct {
		long, others measure.Length
		from, to     int
	}{{ab, bc + ca, a, b}, {bc, ca + ab, b, c}, {ca, ab + bc, c, a}} {
		if s.long >= s.others {
			return limited(given(&Error{Code: NoTriangle, At: s.from, Other: s.to}, s.long), explain.AtMost, s.others-1)
		}
	}
	// Along the base and up from it: (ca^2 - bc^2 + ab^2) / 2ab.
	along := along(int64(ca)<<grain, int64(bc)<<grain, int64(ab)<<grain)
	up := int64(measure.Leg(measure.Length(ca)<<grain, measure.Length(along)))
	from := m.spots[a]
	way := m.spots[b].minus(from)
	l := way.length()
	x1, _ := measure.MulDiv(way.x, along, l)
	y1, _ := measure.MulDiv(way.y, along, l)
	x2, _ := measure.MulDiv(-way.y, up, l)
	y2, _ := measure.MulDiv(way.x, up, l)
	m.spots[c] = from.plus(spot{x1 + x2, y1 + y2})
	if !m.spots[c].within() {
		return limited(fault(Far, c), explain.AtMost, Reach)
	}
	return nil
}

// along is how far along a base the corner above it lies: ((a-b)(a+b)/base +
// base)/2.
func along(a, b, base int64) int64 {
	part, _ := measure.MulDiv(a-b, a+b, base)
	return (part + base) / 2
}

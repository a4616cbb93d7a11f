package plane_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/plane"
)

// TestMeet: two lines, read both ways.
func TestMeet(t *testing.T) {
	for _, row := range []struct {
		name string
		p    []plane.Point
		want bool
	}{
		{"a cross", points(0, 0, 4, 4, 0, 4, 4, 0), true},
		{"a tee", points(0, 0, 4, 0, 2, 0, 2, 4), true},
		{"end to end", points(0, 0, 4, 0, 4, 0, 6, 4), true},
		{"side by side", points(0, 0, 4, 0, 0, 1, 4, 1), false},
		{"in one line", points(0, 0, 2, 0, 3, 0, 4, 0), false},
		{"one on the other", points(0, 0, 4, 0, 1, 0, 2, 0), true},
		{"one short of the other", points(0, 0, 4, 4, 3, 2, 4, 0), false},
	} {
		a, b, c, d := row.p[0], row.p[1], row.p[2], row.p[3]
		for _, got := range []bool{plane.Meet(a, b, c, d), plane.Meet(b, a, c, d), plane.Meet(c, d, a, b), plane.Meet(d, c, b, a)} {
			if got != row.want {
				t.Errorf("%s: %t", row.name, got)
			}
		}
	}
	// A nanometer decides.
	long := plane.Point{X: plane.Reach, Y: plane.Reach}
	if !plane.Meet(plane.Point{}, long, plane.Point{X: 7, Y: 7}, plane.Point{X: 9}) || plane.Meet(plane.Point{}, long, plane.Point{X: 8, Y: 7}, plane.Point{X: 9}) {
		t.Error("a nanometer off the line")
	}
	if far := (plane.Point{X: plane.Reach + 1}); plane.Meet(plane.Point{}, far, plane.Point{}, far) {
		t.Error("out of reach, and met")
	}
}

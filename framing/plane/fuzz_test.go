package plane_test

import (
	"encoding/binary"
	"math/rand/v2"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func bytesOf(corners []plane.Point) []byte {
	var b []byte
	for _, c := range corners {
		b = binary.LittleEndian.AppendUint64(b, uint64(c.X))
		b = binary.LittleEndian.AppendUint64(b, uint64(c.Y))
	}
	return b
}

// meets is the second road to crossing: every side with every other, by the
// quotients of school.
func meets(corners []plane.Point) bool {
	n := len(corners)
	way := func(a, b, c plane.Point) int {
		// The factors stay below 2^31 in what is compared so.
		v := (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
		switch {
		case v < 0:
			return -1
		case v > 0:
			return 1
		}
		return 0
	}
	on := func(a, b, c plane.Point) bool {
		return way(a, b, c) == 0 && min(a.X, b.X) <= c.X && c.X <= max(a.X, b.X) && min(a.Y, b.Y) <= c.Y && c.Y <= max(a.Y, b.Y)
	}
	for i := range n {
		a, b := corners[i], corners[(i+1)%n]
		if a == b || on(a, b, corners[(i+2)%n]) || on(b, corners[(i+2)%n], a) {
			return true
		}
		for j := i + 2; j < n; j++ {
			if i == 0 && j == n-1 {
				continue
			}
			c, d := corners[j], corners[(j+1)%n]
			if on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b) ||
				way(a, b, c)*way(a, b, d) < 0 && way(c, d, a)*way(c, d, b) < 0 {
				return true
			}
		}
	}
	return false
}

// TestCrossingAgainstAllPairs: chance outlines on a coarse grid, where everything
// that can touch does.
func TestCrossingAgainstAllPairs(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	sound := 0
	for range 30_000 {
		corners := make([]plane.Point, 3+r.IntN(6))
		for i := range corners {
			corners[i] = plane.Point{X: measure.Length(r.IntN(7)), Y: measure.Length(r.IntN(7))}
		}
		_, err := plane.New(corners...)
		if (err != nil) != meets(corners) {
			t.Fatalf("%v: %v, by all pairs: %t", corners, err, meets(corners))
		}
		if err == nil {
			sound++
		}
	}
	if sound < 3000 {
		t.Errorf("only %d of them are outlines", sound)
	}
}

// FuzzOutline: whatever stands there is refused or is an outline that turns once,
// encloses something, and moves out and back.
func FuzzOutline(f *testing.F) {
	for _, row := range outlines {
		f.Add(bytesOf(row.corners), int64(inch), int64(deg))
	}
	f.Add(bytesOf(points(0, 0, 4, 4, 4, 0, 0, 4)), int64(1), int64(1))
	f.Add(bytesOf([]plane.Point{{X: plane.Reach, Y: plane.Reach}, {X: -plane.Reach, Y: plane.Reach}, {X: -plane.Reach, Y: -plane.Reach}}), int64(plane.Reach), int64(measure.Turn))
	f.Add(bytesOf([]plane.Point{{}, {X: 1}, {Y: 1}}), int64(-1), int64(-1))
	f.Fuzz(func(t *testing.T, data []byte, by, turn int64) {
		var corners []plane.Point
		for ; len(data) >= 16 && len(corners) < 200; data = data[16:] {
			corners = append(corners, plane.Point{
				X: measure.Length(binary.LittleEndian.Uint64(data)), Y: measure.Length(binary.LittleEndian.Uint64(data[8:]))})
		}
		p, err := plane.New(corners...)
		if err != nil {
			code(t, err)
			return
		}
		if p.Turning() != measure.Turn || p.Area() < 0 || p.Length() < 3 {
			t.Fatalf("%v: turns by %v", corners, p.Turning())
		}
		for _, c := range corners {
			if !p.Contains(c) {
				t.Fatalf("%v is not on %v", c, corners)
			}
		}
		if q, err := p.Offset(measure.Length(by)); err == nil {
			if q.Turning() != measure.Turn || q.Clockwise() != p.Clockwise() || by > 0 && q.Area() < p.Area() {
				t.Fatalf("%v moved by %d turns by %v", corners, by, q.Turning())
			}
		} else {
			code(t, err)
		}
		if q, err := p.Turned(measure.Angle(turn)); err == nil && q.Turning() != measure.Turn {
			t.Fatal("turned")
		}
		if r, err := p.LargestUpright(); err == nil && r.Size.Width > 0 && r.Size.Height > 0 && !p.ContainsRectangle(r, 0) {
			t.Fatalf("%+v is not in %v", r, corners)
		}
		plane.Closed(p.Sides(), measure.Length(by))
	})
}

// hostile outlines of ten thousand corners.
func hostile() map[string][]plane.Point {
	const n = plane.MaxCorners
	r := rand.New(rand.NewPCG(17, 18))
	teeth := []plane.Point{{X: -1, Y: 0}} // all overlap from left to right
	for i := measure.Length(1); i < n-1; i++ {
		teeth = append(teeth, plane.Point{X: i % 2 * plane.Reach, Y: 1000 * i})
	}
	teeth = append(teeth, plane.Point{X: -1, Y: 1000 * n})
	chance := make([]plane.Point, n)
	for i := range chance {
		chance[i] = plane.Point{X: measure.Length(r.Int64N(int64(plane.Reach))), Y: measure.Length(r.Int64N(int64(plane.Reach)))}
	}
	return map[string][]plane.Point{"star": spread(r, n, inch, plane.Reach/2), "teeth": teeth, "chance": chance, "one place": make([]plane.Point, n)}
}

func TestTenThousandCorners(t *testing.T) {
	for name, corners := range hostile() {
		start := time.Now()
		p, err := plane.New(corners...)
		if want := name == "star" || name == "teeth"; want != (err == nil) {
			t.Errorf("%s: %v", name, err)
		}
		if err == nil {
			if p.Turning() != measure.Turn {
				t.Errorf("%s turns by %v", name, p.Turning())
			}
			p.Contains(plane.Point{})
			p.ContainsRectangle(plane.Rectangle{Size: measure.Size{Width: 1000, Height: 1000}}, 0)
			p.Offset(1)
			p.Offset(-plane.Reach)
		}
		if took := time.Since(start); took > 20*time.Second {
			t.Errorf("%s took %v", name, took)
		}
	}
	sides := make([]plane.Side, plane.MaxMeasured)
	for i := range sides {
		sides[i] = plane.Side{Length: inch, Turn: plane.Turns(len(sides))[i]}
	}
	if p := must(plane.Closed(sides, measure.Micrometer)); p.Len() != plane.MaxMeasured {
		t.Error("a thousand sides")
	}
}

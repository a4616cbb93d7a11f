package speed

import (
	"strings"
	"testing"
	"time"
)

// Each way to be too slow is seen, and nothing else is.
func TestOver(t *testing.T) {
	for _, row := range []struct {
		name     string
		c        Case
		r        Result
		recorded float64
		want     string
	}{
		{"all is well", Case{Limit: 100}, Result{101, 0, 50}, 25, ""},
		{"an allocation", Case{}, Result{10, 1, 10}, 10, "makes 1 allocations, but may make 0"},
		{"any allocations", Case{Allocs: -1}, Result{10, 9, 10}, 10, ""},
		{"over the limit", Case{Limit: 100}, Result{10, 0, 101}, 90, "takes 101 ns by the loop, but may take 100ns"},
		{"over twice", Case{}, Result{10, 0, 21}, 10, "takes 2.1 times its recorded ratio"},
		{"nothing recorded", Case{}, Result{10, 0, 21}, 0, ""},
	} {
		if got := over(row.c, row.r, row.recorded); !strings.HasPrefix(got, row.want) || (got == "") != (row.want == "") {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// What waits takes its time, and what allocates is seen to.
func TestMeasure(t *testing.T) {
	slow := Measure(func() { time.Sleep(2 * time.Millisecond) })
	if slow.Nanoseconds < 2e6 || slow.Ratio <= 0 {
		t.Errorf("a sleep of 2 ms was measured as %+v", slow)
	}
	var kept *[64]byte
	if r := Measure(func() { kept = new([64]byte) }); r.Allocs != 1 {
		t.Errorf("one allocation was measured as %v of %p", r.Allocs, kept)
	}
}

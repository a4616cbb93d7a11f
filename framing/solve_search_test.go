package framing

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// searched looks for an answer in a function instead of in an order.
func searched(present int64, f func(x int64) (miss int64, ok bool)) (*search, trial, bool) {
	s := &search{
		asked: &asked{kind: explain.LengthKind, most: int64(explain.MaxLength), present: present},
		work: func(x int64) (int64, int64, bool) {
			miss, ok := f(x)
			return miss, 0, ok
		},
	}
	if !s.begin() {
		return s, trial{}, false
	}
	t, ok := s.find()
	return s, t, ok
}

// TestSearch looks for answers in functions of every shape that a figure can
// have, and in some that none has.
func TestSearch(t *testing.T) {
	const mm = int64(measure.Millimeter)
	whole := func(f func(x int64) int64) func(int64) (int64, bool) {
		return func(x int64) (int64, bool) { return f(x), true }
	}
	for _, c := range []struct {
		name    string
		present int64
		f       func(int64) (int64, bool)
		want    int64 // -1 where there is none
		code    explain.Code
		trials  int // at most
	}{
		{"straight up", 300 * mm, whole(func(x int64) int64 { return x - 123_456_789 }), 123_456_789, "", 5},
		{"straight down, twice as steep", 0, whole(func(x int64) int64 { return 2 * (777*mm + 1 - x) }), 777*mm + 1, "", 5},
		{"the end", 300 * mm, whole(func(x int64) int64 { return x - 50_000*mm }), 50_000 * mm, "", 5},
		{"the start", 300 * mm, whole(func(x int64) int64 { return x }), 0, "", 5},
		{"flat, then up", 10 * mm, whole(func(x int64) int64 { return max(x, 400*mm) - 401*mm }), 401 * mm, "", 60},
		{"up, and then steep", 10 * mm, whole(func(x int64) int64 { return x + max(0, x-90*mm)*1000 - 95*mm - 5000*mm }), 95 * mm, "", 60},
		{"with a step that is passed", 10 * mm, whole(func(x int64) int64 {
			if x >= 50*mm {
				return x - 60*mm
			}
			return x - 200*mm
		}), 60 * mm, "", 60},
		{"a tent that just touches", 10 * mm, whole(func(x int64) int64 { return -max(x-250*mm-7, 250*mm+7-x) }), 250*mm + 7, "", 120},
		{"a tent that goes past", 10 * mm, whole(func(x int64) int64 { return 90 - max(x-250*mm, 250*mm-x) }), -1, "", 150},
		{"a tent that stays below", 10 * mm, whole(func(x int64) int64 { return -5 - max(x-250*mm-7, 250*mm+7-x) }), -1, TurnsBack, 150},
		{"an odd nanometer", 300 * mm, whole(func(x int64) int64 { return 2*x - 123_456_789 }), -1, BetweenTwo, 70},
		{"a step over it", 300 * mm, whole(func(x int64) int64 {
			if x >= 123_456_789 {
				return x - 100*mm
			}
			return x - 200*mm
		}), -1, Leaps, 90},
		{"nothing changes", 300 * mm, whole(func(int64) int64 { return 5 }), -1, Independent, 60},
		{"only below 40 mm, and wanted there", 12 * mm, func(x int64) (int64, bool) { return x - 39*mm, x < 40*mm }, 39 * mm, "", 60},
		{"only below 40 mm, and wanted at the edge", 12 * mm, func(x int64) (int64, bool) { return (x - 40*mm + 1) / 1000 * x, x < 40*mm }, -2, "", 120},
		{"only below 40 mm", 12 * mm, func(x int64) (int64, bool) { return x - 41*mm, x < 40*mm }, -1, Refused, 120},
		{"not where it is now", 0, func(x int64) (int64, bool) { return x - 555*mm, x > 100*mm }, 555 * mm, "", 60},
		{"nowhere", 12 * mm, func(int64) (int64, bool) { return 0, false }, -1, "", 60},
		{"halved, to and fro", 300 * mm, whole(func(x int64) int64 { return (x+x%3)/2 - 77*mm }), -2, "", 90},
		{"past the range of an integer", 300 * mm, whole(func(x int64) int64 {
			if x < 299*mm {
				return -1 << 63
			}
			return 1<<63 - 1
		}), -1, Leaps, 90},
	} {
		t.Run(c.name, func(t *testing.T) {
			s, hit, ok := searched(c.present, c.f)
			if s.trials > c.trials {
				t.Errorf("%d trials, want at most %d", s.trials, c.trials)
			}
			if ok {
				if miss, taken := c.f(hit.x); miss != 0 || !taken {
					t.Fatalf("%d is no answer", hit.x)
				}
			}
			switch {
			case c.name == "a tent that goes past":
				if d := distance(hit.x, 250*mm); !ok || d != 90 {
					t.Errorf("found %d (%v)", hit.x, ok)
				}
			case c.want == -2:
				if !ok {
					t.Error("nothing was found")
				}
			case ok != (c.want >= 0) || ok && hit.x != c.want:
				t.Errorf("found %d (%v), want %d", hit.x, ok, c.want)
			case !ok && c.code != "":
				if o := s.outcome(); o.code != c.code {
					t.Errorf("the reason is %s, want %s; best %+v", o.code, c.code, o.best)
				}
			}
		})
	}
}

// TestSearchEnds: whatever a figure does, a search ends after so many trials and
// what it finds is an answer.
func TestSearchEnds(t *testing.T) {
	state := uint64(1)
	next := func(n int64) int64 {
		state = state*6364136223846793005 + 1442695040888963407
		return int64(state>>33) % n
	}
	const most = int64(explain.MaxLength)
	for range 2000 {
		// A kinked line, with holes.
		var knots, slopes [4]int64
		for i := range knots {
			knots[i], slopes[i] = next(1<<31)*24, next(9)-4
		}
		hole, wide := next(1<<31)*24, next(1<<31)
		level, half := next(1<<31)*10, 1+next(3)
		f := func(x int64) (int64, bool) {
			y := -level
			for i, k := range knots {
				y += slopes[i] * max(0, x-k)
			}
			return y / half, x < hole || x > hole+wide
		}
		s, hit, ok := searched(next(1<<31)*20, f)
		if s.trials > MaxTrials {
			t.Fatalf("%d trials", s.trials)
		}
		if !ok {
			continue
		}
		if miss, taken := f(hit.x); miss != 0 || !taken || hit.x < 0 || hit.x > most {
			t.Fatalf("%d is no answer: %d %v", hit.x, miss, taken)
		}
		var to Solution
		s.order = &Order{}
		s.answer(&to, hit)
		for _, try := range []Try{to.Answer, to.Least, to.Most} {
			if miss, taken := f(try.Value.N); miss != 0 || !taken {
				t.Fatalf("%v is no answer", try.Value)
			}
		}
		if s.trials > MaxTrials {
			t.Fatalf("%d trials", s.trials)
		}
	}
}

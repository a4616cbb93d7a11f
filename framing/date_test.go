package framing_test

import (
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
)

// TestDates holds the days of four centuries, and what lies between them, against
// package time.
func TestDates(t *testing.T) {
	order := framing.Sample()
	accepts := func(date string) bool {
		order.Date = framing.Date(date)
		return len(order.Check()) == 0
	}
	last := 2301
	if slow {
		last = 1906
	}
	for day := time.Date(1899, 12, 1, 0, 0, 0, 0, time.UTC); day.Year() < last; day = day.AddDate(0, 0, 1) {
		if !accepts(day.Format(time.DateOnly)) {
			t.Fatalf("%s is refused", day.Format(time.DateOnly))
		}
		if next := day.AddDate(0, 0, 1); next.Day() == 1 { // the day after the last of a month
			after := day.Format("2006-01-") + string(rune('0'+(day.Day()+1)/10)) + string(rune('0'+(day.Day()+1)%10))
			if accepts(after) {
				t.Fatalf("%s is accepted", after)
			}
		}
	}
	for _, text := range []string{"2026-00-10", "2026-13-10", "2026-10-00", "2026-1-100", "20261010", "2026/10/10", "2026-10-1a", "+026-10-10", "2026-10-10 ", "12026-10-10", "２０26-10-10"} {
		if _, err := time.Parse(time.DateOnly, text); (err == nil) != accepts(text) {
			t.Errorf("%q: accepted is %v", text, accepts(text))
		}
	}
	if accepts("") == false {
		t.Error("no date is refused")
	}
}

package hang_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/hang"
)

func BenchmarkLay(b *testing.B) {
	for _, by := range hang.ByRise.Choices() {
		h, g := worked()
		h.Hooks = 2
		h.Taut = hang.Taut{By: hang.TautBy(by), Angle: hang.LowAngle, Rise: in("3"), Wire: in("20")}
		b.Run(by, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if l := h.Lay(g); !l.Hangs() {
					b.Fatal("does not hang")
				}
			}
		})
	}
}

func BenchmarkExplain(b *testing.B) {
	h, g := worked()
	h.Hooks = 2
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := h.Explain(g, "/hook/heaviest", places); !ok {
			b.Fatal("not explained")
		}
	}
}

func BenchmarkNotes(b *testing.B) {
	h, g := worked()
	h.Ratings.WireBreaks = lbf("30")
	l := h.Lay(g)
	b.ReportAllocs()
	for b.Loop() {
		if ns := h.Notes(g, l, places); len(ns) < 4 {
			b.Fatal(ns)
		}
	}
}

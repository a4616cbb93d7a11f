package molding_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/molding"
)

func BenchmarkAround(b *testing.B) {
	f, pkg := frame("1 1/4", "1/4", "1/8"), size("16 1/2", "20 7/8")
	b.ReportAllocs()
	for b.Loop() {
		if r := f.Around(pkg); r.Footage == 0 {
			b.Fatal("no rails")
		}
	}
}

func BenchmarkExplain(b *testing.B) {
	f := frame("1 1/4", "1/4", "1/8")
	r := f.Around(size("16 1/2", "20 7/8"))
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := f.Explain(r, "/horizontal/long_point", places); !ok {
			b.Fatal("not explained")
		}
	}
}

// BenchmarkFitNotes is a part with nothing to say about it: the usual one.
func BenchmarkFitNotes(b *testing.B) {
	f, opening := frame("1 1/4", "1/4", "1/8"), size("16 5/8", "21")
	l := molding.Lying{Fit: f.Fit(opening, molding.Cut{}), Part: part, Worked: worked, Bite: in("1/8")}
	b.ReportAllocs()
	for b.Loop() {
		if ns := f.FitNotes(opening, l, places); len(ns) != 0 {
			b.Fatal(ns)
		}
	}
}

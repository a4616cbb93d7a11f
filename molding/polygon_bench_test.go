package molding_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

func BenchmarkAroundPolygon(b *testing.B) {
	f, panel := one("2", "1/4", "1/8"), shape(plane.Regular(8, plane.Flats, in("18")))
	b.ReportAllocs()
	for b.Loop() {
		rails(f, panel)
	}
}

func BenchmarkAroundRegular(b *testing.B) {
	f := molding.Frame{Face: in("2"), Lip: in("1/4"), Allowance: in("1/8")}
	panel := molding.RegularPanel{Sides: 8, Across: plane.Flats, Size: in("18")}
	b.ReportAllocs()
	for b.Loop() {
		if r := f.AroundRegular(panel); r.Footage == 0 {
			b.Fatal("no rails")
		}
	}
}

func BenchmarkExplainPolygon(b *testing.B) {
	f := one("2", "1/4", "1/8")
	p := rails(f, shape(plane.Regular(8, plane.Flats, in("18"))))
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := f.Explain(p, "/rails/3/outer", polygonPlaces); !ok {
			b.Fatal("not explained")
		}
	}
}

func BenchmarkPolygonNotes(b *testing.B) {
	f := one("2", "1/4", "1/8")
	p := rails(f, shape(plane.Regular(8, plane.Flats, in("18"))))
	b.ReportAllocs()
	for b.Loop() {
		f.Notes(p, polygonPlaces)
	}
}

func BenchmarkCleanWithin(b *testing.B) {
	art, err := molding.OutOfSquare{Bottom: in("16"), Right: in("20 1/8"), Top: in("15 7/8"), Left: in("20"), Rising: in("25 3/4")}.Outline(0)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		molding.CleanWithin(art)
	}
}

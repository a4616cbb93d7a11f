package plane_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

func octagon() plane.Polygon { return must(plane.Regular(8, plane.Flats, 18*inch)) }

func BenchmarkRegular(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		octagon()
	}
}

func BenchmarkOffset(b *testing.B) {
	p := octagon()
	b.ReportAllocs()
	for b.Loop() {
		must(p.Offset(2 * inch))
	}
}

// BenchmarkOffsetRefused looks for the limit.
func BenchmarkOffsetRefused(b *testing.B) {
	p := octagon()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := p.Offset(-20 * inch); err == nil {
			b.Fatal("not refused")
		}
	}
}

func BenchmarkMeasured(b *testing.B) {
	sides, diagonals := ins("16", "20", "16", "20"), []plane.Diagonal{{From: 0, To: 2, Length: in("25 5/8")}}
	b.ReportAllocs()
	for b.Loop() {
		must(plane.Measured(sides, diagonals, 0))
	}
}

func BenchmarkContainsRectangle(b *testing.B) {
	p := octagon()
	r := plane.Rectangle{Corner: plane.Point{X: -4 * inch, Y: -4 * inch}, Size: measure.Size{Width: 8 * inch, Height: 8 * inch}}
	b.ReportAllocs()
	for b.Loop() {
		if !p.ContainsRectangle(r, 0) {
			b.Fatal("not in it")
		}
	}
}

func BenchmarkLargestUpright(b *testing.B) {
	p := must(plane.New(plane.Point{}, plane.Point{X: 16 * inch}, plane.Point{X: 16*inch + 1000, Y: 20 * inch}, plane.Point{X: 1000000, Y: 20 * inch}))
	b.ReportAllocs()
	for b.Loop() {
		p.LargestUpright()
	}
}

func BenchmarkLargestTurned(b *testing.B) {
	p := must(plane.New(plane.Point{}, plane.Point{X: 16 * inch}, plane.Point{X: 16*inch + 1000, Y: 20 * inch}, plane.Point{X: 1000000, Y: 20 * inch}))
	b.ReportAllocs()
	for b.Loop() {
		p.LargestTurned(-deg, deg, deg/1_000_000)
	}
}

func BenchmarkTenThousandCorners(b *testing.B) {
	for name, corners := range hostile() {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				plane.New(corners...)
			}
		})
	}
}

package explain_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
)

func BenchmarkEvaluate(b *testing.B) {
	w := longPoint()
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := w.Evaluate(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWorkingText(b *testing.B) {
	w := longPoint()
	buffer := make([]byte, 0, 256)
	b.ReportAllocs()
	for b.Loop() {
		buffer = w.Append(buffer[:0], sixteenths)
	}
}

func BenchmarkCompare(b *testing.B) {
	p, q := explain.Path("/pieces/10/frame/lip"), explain.Path("/pieces/9/frame/lip")
	b.ReportAllocs()
	for b.Loop() {
		if p.Compare(q) != 1 {
			b.Fatal("10 does not stand after 9")
		}
	}
}

// BenchmarkChecker is a clean order: what every order pays.
func BenchmarkChecker(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		var c explain.Checker
		c.Positive("/pieces/0/frame/face", in)
		c.Text("/pieces/0/frame/molding", "oak, plain")
		if !c.Clean("/pieces/0/frame/face", "/pieces/0/frame/molding") {
			b.Fatal("not clean")
		}
	}
}

package mat_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/mat"
)

func BenchmarkLay(b *testing.B) {
	for _, by := range []mat.BordersBy{mat.ByVisible, mat.ByBoard} {
		m, g := worked()
		m.Borders.By, m.Borders.Weight, m.Borders.Board = by, mat.Optical, size("16", "20")
		b.Run(string(by), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if l := m.Lay(g); l.Blank.Width == 0 {
					b.Fatal("no blank")
				}
			}
		})
	}
}

// BenchmarkLayThree is a mat of three boards.
func BenchmarkLayThree(b *testing.B) {
	m, g := worked()
	m.Under = triple()
	b.ReportAllocs()
	for b.Loop() {
		if l := m.Lay(g); l.Under[1].Seen == 0 {
			b.Fatal("no third board")
		}
	}
}

func BenchmarkExplain(b *testing.B) {
	m, g := worked()
	m.Borders.Weight = mat.Optical
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := m.Explain(g, "/visible/bottom", places); !ok {
			b.Fatal("not explained")
		}
	}
}

func BenchmarkNotes(b *testing.B) {
	m, g := worked()
	l := m.Lay(g)
	b.ReportAllocs()
	for b.Loop() {
		if ns := m.Notes(g, l, places); len(ns) != 1 {
			b.Fatal(ns)
		}
	}
}

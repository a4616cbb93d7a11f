package template_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
)

// BenchmarkSet writes four templates in all three ways, which is to take less than
// 20 ms.
func BenchmarkSet(b *testing.B) {
	set := set(b)
	b.ReportAllocs()
	for b.Loop() {
		for _, s := range set {
			must[[]byte](b)(s.SVG())
			must[[]byte](b)(s.DXF(0))
			must[[]byte](b)(s.PDF(template.Letter, template.Overlap))
		}
	}
}

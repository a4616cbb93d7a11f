package framing

import (
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// artBody is the art: as it was weighed, or of what its kind is usually made of.
func (w *worker) artBody(thick dim) body {
	if w.Art.Mass != 0 {
		return body{given: w.Art.Mass, givenAt: w.at.order + "/art/mass"}
	}
	size := sizeDims(w.Art.Least(), "art", w.artAt, "")
	switch w.Art.Kind {
	case Mirror:
		b := sheetBody(size, thick, material.Glass)
		b.thicker = material.HeaviestThickness(material.Glass, thick.value) - thick.value
		return b
	case Paper:
		if thick.value == 0 { // as thin as it was said to be; it weighs next to nothing
			thick = dim{value: usualPaper, key: "thickness"}
		}
		return sheetBody(size, thick, material.Paper)
	case Canvas:
		return w.canvasBody(size, thick)
	}
	return sheetBody(size, thick, material.Panel)
}

// usualPaper is how thick paper is counted where its thickness is not given: a
// heavy sheet of some 250 g/m2 (common practice).
const usualPaper = 3 * measure.Millimeter / 10

// usualBar is how wide stretcher bars are counted where that is not given
// (common practice).
const usualBar = 3 * measure.Inch / 2

// canvasBody is the four bars of a canvas; the cloth and the paint are within
// what the heaviest allows for.
func (w *worker) canvasBody(size [2]dim, thick dim) body {
	m, ok := material.Of(material.Bars)
	if !ok || thick.value == 0 {
		return body{}
	}
	bar := dim{value: w.Art.Stretch.Bar, key: "bar", root: w.at.order, group: "/art/stretch/bar"}
	if bar.value == 0 {
		bar = dim{value: usualBar, key: "bar"}
	}
	b := body{material: m}
	for _, d := range size {
		b.boxes = append(b.boxes, box{times: 2, long: d.leaves(bar, 1), wide: bar, thick: thick})
	}
	return b
}

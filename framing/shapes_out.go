//go:build rectangles

package framing

// Shapes is whether this build works frames that are no plain rectangles. The build
// tag rectangles leaves them out, for a page that most often needs none: it is then a
// sixth smaller, and an order that has them is refused, not misread.
const Shapes = false

//go:build rectangles

package explain

var englishShapes [0]Entry

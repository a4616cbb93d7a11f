package draw

import (
	"strings"
	"unicode"
)

// Sizes of lettering, and how far it reaches above and below its baseline.
const (
	numberSize = 15 * px
	wordSize   = 13 * px
	ascent     = 76 // parts of a hundred of the size
	descent    = 24
)

// unknownWidth is how wide a character that the font does not have is taken to
// be, in thousandths of the size: wider than the widest of common scripts and
// pictures. From memory.
const unknownWidth = 1400

// charWidth is how wide a character is at most, in thousandths of the size.
func charWidth(r rune, heavy bool) int {
	a, b := uint16(0), uint16(0)
	if i := int(r) - ' '; i >= 0 && i < len(regular) {
		a, b = regular[i], bold[i]
	} else {
		a, b = extra(r)
	}
	if a == 0 {
		return unknownWidth
	}
	if heavy {
		return int(max(a, b))
	}
	return int(a)
}

// textWidth is how wide a text is at most.
func textWidth(s string, size int, heavy bool) int {
	sum := 0
	for _, r := range s {
		sum += charWidth(r, heavy)
	}
	return (sum*size + 999) / 1000
}

// clean leaves out what could break a drawing or reach beyond its line:
// characters that are not printed, and marks stacked on marks.
func clean(s string) string {
	marks := 0
	return strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return -1
		}
		if unicode.Is(unicode.M, r) {
			if marks++; marks > 2 {
				return -1
			}
		} else {
			marks = 0
		}
		return r
	}, s)
}

// mostName is how many bytes of a name are looked at; no line shows more.
const mostName = 2000

// shorten cuts a text to a width, with an ellipsis where it was cut.
func shorten(s string, size, width int) string {
	if len(s) > mostName {
		s = strings.ToValidUTF8(s[:mostName], "")
	}
	s = clean(s)
	if textWidth(s, size, false) <= width {
		return s
	}
	width -= textWidth("…", size, false)
	sum := 0
	for i, r := range s {
		sum += charWidth(r, false) * size
		if sum > width*1000 {
			return strings.TrimRight(s[:i], " ") + "…"
		}
	}
	return s
}

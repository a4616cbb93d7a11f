package framing

import (
	"strconv"
	"unicode/utf16"
	"unicode/utf8"
)

// loneSurrogate reports whether JSON text holds the escape of half a
// character.
func loneSurrogate(text []byte) bool {
	for len(text) > 0 {
		size := 1
		if text[0] == '\\' {
			size = 2
			if high, ok := escaped(text); ok && utf16.IsSurrogate(high) {
				low, _ := escaped(text[6:])
				if utf16.DecodeRune(high, low) == utf8.RuneError {
					return true
				}
				size = 12
			}
		}
		text = text[size:]
	}
	return false
}

// escaped returns the code unit that text begins with as an escape \u and four
// digits.
func escaped(text []byte) (rune, bool) {
	if len(text) < 6 || text[0] != '\\' || text[1] != 'u' {
		return 0, false
	}
	unit, err := strconv.ParseUint(string(text[2:6]), 16, 16)
	return rune(unit), err == nil
}

package jsontext

import (
	"encoding"
	"unicode/utf8"
)

// AppendText writes the text of t.
func AppendText(dst []byte, t encoding.TextAppender) []byte {
	start := len(dst) + 1
	dst, _ = t.AppendText(append(dst, '"'))
	for _, b := range dst[start:] {
		if special[b] {
			return AppendString(dst[:start-1], string(dst[start:]))
		}
	}
	return append(dst, '"')
}

// special are the bytes that do not stand for themselves, or may not.
var special = func() (s [256]bool) {
	for b := range s {
		s[b] = b < ' ' || b >= utf8.RuneSelf || b == '"' || b == '\\'
	}
	return s
}()

// AppendString writes s. A byte that is no UTF-8 becomes a replacement
// character.
func AppendString(dst []byte, s string) []byte {
	const hex = "0123456789abcdef"
	dst = append(dst, '"')
	done := 0
	for i := 0; i < len(s); {
		b := s[i]
		if !special[b] {
			i++
			continue
		}
		size := 1
		var escape string
		switch {
		case b == '"':
			escape = `\"`
		case b == '\\':
			escape = `\\`
		case b == '\b':
			escape = `\b`
		case b == '\f':
			escape = `\f`
		case b == '\n':
			escape = `\n`
		case b == '\r':
			escape = `\r`
		case b == '\t':
			escape = `\t`
		case b < utf8.RuneSelf:
			escape = `\u00` + hex[b>>4:b>>4+1] + hex[b&15:b&15+1]
		default:
			var r rune
			r, size = utf8.DecodeRuneInString(s[i:])
			switch {
			case r == utf8.RuneError && size == 1:
				escape = `\ufffd`
			case r == '\u2028':
				escape = `\u2028`
			case r == '\u2029':
				escape = `\u2029`
			default:
				i += size
				continue
			}
		}
		dst = append(append(dst, s[done:i]...), escape...)
		i += size
		done = i
	}
	return append(append(dst, s[done:]...), '"')
}

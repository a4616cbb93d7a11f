package template

import "unicode/utf8"

// clean is text in one line without what no file can hold: control characters
// are dropped but for tabs and ends of lines, which become a space, bytes that
// are no text become U+FFFD.
func clean(s string) string {
	b := make([]byte, 0, len(s))
	for _, r := range s {
		switch {
		case r == '\t' || r == '\n' || r == '\u2028' || r == '\u2029':
			b = append(b, ' ')
		case r < ' ' || 0x7f <= r && r < 0xa0 || r&0xfffe == 0xfffe || 0xfdd0 <= r && r <= 0xfdef:
		default:
			b = utf8.AppendRune(b, r)
		}
	}
	return string(b)
}

// units visits the one or two units of UTF-16 of r.
func units(r rune, visit func(uint16)) {
	if r < 0x10000 {
		visit(uint16(r))
		return
	}
	r -= 0x10000
	visit(uint16(0xd800 + r>>10))
	visit(uint16(0xdc00 + r&0x3ff))
}

const hex = "0123456789ABCDEF"

func appendHex(b []byte, u uint16) []byte {
	return append(b, hex[u>>12], hex[u>>8&15], hex[u>>4&15], hex[u&15])
}

// appendCode writes a character as \U+XXXX, one past U+FFFF as its two units of
// UTF-16.
func appendCode(b []byte, r rune) []byte {
	units(r, func(u uint16) { b = appendHex(append(b, `\U+`...), u) })
	return b
}

// dxfText is text for DXF: ASCII, with other characters by their code, and those
// too that a reader would take for a code of its own (%%d, ^J, \U+).
func dxfText(s string) string {
	s = clean(s)
	b := make([]byte, 0, len(s))
	var before rune
	for _, r := range s {
		switch {
		case r > '~', r == '^', r == '\\', r == '%' && before == '%':
			b = appendCode(b, r)
		default:
			b = append(b, byte(r))
		}
		before = r
	}
	return string(b)
}

// winAnsi is where WinAnsiEncoding has its characters 0x80 to 0x9f.
var winAnsi = [32]rune{
	'€', 0, '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', 0, 'Ž', 0,
	0, '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', 0, 'ž', 'Ÿ',
}

// pdfText is text in WinAnsiEncoding, a byte a character, with others by their
// code.
func pdfText(s string) []byte {
	s = clean(s)
	b := make([]byte, 0, len(s))
	for _, r := range s {
		b = appendAnsi(b, r)
	}
	return b
}

func appendAnsi(b []byte, r rune) []byte {
	if r <= '~' || 0xa0 <= r && r <= 0xff {
		return append(b, byte(r))
	}
	for i, known := range winAnsi {
		if r == known {
			return append(b, byte(0x80+i))
		}
	}
	return appendCode(b, r)
}

// appendXML writes text for XML, in content as in an attribute.
func appendXML(b []byte, s string) []byte {
	s = clean(s)
	for i := 0; i < len(s); i++ {
		switch c := s[i]; c {
		case '&':
			b = append(b, "&amp;"...)
		case '<':
			b = append(b, "&lt;"...)
		case '>':
			b = append(b, "&gt;"...)
		case '"':
			b = append(b, "&quot;"...)
		default:
			b = append(b, c)
		}
	}
	return b
}

package jsontext

import (
	"strconv"
	"unicode/utf16"
	"unicode/utf8"
)

// A Kind is what a token is, by the byte that it begins with: '{', '}', '[',
// ']', '"', 't', 'f', 'n', '0' for a number, and 0 at the end.
type Kind byte

// A Token is a bracket or a value.
type Token struct {
	Kind Kind
	// Text is what a string says, or a number as it is written.
	Text string
	// Lone is whether an escape in a string stands for half a character. A
	// replacement character then stands in its place.
	Lone bool
}

// A Reader reads the tokens of text that [Check] found sound. Commas and colons
// are passed over.
type Reader struct {
	data []byte
	i    int
}

// NewReader returns a reader of data.
func NewReader(data []byte) *Reader { return &Reader{data: data} }

// gap passes over what stands between tokens.
func (r *Reader) gap() {
	for r.i < len(r.data) && (isSpace(r.data[r.i]) || r.data[r.i] == ',' || r.data[r.i] == ':') {
		r.i++
	}
}

// More reports whether there is another value before the bracket that closes.
func (r *Reader) More() bool {
	r.gap()
	return r.i < len(r.data) && r.data[r.i] != ']' && r.data[r.i] != '}'
}

// Next reads one token.
func (r *Reader) Next() Token {
	r.gap()
	if r.i >= len(r.data) {
		return Token{}
	}
	start := r.i
	b := r.data[r.i]
	r.i++
	switch b {
	case '"':
		return r.str()
	case '{', '}', '[', ']':
		return Token{Kind: Kind(b)}
	case 't', 'n':
		r.i = start + len("true")
		return Token{Kind: Kind(b)}
	case 'f':
		r.i = start + len("false")
		return Token{Kind: Kind(b)}
	}
	for r.i < len(r.data) && inNumber(r.data[r.i]) {
		r.i++
	}
	return Token{Kind: '0', Text: string(r.data[start:r.i])}
}

func inNumber(b byte) bool {
	return isDigit(b) || b == '.' || b == '-' || b == '+' || b|0x20 == 'e'
}

// Raw reads past one value and returns its text.
func (r *Reader) Raw() []byte {
	r.gap()
	start := r.i
	r.Skip(r.Next())
	return r.data[start:r.i]
}

// Skip reads past the rest of the value that t begins.
func (r *Reader) Skip(t Token) {
	for depth := 0; ; t = r.Next() {
		switch t.Kind {
		case '{', '[':
			depth++
		case '}', ']':
			depth--
		}
		if depth <= 0 || t.Kind == 0 {
			return
		}
	}
}

// str reads a string whose first quotation mark was read.
func (r *Reader) str() Token {
	start := r.i
	for r.data[r.i] != '"' && r.data[r.i] != '\\' {
		r.i++
	}
	if r.data[r.i] == '"' {
		r.i++
		return Token{Kind: '"', Text: string(r.data[start : r.i-1])}
	}
	t := Token{Kind: '"'}
	text := append([]byte(nil), r.data[start:r.i]...)
	for {
		b := r.data[r.i]
		r.i++
		switch b {
		case '"':
			t.Text = string(text)
			return t
		case '\\':
			var lone bool
			text, lone = r.escape(text)
			t.Lone = t.Lone || lone
		default:
			text = append(text, b)
		}
	}
}

// escape appends what an escape stands for, whose backslash was read.
func (r *Reader) escape(text []byte) (_ []byte, lone bool) {
	b := r.data[r.i]
	r.i++
	switch b {
	case 'b':
		b = '\b'
	case 'f':
		b = '\f'
	case 'n':
		b = '\n'
	case 'r':
		b = '\r'
	case 't':
		b = '\t'
	case 'u':
		unit, _ := r.unit(r.i)
		r.i += 4
		if utf16.IsSurrogate(unit) {
			whole := rune(utf8.RuneError)
			if r.i+1 < len(r.data) && r.data[r.i] == '\\' && r.data[r.i+1] == 'u' {
				low, _ := r.unit(r.i + 2)
				whole = utf16.DecodeRune(unit, low)
			}
			if whole == utf8.RuneError {
				return utf8.AppendRune(text, whole), true
			}
			r.i += 6
			unit = whole
		}
		return utf8.AppendRune(text, unit), false
	}
	return append(text, b), false
}

// unit reads four hexadecimal digits.
func (r *Reader) unit(at int) (rune, bool) {
	if at+4 > len(r.data) {
		return 0, false
	}
	unit, err := strconv.ParseUint(string(r.data[at:at+4]), 16, 16)
	return rune(unit), err == nil
}

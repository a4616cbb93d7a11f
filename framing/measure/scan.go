package measure

import "unicode/utf8"

// A scanner walks over a text and stops at the first fault, which it keeps.
type scanner struct {
	s    string
	i    int  // the byte where the character stands
	c    rune // the character, endOfText past the last one
	size int  // its bytes

	rule     Rule // the fault, empty while there is none
	at       int
	accepted string
}

// endOfText is no character that a text can hold.
const endOfText rune = -1

// load looks at the character that stands at i.
func (s *scanner) load() {
	switch {
	case s.i >= len(s.s):
		s.c, s.size = endOfText, 0
	case s.s[s.i] < utf8.RuneSelf:
		s.c, s.size = rune(s.s[s.i]), 1
	default:
		s.c, s.size = utf8.DecodeRuneInString(s.s[s.i:])
	}
}

// pass goes on to the next character.
func (s *scanner) pass() {
	s.i += s.size
	s.load()
}

// spaces passes over spaces and says whether there were any.
func (s *scanner) spaces() bool {
	start := s.i
	for isSpace(s.c) {
		s.pass()
	}
	return s.i > start
}

// digits reads the plain digits that follow, which continue a number of value
// and count.
func (s *scanner) digits(value uint64, count int) (uint64, int, bool) {
	text, i := s.s, s.i
	start := i - count
	for i < len(text) && text[i]-'0' <= 9 {
		value = value*10 + uint64(text[i]-'0')
		i++
	}
	s.i = i
	s.load()
	if i-start > maxDigits {
		return 0, 0, s.fail(RuleTooManyDigits, start+maxDigits, acceptedDigits)
	}
	return value, i - start, true
}

// smallDigits reads the superscript or subscript digits that follow.
func (s *scanner) smallDigits(digitOf func(rune) (uint64, bool)) (value uint64, ok bool) {
	for count := 0; ; count++ {
		d, is := digitOf(s.c)
		switch {
		case !is:
			return value, true
		case count == maxDigits:
			return 0, s.fail(RuleTooManyDigits, s.i, acceptedDigits)
		}
		value = value*10 + d
		s.pass()
	}
}

// fail keeps the first fault and returns false, for a caller to return.
func (s *scanner) fail(rule Rule, at int, accepted string) bool {
	if s.rule == "" {
		s.rule, s.at, s.accepted = rule, at, accepted
	}
	return false
}

func isDigit(c rune) bool { return '0' <= c && c <= '9' }

func isPoint(c rune) bool { return c == '.' || c == ',' }

func isLetter(c rune) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' && c < utf8.RuneSelf }

// isSpace takes in the no-break and the thin spaces that word processors put
// between a number and its unit. A line break is none: it ends a field.
func isSpace(c rune) bool {
	if c < utf8.RuneSelf {
		return c == ' ' || c == '\t'
	}
	return c == '\u00A0' || '\u2000' <= c && c <= '\u200A' || c == '\u202F' || c == '\u205F' || c == '\u3000'
}

// isSlash: solidus, fraction slash, division slash.
func isSlash(c rune) bool { return c == '/' || c == '\u2044' || c == '\u2215' }

// isHyphen: hyphen-minus, hyphen, non-breaking hyphen, en dash. A true minus is
// none of them: it never joins.
func isHyphen(c rune) bool {
	return c == '-' || c == '\u2010' || c == '\u2011' || c == '\u2013'
}

const minusSign = '\u2212'

// isMinus takes in the hyphen-minus, which before a number is nothing else.
func isMinus(c rune) bool { return c == '-' || c == minusSign }

func superscript(c rune) (uint64, bool) {
	switch {
	case c == '\u00B9':
		return 1, true
	case c == '\u00B2' || c == '\u00B3':
		return uint64(c - '\u00B0'), true
	case c == '\u2070' || '\u2074' <= c && c <= '\u2079':
		return uint64(c - '\u2070'), true
	}
	return 0, false
}

func subscript(c rune) (uint64, bool) {
	if '\u2080' <= c && c <= '\u2089' {
		return uint64(c - '\u2080'), true
	}
	return 0, false
}

// glyph returns the fraction that one character writes; den is 0 for a
// character that is none.
func glyph(c rune) (num, den uint64) {
	switch c {
	case '½':
		return 1, 2
	case '⅓':
		return 1, 3
	case '⅔':
		return 2, 3
	case '¼':
		return 1, 4
	case '¾':
		return 3, 4
	case '⅕':
		return 1, 5
	case '⅖':
		return 2, 5
	case '⅗':
		return 3, 5
	case '⅘':
		return 4, 5
	case '⅙':
		return 1, 6
	case '⅚':
		return 5, 6
	case '⅐':
		return 1, 7
	case '⅛':
		return 1, 8
	case '⅜':
		return 3, 8
	case '⅝':
		return 5, 8
	case '⅞':
		return 7, 8
	case '⅑':
		return 1, 9
	case '⅒':
		return 1, 10
	}
	return 0, 0
}

// startsNumber says whether c can be the first character of a number.
func startsNumber(c rune) bool { return isDigit(c) || isPoint(c) || startsRaised(c) }

// startsRaised says whether c begins a fraction that cannot be taken for the
// digits of a whole number: a glyph or a superscript.
func startsRaised(c rune) bool {
	if c < utf8.RuneSelf {
		return false
	}
	if _, ok := superscript(c); ok {
		return true
	}
	_, den := glyph(c)
	return den != 0
}

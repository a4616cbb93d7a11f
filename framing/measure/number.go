package measure

import (
	"strconv"
	"unicode/utf8"
)

// maxDigits keeps every run of digits inside 64 bits; 19 are needed to write
// the greatest Length in millimeters.
const maxDigits = 19

type form uint8

const (
	whole    form = iota // 20
	decimal              // 20.8125
	fraction             // 13/16, 20 13/16
)

// A number is integer/10^places + num/den.
type number struct {
	at, end  int // its bytes in the text
	form     form
	integer  uint64
	places   int
	num, den uint64
}

// number reads one number and the spaces after it.
func (s *scanner) number(n *number) (ok bool) {
	n.at, n.den = s.i, 1
	switch c := s.c; {
	case isDigit(c):
		var count int
		if n.integer, count, ok = s.digits(0, 0); !ok {
			return false
		}
		switch c := s.c; {
		case isPoint(c):
			ok = s.decimals(n, count)
		case isSlash(c):
			n.num, n.integer = n.integer, 0
			ok = s.denominator(n) && s.noLostSpace(n)
		}
	case isPoint(c):
		ok = s.decimals(n, 0)
	case startsRaised(c):
		ok = s.raised(n)
	case isSlash(c):
		return s.fail(RuleSlash, s.i, acceptedSlash)
	default:
		return s.fail(RuleNotANumber, s.i, "a number, as 20 13/16, 20.8125 or 528.5")
	}
	return ok && s.after(n)
}

// after reads what follows on a number: for a whole one its fraction, if any.
// It passes over the spaces behind the number.
func (s *scanner) after(n *number) bool {
	n.end = s.i
	spaced := s.spaces()
	at := s.i
	if s.c < ',' || '9' < s.c && s.c < utf8.RuneSelf {
		return true // in ASCII only , - . / and the digits could go on, and they stand together
	}
	switch c := s.c; {
	case isDigit(c):
		num, _, ok := s.digits(0, 0)
		if !ok {
			return false
		}
		if !isSlash(s.c) {
			return s.fail(RuleDigitGroups, at, "one number without spaces in it, or a whole number and a fraction, as 20 13/16")
		}
		if n.form != whole {
			return s.fail(RuleMixed, at, acceptedMixed)
		}
		n.num = num
		return s.denominator(n) && s.properAndLast(n, at)
	case startsRaised(c):
		if n.form != whole {
			return s.fail(RuleMixed, at, acceptedMixed)
		}
		return s.raised(n) && s.properAndLast(n, at)
	case isHyphen(c), c == minusSign:
		return s.hyphen(n, spaced)
	case isSlash(c):
		return s.fail(RuleSlash, at, acceptedSlash)
	case isPoint(c) && n.form == fraction && !spaced:
		return s.fail(RuleSlash, at, acceptedSlash)
	case isPoint(c):
		return s.fail(RuleMixed, at, "one decimal number without spaces in it, as 20.5")
	}
	return true
}

// hyphen reads a hyphen that joins a whole number and a fraction, which it does
// only where it touches both.
func (s *scanner) hyphen(n *number, spaced bool) bool {
	at := s.i
	sign := s.c
	s.pass()
	spaced = s.spaces() || spaced
	start := s.i
	switch c := s.c; {
	case !startsNumber(c):
		return s.fail(RuleTrailing, at, acceptedEnd)
	case sign == minusSign || n.form != whole:
		return s.fail(RuleSubtraction, at, acceptedSum)
	case spaced:
		return s.fail(RuleHyphenSpaced, at, "20-13/16 or 20 13/16 for one measure; work a difference out first")
	case isDigit(c):
		num, _, ok := s.digits(0, 0)
		if !ok {
			return false
		}
		if !isSlash(s.c) {
			return s.fail(RuleSubtraction, at, acceptedSum)
		}
		n.num = num
		return s.denominator(n) && s.properAndLast(n, start)
	case startsRaised(c):
		return s.raised(n) && s.properAndLast(n, start)
	}
	return s.fail(RuleSubtraction, at, acceptedSum) // 20-.5
}

// decimals reads the decimal mark and the digits after it; count digits stand
// before it.
func (s *scanner) decimals(n *number, count int) bool {
	at := s.i
	mark := s.c
	s.pass()
	n.form = decimal
	var total int
	var ok bool
	if n.integer, total, ok = s.digits(n.integer, count); !ok {
		return false
	}
	n.places = total - count
	switch c := s.c; {
	case n.places == 0:
		return s.fail(RuleNoDecimals, at, acceptedWhole(s.s[n.at:at]))
	case isPoint(c) && !(mark == ',' && c == ',' && n.places == 3):
		return s.fail(RuleTwoMarks, s.i, "one decimal mark, as 1250.5")
	case mark == ',' && n.places == 3:
		return s.fail(RuleComma, at, acceptedComma(s.s[n.at:]))
	}
	return true
}

// raised reads a fraction written as one glyph or from superscript digits on.
func (s *scanner) raised(n *number) bool {
	n.form = fraction
	at := s.i
	if num, den := glyph(s.c); den != 0 {
		s.pass()
		n.num, n.den = num, den
		return true
	}
	var ok bool
	if n.num, ok = s.smallDigits(superscript); !ok {
		return false
	}
	if !isSlash(s.c) {
		return s.fail(RuleSlash, at, acceptedSlash)
	}
	return s.denominator(n)
}

// denominator reads a slash and what stands below it.
func (s *scanner) denominator(n *number) bool {
	n.form = fraction
	slash := s.i
	s.pass()
	at := s.i
	var ok bool
	if isDigit(s.c) {
		n.den, _, ok = s.digits(0, 0)
	} else if _, low := subscript(s.c); low {
		n.den, ok = s.smallDigits(subscript)
	} else {
		return s.fail(RuleSlash, slash, acceptedSlash)
	}
	if ok && n.den == 0 {
		n.den = 1
		return s.fail(RuleZeroDenominator, at, "a whole number of at least 1 after the slash")
	}
	return ok
}

// properAndLast checks the fraction of a mixed number, which began at at, and
// that no second one follows.
func (s *scanner) properAndLast(n *number, at int) bool {
	if n.num >= n.den {
		return s.fail(RuleImproper, at, acceptedImproper(n))
	}
	return s.after(n)
}

// noLostSpace refuses 2013/16, where 20 13/16 may be meant: an improper
// fraction whose digits can also be parted into a whole number and a proper
// fraction. 5/4 and 10/8 cannot.
func (s *scanner) noLostSpace(n *number) bool {
	if n.num < n.den {
		return true
	}
	// Of several partings the one with the longest numerator is named. ten does not
	// overflow: a numerator has at most 19 digits.
	var integer, num uint64
	for ten := uint64(10); ten <= n.num && ten/10 < n.den; ten *= 10 {
		if rest := n.num % ten; rest >= ten/10 && rest < n.den { // a numerator has no leading zero
			integer, num = n.num/ten, rest
		}
	}
	if num == 0 {
		return true
	}
	return s.fail(RuleLostSpace, n.at, acceptedLostSpace(integer, num, n))
}

// What would do in place of a fault, in the words of the shop.
const (
	acceptedDigits = "at most 19 digits"
	acceptedSlash  = "a whole number directly before and after the slash, as 13/16"
	acceptedMixed  = "a decimal or a fraction, not both: 1.5 or 1 1/2"
	acceptedEnd    = "the end, or + and another measure"
	acceptedSum    = "one measure, or a sum with +; work a difference out first"
)

func acceptedWhole(digits string) string {
	if digits == "" {
		return "digits after the decimal mark, as .5"
	}
	return digits + ", or " + digits + ".0"
}

// acceptedComma turns 1,250 into "1250, or 1.250".
func acceptedComma(text string) string {
	var joined, pointed []byte
	commas := 0
	for i := 0; i < len(text) && (isDigit(rune(text[i])) || text[i] == ','); i++ {
		if text[i] != ',' {
			joined, pointed = append(joined, text[i]), append(pointed, text[i])
			continue
		}
		if len(joined) == 0 {
			pointed = append(pointed, '0')
		}
		commas++
		pointed = append(pointed, '.')
	}
	switch {
	case commas > 1:
		return string(joined)
	case len(joined) == 3:
		return string(pointed)
	}
	return string(joined) + ", or " + string(pointed)
}

func acceptedImproper(n *number) string {
	carry := n.num / n.den
	if n.integer+carry < n.integer {
		return "a fraction below one"
	}
	return mixedText(n.integer+carry, n.num%n.den, n.den)
}

func acceptedLostSpace(integer, num uint64, n *number) string {
	return mixedText(integer, num, n.den) + ", or " + mixedText(n.num/n.den, n.num%n.den, n.den)
}

func mixedText(integer, num, den uint64) string {
	b := strconv.AppendUint(nil, integer, 10)
	if num == 0 {
		return string(b)
	}
	b = strconv.AppendUint(append(b, ' '), num, 10)
	b = strconv.AppendUint(append(b, '/'), den, 10)
	return string(b)
}

package jsontext

import "strconv"

// MaxDepth is how deep arrays and objects may lie in one another.
const MaxDepth = 10_000

// A Fault is where text is no JSON.
type Fault struct {
	// Offset is the byte at fault; the length of the text where it ends too soon.
	Offset int
	Reason string
}

func (f *Fault) Error() string { return f.Reason }

// Check reads past the first value of data and returns where it begins and
// ends. What follows it is not looked at.
func Check(data []byte) (start, end int, fault *Fault) {
	c := checker{data: data}
	c.spaces()
	if c.i == len(data) {
		return 0, 0, &Fault{c.i, "EOF"}
	}
	start = c.i
	if !c.value() {
		return 0, 0, c.fault
	}
	return start, c.i, nil
}

type checker struct {
	data  []byte
	i     int
	open  []byte // the brackets that are open
	fault *Fault
}

// fail says that the text is no JSON at the byte that stands next.
func (c *checker) fail(context string) bool {
	if c.i >= len(c.data) {
		c.fault = &Fault{len(c.data), "unexpected EOF"}
		return false
	}
	c.fault = &Fault{c.i, "invalid character " + quoted(c.data[c.i]) + " " + context}
	return false
}

// quoted writes a byte between single quotes.
func quoted(b byte) string {
	switch b {
	case '\'':
		return `'\''`
	case '"':
		return `'"'`
	}
	s := strconv.Quote(string(rune(b)))
	return "'" + s[1:len(s)-1] + "'"
}

// next is the byte that stands next, 0 at the end. A 0 in the text is no JSON
// anywhere.
func (c *checker) next() byte {
	if c.i < len(c.data) {
		return c.data[c.i]
	}
	return 0
}

func (c *checker) spaces() {
	for c.i < len(c.data) && isSpace(c.data[c.i]) {
		c.i++
	}
}

func isSpace(b byte) bool { return b == ' ' || b == '\n' || b == '\t' || b == '\r' }

// value reads past one value and all in it.
func (c *checker) value() bool {
	for {
		c.spaces()
		switch b := c.next(); b {
		case '{', '[':
			if len(c.open) == MaxDepth {
				return c.fail("exceeded max depth")
			}
			c.i++
			c.spaces()
			if c.next() == b+2 { // nothing in it
				c.i++
				break
			}
			c.open = append(c.open, b)
			if b == '{' && !c.key("looking for beginning of object key string") {
				return false
			}
			continue
		case '"':
			if !c.str() {
				return false
			}
		case 't', 'f', 'n':
			if !c.literal() {
				return false
			}
		default:
			if !c.number() {
				return false
			}
		}
		if more, ok := c.behind(); !more || !ok {
			return ok
		}
	}
}

// behind reads what stands behind a value: the brackets that close, and what
// comes before the next value, if there is one more.
func (c *checker) behind() (more, ok bool) {
	for len(c.open) > 0 {
		b := c.open[len(c.open)-1]
		c.spaces()
		switch c.next() {
		case b + 2: // } and ] stand two behind { and [
			c.open = c.open[:len(c.open)-1]
			c.i++
			continue
		case ',':
			c.i++
			if b == '{' {
				c.spaces()
				return true, c.key("looking for beginning of object key string")
			}
			return true, true
		}
		if b == '{' {
			return false, c.fail("after object key:value pair")
		}
		return false, c.fail("after array element")
	}
	return false, true
}

// key reads past a key and its colon.
func (c *checker) key(context string) bool {
	if c.next() != '"' {
		return c.fail(context)
	}
	if !c.str() {
		return false
	}
	c.spaces()
	if c.next() != ':' {
		return c.fail("after object key")
	}
	c.i++
	return true
}

func (c *checker) str() bool {
	for c.i++; c.i < len(c.data); c.i++ {
		switch b := c.data[c.i]; {
		case b == '"':
			c.i++
			return true
		case b < ' ':
			return c.fail("in string literal")
		case b == '\\':
			c.i++
			switch c.next() {
			case 'b', 'f', 'n', 'r', 't', '\\', '/', '"':
			case 'u':
				for range 4 {
					c.i++
					if !isHex(c.next()) {
						return c.fail(`in \u hexadecimal character escape`)
					}
				}
			default:
				return c.fail("in string escape code")
			}
		}
	}
	return c.fail("")
}

func isHex(b byte) bool { return isDigit(b) || 'a' <= b|0x20 && b|0x20 <= 'f' }

func isDigit(b byte) bool { return '0' <= b && b <= '9' }

func (c *checker) literal() bool {
	word := "true"
	switch c.next() {
	case 'f':
		word = "false"
	case 'n':
		word = "null"
	}
	c.i++
	for j := 1; j < len(word); j++ {
		if c.next() != word[j] {
			return c.fail("in literal " + word + " (expecting '" + word[j:j+1] + "')")
		}
		c.i++
	}
	return true
}

func (c *checker) number() bool {
	context := "looking for beginning of value"
	if c.next() == '-' {
		c.i++
		context = "in numeric literal"
	}
	if c.next() == '0' {
		c.i++
	} else if !c.digits(context) {
		return false
	}
	if c.next() == '.' {
		c.i++
		if !c.digits("after decimal point in numeric literal") {
			return false
		}
	}
	if c.next()|0x20 == 'e' {
		c.i++
		if b := c.next(); b == '+' || b == '-' {
			c.i++
		}
		return c.digits("in exponent of numeric literal")
	}
	return true
}

// digits reads past one digit or more.
func (c *checker) digits(context string) bool {
	if !isDigit(c.next()) {
		return c.fail(context)
	}
	for isDigit(c.next()) {
		c.i++
	}
	return true
}

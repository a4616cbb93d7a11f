package explain

import (
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// MaxProblems is how many problems a [Checker] keeps. One more says that there
// were more, so that a hostile document costs bounded memory.
const MaxProblems = 1000

// MoreProblems is the code of the problem that says so.
const MoreProblems Code = "more_problems"

// Limits on what one field may hold.
const (
	// MaxLength is the longest length that an order may ask for: no rail,
	// sheet or wall of the trade is longer.
	MaxLength = 50 * measure.Meter
	// MaxMass and MaxForce are the greatest mass and load: no piece of the trade
	// weighs ten tonnes.
	MaxMass  = 10_000 * measure.Kilogram
	MaxForce = 100 * measure.Kilonewton
	// MaxDensity is more than the heaviest metal has, some 22,600 kg/m3.
	MaxDensity = 25_000 * measure.KilogramPerCubicMeter
	// MaxText is the longest name, in bytes.
	MaxText = 200
	// maxGiven is how much of an unusable text a problem repeats.
	maxGiven = 120
)

// A Checker gathers the problems of an order while its rooms look through
// their fields. The zero Checker is ready to use.
type Checker struct {
	// Format is how lengths are written in problems: exactly, in its manner.
	Format measure.Format

	problems Problems
	bad      map[Path]bool // paths with a problem; true where nothing could be read
	more     bool
	distrust bool
}

// Add records a problem. It drops one at a path that has one already, and one
// below a path that could not be read: the first is what must be mended before
// the rest can be judged.
func (c *Checker) Add(p Problem) {
	if c.more || c.judged(p.Path) {
		return
	}
	if len(c.problems) >= MaxProblems {
		c.more = true
		p = Problem{Code: MoreProblems, Accepted: strconv.Itoa(MaxProblems)}
	}
	if c.bad == nil {
		c.bad = make(map[Path]bool)
	}
	switch p.Code {
	case Missing, WrongType, TooDeep, TooMany, TooFew:
		c.bad[p.Path] = true
	default:
		c.bad[p.Path] = false
	}
	p.Given = shorten(p.Given)
	c.problems = append(c.problems, p)
}

// judged reports whether p has a problem or lies below what could not be read.
func (c *Checker) judged(p Path) bool {
	if len(c.bad) == 0 {
		return false
	}
	if _, bad := c.bad[p]; bad {
		return true
	}
	for p != "" {
		if p = p.Parent(); c.bad[p] {
			return true
		}
	}
	return false
}

// Clean reports whether none of paths and nothing below them has a problem,
// and all could be read. Rules that need several fields ask first.
func (c *Checker) Clean(paths ...Path) bool {
	if c.distrust {
		return false
	}
	for _, p := range paths {
		if c.judged(p) {
			return false
		}
		for bad := range c.bad {
			if bad != "" && bad.Under(p) {
				return false
			}
		}
	}
	return true
}

// Distrust makes Clean answer no from now on. It is for an order whose numbers
// cannot be compared with one another.
func (c *Checker) Distrust() { c.distrust = true }

// Problems returns what was gathered, sorted.
func (c *Checker) Problems() Problems { return c.problems.Sorted() }

// Length checks that l lies from least to most, both included. A least of 1 nm
// reads as "more than nothing".
func (c *Checker) Length(at Path, l, least, most measure.Length) {
	if l >= least && l <= most {
		return
	}
	from := c.Write(least)
	if least == measure.Nanometer {
		from = "more than " + c.Write(0)
	}
	c.Add(Problem{Code: OutOfRange, Path: at, Given: c.Write(l), Accepted: from + " to " + c.Write(most)})
}

// Write writes a length as the problems do.
func (c *Checker) Write(l measure.Length) string { return string(c.Format.AppendExact(nil, l)) }

// Positive checks that l is more than nothing and no longer than [MaxLength].
func (c *Checker) Positive(at Path, l measure.Length) {
	c.Length(at, l, measure.Nanometer, MaxLength)
}

// NotNegative checks that l is nothing or more and no longer than [MaxLength].
func (c *Checker) NotNegative(at Path, l measure.Length) { c.Length(at, l, 0, MaxLength) }

// Measured checks a length that has to be measured: nothing is [Missing].
func (c *Checker) Measured(at Path, l measure.Length) { c.givenLength(at, l, true) }

// GivenSize checks a size that an order may give. Where it counts, a dimension
// of nothing is [Missing]: it was left out, or means as much.
func (c *Checker) GivenSize(at Path, s measure.Size, counts bool) {
	c.givenLength(at+"/width", s.Width, counts)
	c.givenLength(at+"/height", s.Height, counts)
}

func (c *Checker) givenLength(at Path, l measure.Length, counts bool) {
	if counts && l == 0 {
		c.Add(Problem{Code: Missing, Path: at})
		return
	}
	c.NotNegative(at, l)
}

// Ratio checks that r lies from least to most, both included.
func (c *Checker) Ratio(at Path, r, least, most Ratio) {
	if r < least || r > most {
		c.Add(Problem{
			Code: OutOfRange, Path: at, Given: r.String(),
			Accepted: least.String() + " to " + most.String(),
		})
	}
}

// Mass checks that m is nothing or more and no more than [MaxMass].
func (c *Checker) Mass(at Path, m measure.Mass) { checkRange(c, at, m, 0, MaxMass) }

// Force checks that f is nothing or more and no more than [MaxForce].
func (c *Checker) Force(at Path, f measure.Force) { checkRange(c, at, f, 0, MaxForce) }

// Density checks that d is nothing or more and no more than [MaxDensity].
func (c *Checker) Density(at Path, d measure.Density) { checkRange(c, at, d, 0, MaxDensity) }

// Angle checks that a lies from least to most, both included.
func (c *Checker) Angle(at Path, a, least, most measure.Angle) { checkRange(c, at, a, least, most) }

// checkRange checks that q lies from least to most, both included. What was
// given is written exactly, the range for someone to read.
func checkRange[Q Quantity](c *Checker, at Path, q, least, most Q) {
	if q >= least && q <= most {
		return
	}
	write := func(q Q) string { return string(Of(q).AppendReadable(nil, c.Format)) }
	c.Add(Problem{Code: OutOfRange, Path: at, Given: Of(q).String(), Accepted: write(least) + " to " + write(most)})
}

// Number checks that n lies from least to most, both included.
func (c *Checker) Number(at Path, n, least, most int64) {
	if n < least || n > most {
		c.Add(Problem{
			Code: OutOfRange, Path: at, Given: strconv.FormatInt(n, 10),
			Accepted: strconv.FormatInt(least, 10) + " to " + strconv.FormatInt(most, 10),
		})
	}
}

// Text checks a name: at most [MaxText] bytes of UTF-8, no control characters.
func (c *Checker) Text(at Path, s string) {
	if !utf8.ValidString(s) {
		c.Add(Problem{Code: NotUTF8, Path: at, Given: strings.ToValidUTF8(s, "\uFFFD")})
	}
	if len(s) > MaxText {
		c.Add(Problem{
			Code: TextTooLong, Path: at, Given: s,
			Accepted: "0 to " + strconv.Itoa(MaxText),
		})
	}
	if i := strings.IndexFunc(s, isControl); i >= 0 {
		c.Add(Problem{Code: TextControl, Path: at, Given: s, At: Place(s, i)})
	}
}

// isControl reports what would break a line of a ticket or turn it around:
// control characters, line and paragraph separators, overrides of direction.
func isControl(r rune) bool {
	switch {
	case r < 0x20, 0x7f <= r && r < 0xa0, r == 0x2028, r == 0x2029, r == 0xfeff:
		return true
	case 0x202a <= r && r <= 0x202e, 0x2066 <= r && r <= 0x2069:
		return true
	}
	return false
}

// Choice checks that s is one of choices; a word in the wrong case has a code
// of its own.
func (c *Checker) Choice(at Path, s string, choices []string) {
	if slices.Contains(choices, s) {
		return
	}
	code := NotAChoice
	if slices.ContainsFunc(choices, func(choice string) bool { return strings.EqualFold(choice, s) }) {
		code = WrongCase
	}
	c.Add(Problem{Code: code, Path: at, Given: s, Accepted: strings.Join(choices, ", ")})
}

// shorten cuts s to what a problem repeats, at a whole character.
func shorten(s string) string {
	if len(s) <= maxGiven {
		return s
	}
	cut := maxGiven
	for cut > 0 && s[cut]&0xc0 == 0x80 {
		cut--
	}
	return s[:cut] + "..."
}

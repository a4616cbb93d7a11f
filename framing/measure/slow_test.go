package measure

import (
	"math/big"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"
)

// slowRead reads the part of the grammar that is plain ASCII, on another road:
// patterns and big rationals, nothing of the package's reader. It returns
// nanometers, or nil for what is refused.
func slowRead(s string, bare string) *big.Rat {
	if len(s) > 100 {
		return nil
	}
	s = strings.Trim(s, " \t")
	negative := strings.HasPrefix(s, "-")
	if negative {
		s = strings.TrimLeft(s[1:], " \t")
	}
	terms := strings.Split(s, "+")
	if len(terms) > 16 || negative && len(terms) > 1 {
		return nil
	}
	sum := new(big.Rat)
	anyBare, anyOther := false, false
	for _, term := range terms {
		v, unit := slowTerm(strings.Trim(term, " \t"), bare)
		if v == nil {
			return nil
		}
		anyBare = anyBare || unit == ""
		anyOther = anyOther || unit != "" && unit != bare
		sum.Add(sum, v)
	}
	if anyBare && anyOther {
		return nil
	}
	if negative {
		sum.Neg(sum)
	}
	if !roundHalfAway(sum).IsInt64() {
		return nil
	}
	return sum
}

const slowNumber = `(\d+[ \t]+\d+/\d+|\d+-\d+/\d+|\d+/\d+|\d*[.,]\d+|\d+)[ \t]*`

var (
	slowSingle = regexp.MustCompile(`^` + slowNumber + `(mm|cm|m|in\.?|inch|inches|ft\.?|feet|''|'|"|)$`)
	slowFeet   = regexp.MustCompile(`^(\d+)[ \t]*(?:ft\.?|feet|')(?:-|[ \t]*)` + slowNumber + `(in\.?|inch|inches|''|"|)$`)
	slowPoint  = regexp.MustCompile(`[a-z]\.\d`)
	slowMixed  = regexp.MustCompile(`^(\d+)[ \t-]+(\d+)/(\d+)$`)
)

// slowTerm returns the nanometers of one term and its last unit.
func slowTerm(s, bare string) (*big.Rat, string) {
	lower := strings.ToLower(s)
	if slowPoint.MatchString(lower) {
		return nil, ""
	}
	if m := slowSingle.FindStringSubmatch(lower); m != nil {
		n := slowValue(strings.TrimRight(m[1], " \t"))
		unit := slowUnit(m[2])
		nm := slowNanometers(unit)
		if unit == "" {
			nm = slowNanometers(bare)
		}
		if n == nil || nm == nil {
			return nil, ""
		}
		return n.Mul(n, nm), unit
	}
	if m := slowFeet.FindStringSubmatch(lower); m != nil && m[2][0] != ',' {
		feet, inches := slowValue(m[1]), slowValue(m[2])
		if feet == nil || inches == nil || inches.Cmp(ratio("12")) >= 0 {
			return nil, ""
		}
		feet.Mul(feet, slowNanometers("ft"))
		return feet.Add(feet, inches.Mul(inches, slowNanometers("in"))), "in"
	}
	return nil, ""
}

func slowUnit(s string) string {
	switch strings.TrimSuffix(s, ".") {
	case "in", "inch", "inches", `"`, "''":
		return "in"
	case "ft", "feet", "'":
		return "ft"
	}
	return s
}

func slowNanometers(unit string) *big.Rat {
	switch unit {
	case "mm":
		return ratio("1000000")
	case "cm":
		return ratio("10000000")
	case "m":
		return ratio("1000000000")
	case "in":
		return ratio("25400000")
	case "ft":
		return ratio("304800000")
	}
	return nil
}

func slowValue(s string) *big.Rat {
	for _, run := range strings.FieldsFunc(s, func(c rune) bool { return strings.ContainsRune(" \t-/", c) }) {
		if len(strings.NewReplacer(".", "", ",", "").Replace(run)) > 19 {
			return nil
		}
	}
	one := ratio("1")
	if m := slowMixed.FindStringSubmatch(s); m != nil {
		part := slowFraction(m[2], m[3])
		if part == nil || part.Cmp(one) >= 0 {
			return nil
		}
		return part.Add(part, slowFraction(m[1], "1"))
	}
	if num, den, ok := strings.Cut(s, "/"); ok {
		v := slowFraction(num, den)
		if v == nil {
			return nil
		}
		for i := 1; i < len(num) && v.Cmp(one) >= 0; i++ {
			whole, part := num[:i], num[i:]
			if strings.Trim(whole, "0") != "" && part[0] != '0' && slowFraction(part, den).Cmp(one) < 0 {
				return nil
			}
		}
		return v
	}
	if _, decimals, ok := strings.Cut(s, ","); ok && len(decimals) == 3 {
		return nil
	}
	before, after, _ := strings.Cut(strings.Replace(s, ",", ".", 1), ".")
	return slowFraction(before+after, "1"+strings.Repeat("0", len(after)))
}

// slowFraction is nil over zero.
func slowFraction(num, den string) *big.Rat {
	n, _ := new(big.Int).SetString(num, 10)
	d, _ := new(big.Int).SetString(den, 10)
	if d.Sign() == 0 {
		return nil
	}
	return new(big.Rat).SetFrac(n, d)
}

// randomText strings together what measures are made of: mostly whole phrases,
// so that many of the texts read, and odd tokens, so that many do not.
func randomText(rng *rand.Rand) string {
	pick := func(from ...string) string { return from[rng.IntN(len(from))] }
	digits := func() string {
		n := 1 + rng.IntN(3)
		if rng.IntN(30) == 0 {
			n = rng.IntN(24)
		}
		var b strings.Builder
		for range n {
			b.WriteByte(byte('0' + rng.IntN(10)))
		}
		return b.String()
	}
	number := func() string {
		switch rng.IntN(6) {
		case 0:
			return digits() + pick(" ", "-", "  ") + pick("1/2", "3/4", "13/16", "5/64", "1/3", "7/100", "9/8")
		case 1:
			return digits() + pick(".", ",", ".") + digits()
		case 2:
			return digits() + "/" + digits()
		case 3:
			return pick("1/2", "3/8", "5/4", "10/8", "12/8", ".5", "2013/16")
		}
		return digits()
	}
	unit := func() string {
		return pick("", "", `"`, "'", "''", " in", " mm", "mm", " cm", " ft", " feet", " Inches", " m", " in.", " ft.", " IN")
	}
	var b strings.Builder
	b.WriteString(pick("", "", "", "", "", "-", " ", "- "))
	for more := true; more; more = rng.IntN(4) == 0 {
		if b.Len() > 2 {
			b.WriteString(pick(" + ", "+", " - ", " "))
		}
		if rng.IntN(4) == 0 {
			b.WriteString(digits() + pick("'", " ft", "ft", " feet") + pick("", " ", "-", " -"))
		}
		b.WriteString(number() + unit())
	}
	text := b.String()
	if rng.IntN(5) == 0 { // one byte in, out or changed
		at := rng.IntN(len(text) + 1)
		odd := pick("0", "5", " ", "/", "-", "+", ".", ",", "'", `"`, "i", "m", "\t", "x")
		switch rng.IntN(3) {
		case 0:
			text = text[:at] + odd + text[at:]
		case 1:
			text = text[:max(at-1, 0)] + text[at:]
		default:
			text = text[:max(at-1, 0)] + odd + text[at:]
		}
	}
	return text
}

func TestTwoRoads(t *testing.T) {
	rng := rand.New(rand.NewPCG(40, 41))
	read, refused := 0, 0
	for range 30_000 {
		text := randomText(rng)
		for _, bare := range []Unit{Inches, Millimeters, NoUnit} {
			if checkTwoRoads(t, text, bare) {
				read++
			} else {
				refused++
			}
		}
	}
	// The texts must try both: a generator gone stale would pass everything.
	if read < 20_000 || refused < 20_000 {
		t.Errorf("%d texts read, %d refused", read, refused)
	}
	for _, c := range readings {
		if isPlain(c.text) {
			checkTwoRoads(t, c.text, c.bare)
		}
	}
	for _, c := range faults {
		if isPlain(c.text) {
			checkTwoRoads(t, c.text, Inches)
		}
	}
}

// isPlain says whether s is made of what slowRead knows: no spelled-out metric
// units, no "foot", no space beyond ASCII.
func isPlain(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	lower := strings.ToLower(s)
	return !strings.Contains(lower, "met") && !strings.Contains(lower, "foot")
}

func checkTwoRoads(t *testing.T, text string, bare Unit) (ok bool) {
	t.Helper()
	want := slowRead(text, bare.String())
	got, err := Read(text, bare)
	if want == nil {
		if err == nil {
			t.Errorf("Read(%q, %v) = %v, the slow reader refuses it", text, bare, got)
		}
		return false
	}
	if err != nil {
		t.Errorf("Read(%q, %v): %v, the slow reader has %v nm", text, bare, err, want)
		return true
	}
	if int64(got.Length) != roundHalfAway(want).Int64() || got.Rounded == want.IsInt() {
		t.Errorf("Read(%q, %v) = %d, rounded %v; the slow reader has %v nm", text, bare, got.Length, got.Rounded, want)
	}
	return true
}

package explain

import (
	"slices"
	"strings"

	"github.com/fairmiter/fairmiter/framing/measure"
)

// An Entry is what one code or key says in English. Text in braces is a key:
// the value of the note's term of that key goes there.
type Entry struct {
	Code string `json:"code"`
	Text string `json:"text"`
}

// Table returns every code and key with its English, sorted by code: the whole
// of what a translation must cover. The rules of package measure stand in it as
// "measure." and their code.
func Table() []Entry {
	table := slices.Clone(english[:])
	for _, e := range englishShapes {
		table = enter(table, e)
	}
	for _, rule := range measure.Rules() {
		table = enter(table, Entry{rulePrefix + string(rule), rule.Words()})
	}
	return table
}

// enter puts an entry into a table where it belongs.
func enter(table []Entry, e Entry) []Entry {
	i, _ := slices.BinarySearchFunc(table, e.Code, byCode)
	table = append(table, e)
	copy(table[i+1:], table[i:])
	table[i] = e
	return table
}

func byCode(e Entry, code string) int { return strings.Compare(e.Code, code) }

// rulePrefix stands before the code of a rule of package measure.
const rulePrefix = "measure."

// MeasureCode returns the code of a problem that breaks a rule of package
// measure.
func MeasureCode(r measure.Rule) Code { return Code(rulePrefix + string(r)) }

// English returns what code says, with its braces still in it; code itself
// where the table does not hold it.
func English(code string) string {
	if rule, ok := strings.CutPrefix(code, rulePrefix); ok {
		if words := measure.Rule(rule).Words(); words != "" {
			return words
		}
		return code
	}
	for _, table := range [...][]Entry{english[:], englishShapes[:]} {
		if i, found := slices.BinarySearchFunc(table, code, byCode); found {
			return table[i].Text
		}
	}
	return code
}

// Text returns what the note says, its values in place, lengths in the manner
// of f: exactly where that is short, else as "about" so much. A mass or a load that
// was worked out stands as [measure.ShowMass] and [measure.ShowForce] show it.
func (n Note) Text(f measure.Format) string {
	return string(fill(nil, English(string(n.Code)), n.Values, f))
}

// fill writes template with each {key} replaced by the value of that term.
func fill(dst []byte, template string, terms []Term, f measure.Format) []byte {
	for {
		before, rest, found := strings.Cut(template, "{")
		dst = append(dst, before...)
		if !found {
			return dst
		}
		key, after, closed := strings.Cut(rest, "}")
		i := slices.IndexFunc(terms, func(t Term) bool { return string(t.Key) == key })
		if !closed || i < 0 {
			dst = append(dst, '{')
			template = rest
			continue
		}
		dst = terms[i].said(dst, f)
		template = after
	}
}

// said writes a value as a note says it: one that was worked out as a plan shows it,
// so that a mass or a load has one figure wherever it stands.
func (t Term) said(dst []byte, f measure.Format) []byte {
	if f.Style != measure.Exact && !t.Path.Under("/order") {
		switch inches := f.Unit() == measure.Inches; t.Value.Kind {
		case MassKind:
			dst, _ = measure.AppendMass(dst, measure.Mass(t.Value.N), inches)
			return dst
		case ForceKind:
			dst, _ = measure.AppendForce(dst, measure.Force(t.Value.N), inches)
			return dst
		}
	}
	return t.Value.AppendReadable(dst, f)
}

// Text returns what the change asks for, in the manner of f: "rabbet depth at
// least 9/16 in". A bound is rounded to the fineness on its own side, so that
// the text asks for no less than the change; a mass or a load of at least so
// much stands as [measure.ShowMass] and [measure.ShowForce] show it. A word
// has an entry of its own: "hanging by two rings".
func (c Change) Text(f measure.Format) string {
	if c.Word != "" {
		return English("change." + c.Path.Parent().Last() + "." + c.Path.Last() + "." + c.Word)
	}
	var dst []byte
	dst = append(dst, English("field."+c.Path.Last())...)
	dst = append(dst, ' ')
	if c.Bound != Exactly {
		dst = append(append(dst, English("bound."+string(c.Bound))...), ' ')
	}
	if c.Bound == AtLeast && f.Style != measure.Exact {
		inches := f.Unit() == measure.Inches
		switch c.To.Kind {
		case MassKind:
			dst, _ = measure.AppendMass(dst, measure.Mass(c.To.N), inches)
			return string(dst)
		case ForceKind:
			dst, _ = measure.AppendForce(dst, measure.Force(c.To.N), inches)
			return string(dst)
		}
	}
	if c.Bound == Exactly || c.To.Kind != LengthKind {
		return string(c.To.Append(dst, f))
	}
	direction := measure.Up
	if c.Bound == AtMost {
		direction = measure.Down
	}
	if rounded, _ := f.Round(measure.Length(c.To.N), direction); rounded <= 0 {
		return string(c.To.Append(dst, f)) // too small for the fineness
	}
	dst, _ = f.AppendMarked(dst, measure.Length(c.To.N), direction)
	return string(dst)
}

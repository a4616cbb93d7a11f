package explain

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// A Problem is one thing in an order that cannot be understood.
type Problem struct {
	Code Code `json:"code"`
	// Path is the field at fault, in the order as it was given.
	Path Path `json:"path"`
	// Given is the text or value that stood there, shortened where it is long.
	Given string `json:"given,omitzero"`
	// Accepted says what would do there: a list, a range, a form to follow.
	Accepted string `json:"accepted,omitzero"`
	// At is where in Given reading stopped, as a character counted from 1, in the
	// text before it was shortened; for a problem of the whole document, the
	// character of the document. It is 0 where there is no such place.
	At int `json:"at,omitzero"`
}

// Error says the problem in one line: where, what is wrong, what was given,
// what is accepted.
func (p Problem) Error() string {
	where := string(p.Path)
	switch {
	case where == "":
		where = "order"
	case strings.ContainsFunc(where, isControl):
		where = strconv.Quote(where)
	}
	return where + ": " + p.Explanation()
}

// Explanation says the problem without where it is, for one who says that in
// another way.
func (p Problem) Explanation() string {
	var b strings.Builder
	b.WriteString(English(string(p.Code)))
	if p.Given != "" {
		b.WriteString(": given ")
		b.WriteString(strconv.Quote(p.Given))
	}
	if p.At > 0 {
		b.WriteString(" at character ")
		b.WriteString(strconv.Itoa(p.At))
	}
	if p.Accepted != "" {
		b.WriteString("; accepted: ")
		b.WriteString(p.Accepted)
	}
	return b.String()
}

// Place is the character, counted from 1, that begins at a byte of text.
func Place(text string, offset int) int {
	return utf8.RuneCountInString(text[:max(0, min(offset, len(text)))]) + 1
}

// Problems are all that is wrong with an order, sorted by path. As an error
// they print a line each. Use [Problems.Err] to return them: a nil Problems in
// an error is not a nil error.
type Problems []Problem

// Error writes the problems, a line each.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap gives errors.As and errors.Is each single problem.
func (ps Problems) Unwrap() []error {
	errs := make([]error, len(ps))
	for i, p := range ps {
		errs[i] = p
	}
	return errs
}

// Err returns ps as an error, nil where there are none.
func (ps Problems) Err() error {
	if len(ps) == 0 {
		return nil
	}
	return ps
}

// Sorted returns a copy of ps in the order of their paths, and of their codes
// where two stand at one path.
func (ps Problems) Sorted() Problems {
	if ps == nil {
		return nil
	}
	sorted := make(Problems, 0, len(ps))
	for _, p := range ps { // they come nearly sorted, and all of a sort makes the page's module larger
		i := len(sorted)
		for i > 0 && p.before(sorted[i-1]) {
			i--
		}
		sorted = append(sorted, p)
		copy(sorted[i+1:], sorted[i:])
		sorted[i] = p
	}
	return sorted
}

// before reports whether p belongs before q.
func (p Problem) before(q Problem) bool {
	order := p.Path.Compare(q.Path)
	return order < 0 || order == 0 && p.Code < q.Code
}

// Under returns the problems at root and below it.
func (ps Problems) Under(root Path) Problems {
	var under Problems
	for _, p := range ps {
		if p.Path.Under(root) {
			under = append(under, p)
		}
	}
	return under
}

// Problem codes that any field can have. Their English stands in [Table].
const (
	NotJSON      Code = "not_json"      // the document is not JSON
	NotUTF8      Code = "not_utf8"      // a byte that is no text
	Trailing     Code = "trailing"      // text after the end of the document
	TooLarge     Code = "too_large"     // more bytes than a document may have
	TooDeep      Code = "too_deep"      // nested deeper than a document may be
	TooMany      Code = "too_many"      // more elements than a list may have
	TooFew       Code = "too_few"       // fewer elements than a list must have
	UnknownField Code = "unknown_field" // a key that this version does not have
	WrongCase    Code = "wrong_case"    // a key or a choice in the wrong case
	Duplicate    Code = "duplicate"     // a key that was there before
	Missing      Code = "missing"       // a field that has no default
	WrongType    Code = "wrong_type"    // a number for a string, and the like
	NotAChoice   Code = "not_a_choice"  // a word that is not in the list
	NotAMeasure  Code = "not_a_measure" // text that measure cannot read
	NotARatio    Code = "not_a_ratio"   // text that is no ratio in percent
	NotADate     Code = "not_a_date"    // not a day of the calendar as YYYY-MM-DD
	OutOfRange   Code = "out_of_range"  // a number outside what makes sense
	TextTooLong  Code = "text_too_long" // more bytes than a name may have
	TextControl  Code = "text_control"  // a control character in a name
)

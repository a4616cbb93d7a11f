package explain_test

import (
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestTableSorted(t *testing.T) {
	table := explain.Table()
	for i, e := range table {
		if i > 0 && table[i-1].Code >= e.Code {
			t.Errorf("%q stands before %q", table[i-1].Code, e.Code)
		}
		if got := explain.English(e.Code); got != e.Text {
			t.Errorf("%q is %q in the table and %q by itself", e.Code, e.Text, got)
		}
	}
	if len(table) < len(measure.Rules()) {
		t.Errorf("the table has %d entries", len(table))
	}
}

// TestTableText: every text says something, in one line of printable
// characters without stray spaces.
func TestTableText(t *testing.T) {
	for _, e := range explain.Table() {
		if e.Text == "" || strings.TrimSpace(e.Text) != e.Text || strings.Contains(e.Text, "  ") {
			t.Errorf("%q reads %q", e.Code, e.Text)
		}
		if !utf8.ValidString(e.Text) || strings.ContainsFunc(e.Text, func(r rune) bool { return !unicode.IsPrint(r) }) {
			t.Errorf("%q holds what cannot be printed: %q", e.Code, e.Text)
		}
		if sentence := strings.Contains(e.Text, "{") || strings.HasPrefix(e.Code, "caution."); sentence && !strings.HasSuffix(e.Text, ".") {
			t.Errorf("%q is a sentence without an end: %q", e.Code, e.Text)
		}
	}
}

// TestTableBraces: what stands in braces is a key of the table.
func TestTableBraces(t *testing.T) {
	keys := make(map[string]bool)
	for _, e := range explain.Table() {
		keys[e.Code] = true
	}
	for _, e := range explain.Table() {
		for _, key := range braces(t, e.Text) {
			if !keys[key] {
				t.Errorf("%q speaks of {%s}, which is no key", e.Code, key)
			}
		}
	}
}

// braces lists what stands in braces in text.
func braces(t *testing.T, text string) []string {
	t.Helper()
	var keys []string
	for rest := text; ; {
		_, after, found := strings.Cut(rest, "{")
		if !found {
			return keys
		}
		key, tail, closed := strings.Cut(after, "}")
		if !closed {
			t.Fatalf("an open brace in %q", text)
		}
		keys, rest = append(keys, key), tail
	}
}

// TestTableIsACopy: who changes the table he got changes nothing.
func TestTableIsACopy(t *testing.T) {
	first := explain.Table()
	want := slices.Clone(first)
	for i := range first {
		first[i].Text = "changed"
	}
	if !slices.Equal(explain.Table(), want) {
		t.Error("the table changed")
	}
}

func TestEnglishOfRules(t *testing.T) {
	for _, rule := range measure.Rules() {
		if got := explain.English(string(explain.MeasureCode(rule))); got != rule.Words() || got == "" {
			t.Errorf("%s reads %q, want %q", rule, got, rule.Words())
		}
	}
	for _, code := range []string{"", "zz", "no.such_code", "measure.", "measure.no_such_rule"} {
		if got := explain.English(code); got != code {
			t.Errorf("%q reads %q, want itself", code, got)
		}
	}
}

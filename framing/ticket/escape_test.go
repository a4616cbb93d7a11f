package ticket

import (
	"html"
	"testing"
)

// TestEscape: as the standard library does.
func TestEscape(t *testing.T) {
	for _, text := range []string{"", "plain", "Ærø", `<a href="x">`, "a & b", "'", "&amp;", "\xff<", "<>&\"'"} {
		if got, want := escape(text), html.EscapeString(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

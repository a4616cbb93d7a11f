package explain_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func problem(code explain.Code, path explain.Path) explain.Problem {
	return explain.Problem{Code: code, Path: path}
}

// found lists the problems of c as "path code".
func found(c *explain.Checker) []string {
	var list []string
	for _, p := range c.Problems() {
		list = append(list, string(p.Path)+" "+string(p.Code))
	}
	return list
}

func TestCheckerKeepsTheFirst(t *testing.T) {
	var c explain.Checker
	for _, p := range []explain.Problem{
		problem(explain.OutOfRange, "/b"),
		problem(explain.Missing, "/b"),           // the same place
		problem(explain.OutOfRange, "/b/below"),  // /b was read, so its parts count
		problem(explain.WrongType, "/a"),         // nothing of /a could be read
		problem(explain.Missing, "/a/width"),     // so this is no news
		problem(explain.Missing, "/a/deep/down"), // nor this
		problem(explain.Missing, "/ab"),          // but this lies beside it
	} {
		c.Add(p)
	}
	want := []string{"/a wrong_type", "/ab missing", "/b out_of_range", "/b/below out_of_range"}
	if got := found(&c); !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
}

// TestCheckerUnread: exactly the codes that leave nothing to read hide what
// lies below them.
func TestCheckerUnread(t *testing.T) {
	hides := []explain.Code{explain.Missing, explain.WrongType, explain.TooDeep, explain.TooMany, explain.TooFew}
	for _, code := range []explain.Code{
		explain.NotJSON, explain.NotUTF8, explain.Trailing, explain.TooLarge, explain.TooDeep, explain.TooMany,
		explain.TooFew, explain.UnknownField, explain.WrongCase, explain.Duplicate, explain.Missing, explain.WrongType,
		explain.NotAChoice, explain.NotAMeasure, explain.NotADate, explain.OutOfRange, explain.TextTooLong, explain.TextControl,
	} {
		for _, root := range []explain.Path{"", "/a"} {
			var c explain.Checker
			c.Add(problem(code, root))
			c.Add(problem(explain.OutOfRange, root+"/b/c"))
			want := 2
			if slices.Contains(hides, code) {
				want = 1
			}
			if got := len(c.Problems()); got != want {
				t.Errorf("%s at %q and one below: %d problems, want %d", code, root, got, want)
			}
		}
	}
}

func TestCheckerClean(t *testing.T) {
	var c explain.Checker
	if !c.Clean() || !c.Clean("/a", "") {
		t.Error("nothing is not clean")
	}
	c.Add(problem(explain.OutOfRange, "/a/width"))
	c.Add(problem(explain.Missing, "/b"))
	c.Add(problem(explain.UnknownField, "/c"))
	rows := []struct {
		paths []explain.Path
		clean bool
	}{
		{[]explain.Path{"/a/height"}, true},
		{[]explain.Path{"/a/width"}, false},
		{[]explain.Path{"/a"}, false},       // it holds the width
		{[]explain.Path{"/a/w"}, true},      // it is only called alike
		{[]explain.Path{"/b/deep"}, false},  // nothing of /b was read
		{[]explain.Path{"/c/inner"}, true},  // a field too many spoils no other
		{[]explain.Path{"/d", "/b"}, false}, // one is enough
		{[]explain.Path{"/d", "/e"}, true},
		{[]explain.Path{""}, false},
	}
	for _, row := range rows {
		if got := c.Clean(row.paths...); got != row.clean {
			t.Errorf("clean %q: %v, want %v", row.paths, got, row.clean)
		}
	}
	c.Distrust()
	if c.Clean("/d") || c.Clean() {
		t.Error("what cannot be compared is clean")
	}
	if len(c.Problems()) != 3 {
		t.Error("distrust is a problem by itself")
	}
}

func TestCheckerCap(t *testing.T) {
	var c explain.Checker
	for i := range explain.MaxProblems {
		c.Add(problem(explain.OutOfRange, explain.Path("/pieces").Index(i)))
	}
	if n := len(c.Problems()); n != explain.MaxProblems {
		t.Fatalf("%d problems, want %d", n, explain.MaxProblems)
	}
	for i := range 5 {
		c.Add(problem(explain.OutOfRange, explain.Path("/more").Index(i)))
	}
	ps := c.Problems()
	if len(ps) != explain.MaxProblems+1 {
		t.Fatalf("%d problems, want %d and one that says there were more", len(ps), explain.MaxProblems)
	}
	if first := ps[0]; first.Code != explain.MoreProblems || first.Path != "" || first.Accepted != fmt.Sprint(explain.MaxProblems) {
		t.Errorf("the first says %+v", first)
	}
}

func TestCheckerShortens(t *testing.T) {
	const most = 120
	rows := []struct{ given, want string }{
		{strings.Repeat("x", most), strings.Repeat("x", most)},
		{strings.Repeat("x", most+1), strings.Repeat("x", most) + "..."},
		{strings.Repeat("x", most-1) + "é!", strings.Repeat("x", most-1) + "..."}, // é is two bytes
		{strings.Repeat("x", most-2) + "é!", strings.Repeat("x", most-2) + "é..."},
		{strings.Repeat("😀", 31), strings.Repeat("😀", 30) + "..."},
		{"a" + strings.Repeat("😀", 31), "a" + strings.Repeat("😀", 29) + "..."},
		{strings.Repeat("\x80", most+1), "..."}, // no character begins in it
	}
	for _, row := range rows {
		var c explain.Checker
		c.Add(explain.Problem{Code: explain.NotAMeasure, Path: "/a", Given: row.given})
		got := c.Problems()[0].Given
		if got != row.want {
			t.Errorf("%d bytes are shortened to %q, want %q", len(row.given), got, row.want)
		}
		if utf8.ValidString(row.given) && !utf8.ValidString(got) {
			t.Errorf("%q is cut inside a character", got)
		}
	}
}

func TestCheckerRules(t *testing.T) {
	const most = explain.MaxLength
	choices := []string{"in", "mm"}
	rows := []struct {
		name  string
		check func(c *explain.Checker)
		want  string // code, given, accepted, offset; "" for none
	}{
		{"length at the least", func(c *explain.Checker) { c.Length("/a", 5, 5, 9) }, ""},
		{"length at the most", func(c *explain.Checker) { c.Length("/a", 9, 5, 9) }, ""},
		{"length below", func(c *explain.Checker) { c.Length("/a", 4, 5, 9) }, "out_of_range|0.000004 mm|0.000005 mm to 0.000009 mm|0"},
		{"length above", func(c *explain.Checker) { c.Length("/a", 10, 5, 9) }, "out_of_range|0.00001 mm|0.000005 mm to 0.000009 mm|0"},
		{"positive", func(c *explain.Checker) { c.Positive("/a", 1) }, ""},
		{"nothing is not positive", func(c *explain.Checker) { c.Positive("/a", 0) }, "out_of_range|0 mm|more than 0 mm to 50000 mm|0"},
		{"the longest", func(c *explain.Checker) { c.Positive("/a", most) }, ""},
		{"too long", func(c *explain.Checker) { c.Positive("/a", most+1) }, "out_of_range|50000.000001 mm|more than 0 mm to 50000 mm|0"},
		{"nothing is not negative", func(c *explain.Checker) { c.NotNegative("/a", 0) }, ""},
		{"negative", func(c *explain.Checker) { c.NotNegative("/a", -1) }, "out_of_range|-0.000001 mm|0 mm to 50000 mm|0"},
		{"number at the ends", func(c *explain.Checker) { c.Number("/a", -2, -2, 3); c.Number("/a", 3, -2, 3) }, ""},
		{"number below", func(c *explain.Checker) { c.Number("/a", -3, -2, 3) }, "out_of_range|-3|-2 to 3|0"},
		{"number above", func(c *explain.Checker) { c.Number("/a", 4, -2, 3) }, "out_of_range|4|-2 to 3|0"},
		{"choice", func(c *explain.Checker) { c.Choice("/a", "mm", choices) }, ""},
		{"no choice", func(c *explain.Checker) { c.Choice("/a", "cubit", choices) }, "not_a_choice|cubit|in, mm|0"},
		{"empty is no choice", func(c *explain.Checker) { c.Choice("/a", "", choices) }, "not_a_choice||in, mm|0"},
		{"wrong case", func(c *explain.Checker) { c.Choice("/a", "MM", choices) }, "wrong_case|MM|in, mm|0"},
		{"text", func(c *explain.Checker) { c.Text("/a", "walnut, 2 1/4 é 😀") }, ""},
		{"longest text", func(c *explain.Checker) { c.Text("/a", strings.Repeat("x", explain.MaxText)) }, ""},
		{"text too long", func(c *explain.Checker) { c.Text("/a", strings.Repeat("x", explain.MaxText+1)) },
			"text_too_long|" + strings.Repeat("x", 120) + "...|0 to 200|0"},
		{"new line", func(c *explain.Checker) { c.Text("/a", "a\nb") }, "text_control|a\nb||2"},
		{"past the shortened text", func(c *explain.Checker) { c.Text("/a", strings.Repeat("x", 150)+"\t") },
			"text_control|" + strings.Repeat("x", 120) + "...||151"},
	}
	for _, row := range rows {
		var c explain.Checker
		row.check(&c)
		got := ""
		for _, p := range c.Problems() {
			got += fmt.Sprintf("%s|%s|%s|%d", p.Code, p.Given, p.Accepted, p.At)
		}
		if got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestGivenSize: a size that counts must be there whole; one that does not may
// be nothing, and may still not be nonsense.
func TestGivenSize(t *testing.T) {
	var c explain.Checker
	c.GivenSize("/a", measure.Size{Width: 0, Height: explain.MaxLength + 1}, true)
	c.GivenSize("/b", measure.Size{Width: 1, Height: explain.MaxLength}, true)
	c.GivenSize("/c", measure.Size{Width: 0, Height: -1}, false)
	want := []string{"/a/height out_of_range", "/a/width missing", "/c/height out_of_range"}
	if got := found(&c); !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
}

// TestTextControls: what could break a line of a ticket or turn it around is
// refused, its neighbors are not. The characters are those of the Unicode
// categories Cc, Zl, Zp, the bidirectional embeddings, overrides and isolates,
// and the byte order mark.
func TestTextControls(t *testing.T) {
	refused := func(r rune) bool {
		return r <= 0x1f || 0x7f <= r && r <= 0x9f || r == 0x2028 || r == 0x2029 ||
			0x202a <= r && r <= 0x202e || 0x2066 <= r && r <= 0x2069 || r == 0xfeff
	}
	for r := rune(0); r < 0x11000; r++ {
		if 0xd800 <= r && r <= 0xdfff {
			continue // no character
		}
		var c explain.Checker
		c.Text("/a", string(r))
		if got := len(c.Problems()) > 0; got != refused(r) {
			t.Errorf("%U refused: %v, want %v", r, got, refused(r))
		}
	}
}

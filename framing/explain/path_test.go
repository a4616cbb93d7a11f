package explain_test

import (
	"cmp"
	"encoding/json"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// rfcDocument and rfcPointers are the examples of RFC 6901, section 5.
const rfcDocument = `{"foo":["bar","baz"],"":0,"a/b":1,"c%d":2,"e^f":3,"g|h":4,"i\\j":5,"k\"l":6," ":7,"m~n":8}`

var rfcPointers = []struct {
	pointer explain.Path
	value   string
}{
	{"", rfcDocument},
	{"/foo", `["bar","baz"]`},
	{"/foo/0", `"bar"`},
	{"/", "0"},
	{"/a~1b", "1"},
	{"/c%d", "2"},
	{"/e^f", "3"},
	{"/g|h", "4"},
	{`/i\j`, "5"},
	{`/k"l`, "6"},
	{"/ ", "7"},
	{"/m~0n", "8"},
}

// at walks a JSON document along the segments of p.
func at(t *testing.T, document string, p explain.Path) string {
	t.Helper()
	current := json.RawMessage(document)
	for _, s := range p.Segments() {
		var object map[string]json.RawMessage
		if json.Unmarshal(current, &object) == nil {
			current = object[s]
			continue
		}
		var array []json.RawMessage
		if err := json.Unmarshal(current, &array); err != nil {
			t.Fatalf("%q: nothing below %s", p, current)
		}
		i, err := strconv.Atoi(s)
		if err != nil || i >= len(array) {
			t.Fatalf("%q: no element %q", p, s)
		}
		current = array[i]
	}
	return string(current)
}

func TestPathRFC6901(t *testing.T) {
	for _, row := range rfcPointers {
		if got := at(t, rfcDocument, row.pointer); got != row.value {
			t.Errorf("%q finds %s, want %s", row.pointer, got, row.value)
		}
		var built explain.Path
		for _, s := range row.pointer.Segments() {
			built = built.Child(s)
		}
		if built != row.pointer {
			t.Errorf("%q built again is %q", row.pointer, built)
		}
	}
}

func TestPathSegments(t *testing.T) {
	rows := []struct {
		path     explain.Path
		segments []string
		last     string
		parent   explain.Path
	}{
		{"", nil, "", ""},
		{"/", []string{""}, "", ""},
		{"/a", []string{"a"}, "a", ""},
		{"/a/", []string{"a", ""}, "", "/a"},
		{"//", []string{"", ""}, "", "/"},
		{"/pieces/0/frame/lip", []string{"pieces", "0", "frame", "lip"}, "lip", "/pieces/0/frame"},
		{"/~01", []string{"~1"}, "~1", ""}, // RFC 6901 section 4: ~01 is ~1 and not /
		{"/~10", []string{"/0"}, "/0", ""},
		{"/a~1b/c~0d", []string{"a/b", "c~d"}, "c~d", "/a~1b"},
	}
	for _, row := range rows {
		if got := row.path.Segments(); !slices.Equal(got, row.segments) {
			t.Errorf("%q has segments %q, want %q", row.path, got, row.segments)
		}
		if got := row.path.Last(); got != row.last {
			t.Errorf("%q ends in %q, want %q", row.path, got, row.last)
		}
		if got := row.path.Parent(); got != row.parent {
			t.Errorf("%q lies in %q, want %q", row.path, got, row.parent)
		}
	}
}

func TestPathUnder(t *testing.T) {
	rows := []struct {
		path, root, after explain.Path
		under             bool
	}{
		{"", "", "", true},
		{"/a", "", "/a", true},
		{"/a", "/a", "", true},
		{"/a/b", "/a", "/b", true},
		{"/ab", "/a", "", false},
		{"/a", "/a/b", "", false},
		{"/pieces/10", "/pieces/1", "", false},
		{"/a/", "/a", "/", true},
	}
	for _, row := range rows {
		if got := row.path.Under(row.root); got != row.under {
			t.Errorf("%q under %q: %v, want %v", row.path, row.root, got, row.under)
		}
		after, ok := row.path.After(row.root)
		if after != row.after || ok != row.under {
			t.Errorf("%q after %q: %q %v, want %q %v", row.path, row.root, after, ok, row.after, row.under)
		}
		if ok && row.root.Join(after) != row.path {
			t.Errorf("%q joined to %q is %q", after, row.root, row.root.Join(after))
		}
	}
}

func TestPathIndex(t *testing.T) {
	if got := explain.Path("/pieces").Index(12).Child("a/b~c"); got != "/pieces/12/a~1b~0c" {
		t.Errorf("built %q", got)
	}
}

// sortedPaths stand in their order. The last rows were no order at all while
// indices and keys were compared by their bytes: 2 < 10 < 1a < 2.
var sortedPaths = []explain.Path{
	"", "/", "//", "/0", "/2", "/2/a", "/10", "/100", "/00", "/01", "/1a", "/2a", "/a", "/a/0", "/a/b", "/ab", "/b", "/~0", "/~1",
}

func TestPathCompare(t *testing.T) {
	// An empty key is no index, so it stands after the indices.
	want := slices.Clone(sortedPaths)
	want = append(want[:1], append([]explain.Path{"/0", "/2", "/2/a", "/10", "/100", "/", "//"}, want[8:]...)...)
	for i, p := range want {
		for j, q := range want {
			if got := p.Compare(q); got != cmp.Compare(i, j) {
				t.Errorf("%q against %q: %d, want %d", p, q, got, cmp.Compare(i, j))
			}
		}
	}
}

// checkOrder requires what a total order must have of any three paths.
func checkOrder(t *testing.T, p, q, r explain.Path) {
	t.Helper()
	if p.Compare(q) != -q.Compare(p) {
		t.Errorf("%q and %q: %d and %d", p, q, p.Compare(q), q.Compare(p))
	}
	if p.Compare(q) <= 0 && q.Compare(r) <= 0 && p.Compare(r) > 0 {
		t.Errorf("%q, %q, %q go round", p, q, r)
	}
}

func TestPathCompareIsAnOrder(t *testing.T) {
	paths := slices.Concat(sortedPaths, []explain.Path{"/1a/2", "/10/2", "/10/10", "/-1", "/-", "/9", "/a~1b", "/é"})
	for _, p := range paths {
		for _, q := range paths {
			if (p.Compare(q) == 0) != (p == q) {
				t.Errorf("%q and %q are equal: %v", p, q, p == q)
			}
			for _, r := range paths {
				checkOrder(t, p, q, r)
			}
		}
	}
}

func FuzzPath(f *testing.F) {
	for i, row := range rfcPointers {
		f.Add(string(row.pointer), string(sortedPaths[i]), row.value)
	}
	f.Fuzz(func(t *testing.T, a, b, key string) {
		p, q := explain.Path(a), explain.Path(b)
		child := p.Child(key)
		if child.Last() != key || child.Parent() != p || !child.Under(p) {
			t.Errorf("%q under %q is %q", key, p, child)
		}
		if after, ok := child.After(p); !ok || p.Join(after) != child {
			t.Errorf("%q after %q is %q", child, p, after)
		}
		if p.Compare(child) >= 0 && (p == "" || strings.HasPrefix(a, "/")) {
			t.Errorf("%q does not stand before %q", p, child)
		}
		if s := child.Segments(); len(s) == 0 || s[len(s)-1] != key {
			t.Errorf("%q has segments %q", child, s)
		}
		checkOrder(t, p, q, child)
		checkOrder(t, q, child, p)
		checkOrder(t, child, p, q)
	})
}

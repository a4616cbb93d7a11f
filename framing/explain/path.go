package explain

import (
	"cmp"
	"strconv"
	"strings"
)

// A Path names a place in a JSON document as a JSON Pointer (RFC 6901): the
// keys and indices from the root down, each behind a slash, with "~" written
// ~0 and "/" written ~1. The empty Path is the whole document.
//
// The paths of a [Problem] point into the order. The paths of a plan's notes,
// workings and terms point into the plan, whose member "order" holds the order
// as it was worked.
type Path string

// unescape undoes what Child does to a key; in this order, as RFC 6901 has it.
func unescape(segment string) string {
	return strings.ReplaceAll(strings.ReplaceAll(segment, "~1", "/"), "~0", "~")
}

// Child returns the path of the member key of the object at p.
func (p Path) Child(key string) Path {
	if strings.ContainsAny(key, "~/") {
		key = strings.ReplaceAll(strings.ReplaceAll(key, "~", "~0"), "/", "~1")
	}
	return p + "/" + Path(key)
}

// Index returns the path of the element i, counted from 0, of the array at p.
func (p Path) Index(i int) Path { return p + "/" + Path(strconv.Itoa(i)) }

// Join returns the path of q seen from p.
func (p Path) Join(q Path) Path { return p + q }

// Segments returns the keys and indices of p, unescaped, from the root down.
func (p Path) Segments() []string {
	if p == "" {
		return nil
	}
	segments := strings.Split(strings.TrimPrefix(string(p), "/"), "/")
	for i, s := range segments {
		segments[i] = unescape(s)
	}
	return segments
}

// Last returns the last key or index of p, "" for the whole document.
func (p Path) Last() string {
	i := strings.LastIndexByte(string(p), '/')
	return unescape(string(p[i+1:]))
}

// Parent returns the path of what holds p; the parent of the whole document is
// itself.
func (p Path) Parent() Path {
	i := strings.LastIndexByte(string(p), '/')
	if i < 0 {
		return ""
	}
	return p[:i]
}

// Under reports whether p is root or lies below it.
func (p Path) Under(root Path) bool {
	rest, ok := strings.CutPrefix(string(p), string(root))
	return ok && (rest == "" || rest[0] == '/')
}

// After returns p as seen from root, and whether p lies under it.
func (p Path) After(root Path) (Path, bool) {
	if !p.Under(root) {
		return "", false
	}
	return p[len(root):], true
}

// Compare orders paths segment by segment: a holder before what it holds,
// indices by number (2 before 10) and before keys, keys by the bytes of their
// escaped text.
func (p Path) Compare(q Path) int {
	a, b := string(p), string(q)
	for a != "" && b != "" {
		var s, t string
		s, a = cutSegment(a)
		t, b = cutSegment(b)
		if c := compareSegments(s, t); c != 0 {
			return c
		}
	}
	return cmp.Compare(len(a), len(b))
}

// cutSegment splits "/a/b" into "a" and "/b".
func cutSegment(p string) (segment, rest string) {
	p = strings.TrimPrefix(p, "/")
	if i := strings.IndexByte(p, '/'); i >= 0 {
		return p[:i], p[i:]
	}
	return p, ""
}

// compareSegments puts indices before keys: by their bytes alone 10 would stand
// before 1a and 1a before 2, and then no order is left.
func compareSegments(s, t string) int {
	switch i, j := isIndex(s), isIndex(t); {
	case i && !j:
		return -1
	case j && !i:
		return 1
	case i && len(s) != len(t):
		return cmp.Compare(len(s), len(t))
	}
	return strings.Compare(s, t)
}

// isIndex reports whether s is an array index as RFC 6901 writes it: digits
// without a leading zero.
func isIndex(s string) bool {
	if s == "" || s[0] == '0' && len(s) > 1 {
		return false
	}
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return false
		}
	}
	return true
}

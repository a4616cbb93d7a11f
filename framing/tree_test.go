package framing_test

import (
	"bytes"
	"encoding/json"
	"strconv"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// A leaf or a holder of a JSON document, which keeps the order of its keys and
// can hold what no Go value can: a key twice, a number as long as one likes.
type doc struct {
	raw   string // a scalar as it is written
	keys  []string
	below []*doc
	kind  byte // '{', '[' or 0
}

// parseDoc reads JSON text.
func parseDoc(t testing.TB, text []byte) *doc {
	t.Helper()
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	return readDoc(t, d)
}

func readDoc(t testing.TB, d *json.Decoder) *doc {
	token, err := d.Token()
	if err != nil {
		t.Fatal(err)
	}
	opening, ok := token.(json.Delim)
	if !ok {
		return &doc{raw: string(marshal(t, token))}
	}
	n := &doc{kind: byte(opening)}
	for d.More() {
		if n.kind == '{' {
			key, err := d.Token()
			if err != nil {
				t.Fatal(err)
			}
			n.keys = append(n.keys, key.(string))
		}
		n.below = append(n.below, readDoc(t, d))
	}
	if _, err := d.Token(); err != nil {
		t.Fatal(err)
	}
	return n
}

// append writes the document as JSON text.
func (n *doc) append(dst []byte) []byte {
	switch n.kind {
	case '[':
		dst = append(dst, '[')
		for i, b := range n.below {
			if i > 0 {
				dst = append(dst, ", "...)
			}
			dst = b.append(dst)
		}
		return append(dst, ']')
	case '{':
		dst = append(dst, '{')
		for i, b := range n.below {
			if i > 0 {
				dst = append(dst, ", "...)
			}
			key, _ := json.Marshal(n.keys[i])
			dst = append(append(dst, key...), ": "...)
			dst = b.append(dst)
		}
		return append(dst, '}')
	}
	return append(dst, n.raw...)
}

func (n *doc) text() []byte { return n.append(nil) }

// clone returns a document that shares nothing with n.
func (n *doc) clone() *doc {
	c := &doc{raw: n.raw, kind: n.kind, keys: append([]string(nil), n.keys...)}
	for _, b := range n.below {
		c.below = append(c.below, b.clone())
	}
	return c
}

// at follows a path: the holder of the value, and where in it.
func (n *doc) at(path explain.Path) (holder *doc, index int) {
	segments := path.Segments()
	for i, s := range segments {
		index = -1
		if n.kind == '[' {
			index, _ = strconv.Atoi(s)
		}
		for k, key := range n.keys {
			if key == s {
				index = k
			}
		}
		if i < len(segments)-1 {
			n = n.below[index]
		}
	}
	return n, index
}

// with returns a copy in which the value at path reads raw.
func (n *doc) with(path explain.Path, raw string) *doc {
	c := n.clone()
	holder, i := c.at(path)
	holder.below[i] = &doc{raw: raw}
	return c
}

// without returns a copy that lacks the field at path.
func (n *doc) without(path explain.Path) *doc {
	c := n.clone()
	holder, i := c.at(path)
	holder.keys = append(holder.keys[:i:i], holder.keys[i+1:]...)
	holder.below = append(holder.below[:i:i], holder.below[i+1:]...)
	return c
}

// beside returns a copy with one more member beside the one at path.
func (n *doc) beside(path explain.Path, key, raw string) *doc {
	c := n.clone()
	holder, _ := c.at(path)
	holder.keys, holder.below = append(holder.keys, key), append(holder.below, &doc{raw: raw})
	return c
}

// renamed returns a copy in which the key at path is another.
func (n *doc) renamed(path explain.Path, key string) *doc {
	c := n.clone()
	holder, i := c.at(path)
	holder.keys[i] = key
	return c
}

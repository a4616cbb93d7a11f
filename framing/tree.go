package framing

import (
	"bytes"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// A node is one value of a JSON document, with everything that a decoder into
// Go values would drop: duplicate keys, their order, their spelling.
type node struct {
	kind    nodeKind
	text    string // a string's text, a number's digits
	members []member
	items   []*node
}

type member struct {
	key   string
	value *node
}

type nodeKind uint8

const (
	jsonNull nodeKind = iota
	jsonBool
	jsonNumber
	jsonString
	jsonArray
	jsonObject
	tooDeep // a value that was passed over
)

// member returns the first member called key, nil where there is none.
func (n *node) member(key string) *node {
	for i := range n.members {
		if n.members[i].key == key {
			return n.members[i].value
		}
	}
	return nil
}

// word returns the string of a member, and usual where there is none.
func (n *node) word(key, usual string) string {
	if n != nil {
		if m := n.member(key); m != nil && m.kind == jsonString {
			return m.text
		}
	}
	return usual
}

// grow reads data as one JSON document. It returns nil where it is not even
// that; c then holds why.
func grow(data []byte, c *explain.Checker) *node {
	if len(data) > MaxOrderBytes {
		c.Add(explain.Problem{Code: explain.TooLarge, Given: strconv.Itoa(len(data)), Accepted: count(0, MaxOrderBytes)})
		return nil
	}
	if i := invalidUTF8(data); i >= 0 {
		c.Add(explain.Problem{Code: explain.NotUTF8, At: explain.Place(string(data), i)})
		return nil
	}
	start, end, fault := jsontext.Check(data)
	if fault != nil {
		at := fault.Offset
		c.Add(explain.Problem{Code: explain.NotJSON, Given: place(data, at) + fault.Reason, At: explain.Place(string(data), at)})
		return nil
	}
	if rest := bytes.TrimLeft(data[end:], " \t\r\n"); len(rest) > 0 {
		c.Add(explain.Problem{Code: explain.Trailing, Given: string(rest), At: explain.Place(string(data), len(data)-len(rest))})
	}
	g := grower{r: jsontext.NewReader(data[start:end]), c: c}
	return g.value(nil, 0)
}

// place says a byte of a text as an editor does.
func place(data []byte, at int) string {
	before := data[:min(at, len(data))]
	line := bytes.Count(before, []byte("\n"))
	column := utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:])
	return "line " + strconv.Itoa(line+1) + ", column " + strconv.Itoa(column+1) + ": "
}

func invalidUTF8(data []byte) int {
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return -1
}

// A trail is the way down to a value. A path is only made of it where a
// problem needs one: a hostile document could make the paths of all its values
// very long together.
type trail struct {
	above *trail
	key   string
	index int // where key is empty and the value an element
	array bool
}

func (t *trail) path() explain.Path {
	switch {
	case t == nil:
		return ""
	case t.array:
		return t.above.path().Index(t.index)
	}
	return t.above.path().Child(shortKey(t.key))
}

// shortKey cuts a key that is longer than any field's, at a whole character,
// so that many problems below one key do not each repeat a megabyte of it.
func shortKey(key string) string {
	if len(key) <= explain.MaxText {
		return key
	}
	cut := explain.MaxText
	for !utf8.RuneStart(key[cut]) {
		cut--
	}
	return key[:cut]
}

// A grower builds nodes from the tokens of a document that is known to be
// JSON.
type grower struct {
	r    *jsontext.Reader
	c    *explain.Checker
	told int // problems
}

// tell adds a problem of the value at the end of a trail. More than are kept
// would only cost their paths.
func (g *grower) tell(at *trail, p explain.Problem) {
	if g.told++; g.told <= explain.MaxProblems+1 {
		p.Path = at.path()
		g.c.Add(p)
	}
}

// value reads one value, which lies at the end of the trail at, depth levels down.
func (g *grower) value(at *trail, depth int) *node {
	switch t := g.r.Next(); t.Kind {
	case '[', '{':
		if depth >= MaxDepth {
			g.tell(at, explain.Problem{Code: explain.TooDeep, Accepted: count(0, MaxDepth)})
			g.r.Skip(t)
			return &node{kind: tooDeep}
		}
		if t.Kind == '[' {
			return g.array(at, depth)
		}
		return g.object(at, depth)
	case '0':
		return &node{kind: jsonNumber, text: t.Text}
	case '"':
		return g.str(at, t)
	case 't', 'f':
		return &node{kind: jsonBool}
	}
	return &node{kind: jsonNull}
}

func (g *grower) array(at *trail, depth int) *node {
	n := &node{kind: jsonArray}
	for g.r.More() {
		n.items = append(n.items, g.value(&trail{above: at, index: len(n.items), array: true}, depth+1))
	}
	g.r.Next()
	return n
}

func (g *grower) object(at *trail, depth int) *node {
	n := &node{kind: jsonObject}
	for g.r.More() {
		key := g.r.Next().Text
		n.members = append(n.members, member{key, g.value(&trail{above: at, key: key}, depth+1)})
	}
	g.r.Next()
	return n
}

// str keeps a string. An escape in it that stood for no character is a problem.
func (g *grower) str(at *trail, t jsontext.Token) *node {
	if t.Lone {
		g.tell(at, explain.Problem{Code: explain.NotUTF8, Given: t.Text, At: explain.Place(t.Text, strings.IndexRune(t.Text, utf8.RuneError))})
	}
	return &node{kind: jsonString, text: t.Text}
}

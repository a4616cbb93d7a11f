package jsontext_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing/jsontext"
)

func Example() {
	text := []byte(`{"width": "16", "height": "20"} and more`)
	start, end, _ := jsontext.Check(text)
	for r := jsontext.NewReader(text[start:end]); ; {
		t := r.Next()
		if t.Kind == 0 {
			break
		}
		fmt.Printf("%c%q\n", t.Kind, t.Text)
	}
	_, _, fault := jsontext.Check([]byte(`{"width": 16,}`))
	fmt.Println(fault.Offset, fault)
	type size struct {
		Width string `json:"width"`
		Note  string `json:"note,omitzero"`
	}
	fmt.Println(string(jsontext.Append(nil, size{Width: "16"})))
	// Output:
	// {""
	// ""width"
	// ""16"
	// ""height"
	// ""20"
	// }""
	// 13 invalid character '}' looking for beginning of object key string
	// {"width":"16"}
}

// texts are JSON, nearly JSON, and what stands behind it.
var texts = []string{
	``, ` `, `null`, `true`, `false `, `nul`, `trux`, `fals3`, `"a"`, `"a`, `"\`, `"\x"`, `"\u12"`, `"\u12g4"`, "\"\x01\"", "\"\x00\"", "\x00",
	`"\u00e9\ud83d\ude00 \ud83d \ude00 \ud83d\u0041 \ud83d\n"`, `"\"\\\/\b\f\n\r\t"`, `"é\u2028"`, `"\uD800\uDC00\uDBFF\uDFFF"`, `"\ud800\ud800\udc00"`,
	`0`, `-0`, `01`, `-`, `-x`, `1.`, `1.x`, `1e`, `1e+`, `1E-5`, `1.25e+10x`, `123456789012345678901234567890`, `.5`, `+1`, `1x`,
	`[]`, `[ ]`, `[,]`, `[1,]`, `[1 2]`, `[1,2`, `[`, `]`, `[1}`, `{}`, `{ }`, `{,}`, `{"a"}`, `{"a":}`, `{"a":1,}`, `{"a":1 "b":2}`, `{1:2}`, `{"a" 1}`, `{"a":1]`, `{"a":[{"b":null},"c"],"a":{}} x`,
	strings.Repeat("[", 10_000) + strings.Repeat("]", 10_000), strings.Repeat("[", 10_001), strings.Repeat(`{"a":`, 10_001), "'", "\u00e9", "\ufeff1",
}

func TestCheck(t *testing.T) {
	for _, text := range texts {
		check(t, []byte(text))
	}
}

func FuzzCheck(f *testing.F) {
	for _, text := range texts {
		if len(text) < 200 {
			f.Add([]byte(text))
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) { check(t, text) })
}

// check holds what is read of text against encoding/json.
func check(t *testing.T, text []byte) {
	t.Helper()
	start, end, fault := jsontext.Check(text)
	d := json.NewDecoder(bytes.NewReader(text))
	var value json.RawMessage
	if err := d.Decode(&value); err != nil {
		at := len(text)
		if syntax := (*json.SyntaxError)(nil); errors.As(err, &syntax) {
			at = int(syntax.Offset) - 1
		}
		if fault == nil || fault.Error() != err.Error() || fault.Offset != at {
			t.Fatalf("%.200q: %+v, want %v at %d", text, fault, err, at)
		}
		return
	}
	if fault != nil || string(text[start:end]) != string(value) || end != int(d.InputOffset()) {
		t.Fatalf("%.200q: %d to %d, %v, want %.200q", text, start, end, fault, value)
	}
	if whole := len(bytes.TrimLeft(text[end:], " \t\r\n")) == 0; whole != json.Valid(text) {
		t.Fatalf("%.200q is sound: %t", text, whole)
	}
	if utf8.Valid(text) {
		tokens(t, value)
	}
}

// tokens reads both ways, and each value as a whole.
func tokens(t *testing.T, value []byte) {
	t.Helper()
	r := jsontext.NewReader(value)
	d := json.NewDecoder(bytes.NewReader(value))
	d.UseNumber()
	for {
		if more := d.More(); more != r.More() {
			t.Fatalf("%.200q: more is not %t", value, more)
		}
		want, err := d.Token()
		got := r.Next()
		if errors.Is(err, io.EOF) {
			if got.Kind != 0 {
				t.Fatalf("%.200q: %c past the end", value, got.Kind)
			}
			break
		}
		ok := false
		switch v := want.(type) {
		case json.Delim:
			ok = rune(got.Kind) == rune(v)
		case string:
			ok = got.Kind == '"' && got.Text == v && (!got.Lone || strings.Contains(v, "\ufffd"))
			if !strings.Contains(string(value), "\ufffd") && !strings.Contains(strings.ToLower(string(value)), `\ufffd`) {
				ok = ok && got.Lone == strings.Contains(v, "\ufffd")
			}
		case json.Number:
			ok = got.Kind == '0' && got.Text == v.String()
		case bool:
			ok = got.Kind == 'f' && !v || got.Kind == 't' && v
		case nil:
			ok = got.Kind == 'n'
		}
		if !ok {
			t.Fatalf("%.200q: %c %q, want %v", value, got.Kind, got.Text, want)
		}
	}
	if raw := jsontext.NewReader(value).Raw(); string(raw) != string(value) {
		t.Fatalf("raw %.200q, want %.200q", raw, value)
	}
}

// A word writes itself as text, a pair as JSON.
type (
	word string
	pair struct{ a, b int }
	none struct{ N int }
	base struct {
		B int    `json:"b"`
		C string `json:"c,omitzero"`
	}
	Node struct {
		Op   string `json:"op,omitzero"`
		Args []expr `json:"args,omitempty"`
	}
	expr struct{ *Node }
	all  struct {
		base
		hidden  int
		Plain   string
		Skipped int            `json:"-"`
		Text    word           `json:"text"`
		Words   []word         `json:"words"`
		Pair    pair           `json:"pair,omitzero"`
		Pairs   [2]pair        `json:"pairs"`
		None    none           `json:"none,omitzero"`
		Map     map[word]int   `json:"map,omitempty"`
		Nil     map[string]int `json:"nil"`
		Pointer *base          `json:"pointer"`
		Expr    expr           `json:"expr"`
		Yes     bool           `json:"yes,omitempty"`
		N       int64          `json:"n,omitempty"`
		U       uint8          `json:"u,omitzero"`
		Empty   base           `json:"empty,omitempty"`
	}
)

func (w word) AppendText(b []byte) ([]byte, error) { return append(b, w...), nil }
func (w word) MarshalText() ([]byte, error)        { return []byte(w), nil }
func (p pair) AppendJSON(b []byte) []byte          { return fmt.Appendf(b, "[%d,%d]", p.a, p.b) }
func (p pair) MarshalJSON() ([]byte, error)        { return p.AppendJSON(nil), nil }
func (n none) IsZero() bool                        { return n.N < 0 }

// written is v as encoding/json writes it.
func written(t testing.TB, v any) string {
	t.Helper()
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		t.Fatal(err)
	}
	return strings.TrimSuffix(b.String(), "\n")
}

func values(s string, n int64) []any {
	leaf := expr{&Node{Op: s}}
	a := all{
		base: base{int(n), s}, hidden: 1, Plain: s, Text: word(s), Words: []word{word(s), ""}, Pair: pair{1, int(n)}, None: none{int(n)},
		Map: map[word]int{"z": 1, "a": 2, "": 3}, Pointer: &base{C: s}, Expr: expr{&Node{Op: "sum", Args: []expr{leaf, {}}}}, Yes: n > 0, N: n, U: uint8(n),
	}
	return []any{nil, s, n, n > 0, word(s), a, &a, all{}, []string{s}, []all{{}, a}, [3]int{1, 2}, map[string]string{s: s}, pair{3, 4}, &pair{3, 4}, expr{}, leaf, []int(nil), (*base)(nil)}
}

func TestAppend(t *testing.T) {
	for _, s := range []string{"", "plain 9 5/8 in", `"\/` + "\b\f\n\r\t\x01\x1f\x7f", "é \u2028\u2029 😀 <&>", "bad \xff\xc3( end\xe2\x80", "\x00"} {
		for _, n := range []int64{0, 1, -1, 300, math.MinInt64, math.MaxInt64} {
			same(t, s, n)
		}
	}
}

func same(t *testing.T, s string, n int64) {
	t.Helper()
	for _, v := range values(s, n) {
		if got, want := string(jsontext.Append([]byte("> "), v)), "> "+written(t, v); got != want {
			t.Errorf("%T: got\n%s\nwant\n%s", v, got, want)
		}
	}
}

func FuzzAppend(f *testing.F) {
	f.Add("1 \"<\u2028\xff", int64(-1))
	f.Fuzz(func(t *testing.T, s string, n int64) {
		if strings.ToValidUTF8(s, "") == s || len(s) < 8 { // two keys that become one
			same(t, s, n)
		}
	})
}

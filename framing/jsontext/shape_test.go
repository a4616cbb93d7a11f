package jsontext_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/jsontext"
)

type (
	bytePair [2]byte
	letter   byte
	named    map[word]bool
	outer    struct{ base }
	loop     struct{ *loop }
	two      struct{ Left, Right int }
	twice    struct {
		two
		Left int
	}
	deep struct {
		outer
		B string `json:"b"`
	}
	writes      struct{ pair }
	writesTwice struct {
		pair
		Day
	}
	Day     struct{ N int }
	byPoint struct{ N int }
	options struct {
		Both  *none  `json:"both,omitempty,omitzero"`
		Never func() `json:"-"`
		Zero  *none  `json:"zero,omitzero"`
	}
)

func (l letter) AppendText(b []byte) ([]byte, error) { return append(b, byte(l)), nil }
func (l letter) MarshalText() ([]byte, error)        { return []byte{byte(l)}, nil }
func (d Day) AppendJSON(b []byte) []byte             { return append(b, '1') }
func (d Day) MarshalJSON() ([]byte, error)           { return []byte("1"), nil }
func (p *byPoint) AppendJSON(b []byte) []byte        { return append(b, '2') }
func (p *byPoint) MarshalJSON() ([]byte, error)      { return []byte("2"), nil }

// tagged is a struct with one field of a tag, as no tool would let it stand.
func tagged(tag reflect.StructTag) any {
	return reflect.Zero(reflect.StructOf([]reflect.StructField{{Name: "N", Type: reflect.TypeFor[int](), Tag: tag}})).Interface()
}

// TestShapes: what looks like the exceptions and is none has the text of
// encoding/json.
func TestShapes(t *testing.T) {
	for _, v := range []any{
		bytePair{1, 2}, []letter{'a', 'b'}, letter('c'), named{"b": true, "a": false}, outer{base{1, "c"}}, writes{pair{1, 2}}, &writes{},
		options{}, options{Both: &none{-1}, Zero: &none{-1}}, options{Both: &none{1}, Zero: &none{1}}, []*base{nil, {B: 1}},
		tagged(`json:"-,"`), tagged(`json:"a b/<c>"`), tagged(`json:"n,nothing,omitzero"`), tagged(`json:",omitempty"`),
		map[string]*two{"a": nil, "b": {1, 2}}, [0]int{}, struct{}{},
	} {
		got, err := jsontext.AppendValue([]byte("> "), v)
		if want := "> " + written(t, v); err != nil || string(got) != want {
			t.Errorf("%T: got %s, %v; want %s", v, got, err, want)
		}
		if got := string(jsontext.Append([]byte("> "), v)); err == nil && got != "> "+written(t, v) {
			t.Errorf("%T: %s", v, got)
		}
	}
}

// TestNoText: what encoding/json writes by a rule that we do not have, or nobody
// can write, is an error, whether there is a value or not, and never a panic.
func TestNoText(t *testing.T) {
	for _, row := range []struct {
		v    any
		says string
	}{
		{func() {}, "kind func"}, {1.5, "kind float64"}, {make(chan int), "kind chan"}, {[]func(){nil}, "kind func"}, {complex64(1), "kind complex64"}, {uintptr(1), "kind uintptr"},
		{[]any{1}, "kind interface"}, {struct{ V any }{1}, "kind interface"}, {struct{ V error }{}, "kind interface"},
		{[]byte("ab"), "base64"}, {[]byte(nil), "base64"}, {struct{ V []uint8 }{}, "base64"}, {json.RawMessage("1"), "base64"},
		{map[int]string{1: "a"}, "keys"}, {map[bool]int(nil), "keys"}, {map[pair]int{}, "keys"}, {struct{ M map[letter]int }{}, "keys"},
		{twice{}, `called "Left":`}, {deep{}, `called "b":`},
		{loop{}, "embeds itself"}, {writesTwice{pair: pair{1, 2}}, "which writes itself"},
		{struct {
			N int `json:"n,string"`
		}{}, "the option string"}, {struct {
			N int `json:"n,omitempty,string"`
		}{}, "the option string"},
		{tagged(`json:"a\"b"`), "the name"}, {tagged("json:\"a`b\""), "the name"}, {tagged(`json:"a'b"`), "the name"}, {tagged(`json:"é"`), "the name"},
		{byPoint{}, "by a pointer"}, {&byPoint{}, "by a pointer"}, {[]*byPoint{nil}, "by a pointer"},
	} {
		for range 2 { // a type that was asked for before
			got, err := jsontext.AppendValue([]byte("> "), row.v)
			if err == nil || !strings.Contains(err.Error(), row.says) || string(got) != "> " {
				t.Errorf("%T: %q, %v; want one with %q", row.v, got, err, row.says)
			}
			if got := string(jsontext.Append([]byte("> "), row.v)); got != "> null" {
				t.Errorf("%T: %q", row.v, got)
			}
			held := reflect.MakeSlice(reflect.SliceOf(reflect.TypeOf(row.v)), 0, 0).Interface()
			if _, err := jsontext.AppendValue(nil, held); err == nil {
				t.Errorf("%T has a text", held)
			}
		}
	}
}

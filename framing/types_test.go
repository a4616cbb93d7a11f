package framing_test

import (
	"reflect"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestOrderTypes: an order is made of what the reader knows how to read, and of
// nothing else. A field of another type would be passed over without a word.
func TestOrderTypes(t *testing.T) {
	leaves := 0
	var walk func(at string, of reflect.Type)
	walk = func(at string, of reflect.Type) {
		switch of {
		case reflect.TypeFor[measure.Length](), reflect.TypeFor[explain.Ratio](), reflect.TypeFor[int](),
			reflect.TypeFor[measure.Angle](), reflect.TypeFor[measure.Mass](), reflect.TypeFor[measure.Force]():
			leaves++
			return
		}
		switch of.Kind() {
		case reflect.String:
			leaves++
		case reflect.Slice, reflect.Array:
			walk(at+"[]", of.Elem())
		case reflect.Struct:
			for i := range of.NumField() {
				f := of.Field(i)
				if !f.IsExported() {
					t.Errorf("%s.%s is hidden: an order is plain data", at, f.Name)
				}
				walk(at+"."+f.Name, f.Type)
			}
		default:
			t.Errorf("%s is a %s, which the reader does not read", at, of)
		}
	}
	walk("Order", reflect.TypeFor[framing.Order]())
	if leaves < 60 {
		t.Errorf("only %d fields were seen", leaves)
	}
}

// Schema writes the JSON Schema of an order, made from the Go types that read
// it: their fields, their tags, their choices and their comments. It is run by
// go generate in package framing.
package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"reflect"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/molding"
)

func main() {
	if err := run("order.schema.json"); err != nil {
		fmt.Fprintln(os.Stderr, "schema:", err)
		os.Exit(1)
	}
}

func run(name string) error {
	comments, err := readComments("..") // the module, seen from package framing
	if err != nil {
		return err
	}
	s := scheme{comments}
	root := object{
		{"$schema", "https://json-schema.org/draft/2020-12/schema"},
		{"$id", fmt.Sprintf("urn:fairmiter:order:%d", framing.OrderVersion)},
		{"title", "Fairmiter order"},
	}
	root = append(root, s.of(reflect.TypeFor[framing.Order](), "")...)
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(root); err != nil {
		return err
	}
	return os.WriteFile(name, text.Bytes(), 0o644)
}

// An object is a JSON object that keeps the order of its members.
type object []member

type member struct {
	key   string
	value any
}

// MarshalJSON writes the members in their order.
func (o object) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	b.WriteByte('{')
	for i, m := range o {
		if i > 0 {
			b.WriteByte(',')
		}
		if err := encoder.Encode(m.key); err != nil {
			return nil, err
		}
		b.WriteByte(':')
		if err := encoder.Encode(m.value); err != nil {
			return nil, err
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// A scheme turns types into schemas.
type scheme struct{ comments map[string]string }

// numbers are the ranges of the whole numbers, by the name of their field.
var numbers = map[string][2]int64{
	"version":  {1, framing.OrderVersion},
	"quantity": {1, framing.MaxQuantity},
	"hooks":    {1, 2},
	"factor":   {1, hang.MaxFactor},
	"sides":    {0, molding.MostCorners},
	"from":     {0, molding.MostCorners - 1},
	"to":       {0, molding.MostCorners - 1},
}

// of returns the schema of a value of type t that stands in the field name.
func (s scheme) of(t reflect.Type, name string) object {
	switch t {
	case reflect.TypeFor[measure.Length](), reflect.TypeFor[measure.Angle](), reflect.TypeFor[measure.Mass](), reflect.TypeFor[measure.Force]():
		return object{{"type", "string"}, {"minLength", 1}, {"maxLength", 100}}
	}
	if t == reflect.TypeFor[explain.Ratio]() {
		return object{{"type", "string"}, {"pattern", `^\s*[0-9]{1,9}([.,][0-9]{1,4})?\s*%\s*$`}}
	}
	if t == reflect.TypeFor[framing.Date]() {
		return object{{"type", "string"}, {"pattern", `^([0-9]{4}-[0-9]{2}-[0-9]{2})?$`}}
	}
	switch t.Kind() {
	case reflect.Struct:
		return s.ofStruct(t)
	case reflect.Array:
		return object{{"type", "array"}, {"maxItems", t.Len()}, {"items", s.of(t.Elem(), name)}}
	case reflect.Slice:
		most := molding.MostCorners
		if name == "pieces" {
			most = framing.MaxPieces
		}
		return object{{"type", "array"}, {"minItems", 1}, {"maxItems", most}, {"items", s.of(t.Elem(), name)}}
	case reflect.String:
		if c, ok := reflect.Zero(t).Interface().(interface{ Choices() []string }); ok {
			return object{{"type", "string"}, {"enum", c.Choices()}}
		}
		return object{{"type", "string"}, {"maxLength", explain.MaxText}}
	}
	limits := numbers[name]
	return object{{"type", "integer"}, {"minimum", limits[0]}, {"maximum", limits[1]}}
}

func (s scheme) ofStruct(t reflect.Type) object {
	var properties object
	var required []string
	for _, f := range reflect.VisibleFields(t) {
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if !f.IsExported() || f.Anonymous || name == "" {
			continue
		}
		var schema object
		if comment := s.comment(t, f); comment != "" {
			schema = append(schema, member{"description", comment})
		}
		properties = append(properties, member{name, append(schema, s.of(f.Type, name)...)})
		if f.Tag.Get("order") == "required" {
			required = append(required, name)
		}
	}
	schema := object{{"type", "object"}, {"properties", properties}, {"additionalProperties", false}}
	if t == reflect.TypeFor[framing.Art]() { // its size follows from an outline or from measured sides
		one := func(names ...string) object {
			var given object
			for _, name := range names {
				given = append(given, member{name, true})
			}
			return object{{"type", "object"}, {"properties", given}, {"required", names}}
		}
		return append(schema, member{"anyOf", []object{one(required...), one("outline"), one("sides")}})
	}
	if len(required) > 0 {
		schema = append(schema, member{"required", required})
	}
	return schema
}

// comment is what the Go source says about a field, the owner of a promoted
// field being its own struct.
func (s scheme) comment(t reflect.Type, f reflect.StructField) string {
	owner := t
	if len(f.Index) > 1 {
		owner = t.FieldByIndex(f.Index[:len(f.Index)-1]).Type
	}
	return s.comments[owner.PkgPath()+"."+owner.Name()+"."+f.Name]
}

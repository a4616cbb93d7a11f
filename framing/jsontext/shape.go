package jsontext

import (
	"encoding"
	"reflect"
	"strings"
	"sync"
)

// A shape is how a type is written.
type shape struct {
	kind   reflect.Kind
	own    how
	zeroer bool
	elem   *shape // of a list, a pointer, a map
	fields []field
}

// how a type is written that has a say in it.
type how uint8

const (
	byKind how = iota
	byAppender
	byText
)

type field struct {
	index     int
	name      string // with its quotation marks and a colon
	omitZero  bool
	omitEmpty bool
	inline    bool // an embedded struct
	shape     *shape
}

// shapes keeps what was found out about types, which never changes.
var shapes sync.Map // reflect.Type: *shape

func shapeOf(t reflect.Type) *shape {
	if s, ok := shapes.Load(t); ok {
		return s.(*shape)
	}
	// Only a whole shape is shared: a type may hold itself.
	found := make(shaper)
	s := found.shape(t)
	for t, s := range found {
		shapes.LoadOrStore(t, s)
	}
	return s
}

// A shaper finds the shapes of a type and of what it holds.
type shaper map[reflect.Type]*shape

func (found shaper) shape(t reflect.Type) *shape {
	if s := found[t]; s != nil {
		return s
	}
	s := &shape{kind: t.Kind()}
	found[t] = s
	switch pointer := reflect.New(t).Interface(); pointer.(type) {
	case Appender:
		s.own = byAppender
	case encoding.TextAppender:
		s.own = byText
	}
	_, s.zeroer = reflect.New(t).Interface().(zeroer)
	if s.own != byKind {
		return s
	}
	switch s.kind {
	case reflect.Struct:
		s.fields = found.fields(t)
	case reflect.Slice, reflect.Array, reflect.Pointer, reflect.Map:
		s.elem = found.shape(t.Elem())
	}
	return s
}

func (found shaper) fields(t reflect.Type) []field {
	var fields []field
	for i := range t.NumField() {
		f := t.Field(i)
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		embedded := f.Type
		if embedded.Kind() == reflect.Pointer {
			embedded = embedded.Elem()
		}
		inline := f.Anonymous && name == "" && embedded.Kind() == reflect.Struct
		if name == "-" || !f.IsExported() && !inline {
			continue
		}
		if name == "" {
			name = f.Name
		}
		fields = append(fields, field{
			index: i, name: string(append(AppendString(nil, name), ':')),
			omitZero: options == "omitzero", omitEmpty: options == "omitempty", inline: inline, shape: found.shape(f.Type),
		})
	}
	return fields
}

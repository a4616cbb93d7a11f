package jsontext

import (
	"encoding"
	"errors"
	"reflect"
	"slices"
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

// shapeOf is the shape of a type, or why it has none.
func shapeOf(t reflect.Type) (*shape, error) {
	if s, ok := shapes.Load(t); ok {
		return s.(*shape), nil
	}
	// Only a whole shape is shared: a type may hold itself.
	found := shaper{shapes: make(map[reflect.Type]*shape)}
	s := found.shape(t)
	for _, t := range found.types {
		list, ok := found.shapes[t].names(nil, 0)
		if !ok {
			found.wrong(t, "it embeds itself")
		}
		for i, name := range list { // encoding/json chooses where two are the same
			if slices.Contains(list[:i], name) {
				found.wrong(t, "two fields are called "+name)
			}
		}
	}
	if found.fault != nil {
		return nil, found.fault
	}
	for t, s := range found.shapes {
		shapes.LoadOrStore(t, s)
	}
	return s, nil
}

// A shaper finds the shapes of a type and of what it holds.
type shaper struct {
	shapes map[reflect.Type]*shape
	types  []reflect.Type // as they were found
	fault  error          // of the first that has none
}

func (found *shaper) wrong(t reflect.Type, why string) {
	if found.fault != nil {
		return
	}
	found.fault = errors.New("jsontext: " + t.String() + " has no text here: " + why)
}

func (found *shaper) shape(t reflect.Type) *shape {
	if s := found.shapes[t]; s != nil {
		return s
	}
	s := &shape{kind: t.Kind()}
	found.shapes[t] = s
	found.types = append(found.types, t)
	if s.kind != reflect.Pointer {
		found.methods(t, s)
	}
	if s.own != byKind {
		return s
	}
	switch s.kind {
	case reflect.Bool, reflect.String,
		reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64,
		reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
	case reflect.Struct:
		s.fields = found.fields(t)
	case reflect.Slice, reflect.Array, reflect.Pointer, reflect.Map:
		s.elem = found.shape(t.Elem())
		switch {
		case s.kind == reflect.Slice && s.elem.kind == reflect.Uint8 && s.elem.own == byKind:
			found.wrong(t, "encoding/json writes bytes in base64")
		case s.kind == reflect.Map && t.Key().Kind() != reflect.String:
			found.wrong(t, "its keys are not of kind string")
		}
	default:
		found.wrong(t, "kind "+s.kind.String())
	}
	return s
}

// methods finds how a type writes itself. To ask for a MarshalJSON would keep that
// of every type in the page's module.
func (found *shaper) methods(t reflect.Type, s *shape) {
	of := func(v any) (own how, zero bool) {
		switch v.(type) {
		case Appender:
			own = byAppender
		case encoding.TextAppender:
			own = byText
		}
		_, zero = v.(zeroer)
		return own, zero
	}
	s.own, s.zeroer = of(reflect.Zero(t).Interface())
	if own, zero := of(reflect.New(t).Interface()); own != s.own || zero != s.zeroer {
		found.wrong(t, "it has a method by a pointer")
	}
}

func (found *shaper) fields(t reflect.Type) []field {
	var fields []field
	for i := range t.NumField() {
		f := t.Field(i)
		tag := f.Tag.Get("json")
		name, options, _ := strings.Cut(tag, ",")
		embedded := f.Type
		if embedded.Kind() == reflect.Pointer {
			embedded = embedded.Elem()
		}
		inline := f.Anonymous && name == "" && embedded.Kind() == reflect.Struct
		if tag == "-" || !f.IsExported() && !inline {
			continue
		}
		if isOdd(name) {
			found.wrong(t, "the name "+name)
		}
		if name == "" {
			name = f.Name
		}
		made := field{index: i, name: string(append(AppendString(nil, name), ':')), inline: inline, shape: found.shape(f.Type)}
		for rest := options; rest != ""; {
			var option string
			option, rest, _ = strings.Cut(rest, ",")
			switch option {
			case "omitzero":
				made.omitZero = true
			case "omitempty":
				made.omitEmpty = true
			case "string":
				found.wrong(t, "the option string")
			}
		}
		if inline && found.shape(embedded).own != byKind {
			found.wrong(t, "it embeds "+embedded.String()+", which writes itself")
		}
		fields = append(fields, made)
	}
	return fields
}

// isOdd reports whether a name is one that encoding/json would not take, or may
// not: printable ASCII is enough here.
func isOdd(name string) bool {
	for i := range len(name) {
		if b := name[i]; special[b] || b == '\'' || b == '`' {
			return true
		}
	}
	return false
}

// maxEmbedded is how deep structs are embedded in one another at most.
const maxEmbedded = 10

// names appends the names of a struct's fields; false where it embeds itself.
func (s *shape) names(list []string, depth int) ([]string, bool) {
	ok := depth <= maxEmbedded
	for i := range s.fields {
		f := &s.fields[i]
		switch {
		case !ok:
		case !f.inline:
			list = append(list, f.name)
		case f.shape.kind == reflect.Pointer:
			list, ok = f.shape.elem.names(list, depth+1)
		default:
			list, ok = f.shape.names(list, depth+1)
		}
	}
	return list, ok
}

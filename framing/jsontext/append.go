package jsontext

import (
	"encoding"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// An Appender writes its own JSON text. What has a MarshalJSON has this, too, by
// a value and not a pointer, and its MarshalJSON returns the same text.
type Appender interface{ AppendJSON(dst []byte) []byte }

type zeroer interface{ IsZero() bool }

// Append writes v as encoding/json does where it escapes nothing for HTML. It
// knows structs with their tags, lists, maps with keys of text, text, whole
// numbers, truth values and pointers, an [Appender] and an
// [encoding.TextAppender]; it panics at another type.
func Append(dst []byte, v any) []byte {
	if v == nil {
		return append(dst, "null"...)
	}
	value := reflect.ValueOf(v)
	if value.Kind() == reflect.Pointer && !value.IsNil() {
		value = value.Elem()
	} else {
		// What can be pointed at need not be copied to be asked for its methods.
		addressable := reflect.New(value.Type()).Elem()
		addressable.Set(value)
		value = addressable
	}
	w := writer{shapes: make(map[reflect.Type]*shape)}
	return w.append(dst, value, w.shape(value.Type()))
}

// A writer keeps what it found out about types for one call.
type writer struct{ shapes map[reflect.Type]*shape }

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

func (w *writer) shape(t reflect.Type) *shape {
	if s := w.shapes[t]; s != nil {
		return s
	}
	s := &shape{kind: t.Kind()}
	w.shapes[t] = s
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
		s.fields = w.fields(t)
	case reflect.Slice, reflect.Array, reflect.Pointer, reflect.Map:
		s.elem = w.shape(t.Elem())
	}
	return s
}

func (w *writer) fields(t reflect.Type) []field {
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
			omitZero: options == "omitzero", omitEmpty: options == "omitempty", inline: inline, shape: w.shape(f.Type),
		})
	}
	return fields
}

func (w *writer) append(dst []byte, v reflect.Value, s *shape) []byte {
	switch s.own {
	case byAppender:
		return v.Addr().Interface().(Appender).AppendJSON(dst)
	case byText:
		return AppendText(dst, v.Addr().Interface().(encoding.TextAppender))
	}
	switch s.kind {
	case reflect.Bool:
		return strconv.AppendBool(dst, v.Bool())
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		return strconv.AppendInt(dst, v.Int(), 10)
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		return strconv.AppendUint(dst, v.Uint(), 10)
	case reflect.String:
		return AppendString(dst, v.String())
	case reflect.Struct:
		dst = append(dst, '{')
		return append(w.members(dst, v, s, len(dst)), '}')
	case reflect.Slice, reflect.Array:
		if s.kind == reflect.Slice && v.IsNil() {
			return append(dst, "null"...)
		}
		dst = append(dst, '[')
		for i := range v.Len() {
			if i > 0 {
				dst = append(dst, ',')
			}
			dst = w.append(dst, v.Index(i), s.elem)
		}
		return append(dst, ']')
	case reflect.Map:
		return w.table(dst, v, s)
	case reflect.Pointer:
		if v.IsNil() {
			return append(dst, "null"...)
		}
		return w.append(dst, v.Elem(), s.elem)
	}
	panic("no JSON text of a " + s.kind.String())
}

// members writes the fields of a struct. Before the first there is no comma.
func (w *writer) members(dst []byte, v reflect.Value, s *shape, first int) []byte {
	for i := range s.fields {
		f := &s.fields[i]
		value := v.Field(f.index)
		if f.inline {
			inner := f.shape
			if inner.kind == reflect.Pointer {
				if value.IsNil() {
					continue
				}
				value, inner = value.Elem(), inner.elem
			}
			dst = w.members(dst, value, inner, first)
			continue
		}
		if f.omitZero && isZero(value, f.shape) || f.omitEmpty && isEmpty(value, f.shape.kind) {
			continue
		}
		if len(dst) > first {
			dst = append(dst, ',')
		}
		dst = append(dst, f.name...)
		dst = w.append(dst, value, f.shape)
	}
	return dst
}

func isZero(v reflect.Value, s *shape) bool {
	if s.zeroer {
		return v.Addr().Interface().(zeroer).IsZero()
	}
	return v.IsZero()
}

func isEmpty(v reflect.Value, kind reflect.Kind) bool {
	switch kind {
	case reflect.Slice, reflect.Array, reflect.Map, reflect.String:
		return v.Len() == 0
	case reflect.Struct:
		return false
	}
	return v.IsZero()
}

// table writes a map by its keys in order.
func (w *writer) table(dst []byte, v reflect.Value, s *shape) []byte {
	if v.IsNil() {
		return append(dst, "null"...)
	}
	keys := make([]string, 0, v.Len())
	values := make(map[string]reflect.Value, v.Len())
	for _, key := range v.MapKeys() {
		keys = append(keys, key.String())
		value := reflect.New(v.Type().Elem()).Elem()
		value.Set(v.MapIndex(key))
		values[key.String()] = value
	}
	slices.Sort(keys)
	dst = append(dst, '{')
	for i, key := range keys {
		if i > 0 {
			dst = append(dst, ',')
		}
		dst = append(AppendString(dst, key), ':')
		dst = w.append(dst, values[key], s.elem)
	}
	return append(dst, '}')
}

// AppendText writes the text of t.
func AppendText(dst []byte, t encoding.TextAppender) []byte {
	start := len(dst) + 1
	dst, _ = t.AppendText(append(dst, '"'))
	for _, b := range dst[start:] {
		if !isPlain(b) {
			return AppendString(dst[:start-1], string(dst[start:]))
		}
	}
	return append(dst, '"')
}

func isPlain(b byte) bool { return ' ' <= b && b < utf8.RuneSelf && b != '"' && b != '\\' }

// AppendString writes s. A byte that is no UTF-8 becomes a replacement
// character.
func AppendString(dst []byte, s string) []byte {
	const hex = "0123456789abcdef"
	dst = append(dst, '"')
	done := 0
	for i := 0; i < len(s); {
		b := s[i]
		if isPlain(b) {
			i++
			continue
		}
		size := 1
		var escape string
		switch {
		case b == '"':
			escape = `\"`
		case b == '\\':
			escape = `\\`
		case b == '\b':
			escape = `\b`
		case b == '\f':
			escape = `\f`
		case b == '\n':
			escape = `\n`
		case b == '\r':
			escape = `\r`
		case b == '\t':
			escape = `\t`
		case b < utf8.RuneSelf:
			escape = `\u00` + hex[b>>4:b>>4+1] + hex[b&15:b&15+1]
		default:
			var r rune
			r, size = utf8.DecodeRuneInString(s[i:])
			switch {
			case r == utf8.RuneError && size == 1:
				escape = `\ufffd`
			case r == '\u2028':
				escape = `\u2028`
			case r == '\u2029':
				escape = `\u2029`
			default:
				i += size
				continue
			}
		}
		dst = append(append(dst, s[done:i]...), escape...)
		i += size
		done = i
	}
	return append(append(dst, s[done:]...), '"')
}

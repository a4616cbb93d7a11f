package jsontext

import (
	"encoding"
	"reflect"
	"slices"
	"strconv"
)

// An Appender writes its own JSON text. What has a MarshalJSON has this, too, by
// a value and not a pointer, and its MarshalJSON returns the same text.
type Appender interface{ AppendJSON(dst []byte) []byte }

type zeroer interface{ IsZero() bool }

// Append is [AppendValue] for a value of a type that is known to have a text, as
// a test of whoever writes it shows. Of another it writes null.
func Append(dst []byte, v any) []byte {
	written, err := AppendValue(dst, v)
	if err != nil {
		return append(dst, "null"...)
	}
	return written
}

// AppendValue writes v as encoding/json does where it escapes nothing for HTML. It
// knows
//
//   - structs, with the names in their tags, omitempty, omitzero and "-", and
//     embedded structs and pointers to such;
//   - lists, and maps with keys whose kind is string, by their keys in order;
//   - text, whole numbers, truth values, and pointers;
//   - an [Appender] and an [encoding.TextAppender], by a value.
//
// What has a MarshalJSON or a MarshalText has to have our method too: it is not
// asked for. What else encoding/json writes by a rule of its own is an error and not
// another text, wherever in the type of v it stands: bytes, which it writes in
// base64; floats and interfaces; keys of another kind; the option string; a name that
// it would not take; a name that two fields of a struct have, also an embedded one; an
// embedded struct that writes itself; and a method by a pointer alone. Then dst is
// returned as it was.
//
// v must not hold itself.
func AppendValue(dst []byte, v any) ([]byte, error) {
	if v == nil {
		return append(dst, "null"...), nil
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
	s, err := shapeOf(value.Type())
	if err != nil {
		return dst, err
	}
	return write(dst, value, s), nil
}

// write writes a value by its shape.
func write(dst []byte, v reflect.Value, s *shape) []byte {
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
		return append(members(dst, v, s, len(dst)), '}')
	case reflect.Slice, reflect.Array:
		if s.kind == reflect.Slice && v.IsNil() {
			return append(dst, "null"...)
		}
		dst = append(dst, '[')
		for i := range v.Len() {
			if i > 0 {
				dst = append(dst, ',')
			}
			dst = write(dst, v.Index(i), s.elem)
		}
		return append(dst, ']')
	case reflect.Map:
		return table(dst, v, s)
	case reflect.Pointer:
		if v.IsNil() {
			return append(dst, "null"...)
		}
		return write(dst, v.Elem(), s.elem)
	}
	return append(dst, "null"...) // of no kind that a shape has
}

// members writes the fields of a struct. Before the first there is no comma.
func members(dst []byte, v reflect.Value, s *shape, first int) []byte {
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
			dst = members(dst, value, inner, first)
			continue
		}
		if f.omitZero && isZero(value, f.shape) || f.omitEmpty && isEmpty(value, f.shape.kind) {
			continue
		}
		if len(dst) > first {
			dst = append(dst, ',')
		}
		dst = append(dst, f.name...)
		dst = write(dst, value, f.shape)
	}
	return dst
}

func isZero(v reflect.Value, s *shape) bool {
	if s.kind == reflect.Pointer && s.elem.zeroer {
		return v.IsNil() || v.Interface().(zeroer).IsZero()
	}
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
func table(dst []byte, v reflect.Value, s *shape) []byte {
	if v.IsNil() {
		return append(dst, "null"...)
	}
	keys := make([]string, 0, v.Len())
	values := make(map[string]reflect.Value, v.Len())
	for _, key := range v.MapKeys() {
		i, _ := slices.BinarySearch(keys, key.String())
		keys = append(keys, "") // maps are small, and a sort makes a module larger
		copy(keys[i+1:], keys[i:])
		keys[i] = key.String()
		value := reflect.New(v.Type().Elem()).Elem()
		value.Set(v.MapIndex(key))
		values[key.String()] = value
	}
	dst = append(dst, '{')
	for i, key := range keys {
		if i > 0 {
			dst = append(dst, ',')
		}
		dst = append(AppendString(dst, key), ':')
		dst = write(dst, values[key], s.elem)
	}
	return append(dst, '}')
}

package framing

import (
	"reflect"
	"strconv"
	"strings"
	"sync"
)

// A field is a member that a struct takes.
type field struct {
	name     string
	index    []int
	required bool
	optional bool // left out of the text where it is the zero value
}

// members keeps what fieldsOf found, which never changes.
var members sync.Map // typeIn: []field

type typeIn struct {
	reflect.Type
	version int
}

// fieldsOf lists the members that a struct has in a version of the order, those
// of embedded structs in their place. A version that is not known has all.
func fieldsOf(t reflect.Type, version int) []field {
	if version < 1 || version > OrderVersion {
		version = OrderVersion
	}
	key := typeIn{t, version}
	if known, ok := members.Load(key); ok {
		return known.([]field)
	}
	found, _ := members.LoadOrStore(key, findFields(t, version))
	return found.([]field)
}

func findFields(t reflect.Type, version int) []field {
	var fields []field
	for _, f := range reflect.VisibleFields(t) {
		name, options, tagged := strings.Cut(f.Tag.Get("json"), ",")
		if !f.IsExported() || f.Anonymous || name == "" {
			continue
		}
		if since, _ := strconv.Atoi(f.Tag.Get("since")); since > version {
			continue
		}
		fields = append(fields, field{
			name: name, index: f.Index, required: f.Tag.Get("order") == "required",
			optional: tagged && options == "omitzero",
		})
	}
	return fields
}

func nameOf(fields []field, key string) (name string, known bool) {
	for _, f := range fields {
		if f.name == key {
			return key, true
		}
	}
	for _, f := range fields {
		if strings.EqualFold(f.name, key) {
			return f.name, true
		}
	}
	return "", false
}

func names(fields []field) string {
	list := make([]string, len(fields))
	for i, f := range fields {
		list[i] = f.name
	}
	return strings.Join(list, ", ")
}

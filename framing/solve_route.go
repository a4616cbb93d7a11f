package framing

import (
	"reflect"
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A route is a path that was looked up once in a type, so that it can be gone
// many times: through the fields of an order or a plan by their JSON names.
type route struct {
	steps []step
	end   reflect.Type
}

// A step goes to a field, or to an element where field is nil.
type step struct {
	field    []int
	optional bool // left out of the text where it is the zero value
	element  int
}

// routeTo looks a path up in a type; false where it leads nowhere. What an
// element is may be decided later: only its number must be one.
func routeTo(t reflect.Type, path explain.Path) (route, bool) {
	if path != "" && path[0] != '/' {
		return route{}, false
	}
	var r route
	for _, segment := range path.Segments() {
		switch t.Kind() {
		case reflect.Struct:
			f, optional, ok := fieldNamed(t, segment)
			if !ok {
				return route{}, false
			}
			r.steps = append(r.steps, step{field: f.Index, optional: optional})
			t = f.Type
		case reflect.Slice, reflect.Array:
			i, err := strconv.Atoi(segment)
			if err != nil || i < 0 || strconv.Itoa(i) != segment {
				return route{}, false
			}
			r.steps = append(r.steps, step{element: i})
			t = t.Elem()
		default:
			return route{}, false
		}
	}
	r.end = t
	return r, true
}

// fieldNamed finds the field of a struct that has a name in JSON text.
func fieldNamed(t reflect.Type, name string) (f reflect.StructField, optional, ok bool) {
	for _, f := range reflect.VisibleFields(t) {
		if n, named := jsonName(f); named && n == name {
			_, options, _ := strings.Cut(f.Tag.Get("json"), ",")
			return f, options == "omitzero" || options == "omitempty", true
		}
	}
	return reflect.StructField{}, false, false
}

// jsonName is the name of a field in JSON text; false for one that is not in it,
// and for an embedded struct, whose fields are.
func jsonName(f reflect.StructField) (string, bool) {
	name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
	return name, f.IsExported() && !f.Anonymous && name != "" && name != "-"
}

// figure goes the route in a plan; false where the plan does not have what it
// leads to.
func (r route) figure(v reflect.Value) (reflect.Value, bool) {
	for _, s := range r.steps {
		if s.field == nil {
			if s.element >= v.Len() {
				return reflect.Value{}, false
			}
			v = v.Index(s.element)
			continue
		}
		if v = v.FieldByIndex(s.field); s.optional && v.IsZero() {
			return reflect.Value{}, false
		}
	}
	return v, true
}

// field goes the route in an order that may be written to. Where own is set, it
// copies the lists it comes through, which the caller's order still has.
func (r route) field(v reflect.Value, own bool) (reflect.Value, bool) {
	for _, s := range r.steps {
		if s.field != nil {
			v = v.FieldByIndex(s.field)
			continue
		}
		if s.element >= v.Len() {
			return reflect.Value{}, false
		}
		if own && v.Kind() == reflect.Slice {
			list := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
			reflect.Copy(list, v)
			v.Set(list)
		}
		v = v.Index(s.element)
	}
	return v, true
}

// exactOf finds the exact value in a type of figure, whatever it counts.
func exactOf(figure reflect.Type) (index []int, kind explain.Kind, ok bool) {
	if figure.Kind() != reflect.Struct {
		return nil, explain.NoKind, false
	}
	f, ok := figure.FieldByName("Exact")
	if !ok {
		return nil, explain.NoKind, false
	}
	kind, ok = kindOf(f.Type)
	return f.Index, kind, ok
}

// kindOf is what a type counts; false for one that is no quantity.
func kindOf(t reflect.Type) (explain.Kind, bool) {
	switch t {
	case reflect.TypeFor[measure.Length]():
		return explain.LengthKind, true
	case reflect.TypeFor[measure.Area]():
		return explain.AreaKind, true
	case reflect.TypeFor[measure.Angle]():
		return explain.AngleKind, true
	case reflect.TypeFor[measure.Mass]():
		return explain.MassKind, true
	case reflect.TypeFor[measure.Force]():
		return explain.ForceKind, true
	case reflect.TypeFor[explain.Ratio]():
		return explain.RatioKind, true
	}
	return explain.NoKind, false
}

// mostOf is the largest value of a field that is tried. [Order.Check] mostly says
// less.
func mostOf(k explain.Kind) int64 {
	switch k {
	case explain.LengthKind:
		return int64(explain.MaxLength)
	case explain.AngleKind:
		return int64(measure.Turn)
	case explain.RatioKind:
		return int64(100 * explain.Whole)
	case explain.MassKind:
		return int64(10_000 * measure.Kilogram)
	case explain.ForceKind:
		return int64(100 * measure.Kilonewton)
	}
	return 0
}

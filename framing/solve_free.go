package framing

import (
	"reflect"
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// FreeFields lists the fields that a figure follows from where the order is now:
// those of its piece first, as they are declared, and then the shop's. Each of
// them, made a little larger or smaller, changes the figure's exact value, by
// itself and without a problem: a length by a millimeter, an angle by a degree, a
// ratio by 1 %, a mass by 100 g, a force by 10 N. They are the fields to ask
// [Solve] about. A figure that is not there, or that has a problem, has none.
func FreeFields(o Order, want explain.Path) []explain.Path {
	var c explain.Checker
	a := &asked{piece: pieceOf(want, len(o.Pieces)), pieces: len(o.Pieces), given: true}
	if a.piece < 0 {
		return nil
	}
	cut := o
	cut.Pieces = []Piece{o.Pieces[a.piece]}
	a.order = &cut
	if a.figure = a.figureAt(&c, questionRoot+"/want", want); !c.Clean(questionRoot) {
		return nil
	}
	a.field = reflect.ValueOf(&cut.Pieces[0].Art.Width).Elem() // any, to see what is there now
	before, _, ok := a.work(a.field.Int())
	if !ok {
		return nil
	}
	var free []explain.Path
	root := reflect.ValueOf(a.order).Elem()
	for _, part := range []explain.Path{"/pieces/0", "/shop"} {
		r, _ := routeTo(root.Type(), part)
		v, _ := r.field(root, false)
		walkFields(v, part, func(path explain.Path, v reflect.Value) {
			if a.follows(v, before) {
				rest, inPiece := path.After("/pieces/0")
				if inPiece {
					path = explain.Path("/pieces").Index(a.piece).Join(rest)
				}
				free = append(free, path)
			}
		})
	}
	return slices.Clip(free)
}

// follows reports whether the figure is another than before where a field is.
func (a *asked) follows(field reflect.Value, before int64) bool {
	present, by := field.Int(), nudge(field.Type())
	a.field = field
	defer field.SetInt(present)
	for _, x := range [...]int64{present + by, present - by} {
		if after, _, ok := a.work(x); ok && after != before {
			return true
		}
	}
	return false
}

// nudge is how much a field is changed to see what follows from it.
func nudge(t reflect.Type) int64 {
	switch kind, _ := kindOf(t); kind {
	case explain.AngleKind:
		return int64(measure.Degree)
	case explain.RatioKind:
		return int64(explain.Percent)
	case explain.MassKind:
		return int64(100 * measure.Gram)
	case explain.ForceKind:
		return int64(10 * measure.Newton)
	}
	return int64(measure.Millimeter)
}

// walkFields visits the quantities in a value, as they are declared.
func walkFields(v reflect.Value, at explain.Path, visit func(explain.Path, reflect.Value)) {
	if kind, ok := kindOf(v.Type()); ok {
		if mostOf(kind) > 0 {
			visit(at, v)
		}
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for _, f := range reflect.VisibleFields(v.Type()) {
			name, ok := jsonName(f)
			if ok {
				walkFields(v.FieldByIndex(f.Index), at.Child(name), visit)
			}
		}
	case reflect.Slice, reflect.Array:
		if v.Len() == 0 {
			return // a list that is not there stays so
		}
		if v.Kind() == reflect.Slice { // the order that it was copied from has the same one
			list := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
			reflect.Copy(list, v)
			v.Set(list)
		}
		for i := range v.Len() {
			walkFields(v.Index(i), at.Index(i), visit)
		}
	}
}

package framing

import (
	"errors"
	"reflect"
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// A decoder fills an order from the nodes of a document and keeps all that is
// wrong with them. Fields are filled in the order they are declared, so that
// the units are known before the first length, and the shop before the first
// piece.
type decoder struct {
	c        explain.Checker
	version  int // of the order; 0 until it was read
	units    Units
	shop     Shop
	defaults []explain.Path
	rounded  []explain.Path
	texts    map[explain.Path]string
}

// A chooser is a word out of a list.
type chooser interface{ Choices() []string }

// value fills v from n, which lies at path at.
func (d *decoder) value(n *node, v reflect.Value, at explain.Path) {
	if n.kind == tooDeep {
		return // the grower has said so
	}
	if l, ok := v.Addr().Interface().(*measure.Length); ok {
		d.length(n, l, at)
		return
	}
	if r, ok := v.Addr().Interface().(*explain.Ratio); ok {
		d.ratio(n, r, at)
		return
	}
	if d.quantity(n, v, at) {
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		d.object(n, v, at)
	case reflect.Slice:
		d.slice(n, v, at)
	case reflect.Array:
		d.array(n, v, at)
	case reflect.String:
		if !d.is(n, jsonString, at, "string") {
			return
		}
		v.SetString(n.text)
		if choice, ok := v.Interface().(chooser); ok {
			d.c.Choice(at, n.text, choice.Choices())
		}
	case reflect.Int:
		d.number(n, v, at)
	}
}

// is reports whether n has the wanted kind; a problem says so where not.
func (d *decoder) is(n *node, kind nodeKind, at explain.Path, accepted string) bool {
	if n.kind == kind {
		return true
	}
	d.c.Add(explain.Problem{Code: explain.WrongType, Path: at, Given: n.String(), Accepted: accepted})
	return false
}

// String names what stands in the document, for a problem.
func (n *node) String() string {
	switch n.kind {
	case jsonBool:
		return "true or false"
	case jsonNumber, jsonString:
		return n.text
	case jsonArray:
		return "array"
	case jsonObject:
		return "object"
	}
	return "null"
}

func (d *decoder) length(n *node, l *measure.Length, at explain.Path) {
	if !d.is(n, jsonString, at, `string, "1 1/8 in"`) {
		return
	}
	r, err := measure.Read(n.text, d.bareUnit())
	if d.misread(err, n.text, at) {
		return
	}
	if r.Rounded {
		d.rounded = append(d.rounded, at)
	}
	d.texts[at] = n.text
	*l = r.Length
}

// misread adds the problem of text that is no measure.
func (d *decoder) misread(err error, text string, at explain.Path) bool {
	if err == nil {
		return false
	}
	problem := explain.Problem{Code: explain.NotAMeasure, Path: at, Given: text}
	var parse *measure.ParseError
	if errors.As(err, &parse) {
		problem.Code = explain.MeasureCode(parse.Rule)
		problem.Accepted, problem.At = parse.Accepted, explain.Place(parse.Text, parse.Offset)
	}
	d.c.Add(problem)
	return true
}

// quantity fills v where it is a quantity other than a length. An angle without
// a unit is in degrees; a mass or a force has to name its unit.
func (d *decoder) quantity(n *node, v reflect.Value, at explain.Path) bool {
	var err error
	switch q := v.Addr().Interface().(type) {
	case *measure.Angle:
		if !d.is(n, jsonString, at, `string, "45 deg"`) {
			return true
		}
		var a measure.Angle
		if a, err = measure.ParseAngle(n.text, measure.Degrees); err == nil {
			*q = a
		}
	case *measure.Mass:
		if !d.is(n, jsonString, at, `string, "2 1/2 lb"`) {
			return true
		}
		var m measure.Mass
		if m, err = measure.ParseMass(n.text, measure.NoUnit); err == nil {
			*q = m
		}
	case *measure.Force:
		if !d.is(n, jsonString, at, `string, "20 lb"`) {
			return true
		}
		var f measure.Force
		if f, err = measure.ParseForce(n.text, measure.NoUnit); err == nil {
			*q = f
		}
	default:
		return false
	}
	if !d.misread(err, n.text, at) {
		d.texts[at] = n.text
	}
	return true
}

func (d *decoder) ratio(n *node, r *explain.Ratio, at explain.Path) {
	if !d.is(n, jsonString, at, `string, "20 %"`) {
		return
	}
	v, err := explain.ParseRatio(n.text)
	if err != nil {
		d.c.Add(explain.Problem{Code: explain.NotARatio, Path: at, Given: n.text, Accepted: "0 %, 12.5 %, 20 %"})
		return
	}
	*r = v
}

func (d *decoder) number(n *node, v reflect.Value, at explain.Path) {
	if !d.is(n, jsonNumber, at, "whole number") {
		return
	}
	i, err := strconv.ParseInt(n.text, 10, 64)
	if err != nil {
		d.c.Add(explain.Problem{Code: explain.WrongType, Path: at, Given: n.text, Accepted: "whole number"})
		return
	}
	v.SetInt(i)
	if at == "/version" {
		d.version = int(i) // the first field: it decides which others there are
	}
}

func (d *decoder) slice(n *node, v reflect.Value, at explain.Path) {
	if !d.is(n, jsonArray, at, "array") || d.tooMany(n, MaxPieces, at) {
		return
	}
	v.Set(reflect.MakeSlice(v.Type(), len(n.items), len(n.items)))
	for i, item := range n.items {
		d.value(item, v.Index(i), at.Index(i))
	}
}

// array fills a list of fixed room.
func (d *decoder) array(n *node, v reflect.Value, at explain.Path) {
	if !d.is(n, jsonArray, at, "array") || d.tooMany(n, v.Len(), at) {
		return
	}
	for i, item := range n.items {
		d.value(item, v.Index(i), at.Index(i))
	}
}

func (d *decoder) tooMany(n *node, most int, at explain.Path) bool {
	if len(n.items) <= most {
		return false
	}
	d.c.Add(explain.Problem{Code: explain.TooMany, Path: at, Given: strconv.Itoa(len(n.items)), Accepted: count(0, most)})
	return true
}

// object fills a struct over its defaults.
func (d *decoder) object(n *node, v reflect.Value, at explain.Path) {
	if !d.is(n, jsonObject, at, "object") {
		standIn(v)
		return
	}
	d.prepare(n, v, at)
	fields := fieldsOf(v.Type(), d.version)
	spelled := d.match(n, fields, at)
	for _, f := range fields {
		into := v.FieldByIndex(f.index)
		path := at.Child(f.name)
		value, ok := spelled[f.name]
		switch {
		case ok:
			d.value(value, into, path)
		case f.required && excused(spelled, v.Type(), f.name):
		case f.required:
			d.c.Add(explain.Problem{Code: explain.Missing, Path: path})
			d.prepare(nil, into, path)
		case f.name == "show" || f.name == "shop":
			d.prepare(nil, into, path)
			d.defaults = append(d.defaults, path)
		case !f.optional:
			d.defaults = append(d.defaults, path)
		}
		d.remember(into)
	}
}

// standIn keeps art from having a size of its own where an outline or sides stand
// that could not be read.
func standIn(v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *Outline:
		*x = NewOutline()
	case *molding.OutOfSquare:
		x.Bottom = -1
	}
}

// match gives each field the member that is meant for it, and says which
// members are meant for none, stand twice, or are written in the wrong case.
func (d *decoder) match(n *node, fields []field, at explain.Path) map[string]*node {
	spelled := make(map[string]*node, len(fields))
	for _, exact := range []bool{true, false} {
		for _, m := range n.members {
			name, known := nameOf(fields, m.key)
			if known && (name == m.key) != exact || !known && exact {
				continue
			}
			path := at.Child(shortKey(m.key))
			switch {
			case !known:
				d.c.Add(explain.Problem{Code: explain.UnknownField, Path: path, Given: m.key, Accepted: names(fields)})
				continue
			case name != m.key:
				d.c.Add(explain.Problem{Code: explain.WrongCase, Path: path, Given: m.key, Accepted: name})
			case spelled[name] != nil:
				d.c.Add(explain.Problem{Code: explain.Duplicate, Path: path, Given: m.key})
			}
			if spelled[name] == nil {
				spelled[name] = m.value
			}
		}
	}
	return spelled
}

// prepare writes the defaults of what is to be filled.
func (d *decoder) prepare(n *node, v reflect.Value, at explain.Path) {
	switch x := v.Addr().Interface().(type) {
	case *Show:
		*x = DefaultShow(d.units)
		if n == nil {
			return
		}
		if as := n.member("as"); as != nil && as.kind == jsonString && As(as.text).Style() != measure.Exact {
			*x = ShowAs(As(as.text))
		}
	case *Shop:
		*x = DefaultShop(d.units)
		d.shop = *x
	case *Piece:
		*x = NewPiece(d.shop)
	case *mat.Mat:
		*x = NewMat(d.shop)
	case *mat.UnderMat:
		*x = NewUnderMat(d.shop)
	case *molding.Frame:
		*x = NewFrame(d.shop)
	case *glazing.Spacer:
		*x = NewSpacer(d.shop)
	case *Stretch:
		*x = NewStretch(d.shop)
	case *Outline:
		*x = NewOutline()
	case *hang.Hanging:
		*x = NewHanging(d.units)
	case *glazing.Pane:
		*x = NewGlazing(d.shop, glazing.Material(n.word("material", string(glazing.Glass))))
	case *molding.Sheet:
		usual := molding.FoamBoard
		if at.Last() == "mount" {
			usual = molding.Board
		}
		*x = NewSheet(d.shop, molding.SheetMaterial(n.word("material", string(usual))))
	}
}

// remember keeps what later fields depend on.
func (d *decoder) remember(v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *Units:
		d.units = *x
	case *Shop:
		d.shop = *x
	}
}

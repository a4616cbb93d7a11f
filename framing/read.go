package framing

import (
	"reflect"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Read reads an order from its JSON text. It is strict: a key that this
// version does not have, a key in the wrong case, a key that stands twice,
// text after the end, a number where a length belongs are all problems. The
// error is [explain.Problems] and holds every one of them, those of
// [Order.Check] too.
//
// A field that is absent takes its default, from the shop's settings where
// there is one; "0" is zero and not absent. The order is returned with every
// default written out, and as far as it could be read where there were
// problems: a page may show it while one field is half typed.
func Read(data []byte) (Order, error) {
	d := decoder{texts: make(map[explain.Path]string)}
	var o Order
	root := grow(data, &d.c)
	if root == nil {
		return o, d.c.Problems().Err()
	}
	d.value(root, reflect.ValueOf(&o).Elem(), "")
	o.read = reading{defaults: d.defaults, rounded: d.rounded}
	o.check(&d.c)

	problems := d.c.Problems()
	for i, p := range problems {
		if text, ok := d.texts[p.Path]; ok && p.Code == explain.OutOfRange {
			problems[i].Given = text // as it was written, not as it was read
		}
	}
	return o, problems.Err()
}

// bareUnit is the unit of numbers without one. Where the order's units are
// missing or unknown that is a problem of its own; numbers are then read as
// millimeters, the smallest, so that it stays the only one.
func (d *decoder) bareUnit() measure.Unit {
	if u := d.units.Bare(); u != measure.NoUnit {
		return u
	}
	return measure.Millimeters
}

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
// [Order.Check] too; an order with problems is not to be worked.
//
// A field that is absent takes its default, from the shop's settings where
// there is one; "0" is zero and not absent. The order is returned with every
// default written out. [NewReading] tells more, and works what can be worked of
// an order with problems.
func Read(data []byte) (Order, error) {
	r := NewReading(data)
	return r.Order, r.Problems.Err()
}

// A Reading is an order as it was read from text, with what the text did not
// say and what could not be understood. Its paths point into the order.
type Reading struct {
	// Order is the order as far as it could be read.
	Order Order
	// Problems are all that is wrong with it. Where they stand, the order holds
	// a default or nothing.
	Problems explain.Problems
	// Defaults are the fields that were absent and took their default; an
	// object stands for all its fields.
	Defaults []explain.Path
	// Rounded are the lengths that were no whole number of nanometers and were
	// rounded to one.
	Rounded []explain.Path
}

// NewReading reads an order as [Read] does, and never fails: what is wrong is in
// its Problems.
func NewReading(data []byte) Reading {
	d := decoder{texts: make(map[explain.Path]string)}
	var o Order
	root := grow(data, &d.c)
	if root == nil {
		return Reading{Problems: d.c.Problems()}
	}
	d.value(root, reflect.ValueOf(&o).Elem(), "")
	o.check(&d.c)
	if o.Version >= 1 && o.Version < OrderVersion {
		o.Version = OrderVersion // with every field of this version written out
	}

	problems := d.c.Problems()
	for i, p := range problems {
		if text, ok := d.texts[p.Path]; ok && p.Code == explain.OutOfRange {
			problems[i].Given = text // as it was written, not as it was read
		}
	}
	return Reading{Order: o, Problems: problems, Defaults: d.defaults, Rounded: d.rounded}
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

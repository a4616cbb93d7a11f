package framing

import (
	"reflect"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A GivenText is a quantity of the order as it is read: a page shows it, and
// formats nothing itself.
type GivenText struct {
	// Path is where the quantity stands in the order, such as
	// /pieces/0/frame/face.
	Path explain.Path
	// Text is the quantity in the manner of the plan, without its unit where that
	// is the plan's own.
	Text string
	// Spoken is the text for a screen reader.
	Spoken string
}

// Givens lists the quantities of the shop and of piece i of the order. There are
// none of a piece that the order does not have.
func (p Plan) Givens(i int) []GivenText {
	if i < 0 || i >= len(p.Order.Pieces) {
		return nil
	}
	format, err := p.Order.Show.Format()
	if err != nil {
		format = measure.Format{}
	}
	g := givens{figures{format}, make([]GivenText, 0, 96)}
	g.walk(reflect.ValueOf(&p.Order.Shop).Elem(), "/shop")
	g.walk(reflect.ValueOf(&p.Order.Pieces[i]).Elem(), explain.Path("/pieces").Index(i))
	return g.list
}

// givens gathers quantities.
type givens struct {
	figures
	list []GivenText
}

// walk goes through what lies at path at; a part that is absent is passed over.
func (g *givens) walk(v reflect.Value, at explain.Path) {
	switch q := v.Addr().Interface().(type) {
	case *measure.Length:
		f := g.length(*q, *q)
		g.list = append(g.list, GivenText{at, f.Text(), f.Spoken()})
		return
	case *measure.Mass:
		g.add(at, g.mass(*q).Text())
		return
	case *measure.Force:
		g.add(at, g.force(*q).Text())
		return
	case *measure.Angle:
		g.add(at, q.String())
		return
	case *explain.Ratio:
		g.add(at, q.String())
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for _, f := range fieldsOf(v.Type(), OrderVersion) {
			if below := v.FieldByIndex(f.index); !f.optional || !below.IsZero() {
				g.walk(below, at+"/"+explain.Path(f.name))
			}
		}
	case reflect.Array, reflect.Slice:
		for i := range v.Len() {
			if v.Kind() == reflect.Slice || !v.Index(i).IsZero() {
				g.walk(v.Index(i), at.Index(i))
			}
		}
	}
}

func (g *givens) add(at explain.Path, text string) {
	g.list = append(g.list, GivenText{at, text, text})
}

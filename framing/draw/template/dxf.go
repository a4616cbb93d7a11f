package template

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// Tolerances of curves in DXF.
const (
	Within      = 10 * measure.Micrometer // what 0 stands for
	LeastWithin = measure.Micrometer
	MostWithin  = measure.Millimeter / 10
)

// DXF writes the template as a DXF drawing of Release 12, in ASCII. A unit of it is a
// millimeter, which that release cannot say but in a comment; the comments at its head
// say too that no curve lies farther than within from the true one. Curves are
// polylines whose pieces bulge to arcs of circles; arcs of circles are themselves.
// Layers have the names of [Layer]. Numbers are written to the nanometer.
//
// A within of 0 is 0.01 mm; others lie from [LeastWithin] to [MostWithin].
func (t Template) DXF(within measure.Length) ([]byte, error) {
	var c explain.Checker
	if within == 0 {
		within = Within
	}
	c.Length("/within", within, LeastWithin, MostWithin)
	if problems := c.Problems(); problems != nil {
		return nil, problems
	}
	if err := t.Check(); err != nil {
		return nil, err
	}
	d := dxf{}
	d.comment(english(wordUnits))
	d.comment(english(wordWithin) + ": " + within.String())
	d.comment(t.Title)
	t = t.footed()
	least, most := t.extent()
	d.begin("HEADER")
	d.pair(9, "$ACADVER")
	d.pair(1, "AC1009")
	d.pair(9, "$EXTMIN")
	d.point(10, least)
	d.pair(9, "$EXTMAX")
	d.point(10, most)
	d.pair(9, "$LUNITS")
	d.pair(70, "2")
	d.pair(9, "$LUPREC")
	d.pair(70, "3")
	d.pair(0, "ENDSEC")
	d.tables()
	d.begin("ENTITIES")
	for _, p := range t.Paths {
		d.path(p.flat(within))
	}
	for _, s := range t.Spots {
		d.spot(s)
	}
	for _, w := range t.Words {
		d.word(w)
	}
	d.pair(0, "ENDSEC")
	d.pair(0, "EOF")
	return d.b, nil
}

type dxf struct{ b []byte }

// pair writes a group code and its value, a line each.
func (d *dxf) pair(code int, value string) {
	d.code(code)
	d.b = append(append(d.b, value...), '\n')
}

func (d *dxf) code(code int) {
	d.b = append(strconv.AppendInt(d.b, int64(code), 10), '\n')
}

func (d *dxf) comment(text string) {
	if text = dxfText(text); text != "" {
		d.pair(999, text)
	}
}

func (d *dxf) begin(section string) {
	d.pair(0, "SECTION")
	d.pair(2, section)
}

func (d *dxf) number(code int, l measure.Length) {
	d.code(code)
	d.b = append(appendReal(d.b, int64(l), 6), '\n')
}

// appendReal writes n over 10^places with a decimal at least, as reals of DXF have it.
func appendReal(b []byte, n int64, places int) []byte {
	from := len(b)
	b = appendDecimal(b, n, places)
	for _, c := range b[from:] {
		if c == '.' {
			return b
		}
	}
	return append(b, ".0"...)
}

func (d *dxf) point(code int, p plane.Point) {
	d.number(code, p.X)
	d.number(code+10, p.Y)
	d.number(code+20, 0)
}

// tables are the line types, the layers and the style of text.
func (d *dxf) tables() {
	d.begin("TABLES")
	d.table("LTYPE", 3)
	d.lineType("CONTINUOUS", "Solid line", nil)
	for _, l := range looks {
		if l.dash != nil {
			d.lineType(lineType(l), string(l.layer), l.dash)
		}
	}
	d.pair(0, "ENDTAB")
	d.table("LAYER", len(looks)+1)
	d.layer("0", 7, "CONTINUOUS")
	for i, l := range looks {
		d.layer(string(l.layer), [...]int{7, 5, 3, 8, 7, 1}[i], lineType(l))
	}
	d.pair(0, "ENDTAB")
	d.table("STYLE", 1)
	d.pair(0, "STYLE")
	d.pair(2, "STANDARD")
	d.pair(70, "0")
	d.pair(40, "0.0")
	d.pair(41, "1.0")
	d.pair(50, "0.0")
	d.pair(71, "0")
	d.pair(42, "3.0")
	d.pair(3, "txt")
	d.pair(4, "")
	d.pair(0, "ENDTAB")
	d.pair(0, "ENDSEC")
}

func (d *dxf) table(name string, entries int) {
	d.pair(0, "TABLE")
	d.pair(2, name)
	d.pair(70, strconv.Itoa(entries))
}

// lineType is the name of the type of the lines of a layer.
func lineType(l look) string {
	switch l.layer {
	case Center:
		return "CENTER"
	case Hidden:
		return "HIDDEN"
	}
	return "CONTINUOUS"
}

// lineType writes one: strokes above nothing and gaps below, in turn.
func (d *dxf) lineType(name, says string, dash []measure.Length) {
	d.pair(0, "LTYPE")
	d.pair(2, name)
	d.pair(70, "0")
	d.pair(3, says)
	d.pair(72, "65")
	d.pair(73, strconv.Itoa(len(dash)))
	var sum measure.Length
	for _, l := range dash {
		sum += l
	}
	d.number(40, sum)
	for i, l := range dash {
		if i%2 == 1 {
			l = -l
		}
		d.number(49, l)
	}
}

func (d *dxf) layer(name string, color int, lineType string) {
	d.pair(0, "LAYER")
	d.pair(2, name)
	d.pair(70, "0")
	d.pair(62, strconv.Itoa(color))
	d.pair(6, lineType)
}

package framing

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// OrderVersion is the version of the orders that this package writes. It reads
// this one and every earlier one.
const OrderVersion = 3

// Limits on an order, so that a hostile one costs bounded time and memory.
const (
	// MaxOrderBytes is the longest order that [Read] takes.
	MaxOrderBytes = 1 << 20
	// MaxDepth is how deep an order may be nested.
	MaxDepth = 12
	// MaxPieces is how many pieces an order may hold.
	MaxPieces = 500
	// MaxQuantity is how many of one piece an order may ask for.
	MaxQuantity = 10_000
)

// An Order is what the shop knows: what it has, what it wants and how it
// usually works. Fields marked required have no default.
type Order struct {
	// Version is the version of the order's fields.
	Version int `json:"version" order:"required"`
	// Job is what the shop calls the order.
	Job string `json:"job,omitzero"`
	// Date is a day as YYYY-MM-DD. No clock is read: a plan without it has no
	// date.
	Date Date `json:"date,omitzero"`
	// Units is the unit of a number that has none, and decides which defaults
	// the shop has.
	Units Units `json:"units" order:"required"`
	// Show says how lengths are shown at the bench.
	Show Show `json:"show"`
	// Shop holds the shop's own defaults.
	Shop Shop `json:"shop"`
	// Pieces are what is to be framed.
	Pieces []Piece `json:"pieces" order:"required"`
}

// A Date is a day of the calendar, YYYY-MM-DD (ISO 8601), or empty.
type Date string

// valid reports whether d is a day of the Gregorian calendar.
func (d Date) valid() bool {
	if len(d) != 10 || d[4] != '-' || d[7] != '-' {
		return false
	}
	year, ok := digits(d[:4])
	month, ok2 := digits(d[5:7])
	day, ok3 := digits(d[8:])
	if !ok || !ok2 || !ok3 || month < 1 || month > 12 || day < 1 {
		return false
	}
	days := [...]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}[month-1]
	if month == 2 && year%4 == 0 && (year%100 != 0 || year%400 == 0) {
		days++
	}
	return day <= days
}

// digits reads decimal digits and nothing else.
func digits(s Date) (n int, ok bool) {
	for _, c := range []byte(s) {
		if c < '0' || c > '9' {
			return 0, false
		}
		n = 10*n + int(c-'0')
	}
	return n, true
}

// Units is the unit of a number without one.
type Units string

// The units.
const (
	Inches      Units = "in"
	Millimeters Units = "mm"
	Centimeters Units = "cm"
)

// Choices lists the units, for readers and forms.
func (Units) Choices() []string {
	return []string{string(Inches), string(Millimeters), string(Centimeters)}
}

// Bare is the unit as [measure.Parse] takes it; for an unknown one, no unit.
func (u Units) Bare() measure.Unit {
	switch u {
	case Inches:
		return measure.Inches
	case Millimeters:
		return measure.Millimeters
	case Centimeters:
		return measure.Centimeters
	}
	return measure.NoUnit
}

// Show says how lengths are shown.
type Show struct {
	// As is the manner of writing.
	As As `json:"as"`
	// Fineness is the step to which lengths are rounded for the bench.
	Fineness measure.Length `json:"fineness"`
}

// As is a manner of writing lengths.
type As string

// The manners of writing.
const (
	AsFraction As = "fraction" // 20 13/16
	AsFeet     As = "feet"     // 1' 8 13/16"
	AsDecimal  As = "decimal"  // 20.8
	AsMetric   As = "metric"   // 528.5
)

// Choices lists the manners, for readers and forms.
func (As) Choices() []string {
	return []string{string(AsFraction), string(AsFeet), string(AsDecimal), string(AsMetric)}
}

// Style is the manner as package measure names it; for an unknown one, exact
// text.
func (a As) Style() measure.Style {
	switch a {
	case AsFraction:
		return measure.Fraction
	case AsFeet:
		return measure.FeetInches
	case AsDecimal:
		return measure.DecimalInch
	case AsMetric:
		return measure.Metric
	}
	return measure.Exact
}

// DefaultShow is how lengths are shown where an order does not say: inches to
// 1/16, millimeters to 0.5.
func DefaultShow(u Units) Show {
	if u == Inches {
		return ShowAs(AsFraction)
	}
	return ShowAs(AsMetric)
}

// ShowAs returns a manner of writing with its usual fineness: 1/16 in, a
// hundredth of an inch, 0.5 mm.
func ShowAs(a As) Show {
	switch a {
	case AsDecimal:
		return Show{a, measure.Inch / 100}
	case AsMetric:
		return Show{a, measure.Millimeter / 2}
	}
	return Show{a, measure.Inch / 16}
}

// Format is s as package measure takes it.
func (s Show) Format() (measure.Format, error) { return measure.NewFormat(s.As.Style(), s.Fineness) }

// Check returns all that is wrong with the order, nil where nothing is.
func (o Order) Check() explain.Problems {
	var c explain.Checker
	o.check(&c)
	return c.Problems()
}

func (o Order) check(c *explain.Checker) {
	if f, err := o.Show.Format(); err == nil {
		c.Format = f
	}
	c.Number("/version", int64(o.Version), 1, OrderVersion)
	c.Text("/job", o.Job)
	if o.Date != "" {
		if !o.Date.valid() {
			c.Add(explain.Problem{Code: explain.NotADate, Path: "/date", Given: string(o.Date), Accepted: "YYYY-MM-DD"})
		}
	}
	c.Choice("/units", string(o.Units), o.Units.Choices())
	if !c.Clean("/units") {
		c.Distrust() // a bare number may be anything
	}
	o.Show.check(c, "/show")
	o.Shop.check(c, "/shop")
	switch {
	case len(o.Pieces) == 0:
		c.Add(explain.Problem{Code: explain.TooFew, Path: "/pieces", Given: "0", Accepted: count(1, MaxPieces)})
	case len(o.Pieces) > MaxPieces:
		c.Add(tooManyPieces(len(o.Pieces)))
		return
	}
	for i := range o.Pieces {
		o.Pieces[i].check(c, explain.Path("/pieces").Index(i))
	}
}

func (s Show) check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/as", string(s.As), s.As.Choices())
	c.Positive(at+"/fineness", s.Fineness)
	if !c.Clean(at+"/as", at+"/fineness") {
		return
	}
	if _, err := s.Format(); err != nil {
		var steps []string
		for _, step := range measure.Steps(s.As.Style()) {
			f := measure.Format{Style: s.As.Style(), Step: step}
			steps = append(steps, string(f.AppendExact(nil, step)))
		}
		c.Add(explain.Problem{Code: explain.NotAChoice, Path: at + "/fineness", Given: c.Write(s.Fineness),
			Accepted: strings.Join(steps, ", ")})
	}
}

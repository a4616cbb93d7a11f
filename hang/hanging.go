package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Hanging is what is decided about how a piece hangs. The zero Hanging is
// not decided.
type Hanging struct {
	// By is what the piece hangs by.
	By Way `json:"by"`
	// Hooks is how many hooks in the wall lift a wire: 1 or 2. Two rings always
	// have two and a sawtooth one.
	Hooks int `json:"hooks"`
	// Part is how far down the frame the hangers bear, as a part of its height,
	// where Below does not say so.
	Part explain.Ratio `json:"part"`
	// Below is from the frame's top down to where the wire or the hook bears in
	// the hangers; 0 is by Part, and for a sawtooth the middle of the top rail's
	// wood.
	Below measure.Length `json:"below"`
	// BelowRight is that of the right ring where it differs; 0 is as the left one.
	// It counts for rings only: a wire's hangers stand at one height.
	BelowRight measure.Length `json:"below_right,omitzero"`
	// Inset is from the outside edge to the hanger; 0 is the middle of the rail's
	// wood: of its face less its lip, of a floater's face with its ledge.
	Inset measure.Length `json:"inset"`
	// Taut says how tight the wire is.
	Taut Taut `json:"taut"`
	// Spread is between the two hooks of a wire; 0 is half of the span.
	Spread measure.Length `json:"spread"`
	// Tails is the wire at each end for the wraps.
	Tails measure.Length `json:"tails"`
	// NailAbove is how far above the place where a hook bears its nail hole is; 0
	// for a bare nail, or where it is not known.
	NailAbove measure.Length `json:"nail_above"`
	// Hidden is how far below the frame's top the taut wire, or the place where a
	// ring bears, stays at least.
	Hidden measure.Length `json:"hidden"`
	// Center is the height of the piece's middle above the floor.
	Center measure.Length `json:"center"`
	// Ratings are what wire, hangers and hooks are sold to hold.
	Ratings Ratings `json:"ratings"`
}

// IsZero reports whether nothing was decided about hanging.
func (h Hanging) IsZero() bool { return h == Hanging{} }

// A Way is what a piece hangs by.
type Way string

// The ways to hang a piece.
const (
	Wire     Way = "wire"     // a wire between two hangers, over one or two hooks
	Rings    Way = "rings"    // two hangers, each on a hook of its own
	Sawtooth Way = "sawtooth" // one hanger in the middle of the top rail
)

// Choices lists the ways, for readers and forms.
func (Way) Choices() []string { return []string{string(Wire), string(Rings), string(Sawtooth)} }

// Taut says how tight a wire is.
type Taut struct {
	// By says which of the fields below counts.
	By TautBy `json:"by"`
	// Angle is how steep the wire is, from the horizontal.
	Angle measure.Angle `json:"angle"`
	// Rise is how much higher the taut wire is at the hook than at the hangers.
	Rise measure.Length `json:"rise"`
	// Wire is the taut wire from hanger to hanger, without its tails.
	Wire measure.Length `json:"wire"`
}

// A TautBy is a way to say how tight a wire is.
type TautBy string

// The ways to say how tight a wire is.
const (
	ByAngle TautBy = "angle"
	ByRise  TautBy = "rise"
	ByWire  TautBy = "wire"
)

// Choices lists the ways, for readers and forms.
func (TautBy) Choices() []string { return []string{string(ByAngle), string(ByRise), string(ByWire)} }

// Ratings are what the hardware holds by its makers; 0 is not given, and never
// passed as good.
type Ratings struct {
	// WireBreaks is the load at which the wire breaks.
	WireBreaks measure.Force `json:"wire_breaks"`
	// HangerHolds is what one hanger is rated for.
	HangerHolds measure.Force `json:"hanger_holds"`
	// HookHolds is what one hook in the wall is rated for.
	HookHolds measure.Force `json:"hook_holds"`
	// Factor is how many times its load the wire must bear before it breaks.
	Factor int `json:"factor"`
}

// Limits of what can be decided.
const (
	// LeastAngle and MostAngle bound the angle of a wire. Flatter than a degree
	// the load is a matter of stretch; the steepest row of printed sling tables
	// under upright is 85.
	LeastAngle = measure.Degree
	MostAngle  = 85 * measure.Degree
	// MaxFactor is the largest [Ratings].Factor accepted.
	MaxFactor = 100
)

// Usual returns how most pieces hang, in inches or in whole millimeters: on a
// wire at 30 degrees over two hooks. The hangers are 30 % of the height down
// (common practice: a quarter to a third; one gallery's rule: a fifth, and at
// least 3 1/2 in; one framing shop: about a third). The taut wire stays 2 in or
// 50 mm below the frame's top (a gallery's rule). The middle is at 57 in (an
// art handler and a shipper of art: 57 to 60 in; a gallery: 145 to 150 cm). The
// wire may carry a quarter of its breaking load, as suppliers of picture wire
// count. The tails are common practice.
func Usual(inches bool) Hanging {
	h := Hanging{
		By: Wire, Hooks: 2, Part: 30 * explain.Percent,
		Taut:    Taut{By: ByAngle, Angle: 30 * measure.Degree},
		Ratings: Ratings{Factor: 4},
	}
	if inches {
		h.Tails, h.Hidden, h.Center = 6*measure.Inch, 2*measure.Inch, 57*measure.Inch
	} else {
		h.Tails, h.Hidden, h.Center = 150*measure.Millimeter, 50*measure.Millimeter, 1450*measure.Millimeter
	}
	return h
}

// Check adds to c what is wrong with h, whose fields lie at path at. Whether
// the piece hangs well so is for [Hanging.Notes].
func (h Hanging) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/by", string(h.By), h.By.Choices())
	c.Number(at+"/hooks", int64(h.Hooks), 1, 2)
	c.Ratio(at+"/part", h.Part, explain.Percent, 99*explain.Percent)
	c.NotNegative(at+"/below", h.Below)
	c.NotNegative(at+"/below_right", h.BelowRight)
	c.NotNegative(at+"/inset", h.Inset)
	h.Taut.check(c, at+"/taut", h.By == Wire)
	c.NotNegative(at+"/spread", h.Spread)
	c.NotNegative(at+"/tails", h.Tails)
	c.NotNegative(at+"/nail_above", h.NailAbove)
	c.NotNegative(at+"/hidden", h.Hidden)
	c.Positive(at+"/center", h.Center)
	h.Ratings.check(c, at+"/ratings")
}

func (t Taut) check(c *explain.Checker, at explain.Path, counts bool) {
	c.Choice(at+"/by", string(t.By), t.By.Choices())
	if least := LeastAngle; t.By == ByAngle && counts || t.Angle != 0 {
		c.Angle(at+"/angle", t.Angle, least, MostAngle)
	}
	measured := func(at explain.Path, l measure.Length, by TautBy) {
		if counts && t.By == by {
			c.Measured(at, l)
		} else {
			c.NotNegative(at, l)
		}
	}
	measured(at+"/rise", t.Rise, ByRise)
	measured(at+"/wire", t.Wire, ByWire)
}

func (r Ratings) check(c *explain.Checker, at explain.Path) {
	c.Force(at+"/wire_breaks", r.WireBreaks)
	c.Force(at+"/hanger_holds", r.HangerHolds)
	c.Force(at+"/hook_holds", r.HookHolds)
	c.Number(at+"/factor", int64(r.Factor), 1, MaxFactor)
}

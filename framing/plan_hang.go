package framing

// A HangPlan is how a piece hangs on the wall; see [hang.Layout]. What has no
// part in a way of hanging, as the wire of a piece on two rings, is the zero
// value.
type HangPlan struct {
	// Below is how far below the frame's top the hangers bear.
	Below PairFigure `json:"below"`
	// Span is between the hangers, Spread between the two hooks of a wire.
	Span   Figure `json:"span,omitzero"`
	Spread Figure `json:"spread,omitzero"`
	// Rise is how much higher the taut wire is in the middle than at the hangers,
	// Angle how steep it is, Leg how long each sloping part is.
	Rise  Figure      `json:"rise,omitzero"`
	Angle AngleFigure `json:"angle,omitzero"`
	Leg   Figure      `json:"leg,omitzero"`
	// Taut is the wire from hanger to hanger, Wire the wire to cut.
	Taut Figure `json:"taut,omitzero"`
	Wire Figure `json:"wire,omitzero"`
	// WireTop is how far below the frame's top the taut wire is at its highest.
	WireTop Figure `json:"wire_top,omitzero"`
	// StableRise is the least rise at which the piece keeps level by itself on one
	// smooth hook.
	StableRise Figure `json:"stable_rise,omitzero"`
	// Tension is the load in the wire, Pull the part of it that draws the rails
	// together, Hanger the load on each hanger, Hook the load on each wall hook.
	Tension LoadFigure `json:"tension,omitzero"`
	Pull    LoadFigure `json:"pull,omitzero"`
	Hanger  LoadFigure `json:"hanger"`
	Hook    LoadFigure `json:"hook"`
	// Marks are where the hooks go on the wall, from the left.
	Marks []MarkPlan `json:"marks"`
}

// IsZero reports whether nothing was decided about hanging.
func (h HangPlan) IsZero() bool { return len(h.Marks) == 0 }

// A PairFigure is a length at the left and one at the right.
type PairFigure struct {
	Left  Figure `json:"left"`
	Right Figure `json:"right"`
}

// A LoadFigure is a load by the weight that follows from the order, and by the
// heaviest that the piece can be.
type LoadFigure struct {
	Nominal  ForceFigure `json:"nominal"`
	Heaviest ForceFigure `json:"heaviest"`
}

// A MarkPlan is where one hook goes on the wall.
type MarkPlan struct {
	// Across is how far it is from the piece's middle, to the left where negative.
	Across Figure `json:"across"`
	// Bearing is where the wire or the ring bears, Nail the hole of the nail, both
	// above the floor.
	Bearing Figure `json:"bearing"`
	Nail    Figure `json:"nail"`
}

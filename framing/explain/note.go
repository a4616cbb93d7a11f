package explain

// A Level says how much a note matters.
type Level string

// The levels, from the gravest down.
const (
	Caution Level = "caution" // someone or the art can be hurt
	Warning Level = "warning" // the piece will not go together, or not stay so
	Advice  Level = "advice"  // it will do; most framers would do otherwise
)

// A Code names a kind of problem or note. Its English stands in [Table].
type Code string

// A Note is something to know about a piece that could be worked out. That it
// will not fit or will not hold is a Note and never a [Problem], so that it
// can be drawn and mended.
type Note struct {
	Level Level `json:"level"`
	Code  Code  `json:"code"`
	// Path is the field or figure that the note is about, in the plan.
	Path Path `json:"path"`
	// Values are what the note speaks of, by key.
	Values []Term `json:"values,omitempty"`
	// Changes are the ways to mend it, each enough by itself; the first is the
	// one that most framers would take. A caution has none.
	Changes []Change `json:"changes,omitempty"`
}

// A Change is a new value for one field of the order.
type Change struct {
	// Path is the field, in the plan's copy of the order.
	Path Path `json:"path"`
	// To is the value to set. Where a larger or a smaller one would do as well,
	// Bound says so.
	To    Value `json:"to"`
	Bound Bound `json:"bound,omitzero"`
}

// A Bound says on which side of a change's value the field may lie.
type Bound string

// The bounds.
const (
	Exactly Bound = ""
	AtLeast Bound = "at_least"
	AtMost  Bound = "at_most"
)

package explain

import (
	"encoding/json"

	"github.com/fairmiter/fairmiter/framing/measure"
)

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

	format measure.Format
}

// In returns the note with its JSON text worded in the manner of f; a note that
// was not so worded is in exact millimeters.
func (n Note) In(f measure.Format) Note {
	n.format = f
	return n
}

// MarshalJSON writes the note with what it says, and so each value and each
// change, for a reader that formats no length itself.
func (n Note) MarshalJSON() ([]byte, error) {
	type term struct {
		Term
		Text string `json:"text"`
	}
	type change struct {
		Change
		Text string `json:"text"`
	}
	note := struct {
		Level   Level    `json:"level"`
		Code    Code     `json:"code"`
		Path    Path     `json:"path"`
		Text    string   `json:"text"`
		Values  []term   `json:"values,omitempty"`
		Changes []change `json:"changes,omitempty"`
	}{Level: n.Level, Code: n.Code, Path: n.Path, Text: n.Text(n.format)}
	for _, v := range n.Values {
		note.Values = append(note.Values, term{v, string(v.Value.AppendReadable(nil, n.format))})
	}
	for _, c := range n.Changes {
		note.Changes = append(note.Changes, change{c, c.Text(n.format)})
	}
	return json.Marshal(note)
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

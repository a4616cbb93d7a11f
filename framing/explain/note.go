package explain

import (
	"github.com/fairmiter/fairmiter/framing/jsontext"
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
func (n Note) MarshalJSON() ([]byte, error) { return n.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (n Note) AppendJSON(dst []byte) []byte {
	dst = jsontext.AppendString(append(dst, `{"level":`...), string(n.Level))
	dst = jsontext.AppendString(append(dst, `,"code":`...), string(n.Code))
	dst = jsontext.AppendString(append(dst, `,"path":`...), string(n.Path))
	dst = jsontext.AppendString(append(dst, `,"text":`...), n.Text(n.format))
	between := `,"values":[`
	for _, v := range n.Values {
		dst = v.appendJSON(append(dst, between...), n.format)
		between = ","
	}
	if len(n.Values) > 0 {
		dst = append(dst, ']')
	}
	between = `,"changes":[`
	for _, c := range n.Changes {
		dst = c.appendJSON(append(dst, between...), n.format)
		between = ","
	}
	if len(n.Changes) > 0 {
		dst = append(dst, ']')
	}
	return append(dst, '}')
}

func (t Term) appendJSON(dst []byte, f measure.Format) []byte {
	dst = jsontext.AppendString(append(dst, `{"key":`...), string(t.Key))
	dst = jsontext.AppendText(append(dst, `,"value":`...), t.Value)
	if t.Path != "" {
		dst = jsontext.AppendString(append(dst, `,"path":`...), string(t.Path))
	}
	dst = jsontext.AppendString(append(dst, `,"text":`...), string(t.Value.AppendReadable(nil, f)))
	return append(dst, '}')
}

func (c Change) appendJSON(dst []byte, f measure.Format) []byte {
	dst = jsontext.AppendString(append(dst, `{"path":`...), string(c.Path))
	dst = append(dst, `,"to":`...)
	if c.Word != "" {
		dst = jsontext.AppendString(dst, c.Word)
	} else {
		dst = jsontext.AppendText(dst, c.To)
	}
	if c.Bound != "" {
		dst = jsontext.AppendString(append(dst, `,"bound":`...), string(c.Bound))
	}
	dst = jsontext.AppendString(append(dst, `,"text":`...), c.Text(f))
	return append(dst, '}')
}

// A Change is a new value for one field of the order.
type Change struct {
	// Path is the field, in the plan's copy of the order.
	Path Path `json:"path"`
	// To is the value to set. Where a larger or a smaller one would do as well,
	// Bound says so.
	To    Value `json:"to"`
	Bound Bound `json:"bound,omitzero"`
	// Word is what to set in a field that takes one of several words, as a way to
	// hang; To is then nothing. In JSON it stands as "to".
	Word string `json:"-"`
}

// A Bound says on which side of a change's value the field may lie.
type Bound string

// The bounds.
const (
	Exactly Bound = ""
	AtLeast Bound = "at_least"
	AtMost  Bound = "at_most"
)

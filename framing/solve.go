package framing

import (
	"reflect"
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Question asks which value of one field of an order makes a figure of its
// plan come out. Its paths are those of the order and of the plan; the figure
// and the fields belong to the same piece, or the fields to the shop.
type Question struct {
	// Free is the field of the order that may change, a length, an angle, a ratio,
	// a mass or a force: /pieces/0/mat/borders/left.
	Free explain.Path `json:"free" order:"required"`
	// With are the fields that move with it, as Move says.
	With []explain.Path `json:"with,omitzero"`
	Move Move           `json:"move,omitzero"`
	// Want is the figure of the plan: /pieces/0/frame/outside/width. Its exact
	// value counts.
	Want explain.Path `json:"want" order:"required"`
	// Value is what it should come to, written as in the order: "20 1/4".
	Value string `json:"value,omitzero"`
	// Equal is, instead of Value, another figure that it should be equal to.
	Equal explain.Path `json:"equal,omitzero"`
}

// A Move is how fields move with the free one.
type Move string

// The moves.
const (
	Alike  Move = "same"  // each takes the free field's value
	InStep Move = "step"  // each changes by as much as the free field
	AsPart Move = "ratio" // each keeps its ratio to the free field, to the nanometer
)

// Choices lists the moves, for readers and forms.
func (Move) Choices() []string { return []string{string(Alike), string(InStep), string(AsPart)} }

// ReadQuestion reads a question from its JSON text, as strictly as [Read] reads
// an order. The error is [explain.Problems]; their paths begin with /question.
func ReadQuestion(data []byte) (Question, error) {
	var q Question
	d := decoder{texts: make(map[explain.Path]string)}
	if root := grow(data, &d.c); root != nil {
		d.value(root, reflect.ValueOf(&q).Elem(), "")
	}
	problems := d.c.Problems()
	for i := range problems {
		problems[i].Path = questionRoot.Join(problems[i].Path)
	}
	return q, problems.Err()
}

// questionRoot stands before the paths into a question, so that they are not
// taken for those into its order.
const questionRoot explain.Path = "/question"

// MaxTrials is how often [Solve] works a piece at most. Most questions take fewer
// than ten trials; those that have no answer take the most.
const MaxTrials = 256

// A Solution is the answer to a [Question]. None, with the reason, is an answer.
type Solution struct {
	// Found is whether there is an answer; the fields below it, up to Nearest, are
	// zero where not.
	Found bool `json:"found"`
	// Answer is the value of the free field, and the figure that came out when the
	// order was worked with it.
	Answer Try `json:"answer,omitzero"`
	// Least and Most bound the values around the answer that give the same: they
	// are the answer itself where there is but one. Of several, the answer is the
	// present value where that is one, and else the one next to it, on the step to
	// which lengths are shown where one lies there.
	Least Try `json:"least,omitzero"`
	Most  Try `json:"most,omitzero"`
	// Nearest are, where there is no answer, the tries that came nearest: at most
	// one with too small a figure and one with too large a one, the better first.
	Nearest []Try `json:"nearest,omitempty"`
	// OnTape are the tries that came nearest with a length one can mark: on the step
	// to which the order shows lengths, at most one with too small a figure and one
	// with too large a one, the better first. There are none where the answer, or all
	// of Nearest, stand on that step, or the field is no length.
	OnTape []Try `json:"on_tape,omitempty"`
	// Reason says why there is no answer, or that every value is one. Its path is
	// the free field, as it stands in a plan.
	Reason explain.Note `json:"reason,omitzero"`
	// Problems are what an order would have just past the values that were
	// tried, where that is what stopped the search.
	Problems explain.Problems `json:"problems,omitempty"`
	// Rounded are the lengths that were no whole number of nanometers and were
	// rounded to one: fields that keep a ratio, in the order, and /question/value.
	Rounded []explain.Path `json:"rounded,omitempty"`
	// Order is the order with the answer written in; as it was where there is
	// none.
	Order Order `json:"order"`
	// Trials is how often the piece was worked.
	Trials int `json:"trials"`
}

// A Try is a value of the free field and what comes out with it.
type Try struct {
	Value  explain.Value
	Figure explain.Value

	format measure.Format
	with   *[]explain.Value // by a pointer, as tries without any are compared with ==
}

// With returns the values that the fields of [Question.With] had in the try, in
// their order.
func (t Try) With() []explain.Value {
	if t.with == nil {
		return nil
	}
	return slices.Clone(*t.with)
}

// MarshalJSON writes all values exactly, and the first two also as they are read,
// for a page that formats no length itself.
func (t Try) MarshalJSON() ([]byte, error) { return t.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (t Try) AppendJSON(dst []byte) []byte {
	dst = jsontext.AppendText(append(dst, `{"value":`...), t.Value)
	dst = jsontext.AppendString(append(dst, `,"text":`...), t.Text())
	dst = jsontext.AppendText(append(dst, `,"figure":`...), t.Figure)
	dst = jsontext.AppendString(append(dst, `,"figure_text":`...), t.FigureText())
	if t.with != nil {
		sep := `,"with":[`
		for _, v := range *t.with {
			dst = jsontext.AppendText(append(dst, sep...), v)
			sep = ","
		}
		dst = append(dst, ']')
	}
	return append(dst, '}')
}

// Text returns the value of the field as it is read.
func (t Try) Text() string { return t.read(t.Value) }

// FigureText returns the figure as it is read.
func (t Try) FigureText() string { return t.read(t.Figure) }

func (t Try) read(v explain.Value) string { return string(v.AppendReadable(nil, t.format)) }

// Solve works backwards: it finds the value of a field with which a figure of the
// plan comes out exactly, to the nanometer. The frame may be there already, or the
// wall, the board, the window; the free field is then what is still to be decided:
// a border, the art, the overlap, the size of a mirror.
//
//	framing.Question{
//		Free: "/pieces/0/mat/borders/left", With: []explain.Path{"/pieces/0/mat/borders/right"}, Move: framing.Alike,
//		Want: "/pieces/0/frame/opening/width", Value: "16",
//	}
//
// Only values that the order accepts are answers: from 0 to [explain.MaxLength]
// for a length, to a full turn, to 10,000 %, 10 tonnes or 100 kN, and inside what
// [Order.Check] says about the piece. Every answer was worked forward before it is
// given. Where the present value is a problem, as an art size not yet known, the
// search begins at another.
//
// Figures are mostly straight or kinked functions of a field, which grow or fall
// all the way. For those no answer is missed. Where a figure turns back, the
// answer nearest to the present value is looked for in steps that double, and at
// the turning points; one on a short stretch between two steps can be missed, and
// the reason then is that none was found.
//
// The order is not changed. The error is [explain.Problems] where the question or
// the order cannot be understood: those of the question have paths that begin
// with /question. Problems in other pieces do not matter.
func Solve(o Order, q Question) (Solution, error) {
	a, problems := ask(o, q)
	if len(problems) > 0 {
		return Solution{Order: o}, problems.Sorted()
	}
	s := search{asked: a, work: a.work}
	if !s.begin() {
		return Solution{Order: o}, a.problemsAt(a.present)
	}
	solution := Solution{Order: o, Rounded: a.rounded}
	if at, ok := s.find(); ok {
		s.answer(&solution, at)
		solution.Order = a.written(o, q, solution.Answer.Value.N)
		solution.Rounded = append(solution.Rounded, a.roundedAt(q, solution.Answer.Value.N)...)
	} else {
		s.none(&solution)
	}
	solution.Trials = s.trials
	return solution, nil
}

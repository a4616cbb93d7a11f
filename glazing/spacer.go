package glazing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Spacer is a strip along the four edges that keeps what lies behind it off
// what lies in front of it. The zero Spacer is none.
type Spacer struct {
	// Name is what the shop calls it.
	Name string `json:"name,omitzero"`
	// Under is what the strip lies behind.
	Under SpacerUnder `json:"under"`
	// Width is how far the strip reaches in from the edge.
	Width measure.Length `json:"width" order:"required"`
	// Depth is how far it keeps the parts apart.
	Depth measure.Length `json:"depth"`
}

// IsZero reports whether there is no spacer.
func (s Spacer) IsZero() bool { return s == Spacer{} }

// A SpacerUnder is where a spacer lies.
type SpacerUnder string

// Where a spacer lies.
const (
	UnderGlazing SpacerUnder = "glazing" // between the glazing and what is next
	UnderMat     SpacerUnder = "mat"     // between the mat and the art, as in a shadow box
)

// Choices lists the places, for readers and forms.
func (SpacerUnder) Choices() []string { return []string{string(UnderGlazing), string(UnderMat)} }

// Check adds to c what is wrong with s, whose fields lie at path at.
func (s Spacer) Check(c *explain.Checker, at explain.Path) {
	c.Text(at+"/name", s.Name)
	c.Choice(at+"/under", string(s.Under), s.Under.Choices())
	c.Positive(at+"/width", s.Width)
	c.NotNegative(at+"/depth", s.Depth)
}

// Codes of the notes on spacers.
const (
	SpacerShows   explain.Code = "spacer.shows"
	SpacerMay     explain.Code = "spacer.may_show"
	SpacerShallow explain.Code = "spacer.shallow"
)

// LeastSpacer is the least that keeps flat art off the glazing: 1/8 in, as a
// double mat does. Source: a spacer maker's advice.
const LeastSpacer = measure.Inch / 8

// narrowerStrip is how much narrower than the border that hides it a strip is at
// least (common practice).
const narrowerStrip = measure.Inch / 16

// Hides is what hides a spacer's strip from the front: the lip over a strip
// behind the glazing, the mat over a strip behind the mat.
type Hides struct {
	// Mat is whether it is the mat.
	Mat bool
	// Cover is how far it reaches in over the strip's outer edge, and Name what
	// it is called in a formula.
	Cover measure.Length
	Name  explain.Key
	Path  explain.Path
	// Play is how far the strip can slide, all of it to one side.
	Play     measure.Length
	PlayPath explain.Path
}

// Notes says whether the strip, which stands at path at in the order, shows
// from the front: width + play must not pass what covers it.
func (s Spacer) Notes(h Hides, at explain.Path) []explain.Note {
	var notes []explain.Note
	width := explain.NewTerm("width", s.Width, at+"/width")
	cover := explain.NewTerm(h.Name, h.Cover, h.Path)
	play := explain.NewTerm("play", h.Play, h.PlayPath)
	values := []explain.Term{width, cover, play}
	var narrower []explain.Change
	most := h.Cover - h.Play
	if h.Mat {
		most -= narrowerStrip // flush with the window it would show
	}
	if most > 0 {
		narrower = []explain.Change{{Path: at + "/width", To: explain.Of(most), Bound: explain.AtMost}}
	}
	switch shows := s.Width + h.Play - h.Cover; {
	case h.Mat && s.Width >= h.Cover: // flush with the window it shows, wherever it lies
		notes = append(notes, explain.Note{Level: explain.Warning, Code: SpacerShows, Path: at + "/width",
			Values: append(values, explain.NewTerm("shows", shows, "")), Changes: narrower})
	case shows > 0:
		notes = append(notes, explain.Note{Level: explain.Warning, Code: SpacerMay, Path: at + "/width",
			Values: append(values, explain.NewTerm("shows", shows, "")), Changes: narrower})
	}
	if !h.Mat && s.Depth < LeastSpacer {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: SpacerShallow, Path: at + "/depth",
			Values: []explain.Term{
				explain.NewTerm("depth", s.Depth, at+"/depth"),
				explain.NewTerm("wanted", LeastSpacer, ""),
			},
			Changes: []explain.Change{{Path: at + "/depth", To: explain.Of(LeastSpacer), Bound: explain.AtLeast}}})
	}
	return notes
}

package framing

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Figure is a length of a plan: exact, and as it is shown at the bench.
type Figure struct {
	// Exact is the length that follows from the order.
	Exact measure.Length
	// Shown is the length to work to. Shown figures are solved as one set, so
	// that they add up and everything goes in.
	Shown measure.Length

	format measure.Format
}

// FigureOf is a length that stands as it is, shown as f says.
func FigureOf(l measure.Length, f measure.Format) Figure { return Figure{l, l, f} }

// Text returns the shown length as it is printed, without its unit where the
// unit is the plan's own. A shown length that lies between two steps, because
// it follows from others, is written exactly where that is short, and else as
// "about" so much.
func (f Figure) Text() string {
	if text, rest := f.format.Append(nil, f.Shown, measure.Nearest); rest == 0 {
		return string(text)
	}
	readable := explain.Of(f.Shown).AppendReadable(nil, f.format)
	return strings.TrimSuffix(string(readable), " "+f.format.Unit().String())
}

// Aside returns a figure that is measured to one side with the word for that side,
// and to the other with the other word where it is negative: nobody reads a minus off
// a tape.
func (f Figure) Aside(word, other string) (Figure, string) {
	if f.Shown < 0 {
		f.Exact, f.Shown, word = -f.Exact, -f.Shown, other
	}
	return f, word
}

// Spoken returns the shown length for a screen reader.
func (f Figure) Spoken() string { return string(f.appendSpoken(nil)) }

func (f Figure) appendSpoken(dst []byte) []byte {
	for format, ok := f.format, true; ok; format, ok = format.Finer() {
		if _, rest := format.Round(f.Shown, measure.Nearest); rest == 0 {
			return format.AppendSpoken(dst, f.Shown, measure.Nearest)
		}
	}
	return measure.Format{}.AppendSpoken(dst, f.Shown, measure.Nearest)
}

// MarshalJSON writes exact and shown in canonical text, and what to print and
// to say.
func (f Figure) MarshalJSON() ([]byte, error) { return f.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (f Figure) AppendJSON(dst []byte) []byte {
	return appendFigure(dst, f.Exact, f.Shown, f.Text(), f.appendSpoken)
}

// A SizeFigure is a width and a height.
type SizeFigure struct {
	Width  Figure `json:"width"`
	Height Figure `json:"height"`
}

// Exact returns both exact lengths.
func (s SizeFigure) Exact() measure.Size {
	return measure.Size{Width: s.Width.Exact, Height: s.Height.Exact}
}

// Shown returns both shown lengths.
func (s SizeFigure) Shown() measure.Size {
	return measure.Size{Width: s.Width.Shown, Height: s.Height.Shown}
}

// Text returns "width x height" as they are printed.
func (s SizeFigure) Text() string { return s.Width.Text() + " x " + s.Height.Text() }

// A SidesFigure is a length for each side, seen from the front.
type SidesFigure struct {
	Left   Figure `json:"left"`
	Right  Figure `json:"right"`
	Top    Figure `json:"top"`
	Bottom Figure `json:"bottom"`
}

// Exact returns the four exact lengths.
func (s SidesFigure) Exact() measure.Sides {
	return measure.Sides{Left: s.Left.Exact, Right: s.Right.Exact, Top: s.Top.Exact, Bottom: s.Bottom.Exact}
}

// Shown returns the four shown lengths.
func (s SidesFigure) Shown() measure.Sides {
	return measure.Sides{Left: s.Left.Shown, Right: s.Right.Shown, Top: s.Top.Shown, Bottom: s.Bottom.Shown}
}

// An AngleFigure is an angle of a plan: exact, and as one can set it.
type AngleFigure struct {
	Exact measure.Angle
	Shown measure.Angle
}

// AngleStep is how finely an angle is shown: a tenth of a degree.
const AngleStep = measure.Degree / 10

// Text returns the shown angle in degrees, without a sign for them.
func (a AngleFigure) Text() string { return trimUnit(a.Shown.String()) }

// MarshalJSON writes exact and shown in canonical text, and what to print and
// to say.
func (a AngleFigure) MarshalJSON() ([]byte, error) { return a.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (a AngleFigure) AppendJSON(dst []byte) []byte {
	return appendFigure(dst, a.Exact, a.Shown, a.Text(), func(dst []byte) []byte {
		return append(append(dst, a.Text()...), " degrees"...)
	})
}

// makers of figures for one way of showing.
type figures struct{ format measure.Format }

func (m figures) length(exact, shown measure.Length) Figure { return Figure{exact, shown, m.format} }

func (m figures) size(exact, shown measure.Size) SizeFigure {
	return SizeFigure{m.length(exact.Width, shown.Width), m.length(exact.Height, shown.Height)}
}

func (m figures) sides(exact, shown measure.Sides) SidesFigure {
	return SidesFigure{
		m.length(exact.Left, shown.Left), m.length(exact.Right, shown.Right),
		m.length(exact.Top, shown.Top), m.length(exact.Bottom, shown.Bottom),
	}
}

func angleFigure(exact measure.Angle) AngleFigure {
	shown, _ := measure.RoundTo(exact, AngleStep, measure.Nearest)
	return AngleFigure{exact, shown}
}

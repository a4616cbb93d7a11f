package framing

import "github.com/fairmiter/fairmiter/framing/measure"

// A MassFigure is a mass of a plan: exact, and as it is shown, rounded up.
type MassFigure struct {
	Exact measure.Mass
	Shown measure.Mass

	inches bool
}

// Text returns the shown mass with its unit: pounds to a tenth, or kilograms to
// 0.05.
func (m MassFigure) Text() string {
	_, text := measure.ShowMass(m.Exact, m.inches)
	return text
}

// MarshalJSON writes exact and shown in canonical text, and what to print and
// to say.
func (m MassFigure) MarshalJSON() ([]byte, error) { return m.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (m MassFigure) AppendJSON(dst []byte) []byte {
	return appendFigure(dst, m.Exact, m.Shown, m.Text(), func(dst []byte) []byte {
		return measure.AppendSpokenMass(dst, m.Exact, m.inches)
	})
}

// A ForceFigure is a load of a plan: exact, and as it is shown, rounded up.
type ForceFigure struct {
	Exact measure.Force
	Shown measure.Force

	inches bool
}

// Text returns the shown load with its unit: pounds to a tenth, or whole
// newtons.
func (f ForceFigure) Text() string {
	_, text := measure.ShowForce(f.Exact, f.inches)
	return text
}

// MarshalJSON writes exact and shown in canonical text, and what to print and
// to say.
func (f ForceFigure) MarshalJSON() ([]byte, error) { return f.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (f ForceFigure) AppendJSON(dst []byte) []byte {
	return appendFigure(dst, f.Exact, f.Shown, f.Text(), func(dst []byte) []byte {
		return measure.AppendSpokenForce(dst, f.Exact, f.inches)
	})
}

// inches reports whether lengths are shown in inches; masses and loads are then
// shown in pounds.
func (m figures) inches() bool { return m.format.Unit() == measure.Inches }

func (m figures) mass(exact measure.Mass) MassFigure {
	if m.inches() {
		return MassFigure{exact, exact.UpTenthPound(), true}
	}
	shown, _ := measure.RoundTo(exact, MassStep, measure.Up)
	return MassFigure{exact, shown, false}
}

func (m figures) force(exact measure.Force) ForceFigure {
	if m.inches() {
		return ForceFigure{exact, exact.UpTenthPound(), true}
	}
	shown, _ := measure.RoundTo(exact, ForceStep, measure.Up)
	return ForceFigure{exact, shown, false}
}

// How finely masses and loads are shown where lengths are metric.
const (
	MassStep  = 50 * measure.Gram
	ForceStep = measure.Newton
)

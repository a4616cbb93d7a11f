package measure

// A Sine is the sine of an angle, held as finely as [Length.Sin] works it out: for
// many lengths it is worked out once. The zero Sine is nothing.
type Sine struct {
	value         wide
	one, negative bool
}

// SineOf returns the sine of a.
func SineOf(a Angle) Sine {
	value, one, negative := sine(a)
	return Sine{value, one, negative}
}

// CosineOf returns the cosine of a.
func CosineOf(a Angle) Sine { return SineOf(a%Turn + RightAngle) }

// Of returns l times the sine, as [Length.Sin] does.
func (s Sine) Of(l Length) Length {
	m, negative := magnitude(int64(l)), s.negative != (l < 0)
	if s.one {
		return Length(signed(m, negative))
	}
	q, rest := s.value.scaled(m)
	return Length(signed(q+rest.hi>>63, negative))
}

package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// ArchKind says how an arch is curved above its straight sides.
type ArchKind string

// Kinds of arches.
const (
	HalfRound ArchKind = "half_round" // half a circle: the rise is half of the width
	Segmental ArchKind = "segmental"  // less than half a circle
	Horseshoe ArchKind = "horseshoe"  // more than half a circle: wider than its foot
	Pointed   ArchKind = "pointed"    // two arcs that meet at the crown, with middles level with the springing
)

// Choices lists the kinds, for readers and forms.
func (ArchKind) Choices() []string {
	return []string{string(HalfRound), string(Segmental), string(Horseshoe), string(Pointed)}
}

// An Arch stands on a level foot, with two upright sides up to the springing and
// one arc above, or two. Width is between the sides, the chord of the arc; Height
// from the foot to the crown, Rise from the springing to the crown. A Rise of
// nothing is the kind's own: half of the width for a half-round one, half the root
// of 3 of it for a pointed one, whose radius is then its width. A segmental and a
// horseshoe arch need one.
type Arch struct {
	Kind   ArchKind       `json:"kind"`
	Width  measure.Length `json:"width"`
	Height measure.Length `json:"height"`
	Rise   measure.Length `json:"rise"`
}

// Check refuses, as an [*Error] whose At is 0 for the width, 1 for the height, 2
// for the rise and -1 for the kind, an arch that there is not: a size out of
// (0, Reach], a height below the rise, a half-round one of another rise than half
// of its width to the nanometer, a segmental one that rises as much or more, a
// horseshoe that rises as much or less, a pointed one that rises less, and an arc
// of a radius past [Reach].
func (a Arch) Check() error {
	if err := a.check(); err != nil {
		return err
	}
	return nil
}

func (a Arch) check() *Error {
	if err := checkLength(a.Width, Reach, 0); err != nil {
		return err
	}
	if err := checkLength(a.Height, Reach, 1); err != nil {
		return err
	}
	refuse := func(bound explain.Bound, limit measure.Length) *Error {
		return limited(given(fault(explain.OutOfRange, 2), a.Rise), bound, limit)
	}
	low, high := a.Width/2, (a.Width+1)/2
	own := a.Rise == 0 && (a.Kind == HalfRound || a.Kind == Pointed)
	switch {
	case a.Kind != HalfRound && a.Kind != Segmental && a.Kind != Horseshoe && a.Kind != Pointed:
		return fault(explain.NotAChoice, -1)
	case a.Kind == HalfRound && !own && a.Rise != low && a.Rise != high:
		return refuse(explain.Exactly, high)
	case a.Rise > Reach:
		return refuse(explain.AtMost, Reach)
	case a.Kind == Segmental && a.Rise >= high:
		return refuse(explain.AtMost, high-1)
	case a.Kind == Horseshoe && a.Rise <= low:
		return refuse(explain.AtLeast, low+1)
	case a.Kind == Pointed && !own && a.Rise < high:
		return refuse(explain.AtLeast, high)
	}
	if a.Kind == Segmental {
		// The flattest arc: R - sqrt(R^2 - c^2/4) at the greatest radius.
		leg := int64(measure.Leg(Reach<<grain, a.Width<<(grain-1)))
		if least := measure.Length((edge-leg)>>grain) + 1; a.Rise < least {
			return refuse(explain.AtLeast, least)
		}
	}
	if a.Kind == Pointed && a.radius() > edge {
		// R = c/4 + h^2/c, so h is the root of (R - c/4) c, a leg of R and R - c/2.
		most := measure.Leg(Reach<<grain, measure.Length(edge-int64(a.Width)<<(grain-1))) >> grain
		return refuse(explain.AtMost, most)
	}
	if a.Height<<grain < measure.Length(a.rise()) {
		least := measure.Length(-(-a.rise() >> grain))
		return limited(given(fault(explain.OutOfRange, 1), a.Height), explain.AtLeast, least)
	}
	return nil
}

// rise is the rise in units of spots.
func (a Arch) rise() int64 {
	switch {
	case a.Kind == HalfRound:
		return int64(a.Width) << (grain - 1)
	case a.Kind == Pointed && a.Rise == 0:
		return int64(measure.Leg(a.Width<<grain, a.Width<<(grain-1)))
	}
	return int64(a.Rise) << grain
}

// radius is that of the arc in units of spots.
func (a Arch) radius() int64 {
	half, h := int64(a.Width)<<(grain-1), a.rise()
	switch {
	case a.Kind == HalfRound:
		return half
	case a.Kind == Pointed && a.Rise == 0:
		return 2 * half
	case a.Kind == Pointed:
		part, _ := measure.MulDiv(h, h, 2*half)
		return part + half/2
	}
	part, _ := measure.MulDiv(half, half, h)
	return (part + h) / 2
}

// Springing is how far above the foot the arc begins, rounded to the nearest; 0
// for what [Arch.Check] refuses.
func (a Arch) Springing() measure.Length {
	if a.check() != nil {
		return 0
	}
	return coarse(int64(a.Height)<<grain - a.rise())
}

// Radius is that of the arc, or of each of two, rounded to the nearest: of the
// chord c and the rise h (c^2/4 + h^2) / 2h, for a pointed arch (c^2/4 + h^2) / c.
// It is 0 for what [Arch.Check] refuses. Source: the theorem of crossing chords.
func (a Arch) Radius() measure.Length {
	if a.check() != nil {
		return 0
	}
	return coarse(a.radius())
}

// Sweep is the angle of the arc, seen from its middle, or of each of two, rounded
// to the nanodegree (twice one that is rounded so where there is one arc); 0 for
// what [Arch.Check] refuses.
func (a Arch) Sweep() measure.Angle {
	if a.check() != nil {
		return 0
	}
	return a.sweep()
}

func (a Arch) sweep() measure.Angle {
	half, h, r := measure.Length(a.Width)<<(grain-1), measure.Length(a.rise()), measure.Length(a.radius())
	switch a.Kind {
	case HalfRound:
		return measure.Turn / 2
	case Pointed:
		return measure.Slope(h, r-half)
	}
	return 2 * measure.Slope(half, r-h)
}

// Contour is the outline of the arch, with the left corner of its foot at the
// origin. It begins there and runs to the left: the foot, the right side, the arc
// or the arcs, the left side. There are no sides where the height is the rise.
func (a Arch) Contour() (Contour, error) {
	if err := a.check(); err != nil {
		return Contour{}, err
	}
	width, half, r := int64(a.Width)<<grain, int64(a.Width)<<(grain-1), a.radius()
	crown := int64(a.Height) << grain
	springing := crown - a.rise()
	right, left := spot{width, springing}, spot{0, springing}
	pieces := []piece{{from: spot{}}}
	if springing > 0 {
		pieces = append(pieces, piece{from: spot{width, 0}})
	}
	sweep := a.sweep()
	if a.Kind == Pointed {
		pieces = append(pieces,
			piece{from: right, middle: spot{width - r, springing}, radius: r, sweep: sweep},
			piece{from: spot{half, crown}, middle: spot{r, springing}, radius: r, start: measure.Turn/2 - sweep, sweep: sweep})
	} else {
		pieces = append(pieces,
			piece{from: right, middle: spot{half, crown - r}, radius: r, start: measure.RightAngle - sweep/2, sweep: sweep})
	}
	if springing > 0 {
		pieces = append(pieces, piece{from: left})
	}
	return Contour{pieces}, nil
}

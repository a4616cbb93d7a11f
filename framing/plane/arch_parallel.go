package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// An ArchParallel runs beside an arch at the same distance everywhere, outward above
// nothing: foot and sides move by it, and the arcs keep their middles. It is an arch of
// the same kind. Have it from [Arch.Parallel].
//
// Each length is rounded to the nearest from 1024ths of a nanometer, sweep and arc
// follow from the lengths as rounded: a perimeter is right to some hundredths of a
// micrometer.
type ArchParallel struct {
	Of Arch           `json:"of"`
	By measure.Length `json:"by"`
}

// Parallel is the arch at a distance from a, outward above nothing. It refuses what
// [Arch.Check] does, and [LostSide], with the farthest that it may move in, where
// nothing is left between the sides or their feet come past the springing.
func (a Arch) Parallel(by measure.Length) (ArchParallel, error) {
	if err := a.check(); err != nil {
		return ArchParallel{}, err
	}
	p := ArchParallel{a, by}
	if p.stands() {
		return p, nil
	}
	if by > 0 {
		return ArchParallel{}, given(fault(Far, -1), by)
	}
	good, bad := measure.Length(0), min(-max(by, -Reach), (a.Width+1)/2)
	for bad-good > 1 {
		middle := good + (bad-good)/2
		if (ArchParallel{a, -middle}).stands() {
			good = middle
		} else {
			bad = middle
		}
	}
	return ArchParallel{}, limited(given(fault(LostSide, -1), -max(by, -1<<63+1)), explain.AtMost, good)
}

// stands reports whether it lies within the plane, and something is left of it.
func (p ArchParallel) stands() bool {
	return -Reach <= p.By && p.By <= Reach && p.Width() > 0 && p.Side() >= 0 && p.Radius() <= Reach && p.Height() <= Reach
}

// fineUnit is how much finer than in nanometers it is worked out.
const fineUnit = 1 << fineBits

// half, rise and radius are those of the arch itself, in fine units.
func (p ArchParallel) half() measure.Length { return fineUnit / 2 * p.Of.Width }

func (p ArchParallel) rise() measure.Length {
	switch {
	case p.Of.Kind == HalfRound:
		return p.half()
	case p.Of.Kind == Pointed && p.Of.Rise == 0:
		return measure.Leg(2*p.half(), p.half())
	}
	return fineUnit * p.Of.Rise
}

func (p ArchParallel) radius() measure.Length {
	half, rise := p.half(), p.rise()
	switch {
	case p.Of.Kind == HalfRound:
		return half
	case p.Of.Kind == Pointed && p.Of.Rise == 0:
		return 2 * half
	case p.Of.Kind == Pointed:
		part, _ := rise.Scale(int64(rise), int64(2*half))
		quarter, _ := half.Half()
		return part + quarter
	}
	part, _ := half.Scale(int64(half), int64(rise))
	radius, _ := (part + rise).Half()
	return radius
}

// Width is that between the sides.
func (p ArchParallel) Width() measure.Length { return p.Of.Width + 2*p.By }

// Across is how wide it is in all: that of a horseshoe is twice the radius.
func (p ArchParallel) Across() measure.Length {
	if p.Of.Kind == Horseshoe {
		return 2 * p.Radius()
	}
	return p.Width()
}

// Height is from the foot to the crown. That of a pointed arch grows by more than twice
// the distance: its point lies farther out.
func (p ArchParallel) Height() measure.Length {
	if p.Of.Kind == Pointed {
		return rounded(fineUnit*p.Of.Height - p.rise() + p.risen() + fineUnit*p.By)
	}
	return p.Of.Height + 2*p.By
}

// Rise is from the springing, where the sides end, to the crown.
func (p ArchParallel) Rise() measure.Length { return rounded(p.risen()) }

func (p ArchParallel) risen() measure.Length {
	by, radius := fineUnit*p.By, p.radius()
	half := p.half()
	switch p.Of.Kind {
	case HalfRound:
		return half + by
	case Pointed:
		return measure.Leg(radius+by, radius-half)
	case Horseshoe:
		return radius + by + measure.Leg(radius+by, half+by)
	}
	return radius + by - measure.Leg(radius+by, half+by)
}

// Side is how long each of the two upright sides is: the height less the rise.
func (p ArchParallel) Side() measure.Length { return p.Height() - p.Rise() }

// Radius is that of the arc, or of each of two.
func (p ArchParallel) Radius() measure.Length { return rounded(p.radius() + fineUnit*p.By) }

// Sweep is the angle of the arc, seen from its middle, or of each of two.
func (p ArchParallel) Sweep() measure.Angle {
	switch p.Of.Kind {
	case HalfRound:
		return measure.Turn / 2
	case Pointed:
		return measure.ArcTan(2*p.Rise(), 2*p.Radius()-p.Width())
	}
	return 4 * measure.ArcTan(2*p.Rise(), p.Width())
}

// Arc is the length of the arc, or of each of two.
func (p ArchParallel) Arc() measure.Length { return p.Radius().Arc(p.Sweep()) }

// Arcs is how many arcs there are: two of a pointed arch, else one.
func (p ArchParallel) Arcs() int {
	if p.Of.Kind == Pointed {
		return 2
	}
	return 1
}

// Perimeter is the way around: the foot, the two sides and the arcs.
func (p ArchParallel) Perimeter() measure.Length {
	return p.Width() + 2*p.Side() + measure.Length(p.Arcs())*p.Arc()
}

// Size is the size of the upright rectangle around it.
func (p ArchParallel) Size() measure.Size {
	return measure.Size{Width: p.Across(), Height: p.Height()}
}

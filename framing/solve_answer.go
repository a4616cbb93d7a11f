package framing

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the reasons of a [Solution].
const (
	AnyValue    explain.Code = "solve.any"         // every value gives the figure
	Apart       explain.Code = "solve.apart"       // both figures change by as much
	OutOfReach  explain.Code = "solve.beyond"      // not even the least or the most gives it
	BetweenTwo  explain.Code = "solve.between"     // it lies between two nanometers
	Independent explain.Code = "solve.independent" // the figure does not follow from the field
	Leaps       explain.Code = "solve.leaps"       // the figure leaps over it
	NotFound    explain.Code = "solve.not_found"   // none was found, and none of the others holds
	Refused     explain.Code = "solve.refused"     // past the last value that the order takes
	TurnsBack   explain.Code = "solve.turns"       // the figure comes near it and turns back
)

// hair is how far a figure may be on both sides of what is wanted and the reason
// still be that it lies between two nanometers: a thousand times less than anyone
// cuts, a thousand times more than a formula rounds.
const hair = int64(measure.Micrometer)

// answer writes an answer down, with the values around it that do as well.
func (s *search) answer(to *Solution, hit trial) {
	least, below := s.last(hit, -1)
	most, above := s.last(hit, +1)
	best := hit
	switch {
	case least.x <= s.start.x && s.start.x <= most.x && s.start.hit():
		best = s.start
	case s.start.x < least.x:
		best = s.shown(least, least, most, measure.Up)
	case s.start.x > most.x:
		best = s.shown(most, least, most, measure.Down)
	}
	to.Found = true
	to.Answer, to.Least, to.Most = s.try(best), s.try(least), s.try(most)
	to.OnTape = s.tries(s.onTape(best))
	if !below.ok && !above.ok && most.x > least.x && !s.spent {
		to.Reason = s.reason(explain.Advice, AnyValue, s.term(explain.Key("figure"), best.figure))
	}
}

// last is the last trial that hits on one side of one that does, and the trial
// next to it, which does not. They are found by steps that double, and then by
// halves.
func (s *search) last(hit trial, side int64) (last, next trial) {
	last = hit
	for d := int64(1); ; d *= 2 {
		if next = s.at(min(max(last.x+side*d, -1), s.most+1)); !next.hit() {
			break
		}
		last = next
	}
	for distance(last.x, next.x) > 1 && !s.spent {
		if m := s.at(last.x + (next.x-last.x)/2); m.hit() {
			last = m
		} else {
			next = m
		}
	}
	return last, next
}

// shown is the value between two next to the end at hand that stands on the
// coarsest step of a tape or a rule; the end itself where none does.
func (s *search) shown(end, least, most trial, d measure.Direction) trial {
	format, err := s.order.Show.Format()
	if err != nil || s.kind != explain.LengthKind {
		return end
	}
	for ok := true; ok; format, ok = format.Finer() {
		x, _ := measure.Length(end.x).Round(format.Step, d)
		if int64(x) < least.x || int64(x) > most.x {
			continue
		}
		if t := s.at(int64(x)); t.hit() {
			return t
		}
	}
	return end
}

// onTape tries the lengths on the order's step on both sides of some that are not. Of
// those with too small a figure it returns the best, and of the others.
func (s *search) onTape(around ...trial) []trial {
	step := s.format().Step
	if s.kind != explain.LengthKind || step <= 0 || !slices.ContainsFunc(around, func(t trial) bool { return t.x%int64(step) != 0 }) {
		return nil
	}
	var low, high trial
	for _, a := range around {
		floor := a.x - a.x%int64(step)
		for _, x := range [...]int64{floor, floor + int64(step)} {
			side := &high
			t := s.at(x)
			if t.miss < 0 {
				side = &low
			}
			if t.ok && (!side.ok || size(t.miss) < size(side.miss)) {
				*side = t
			}
		}
	}
	if size(high.miss) < size(low.miss) {
		low, high = high, low
	}
	return slices.DeleteFunc([]trial{low, high}, func(t trial) bool { return !t.ok })
}

// An outcome is what all the trials of a search that found nothing say together.
type outcome struct {
	code       explain.Code
	best       trial // what came nearest
	other      trial // and what did on the other side of what is wanted; not ok where none is
	low, high  trial // both again: too small, too large
	past       int64 // a value that is refused, next to the best
	whereStops bool  // past is why the search went no further
}

// outcome sums the trials up.
func (s *search) outcome() outcome {
	var o outcome
	var first, last trial
	var between bool
	same, apart := true, true
	for i, t := range s.tried {
		if !t.ok {
			continue
		}
		if !first.ok {
			first = t
		}
		last = t
		same = same && t.figure == first.figure
		apart = apart && t.miss == first.miss
		between = between || i > 0 && s.tried[i-1].crosses(t) && t.x-s.tried[i-1].x == 1
		nearest := &o.high
		if t.miss < 0 {
			nearest = &o.low
		}
		if !nearest.ok || size(t.miss) < size(nearest.miss) ||
			t.miss == nearest.miss && distance(t.x, s.start.x) < distance(nearest.x, s.start.x) {
			*nearest = t
		}
	}
	o.best, o.other = o.low, o.high
	if !o.low.ok || o.high.ok && size(o.high.miss) < size(o.low.miss) {
		o.best, o.other = o.high, o.low
	}
	atFirst, atLast := o.best.x == first.x && first.x > 0, o.best.x == last.x && last.x < s.most
	o.past = o.best.x + 1
	if atFirst {
		o.past = o.best.x - 1
	}
	switch {
	case first.x < last.x && same && apart:
		o.code = Independent
	case first.x < last.x && apart:
		o.code = Apart
	case between && size(o.best.miss) <= uint64(hair) && size(o.other.miss) <= uint64(hair):
		o.code = BetweenTwo
	case between:
		o.code = Leaps
	case s.spent:
		o.code = NotFound
	case atFirst || atLast:
		o.code, o.whereStops = Refused, true
	case o.best.miss == first.miss || o.best.miss == last.miss:
		o.code = OutOfReach
	case !o.other.ok:
		o.code = TurnsBack
	default:
		o.code = NotFound
	}
	return o
}

// none writes down why there is no answer, and what came nearest.
func (s *search) none(to *Solution) {
	o := s.outcome()
	nearest, said := []trial{o.best}, o.best
	if o.other.ok {
		nearest = append(nearest, o.other)
	}
	marked := s.onTape(nearest...)
	to.Nearest, to.OnTape = s.tries(nearest), s.tries(marked)
	if len(marked) > 0 && (o.whereStops || o.code == OutOfReach || o.code == TurnsBack || o.code == NotFound) {
		said = marked[0]
	}
	values := []explain.Term{
		s.term(explain.Key("figure"), said.figure), s.term(explain.Key("wanted"), o.best.figure-o.best.miss),
		{Key: "value", Value: explain.Value{Kind: s.kind, N: said.x}, Path: orderRoot.Join(s.free)},
	}
	switch o.code {
	case Apart:
		values = append(values, s.term(explain.Key("apart"), int64(min(size(o.best.miss), 1<<63-1))))
	case Leaps:
		values = append(values, s.term(explain.Key("below"), o.low.figure), s.term(explain.Key("above"), o.high.figure))
	}
	to.Reason = s.reason(explain.Warning, o.code, values...)
	if o.whereStops {
		to.Problems = s.problemsAt(o.past)
	}
}

// term is a value of the figure's kind.
func (s *search) term(key explain.Key, n int64) explain.Term {
	return explain.Term{Key: key, Value: explain.Value{Kind: s.figure.kind, N: n}}
}

func (s *search) reason(level explain.Level, code explain.Code, values ...explain.Term) explain.Note {
	n := explain.Note{Level: level, Code: code, Path: orderRoot.Join(s.free), Values: values}
	return n.In(s.format())
}

// format is how the order shows lengths.
func (s *search) format() measure.Format {
	format, err := s.order.Show.Format()
	if err != nil {
		return measure.Format{}
	}
	return format
}

func (s *search) tries(list []trial) []Try {
	var tries []Try
	for _, t := range list {
		tries = append(tries, s.try(t))
	}
	return tries
}

func (s *search) try(t trial) Try {
	to := Try{Value: explain.Value{Kind: s.kind, N: t.x}, Figure: explain.Value{Kind: s.figure.kind, N: t.figure}, format: s.format()}
	if len(s.with) > 0 {
		with := make([]explain.Value, len(s.with))
		for i, m := range s.with {
			moved, _ := s.moved(m.present, t.x)
			with[i] = explain.Value{Kind: s.kind, N: moved}
		}
		to.with = &with
	}
	return to
}

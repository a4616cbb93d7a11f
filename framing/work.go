package framing

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// Work works an order out. The error is [explain.Problems] and holds all that
// is wrong with the order; the plan holds it too. A piece without problems is
// worked all the same, so that a page can show the rest while one field is half
// typed; but where something is wrong that every piece depends on, as the units
// or the shop, no piece is. The order is not changed and the plan does not share
// its pieces.
func Work(o Order) (Plan, error) { return Reading{Order: o}.Work() }

// Work works the order out as [Work] does. No piece is worked that has a problem
// of the reading: what was not understood does not come right by being worked.
// The plan says which fields took their default and which lengths were rounded.
func (r Reading) Work() (Plan, error) {
	o := r.Order
	problems := r.check()
	plan := Plan{Version: PlanVersion, Order: o}
	plan.Order.Pieces = append([]Piece(nil), o.Pieces...)
	for _, p := range problems {
		p.Path = orderRoot.Join(p.Path)
		plan.Problems = append(plan.Problems, p)
	}
	for _, p := range r.Defaults {
		plan.Defaults = append(plan.Defaults, orderRoot.Join(p))
	}
	for _, p := range r.Rounded {
		plan.Notes = append(plan.Notes, explain.Note{Level: explain.Advice, Code: Rounded, Path: orderRoot.Join(p)})
	}
	format, err := o.Show.Format()
	if err != nil { // a problem of its own; the figures stay exact
		format = measure.Format{}
	}
	if len(o.Pieces) > MaxPieces {
		return plan, problems
	}
	general := general(problems)
	plan.Pieces = make([]PiecePlan, len(o.Pieces))
	for i := range o.Pieces {
		p := &o.Pieces[i]
		plan.Pieces[i] = PiecePlan{Name: p.Name, Quantity: p.Quantity}
		if general || len(problems) > 0 && len(problems.Under(explain.Path("/pieces").Index(i))) > 0 {
			continue
		}
		w := newWorker(p, o.Shop, format, placesOf(i))
		plan.Pieces[i] = w.piece()
	}
	return plan, problems.Err()
}

// check returns the problems of the reading and those of the order.
func (r Reading) check() explain.Problems {
	switch {
	case len(r.Problems) == 0:
		return r.Order.Check()
	case slices.ContainsFunc(r.Problems, unreadable):
		return r.Problems // there is no order to check
	}
	var c explain.Checker
	for _, p := range r.Problems {
		c.Add(p)
	}
	r.Order.check(&c)
	return c.Problems()
}

// unreadable reports whether a problem left nothing of the document.
func unreadable(p explain.Problem) bool {
	return p.Path == "" && (p.Code == explain.NotJSON || p.Code == explain.NotUTF8 || p.Code == explain.TooLarge)
}

// general reports whether something is wrong that every piece depends on:
// anything but a piece, what the order is called, and how lengths are shown.
// Where there were more problems than are kept, no piece is known to be sound.
func general(problems explain.Problems) bool {
	return slices.ContainsFunc(problems, func(p explain.Problem) bool {
		for _, harmless := range []explain.Path{"/job", "/date", "/show"} {
			if p.Path.Under(harmless) {
				return false
			}
		}
		return p.Path == "/pieces" || !p.Path.Under("/pieces")
	})
}

// orderRoot is where a plan holds its order.
const orderRoot explain.Path = "/order"

// places are where the parts of one piece stand in a plan.
type places struct {
	order  explain.Path // the piece as decided
	worked explain.Path // the piece worked out
}

func placesOf(i int) places {
	worked := explain.Path("/pieces").Index(i)
	return places{orderRoot.Join(worked), worked}
}

// A worker works one piece out.
type worker struct {
	*Piece
	shop   Shop
	format measure.Format
	at     places
	// artAt is where the art's size stands: in the order, or in the plan where it is
	// derived from an outline or from measured sides.
	artAt   explain.Path
	derived ArtPlan
	panel   molding.RegularPanel // of a regular outline
}

// newWorker returns the worker of a piece that stands at a place.
func newWorker(p *Piece, s Shop, f measure.Format, at places) worker {
	w := worker{Piece: p, shop: s, format: f, at: at, artAt: at.order + "/art"}
	if Shapes {
		w.derive()
	}
	return w
}

// piece works everything out: exact first, then the shown set, then what to
// know about it.
func (w *worker) piece() PiecePlan {
	if Shapes {
		w.turn()
	}
	x := w.exactly()
	s := w.show(x, w.format)
	plan := w.assemble(x, s)
	plan.Notes = w.notes(x, s)
	return plan
}

package framing_test

import (
	"bytes"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// written is an order with another text in one field, by way of its JSON text;
// false where that has problems, or leaves the field out.
func written(t testing.TB, order framing.Order, path explain.Path, value explain.Value) (framing.Order, bool) {
	t.Helper()
	text := parseDoc(t, marshal(t, order))
	var at explain.Path
	for _, segment := range path.Segments() {
		at = at.Child(segment)
		if holder, i := text.at(at); i < 0 || i >= len(holder.below) {
			return order, false
		}
	}
	again, err := framing.Read(text.with(path, `"`+value.String()+`"`).text())
	return again, err == nil
}

// TestSolveBack: from random orders, a field is set to something else, and then
// asked for the figure that was there before. It comes out again, and a
// nanometer beside all that give it, it does not.
func TestSolveBack(t *testing.T) {
	d := newDice(31)
	rounds := 300
	if slow {
		rounds = 40
	}
	asked, trials := 0, 0
	for range rounds {
		order := d.order(1 + int(d.below(2)))
		i := int(d.below(int64(len(order.Pieces))))
		plan := work(t, order)
		want := draw(d, plan.Figures(i)...)
		before := figureOf(t, plan, want)
		fields := framing.FreeFields(order, want)
		if len(fields) == 0 {
			continue
		}
		free := draw(d, fields...)
		other := explain.Value{Kind: explain.LengthKind, N: int64(d.length(0, 700*mm))}
		disturbed, ok := written(t, order, free, other)
		if !ok { // a field of another kind, or a value that the order does not take
			continue
		}
		if len(plan.Pieces[i].Mass.Parts) != len(work(t, disturbed).Pieces[i].Mass.Parts) {
			continue // what stands at the path is what another part weighs
		}
		text := marshal(t, disturbed)
		q := framing.Question{Free: free, Want: want, Value: before.String()}
		s, err := framing.Solve(disturbed, q)
		if _, there := work(t, disturbed).Explain(want); err != nil && !there {
			continue // the figure went with the field, as the wire of a wire
		}
		if err != nil {
			t.Fatalf("%s for %s: %v\n%s", free, want, err, text)
		}
		if !bytes.Equal(text, marshal(t, disturbed)) {
			t.Fatal("Solve changes its order")
		}
		if !s.Found {
			t.Fatalf("%s from %v for %s of %v: %s\n%s", free, other, want, before, s.Reason.Text(measure.Format{}), text)
		}
		if got := figureOf(t, work(t, s.Order), want); got != before || s.Answer.Figure != before {
			t.Fatalf("%s for %s: %v, want %v", free, want, got, before)
		}
		again, ok := written(t, disturbed, free, s.Answer.Value)
		if !ok || !same(t, again, s.Order) {
			t.Fatalf("%s: more is changed than was asked\n%s\n%s", free, marshal(t, again), marshal(t, s.Order))
		}
		for _, beside := range []int64{s.Least.Value.N - 1, s.Most.Value.N + 1} {
			if beside < 0 || beside > int64(explain.MaxLength) {
				continue
			}
			value := s.Answer.Value
			value.N = beside
			past, ok := written(t, disturbed, free, value)
			if !ok {
				continue
			}
			if w, there := work(t, past).Explain(want); there && w.Exact == before {
				t.Fatalf("%s for %s: %v does as well, outside of %v to %v", free, want, value, s.Least.Value, s.Most.Value)
			}
		}
		asked++
		trials += s.Trials
		if s.Trials > framing.MaxTrials {
			t.Fatalf("%d trials", s.Trials)
		}
	}
	if asked < rounds/4 || trials > 40*asked {
		t.Errorf("%d of %d questions were asked, in %d trials", asked, rounds, trials)
	}
}

// TestSolveMoves: what moves with the free field moves as was said.
func TestSolveMoves(t *testing.T) {
	d := newDice(32)
	for range 100 {
		order := d.order(1)
		art := order.Pieces[0].Art
		wanted := work(t, order).Pieces[0].Frame.Package.Width.Exact + d.length(0, 300*mm)
		for _, move := range []framing.Move{framing.Alike, framing.InStep, framing.AsPart} {
			q := framing.Question{Free: p("/art/width"), With: with(p("/art/height")), Move: move, Want: p("/frame/package/width"), Value: wanted.String()}
			s, err := framing.Solve(order, q)
			if err != nil {
				t.Fatal(err)
			}
			if !s.Found {
				continue // the mat lies in a given board
			}
			got := s.Order.Pieces[0].Art
			height, exact := got.Width, true
			switch move {
			case framing.InStep:
				height = art.Height + got.Width - art.Width
			case framing.AsPart:
				height, exact = art.Height.Scale(int64(got.Width), int64(art.Width))
			}
			if got.Height != height || exact != (len(s.Rounded) == 0) {
				t.Errorf("%s: %v x %v becomes %v x %v, rounded %q", move, art.Width, art.Height, got.Width, got.Height, s.Rounded)
			}
			if figure := work(t, s.Order).Pieces[0].Frame.Package.Width.Exact; figure != wanted {
				t.Errorf("%s: the package is %v, want %v", move, figure, wanted)
			}
		}
	}
}

// TestFreeFields: each field that is listed changes the figure, and each length
// that is not leaves it as it is.
func TestFreeFields(t *testing.T) {
	order := read(t, "in", mattedPrint)
	for want, fields := range map[explain.Path][]explain.Path{
		p("/frame/outside/width"): {p("/art/width"), p("/mat/window/each_side"), p("/mat/borders/left"), p("/mat/borders/right"), p("/frame/face")},
		p("/mat/window/height"):   {p("/art/height"), p("/mat/window/each_side")},
		p("/mat/blank/width"): {p("/art/width"), p("/mat/window/each_side"), p("/mat/borders/left"), p("/mat/borders/right"),
			p("/frame/lip"), p("/frame/allowance")},
		p("/depth/wanted"):           {p("/art/thickness"), p("/mat/thickness"), "/shop/points"},
		p("/frame/horizontal/saw"):   nil,
		p("/frame/girth"):            nil,
		p("/glazing/size"):           nil,
		"/pieces/4/mat/blank/width":  nil,
		"/order/pieces/0/art/width":  nil,
		p("/layers/7/size/width"):    nil,
		p("/mat/window"):             nil,
		"":                           nil,
		"/pieces":                    nil,
		"/pieces/0":                  nil,
		"/pieces/-1/mat/blank/width": nil,
	} {
		before := marshal(t, order)
		got := framing.FreeFields(order, want)
		if len(got) != len(fields) {
			t.Errorf("%s follows from %q, want %q", want, got, fields)
			continue
		}
		for i := range fields {
			if got[i] != fields[i] {
				t.Errorf("%s follows from %q, want %q", want, got, fields)
				break
			}
		}
		if !bytes.Equal(before, marshal(t, order)) {
			t.Fatal("FreeFields changes its order")
		}
	}
	order.Pieces[0].Art.Width = 0
	if got := framing.FreeFields(order, p("/frame/outside/width")); got != nil {
		t.Errorf("a piece with a problem has %q", got)
	}
}

package framing_test

import (
	"bytes"
	"encoding/json"
	"reflect"
	"sync"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// same reports whether two orders hold the same values. What Read keeps beside
// them has no JSON text.
func same(t testing.TB, a, b framing.Order) bool {
	t.Helper()
	if !reflect.DeepEqual(a.Pieces, b.Pieces) {
		return false
	}
	return bytes.Equal(marshal(t, a), marshal(t, b))
}

// TestRoundTrip: an order written out and read again is the same order, and
// its plan the same plan but for what it tells of absent fields.
func TestRoundTrip(t *testing.T) {
	d := newDice(4)
	for range 1000 {
		order := d.order(1 + int(d.below(3)))
		again, err := framing.Read(marshal(t, order))
		if err != nil {
			t.Fatalf("%v\n%s", err, marshal(t, order))
		}
		if !same(t, order, again) {
			t.Fatalf("read back\n%s\nwas\n%s", marshal(t, again), marshal(t, order))
		}
		plan, planAgain := work(t, order), work(t, again)
		if len(planAgain.Defaults) != 0 || !bytes.Equal(marshal(t, plan), marshal(t, planAgain)) {
			t.Fatalf("the plan of the order read back differs:\n%s", marshal(t, order))
		}
	}
}

// TestWorkedOrder: the order in a plan, with every default written out, gives
// the same plan once more.
func TestWorkedOrder(t *testing.T) {
	for name, order := range sampleOrders(t) {
		t.Run(name, func(t *testing.T) {
			plan := work(t, order)
			var document struct{ Order json.RawMessage }
			if err := json.Unmarshal(marshal(t, plan), &document); err != nil {
				t.Fatal(err)
			}
			again, err := framing.Read(document.Order)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(marshal(t, plan.Pieces), marshal(t, work(t, again).Pieces)) {
				t.Error("the order as it was worked gives another plan")
			}
		})
	}
}

// TestWorkKeepsOrder: working an order changes neither it nor, afterwards, the
// plan made from it.
func TestWorkKeepsOrder(t *testing.T) {
	d := newDice(5)
	for range 300 {
		order := d.order(3)
		text := marshal(t, order)
		plan := work(t, order)
		planText := marshal(t, plan)
		if !bytes.Equal(text, marshal(t, order)) {
			t.Fatal("Work changes its order")
		}
		for i := range order.Pieces {
			order.Pieces[i] = framing.Piece{}
		}
		if !bytes.Equal(planText, marshal(t, plan)) {
			t.Fatal("the plan shares the order's pieces")
		}
		if _, ok := plan.Explain("/pieces/2/frame/outside/width"); !ok {
			t.Fatal("the plan's workings are gone with the order's pieces")
		}
	}
}

// TestWorkTogether works and explains one order in many goroutines.
func TestWorkTogether(t *testing.T) {
	order := newDice(6).order(4)
	want := marshal(t, work(t, order))
	var group sync.WaitGroup
	for range 8 {
		group.Go(func() {
			for range 20 {
				plan, err := framing.Work(order)
				got, jsonErr := json.Marshal(plan)
				if _, ok := plan.Explain("/pieces/3/frame/sight/height"); err != nil || jsonErr != nil || !ok || !bytes.Equal(got, want) {
					t.Error("a plan made beside others differs", err, jsonErr)
				}
			}
		})
	}
	group.Wait()
}

// TestOthersWorked: a piece with a problem leaves the others worked, and the
// plan's pieces stay one for one.
func TestOthersWorked(t *testing.T) {
	d := newDice(7)
	for range 200 {
		good := d.order(12) // two digits: /pieces/1 and /pieces/11 are told apart
		want := work(t, good)
		spoiled := framing.Order{
			Version: good.Version, Job: good.Job, Date: good.Date, Units: good.Units, Show: good.Show, Shop: good.Shop,
			Pieces: append([]framing.Piece(nil), good.Pieces...),
		}
		bad := int(d.below(12))
		spoiled.Pieces[bad].Art.Width = -1
		plan, err := framing.Work(spoiled)
		ps := problems(t, err)
		if len(ps) != 1 || ps[0].Path != explain.Path("/pieces").Index(bad)+"/art/width" || ps[0].Code != explain.OutOfRange {
			t.Fatalf("problems %v", ps)
		}
		for i, p := range plan.Pieces {
			if i == bad {
				if p.Worked || len(p.Layers) > 0 || len(p.Notes) > 0 || p.Frame != (framing.FramePlan{}) {
					t.Fatalf("the spoiled piece has figures: %+v", p)
				}
				if _, ok := plan.Explain(explain.Path("/pieces").Index(i) + "/frame/outside/width"); ok || len(plan.Figures(i)) > 0 {
					t.Fatal("the spoiled piece has workings")
				}
				continue
			}
			if !reflect.DeepEqual(p, want.Pieces[i]) {
				t.Fatalf("piece %d differs beside a spoiled one", i)
			}
		}
	}
}

// TestWorkWithoutRead works orders that a program built.
func TestWorkWithoutRead(t *testing.T) {
	order := framing.Sample()
	plan := work(t, order)
	if len(plan.Defaults) != 0 || len(plan.Notes) != 0 {
		t.Errorf("defaults %q, notes %v of an order that was not read", plan.Defaults, plan.Notes)
	}
	again, err := framing.Read(marshal(t, order))
	if err != nil || !bytes.Equal(marshal(t, plan), marshal(t, work(t, again))) {
		t.Errorf("read, the order gives another plan (%v)", err)
	}
	for name, spoil := range map[string]func(*framing.Order){
		"/version":                       func(o *framing.Order) { o.Version = 0 },
		"/units":                         func(o *framing.Order) { o.Units = "" },
		"/show/as":                       func(o *framing.Order) { o.Show = framing.Show{Fineness: 1} },
		"/show/fineness":                 func(o *framing.Order) { o.Show.Fineness = 7 },
		"/pieces":                        func(o *framing.Order) { o.Pieces = nil },
		"/pieces/0/quantity":             func(o *framing.Order) { o.Pieces[0].Quantity = framing.MaxQuantity + 1 },
		"/pieces/0/mat/borders/weight":   func(o *framing.Order) { o.Pieces[0].Mat.Borders.Weight = "heavy" },
		"/pieces/0/mat/window/each_side": func(o *framing.Order) { o.Pieces[0].Mat.Window.EachSide = o.Pieces[0].Art.Width / 2 },
		"/pieces/0/frame/lip":            func(o *framing.Order) { o.Pieces[0].Frame.Lip = o.Pieces[0].Frame.Face + 1 },
		"/pieces/0/glazing/size/height":  func(o *framing.Order) { o.Pieces[0].Glazing.Size.Width = 1 },
	} {
		order := framing.Sample()
		spoil(&order)
		_, err := framing.Work(order)
		if ps := problems(t, err); len(ps) != 1 || ps[0].Path != explain.Path(name) || len(order.Check()) != 1 {
			t.Errorf("%s: problems %v", name, ps)
		}
	}
}

package framing_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// TestChangesMend makes every change that a note proposes, one at a time, and
// works the order again: the note must be gone.
func TestChangesMend(t *testing.T) {
	d := newDice(8)
	made := make(map[string]int)
	failed := make(map[string]int)
	orders := 1500
	if slow {
		orders = 500
	}
	for range orders {
		order := d.order(1)
		plan := work(t, order)
		document := parseDoc(t, marshal(t, plan.Order))
		for _, n := range plan.Pieces[0].Notes {
			if n.Level == explain.Caution && len(n.Changes) > 0 {
				t.Errorf("the caution %s could be changed away", n.Code)
			}
			for _, change := range n.Changes {
				field, ok := change.Path.After("/order")
				if !ok {
					t.Fatalf("%s changes %s, which is no field of the order", n.Code, change.Path)
				}
				what := fmt.Sprintf("%s by %s", n.Code, field.Last())
				made[what]++
				to := string(marshal(t, change.To))
				if change.Word != "" {
					to = string(marshal(t, change.Word))
				}
				if change.To.Kind == explain.CountKind {
					to = change.To.String() // a number, not a text
				}
				again, err := framing.Read(document.with(field, to).text())
				if err != nil {
					t.Errorf("%s: the order is refused then: %v", what, err)
					continue
				}
				if slices.ContainsFunc(work(t, again).Pieces[0].Notes, func(m explain.Note) bool {
					return m.Code == n.Code && m.Path == n.Path
				}) {
					if failed[what]++; failed[what] == 1 {
						t.Errorf("%s at %s: %s to %s does not mend it\n%s", n.Code, n.Path, change.Path, change.To, marshal(t, order))
					}
				}
			}
		}
	}
	for what, times := range failed {
		t.Errorf("%s: %d of %d do not mend it", what, times, made[what])
	}
	if len(made) < 12 {
		t.Errorf("only %d kinds of changes came up: %v", len(made), made)
	}
}

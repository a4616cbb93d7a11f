//go:build speed

package framing_test

import (
	"os"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/internal/speed"
)

func TestSpeed(t *testing.T) {
	data, err := os.ReadFile("../testdata/orders/linocut.json")
	if err != nil {
		t.Fatal(err)
	}
	order, err := framing.Read(data)
	if err != nil {
		t.Fatal(err)
	}
	plan, err := framing.Work(order)
	if err != nil {
		t.Fatal(err)
	}
	const figure explain.Path = "/pieces/0/mat/cut/bottom"
	if _, ok := plan.Explain(figure); !ok {
		t.Fatalf("the plan has no %s", figure)
	}
	const anyAllocs = -1
	speed.Run(t, "framing", []speed.Case{
		{Name: "Read", Allocs: anyAllocs, Do: func() { framing.Read(data) }},
		{Name: "Work", Allocs: anyAllocs, Limit: 20 * time.Microsecond, Do: func() { framing.Work(order) }},
		{Name: "Explain", Allocs: anyAllocs, Do: func() { plan.Explain(figure) }},
	})
}

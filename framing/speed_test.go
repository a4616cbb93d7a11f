//go:build speed

package framing_test

import (
	"encoding/json"
	"os"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/internal/speed"
	"github.com/fairmiter/fairmiter/mat"
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
	// Three mats, glazed, that hang on a wire.
	data3, err := os.ReadFile("../testdata/orders/double-mat.json")
	if err != nil {
		t.Fatal(err)
	}
	layers, err := framing.Read(data3)
	if err != nil {
		t.Fatal(err)
	}
	const figure explain.Path = "/pieces/0/mat/cut/bottom"
	if _, ok := plan.Explain(figure); !ok {
		t.Fatalf("the plan has no %s", figure)
	}
	const anyAllocs = -1
	piece := order.Pieces[0]
	given := mat.Given{Least: piece.Art.Least(), Greatest: piece.Art.Greatest(), Lip: piece.Frame.Lips(), Allowance: piece.Frame.Allowance}
	layout := piece.Mat.Lay(given)
	board := layout.Blank
	around := piece.Frame.Around(board)
	speed.Run(t, "framing", []speed.Case{
		{Name: "mat.Lay", Do: func() { layout = piece.Mat.Lay(given) }},
		{Name: "molding.Around", Do: func() { around = piece.Frame.Around(board) }},
		{Name: "Plan/json", Allocs: anyAllocs, Do: func() { json.Marshal(plan) }},
		{Name: "Read", Allocs: anyAllocs, Do: func() { framing.Read(data) }},
		{Name: "Work", Allocs: anyAllocs, Limit: 60 * time.Microsecond, Do: func() { framing.Work(order) }},
		{Name: "Work/layers", Allocs: anyAllocs, Limit: 60 * time.Microsecond, Do: func() { framing.Work(layers) }},
		{Name: "Explain", Allocs: anyAllocs, Do: func() { plan.Explain(figure) }},
	})
	if layout.Blank != board || around.Package != board {
		t.Error("what was timed came out different")
	}
}

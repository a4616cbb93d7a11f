package draw_test

import (
	"flag"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
)

var update = flag.Bool("update", false, "renew the golden drawings; look at them")

const testdata = "../../testdata"

// orders returns the sample orders by name.
func orders(t testing.TB) map[string]framing.Reading {
	t.Helper()
	files, err := filepath.Glob(testdata + "/orders/*.json")
	if err != nil || len(files) < 6 {
		t.Fatalf("sample orders: %v, %v", files, err)
	}
	orders := map[string]framing.Reading{"sample": {Order: framing.Sample()}}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		order := framing.NewReading(data)
		if order.Problems != nil {
			t.Fatalf("%s: %v", file, order.Problems)
		}
		orders[strings.TrimSuffix(filepath.Base(file), ".json")] = order
	}
	return orders
}

// TestGolden holds the drawings of the sample orders against files that were
// looked at. A changed drawing is saved beside its file as NAME-changed.svg, for
// the eye; -update takes it over.
func TestGolden(t *testing.T) {
	folder := filepath.Join(testdata, "drawings")
	wanted := make(map[string]bool)
	for name, order := range orders(t) {
		plan, err := order.Work()
		if err != nil {
			t.Fatal(err)
		}
		for i := range plan.Pieces {
			for _, view := range draw.Front.Choices() {
				if draw.View(view) == draw.Setup && plan.Pieces[i].Shape.IsZero() {
					continue // nothing to set up, which another test reads
				}
				file := name + "-" + view
				if i > 0 {
					file = name + "-" + strconv.Itoa(i+1) + "-" + view
				}
				wanted[file] = true
				golden(t, filepath.Join(folder, file), draw.SVG(plan, i, draw.View(view), draw.Options{}))
			}
		}
	}
	files, err := filepath.Glob(folder + "/*.svg")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".svg")
		if !wanted[name] && !strings.HasSuffix(name, "-changed") {
			t.Errorf("%s is the drawing of no sample order", file)
		}
	}
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	changed := name + "-changed.svg"
	if *update {
		if err := os.WriteFile(name+".svg", []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		os.Remove(changed)
		return
	}
	want, err := os.ReadFile(name + ".svg")
	if err != nil {
		t.Fatalf("%v; write it with: go test ./framing/draw -update", err)
	}
	if got != string(want) {
		if err := os.WriteFile(changed, []byte(got), 0o644); err != nil {
			t.Error(err)
		}
		t.Errorf("the drawing changed; look at %s", changed)
	}
}

package main

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/measure"
)

var update = flag.Bool("update", false, "renew the golden tickets; look at the diff")

// TestGolden holds what the program prints against a file that was looked at.
func TestGolden(t *testing.T) {
	var out strings.Builder
	if err := run(nil, &out); err != nil {
		t.Fatal(err)
	}
	golden := filepath.Join("testdata", "tickets.txt")
	if *update {
		if err := os.WriteFile(golden, []byte(out.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if out.String() != string(want) {
		if err := os.WriteFile(filepath.Join("testdata", "tickets-changed.txt"), []byte(out.String()), 0o644); err != nil {
			t.Error(err)
		}
		t.Error("the tickets changed; look at testdata/tickets-changed.txt")
	}
}

// TestOctagon: 22 3/8 x tan 22.5 = 9.26803 in, shown up to 9 9/32; the saw is set to
// 180/8. Source: common practice, worked by hand.
func TestOctagon(t *testing.T) {
	plan, err := framing.Work(order())
	if err != nil {
		t.Fatal(err)
	}
	r := plan.Pieces[0].Shape.Regular
	hundredThousandth, _ := measure.RoundTo(100_000*r.LongPoint.Exact, measure.Inch, measure.Nearest)
	if want := 926_803 * measure.Inch; hundredThousandth != want {
		t.Errorf("exact %v, want 9.26803 in", r.LongPoint.Exact)
	}
	if r.LongPoint.Text() != "9 9/32" || r.Saw.Text() != "22.5" {
		t.Errorf("rail %s, saw %s; want 9 9/32 and 22.5", r.LongPoint.Text(), r.Saw.Text())
	}
}

// TestDrawings: every piece is drawn in every view.
func TestDrawings(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "new")
	if err := run([]string{"-out", folder}, &strings.Builder{}); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(folder, "*.svg"))
	if err != nil {
		t.Fatal(err)
	}
	if want := len(order().Pieces) * len(draw.View("").Choices()); len(files) != want {
		t.Errorf("%d drawings, want %d: %q", len(files), want, files)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if !strings.HasPrefix(string(text), "<svg ") || !strings.HasSuffix(strings.TrimSpace(string(text)), "</svg>") {
			t.Errorf("%s is no drawing", file)
		}
	}
}

// TestRefusals: what the program does not take is said, and nothing is printed.
func TestRefusals(t *testing.T) {
	for _, args := range []string{"order.json", "-in x"} {
		var out strings.Builder
		if err := run(strings.Fields(args), &out); err == nil || out.String() != "" {
			t.Errorf("%s: error %v, printed %q", args, err, out.String())
		}
	}
	if err := run([]string{"-out", filepath.Join("main.go", "x")}, &strings.Builder{}); err == nil {
		t.Error("drew into a file")
	}
}

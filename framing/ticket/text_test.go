package ticket_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

var update = flag.Bool("update", false, "renew the golden tickets; look at the diff")

// orders returns the sample orders by name.
func orders(t *testing.T) map[string]framing.Reading {
	t.Helper()
	files, err := filepath.Glob("../../testdata/orders/*.json")
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

// TestGolden holds the tickets of the sample orders against files that were
// looked at. A changed ticket is saved beside its file for the eye.
func TestGolden(t *testing.T) {
	for name, order := range orders(t) {
		t.Run(name, func(t *testing.T) {
			plan, err := order.Work()
			if err != nil {
				t.Fatal(err)
			}
			got := ticket.Text(plan, ticket.Options{Working: true})
			golden := filepath.Join("../../testdata/tickets", name+".txt")
			if *update {
				if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				changed := strings.TrimSuffix(golden, ".txt") + "-changed.txt"
				if err := os.WriteFile(changed, []byte(got), 0o644); err != nil {
					t.Error(err)
				}
				t.Errorf("the ticket changed; look at %s", changed)
			}
		})
	}
}

// TestLinocut reads the numbers of the worked example off its ticket: art 11 3/8
// x 15 1/4, overlap 1/8, borders 2 1/2 and 3 at the bottom, lip 1/4, allowance
// 1/8, face 1 1/4. Source: common practice, worked by hand.
func TestLinocut(t *testing.T) {
	plan, err := orders(t)["linocut"].Work()
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(ticket.Text(plan, ticket.Options{}), "\n")
	for label, want := range map[string]string{
		"window":         "11 1/8 x 15",
		"blank":          "16 1/2 x 20 7/8",
		"top and bottom": "2 of  18 5/8",
		"sides":          "2 of  23",
		"sight size":     "16 1/8 x 20 1/2",
		"opening":        "16 5/8 x 21",
		"once seated":    "top 2 9/16, bottom 2 15/16",
		"covers the art": "1/8 in each side (1/4 in total)",
	} {
		found := false
		for _, line := range lines {
			if rest, ok := strings.CutPrefix(line, "   "+label+" "); ok {
				found = true
				if rest = strings.TrimSpace(rest); rest != want && !strings.HasPrefix(rest, want+" ") {
					t.Errorf("%s: %q, want %q", label, rest, want)
				}
			}
		}
		if !found {
			t.Errorf("no line for %s", label)
		}
	}
}

// TestQuantity: a piece made several times takes so many times two rails.
func TestQuantity(t *testing.T) {
	order := framing.Sample()
	order.Pieces[0].Quantity = 3
	plan, err := framing.Work(order)
	if err != nil {
		t.Fatal(err)
	}
	text := ticket.Text(plan, ticket.Options{})
	for _, want := range []string{"(make 3)", "6 of  16 1/4", "6 of  20 1/2"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

// TestUnworked: a piece with problems is named and has no numbers; the others
// have theirs.
func TestUnworked(t *testing.T) {
	order := framing.Sample()
	bad := order.Pieces[0]
	bad.Name, bad.Frame.Face = "The other one", 0
	order.Pieces = append(order.Pieces, bad)
	plan, err := framing.Work(order)
	if err == nil {
		t.Fatal("no problem")
	}
	_, rest, _ := strings.Cut(ticket.Text(plan, ticket.Options{Working: true}), "PIECE 2 of 2: The other one")
	rest, _, _ = strings.Cut(rest, "\nMIND\n")
	if want := "\n   not worked out: the order has problems here\n"; rest != want {
		t.Errorf("got %q, want %q", rest, want)
	}
}

// TestProblems: a ticket of an order that was not understood says so before any
// number, names the field as a framer counts, and has no number of that piece.
func TestProblems(t *testing.T) {
	for text, want := range map[string]string{
		`{"version": 1, "units": "inch", "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]}`:                         "! units: this is none of the choices",
		`{"version": 1, "units": "in", "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4", "rabet": "1/2"}}]}`:           "! frame rabet: there is no such field",
		`{"version": 1, "units": "in", "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1,250"}}]}`:                         "! frame lip: a comma before exactly three digits",
		`{"version": 1, "units": "in", "shop": {"points": "-5"}, "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]}`: "! shop points: this is outside",
	} {
		plan, err := framing.NewReading([]byte(text)).Work()
		if err == nil {
			t.Errorf("no problem in %s", text)
		}
		got := ticket.Text(plan, ticket.Options{Working: true})
		said := strings.Index(got, want)
		if said < 0 || !strings.Contains(got[:said], "NOT TO BE CUT FROM") || said > strings.Index(got, "PIECE 1") {
			t.Errorf("no %q at the head of\n%s", want, got)
		}
		if _, rest, _ := strings.Cut(got, "PIECE 1 of 1"); !strings.HasPrefix(rest, "\n   not worked out") {
			t.Errorf("the piece is worked:\n%s", rest)
		}
	}
}

// TestControls: nothing of an order can break a line or drive a terminal.
func TestControls(t *testing.T) {
	order := framing.Sample()
	order.Job, order.Pieces[0].Name = "a\x1b[2Jb\u2028c", "d\n1  Rails: 99\u202ee"
	plan, _ := framing.Work(order)
	text := ticket.Text(plan, ticket.Options{})
	if !strings.Contains(text, "a[2Jbc") || strings.ContainsAny(text, "\x1b\u2028\u202e") || strings.Contains(text, "\n1  Rails: 99") {
		t.Errorf("got %q", text)
	}
	if text := ticket.Text(framing.Plan{Pieces: make([]framing.PiecePlan, 1)}, ticket.Options{}); strings.Contains(text, "PIECE") {
		t.Errorf("a piece without an order: %q", text)
	}
}

// TestLines: lines keep to 80 characters, the names of the sample orders being
// short, and every ticket is whole text without control characters.
func TestLines(t *testing.T) {
	for name, order := range orders(t) {
		plan, err := order.Work()
		if err != nil {
			t.Fatal(err)
		}
		text := ticket.Text(plan, ticket.Options{})
		if !utf8.ValidString(text) || strings.ContainsFunc(text, func(r rune) bool { return r < ' ' && r != '\n' }) {
			t.Errorf("%s: not plain text", name)
		}
		for _, line := range strings.Split(text, "\n") {
			if n := utf8.RuneCountInString(line); n > 80 || strings.TrimRight(line, " ") != line {
				t.Errorf("%s: %d characters or space at the end: %q", name, n, line)
			}
		}
	}
}

// TestZero: the zero plan has a head and no pieces, and does not panic.
func TestZero(t *testing.T) {
	text := ticket.Text(framing.Plan{}, ticket.Options{Working: true})
	if !strings.HasPrefix(text, "WORK TICKET\n") || strings.Contains(text, "PIECE") {
		t.Errorf("got %q", text)
	}
}

func Example() {
	order := framing.Sample()
	order.Show.Fineness = measure.Inch / 8
	plan, err := framing.Work(order)
	if err != nil {
		fmt.Println(err)
		return
	}
	text := ticket.Text(plan, ticket.Options{})
	_, rails, _ := strings.Cut(text, "2  Rails: ")
	rails, _, _ = strings.Cut(rails, "   opening")
	fmt.Print(rails)
	// Output:
	// oak, plain, 1 1/8
	//    molding             face 1 1/8 in, lip 1/4 in, rabbet 1/2 in
	//    allowance           1/8 in total
	//    top and bottom      2 of  16 1/4                [exact]
	//                              long point to long point; short points 14
	//    sides               2 of  20 1/2                [exact]
	//                              long point to long point; short points 18 1/4
	//    both ends           45 on the saw's scale, from square; 45 to the edge
}

func BenchmarkText(b *testing.B) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		_ = ticket.Text(plan, ticket.Options{})
	}
}

// TestReverseBevel: how far a reverse bevel reaches in, and a strip of which
// nothing is seen, are said in words.
func TestReverseBevel(t *testing.T) {
	order := framing.Sample()
	m := &order.Pieces[0].Mat
	m.Thickness, m.Bevel = measure.Inch/16, 135*measure.Degree
	m.Under[0] = framing.NewUnderMat(order.Shop)
	m.Under[0].Reveal = measure.Inch / 16
	plan, err := framing.Work(order)
	if err != nil {
		t.Fatal(err)
	}
	text := ticket.Text(plan, ticket.Options{})
	for _, want := range []string{"135 deg from the face; reaches in 1/16 in\n", "nothing of it seen; bevel 45 deg, shows 0.055\n"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q on\n%s", want, text)
		}
	}
}

package main

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// A reply as a page reads it.
type reply struct {
	ID       int64            `json:"id"`
	Data     json.RawMessage  `json:"data"`
	Problems explain.Problems `json:"problems"`
}

// ask sends a request and reads the reply, which holds one thing of two.
func ask(t testing.TB, request string) reply {
	t.Helper()
	var r reply
	text := answer([]byte(request))
	if err := json.Unmarshal(text, &r); err != nil {
		t.Fatalf("%v in %s", err, text)
	}
	if (r.Data == nil) == (r.Problems == nil) {
		t.Fatalf("neither data nor problems, or both: %s", text)
	}
	return r
}

// data is what a call that must work gives.
func data[T any](t testing.TB, request string) T {
	t.Helper()
	var v T
	r := ask(t, request)
	if r.Problems != nil {
		t.Fatal(r.Problems)
	}
	if err := json.Unmarshal(r.Data, &v); err != nil {
		t.Fatal(err)
	}
	return v
}

const order = `{"version": 1, "units": "in", "pieces": [
	{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]}`

// read reads a file of the tree.
func file(t testing.TB, name string) []byte {
	t.Helper()
	text, err := os.ReadFile("../testdata/orders/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

func TestHello(t *testing.T) {
	got := data[struct {
		Protocol     int             `json:"protocol"`
		OrderVersion int             `json:"order_version"`
		PlanVersion  int             `json:"plan_version"`
		English      []explain.Entry `json:"english"`
		Sample       json.RawMessage `json:"sample"`
	}](t, fmt.Sprintf(`{"id": 1, "call": "hello", "protocol": %d}`, protocol))
	if got.Protocol != protocol || got.OrderVersion != framing.OrderVersion || got.PlanVersion != framing.PlanVersion {
		t.Errorf("versions %+v", got)
	}
	if len(got.English) != len(explain.Table()) {
		t.Errorf("%d words of English", len(got.English))
	}
	if _, err := framing.Read(got.Sample); err != nil {
		t.Error(err)
	}
}

// TestWork: the plan of every sample order comes as the library writes it,
// whether the order stands in the request or is the text of a file.
func TestWork(t *testing.T) {
	entries, err := os.ReadDir("../testdata/orders")
	if err != nil {
		t.Fatal(err)
	}
	worked := 0
	for _, entry := range entries {
		if entry.IsDir() {
			continue
		}
		text := file(t, entry.Name())
		plan, _ := framing.NewReading(text).Work()
		want, err := json.Marshal(plan)
		if err != nil {
			t.Fatal(err)
		}
		quoted, _ := json.Marshal(string(text))
		for _, request := range []string{
			fmt.Sprintf(`{"id": 5, "call": "work", "order": %s}`, text),
			fmt.Sprintf(`{"id": 5, "call": "work", "text": %s}`, quoted),
		} {
			got := data[struct{ Plan json.RawMessage }](t, request)
			if !sameJSON(t, got.Plan, want) {
				t.Errorf("%s: the plan is\n%s\nwant\n%s", entry.Name(), got.Plan, want)
			}
			worked++
		}
	}
	if worked < 16 {
		t.Errorf("worked only %d orders", worked)
	}
}

// sameJSON compares what two texts say: an encoder may write < as it is or not.
func sameJSON(t *testing.T, a, b []byte) bool {
	t.Helper()
	var x, y any
	if err := json.Unmarshal(a, &x); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(b, &y); err != nil {
		t.Fatal(err)
	}
	p, _ := json.Marshal(x)
	q, _ := json.Marshal(y)
	return string(p) == string(q)
}

// TestViews: a plain rectangle has the three views, another frame all that there is
// something to draw of.
func TestViews(t *testing.T) {
	has := func(name string) []string {
		return data[struct{ Views []string }](t, fmt.Sprintf(`{"id": 5, "call": "work", "order": %s}`, file(t, name))).Views
	}
	if got := has("linocut.json"); !slices.Equal(got, []string{"front", "section", "back"}) {
		t.Errorf("a plain rectangle has %v", got)
	}
	for _, name := range []string{"octagon-mirror.json", "wide-bottom.json", "canted-box.json"} {
		got := has(name)
		want := draw.Front.Choices()
		if name == "octagon-mirror.json" { // cut lying flat
			want = slices.DeleteFunc(want, func(v string) bool { return v == string(setup) })
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s has %v, want %v", name, got, want)
		}
	}
}

// TestWorkHalf: an order with problems gives a plan that says so, and its sound
// pieces.
func TestWorkHalf(t *testing.T) {
	got := data[struct {
		Plan struct {
			Problems explain.Problems
			Pieces   []struct{ Worked bool }
		}
	}](t, `{"id": 5, "call": "work", "order": `+strings.Replace(order, `[
	`, `[{"art": {"width": "8", "height": "wide"}, "frame": {"face": "1", "lip": "1/4"}},`, 1)+`}`)
	if len(got.Plan.Problems) != 1 || got.Plan.Problems[0].Path != "/order/pieces/0/art/height" {
		t.Errorf("problems %v", got.Plan.Problems)
	}
	if p := got.Plan.Pieces; len(p) != 2 || p[0].Worked || !p[1].Worked {
		t.Errorf("pieces %+v", p)
	}
}

func TestDrawings(t *testing.T) {
	type drawn struct{ Drawings map[string]string }
	got := data[drawn](t, `{"id": 5, "call": "work", "views": ["front", "section", "back", "front"], "paper": {"width": 500}, "order": `+order+`}`)
	if len(got.Drawings) != 3 {
		t.Errorf("%d drawings", len(got.Drawings))
	}
	for view, svg := range got.Drawings {
		if !strings.HasPrefix(svg, "<svg") || !strings.HasSuffix(strings.TrimSpace(svg), "</svg>") {
			t.Errorf("%s is %q", view, svg)
		}
	}
	if none := data[drawn](t, `{"id": 5, "call": "work", "order": `+order+`}`); none.Drawings != nil {
		t.Errorf("drew what nobody wanted: %v", none.Drawings)
	}
	plain := answer([]byte(`{"id": 5, "call": "work", "views": ["front"], "order": ` + order + `}`))
	if !strings.Contains(string(plain), "<svg") {
		t.Error("the drawing is escaped as for HTML, which makes it larger")
	}
}

// TestBare: without the plan, but with the drawings and whether they are worth
// anything.
func TestBare(t *testing.T) {
	half := strings.Replace(order, `"8"`, `"8 1/"`, 1)
	for _, row := range []struct {
		order, piece string
		worked       bool
	}{{order, "0", true}, {half, "0", false}, {order, "1", false}, {order, "-1", false}} {
		request := `{"id": 5, "call": "work", "views": ["front"], "piece": ` + row.piece + `, "order": ` + row.order
		got := data[struct {
			Worked       bool
			Plan, Fields json.RawMessage
			Drawings     map[string]string
		}](t, request+`, "bare": true}`)
		whole := data[struct{ Drawings map[string]string }](t, request+`}`)
		if got.Worked != row.worked || got.Plan != nil || got.Fields != nil || got.Drawings["front"] != whole.Drawings["front"] {
			t.Errorf("piece %s: %+v", row.piece, got)
		}
	}
}

// TestExplain: the rails follow by hand, 8 + 1/8 + 2 (1 - 1/4).
func TestExplain(t *testing.T) {
	got := data[struct {
		Working struct {
			Path, Key, Exact string
			Formula          struct{ Op string }
		}
		Text, Rounding, Source string
	}](t, `{"id": 5, "call": "explain", "path": "/pieces/0/frame/outside/width", "order": `+order+`}`)
	if want := "outside 9 5/8 = opening 8 1/8 + 2 x (face 1 - lip 1/4)"; got.Text != want {
		t.Errorf("text %q, want %q", got.Text, want)
	}
	if got.Working.Key != "outside" || got.Working.Exact != "244.475 mm" || got.Working.Formula.Op != "sum" {
		t.Errorf("working %+v", got.Working)
	}
	if !strings.HasPrefix(got.Rounding, "outside 9 5/8 = ") || !strings.HasSuffix(got.Source, " (V)") {
		t.Errorf("rounding %q, source %q", got.Rounding, got.Source)
	}
}

func TestTicket(t *testing.T) {
	for _, row := range []struct{ fields, want string }{
		{``, "WORK TICKET"},
		{`"form": "text", `, "9 5/8 "},
		{`"working": true, `, "outside 9 5/8 = opening 8 1/8 + 2 x (face 1 - lip 1/4)"},
		{`"form": "html", `, "<svg"},
	} {
		got := data[struct{ Text string }](t, `{"id": 5, "call": "ticket", `+row.fields+`"order": `+order+`}`)
		if !strings.Contains(got.Text, row.want) {
			t.Errorf("%s: no %q in\n%s", row.fields, row.want, got.Text)
		}
	}
}

// TestSolve: the face for an outside of 10, by hand: 10 = 8 + 1/8 + 2 (face - 1/4).
func TestSolve(t *testing.T) {
	got := data[struct {
		Found  bool
		Answer struct{ Value, Text string }
	}](t, `{"id": 5, "call": "solve", "question": {"free": "/pieces/0/frame/face", "want": "/pieces/0/frame/outside/width", "value": "10"}, "order": `+order+`}`)
	if !got.Found || got.Answer.Text != "1 3/16 in" || got.Answer.Value != "30.1625 mm" {
		t.Errorf("got %+v", got)
	}
}

// TestSolveWith: what moves with the field is said of each try. By hand, the art
// being 8 wide and 10 high and in step: 10 5/8 = 9 + 1/8 + 2 (1 - 1/4).
func TestSolveWith(t *testing.T) {
	const ask = `{"id": 5, "call": "solve", "question": {"free": "/pieces/0/art/width", "with": ["/pieces/0/art/height"], "move": "step", "want": "/pieces/0/frame/outside/width", "value": "VALUE"}, "order": ` + order + `}`
	type try struct {
		Value string
		With  []string
	}
	for _, row := range []struct {
		value string
		want  try
	}{
		{"10 5/8", try{"228.6 mm", []string{"279.4 mm"}}},
		{"1/8", try{"0.000001 mm", []string{"50.800001 mm"}}}, // the nearest: some width there must be
	} {
		got := data[struct {
			Found   bool
			Answer  try
			Nearest []try
		}](t, strings.Replace(ask, "VALUE", row.value, 1))
		tries := got.Nearest
		if got.Found {
			tries = []try{got.Answer}
		}
		if len(tries) != 1 || tries[0].Value != row.want.Value || !slices.Equal(tries[0].With, row.want.With) {
			t.Errorf("%s: %+v, want %+v", row.value, tries, row.want)
		}
	}
}

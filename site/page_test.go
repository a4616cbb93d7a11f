//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"os"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
)

// A visit is the page open in one engine.
type visit struct {
	*testing.T
	browser.Driver
}

// whole is the page as it is served, built once.
var whole = sync.OnceValues(func() (build.Files, error) {
	from, err := page()
	if err != nil {
		return nil, err
	}
	return build.Site(contextOfTests, from)
})

// visits opens the page as it stands, on a first visit.
func visits(t *testing.T, e browser.Engine, o browser.Options) visit {
	t.Helper()
	files, err := whole()
	if err != nil {
		t.Fatal(err)
	}
	s, w := serveFiles(t, files)
	o.Proxy = w.Proxy()
	v := visit{t, browser.Open(t, e, o)}
	if err := v.Navigate(s.URL()); err != nil {
		t.Fatal(err)
	}
	v.ready()
	t.Cleanup(func() { noFaults(t, w) })
	return v
}

func (v visit) ready() {
	v.Helper()
	v.wait(`document.body.dataset.ready`)
}

func (v visit) wait(expression string) {
	v.Helper()
	if err := v.Wait(expression, 20*time.Second); err != nil {
		v.Fatal(err)
	}
}

func (v visit) eval(script string, args ...any) any {
	v.Helper()
	value, err := v.Eval(script, args...)
	if err != nil {
		v.Fatalf("%s: %v", script, err)
	}
	return value
}

// numbers are the texts of the large drawing by what they are.
const numbers = `const texts = {};
	for (const e of document.querySelectorAll("#main-drawing [data-path]")) texts[e.dataset.path] = (texts[e.dataset.path] ?? "") + "|" + (e.querySelector("text") ?? e).textContent;
	return texts;`

// holds compares every number that the page shows with Go's plan of the order.
func (v visit) holds(order framing.Order) {
	v.Helper()
	plan, err := framing.Work(order)
	if err != nil {
		v.Fatal(err)
	}
	want := make(map[string]string)
	for _, g := range plan.Givens(0) {
		want["/order"+string(g.Path)] = g.Text
	}
	text, err := json.Marshal(plan)
	if err != nil {
		v.Fatal(err)
	}
	var document any
	if err := json.Unmarshal(text, &document); err != nil {
		v.Fatal(err)
	}
	for _, path := range plan.Figures(0) {
		want[string(path)] = textAt(document, path)
	}
	seen := v.eval(numbers).(map[string]any)
	if len(seen) < 10 {
		v.Errorf("only %d numbers on the drawing", len(seen))
	}
	for path, texts := range seen {
		for _, text := range strings.Split(strings.Trim(fmt.Sprint(texts), "|"), "|") {
			text = strings.TrimSpace(strings.ReplaceAll(text, "\u00a0", " "))
			if w, ok := want[path]; !ok || text != w && !strings.HasSuffix(text, " "+w) {
				v.Errorf("%s reads %q, in Go %q", path, text, w)
			}
		}
	}
}

// textAt is the text of the figure that stands at a path of a plan.
func textAt(document any, path explain.Path) string {
	for _, segment := range path.Segments() {
		switch d := document.(type) {
		case map[string]any:
			document = d[segment]
		case []any:
			i, _ := strconv.Atoi(segment)
			document = d[i]
		}
	}
	figure, _ := document.(map[string]any)
	text, _ := figure["text"].(string)
	return text
}

// press clicks on the first element that a selector finds, in the page itself.
func (v visit) press(css string) {
	v.Helper()
	if found := v.eval(`const e = document.querySelector(arguments[0]); e?.dispatchEvent(new MouseEvent("click", {bubbles: true})); return !!e;`, css); found != true {
		v.Fatalf("there is no %s", css)
	}
}

// TestPage takes the main path in every engine: the sample is there and its
// numbers are Go's; a dimension is tapped and typed; the numbers follow, and are
// Go's again; a worked number says how it came to be; the ticket is there.
func TestPage(t *testing.T) {
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		order := framing.Sample()
		v.holds(order)

		v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
		v.wait(`!document.getElementById("pad").hidden && document.querySelector("#pad input").value === "1 1/8"`)
		v.eval(`const i = document.querySelector("#pad input"); i.value = "1 1/2"; i.dispatchEvent(new Event("input", {bubbles: true}));`)
		v.wait(`document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').textContent.includes("17")`)
		if got, err := v.Eval(`return document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').textContent.trim()`); err != nil || got != "17" {
			t.Errorf("outside %v, %v", got, err)
		}
		order.Pieces[0].Frame.Face = 3 * 25_400_000 / 2
		v.holds(order)
		v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
		v.wait(`document.getElementById("pad").hidden`)

		v.press(`#main-drawing [data-path="/pieces/0/frame/outside/width"]`)
		v.wait(`!document.getElementById("working").hidden && document.getElementById("working").textContent.includes("opening")`)
		for _, view := range []string{"cut", "hang", "make"} {
			v.press(`#views [data-view="` + view + `"]`)
			v.wait(`document.body.dataset.view === "` + view + `"`)
		}
		v.press(`#print`)
		v.wait(`document.querySelector("#ticket-sheet .ticket-piece svg")`)
	})
}

// TestRemedy: what a note proposes is one press away, and mends it.
func TestRemedy(t *testing.T) {
	browser.Need(t, browser.Chromium)
	v := visits(t, browser.Chromium, browser.Options{Width: 1180, Height: 820})
	const code = "hang.wire_unrated"
	v.wait(`document.querySelector('[data-code="` + code + `"] .remedy')`)
	v.press(`[data-code="` + code + `"] .remedy`)
	v.wait(`!document.querySelector('[data-code="` + code + `"]')`)
}

// TestHostileNames: what an order says stays text, on the page, in the drawings
// and on the ticket.
func TestHostileNames(t *testing.T) {
	browser.Need(t, browser.Chromium)
	v := visits(t, browser.Chromium, browser.Options{Width: 820, Height: 1180})
	for _, name := range []string{
		`<img src=x onerror=document.body.dataset.owned=1>`, `"><script>document.body.dataset.owned=1</script>`, `</svg><svg onload=document.body.dataset.owned=1>`,
		`' onmouseover='document.body.dataset.owned=1`, `שלום <b>x</b>`, strings.Repeat("W", 199),
	} {
		v.eval(`const o = JSON.parse(localStorage.getItem("fairmiter.order") ?? "null") ?? {version: 2, units: "in", pieces: [{art: {width: "9", height: "12"}, mat: {}, glazing: {}, frame: {face: "1", lip: "1/4"}}]};
			const p = o.pieces[0]; o.job = p.name = arguments[0]; p.mat.name = arguments[0]; p.glazing.name = arguments[0]; p.frame.molding = arguments[0];
			localStorage.setItem("fairmiter.order", JSON.stringify(o)); location.reload();`, name)
		time.Sleep(200 * time.Millisecond)
		v.ready()
		v.press(`#print`)
		v.wait(`document.querySelector("#ticket-sheet .ticket-piece svg")`)
		found := v.eval(`return [document.body.dataset.owned ?? "", document.querySelectorAll("main img, main script, #ticket img, #ticket script, b").length, document.getElementById("ticket-sheet").textContent.includes(arguments[0])]`, name)
		if got := fmt.Sprint(found); got != "[ 0 true]" {
			t.Errorf("%s: %s", name, got)
		}
		v.eval(`history.back()`)
	}
}

// TestAccessible runs axe-core over the three views. Its path stands in AXE.
func TestAccessible(t *testing.T) {
	browser.Need(t, browser.Chromium)
	script, err := os.ReadFile(os.Getenv("AXE"))
	if err != nil {
		if os.Getenv("FAIRMITER_CI") == "1" {
			t.Fatal(err)
		}
		t.Skip("AXE names no axe-core:", err)
	}
	v := visits(t, browser.Chromium, browser.Options{Width: 820, Height: 1180})
	for _, view := range []string{"make", "cut", "hang"} {
		v.press(`#views [data-view="` + view + `"]`)
		v.wait(`document.body.dataset.view === "` + view + `"`)
		got, err := v.EvalAsync(string(script) + `;const done = arguments[arguments.length - 1];
			axe.run(document).then(r => done({passes: r.passes.length, violations: r.violations.map(x => x.id + ": " + x.nodes.map(n => n.html.slice(0, 120)).join(" | "))}), e => done({passes: 0, violations: [String(e)]}));`)
		if err != nil {
			t.Fatal(err)
		}
		result := got.(map[string]any)
		if passes, _ := result["passes"].(float64); passes < 10 {
			t.Errorf("%s: only %v rules passed", view, result["passes"])
		}
		for _, violation := range result["violations"].([]any) {
			t.Errorf("%s: %v", view, violation)
		}
	}
}

//go:build !js

package main

import (
	"fmt"
	"os"
	"strings"
	"sync"
	"testing"
	"time"

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
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		v.holds("the sample", worked(t, sampleWith(t, nil)))

		v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
		v.wait(`!document.getElementById("pad").hidden && document.querySelector("#pad input").value === "1 1/8"`)
		v.eval(`const i = document.querySelector("#pad input"); i.value = "1 1/2"; i.dispatchEvent(new Event("input", {bubbles: true}));`)
		v.wait(`document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').textContent.includes("17")`)
		if got, err := v.Eval(`return document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').textContent.trim()`); err != nil || got != "17" {
			t.Errorf("outside %v, %v", got, err)
		}
		v.holds("typing", worked(t, sampleWith(t, func(_, piece map[string]any) { piece["frame"].(map[string]any)["face"] = "1 1/2" })))
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
	t.Parallel()
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
	t.Parallel()
	browser.Need(t, browser.Chromium)
	v := visits(t, browser.Chromium, browser.Options{Width: 820, Height: 1180})
	home := fmt.Sprint(v.eval(`return location.href`))
	open := func(name string) {
		t.Helper()
		if err := v.Navigate(strings.TrimSuffix(home, "/") + "/" + name); err != nil {
			t.Fatal(err)
		}
	}
	for _, name := range []string{
		`<img src=x onerror=document.body.dataset.owned=1>`, `"><script>document.body.dataset.owned=1</script>`, `</svg><svg onload=document.body.dataset.owned=1>`,
		`' onmouseover='document.body.dataset.owned=1`, `שלום <b>x</b>`, strings.Repeat("W", 199),
	} {
		open("sample.json") // where the page does not keep its own
		v.eval(`const o = JSON.parse(localStorage.getItem("fairmiter.order") ?? "null") ?? {version: 2, units: "in", pieces: [{art: {width: "9", height: "12"}, mat: {}, glazing: {}, frame: {face: "1", lip: "1/4"}}]};
			const p = o.pieces[0]; o.job = p.name = arguments[0]; p.mat.name = arguments[0]; p.glazing.name = arguments[0]; p.frame.molding = arguments[0];
			localStorage.setItem("fairmiter.order", JSON.stringify(o));`, name)
		open("")
		v.ready()
		v.press(`#print`)
		v.wait(`document.querySelector("#ticket-sheet .ticket-piece svg")`)
		found := v.eval(`return [document.body.dataset.owned ?? "", document.querySelectorAll("main img, main script, #ticket img, #ticket script, b").length, document.getElementById("ticket-sheet").textContent.includes(arguments[0])]`, name)
		if got := fmt.Sprint(found); got != "[ 0 true]" {
			t.Errorf("%s: %s", name, got)
		}
	}
}

// TestAccessible runs axe-core over the three views.
func TestAccessible(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.Chromium)
	script := axe(t)
	v := visits(t, browser.Chromium, browser.Options{Width: 820, Height: 1180})
	for _, view := range []string{"make", "cut", "hang"} {
		v.press(`#views [data-view="` + view + `"]`)
		v.wait(`document.body.dataset.view === "` + view + `"`)
		v.accessible(view, script)
	}
	v.eval(`import("./js/fault.js").then(f => f.gone("The part of the page that works out the numbers has stopped.", "unreachable"))`)
	v.wait(`document.querySelector("#fault button")`)
	v.accessible("lost", script)
}

// axe is axe-core, whose path stands in AXE.
func axe(t *testing.T) string {
	t.Helper()
	script, err := os.ReadFile(os.Getenv("AXE"))
	if err != nil {
		if os.Getenv("FAIRMITER_CI") == "1" {
			t.Fatal(err)
		}
		t.Skip("AXE names no axe-core:", err)
	}
	return string(script)
}

// accessible runs axe-core over the page as it is.
func (v visit) accessible(what, script string) {
	v.Helper()
	got, err := v.EvalAsync(script + `;const done = arguments[arguments.length - 1];
		axe.run(document).then(r => done({passes: r.passes.length, violations: r.violations.map(x => x.id + ": " + x.nodes.map(n => n.html.slice(0, 120)).join(" | "))}), e => done({passes: 0, violations: [String(e)]}));`)
	if err != nil {
		v.Fatal(err)
	}
	result := got.(map[string]any)
	if passes, _ := result["passes"].(float64); passes < 10 {
		v.Errorf("%s: only %v rules passed", what, result["passes"])
	}
	for _, violation := range result["violations"].([]any) {
		v.Errorf("%s: %v", what, violation)
	}
}

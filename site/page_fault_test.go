//go:build !js

package main

import (
	"bytes"
	"fmt"
	"maps"
	"net/http"
	"strings"
	"sync/atomic"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

// A host serves at one address what it is given to serve, which may change.
type host struct{ now atomic.Pointer[http.Handler] }

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) { (*h.now.Load()).ServeHTTP(w, r) }

// put has it serve a page with some files changed; a changed one without bytes is
// not to be had.
func (h *host) put(page http.Handler, changed build.Files) {
	other := serve.Handler(changed, serve.AnySite)
	var all http.Handler = http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch data, is := changed[strings.TrimPrefix(r.URL.Path, "/")]; {
		case !is:
			page.ServeHTTP(w, r)
		case data == nil:
			http.Error(w, "broken", http.StatusInternalServerError)
		default:
			other.ServeHTTP(w, r)
		}
	})
	h.now.Store(&all)
}

// hosted opens nothing yet in an engine, and serves what h is given.
func hosted(t *testing.T, e browser.Engine, h *host) (visit, *browser.Server, *browser.Watch) {
	t.Helper()
	w := browser.NewWatch()
	t.Cleanup(w.Close)
	s, err := browser.Serve(w.Around(h))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Stop() })
	return visit{t, browser.Open(t, e, browser.Options{Width: 820, Height: 1180, Proxy: w.Proxy()})}, s, w
}

// goes opens another page; a driver may come back before the one before has gone.
func (v visit) goes(url string) {
	v.Helper()
	v.eval(`document.documentElement.dataset.before = "yes"`)
	if err := v.Navigate(url); err != nil {
		v.Fatal(err)
	}
	v.wait(`!document.documentElement.dataset.before && document.readyState === "complete"`)
}

// noneUnheard: no promise was left alone with its error.
func noneUnheard(t *testing.T, w *browser.Watch) {
	t.Helper()
	for _, f := range w.Faults() {
		if strings.Contains(f, "unhandled") {
			t.Error(f)
		}
	}
}

// captured gives a test hold of the running library, as theGo in the worker.
const captured = `
	const run = Go.prototype.run;
	Go.prototype.run = function (instance) { self.theGo = this; return run.call(this, instance); };
	addEventListener("message", e => { if (e.data.includes("the last straw")) self.end(); });
`

// TestLost: whatever ends the library, before it answers or in the midst, the page
// says so and what to do, keeps the order, and works again when it is opened again.
func TestLost(t *testing.T) {
	t.Parallel()
	good, err := whole()
	if err != nil {
		t.Fatal(err)
	}
	// What is kept for a time without a network would hide what the host does.
	keepsNothing := maps.Clone(good)
	keepsNothing["sw.js"] = []byte("// nothing")
	page := serve.Handler(keepsNothing, serve.AnySite)
	const own = `{"version":2,"units":"in","pieces":[{"name":"Mine","art":{"width":"8","height":"10"},"frame":{"face":"1","lip":"1/4"}}]}`
	rows := []struct {
		name   string
		change build.Files
		runs   bool // at first
		why    string
	}{
		{"half a library", build.Files{build.ModuleName: good[build.ModuleName][:len(good[build.ModuleName])/2]}, false, ""},
		{"no library", build.Files{build.ModuleName: nil}, false, "500"},
		{"no glue", build.Files{build.GlueName: nil}, false, ""},
		{"no worker", build.Files{"worker.js": nil}, false, ""},
		{"it exits", end(good, `theGo._resolveExitPromise();`), true, "it ended"},
		{"it has exited", end(good, `theGo.exited = true;`), true, "exited"},
		{"it exits on a question", end(good, `self.fairmiter = () => undefined;`), true, "on a question"},
		{"it traps", end(good, `theGo._inst = {exports: {...theGo._inst.exports, resume() { throw new WebAssembly.RuntimeError("unreachable"); }}};`), true, "unreachable"},
		{"it answers what is no JSON", end(good, `self.fairmiter = () => new Uint8Array([123]);`), true, "could not be read"},
	}
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		var h host
		v, s, w := hosted(t, e, &h)
		for _, row := range rows {
			v.Logf("%s", row.name)
			h.put(page, nil)
			v.goes(s.URL() + "js/start.js") // where the page does not keep its own
			v.eval(`localStorage.setItem("fairmiter.order", arguments[0])`, own)
			h.put(page, row.change)
			v.goes(s.URL())
			name := "Mine"
			if row.runs {
				v.ready()
				v.press(`[data-part-line="frame"]`)
				v.wait(`document.querySelector(".part.open .field.name input")`)
				name = "the last straw"
				v.eval(`const i = document.querySelector(".part.open .field.name input"); i.value = arguments[0]; i.dispatchEvent(new Event("change", {bubbles: true}));`, name)
				v.press(`#views [data-view="cut"]`) // what comes after the last straw
				v.press(`#views [data-view="make"]`)
			}
			v.wait(`document.querySelector("#fault[role=alert] strong")`)
			said := fmt.Sprint(v.eval(`return document.getElementById("fault").textContent`))
			for _, want := range []string{"has stopped", "is kept", "Open the page again", row.why} {
				if !strings.Contains(said, want) || strings.Contains(said, "undefined") {
					t.Errorf("%s: said %q, not %q", row.name, said, want)
				}
			}
			// It stays, and every later question is answered.
			for _, css := range []string{`#views [data-view="cut"]`, `#views [data-view="hang"]`, `#views [data-view="make"]`, `#print`} {
				v.press(css)
				if v.eval(`return document.querySelector("#fault strong").getClientRects().length`) == 0.0 {
					t.Errorf("%s: at %s it is not to be seen", row.name, css)
				}
			}
			v.wait(`JSON.parse(localStorage.getItem("fairmiter.order")).pieces[0].art.width === "8" && localStorage.getItem("fairmiter.order").includes("` + name + `")`)
			h.put(page, nil)
			v.eval(`[...document.querySelectorAll("#fault button")].find(b => b.textContent === "Open the page again").click()`)
			v.wait(`document.body.dataset.ready && document.getElementById("fault").textContent === ""`)
			if got := fmt.Sprint(v.eval(`return localStorage.getItem("fairmiter.order")`)); !strings.Contains(got, name) {
				t.Errorf("%s: kept is %s", row.name, got)
			}
		}
		noneUnheard(t, w)
	})
}

// end changes the worker so that it ends itself when it is told.
func end(good build.Files, script string) build.Files {
	return build.Files{"worker.js": append(bytes.Clone(good["worker.js"]), captured+"self.end = () => { "+script+" };\n"...)}
}

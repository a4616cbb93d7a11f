//go:build !js

package main

import (
	"fmt"
	"net/http"
	"strings"
	"sync"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

const folder = "/shop/tools/bench/"

// around is a page of another, with ours in a frame.
const around = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>A shop</title></head>
<body><p>Work it out here:</p><iframe src="shop/tools/bench/" width="820" height="900" title="bench"></iframe></body></html>`

// framed serves the page in a folder of another page, which shows it in a frame,
// and opens that. It tells the paths that were asked for.
func framed(t *testing.T, e browser.Engine, o browser.Options) (v visit, s *browser.Server, asked func() []string) {
	t.Helper()
	files, err := whole()
	if err != nil {
		t.Fatal(err)
	}
	var mu sync.Mutex
	var paths []string
	inner := http.StripPrefix(strings.TrimSuffix(folder, "/"), serve.Handler(files, serve.AnySite))
	w := browser.NewWatch()
	t.Cleanup(w.Close)
	s, err = browser.Serve(w.Around(http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		mu.Lock()
		paths = append(paths, r.URL.Path)
		mu.Unlock()
		switch {
		case strings.HasPrefix(r.URL.Path, folder):
			inner.ServeHTTP(rw, r)
		case r.URL.Path == "/":
			rw.Header().Set("Content-Type", "text/html; charset=utf-8")
			fmt.Fprint(rw, around)
		default:
			http.NotFound(rw, r)
		}
	})))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Stop() })
	o.Proxy = w.Proxy()
	v = visit{t, browser.Open(t, e, o)}
	if err := v.Navigate(s.URL()); err != nil {
		t.Fatal(err)
	}
	v.wait(frame + `?.body?.dataset.ready`)
	t.Cleanup(func() { noFaults(t, w) })
	return v, s, func() []string {
		mu.Lock()
		defer mu.Unlock()
		return append([]string{}, paths...)
	}
}

// frame is our page's document, seen from the page around it.
const frame = `document.querySelector("iframe").contentDocument`

// TestFrame: in a folder of another page, and in a frame on it, the page works,
// asks for nothing outside its folder, and keeps itself there for the next time
// without a network.
func TestFrame(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v, s, asked := framed(t, e, browser.Options{Width: 1000, Height: 1000})
		v.eval(`const d = ` + frame + `, W = d.defaultView;
			d.querySelector('#main-drawing [data-path="/order/pieces/0/frame/face"]').dispatchEvent(new W.MouseEvent("click", {bubbles: true}));
			const i = d.querySelector("#pad input"); i.value = "2"; i.dispatchEvent(new W.Event("input", {bubbles: true}));`)
		v.wait(strings.Replace(outside, "document", frame, 1) + ` === "18"`)

		// By itself, and then without the server.
		url := strings.TrimSuffix(s.URL(), "/") + folder
		for _, offline := range []bool{false, true} {
			if offline {
				v.wait(`navigator.serviceWorker.controller?.scriptURL === "` + url + `sw.js"`)
				if err := s.Stop(); err != nil {
					t.Fatal(err)
				}
			}
			if err := v.Navigate(url); err != nil {
				t.Fatal(err)
			}
			v.ready()
			v.wait(outside + ` === "18"`) // the order was kept
		}
		for _, path := range asked() {
			if path != "/" && path != "/favicon.ico" && !strings.HasPrefix(path, folder) {
				t.Errorf("asked for %s", path)
			}
		}
	})
}

// wide lists what is wider than its place, at each width of a page.
const wide = `const done = arguments[arguments.length - 1], iframe = document.querySelector("iframe"), found = [];
	(async () => {
		for (const width of [320, 390, 820, 1180, 1440]) {
			iframe.width = width;
			iframe.height = width < 600 ? 844 : 820;
			const d = iframe.contentDocument;
			await new Promise(f => requestAnimationFrame(() => requestAnimationFrame(f)));
			if (d.defaultView.innerWidth !== width) found.push("the page is " + d.defaultView.innerWidth + " wide, not " + width);
			for (const e of [d.documentElement, ...d.querySelectorAll("body, #page, #top, #main, #stage, #side, #cut, #hang, #pad, #working, #foot, #totals, #ticket, #ticket-sheet, .part, .part-line, .cut, .note")]) {
				if (e.clientWidth && e.scrollWidth > e.clientWidth + 1) found.push(width + ": " + (e.id || e.className || e.localName) + " needs " + e.scrollWidth + " of " + e.clientWidth);
			}
			for (const e of d.querySelectorAll("button, input, select, h1, h2, p, dd, .total")) {
				const r = e.getBoundingClientRect();
				if (r.width && !e.closest(".unseen") && (r.left < -1 || r.right > width + 1)) found.push(width + ": " + e.outerHTML.slice(0, 90) + " reaches from " + r.left.toFixed() + " to " + r.right.toFixed());
			}
		}
		done(found);
	})().catch(e => done([String(e)]));`

// TestNarrow: on a phone, a tablet and a desk, upright and lying, nothing on the
// page is wider than the page.
func TestNarrow(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v, _, _ := framed(t, e, browser.Options{Width: 1500, Height: 1000})
		fits := func(what, script, until string) {
			t.Helper()
			v.eval(`const d = ` + frame + `, click = css => d.querySelector(css).dispatchEvent(new d.defaultView.MouseEvent("click", {bubbles: true}));` + script)
			v.wait(strings.ReplaceAll(until, "document", frame))
			found, err := v.EvalAsync(wide)
			if err != nil {
				t.Fatal(err)
			}
			for _, text := range found.([]any) {
				t.Errorf("%s: %v", what, text)
			}
		}
		fits("make", ``, `true`)
		for _, part := range []string{"mat", "Order"} {
			fits(part, `click('[data-part-line="`+part+`"]'); click(".part.open [data-keep=more]");`, `document.querySelector(".part.open .field")`)
		}
		fits("pad", `click('#main-drawing [data-path="/order/pieces/0/art/width"]'); d.querySelector("#pad [data-keep=finer]").click();`, `!document.getElementById("pad").hidden`)
		fits("closed", `[...d.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click();`, `document.getElementById("pad").hidden`)
		fits("working", `click('#main-drawing [data-path="/pieces/0/frame/outside/width"]');`, `!document.getElementById("working").hidden && document.getElementById("fix")`)
		fits("backwards", `d.getElementById("fix").click()`, `document.querySelector("#working .chip")`)
		fits("cut", `click('#views [data-view="cut"]')`, `document.body.dataset.view === "cut"`)
		fits("hang", `click('#views [data-view="hang"]')`, `document.body.dataset.view === "hang"`)
		fits("ticket", `d.getElementById("print").click()`, `document.querySelector("#ticket-sheet svg")`)
		v.eval(`const d = ` + frame + `; d.getElementById("ticket-back").click();`)
		v.wait(frame + `.getElementById("ticket").hidden`)
	})
}

//go:build !js

package main

import (
	"io/fs"
	"os"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

// module is the library as the page gets it, built once.
var module = sync.OnceValues(func() ([2][]byte, error) {
	ctx := contextOfTests
	m, err := build.Module(ctx)
	if err != nil {
		return [2][]byte{}, err
	}
	root, err := build.Root(ctx)
	if err != nil {
		return [2][]byte{}, err
	}
	glue, err := build.Glue(root)
	return [2][]byte{m, glue}, err
})

// served serves a page with the module under watch.
func served(t *testing.T, page fs.FS) (*browser.Server, *browser.Watch) {
	t.Helper()
	parts, err := module()
	if err != nil {
		t.Fatal(err)
	}
	files, err := build.Assemble(page, parts[0], parts[1])
	if err != nil {
		t.Fatal(err)
	}
	return serveFiles(t, files)
}

// serveFiles serves the files of a page under watch.
func serveFiles(t *testing.T, files build.Files) (*browser.Server, *browser.Watch) {
	t.Helper()
	w := browser.NewWatch()
	t.Cleanup(w.Close)
	s, err := browser.Serve(w.Around(serve.Handler(files, serve.AnySite)))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Stop() })
	return s, w
}

func noFaults(t *testing.T, w *browser.Watch) {
	t.Helper()
	if faults := w.Faults(); len(faults) > 0 {
		t.Errorf("seen:\n%s", strings.Join(faults, "\n"))
	}
}

// TestSeam: in every engine the module loads under the policy and answers, also
// after what it cannot understand, and within a bound.
func TestSeam(t *testing.T) {
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		s, w := served(t, os.DirFS("testdata/seam"))
		d := browser.Open(t, e, browser.Options{Proxy: w.Proxy()})
		if err := d.Navigate(s.URL()); err != nil {
			t.Fatal(err)
		}
		if err := d.Wait("globalThis.readyAt", 20*time.Second); err != nil {
			t.Fatal(err)
		}
		eval := func(script string, args ...any) any {
			t.Helper()
			v, err := d.Eval(script, args...)
			if err != nil {
				t.Fatalf("%s: %v", script, err)
			}
			return v
		}
		const order = `const order = JSON.parse('{"version": 1, "units": "in", "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]}');`
		for _, row := range []struct{ name, script, want string }{
			{"hello", `const r = ask({call: "hello", protocol: 1}); return [r.id > 0, r.data.protocol, r.data.english.length > 100].join()`, "true,1,true"},
			{"no bytes", `const text = b => new TextDecoder().decode(b); return [[], [1], ["work"], [new Uint8Array(0), 1], [null], [{length: 9}]].map(a => JSON.parse(text(fairmiter(...a))).problems[0].code).join()`,
				"not_json,not_json,not_json,not_json,not_json,not_json"},
			{"another call", `return ask({call: "paint"}).problems[0].path`, "/call"},
			{"too deep", `return codeOf("brackets")`, "not_json"},
			{"too large", `return codeOf("zeros")`, "too_large"},
			{"work", order + `const r = ask({call: "work", order, views: ["front"]}).data; return [r.plan.pieces[0].frame.outside.width.text, r.drawings.front.slice(0, 4)].join()`, "9 5/8,<svg"},
			{"a drawing", order + `const r = ask({call: "work", order, views: ["front"]}).data; return new DOMParser().parseFromString(r.drawings.front, "image/svg+xml").documentElement.nodeName`, "svg"},
			{"explain", order + `return ask({call: "explain", order, path: "/pieces/0/frame/outside/width"}).data.text`, "outside 9 5/8 = opening 8 1/8 + 2 x (face 1 - lip 1/4)"},
		} {
			if got := eval(row.script); got != row.want {
				t.Errorf("%s: %v, want %q", row.name, got, row.want)
			}
		}

		const timing = `const request = {call: "work", order: ask({call: "hello", protocol: 1}).data.sample, views: arguments[0]};
			for (let i = 0; i < 100; i++) ask(request);
			const times = [];
			for (let i = 0; i < 100; i++) { const t = performance.now(); ask(request); times.push(performance.now() - t); }
			return times.sort((a, b) => a - b)[50]`
		plain, drawn := eval(timing, []string{}), eval(timing, []string{"front"})
		t.Logf("timing: %s ready %.0f ms after navigation; work of the sample %.2f ms, with a drawing %.2f ms (median of 100)", e, eval("return readyAt"), plain, drawn)
		const bound = 50.0 // a key must be answered before one sees it
		if ms, ok := drawn.(float64); !ok || ms > bound {
			t.Errorf("work with a drawing takes %v ms, more than %v", drawn, bound)
		}
		noFaults(t, w)
	})
}

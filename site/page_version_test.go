//go:build !js

package main

import (
	"fmt"
	"io/fs"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

// versioned is the page with its version in three of its files: those that come
// first and last, and the worker.
func versioned(t *testing.T, version string) http.Handler {
	t.Helper()
	good, err := whole()
	if err != nil {
		t.Fatal(err)
	}
	from, err := page()
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{build.SchemaName: {Data: good[build.SchemaName]}}
	if err := fs.WalkDir(from, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(from, name)
		switch name {
		case "index.html":
			data = []byte(strings.Replace(string(data), `<html lang="en">`, `<html lang="en" data-index="`+version+`">`, 1))
		case "js/app.js":
			data = append(data, "\ndocument.documentElement.dataset.app = \""+version+"\";\n"...)
		case "js/engine.js": // what comes in from the worker: its version
			data = []byte(strings.Replace(string(data), "let reply;", "let reply;\n\tif (text.length < 9) return void (document.documentElement.dataset.worker = text);", 1))
		case "worker.js":
			data = append(data, "\nready.then(() => postMessage(\""+version+"\"));\n"...)
		}
		files[name] = &fstest.MapFile{Data: data}
		return err
	}); err != nil {
		t.Fatal(err)
	}
	made, err := build.Assemble(files, good[build.ModuleName], good[build.GlueName])
	if err != nil {
		t.Fatal(err)
	}
	return serve.Handler(made, serve.AnySite)
}

// TestVersions: a new version is fetched beside the old one, which stays whole
// until the page has been closed, also where fetching it fails; and takes over
// then, with or without a network.
func TestVersions(t *testing.T) {
	t.Parallel()
	one, two, three := versioned(t, "one"), versioned(t, "two"), versioned(t, "three")
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		var h host
		h.put(one, nil)
		v, s, w := hosted(t, e, &h)
		const seen = `const d = document.documentElement.dataset; return [d.index, d.app, d.worker].join()`
		open := func() string {
			v.Helper()
			v.goes(s.URL())
			v.ready()
			v.wait(`document.documentElement.dataset.worker`)
			return fmt.Sprint(v.eval(seen))
		}
		is := func(when, version string) {
			v.Helper()
			if got := open(); got != strings.Join([]string{version, version, version}, ",") {
				t.Fatalf("%s: the page is of %s, want %s", when, got, version)
			}
		}
		async := func(script string) string {
			v.Helper()
			got, err := v.EvalAsync(`const done = arguments[arguments.length - 1]; (async () => {` + script + `})().then(done, e => done(String(e)))`)
			if err != nil {
				v.Fatal(err)
			}
			return fmt.Sprint(got)
		}
		stores := func() string { v.Helper(); return async(`return (await caches.keys()).length`) }
		offline := func(version string) {
			v.Helper()
			if err := s.Stop(); err != nil {
				t.Fatal(err)
			}
			is("without a network", version)
			if err := s.Start(); err != nil {
				t.Fatal(err)
			}
		}
		// closed leaves the page, so that nothing holds its worker: a page that hears
		// when it is left is not held ready for going back.
		closed := func() {
			v.Helper()
			v.eval(`addEventListener("unload", () => {})`)
			if err := v.Navigate("about:blank"); err != nil {
				t.Fatal(err)
			}
			time.Sleep(500 * time.Millisecond)
		}
		is("a first visit", "one")
		v.wait(`navigator.serviceWorker.controller`)
		offline("one")

		// A version of which a file cannot be had: nothing of it stays.
		h.put(two, build.Files{"style/look.css": nil})
		is("with a broken version at the host", "one")
		failed := async(`const there = await navigator.serviceWorker.ready;
			return there.update().then(now => new Promise(end => {
				const worker = now.installing;
				if (!worker) return end(now.waiting ? "waits" : "redundant");
				worker.onstatechange = () => end(worker.state);
			}), () => "redundant");`)
		if failed != "redundant" || stores() != "1" {
			t.Fatalf("with a file that fails the new version is %s; %s stores", failed, stores())
		}
		closed()
		is("opened again", "one")
		offline("one")

		// A host in the midst of a change: the list is of another version.
		h.put(three, build.Files{"sw.js": workerOf(two)})
		is("with two versions at the host", "one")
		async(`await (await navigator.serviceWorker.ready).update().catch(() => {});`)
		closed()
		is("with two versions at the host, opened again", "one")

		// The new version waits, whole, until the page is closed.
		h.put(two, nil)
		is("with a new version at the host", "one")
		async(`await (await navigator.serviceWorker.ready).update();`)
		v.waitsFor()
		is("while the new version waits", "one")
		offline("one")
		closed()
		is("opened again, with the new version", "two")
		offline("two")
		if got := stores(); got != "1" {
			t.Errorf("%s stores are left", got)
		}
		noneUnheard(t, w)
	})
}

// waitsFor waits until a new version waits.
func (v visit) waitsFor() {
	v.Helper()
	v.eval(`navigator.serviceWorker.getRegistration().then(r => {
		const look = () => { if (r.waiting) document.body.dataset.waiting = "yes"; else setTimeout(look, 50); };
		look();
	});`)
	v.wait(`document.body.dataset.waiting`)
}

// workerOf is the service worker that a page has.
func workerOf(page http.Handler) []byte {
	w := httptest.NewRecorder()
	r := httptest.NewRequest(http.MethodGet, "/sw.js", nil)
	page.ServeHTTP(w, r)
	return w.Body.Bytes()
}

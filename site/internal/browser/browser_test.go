//go:build !js

package browser_test

import (
	"bytes"
	"errors"
	"image/png"
	"net/http"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

// small serves the small page of testdata as the real one is served.
func small(t *testing.T, change func(build.Files)) http.Handler {
	t.Helper()
	files, err := build.Assemble(os.DirFS("testdata/page"), []byte("no module"), []byte("// no glue"))
	if err != nil {
		t.Fatal(err)
	}
	if change != nil {
		change(files)
	}
	return serve.Handler(files, serve.AnySite)
}

// open serves the small page and opens it.
func open(t *testing.T, e browser.Engine, o browser.Options, change func(build.Files)) (browser.Driver, *browser.Watch) {
	t.Helper()
	w := browser.NewWatch()
	t.Cleanup(w.Close)
	s, err := browser.Serve(w.Around(small(t, change)))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Stop() })
	o.Proxy = w.Proxy()
	d := browser.Open(t, e, o)
	if err := d.Navigate(s.URL()); err != nil {
		t.Fatal(err)
	}
	return d, w
}

func eval(t *testing.T, d browser.Driver, script string, args ...any) any {
	t.Helper()
	v, err := d.Eval(script, args...)
	if err != nil {
		t.Fatalf("%s: %v", script, err)
	}
	return v
}

// TestDrive does everything that a driver can in every engine.
func TestDrive(t *testing.T) {
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		begin := time.Now()
		d, w := open(t, e, browser.Options{Width: 900, Height: 700}, nil)
		t.Logf("timing: %s started and at the page in %v", e, time.Since(begin).Round(time.Millisecond))

		const words = `22 5/8 "½"`
		if err := d.Type("#words", "x"+browser.KeyBackspace+words); err != nil {
			t.Fatal(err)
		}
		if err := d.Click("#say"); err != nil {
			t.Fatal(err)
		}
		if err := d.Wait(`document.getElementById("said").textContent !== ""`, 5*time.Second); err != nil {
			t.Fatal(err)
		}
		if got := eval(t, d, `return document.getElementById(arguments[0]).textContent + arguments[1]`, "said", 7); got != words+"7" {
			t.Errorf("said %q", got)
		}
		if got, err := d.EvalAsync(`const done = arguments[arguments.length - 1]; setTimeout(() => done([arguments[0], null]), 10)`, 5); err != nil {
			t.Error(err)
		} else if list, ok := got.([]any); !ok || len(list) != 2 || list[0] != 5.0 {
			t.Errorf("later came %v", got)
		}
		if _, err := d.Eval("return nothing.there"); err == nil {
			t.Error("a script that fails is no error")
		}
		if err := d.Click("#nowhere"); err == nil || !strings.Contains(err.Error(), "#nowhere") {
			t.Errorf("clicked nothing: %v", err)
		}

		if err := d.Resize(640, 480); err != nil {
			t.Error(err)
		}
		picture, err := d.Screenshot()
		if err != nil {
			t.Fatal(err)
		}
		if c, err := png.DecodeConfig(bytes.NewReader(picture)); err != nil || c.Width != 640 || c.Height != 480 {
			t.Errorf("the picture is %d x %d (%v)", c.Width, c.Height, err)
		}
		eval(t, d, `location.hash = "on"`)
		if err := d.Back(); err != nil {
			t.Error(err)
		}
		if err := d.Wait(`location.hash === ""`, 5*time.Second); err != nil {
			t.Error(err)
		}
		if err := d.Slow(4); (e == browser.Chromium) != (err == nil) || err != nil && !errors.Is(err, browser.ErrCannot) {
			t.Errorf("slowing: %v", err)
		}
		if faults := w.Faults(); len(faults) > 0 {
			t.Errorf("seen:\n%s", strings.Join(faults, "\n"))
		}
	})
}

// TestWatch: what must not be is seen in every engine.
func TestWatch(t *testing.T) {
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		d, w := open(t, e, browser.Options{}, func(files build.Files) {
			files["index.html"] = bytes.Replace(files["index.html"], []byte("<h1>"), []byte(`<h1 style="color:red">`), 1)
			files["page.js"] = []byte(`"use strict"; console.error("on purpose"); fetch("gone.json"); setTimeout(() => { throw new Error("thrown") }, 1);`)
		})
		if err := d.Wait("true", time.Second); err != nil {
			t.Fatal(err)
		}
		var seen string
		wanted := []string{"style-src", "console.error: on purpose", "gone.json gave 404", "thrown"}
		for range 20 {
			seen = strings.Join(w.Faults(), "\n")
			if all(seen, wanted) {
				break
			}
		}
		for _, want := range wanted {
			if !strings.Contains(seen, want) {
				t.Errorf("did not see %q in\n%s", want, seen)
			}
		}
	})
}

// TestWayOut: a request that leaves this machine is seen in every engine. The
// page has no policy here, which would stop it before.
func TestWayOut(t *testing.T) {
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		w := browser.NewWatch()
		defer w.Close()
		s, err := browser.Serve(http.HandlerFunc(func(rw http.ResponseWriter, _ *http.Request) {
			rw.Header().Set("Content-Type", "text/html")
			rw.Write([]byte(`<!DOCTYPE html><title>out</title><img src="http://outside.example/a.png" alt="">`))
		}))
		if err != nil {
			t.Fatal(err)
		}
		defer s.Stop()
		d := browser.Open(t, e, browser.Options{Proxy: w.Proxy()})
		if err := d.Navigate(s.URL()); err != nil {
			t.Fatal(err)
		}
		for range 20 {
			if all(strings.Join(w.Faults(), "\n"), []string{"outside.example"}) {
				return
			}
		}
		t.Error("no request was seen")
	})
}

// TestPhone: Chromium as a phone.
func TestPhone(t *testing.T) {
	browser.Need(t, browser.Chromium)
	d, _ := open(t, browser.Chromium, browser.Options{Width: 390, Height: 844, Mobile: true, Dark: true, Still: true}, func(files build.Files) {
		files["index.html"] = bytes.Replace(files["index.html"], []byte("<title>"), []byte(`<meta name="viewport" content="width=device-width"><title>`), 1)
	})
	got := eval(t, d, `return [innerWidth, devicePixelRatio, navigator.maxTouchPoints > 0, matchMedia("(prefers-color-scheme: dark)").matches, matchMedia("(prefers-reduced-motion)").matches].join()`)
	if got != "390,2,true,true,true" {
		t.Errorf("width, ratio, touch, dark, still: %v", got)
	}
}

// TestRefusals: what cannot be is said and leaves nothing behind.
func TestRefusals(t *testing.T) {
	if _, err := browser.Start("mosaic", browser.Options{}); err == nil || !strings.Contains(err.Error(), "mosaic") {
		t.Errorf("an unknown engine: %v", err)
	}
	t.Setenv("PATH", t.TempDir())
	for _, e := range browser.Engines() {
		if missing := browser.Missing(e); !strings.Contains(missing, "apt-get install") {
			t.Errorf("%s on an empty machine: %q", e, missing)
		}
		if _, err := browser.Start(e, browser.Options{}); err == nil {
			t.Errorf("%s started on an empty machine", e)
		}
	}
}

func all(text string, parts []string) bool {
	for _, p := range parts {
		if !strings.Contains(text, p) {
			return false
		}
	}
	return true
}

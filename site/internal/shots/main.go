//go:build !js

// Shots takes pictures of the page for the eye: at four sizes, in each view, light
// and dark, with what opens in it open.
//
//	go run ./site/internal/shots DIR
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/browser"
	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

// sizes are a phone, a tablet upright and across, and a desk.
var sizes = []struct{ width, height int }{{390, 844}, {820, 1180}, {1180, 820}, {1440, 900}}

// press is a script that presses the first of what a selector finds.
func press(css string) string {
	return `document.querySelector(` + "`" + css + "`" + `).dispatchEvent(new MouseEvent("click", {bubbles: true}));`
}

// typed is a script that types into the pad.
func typed(text string) string {
	return `{const i = document.querySelector("#pad input"); i.value = "` + text + `"; i.dispatchEvent(new Event("input", {bubbles: true}));}`
}

// wait is a step in which what was asked for comes.
const wait = `return 0`

// scenes are what is done on a fresh page before its picture is taken.
var scenes = []struct {
	name  string
	steps []string
}{
	{"make", nil},
	{"part", []string{press(`[data-part-line="mat"]`)}},
	{"pad", []string{press(`#main-drawing [data-path$="/frame/face"]`), typed("1 3/8")}},
	{"unread", []string{press(`#main-drawing [data-path$="/art/width"]`), typed("9 3/")}},
	{"working", []string{press(`#main-drawing [data-path="/pieces/0/frame/outside/width"]`)}},
	{"solve", []string{press(`#main-drawing [data-path="/pieces/0/frame/outside/width"]`), press("#fix"), `document.querySelector("#want").value = "17";` + press("#solve")}},
	{"wrong", []string{press(`[data-part-line="frame"]`), press(`.part.open button[data-path$="/frame/lip"]`), typed("1/16"),
		`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`}},
	{"section", []string{press(`#thumb-section button`)}},
	{"cut", []string{press(`#views [data-view="cut"]`)}},
	{"hang", []string{press(`#views [data-view="hang"]`)}},
	{"ticket", []string{press(`#print`)}},
	{"order", []string{press(`[data-part-line="Order"]`)}},
	{"octagon", []string{press(`[data-part-line="Order"]`), press(`[data-example="octagon-mirror"]`), wait, press(`[data-part-line="art"]`), wait}},
	{"octagon-rails", []string{press(`[data-part-line="Order"]`), press(`[data-example="octagon-mirror"]`), wait, wait, press(`#thumb-rails button`), wait}},
	{"octagon-cut", []string{press(`[data-part-line="Order"]`), press(`[data-example="octagon-mirror"]`), wait, press(`#views [data-view="cut"]`), wait}},
	{"wide-bottom", []string{press(`[data-part-line="Order"]`), press(`[data-example="wide-bottom"]`), wait, press(`[data-part-line="frame"]`), wait}},
	{"wide-bottom-cut", []string{press(`[data-part-line="Order"]`), press(`[data-example="wide-bottom"]`), wait, press(`#views [data-view="cut"]`), wait}},
	{"canted", []string{press(`[data-part-line="Order"]`), press(`[data-example="canted-box"]`), wait, press(`[data-part-line="frame"]`), wait}},
	{"canted-cut", []string{press(`[data-part-line="Order"]`), press(`[data-example="canted-box"]`), wait, press(`#views [data-view="cut"]`), wait}},
	{"edges", []string{press(`[data-part-line="art"]`), wait, `{const s = document.querySelector(".part.open [data-shape=outline] select"); s.value = "edges"; s.dispatchEvent(new Event("change", {bubbles: true}));}`, wait}},
	{"lost", []string{`import("./js/fault.js").then(f => f.gone("The part of the page that works out the numbers has stopped.", "unreachable"));`}},
	{"metric", []string{press(`#units [data-unit="mm"]`), press(`#main-drawing [data-path$="/art/width"]`)}},
}

func main() {
	only := flag.String("only", "", "take this scene alone")
	flag.Parse()
	if err := run(flag.Arg(0), *only); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func run(dir, only string) error {
	if dir == "" {
		return errors.New("into which folder?")
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	files, err := build.Site(context.Background(), os.DirFS("site/page"))
	if err != nil {
		return err
	}
	watch := browser.NewWatch()
	defer watch.Close()
	server, err := browser.Serve(watch.Around(serve.Handler(files, serve.AnySite)))
	if err != nil {
		return err
	}
	defer server.Stop()
	for _, look := range []struct {
		name    string
		options browser.Options
	}{{"light", browser.Options{Still: true}}, {"dark", browser.Options{Still: true, Dark: true}}, {"contrast", browser.Options{Still: true, Contrast: true}}} {
		if err := take(dir, only, look.name, look.options, server.URL(), watch.Proxy()); err != nil {
			return err
		}
	}
	for _, fault := range watch.Faults() {
		fmt.Fprintln(os.Stderr, "seen:", fault)
	}
	return nil
}

// take takes every scene of one look; of the others than the light one only some.
func take(dir, only, look string, o browser.Options, url, proxy string) error {
	o.Proxy = proxy
	d, err := browser.Start(browser.Chromium, o)
	if err != nil {
		return err
	}
	defer d.Close()
	for i, size := range sizes {
		if look != "light" && i != 0 && i != 2 {
			continue
		}
		if err := d.Resize(size.width, size.height); err != nil {
			return err
		}
		for _, scene := range scenes {
			if only != "" && scene.name != only {
				continue
			}
			if err := play(d, url, scene.steps); err != nil {
				return fmt.Errorf("%s at %d: %w", scene.name, size.width, err)
			}
			if wide, _ := d.Eval("return document.documentElement.scrollWidth - innerWidth"); wide != 0.0 {
				fmt.Fprintf(os.Stderr, "%s at %d is %v too wide\n", scene.name, size.width, wide)
			}
			picture, err := d.Screenshot()
			if err != nil {
				return err
			}
			name := filepath.Join(dir, fmt.Sprintf("%s-%dx%d-%s.png", scene.name, size.width, size.height, look))
			if err := os.WriteFile(name, picture, 0o644); err != nil {
				return err
			}
		}
	}
	return nil
}

// play opens the page as on a first visit and takes the steps of a scene.
func play(d browser.Driver, url string, steps []string) error {
	const ready = "document.body.dataset.ready"
	if err := d.Navigate(url); err != nil {
		return err
	}
	if _, err := d.Eval("localStorage.clear()"); err != nil {
		return err
	}
	if err := d.Navigate(url); err != nil {
		return err
	}
	if err := d.Wait(ready, 20*time.Second); err != nil {
		return err
	}
	for _, step := range steps {
		time.Sleep(250 * time.Millisecond) // for the answer to the step before
		if _, err := d.Eval(step); err != nil {
			return err
		}
	}
	time.Sleep(450 * time.Millisecond)
	return nil
}

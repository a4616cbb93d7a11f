//go:build !js

package main

import (
	"bytes"
	"fmt"
	"maps"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// TestPolicy: what the page must not do is seen when it does it, in every engine:
// in the page, and in its worker. That the page does none of it is seen in every
// test that opens it.
func TestPolicy(t *testing.T) {
	t.Parallel()
	good, err := whole()
	if err != nil {
		t.Fatal(err)
	}
	files := maps.Clone(good)
	add := func(name, script string) { files[name] = append(bytes.Clone(files[name]), script...) }
	add("js/app.js", `
		document.body.setAttribute("style", "color: red");
		new Image().src = "http://pictures.example/a.png";
		try { new Function("return 1")(); } catch {}
		document.body.append(Object.assign(document.createElement("script"), {textContent: "globalThis.owned = 1"}));
		setTimeout(() => fetch("http://outside.example/page").catch(() => {}), 1);`)
	add("worker.js", `
		fetch("http://outside.example/worker").catch(() => {});`)
	delete(files, "sw.js") // which must not keep it
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		s, w := serveFiles(t, files)
		v := visit{t, browser.Open(t, e, browser.Options{Proxy: w.Proxy()})}
		if err := v.Navigate(s.URL()); err != nil {
			t.Fatal(err)
		}
		v.ready()
		v.until("not seen", func() (missed []string) {
			faults := w.Faults()
			for _, want := range [][]string{{"style-src"}, {"img-src", "pictures.example"}, {"script-src", "eval"}, {"script-src", "inline"}, {"connect-src", "outside.example"}, {"connect-src", "worker.js"}} {
				// WebKit stops what a worker must not do, and tells nobody; what gets
				// out all the same the watch sees at its proxy.
				found := e == browser.WebKit && want[len(want)-1] == "worker.js"
				for _, f := range faults {
					found = found || strings.Contains(f, want[0]) && strings.Contains(f, want[len(want)-1])
				}
				if !found {
					missed = append(missed, fmt.Sprint(want, " in\n", strings.Join(faults, "\n")))
				}
			}
			return missed
		})
		if v.eval(`return globalThis.owned ?? ""`) != "" {
			t.Error("a script in the page ran")
		}
	})
}

// keys types keys to what has the focus.
func (v visit) keys(text string) {
	v.Helper()
	if err := v.Type(":focus", text); err != nil {
		v.Fatal(err)
	}
}

// TestKeyboard: all that a dimension offers is reached by keys alone.
func TestKeyboard(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		const focus = `document.activeElement?.dataset?.path`
		const width, height = "/order/pieces/0/art/width", "/order/pieces/0/art/height"
		v.eval(`document.getElementById("print").focus()`)
		reached := false
		for range 40 {
			v.keys(browser.KeyTab)
			if reached = v.eval("return "+focus) == width; reached {
				break
			}
		}
		if !reached {
			t.Fatalf("40 tabs lead to %v", v.eval(`return document.activeElement.outerHTML.slice(0, 200)`))
		}
		const open = `!document.getElementById("pad").hidden && document.activeElement === document.querySelector("#pad input") && `
		v.keys(browser.KeyEnter)
		v.wait(open + `document.getElementById("pad-name").textContent === "Picture width"`)
		v.keys("10 3/4")
		v.wait(outside + ` === "17 1/4"`)
		v.keys(browser.KeyEnter)
		v.wait(open + `document.getElementById("pad-name").textContent === "Picture height"`)
		v.keys(browser.KeyEscape)
		v.wait(`document.getElementById("pad").hidden && ` + focus + ` === "` + height + `"`)

		// A number that was worked out: its working, and back.
		v.eval(`document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').focus()`)
		v.keys(browser.KeyEnter)
		v.wait(`!document.getElementById("working").hidden && document.getElementById("working").contains(document.activeElement)`)
		v.keys(browser.KeyEscape)
		v.wait(`document.getElementById("working").hidden`)

		v.eval(`document.getElementById("print").focus()`)
		v.keys(browser.KeyEnter)
		v.wait(`document.activeElement === document.getElementById("ticket-print")`)
		v.keys(browser.KeyEscape)
		v.wait(`document.getElementById("ticket").hidden`)
	})
}

// TestNewcomer: from one's own picture to the ticket, on a phone.
func TestNewcomer(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.Chromium)
	v := visits(t, browser.Chromium, browser.Options{Width: 390, Height: 844, Mobile: true})
	click := func(css string) {
		t.Helper()
		v.eval(`document.querySelector(arguments[0]).scrollIntoView({block: "center"})`, css)
		if err := v.Click(css); err != nil {
			t.Fatal(err)
		}
	}
	named := func(where, name string) {
		t.Helper()
		v.eval(`[...document.querySelectorAll(arguments[0] + " button")].find(b => b.textContent === arguments[1]).id = "named"`, where, name)
		click("#named")
		v.eval(`document.getElementById("named")?.removeAttribute("id")`)
	}
	click(`[data-part-line="Order"]`)
	v.wait(`document.querySelector(".part.open .field")`)
	named(".part.open", "Start from my picture")
	v.wait(`!document.getElementById("pad").hidden && document.getElementById("pad-name").textContent === "Picture width"`)
	for _, key := range []string{"8"} {
		named("#pad .keys", key)
	}
	named("#pad .keys", "1/2")
	named("#pad .pad-end", "Next")
	v.wait(`document.getElementById("pad-name").textContent === "Picture height"`)
	named("#pad .keys", "1")
	named("#pad .keys", "1")
	named("#pad .pad-end", "Done")
	v.wait(`document.getElementById("pad").hidden`)
	click(`#add [data-add="mat/under/0"]`)
	v.wait(`document.querySelector('[data-part-line="mat/under/0"][aria-expanded=true]')`)

	w := worked(t, sampleWith(t, func(order, piece map[string]any) {
		delete(order, "job")
		delete(piece, "name")
		art := piece["art"].(map[string]any)
		art["width"], art["height"] = "8 1/2", "11"
		piece["mat"].(map[string]any)["under"] = []any{map[string]any{}}
	}))
	for _, view := range []string{"cut", "hang", "make"} {
		click(`#views [data-view="` + view + `"]`)
		v.wait(`document.body.dataset.view === "` + view + `"`)
		v.holds(view, w)
		if got := v.eval(`return document.documentElement.scrollWidth`); got != 390.0 {
			t.Errorf("%s is %v wide", view, got)
		}
	}
	v.holdsTicket(w)
}

// TestAccessibleLooks runs axe-core on a phone, in the dark and with more
// contrast, over all that can be open.
func TestAccessibleLooks(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.Chromium)
	script := axe(t)
	for _, look := range []struct {
		name    string
		options browser.Options
		query   string
	}{
		{"light", browser.Options{}, `(prefers-color-scheme: light)`},
		{"dark", browser.Options{Dark: true}, `(prefers-color-scheme: dark)`},
		{"contrast", browser.Options{Contrast: true}, `(prefers-contrast: more)`},
		{"dark contrast", browser.Options{Dark: true, Contrast: true}, `(prefers-color-scheme: dark) and (prefers-contrast: more)`},
	} {
		t.Run(look.name, func(t *testing.T) {
			t.Parallel()
			o := look.options
			o.Width, o.Height, o.Mobile, o.Still = 390, 844, true, true
			v := visits(t, browser.Chromium, o)
			if v.eval(`return matchMedia(arguments[0]).matches`, look.query) != true {
				t.Fatalf("not %s", look.query)
			}
			v.accessible("make", script)
			v.press(`[data-part-line="mat"]`)
			v.wait(`document.querySelector(".part.open .field")`)
			v.accessible("part", script)
			v.press(`#main-drawing [data-path="/order/pieces/0/art/width"]`)
			v.wait(`!document.getElementById("pad").hidden`)
			v.eval(typing, "9 3/")
			v.wait(`document.getElementById("pad-wrong").textContent !== ""`)
			v.accessible("pad", script)
			v.eval(typing, "9 3/4")
			v.wait(`document.getElementById("pad-wrong").textContent === ""`)
			v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
			v.wait(`document.getElementById("pad").hidden`)
			v.press(`#main-drawing [data-path="/pieces/0/frame/outside/width"]`)
			v.wait(`!document.getElementById("working").hidden && document.getElementById("fix")`)
			v.press("#fix")
			v.wait(`document.querySelector("#working .chip")`)
			v.accessible("working", script)
			v.press("#print")
			v.wait(`document.querySelector("#ticket-sheet .ticket-piece svg")`)
			v.accessible("ticket", script)
		})
	}
}

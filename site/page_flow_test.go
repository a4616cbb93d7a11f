//go:build !js

package main

import (
	"fmt"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// Parts of the scripts below.
const (
	// typing types arguments[0] into the open pad.
	typing = `const i = document.querySelector("#pad input"); i.value = arguments[0]; i.dispatchEvent(new Event("input", {bubbles: true}));`
	// outside is the outside width as the large drawing has it.
	outside = `document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/width"]').textContent.trim()`
)

// desk opens the page in Chromium on a wide screen.
func desk(t *testing.T) visit {
	browser.Need(t, browser.Chromium)
	return visits(t, browser.Chromium, browser.Options{Width: 1180, Height: 820, Still: true})
}

// TestCutFollows: an edit changes the list of cuts, and a cut that comes out
// otherwise than it was ticked is to be cut again.
func TestCutFollows(t *testing.T) {
	t.Parallel()
	v := desk(t)
	const rails = `document.querySelector('#cut-list [data-path="/pieces/0/frame/horizontal/long_point"]').textContent`
	v.press(`#views [data-view="cut"]`)
	v.wait(rails + ` === "16 1/4"`)
	v.eval(`document.querySelector("#cut-list .tick").click()`)
	v.wait(`document.querySelectorAll("#cut-list .done").length === 1`)
	v.press(`#views [data-view="make"]`)
	v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
	v.eval(typing, "2")
	v.wait(outside + ` === "18"`)
	v.press(`#views [data-view="cut"]`)
	v.wait(rails + ` === "18"`)
	v.wait(`document.querySelectorAll("#cut-list .done").length === 0`)
}

// TestUnread: what cannot be read yet is said at the pad, and the drawing stays
// as it was; what can be read again mends it.
func TestUnread(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.press(`#main-drawing [data-path="/order/pieces/0/art/width"]`)
	v.eval(typing, "9 3/")
	v.wait(`document.getElementById("pad-wrong").textContent.includes("slash")`)
	v.wait(`document.querySelector("#main-drawing.stale") && ` + outside + ` === "16 1/4"`)
	v.eval(typing, "10 3/4")
	v.wait(`document.getElementById("pad-wrong").textContent === "" && !document.querySelector("#main-drawing.stale") && ` + outside + ` === "17 1/4"`)
}

// TestBack: going back undoes the last step into something.
func TestBack(t *testing.T) {
	t.Parallel()
	v := desk(t)
	back := func() {
		t.Helper()
		if err := v.Back(); err != nil {
			t.Fatal(err)
		}
	}
	v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
	v.eval(typing, "2")
	v.wait(outside + ` === "18"`)
	v.eval(`document.querySelector("#pad input").dispatchEvent(new KeyboardEvent("keydown", {key: "Escape", bubbles: true}))`)
	v.wait(`document.getElementById("pad").hidden`)
	v.press(`#views [data-view="hang"]`)
	back()
	v.wait(`document.body.dataset.view === "make" && ` + outside + ` === "18"`)
	back()
	v.wait(outside + ` === "16 1/4"`)
	v.wait(`JSON.parse(localStorage.getItem("fairmiter.order")).pieces[0].frame.face === "1 1/8"`)
}

// turns asks, under an open working, which value of a field makes the figure so much.
func (v visit) turns(free, want string) {
	v.Helper()
	v.press("#fix")
	field := `document.querySelector('#working input[value="` + free + `"]')`
	v.wait(field)
	v.eval(field + `.click(); document.getElementById("want").value = "` + want + `"; document.getElementById("solve").click();`)
}

// TestBackwards: from a number that was worked out to the field that makes it
// come out otherwise.
func TestBackwards(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.press(`#main-drawing [data-path="/pieces/0/frame/outside/width"]`)
	v.wait(`document.querySelector('#working [data-term="/order/pieces/0/frame/face"]')`)
	v.turns("/pieces/0/mat/borders/left", "17")
	v.wait(`document.querySelector("#working [data-use]")`)
	v.press("#working [data-use]")
	v.wait(outside + ` === "17"`)
	const borders = `JSON.parse(localStorage.getItem("fairmiter.order")).pieces[0].mat.borders`
	v.wait(borders + `.left === ` + borders + `.right && ` + borders + `.top === "2 1/4"`)
}

// TestBackwardsNearest: of a question without an answer the nearest is what the
// library worked: the border below stays as much wider as it was.
func TestBackwardsNearest(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.press(`#main-drawing [data-path="/pieces/0/frame/outside/height"]`)
	v.wait(`document.querySelector('#working [data-term]')`)
	v.turns("/pieces/0/mat/borders/top", "1")
	v.wait(`document.querySelector("#working .answer")`)
	said := fmt.Sprint(v.eval(`return document.querySelector("#working .answer span").textContent`))
	v.press("#working [data-use]")
	const borders = `JSON.parse(localStorage.getItem("fairmiter.order")).pieces[0].mat.borders`
	v.wait(borders + `.top === "0 mm"`)
	if got := v.eval(`return ` + borders + `.bottom`); got != "12.7 mm" { // 2 3/4 - 2 1/4
		t.Errorf("the border below is %v", got)
	}
	const outside = `document.querySelector('#main-drawing [data-path="/pieces/0/frame/outside/height"]').textContent.trim()`
	v.wait(outside + ` === "16"`) // window 13 1/4, borders 1/2, two faces of 1 1/8
	if !strings.HasSuffix(said, " gives 16 in.") {
		t.Errorf("said %q", said)
	}
}

// TestParts: every part that can be added can be opened and taken away, and every
// field that an order can have there has a control.
func TestParts(t *testing.T) {
	t.Parallel()
	v := desk(t)
	added := v.eval(`return [...document.querySelectorAll("#add [data-add]")].map(b => b.dataset.add)`).([]any)
	if len(added) == 0 {
		t.Fatal("nothing can be added")
	}
	for _, part := range added {
		line := fmt.Sprintf(`[data-part-line="%s"]`, part)
		v.press(fmt.Sprintf(`#add [data-add="%s"]`, part))
		v.wait(`document.querySelector('` + line + `[aria-expanded=true]') && document.querySelector(".part.open .field")`)
		v.wait(`!document.querySelector("#main-drawing.stale")`)
		v.press(`.part.open .part-end .away`)
		v.wait(`!document.querySelector('#parts ` + line + `')`)
	}
	v.press(`[data-part-line="frame"]`)
	v.press(`.part.open [data-keep=more]`)
	v.wait(`document.querySelectorAll(".part.open .field").length === 13`) // eleven fields, and whether the rails differ or slope
}

// TestOffline: once seen, the page opens and works without its server, in every
// engine.
func TestOffline(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		files, err := whole()
		if err != nil {
			t.Fatal(err)
		}
		s, w := serveFiles(t, files)
		v := visit{t, browser.Open(t, e, browser.Options{Width: 820, Height: 1180, Proxy: w.Proxy()})}
		if err := v.Navigate(s.URL()); err != nil {
			t.Fatal(err)
		}
		v.ready()
		v.wait(`navigator.serviceWorker.controller`)
		if err := s.Stop(); err != nil {
			t.Fatal(err)
		}
		v.eval(`document.body.dataset.online = "yes"`) // a driver may come back before the page has gone
		if err := v.Navigate(s.URL()); err != nil {
			t.Fatal(err)
		}
		v.wait(`document.body.dataset.online === undefined && document.body.dataset.ready`)
		v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
		v.eval(typing, "2")
		v.wait(outside + ` === "18"`)
	})
}

// TestClose: what was changed in a part stays when the part is closed, and a part
// in which nothing was changed leaves nothing behind.
func TestClose(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.press(`[data-part-line="frame"]`)
	v.press(`.part.open button[data-path$="/frame/face"]`)
	v.eval(typing, "2")
	v.wait(outside + ` === "18"`)
	v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
	v.wait(`document.getElementById("pad").hidden && document.querySelector(".part.open")`)
	v.press(`[data-part-line="frame"]`)
	v.wait(`!document.querySelector(".part.open") && ` + outside + ` === "18"`)
	v.wait(`JSON.parse(localStorage.getItem("fairmiter.order")).pieces[0].frame.face === "2"`)
	v.press(`[data-part-line="mat"]`)
	v.wait(`document.querySelector(".part.open")`)
	v.press(`[data-part-line="mat"]`)
	v.wait(`!document.querySelector(".part.open") && ` + outside + ` === "18"`)
}

// TestBackDraws: going back to another view, or to other units, draws what is then
// there.
func TestBackDraws(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.press(`#views [data-view="cut"]`)
	v.press(`#units [data-unit="mm"]`)
	v.press(`#views [data-view="make"]`)
	v.wait(outside + ` === "413"`)
	for range 3 {
		if err := v.Back(); err != nil {
			t.Fatal(err)
		}
	}
	v.wait(`document.body.dataset.view === "make" && ` + outside + ` === "16 1/4"`)
}

// TestCutWarns: whatever does not go in is said where one cuts.
func TestCutWarns(t *testing.T) {
	t.Parallel()
	v := desk(t)
	home := fmt.Sprint(v.eval(`return location.href`))
	for _, to := range []string{home + "sample.json", home} {
		if err := v.Navigate(to); err != nil {
			t.Fatal(err)
		}
		if to != home { // where the page does not keep its own
			v.eval(`localStorage.setItem("fairmiter.order", JSON.stringify({version: 2, units: "in", pieces: [{art: {width: "9", height: "12"}, mount: {size: {width: "30", height: "40"}}, frame: {face: "1", lip: "1/4"}}]}))`)
		}
	}
	v.ready()
	v.press(`#views [data-view="cut"]`)
	v.wait(`document.getElementById("cut-wait").textContent.includes("Do not cut") && document.querySelector('#cut-notes [data-code="fit.does_not_go_in"]')`)
}

// TestManySteps: more steps than a browser takes in a while are taken all the same.
func TestManySteps(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.WebKit)
	v := visits(t, browser.WebKit, browser.Options{Width: 1180, Height: 820})
	v.eval(`for (let i = 0; i < 151; i++) document.querySelector('#units [data-unit="' + (i % 2 ? "in" : "mm") + '"]').click();
		for (let i = 0; i < 151; i++) document.querySelector('#views [data-view="' + (i % 2 ? "make" : "cut") + '"]').click();`)
	v.wait(`document.body.dataset.view === "cut"`)
	v.press(`#views [data-view="make"]`)
	v.wait(`document.body.dataset.view === "make"`)
}

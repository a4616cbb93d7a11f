//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"os"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// shaped are the sample orders of frames that are no plain rectangle.
var shaped = []string{"octagon-mirror", "wide-bottom", "triangle-open", "canted-box", "out-of-square"}

func orderFile(t *testing.T, name string) []byte {
	t.Helper()
	text, err := os.ReadFile("../testdata/orders/" + name + ".json")
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// TestShapes: every sample order of another shape opens, in every engine; in every
// view, part and piece of it every number is Go's.
func TestShapes(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		for _, name := range shaped {
			text := orderFile(t, name)
			v.opensOrder()
			v.opens(string(text))
			w := worked(t, text)
			first := w.plan.Order.Pieces[0].Name
			v.wait(fmt.Sprintf(`(document.querySelector("#which select")?.selectedOptions[0] ?? document.querySelector("#which h1")).textContent.includes(%q)`, first))
			for piece := range w.plan.Pieces {
				if piece > 0 {
					v.eval(`const s = document.querySelector("#which select"); s.value = arguments[0]; s.dispatchEvent(new Event("change", {bubbles: true}));`, piece)
				}
				what := fmt.Sprint(name, ", piece ", piece+1)
				for _, view := range []string{"cut", "hang", "make"} {
					v.press(`#views [data-view="` + view + `"]`)
					v.wait(`document.body.dataset.view === "` + view + `"`)
					v.until(what+", "+view, func() []string { return v.differs(w, piece) })
				}
				for _, side := range append(v.eval(`return [...document.querySelectorAll("#thumbs > div:not([hidden])")].map(e => e.id.slice(6))`).([]any), "front") {
					v.press(fmt.Sprintf("#thumb-%s button", side))
					v.until(fmt.Sprint(what, ", drawn from ", side), func() []string {
						if at := v.eval(`return document.getElementById("stage").dataset.view`); at != side {
							return []string{fmt.Sprint("drawn is ", at)}
						}
						return v.differs(w, piece)
					})
				}
				for _, part := range []string{"art", "frame"} {
					v.press(fmt.Sprintf(`[data-part-line="%s"][aria-expanded=false]`, part))
					v.wait(`document.querySelector(".part.open [data-shape]")`)
					v.until(what+", "+part, func() []string { return v.differs(w, piece) })
				}
			}
			v.opensOrder()
			if _, saved := v.saved(); !same(saved, string(text)) {
				t.Errorf("%s is saved as %s", name, saved)
			}
		}
	})
}

// TestExamples: what the page offers to start from is what the library's samples
// say, and opens.
func TestExamples(t *testing.T) {
	t.Parallel()
	v := desk(t)
	from, err := page()
	if err != nil {
		t.Fatal(err)
	}
	v.opensOrder()
	names := v.eval(`return [...document.querySelectorAll(".part.open [data-example]")].map(b => b.dataset.example)`).([]any)
	if len(names) < 3 {
		t.Fatalf("only %v", names)
	}
	for _, name := range names {
		text, err := fs.ReadFile(from, fmt.Sprintf("examples/%s.json", name))
		if err != nil || string(text) != string(orderFile(t, name.(string))) {
			t.Errorf("%s is another than the sample order, %v", name, err)
		}
		v.opensOrder()
		v.press(fmt.Sprintf(`.part.open [data-example="%s"]`, name))
		w := worked(t, text)
		v.wait(fmt.Sprintf(`JSON.parse(localStorage.getItem("fairmiter.order")).job === %q`, w.plan.Order.Job))
		v.holds(fmt.Sprint(name), w)
	}
}

// kept is a field of the order that the page keeps, by a JavaScript path.
const kept = `JSON.parse(localStorage.getItem("fairmiter.order"))`

// gives types a value into the field of an open part that a path ends in.
func (v visit) gives(path, value string) {
	v.Helper()
	v.wait(`document.querySelector('.part.open button[data-path$="` + path + `"]')`)
	v.press(`.part.open button[data-path$="` + path + `"]`)
	v.wait(`!document.getElementById("pad").hidden`)
	v.eval(typing, value)
	v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
	v.wait(`document.getElementById("pad").hidden`)
}

// picks picks one of a choice of the shape, which is no field.
func (v visit) picks(what, value string) {
	v.Helper()
	box := `.part.open [data-shape="` + what + `"]`
	v.wait(`document.querySelector('` + box + `')`)
	v.eval(`const box = document.querySelector(arguments[0]), select = box.querySelector("select"), radio = box.querySelector('input[value="' + arguments[1] + '"]');
		if (select) { select.value = arguments[1]; select.dispatchEvent(new Event("change", {bubbles: true})); } else radio.click();`, box, value)
}

// opensPart opens a part of the sheet.
func (v visit) opensPart(part string) {
	v.Helper()
	v.eval(`document.querySelector('[data-part-line="' + arguments[0] + '"][aria-expanded=false]')?.click()`, part)
	v.wait(`document.querySelector('[data-part-line="` + part + `"][aria-expanded=true]') && document.querySelector(".part.open [data-shape]")`)
}

// TestShapeForms: on a phone, from a picture to an octagon mirror, to rails that
// differ and to sides that slope, and back; nothing that was typed is lost.
func TestShapeForms(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		o := browser.Options{Width: 820, Height: 1180}
		if e == browser.Chromium { // the others have no window so narrow
			o = browser.Options{Width: 390, Height: 844, Mobile: true}
		}
		v := visits(t, e, o)
		narrow := func(what string) {
			t.Helper()
			if more := v.eval(`return document.documentElement.scrollWidth - innerWidth`).(float64); more > 0 { // less: beside a bar
				t.Errorf("%s is %v too wide", what, more)
			}
		}
		// A picture becomes an octagon: what does not go with it is said, with its way out.
		v.opensPart("art")
		v.picks("outline", "regular")
		v.wait(`document.querySelector('.part.open [data-away="mat"]')`)
		v.press(`.part.open [data-away="mat"]`)
		v.wait(kept + `.pieces[0].mat === undefined && ` + kept + `.version === 3`)
		v.gives("/art/outline/size", "18")
		v.opensPart("frame")
		v.gives("/frame/face", "2 1/2")
		v.gives("/frame/lip", "3/8")
		v.press(`#views [data-view="cut"]`)
		const long = `document.querySelector('#cut-list [data-path="/pieces/0/shape/regular/long_point"]')?.textContent`
		v.wait(long + ` === "9 5/16"`)
		narrow("cut")
		if got := v.eval(`return document.querySelector('#cut-list [data-path="/pieces/0/shape/regular/saw"]').textContent`); got != "22.5°" {
			t.Errorf("the saw is at %v", got)
		}
		v.press(`#views [data-view="make"]`)

		// Its rails: of their own widths, one of them none, and as before.
		v.opensPart("frame")
		v.picks("faces", "differ")
		v.wait(`document.querySelectorAll('.part.open button[data-path*="/frame/faces/"]').length === 8`)
		v.gives("/frame/faces/0", "3")
		v.wait(kept + `.pieces[0].frame.faces.join() === "3,2 1/2,2 1/2,2 1/2,2 1/2,2 1/2,2 1/2,2 1/2"`)
		v.picks("faces", "alike")
		v.wait(kept + `.pieces[0].frame.faces === undefined`)
		v.picks("faces", "differ")
		v.wait(kept + `.pieces[0].frame.faces?.[0] === "3"`)
		narrow("rails")
		v.picks("faces", "alike")

		// They slope: from where a pitch is counted must be said.
		v.picks("slope", "slope")
		v.wait(`document.querySelector('.part.open [data-path$="/pitches/0/angle"]') && [...document.querySelectorAll(".part.open .wrong")].some(p => !p.hidden && p.textContent.includes("missing"))`)
		v.eval(`document.querySelector('.part.open input[name$="/pitches/0/from"][value="vertical"]').click()`)
		v.gives("/pitches/0/angle", "30")
		v.wait(kept + `.pieces[0].frame.slope.pitches[0].from === "vertical"`)
		narrow("slope")
		v.press(`#views [data-view="cut"]`)
		v.wait(`document.querySelectorAll("#cut-list .way").length === 3`)
		narrow("cut of boards")
		v.press(`#views [data-view="make"]`)
		v.opensPart("frame")
		v.picks("slope", "flat")

		// Back to a rectangle, of the size that it had.
		v.opensPart("art")
		v.picks("outline", "rectangle")
		v.wait(kept + `.pieces[0].art.width === "9 3/4" && ` + kept + `.pieces[0].art.outline === undefined`)
		v.picks("outline", "regular")
		v.wait(kept + `.pieces[0].art.outline.size === "18"`)
		for _, way := range []string{"edges", "angles", "square", "around"} {
			v.picks("outline", way)
			v.wait(`document.querySelector('.part.open [data-shape="outline"] select').value === "` + way + `"`)
			narrow(way)
		}
		v.wait(kept + `.pieces[0].art.outline?.by === "around"`)
		w := worked(t, []byte(fmt.Sprint(v.eval(`return localStorage.getItem("fairmiter.order")`))))
		v.holds("around", w)
	})
}

// TestShapeNarrow: at every width, nothing of a shape is wider than the page.
func TestShapeNarrow(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.Chromium)
	v, _, _ := framed(t, browser.Chromium, browser.Options{Width: 1500, Height: 1000})
	fits := func(what, script, until string) {
		t.Helper()
		v.eval(`const d = ` + frame + `, click = css => d.querySelector(css)?.dispatchEvent(new d.defaultView.MouseEvent("click", {bubbles: true}));` + script)
		v.wait(strings.ReplaceAll(until, "document", frame))
		found, err := v.EvalAsync(wide)
		if err != nil {
			t.Fatal(err)
		}
		for _, text := range found.([]any) {
			t.Errorf("%s: %v", what, text)
		}
	}
	for _, name := range []string{"octagon-mirror", "wide-bottom", "canted-box"} {
		fits(name+", order", `click('[data-part-line="Order"][aria-expanded=false]');`, `document.querySelector('.part.open [data-example="`+name+`"]')`)
		fits(name, `click('[data-example="`+name+`"]');`, `!document.querySelector(".part.open") && document.querySelector("#main-drawing svg")`)
		for _, part := range []string{"art", "frame"} {
			fits(name+", "+part, `click('[data-part-line="`+part+`"][aria-expanded=false]');`, `document.querySelector('[data-part-line="`+part+`"][aria-expanded=true]') && document.querySelector(".part.open [data-shape]")`)
		}
		fits(name+", cut", `click('#views [data-view="cut"]')`, `document.querySelector("#cut-list .figure")`)
		fits(name+", make", `click('#views [data-view="make"]')`, `document.body.dataset.view === "make"`)
	}
}

// TestShapeAccessible runs axe-core over the forms of shapes and what is cut of them.
func TestShapeAccessible(t *testing.T) {
	t.Parallel()
	browser.Need(t, browser.Chromium)
	script := axe(t)
	v := visits(t, browser.Chromium, browser.Options{Width: 390, Height: 844, Mobile: true, Still: true})
	for _, name := range shaped {
		v.opensOrder()
		v.opens(string(orderFile(t, name)))
		v.wait(kept + `.job === ` + fmt.Sprintf("%q", worked(t, orderFile(t, name)).plan.Order.Job))
		for _, part := range []string{"art", "frame"} {
			v.opensPart(part)
			v.accessible(name+", "+part, script)
		}
		v.press(`#views [data-view="cut"]`)
		v.wait(`document.querySelector("#cut-list .cut")`)
		v.accessible(name+", cut", script)
		v.press(`#views [data-view="make"]`)
	}
}

// TestShapeEdges: an outline is measured side by side, and what is wrong with it
// stands where it belongs.
func TestShapeEdges(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.opensPart("art")
	v.picks("outline", "edges")
	for _, part := range []string{"mat", "hang"} {
		v.wait(`document.querySelector('.part.open [data-away="` + part + `"]')`)
		v.press(`.part.open [data-away="` + part + `"]`)
		v.wait(kept + `.pieces[0].` + part + ` === undefined`)
	}
	for i, edge := range []string{"22", "16", "16"} {
		v.gives(fmt.Sprint("/art/outline/edges/", i), edge)
	}
	order := func() []byte { return []byte(fmt.Sprint(v.eval(`return localStorage.getItem("fairmiter.order")`))) }
	v.wait(kept + `.pieces[0].art.outline.edges.join() === "22,16,16"`)
	v.holds("a triangle", worked(t, order()))
	v.press(`.part.open [data-keep="One more side"]`)
	v.wait(`document.querySelectorAll('.part.open button[data-path*="/outline/edges/"]').length === 4 && document.querySelector('.part.open button[data-path$="/diagonals/0/length"]')`)
	v.gives("/art/outline/edges/3", "22")
	v.gives("/art/outline/diagonals/0/length", "90")
	v.wait(`[...document.querySelectorAll(".part.open .wrong")].some(p => !p.hidden && p.textContent.includes("no triangle"))`)
	v.gives("/art/outline/diagonals/0/length", "27")
	v.wait(kept + `.pieces[0].art.outline.diagonals[0].length === "27" && ![...document.querySelectorAll(".part.open .wrong")].some(p => !p.hidden && p.textContent)`)
	v.holds("four sides", worked(t, order()))
}

// TestShapeSaw: what the saw reaches and misses is a setting of the shop, also of an
// order of an older version.
func TestShapeSaw(t *testing.T) {
	t.Parallel()
	v := desk(t)
	v.eval(`document.querySelector('[data-part-line="Shop"]').click()`)
	v.wait(`document.querySelector(".part.open .field")`)
	v.press(`.part.open [data-keep=more]`)
	v.gives("/shop/saw/miter", "47")
	v.wait(kept + `.shop.saw.miter === "47" && ` + kept + `.version === 3`)
	v.gives("/shop/saw/off", "-0.1")
	v.wait(kept + `.shop.saw.off === "-0.1"`)
	order := fmt.Sprint(v.eval(`return localStorage.getItem("fairmiter.order")`))
	var kept any
	if err := json.Unmarshal([]byte(order), &kept); err != nil || !strings.Contains(order, `"saw"`) {
		t.Fatalf("%v: %s", err, order)
	}
	v.holds("the saw", worked(t, []byte(order)))
}

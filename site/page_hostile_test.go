//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// hostileFiles are files as nobody should write them, and what is said of those
// that are not opened.
var hostileFiles = []struct{ name, file, said string }{
	{"a name of a number", `{"version": 2, "units": "in", "job": 5, "pieces": [{"name": 7, "art": {"width": "9", "height": "12"}, "frame": {"face": "1", "lip": "1/4"}}]}`, ""},
	{"numbers for lengths", `{"version": 2, "units": "in", "pieces": [{"art": {"width": 9, "height": {}}, "mat": {"borders": {"left": [1], "right": null}}, "frame": {"face": true, "lip": "1/4"}}]}`, ""},
	{"parts of other types", `{"version": "2", "units": 7, "show": 3, "shop": "x", "job": null, "date": {}, "pieces": [{"art": 7, "mat": "x", "glazing": null, "hang": [], "frame": false, "name": {}}]}`, ""},
	{"an object under a mat", `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "mat": {"under": {"0": 5}, "name": []}, "frame": {"face": "1", "lip": "1/4"}, "hang": {"by": 9}}]}`, ""},
	{"five mats", `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "mat": {"under": [{}, {}, {}, {}, 5]}, "frame": {"face": "1", "lip": "1/4"}}]}`, ""},
	{"empty pieces", `{"pieces": [{}, {}]}`, ""},
	{"names of the language", `{"version": 2, "units": "in", "__proto__": {"units": "mm"}, "constructor": 1, "pieces": [{"art": {"width": "9", "height": "12", "toString": "x"}, "frame": {"face": "1", "lip": "1/4"}, "__proto__": 5}]}`, ""},
	{"a mark before it", "\ufeff" + `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "frame": {"face": "1", "lip": "1/4"}}]}`, ""},
	{"text behind it", `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "frame": {"face": "1", "lip": "1/4"}}]} and more`, "holds no order. Text follows"},
	{"half a piece", `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9"`, "holds no order. The text is not JSON"},
	{"a piece behind a number", `{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "frame": {"face": "1", "lip": "1/4"}}, 5]}`, "holds no order. This is of the wrong type"},
	{"pieces twice", `{"pieces": [{}], "pieces": 5}`, "not opened: Pieces: This stands twice"},
	{"a name twice", `{"job": "a", "job": "b", "pieces": [{}]}`, "not opened: Job: This stands twice"},
	{"pieces of another case", `{"Pieces": [{}]}`, "holds no order. "},
	{"pieces in an object", `{"pieces": {"0": {}, "length": 1}}`, "holds no order. This is of the wrong type"},
	{"a list of orders", `[{"pieces": [{}]}]`, "holds no order. This is of the wrong type"},
	{"a number", `12`, "holds no order. This is of the wrong type"},
	{"a text", `"pieces"`, "holds no order. This is of the wrong type"},
	{"nothing but a mark", "\ufeff", "holds no order. "},
	{"bytes that are no text", "\x00\x01{\"pieces\"", "holds no order. The text is not JSON"},
	{"too deep to write again", `{"pieces": [{"name": ` + strings.Repeat("[", 9_990) + strings.Repeat("]", 9_990) + `}]}`, "either"}, // as deep as the engine goes
	{"too deep to read", `{"pieces": [{"name": ` + strings.Repeat("[", 200_000), "holds no order"},
	{"too long", `{"pieces": [{"name": "` + strings.Repeat("x", 4_000_000) + `"}]}`, "holds no order. The text is too long"},
}

// TestHostileFiles: every file ends in an order that is opened, with what is wrong
// with it, or in a message; the page works on, and saves what was opened as it is.
func TestHostileFiles(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		v.opensOrder()
		for _, row := range hostileFiles {
			v.eval(`document.getElementById("told-seen").textContent = ""; document.getElementById("fault").textContent = ""; document.body.dataset.was = localStorage.getItem("fairmiter.order")`)
			v.opens(row.file)
			told := `document.getElementById("told-seen").textContent`
			if row.said == "either" {
				v.wait(told + ` || localStorage.getItem("fairmiter.order") !== document.body.dataset.was`)
				v.press(`#views [data-view="make"]`)
				v.opensOrder()
				continue
			}
			if row.said != "" {
				v.wait(told)
				if got := fmt.Sprint(v.eval("return " + told)); !strings.Contains(got, row.said) || strings.Contains(got, "undefined") {
					t.Errorf("%s: said %q, want %q", row.name, got, row.said)
				}
				if v.eval(`return localStorage.getItem("fairmiter.order") === document.body.dataset.was`) != true {
					t.Errorf("%s changed the order", row.name)
				}
				continue
			}
			v.wait(`localStorage.getItem("fairmiter.order") !== document.body.dataset.was`)
			for _, view := range []string{"cut", "hang", "make"} {
				v.press(`#views [data-view="` + view + `"]`)
				v.wait(`document.body.dataset.view === "` + view + `"`)
			}
			for _, part := range []string{"art", "mat", "frame", "hang", "Shop"} {
				v.eval(`document.querySelector('[data-part-line="' + arguments[0] + '"][aria-expanded=false]')?.click()`, part)
			}
			for _, pad := range []string{"art/width", "art/height", "frame/face", "mat/borders/left"} {
				v.eval(`document.querySelector('button[data-path="/order/pieces/0/' + arguments[0] + '"]')?.click();
					if (!document.getElementById("pad").hidden) [...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`, pad)
				v.wait(`document.getElementById("pad").hidden`)
			}
			v.press(`#print`)
			v.wait(`document.getElementById("ticket-sheet").childElementCount`)
			v.press(`#ticket-back`)
			v.wait(`document.getElementById("ticket").hidden`)
			if got := v.eval(`return [document.getElementById("fault").textContent, ...document.body.innerText.match(/.*(undefined|NaN|\[object).*/) ?? []].join("")`); got != "" {
				t.Errorf("%s: the page says %q", row.name, got)
			}
			v.opensOrder()
			name, text := v.saved()
			if want := strings.TrimPrefix(row.file, "\ufeff"); !same(text, want) || name != "order.json" || !json.Valid([]byte(text)) {
				t.Errorf("%s: saved as %q: %s", row.name, name, text)
			}
		}
	})
}

// TestHostileStore: whatever stands where the browser keeps the order, the page
// opens; what is no order is put aside and not lost.
func TestHostileStore(t *testing.T) {
	t.Parallel()
	v := desk(t)
	home := fmt.Sprint(v.eval(`return location.href`))
	for _, row := range []struct {
		order, ticks string
		aside        bool
	}{
		{`{"version": 2, "units": "in", "pieces": [{"art": {"width": "9", "height": "12"}, "frame": {"face": "1", "lip": "1/4"}}]}`, `5`, false},
		{`{"version": 2, "units": "in", "job": 5, "pieces": [{"art": 5}]}`, `{"a": 1}`, false},
		{`{"pieces": [5]}`, `"x"`, true},
		{`{"pieces": [{}`, `[`, true},
		{`7`, `null`, true},
	} {
		v.goes(home + "sample.json")
		v.eval(`localStorage.clear(); localStorage.setItem("fairmiter.order", arguments[0]); localStorage.setItem("fairmiter.ticks", arguments[1])`, row.order, row.ticks)
		v.goes(home)
		v.ready()
		aside := v.eval(`return localStorage.getItem("fairmiter.order.unread")`)
		said := fmt.Sprint(v.eval(`return document.getElementById("told-seen").textContent + document.getElementById("fault").textContent`))
		if row.aside != (aside == row.order) || row.aside != strings.Contains(said, "put aside") || !row.aside && said != "" {
			t.Errorf("%s: said %q, put aside %v", row.order, said, aside)
		}
	}
}

//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// saving catches the file that the page would save, and does not save it.
const saving = `"use strict";
	const done = arguments[arguments.length - 1], make = URL.createObjectURL;
	let blob = null, name = "";
	URL.createObjectURL = b => { blob = b; return make.call(URL, b); };
	const click = HTMLAnchorElement.prototype.click;
	HTMLAnchorElement.prototype.click = function () { name = this.download; };
	[...document.querySelectorAll(".part.open button")].find(b => b.textContent === "Save as a file").click();
	URL.createObjectURL = make;
	HTMLAnchorElement.prototype.click = click;
	blob ? blob.text().then(text => done([name, text])) : done(["", ""]);`

// opens gives the page a file as one that was chosen.
func (v visit) opens(text string) {
	v.Helper()
	v.eval(`const all = new DataTransfer(), input = document.querySelector(".part.open input[type=file]");
		all.items.add(new File([arguments[0]], "order.json", {type: "application/json"}));
		input.files = all.files;
		input.dispatchEvent(new Event("change", {bubbles: true}));`, text)
}

// opensOrder opens the part of the sheet that is about the whole order.
func (v visit) opensOrder() {
	v.Helper()
	v.eval(`document.querySelector('[data-part-line="Order"][aria-expanded=false]')?.click()`)
	v.wait(`document.querySelector(".part.open input[type=file]")`)
}

// saved is the name and the text of the file that the page would save now.
func (v visit) saved() (name, text string) {
	v.Helper()
	got, err := v.EvalAsync(saving)
	if err != nil {
		v.Fatal(err)
	}
	return fmt.Sprint(got.([]any)[0]), fmt.Sprint(got.([]any)[1])
}

// TestFiles: what is saved is the order, and opening it brings it back; a file
// that is no order says what is wrong and changes nothing; of an order of several
// pieces each has its own numbers.
func TestFiles(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		v.opensOrder()
		name, text := v.saved()
		if name != "Harbor office one print.json" || !same(text, string(sampleWith(t, nil))) {
			t.Fatalf("saved as %q: %s", name, text)
		}

		v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
		v.eval(typing, "2")
		v.wait(outside + ` === "18"`)
		v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
		v.wait(`document.getElementById("pad").hidden`)
		v.opensOrder()
		_, before := v.saved()
		if same(before, text) {
			t.Fatal("the edit is not in the file")
		}
		for _, row := range []struct{ file, want string }{
			{"Dear framer, ", "holds no order"},
			{"", "holds no order"},
			{"null", "holds no order"},
			{"[]", "holds no order"},
			{`{"version": 2, "units": "in"}`, "Missing"},
			{`{"version": 2, "units": "in", "pieces": []}`, "holds no order"},
			{`{"version": 2, "units": "in", "pieces": [5]}`, "holds no order"},
			{strings.Repeat("[", 5000), "holds no order"},
		} {
			v.eval(`document.getElementById("told-seen").textContent = ""`)
			v.opens(row.file)
			said := fmt.Sprintf(`document.getElementById("told-seen").textContent.toLowerCase().includes(%q)`, strings.ToLower(row.want))
			if err := v.Wait(said, 5e9); err != nil {
				t.Errorf("%.60q: said %q", row.file, v.eval(`return document.getElementById("told-seen").textContent`))
			}
			if _, after := v.saved(); after != before {
				t.Fatalf("%.60q changed the order to %v", row.file, after)
			}
		}
		v.opens(text)
		v.wait(outside + ` === "16 1/4"`)
		v.opensOrder()
		if _, after := v.saved(); !same(after, text) {
			t.Errorf("opened is %s", after)
		}
		v.holds("opened", worked(t, []byte(text)))

		pieces := sampleWith(t, func(order, piece map[string]any) {
			var other map[string]any
			again, _ := json.Marshal(piece)
			json.Unmarshal(again, &other)
			other["name"], other["quantity"] = "A second, 5 x 7", 3
			other["art"].(map[string]any)["width"] = "5"
			delete(other, "mat")
			order["pieces"] = []any{piece, other}
		})
		v.opensOrder()
		v.opens(string(pieces))
		v.wait(`document.querySelector("#which select")`)
		w := worked(t, pieces)
		for _, piece := range []int{1, 0} {
			v.eval(`const s = document.querySelector("#which select"); s.value = arguments[0]; s.dispatchEvent(new Event("change", {bubbles: true}));`, piece)
			v.wait(fmt.Sprintf(`document.querySelector('#main-drawing [data-path="/pieces/%d/frame/outside/width"]')`, piece))
			for _, view := range []string{"cut", "hang", "make"} {
				v.press(`#views [data-view="` + view + `"]`)
				v.until(fmt.Sprint("piece ", piece+1, ", ", view), func() []string { return v.differs(w, piece) })
			}
		}
		v.holdsTicket(w)
	})
}

// same reports whether two JSON texts say the same.
func same(a, b string) bool {
	var x, y any
	if json.Unmarshal([]byte(a), &x) != nil || json.Unmarshal([]byte(b), &y) != nil {
		return false
	}
	return fmt.Sprint(x) == fmt.Sprint(y) // maps are printed in the order of their keys
}

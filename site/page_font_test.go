//go:build !js

package main

import (
	"fmt"
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// A width is what the drawings take a character to be, in thousandths of its
// size, at the weights 400 and 700.
type width struct {
	char          rune
	regular, bold int
}

// tableOfWidths reads the table that the drawings are laid out by.
func tableOfWidths(t *testing.T) (list []width) {
	t.Helper()
	source, err := os.ReadFile("../framing/draw/widths.go")
	if err != nil {
		t.Fatal(err)
	}
	numbers := func(name string) (found []int) {
		_, rest, _ := strings.Cut(string(source), "var "+name+" = [...]uint16{")
		block, _, _ := strings.Cut(rest, "}")
		for _, text := range strings.FieldsFunc(block, func(r rune) bool { return r < '0' || r > '9' }) {
			n, _ := strconv.Atoi(text)
			found = append(found, n)
		}
		return found
	}
	regular, bold := numbers("regular"), numbers("bold")
	if len(regular) != 0x100-' ' || len(bold) != len(regular) {
		t.Fatalf("the table has %d and %d widths", len(regular), len(bold))
	}
	for i := range regular {
		if regular[i] > 0 {
			list = append(list, width{' ' + rune(i), regular[i], bold[i]})
		}
	}
	extra := regexp.MustCompile(`case 0x([0-9A-F]+):.*\n\s*return (\d+), (\d+)`)
	for _, m := range extra.FindAllStringSubmatch(string(source), -1) {
		char, _ := strconv.ParseInt(m[1], 16, 32)
		a, _ := strconv.Atoi(m[2])
		b, _ := strconv.Atoi(m[3])
		list = append(list, width{rune(char), a, b})
	}
	if len(list) < 200 {
		t.Fatalf("only %d characters in the table", len(list))
	}
	return list
}

// measured measures characters of the page's font, as the drawings are set, at a
// size of 1000: between two others and without, so that a space counts.
const measured = `const done = arguments[arguments.length - 1], [chars] = arguments, ns = "http://www.w3.org/2000/svg";
	Promise.all([400, 700].map(w => document.fonts.load(w + ' 1000px "Fairmiter Sans"', chars))).then(found => {
		const svg = document.createElementNS(ns, "svg"), text = document.createElementNS(ns, "text");
		svg.setAttribute("class", "drawing");
		text.setAttribute("font-size", "1000");
		svg.append(text);
		document.body.append(svg);
		const long = s => { text.textContent = s; return text.getComputedTextLength(); };
		const widths = [400, 700].map(weight => { text.setAttribute("font-weight", weight); const between = long("HH"); return [...chars].map(c => /\s/.test(c) ? long("H" + c + "H") - between : long(c)); });
		svg.remove();
		done([found.every(f => f.length === 1), ...widths]);
	}, e => done([String(e), [], []]));`

// TestWidths: in every engine every character is as wide as the drawings take it
// to be, and so no text of the sample's drawings lies over another.
func TestWidths(t *testing.T) {
	t.Parallel()
	table := tableOfWidths(t)
	var chars strings.Builder
	for _, w := range table {
		chars.WriteRune(w.char)
	}
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		got, err := v.EvalAsync(measured, chars.String())
		if err != nil {
			t.Fatal(err)
		}
		answer := got.([]any)
		regular, bold := answer[1].([]any), answer[2].([]any)
		if answer[0] != true || len(regular) != len(table) || len(bold) != len(table) {
			t.Fatalf("font %v, %d and %d widths of %d", answer[0], len(regular), len(bold), len(table))
		}
		for i, w := range table {
			for _, row := range []struct {
				weight int
				got    any
				want   int
			}{{400, regular[i], w.regular}, {700, bold[i], w.bold}} {
				is := row.got.(float64)
				if w.char == '\u00ad' && is == 0 {
					continue // a soft hyphen shows where a line breaks, and else not
				}
				if math.Abs(is-float64(row.want)) > 1 { // an engine may round to 64ths of a pixel
					t.Errorf("%q at %d is %.2f wide, in the table %d", w.char, row.weight, is, row.want)
				}
			}
		}
		v.apart()
	})
}

// overlaps lists texts of the large drawing that lie over one another: each as
// long as it is, and as high as its letters are, which is less than its line.
const overlaps = `const texts = [...document.querySelectorAll("#main-drawing text")].map(e => {
		const b = e.getBBox(), size = Number(e.getAttribute("font-size")), y = Number(e.getAttribute("y")), m = e.getScreenCTM();
		const at = (x, y) => [m.a * x + m.c * y + m.e, m.b * x + m.d * y + m.f], [x0, y0] = at(b.x, y - .76 * size), [x1, y1] = at(b.x + b.width, y + .24 * size);
		return {e, r: {left: Math.min(x0, x1), right: Math.max(x0, x1), top: Math.min(y0, y1), bottom: Math.max(y0, y1)}};
	});
	if (texts.length < 6) return ["only " + texts.length + " texts"];
	const found = [], slack = .5; // of a pixel of the screen
	texts.forEach((a, i) => texts.slice(i + 1).forEach(b => {
		const x = Math.min(a.r.right, b.r.right) - Math.max(a.r.left, b.r.left), y = Math.min(a.r.bottom, b.r.bottom) - Math.max(a.r.top, b.r.top);
		if (x > slack && y > slack) found.push(a.e.textContent + " and " + b.e.textContent + " by " + x.toFixed(1) + " x " + y.toFixed(1));
	}));
	return found;`

// apart: in no view of the sample, in inches and in millimeters, do two texts lie
// over one another.
func (v visit) apart() {
	v.Helper()
	for _, unit := range []string{"in", "mm"} {
		v.press(`#units [data-unit="` + unit + `"]`)
		v.wait(`document.querySelector('#units [data-unit="` + unit + `"]').getAttribute("aria-pressed") === "true"`)
		for _, view := range []string{"section", "back", "front"} {
			v.press("#thumb-" + view + " button")
			v.wait(`document.querySelector("#main-drawing svg.` + view + `")`)
			v.until(fmt.Sprint(unit, ", ", view, ": texts lie over one another"), func() (found []string) {
				for _, text := range v.eval(overlaps).([]any) {
					found = append(found, text.(string))
				}
				return found
			})
		}
	}
}

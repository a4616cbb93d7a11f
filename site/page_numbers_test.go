//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/ticket"
	"github.com/fairmiter/fairmiter/site/internal/browser"
)

// A work is an order as Go works it out: all that the page may show of it.
type work struct {
	plan     framing.Plan
	format   measure.Format
	document map[string]any // the plan's own JSON text, read
	givens   map[string]framing.GivenText
	drawn    map[string]bool // numbers in the drawings, each behind its path
}

// worked works an order out from its text, as the page does.
func worked(t *testing.T, order []byte) work {
	t.Helper()
	plan, err := framing.NewReading(order).Work()
	if err != nil {
		t.Fatal(err)
	}
	w := work{plan: plan, givens: make(map[string]framing.GivenText)}
	if w.format, err = plan.Order.Show.Format(); err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(plan)
	if err == nil {
		err = json.Unmarshal(text, &w.document)
	}
	if err != nil {
		t.Fatal(err)
	}
	w.drawn = w.drawings()
	for i := range plan.Pieces {
		for _, g := range plan.Givens(i) {
			w.givens["/order"+string(g.Path)] = g
		}
	}
	return w
}

// at is what stands at a path of the plan, as one reads and as one hears it.
func (w work) at(path string) (text, spoken string, ok bool) {
	if g, is := w.givens[path]; is {
		return g.Text, g.Spoken, true
	}
	var here any = w.document
	for _, segment := range explain.Path(path).Segments() {
		switch d := here.(type) {
		case map[string]any:
			here = d[segment]
		case []any:
			i := 0
			if _, err := fmt.Sscan(segment, &i); err != nil || i < 0 || i >= len(d) {
				return "", "", false
			}
			here = d[i]
		default:
			return "", "", false
		}
	}
	switch d := here.(type) {
	case string: // a name, as it was given
		return d, d, true
	case float64: // a count
		return fmt.Sprint(d), fmt.Sprint(d), true
	case map[string]any:
		text, is := d["text"].(string)
		spoken, _ = d["spoken"].(string)
		return text, spoken, is
	}
	return "", "", false
}

// drawnNumber is a number in the text of a drawing: its path, and what it reads.
var drawnNumber = regexp.MustCompile(`(?s)data-path="([^"]+)".*?<tspan class="dim [^>]*>(.*?)</tspan>(?:</text>|<tspan class="word")`)

// drawings are the numbers in the drawings, each behind its path. They are the
// plan's, but that what is given in another unit may stand in that.
func (w work) drawings() map[string]bool {
	found := make(map[string]bool)
	for i := range w.plan.Pieces {
		for _, view := range draw.View("").Choices() {
			svg := draw.SVG(w.plan, i, draw.View(view), draw.Options{Interactive: true})
			for _, m := range drawnNumber.FindAllStringSubmatch(svg, -1) {
				found[m[1]+" "+strings.NewReplacer(`<tspan class="frac">`, "", "</tspan>", "").Replace(m[2])] = true
			}
		}
	}
	return found
}

// notes are the notes of a piece and of the whole by what they say, each with
// its ways out.
func (w work) notes(piece int) map[string][]string {
	found := make(map[string][]string)
	all, _ := w.document["notes"].([]any)
	own, _ := w.document["pieces"].([]any)[piece].(map[string]any)["notes"].([]any)
	for _, n := range append(all, own...) {
		note := n.(map[string]any)
		ways := []string{}
		changes, _ := note["changes"].([]any)
		for _, c := range changes {
			if !strings.HasPrefix(c.(map[string]any)["path"].(string), "/order/") {
				continue // of what follows from the order: the page cannot set it
			}
			ways = append(ways, "Make the "+c.(map[string]any)["text"].(string))
		}
		found[fmt.Sprint(note["code"], " ", note["text"])] = ways
	}
	return found
}

// countless are the places whose digits are no number of the plan, each with why.
var countless = map[string]string{
	".working, .rounding, .source": "compared whole, with the working in Go",
	".note":                        "compared whole, with the notes in Go",
	"#told":                        "repeats notes, for those who hear the page",
	"#working .chip":               "compared with what stands in the field that it names",
	".times":                       "how many alike are to be cut: rails go in pairs",
	".mark":                        "how many notes there are",
	"#cut-done":                    "how many cuts are ticked",
	"#pad .keys":                   "the keys",
	"svg .name":                    "the name of the piece, under its drawing",
	"h1:not([data-path])":          "which piece it is, where it has no name",
	"[data-place], .cut h2":        "which side or corner it is, where they are counted",
	"#pad-name, #working-name":     "what the field or figure is called, which may say its side",
	"svg .dim, svg .word":          "compared whole, with the drawing in Go: how a shape is drawn says more than a plan has figures of",
	"title, desc":                  "compared whole, with the drawing in Go",
}

// onPage reads the page as it is now: every text with a digit in it, by the path
// of what it says, or as a stray where nothing says so.
const onPage = `const shown = e => Boolean((e.closest("svg")?.parentElement ?? e).getClientRects().length), clean = s => s.replaceAll("\u00a0", " ").trim();
	const page = document.getElementById("page"), named = new Set([...page.querySelectorAll("[data-path]")].filter(shown)), strays = [];
	const walk = document.createTreeWalker(page, NodeFilter.SHOW_TEXT);
	for (let n; n = walk.nextNode();) {
		const e = n.parentElement;
		if (/\d/.test(n.data) && shown(e) && !e.closest("[data-path]") && !e.closest(arguments[0])) strays.push(clean(n.data) + " in " + e.outerHTML.slice(0, 200));
	}
	const text = (root, css) => clean(root.querySelector(css)?.textContent ?? ""), working = document.getElementById("working");
	const box = document.getElementById("main-drawing").getBoundingClientRect(), more = box.width > 600 ? 1.05 : 1.25;
	return {
		numbers: [...named].map(e => ({path: e.dataset.path, text: clean((e.querySelector(".dim") ?? e).textContent), name: e.getAttribute("aria-label") ?? "", spoken: e.getAttribute("aria-description") ?? "", drawn: Boolean(e.closest("svg"))})),
		strays,
		notes: [...page.querySelectorAll(".note")].filter(shown).map(e => ({says: e.dataset.code + " " + clean(e.querySelector("p span").textContent), ways: [...e.querySelectorAll(".remedy")].map(b => b.textContent)})),
		working: working.hidden ? null : {path: working.querySelector(".big")?.dataset.path ?? "", text: text(working, ".working"), rounding: text(working, ".rounding"), source: text(working, ".source"),
			chips: [...working.querySelectorAll(".chip")].map(e => ({path: e.querySelector("input").value, text: clean(e.textContent)}))},
		drawing: box.width ? document.getElementById("stage").dataset.view : "", width: Math.max(240, Math.round(box.width * more)), height: Math.max(240, Math.round(box.height * more)),
	};`

// A seen is what onPage found.
type seen struct {
	Numbers []struct {
		Path, Text, Name, Spoken string
		Drawn                    bool // and so compared with the drawing too
	}
	Strays []string
	Notes  []struct {
		Says string
		Ways []string
	}
	Working *struct {
		Path, Text, Rounding, Source string
		Chips                        []struct{ Path, Text string }
	}
	Drawing       string
	Width, Height int
}

// look reads the page.
func (v visit) look() (s seen) {
	v.Helper()
	var places []string
	for css := range countless {
		places = append(places, css)
	}
	text, err := json.Marshal(v.eval(onPage, strings.Join(places, ", ")))
	if err == nil {
		err = json.Unmarshal(text, &s)
	}
	if err != nil {
		v.Fatal(err)
	}
	return s
}

// sameDrawing compares the large drawing with another: "" or where they part.
// What only the page says of it does not count: its font, and what is lit.
const sameDrawing = `const say = e => e.nodeType === 3 ? (/^\s*$/.test(e.data) ? "" : e.data) :
		"<" + e.localName + [...e.attributes].filter(a => !["xmlns", "font-family"].includes(a.name)).map(a => " " + a.name + "=" + (a.name === "class" ? a.value.split(/\s+/).filter(c => c && c !== "lit").join(" ") : a.value)).sort().join("") + ">" + [...e.childNodes].map(say).join("") + "</>";
	const a = say(document.querySelector("#main-drawing svg")), b = say(new DOMParser().parseFromString(arguments[0], "image/svg+xml").documentElement);
	let i = 0;
	while (i < a.length && a[i] === b[i]) i++;
	return a === b ? "" : a.slice(Math.max(0, i - 60), i + 60) + "\nin Go\n" + b.slice(Math.max(0, i - 60), i + 60);`

// differs lists where what the page shows of a piece is not what Go says.
func (v visit) differs(w work, piece int) (faults []string) {
	v.Helper()
	fault := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	s := v.look()
	if len(s.Numbers) < 6 && w.plan.Pieces[piece].Shape.IsZero() || len(s.Numbers) == 0 {
		fault("only %d numbers on the page", len(s.Numbers))
	}
	for _, n := range s.Numbers {
		text, spoken, ok := w.at(n.Path)
		if n.Drawn && w.drawn[n.Path+" "+n.Text] {
			continue
		}
		if n.Text != text && n.Text != text+"°" && !(text == "" && n.Text == "not set") || !ok && n.Text != "not set" {
			fault("%s reads %q, in Go %q", n.Path, n.Text, text)
		}
		if n.Name != "" && !strings.HasSuffix(n.Name, ": "+n.Text) {
			fault("%s reads %q and is called %q", n.Path, n.Text, n.Name)
		}
		if n.Spoken != "" && n.Spoken != spoken {
			fault("%s is said %q, in Go %q", n.Path, n.Spoken, spoken)
		}
	}
	for _, text := range s.Strays {
		fault("nothing says what this is: %s", text)
	}
	notes := w.notes(piece)
	for _, n := range s.Notes {
		if ways, ok := notes[n.Says]; !ok || strings.Join(ways, "|") != strings.Join(n.Ways, "|") {
			fault("no such note in Go, or with other ways out: %s %q", n.Says, n.Ways)
		}
	}
	if s.Working != nil {
		faults = append(faults, w.otherWorking(s)...)
	}
	if s.Drawing != "" {
		svg := draw.SVG(w.plan, piece, draw.View(s.Drawing), draw.Options{Width: s.Width, Height: s.Height, Interactive: true})
		if parts := v.eval(sameDrawing, svg); parts != "" {
			fault("the %s is drawn otherwise: %v", s.Drawing, parts)
		}
	}
	return faults
}

// otherWorking compares a working with Go's.
func (w work) otherWorking(s seen) (faults []string) {
	got := *s.Working
	working, ok := w.plan.Explain(explain.Path(got.Path))
	times := strings.NewReplacer(" x ", " × ")
	signs := strings.NewReplacer(" x ", " × ", " - ", " − ")
	for _, row := range [][2]string{
		{got.Text, signs.Replace(working.Text(w.format))},
		{got.Rounding, "Shown: " + times.Replace(string(working.AppendRounding(nil, w.format)))},
		{got.Source, "Source: " + working.Source.String()},
	} {
		if !ok || row[0] != row[1] {
			faults = append(faults, fmt.Sprintf("the working of %s reads %q, in Go %q", got.Path, row[0], row[1]))
		}
	}
	for _, c := range got.Chips {
		if text, _, _ := w.at("/order" + c.Path); text == "" || !strings.HasSuffix(c.Text, " "+text) {
			faults = append(faults, fmt.Sprintf("%s may change from %q, in Go %q", c.Path, c.Text, text))
		}
	}
	return faults
}

// until waits until nothing differs, and reports what still does.
func (v visit) until(what string, differs func() []string) {
	v.Helper()
	for end := time.Now().Add(5 * time.Second); ; time.Sleep(20 * time.Millisecond) {
		faults := differs()
		if len(faults) == 0 {
			return
		}
		if time.Now().After(end) {
			v.Fatalf("%s:\n%s", what, strings.Join(faults, "\n"))
		}
	}
}

// holds compares every number that the page shows now with Go's.
func (v visit) holds(what string, w work) {
	v.Helper()
	v.until(what, func() []string { return v.differs(w, 0) })
}

// holdsTicket opens the ticket, compares it with Go's, and goes back.
func (v visit) holdsTicket(w work) {
	v.Helper()
	v.press("#print")
	for _, workings := range []bool{false, true} {
		want := ticket.HTML(w.plan, ticket.Options{Working: workings}, func(piece int) (pictures []ticket.Picture) {
			for _, view := range []draw.View{draw.Front, draw.Section} {
				pictures = append(pictures, ticket.Picture{SVG: draw.SVG(w.plan, piece, view, draw.Options{})})
			}
			return pictures
		})
		v.until("ticket", func() []string {
			if parts := v.eval(`const want = new DOMParser().parseFromString(arguments[0], "text/html").querySelector("article").textContent.trim(), got = document.getElementById("ticket-sheet").textContent.trim();
				let i = 0;
				while (i < want.length && got[i] === want[i]) i++;
				return got === want ? "" : got.slice(i, i + 80) + "\nin Go\n" + want.slice(i, i + 80);`, want); parts != "" {
				return []string{fmt.Sprint(parts)}
			}
			return nil
		})
		v.press("#ticket-working")
	}
	v.press("#ticket-back")
	v.wait(`document.getElementById("ticket").hidden`)
}

// holdsAll goes through all that the page shows of an order, from its view of
// the whole piece back to it.
func (v visit) holdsAll(what string, w work) {
	v.Helper()
	for _, view := range []string{"section", "back", "front"} {
		v.press("#thumb-" + view + " button")
		v.holds(what+", "+view, w)
	}
	for _, part := range v.eval(`return [...document.querySelectorAll("[data-part-line]")].map(b => b.dataset.partLine)`).([]any) {
		v.press(fmt.Sprintf(`[data-part-line="%s"][aria-expanded=false]`, part))
		v.wait(`document.querySelector(".part.open .field")`)
		v.eval(`document.querySelector(".part.open [data-keep=more][aria-expanded=false]")?.click()`)
		v.holds(fmt.Sprint(what, ", ", part), w)
	}
	for _, path := range []string{"frame/outside/width", "frame/sight/height", "mat/window/width"} {
		v.press(`#main-drawing [data-path="/pieces/0/` + path + `"]`)
		v.wait(`document.querySelector('#working:not([hidden]) [data-path="/pieces/0/` + path + `"]')`)
		v.press("#fix")
		v.wait(`document.querySelector("#working .chip")`)
		v.holds(what+", working of "+path, w)
		v.eval(`[...document.querySelectorAll("#working button")].find(b => b.textContent === "Close").click()`)
		v.wait(`document.getElementById("working").hidden`)
	}
	v.holdsViews(what, w)
	v.holdsTicket(w)
}

// holdsViews goes through the three views.
func (v visit) holdsViews(what string, w work) {
	v.Helper()
	for _, view := range []string{"cut", "hang", "make"} {
		v.press(`#views [data-view="` + view + `"]`)
		v.wait(`document.body.dataset.view === "` + view + `"`)
		v.holds(what+", "+view, w)
	}
}

// sampleWith is the text of the page's sample, changed.
func sampleWith(t *testing.T, change func(order, piece map[string]any)) []byte {
	t.Helper()
	from, err := page()
	if err != nil {
		t.Fatal(err)
	}
	text, err := fs.ReadFile(from, "sample.json")
	if err != nil || change == nil {
		return text
	}
	var order map[string]any
	if err := json.Unmarshal(text, &order); err != nil {
		t.Fatal(err)
	}
	change(order, order["pieces"].([]any)[0].(map[string]any))
	if text, err = json.Marshal(order); err != nil {
		t.Fatal(err)
	}
	return text
}

// TestNumbers: in every engine every number on the page, in every view, is Go's:
// of the sample, after an edit, and in millimeters.
func TestNumbers(t *testing.T) {
	t.Parallel()
	browser.Each(t, func(t *testing.T, e browser.Engine) {
		v := visits(t, e, browser.Options{Width: 1180, Height: 820})
		v.holdsAll("the sample", worked(t, sampleWith(t, nil)))

		v.press(`#main-drawing [data-path="/order/pieces/0/frame/face"]`)
		v.eval(typing, "1 1/2")
		v.wait(outside + ` === "17"`)
		wide := worked(t, sampleWith(t, func(_, piece map[string]any) { piece["frame"].(map[string]any)["face"] = "1 1/2" }))
		v.holds("typing", wide)
		v.eval(`[...document.querySelectorAll("#pad button")].find(b => b.textContent === "Done").click()`)
		v.wait(`document.getElementById("pad").hidden`)
		v.holdsViews("another face", wide)

		v.press(`#units [data-unit="mm"]`)
		v.holdsAll("in millimeters", worked(t, sampleWith(t, func(order, piece map[string]any) {
			piece["frame"].(map[string]any)["face"] = "1 1/2"
			order["show"] = map[string]any{"as": "metric"}
		})))
	})
}

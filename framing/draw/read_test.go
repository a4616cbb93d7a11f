package draw

import (
	"encoding/json"
	"encoding/xml"
	"io"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
)

// A seen drawing is an SVG read back.
type seen struct {
	view    box
	texts   []lettered
	lines   [][4]int // dimension lines, extension lines, leaders
	ids     []string
	parts   map[string]bool
	frame   box
	frames  []box             // each of what is drawn of it
	numbers map[string]string // by data-path
	given   map[string]bool
}

type lettered struct {
	box
	text string
	mark bool // it belongs on what is drawn
}

var (
	elements   = strings.Fields("svg title desc g rect path circle text tspan")
	attributes = strings.Fields(`xmlns viewBox width height class font-family aria-labelledby role id x y fill stroke
		stroke-width stroke-opacity stroke-linejoin stroke-linecap stroke-dasharray fill-opacity fill-rule d cx cy r
		font-size font-weight text-decoration text-anchor transform direction data-part data-path
		tabindex aria-label aria-description pointer-events`)
)

// read reads a drawing and holds it against what a page admits.
func read(t testing.TB, svg string) seen {
	t.Helper()
	s := seen{parts: map[string]bool{}, numbers: map[string]string{}, given: map[string]bool{}}
	d := xml.NewDecoder(strings.NewReader(svg))
	var inText *lettered
	var turned bool
	var anchor, path string
	var size, width, x, y int
	var stack []xml.StartElement
	depthOfNumber, frameDepth := -1, -1
	for {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("no XML: %v\n%s", err, svg)
		}
		switch e := token.(type) {
		case xml.StartElement:
			stack = append(stack, e)
			if !slices.Contains(elements, e.Name.Local) {
				t.Errorf("element %s", e.Name.Local)
			}
			a := map[string]string{}
			for _, at := range e.Attr {
				if !slices.Contains(attributes, at.Name.Local) {
					t.Errorf("attribute %s", at.Name.Local)
				}
				if strings.Contains(at.Value, "url(") || strings.Contains(at.Value, "javascript:") {
					t.Errorf("%s refers to something: %s", at.Name.Local, at.Value)
				}
				a[at.Name.Local] = at.Value
			}
			if a["id"] != "" {
				s.ids = append(s.ids, a["id"])
			}
			if p := a["data-part"]; p != "" {
				s.parts[p] = true
				if p == "frame" {
					frameDepth = len(stack)
					s.frames = append(s.frames, box{})
				}
			}
			if p := a["data-path"]; p != "" {
				path, depthOfNumber = p, len(stack)
			}
			switch e.Name.Local {
			case "svg":
				f := strings.Fields(a["viewBox"])
				s.view = box{x0: units(t, f[0]), y0: units(t, f[1])}
				s.view.x1, s.view.y1 = s.view.x0+units(t, f[2]), s.view.y0+units(t, f[3])
			case "g": // only what holds the whole drawing is moved: then the paper, seen from there
				if by, moved := strings.CutPrefix(a["transform"], "translate("); moved {
					f := strings.Fields(strings.TrimSuffix(by, ")"))
					dx, dy := units(t, f[0]), units(t, f[1])
					s.view = box{s.view.x0 - dx, s.view.y0 - dy, s.view.x1 - dx, s.view.y1 - dy}
				}
			case "text":
				inText = &lettered{mark: a["class"] == "mark"}
				x, y, width = units(t, a["x"]), units(t, a["y"]), 0
				anchor, turned, size = a["text-anchor"], a["transform"] != "", units(t, a["font-size"])
			case "tspan":
				if a["font-size"] != "" {
					size = units(t, a["font-size"])
				} else if !strings.Contains(a["class"], "frac") {
					size = numberSize
				}
				if strings.Contains(a["class"], "given") {
					s.given[path] = true
				}
			case "path":
				pts := points(t, a["d"])
				if strings.HasPrefix(a["class"], "line") {
					s.lines = append(s.lines, pts...)
				}
				for _, l := range pts {
					b := box{min(l[0], l[2]), min(l[1], l[3]), max(l[0], l[2]), max(l[1], l[3])}
					if b.within(s.view) != b {
						t.Errorf("%v lies outside %v", b, s.view)
					}
					if frameDepth >= 0 && strings.Contains(a["class"], "rail") {
						for _, f := range [...]*box{&s.frame, &s.frames[len(s.frames)-1]} {
							if *f == (box{}) {
								*f = b
							}
							*f = f.around(b)
						}
					}
				}
			}
		case xml.EndElement:
			stack = stack[:len(stack)-1]
			if frameDepth > len(stack) {
				frameDepth = -1
			}
			if depthOfNumber > len(stack) {
				depthOfNumber = -1
			}
			if e.Name.Local == "text" {
				if turned && anchor == "" {
					anchor = "start"
				}
				x0 := map[string]int{"": 0, "start": 0, "middle": -(width + 1) / 2, "end": -width}[anchor]
				inText.box = box{x + x0, y - 1140, x + x0 + width, y + 360}
				if turned { // by -90: along x becomes up
					inText.box = box{x - 1140, y - x0 - width, x + 360, y - x0}
				}
				s.texts = append(s.texts, *inText)
				inText = nil
			}
		case xml.CharData:
			if inText == nil {
				continue
			}
			heavy := false
			for _, el := range stack {
				for _, at := range el.Attr {
					heavy = heavy || at.Name.Local == "font-weight"
				}
			}
			width += textWidth(string(e), size, heavy)
			inText.text += string(e)
			top := stack[len(stack)-1]
			word := false
			for _, at := range top.Attr {
				word = word || at.Name.Local == "class" && at.Value == "word"
			}
			if depthOfNumber >= 0 && !word {
				s.numbers[path] += string(e)
			}
		case xml.ProcInst, xml.Directive, xml.Comment:
			t.Errorf("%T", e)
		}
	}
	return s
}

func units(t testing.TB, s string) int {
	t.Helper()
	f, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatalf("%q: %v", s, err)
	}
	if _, decimals, _ := strings.Cut(s, "."); len(decimals) > 2 {
		t.Errorf("%s has more than two decimals", s)
	}
	if f < 0 {
		return -int(-f*px + 0.5)
	}
	return int(f*px + 0.5)
}

// points are the straight lines of a path of M, L, H, V and Z.
func points(t testing.TB, d string) [][4]int {
	t.Helper()
	var list [][4]int
	var x, y, startX, startY int
	for len(d) > 0 {
		command := d[0]
		end := 1
		for end < len(d) && (d[end] < 'A' || d[end] > 'Z') {
			end++
		}
		f := strings.Fields(d[1:end])
		d = d[end:]
		px, py := x, y
		switch command {
		case 'M', 'L':
			x, y = units(t, f[0]), units(t, f[1])
		case 'H':
			x = units(t, f[0])
		case 'V':
			y = units(t, f[0])
		case 'Z':
			x, y = startX, startY
		default:
			t.Fatalf("command %c", command)
		}
		if command == 'M' {
			startX, startY = x, y
			continue
		}
		list = append(list, [4]int{px, py, x, y})
	}
	return list
}

// meets reports whether a line passes through the inside of a box.
func meets(l [4]int, b box) bool {
	// Cut the line to the box, side by side, in exact fractions of a thousandth.
	t0, t1 := 0.0, 1.0
	for _, c := range [][3]int{{l[0], l[2], 0}, {l[1], l[3], 1}} {
		lo, hi := b.x0, b.x1
		if c[2] == 1 {
			lo, hi = b.y0, b.y1
		}
		from, d := float64(c[0]), float64(c[1]-c[0])
		if d == 0 {
			if c[0] <= lo || c[0] >= hi {
				return false
			}
			continue
		}
		a, z := (float64(lo)-from)/d, (float64(hi)-from)/d
		t0, t1 = max(t0, min(a, z)), min(t1, max(a, z))
	}
	return t0 < t1
}

// check holds a drawing to the rules.
func check(t testing.TB, name, svg string) seen {
	t.Helper()
	s := read(t, svg)
	for i, a := range s.texts {
		if a.within(s.view) != a.box {
			t.Errorf("%s: %q at %v lies outside %v", name, a.text, a.box, s.view)
		}
		for _, b := range s.texts[i+1:] {
			if !a.within(b.box).empty() {
				t.Errorf("%s: %q at %v and %q at %v collide", name, a.text, a.box, b.text, b.box)
			}
		}
		for _, l := range s.lines {
			if meets(l, a.box) {
				t.Errorf("%s: a line %v passes through %q at %v", name, l, a.text, a.box)
			}
		}
		for _, f := range s.frames {
			if !a.mark && !a.within(f).empty() {
				t.Errorf("%s: %q at %v lies on the frame %v", name, a.text, a.box, f)
			}
		}
	}
	slices.Sort(s.ids)
	if u := slices.Compact(slices.Clone(s.ids)); len(u) != len(s.ids) {
		t.Errorf("%s: ids twice in %q", name, s.ids)
	}
	return s
}

// figures are the texts of the plan's figures, by their places in its JSON text.
func figures(t testing.TB, p framing.Plan) map[string]string {
	t.Helper()
	data, err := json.Marshal(p)
	if err != nil {
		t.Fatal(err)
	}
	var whole any
	if err := json.Unmarshal(data, &whole); err != nil {
		t.Fatal(err)
	}
	m := map[string]string{}
	gather(m, "", whole)
	return m
}

func gather(m map[string]string, at string, v any) {
	switch v := v.(type) {
	case map[string]any:
		if text, ok := v["text"].(string); ok {
			m[at] = text
		}
		for k, e := range v {
			gather(m, at+"/"+k, e)
		}
	case []any:
		for i, e := range v {
			gather(m, at+"/"+strconv.Itoa(i), e)
		}
	}
}

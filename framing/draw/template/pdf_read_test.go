package template_test

import (
	"bytes"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// A pdf is what was read of a file: its objects by the table of where they are.
type pdf struct {
	objects []string
	pages   []string // their entries
}

var (
	contentsOf = regexp.MustCompile(`/Contents (\d+) 0 R`)
	mediaBox   = regexp.MustCompile(`/MediaBox\[0 0 ([0-9.]+) ([0-9.]+)\]`)
	formOf     = regexp.MustCompile(`/(cut|mark|center|hidden|text|proof) (\d+) 0 R`)
	titleOf    = regexp.MustCompile(`/Title <FEFF([0-9A-F]*)>`)
	lengthOf   = regexp.MustCompile(`/Length (\d+)>>`)
)

// readPDF follows the table at the end of the file, and holds it against the objects.
func readPDF(t *testing.T, file []byte) pdf {
	t.Helper()
	_, tail, ok := strings.Cut(string(file), "startxref\n")
	at, err := strconv.Atoi(strings.TrimSuffix(tail, "\n%%EOF\n"))
	if !ok || err != nil || !bytes.HasPrefix(file[at:], []byte("xref\n0 ")) {
		t.Fatalf("no table at %q", tail)
	}
	lines := strings.SplitAfter(string(file[at:]), "\n")
	count, err := strconv.Atoi(strings.TrimSpace(strings.TrimPrefix(lines[1], "0 ")))
	if err != nil {
		t.Fatal(err)
	}
	d := pdf{objects: make([]string, count)}
	for i := 1; i < count; i++ {
		line := lines[2+i]
		offset, err := strconv.Atoi(line[:10])
		if err != nil || len(line) != 20 || line[10:] != " 00000 n \n" {
			t.Fatalf("line %d is %q", i, line)
		}
		object, found := strings.CutPrefix(string(file[offset:]), strconv.Itoa(i)+" 0 obj\n")
		object, _, ended := strings.Cut(object, "\nendobj\n")
		if !found || !ended {
			t.Fatalf("object %d is not at %d", i, offset)
		}
		if head, stream, ok := strings.Cut(object, "\nstream\n"); ok {
			if m := lengthOf.FindStringSubmatch(head); m == nil || m[1] != strconv.Itoa(len(stream)-len("\nendstream")) {
				t.Errorf("object %d is %d long: %s", i, len(stream), head)
			}
		}
		if d.objects[i] = object; strings.HasPrefix(object, "<</Type/Page/") {
			d.pages = append(d.pages, object)
		}
	}
	if !strings.Contains(lines[2+count], "trailer") || !strings.Contains(lines[3+count], "/Root 1 0 R") {
		t.Errorf("the table ends with %q", lines[2+count:])
	}
	return d
}

// stream is that of the object whose number stands in text.
func (d pdf) stream(t *testing.T, number string) string {
	t.Helper()
	i, err := strconv.Atoi(number)
	if err != nil {
		t.Fatal(err)
	}
	_, stream, _ := strings.Cut(d.objects[i], "\nstream\n")
	return strings.TrimSuffix(stream, "\nendstream")
}

func (d pdf) content(t *testing.T, page int) string {
	t.Helper()
	return d.stream(t, contentsOf.FindStringSubmatch(d.pages[page])[1])
}

// size is that of a page in points.
func (d pdf) size(t *testing.T, page int) (width, height float64) {
	t.Helper()
	m := mediaBox.FindStringSubmatch(d.pages[page])
	return number(t, m[1]), number(t, m[2])
}

// forms are the forms by the name of their layer.
func (d pdf) forms(t *testing.T) map[string]string {
	t.Helper()
	forms := make(map[string]string)
	for _, m := range formOf.FindAllStringSubmatch(d.objects[5], -1) {
		forms[m[1]] = d.stream(t, m[2])
	}
	return forms
}

// title is that of the document, decoded.
func (d pdf) title(t *testing.T) string {
	t.Helper()
	hex := titleOf.FindStringSubmatch(d.objects[3])[1]
	var s []rune
	for ; len(hex) >= 4; hex = hex[4:] {
		u, _ := strconv.ParseUint(hex[:4], 16, 16)
		if 0xdc00 <= u && u < 0xe000 {
			s[len(s)-1] = (s[len(s)-1]-0xd800)<<10 + rune(u-0xdc00) + 0x10000
			continue
		}
		s = append(s, rune(u))
	}
	return string(s)
}

// strokes is how long the lines are that a content draws, in its own unit, and the
// least rectangle around their ends.
func strokes(t *testing.T, content string) (sum float64, box [4]float64) {
	t.Helper()
	box = [4]float64{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	var stack []float64
	var x, y, startX, startY float64
	to := func(newX, newY float64) {
		x, y = newX, newY
		box = [4]float64{min(box[0], x), min(box[1], y), max(box[2], x), max(box[3], y)}
	}
	for _, token := range strings.Fields(content) {
		if v, err := strconv.ParseFloat(token, 64); err == nil {
			stack = append(stack, v)
			continue
		}
		n := len(stack)
		switch token {
		case "m":
			to(stack[n-2], stack[n-1])
			startX, startY = x, y
		case "l":
			sum += math.Hypot(stack[n-2]-x, stack[n-1]-y)
			to(stack[n-2], stack[n-1])
		case "c":
			sum += bezierLength([4]float64{x, stack[n-6], stack[n-4], stack[n-2]}, [4]float64{y, stack[n-5], stack[n-3], stack[n-1]})
			to(stack[n-2], stack[n-1])
		case "s":
			sum += math.Hypot(startX-x, startY-y)
		}
		stack = nil
	}
	return sum, box
}

//go:build !js

package template_test

import (
	"bytes"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// tool runs a program that others wrote, in a folder. Needed is what the machine has
// where it has that.
func tool(t *testing.T, needed, dir, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(needed); err != nil {
		if os.Getenv("FAIRMITER_CI") == "1" {
			t.Fatal(err)
		}
		t.Skip(err)
	}
	cmd := exec.Command(name, args...)
	cmd.Dir = dir
	var faults bytes.Buffer
	cmd.Stderr = &faults
	out, err := cmd.Output()
	if err != nil || faults.Len() > 0 {
		t.Fatalf("%s: %v\n%s", name, err, faults.String())
	}
	return string(out)
}

func save(t *testing.T, name string, file []byte) string {
	t.Helper()
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, name), file, 0o644); err != nil {
		t.Fatal(err)
	}
	return dir
}

// readWithEzdxf prints the length of each layer's polylines, arc by arc, and every
// fault that ezdxf finds in the drawing.
const readWithEzdxf = `
import sys, math, ezdxf
doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()
for fault in audit.errors + audit.fixes: print("fault", fault.message)
if doc.dxfversion != "AC1009": print("fault", doc.dxfversion)
for e in doc.modelspace():
    if e.dxftype() == "TEXT": continue
    if e.dxf.layer not in doc.layers: print("fault no layer", e.dxf.layer)
    if e.dxftype() == "LINE": print(e.dxf.layer, (e.dxf.end - e.dxf.start).magnitude)
    for p in e.virtual_entities() if e.dxftype() == "POLYLINE" else ():
        if p.dxftype() == "ARC":
            print(e.dxf.layer, p.dxf.radius * math.radians((p.dxf.end_angle - p.dxf.start_angle) % 360))
        else:
            print(e.dxf.layer, (p.dxf.end - p.dxf.start).magnitude)
`

// An independent reader of DXF finds no fault, and each layer as long as it is.
func TestDXFElsewhere(t *testing.T) {
	for name, s := range set(t) {
		t.Run(name, func(t *testing.T) {
			dir := save(t, "a.dxf", must[[]byte](t)(s.DXF(0)))
			d := drawing{layers: make(map[template.Layer]float64)}
			for line := range strings.Lines(tool(t, "ezdxf", dir, "/usr/bin/python3", "-c", readWithEzdxf, "a.dxf")) {
				layer, value, _ := strings.Cut(strings.TrimSpace(line), " ")
				if layer == "fault" {
					t.Error(value)
					continue
				}
				d.layers[template.Layer(layer)] += number(t, value)
			}
			sameLengths(t, d, s)
		})
	}
}

var stroked = regexp.MustCompile(`stroke:rgb\(0%,(31|43)\.[^;]*;.* d="([^"]*)" transform="matrix\(([0-9.]+),0,0,-([0-9.]+),`)

// An independent reader of PDF finds lines and curves as long as they are, within 0.01 mm.
// It knows the layers by their color.
func TestPDFElsewhere(t *testing.T) {
	s := arched()
	s.Spots, s.Words = nil, nil
	s.Paths[0].Layer, s.Paths[1].Layer, s.Paths[2].Layer = template.Mark, template.Center, template.Center
	dir := save(t, "a.pdf", must[[]byte](t)(s.PDF(template.Letter, template.Overlap)))
	got := make(map[template.Layer]float64)
	for _, m := range stroked.FindAllStringSubmatch(tool(t, "pdftocairo", dir, "pdftocairo", "-svg", "-f", "2", "-l", "2", "a.pdf", "-"), -1) {
		if m[3] != m[4] {
			t.Errorf("%s by %s", m[3], m[4])
		}
		// What it writes as the scale has 6 places, of which the last are lost to its own.
		scale := number(t, m[3]) / (72 / 25.4)
		got[map[string]template.Layer{"31": template.Mark, "43": template.Center}[m[1]]] += pathLength(t, m[2]) * scale
	}
	for layer, want := range lengths(sample{Template: s}) {
		if math.Abs(got[layer]-want) > 0.01 {
			t.Errorf("%s is %.4f mm long, want %.4f", layer, got[layer], want)
		}
	}
}

const dpi = 600

// A raster is a page as a printer would set it.
type raster struct {
	width, height int
	gray          []byte
}

// printed are pages of a file as they are set at 600 dpi.
func printed(t *testing.T, dir string, first, last int) []raster {
	t.Helper()
	tool(t, "pdftoppm", dir, "pdftoppm", "-r", strconv.Itoa(dpi), "-gray", "-f", strconv.Itoa(first), "-l", strconv.Itoa(last), "a.pdf", "page")
	files, err := filepath.Glob(filepath.Join(dir, "page-*.pgm"))
	if err != nil || len(files) != last-first+1 {
		t.Fatal(files, err)
	}
	var pages []raster
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		head := bytes.Fields(data[:30])
		width, height := int(number(t, string(head[1]))), int(number(t, string(head[2])))
		pages = append(pages, raster{width, height, data[len(data)-width*height:]})
	}
	return pages
}

// across is where lines stand across a row of the page, y mm from the top: the middle of
// each, in mm from the left.
func (r raster) across(y float64) []float64 {
	at := int(y / 25.4 * dpi)
	return middles(r.width, func(i int) byte { return r.gray[at*r.width+i] })
}

// down is the same for a column, x mm from the left.
func (r raster) down(x float64) []float64 {
	at := int(x / 25.4 * dpi)
	return middles(r.height, func(i int) byte { return r.gray[i*r.width+at] })
}

func middles(n int, gray func(int) byte) (found []float64) {
	var dark, sum float64
	for i := range n + 1 {
		ink := 0.0
		if i < n {
			ink = 255 - float64(gray(i))
		}
		if ink > 0 {
			dark, sum = dark+ink, sum+ink*(float64(i)+0.5)
			continue
		}
		if dark > 0 {
			found = append(found, sum/dark/dpi*25.4)
		}
		dark, sum = 0, 0
	}
	return found
}

// Sheets set at 600 dpi and put together by their marks measure right: two lines 200 mm
// apart, on sheets beside and above each other, within 0.1 mm.
func TestAssembled(t *testing.T) {
	s := bar(350*mm, 350*mm)
	for _, line := range []measure.Length{75 * mm, 275 * mm} {
		s.Paths = append(s.Paths,
			template.Line(template.Cut, at(line, 0), at(line, 350*mm)), template.Line(template.Cut, at(0, line), at(350*mm, line)))
	}
	for _, paper := range papers {
		t.Run(string(paper), func(t *testing.T) {
			dir := save(t, "a.pdf", must[[]byte](t)(s.PDF(paper, template.Overlap)))
			if rows, columns, err := s.Tiles(paper, template.Overlap); rows != 2 || columns != 2 || err != nil {
				t.Fatalf("%d rows and %d columns, %v", rows, columns, err)
			}
			pages := printed(t, dir, 2, 5)
			a1, a2, b1 := pages[0], pages[1], pages[2]
			one := func(marks []float64) float64 {
				t.Helper()
				if len(marks) != 1 {
					t.Fatalf("marks at %v", marks)
				}
				return marks[0]
			}
			// Beside each other: the second line of A1, the last but one of A2.
			left, right := a1.across(120), a2.across(120)
			wide := one(a1.across(7)) - left[1] + right[len(right)-2] - one(a2.across(7))
			// Above each other.
			upper, lower := a1.down(60), b1.down(60)
			high := one(a1.down(7)) - upper[1] + lower[len(lower)-2] - one(b1.down(7))
			if math.Abs(wide-200) > 0.1 || math.Abs(high-200) > 0.1 {
				t.Errorf("%.3f mm wide, %.3f mm high", wide, high)
			}
			t.Logf("%.3f mm wide, %.3f mm high", wide, high)
		})
	}
}

// The square and the ruler of the first sheet measure right.
func TestProof(t *testing.T) {
	for _, paper := range papers {
		dir := save(t, "a.pdf", must[[]byte](t)(bar(100*mm, 100*mm).PDF(paper, template.Overlap)))
		page := printed(t, dir, 1, 1)[0]
		high := float64(page.height) / dpi * 25.4
		sides := page.across(high - 60)
		if len(sides) != 2 || math.Abs(sides[1]-sides[0]-100) > 0.05 {
			t.Errorf("%s: the square's sides stand at %v", paper, sides)
		}
		if levels := page.down(105); len(levels) < 3 || !has(levels, high-40, 0.05) || !has(levels, high-140, 0.05) {
			t.Errorf("%s: the square's top and bottom lie at %v of %g", paper, levels, high)
		}
		// Across the rulers just above their lines, where every tick stands, and after
		// them the name of the unit.
		if ticks := page.across(high - 28); len(ticks) < 151 || math.Abs(ticks[150]-ticks[0]-150) > 0.05 {
			t.Errorf("%s: %d ticks: %v", paper, len(ticks), ticks)
		}
		if ticks := page.across(high - 14); len(ticks) < 97 || math.Abs(ticks[96]-ticks[0]-152.4) > 0.05 {
			t.Errorf("%s: %d ticks: %v", paper, len(ticks), ticks)
		}
	}
}

func has(all []float64, want, within float64) bool {
	for _, v := range all {
		if math.Abs(v-want) < within {
			return true
		}
	}
	return false
}

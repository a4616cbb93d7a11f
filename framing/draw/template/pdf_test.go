package template_test

import (
	"errors"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

var papers = []template.Paper{template.Letter, template.A4}

// Each layer of a file is as long as the template's, and its sheets are of the paper.
func TestPDF(t *testing.T) {
	for name, s := range set(t) {
		for _, paper := range papers {
			t.Run(name+"/"+string(paper), func(t *testing.T) {
				d := readPDF(t, must[[]byte](t)(s.PDF(paper, template.Overlap)))
				want := lengths(s)
				for _, p := range s.Spots {
					want[p.Layer] += 4*math.Max(3, float64(p.Diameter)/2e6+1) + math.Pi*float64(p.Diameter)/1e6
				}
				for layer, form := range d.forms(t) {
					if got, _ := strokes(t, form); math.Abs(got-want[template.Layer(layer)]) > near {
						t.Errorf("%s is %.4f mm long, want %.4f", layer, got, want[template.Layer(layer)])
					}
				}
				rows, columns, err := s.Tiles(paper, template.Overlap)
				if err != nil || len(d.pages) != 1+rows*columns {
					t.Errorf("%d pages for %d rows and %d columns, %v", len(d.pages), rows, columns, err)
				}
				size := map[template.Paper][2]float64{template.Letter: {612, 792}, template.A4: {210 / 25.4 * 72, 297 / 25.4 * 72}}[paper]
				for i := range d.pages {
					w, h := d.size(t, i)
					if w > h {
						w, h = h, w
					}
					if math.Abs(w-size[0]) > 1e-4 || math.Abs(h-size[1]) > 1e-4 {
						t.Errorf("page %d is %g x %g", i, w, h)
					}
				}
				if got := d.title(t); got != s.Title {
					t.Errorf("the title is %q, want %q", got, s.Title)
				}
			})
		}
	}
}

var moved = regexp.MustCompile(`\n10 24 ([0-9.]+) ([0-9.]+) re\nW n\n1 0 0 1 (-?[0-9.]+) (-?[0-9.]+) cm\n`)

// The windows of the sheets, put where they look, overlap by the overlap and cover
// the shape with its lines.
func TestTilesCover(t *testing.T) {
	for _, paper := range papers {
		for _, overlap := range []measure.Length{0, 10 * mm, 50 * mm} {
			s := hexagon(t)
			d := readPDF(t, must[[]byte](t)(s.PDF(paper, overlap)))
			rows, columns, err := s.Tiles(paper, overlap)
			if err != nil {
				t.Fatal(err)
			}
			type window struct{ left, bottom, right, top float64 }
			var windows []window
			for i := 1; i < len(d.pages); i++ {
				m := moved.FindStringSubmatch(d.content(t, i))
				if m == nil {
					t.Fatalf("page %d has no window", i)
				}
				left, bottom := 10-number(t, m[3]), 24-number(t, m[4])
				windows = append(windows, window{left, bottom, left + number(t, m[1]), bottom + number(t, m[2])})
			}
			same := func(a, b float64) bool { return math.Abs(a-b) < 1e-9 }
			for i, w := range windows {
				if (i+1)%columns != 0 && !same(w.right-windows[i+1].left, float64(overlap)/1e6) {
					t.Errorf("sheets %d and %d overlap by %g", i, i+1, w.right-windows[i+1].left)
				}
				if i+columns < len(windows) && !same(windows[i+columns].top-w.bottom, float64(overlap)/1e6) {
					t.Errorf("sheets %d and %d overlap by %g", i, i+columns, windows[i+columns].top-w.bottom)
				}
			}
			first, last := windows[0], windows[len(windows)-1]
			_, box := strokes(t, d.forms(t)["cut"])
			left, right := box[0]-first.left, last.right-box[2]
			low, high := box[1]-last.bottom, first.top-box[3]
			if !same(left, right) || !same(low, high) || left < 1 || low < 1 || rows*columns != len(windows) {
				t.Errorf("%s, %v: the shape lies %g, %g, %g, %g mm within", paper, overlap, left, right, low, high)
			}
		}
	}
}

// As many sheets as the shape takes and none more: those that just fit, and a nanometer
// more.
func TestTiles(t *testing.T) {
	// Upright, a sheet of A4 shows 190 x 263 mm, of which 1 mm around is left white.
	for _, row := range []struct {
		width, height measure.Length
		rows, columns int
	}{
		{188 * mm, 261 * mm, 1, 1},
		{188*mm + 1, 200 * mm, 1, 2},
		{188*mm + 1, 174 * mm, 1, 1}, // on its side
		{188 * mm, 261*mm + 1, 2, 1},
		{368 * mm, 514 * mm, 2, 2},
		{368*mm + 1, 514 * mm, 2, 3},
	} {
		rows, columns, err := bar(row.width, row.height).Tiles(template.A4, 10*mm)
		if rows*columns != row.rows*row.columns || err != nil {
			t.Errorf("%v x %v takes %d x %d, %v; want %d x %d", row.width, row.height, rows, columns, err, row.rows, row.columns)
		}
	}
}

// bar is a rectangle.
func bar(width, height measure.Length) template.Template {
	return template.Template{Paths: []template.Path{{Layer: template.Cut, Closed: true, Vertices: []template.Vertex{
		{}, {Point: at(width, 0)}, {Point: at(width, height)}, {Point: at(0, height)},
	}}}}
}

func TestPDFRefused(t *testing.T) {
	for _, row := range []struct {
		name    string
		s       template.Template
		paper   template.Paper
		overlap measure.Length
		code    explain.Code
		limit   string
	}{
		{"paper", bar(mm, mm), "legal", 0, explain.NotAChoice, "letter, a4"},
		{"no paper", bar(mm, mm), "", 0, explain.NotAChoice, "letter, a4"},
		{"overlap", bar(mm, mm), template.A4, 50*mm + 1, explain.OutOfRange, "0 mm to 50 mm"},
		{"below nothing", bar(mm, mm), template.A4, -1, explain.OutOfRange, "0 mm to 50 mm"},
		{"large", bar(5000*mm, 5000*mm), template.A4, 10 * mm, template.TooLarge, "400"},
		{"all", bar(100*measure.Meter, 100*measure.Meter), template.Letter, 50 * mm, template.TooLarge, "400"},
		{"empty", template.Template{}, template.A4, 0, explain.TooFew, "1"},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.s.PDF(row.paper, row.overlap)
			_, _, tiles := row.s.Tiles(row.paper, row.overlap)
			for _, err := range []error{err, tiles} {
				var problem explain.Problem
				if !errors.As(err, &problem) || problem.Code != row.code || !strings.Contains(problem.Accepted, row.limit) {
					t.Errorf("%v, want %s, %s", err, row.code, row.limit)
				}
			}
		})
	}
}

// How names stand on a sheet: what the font has as itself, the rest by its code, and
// all of it in the title of the document.
func TestTextOfPDF(t *testing.T) {
	for _, row := range []struct{ title, want string }{
		{"Anna (oak) \\ 7", `(Anna \(oak\) \\ 7) Tj`},
		{"Café €5 – “x”", `(Caf\351 \2005 \226 \223x\224) Tj`},
		{"Łódź", `(\\U+0141\363d\\U+017A) Tj`},
		{"李 😀", `(\\U+674E \\U+D83D\\U+DE00) Tj`},
		{"a\x01b\nc", `(ab c) Tj`},
	} {
		s := bar(100*mm, 100*mm)
		s.Title = row.title
		d := readPDF(t, must[[]byte](t)(s.PDF(template.A4, 0)))
		for page := range d.pages {
			if content := d.content(t, page); !strings.Contains(content, row.want) {
				t.Errorf("page %d of %q has no %s", page, row.title, row.want)
			}
		}
		if got := strings.NewReplacer("\x01", "", "\n", " ").Replace(row.title); d.title(t) != got {
			t.Errorf("the title is %q, want %q", d.title(t), got)
		}
	}
}

// Every note is printed, on a sheet of its own where there is no more room.
func TestNotes(t *testing.T) {
	s := bar(100*mm, 100*mm)
	for i := range 40 {
		s.Notes = append(s.Notes, strings.Repeat(string(rune('a'+i%26)), 10)+" "+strings.Repeat("word ", 60))
	}
	d := readPDF(t, must[[]byte](t)(s.PDF(template.A4, 0)))
	all := ""
	for page := range d.pages {
		all += d.content(t, page)
	}
	for _, note := range s.Notes {
		if first, _, _ := strings.Cut(note, " "); !strings.Contains(all, "("+first) {
			t.Errorf("%q is on no sheet", first)
		}
	}
	if words := strings.Count(all, "word"); words != 40*60 {
		t.Errorf("%d words, want %d", words, 40*60)
	}
}

// The same template gives the same bytes.
func TestSame(t *testing.T) {
	for name, s := range set(t) {
		for _, write := range []func() ([]byte, error){
			s.SVG, func() ([]byte, error) { return s.DXF(0) }, func() ([]byte, error) { return s.PDF(template.A4, 10*mm) },
		} {
			if a, b := must[[]byte](t)(write()), must[[]byte](t)(write()); !slices.Equal(a, b) {
				t.Errorf("%s differs", name)
			}
		}
	}
}

package draw

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// sampleOrders reads the sample orders.
func sampleOrders(t testing.TB) map[string]framing.Plan {
	t.Helper()
	files, err := filepath.Glob("../../testdata/orders/*.json")
	if err != nil || len(files) < 6 {
		t.Fatalf("sample orders: %v, %v", files, err)
	}
	plans := map[string]framing.Plan{}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if plans[file], err = framing.NewReading(data).Work(); err != nil {
			t.Fatal(file, err)
		}
	}
	return plans
}

// everyPaper are papers from a phone to a poster.
func everyPaper() []Options {
	return []Options{{}, {Width: 360, Height: 520}, {Width: 1400, Height: 900, Interactive: true}, {Width: 1, Height: 1 << 40}}
}

// TestSamples holds all the drawings of the sample orders to the rules.
func TestSamples(t *testing.T) {
	for name, plan := range sampleOrders(t) {
		texts := figures(t, plan)
		for i := range plan.Pieces {
			for _, view := range Front.Choices() {
				for _, o := range everyPaper() {
					name := fmt.Sprint(filepath.Base(name), i, view, o)
					s := check(t, name, SVG(plan, i, View(view), o))
					checkNumbers(t, name, s, texts)
					if shape := &plan.Pieces[i].Shape; len(s.numbers) < 2 && shape.IsZero() && view != string(Setup) {
						t.Errorf("%s: only %d numbers", name, len(s.numbers))
					}
				}
			}
		}
	}
}

// checkNumbers holds every number against its figure.
func checkNumbers(t testing.TB, name string, s seen, texts map[string]string) {
	t.Helper()
	for path, text := range s.numbers {
		if strings.HasPrefix(path, "/order/") {
			continue
		}
		if s.given[path] {
			t.Errorf("%s: %s is marked as given", name, path)
		}
		// Nobody reads a minus off a tape: a word says which way.
		if want, ok := texts[path]; !ok || text != strings.Replace(want, "-", "", 1) {
			t.Errorf("%s: %s is %q, want %q", name, path, text, want)
		}
	}
}

// TestGivenReadsBack: a number that is given says what the order says, as it is
// read.
func TestGivenReadsBack(t *testing.T) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		t.Fatal(err)
	}
	s := check(t, "sample", SVG(plan, 0, Front, Options{}))
	p := plan.Order.Pieces[0]
	for path, want := range map[string]measure.Length{
		"/art/width": p.Art.Width, "/art/height": p.Art.Height, "/frame/face": p.Frame.Face,
		"/mat/borders/left": p.Mat.Borders.Left, "/mat/borders/bottom": p.Mat.Borders.Bottom,
	} {
		path = "/order/pieces/0" + path
		got, err := measure.Parse(s.numbers[path], measure.Inches)
		if err != nil || got != want || !s.given[path] {
			t.Errorf("%s is %q, given %v; want %v", path, s.numbers[path], s.given[path], want)
		}
	}
}

// A maker makes orders.
type maker struct{ *rand.Rand }

func (m maker) length(least, most measure.Length) measure.Length {
	const step = measure.Inch / 16
	return (least + measure.Length(m.Int64N(int64(most-least)+1))) / step * step
}

func (m maker) order() framing.Order {
	const in = measure.Inch
	units := []framing.Units{framing.Inches, framing.Millimeters}[m.IntN(2)]
	o := framing.NewOrder(units)
	if units == framing.Inches && m.IntN(4) == 0 {
		o.Show = framing.ShowAs(framing.AsFeet)
	}
	p := framing.NewPiece(o.Shop)
	p.Name = []string{"", "A print", strings.Repeat("long ", 60), "<script>alert('x')</script>"}[m.IntN(4)]
	kinds := p.Art.Kind.Choices()
	p.Art.Kind = framing.ArtKind(kinds[m.IntN(len(kinds))])
	p.Art.Width, p.Art.Height = m.length(2*in, 90*in), m.length(2*in, 90*in)
	if m.IntN(3) == 0 {
		p.Art.Width = m.length(2*in, 4*in)
	}
	p.Art.Thickness = m.length(0, in)
	frame := func() molding.Frame {
		f := framing.NewFrame(o.Shop)
		f.Face = m.length(in/4, 4*in)
		f.Lip = min(m.length(in/16, in/2), f.Face/2)
		f.Rabbet = m.length(0, 2*in)
		f.Height = f.Rabbet + m.length(in/16, 3*in)
		return f
	}
	p.Frame = frame()
	if m.IntN(2) == 0 {
		p.Mat = framing.NewMat(o.Shop)
		p.Mat.Borders.Sides = measure.Sides{Left: m.length(in/4, 5*in), Right: m.length(in/4, 5*in), Top: m.length(in/4, 5*in), Bottom: m.length(in/4, 6*in)}
		for i := range m.IntN(1 + mat.MaxUnder) {
			p.Mat.Under[i] = framing.NewUnderMat(o.Shop)
			p.Mat.Under[i].Reveal = m.length(in/16, in/2)
		}
		p.Glazing = framing.NewGlazing(o.Shop, glazing.Acrylic)
		p.Mount = framing.NewSheet(o.Shop, molding.Board)
	}
	if m.IntN(4) == 0 {
		p.Liner = frame()
	} else if m.IntN(4) == 0 && p.Mat.IsZero() {
		p.Frame.Kind, p.Frame.Lip, p.Frame.Ledge = molding.Floater, 0, m.length(0, 2*in)
	}
	if m.IntN(2) == 0 {
		p.Backing = framing.NewSheet(o.Shop, molding.Corrugated)
	}
	if m.IntN(2) == 0 {
		p.Hang = hang.Usual(units == framing.Inches)
		p.Hang.By = hang.Way(p.Hang.By.Choices()[m.IntN(3)])
		p.Hang.Hooks = 1 + m.IntN(2)
		p.Hang.Taut.Angle = []measure.Angle{20, 30, 45, 80}[m.IntN(4)] * measure.Degree
		p.Hang.NailAbove = m.length(0, in)
	}
	o.Pieces = []framing.Piece{p}
	return o
}

// TestDrawnOrders draws a lot of orders, most of them odd: nothing collides and
// every number is its figure's.
func TestDrawnOrders(t *testing.T) {
	m := maker{rand.New(rand.NewPCG(5, 8))}
	worked := 0
	for n := range 400 {
		plan, err := framing.Work(m.order())
		if err != nil {
			continue
		}
		worked++
		texts := figures(t, plan)
		for _, view := range Front.Choices() {
			o := everyPaper()[n%4]
			name := fmt.Sprint(n, view, o)
			s := check(t, name, SVG(plan, 0, View(view), o))
			checkNumbers(t, name, s, texts)
			if t.Failed() {
				t.Logf("%+v", plan.Order.Pieces[0])
				t.FailNow()
			}
		}
	}
	if worked < 300 {
		t.Errorf("only %d of the orders could be worked", worked)
	}
}

// TestParts: every part of the piece can be tapped.
func TestParts(t *testing.T) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		t.Fatal(err)
	}
	for view, want := range map[View][]string{
		Front:   {"art", "frame", "mat"},
		Section: {"art", "backing", "frame", "glazing", "mat", "mount"},
		Back:    {"backing", "frame"},
	} {
		plan.Pieces[0].Hang = framing.HangPlan{}
		got := slices.Sorted(maps.Keys(read(t, SVG(plan, 0, view, Options{Interactive: true})).parts))
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", view, got, want)
		}
	}
}

// TestNotFitting: a package too thick is drawn as standing out.
func TestNotFitting(t *testing.T) {
	o := framing.Sample()
	o.Pieces[0].Frame.Rabbet = measure.Inch / 8
	plan, err := framing.Work(o)
	if err != nil {
		t.Fatal(err)
	}
	svg := SVG(plan, 0, Section, Options{})
	if !strings.Contains(svg, badFill) || !strings.Contains(svg, `class="dim worked bad"`) {
		t.Error("what stands out is not marked")
	}
	if !strings.Contains(svg, "stands proud") || strings.Contains(svg, words("clear")) {
		t.Error("that it stands out is not said in words")
	}
	o.Pieces[0].Frame.Rabbet, o.Pieces[0].Frame.Height = 3*measure.Inch, 4*measure.Inch
	if plan, err = framing.Work(o); err != nil {
		t.Fatal(err)
	}
	if svg := SVG(plan, 0, Section, Options{}); strings.Contains(svg, "bad") {
		t.Error("what fits is marked")
	}
}

// TestLinerProud: what stands out behind the liner, and the liner behind the
// frame, are said in words.
func TestLinerProud(t *testing.T) {
	o := framing.Sample()
	p := &o.Pieces[0]
	p.Liner = framing.NewFrame(o.Shop)
	p.Liner.Face, p.Liner.Lip, p.Liner.Rabbet, p.Liner.Height = measure.Inch, measure.Inch/4, measure.Inch/8, measure.Inch
	p.Frame.Rabbet, p.Frame.Height = measure.Inch/2, 2*measure.Inch
	plan, err := framing.Work(o)
	if err != nil {
		t.Fatal(err)
	}
	svg := SVG(plan, 0, Section, Options{})
	for _, want := range []string{"stands proud", "package proud", "liner proud"} {
		if !strings.Contains(svg, ">"+want+"<") {
			t.Errorf("%q is not said", want)
		}
	}
	p.Frame.Kind, p.Frame.Gap, p.Frame.Lip = "floater", measure.Inch/4, 0
	if plan, err = framing.Work(o); err != nil {
		t.Fatal(err)
	}
	if svg := SVG(plan, 0, Section, Options{}); !strings.Contains(svg, ">in front<") || strings.Contains(svg, "liner proud") {
		t.Error("a liner may stand in front of a floater")
	}
}

// TestHostile: names do nothing, whatever they hold, and stay on the paper.
func TestHostile(t *testing.T) {
	for _, name := range hostile {
		checkName(t, name)
	}
}

var hostile = []string{
	`<script>alert(1)</script>`, `"><g onload="x">`, `&lt;&#60;`, "]]>", "שלום עולם", "a\u202eb\x00\x1b[2J\ufffe", "🖼️🪚",
	"\xff\xfe", strings.Repeat("W", 5000), "Z" + strings.Repeat("\u0301", 100), "'quoted' \"twice\"", "\u2028",
}

func checkName(t testing.TB, name string) {
	o := framing.Sample()
	o.Pieces[0].Name = "x"
	plan, err := framing.Work(o)
	if err != nil {
		t.Fatal(err)
	}
	plan.Pieces[0].Name = name
	for _, view := range Front.Choices() {
		check(t, name, SVG(plan, 0, View(view), Options{}))
	}
}

func FuzzName(f *testing.F) {
	for _, name := range hostile {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) { checkName(t, name) })
}

// TestNothing: what does not exist is an empty sheet.
func TestNothing(t *testing.T) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		t.Fatal(err)
	}
	unworked := plan
	unworked.Pieces = []framing.PiecePlan{{}}
	for _, svg := range []string{
		SVG(framing.Plan{}, 0, Front, Options{}), SVG(plan, -1, Back, Options{}), SVG(plan, 1, Section, Options{}),
		SVG(plan, 0, "sideways", Options{}), SVG(unworked, 0, Front, Options{Interactive: true}),
	} {
		if s := read(t, svg); len(s.numbers) != 0 || !strings.Contains(svg, "Nothing to draw") {
			t.Errorf("%d numbers in %s", len(s.numbers), svg)
		}
	}
	read(t, SVG(framing.Plan{Pieces: []framing.PiecePlan{{Worked: true}}, Order: framing.Order{Pieces: make([]framing.Piece, 1)}}, 0, Front, Options{}))
}

// TestSame: the same plan gives the same bytes, appended to what is there.
func TestSame(t *testing.T) {
	for name, plan := range sampleOrders(t) {
		for _, view := range Front.Choices() {
			a, b := SVG(plan, 0, View(view), Options{}), AppendSVG([]byte("before"), plan, 0, View(view), Options{})
			if "before"+a != string(b) {
				t.Errorf("%s: the %s differs", name, view)
			}
		}
	}
}

// TestSpoken: the description says the outside.
func TestSpoken(t *testing.T) {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		t.Fatal(err)
	}
	want := "The frame is 16 and one quarter inches by 20 and one half inches outside"
	if svg := SVG(plan, 0, Front, Options{}); !strings.Contains(svg, want) {
		t.Errorf("no %q", want)
	}
}

// TestShorten: a text that fits stays, one that does not ends in an ellipsis and
// fits.
func TestShorten(t *testing.T) {
	const text = "Harbor office"
	w := textWidth(text, wordSize, false)
	if got := shorten(text, wordSize, w); got != text {
		t.Errorf("got %q", got)
	}
	if got := shorten(text, wordSize, w-1); got == text || !strings.HasSuffix(got, "…") || textWidth(got, wordSize, false) > w-1 {
		t.Errorf("got %q", got)
	}
}

func TestAppendUnits(t *testing.T) {
	for n, want := range map[int]string{0: "0", 100: "1", 150: "1.5", 5: "0.05", -5: "-0.05", -12345: "-123.45", 110: "1.1"} {
		if got := string(appendUnits(nil, n)); got != want {
			t.Errorf("%d: %s, want %s", n, got, want)
		}
	}
}

func BenchmarkSVG(b *testing.B) {
	o := framing.Sample()
	o.Pieces[0].Hang = hang.Usual(true)
	plan, err := framing.Work(o)
	if err != nil {
		b.Fatal(err)
	}
	for _, view := range Front.Choices() {
		b.Run(view, func(b *testing.B) {
			b.ReportAllocs()
			var buf []byte
			for b.Loop() {
				buf = AppendSVG(buf[:0], plan, 0, View(view), Options{})
			}
		})
	}
}

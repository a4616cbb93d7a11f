package measure

import (
	"math/rand/v2"
	"strings"
	"testing"
)

// formats returns every valid Format.
func formats() []Format {
	all := []Format{{}}
	for style := Fraction; style <= Metric; style++ {
		for _, step := range Steps(style) {
			all = append(all, Format{style, step})
		}
	}
	return all
}

// written are lengths that their format shows exactly, each read both ways.
var written = []struct {
	format Format
	length Length
	number string
	text   string
	spoken string
}{
	{Format{}, 0, "0", "0 mm", "0 millimeters"},
	{Format{}, -Nanometer, "-0.000001", "-0.000001 mm", "minus 0.000001 millimeters"},
	{Format{}, 4714875 * Micrometer / 10, "471.4875", "471.4875 mm", "471.4875 millimeters"},
	{Format{}, Millimeter, "1", "1 mm", "1 millimeter"},
	{Format{}, maxInt64, "9223372036854.775807", "9223372036854.775807 mm", "9223372036854.775807 millimeters"},
	{Format{}, minInt64, "-9223372036854.775808", "-9223372036854.775808 mm", "minus 9223372036854.775808 millimeters"},

	{Format{Fraction, Inch / 16}, 20*Inch + 13*sixteenth, "20 13/16", "20 13/16 in", "20 and 13 sixteenths inches"},
	{Format{Fraction, Inch / 16}, 0, "0", "0 in", "0 inches"},
	{Format{Fraction, Inch / 16}, Inch, "1", "1 in", "1 inch"},
	{Format{Fraction, Inch / 16}, -Inch, "-1", "-1 in", "minus 1 inch"},
	{Format{Fraction, Inch / 16}, 2 * Inch, "2", "2 in", "2 inches"},
	{Format{Fraction, Inch / 8}, -9 * Inch / 8, "-1 1/8", "-1 1/8 in", "minus 1 and one eighth inches"},
	{Format{Fraction, Inch / 8}, -Inch / 8, "-1/8", "-1/8 in", "minus one eighth inch"},
	{Format{Fraction, Inch / 64}, Inch / 2, "1/2", "1/2 in", "one half inch"},
	{Format{Fraction, Inch / 64}, 5 * Inch / 4, "1 1/4", "1 1/4 in", "1 and one quarter inches"},
	{Format{Fraction, Inch / 64}, 3 * Inch / 4, "3/4", "3/4 in", "3 quarters inch"},
	{Format{Fraction, Inch / 64}, 3*Inch + 7*Inch/32, "3 7/32", "3 7/32 in", "3 and 7 thirty-seconds inches"},
	{Format{Fraction, Inch / 64}, 33 * sixtyFourth, "33/64", "33/64 in", "33 sixty-fourths inch"},
	{Format{Fraction, Inch / 64}, sixtyFourth, "1/64", "1/64 in", "one sixty-fourth inch"},

	{Format{FeetInches, Inch / 16}, 20*Inch + 13*sixteenth, `1' 8 13/16"`, `1' 8 13/16"`, "1 foot 8 and 13 sixteenths inches"},
	{Format{FeetInches, Inch / 16}, 8*Inch + 13*sixteenth, `8 13/16"`, `8 13/16"`, "8 and 13 sixteenths inches"},
	{Format{FeetInches, Inch / 8}, 60*Inch + 3*Inch/4, `5' 3/4"`, `5' 3/4"`, "5 feet and 3 quarters inch"},
	{Format{FeetInches, Inch / 8}, Foot, `1' 0"`, `1' 0"`, "1 foot"},
	{Format{FeetInches, Inch / 8}, 13 * Inch, `1' 1"`, `1' 1"`, "1 foot 1 inch"},
	{Format{FeetInches, Inch / 8}, -20 * Inch, `-1' 8"`, `-1' 8"`, "minus 1 foot 8 inches"},
	{Format{FeetInches, Inch / 8}, 0, `0"`, `0"`, "0 inches"},
	{Format{FeetInches, Inch / 8}, Inch / 2, `1/2"`, `1/2"`, "one half inch"},

	{Format{DecimalInch, Inch / 1000}, 20*Inch + 813*Inch/1000, "20.813", "20.813 in", "20.813 inches"},
	{Format{DecimalInch, Inch / 1000}, Inch / 2, "0.5", "0.5 in", "0.5 inches"},
	{Format{DecimalInch, Inch / 100}, Inch, "1", "1 in", "1 inch"},
	{Format{DecimalInch, Inch / 10}, -Inch / 10, "-0.1", "-0.1 in", "minus 0.1 inches"},

	{Format{Metric, Millimeter / 2}, 5285 * Millimeter / 10, "528.5", "528.5 mm", "528.5 millimeters"},
	{Format{Metric, Millimeter / 10}, 528 * Millimeter, "528", "528 mm", "528 millimeters"},
	{Format{Metric, Millimeter}, Millimeter, "1", "1 mm", "1 millimeter"},
	{Format{Metric, Millimeter}, -Millimeter, "-1", "-1 mm", "minus 1 millimeter"},
	{Format{Metric, Millimeter / 10}, Millimeter / 2, "0.5", "0.5 mm", "0.5 millimeters"},
}

func TestFormatBothWays(t *testing.T) {
	for _, c := range written {
		for _, d := range []Direction{Nearest, Down, Up} {
			if got := c.format.Number(c.length, d); got != c.number {
				t.Errorf("%v.Number(%v, %v) = %q, want %q", c.format, c.length, d, got, c.number)
			}
			if got := c.format.Text(c.length, d); got != c.text {
				t.Errorf("%v.Text(%v, %v) = %q, want %q", c.format, c.length, d, got, c.text)
			}
			if got := c.format.Spoken(c.length, d); got != c.spoken {
				t.Errorf("%v.Spoken(%v, %v) = %q, want %q", c.format, c.length, d, got, c.spoken)
			}
		}
		if got, err := Parse(c.number, c.format.Unit()); got != c.length || err != nil {
			t.Errorf("Parse(%q, %v) = %v, %v; want %v", c.number, c.format.Unit(), got, err, c.length)
		}
		if got, err := Parse(c.text, NoUnit); got != c.length || err != nil {
			t.Errorf("Parse(%q) = %v, %v; want %v", c.text, got, err, c.length)
		}
	}
}

func TestFormatRounds(t *testing.T) {
	l := 20*Inch + 13*sixteenth + Nanometer // 1 nm over 20 13/16
	for _, c := range []struct {
		f         Format
		d         Direction
		text      string
		remainder Length
	}{
		{Format{Fraction, Inch / 16}, Nearest, "20 13/16 in", 1},
		{Format{Fraction, Inch / 16}, Down, "20 13/16 in", 1},
		{Format{Fraction, Inch / 16}, Up, "20 7/8 in", 1 - sixteenth},
		{Format{Fraction, Inch / 8}, Nearest, "20 7/8 in", 1 - sixteenth},
		{Format{FeetInches, Inch / 8}, Down, `1' 8 3/4"`, sixteenth + 1},
		{Format{DecimalInch, Inch / 1000}, Nearest, "20.813 in", l - 20813*Inch/1000},
		{Format{Metric, Millimeter / 2}, Up, "529 mm", l - 529*Millimeter},
		{Format{}, Up, "528.637501 mm", 0},
	} {
		got, remainder := c.f.AppendMarked([]byte("cut "), l, c.d)
		if string(got) != "cut "+c.text || remainder != c.remainder {
			t.Errorf("%v %v: %q, %d; want %q, %d", c.f, c.d, got, remainder, c.text, c.remainder)
		}
		if shown, r := c.f.Round(l, c.d); r != remainder || shown+r != l {
			t.Errorf("%v %v: Round gives %v and %v", c.f, c.d, shown, r)
		}
	}
	// A foot that fills up carries.
	if got := (Format{FeetInches, Inch / 8}).Text(Foot-1, Up); got != `1' 0"` {
		t.Errorf("a nanometer under a foot, up: %s", got)
	}
	if got := (Format{FeetInches, Inch / 8}).Text(1-Foot, Down); got != `-1' 0"` {
		t.Errorf("a nanometer over minus a foot, down: %s", got)
	}
}

func TestAppendExact(t *testing.T) {
	l := 20*Inch + 13*sixteenth
	for _, c := range []struct {
		f    Format
		l    Length
		want string
	}{
		{Format{Fraction, Inch / 8}, l, "20 13/16 in"}, // finer than the step
		{Format{FeetInches, Inch / 8}, l, `1' 8 13/16"`},
		{Format{DecimalInch, Inch / 10}, l, "20.8125 in"},
		{Format{Metric, Millimeter}, l, "528.6375 mm"},
		{Format{}, l, "528.6375 mm"},
		{Format{Fraction, Inch / 8}, Inch / 10, "0.1 in"},
		{Format{FeetInches, Inch / 8}, 13*Inch + Inch/10, "13.1 in"},
		{Format{Fraction, Inch / 8}, 127, "0.000005 in"},
		{Format{Fraction, Inch / 8}, 128, "0.000128 mm"},
		{Format{DecimalInch, Inch / 10}, -sixtyFourth, "-0.015625 in"},
		{Format{Fraction, Inch / 8}, Millimeter, "1 mm"},
		{Format{Fraction, Inch / 7}, l, "528.6375 mm"},
	} {
		if got := string(c.f.AppendExact(nil, c.l)); got != c.want {
			t.Errorf("%v.AppendExact(%d) = %q, want %q", c.f, c.l, got, c.want)
		}
	}
}

func TestNewFormat(t *testing.T) {
	for _, f := range formats() {
		if got, err := NewFormat(f.Style, f.Step); got != f || err != nil {
			t.Errorf("NewFormat(%v, %v) = %v, %v", f.Style, f.Step, got, err)
		}
	}
	for _, c := range []struct {
		f    Format
		want string
	}{
		{Format{Fraction, Millimeter}, "measure: the style fraction has no step of 1 mm; accepted: 1/8 in, 1/16 in, 1/32 in, 1/64 in"},
		{Format{FeetInches, 0}, `measure: the style feet and inches has no step of 0 mm; accepted: 1/8", 1/16", 1/32", 1/64"`},
		{Format{DecimalInch, Inch / 64}, "measure: the style decimal inch has no step of 0.396875 mm; accepted: 0.1 in, 0.01 in, 0.001 in"},
		{Format{Metric, Centimeter}, "measure: the style metric has no step of 10 mm; accepted: 1 mm, 0.5 mm, 0.1 mm"},
		{Format{Exact, Millimeter}, "measure: the style exact has no step of 1 mm; accepted: 0"},
		{Format{Style(9), 0}, "measure: the style exact has no step of 0 mm; accepted: 0"},
	} {
		got, err := NewFormat(c.f.Style, c.f.Step)
		if err == nil || err.Error() != c.want || got != (Format{}) {
			t.Errorf("NewFormat(%v) = %v, %v; want %s", c.f, got, err, c.want)
		}
	}
}

// A Format that NewFormat would refuse writes as the zero Format does.
func TestOddFormatIsExact(t *testing.T) {
	l := 20*Inch + 13*sixteenth + 1
	for _, f := range []Format{
		{Fraction, 0}, {Fraction, -Inch / 8}, {Fraction, Inch / 128}, {Fraction, Inch / 3}, {FeetInches, Inch},
		{DecimalInch, Inch / 64}, {Metric, 1}, {Metric, minInt64}, {Exact, Inch}, {Style(9), Inch / 8}, {Style(255), 0},
	} {
		if got := f.Text(l, Up); got != l.String() {
			t.Errorf("%v writes %q, want %q", f, got, l.String())
		}
		if shown, r := f.Round(l, Up); shown != l || r != 0 || f.Unit() != Millimeters {
			t.Errorf("%v rounds to %v and %v, unit %v", f, shown, r, f.Unit())
		}
		if got := f.Spoken(l, Up); got != "528.637501 millimeters" {
			t.Errorf("%v says %q", f, got)
		}
		if g, ok := f.Finer(); ok || g != f {
			t.Errorf("%v has a finer %v", f, g)
		}
	}
}

func TestStepsAndFiner(t *testing.T) {
	for style, want := range map[Style]int{Exact: 0, Fraction: 4, FeetInches: 4, DecimalInch: 3, Metric: 3, 77: 0} {
		steps := Steps(style)
		if len(steps) != want {
			t.Fatalf("Steps(%v) = %v", style, steps)
		}
		if want == 0 {
			continue
		}
		f, ok := Format{style, steps[0]}, true
		for i, step := range steps {
			if !ok || f.Step != step || i > 0 && step >= steps[i-1] {
				t.Errorf("Steps(%v) = %v, but Finer comes to %v", style, steps, f)
			}
			f, ok = f.Finer()
		}
		if ok || f.Step != steps[len(steps)-1] {
			t.Errorf("%v is finer than the finest", f)
		}
		steps[0] = 0
		if Steps(style)[0] == 0 {
			t.Error("Steps hands out its own slice")
		}
	}
}

// Everything written is read back, over lengths of every size.
func TestFormatReadsBack(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 20_000 {
		l := Length(rng.Uint64()) >> rng.IntN(64)
		for _, f := range formats() {
			d := Direction(rng.IntN(3))
			checkFormat(t, f, l, d)
		}
	}
	for _, l := range extremes() {
		for _, f := range formats() {
			for d := Nearest; d <= Up; d++ {
				checkFormat(t, f, l, d)
			}
		}
	}
}

func extremes() []Length {
	return []Length{0, 1, -1, maxInt64, maxInt64 - 1, minInt64, minInt64 + 1, Inch, -Inch, Foot, -Foot, Foot - 1, sixtyFourth / 2}
}

func checkFormat(t *testing.T, f Format, l Length, d Direction) {
	t.Helper()
	shown, remainder := f.Round(l, d)
	if shown+remainder != l {
		t.Fatalf("%v: %d is shown as %d with %d left", f, l, shown, remainder)
	}
	number, r := f.Append(nil, l, d)
	if got, err := Read(string(number), f.Unit()); got.Length != shown || err != nil || got.Rounded || r != remainder {
		t.Fatalf("%v.Append(%d, %v) = %q, %d, which reads as %+v, %v; want %d", f, l, d, number, r, got, err, shown)
	}
	marked, r := f.AppendMarked(nil, l, d)
	if got, err := Read(string(marked), NoUnit); got.Length != shown || err != nil || got.Bare || r != remainder {
		t.Fatalf("%v.AppendMarked(%d, %v) = %q, %d, which reads as %+v, %v; want %d", f, l, d, marked, r, got, err, shown)
	}
	exact := f.AppendExact(nil, l)
	if got, err := Read(string(exact), NoUnit); got.Length != l || err != nil || got.Rounded {
		t.Fatalf("%v.AppendExact(%d) = %q, which reads as %+v, %v", f, l, exact, got, err)
	}
	spoken := f.Spoken(l, d)
	if spoken == "" || strings.HasPrefix(spoken, "minus ") != (shown < 0) || strings.Contains(spoken, "/") || strings.Contains(spoken, "  ") {
		t.Fatalf("%v says %q for %d", f, spoken, l)
	}
}

func TestNames(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{Exact.String(), "exact"}, {Fraction.String(), "fraction"}, {FeetInches.String(), "feet and inches"},
		{DecimalInch.String(), "decimal inch"}, {Metric.String(), "metric"}, {Style(99).String(), "exact"},
		{Nearest.String(), "nearest"}, {Down.String(), "down"}, {Up.String(), "up"}, {Direction(9).String(), "nearest"},
		{NoUnit.String(), ""}, {(PoundsPerCubicFoot + 1).String(), ""},
	} {
		if c.got != c.want {
			t.Errorf("name %q, want %q", c.got, c.want)
		}
	}
}

package measure

import (
	"errors"
	"testing"
	"unicode/utf8"
)

func FuzzParse(f *testing.F) {
	for _, c := range readings {
		f.Add(c.text, uint8(c.bare))
	}
	for _, c := range rounded {
		f.Add(c.text, uint8(NoUnit))
	}
	for _, c := range faults {
		f.Add(c.text, uint8(Inches))
	}
	f.Fuzz(func(t *testing.T, text string, bare uint8) {
		got, err := Read(text, Unit(bare))
		if l, perr := Parse(text, Unit(bare)); l != got.Length || (perr == nil) != (err == nil) {
			t.Fatalf("Parse(%q) = %v, %v; Read %+v, %v", text, l, perr, got, err)
		}
		if err != nil {
			fuzzedFault(t, text, err)
			return
		}
		if got.Unit.dimension() != ofLength || got.Bare && Unit(bare) == NoUnit {
			t.Fatalf("Read(%q) = %+v", text, got)
		}
		if back, err := Read(got.Length.String(), NoUnit); back.Length != got.Length || back.Rounded || err != nil {
			t.Fatalf("%q is %v, which reads as %+v, %v", text, got.Length, back, err)
		}
		if isPlain(text) {
			checkTwoRoads(t, text, Unit(bare))
		}
	})
}

func fuzzedFault(t *testing.T, text string, err error) {
	t.Helper()
	var fault *ParseError
	if !errors.As(err, &fault) {
		t.Fatalf("%q: error %v is no ParseError", text, err)
	}
	if fault.Text != text || fault.Offset < 0 || fault.Offset > len(text) || fault.Rule.Words() == "" || fault.Accepted == "" {
		t.Fatalf("%q: fault %+v", text, fault)
	}
	if len(text) <= maxText && utf8.ValidString(text) && fault.Offset < len(text) && !utf8.RuneStart(text[fault.Offset]) {
		t.Fatalf("%q: offset %d is inside a character", text, fault.Offset)
	}
	if len(fault.Error()) > 800 {
		t.Fatalf("%q: error of %d bytes", text, len(fault.Error()))
	}
}

func FuzzParseOthers(f *testing.F) {
	for _, c := range others {
		f.Add(c.text, uint8(c.dim), uint8(c.bare))
	}
	for _, c := range otherFaults {
		f.Add(c.text, uint8(c.dim), uint8(c.bare))
	}
	f.Fuzz(func(t *testing.T, text string, which, bare uint8) {
		dim := ofArea + dimension(which)%5
		got, how, err := read(text, dim, Unit(bare))
		if err != nil {
			fuzzedFault(t, text, err)
			return
		}
		if how.unit.dimension() != dim {
			t.Fatalf("%q of %d has unit %v", text, dim, how.unit)
		}
		canonical, err := textOf(dim, got)
		if err != nil {
			t.Fatal(err)
		}
		if back, how, err := read(string(canonical), dim, NoUnit); back != got || how.rounded || err != nil {
			t.Fatalf("%q is %d, written %q, which reads as %d, %v", text, got, canonical, back, err)
		}
	})
}

func FuzzFormat(f *testing.F) {
	for _, c := range written {
		f.Add(uint8(c.format.Style), int64(c.format.Step), int64(c.length), uint8(Nearest))
	}
	for _, l := range extremes() {
		f.Add(uint8(Fraction), int64(sixtyFourth), int64(l), uint8(Up))
		f.Add(uint8(200), int64(l), int64(l), uint8(Down))
	}
	f.Fuzz(func(t *testing.T, style uint8, step, length int64, direction uint8) {
		l, d := Length(length), Direction(direction)
		checkFormat(t, Format{Style(style), Length(step)}, l, d)
		s := Style(style) % (Metric + 1)
		steps := Steps(s)
		if len(steps) > 0 {
			checkFormat(t, Format{s, steps[uint64(step)%uint64(len(steps))]}, l, d)
		}
		if g, err := NewFormat(Style(style), Length(step)); err != nil && g != (Format{}) || err == nil && g.style() != g.Style {
			t.Fatalf("NewFormat(%d, %d) = %v, %v", style, step, g, err)
		}
	})
}

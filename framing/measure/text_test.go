package measure

import (
	"encoding"
	"encoding/json"
	"errors"
	"math/rand/v2"
	"testing"
)

var _ = []interface {
	encoding.TextMarshaler
	encoding.TextAppender
	String() string
}{Length(0), Area(0), Angle(0), Mass(0), Force(0), Density(0)}

var _ = []encoding.TextUnmarshaler{(*Length)(nil), (*Area)(nil), (*Angle)(nil), (*Mass)(nil), (*Force)(nil), (*Density)(nil)}

// canonical texts, read both ways.
func TestCanonical(t *testing.T) {
	for _, c := range []struct {
		dim   dimension
		value int64
		text  string
	}{
		{ofLength, 471_487_500, "471.4875 mm"},
		{ofLength, -1, "-0.000001 mm"},
		{ofLength, 0, "0 mm"},
		{ofLength, 1_000_000_000, "1000 mm"},
		{ofLength, 10_000_001, "10.000001 mm"},
		{ofLength, maxInt64, "9223372036854.775807 mm"},
		{ofLength, minInt64, "-9223372036854.775808 mm"},
		{ofArea, int64(SquareInch), "645.16 mm2"},
		{ofArea, minInt64, "-9223372036854.775808 mm2"},
		{ofAngle, 22_500_000_000, "22.5 deg"},
		{ofAngle, 333_333_333, "0.333333333 deg"},
		{ofAngle, maxInt64, "9223372036.854775807 deg"},
		{ofMass, 453_592, "453.592 g"},
		{ofMass, minInt64, "-9223372036854775.808 g"},
		{ofForce, 4_448, "4.448 N"},
		{ofForce, maxInt64, "9223372036854775.807 N"},
		{ofDensity, 2_500_000, "2500 kg/m3"},
		{ofDensity, 761_600, "761.6 kg/m3"},
		{ofDensity, minInt64, "-9223372036854775.808 kg/m3"},
	} {
		text, err := textOf(c.dim, c.value)
		if string(text) != c.text || err != nil {
			t.Errorf("%d is %q, %v; want %q", c.value, text, err, c.text)
		}
		got, how, err := read(c.text, c.dim, NoUnit)
		if got != c.value || how.rounded || err != nil {
			t.Errorf("%q reads as %d, %v; want %d", c.text, got, err, c.value)
		}
	}
}

func TestRoundTrip(t *testing.T) {
	values := []int64{0, 1, -1, maxInt64, maxInt64 - 1, minInt64, minInt64 + 1}
	rng := rand.New(rand.NewPCG(3, 4))
	for range 20_000 {
		values = append(values, int64(rng.Uint64())>>rng.IntN(64))
	}
	for _, v := range values {
		roundTrip(t, Length(v))
		roundTrip(t, Area(v))
		roundTrip(t, Angle(v))
		roundTrip(t, Mass(v))
		roundTrip(t, Force(v))
		roundTrip(t, Density(v))
	}
}

func roundTrip[Q interface {
	~int64
	String() string
	MarshalText() ([]byte, error)
	AppendText([]byte) ([]byte, error)
}, P interface {
	*Q
	UnmarshalText([]byte) error
}](t *testing.T, q Q) {
	t.Helper()
	text, err := q.MarshalText()
	if err != nil || string(text) != q.String() || len(text) > longestText {
		t.Fatalf("%d: MarshalText %q, %v; String %q", q, text, err, q.String())
	}
	if appended, err := q.AppendText([]byte("= ")); err != nil || string(appended) != "= "+string(text) {
		t.Fatalf("%d: AppendText %q, %v", q, appended, err)
	}
	var got Q
	if err := P(&got).UnmarshalText(text); err != nil || got != q {
		t.Fatalf("%d: %q reads as %d, %v", q, text, got, err)
	}
}

type everything struct {
	Length Length
	Area   Area
	Angle  Angle
	Mass   Mass
	Force  Force
	Heft   Density
	Size   Size
	Sides  Sides
	Counts map[Length]int
}

func TestJSON(t *testing.T) {
	in := everything{
		Length: 20*Inch + 13*sixteenth, Area: SquareInch, Angle: 45 * Degree, Mass: Kilogram, Force: Newton, Heft: KilogramPerCubicMeter,
		Size: Size{Inch, 2 * Inch}, Sides: AllSides(Millimeter), Counts: map[Length]int{Inch: 3},
	}
	const want = `{"Length":"528.6375 mm","Area":"645.16 mm2","Angle":"45 deg","Mass":"1000 g","Force":"1 N","Heft":"1 kg/m3",` +
		`"Size":{"width":"25.4 mm","height":"50.8 mm"},"Sides":{"left":"1 mm","right":"1 mm","top":"1 mm","bottom":"1 mm"},` +
		`"Counts":{"25.4 mm":3}}`
	text, err := json.Marshal(in)
	if err != nil || string(text) != want {
		t.Errorf("JSON is %s, %v\nwant    %s", text, err, want)
	}
	var out everything
	if err := json.Unmarshal(text, &out); err != nil || out.Length != in.Length || out.Area != in.Area || out.Angle != in.Angle ||
		out.Mass != in.Mass || out.Force != in.Force || out.Heft != in.Heft || out.Size != in.Size || out.Sides != in.Sides || out.Counts[Inch] != 3 {
		t.Errorf("JSON reads back as %+v, %v", out, err)
	}
	for _, number := range []string{`{"Length":20}`, `{"Area":20}`, `{"Angle":20}`, `{"Mass":20}`, `{"Force":20}`, `{"Heft":20}`, `{"Length":true}`, `{"Length":{}}`} {
		if err := json.Unmarshal([]byte(number), new(everything)); err == nil {
			t.Errorf("%s is read", number)
		}
	}
	var fault *ParseError
	if err := json.Unmarshal([]byte(`{"Length":"20"}`), new(everything)); !errors.As(err, &fault) || fault.Rule != RuleNoUnit {
		t.Errorf("a length without a unit: %v", err)
	}
}

// A text that cannot be read leaves what was there.
func TestUnmarshalKeeps(t *testing.T) {
	l, a, g, m, f, d := Inch, SquareInch, Degree, Gram, Newton, GramPerCubicMeter
	for _, err := range []error{
		l.UnmarshalText([]byte("20")), a.UnmarshalText([]byte("20")), g.UnmarshalText([]byte("20")),
		m.UnmarshalText(nil), f.UnmarshalText([]byte("20 lbm")), d.UnmarshalText([]byte("20 kg")),
	} {
		if err == nil {
			t.Error("a text that is no measure is read")
		}
	}
	if l != Inch || a != SquareInch || g != Degree || m != Gram || f != Newton || d != GramPerCubicMeter {
		t.Error("a text that is no measure changes the value")
	}
}

// The zero value of every type is its plain zero.
func TestZeroValues(t *testing.T) {
	var l Length
	var s Size
	var sides Sides
	var f Format
	var u Unit
	var d Direction
	var r Reading
	if l.String() != "0 mm" || Area(0).String() != "0 mm2" || Angle(0).String() != "0 deg" || Mass(0).String() != "0 g" || Force(0).String() != "0 N" || Density(0).String() != "0 kg/m3" {
		t.Error("a zero quantity is not written as zero")
	}
	if half, rest := l.Half(); half != 0 || rest != 0 {
		t.Error("half of nothing is something")
	}
	if s.Area() != 0 || s.UnitedLength() != 0 || sides.Sum() != s || sides != AllSides(0) {
		t.Error("a zero Size or Sides is not empty")
	}
	if f.Text(Inch, Nearest) != "25.4 mm" || f.Unit() != Millimeters || f.Style != Exact || d != Nearest || u != NoUnit || u.dimension() != ofNothing {
		t.Error("a zero Format, Direction or Unit is not what its comment says")
	}
	if got, err := Read("0 mm", NoUnit); got.Length != r.Length || err != nil {
		t.Error("0 mm is not the zero Length")
	}
	if r, err := Read("x", NoUnit); r != (Reading{}) || err == nil {
		t.Error("a fault gives a Reading")
	}
}

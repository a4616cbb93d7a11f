package explain_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

var (
	inches = measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	metric = measure.Format{Style: measure.Metric, Step: measure.Millimeter}
)

func newtons(n int) explain.Expr { return explain.Const(measure.Force(n) * measure.Newton) }
func degrees(n int) explain.Expr { return explain.Const(measure.Angle(n) * measure.Degree) }
func grams(n int) explain.Expr   { return explain.Const(measure.Mass(n) * measure.Gram) }

func density(n int) explain.Expr {
	return explain.Const(measure.Density(n) * measure.KilogramPerCubicMeter)
}

func TestEvaluateTurns(t *testing.T) {
	const one = measure.Millimeter
	rows := []struct {
		name    string
		formula explain.Expr
		want    explain.Value
	}{
		{"a pane", explain.Mass3(mm(600), mm(800), explain.Const(5*one/2), density(2500)), explain.Of(3 * measure.Kilogram)},
		{"half a milligram", explain.Mass3(mm(10), mm(10), mm(10), explain.Const(500*measure.GramPerCubicMeter)), explain.Of(measure.Mass(1))},
		{"less", explain.Mass3(mm(10), mm(10), mm(10), explain.Const(499*measure.GramPerCubicMeter)), explain.Of(measure.Mass(0))},
		{"taken away", explain.Mass3(mm(-600), mm(800), mm(1), density(2500)), explain.Of(-1200 * measure.Gram)},
		{"weight", explain.WeightOf(grams(100_000)), explain.Of(980_665 * measure.Millinewton)},
		{"weight, half away", explain.WeightOf(grams(1000)), explain.Of(9_807 * measure.Millinewton)},
		{"3, 4, 5", explain.Hypotenuse(mm(3), mm(-4)), length(5 * one)},
		{"root of 2", explain.Hypotenuse(nm(1), nm(1)), length(1)},
		{"root of 8", explain.Hypotenuse(nm(2), nm(2)), length(3)},
		{"forces", explain.Hypotenuse(newtons(3), newtons(4)), explain.Of(5 * measure.Newton)},
		{"leg", explain.LegOf(mm(13), mm(5)), length(12 * one)},
		{"no leg", explain.LegOf(mm(5), mm(5)), length(0)},
		{"longer than the hypotenuse", explain.LegOf(mm(5), mm(13)), length(0)},
		{"slope", explain.SlopeOf(mm(5), mm(5)), explain.Of(45 * measure.Degree)},
		{"fall", explain.SlopeOf(newtons(-5), newtons(0)), explain.Of(-measure.RightAngle)},
		{"arc tangent", explain.ArcTan(mm(5), mm(-5)), explain.Of(135 * measure.Degree)},
		{"arc tangent of forces", explain.ArcTan(newtons(-5), newtons(0)), explain.Of(-measure.RightAngle)},
		{"arc sine", explain.ArcSin(mm(5), mm(10)), explain.Of(30 * measure.Degree)},
		{"arc sine of more", explain.ArcSin(mm(11), mm(10)), explain.Of(measure.RightAngle)},
		{"a hexagon upright", explain.ArcSin(explain.Sin(explain.Sin(explain.Radius(), degrees(90)), degrees(30)), explain.Radius()), explain.Of(30 * measure.Degree)},
		{"sine", explain.Sin(mm(10), degrees(30)), length(5 * one)},
		{"cosine", explain.Cos(mm(10), degrees(60)), length(5 * one)},
		{"tangent", explain.Tan(mm(10), degrees(45)), length(10 * one)},
		{"bevel", explain.OverTan(mm(2), degrees(45)), length(2 * one)},
		{"slope of a bevel", explain.OverSin(mm(2), degrees(30)), length(4 * one)},
		{"tension", explain.OverSin(newtons(10), degrees(30)), explain.Of(20 * measure.Newton)},
		{"pull", explain.OverTan(newtons(10), degrees(45)), explain.Of(10 * measure.Newton)},
		{"a tenth of a pound", explain.UpTenthPound(grams(1)), explain.Of(measure.Mass(45_359))},
		{"a pound as it is", explain.UpTenthPound(explain.Const(measure.Mass(453_592))), explain.Of(measure.Mass(453_592))},
		{"three tenths, rounded up", explain.UpTenthPound(explain.Const(measure.Mass(136_078))), explain.Of(measure.Mass(136_078))},
		{"a hair over", explain.UpTenthPound(explain.Const(measure.Mass(136_079))), explain.Of(measure.Mass(181_437))},
		{"nothing", explain.UpTenthPound(newtons(0)), explain.Of(measure.Force(0))},
		{"50 lb of load", explain.UpTenthPound(explain.Const(measure.Force(222_411))), explain.Of(measure.Force(222_411))},
	}
	for _, row := range rows {
		if got, err := row.formula.Evaluate(); err != nil || got != row.want {
			t.Errorf("%s: %v %v, want %v", row.name, got, err, row.want)
		}
	}
}

func TestEvaluateTurnErrors(t *testing.T) {
	op := func(op explain.Op, args ...explain.Expr) explain.Expr { return explain.Apply(op, args...) }
	long := nm(math.MaxInt64)
	rows := []struct {
		name    string
		formula explain.Expr
		want    error
	}{
		{"mass of two lengths", op(explain.OpMass, mm(1), mm(1), density(1)), explain.ErrArguments},
		{"mass without a density", explain.Mass3(mm(1), mm(1), mm(1), mm(1)), explain.ErrKinds},
		{"mass of an angle", explain.Mass3(mm(1), degrees(1), mm(1), density(1)), explain.ErrKinds},
		{"mass too large", explain.Mass3(long, long, long, density(1)), explain.ErrRange},
		{"weight of a length", explain.WeightOf(mm(1)), explain.ErrKinds},
		{"weight of two", op(explain.OpWeight, grams(1), grams(1)), explain.ErrArguments},
		{"hypotenuse of kinds", explain.Hypotenuse(mm(1), newtons(1)), explain.ErrKinds},
		{"hypotenuse too long", explain.Hypotenuse(long, long), explain.ErrRange},
		{"hypotenuse of one", op(explain.OpHypotenuse, mm(1)), explain.ErrArguments},
		{"leg of kinds", explain.LegOf(mm(1), newtons(1)), explain.ErrKinds},
		{"slope of kinds", explain.SlopeOf(mm(1), newtons(1)), explain.ErrKinds},
		{"arc tangent of kinds", explain.ArcTan(mm(1), newtons(1)), explain.ErrKinds},
		{"arc sine of kinds", explain.ArcSin(mm(1), degrees(1)), explain.ErrKinds},
		{"arc sine of one", op(explain.OpArcSin, mm(1)), explain.ErrArguments},
		{"arc tangent of three", op(explain.OpArcTan, mm(1), mm(1), mm(1)), explain.ErrArguments},
		{"sine of a length", explain.Sin(mm(1), mm(1)), explain.ErrKinds},
		{"sine of a mass", explain.Sin(grams(1), degrees(1)), explain.ErrKinds},
		{"over the sine of nothing", op(explain.OpOverSin, mm(1)), explain.ErrArguments},
		{"tenths of a length", explain.UpTenthPound(mm(1)), explain.ErrKinds},
		{"tenths past the range", explain.UpTenthPound(explain.Const(measure.Mass(math.MaxInt64))), explain.ErrRange},
	}
	for _, row := range rows {
		got, err := row.formula.Evaluate()
		if !errors.Is(err, row.want) || got != (explain.Value{}) {
			t.Errorf("%s: %v %v, want %v", row.name, got, err, row.want)
		}
	}
}

// TestTurnTwoRoads: what the rooms work out with package measure is what the
// workings come to.
func TestTurnTwoRoads(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 28))
	for range 5000 {
		n, k := r.Int64N(1<<40)-1<<20, r.Int64N(1<<40)
		l, k2 := measure.Length(n), measure.Length(k)
		a := measure.Angle(k) % measure.Turn
		rows := []struct {
			name    string
			formula explain.Expr
			want    explain.Value
		}{
			{"hypotenuse", explain.Hypotenuse(nm(n), nm(k)), explain.Of(measure.Hypot(l, k2))},
			{"leg", explain.LegOf(nm(n), nm(k)), explain.Of(measure.Leg(l, k2))},
			{"slope", explain.SlopeOf(nm(n), nm(k)), explain.Of(measure.Slope(l, k2))},
			{"arc tangent", explain.ArcTan(nm(n), nm(k)), explain.Of(measure.ArcTan(l, k2))},
			{"arc sine", explain.ArcSin(nm(n), nm(k)), explain.Of(measure.ArcSin(l, k2))},
			{"weight", explain.WeightOf(explain.Const(measure.Mass(n))), explain.Of(measure.Weight(measure.Mass(n)))},
			{"mass, up", explain.UpTenthPound(explain.Const(measure.Mass(n))), explain.Of(measure.Mass(n).UpTenthPound())},
			{"force, up", explain.UpTenthPound(explain.Const(measure.Force(n))), explain.Of(measure.Force(n).UpTenthPound())},
			{"sine", explain.Sin(nm(n), explain.Const(a)), explain.Of(l.Sin(a))},
			{"cosine", explain.Cos(nm(n), explain.Const(a)), explain.Of(l.Cos(a))},
			{"tangent", explain.Tan(nm(n), explain.Const(a)), explain.Of(l.Tan(a))},
			{"over the tangent", explain.OverTan(nm(n), explain.Const(a)), explain.Of(l.OverTan(a))},
			{"over the sine", explain.OverSin(nm(n), explain.Const(a)), explain.Of(l.OverSin(a))},
		}
		for _, row := range rows {
			if got, err := row.formula.Evaluate(); err != nil || got != row.want {
				t.Fatalf("%s of %d, %d: %v %v, want %v", row.name, n, k, got, err, row.want)
			}
		}
	}
}

func TestTurnText(t *testing.T) {
	thickness := explain.T("thickness", 3*measure.Inch/16, "")
	rows := []struct {
		formula explain.Expr
		text    string
	}{
		{explain.Mass3(mm(600), mm(800), thickness, density(2500)), "600 mm x 800 mm x thickness 3/16 x 2500 kg/m3"},
		{explain.Times(explain.N(2), explain.Mass3(explain.Sum(mm(1), mm(2)), mm(800), thickness, density(2500))), "2 x (1 mm + 2 mm) x 800 mm x thickness 3/16 x 2500 kg/m3"},
		{explain.WeightOf(grams(3000)), "the weight of (3000 g)"},
		{explain.UpTenthPound(explain.WeightOf(grams(3000))), "the weight of (3000 g), up to 0.1 lb"},
		{explain.UpTenthPound(explain.Sum(grams(1), grams(2))), "(1 g + 2 g), up to 0.1 lb"},
		{explain.Sum(explain.UpTenthPound(grams(1)), grams(2)), "(1 g, up to 0.1 lb) + 2 g"},
		{explain.Hypotenuse(thickness, explain.Const(measure.Inch)), "the hypotenuse of (thickness 3/16, 1)"},
		{explain.Times(explain.N(2), explain.LegOf(thickness, explain.Const(measure.Inch))), "2 x the other leg of (thickness 3/16, 1)"},
		{explain.SlopeOf(thickness, explain.Const(measure.Inch)), "the slope of (thickness 3/16, 1)"},
		{explain.OverTan(thickness, degrees(45)), "thickness 3/16 / tan 45 deg"},
		{explain.OverSin(explain.Half(thickness), degrees(45)), "half of (thickness 3/16) / sin 45 deg"},
		{explain.Tan(explain.Minus(thickness, thickness), degrees(45)), "(thickness 3/16 - thickness 3/16) x tan 45 deg"},
		{explain.Sin(thickness, explain.Sum(degrees(1), degrees(2))), "thickness 3/16 x sin (1 deg + 2 deg)"},
		{explain.Cos(thickness, explain.Times(explain.N(2), degrees(1))), "thickness 3/16 x cos (2 x 1 deg)"},
		{explain.Times(explain.N(2), explain.Cos(thickness, degrees(1))), "2 x (thickness 3/16 x cos 1 deg)"},
		{explain.ArcTan(thickness, explain.Const(measure.Inch)), "the angle whose tangent is thickness 3/16 / 1"},
		{explain.ArcTan(explain.Sin(explain.Cos(explain.Radius(), degrees(45)), degrees(30)), explain.Cos(explain.Radius(), degrees(30))), "the angle whose tangent is (cos 45 deg x sin 30 deg) / cos 30 deg"},
		{explain.ArcSin(explain.Sin(explain.Sin(explain.Radius(), degrees(45)), degrees(30)), explain.Radius()), "the angle whose sine is (sin 45 deg x sin 30 deg)"},
		{explain.Minus(explain.Radius(), explain.OverTan(explain.Radius(), degrees(45))), "1 - (1 / tan 45 deg)"},
		{explain.Apply(explain.OpArcTan, thickness), "the angle whose tangent is (thickness 3/16)"},
		{explain.Apply(explain.OpSin, explain.Radius()), "1"},
		{explain.Apply(explain.OpUpTenthPound), "up to 0.1 lb ()"},
	}
	for _, row := range rows {
		if got := string(row.formula.Append(nil, inches)); got != row.text {
			t.Errorf("reads %q, want %q", got, row.text)
		}
	}
}

// TestReadableWeights: masses and loads in the reader's own units.
func TestReadableWeights(t *testing.T) {
	fifty, _ := measure.ParseForce("50 lb", measure.NoUnit)
	rows := []struct {
		value          explain.Value
		pounds, metric string
		exact          string
	}{
		{explain.Of(measure.Mass(1_032_256)), "about 2.3 lb", "about 1.03 kg", "1032.256 g"},
		{explain.Of(1100 * measure.Gram), "about 2.4 lb", "1.1 kg", "1100 g"},
		{explain.Of(measure.Mass(453_592)), "1 lb", "about 0.45 kg", "453.592 g"},
		{explain.Of(20 * measure.Gram), "about 0.7 oz", "20 g", "20 g"},
		{explain.Of(measure.Mass(28_350)), "1 oz", "about 28.4 g", "28.35 g"},
		{explain.Of(measure.Mass(0)), "0 oz", "0 g", "0 g"},
		{explain.Of(fifty), "50 lb", "about 222.4 N", "222.411 N"},
		{explain.Of(85_500 * measure.Millinewton), "about 19.2 lb", "85.5 N", "85.5 N"},
		{explain.Of(2500 * measure.KilogramPerCubicMeter), "2500 kg/m3", "2500 kg/m3", "2500 kg/m3"},
		{explain.Of(45 * measure.Degree), "45 deg", "45 deg", "45 deg"},
	}
	for _, row := range rows {
		for f, want := range map[measure.Format]string{inches: row.pounds, metric: row.metric, {}: row.exact} {
			if got := string(row.value.AppendReadable(nil, f)); got != want {
				t.Errorf("%v reads %q in %v, want %q", row.value, got, f.Style, want)
			}
		}
	}
}

// TestChangeOfLoad: a load of at least so much is rounded up.
func TestChangeOfLoad(t *testing.T) {
	load := explain.Change{Path: "/hang/hook_holds", To: explain.Of(85_500 * measure.Millinewton), Bound: explain.AtLeast}
	mass := explain.Change{Path: "/hang/hook_holds", To: explain.Of(1_032_256 * measure.Milligram), Bound: explain.AtLeast}
	for _, row := range []struct {
		change explain.Change
		format measure.Format
		want   string
	}{
		{load, inches, "19.3 lb"}, {load, metric, "86 N"}, {load, measure.Format{}, "85.5 N"},
		{mass, inches, "2.3 lb"}, {mass, metric, "1.05 kg"}, {mass, measure.Format{}, "1032.256 g"},
	} {
		want := explain.English("field.hook_holds") + " at least " + row.want
		if got := row.change.Text(row.format); got != want {
			t.Errorf("reads %q, want %q", got, want)
		}
	}
}

func TestCheckWeights(t *testing.T) {
	c := explain.Checker{Format: inches}
	c.Mass("/a", -1)
	c.Mass("/b", 0)
	c.Mass("/c", explain.MaxMass)
	c.Mass("/d", explain.MaxMass+1)
	c.Force("/e", -1)
	c.Force("/f", explain.MaxForce)
	c.Force("/g", explain.MaxForce+1)
	c.Density("/h", -1)
	c.Density("/i", explain.MaxDensity)
	c.Density("/j", explain.MaxDensity+1)
	c.Angle("/k", 30*measure.Degree-1, 30*measure.Degree, 90*measure.Degree)
	c.Angle("/l", 30*measure.Degree, 30*measure.Degree, 90*measure.Degree)
	c.Angle("/m", 90*measure.Degree, 30*measure.Degree, 90*measure.Degree)
	c.Angle("/n", 90*measure.Degree+1, 30*measure.Degree, 90*measure.Degree)
	var want []string
	for _, at := range "adeghjkn" {
		want = append(want, fmt.Sprintf("/%c out_of_range", at))
	}
	if got := found(&c); !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
	last := c.Problems()[len(want)-1]
	if last.Given != "90.000000001 deg" || last.Accepted != "30 deg to 90 deg" {
		t.Errorf("the angle's problem is %+v", last)
	}
}

func BenchmarkEvaluateMass(b *testing.B) {
	pane := explain.Mass3(mm(600), mm(800), mm(2), density(2500))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := pane.Evaluate(); err != nil {
			b.Fatal(err)
		}
	}
}

package explain_test

import (
	"encoding/json"
	"math"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestValueText(t *testing.T) {
	rows := []struct {
		value explain.Value
		kind  explain.Kind
		text  string
	}{
		{explain.Of(31750 * measure.Micrometer), explain.LengthKind, "31.75 mm"},
		{explain.Of(-measure.Nanometer), explain.LengthKind, "-0.000001 mm"},
		{explain.Of(9 * measure.SquareFoot), explain.AreaKind, "836127.36 mm2"},
		{explain.Of(45 * measure.Degree), explain.AngleKind, "45 deg"},
		{explain.Of(3 * measure.Kilogram), explain.MassKind, "3000 g"},
		{explain.Of(measure.Newton / 2), explain.ForceKind, "0.5 N"},
		{explain.Of(2500 * measure.KilogramPerCubicMeter), explain.DensityKind, "2500 kg/m3"},
		{explain.Of(explain.Whole / 5), explain.RatioKind, "20 %"},
		{explain.Of(-2), explain.CountKind, "-2"},
		{explain.Value{}, explain.NoKind, "0"},
	}
	for _, row := range rows {
		if row.value.Kind != row.kind || row.value.String() != row.text {
			t.Errorf("%+v: kind %d, text %q, want %d, %q", row.value, row.value.Kind, row.value.String(), row.kind, row.text)
		}
		b, err := json.Marshal(row.value)
		if want, _ := json.Marshal(row.text); err != nil || string(b) != string(want) {
			t.Errorf("%+v in JSON: %s %v, want %s", row.value, b, err, want)
		}
	}
}

// TestValueFormat: only lengths follow the format, and always with their unit.
func TestValueFormat(t *testing.T) {
	fraction := measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}
	rows := []struct {
		value explain.Value
		text  string
	}{
		{explain.Of(20*measure.Inch + 13*measure.Inch/16), "20 13/16 in"},
		{explain.Of(measure.Inch / 64), "1/64 in"}, // exact, whatever the step
		{explain.Of(measure.Millimeter), "1 mm"},   // not even six decimals of an inch hold it
		{explain.Of(explain.Percent), "1 %"},
		{explain.Of(3), "3"},
	}
	for _, row := range rows {
		if got := string(row.value.Append([]byte("= "), fraction)); got != "= "+row.text {
			t.Errorf("%v reads %q, want %q", row.value, got, "= "+row.text)
		}
	}
}

func TestRatioText(t *testing.T) {
	rows := []struct {
		ratio explain.Ratio
		text  string
	}{
		{0, "0 %"},
		{explain.PartPerMillion, "0.0001 %"},
		{explain.Percent, "1 %"},
		{explain.Whole, "100 %"},
		{153_846, "15.3846 %"}, // 75 over 65
		{-explain.Whole / 8, "-12.5 %"},
		{-1, "-0.0001 %"},
		{10_010_000, "1001 %"},
		{math.MaxInt64, "922337203685477.5807 %"},
		{math.MinInt64, "-922337203685477.5808 %"},
	}
	for _, row := range rows {
		if got := row.ratio.String(); got != row.text {
			t.Errorf("%d ppm reads %q, want %q", int64(row.ratio), got, row.text)
		}
	}
}

func TestTermJSON(t *testing.T) {
	term := explain.NewTerm("lip", measure.Inch/4, "/order/pieces/0/frame/lip")
	const want = `{"key":"lip","value":"6.35 mm","path":"/order/pieces/0/frame/lip"}`
	if b, err := json.Marshal(term); err != nil || string(b) != want {
		t.Errorf("a term is %s %v, want %s", b, err, want)
	}
	if b, err := json.Marshal(explain.NewTerm("over", measure.Inch, "")); err != nil || string(b) != `{"key":"over","value":"25.4 mm"}` {
		t.Errorf("a term without a place is %s %v", b, err)
	}
}

func TestSource(t *testing.T) {
	rows := []struct {
		source explain.Source
		text   string
	}{
		{explain.Source{Title: "EN 572-1", Place: "density", Status: explain.Secondary}, "EN 572-1, density (V2)"},
		{explain.Source{Title: "a table", Status: explain.Memory}, "a table (M)"},
		{explain.Geometry("a triangle"), "plane geometry, a triangle (C)"},
		{explain.CommonPractice("as given"), "common practice, as given (P)"},
	}
	for _, row := range rows {
		if got := row.source.String(); got != row.text {
			t.Errorf("source reads %q, want %q", got, row.text)
		}
	}
}

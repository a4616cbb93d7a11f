package explain_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestProblemText(t *testing.T) {
	rows := []struct {
		problem explain.Problem
		text    string
	}{
		{
			explain.Problem{Code: explain.Missing, Path: "/units"},
			"/units: this is missing and has no default",
		},
		{
			explain.Problem{Code: explain.NotJSON, At: 18},
			"order: the text is not JSON at character 18",
		},
		{
			explain.Problem{Code: explain.NotAChoice, Path: "/units", Given: "furlong", Accepted: "in, mm, cm"},
			`/units: this is none of the choices: given "furlong"; accepted: in, mm, cm`,
		},
		{
			explain.Problem{Code: explain.MeasureCode(measure.RuleComma), Path: "/a", Given: "1,250", Accepted: "1250, or 1.250", At: 2},
			`/a: ` + measure.RuleComma.Words() + `: given "1,250" at character 2; accepted: 1250, or 1.250`,
		},
		{explain.Problem{Code: "no.such_code", Path: "/a"}, "/a: no.such_code"},
		{explain.Problem{Code: explain.TextControl, Path: "/a", Given: "x\ny", At: 2}, `/a: the name holds a control character: given "x\ny" at character 2`},
	}
	for _, row := range rows {
		if got := row.problem.Error(); got != row.text {
			t.Errorf("reads\n%s, want\n%s", got, row.text)
		}
	}
}

func TestProblemsAsError(t *testing.T) {
	ps := explain.Problems{
		{Code: explain.Missing, Path: "/a"},
		{Code: explain.OutOfRange, Path: "/b"},
	}
	err := fmt.Errorf("reading: %w", ps.Err())

	var all explain.Problems
	if !errors.As(err, &all) || len(all) != 2 {
		t.Errorf("all problems: %v", all)
	}
	var one explain.Problem
	if !errors.As(err, &one) || one != ps[0] {
		t.Errorf("the first problem: %v", one)
	}
	if !errors.Is(err, ps[1]) || errors.Is(err, explain.Problem{Code: explain.Missing, Path: "/c"}) {
		t.Error("errors.Is does not tell the problems apart")
	}
	const want = "/a: this is missing and has no default\n/b: this is outside what makes sense here"
	if ps.Error() != want {
		t.Errorf("reads\n%s, want\n%s", ps.Error(), want)
	}
}

func TestProblemsErrNil(t *testing.T) {
	var none explain.Problems
	if err := none.Err(); err != nil {
		t.Errorf("no problems are the error %#v", err)
	}
	if err := (explain.Problems{}).Err(); err != nil {
		t.Errorf("an empty list is the error %#v", err)
	}
}

func TestProblemsSorted(t *testing.T) {
	ps := explain.Problems{
		{Code: "b", Path: "/pieces/10"}, {Code: "b", Path: "/pieces/2"}, {Code: "a", Path: "/pieces/2"},
		{Code: "c", Path: ""}, {Code: "a", Path: "/pieces/2/art"}, {Code: "a", Path: "/pieces/2", Given: "second"},
	}
	before := slices.Clone(ps)
	var got []string
	for _, p := range ps.Sorted() {
		got = append(got, string(p.Path)+" "+string(p.Code)+p.Given)
	}
	want := []string{" c", "/pieces/2 a", "/pieces/2 asecond", "/pieces/2 b", "/pieces/2/art a", "/pieces/10 b"}
	if !slices.Equal(got, want) {
		t.Errorf("sorted: %q, want %q", got, want)
	}
	if !slices.Equal(ps, before) {
		t.Error("Sorted changed its receiver")
	}
	if under := ps.Under("/pieces/2"); len(under) != 4 {
		t.Errorf("under /pieces/2: %v", under)
	}
	if under := ps.Under("/nothing"); under != nil {
		t.Errorf("under a place without problems: %v", under)
	}
}

func TestProblemJSON(t *testing.T) {
	p := explain.Problem{Code: explain.Missing, Path: "/units"}
	if b, err := json.Marshal(p); err != nil || string(b) != `{"code":"missing","path":"/units"}` {
		t.Errorf("a problem in JSON is %s %v", b, err)
	}
}

func TestNoteText(t *testing.T) {
	term := explain.NewTerm("clear", in/16, "")
	note := explain.Note{
		Level: explain.Advice, Code: "depth.little_room",
		Values: []explain.Term{
			explain.NewTerm("package", 5*in/16, ""), explain.NewTerm("rabbet", 3*in/8, ""), term,
			explain.NewTerm("points", in/8, ""), explain.NewTerm("wanted", 7*in/16, ""),
		},
	}
	const want = "The package is 5/16 in and the rabbet 3/8 in: 1/16 in is left for the points, which want 1/8 in. A rabbet of 7/16 in would do."
	if got := note.Text(sixteenths); got != want {
		t.Errorf("reads\n%s, want\n%s", got, want)
	}
	// A value that is not there leaves its braces, so that the gap is seen.
	note.Values = note.Values[:1]
	const gap = "The package is 5/16 in and the rabbet {rabbet}: {clear} is left for the points, which want {points}. A rabbet of {wanted} would do."
	if got := note.Text(sixteenths); got != gap {
		t.Errorf("reads\n%s, want\n%s", got, gap)
	}
	if got := (explain.Note{Code: "no.such_code"}).Text(sixteenths); got != "no.such_code" {
		t.Errorf("an unknown code reads %q", got)
	}
}

// TestNoteReadable: a sentence writes a length exactly where that is short,
// else as about so much.
func TestNoteReadable(t *testing.T) {
	decimal := measure.Format{Style: measure.DecimalInch, Step: in / 100}
	metric := measure.Format{Style: measure.Metric, Step: measure.Millimeter / 2}
	rows := []struct {
		format measure.Format
		length measure.Length
		want   string
	}{
		{sixteenths, 5 * in / 64, "5/64 in"},
		{sixteenths, in / 1000 * 55, "0.055 in"},
		{sixteenths, 55*in/1000 + 127, "about 0.055 in"},
		{sixteenths, measure.Millimeter, "1 mm"},
		{sixteenths, 12 * measure.Millimeter / 10, "1.2 mm"},
		{sixteenths, 123 * measure.Millimeter / 100, "about 0.048 in"},
		{sixteenths, -in/2 - 1, "about -0.5 in"},
		{decimal, in / 8, "0.125 in"},
		{decimal, in / 16, "0.0625 in"},
		{decimal, in / 32, "about 0.031 in"},
		{metric, 3175 * measure.Micrometer, "about 3.2 mm"},
		{metric, 315 * measure.Millimeter / 100, "3.15 mm"},
		{measure.Format{}, measure.Nanometer, "0.000001 mm"}, // exact is exact
	}
	for _, row := range rows {
		note := explain.Note{Code: "fit.no_play", Values: []explain.Term{explain.NewTerm("opening", row.length, "")}}
		want := strings.Replace(explain.English("fit.no_play"), "{opening}", row.want, 1)
		if got := note.Text(row.format); got != want || got == explain.English("fit.no_play") {
			t.Errorf("%v reads %q, want %q", row.length, got, want)
		}
	}
	angle := explain.Note{Code: "fit.no_play", Values: []explain.Term{explain.NewTerm("opening", measure.Degree/3, "")}}
	if got := angle.Text(sixteenths); !strings.Contains(got, "0.333333333 deg") {
		t.Errorf("an angle reads %q", got)
	}
}

// TestChangeText: a bound is rounded to its own side, so that the text asks
// for no less than the change; a single value is written exactly.
func TestChangeText(t *testing.T) {
	rows := []struct {
		change explain.Change
		want   string
	}{
		{explain.Change{Path: "/order/pieces/0/frame/rabbet", To: explain.Of(3 * in / 8), Bound: explain.AtLeast}, "rabbet depth at least 3/8 in"},
		{explain.Change{Path: "/frame/rabbet", To: explain.Of(3*in/8 + 1), Bound: explain.AtLeast}, "rabbet depth at least 7/16 in"},
		{explain.Change{Path: "/a/clearance", To: explain.Of(in / 8), Bound: explain.AtMost}, "clearance at most 1/8 in"},
		{explain.Change{Path: "/a/clearance", To: explain.Of(in/8 - 1), Bound: explain.AtMost}, "clearance at most 1/16 in"},
		{explain.Change{Path: "/a/clearance", To: explain.Of(in/16 - 127), Bound: explain.AtMost}, "clearance at most 0.062495 in"}, // nothing would be less
		{explain.Change{Path: "/order/show/fineness", To: explain.Of(in / 32)}, "fineness 1/32 in"},
		{explain.Change{Path: "/a/width", To: explain.Of(2), Bound: explain.AtLeast}, "width at least 2"},
		{explain.Change{Path: "/hang/by", Word: "rings"}, "hanging by two rings"},
	}
	for _, row := range rows {
		if got := row.change.Text(sixteenths); got != row.want {
			t.Errorf("reads %q, want %q", got, row.want)
		}
	}
}

// TestNoteJSON: a note in JSON says what it says in the manner it was worded in,
// and each value and change with it.
func TestNoteJSON(t *testing.T) {
	n := explain.Note{
		Level: explain.Warning, Code: "fit.no_play", Path: "/pieces/0/layers/1/play/width",
		Values:  []explain.Term{explain.NewTerm("opening", 16*measure.Inch+measure.Inch/8, "/pieces/0/frame/opening/width")},
		Changes: []explain.Change{{Path: "/order/pieces/0/backing/size/width", To: explain.Of(16 * measure.Inch), Bound: explain.AtMost}},
	}
	for format, want := range map[measure.Format][3]string{
		{}: {"409.575 mm", "409.575 mm", "width at most 406.4 mm"},
		{Style: measure.Fraction, Step: measure.Inch / 16}: {"16 1/8 in", "16 1/8 in", "width at most 16 in"},
	} {
		text, err := json.Marshal(n.In(format))
		if err != nil {
			t.Fatal(err)
		}
		var got struct {
			Level, Code, Path, Text string
			Values                  []struct{ Key, Value, Path, Text string }
			Changes                 []struct{ Path, To, Bound, Text string }
		}
		if err := json.Unmarshal(text, &got); err != nil {
			t.Fatal(err)
		}
		says := "This part is as large as the opening, " + want[0] + ": it has no play and may not go in."
		if got.Text != says || got.Level != "warning" || got.Code != "fit.no_play" || got.Path != string(n.Path) {
			t.Errorf("in JSON %s", text)
		}
		if v := got.Values[0]; v.Text != want[1] || v.Value != "409.575 mm" || v.Key != "opening" || v.Path != string(n.Values[0].Path) {
			t.Errorf("value in JSON %s", text)
		}
		if c := got.Changes[0]; c.Text != want[2] || c.To != "406.4 mm" || c.Bound != "at_most" {
			t.Errorf("change in JSON %s", text)
		}
	}
}

// TestWordJSON: a word stands where a value would, for a reader that sets either.
func TestWordJSON(t *testing.T) {
	n := explain.Note{Changes: []explain.Change{{Path: "/order/pieces/0/hang/by", Word: "rings"}}}
	text, err := json.Marshal(n)
	if err != nil {
		t.Fatal(err)
	}
	if want := `"changes":[{"path":"/order/pieces/0/hang/by","to":"rings","text":"hanging by two rings"}]`; !strings.Contains(string(text), want) {
		t.Errorf("in JSON %s", text)
	}
}

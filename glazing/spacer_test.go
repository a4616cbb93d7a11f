package glazing_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
)

const spacerAt explain.Path = "/order/pieces/0/spacer"

var sixteenths = measure.Format{Style: measure.Fraction, Step: inch / 16}

// spacer is a strip 3/16 wide that keeps 1/4 apart.
func spacer() glazing.Spacer {
	return glazing.Spacer{Name: "clear strip", Under: glazing.UnderGlazing, Width: 3 * inch / 16, Depth: inch / 4}
}

// behindLip is a lip of 1/4 over a package with so much play.
func behindLip(play measure.Length) glazing.Hides {
	return glazing.Hides{
		Cover: inch / 4, Name: "lip", Path: "/order/pieces/0/frame/lip",
		Play: play, PlayPath: "/order/pieces/0/frame/allowance",
	}
}

// behindMat is a mat with a border of 3.
func behindMat() glazing.Hides {
	return glazing.Hides{Mat: true, Cover: 3 * inch, Name: "border", Path: "/pieces/0/mat/cut/left"}
}

func TestSpacerCheck(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*glazing.Spacer)
		want   []string
	}{
		{"as it is", func(*glazing.Spacer) {}, nil},
		{"under the mat", func(s *glazing.Spacer) { s.Under = glazing.UnderMat }, nil},
		{"name too long", func(s *glazing.Spacer) { s.Name = strings.Repeat("x", explain.MaxText+1) }, []string{"/spacer/name text_too_long"}},
		{"name with a control", func(s *glazing.Spacer) { s.Name = "a\tb" }, []string{"/spacer/name text_control"}},
		{"under nothing", func(s *glazing.Spacer) { s.Under = "" }, []string{"/spacer/under not_a_choice"}},
		{"under the art", func(s *glazing.Spacer) { s.Under = "art" }, []string{"/spacer/under not_a_choice"}},
		{"case", func(s *glazing.Spacer) { s.Under = "Mat" }, []string{"/spacer/under wrong_case"}},
		{"no width", func(s *glazing.Spacer) { s.Width = 0 }, []string{"/spacer/width out_of_range"}},
		{"a nanometer wide", func(s *glazing.Spacer) { s.Width = 1 }, nil},
		{"too wide", func(s *glazing.Spacer) { s.Width = most + 1 }, []string{"/spacer/width out_of_range"}},
		{"no depth", func(s *glazing.Spacer) { s.Depth = 0 }, nil},
		{"negative depth", func(s *glazing.Spacer) { s.Depth = -1 }, []string{"/spacer/depth out_of_range"}},
		{"too deep", func(s *glazing.Spacer) { s.Depth = most + 1 }, []string{"/spacer/depth out_of_range"}},
	}
	for _, row := range rows {
		s := spacer()
		row.change(&s)
		var c explain.Checker
		s.Check(&c, "/spacer")
		var got []string
		for _, p := range c.Problems() {
			got = append(got, string(p.Path)+" "+string(p.Code))
		}
		if !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	if !(glazing.Spacer{}).IsZero() || (glazing.Spacer{Name: "x"}).IsZero() {
		t.Error("what is a spacer and what is none")
	}
	if got := glazing.UnderMat.Choices(); !slices.Equal(got, []string{"glazing", "mat"}) {
		t.Errorf("it lies under %q", got)
	}
}

// TestSpacerNotes: a strip of 3/16 behind a lip of 1/4 is just hidden with a play
// of 1/16 and shows with 1/8 (plane geometry); a strip under a mat is hidden up to
// the window's edge. Flat art wants 1/8 in (a spacer maker's advice).
func TestSpacerNotes(t *testing.T) {
	const (
		may     = "warning spacer.may_show /width"
		shows   = "warning spacer.shows /width"
		shallow = "advice spacer.shallow /depth, depth at least 1/8 in"
	)
	wide := func(width measure.Length) func(*glazing.Spacer) {
		return func(s *glazing.Spacer) { s.Width = width }
	}
	deep := func(depth measure.Length) func(*glazing.Spacer) {
		return func(s *glazing.Spacer) { s.Depth = depth }
	}
	rows := []struct {
		name   string
		change func(*glazing.Spacer)
		hides  glazing.Hides
		want   string
	}{
		{"just hidden", wide(3 * inch / 16), behindLip(inch / 16), ""},
		{"a nanometer more play", wide(3 * inch / 16), behindLip(inch/16 + 1), may + ", width at most 4.762499 mm"},
		{"a nanometer wider", wide(3*inch/16 + 1), behindLip(inch / 16), may + ", width at most 3/16 in"},
		{"a play of 1/8", wide(3 * inch / 16), behindLip(inch / 8), may + ", width at most 1/8 in"},
		{"no play", wide(inch / 4), behindLip(0), ""},
		{"wider than the lip", wide(inch/4 + 1), behindLip(0), may + ", width at most 1/4 in"},
		{"a play as wide as the lip", wide(inch / 16), behindLip(inch / 4), may},
		{"as flat art wants", deep(inch / 8), behindLip(inch / 16), ""},
		{"a nanometer less", deep(inch/8 - 1), behindLip(inch / 16), shallow},
		{"no depth", deep(0), behindLip(inch / 16), shallow},
		{"both", func(s *glazing.Spacer) { s.Width, s.Depth = inch, 0 }, behindLip(inch / 16), may + ", width at most 3/16 in; " + shallow},
		{"under a mat", wide(inch), behindMat(), ""},
		{"a hair from the window", wide(3*inch - 1), behindMat(), ""},
		{"flush with the window", wide(3 * inch), behindMat(), shows + ", width at most 2 15/16 in"},
		{"in the window", wide(4 * inch), behindMat(), shows + ", width at most 2 15/16 in"},
		{"shallow under a mat", deep(0), behindMat(), ""},
		{"under a mat with hardly a border", wide(inch), glazing.Hides{Mat: true, Cover: inch / 16, Name: "border"}, shows},
	}
	for _, row := range rows {
		s := spacer()
		row.change(&s)
		var list []string
		for _, n := range s.Notes(row.hides, spacerAt) {
			at, _ := n.Path.After(spacerAt)
			line := string(n.Level) + " " + string(n.Code) + " " + string(at)
			if text := n.Text(sixteenths); text == string(n.Code) || strings.ContainsAny(text, "{}") {
				t.Errorf("%s reads %q", n.Code, text)
			}
			for _, c := range n.Changes {
				line += ", " + string(c.To.Append([]byte(explain.English("field."+c.Path.Last())+" "+explain.English("bound."+string(c.Bound))+" "), sixteenths))
			}
			list = append(list, line)
		}
		if got := strings.Join(list, "; "); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestSpacerNoteText reads the notes the way a framer does.
func TestSpacerNoteText(t *testing.T) {
	rows := []struct {
		width, depth measure.Length
		hides        glazing.Hides
		want         string
	}{
		{3 * inch / 16, inch / 4, behindLip(inch / 8), "The spacer is 3/16 in wide and the play 1/8 in: pushed to one side, 1/16 in of it shows past the lip of 1/4 in."},
		{3 * inch, inch / 4, behindMat(), "The spacer is 3 in wide and the border that hides it 3 in: its edge shows in the window. Take a narrower strip."},
		{3 * inch / 16, inch / 16, behindLip(inch / 16), "The spacer keeps the art 1/16 in off the glazing; for flat art 1/8 in or more is usual."},
	}
	for _, row := range rows {
		s := spacer()
		s.Width, s.Depth = row.width, row.depth
		ns := s.Notes(row.hides, spacerAt)
		if len(ns) != 1 || ns[0].Text(sixteenths) != row.want {
			t.Errorf("notes %+v, want %q", ns, row.want)
		}
	}
}

// FuzzSpacer: no value panics, each change mends its note, and at the bound of a
// strip behind the lip one nanometer more brings it back.
func FuzzSpacer(f *testing.F) {
	f.Add(int64(3*inch/16), int64(inch/4), int64(inch/4), int64(inch/8), false)
	f.Add(int64(3*inch/16), int64(inch/8)-1, int64(inch/4), int64(inch/16), false)
	f.Add(int64(3*inch), int64(inch), int64(3*inch), int64(0), true)
	f.Add(int64(-1)<<63, int64(1)<<62, int64(-1)<<63, int64(1)<<62, true)
	f.Fuzz(func(t *testing.T, width, depth, cover, play int64, mat bool) {
		s := glazing.Spacer{Under: glazing.UnderGlazing, Width: measure.Length(width), Depth: measure.Length(depth)}
		h := behindLip(measure.Length(play))
		h.Cover, h.Mat = measure.Length(cover), mat
		if mat {
			s.Under, h.Play = glazing.UnderMat, 0 // they slide together
		}
		ns := s.Notes(h, spacerAt)
		check := func(s glazing.Spacer) explain.Problems {
			var c explain.Checker
			s.Check(&c, spacerAt)
			c.NotNegative("/cover", h.Cover)
			c.NotNegative("/play", h.Play)
			return c.Problems()
		}
		if check(s) != nil {
			return
		}
		said := func(s glazing.Spacer, n explain.Note) bool {
			return slices.ContainsFunc(s.Notes(h, spacerAt), func(again explain.Note) bool { return again.Path == n.Path })
		}
		for _, n := range ns {
			for _, c := range n.Changes {
				better, worse := s, s
				if to := measure.Length(c.To.N); c.Path == spacerAt+"/width" {
					better.Width, worse.Width = to, to+1
				} else {
					better.Depth, worse.Depth = to, to-1
				}
				if said(better, n) || check(better) != nil {
					t.Errorf("%s, %s: still so, or %v", n.Code, c.Text(sixteenths), check(better))
				}
				if !mat && !said(worse, n) {
					t.Errorf("%s: more than %s would do as well", n.Code, c.Text(sixteenths))
				}
			}
		}
	})
}

// A strip of 3/16 behind a lip of 1/4, in a frame with a play of 1/8.
func ExampleSpacer_Notes() {
	const in = measure.Inch
	s := glazing.Spacer{Under: glazing.UnderGlazing, Width: 3 * in / 16, Depth: in / 4}
	f := measure.Format{Style: measure.Fraction, Step: in / 16}
	for _, n := range s.Notes(glazing.Hides{Cover: in / 4, Name: "lip", Play: in / 8}, "/order/pieces/0/spacer") {
		fmt.Println(n.Text(f))
		fmt.Println(n.Changes[0].Text(f))
	}
	// Output:
	// The spacer is 3/16 in wide and the play 1/8 in: pushed to one side, 1/16 in of it shows past the lip of 1/4 in.
	// width at most 1/8 in
}

package framing_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestSolveOnTape: beside an answer that no tape marks stand the marks around it, and
// what each gives; beside none, the last ones that do.
func TestSolveOnTape(t *testing.T) {
	opening := with(p("/mat/borders/right"))
	for _, c := range []struct {
		name, piece string
		q           framing.Question
		want        []string // value, and what it gives
		reason      string
	}{
		{ // borders as seen: (16.1 - window 10.75 - 2 x lip .25) / 2 = 2.425
			"borders in a frame of 16.1", mattedPrint,
			framing.Question{Free: p("/mat/borders/left"), With: opening, Move: framing.Alike, Want: p("/frame/opening/width"), Value: "16.1"},
			[]string{"2 7/16", "16 1/8", "2 3/8", "16"}, "",
		},
		{ // on the tape already
			"borders in a frame of 16", mattedPrint,
			framing.Question{Free: p("/mat/borders/left"), With: opening, Move: framing.Alike, Want: p("/frame/opening/width"), Value: "16"},
			nil, "",
		},
		{ // a lip of 1 1/2 less a nanometer is the last one, and not one that anyone marks
			"a sight of 5, with a lip wider than the face", boardPanel,
			framing.Question{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "5"},
			[]string{"1 7/16", "9 1/4"}, "5 in is out of reach: the last value that makes sense, 1 7/16 in, gives 9 1/4 in.",
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			order := read(t, "in", c.piece)
			s, err := framing.Solve(order, c.q)
			if err != nil || len(s.OnTape) != len(c.want)/2 {
				t.Fatalf("%v; %v beside %v", err, s.OnTape, s.Answer.Value)
			}
			for i, tried := range s.OnTape {
				if tried.Value != explain.Of(in(t, c.want[2*i])) || tried.Figure != explain.Of(in(t, c.want[2*i+1])) {
					t.Errorf("%s gives %s, want %s", tried.Text(), tried.FigureText(), c.want[2*i:2*i+2])
				}
			}
			if f, _ := order.Show.Format(); c.reason != "" && s.Reason.Text(f) != c.reason {
				t.Errorf("reads %q", s.Reason.Text(f))
			}
			missed(t, order, c.q, framing.Solution{Nearest: s.OnTape})
		})
	}
}

// TestSolveOnTapeRandom: what is beside an answer stands on the step, less than one
// step away, on either side of what was wanted.
func TestSolveOnTapeRandom(t *testing.T) {
	order := read(t, "in", mattedPrint)
	format, err := order.Show.Format()
	if err != nil {
		t.Fatal(err)
	}
	for n := range measure.Length(200) {
		wanted := in(t, "14") + n*777_777
		q := framing.Question{Free: p("/mat/borders/left"), With: with(p("/mat/borders/right")), Move: framing.Alike, Want: p("/frame/opening/width"), Value: wanted.String()}
		s, err := framing.Solve(order, q)
		if err != nil {
			t.Fatal(err)
		}
		answer := s.Answer
		if !s.Found {
			answer = s.Nearest[0]
		}
		if on := answer.Value.N%int64(format.Step) == 0; on != (len(s.OnTape) == 0) || len(s.OnTape) > 2 {
			t.Fatalf("%v beside %v", s.OnTape, answer.Value)
		}
		for _, tried := range s.OnTape {
			if off := max(tried.Value.N-answer.Value.N, answer.Value.N-tried.Value.N); tried.Value.N%int64(format.Step) != 0 || off > int64(format.Step) {
				t.Errorf("%v beside %v", tried.Value, answer.Value)
			}
		}
		if len(s.OnTape) == 2 && (measure.Length(s.OnTape[0].Figure.N) < wanted) == (measure.Length(s.OnTape[1].Figure.N) < wanted) {
			t.Errorf("both %v on one side of %v", s.OnTape, wanted)
		}
		missed(t, order, q, framing.Solution{Nearest: s.OnTape})
	}
}

package framing_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// FuzzSolve asks any question about any order. Where there is an answer, it is
// one when it is worked forward; where there is none, there is a reason.
func FuzzSolve(f *testing.F) {
	add := func(units, piece string, q framing.Question) {
		f.Add(marshal(f, read(f, units, piece)), marshal(f, q))
	}
	for _, job := range solveJobs {
		for _, q := range job.questions {
			add(job.units, job.piece, q)
		}
	}
	for _, c := range noAnswers {
		add("in", c.piece, c.q)
	}
	for _, text := range sampleFiles(f) {
		f.Add(text, []byte(`{"free": "/pieces/0/frame/lip", "want": "/pieces/0/frame/sight/height", "value": "12 in"}`))
		f.Add(text, []byte(`{"free": "/pieces/0/art/thickness", "want": "/pieces/0/mass/total", "value": "2 kg"}`))
	}
	f.Fuzz(func(t *testing.T, text, question []byte) {
		q, err := framing.ReadQuestion(question)
		if sortedPaths(t, problems(t, err)); err != nil {
			return
		}
		order, err := framing.Read(text)
		if err != nil {
			framing.Solve(order, q)
			return
		}
		before := marshal(t, order)
		s, err := framing.Solve(order, q)
		sortedPaths(t, problems(t, err))
		if data := marshal(t, s); !json.Valid(data) || s.Trials > framing.MaxTrials {
			t.Fatalf("%d trials\n%s", s.Trials, data)
		}
		if string(before) != string(marshal(t, order)) {
			t.Fatal("Solve changes its order")
		}
		switch {
		case err != nil:
		case s.Found:
			forward(t, q, s)
		case s.Reason.Code == "" || len(s.Nearest) == 0 || strings.Contains(s.Reason.Text(measure.Format{}), "{"):
			t.Fatalf("no answer and no reason: %+v", s.Reason)
		}
	})
}

func BenchmarkSolve(b *testing.B) {
	q := framing.Question{Free: p("/mat/borders/left"), With: with(p("/mat/borders/right")), Move: framing.Alike, Want: p("/frame/opening/width"), Value: "16 in"}
	_, order, _ := linocut(b)
	for b.Loop() {
		if s, err := framing.Solve(order, q); err != nil || !s.Found {
			b.Fatal(err, s.Reason.Code)
		}
	}
}

func BenchmarkSolveNone(b *testing.B) {
	q := framing.Question{Free: p("/frame/lip"), Want: p("/frame/sight/width"), Value: "99 in"}
	_, order, _ := linocut(b)
	for b.Loop() {
		if s, err := framing.Solve(order, q); err != nil || s.Found {
			b.Fatal(err, s.Reason.Code)
		}
	}
}

func BenchmarkFreeFields(b *testing.B) {
	_, order, _ := linocut(b)
	for b.Loop() {
		if len(framing.FreeFields(order, p("/frame/opening/width"))) == 0 {
			b.Fatal("none")
		}
	}
}

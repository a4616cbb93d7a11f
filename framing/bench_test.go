package framing_test

import (
	"encoding/json"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
)

func linocut(b *testing.B) (text []byte, order framing.Order, plan framing.Plan) {
	b.Helper()
	text, ok := sampleFiles(b)["linocut"]
	if !ok {
		b.Fatal("no sample order linocut")
	}
	order, err := framing.Read(text)
	if err != nil {
		b.Fatal(err)
	}
	plan = work(b, order)
	b.ReportAllocs()
	b.ResetTimer()
	return text, order, plan
}

func BenchmarkRead(b *testing.B) {
	text, _, _ := linocut(b)
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		if _, err := framing.Read(text); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkWork(b *testing.B) {
	_, order, _ := linocut(b)
	for b.Loop() {
		if _, err := framing.Work(order); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkExplain(b *testing.B) {
	_, _, plan := linocut(b)
	for b.Loop() {
		if _, ok := plan.Explain("/pieces/0/mat/cut/bottom"); !ok {
			b.Fatal("no working")
		}
	}
}

func BenchmarkMarshalPlan(b *testing.B) {
	_, _, plan := linocut(b)
	for b.Loop() {
		if _, err := json.Marshal(plan); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkWorkLayers works a piece of three mats that hangs on a wire.
func BenchmarkWorkLayers(b *testing.B) {
	order, err := framing.Read(sampleFiles(b)["double-mat"])
	if err != nil {
		b.Fatal(err)
	}
	work(b, order)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := framing.Work(order); err != nil {
			b.Fatal(err)
		}
	}
}

// twelveSided is a frame of twelve boards that slope.
const twelveSided = `{"version": 3, "units": "in", "shop": {"saw": {"miter": "50", "tilt": "45"}}, "pieces": [{
	"art": {"kind": "panel", "outline": {"by": "regular", "sides": 12, "size": "18"}, "thickness": "1/4"},
	"frame": {"face": "3", "lip": "3/8", "rabbet": "1/2", "slope": {"pitches": [{"angle": "50", "from": "flat"}], "thickness": "1/2"}}}]}`

// BenchmarkWorkSloped works twelve boards that slope.
func BenchmarkWorkSloped(b *testing.B) { benchmarkWork(b, []byte(twelveSided)) }

// BenchmarkWorkSides works art that is out of square, under a mat.
func BenchmarkWorkSides(b *testing.B) { benchmarkWork(b, []byte(fullSides)) }

func benchmarkWork(b *testing.B, text []byte) {
	order, err := framing.Read(text)
	if err != nil {
		b.Fatal(err)
	}
	work(b, order)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := framing.Work(order); err != nil {
			b.Fatal(err)
		}
	}
}

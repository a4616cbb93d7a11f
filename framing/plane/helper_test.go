package plane_test

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

const (
	inch = measure.Inch
	deg  = measure.Degree
)

func in(s string) measure.Length {
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

func ins(texts ...string) []measure.Length {
	var lengths []measure.Length
	for _, s := range texts {
		lengths = append(lengths, in(s))
	}
	return lengths
}

// must takes what may not fail.
func must(p plane.Polygon, err error) plane.Polygon {
	if err != nil {
		panic(err)
	}
	return p
}

// code is the code of an error, "" for none.
func code(t *testing.T, err error) explain.Code {
	t.Helper()
	if err == nil {
		return ""
	}
	var e *plane.Error
	if !errors.As(err, &e) || e == nil {
		t.Fatalf("%v is no *plane.Error", err)
	}
	return e.Code
}

func near(t *testing.T, what string, got, want, tolerance measure.Length) {
	t.Helper()
	if d := got - want; d < -tolerance || d > tolerance {
		t.Errorf("%s is %v, want %v to %v", what, got, want, tolerance)
	}
}

// inches writes a length in inches with so many decimals.
func inches(l measure.Length, places int) string {
	return big.NewRat(int64(l), int64(inch)).FloatString(places)
}

// degrees writes an angle with so many decimals.
func degrees(a measure.Angle, places int) string {
	return big.NewRat(int64(a), int64(deg)).FloatString(places)
}

// spread are n corners on rays around the middle, in order, at chance distances:
// an outline that never crosses itself, with corners that point inward.
func spread(r *rand.Rand, n int, least, most measure.Length) []plane.Point {
	corners := make([]plane.Point, n)
	for i := range corners {
		a := 2 * math.Pi * (float64(i) + 0.8*r.Float64()) / float64(n)
		d := float64(least) + float64(most-least)*r.Float64()
		corners[i] = plane.Point{X: measure.Length(d * math.Cos(a)), Y: measure.Length(d * math.Sin(a))}
	}
	return corners
}

func reversed(corners []plane.Point) []plane.Point {
	var back []plane.Point
	for i := range corners {
		back = append(back, corners[len(corners)-1-i])
	}
	return back
}

//go:build rectangles

package main

import (
	"strings"
	"testing"
)

// TestRectangles: the module without shapes asks for the other one, in few words, where
// an order has some, and answers the rest.
func TestRectangles(t *testing.T) {
	ask := func(piece string) string {
		return string(answer([]byte(`{"id": 7, "call": "work", "order": {"version": 3, "units": "in", "pieces": [` + piece + `]}}`)))
	}
	for _, piece := range []string{
		`{"art": {"outline": {"by": "regular", "sides": 8, "size": "18"}}, "frame": {"face": "2", "lip": "1/4"}}`,
		`{"art": {"width": "8", "height": "10"}, "frame": {"face": "2", "lip": "1/4", "faces": ["3", "2", "1", "2"]}}`,
		`{"art": {"outline": {}}, "frame": {"face": "2", "lip": "1/4"}}`,
	} {
		if reply := ask(piece); !strings.Contains(reply, `"needs_shapes"`) || !strings.HasPrefix(reply, `{"id":7,"problems":`) || len(reply) >= 400 {
			t.Errorf("%s: %s", piece, reply)
		}
	}
	if reply := ask(`{"art": {"width": "8", "height": "10"}, "frame": {"face": "2", "lip": "1/4"}}`); !strings.HasPrefix(reply, `{"id":7,"data":`) {
		t.Error(reply)
	}
	hello := string(answer([]byte(`{"id": 1, "call": "hello", "protocol": 1}`)))
	if strings.Contains(hello, `"needs_shapes"`) && len(hello) < 400 {
		t.Error("a page would take the greeting for a question that needs shapes")
	}
}

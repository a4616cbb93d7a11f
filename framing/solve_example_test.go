package framing_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A print of 11 x 14 and a ready-made frame of 16 x 20: which borders does the mat
// show? The order is worked backwards from the frame's opening, first across and
// then upright.
func ExampleSolve() {
	order, err := framing.Read([]byte(`{
		"version": 1,
		"units": "in",
		"pieces": [{
			"art": {"width": "11", "height": "14", "thickness": "0.012"},
			"mat": {"window": {"by": "overlap", "each_side": "1/8"}},
			"frame": {"molding": "ready-made, 16 x 20", "face": "1 1/4", "lip": "1/4", "allowance": "1/8"}
		}]
	}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	const borders = "/pieces/0/mat/borders"
	for _, q := range []framing.Question{
		{Free: borders + "/left", With: []explain.Path{borders + "/right"}, Move: framing.Alike,
			Want: "/pieces/0/frame/opening/width", Value: "16"},
		{Free: borders + "/top", With: []explain.Path{borders + "/bottom"}, Move: framing.Alike,
			Want: "/pieces/0/frame/opening/height", Value: "20"},
		{Free: "/pieces/0/frame/lip", Want: "/pieces/0/mat/blank/width", Value: "16 1/2"},
	} {
		s, err := framing.Solve(order, q)
		if err != nil {
			fmt.Println(err)
			return
		}
		if !s.Found {
			fmt.Println(s.Reason.Text(measure.Format{}))
			continue
		}
		fmt.Println(q.Free, s.Answer.Text())
		order = s.Order
	}
	// Output:
	// /pieces/0/mat/borders/left 2 3/8 in
	// /pieces/0/mat/borders/top 2 7/8 in
	// /pieces/0/frame/lip 9/16 in
}

// What could be changed where a frame comes out too large for its place?
func ExampleFreeFields() {
	for _, field := range framing.FreeFields(framing.Sample(), "/pieces/0/frame/outside/width") {
		fmt.Println(field)
	}
	// Output:
	// /pieces/0/art/width
	// /pieces/0/mat/window/each_side
	// /pieces/0/mat/borders/left
	// /pieces/0/mat/borders/right
	// /pieces/0/frame/face
}

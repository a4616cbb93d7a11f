package framing_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// TestRemedies: what a note proposes is what a framer would do, and each border that
// cannot be seen is named.
func TestRemedies(t *testing.T) {
	for _, c := range []struct {
		name, piece string
		code        explain.Code
		want        []string // path and changes of each note of the code
	}{
		{ // .0036 x 77 1/8 in
			"acrylic of 48 x 72 under a lip that holds it with room to grow",
			`{"art": {"width": "48", "height": "72"}, "mat": {}, "glazing": {"material": "acrylic"}, "frame": {"face": "2", "lip": "1/2"}}`,
			"glazing.little_play", []string{"/order/pieces/0/glazing/clearance: clearance at least 5/16 in"},
		},
		{
			"and under one that would drop it then",
			`{"art": {"width": "48", "height": "72"}, "mat": {}, "glazing": {"material": "acrylic"}, "frame": {"face": "2", "lip": "1/4"}}`,
			"fit.wider_lip", []string{"/order/pieces/0/glazing/clearance: "},
		},
		{
			"three borders under the lip",
			`{"art": {"width": "8", "height": "10"}, "mat": {"borders": {"by": "cut", "left": "2 13/16", "right": "1/4", "top": "1/4", "bottom": "1/4"}}, "frame": {"face": "1 1/4", "lip": "3/8"}}`,
			"mat.no_border", []string{
				"/pieces/0/mat/visible/right: right border 2 13/16 in", "/pieces/0/mat/visible/top: top border 2 13/16 in",
				"/pieces/0/mat/visible/bottom: bottom border 2 13/16 in",
			},
		},
		{
			"two of a board, which one width mends",
			`{"art": {"width": "8", "height": "10"}, "mat": {"window": {"by": "size", "width": "7 3/4", "height": "9 3/4"}, "borders": {"by": "board", "board": {"width": "8", "height": "16"}}}, "frame": {"face": "1 1/4", "lip": "3/8"}}`,
			"mat.no_border", []string{"/pieces/0/mat/visible/left: width at least 13 7/16 in"},
		},
		{
			"a sheet too large for a lip that would not hold it smaller",
			`{"art": {"width": "8", "height": "10"}, "backing": {"material": "board", "size": {"width": "9", "height": "10"}}, "frame": {"face": "1 1/4", "lip": "1/16"}}`,
			"fit.does_not_go_in", []string{"/pieces/0/layers/1/play/width: "},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := worked(t, `{"version": 1, "units": "in", "pieces": [`+c.piece+`]}`)
			var got []string
			for _, n := range plan.Pieces[0].Notes {
				if n.Code != c.code {
					continue
				}
				var changes []string
				for _, change := range n.Changes {
					changes = append(changes, change.Text(measure.Format{Style: measure.Fraction, Step: measure.Inch / 16}))
				}
				got = append(got, string(n.Path)+": "+strings.Join(changes, "; "))
			}
			if strings.Join(got, "\n") != strings.Join(c.want, "\n") {
				t.Errorf("%s, want %s\nof %v", strings.Join(got, "\n"), strings.Join(c.want, "\n"), plan.Pieces[0].Notes)
			}
		})
	}
}

package framing_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// shadowBox is a panel of 10 x 12 under a mat with borders of 2 1/2 as seen. The mat is
// cut 2 11/16 wide and covers 1/8 of the art: 2 9/16 are free from the wall to the art.
func shadowBox(art, width, depth string) string {
	return `{"version": 2, "units": "in", "pieces": [{
		"art": {"kind": "panel", "width": "10", "height": "12", "thickness": "` + art + `"}, "mat": {"thickness": "1/16"}, "glazing": {"material": "glass", "thickness": "1/8"},
		"spacer": {"under": "mat", "width": "` + width + `", "depth": "` + depth + `"}, "mount": {"material": "foam_board", "thickness": "3/16"},
		"frame": {"face": "1 1/4", "lip": "1/4", "rabbet": "2"}}]}`
}

// TestWell: art in the middle of a spacer lies beside its strips, and they stand on the
// mount with it; art that reaches under them lies behind them. Source: geometry.
func TestWell(t *testing.T) {
	for _, c := range []struct {
		name, art, width, depth, pkg string
		inside, warned               bool
	}{
		{"art thinner than the strips", "1/4", "1", "1/2", "7/8", true, false},
		{"as thick", "1/2", "1", "1/2", "7/8", true, false},
		{"thicker by a sixteenth", "9/16", "1", "1/2", "15/16", true, true},
		{"strips that just reach it", "1/4", "2 9/16", "1/2", "7/8", true, false},
		{"and a nanometer under it", "1/4", "65.087501 mm", "1/2", "1 1/8", false, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := worked(t, shadowBox(c.art, c.width, c.depth)).Pieces[0]
			if got := plan.Depth.Package.Exact; got != in(t, c.pkg) {
				t.Errorf("the package is %v, want %s", got, c.pkg)
			}
			for _, s := range plan.Depth.Stack {
				if s.Inside != (c.inside && s.Part == framing.ArtLayer) {
					t.Errorf("%s inside: %v", s.Part, s.Inside)
				}
			}
			if hasNote(plan, framing.WellShallow) != c.warned {
				t.Errorf("notes %v", plan.Notes)
			}
			w, ok := worked(t, shadowBox(c.art, c.width, c.depth)).Explain("/pieces/0/depth/package")
			text := w.Text(measure.Format{Style: measure.Fraction, Step: measure.Inch / 16})
			if !ok || strings.Contains(text, "the most of") != c.inside {
				t.Errorf("reads %q", text)
			}
		})
	}
}

// TestWellByItsMend: the depth that is proposed is enough, and a hair less is not.
func TestWellByItsMend(t *testing.T) {
	plan := worked(t, shadowBox("3/4", "1", "1/2")).Pieces[0]
	for _, n := range plan.Notes {
		if n.Code != framing.WellShallow {
			continue
		}
		enough := measure.Length(n.Changes[0].To.N)
		for _, d := range []struct {
			depth measure.Length
			warns bool
		}{{enough, false}, {enough - 1, true}} {
			if got := hasNote(worked(t, shadowBox("3/4", "1", d.depth.String())).Pieces[0], framing.WellShallow); got != d.warns {
				t.Errorf("a spacer of %v: %v", d.depth, got)
			}
		}
		return
	}
	t.Error("nothing is said")
}

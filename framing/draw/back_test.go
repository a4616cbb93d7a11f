package draw

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// backOf draws the back of a wide low print as it hangs.
func backOf(t *testing.T, change func(*hang.Hanging)) (svg string, s seen) {
	t.Helper()
	o := framing.NewOrder(framing.Inches)
	p := framing.NewPiece(o.Shop)
	p.Art.Width, p.Art.Height = 40*measure.Inch, 12*measure.Inch
	p.Frame = framing.NewFrame(o.Shop)
	p.Frame.Face, p.Frame.Lip, p.Frame.Rabbet = 5*measure.Inch/4, measure.Inch/4, 5*measure.Inch/8
	p.Hang = hang.Usual(true)
	change(&p.Hang)
	o.Pieces = []framing.Piece{p}
	plan, err := framing.Work(o)
	if err != nil {
		t.Fatal(err)
	}
	svg = SVG(plan, 0, Back, Options{})
	return svg, check(t, "back", svg)
}

// TestWireAboveTheFrame: a wire that rises above the frame is measured upward
// from its top, in words and without a minus, and no number lies on it.
func TestWireAboveTheFrame(t *testing.T) {
	svg, s := backOf(t, func(h *hang.Hanging) { h.Hooks, h.Taut.Angle = 1, 45*measure.Degree })
	if !strings.Contains(svg, "above the top") || !strings.Contains(svg, "that does not work") {
		t.Error("nothing says that the wire stands above the frame")
	}
	highest := s.frame.y1
	for _, l := range s.texts {
		if strings.Contains(l.text, "-") {
			t.Errorf("%q", l.text)
		}
		highest = min(highest, l.y0)
	}
	// The frame's width is written over the hook, which is as far over the frame
	// as the wire is: three quarters of its height.
	if above := s.frame.y0 - highest; above < s.frame.height()/2 {
		t.Errorf("the numbers over the frame stand only %d above it", above)
	}
	svg, _ = backOf(t, func(h *hang.Hanging) { h.Taut = hang.Taut{By: hang.ByRise, Rise: measure.Inch} })
	if strings.Contains(svg, "above the top") {
		t.Error("a hidden wire stands above the frame")
	}
}

// TestHooksAndNails: where it is not known how high a hook is, its nail hole is
// not either; two hooks at one height are said once.
func TestHooksAndNails(t *testing.T) {
	const adds = "the nail is higher by what the hook adds"
	rows := []struct {
		name       string
		change     func(*hang.Hanging)
		has, hasNo []string
	}{
		{"two hooks, nothing known", func(*hang.Hanging) {}, []string{"both hooks bear above the floor", adds}, []string{"nail hole", "left hook"}},
		{"two hooks", func(h *hang.Hanging) { h.NailAbove = measure.Inch }, []string{"both nail holes above the floor", "both hooks bear above the floor"}, []string{adds}},
		{"one hook", func(h *hang.Hanging) { h.Hooks = 1 }, []string{"hook bears above the floor", adds}, []string{"both", "nail hole"}},
		{"rings at two heights", func(h *hang.Hanging) { h.By, h.Below, h.BelowRight = hang.Rings, 3*measure.Inch, 4*measure.Inch },
			[]string{"as one faces the wall:", "left hook bears above the floor", "right hook bears above the floor", adds}, []string{"both"}},
		{"a sawtooth on a bare nail", func(h *hang.Hanging) { h.By = hang.Sawtooth }, []string{"hook bears above the floor"}, []string{adds}},
		{"below the floor", func(h *hang.Hanging) { h.By, h.Below, h.Center = hang.Rings, 20*measure.Inch, 2*measure.Inch }, []string{"both hooks bear below the floor"}, []string{"above the floor"}},
	}
	for _, row := range rows {
		svg, _ := backOf(t, row.change)
		for _, text := range row.has {
			if !strings.Contains(svg, text) {
				t.Errorf("%s: no %q", row.name, text)
			}
		}
		for _, text := range row.hasNo {
			if strings.Contains(svg, text) {
				t.Errorf("%s: %q", row.name, text)
			}
		}
	}
}

package hang_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// TestMiddleOfTheWood: hangers that nobody placed are in the middle of what takes
// a screw: the face beside the rabbet, a floater's face with its ledge. A rail
// of 1 1/4 with a lip of 1/4 has 1 in of wood, a floater of 3/8 with a ledge of
// 1 1/8 has 1 1/2 (common practice: screw into the solid part of the rail).
func TestMiddleOfTheWood(t *testing.T) {
	rows := []struct {
		face, lip, ledge string
		inset            string
		formula          string
	}{
		{"1 1/4", "1/4", "0", "1/2", "half of (face 1 1/4 - lip 1/4)"},
		{"1", "3/8", "0", "5/16", "half of (face 1 - lip 3/8)"},
		{"2", "0", "0", "1", "half of (face 2)"},
		{"3/8", "0", "1 1/8", "3/4", "half of (face 3/8 + ledge 1 1/8)"},
	}
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	for _, row := range rows {
		h, g := worked()
		h.Inset = 0
		g.Face, g.Lip, g.Ledge = in(row.face), in(row.lip), in(row.ledge)
		if got := h.Lay(g).Span; got != in("20")-2*in(row.inset) {
			t.Errorf("face %s, lip %s, ledge %s: %v apart, want %s in from each edge", row.face, row.lip, row.ledge, got, row.inset)
		}
		h.By, h.Below = hang.Sawtooth, 0
		if got := h.Lay(g).Below.Left; got != in(row.inset) {
			t.Errorf("face %s, lip %s, ledge %s: a sawtooth %v below the top, want %s", row.face, row.lip, row.ledge, got, row.inset)
		}
		w, ok := h.Explain(g, "/below/left", places)
		if want := "hangers below the top " + row.inset + " = " + row.formula; !ok || w.Text(f) != want {
			t.Errorf("reads %q, want %q", w.Text(f), want)
		}
	}
}

// TestUsualIsOnWood: where nobody says where the hangers go, they are on wood.
func TestUsualIsOnWood(t *testing.T) {
	eachRandom(t, 3000, func(t *testing.T, _ *rand.Rand, h hang.Hanging, g hang.Given) {
		h.Inset = 0
		if h.By == hang.Sawtooth {
			h.Below = 0
		}
		for _, n := range h.Notes(g, h.Lay(g), places) {
			if n.Code == hang.OffWood || n.Code == hang.SawtoothOff {
				t.Errorf("%s: %s", n.Code, n.Text(measure.Format{}))
			}
		}
	})
}

// TestBesideTheRabbet: rings 7/8 in from the edge of a rail of 1 with a lip of
// 3/8 are over its rabbet; the middle of the wood that it has, 5/8, is 5/16.
func TestBesideTheRabbet(t *testing.T) {
	h, g := worked()
	h.By, h.Inset = hang.Rings, in("7/8")
	g.Face, g.Lip = in("1"), in("3/8")
	n := find(t, notes(t, h, g), hang.OffWood)
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	const want = "The rail has 5/8 in of wood for screws beside its outside edge, and the hangers stand 7/8 in from that edge: their screws miss it."
	if got := n.Text(f); got != want {
		t.Errorf("reads %q, want %q", got, want)
	}
	if len(n.Changes) != 1 || n.Changes[0] != (explain.Change{Path: places.Hang + "/inset", To: explain.Of(in("5/16"))}) {
		t.Errorf("changes %+v", n.Changes)
	}
}

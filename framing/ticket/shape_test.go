package ticket_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

// cutPiece returns the text of one piece of a ticket, counted from 1, in single spaces.
func cutPiece(text string, number int) string {
	_, text, _ = strings.Cut(text, "\nPIECE "+strconv.Itoa(number)+" of ")
	text, _, _ = strings.Cut(text, "\nPIECE ")
	text, _, _ = strings.Cut(text, "\nMIND\n")
	return strings.Join(strings.Fields(text), " ")
}

// TestShapes reads off the tickets of shaped pieces what their bench needs, and that
// nothing of a plain rectangle stands there. Octagon: (18 + 1/8 + 2 x (2 1/2 - 3/8)) x
// tan 22.5 = 9.26803; wide bottom: rails 2 and 3 wide meet at the angle whose tangent
// is 2/3; a board at 52 from flat takes a miter of cos 52 x tan 45. Source: worked by
// hand; the last as in the compound angle charts of miter saw manuals.
func TestShapes(t *testing.T) {
	samples := orders(t)
	for _, row := range []struct {
		order  string
		piece  int
		has    []string
		hasNot []string
	}{
		{"octagon-mirror", 1, []string{
			"mirror 8 equal sides, 18 in across flats", "Panel: mirror sides 8, all alike", "each corner 135 deg inside",
			"all 8 rails 8 of 9 5/16 [about 9.268 in] long point to long point; sight edge 7 3/16",
			"saw 22.5 deg from square (67.5 deg to the edge)", "opening 18 1/8 across flats [exact]",
			"in the rails 6' 2 1/2\"", "backing 18 across flats [exact] cut play 1/8; lip holds 1/4",
			"the saw is off 0.1 deg at each cut, too far from square: set it 0.1 deg nearer to square",
			"opens at the heel, inside", "its ends miss by 5/16 [about 0.337 in]", "stands open by 1/16 [about 0.076 in]",
			"no gap above 0.004 in (usual) at the last joint, each cut within 0.005 deg if the other joints can be pulled together, within 0.001 deg",
			"hangers 6 3/4 below the top 20",
		}, []string{"top and bottom", "as it hangs"}},
		{"wide-bottom", 1, []string{
			"bottom 1 of 18 1/2 [exact] long point to long point; sight edge 14 1/2 face 3 in both ends saw 33.7 deg from square (56.3 deg to the edge)",
			"right 1 of 22", "left end saw 56.3 deg from square (33.7 deg to the edge) [about 56.31 deg, about 33.69 deg] meets the bottom rail; the cut is 3 5/8 long",
			"left 1 of 22 [exact] long point to long point; sight edge 17 3/4 face 2 in the mirror image of the right rail",
			"! left end of the right rail, right end of the left rail: This end is cut 56.31 deg", "! both ends of the top rail: ",
			"in the rails 6' 9\"", "window 9 1/2 x 12 1/4",
		}, []string{"across flats", "Panel", "meets side"}},
		{"triangle-open", 1, []string{
			"panel 3 sides, in a box of 22 in x about 11.619 in", "side 2 16 in", "corner 3 about 86.865 deg inside, between side 2 and side 3",
			"side 1 1 of 27", "the mirror image of side 2", "in the rails 5' 6 1/4\"", "one piece not known: art, frame",
		}, []string{"opening", "outside", "across flats", "dust cover", "0.0 lb"}},
		{"triangle-open", 2, []string{"side 1 no rail", "left end square: no rail there", "in the rails 2' 10\""}, []string{"side 1 1 of"}},
		{"triangle-open", 3, []string{"side 5 about 9.026 in, worked out: measure it", "the art alone, whose thickness is not given"}, []string{"in the depth"}},
		{"canted-box", 1, []string{
			"board 3 in wide, 3/4 in thick stands at 52 deg from flat, 38 deg from vertical gains 2 3/8 [about 2.364 in] of depth; looks 1 7/8 [about 1.847 in]",
			"bottom and top 2 of 18 5/16 [about 18.251 in] over all: behind the rim front, rim 17 1/8", "Cut, all ends alike between the fronts 112.3 deg",
			"laid flat, back on the table and rim against the fence miter 31.6 deg [about 31.619 deg], longer at the fence tilt 33.9 deg",
			"to 1/4 deg: miter 31.5, tilt 33.75; gap about 0.012 in", "miter 45 deg, longer at the fence tilt 0 to 1 deg: exact",
		}, []string{"across flats", "both ends", "how exact"}},
		{"canted-box", 2, []string{"size 7 in across flats (usual)", "all 6 sides 6 of 5", "outside 7 11/16 across flats", "in the rails 2' 6\""}, []string{"bottom and top"}},
		{"canted-box", 3, []string{
			"Cut 1 for both ends of bottom and top", "Cut 2 for both ends of right and left", "tilt 13 deg [about 13.015 deg], shorter at the table",
			"to 1/4 deg: the same",
		}, []string{"all ends alike"}},
		{"out-of-square", 1, []string{
			"diagonals 20 3/16 in from the lower left to the upper right", "leans to the right by about 1.124 deg",
			"clean window 11 5/8 x 15 15/16 [about 11.686 in x about 15.997 in] or less", "turned by about 1.124 deg to the left under the mat",
			"top and bottom 2 of 19 7/16",
		}, []string{"across flats"}},
		{"out-of-square", 2, []string{
			"paper 7 in x 5 in, shown whole in 8 equal sides", "the smallest whose frame shows all of the art", "the art on it is 7 in x 5 in",
		}, []string{"the saw is off"}},
	} {
		t.Run(row.order+" "+strconv.Itoa(row.piece), func(t *testing.T) {
			plan, err := samples[row.order].Work()
			if err != nil {
				t.Fatal(err)
			}
			text := cutPiece(ticket.Text(plan, ticket.Options{}), row.piece)
			for _, part := range row.has {
				if !strings.Contains(text, part) {
					t.Errorf("no %q in\n%s", part, text)
				}
			}
			for _, part := range append(row.hasNot, " 0 in x", " 0 x 0", "2 of 0") {
				if strings.Contains(text, part) {
					t.Errorf("%q in\n%s", part, text)
				}
			}
		})
	}
}

// TestShapeWords works small orders for what the sample orders do not hold.
func TestShapeWords(t *testing.T) {
	const face = `"face": "1 1/4", "lip": "1/4", "rabbet": "5/8"`
	for _, row := range []struct {
		name, shop, art, frame string
		has                    []string
	}{
		{"across points", ``, `"outline": {"by": "regular", "sides": 6, "across": "points", "size": "10", "stand": "point"}`, face,
			[]string{"6 equal sides, 10 in across points", "size 10 in across points 8 11/16 across flats [about 8.66 in]", "hangs with a corner at the bottom"}},
		{"an odd count", ``, `"outline": {"by": "regular", "sides": 7, "across": "side", "size": "4", "stand": "upright"}`, face,
			[]string{"4 in along each side", "twice the way from the middle to a side", "each corner about 128.571 deg inside", "a side upright at the left",
				"saw 25.7 deg from square (64.3 deg to the edge) [about 25.714 deg, about 64.286 deg]"}},
		{"the saw falls short", `"shop": {"saw": {"off": "-0.2"}},`, `"outline": {"by": "regular", "size": "12"}`, face,
			[]string{"0.2 deg at each cut, too near to square: set it 0.2 deg farther from square", "opens at the toe, outside"}},
		{"nothing seen", `"shop": {"saw": {"seen": "0"}},`, `"outline": {"by": "regular", "size": "12"}`, face, []string{"all 8 rails 8 of"}},
		{"a floater", ``, `"outline": {"by": "regular", "size": "12"}, "thickness": "3/4"`, `"kind": "floater", "face": "1/2", "lip": "0", "ledge": "1", "gap": "1/4", "rabbet": "1 1/4"`,
			[]string{"gap each side 1/4 in the depth"}},
		{"a space to fill", ``, `"width": "10", "height": "8"`, face + `, "faces": ["2", "1", "1", "1"], "made": "to_space"`,
			[]string{"the outside is fixed: no rail longer than shown"}},
		{"bought ready", ``, `"width": "10", "height": "8"`, face + `, "faces": ["2", "1", "1", "1"], "made": "ready_made"`,
			[]string{"nothing to cut: check that it measures as follows", "bottom 1 of"}},
		{"a pair of widths", ``, `"width": "10", "height": "8"`, face + `, "faces": ["2", "1", "2", "1"]`,
			[]string{"bottom and top 2 of", "right and left 2 of", "both ends saw 26.6 deg from square (63.4 deg to the edge)"}},
		{"a corner that points inward", ``, `"outline": {"by": "angles", "edges": ["20", "20", "10", "10", "10"], "angles": ["90", "90", "90", "270"]}`, face,
			[]string{"saw 45 deg from square the other way, the sight edge longer (135 deg to the edge)", "over all, from point to point"}},
		{"equal sides, rails that differ", ``, `"outline": {"by": "regular", "sides": 6, "size": "20", "stand": "point"}`, face + `, "faces": ["1", "2", "1", "2", "1", "2"]`,
			[]string{"6 equal sides, 20 in across flats", "each corner 120 deg inside", "side 1 begins at the lowest corner", "sides 1, 3 and 5 3 of", "along both edges", "saw square, 0 deg (90 deg to the edge)"}},
		{"many sides", ``, `"outline": {"by": "regular", "sides": 10, "size": "20"}`, face + `, "faces": ["1", "2", "1", "2", "1", "2", "1", "2", "1", "2"]`,
			[]string{"side 1 is at the bottom", "these sides 1, 3, 5, 7 and 9 5 of", "long point to long point, along the sight edge outer edge"}},
		{"an odd count on its point", ``, `"outline": {"by": "regular", "sides": 5, "size": "20", "stand": "point"}`, face + `, "faces": ["1", "2", "1", "2", "0"]`,
			[]string{"side 1 is at the top", "side 5 no rail"}},
		{"no rail at the left", ``, `"width": "10", "height": "8"`, face + `, "faces": ["2", "2", "2", "0"]`,
			[]string{"* left end of the bottom rail, right end of the top rail: This end meets no rail", "left no rail", "as it hangs 11 13/16 in x"}},
		{"boards that differ", ``, `"outline": {"by": "angles", "edges": ["12", "9", "8", "8"], "angles": ["90", "135", "90"]}`, `"face": "2", "lip": "1/4", "slope": {"pitches": [{"angle": "60", "from": "flat"}], "thickness": "1/2"}`,
			[]string{"Cut 2 for right end of side 1; left end of side 2; right end of side 3; left end of side 4", "Cut 4 for"}},
		{"diagonals", ``, `"outline": {"by": "edges", "edges": ["10", "8", "10", "8"], "diagonals": [{"from": 0, "to": 2, "length": "13"}]}`, face,
			[]string{"diagonal 13 in from corner 1 to corner 3", "sides 1 and 3 2 of", "sides 2 and 4 2 of"}},
		{"leaning left", ``, `"sides": {"bottom": "12", "right": "16", "top": "12", "left": "16", "falling": "20 3/16"}`, face,
			[]string{"leans to the left by", "to the right under the mat"}},
		{"several", ``, `"outline": {"by": "regular", "size": "12"}`, face, []string{"8, all alike 3 of them", "all 8 rails 24 of", "for all 3"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			quantity := ""
			if row.name == "several" {
				quantity = `"quantity": 3, `
			}
			order := framing.NewReading([]byte(`{"version": 3, "units": "in", ` + row.shop + ` "pieces": [{` + quantity + `"art": {"kind": "panel", ` + row.art + `}, "frame": {` + row.frame + `}}]}`))
			plan, err := order.Work()
			if err != nil {
				t.Fatal(err)
			}
			text := cutPiece(ticket.Text(plan, ticket.Options{}), 1)
			for _, part := range row.has {
				if !strings.Contains(text, part) {
					t.Errorf("no %q in\n%s", part, text)
				}
			}
			if zero := " 0 deg if"; strings.Contains(text, zero) || strings.Contains(text, " 0 x 0") {
				t.Errorf("something of nothing in\n%s", text)
			}
		})
	}
}

// TestEveryRail: a ticket counts as many rails as there are sides that have one.
func TestEveryRail(t *testing.T) {
	shaped := 0
	for name, order := range orders(t) {
		plan, err := order.Work()
		if err != nil {
			t.Fatal(err)
		}
		text := ticket.Text(plan, ticket.Options{})
		for i, p := range plan.Pieces {
			if p.Shape.IsZero() {
				continue
			}
			shaped++
			piece := cutPiece(text, i+1)
			want := 0
			for _, section := range p.Shape.Frame.Sections {
				if !section.IsZero() {
					want++
				}
			}
			// Counts stand before "of", and what follows is the length.
			words, got := strings.Fields(piece), 0
			for k := 1; k+1 < len(words); k++ {
				n, err := strconv.Atoi(words[k-1])
				if _, bad := strconv.Atoi(words[k+1]); words[k] == "of" && err == nil && bad == nil {
					got += n
				}
			}
			if got != want*p.Quantity {
				t.Errorf("%s, piece %d: %d rails, want %d", name, i+1, got, want*p.Quantity)
			}
		}
	}
	if shaped < 8 {
		t.Errorf("%d shaped pieces", shaped)
	}
}

// TestWorkingsOnce: a rail that is cut as another, or as its mirror image, and an end
// that is cut as another have no working of their own.
func TestWorkingsOnce(t *testing.T) {
	for name, want := range map[string][]string{
		"wide-bottom":   {"the bottom rail, ", "the right rail, ", "the top rail, "},
		"triangle-open": {"side 1, ", "side 2, "},
	} {
		plan, err := orders(t)[name].Work()
		if err != nil {
			t.Fatal(err)
		}
		text := ticket.Text(plan, ticket.Options{Working: true})
		text, _, _ = strings.Cut(text, "\nPIECE 2")
		var got []string
		for _, line := range strings.Split(text, "\n") {
			rail, figure, ok := strings.Cut(line, ", long ")
			if rail = strings.TrimSpace(rail) + ", "; ok && strings.Contains(figure, "rail ") {
				got = append(got, rail)
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: workings of the rails %q, want %q", name, got, want)
		}
	}
	plan, err := orders(t)["canted-box"].Work()
	if err != nil {
		t.Fatal(err)
	}
	text, _, _ := strings.Cut(ticket.Text(plan, ticket.Options{Working: true}), "\nPIECE 2")
	if n := strings.Count(text, "all ends alike, flat miter"); n != 1 {
		t.Errorf("%d workings of one cut", n)
	}
}

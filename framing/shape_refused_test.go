package framing_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// shapedPiece is an order of one piece.
func shapedPiece(art, frame, more string) string {
	return `{"version": 3, "units": "in", "pieces": [{"art": {"kind": "panel", ` + art + `}, "frame": {"face": "1", "lip": "1/4"` + frame + `}` + more + `}]}`
}

// A refusedShape is a piece whose shape cannot be had.
type refusedShape struct {
	name, text string
	code       explain.Code
	at         explain.Path // in the piece
}

const (
	box    = `"width": "8", "height": "10"`
	edges5 = `"edges": ["12", "9", "8.06", "8.06", "9"]`
)

func outlined(fields string) string { return `"outline": {` + fields + `}` }

func refusedShapes() []refusedShape {
	many := func(what string, n int) string { return strings.TrimSuffix(strings.Repeat(what+", ", n), ", ") }
	byEdges := func(fields string) string { return shapedPiece(outlined(`"by": "edges", `+fields), "", "") }
	byAngles := func(fields string) string { return shapedPiece(outlined(`"by": "angles", `+fields), "", "") }
	sides := func(fields string) string { return shapedPiece(`"sides": {`+fields+`}`, "", "") }
	regular := outlined(`"by": "regular", "size": "18"`)
	const four = `"edges": ["3", "4", "3", "4"], `
	return []refusedShape{
		{"no way to give it", shapedPiece(outlined(`"size": "18"`), "", ""), explain.Missing, "/art/outline/by"},
		{"regular without a size", shapedPiece(outlined(`"by": "regular"`), "", ""), explain.OutOfRange, "/art/outline/size"},
		{"two sides", shapedPiece(outlined(`"by": "regular", "size": "18", "sides": 2`), "", ""), explain.OutOfRange, "/art/outline/sides"},
		{"65 sides", shapedPiece(outlined(`"by": "regular", "size": "18", "sides": 65`), "", ""), explain.OutOfRange, "/art/outline/sides"},
		{"out of the plane", shapedPiece(outlined(`"by": "regular", "size": "40 m", "sides": 64, "across": "side"`), "", ""), plane.Far, "/art/outline/size"},
		{"around no art", shapedPiece(`"width": "0", "height": "5", `+outlined(`"by": "around"`), "", ""), explain.OutOfRange, "/art/width"},
		{"around art without a height", shapedPiece(`"width": "3", `+outlined(`"by": "around"`), "", ""), explain.Missing, "/art/height"},
		{"regular, and a width", shapedPiece(`"width": "3", `+regular, "", ""), framing.NotTogether, "/art/width"},
		{"an outline and sides", shapedPiece(regular+`, "sides": {"bottom": "3", "right": "4", "top": "3", "left": "4", "rising": "5"}`, "", ""), framing.NotTogether, "/art/sides"},
		{"an outline that varies", shapedPiece(regular+`, "varies": {"width": "1/8", "height": "0"}`, "", ""), framing.NotTogether, "/art/varies"},
		{"an outline to stretch", shapedPiece(regular+`, "stretch": {}`, "", ""), framing.NotTogether, "/art/stretch"},
		{"two edges", byEdges(`"edges": ["3", "4"]`), explain.TooFew, "/art/outline/edges"},
		{"no edges", byEdges(`"within": "0"`), explain.TooFew, "/art/outline/edges"},
		{"an edge of nothing", byEdges(`"edges": ["3", "0", "5"]`), explain.OutOfRange, "/art/outline/edges/1"},
		{"65 edges", byEdges(`"edges": [` + many(`"3"`, 65) + `]`), explain.TooMany, "/art/outline/edges"},
		{"501 edges", byEdges(`"edges": [` + many(`"3"`, 501) + `]`), explain.TooMany, "/art/outline/edges"},
		{"no triangle", byEdges(`"edges": ["3", "9", "5"]`), plane.NoTriangle, "/art/outline/edges/1"},
		{"a triangle of no surface", byEdges(`"edges": ["3", "4", "7"]`), plane.NoTriangle, "/art/outline/edges/2"},
		{"nothing holds four", byEdges(`"edges": ["3", "4", "3", "4"]`), explain.TooFew, "/art/outline/diagonals"},
		{"a diagonal too long", byEdges(four + `"diagonals": [{"from": 0, "to": 2, "length": "8"}]`), plane.NoTriangle, "/art/outline/diagonals/0/length"},
		{"a diagonal that is an edge", byEdges(four + `"diagonals": [{"from": 0, "to": 1, "length": "5"}]`), plane.Loose, "/art/outline/diagonals/0/length"},
		{"a diagonal to itself", byEdges(four + `"diagonals": [{"from": 2, "to": 2, "length": "5"}]`), explain.OutOfRange, "/art/outline/diagonals/0/to"},
		{"a diagonal to no corner", byEdges(four + `"diagonals": [{"from": 0, "to": 4, "length": "5"}]`), explain.OutOfRange, "/art/outline/diagonals/0/to"},
		{"a diagonal from no corner", byEdges(four + `"diagonals": [{"from": -1, "to": 2, "length": "5"}]`), explain.OutOfRange, "/art/outline/diagonals/0/from"},
		{"a diagonal of nothing", byEdges(four + `"diagonals": [{"from": 0, "to": 2, "length": "0"}]`), explain.OutOfRange, "/art/outline/diagonals/0/length"},
		{"half a diagonal", byEdges(four + `"diagonals": [{"from": 0, "length": "5"}]`), explain.Missing, "/art/outline/diagonals/0/to"},
		{"diagonals that differ", byEdges(four + `"diagonals": [{"from": 0, "to": 2, "length": "5"}, {"from": 1, "to": 3, "length": "5 1/4"}]`), plane.Differs, "/art/outline/diagonals/1/length"},
		{"one diagonal twice", byEdges(edges5 + `, "diagonals": [{"from": 0, "to": 2, "length": "15"}, {"from": 2, "to": 0, "length": "15"}]`), plane.Loose, "/art/outline/diagonals/0/length"},
		{"129 diagonals", byEdges(four + `"diagonals": [` + many(`{"from": 0, "to": 2, "length": "5"}`, 129) + `]`), explain.TooMany, "/art/outline/diagonals"},
		{"one edge with angles", byAngles(`"edges": ["3"], "angles": []`), explain.TooFew, "/art/outline/edges"},
		{"an angle too few", byAngles(`"edges": ["3", "4", "5"], "angles": ["90"]`), explain.TooFew, "/art/outline/angles"},
		{"an angle too many", byAngles(`"edges": ["3", "4"], "angles": ["90", "90"]`), explain.TooMany, "/art/outline/angles"},
		{"an angle of nothing", byAngles(`"edges": ["3", "4"], "angles": ["0"]`), explain.OutOfRange, "/art/outline/angles/0"},
		{"a full angle", byAngles(`"edges": ["3", "4"], "angles": ["360"]`), explain.OutOfRange, "/art/outline/angles/0"},
		{"edges that cross", byAngles(`"edges": ["10", "10", "10", "10"], "angles": ["30", "30", "30"]`), plane.Crosses, "/art/outline/edges/0"},
		{"edges that come home early", byAngles(`"edges": ["10", "10", "10"], "angles": ["60", "60"]`), plane.NoLength, "/art/outline/edges"},
		{"sides without a diagonal", sides(`"bottom": "3", "right": "4", "top": "3", "left": "4"`), explain.Missing, "/art/sides/rising"},
		{"three sides", sides(`"bottom": "3", "right": "4", "top": "3", "rising": "5"`), explain.Missing, "/art/sides/left"},
		{"a rising diagonal too long", sides(`"bottom": "3", "right": "4", "top": "3", "left": "4", "rising": "7"`), plane.NoTriangle, "/art/sides/rising"},
		{"a falling diagonal too long", sides(`"bottom": "3", "right": "4", "top": "3", "left": "4", "falling": "7"`), plane.NoTriangle, "/art/sides/falling"},
		{"a side too long", sides(`"bottom": "3", "right": "4", "top": "3", "left": "9", "rising": "5"`), plane.NoTriangle, "/art/sides/left"},
		{"diagonals of sides that differ", sides(`"bottom": "3", "right": "4", "top": "3", "left": "4", "rising": "5", "falling": "5 1/4"`), plane.Differs, "/art/sides/falling"},
		{"a corner inward", sides(`"bottom": "10", "right": "3", "top": "3", "left": "10", "rising": "8"`), plane.NotConvex, "/art/sides"},
		{"three faces", shapedPiece(box, `, "faces": ["1", "1", "1"]`, ""), explain.TooFew, "/frame/faces"},
		{"five faces", shapedPiece(box, `, "faces": ["1", "1", "1", "1", "1"]`, ""), explain.TooMany, "/frame/faces"},
		{"one face", shapedPiece(regular, `, "faces": ["1"]`, ""), explain.TooFew, "/frame/faces"},
		{"no face", shapedPiece(box, `, "faces": []`, ""), explain.Missing, "/frame/faces"},
		{"no rail at all", shapedPiece(box, `, "faces": ["0", "0", "0", "0"]`, ""), explain.Missing, "/frame/faces"},
		{"a face no wider than the lip", shapedPiece(box, `, "faces": ["1", "1/4", "1", "1"]`, ""), explain.OutOfRange, "/frame/faces/1"},
		{"65 faces", shapedPiece(box, `, "faces": [`+many(`"1"`, 65)+`]`, ""), explain.TooMany, "/frame/faces"},
		{"two pitches", shapedPiece(box, `, "slope": {"pitches": [{"angle": "40", "from": "flat"}, {"angle": "40", "from": "flat"}], "thickness": "1/2"}`, ""), explain.TooFew, "/frame/slope/pitches"},
		{"no pitch", shapedPiece(box, `, "slope": {"pitches": [], "thickness": "1/2"}`, ""), explain.TooFew, "/frame/slope/pitches"},
		{"a pitch from nowhere", shapedPiece(box, `, "slope": {"pitches": [{"angle": "40"}], "thickness": "1/2"}`, ""), explain.Missing, "/frame/slope/pitches/0/from"},
		{"boards of no thickness", shapedPiece(box, `, "slope": {"pitches": [{"angle": "40", "from": "flat"}], "thickness": "0"}`, ""), explain.OutOfRange, "/frame/slope/thickness"},
		{"a slope without a rail", shapedPiece(box, `, "faces": ["0", "1", "1", "1"], "slope": {"pitches": [{"angle": "40", "from": "flat"}], "thickness": "1/2"}`, ""), framing.NotTogether, "/frame/faces"},
		{"one side flat", shapedPiece(box, `, "slope": {"pitches": [{"angle": "40", "from": "flat"}, {"angle": "0", "from": "flat"}, {"angle": "40", "from": "flat"}, {"angle": "40", "from": "flat"}], "thickness": "1/2"}`, ""), explain.OutOfRange, "/frame/slope/pitches/1/angle"},
		{"a mat", shapedPiece(regular, "", `, "mat": {}`), framing.NotTogether, "/mat"},
		{"a spacer", shapedPiece(regular, "", `, "spacer": {"width": "1/4"}`), framing.NotTogether, "/spacer"},
		{"a liner", shapedPiece(regular, "", `, "liner": {"face": "1", "lip": "1/4"}`), framing.NotTogether, "/liner"},
		{"hung by edges", shapedPiece(outlined(`"by": "edges", "edges": ["3", "4", "5"]`), "", `, "hang": {}`), framing.NotTogether, "/hang"},
		{"a floater by edges", strings.Replace(shapedPiece(outlined(`"by": "edges", "edges": ["3", "4", "5"]`), `, "kind": "floater"`, ""), `"lip": "1/4"`, `"lip": "0"`, 1), framing.NotTogether, "/frame/kind"},
		{"pitches that differ in one line", shapedPiece(outlined(`"by": "angles", "edges": ["3", "3", "6", "6"], "angles": ["180", "90", "90"]`), `, "slope": {"pitches": [{"angle": "40", "from": "flat"},
			{"angle": "50", "from": "flat"}, {"angle": "50", "from": "flat"}, {"angle": "50", "from": "flat"}, {"angle": "50", "from": "flat"}], "thickness": "1/2"}`, ""), explain.OutOfRange, "/frame/slope/pitches/1"},
		{"pitches that differ at a sharp corner", shapedPiece(outlined(`"by": "angles", "edges": ["10 m", "10 m"], "angles": ["0.1"]`), `, "slope": {"pitches": [{"angle": "40", "from": "flat"},
			{"angle": "50", "from": "flat"}, {"angle": "50", "from": "flat"}], "thickness": "1/2"}`, ""), explain.OutOfRange, "/frame/slope/pitches/1"},
		{"a mat out of the plane", shapedPiece(`"width": "49 m", "height": "49 m"`, `, "faces": ["1", "2", "1", "3"]`, `, "mat": {"borders": {"left": "49 m", "right": "49 m"}}`), plane.Far, "/mat"},
		{"a liner out of the plane", shapedPiece(`"width": "49 m", "height": "49 m"`, `, "faces": ["1", "2", "1", "3"]`, `, "liner": {"face": "49 m", "lip": "1"}`), plane.Far, "/liner"},
		{"rails that do not meet", shapedPiece(outlined(`"by": "angles", "edges": ["3", "3", "6", "6"], "angles": ["180", "90", "90"]`), `, "faces": ["1", "2", "1", "1", "1"]`, ""), plane.Step, "/frame/faces/1"},
	}
}

// TestRefusedShapes: what cannot be had is refused at the field that is at fault.
func TestRefusedShapes(t *testing.T) {
	for _, c := range refusedShapes() {
		t.Run(c.name, func(t *testing.T) {
			_, err := framing.Read([]byte(c.text))
			ps := problems(t, err)
			if len(ps) != 1 || ps[0].Code != c.code || ps[0].Path != "/pieces/0"+c.at {
				t.Errorf("problems %v (%q), want %s at %s", ps, paths(ps), c.code, c.at)
			}
			for _, p := range ps {
				if p.Code != explain.Missing && p.Accepted == "" && !strings.HasPrefix(string(p.Code), "plane.") {
					t.Errorf("%v says nothing that is accepted", p)
				}
			}
		})
	}
}

package framing_test

import (
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// cases are faults that people in the trade met, each worked as a framer would
// give it in.
var cases = map[string]func(*recorder){
	"MAT-01": overlapEachSide, "MAT-03": bordersKeepTheSum, "MAT-08": backIsMirrored, "MAT-09": bottomWeight,
	"S-01": windowAsLargeAsArt, "S-05": metricWindowInInchBoard,
	"RAIL-01": longPointIsNotShortPoint, "RAIL-02": lipIsTakenOff, "RAIL-03": buttedAround, "RAIL-08": eachPartItsPlay,
	"S-08": rabbetForPoints, "S-09": rabbetFilled, "S-10": readyMadeByOutside,
	"GLZ-03": paneFallsThrough, "GLZ-04": weightOfGlass,
	"MAT-04": lowerMatFromWhichEdge, "MAT-05": revealAndBevel, "S-03": croppedOrNot, "S-07": stripAsWideAsBorder, "S-15": unitedInchesOfBars,
	"STACK-01": canvasStandsProud, "STACK-02": spacerAndPlay, "CANV-01": canvasToCut, "CANV-02": canvasRoundTheBack,
	"HANG-01": tightWire, "HANG-02": cordTension, "HANG-04": ringsAtTwoHeights, "HANG-05": inTheMiddleOfAWall, "HANG-08": hookHeight,
	"WALL-01": threeLoads, "WALL-02": refusesWire,
	"UNIT-01": centimetersExactly, "UNIT-02": sheetInInches, "UNIT-03": waysToWrite,
	"POLY-02": octagonAcrossFlats, "POLY-03": eightRailsOfSix, "POLY-04": hexagonAroundCircle, "POLY-07": triangleBySides,
	"POLY-09": fivePointStar, "POLY-11": octagonCutOff, "S-12": openPentagon, "RAIL-05": railsOfTwoWidths,
	"COMP-01": fourSidesLean, "COMP-02": fourSidesFromTheWall, "COMP-04": stoodOnEdge, "COMP-08": sixSidesSteep,
}

// caseNames are the cases that must be there.
var caseNames = []string{
	"MAT-01", "MAT-03", "MAT-08", "MAT-09", "RAIL-01", "RAIL-02", "RAIL-03", "RAIL-08",
	"S-01", "S-05", "S-08", "S-09", "S-10", "GLZ-03", "GLZ-04", "UNIT-01", "UNIT-02", "UNIT-03",
	"MAT-04", "MAT-05", "S-03", "S-07", "S-15", "STACK-01", "STACK-02",
	"HANG-01", "HANG-02", "HANG-04", "HANG-05", "HANG-08", "WALL-01", "WALL-02", "CANV-01", "CANV-02",
	"POLY-02", "POLY-03", "POLY-04", "POLY-07", "POLY-09", "POLY-11", "S-12", "RAIL-05", "COMP-01", "COMP-02", "COMP-04", "COMP-08",
}

func TestCases(t *testing.T) {
	for _, name := range caseNames {
		run := cases[name]
		if run == nil {
			t.Errorf("no case %s", name)
			continue
		}
		t.Run(name, func(t *testing.T) {
			r := &recorder{T: t}
			run(r)
			if r.compared == 0 {
				t.Error("compares no number")
			}
		})
	}
	for name := range cases {
		if !slices.Contains(caseNames, name) {
			t.Errorf("the case %s is not in the list", name)
		}
	}
}

// A recorder counts the numbers that a case compares.
type recorder struct {
	*testing.T
	compared int
}

// is compares a length with inches as one writes them.
func (r *recorder) is(what string, got measure.Length, want string) {
	r.Helper()
	r.compared++
	if l := in(r, want); got != l {
		r.Errorf("%s is %v (%s in), want %s", what, got, inches(got), want)
	}
}

// size compares a width and a height.
func (r *recorder) size(what string, got measure.Size, width, height string) {
	r.Helper()
	r.is(what+", width", got.Width, width)
	r.is(what+", height", got.Height, height)
}

// number compares anything else that counts.
func (r *recorder) number(what string, got, want int64) {
	r.Helper()
	r.compared++
	if got != want {
		r.Errorf("%s is %d, want %d", what, got, want)
	}
}

// text compares what is printed.
func (r *recorder) text(what, got, want string) {
	r.Helper()
	r.compared++
	if got != want {
		r.Errorf("%s reads %q, want %q", what, got, want)
	}
}

// isNot makes sure that the wrong number of the trade does not come out.
func (r *recorder) isNot(what string, got measure.Length, wrong string) {
	r.Helper()
	if got == in(r, wrong) {
		r.Errorf("%s is %s, the very mistake", what, wrong)
	}
}

// told requires a note of this level.
func (r *recorder) told(p framing.PiecePlan, level explain.Level, code explain.Code) explain.Note {
	r.Helper()
	n, ok := note(p, code)
	if !ok || n.Level != level {
		r.Errorf("want the %s %s; notes: %+v", level, code, p.Notes)
	}
	return n
}

// valueOf is the value of a note under a key.
func valueOf(r *recorder, n explain.Note, key explain.Key) explain.Value {
	r.Helper()
	for _, v := range n.Values {
		if v.Key == key {
			return v.Value
		}
	}
	r.Errorf("the note %s has no %s: %v", n.Code, key, n.Values)
	return explain.Value{}
}

// untold requires that there is no such note.
func (r *recorder) untold(p framing.PiecePlan, codes ...explain.Code) {
	r.Helper()
	for _, code := range codes {
		if hasNote(p, code) {
			r.Errorf("the note %s is out of place", code)
		}
	}
}

// piece works an order of one piece in inches, or in another unit.
func (r *recorder) piece(units, show, text string) framing.PiecePlan {
	r.Helper()
	return worked(r, `{"version": 1, "units": "`+units+`", "show": `+show+`, "pieces": [`+text+`]}`).Pieces[0]
}

// Ways to show lengths in the cases.
const (
	tape  = `{"as": "fraction", "fineness": "1/16 in"}`
	rule  = `{"as": "fraction", "fineness": "1/32 in"}`
	tenth = `{"as": "metric", "fineness": "0.1 mm"}`
)

// strip is a molding for cases that are not about it.
const strip = `"frame": {"face": "1 in", "lip": "1/4 in", "rabbet": "1/2 in", "allowance": "1/8 in"}`

// inches writes a length in thousandths of an inch.
func inches(l measure.Length) string {
	return measure.Format{Style: measure.DecimalInch, Step: measure.Inch / 1000}.Number(l, measure.Nearest)
}

package framing_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// shape works an order of one piece in inches and returns how its rails are cut.
func (r *recorder) shape(shop, art, frame string) (framing.PiecePlan, framing.ShapePlan) {
	r.Helper()
	p := worked(r, shapeOrder(shop, art, frame)).Pieces[0]
	return p, p.Shape
}

func shapeOrder(shop, art, frame string) string {
	return `{"version": 3, "units": "in", "show": ` + rule + `, "shop": {` + shop + `}, "pieces": [{"art": {"kind": "panel", ` + art + `}, "frame": {` + frame + `}}]}`
}

// reads compares a length in thousandths of an inch.
func (r *recorder) reads(what string, got measure.Length, want string) {
	r.Helper()
	r.text(what, inches(got), want)
}

// degrees compares hundredths of a degree.
func (r *recorder) degrees(what string, got measure.Angle, want int64) {
	r.Helper()
	rounded, _ := measure.RoundTo(got, measure.Degree/100, measure.Nearest)
	r.number(what+", hundredths of a degree", int64(rounded/(measure.Degree/100)), want)
}

// An octagon of 18 1/4, taken as across flats.
func octagonAcrossFlats(r *recorder) {
	_, s := r.shape("", `"outline": {"by": "regular", "size": "18 1/4"}`, `"face": "1", "lip": "0", "allowance": "0"`)
	r.reads("inner side", s.Regular.ShortPoint.Exact, "7.559")
	r.reads("long point", s.Regular.LongPoint.Exact, "8.388")
}

// Eight rails of 6: the opening depends on the face.
func eightRailsOfSix(r *recorder) {
	for face, want := range map[string]string{"1": "12.485", "1 1/4": "11.985", "2 1/2": "9.485"} {
		order, err := framing.Read([]byte(shapeOrder("", `"outline": {"by": "regular", "size": "12"}`, `"face": "`+face+`", "lip": "0", "allowance": "0"`)))
		if err != nil {
			r.Fatal(err)
		}
		q := framing.Question{Free: p("/art/outline/size"), Want: p("/shape/regular/long_point"), Value: "6"}
		s := solved(r, order, q)
		r.reads("opening with a face of "+face, work(r, s.Order).Pieces[0].Shape.Regular.Opening.Exact, want)
	}
}

// A hexagon around a circle of 86 cm, of stock of 2.2 cm.
func hexagonAroundCircle(r *recorder) {
	_, s := r.shape("", `"outline": {"by": "regular", "sides": 6, "size": "86 cm"}`, `"face": "2.2 cm", "lip": "0", "allowance": "0"`)
	r.number("inner side, hundredths of a millimeter", int64(s.Regular.ShortPoint.Exact+5*measure.Micrometer)/int64(10*measure.Micrometer), 49652)
	r.number("outer side, tenths of a millimeter", int64(s.Regular.LongPoint.Exact+50*measure.Micrometer)/int64(100*measure.Micrometer), 5219)
}

// Three sides decide the corners.
func triangleBySides(r *recorder) {
	p, s := r.shape("", `"outline": {"by": "edges", "edges": ["22", "16", "16"]}`, `"face": "1 1/4", "lip": "1/4"`)
	for i, want := range []int64{4657, 4657, 8687} {
		r.degrees("corner", p.Art.Corners[i], want)
	}
	r.degrees("bottom, start", s.Rails[0].Start.Saw.Exact, 6672)
	r.degrees("bottom, finish", s.Rails[0].Finish.Saw.Exact, 6672)
	r.degrees("right, finish", s.Rails[1].Finish.Saw.Exact, 4657)
	_, err := framing.Read([]byte(shapeOrder("", `"outline": {"by": "edges", "edges": ["22", "11", "11"]}`, `"face": "1", "lip": "1/4"`)))
	if ps := problems(r, err); len(ps) != 1 || ps[0].Path != "/pieces/0/art/outline/edges/0" {
		r.Errorf("sides that make no triangle: %v", ps)
	}
}

// A star of five points: corners that point inward are cut the other way.
func fivePointStar(r *recorder) {
	_, s := r.shape("", `"outline": {"by": "angles", "edges": ["12", "12", "12", "12", "12", "12", "12", "12", "12"],
		"angles": ["252", "36", "252", "36", "252", "36", "252", "36"]}`, `"face": "1 1/2", "lip": "0", "allowance": "0"`)
	var sum measure.Angle
	for i, rail := range s.Rails {
		tip, inward := rail.Start, rail.Finish
		if i%2 == 1 {
			tip, inward = inward, tip
		}
		r.degrees("tip", tip.Saw.Exact, 7200)
		r.degrees("inward corner", inward.Saw.Exact, -3600)
		r.text("joint at the tip", inches(tip.Joint.Exact)[:4], "4.85")
		sum += tip.Saw.Exact + inward.Saw.Exact
	}
	r.number("all settings", int64(sum), int64(measure.Turn))
}

// An octagon with outer sides of 6 in, each cut off by .028 degree.
func octagonCutOff(r *recorder) {
	_, s := r.shape(`"saw": {"off": "0.028"}`, `"outline": {"by": "regular", "size": "10.789656"}`, `"face": "1.847759", "lip": "0", "allowance": "0"`)
	r.reads("long point", s.Regular.LongPoint.Exact, "6")
	r.reads("joint", s.Last.Joint.Exact, "2")
	r.reads("ends miss by", s.Last.Miss.Exact, "0.061")
}

// A pentagon with molding on four of its sides.
func openPentagon(r *recorder) {
	p, s := r.shape("", `"outline": {"by": "regular", "sides": 5, "size": "12"}`, `"face": "1", "lip": "1/4", "faces": ["1", "1", "1", "1", "0"]`)
	square, mitered := 0, 0
	for _, rail := range s.Rails[:4] {
		for _, end := range []framing.EndPlan{rail.Start, rail.Finish} {
			if end.Square {
				square++
				r.degrees("square end", end.Saw.Exact, 0)
				continue
			}
			mitered++
			r.degrees("corner", end.Saw.Exact, 3600)
		}
	}
	r.number("square ends", int64(square), 2)
	r.number("mitered ends", int64(mitered), 6)
	if !s.Rails[4].IsZero() || s.Closed() {
		r.Error("the fifth side has a rail")
	}
	r.told(p, explain.Advice, molding.SquareEnds)
}

// Rails of two widths, and of three.
func railsOfTwoWidths(r *recorder) {
	const saw = `"saw": {"miter": "50"}`
	_, s := r.shape(saw, `"width": "20", "height": "20"`, `"face": "4", "lip": "1/4", "faces": ["4", "3 1/2", "4", "3 1/2"]`)
	r.degrees("on the 4", s.Rails[0].Finish.Saw.Exact, 4119)
	r.degrees("on the 3 1/2", s.Rails[1].Start.Saw.Exact, 4881)
	p, s := r.shape(saw, `"width": "16", "height": "20"`, `"face": "2", "lip": "0", "allowance": "0", "faces": ["3", "2", "1 1/4", "2"]`)
	bottom, right, top, left := s.Rails[0], s.Rails[1], s.Rails[2], s.Rails[3]
	r.degrees("lower, side", right.Start.Saw.Exact, 5631)
	r.degrees("lower, bottom", bottom.Finish.Saw.Exact, 3369)
	r.degrees("upper, side", left.Start.Saw.Exact, 3201)
	r.degrees("upper, top", top.Finish.Saw.Exact, 5799)
	r.is("bottom", bottom.Long.Exact, "20")
	r.is("top", top.Long.Exact, "20")
	r.is("right", right.Long.Exact, "24 1/4")
	r.is("left", left.Long.Exact, "24 1/4")
	r.size("outside", p.Frame.Outside.Exact(), "20", "24 1/4")
	r.told(p, explain.Warning, molding.PastReach)
}

// laid is one way to cut a sloped side.
func (r *recorder) laid(what string, s framing.SettingPlan, miter, tilt int64) {
	r.Helper()
	r.degrees(what+", miter", s.Miter.Exact, miter)
	r.degrees(what+", tilt", s.Tilt.Exact, tilt)
}

func (r *recorder) sloped(art, pitch, from string) framing.SlopeEndPlan {
	r.Helper()
	_, s := r.shape("", art, `"face": "3", "lip": "1/4", "slope": {"pitches": [{"angle": "`+pitch+`", "from": "`+from+`"}], "thickness": "3/4"}`)
	for _, cut := range s.Slope {
		if cut.Left.Corner != cut.Right.Corner {
			r.Errorf("the ends differ: %+v", cut)
		}
	}
	return s.Slope[0].Left
}

const fourSides = `"width": "14", "height": "9"`

func fourSidesLean(r *recorder) {
	r.laid("45", r.sloped(fourSides, "45", "flat").Flat, 3526, 3000)
}

func fourSidesFromTheWall(r *recorder) {
	r.laid("38 from vertical", r.sloped(fourSides, "38", "vertical").Flat, 3162, 3386)
}

func stoodOnEdge(r *recorder) {
	for _, c := range []struct {
		sides, lean                          string
		edgeMiter, edgeTilt, flatMiter, flat int64
	}{{"6", "10", 2962, 498, 573, 2950}, {"8", "20", 2127, 752, 806, 2108}, {"12", "10", 1478, 258, 266, 1477}} {
		end := r.sloped(`"outline": {"by": "regular", "sides": `+c.sides+`, "size": "12"}`, c.lean, "vertical")
		r.laid(c.sides+" on edge", end.OnEdge, c.edgeMiter, c.edgeTilt)
		r.laid(c.sides+" flat", end.Flat, c.flatMiter, c.flat)
	}
}

func sixSidesSteep(r *recorder) {
	r.laid("75 from flat", r.sloped(`"outline": {"by": "regular", "sides": 6, "size": "7"}`, "75", "flat").Flat, 850, 2888)
}

// The octagon for a mirror of 18 in across flats.
func TestOctagonMirror(t *testing.T) {
	r := &recorder{T: t}
	_, s := r.shape("", `"outline": {"by": "regular", "size": "18"}`, `"face": "2 1/2", "lip": "3/8", "allowance": "1/8"`)
	hundredThousandths, _ := s.Regular.LongPoint.Exact.Scale(100_000, int64(measure.Inch))
	r.number("long point, hundred thousandths of an inch", int64(hundredThousandths), 926_803)
	r.is("long point, shown", s.Regular.LongPoint.Shown, "9 9/32")
	r.is("outside", s.Regular.Outside.Exact, "22 3/8")
	r.number("saw", int64(s.Regular.Saw.Exact), int64(45*measure.Degree/2))
}

package draw

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// planOf works a sample order.
func planOf(t testing.TB, name string) framing.Plan {
	t.Helper()
	data, err := os.ReadFile("../../testdata/orders/" + name + ".json")
	if err != nil {
		t.Fatal(err)
	}
	plan, err := framing.NewReading(data).Work()
	if err != nil {
		t.Fatal(err)
	}
	return plan
}

// texts is all that is written on a drawing, line by line.
func (s seen) all() string {
	var b strings.Builder
	for _, l := range s.texts {
		b.WriteString(strings.ReplaceAll(l.text, "\u00a0", " ") + "\n")
	}
	return b.String()
}

// TestShapesSay reads the drawings of the sample orders of other shapes.
func TestShapesSay(t *testing.T) {
	for _, row := range []struct {
		order string
		piece int
		view  View
		has   string // lines
		hasNo string
	}{
		{"octagon-mirror", 0, Front, "22 3/8|17 3/8|7 3/16|9 5/16|panel across flats 18|face 2 1/2", "A|Nothing"},
		{"octagon-mirror", 0, Rails, "each side: 8 alike|short point 7 3/16|long point 9 5/16|both ends: saw 22.5° from square|cut 67.5° to the edge", "setup"},
		{"octagon-mirror", 0, Back, "seen: backing|20 1/4|6 3/4", ""},
		{"octagon-mirror", 0, Setup, "Every end of this frame is cut lying flat", "jig"},
		{"wide-bottom", 0, Front, "3|1 1/4|2|14 1/2|18 1/2|22", "face"},
		{"wide-bottom", 0, Section, "cut through the bottom rail|3", ""},
		{"wide-bottom", 0, Rails, "the top rail: one|left end, at the right rail:|saw 58° from square|cut 32° to the edge|saw 33.7° from square|The saw swings to 50°", ""},
		{"wide-bottom", 0, Setup, "the right rail, and every end of that angle|33.69 deg|32.01 deg|the broken line the blade", "mirror image"},
		{"triangle-open", 0, Front, "27|14 1/4|A|B|C|outer 19 5/8|sight 15 3/8", "no rail"},
		{"triangle-open", 0, Rails, "rail A: one|saw 66.7° from square|cut 23.3° to the edge", ""},
		{"triangle-open", 1, Front, "no rail, the panel's edge is bare 22|outer 17", ""},
		{"triangle-open", 1, Rails, "left end, no rail beside it:|right end, no rail beside it:|square, saw 0° from square|Side A has no rail.", ""},
		{"triangle-open", 1, Section, "cut through rail B", ""},
		{"triangle-open", 2, Back, "seen: art|14 1/4|17 1/4", ""},
		{"canted-box", 0, Front, "1 7/8|17 1/8|each side: pitch 52° from flat, 38° from vertical|which is their run", ""},
		{"canted-box", 0, Section, "run 1 7/8|depth 2 3/8|board, along its front 3|board, thick 3/4|The rabbet behind the sight edge is not drawn.", ""},
		{"canted-box", 0, Rails, "front sight 13 3/8|back sight 14 9/16|front rim 17 1/8|back rim 18 5/16|miter 31.6° from square|tilt 33.9° from upright", "cut"},
		{"canted-box", 0, Setup, "each side: 4 alike; left end|the two fronts meet at 112.3°|miter 38.2°, longer at the fence|tilt 25.8°, longer at the table|tilt 0°|laid flat, back on the table|on edge, rim on the table|propped at its pitch|0.039|none", "past"},
		{"canted-box", 1, Front, "each side, rim 4 7/16|6 5/8|8 7/8", ""},
		{"canted-box", 2, Setup, "tilt 13°, longer at the top|tilt 13°, longer at the table|past the saw, which reaches miter 50°, tilt 45°", "-"},
		{"out-of-square", 0, Front, "art's top edge 12|diagonal rising to the right 20 3/16", ""},
		{"out-of-square", 1, Front, "panel across flats 8 7/8|4 13/16|art's width 7|art's height 5", ""},
	} {
		for _, o := range everyPaper() {
			name := fmt.Sprint(row.order, row.piece, row.view, o)
			svg := SVG(planOf(t, row.order), row.piece, row.view, o)
			text := check(t, name, svg).all()
			flat := strings.ReplaceAll(text, "\n", " ")
			for want := range strings.SplitSeq(row.has, "|") {
				if !strings.Contains("\n"+text, "\n"+want+"\n") && !strings.Contains(flat, want) {
					t.Errorf("%s: no %q in\n%s", name, want, text)
				}
			}
			for no := range strings.SplitSeq(row.hasNo, "|") {
				if no != "" && strings.Contains("\n"+text, "\n"+no) {
					t.Errorf("%s: %q in\n%s", name, no, text)
				}
			}
			if !strings.Contains(svg, "-title\">") || strings.Contains(svg, "-desc\"></desc>") {
				t.Errorf("%s says nothing", name)
			}
		}
	}
}

// TestShapesSpoken: what is drawn is said to those who listen.
func TestShapesSpoken(t *testing.T) {
	for _, row := range []struct {
		order string
		piece int
		view  View
		want  string
	}{
		{"octagon-mirror", 0, Front, "The frame has 8 sides and is 22 and 3 eighths inches by 22 and 3 eighths inches outside, width by height. all sides are alike; seen across flats 17 and 3 eighths inches;"},
		{"octagon-mirror", 0, Rails, "both ends: saw 22.5 degrees from square; cut 67.5 degrees to the edge;"},
		{"octagon-mirror", 0, Back, "The hangers bear 6 and 3 quarters inches below the top."},
		{"triangle-open", 1, Front, "A. no rail, the panel's edge is bare 22 inches. B. outer 17 inches; sight 15 and 5 eighths inches; face 1 and one quarter inches. C."},
		{"wide-bottom", 0, Front, "The bottom rail is 3 inches wide. The right rail is 2 inches wide."},
		{"canted-box", 0, Setup, "laid flat, back on the table and rim against the fence. miter 31.6 degrees, longer at the fence; tilt 33.9 degrees, longer at the table. scale in degrees: 32° and 34°, gap 0.039. scale in halves"},
		{"canted-box", 0, Section, "run 1 and 7 eighths inches; depth 2 and 3 eighths inches. Cut through: bottom and top; pitch 52° from flat, 38° from vertical."},
		{"out-of-square", 0, Front, "The panel is out of square: its bottom edge is 12 inches long, its right 16 inches"},
	} {
		svg := SVG(planOf(t, row.order), row.piece, row.view, Options{})
		if _, desc, _ := strings.Cut(svg, "-desc\">"); !strings.Contains(desc, row.want) {
			desc, _, _ = strings.Cut(desc, "</desc>")
			t.Errorf("%s, %s: no %q in %q", row.order, row.view, row.want, desc)
		}
	}
}

// railPaths are the rails of a drawing, corner by corner.
func railPaths(t testing.TB, svg string) [][][4]int {
	t.Helper()
	var list [][][4]int
	for path := range strings.SplitSeq(svg, "<path d=\"") {
		d, rest, _ := strings.Cut(path, "\"")
		if strings.HasPrefix(rest, " class=\"rail") {
			list = append(list, points(t, d))
		}
	}
	return list
}

func lengthOf(l [4]int) float64 { return math.Hypot(float64(l[2]-l[0]), float64(l[3]-l[1])) }

// TestToScale: each rail of the front is drawn as long as the plan says that it is,
// the second road being its figures and not its corners; the whole as wide as its
// bounds.
func TestToScale(t *testing.T) {
	for _, row := range []struct {
		order string
		piece int
	}{{"octagon-mirror", 0}, {"triangle-open", 0}, {"triangle-open", 1}, {"triangle-open", 2}, {"wide-bottom", 0}, {"out-of-square", 1}} {
		plan := planOf(t, row.order)
		shape := &plan.Pieces[row.piece].Shape
		svg := SVG(plan, row.piece, Front, Options{Width: 2000, Height: 2000})
		drawn := railPaths(t, svg)
		least, most := math.MaxInt, math.MinInt
		for _, rail := range drawn {
			for _, l := range rail {
				least, most = min(least, l[0]), max(most, l[0])
			}
		}
		scale := float64(most-least) / float64(shape.Bounds.Width)
		n := 0
		for i := range shape.Sides {
			outer, sight := shape.Regular.LongPoint.Exact, shape.Regular.ShortPoint.Exact
			if shape.Rails != nil {
				if shape.Rails[i].IsZero() {
					continue
				}
				outer, sight = shape.Rails[i].Outer.Exact, shape.Rails[i].Sight.Exact
			}
			for edge, want := range map[int]measure.Length{0: sight, 2: outer} {
				// Both ends, and the scale, are rounded to a hundredth of a pixel.
				if got := lengthOf(drawn[n][edge]); math.Abs(got-scale*float64(want)) > 3 {
					t.Errorf("%s %d: edge %d of rail %d is drawn %.1f long, want %.1f", row.order, row.piece, edge, i, got, scale*float64(want))
				}
			}
			n++
		}
		if n != len(drawn) {
			t.Errorf("%s: %d rails are drawn, want %d", row.order, len(drawn), n)
		}
	}
}

// TestEndsAtTheirAngles: an end of a rail laid flat leans as the saw is set.
func TestEndsAtTheirAngles(t *testing.T) {
	for _, row := range []struct {
		order       string
		piece       int
		left, right []float64 // degrees from square, rail by rail, as the plan's text has them
	}{
		{"octagon-mirror", 0, []float64{22.5}, []float64{22.5}},
		{"wide-bottom", 0, []float64{33.7, 56.3, 58, 32}, []float64{33.7, 32, 58, 56.3}},
		{"triangle-open", 1, []float64{0, 46.6}, []float64{46.6, 0}},
		{"canted-box", 2, []float64{40.9, 18.6}, []float64{40.9, 18.6}},
	} {
		drawn := railPaths(t, SVG(planOf(t, row.order), row.piece, Rails, Options{Width: 4000, Height: 4000}))
		if len(drawn) != len(row.left) {
			t.Errorf("%s: %d rails, want %d", row.order, len(drawn), len(row.left))
			continue
		}
		for i, rail := range drawn {
			// Sight edge, right end, outer edge, left end.
			right := math.Atan2(float64(rail[1][2]-rail[1][0]), float64(rail[1][3]-rail[1][1])) * 180 / math.Pi
			left := math.Atan2(float64(rail[3][0]-rail[3][2]), float64(rail[3][1]-rail[3][3])) * 180 / math.Pi
			if math.Abs(right-row.right[i]) > .06 || math.Abs(-left-row.left[i]) > .06 && math.Abs(left-row.left[i]) > .06 {
				t.Errorf("%s, rail %d: drawn at %.2f and %.2f, want %v and %v", row.order, i, left, right, row.left[i], row.right[i])
			}
		}
	}
}

// TestNothingSeen: a frame whose lips meet is not drawn from the front and says so;
// its rails are.
func TestNothingSeen(t *testing.T) {
	o := framing.NewOrder(framing.Inches)
	p := framing.NewPiece(o.Shop)
	p.Art.Kind = framing.Panel
	p.Art.Outline = framing.NewOutline()
	p.Art.Outline.By, p.Art.Outline.Edges = framing.ByEdges, []measure.Length{4 * measure.Inch, 4 * measure.Inch, 4 * measure.Inch}
	p.Frame = framing.NewFrame(o.Shop)
	p.Frame.Face, p.Frame.Lip = 3*measure.Inch, 2*measure.Inch
	o.Pieces = []framing.Piece{p}
	plan, err := framing.Work(o)
	if err != nil {
		t.Fatal(err)
	}
	for _, view := range []View{Front, Back} {
		svg := SVG(plan, 0, view, Options{})
		if text := check(t, string(view), svg).all(); !strings.Contains(text, "cannot be drawn") || len(railPaths(t, svg)) != 0 {
			t.Errorf("%s: %s", view, text)
		}
	}
	if text := check(t, "rails", SVG(plan, 0, Rails, Options{})).all(); !strings.Contains(text, "each side: 3 alike") {
		t.Error(text)
	}
}

// shape makes the frame of an order another one than a plain rectangle.
func (m maker) shape(o *framing.Order) {
	const in = measure.Inch
	p := &o.Pieces[0]
	p.Liner = molding.Frame{}
	p.Frame.Kind, p.Frame.Lip = molding.Rabbeted, min(in/4, p.Frame.Face/2)
	n := 4
	if m.IntN(3) > 0 {
		p.Mat, p.Spacer = framing.Piece{}.Mat, framing.Piece{}.Spacer
		p.Art.Outline = framing.NewOutline()
		n = 3 + m.IntN(10)
		p.Art.Width, p.Art.Height = 0, 0
		switch m.IntN(3) {
		case 0:
			p.Art.Outline.By, p.Art.Outline.Sides, p.Art.Outline.Size = framing.ByRegular, n, m.length(4*in, 60*in)
			p.Art.Outline.Across = plane.Across(p.Art.Outline.Across.Choices()[m.IntN(3)])
		case 1:
			p.Art.Outline.By, p.Art.Outline.Sides = framing.ByAround, n
			p.Art.Width, p.Art.Height = m.length(4*in, 30*in), m.length(4*in, 30*in)
		case 2:
			p.Art.Outline.By, p.Art.Outline.Sides = framing.ByAngles, 0
			for i := range n - 1 {
				p.Art.Outline.Edges = append(p.Art.Outline.Edges, m.length(4*in, 20*in))
				if i > 0 {
					p.Art.Outline.Angles = append(p.Art.Outline.Angles, measure.Angle(60+m.IntN(180))*measure.Degree)
				}
			}
		}
		p.Art.Outline.Stand = plane.Stand(p.Art.Outline.Stand.Choices()[m.IntN(3)])
	}
	if m.IntN(2) == 0 {
		for range n {
			p.Frame.Faces = append(p.Frame.Faces, []measure.Length{0, in / 2, in, 3 * in}[m.IntN(4)])
		}
	}
	if m.IntN(3) == 0 {
		p.Frame.Slope.Thickness = in / 2
		p.Frame.Slope.Pitches = []molding.Pitch{{Angle: measure.Angle(m.IntN(91)) * measure.Degree, From: molding.FromFlat}}
	}
	o.Shop.Saw.Miter = measure.Angle(m.IntN(60)) * measure.Degree
}

// TestDrawnShapes draws a lot of frames of other shapes, most of them odd.
func TestDrawnShapes(t *testing.T) {
	m := maker{rand.New(rand.NewPCG(8, 5))}
	worked := 0
	for n := range 800 {
		o := m.order()
		m.shape(&o)
		plan, err := framing.Work(o)
		if err != nil {
			o.Pieces[0].Hang = framing.NewPiece(o.Shop).Hang
			if plan, err = framing.Work(o); err != nil {
				continue
			}
		}
		worked++
		texts := figures(t, plan)
		for _, view := range Front.Choices() {
			o := everyPaper()[n%4]
			name := fmt.Sprint(n, view, o)
			checkNumbers(t, name, check(t, name, SVG(plan, 0, View(view), o)), texts)
			if t.Failed() {
				t.Logf("%+v", plan.Order.Pieces[0])
				t.FailNow()
			}
		}
	}
	if worked < 200 {
		t.Errorf("only %d of the orders could be worked", worked)
	}
}

package framing_test

import (
	"bytes"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// shaped draws an order of one piece that is no plain rectangle and has no problems.
// What does not go together is drawn again.
func (d dice) shaped(t testing.TB) framing.Order {
	for range 1000 {
		o := d.order(1)
		o.Shop.Saw = d.saw()
		d.reshape(&o.Pieces[0])
		if o.Check() == nil {
			return o
		}
	}
	t.Fatal("a thousand drawn shapes have problems")
	return framing.Order{}
}

func (d dice) saw() framing.Saw {
	return framing.Saw{
		Miter: draw(d, 0, 45*measure.Degree, 50*measure.Degree, d.angle(0, 90)), Tilt: draw(d, 0, 45*measure.Degree, d.angle(0, 90)),
		Off: draw(d, 0, measure.Degree/10, d.angle(-5, 5)), Seen: draw(d, 0, d.length(0, mm)),
	}
}

// angle draws from least to most degrees, mostly whole ones.
func (d dice) angle(least, most int64) measure.Angle {
	a := measure.Angle(least)*measure.Degree + measure.Angle(d.below((most-least)*int64(measure.Degree)+1))
	if d.in(2) {
		a, _ = measure.RoundTo(a, measure.Degree, measure.Down)
	}
	return a
}

// reshape gives a piece another outline, or rails that differ or slope.
func (d dice) reshape(p *framing.Piece) {
	n := 4
	p.Liner.Faces = nil
	switch d.below(8) {
	case 0, 1, 2:
		n = d.regular(p)
	case 3:
		n = d.edged(p)
	case 4:
		n = d.angled(p)
	case 5:
		if d.in(3) {
			d.askew(p)
		}
	}
	if n != 4 || !p.Art.Outline.IsZero() {
		p.Mat, p.Liner, p.Spacer = mat.Mat{}, molding.Frame{}, framing.Piece{}.Spacer
		p.Art.Varies, p.Art.Stretch = measure.Size{}, framing.Stretch{}
	}
	f := &p.Frame
	if !d.in(3) || f.Slope.IsZero() && p.Art.Outline.IsZero() {
		for range n {
			f.Faces = append(f.Faces, draw(d, f.Face, f.Lip+d.length(1, 60*mm)))
		}
		if d.in(3) {
			f.Faces[d.below(int64(n))] = 0
		}
		if d.in(6) {
			f.Faces = nil
		}
	}
	if d.in(2) {
		f.Slope.Thickness = d.length(1, 30*mm)
		f.Slope.Pitches = []molding.Pitch{d.pitch()}
		if d.in(2) {
			for range n - 1 {
				f.Slope.Pitches = append(f.Slope.Pitches, draw(d, f.Slope.Pitches[0], d.pitch()))
			}
		}
	}
	bare := slices.Contains(f.Faces, 0)
	if bare || !p.Art.Outline.IsZero() && (f.Faces != nil || !f.Slope.Alike() || p.Art.Outline.By == framing.ByEdges || p.Art.Outline.By == framing.ByAngles) {
		p.Hang = hang.Hanging{}
		f.Kind = molding.Rabbeted
	}
	if bare {
		p.Mat, p.Liner, p.Spacer = mat.Mat{}, molding.Frame{}, framing.Piece{}.Spacer
		f.Slope = molding.Slope{}
	}
}

func (d dice) pitch() molding.Pitch {
	return molding.Pitch{Angle: draw(d, 45*measure.Degree, d.angle(0, 90), d.angle(1, 90), 0, measure.RightAngle), From: draw(d, molding.FromFlat, molding.FromVertical)}
}

func (d dice) regular(p *framing.Piece) int {
	o := framing.NewOutline()
	o.By, o.Sides = draw(d, framing.ByRegular, framing.ByRegular, framing.ByAround), 3+int(draw(d, d.below(10), d.below(62)))
	o.Across, o.Stand = draw(d, plane.Flats, plane.Points, plane.OneSide), draw(d, plane.OnSide, plane.OnPoint, plane.Sideways)
	o.Size = d.length(10*mm, 900*mm)
	p.Art.Outline = o
	if o.By == framing.ByRegular {
		p.Art.Width, p.Art.Height = 0, 0
	}
	return o.Sides
}

// edged draws three measured edges, or four or five and what holds them.
func (d dice) edged(p *framing.Piece) int {
	o := framing.NewOutline()
	o.By, o.Within = framing.ByEdges, draw(d, 0, d.length(0, 3*mm))
	n := 3 + int(d.below(3))
	long := d.length(100*mm, 600*mm)
	for range n {
		o.Edges = append(o.Edges, long+d.length(-long/4, long/4))
	}
	for i := range n - 3 {
		o.Diagonals = append(o.Diagonals, plane.Diagonal{From: 0, To: 2 + i, Length: long + d.length(0, long/2)})
	}
	p.Art.Outline, p.Art.Width, p.Art.Height = o, 0, 0
	return n
}

// angled draws an outline by its angles, one of them inward now and then.
func (d dice) angled(p *framing.Piece) int {
	o := framing.NewOutline()
	o.By = framing.ByAngles
	n := 3 + int(d.below(5))
	even := measure.Turn / 2 * measure.Angle(n-2) / measure.Angle(n)
	for i := range n - 1 {
		o.Edges = append(o.Edges, d.length(60*mm, 400*mm))
		if i > 0 {
			o.Angles = append(o.Angles, draw(d, even, even+d.angle(-20, 20), even+d.angle(-20, 20), even+d.angle(0, 120)))
		}
	}
	p.Art.Outline, p.Art.Width, p.Art.Height = o, 0, 0
	return n
}

// askew draws measured sides.
func (d dice) askew(p *framing.Piece) {
	s := p.Art.Least()
	s.Width, s.Height = max(s.Width, 60*mm), max(s.Height, 60*mm)
	long := measure.Hypot(s.Width, s.Height)
	off := func() measure.Length { return d.length(-2*mm, 2*mm) }
	p.Art.Sides = molding.OutOfSquare{Bottom: s.Width + off(), Right: s.Height + off(), Top: s.Width + off(), Left: s.Height + off(), Rising: long + off()}
	if d.in(2) {
		p.Art.Sides.Falling, p.Art.Sides.Rising = p.Art.Sides.Rising, 0
	}
	p.Art.Width, p.Art.Height, p.Art.Varies, p.Art.Stretch = 0, 0, measure.Size{}, framing.Stretch{}
}

// TestShapedWorkings works the formulas of shaped orders again, and reads them back.
func TestShapedWorkings(t *testing.T) {
	d := newDice(21)
	orders := 400
	if slow {
		orders = 60
	}
	kinds := make(map[string]int)
	for range orders {
		order := d.shaped(t)
		text := marshal(t, order)
		plan := work(t, order)
		checkWorkings(t, plan)
		if !bytes.Equal(text, marshal(t, order)) {
			t.Fatal("Work changes its order")
		}
		again, err := framing.Read(text)
		if err != nil || !same(t, order, again) || !bytes.Equal(marshal(t, plan), marshal(t, work(t, again))) {
			t.Fatalf("read back, the order or its plan differs (%v):\n%s\n%s", err, text, marshal(t, again))
		}
		s := plan.Pieces[0].Shape
		checkShape(t, s)
		if !s.IsZero() && !hasNote(plan.Pieces[0], molding.CautionSaw) && order.Pieces[0].Frame.Made != molding.ReadyMade {
			t.Error("nothing is said about the saw")
		}
		if t.Failed() {
			t.Logf("%s", text)
			return
		}
		p := order.Pieces[0]
		for kind, is := range map[string]bool{
			string(p.Art.Outline.By): true, "regular": s.Panel.Sides > 0, "sloped": s.Slope != nil, "pitches": len(s.Slope) > 1, "bare": !s.Closed(),
			"faces": p.Frame.Faces != nil, "sides": p.Art.Sides.Bottom > 0, "floater": p.Frame.Kind == molding.Floater && !s.IsZero(),
			"hangs": !p.Hang.IsZero() && !s.IsZero(), "matted": !p.Mat.IsZero() && !s.IsZero(), "lined": !p.Liner.IsZero() && !s.IsZero(), "ring": s.Ring.Sides > 0,
			"inward": slices.ContainsFunc(plan.Pieces[0].Art.Corners, func(a measure.Angle) bool { return a > measure.Turn/2 }),
		} {
			if is {
				kinds[kind]++
			}
		}
	}
	for _, kind := range []string{"regular", "around", "edges", "angles", "sloped", "pitches", "bare", "faces", "sides", "floater", "hangs", "matted", "lined", "ring", "inward"} {
		if kinds[kind] < orders/100 {
			t.Errorf("%d of %d drawn orders are %s", kinds[kind], orders, kind)
		}
	}
}

// checkShape: what a saw is set to over all the cuts of a closed flat frame turns once
// around, and rails come home.
func checkShape(t *testing.T, s framing.ShapePlan) {
	t.Helper()
	if len(s.Rails) == 0 || !s.Closed() {
		return
	}
	var sum measure.Angle
	walk := make([]plane.Side, len(s.Rails))
	for i, r := range s.Rails {
		sum += r.Start.Saw.Exact + r.Finish.Saw.Exact
		walk[i] = plane.Side{Length: r.Outer.Exact, Turn: s.Sides[i].Turn}
		if grown := r.Sight.Exact + r.Start.Growth.Exact + r.Finish.Growth.Exact - r.Outer.Exact; grown < -2 || grown > 2 {
			t.Errorf("rail %d is %v from end to end and grows by %v and %v from %v", i, r.Outer.Exact, r.Start.Growth.Exact, r.Finish.Growth.Exact, r.Sight.Exact)
		}
	}
	if sum != measure.Turn {
		t.Errorf("the saw's settings add up to %v", sum)
	}
	ends := plane.Walk(plane.Point{}, 0, walk...)
	if end := ends[len(ends)-1]; measure.Hypot(end.X, end.Y) > 2*measure.Length(len(walk)) {
		t.Errorf("the outer edges miss home by %v, %v", end.X, end.Y)
	}
}

package molding_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

func ring(n int, long, face string, off float64) molding.Ring {
	return molding.Ring{Sides: n, Long: in(long), Face: in(face), Off: deg(off)}
}

// isAbout reports whether a length is so many inches, to a step.
func isAbout(l measure.Length, inches, step float64) bool {
	return math.Abs(float64(l)/float64(measure.Inch)-inches) <= step/2+1e-9
}

// TestErrorCases: frames that did not close, with the right answer worked out.
func TestErrorCases(t *testing.T) {
	t.Run("POLY-05", func(t *testing.T) { // the miss grows with the rails, the wedge does not show it
		for _, row := range []struct{ cut, miss float64 }{{30.8, 1.96}, {29.2, 2.06}, {30.5, 1.24}} {
			j := ring(6, "12", "2", row.cut-30).Last()
			if !isAbout(j.Miss, row.miss, 0.01) {
				t.Errorf("cut at %v: misses by %v, want %v", row.cut, j.Miss, row.miss)
			}
			wedge := float64(j.Wedge) / float64(measure.Inch)
			if wedge < 0.235 || wedge > 0.395 || 3*j.Wedge > j.Miss {
				t.Errorf("cut at %v: a wedge of %v", row.cut, j.Wedge)
			}
			if want := map[bool]molding.End{true: molding.Heel, false: molding.Toe}[row.cut > 30]; j.Opens != want {
				t.Errorf("cut at %v: opens at the %s", row.cut, j.Opens)
			}
		}
	})
	t.Run("POLY-11", func(t *testing.T) { // not 1/64
		r := ring(8, "6", "2", 0.028)
		r.Face = r.Face.Cos(deg(22.528)) // of which the joint is 2 in long
		j := r.Last()
		if !isAbout(j.Miss, 0.061, 0.001) || !isAbout(j.Joint, 2, 1e-6) {
			t.Errorf("misses by %v along a joint of %v", j.Miss, j.Joint)
		}
		// What the wedge of the joint alone comes to.
		if !isAbout(j.Wedge, 1./64, 0.0001) {
			t.Errorf("a wedge of %v, want 1/64", j.Wedge)
		}
	})
	t.Run("S-12", func(t *testing.T) { // a pentagon open on one side
		c := molding.Chain{{Long: in("10"), Right: deg(36)}}
		for range 2 {
			c = append(c, molding.CutRail{Long: in("10"), Left: deg(36), Right: deg(36)})
		}
		c = append(c, molding.CutRail{Long: in("10"), Left: deg(36)})
		e := c.End()
		if d := e.Miss - in("10"); e.Turned != 216*measure.Degree || d > 4 || d < -4 {
			t.Errorf("the open end is %v wide, turned %v", e.Miss, e.Turned)
		}
	})
	t.Run("S-14", func(t *testing.T) { // closure is checked
		c := roundOf(in("20"), 70, 70, 70, 70, 80)
		if e := c.End(); e.Over != 0 || e.Miss > 5 || e.Open > 5 || e.Open < -5 {
			t.Errorf("4 x 70 and 80: %+v", e)
		}
		if e := roundOf(in("20"), 70, 70, 70, 70, 70).End(); e.Over != -10*measure.Degree || e.Miss < in("1") {
			t.Errorf("5 x 70: %+v", e)
		}
	})
}

// roundOf is a ring of pieces of a round with these center angles.
func roundOf(radius measure.Length, angles ...measure.Angle) molding.Chain {
	var c molding.Chain
	for _, a := range angles {
		half := a * measure.Degree / 2
		c = append(c, molding.CutRail{Long: (2 * radius).Sin(half), Left: half, Right: half})
	}
	return c
}

// chainOf is the rails of a ring as they are cut.
func chainOf(r molding.Ring) molding.Chain {
	cut := measure.Turn/2/measure.Angle(r.Sides) + r.Off
	c := make(molding.Chain, r.Sides)
	for i := range c {
		c[i] = molding.CutRail{Long: r.Long, Left: cut, Right: cut}
	}
	return c
}

// TestRingByVectors: the ring's formula against its rails laid end to end, once
// in floats and once as a chain.
func TestRingByVectors(t *testing.T) {
	rnd := rand.New(rand.NewPCG(11, 5))
	for range 3000 {
		n := []int{3, 4, 5, 6, 8, 9, 10, 12, 18, 24, 36}[rnd.IntN(11)]
		most := molding.MostOff(n)
		r := molding.Ring{Sides: n, Long: 5*measure.Inch + randomLength(rnd, 2*measure.Meter), Face: measure.Inch, Off: measure.Angle(rnd.Int64N(2*int64(most))) - most}
		j := r.Last()
		turn := 2 * (math.Pi/float64(n) + float64(r.Off)/1e9*math.Pi/180)
		var x, y float64
		for i := range n {
			x += float64(r.Long) * math.Cos(float64(i)*turn)
			y += float64(r.Long) * math.Sin(float64(i)*turn)
		}
		if d := math.Hypot(x, y) - float64(j.Miss); math.Abs(d) > 20 {
			t.Fatalf("%+v misses by %v, laid out by %v", r, j.Miss, math.Hypot(x, y))
		}
		if !slices.Equal(r.Chain(), chainOf(r)) {
			t.Fatalf("%+v: rails %+v", r, r.Chain())
		}
		e := r.Chain().End()
		if d := e.Miss - j.Miss; d > measure.Length(n)+20 || d < -measure.Length(n)-20 || e.Over != j.Turn {
			t.Fatalf("%+v: %+v, as a chain %+v", r, j, e)
		}
		// With its toes or heels together, the joint's two faces are the legs of a
		// triangle whose third side is the wedge.
		if want := 2 * float64(r.Face) / math.Cos(turn/2) * math.Sin(math.Abs(float64(j.Turn))/1e9*math.Pi/360); math.Abs(want-float64(j.Wedge)) > 4 {
			t.Fatalf("%+v: a wedge of %v, by the triangle %v", r, j.Wedge, want)
		}
	}
}

// TestAlternating: a true fence and a miter gauge that is off turn each joint as
// they should: one cut has too much, the next too little.
func TestAlternating(t *testing.T) {
	for _, off := range []float64{0.5, -0.3, 2} {
		c := chainOf(ring(6, "12", "2", 0))
		for i := range c {
			c[i].Left += deg(off)
			c[i].Right -= deg(off)
		}
		if e := c.End(); e.Over != 0 || e.Miss > 6 {
			t.Errorf("alternating %v: %+v", off, e)
		}
	}
}

// TestUnequalRails: opposite rails unequal by d open the last joint by d cos 45 and
// slide it by as much.
func TestUnequalRails(t *testing.T) {
	const d = measure.Inch / 16
	c := chainOf(ring(4, "20", "2", 0))
	c[1].Long, c[3].Long = in("16"), in("16")
	if e := c.End(); e.Miss != 0 || e.Open != 0 || e.Slide != 0 || e.Turned != 270*measure.Degree {
		t.Errorf("a true rectangle: %+v", e)
	}
	c[2].Long += d
	e := c.End()
	want := d.Cos(45 * measure.Degree)
	if e.Miss != d || e.Along != -d || e.Across != 0 || e.Open != want || e.Slide != want {
		t.Errorf("top longer by %v: %+v, want %v open", d, e, want)
	}
	c[2].Long -= 2 * d
	if e := c.End(); e.Miss != d || e.Open != -want {
		t.Errorf("top shorter by %v: %+v, want %v too much wood", d, e, want)
	}
}

// TestOffByWedge: the wedge of a test frame leads back to the error that made it.
func TestOffByWedge(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 11))
	for range 500 {
		n := 3 + rnd.IntN(30)
		most := molding.MostOff(n) - 1
		r := molding.Ring{Sides: n, Long: in("12"), Face: in("2"), Off: measure.Angle(rnd.Int64N(2*int64(most))) - most}
		j := r.Last()
		back, ok := molding.Ring{Sides: n, Long: r.Long, Face: r.Face}.OffByWedge(j.Wedge, j.Opens)
		// A nanometer of the wedge is some nanodegrees of error.
		if d := back.Off - r.Off; !ok || d > 4000 || d < -4000 || max(back.Last().Wedge-j.Wedge, j.Wedge-back.Last().Wedge) > 2 {
			t.Fatalf("%+v: wedge %v at the %s leads to %v %v", r, j.Wedge, j.Opens, back.Off, ok)
		}
		back, ok = molding.Ring{Sides: n, Long: r.Long, Face: r.Face}.OffByMiss(j.Miss, j.Opens)
		if d := back.Off - r.Off; !ok || d > 4000 || d < -4000 {
			t.Fatalf("%+v: missing by %v leads to %v %v", r, j.Miss, back.Off, ok)
		}
		if back.Correction() != -back.Off {
			t.Errorf("correction %v of %v", back.Correction(), back.Off)
		}
	}
	r := ring(6, "12", "2", 1)
	for _, row := range []struct {
		wedge measure.Length
		at    molding.End
		ok    bool
	}{{0, molding.Heel, true}, {0, molding.NoEnd, true}, {1, molding.NoEnd, false}, {-1, molding.Heel, false}, {in("20"), molding.Heel, false}, {in("1/8"), molding.Toe, true}} {
		if got, ok := r.OffByMiss(row.wedge, row.at); row.wedge < in("1") && (ok != row.ok || row.wedge == 0 && got.Off != 0) {
			t.Errorf("missing by %v at %q: %v %v", row.wedge, row.at, got.Off, ok)
		}
		if got, ok := r.OffByWedge(row.wedge, row.at); ok != row.ok || row.wedge == 0 && got.Off != 0 {
			t.Errorf("%v at %q: %v %v", row.wedge, row.at, got.Off, ok)
		}
	}
}

// TestFinest: with the error that is allowed nothing shows, and a hair more shows.
func TestFinest(t *testing.T) {
	for _, n := range []int{3, 4, 6, 8, 12, 24} {
		r := ring(n, "12", "2", 0)
		gap := in("1/128")
		byWedge, byMiss := r.Finest(gap)
		if byMiss >= byWedge || byMiss <= 0 {
			t.Errorf("%d sides: %v by the wedge, %v by the miss", n, byWedge, byMiss)
		}
		for _, sign := range []measure.Angle{1, -1} {
			r.Off = sign * byWedge
			if got := r.Last().Wedge; got > gap {
				t.Errorf("%d sides off by %v: a wedge of %v", n, r.Off, got)
			}
			r.Off = sign * byMiss
			if got := r.Last().Miss; got > gap+measure.Length(n) { // the miss is rounded twice
				t.Errorf("%d sides off by %v: misses by %v", n, r.Off, got)
			}
		}
		const hair = 10_000 * measure.Nanodegree
		r.Off = byWedge + hair // the cut is longer where it turns too far
		if got := r.Last().Wedge; got <= gap {
			t.Errorf("%d sides off by a hair more, %v: a wedge of %v", n, r.Off, got)
		}
		r.Off = -byMiss - hair // the ring is wider where it turns too little
		if got := r.Last().Miss; got <= gap {
			t.Errorf("%d sides off by a hair more, %v: misses by %v", n, r.Off, got)
		}
	}
}

func TestRingNotes(t *testing.T) {
	r := ring(6, "12", "2", 0.8)
	ns := r.Notes(in("1/128"), "/ring", "/last")
	if len(ns) != 1 || ns[0].Level != explain.Warning || ns[0].Code != molding.LastJointOpens {
		t.Fatalf("%+v", ns)
	}
	const want = "Every cut is off by 0.8 deg: with all other joints tight, the ends at the last one miss each other by about 1.961 in; pulled together, it stands open by about 0.39 in. A gap of about 0.008 in is not to be seen."
	if got := ns[0].Text(sixteenths); got != want {
		t.Errorf("reads\n%s, want\n%s", got, want)
	}
	for _, off := range []float64{0.8, -0.8} {
		r.Off = deg(off)
		change := r.Notes(in("1/128"), "/ring", "/last")[0].Changes[0]
		r.Off = measure.Angle(change.To.N)
		if ns := r.Notes(in("1/128"), "/ring", "/last"); len(ns) != 0 || change.Path != "/ring/off" || (off > 0) != (change.Bound == explain.AtMost) {
			t.Errorf("off by %v, changed to %v: %+v", off, r.Off, ns)
		}
	}
}

func TestErrorCheck(t *testing.T) {
	for _, row := range []struct {
		name string
		ring molding.Ring
		want []string
	}{
		{"good", ring(6, "12", "2", 0.8), nil},
		{"two sides", ring(2, "12", "2", 0), []string{"/r/sides out_of_range"}},
		{"most sides", ring(360, "12", "2", 0.1), nil},
		{"too many", ring(361, "12", "2", 90), []string{"/r/sides out_of_range"}},
		{"no rail", molding.Ring{Sides: 4, Face: 1}, []string{"/r/long out_of_range"}},
		{"no face", molding.Ring{Sides: 4, Long: 1}, []string{"/r/face out_of_range"}},
		{"most off", ring(6, "12", "2", 10), nil},
		{"too far off", ring(6, "12", "2", 10.001), []string{"/r/off out_of_range"}},
		{"too far off the other way", ring(6, "12", "2", -10.001), []string{"/r/off out_of_range"}},
	} {
		var c explain.Checker
		row.ring.Check(&c, "/r")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	for _, row := range []struct {
		name  string
		chain molding.Chain
		want  []string
	}{
		{"good", molding.Chain{{Long: 1, Left: deg(-36), Right: deg(36)}}, nil},
		{"none", nil, []string{"/c too_few"}},
		{"most", chainOf(molding.Ring{Sides: molding.MaxChain, Long: 1}), nil},
		{"too many", make(molding.Chain, molding.MaxChain+1), []string{"/c too_many"}},
		{"no length", molding.Chain{{Left: deg(1)}}, []string{"/c/0/long out_of_range"}},
		{"past a right angle", molding.Chain{{Long: 1}, {Long: 1, Left: deg(90), Right: deg(-90)}}, []string{"/c/1/left out_of_range", "/c/1/right out_of_range"}},
	} {
		var c explain.Checker
		row.chain.Check(&c, "/c")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	if e := (molding.Chain{}).End(); e != (molding.ChainEnd{}) {
		t.Errorf("an empty chain ends at %+v", e)
	}
}

package molding_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// holds checks that a working comes to the figure that it is of, from terms that
// agree with all figures.
func holds(t *testing.T, w explain.Working, ok bool, path explain.Path, all figures) {
	t.Helper()
	got, err := w.Formula.Evaluate()
	if want := all[path]; !ok || err != nil || got != want || w.Exact != want || w.Path != path || w.Key == "" || w.Source.Status == "" {
		t.Fatalf("%s: %v %v %v, want %v\n%s", path, ok, got, err, want, w.Text(sixteenths))
	}
	for _, term := range w.Formula.Terms() {
		if value, is := all[term.Path]; !is || value != term.Value || term.Path == path {
			t.Fatalf("%s: the term %s is %v, the figure %v %v", path, term.Path, term.Value, value, is)
		}
	}
}

var cornerPlaces = molding.CornerPlaces{Corner: "/corner", Worked: "/settings"}

func randomPitch(r *rand.Rand) molding.Pitch {
	p := molding.Pitch{Angle: measure.Degree + measure.Angle(r.Int64N(int64(88*measure.Degree))), From: molding.FromFlat}
	if r.IntN(2) == 0 {
		p.From = molding.FromVertical
	}
	return p
}

func randomCorner(r *rand.Rand) molding.SlopedCorner {
	c := molding.SlopedCorner{Plain: measure.Degree + measure.Angle(r.Int64N(int64(80*measure.Degree))), Own: randomPitch(r)}
	if c.Other = c.Own; r.IntN(2) == 0 {
		c.Other = randomPitch(r)
	}
	if r.IntN(4) == 0 {
		c.Plain = -c.Plain
	}
	return c
}

func (f figures) corner(at explain.Path, c molding.SlopedCorner) {
	f[at+"/plain"] = explain.Of(c.Plain)
	f[at+"/own/angle"], f[at+"/other/angle"] = explain.Of(c.Own.Angle), explain.Of(c.Other.Angle)
}

// TestExplainSlope: every setting, length and share has a formula that works out
// to it.
func TestExplainSlope(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 2))
	for range 800 {
		c := randomCorner(r)
		all := figures{"/settings/dihedral": explain.Of(c.Dihedral())}
		all.corner("/corner", c)
		for _, p := range molding.LaidFlat.Choices() {
			s := c.Setting(molding.Position(p))
			all["/settings"+explain.Path("/"+p+"/miter")], all["/settings"+explain.Path("/"+p+"/tilt")] = explain.Of(s.Miter), explain.Of(s.Tilt)
		}
		for path := range all {
			if figure, is := path.After("/settings"); is {
				w, ok := c.Explain(figure, cornerPlaces)
				holds(t, w, ok, path, all)
			}
		}

		side := molding.SlopedSide{Pitch: c.Own, Face: 1 + randomLength(r, measure.Foot), Thickness: randomLength(r, measure.Inch)}
		left, right := c, randomCorner(r)
		right.Own = c.Own
		sight := randomLength(r, measure.Meter)
		rail := side.Rail(sight, left, right)
		all = figures{
			"/side/face": explain.Of(side.Face), "/side/thickness": explain.Of(side.Thickness), "/side/pitch/angle": explain.Of(side.Pitch.Angle),
			"/rail/depth": explain.Of(side.Depth()), "/rail/run": explain.Of(side.Run()), "/rail/front_sight": explain.Of(rail.FrontSight),
			"/rail/front_rim": explain.Of(rail.FrontRim), "/rail/back_sight": explain.Of(rail.BackSight), "/rail/back_rim": explain.Of(rail.BackRim),
		}
		all.corner("/left", left)
		all.corner("/right", right)
		at := molding.SidePlaces{Side: "/side", Left: "/left", Right: "/right", Worked: "/rail"}
		for _, figure := range []explain.Path{"/depth", "/run", "/front_rim", "/back_sight", "/back_rim"} {
			w, ok := side.Explain(sight, left, right, figure, at)
			holds(t, w, ok, "/rail"+figure, all)
		}

		for _, name := range molding.LaidFlat.Choices() {
			p := molding.Position(name)
			set := c.Rounded(side, p, measure.Degree).Setting
			set.Miter = min(max(set.Miter, -89*measure.Degree), 89*measure.Degree)
			share := c.Share(side, p, set)
			all["/set/miter"], all["/set/tilt"] = explain.Of(set.Miter), explain.Of(set.Tilt)
			all["/share/rim"], all["/share/back"] = explain.Of(share.Rim), explain.Of(share.Back)
			all.corner("/corner", c)
			for _, figure := range []explain.Path{"/rim", "/back"} {
				w, ok := c.ExplainShare(side, p, set, figure, "/side", "/set", "/share", cornerPlaces)
				holds(t, w, ok, "/share"+figure, all)
			}
		}
	}
}

// TestExplainErrors: the same of the last joint of a ring and of a chain's end.
func TestExplainErrors(t *testing.T) {
	rnd := rand.New(rand.NewPCG(2, 8))
	for range 800 {
		n := 3 + rnd.IntN(40)
		r := molding.Ring{Sides: n, Long: 1 + randomLength(rnd, measure.Meter), Face: 1 + randomLength(rnd, measure.Foot), Off: measure.Angle(rnd.Int64N(int64(measure.Degree))) - measure.Degree/2}
		j := r.Last()
		all := figures{
			"/ring/sides": explain.Of(r.Sides), "/ring/long": explain.Of(r.Long), "/ring/face": explain.Of(r.Face), "/ring/off": explain.Of(r.Off),
			"/last/turn": explain.Of(j.Turn), "/last/joint": explain.Of(j.Joint), "/last/miss": explain.Of(j.Miss), "/last/wedge": explain.Of(j.Wedge),
		}
		for _, figure := range []explain.Path{"/turn", "/joint", "/miss", "/wedge"} {
			w, ok := r.Explain(figure, "/ring", "/last")
			holds(t, w, ok, "/last"+figure, all)
		}
		c := make(molding.Chain, 1+rnd.IntN(8))
		all = figures{}
		for i := range c {
			c[i] = molding.CutRail{Long: 1 + randomLength(rnd, measure.Meter), Left: deg(rnd.Float64()*120 - 60), Right: deg(rnd.Float64()*120 - 60)}
			at := explain.Path("/rails").Index(i)
			all[at+"/long"], all[at+"/left"], all[at+"/right"] = explain.Of(c[i].Long), explain.Of(c[i].Left), explain.Of(c[i].Right)
		}
		e := c.End()
		for path, v := range map[explain.Path]explain.Value{
			"/along": explain.Of(e.Along), "/across": explain.Of(e.Across), "/miss": explain.Of(e.Miss), "/turned": explain.Of(e.Turned),
			"/over": explain.Of(e.Over), "/open": explain.Of(e.Open), "/slide": explain.Of(e.Slide),
		} {
			all["/end"+path] = v
		}
		for path := range all {
			if figure, is := path.After("/end"); is {
				w, ok := c.Explain(figure, "/rails", "/end")
				holds(t, w, ok, path, all)
			}
		}
	}
}

// TestExplainSlopeText reads a few workings.
func TestExplainSlopeText(t *testing.T) {
	c := molding.RegularSlopedCorner(8, lean(20))
	side := molding.SlopedSide{Pitch: flat(30), Face: in("3"), Thickness: in("1/2")}
	box := molding.RegularSlopedCorner(4, side.Pitch)
	uneven := molding.SlopedCornerAt(90*measure.Degree, flat(80), flat(65))
	r := ring(6, "12", "2", -0.5)
	of := func(w explain.Working, ok bool) string {
		if !ok {
			return "nothing"
		}
		return w.Text(sixteenths)
	}
	for _, row := range []struct{ got, want string }{
		{of(c.Explain("/on_edge/tilt", cornerPlaces)),
			"blade tilt 7.520761628 deg = the angle whose sine is (cos (90 deg - lean from upright 20 deg) x sin miter of the flat frame 22.5 deg)"},
		{of(c.Explain("/flat/miter", cornerPlaces)),
			"miter from a square cut 8.06339868 deg = the angle whose tangent is (cos (90 deg - lean from upright 20 deg) x sin miter of the flat frame 22.5 deg) / cos miter of the flat frame 22.5 deg"},
		{of(c.Explain("/propped/miter", cornerPlaces)), "miter from a square cut 22.5 deg = miter of the flat frame 22.5 deg"},
		{of(box.Explain("/dihedral", cornerPlaces)), "angle between the fronts 138.59037789 deg = 180 deg - 2 x blade tilt 20.704811055 deg"},
		{of(uneven.Explain("/propped/miter", cornerPlaces)),
			"miter from a square cut 47.376975929 deg = the angle whose tangent is (sin pitch from flat 80 deg - (sin the other's pitch from flat 65 deg x cos (2 x miter of the flat frame 45 deg))) / (sin the other's pitch from flat 65 deg x sin (2 x miter of the flat frame 45 deg))"},
		{of(side.Explain(in("10"), box, box, "/depth", molding.SidePlaces{})), "depth 1 1/2 = face 3 x sin pitch from flat 30 deg"},
		{of(r.Explain("/joint", "", "")), "joint 58.366942 mm = face 2 / sin (90 deg - (180 deg x 1 / sides 6 + error of each cut -0.5 deg))"},
	} {
		if row.got != row.want {
			t.Errorf("reads\n%s, want\n%s", row.got, row.want)
		}
	}
}

func TestExplainNoSlope(t *testing.T) {
	c := molding.RegularSlopedCorner(8, lean(20))
	for _, path := range []explain.Path{"", "/", "/flat", "/flat/x", "/x/miter", "/dihedral/x", "/flat/miter/x"} {
		if w, ok := c.Explain(path, cornerPlaces); ok {
			t.Errorf("%q is explained: %+v", path, w)
		}
		if w, ok := (molding.SlopedSide{}).Explain(1, c, c, path, molding.SidePlaces{}); ok {
			t.Errorf("%q of a side is explained: %+v", path, w)
		}
		if w, ok := ring(6, "12", "2", 0).Explain(path, "", ""); ok {
			t.Errorf("%q of a ring is explained: %+v", path, w)
		}
		if w, ok := (molding.Chain{{Long: 1}}).Explain(path, "", ""); ok {
			t.Errorf("%q of a chain is explained: %+v", path, w)
		}
		if w, ok := c.ExplainShare(molding.SlopedSide{}, molding.LaidFlat, molding.Setting{}, path, "", "", "", cornerPlaces); ok {
			t.Errorf("%q of a share is explained: %+v", path, w)
		}
	}
	if w, ok := (molding.Chain{}).Explain("/miss", "", ""); ok {
		t.Errorf("an empty chain is explained: %+v", w)
	}
}

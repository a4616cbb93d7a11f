package molding_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// TestPairs: which miter belongs to which tilt, and that a pair of no slope is
// refused with the two that would do.
func TestPairs(t *testing.T) {
	t.Run("COMP-07", func(t *testing.T) {
		var c explain.Checker
		molding.CheckPair(&c, "/setting", 30*measure.Degree, setting(3, 29), measure.Degree/10)
		ps := c.Problems()
		if len(ps) != 1 || ps[0].Code != molding.DoesNotClose || ps[0].Given != "3 deg / 29 deg" || ps[0].Accepted != "8.04 deg / 29 deg or 3 deg / 29.86 deg" {
			t.Errorf("six sides, 3 and 29: %v", ps)
		}
	})
	rows := []struct {
		name     string
		plain    float64
		set      molding.Setting
		within   float64
		accepted string // none: it closes
	}{
		{"as computed", 30, setting(3, 29.863528), 0.001, ""},
		{"as printed", 45, setting(35.26, 30), 0.01, ""},
		{"a hair off", 45, setting(35.26, 30), 0.001, "35.26439 deg / 30 deg or 35.26 deg / 30.005375 deg"},
		{"flat", 45, setting(45, 0), 0, ""},
		{"upright", 45, setting(0, 45), 0, ""},
		{"45 and 45", 45, setting(45, 45), 1, "0 deg / 45 deg or 45 deg / 0 deg"},
		{"too much tilt", 30, setting(3, 31), 1, "3 deg / 29.86 deg"},
		{"too much miter", 30, setting(31, 29), 1, "8.04 deg / 29 deg"},
		{"too much of both", 30, setting(31, 31), 1, "0 deg to 30 deg"},
		{"the other way", 30, setting(-8.04, -29), 1, "0 deg to 30 deg"},
		{"inward", -30, setting(-8.04, -29), 0.01, ""},
	}
	for _, row := range rows {
		var c explain.Checker
		molding.CheckPair(&c, "/setting", deg(row.plain), row.set, deg(row.within))
		switch ps := c.Problems(); {
		case row.accepted == "" && len(ps) == 0:
		case len(ps) != 1 || ps[0].Accepted != row.accepted:
			t.Errorf("%s: %v", row.name, ps)
		}
	}
}

// TestPitchOf: from a miter or a tilt back to the pitch that takes it.
func TestPitchOf(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 3))
	for range 3000 {
		plain := measure.Degree + measure.Angle(r.Int64N(int64(80*measure.Degree)))
		if r.IntN(3) == 0 {
			plain = -plain
		}
		p := molding.Pitch{Angle: 5*measure.Degree + measure.Angle(r.Int64N(int64(80*measure.Degree))), From: molding.FromFlat}
		s := molding.SlopedCorner{Plain: plain, Own: p, Other: p}.Setting(molding.LaidFlat)
		for name, back := range map[string]func(a, b measure.Angle) (molding.Pitch, bool){"miter": molding.PitchOfMiter, "tilt": molding.PitchOfTilt} {
			a := s.Miter
			if name == "tilt" {
				a = s.Tilt
			}
			got, ok := back(plain, a)
			if d := got.Angle - p.Angle; !ok || d > 2000 || d < -2000 { // half a nanodegree of a setting counts for more in the pitch
				t.Fatalf("plain %v, %s %v: %v %v, want %v", plain, name, a, got, ok, p)
			}
		}
	}
	for _, row := range []struct {
		plain, a measure.Angle
		ok       bool
	}{{30, 30, true}, {30, 31, false}, {30, -1, false}, {30, 0, true}, {-30, -30, true}, {-30, 1, false}, {-30, -31, false}} {
		if _, ok := molding.PitchOfMiter(row.plain*measure.Degree, row.a*measure.Degree); ok != row.ok {
			t.Errorf("miter %v of %v: %v", row.a, row.plain, ok)
		}
		if _, ok := molding.PitchOfTilt(row.plain*measure.Degree, row.a*measure.Degree); ok != row.ok {
			t.Errorf("tilt %v of %v: %v", row.a, row.plain, ok)
		}
	}
}

// reached is where a saw set so leaves the end of a board, by the plane that the
// blade sweeps in space: how far along the board its four edges reach beyond the
// sight edge in front.
func reached(p molding.Position, pitch measure.Angle, s molding.Setting, face, thickness float64) (rim, back float64) {
	sinM, cosM := sincos(s.Miter)
	sinT, cosT := sincos(s.Tilt)
	normal := vec{cosT * cosM, -cosT * sinM, -sinT} // along, to the fence, to the table
	sinP, cosP := sincos(pitch)
	up, in := vec{0, 1, 0}, vec{0, 0, 1} // where the rim lies, where the back
	switch p {
	case molding.OnEdge:
		up, in = vec{0, 0, 1}, vec{0, 1, 0}
	case molding.Propped:
		up, in = vec{0, cosP, -sinP}, vec{0, sinP, cosP}
	}
	to := func(v vec, way float64) float64 { return -way * normal.dot(v) / normal[0] }
	return to(up, face), to(in, thickness)
}

// TestShare: what a setting that is off leaves, against the edges cut in space.
func TestShare(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 9))
	for range 3000 {
		pitch := molding.Pitch{Angle: measure.Angle(r.Int64N(int64(90 * measure.Degree))), From: molding.FromFlat}
		c := molding.RegularSlopedCorner(3+r.IntN(20), pitch)
		if r.IntN(2) == 0 {
			c.Other = molding.Pitch{Angle: 2*measure.Degree + measure.Angle(r.Int64N(int64(80*measure.Degree))), From: molding.FromFlat}
			c.Own.Angle = max(c.Own.Angle, 2*measure.Degree)
		}
		side := molding.SlopedSide{Pitch: c.Own, Face: measure.Inch * measure.Length(1+r.IntN(6)), Thickness: measure.Inch / measure.Length(1+r.IntN(4))}
		p := molding.Position(molding.LaidFlat.Choices()[r.IntN(3)])
		exact := c.Setting(p)
		if got := c.Share(side, p, exact); max(got.Rim, -got.Rim, got.Back, -got.Back) > 10 {
			t.Fatalf("%+v %s set right leaves %+v", c, p, got)
		}
		set := molding.Setting{Miter: exact.Miter + deg(r.Float64()-0.5), Tilt: exact.Tilt + deg(r.Float64()-0.5)}
		rim, back := reached(p, c.Own.Flat(), set, float64(side.Face), float64(side.Thickness))
		rim0, back0 := reached(p, c.Own.Flat(), exact, float64(side.Face), float64(side.Thickness))
		sinM, cosM := sincos(exact.Miter)
		_, cosT := sincos(exact.Tilt)
		_ = sinM
		square := cosT * cosM
		got := c.Share(side, p, set)
		if math.Abs(float64(got.Rim)-(rim-rim0)*square) > 20 || math.Abs(float64(got.Back)-(back-back0)*square) > 20 {
			t.Fatalf("%+v %s set %v: %+v, in space %v %v", c, p, set, got, (rim-rim0)*square, (back-back0)*square)
		}
	}
}

// TestGap: too much miter opens the heel, too much tilt the front; the other way
// the toe and the back; and the gap is twice what one cut is off.
func TestGap(t *testing.T) {
	side := molding.SlopedSide{Pitch: flat(45), Face: in("3"), Thickness: in("3/4")}
	c := molding.RegularSlopedCorner(4, side.Pitch)
	exact := c.Setting(molding.LaidFlat)
	for _, row := range []struct {
		name        string
		miter, tilt float64
		open        func(molding.Gap) measure.Length
		shut        func(molding.Gap) measure.Length
	}{
		{"miter too far", 0.25, 0, func(g molding.Gap) measure.Length { return g.Heel }, func(g molding.Gap) measure.Length { return g.Toe + g.Front + g.Back }},
		{"miter too little", -0.25, 0, func(g molding.Gap) measure.Length { return g.Toe }, func(g molding.Gap) measure.Length { return g.Heel + g.Front + g.Back }},
		{"tilt too far", 0, 0.25, func(g molding.Gap) measure.Length { return g.Front }, func(g molding.Gap) measure.Length { return g.Toe + g.Heel + g.Back }},
		{"tilt too little", 0, -0.25, func(g molding.Gap) measure.Length { return g.Back }, func(g molding.Gap) measure.Length { return g.Toe + g.Front + g.Heel }},
	} {
		s := molding.Setting{Miter: exact.Miter + deg(row.miter), Tilt: exact.Tilt + deg(row.tilt)}
		share := c.Share(side, molding.LaidFlat, s)
		g := molding.JointGap(share, share)
		if row.open(g) <= 0 || g.Most() != g.Heel+g.Toe+g.Front+g.Back {
			t.Errorf("%s: %+v", row.name, g)
		}
		// A tilt that is off also moves the way up the front, and not the other way.
		if row.miter != 0 && row.shut(g) > row.open(g) {
			t.Errorf("%s: %+v", row.name, g)
		}
		if one := molding.JointGap(share, molding.Share{}); 2*row.open(one) != row.open(g) {
			t.Errorf("%s: one cut %+v, two %+v", row.name, one, g)
		}
		mirrored := molding.Share{Rim: -share.Rim, Back: -share.Back}
		if got := molding.JointGap(share, mirrored); got != (molding.Gap{}) {
			t.Errorf("%s: what one cut has too much and the other too little leaves %+v", row.name, got)
		}
	}
}

// TestRounded: whole, half and quarter degrees nearest to the exact setting, and
// that what they leave shrinks with the step at the worst.
func TestRounded(t *testing.T) {
	side := molding.SlopedSide{Pitch: flat(45), Face: in("3"), Thickness: in("3/4")}
	c := molding.RegularSlopedCorner(4, side.Pitch)
	for i, want := range []molding.Setting{setting(35, 30), setting(35.5, 30), setting(35.25, 30)} {
		step := molding.SawSteps()[i]
		got := c.Rounded(side, molding.LaidFlat, step)
		if got.Setting != want || got.Step != step || got.Gap.Most() > in("1/16") {
			t.Errorf("%v: %+v, want %v", step, got, want)
		}
		// Twice 3 sin(error)/cos(miter as cut), and square to a cut that tilts by 30.
		off := float64(want.Miter-c.Setting(molding.LaidFlat).Miter) / 1e9 * math.Pi / 180
		sq := 2 * 3 * math.Sin(off) / math.Cos(float64(want.Miter)/1e9*math.Pi/180) * math.Cos(math.Pi/6)
		if open := float64(got.Gap.Heel-got.Gap.Toe) / float64(measure.Inch); math.Abs(open-sq) > 1e-6 {
			t.Errorf("%v: open by %v, want %v", step, open, sq)
		}
	}
	r := rand.New(rand.NewPCG(4, 4))
	for range 1000 {
		c := molding.RegularSlopedCorner(3+r.IntN(20), flat(r.Float64()*90))
		for _, p := range []molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
			exact, all := c.Setting(p), c.RoundedToSteps(side, p)
			for i, step := range molding.SawSteps() {
				got := c.Rounded(side, p, step).Setting
				if c.Rounded(side, p, step) != all[i] {
					t.Fatalf("%v of %v: %+v, of all steps %+v", step, exact, got, all[i])
				}
				if !near(got, exact, float64(step)/2e9) || got.Miter%step != 0 || got.Tilt%step != 0 {
					t.Fatalf("%v of %v: %v", step, exact, got)
				}
			}
		}
	}
}

// TestPositionSays: each position says at the bench how the board lies.
func TestPositionSays(t *testing.T) {
	for p, want := range map[molding.Position]string{
		molding.LaidFlat: "laid flat, back on the table", molding.OnEdge: "on edge, rim on the table", molding.Propped: "propped at its pitch, sight edge on the table",
	} {
		if got := explain.English(string(p.Key())); !strings.HasPrefix(got, want) || !strings.Contains(got, "miter on the table from a square cut") {
			t.Errorf("%s says %q", p, got)
		}
	}
}

func TestSettingCheck(t *testing.T) {
	good := molding.SlopedCorner{Plain: deg(45), Own: flat(30), Other: lean(60)}
	rows := []struct {
		name   string
		change func(*molding.SlopedCorner)
		want   []string
	}{
		{"as it is", func(*molding.SlopedCorner) {}, nil},
		{"straight on", func(c *molding.SlopedCorner) { c.Plain = 0 }, []string{"/c/plain out_of_range"}},
		{"least", func(c *molding.SlopedCorner) { c.Plain = molding.LeastPlain }, nil},
		{"less", func(c *molding.SlopedCorner) { c.Plain = molding.LeastPlain - 1 }, []string{"/c/plain out_of_range"}},
		{"most", func(c *molding.SlopedCorner) { c.Plain = molding.MostPlain }, nil},
		{"more", func(c *molding.SlopedCorner) { c.Plain = molding.MostPlain + 1 }, []string{"/c/plain out_of_range"}},
		{"inward", func(c *molding.SlopedCorner) { c.Plain = -molding.LeastPlain }, nil},
		{"hardly inward", func(c *molding.SlopedCorner) { c.Plain = -molding.LeastPlain + 1 }, []string{"/c/plain out_of_range"}},
		{"too far inward", func(c *molding.SlopedCorner) { c.Plain = -molding.MostPlain - 1 }, []string{"/c/plain out_of_range"}},
		{"from nowhere", func(c *molding.SlopedCorner) { c.Own.From = "" }, []string{"/c/own/from not_a_choice"}},
		{"case", func(c *molding.SlopedCorner) { c.Other.From = "Flat" }, []string{"/c/other/from wrong_case"}},
		{"below flat", func(c *molding.SlopedCorner) { c.Own.Angle = -1 }, []string{"/c/own/angle out_of_range"}},
		{"past upright", func(c *molding.SlopedCorner) { c.Own.Angle = measure.RightAngle + 1 }, []string{"/c/own/angle out_of_range"}},
		{"both flat", func(c *molding.SlopedCorner) { c.Own, c.Other = flat(0), lean(90) }, nil},
		{"one flat", func(c *molding.SlopedCorner) { c.Own = flat(0) }, []string{"/c/own/angle out_of_range"}},
		{"the other flat", func(c *molding.SlopedCorner) { c.Other = lean(90) }, []string{"/c/other/angle out_of_range"}},
		{"hardly sloped", func(c *molding.SlopedCorner) { c.Own = flat(1) }, nil},
		{"one upright", func(c *molding.SlopedCorner) { c.Own = lean(0) }, nil},
	}
	for _, row := range rows {
		corner := good
		row.change(&corner)
		var c explain.Checker
		corner.Check(&c, "/c")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	var c explain.Checker
	molding.SlopedSide{Pitch: flat(91), Face: 0, Thickness: -1}.Check(&c, "/side")
	molding.SlopedSide{Pitch: flat(90), Face: 1}.Check(&c, "/good")
	molding.Reach{Miter: -1, Tilt: measure.RightAngle + 1}.Check(&c, "/saw")
	want := []string{"/saw/miter out_of_range", "/saw/tilt out_of_range", "/side/face out_of_range", "/side/pitch/angle out_of_range", "/side/thickness out_of_range"}
	if got := found(&c); !slices.Equal(got, want) {
		t.Errorf("found %q, want %q", got, want)
	}
	for _, n := range []int{-1, 0, 3} {
		if got := molding.RegularSlopedCorner(n, flat(0)).Plain; got != 60*measure.Degree {
			t.Errorf("%d sides: %v", n, got)
		}
	}
}

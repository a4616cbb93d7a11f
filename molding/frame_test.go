package molding_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// in reads inches as a tape says them: in("11 3/8"). Other units are marked.
func in(s string) measure.Length {
	l, err := measure.Parse(s, measure.Inches)
	if err != nil {
		panic(err)
	}
	return l
}

func size(width, height string) measure.Size {
	return measure.Size{Width: in(width), Height: in(height)}
}

func frame(face, lip, allowance string) molding.Frame {
	return molding.Frame{
		Kind: molding.Rabbeted, Made: molding.ToFit, Wood: "wood",
		Face: in(face), Lip: in(lip), Allowance: in(allowance), Rabbet: in("1/2"),
	}
}

// TestAround: rails that were printed, or told by people who cut them. The
// formula is that of Fine Woodworking no. 275: rabbet size and twice the width
// from rabbet to outside.
func TestAround(t *testing.T) {
	rows := []struct {
		name                    string
		frame                   molding.Frame
		pkg                     measure.Size
		opening, sight, outside measure.Size
	}{
		{"worked by hand (common practice)", frame("1 1/4", "1/4", "1/8"), size("16 1/2", "20 7/8"),
			size("16 5/8", "21"), size("16 1/8", "20 1/2"), size("18 5/8", "23")},
		{"width without the lip 1 3/16, mat 18 7/16 long, play 1/16 in all (common practice)", frame("1 7/16", "1/4", "1/16"), size("14", "18 7/16"),
			size("14 1/16", "18 1/2"), size("13 9/16", "18"), size("16 7/16", "20 7/8")},
		{"the long point and not the short one is the rail's length (common practice)", frame("1 1/2", "1/4", "1/8"), size("16", "20"),
			size("16 1/8", "20 1/8"), size("15 5/8", "19 5/8"), size("18 5/8", "22 5/8")},
		{"not the print and twice the face (common practice)", frame("2", "1/4", "1/8"), size("19", "19"),
			size("19 1/8", "19 1/8"), size("18 5/8", "18 5/8"), size("22 5/8", "22 5/8")},
		{"flat stock without a lip around a mirror (common practice)", frame("4", "0", "0"), size("72", "72"),
			size("72", "72"), size("72", "72"), size("80", "80")},
		{"Fine Woodworking no. 275 prints 11 3/4 for 8, width 2, rabbet 1/8", frame("2", "1/8", "0"), size("8", "8"),
			size("8", "8"), size("7 3/4", "7 3/4"), size("11 3/4", "11 3/4")},
		{"Fine Woodworking no. 275 prints 20 and 24 for 16 x 20, width 2", frame("2", "0", "0"), size("16", "20"),
			size("16", "20"), size("16", "20"), size("20", "24")},
		{"odd millimeters (common practice)", frame("33.5 mm", "7 mm", "3 mm"), size("421 mm", "297 mm"),
			size("424 mm", "300 mm"), size("410 mm", "286 mm"), size("477 mm", "353 mm")},
	}
	for _, row := range rows {
		r := row.frame.Around(row.pkg)
		if r.Package != row.pkg || r.Opening != row.opening || r.Sight != row.sight || r.Outside != row.outside {
			t.Errorf("%s:\n%+v, want opening %+v, sight %+v, outside %+v", row.name, r, row.opening, row.sight, row.outside)
		}
		if back := row.frame.OpeningOf(r.Outside); back != row.opening {
			t.Errorf("%s: rails of %+v make an opening of %+v, want %+v", row.name, r.Outside, back, row.opening)
		}
	}
}

// TestFootage: Fine Woodworking no. 275 prints 88 1/4 in of molding for art of
// 16 x 20 and a width of 2: its allowance is 1/16 in per rail.
func TestFootage(t *testing.T) {
	if got := frame("2", "0", "1/16").Around(size("16", "20")).Footage; got != in("88 1/4") {
		t.Errorf("footage %v, want 88 1/4 in", got)
	}
}

// TestReadyMade: a frame sold as 20 x 24 by its outside has an opening smaller
// by twice face less lip (common practice).
func TestReadyMade(t *testing.T) {
	if got := frame("2", "1/4", "1/8").OpeningOf(size("20", "24")); got != size("16 1/2", "20 1/2") {
		t.Errorf("opening %+v, want 16 1/2 x 20 1/2", got)
	}
}

// TestDepthHasNoPart: the rabbet's depth never enters a rail. A recipe in
// print subtracts it and is right only where it is as deep as the lip is wide.
func TestDepthHasNoPart(t *testing.T) {
	f := frame("1 1/2", "1/4", "1/8")
	want := f.Around(size("16", "20"))
	f.Rabbet = in("2")
	if got := f.Around(size("16", "20")); got != want {
		t.Errorf("with a deep rabbet %+v, want %+v", got, want)
	}
}

// A spot is a place in the plane in half nanometers, so that half of the play
// and a corner both stand on whole numbers.
type spot struct{ x, y int64 }

// walked is the frame drawn corner by corner: each rail is laid against its
// own side of the opening, which lies about the package with half the play on
// each side, and its outer edge is drawn face less lip outside of that. It
// returns the length of the rails between the outer corners, and between the
// sight corners, top, right, bottom, left.
func walked(f molding.Frame, pkg measure.Size) (outer, sight [4]measure.Length, corners [8]spot) {
	w, h := 2*int64(pkg.Width), 2*int64(pkg.Height)
	play, lip, face := int64(f.Allowance), 2*int64(f.Lip), 2*int64(f.Face)
	if f.Kind == molding.Floater { // the gap stands on each side, whole
		play = 2 * int64(f.Gap)
	}
	left, right, top, bottom := -play, w+play, -play, h+play // back edges of the rabbet
	sightLeft, sightRight, sightTop, sightBottom := left+lip, right-lip, top+lip, bottom-lip
	corners = [8]spot{
		{sightLeft - face, sightTop - face}, {sightRight + face, sightTop - face},
		{sightRight + face, sightBottom + face}, {sightLeft - face, sightBottom + face},
		{sightLeft, sightTop}, {sightRight, sightTop}, {sightRight, sightBottom}, {sightLeft, sightBottom},
	}
	for i := range 4 {
		outer[i] = apart(corners[i], corners[(i+1)%4])
		sight[i] = apart(corners[4+i], corners[4+(i+1)%4])
	}
	return outer, sight, corners
}

// apart is the distance of two spots that lie level or upright.
func apart(a, b spot) measure.Length {
	dx, dy := b.x-a.x, b.y-a.y
	return measure.Length((max(dx, -dx) + max(dy, -dy)) / 2)
}

func randomLength(r *rand.Rand, most measure.Length) measure.Length {
	l := measure.Length(r.Int64N(int64(most) + 1))
	if r.IntN(2) == 0 {
		l -= l % (measure.Inch / 64)
	}
	return l
}

func randomFrame(r *rand.Rand) molding.Frame {
	f := molding.Frame{
		Kind: molding.Rabbeted, Made: molding.ToFit, Wood: "wood",
		Face: 1 + randomLength(r, in("4")), Allowance: randomLength(r, in("3/8")), Rabbet: randomLength(r, in("1")),
	}
	f.Lip = min(randomLength(r, in("1/2")), f.Face-1)
	return f
}

func randomSize(r *rand.Rand) measure.Size {
	return measure.Size{Width: in("2") + randomLength(r, in("80")), Height: in("2") + randomLength(r, in("80"))}
}

func TestSecondRoad(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 20))
	for range 5000 {
		f, pkg := randomFrame(r), randomSize(r)
		if r.IntN(4) == 0 {
			f = randomFloater(r)
		}
		got := f.Around(pkg)
		outer, sight, corners := walked(f, pkg)
		want := [4]measure.Length{got.Outside.Width, got.Outside.Height, got.Outside.Width, got.Outside.Height}
		wantSight := [4]measure.Length{got.Sight.Width, got.Sight.Height, got.Sight.Width, got.Sight.Height}
		if outer != want || sight != wantSight {
			t.Fatalf("%+v around %+v: walked %v and %v, worked %v and %v", f, pkg, outer, sight, want, wantSight)
		}
		if sum := outer[0] + outer[1] + outer[2] + outer[3]; got.Footage != sum {
			t.Fatalf("%+v around %+v: footage %v, walked %v", f, pkg, got.Footage, sum)
		}
		for i := range 4 { // each miter runs from sight to outer corner at 45 degrees, one face across
			dx, dy := corners[i].x-corners[4+i].x, corners[i].y-corners[4+i].y
			if max(dx, -dx) != 2*int64(f.Face) || max(dy, -dy) != 2*int64(f.Face) {
				t.Fatalf("the miter of corner %d runs %d by %d over a face of %d", i, dx, dy, f.Face)
			}
		}
	}
}

// TestPerturbation: what one nanometer more does to a rail.
func TestPerturbation(t *testing.T) {
	f, pkg := frame("1 1/4", "1/4", "1/8"), size("16", "20")
	base := f.Around(pkg)
	moved := func(what string, f molding.Frame, pkg measure.Size, outside, sight measure.Length) {
		t.Helper()
		got := f.Around(pkg)
		if d := got.Outside.Width - base.Outside.Width; d != outside {
			t.Errorf("1 nm more %s makes the rail %d longer, want %d", what, d, outside)
		}
		if d := got.Sight.Width - base.Sight.Width; d != sight {
			t.Errorf("1 nm more %s makes the sight size %d larger, want %d", what, d, sight)
		}
	}
	g := f
	g.Face++
	moved("face", g, pkg, 2, 0)
	g = f
	g.Lip++
	moved("lip", g, pkg, -2, -2)
	g = f
	g.Allowance++
	moved("allowance", g, pkg, 1, 1)
	moved("package", f, pkg.Grown(1), 1, 1)
}

// TestAroundOpening: a ready-made frame keeps its opening whatever lies in it.
func TestAroundOpening(t *testing.T) {
	f := frame("2", "1/4", "1/8")
	r := f.AroundOpening(size("16", "20"), size("16 1/2", "20 1/2"))
	if r.Package != size("16", "20") || r.Opening != size("16 1/2", "20 1/2") || r.Outside != size("20", "24") || r.Sight != size("16", "20") {
		t.Errorf("%+v", r)
	}
}

func TestMiter(t *testing.T) {
	rows := []struct{ corner, saw, edge string }{
		{"90", "45", "45"}, // a printed miter list: 45 for four sides
		{"93", "43.5", "46.5"},
		{"90.5", "44.75", "45.25"},
		{"87", "46.5", "43.5"},
		{"120", "30", "60"}, // and 30 for six
		{"108", "36", "54"}, // 36 for five
		{"135", "22.5", "67.5"},
		{"144", "18", "72"},
		{"89.999999999", "45.000000001", "44.999999999"}, // the edge gets the half below
	}
	for _, row := range rows {
		parse := func(s string) measure.Angle {
			a, err := measure.ParseAngle(s, measure.Degrees)
			if err != nil {
				t.Fatal(err)
			}
			return a
		}
		saw, edge := molding.Miter(parse(row.corner))
		if saw != parse(row.saw) || edge != parse(row.edge) || saw+edge != measure.RightAngle {
			t.Errorf("a corner of %s: saw %v, edge %v; want %s, %s", row.corner, saw, edge, row.saw, row.edge)
		}
	}
}

func TestZeroFrame(t *testing.T) {
	var f molding.Frame
	if r := f.Around(measure.Size{}); r != (molding.Rectangle{}) {
		t.Errorf("the zero frame around nothing is %+v", r)
	}
	if got := f.Fit(measure.Size{}, molding.Cut{}); got != (molding.Fit{}) {
		t.Errorf("nothing in nothing fits as %+v", got)
	}
	if got := f.DepthOf(0); got != (molding.Depth{}) {
		t.Errorf("nothing is as deep as %+v", got)
	}
	if !(molding.Sheet{}).IsZero() || (molding.Sheet{Name: "x"}).IsZero() || (molding.Cut{}).Given() || !(molding.Cut{Size: measure.Size{Height: 1}}).Given() {
		t.Error("what is none and what is given")
	}
	if got := f.Lips(); got != (measure.Sides{}) {
		t.Errorf("the lips of the zero frame are %+v", got)
	}
}

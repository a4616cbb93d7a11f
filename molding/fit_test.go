package molding_test

import (
	"math/rand/v2"
	"testing"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// TestFit: play is what the opening leaves, bite what the lip still covers
// with all the play on that side (common practice).
func TestFit(t *testing.T) {
	rows := []struct {
		name             string
		lip, allowance   string
		opening          measure.Size
		cut              molding.Cut
		part, play, bite measure.Size
	}{
		{"cut to fit", "1/4", "1/8", size("16 1/8", "20 1/8"), molding.Cut{},
			size("16", "20"), size("1/8", "1/8"), size("1/8", "1/8")},
		{"a clearance of its own", "3/8", "1/8", size("16 1/8", "20 1/8"), molding.Cut{Clearance: in("1/4")},
			size("15 7/8", "19 7/8"), size("1/4", "1/4"), size("1/8", "1/8")},
		{"a clearance below the allowance", "1/4", "1/8", size("16 1/8", "20 1/8"), molding.Cut{Clearance: in("1/16")},
			size("16", "20"), size("1/8", "1/8"), size("1/8", "1/8")},
		{"a pane of 15 1/2 x 19 1/2 falls through a lip of 1/4", "1/4", "1/8", size("16 1/8", "20 1/8"), molding.Cut{Size: size("15 1/2", "19 1/2")},
			size("15 1/2", "19 1/2"), size("5/8", "5/8"), size("-3/8", "-3/8")},
		{"glass of 342 x 616 mm in a recess of 345 x 620", "6 mm", "3 mm", size("345 mm", "620 mm"), molding.Cut{Size: size("342 mm", "616 mm")},
			size("342 mm", "616 mm"), size("3 mm", "4 mm"), size("3 mm", "2 mm")},
		{"plywood as large as that recess", "6 mm", "3 mm", size("345 mm", "620 mm"), molding.Cut{Size: size("345 mm", "620 mm")},
			size("345 mm", "620 mm"), size("0", "0"), size("6 mm", "6 mm")},
		{"too large one way", "1/4", "1/8", size("16", "20"), molding.Cut{Size: size("16 1/16", "19 7/8")},
			size("16 1/16", "19 7/8"), size("-1/16", "1/8"), size("5/16", "1/8")},
	}
	for _, row := range rows {
		f := molding.Frame{Face: in("2"), Lip: in(row.lip), Allowance: in(row.allowance)}
		want := molding.Fit{Size: row.part, Play: row.play, Bite: row.bite}
		if got := f.Fit(row.opening, row.cut); got != want {
			t.Errorf("%s: %+v, want %+v", row.name, got, want)
		}
		if got := f.FitOf(row.opening, row.part); got != want {
			t.Errorf("%s: of its size %+v, want %+v", row.name, got, want)
		}
	}
}

// goesIn and stays put a part into the opening by coordinates: it goes in
// where no edge passes the rabbet's; it stays where, pushed against either
// back edge, its other edge still lies under the lip.
func goesIn(opening, part measure.Length) bool { return part <= opening }

func stays(opening, part, lip measure.Length) bool {
	left := measure.Length(0)         // pushed to the left
	return left+part > opening-lip && // the right edge lies under the right lip
		opening-part < lip // and pushed right, the left edge under the left one
}

// TestFitSecondRoad: the signs of play and bite say what the coordinates say,
// and one nanometer decides.
func TestFitSecondRoad(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 8))
	for range 10_000 {
		f := randomFrame(r)
		opening := randomSize(r)
		part := opening
		// Around the two limits: as large as the opening, and as large as leaves no bite.
		part.Width += measure.Length(r.IntN(5) - 2)
		part.Height += measure.Length(r.IntN(5)-2) - f.Lip
		fit := f.FitOf(opening, part)
		for _, a := range [][4]measure.Length{
			{opening.Width, part.Width, fit.Play.Width, fit.Bite.Width},
			{opening.Height, part.Height, fit.Play.Height, fit.Bite.Height},
		} {
			if got := a[2] >= 0; got != goesIn(a[0], a[1]) {
				t.Fatalf("a part of %d in an opening of %d: goes in %v", a[1], a[0], got)
			}
			if got := a[3] > 0; got != stays(a[0], a[1], f.Lip) {
				t.Fatalf("a part of %d in an opening of %d under a lip of %d: stays %v", a[1], a[0], f.Lip, got)
			}
		}
	}
}

// TestCutToFitIsTheLargest: one nanometer more would have less than its play.
func TestCutToFitIsTheLargest(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 4))
	for range 2000 {
		f, opening := randomFrame(r), randomSize(r)
		c := molding.Cut{Clearance: randomLength(r, in("1/2"))}
		fit := f.Fit(opening, c)
		if fit.Play.Width < f.Allowance || fit.Play.Height < c.Clearance {
			t.Fatalf("%+v has play %+v of %d and %d", c, fit.Play, f.Allowance, c.Clearance)
		}
		if more := f.FitOf(opening, fit.Size.Grown(1)); more.Play.Width >= f.Allowance && more.Play.Width >= c.Clearance {
			t.Fatalf("%+v could be larger: play %+v", c, more.Play)
		}
	}
}

// TestDepthOf: what stands behind the lip, from the front (common practice;
// the room for the points is 1/8 in or more).
func TestDepthOf(t *testing.T) {
	rows := []struct {
		name                   string
		rabbet                 string
		parts                  []string
		package_, clear, depth string
	}{
		{"a package of 1/4 wants 3/8", "3/8", []string{"1/8", "1/16", "1/16"}, "1/4", "1/8", "3/8"},
		{"canvas 3/4 and mats 1/4 in 3/8 stand 5/8 proud", "3/8", []string{"3/4", "1/4"}, "1", "-5/8", "1 1/8"},
		{"and with a backing of 1/8, 3/4", "3/8", []string{"3/4", "1/4", "1/8"}, "1 1/8", "-3/4", "1 1/4"},
		{"a mirror of 1/8 fills a recess of 1/8", "1/8", []string{"1/8"}, "1/8", "0", "1/4"},
		{"nothing at all", "1/2", nil, "0", "1/2", "1/8"},
	}
	for _, row := range rows {
		f := molding.Frame{Rabbet: in(row.rabbet)}
		var parts []measure.Length
		for _, p := range row.parts {
			parts = append(parts, in(p))
		}
		want := molding.Depth{Package: in(row.package_), Clear: in(row.clear), Wanted: in(row.depth)}
		if got := f.DepthOf(in("1/8"), parts...); got != want {
			t.Errorf("%s: %+v, want %+v", row.name, got, want)
		}
	}
}

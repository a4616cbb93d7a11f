package molding_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

var (
	turned   = molding.OvalRing{True: molding.TrueSight, Rings: molding.Turned}
	parallel = molding.OvalRing{True: molding.TrueSight, Rings: molding.Parallel}
)

func oval(t *testing.T, f molding.Frame, pkg measure.Size, r molding.OvalRing) molding.Oval {
	t.Helper()
	o, err := f.AroundOval(pkg, r)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

func curves(o molding.Oval) map[string]molding.OvalCurve {
	return map[string]molding.OvalCurve{"package": o.Package, "opening": o.Opening, "sight": o.Sight, "outside": o.Outside}
}

// TestAroundOvalCases: the sight edge is the oval that the case gives.
func TestAroundOvalCases(t *testing.T) {
	t.Run("OVAL-04", func(t *testing.T) {
		for _, row := range []struct {
			oval  measure.Size
			rail  string
			apart measure.Length // in thousandths of an inch
		}{{size("16", "20"), "2", 10}, {size("36", "27"), "3", 26}, {size("16", "8"), "2", 85}} {
			f := frame(row.rail, "1/4", "1/8")
			pkg := row.oval.Grown(2*f.Lip - f.Allowance)
			for _, ring := range []molding.OvalRing{turned, parallel} {
				o := oval(t, f, pkg, ring)
				thousandths, _ := measure.MulDiv(o.Outside.Apart.Most, 1000, int64(measure.Inch))
				if o.Sight.Size != row.oval || thousandths != row.apart || o.Sight.Apart != (molding.OvalApart{}) {
					t.Errorf("%v %s: sight %v, apart by %v", row.oval, ring.Rings, o.Sight.Size, o.Outside.Apart)
				}
			}
		}
		// The outside an ellipse of 16 x 8: rails up to 2.0 keep one width.
		ring := molding.OvalRing{True: molding.TrueOutside, Rings: molding.Parallel}
		for face, fits := range map[measure.Length]bool{in("2") - 1: true, in("2"): false} {
			f := molding.Frame{Face: face}
			pkg := size("16", "8").Grown(-2 * face)
			o, err := f.AroundOval(pkg, ring)
			if fits != (err == nil) {
				t.Errorf("a rail of %v: %v", face, err)
			}
			if fits && (o.Outside.Size != size("16", "8") || o.Sight.By != -face || o.Sight.Tightest != 1) {
				t.Errorf("a rail of %v: %+v", face, o)
			}
		}
	})
	t.Run("OVAL-01", func(t *testing.T) {
		const cm = measure.Centimeter
		o := oval(t, molding.Frame{Face: cm}, measure.Size{Width: 16 * cm, Height: 10 * cm}, turned)
		if o.Sight.Curve != molding.EllipseCurve || o.Sight.Perimeter != (plane.Ellipse{Width: 16 * cm, Height: 10 * cm}).Perimeter() {
			t.Errorf("%+v", o.Sight)
		}
	})
}

// TestAroundOvalAxes: along the axes an oval is a rectangle, in both families and
// whichever edge is true.
func TestAroundOvalAxes(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 4))
	worked := 0
	for range 2000 {
		f, pkg, ring := randomOval(r)
		o, err := f.AroundOval(pkg, ring)
		if err != nil {
			continue
		}
		worked++
		rect := f.Around(pkg)
		if o.Package.Size != rect.Package || o.Opening.Size != rect.Opening || o.Sight.Size != rect.Sight || o.Outside.Size != rect.Outside {
			t.Fatalf("%+v is not %+v", o, rect)
		}
	}
	if worked < 1000 {
		t.Errorf("only %d were worked", worked)
	}
}

// randomOval is a frame, what it goes around, and its ring.
func randomOval(r *rand.Rand) (molding.Frame, measure.Size, molding.OvalRing) {
	f := randomBench(r).frame
	if r.IntN(5) == 0 {
		f.Kind, f.Lip, f.Gap = molding.Floater, 0, measure.Length(r.Int64N(int64(in("1/2"))))
	}
	short := in("4") + measure.Length(r.Int64N(int64(in("30"))))
	pkg := measure.Size{Width: short, Height: short}
	switch r.IntN(5) {
	case 0:
	case 1:
		pkg.Width += measure.Length(r.Int64N(int64(short)))
	default:
		pkg.Height += measure.Length(r.Int64N(int64(2 * short)))
	}
	ring := molding.OvalRing{
		True:  molding.OvalEdge(pick(r, molding.TrueSight.Choices())),
		Rings: molding.OvalFamily(pick(r, molding.Turned.Choices())),
	}
	return f, pkg, ring
}

func pick(r *rand.Rand, choices []string) string { return choices[r.IntN(len(choices))] }

// TestAroundOvalAgain walks around each curve in floats: its length by chords, its
// sharpest bend by three points, and how far it lies from that of the other family.
func TestAroundOvalAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 20))
	for n := 0; n < 60; {
		f, pkg, ring := randomOval(r)
		o, err := f.AroundOval(pkg, ring)
		if err != nil || o.Sight.Width <= 0 || o.Sight.Height <= 0 {
			continue
		}
		n++
		of := map[molding.OvalEdge]molding.OvalCurve{molding.TruePanel: o.Package, molding.TrueSight: o.Sight, molding.TrueOutside: o.Outside}[ring.True]
		for name, c := range curves(o) {
			walk := func(i int) (x, y float64) {
				at := 2 * math.Pi * float64(i) / steps
				if c.Curve == molding.EllipseCurve {
					return ovalWalked(c.Width, c.Height, 0, at)
				}
				return ovalWalked(of.Width, of.Height, c.By, at)
			}
			length, bend := 0.0, math.Inf(1)
			x0, y0 := walk(0)
			x1, y1 := walk(1)
			for i := 2; i < steps+2; i++ {
				x2, y2 := walk(i)
				length += math.Hypot(x2-x1, y2-y1)
				a, b, c := math.Hypot(x1-x0, y1-y0), math.Hypot(x2-x1, y2-y1), math.Hypot(x2-x0, y2-y0)
				area := (x1-x0)*(y2-y0) - (x2-x0)*(y1-y0)
				bend = min(bend, a*b*c/(2*area))
				x0, y0, x1, y1 = x1, y1, x2, y2
			}
			if off := length/float64(c.Perimeter) - 1; math.Abs(off) > 1e-5 {
				t.Errorf("%+v\n%s: %.0f around, want %d", o, name, length, c.Perimeter)
			}
			if off := bend - float64(c.Tightest); math.Abs(off) > 1e-3*bend+1e-4*float64(c.Width) {
				t.Errorf("%+v\n%s: bends by %.0f, want %d", o, name, bend, c.Tightest)
			}
			checkApart(t, c, of.Size)
		}
		if t.Failed() {
			t.FailNow()
		}
	}
}

const steps = 4000

// walked is a point beside an ellipse.
func ovalWalked(width, height, by measure.Length, at float64) (x, y float64) {
	a, b, d := float64(width)/2, float64(height)/2, float64(by)
	g := math.Hypot(b*math.Cos(at), a*math.Sin(at))
	return a*math.Cos(at) + d*b*math.Cos(at)/g, b*math.Sin(at) + d*a*math.Sin(at)/g
}

// checkApart measures both families against each other, square to the turned ellipse.
func checkApart(t *testing.T, c molding.OvalCurve, of measure.Size) {
	t.Helper()
	by := float64(c.Width-of.Width) / 2
	if c.Apart == (molding.OvalApart{}) {
		if _, err := (plane.Ellipse{Width: of.Width, Height: of.Height}).Parallel(measure.Length(math.Floor(by))); err == nil && by != 0 && of.Width != of.Height {
			t.Errorf("%+v beside %v has no difference", c, of)
		}
		return
	}
	// (x/a)^2 + (y/b)^2 - 1 over the length of its slope is how far outside a point lies.
	a, b := float64(c.Width)/2, float64(c.Height)/2
	most, at := 0.0, 0.0
	for i := 0; i <= steps; i++ {
		turn := math.Pi / 2 * float64(i) / steps
		x, y := ovalWalked(of.Width, of.Height, measure.Length(math.Floor(by)), turn)
		out := ((x/a)*(x/a) + (y/b)*(y/b) - 1) / (2 * math.Hypot(x/a/a, y/b/b))
		if by < 0 {
			out = -out
		}
		if out > most {
			most, at = out, turn
		}
	}
	if off := math.Abs(most - float64(c.Apart.Most)); off > 3+most/100+most*most/min(a, b) {
		t.Errorf("%+v: %.0f apart", c, most)
	}
	x, y := ovalWalked(of.Width, of.Height, measure.Length(math.Floor(by)), at)
	if most > 1e4 && math.Hypot(x-float64(c.Apart.At.X), y-float64(c.Apart.At.Y)) > max(a, b)/10 {
		t.Errorf("%+v: apart at %.0f, %.0f", c, x, y)
	}
}

// TestAroundOvalPlane: what is worked out here in fine units is what the plane says.
func TestAroundOvalPlane(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 23))
	for range 1500 {
		f, pkg, ring := randomOval(r)
		o, err := f.AroundOval(pkg, ring)
		if err != nil {
			continue
		}
		for name, c := range curves(o) {
			if c.Curve == molding.EllipseCurve && c.Of == c.Size && c.By == 0 {
				if e := (plane.Ellipse{Width: c.Width, Height: c.Height}); c.Tightest != 0 && (c.Tightest < e.Tightest() || c.Tightest > e.Tightest()+1) {
					t.Fatalf("%s bends by %v, by the plane %v", name, c.Tightest, e.Tightest())
				}
				continue
			}
			p, err := plane.Ellipse{Width: c.Of.Width, Height: c.Of.Height}.Parallel(c.By)
			if err != nil || c.Perimeter != p.Perimeter() || ring.Rings != molding.Parallel {
				t.Fatalf("%s: %+v %v", name, c, err)
			}
			against := p.Against()
			at := against.At
			if dx, dy := at.X-c.Apart.At.X, at.Y-c.Apart.At.Y; c.Apart.Most != 0 && (dx*dx > 1 || dy*dy > 1 || c.Apart.Most != against.Most) {
				t.Fatalf("%s: apart %+v, by the plane %+v", name, c.Apart, against)
			}
		}
	}
}

func TestAroundOvalRefuses(t *testing.T) {
	wide := size("30", "8")
	ring := func(of molding.OvalEdge) molding.OvalRing { return molding.OvalRing{True: of, Rings: molding.Parallel} }
	uneven := frame("2", "1/4", "1/8")
	uneven.Faces = []measure.Length{in("2"), in("2"), in("3"), in("2")}
	even := uneven
	even.Faces = []measure.Length{in("2"), in("2")}
	sloped := frame("2", "1/4", "1/8")
	sloped.Slope = molding.Slope{Thickness: in("1/2")}
	floater := molding.Frame{Kind: molding.Floater, Face: in("1"), Gap: in("4")}
	for _, row := range []struct {
		name  string
		frame molding.Frame
		pkg   measure.Size
		ring  molding.OvalRing
		want  string // path and code, nothing where it is worked
	}{
		{"as it is", frame("2", "1/4", "1/8"), wide, ring(molding.TrueSight), ""},
		{"equal faces", even, wide, ring(molding.TrueSight), ""},
		{"faces that differ", uneven, wide, turned, "/faces/2 oval.not_even"},
		{"sides that slope", sloped, wide, turned, "/slope oval.not_even"},
		{"folds inside", frame("3", "1/4", "1/8"), wide, ring(molding.TrueOutside), "/face plane.folds"},
		{"turned does not", frame("3", "1/4", "1/8"), wide, molding.OvalRing{True: molding.TrueOutside, Rings: molding.Turned}, ""},
		{"a lip inside the panel", frame("3", "1 1/4", "1/8"), wide, ring(molding.TruePanel), "/lip plane.folds"},
		{"all hidden", frame("5", "4 1/16", "1/8"), wide, ring(molding.TrueSight), "/lip out_of_range"},
		{"all hidden, turned", frame("5", "4 1/16", "1/8"), wide, turned, ""},
		{"a floater's gap", floater, size("20", "2"), ring(molding.TrueSight), "/gap plane.folds"},
		{"play of more than two lips", frame("1", "0", "8"), size("20", "2"), ring(molding.TrueSight), "/allowance plane.folds"},
	} {
		_, err := row.frame.AroundOval(row.pkg, row.ring)
		var p explain.Problem
		got := ""
		if errors.As(err, &p) {
			got = string(p.Path) + " " + string(p.Code)
		}
		if got != row.want || err != nil && (p.Given == "" || p.Accepted == "") {
			t.Errorf("%s: %v, want %q", row.name, err, row.want)
		}
		var c explain.Checker
		row.frame.CheckOval(&c, "/frame", row.pkg, row.ring)
		if problems := c.Problems(); (len(problems) == 0) != (err == nil) || err != nil && string(problems[0].Path) != "/frame"+string(p.Path) {
			t.Errorf("%s: checked as %v", row.name, problems)
		}
	}
}

// TestOvalLimit: what a refusal accepts is worked, and a nanometer more is not.
func TestOvalLimit(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 26))
	seen := map[explain.Path]int{}
	for range 6000 {
		f, pkg, ring := randomOval(r)
		if r.IntN(2) == 0 { // a long one
			pkg.Width = 5 * pkg.Height
			if f.Kind != molding.Floater && r.IntN(4) == 0 { // of a lip that hides much of it
				f.Lip = measure.Length(r.Int64N(int64(pkg.Height / 4)))
				f.Face, ring = f.Lip+measure.Centimeter, molding.OvalRing{True: molding.TruePanel, Rings: molding.Parallel}
			}
		}
		_, err := f.AroundOval(pkg, ring)
		var p explain.Problem
		if !errors.As(err, &p) || p.Path == "/allowance" || p.Path == "/gap" {
			continue
		}
		most, rest, _ := cutLimit(p.Accepted)
		if rest == "" || most < 0 {
			continue // nothing would do
		}
		seen[p.Path]++
		set := func(l measure.Length) error {
			g := f
			if p.Path == "/face" {
				g.Face = l
			} else {
				g.Lip, g.Face = l, max(g.Face, l+1)
			}
			_, err := g.AroundOval(pkg, ring)
			return err
		}
		if err := set(most); err != nil {
			t.Fatalf("%+v of %v %v: %v, and then %v", f, pkg, ring, p, err)
		}
		if err := set(most + 1); err == nil {
			t.Fatalf("%+v of %v %v: %v, and %v does, too", f, pkg, ring, p, most+1)
		}
	}
	if seen["/face"] < 50 || seen["/lip"] < 10 {
		t.Errorf("seen %v", seen)
	}
}

// cutLimit is the limit of "0 mm to 12.5 mm; or ...".
func cutLimit(accepted string) (measure.Length, string, bool) {
	_, rest, found := strings.Cut(accepted, "0 mm to ")
	text, rest, _ := strings.Cut(rest, ";")
	if !found {
		return 0, "", false
	}
	l, err := measure.Parse(text, measure.NoUnit)
	return l, rest, err == nil
}

func TestOvalRingCheck(t *testing.T) {
	for _, row := range []struct {
		ring molding.OvalRing
		want int
	}{{parallel, 0}, {turned, 0}, {molding.OvalRing{}, 2}, {molding.OvalRing{True: "Sight", Rings: "turned"}, 1}, {molding.OvalRing{True: "panel", Rings: "steiner"}, 1}} {
		var c explain.Checker
		if row.ring.Check(&c, "/oval"); len(c.Problems()) != row.want {
			t.Errorf("%+v: %v", row.ring, c.Problems())
		}
	}
	if (molding.OvalRing{}).IsZero() == parallel.IsZero() {
		t.Error("no ring is not told from one")
	}
}

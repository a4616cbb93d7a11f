package molding_test

import (
	"fmt"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// hundredths writes an angle as one reads it off a good protractor.
func hundredths(a measure.Angle) measure.Angle {
	a, _ = measure.RoundTo(a, measure.Degree/100, measure.Nearest)
	return a
}

// A shadow box whose four sides slope at 45 degrees is not cut at 45 and 45.
func ExampleSlopedCorner_Setting() {
	c := molding.RegularSlopedCorner(4, molding.Pitch{Angle: 45 * measure.Degree, From: molding.FromFlat})
	for _, p := range []molding.Position{molding.LaidFlat, molding.OnEdge, molding.Propped} {
		s := c.Setting(p)
		fmt.Printf("%s: miter %v, tilt %v\n", p, hundredths(s.Miter), hundredths(s.Tilt))
	}
	// Output:
	// flat: miter 35.26 deg, tilt 30 deg
	// on_edge: miter 35.26 deg, tilt 30 deg
	// propped: miter 45 deg, tilt 0 deg
}

// Six sides that lean 10 degrees out of upright: which face is down must be said.
func ExampleRegularSlopedCorner() {
	c := molding.RegularSlopedCorner(6, molding.Pitch{Angle: 10 * measure.Degree, From: molding.FromVertical})
	for _, p := range []molding.Position{molding.OnEdge, molding.LaidFlat} {
		s := c.Setting(p)
		fmt.Printf("%s: miter %v, tilt %v\n", p, hundredths(s.Miter), hundredths(s.Tilt))
	}
	fmt.Println("fronts at", hundredths(c.Dihedral()))
	// Output:
	// on_edge: miter 29.62 deg, tilt 4.98 deg
	// flat: miter 5.73 deg, tilt 29.5 deg
	// fronts at 121 deg
}

// The top side of a box with a sight size of 10 x 8: boards 3 wide and 1/2 thick
// at 30 degrees from flat.
func ExampleSlopedSide_Rail() {
	const in = measure.Inch
	side := molding.SlopedSide{Pitch: molding.Pitch{Angle: 30 * measure.Degree, From: molding.FromFlat}, Face: 3 * in, Thickness: in / 2}
	corner := molding.RegularSlopedCorner(4, side.Pitch)
	top := side.Rail(10*in, corner, corner)

	fraction := measure.Format{Style: measure.Fraction, Step: in / 32}
	show := func(name string, l measure.Length) { fmt.Println(name, fraction.Text(l, measure.Nearest)) }
	show("deep", side.Depth())
	show("wide", side.Run())
	show("short edge", top.FrontSight)
	show("long edge", top.FrontRim)
	show("overall, at the back", top.BackRim)
	// Output:
	// deep 1 1/2 in
	// wide 2 19/32 in
	// short edge 10 in
	// long edge 15 3/16 in
	// overall, at the back 15 11/16 in
}

// What a saw read to quarter degrees leaves in a joint 3 wide.
func ExampleSlopedCorner_Rounded() {
	const in = measure.Inch
	side := molding.SlopedSide{Pitch: molding.Pitch{Angle: 45 * measure.Degree, From: molding.FromFlat}, Face: 3 * in, Thickness: in / 2}
	corner := molding.RegularSlopedCorner(4, side.Pitch)
	thousandths := measure.Format{Style: measure.DecimalInch, Step: in / 1000}
	for _, step := range molding.SawSteps() {
		r := corner.Rounded(side, molding.LaidFlat, step)
		fmt.Printf("%v: miter %v, tilt %v; open at the heel %s, at the toe %s\n", step, r.Setting.Miter, r.Setting.Tilt,
			thousandths.Text(r.Gap.Heel, measure.Nearest), thousandths.Text(r.Gap.Toe, measure.Nearest))
	}
	// Output:
	// 1 deg: miter 35 deg, tilt 30 deg; open at the heel 0 in, at the toe 0.029 in
	// 0.5 deg: miter 35.5 deg, tilt 30 deg; open at the heel 0.026 in, at the toe 0 in
	// 0.25 deg: miter 35.25 deg, tilt 30 deg; open at the heel 0 in, at the toe 0.002 in
}

// A hexagon of 12 inch rails cut at 30.8 in place of 30 degrees.
func ExampleRing_Last() {
	const in = measure.Inch
	r := molding.Ring{Sides: 6, Long: 12 * in, Face: 2 * in, Off: 8 * measure.Degree / 10}
	last := r.Last()
	hundredths := measure.Format{Style: measure.DecimalInch, Step: in / 100}
	fmt.Println("the ends miss by", hundredths.Text(last.Miss, measure.Nearest))
	fmt.Println("pulled together, open by", hundredths.Text(last.Wedge, measure.Nearest), "at the", last.Opens)
	// Output:
	// the ends miss by 1.96 in
	// pulled together, open by 0.39 in at the heel
}

// A test frame of four sides, 2 wide, stands open by 1/16 at the toe of its last
// joint: how to set the saw, and how exact it has to be for a gap of 1/128.
func ExampleRing_OffByWedge() {
	const in = measure.Inch
	r, ok := molding.Ring{Sides: 4, Long: 20 * in, Face: 2 * in}.OffByWedge(in/16, molding.Toe)
	fmt.Println(ok, "turn the saw by", hundredths(r.Correction()))
	byWedge, byMiss := r.Finest(in / 128)
	fmt.Println("each cut to", hundredths(byWedge), "if the corners give, to", measure.Degree/1000*(byMiss*1000/measure.Degree), "if not")
	// Output:
	// true turn the saw by 0.16 deg
	// each cut to 0.02 deg if the corners give, to 0.003 deg if not
}

// One long rail is 1/16 longer than the other.
func ExampleChain_End() {
	const in = measure.Inch
	c := molding.Ring{Sides: 4, Long: 20 * in, Face: 2 * in}.Chain()
	c[2].Long += in / 16
	e := c.End()
	thousandths := measure.Format{Style: measure.DecimalInch, Step: in / 1000}
	fmt.Println("open by", thousandths.Text(e.Open, measure.Nearest), "turned too far by", e.Over)
	// Output: open by 0.044 in turned too far by 0 deg
}

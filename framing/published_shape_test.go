package framing_test

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// publishedPolygons adds the table of regular polygons, by outlines of corners: of
// a side, a way to a corner and a way to a side of 20 meters each.
func publishedPolygons(c map[string]func() string) {
	const size = 20 * measure.Meter
	squared := int64(size/measure.Micrometer) * int64(size/measure.Micrometer)
	regular := func(n int, across plane.Across, size measure.Length) plane.Polygon {
		p, err := plane.Regular(n, across, size)
		if err != nil {
			panic(err)
		}
		return p
	}
	toCorner := func(p plane.Polygon) measure.Length { return measure.Hypot(p.Corner(0).X, p.Corner(0).Y) }
	toSide := func(p plane.Polygon) measure.Length { return -p.Corner(0).Y } // the first side lies level below the middle
	for n := 3; n <= 12; n++ {
		places, name := 4, "polygon-"+strconv.Itoa(n)
		if n == 11 {
			places = 8
		}
		bySide := func() plane.Polygon { return regular(n, plane.OneSide, size) }
		byCorner := func() plane.Polygon { return regular(n, plane.Points, 2*size) }
		byFlat := func() plane.Polygon { return regular(n, plane.Flats, 2*size) }
		over := func(l measure.Length) string { return printedRatio(int64(l), int64(size), places) }
		c[name+"-area-side"] = func() string { return printedRatio(int64(bySide().Area()), squared, places) }
		c[name+"-area-corner"] = func() string { return printedRatio(int64(byCorner().Area()), squared, places) }
		c[name+"-area-flat"] = func() string { return printedRatio(int64(byFlat().Area()), squared, places) }
		c[name+"-corner-side"] = func() string { return over(toCorner(bySide())) }
		c[name+"-flat-side"] = func() string { return over(toSide(bySide())) }
		c[name+"-side-corner"] = func() string { return over(byCorner().Side(0).Length) }
		c[name+"-side-flat"] = func() string { return over(byFlat().Side(0).Length) }
		c[name+"-corner-flat"] = func() string { return over(toCorner(byFlat())) }
		c["interior-"+strconv.Itoa(n)] = func() string { return plainDegrees(bySide().Interior(1), 6) }
	}
	for _, n := range []int{4, 6, 8, 10, 12} {
		c["polygon-"+strconv.Itoa(n)+"-side-across"] = func() string {
			return printedRatio(int64(regular(n, plane.Flats, plane.Reach).Side(0).Length), int64(plane.Reach), 10)
		}
	}
	for _, n := range []int{3, 7, 11, 12} {
		c["saw-"+strconv.Itoa(n)] = func() string { return plainDegrees(plane.HalfTurn(n), 6) }
	}
	four := func() plane.Polygon { return regular(11, plane.OneSide, 4*measure.Meter) }
	c["polygon-11-4-area"] = func() string { return printedRatio(int64(four().Area()), int64(measure.SquareMeter), 7) }
	c["polygon-11-4-corner"] = func() string { return printedRatio(int64(toCorner(four())), int64(4*measure.Meter), 6) }
	c["polygon-11-4-flat"] = func() string { return printedRatio(int64(toSide(four())), int64(4*measure.Meter), 6) }
	twelve := func() plane.Polygon { return regular(12, plane.Points, 16*measure.Centimeter) }
	c["polygon-12-side"] = func() string { return printedRatio(int64(twelve().Side(0).Length), int64(measure.Centimeter), 3) }
	c["polygon-12-area"] = func() string { return printedRatio(int64(twelve().Area()), int64(100*measure.SquareMillimeter), 2) }
}

// publishedSlopes adds the chart of compound miters.
func publishedSlopes(c map[string]func() string) {
	set := func(n int, pitch measure.Angle) molding.Setting {
		return molding.RegularSlopedCorner(n, molding.Pitch{Angle: pitch, From: molding.FromFlat}).Setting(molding.LaidFlat)
	}
	printed := func(a measure.Angle, places int) string { return printedRatio(int64(a), int64(measure.Degree), places) }
	for _, n := range []int{4, 5, 6, 8, 10} {
		name := "slope-" + strconv.Itoa(n) + "-"
		for _, pitch := range []measure.Angle{10, 15, 20, 30, 40, 45, 50, 60, 75, 85} {
			s, here := set(n, pitch*measure.Degree), name+strconv.Itoa(int(pitch))
			switch {
			case n > 8 && pitch > 50, n > 6 && pitch > 60: // past what was read of the chart
			case n == 6 && pitch > 70:
				c[here+"-miter"] = func() string { return printed(s.Miter, 2) }
				c[here+"-tilt"] = func() string { return printed(s.Tilt, 2) }
			default:
				c[here] = func() string { return printed(s.Miter, 2) + " / " + printed(s.Tilt, 2) }
			}
		}
		for _, pitch := range []measure.Angle{0, 90} {
			c[name+strconv.Itoa(int(pitch))] = func() string {
				s := set(n, pitch*measure.Degree)
				return plainDegrees(s.Miter, 9) + " / " + plainDegrees(s.Tilt, 9)
			}
		}
	}
	c["slope-7-25-miter"] = func() string { return printed(set(7, 25*measure.Degree).Miter, 3) }
	both := func(n int, pitch measure.Angle, places int) func() string {
		return func() string {
			s := set(n, pitch*measure.Degree)
			return printed(s.Miter, places) + " / " + printed(s.Tilt, places)
		}
	}
	c["slope-4-26"] = both(4, 26, 0)
	c["slope-exact-4-26"] = both(4, 26, 3)
	c["slope-exact-4-45"] = both(4, 45, 4)
	c["slope-exact-6-30"] = both(6, 30, 4)
	c["slope-exact-8-60"] = both(8, 60, 4)
}

// plainDegrees writes degrees with up to so many places, and no zeros that say
// nothing.
func plainDegrees(a measure.Angle, places int) string {
	text := printedRatio(int64(a), int64(measure.Degree), places)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

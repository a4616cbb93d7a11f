package framing_test

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// hung works a piece of a given outside size and mass: a panel without weight but
// its own, in a frame that weighs nothing since its height is not known.
func (r *recorder) hung(width, height, mass, hang string) framing.PiecePlan {
	r.Helper()
	art := func(outside string) string { return (in(r, outside) - 2*measure.Inch).String() }
	return r.version2("in", rule, `{"art": {"kind": "panel", "width": "`+art(width)+`", "height": "`+art(height)+`", "thickness": "1/8", "mass": "`+mass+`"},
		"frame": {"face": "1", "lip": "0", "allowance": "0"}, "hang": `+hang+`}`)
}

func pounds(r *recorder, what string, got framing.ForceFigure, want string) {
	r.Helper()
	r.text(what, got.Text(), want)
}

// Ten pounds on one hook: at 15 degrees the wire pulls 19.3, which is a rise of
// 2.68 over a span of 20; with .36 of rise it is fourteen times the weight.
func tightWire(r *recorder) {
	p := r.hung("20 3/4", "24", "10 lb", `{"by": "wire", "hooks": 1, "inset": "3/8", "taut": {"by": "angle", "angle": "15"}}`)
	r.is("span", p.Hang.Span.Exact, "20")
	r.text("wire", p.Hang.Tension.Nominal.Text(), "19.4 lb") // 19.319, rounded up
	tension, _ := measure.MulDiv(p.Hang.Tension.Nominal.Exact, 10_000, int64(measure.Weight(4_535_924*measure.Milligram)))
	r.number("tension in thousandths of a pound", int64(tension), 19319)
	rise, _ := measure.MulDiv(p.Hang.Rise.Exact, 100, int64(measure.Inch))
	r.number("rise in hundredths of an inch", int64(rise), 268)
	flat := r.hung("20 3/4", "24", "10 lb", `{"by": "wire", "hooks": 1, "inset": "3/8", "taut": {"by": "rise", "rise": ".36"}}`)
	times, _ := measure.MulDiv(flat.Hang.Tension.Nominal.Exact, 1, int64(measure.Weight(4_535_924*measure.Milligram)))
	r.number("times the weight", int64(times), 14)
}

// A cord of 50 cm between hangers 20 cm apart under 10 N carries 5.46 N; the two
// halves are not added.
func cordTension(r *recorder) {
	h := hang.Usual(false)
	h.Hooks, h.Inset = 1, 10*measure.Millimeter
	h.Taut = hang.Taut{By: hang.ByWire, Wire: 500 * measure.Millimeter}
	mass, _ := measure.MulDiv(measure.Kilogram, 10*100_000, 980_665)
	l := h.Lay(hang.Given{Outside: measure.Size{Width: 220 * measure.Millimeter, Height: 600 * measure.Millimeter}, Mass: mass, Heaviest: mass})
	r.number("span", int64(l.Span), int64(200*measure.Millimeter))
	r.number("load in hundredths of a newton", int64(l.Tension.Nominal+5)/10, 546)
	r.number("on the hook, in newtons", int64(l.Hook.Nominal+500)/1000, 10)
}

// Rings 2 1/8 and 1 7/8 below the top, 16 apart: the nails differ by 1/4, and
// level nails tilt the frame of 20 by .9 degrees, 5/16 over its width.
func ringsAtTwoHeights(r *recorder) {
	p := r.hung("20", "16", "5 lb", `{"by": "rings", "below": "2 1/8", "below_right": "1 7/8", "inset": "2"}`)
	r.is("span", p.Hang.Span.Shown, "16")
	r.is("difference of the nails", p.Hang.Marks[1].Nail.Shown-p.Hang.Marks[0].Nail.Shown, "1/4")
	n := r.told(p, explain.Advice, hang.UnevenRings)
	tilt := measure.Angle(valueOf(r, n, "angle").N)
	r.number("tilt in tenths of a degree", int64((tilt+measure.Degree/20)/(measure.Degree/10)), 9)
	over, _ := measure.RoundTo(measure.Length(valueOf(r, n, "tilt").N), measure.Inch/16, measure.Nearest)
	r.is("over the frame", over, "5/16")
}

// A frame of 30 in the middle of a wall of 120 has 45 on each side.
func inTheMiddleOfAWall(r *recorder) {
	left, right := hang.Centered(in(r, "120"), in(r, "30"))
	r.is("left", left, "45")
	r.is("right", right, "45")
}

// The middle at 57, a height of 20, a drop of 2: the hook bears at 65, and its
// nail is higher by the hook.
func hookHeight(r *recorder) {
	p := r.hung("16", "20", "5 lb", `{"by": "rings", "below": "2", "center": "57", "nail_above": "3/8"}`)
	for _, m := range p.Hang.Marks {
		r.is("bearing", m.Bearing.Shown, "65")
		r.is("nail", m.Nail.Shown, "65 3/8")
	}
}

// 7.5 lb on a wire at 30 degrees over two hooks. The wire and each hanger carry
// 7.5, over a rating of 5; each hook 3.88, inside it.
func threeLoads(r *recorder) {
	p := r.hung("20", "24", "7.5 lb", `{"by": "wire", "hooks": 2, "taut": {"by": "angle", "angle": "30"},
		"ratings": {"hanger_holds": "5 lb", "hook_holds": "5 lb", "wire_breaks": "100 lb"}}`)
	pounds(r, "wire", p.Hang.Tension.Nominal, "7.5 lb")
	pounds(r, "hanger", p.Hang.Hanger.Nominal, "7.5 lb")
	pounds(r, "hook", p.Hang.Hook.Nominal, "3.9 lb")
	r.told(p, explain.Warning, hang.HangerGives)
	r.untold(p, hang.HookGives, hang.WireBreaks)
}

// 100 lb on one hook at 15 degrees: 193 lb in a wire that was tested to 100.
func refusesWire(r *recorder) {
	p := r.hung("30", "40", "100 lb", `{"by": "wire", "hooks": 1, "taut": {"by": "angle", "angle": "15"}, "ratings": {"wire_breaks": "100 lb"}}`)
	pounds(r, "wire", p.Hang.Tension.Nominal, "193.2 lb")
	r.told(p, explain.Warning, hang.WireBreaks)
}

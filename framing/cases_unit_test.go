package framing_test

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
)

// 24 square feet of glass 1/8 in thick, at 156 lb/cu ft: 39.0 lb. Glass sold
// as 1/8 in is 3 mm and weighs less.
func weightOfGlass(r *recorder) {
	size := measure.Size{Width: 4 * measure.Foot, Height: 6 * measure.Foot}
	pane := glazing.Pane{Material: glazing.Glass, Thickness: measure.Inch / 8}
	mass, err := measure.ParseMass("39 lb", measure.NoUnit)
	if err != nil {
		r.Fatal(err)
	}
	// The density is rounded to a gram per cubic meter; so the pane is weighed
	// to the gram.
	const gram = measure.Gram
	got := pane.Mass(size, material.PoundsPerCubicFoot(156))
	r.number("mass by the fraction, grams", int64((got+gram/2)/gram), int64((mass+gram/2)/gram))
	pane.Thickness = 3 * mm
	r.number("mass of 3 mm, grams", int64((pane.Mass(size, material.PoundsPerCubicFoot(156))+gram/2)/gram), 16_715)
}

// 60 x 80 cm is 23.622 x 31.496 in, and not 23 1/2 x 31 1/2.
func centimetersExactly(r *recorder) {
	p := r.piece("cm", `{"as": "decimal", "fineness": "0.001 in"}`, `{"art": {"width": "60", "height": "80"},
		"mat": {"window": {"by": "overlap", "each_side": "0"}}, `+strip+`}`)
	r.text("width", inches(p.Mat.Window.Width.Exact), "23.622")
	r.text("height", inches(p.Mat.Window.Height.Exact), "31.496")
	r.is("width", p.Mat.Window.Width.Exact, "600 mm")
	r.is("height", p.Mat.Window.Height.Exact, "800 mm")
	r.text("window shown", p.Mat.Window.Text(), "23.622 x 31.496")
	r.isNot("width", p.Mat.Window.Width.Shown, "23 1/2")
}

// A1 is 594 x 841 mm: 23.39 x 33.11 in, and not 23 x 33.
func sheetInInches(r *recorder) {
	p := r.piece("mm", `{"as": "decimal", "fineness": "0.01 in"}`, `{"art": {"width": "594", "height": "841"}, `+strip+`}`)
	art := layer(r, p, framing.ArtLayer).Size.Exact()
	hundredth := measure.Format{Style: measure.DecimalInch, Step: measure.Inch / 100}
	r.text("width", hundredth.Number(art.Width, measure.Nearest), "23.39")
	r.text("height", hundredth.Number(art.Height, measure.Nearest), "33.11")
	r.is("long point", p.Frame.Horizontal.LongPoint.Shown, "25.02") // 23.3858 + .125 + 1.5, up
	r.that(p.Frame.Opening.Width.Shown >= 594*mm+in(r, "1/8"), "the sheet does not go in")
	r.isNot("width", art.Width, "23")
}

func (r *recorder) that(ok bool, fault string) {
	r.Helper()
	r.compared++
	if !ok {
		r.Error(fault)
	}
}

// What people write for one measure, read through an order; and what could be
// read two ways, refused.
func waysToWrite(r *recorder) {
	art := func(width string) (framing.Order, error) {
		return framing.Read([]byte(`{"version": 1, "units": "in", "pieces": [{"art": {"width": ` +
			strconv.Quote(width) + `, "height": "70"}, ` + strip + `}]}`))
	}
	for text, want := range map[string]string{
		`5' 3/4"`: "60.75", `4 1/2 + 9`: "13.5", `4'2-1/4"`: "50.25", `20½`: "20.5", `20 ½ in`: "20.5",
		"20 13⁄16": "20.8125", "20¹³⁄₁₆": "20.8125", "5′ 3″": "63", `20-13/16`: "20.8125", "52,8 cm": "528 mm",
	} {
		order, err := art(text)
		if err != nil {
			r.Errorf("%s: %v", text, err)
			continue
		}
		r.is(text, order.Pieces[0].Art.Width, want)
	}
	for _, text := range []string{"1,250", "1.5 1/2", "3 kg", "20 - 13/16", "", "2013/16"} {
		_, err := art(text)
		ps := problems(r, err)
		r.number(text+": problems", int64(len(ps)), 1)
		if len(ps) == 1 && (ps[0].Path != "/pieces/0/art/width" || ps[0].Given != text || ps[0].Accepted == "") {
			r.Errorf("%q: %+v", text, ps[0])
		}
	}
	r.number("-20 in", int64(len(problems(r, second(art("-20 in"))))), 1)
	if ps := problems(r, second(art("-20 in"))); ps[0].Code != explain.OutOfRange {
		r.Errorf("-20 in: %v", ps)
	}
}

func second(_ framing.Order, err error) error { return err }

package framing_test

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A picture of 3 to 2 for an 8 x 10: cropped it loses a sixth of its length,
// uncropped it is 6 2/3 x 10.
func croppedOrNot(r *recorder) {
	o := framing.NewOrder(framing.Inches)
	p := framing.NewPiece(o.Shop)
	p.Art.Width, p.Art.Height = 8*measure.Inch, 12*measure.Inch
	p.Frame.Face, p.Frame.Lip = measure.Inch, measure.Inch/4
	o.Pieces = []framing.Piece{p}
	solved := func(free, want explain.Path, value string) measure.Size {
		r.Helper()
		s, err := framing.Solve(o, framing.Question{
			Free: "/pieces/0/art/" + free, With: []explain.Path{"/pieces/0/art/" + map[explain.Path]explain.Path{"width": "height", "height": "width"}[free]}, Move: framing.AsPart,
			Want: "/pieces/0/frame/package/" + want, Value: value,
		})
		if err != nil {
			r.Fatal(err)
		}
		return s.Order.Pieces[0].Art.Least()
	}
	whole := solved("height", "height", "10 in")
	r.is("uncropped height", whole.Height, "10")
	third := 20 * measure.Inch / 3
	r.number("uncropped width, within a nanometer of 6 2/3", int64(max(whole.Width-third, third-whole.Width)/2), 0)
	filled := solved("width", "width", "8 in")
	r.size("filled", filled, "8", "12")
	lost, _ := measure.MulDiv(filled.Height-10*measure.Inch, int64(explain.Whole), int64(filled.Height))
	r.text("lost to the crop", explain.Ratio(lost).String()[:4], "16.6")
}

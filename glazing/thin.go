package glazing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on panes that are thin for their size.
const (
	ThinGlass explain.Code = "glazing.thin_glass"
	ThinSheet explain.Code = "glazing.thin_sheet"
)

// A strength is a nominal thickness that panes beyond a size want. A pane counts
// as of it from its least thickness on.
type strength struct {
	short, long    measure.Length
	nominal, least measure.Length
}

// glassStrengths are those of glass, the strongest first: up to 32 x 40 in a pane
// of 2 mm picture glass does, where a dealer's page says that frame shops mostly
// leave glass for acrylic; the larger sizes are common practice. The least
// thicknesses are those of ASTM E1300 (read in two copies).
var glassStrengths = [...]strength{
	{36 * measure.Inch, 48 * measure.Inch, 3 * measure.Millimeter, 292 * measure.Millimeter / 100},
	{32 * measure.Inch, 40 * measure.Inch, 25 * measure.Millimeter / 10, 216 * measure.Millimeter / 100},
}

// sheetStrengths are those of plastic sheet: beyond 24 x 36 in it wants 1/8 in,
// beyond 40 x 60 in 3/16 in, sold as 3 and 4.5 mm (common practice). The least
// thicknesses are 5 % below, as makers of extruded sheet allow (ISO 7823-2, read in
// a maker's text).
var sheetStrengths = [...]strength{
	{40 * measure.Inch, 60 * measure.Inch, 45 * measure.Millimeter / 10, 4275 * measure.Millimeter / 1000},
	{24 * measure.Inch, 36 * measure.Inch, 3 * measure.Millimeter, 285 * measure.Millimeter / 100},
}

// appendThin says where a pane is thinner than is usual for its size.
func (p Pane) appendThin(notes []explain.Note, size measure.Size, at explain.Path) []explain.Note {
	code, strengths := ThinGlass, &glassStrengths
	if p.Grows() {
		code, strengths = ThinSheet, &sheetStrengths
	}
	short, long := min(size.Width, size.Height), max(size.Width, size.Height)
	for _, s := range strengths {
		if short <= s.short && long <= s.long {
			continue
		}
		if p.Thickness >= s.least {
			break
		}
		return append(notes, explain.Note{
			Level: explain.Advice, Code: code, Path: at + "/thickness",
			Values: []explain.Term{
				explain.NewTerm("thickness", p.Thickness, at+"/thickness"),
				explain.NewTerm("width", size.Width, ""),
				explain.NewTerm("height", size.Height, ""),
			},
			Changes: []explain.Change{{Path: at + "/thickness", To: explain.Of(s.nominal), Bound: explain.AtLeast}},
		})
	}
	return notes
}

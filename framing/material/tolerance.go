package material

import "github.com/fairmiter/fairmiter/framing/measure"

// glassRow is a nominal thickness of float glass and the thickest that is sold
// under it, in hundredths of a millimeter.
type glassRow struct{ nominal, most measure.Length }

// glassMost is ASTM C1036's upper limits of thickness. From memory.
var glassMost = [...]glassRow{
	{200, 213}, {250, 257}, {270, 290}, {300, 340}, {400, 419}, {500, 505}, {600, 620},
	{800, 843}, {1000, 1031}, {1200, 1349},
}

// HeaviestThickness returns how thick a sheet of this nominal thickness can be.
//
// Glass: the upper limit of ASTM C1036 where it has the thickness, else 0.2 mm
// more up to 6 mm and 0.3 mm above (EN 572-2); both from memory. Acrylic and
// polycarbonate: a tenth more under 3 mm, a twentieth from there (ISO 7823-2 for
// extruded sheet, read in a sheet maker's text). Anything else: as it is.
func HeaviestThickness(key string, nominal measure.Length) measure.Length {
	const hundredth = measure.Millimeter / 100
	if nominal <= 0 {
		return nominal
	}
	switch key {
	case Glass:
		for _, row := range glassMost {
			if nominal == row.nominal*hundredth {
				return row.most * hundredth
			}
		}
		if nominal <= 6*measure.Millimeter {
			return nominal + 20*hundredth
		}
		return nominal + 30*hundredth
	case "acrylic", "polycarbonate":
		if nominal < 3*measure.Millimeter {
			return nominal + nominal/10
		}
		return nominal + nominal/20
	}
	return nominal
}

package material

import "github.com/fairmiter/fairmiter/framing/explain"

// wood is a species by its specific gravity in hundredths, dry mass over volume
// at 12 percent moisture. The heaviest counts a tenth more: boards of one species
// differ by about as much (common practice).
func wood(key string, gravity int64, status explain.Status) Entry {
	density := Density(gravity) * 1120 * KilogramPerCubicMeter / 100
	return Entry{
		Key: key, Nominal: density, Heaviest: density * 11 / 10,
		Source: explain.Source{
			Title:  "USDA Forest Products Laboratory, Wood Handbook",
			Place:  "specific gravity at 12 % moisture (Table 5-3) x 1.12 x 1000 kg/m3",
			Status: status,
		},
		Uncertain: status == explain.Memory,
	}
}

// known is a material with a printed density.
func known(key string, nominal, heaviest Density, source explain.Source) Entry {
	return Entry{key, nominal * KilogramPerCubicMeter, heaviest * KilogramPerCubicMeter, source, false}
}

// about is a material of which makes differ.
func about(key string, nominal, heaviest Density, what string) Entry {
	return Entry{key, nominal * KilogramPerCubicMeter, heaviest * KilogramPerCubicMeter, explain.Source{Title: "from memory", Place: what, Status: explain.Memory}, true}
}

// moldings is how many of the entries are what moldings are made of.
const moldings = 22

// entries are the materials. Specific gravities are those of the Wood Handbook's
// Table 5-3 as secondary copies print them, but for ponderosa and sugar pine,
// read in the table, and eastern white pine and western redcedar, from memory.
var entries = [...]Entry{
	{Wood, 500 * KilogramPerCubicMeter, 838 * KilogramPerCubicMeter, explain.CommonPractice("a wood that is not known weighs about 500 kg/m3, and at most as much as heavy white oak"), true},
	wood("alder_red", 41, explain.Secondary), wood("ash_white", 60, explain.Secondary),
	wood("basswood", 37, explain.Secondary), wood("beech", 64, explain.Secondary),
	wood("birch_yellow", 62, explain.Secondary), wood("butternut", 38, explain.Secondary),
	wood("cherry_black", 50, explain.Secondary), wood("maple_sugar", 63, explain.Secondary),
	wood("oak_red", 63, explain.Secondary), wood("oak_white", 68, explain.Secondary),
	wood("walnut_black", 55, explain.Secondary), wood("poplar_yellow", 42, explain.Secondary),
	wood("pine_white", 35, explain.Memory), wood("pine_ponderosa", 40, explain.Verified),
	wood("pine_sugar", 36, explain.Verified), wood("redcedar_western", 32, explain.Memory),
	wood("mahogany", 50, explain.Memory),
	about("mdf", 750, 850, "medium-density fiberboard"),
	about("polystyrene", 550, 900, "foamed polystyrene molding"),
	about(Aluminum, 1350, 2700, "an extruded section is hollow; solid metal is 2700 kg/m3"),
	about("resin", 1200, 1800, "cast compo and resin"),

	known(Glass, 2500, 2500, explain.Source{Title: "EN 572-1", Place: "density of soda-lime glass, as data pages quote it", Status: explain.Secondary}),
	known("acrylic", 1190, 1200, explain.Source{Title: "acrylic sheet makers' data", Place: "ISO 1183, 1.19 g/cm3", Status: explain.Verified}),
	known("polycarbonate", 1200, 1200, explain.Source{Title: "polycarbonate sheet makers' data", Place: "1.20 g/cm3", Status: explain.Verified}),
	about("board", 800, 1000, "mat board and museum board"),
	about("foam_board", 110, 150, "paper-faced polystyrene foam"),
	about("corrugated", 160, 250, "corrugated board or plastic"),
	about("plywood", 600, 750, "plywood"),
	about("hardboard", 900, 1050, "hardboard and MDF"),
	about("metal", 2000, 2800, "aluminum and composites faced with it"),
	about(Paper, 800, 1200, "paper"),
	about(Panel, 800, 1050, "a painting on board or wood"),
	about(Bars, 480, 800, "softwood bars; the heaviest allows for canvas and paint"),
	about(SpacerPlastic, 1050, 1200, "polystyrene or acrylic strip"),
}

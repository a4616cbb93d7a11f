package framing_test

// fullOrder uses every field that an order of a plain rectangle has.
const fullOrder = `{
	"version": 3, "job": "Reading room", "date": "2027-03-31", "units": "in",
	"show": {"as": "fraction", "fineness": "1/32 in"},
	"shop": {"allowance": "1/8", "overlap": "3/16", "border": "2 3/4", "points": "1/8", "bite": "3/32",
		"extra": "5/8", "reveal": "3/16", "trim": "1/16", "spacer": "3/16", "gap": "3/16", "turn": "1 1/4", "bar": "1 3/8", "dust": "3/32",
		"saw": {"miter": "50", "tilt": "45", "off": "0.1", "seen": "1/128"},
		"thickness": {"board": "1/16", "glass": "2.1 mm", "acrylic": "2.5 mm", "polycarbonate": "2.4 mm",
			"foam_board": "5 mm", "corrugated": "4 mm", "plywood": "6 mm", "hardboard": "3.1 mm", "metal": "2.9 mm"}},
	"pieces": [{
		"name": "River chart", "quantity": 2,
		"art": {"kind": "canvas", "width": "17", "height": "22 1/2",
			"varies": {"width": "1/16", "height": "1/8"}, "thickness": "0.3 mm", "mass": "2 lb",
			"stretch": {"turn": "1 3/8", "bar": "1 3/4"}},
		"mat": {"name": "rag, 8-ply", "thickness": "1/8", "bevel": "60 deg",
			"window": {"by": "overlap", "each_side": "1/4", "width": "16", "height": "21"},
			"borders": {"by": "visible", "to": "lowest_window", "left": "3", "right": "3", "top": "3", "bottom": "3 1/2",
				"weight": "extra", "extra": "1/2", "ratio": "15 %", "board": {"width": "24", "height": "30"}},
			"under": [{"name": "gray, 4-ply", "thickness": "0.06", "bevel": "50 deg", "by": "seen", "reveal": "1/8", "trim": "3/16"}]},
		"glazing": {"material": "acrylic", "name": "clear", "thickness": "3 mm", "clearance": "3/16",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"spacer": {"name": "clear strip", "under": "mat", "width": "1/4", "depth": "3/8"},
		"mount": {"material": "board", "name": "museum board", "thickness": "1/16", "clearance": "1/8",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"backing": {"material": "foam_board", "name": "white", "thickness": "3/16", "clearance": "1/8",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"liner": {"kind": "rabbet", "molding": "linen", "face": "1", "lip": "3/16", "rabbet": "1/2", "allowance": "3/32",
			"gap": "1/8", "ledge": "1/2", "height": "3/4", "made": "to_space", "wood": "basswood"},
		"frame": {"kind": "rabbet", "molding": "cherry, 1 1/2", "face": "1 1/2", "lip": "3/8", "rabbet": "3/4", "allowance": "1/8",
			"gap": "3/8", "ledge": "1", "height": "1 1/4", "made": "ready_made", "wood": "cherry_black"},
		"hang": {"by": "rings", "hooks": 1, "part": "25 %", "below": "6", "below_right": "6 1/8", "inset": "3/4",
			"taut": {"by": "rise", "angle": "40 deg", "rise": "3", "wire": "30"},
			"spread": "8", "tails": "5", "nail_above": "1/2", "hidden": "1 1/2", "center": "58",
			"ratings": {"wire_breaks": "80 lb", "hanger_holds": "30 lb", "hook_holds": "25 lb", "factor": 5}}
	}]
}`

// fullOrders use every field that an order has between them: some fields exclude one
// another.
var fullOrders = map[string]string{
	"plain": fullOrder,
	// Art out of square in a frame of four boards that slope.
	"sides": fullSides,
	// Regular art in a frame that slopes; what does not count of an outline stands there too.
	"regular": fullOutline(`"by": "regular", "sides": 8, "across": "points", "size": "18", "stand": "point", "within": "1/32",
		"edges": ["3"], "diagonals": [{"from": 1, "to": 3, "length": "5"}], "angles": ["120"]`, "",
		`"slope": {"pitches": [{"angle": "40 deg", "from": "vertical"}], "thickness": "3/4"}`,
		fullHang),
	// The smallest one around art, in a frame of rails that differ.
	"around": fullOutline(`"by": "around", "sides": 8, "across": "side", "size": "2", "stand": "point", "within": "1/32"`,
		`"width": "7", "height": "5", `, `"faces": ["1 1/2", "1 1/2", "1 1/2", "1 1/2", "1 1/2", "1 1/2", "1 1/2", "1 3/4"]`, ``),
	// Five measured edges in a frame of rails that differ, one of them without any.
	"edges": fullOutline(`"by": "edges", "sides": 3, "across": "flats", "size": "1", "stand": "side", "within": "1/4",
		"edges": ["12", "9", "8.06", "8.06", "9"], "diagonals": [{"from": 0, "to": 2, "length": "15"}, {"from": 2, "to": 4, "length": "12"},
			{"from": 1, "to": 4, "length": "15"}]`, "", `"faces": ["1 1/2", "2", "1 3/4", "0", "2"]`, ""),
	// The same by its angles, in a frame that slopes more at one side.
	"angles": fullOutline(`"by": "angles", "sides": 5, "across": "flats", "size": "1", "stand": "side", "within": "1/4",
		"edges": ["12", "9", "8", "8"], "angles": ["90", "135", "95"]`, "",
		`"faces": ["1 1/2", "2", "1 3/4", "2", "2"], "slope": {"pitches": [{"angle": "40", "from": "flat"}, {"angle": "45", "from": "flat"},
			{"angle": "45", "from": "flat"}, {"angle": "45", "from": "vertical"}, {"angle": "30", "from": "vertical"}], "thickness": "1/2"}`, ""),
}

// fullSides is out of square, and its rails differ and slope.
const fullSides = `{
	"version": 3, "job": "Sampler", "date": "2027-03-31", "units": "in",
	"show": {"as": "fraction", "fineness": "1/32 in"},
	"shop": {"allowance": "1/8", "overlap": "3/16", "border": "2 3/4", "points": "1/8", "bite": "3/32",
		"extra": "5/8", "reveal": "3/16", "trim": "1/16", "spacer": "3/16", "gap": "3/16", "turn": "1 1/4", "bar": "1 3/8", "dust": "3/32",
		"saw": {"miter": "50", "tilt": "45", "off": "0.1", "seen": "1/128"},
		"thickness": {"board": "1/16", "glass": "2.1 mm", "acrylic": "2.5 mm", "polycarbonate": "2.4 mm",
			"foam_board": "5 mm", "corrugated": "4 mm", "plywood": "6 mm", "hardboard": "3.1 mm", "metal": "2.9 mm"}},
	"pieces": [{
		"name": "sampler", "quantity": 1,
		"art": {"kind": "panel", "sides": {"bottom": "12", "right": "16", "top": "12 1/16", "left": "15 15/16", "rising": "20 3/16", "falling": "19 13/16"},
			"thickness": "1/8", "mass": "0 kg"},
		"mat": {"name": "rag", "thickness": "1/16", "bevel": "45 deg", "window": {"by": "overlap", "each_side": "1/8", "width": "0", "height": "0"},
			"borders": {"by": "visible", "to": "top_window", "left": "2", "right": "2", "top": "2", "bottom": "2 1/2", "weight": "none", "extra": "0", "ratio": "0 %"}},
		"glazing": {"material": "glass", "name": "", "thickness": "2 mm", "clearance": "1/8"},
		"mount": {"material": "board", "name": "", "thickness": "1/16", "clearance": "1/8"},
		"backing": {"material": "foam_board", "name": "", "thickness": "3/16", "clearance": "1/8"},
		"frame": {"kind": "rabbet", "molding": "ash", "face": "1 1/2", "lip": "1/4", "rabbet": "3/4", "allowance": "1/8", "gap": "1/4", "ledge": "0",
			"height": "1", "made": "to_fit", "wood": "ash_white", "faces": ["1 3/4", "1 1/2", "1 1/4", "1 1/2"],
			"slope": {"pitches": [{"angle": "40", "from": "flat"}, {"angle": "50", "from": "vertical"}, {"angle": "35", "from": "flat"}, {"angle": "40", "from": "flat"}],
				"thickness": "1/2"}}
	}]
}`

// fullOutline is a mirror of another outline, of another size, frame and way to hang.
func fullOutline(outline, size, frame, hang string) string {
	return `{
	"version": 3, "job": "Mirror", "date": "2027-03-31", "units": "in",
	"show": {"as": "fraction", "fineness": "1/32 in"},
	"shop": {"allowance": "1/8", "overlap": "3/16", "border": "2 3/4", "points": "1/8", "bite": "3/32",
		"extra": "5/8", "reveal": "3/16", "trim": "1/16", "spacer": "3/16", "gap": "3/16", "turn": "1 1/4", "bar": "1 3/8", "dust": "3/32",
		"saw": {"miter": "50", "tilt": "45", "off": "0.1", "seen": "1/128"},
		"thickness": {"board": "1/16", "glass": "2.1 mm", "acrylic": "2.5 mm", "polycarbonate": "2.4 mm",
			"foam_board": "5 mm", "corrugated": "4 mm", "plywood": "6 mm", "hardboard": "3.1 mm", "metal": "2.9 mm"}},
	"pieces": [{
		"name": "mirror", "quantity": 1,
		"art": {"kind": "mirror", ` + size + `"thickness": "1/4", "mass": "0 kg", "outline": {` + outline + `}},
		"backing": {"material": "hardboard", "name": "", "thickness": "1/8", "clearance": "1/8"}, ` + hang + `
		"frame": {"kind": "rabbet", "molding": "ash", "face": "1 1/2", "lip": "1/4", "rabbet": "3/4", "allowance": "1/8", "gap": "1/4", "ledge": "0",
			"height": "1", "wood": "ash_white", "made": "to_fit", ` + frame + `}
	}]
}`
}

const fullHang = `"hang": {"by": "rings", "hooks": 2, "part": "25 %", "below": "6", "below_right": "6 1/8", "inset": "3/4",
			"taut": {"by": "rise", "angle": "40 deg", "rise": "3", "wire": "30"},
			"spread": "8", "tails": "5", "nail_above": "1/2", "hidden": "1 1/2", "center": "58",
			"ratings": {"wire_breaks": "80 lb", "hanger_holds": "30 lb", "hook_holds": "25 lb", "factor": 5}}, `

// What sides, corners and the figures of shapes are called. The sides of a
// rectangle have names, those of another outline are counted from the bottom one on
// to the right, as the order counts them.
import {here, given, piecePlan} from "../state.js";
import {label} from "../words.js";
import {kind, pitches} from "./counts.js";

const four = ["bottom", "right", "top", "left"];

/** side is the name of a side, counted from 0; corner that of the corner where a
    side begins. */
export const side = i => ["rectangle", "square"].includes(kind()) ? four[i] ?? `side ${i + 1}` : `side ${i + 1}`;
export const corner = i => `corner ${i + 1}`;

/** rail is the name of the rail along a side, several together of those alike. */
export const rail = (i, what = "rail") => ["rectangle", "square"].includes(kind()) ? `${side(i)} ${what}` : side(i);
export function several(sides, what) {
	const names = sides.map(side), last = names.pop();
	if (!names.length) return rail(sides[0], what);
	if (sides.length === piecePlan()?.shape?.sides?.length) return `all ${what}s`;
	return `${names.join(", ")} and ${last}${last.includes(" ") ? "" : ` ${what}s`}`;
}

const labels = {
	"outline/by": "its outline", "outline/sides": "sides", "outline/across": "measured", "outline/size": "size", "outline/stand": "it hangs with",
	"outline/within": "measures may disagree by", "sides/bottom": "bottom edge", "sides/right": "right edge", "sides/top": "top edge", "sides/left": "left edge",
	"sides/rising": "lower left to upper right corner", "sides/falling": "upper left to lower right corner", "slope/thickness": "thickness of the board",
	"regular/panel": "panel across flats", "regular/opening": "opening across flats", "regular/sight": "sight across flats", "regular/outside": "outside across flats",
	"regular/points": "outside across points", "regular/long_point": "each rail, long point", "regular/short_point": "each rail, short point", "regular/growth": "longer at each end",
	"regular/saw": "both ends, from square", "regular/edge": "both ends, to the edge", "regular/footage": "molding in all", "shape/footage": "molding in all",
	"last/turn": "all turns together miss by", "last/joint": "length of the last joint", "last/miss": "ends of the last joint miss by", "last/wedge": "last joint, pulled together, opens by",
	"rails/sight": "along the sight edge", "rails/outer": "along the outer edge", "rails/long": "from point to point", "start/saw": "left end, from square", "finish/saw": "right end, from square",
	"start/edge": "left end, to the edge", "finish/edge": "right end, to the edge", "start/growth": "longer at the left end", "finish/growth": "longer at the right end",
	"start/joint": "length of the joint at the left", "finish/joint": "length of the joint at the right",
	"slope/front_sight": "sight edge, in front", "slope/front_rim": "rim, in front", "slope/back_sight": "behind the sight edge", "slope/back_rim": "behind the rim",
	"slope/depth": "sight edge deeper than the rim", "slope/run": "how wide the side looks", "left/dihedral": "angle between the fronts, at the left", "right/dihedral": "angle between the fronts, at the right",
};

const lies = {flat: "flat on the saw", on_edge: "on edge", propped: "propped at its pitch"};
const turned = {miter: "miter, from square", tilt: "blade, from upright"};

/** name is what a field or a figure of a shape is called, undefined of any other. */
export function name(path) {
	const rest = path.replace(/^(\/order)?\/pieces\/\d+\//, ""), part = rest.split("/"), i = Number(part[2]);
	const own = labels[part.filter(p => !/^\d+$/.test(p)).slice(-2).join("/")];
	switch (part.slice(0, 2).join("/")) {
	case "frame/faces":
		return rail(i);
	case "frame/slope":
		if (part[2] === "pitches") return pitches().length > 1 ? `${side(Number(part[3]))}, ${part[4] === "angle" ? "pitch" : "counted"}` : part[4] === "angle" ? "pitch" : "counted";
		return own;
	case "art/outline":
		if (part[2] === "edges") return side(Number(part[3]));
		if (part[2] === "angles") return `${side(Number(part[3]))} to ${side(Number(part[3]) + 1)}`;
		if (part[2] === "diagonals") return diagonal(given(here(`/art/outline/diagonals/${part[3]}`)));
		return own;
	case "shape/rails":
		return `${rail(i)}, ${own ?? label(path)}`;
	case "shape/slope": {
		const where = several(piecePlan()?.shape?.slope?.[i]?.sides ?? [0], "board");
		return `${where}, ${part[4] in lies ? `${part[3]} end, ${lies[part[4]]}: ${turned[part[5]]}` : own ?? label(path)}`;
	}
	}
	return own;
}

const diagonal = d => d ? `${corner(Number(d.from))} to ${corner(Number(d.to))}` : undefined;

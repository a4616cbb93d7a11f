// The English of codes and keys, as the library says it, and the few words that
// only this page has.

const table = new Map();

export function learn(english) {
	for (const {code, text} of english) table.set(code, text);
}

const plain = code => code.replaceAll("_", " ");

/** say is what a code says; the code itself, readable, where the table lacks it. */
export const say = code => table.get(code) ?? plain(code);

/** label is what a field or figure is called, by its path. */
export function label(path) {
	const parts = path.split("/").filter(p => p && !/^\d+$/.test(p));
	const name = parts.at(-1) ?? "", before = parts.at(-2) ?? "";
	const own = labels[before + "/" + name];
	return own ?? table.get(before + "." + name) ?? table.get("field." + name) ?? say(name);
}

const labels = {
	"art/width": "picture width", "art/height": "picture height", "art/kind": "what it is", "art/mass": "weight, where you weighed it",
	"art/thickness": "how thick it is", "varies/width": "wider by, where it is largest", "varies/height": "higher by, where it is largest",
	"stretch/turn": "canvas turned round, each side", "stretch/bar": "width of the bars",
	"window/by": "the window", "window/each_side": "each side", "window/width": "window width", "window/height": "window height",
	"borders/by": "borders are", "borders/to": "measured", "borders/weight": "wider below", "borders/ratio": "wider below, as a part",
	"board/width": "board width", "board/height": "board height", "size/width": "width as cut already", "size/height": "height as cut already",
	"frame/made": "the frame is", "liner/made": "the liner is", "frame/kind": "it holds the art by", "liner/kind": "it holds by",
	"frame/height": "height of the molding, back to front", "liner/height": "height of the liner, back to front",
	"under/by": "the reveal is", "spacer/under": "it lies behind", "hang/by": "it hangs by", "taut/by": "the wire is told by", "mat/name": "board",
	"outside/width": "outside width", "outside/height": "outside height", "sight/width": "sight width", "sight/height": "sight height",
	"opening/width": "opening width", "opening/height": "opening height", "blank/width": "mat blank width", "blank/height": "mat blank height",
	"horizontal/long_point": "top and bottom rails, long point", "vertical/long_point": "side rails, long point",
	"pieces/name": "what you call it", "pieces/quantity": "how many", "show/as": "lengths are written", "show/fineness": "to the nearest",
	"saw/miter": "saw swings from square by", "saw/tilt": "its blade tilts by", "saw/off": "each cut is off by", "saw/seen": "widest gap that is not seen",
	"shop/border": "mat border, each side", "shop/overlap": "mat over the art, each side", "shop/bar": "width of stretcher bars",
	"shop/dust": "dust cover inside the edge", "shop/turn": "canvas turned round", "shop/points": "depth that the points need", "shop/spacer": "depth of a spacer",
};

/** choice is what one choice of a field says. */
export const choice = (path, value) => choices[path.split("/").at(-1) + "/" + value] ?? plain(value);

const choices = {
	"by/overlap": "laps over the art", "by/gap": "shows the whole art", "by/size": "is this size", "by/visible": "as seen", "by/cut": "as cut",
	"by/board": "by a board that is there", "to/top_window": "to the top window", "to/lowest_window": "to the art's window",
	"weight/none": "no", "weight/extra": "by so much", "weight/ratio": "by a part", "weight/optical": "optical center",
	"made/to_fit": "made to fit", "made/to_space": "made for a space", "made/ready_made": "there already", "kind/rabbet": "a rabbet",
	"by/line": "line to line", "by/seen": "as seen", "by/wire": "wire", "by/rings": "two rings", "units/in": "inches", "units/mm": "millimeters", "units/cm": "centimeters",
	"across/flats": "across flats", "across/points": "across points", "across/side": "along a side", "stand/side": "a side at the bottom", "stand/point": "a corner at the bottom", "stand/upright": "a side upright at the left",
	"from/flat": "from flat", "from/vertical": "from vertical", "as/fraction": "in fractions", "as/feet": "in feet and inches", "as/decimal": "in decimals", "as/metric": "in millimeters", "by/rise": "its rise", "by/angle": "its angle",
};

/** problem says one problem: what is wrong, and what would do. */
export function problem(p) {
	const where = p.at > 0 ? ` (at character ${p.at})` : "";
	return sentence(say(p.code)) + where + (p.accepted ? `. What will do: ${p.accepted}` : "") + ".";
}

export const sentence = text => text.charAt(0).toUpperCase() + text.slice(1);

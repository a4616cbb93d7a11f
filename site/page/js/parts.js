// The parts of a piece in the order they are built: what each says of itself in
// one sentence, and which of its settings most framers touch.
import {here, text, given, worked, piecePlan, pieceOrder, isUsual} from "./state.js";
import {choice} from "./words.js";
import {shapes, outlined, railed} from "./shapes.js";

// What a part says is a list of texts and of values, each value with its place, so
// that one can tell every number on the page by where it stands in the plan.
const value = path => text(path) && {path, text: text(path)};
export const t = rest => value("/order" + here(rest));
const chosen = rest => worked("/order" + here(rest));
export const word = rest => choice(here(rest), chosen(rest) ?? "");
export const say = (texts, ...values) => texts.flatMap((s, i) => [s, values[i] ?? ""].flat()).filter(Boolean);
export const list = (...items) => items.filter(Boolean).flatMap((item, i) => [i ? ", " : "", item].flat()).filter(Boolean);
const by = (a, b) => say`${t(a)} × ${t(b)}`;
const some = rest => chosen(rest) !== undefined && !/^0 /.test(chosen(rest)) && t(rest);

function borders() {
	const b = "/mat/borders";
	if (chosen(b + "/by") === "board") return say`on a board of ${by(b + "/board/width", b + "/board/height")}`;
	const [left, right, top, bottom] = ["left", "right", "top", "bottom"].map(side => t(`${b}/${side}`));
	const weighted = chosen(b + "/weight") !== "none";
	const below = weighted ? value(here("/mat/visible/bottom")) : bottom;
	if (left.text === right.text && left.text === top.text) return below.text === left.text ? say`${left} all round` : say`${left} all round, ${below} below`;
	return left.text === right.text ? say`${left} at the sides, ${top} above, ${below} below` : say`${left} left, ${right} right, ${top} above, ${below} below`;
}

export const frame = (part, faces = say`face ${t(part + "/face")}`) => list(t(part + "/molding") || word(part + "/wood"), faces,
	chosen(part + "/kind") === "floater" ? say`floats with a gap of ${t(part + "/gap")}` : say`lip ${t(part + "/lip")}`, some(part + "/rabbet") && say`rabbet ${t(part + "/rabbet")}`);
const thick = part => !isUsual(here(part + "/thickness")) && say`${t(part + "/thickness")} thick`;
const sheet = part => list(t(part + "/name") || word(part + "/material"), thick(part));

const under = i => ({
	key: `mat/under/${i}`, name: i ? "Third mat" : "Mat under it", add: i ? "Add a third mat" : "Add a window mat under it", on: i ? "mat/under/0" : "mat", fresh: {},
	main: ["name", "reveal"], say: () => list(t(`/mat/under/${i}/name`), say`${t(`/mat/under/${i}/reveal`)} shows`),
});

export const parts = [
	{key: "art", name: "Picture", shape: "outline", skip: ["outline", "sides"], main: ["width", "height", "kind"],
		say: () => outlined(pieceOrder()) ? shapes()?.sayArt() ?? say`${word("/art/kind")}` : list(word("/art/kind"), by("/art/width", "/art/height"))},
	{key: "mat", name: "Mat", add: "Add a mat", fresh: {}, skip: ["under"], main: ["name", "borders/left", "borders/right", "borders/top", "borders/bottom", "window/each_side"],
		say: () => list(t("/mat/name") || say`${t("/mat/thickness")} board`, borders())},
	under(0), under(1),
	{key: "glazing", name: "Glazing", add: "Put glazing in front", fresh: {}, main: ["material", "thickness"], say: () => sheet("/glazing")},
	{key: "spacer", name: "Spacer", add: "Add a spacer", fresh: {width: "1/4 in"}, main: ["width", "depth", "under"], say: () => say`${t("/spacer/depth")} deep, ${t("/spacer/width")} wide, behind the ${word("/spacer/under")}`},
	{key: "mount", name: "Mount", add: "Put a mount behind the art", fresh: {}, main: ["material", "thickness"], say: () => sheet("/mount")},
	{key: "backing", name: "Backing", add: "Close it with a backing", fresh: {}, main: ["material", "thickness"], say: () => sheet("/backing")},
	{key: "liner", name: "Liner", add: "Put a liner in", fresh: {face: "1 in", lip: "1/4 in"}, skip: ["faces", "slope"], main: ["molding", "face", "lip", "height"], say: () => frame("/liner")},
	{key: "frame", name: "Frame", shape: "rails", skip: ["faces", "slope"], main: ["molding", "face", "lip", "rabbet", "kind"], say: () => railed(pieceOrder()) && shapes()?.sayFrame() || frame("/frame")},
	{key: "hang", name: "Hanging", add: "Hang it", fresh: {}, main: ["by", "hooks", "center", "below"], say: () => hanging()},
];

function hanging() {
	const way = word("/hang/by"), hooks = chosen("/hang/by") === "wire" ? ` over ${chosen("/hang/hooks") === 1 ? "one hook" : "two hooks"}` : "";
	return say`by ${way === "sawtooth" ? "a sawtooth" : way === "wire" ? "a wire" : way}${hooks}, middle ${t("/hang/center")} above the floor`;
}

/** whole are the settings of the order that no piece owns. */
export const whole = [
	{key: "", name: "Order", main: ["job", "date", "units"], only: ["job", "date", "units", "show"], say: () => list(value("/order/job") || "no name yet", value("/order/date"))},
	{key: "shop", name: "Shop", main: ["allowance", "overlap", "border", "points"], say: () => say`allowance ${value("/order/shop/allowance")}, mats lap over by ${value("/order/shop/overlap")}`},
];

/** pathOf is where a part stands in the order. */
export const pathOf = part => whole.includes(part) ? (part.key && "/" + part.key) : here("/" + part.key);
export const present = part => whole.includes(part) || given(pathOf(part)) !== undefined;
export const find = key => parts.find(p => p.key === key) ?? whole.find(p => p.name === key);

/** partOf is the key of the part that a path of the plan belongs to. */
export function partOf(path) {
	const rest = path.replace(/^(\/order)?\/pieces\/\d+\//, "");
	if (rest === path) return path.startsWith("/order/shop") ? "Shop" : "Order";
	const under = rest.match(/^mat\/under\/[01]/);
	if (under) return under[0];
	const [first, second] = rest.split("/");
	const layer = first === "layers" ? piecePlan()?.layers?.[second]?.part : first === "mass" && second === "parts" ? piecePlan()?.mass?.parts?.[rest.split("/")[2]]?.part : first;
	const owner = {under_mat: "mat/under/0", depth: "frame", liner_depth: "liner", canvas: "art", float: "frame", mass: "frame", package: "frame"}[layer] ?? layer;
	return find(owner) ? owner : "frame";
}

/** sequence are the lengths of the order that the pad goes through. */
export function sequence() {
	const order = ["art/width", "art/height", "mat/borders/left", "mat/borders/right", "mat/borders/top", "mat/borders/bottom", "mat/under/0/reveal",
		"mat/under/1/reveal", "liner/face", "liner/lip", "frame/face", "frame/lip", "frame/gap", "frame/rabbet", "hang/center", "hang/below"];
	const own = shapes()?.lengths();
	if (own) {
		order.splice(2, 0, ...own.art);
		order.splice(order.indexOf("frame/face") + 1, 0, ...own.frame);
	}
	const floats = chosen("/frame/kind") === "floater";
	return order.map(rest => "/" + rest).filter(rest => chosen(rest) !== undefined && !shapes()?.hides(here(rest)) && (rest !== "/frame/gap" || floats) && !(floats && rest === "/frame/lip")).map(here);
}

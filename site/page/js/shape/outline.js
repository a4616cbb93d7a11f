// The outline of the art: how it is given, and only the fields that count for that.
import {el, button} from "../dom.js";
import {given, here, problemsAt, worked} from "../state.js";
import {unset} from "../pointer.js";
import {state} from "../state.js";
import {step} from "../steps.js";
import {parts, say, list, t, word} from "../parts.js";
import {choice as choiceText} from "../words.js";
import {field, choice, hint, wrong, ways, write, put, back} from "./forms.js";
import {kind, sides, edges, angles, diagonals} from "./counts.js";
import {side, corner, name} from "./names.js";

const kinds = {
	rectangle: "a rectangle", regular: "equal sides", around: "equal sides, around a picture", edges: "sides as measured", angles: "sides and corners as measured", square: "out of square, as measured",
};

const own = ["width", "height", "varies", "stretch", "outline", "sides"];

/** fresh is how the outline begins, from what is known of the size. */
function fresh(to, {width, height, outline, sides}) {
	const w = width ?? outline?.size ?? outline?.edges?.[0] ?? sides?.bottom ?? "", h = height ?? outline?.edges?.[1] ?? sides?.right ?? w;
	const count = outline?.sides && {sides: outline.sides};
	return {
		rectangle: {width: w, height: h}, regular: {outline: {by: "regular", sides: 8, ...count, across: "flats", size: w}}, around: {width: w, height: h, outline: {by: "around", sides: 8, ...count}},
		edges: {outline: {by: "edges", edges: [w, w, w]}}, angles: {outline: {by: "angles", edges: [w, h, w], angles: ["90", "90"]}},
		square: {sides: {bottom: w, right: h, top: w, left: h}},
	}[to];
}

function become(to) {
	const art = given(here("/art")) ?? {}, now = {}, rest = {};
	for (const [key, value] of Object.entries(art)) (own.includes(key) ? now : rest)[key] = value;
	put("outline " + kind(), now);
	write("/art", {...rest, ...back("outline " + to) ?? fresh(to, art)});
}

const at = "/art/outline";
const setList = (name, list) => write(`${at}/${name}`, list);

/** more and less make another side at the end; a diagonal to hold it goes with it. */
function more() {
	const outline = given(here(at)), n = edges().length + 1;
	if (kind() === "angles") write(at, {...outline, edges: [...edges(), ""], angles: [...angles(), ""]});
	else write(at, {...outline, edges: [...edges(), ""], diagonals: [...diagonals(), {from: 0, to: n - 2, length: ""}]});
}

function less() {
	const outline = given(here(at)), last = edges().length - 1;
	if (kind() === "angles") return write(at, {...outline, edges: edges().slice(0, -1), angles: angles().slice(0, -1)});
	const {diagonals: gone, ...rest} = outline, left = diagonals().filter(d => d.from !== last && d.to !== last && !(last === 3 && d.length === ""));
	const kept = left.slice(0, Math.max(0, last - 3));
	write(at, {...rest, edges: edges().slice(0, -1), ...kept.length && {diagonals: kept}});
}

function ends(i, which) {
	const path = `${at}/diagonals/${i}/${which}`, n = edges().length, now = () => Number(given(here(path)) ?? -1);
	return {key: `${path} ${n}`, make: () => {
		const select = el("select", {"aria-label": which === "from" ? "from corner" : "to corner", "data-keep": path, onchange: () => write(path, Number(select.value))},
			...Array.from({length: n}, (_, c) => el("option", {value: c, text: corner(c), "data-place": ""})));
		return {line: el("label", {class: "row"}, el("span", {class: "name", text: which === "from" ? "Diagonal from" : "to"}), select), update: () => { select.value = now(); }};
	}};
}

const measured = () => [
	...edges().map((_, i) => field(`${at}/edges/${i}`, side(i))),
	...diagonals().flatMap((_, i) => [ends(i, "from"), ends(i, "to"), field(`${at}/diagonals/${i}/length`, "its length")]),
	hint("Seen from the front: the first side is the bottom one, the others follow to the right and round. The first corner is where the first side begins. From four sides on, diagonals hold the corners."),
	wrong(at, at + "/edges", at + "/diagonals"),
	ways([["One more side", more], ...edges().length > 3 ? [["One side less", less], ["Another diagonal", () => setList("diagonals", [...diagonals(), {from: 1, to: 3, length: ""}])]] : [],
		...diagonals().length ? [["One diagonal less", () => diagonals().length > 1 ? setList("diagonals", diagonals().slice(0, -1)) : step({order: unset(state.order, here(at + "/diagonals"))})]] : []]),
];

const turned = () => [
	...edges().flatMap((_, i) => [field(`${at}/edges/${i}`, side(i)), ...i < angles().length ? [field(`${at}/angles/${i}`, "corner " + name(here(`${at}/angles/${i}`)))] : []]),
	hint("Seen from the front: the first side is the bottom one, the others follow to the right and round. Corners are measured on the inside. The last side closes the outline and is worked out."),
	wrong(at, at + "/edges", at + "/angles"),
	ways([["One more side", more], ...edges().length > 2 ? [["One side less", less]] : []]),
];

const fields = {
	rectangle: () => [],
	regular: () => [field(at + "/sides"), field(at + "/across"), field(at + "/size"), field(at + "/stand"), wrong(at)],
	around: () => [field(at + "/sides"), field(at + "/stand"), hint("The smallest outline of so many equal sides that shows all of the picture."), wrong(at)],
	edges: measured,
	angles: turned,
	square: () => [...["bottom", "right", "top", "left", "rising", "falling"].map(s => field("/art/sides/" + s)), hint("One diagonal says where the corners lie; a second one checks the tape."), wrong("/art/sides")],
};

/** stray are parts that do not go with the outline, each with its way out. */
const stray = () => parts.filter(p => problemsAt(here("/" + p.key)).some(q => q.code === "shape.not_together" && q.path === "/order" + here("/" + p.key)));

function waysOut() {
	const found = stray();
	return {key: found.map(p => p.key).join(), make: () => ({line: el("div", {class: "part-end"}, el("p", {class: "wrong", text: "This outline cannot be had with all the parts that are there:"}), ...found.map(p => button(`Take the ${p.name.toLowerCase()} away`, () => step({order: unset(state.order, here("/" + p.key))}), {class: "remedy", "data-away": p.key}))), update() {}})};
}

/** outline is the form. */
export const outline = () => [choice("outline", "its outline", kinds, kind, become), ...fields[kind()]?.() ?? [wrong(at)], ...stray().length ? [waysOut()] : []];

const chosen = rest => worked("/order" + here(rest));

/** sayArt says what art with an outline is. */
export function sayArt() {
	const what = word("/art/kind"), count = {path: "/order" + here(at + "/sides"), text: String(chosen(at + "/sides") ?? sides())};
	switch (kind()) {
	case "regular":
		return list(what, [count, " equal sides"], t(at + "/size") && say`${t(at + "/size")} ${choiceText(at + "/across", chosen(at + "/across") ?? "")}`);
	case "around":
		return list(what, t("/art/width") && say`${t("/art/width")} × ${t("/art/height")}`, [count, " equal sides around it"]);
	case "square":
		return list(what, "out of square", t("/art/sides/bottom") && say`bottom ${t("/art/sides/bottom")}, right ${t("/art/sides/right")}, top ${t("/art/sides/top")}, left ${t("/art/sides/left")}`);
	}
	const lengths = edges().map((_, i) => t(`${at}/edges/${i}`));
	return list(what, lengths.every(Boolean) ? ["sides of ", ...lengths.flatMap((l, i) => [i ? ", " : "", l])] : "sides as measured", kind() === "angles" && "one that closes it");
}

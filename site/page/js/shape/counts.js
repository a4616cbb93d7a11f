// Which fields count for a piece as it is, and how many sides it has.
import {given, here, problemsAt, worked} from "../state.js";

/** kind is how the art's outline is given: rectangle, square for one that is
    measured out of square, or as the order says. */
export function kind() {
	const art = given(here("/art")) ?? {};
	if (art.outline) return art.outline.by ?? "";
	return art.sides ? "square" : "rectangle";
}

const list = path => {
	const there = given(here(path));
	return Array.isArray(there) ? there : [];
};

export const faces = () => list("/frame/faces");
export const pitches = () => list("/frame/slope/pitches");
export const edges = () => list("/art/outline/edges");
export const angles = () => list("/art/outline/angles");
export const diagonals = () => list("/art/outline/diagonals");

/** sides is how many sides the panel has. */
export function sides() {
	switch (kind()) {
	case "regular":
	case "around":
		return Number(worked("/order" + here("/art/outline/sides")) ?? given(here("/art/outline/sides")) ?? 8);
	case "edges":
		return edges().length;
	case "angles":
		return edges().length + 1;
	}
	return 4;
}

const sized = () => ["rectangle", "around", ""].includes(kind());

/** hides reports whether a field of the order does not count for the piece as it
    is. One that is wrong is never hidden. */
export function hides(path) {
	if (problemsAt(path).length) return false;
	const rest = path.slice(here("/").length);
	if (rest === "art/width" || rest === "art/height") return !sized();
	if (/^art\/(varies|stretch)\//.test(rest)) return kind() !== "rectangle" && given(path) === undefined;
	return rest === "frame/face" && faces().length > 0;
}

const each = (list, path) => list.map((_, i) => path.replace("*", i));

/** lengths are the fields of the art's outline, and of the rails, that the pad goes
    through. */
export const lengths = () => ({
	art: [...{
		regular: ["art/outline/size"],
		edges: [...each(edges(), "art/outline/edges/*"), ...each(diagonals(), "art/outline/diagonals/*/length")],
		angles: [...each(edges(), "art/outline/edges/*"), ...each(angles(), "art/outline/angles/*")],
		square: ["bottom", "right", "top", "left", "rising", "falling"].map(side => "art/sides/" + side),
	}[kind()] ?? []],
	frame: [...each(faces(), "frame/faces/*"), ...each(pitches(), "frame/slope/pitches/*/angle"), ...pitches().length ? ["frame/slope/thickness"] : []],
});

// The rails of a frame: as wide as one another or not, lying flat or sloping.
import {given, here} from "../state.js";
import {unset} from "../pointer.js";
import {state} from "../state.js";
import {step} from "../steps.js";
import {say, list, t, frame} from "../parts.js";
import {field, choice, hint, wrong, ways, write, put, back} from "./forms.js";
import {faces, pitches, sides} from "./counts.js";
import {rail, side} from "./names.js";

/** turn takes a way of the frame away and keeps it, or puts another in its place. */
function turn(key, value) {
	if (given(here("/frame/" + key)) !== undefined) put(key, given(here("/frame/" + key)));
	if (value === null) step({order: unset(state.order, here("/frame/" + key))});
	else write("/frame/" + key, value);
}

/** fitted is a list made as long as there are sides; its last goes on. */
const fitted = list => Array.from({length: sides()}, (_, i) => list[i] ?? list.at(-1) ?? "");

const uneven = list => list.length > 0 && list.length !== sides();

const differ = on => turn("faces", on === "differ" ? fitted(back("faces") ?? [given(here("/frame/face")) ?? ""]) : null);

const widths = () => [
	...faces().map((_, i) => field(`/frame/faces/${i}`, rail(i))),
	hint("A width of zero: no rail along that side."), wrong("/frame/faces"),
	...uneven(faces()) ? [ways([["One width for each side", () => write("/frame/faces", fitted(faces()))]])] : [],
];

const metric = () => given("/units") !== "in";

const slope = on => turn("slope", on === "slope" ? back("slope") ?? {pitches: [{angle: "45"}], thickness: metric() ? "18 mm" : "3/4 in"} : null);

const alike = on => write("/frame/slope/pitches", on === "each" ? fitted(pitches()) : pitches().slice(0, 1));

const sloped = () => {
	const one = pitches().length < 2;
	return [
		choice("pitches", "they slope", {alike: "all alike", each: "each its own"}, () => pitches().length < 2 ? "alike" : "each", alike),
		...pitches().flatMap((_, i) => [field(`/frame/slope/pitches/${i}/angle`, one ? "pitch" : `${side(i)}, pitch`), field(`/frame/slope/pitches/${i}/from`, one ? "the pitch is counted" : `${side(i)}, counted`)]),
		field("/frame/slope/thickness"),
		hint("The face is then the width of the board up the slope. From flat, a side with no pitch lies against the wall; from vertical, it stands away from it."),
		wrong("/frame/slope", "/frame/slope/pitches"),
		...uneven(pitches()) && !one ? [ways([["One pitch for each side", () => write("/frame/slope/pitches", fitted(pitches()))]])] : [],
	];
};

/** rails is the form. */
export const rails = () => [
	choice("faces", "the rails are", {alike: "all alike", differ: "of different widths"}, () => given(here("/frame/faces")) === undefined ? "alike" : "differ", differ),
	...given(here("/frame/faces")) === undefined ? [] : widths(),
	choice("slope", "the sides", {flat: "lie flat", slope: "slope"}, () => given(here("/frame/slope")) === undefined ? "flat" : "slope", slope),
	...given(here("/frame/slope")) === undefined ? [] : sloped(),
	wrong("/frame"),
];

function widthsSaid() {
	const list = faces().map((_, i) => t(`/frame/faces/${i}`));
	return list.every(Boolean) ? ["faces ", ...list.flatMap((l, i) => [i ? ", " : "", l])] : "rails of different widths";
}

/** sayFrame says what a frame is whose rails differ or slope. */
export const sayFrame = () => list(frame("/frame", faces().length ? widthsSaid() : undefined),
	pitches().length > 0 && (pitches().length > 1 ? "sides slope, each its own way" : t("/frame/slope/pitches/0/angle") && given(here("/frame/slope/pitches/0/from")) ? say`sides slope ${t("/frame/slope/pitches/0/angle")} from ${given(here("/frame/slope/pitches/0/from"))}` : "sides slope"));

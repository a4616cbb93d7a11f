// Orders as files, new ones, and more than one piece.
import {el, button, byId, setText} from "./dom.js";
import {state, here} from "./state.js";
import {step} from "./steps.js";
import {ask} from "./engine.js";
import {openPad} from "./pad.js";
import {set} from "./pointer.js";
import {problem} from "./words.js";
import {sample} from "./sample.js";

function save() {
	const url = URL.createObjectURL(new Blob([JSON.stringify(state.order, null, "\t") + "\n"], {type: "application/json"}));
	const name = (state.order.job || "order").replace(/[^\p{L}\p{N} -]/gu, "").trim().slice(0, 60) || "order";
	el("a", {href: url, download: name + ".json"}).click();
	setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** read takes an order from text: whatever can be read of it, with its problems. */
export async function read(text) {
	const reply = await ask("work", {text, views: []}, "file");
	const problems = reply?.problems ?? reply?.data?.plan.problems ?? [];
	const broken = () => !JSON.parse(text).pieces.every(piece => piece && typeof piece === "object" && !Array.isArray(piece));
	if (!reply?.data?.plan.pieces?.length || broken()) return setText(byId("told-seen"), "This file holds no order: " + problems.slice(0, 3).map(problem).join(" "));
	setText(byId("told-seen"), "");
	step({order: JSON.parse(text), piece: 0, open: null, view: "make"});
}

const picker = el("input", {type: "file", accept: ".json,application/json", hidden: true, onchange: async () => {
	if (picker.files[0]) await read(await picker.files[0].text());
	picker.value = "";
}});

/** fromPicture starts anew: two numbers are asked, the rest is as usual. */
async function fromPicture() {
	const {name, ...piece} = (await sample()).pieces[0], {job, ...order} = await sample();
	step({order: {...order, units: state.order.units, ...(state.order.shop && {shop: state.order.shop}), pieces: [piece]}, piece: 0, open: null, view: "make"});
	openPad(here("/art/width"));
}

function another() {
	const pieces = [...state.order.pieces, {...state.order.pieces[state.piece], name: ""}];
	delete pieces.at(-1).name;
	step({order: set(state.order, "/pieces", pieces), piece: pieces.length - 1, open: {part: "art"}});
}

function without() {
	const pieces = state.order.pieces.filter((_, i) => i !== state.piece);
	step({order: set(state.order, "/pieces", pieces), piece: Math.max(0, state.piece - 1), open: null});
}

/** extras are what can be done with the whole order. */
export const extras = () => [
	button("Save as a file", save), button("Open a file", () => picker.click()), picker,
	button("Start from my picture", fromPicture), button("Add another piece like this", another),
	state.order.pieces.length > 1 ? button("Take this piece away", without, {class: "away"}) : null,
	button("Back to the sample", async () => step({order: await sample(), piece: 0, open: null})),
].filter(Boolean);

// Orders as files, new ones, and more than one piece.
import {el, button, byId, setText} from "./dom.js";
import {state, here} from "./state.js";
import {step} from "./steps.js";
import {ask} from "./engine.js";
import {openPad} from "./pad.js";
import {set} from "./pointer.js";
import {label, problem, sentence} from "./words.js";
import {sample, example, examples} from "./sample.js";
import {parsed} from "./order.js";

const told = text => setText(byId("told-seen"), text);

/** save offers the order as a file, whatever it holds. */
export function save() {
	const url = URL.createObjectURL(new Blob([JSON.stringify(state.order, null, "\t") + "\n"], {type: "application/json"}));
	const {job} = state.order, name = typeof job === "string" ? job.replace(/[^\p{L}\p{N} -]/gu, "").trim().slice(0, 60) : "";
	el("a", {href: url, download: (name || "order") + ".json"}).click();
	setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** read takes an order from text: whatever can be read of it, with its problems. A
    text that says something twice is refused: what is opened could say but one. */
export async function read(text) {
	const reply = await ask("work", {text, views: []}, "file");
	if (!reply || reply.fault) return;
	const problems = reply.problems ?? reply.data.plan.problems ?? [], order = parsed(text), twice = problems.filter(p => p.code === "duplicate");
	if (twice.length) return told("This file was not opened: " + twice.slice(0, 3).map(p => `${sentence(label(p.path))}: ${problem(p)}`).join(" "));
	if (!reply.data?.plan.pieces?.length || !order) return told(["This file holds no order.", ...problems.slice(0, 3).map(problem)].join(" "));
	told("");
	step({order, piece: 0, open: null, view: "make"});
}

const picker = el("input", {type: "file", accept: ".json,application/json", hidden: true, onchange: async () => {
	const [file] = picker.files;
	try {
		if (file) await read(await file.text());
	} catch (error) { // gone from the disk, or too large to hold
		told(`The file could not be read: ${error.message}`);
	}
	picker.value = "";
}});

/** fetched does what needs the sample or an example, or says that it is not to be had. */
const fetched = (use, from = sample) => async () => {
	try {
		use(await from());
	} catch (error) {
		told(`The sample could not be fetched: ${error.message}`);
	}
};

function begin(order) {
	step({order, piece: 0, open: null});
	scrollTo(0, 0); // the piece first
}

/** fromPicture starts anew: two numbers are asked, the rest is as usual. */
function fromPicture({job, ...order}) {
	const {name, ...piece} = order.pieces[0];
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
	button("Start from my picture", fetched(fromPicture)), button("Add another piece like this", another),
	state.order.pieces.length > 1 ? button("Take this piece away", without, {class: "away"}) : null,
	button("Back to the sample", fetched(begin)),
	el("p", {class: "hint examples", text: "Or start from an example:"}), ...Object.entries(examples).map(([name, text]) => button(text, fetched(begin, () => example(name)), {"data-example": name})),
].filter(Boolean);

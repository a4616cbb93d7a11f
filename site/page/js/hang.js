// The wall: where the hooks go, and what they have to carry.
import {el, byId, fill, button} from "./dom.js";
import {state, onChange, here, worked, piecePlan, given, text} from "./state.js";
import {step} from "./steps.js";
import {set} from "./pointer.js";
import {figure} from "./figure.js";
import {notesOf, element, signature} from "./notes.js";
import {label, sentence} from "./words.js";
import {openPart} from "./sheet.js";

const line = (name, ...figures) => figures.some(Boolean) ? el("div", {class: "fact"}, el("dt", {text: sentence(name)}), el("dd", {}, ...figures)) : null;

/** bears is what a hook carries the piece by. */
const bears = () => ({wire: "wire", sawtooth: "sawtooth"})[worked("/order" + here("/hang/by"))] ?? "ring";

/** marks are the hooks. Where the order does not say how much higher than where it
    bears the hole of a hook is, only the former is known. */
function marks() {
	const list = piecePlan().hang.marks ?? [];
	return list.map((mark, i) => {
		const at = here(`/hang/marks/${i}`), name = list.length === 1 ? "The hook" : i === 0 ? "Left hook" : "Right hook";
		const known = mark.nail.exact !== mark.bearing.exact, hint = (...what) => el("p", {class: "hint num"}, ...what);
		return el("div", {class: "nail"}, el("h2", {text: name}), el("p", {class: "cut-size"}, figure(at + (known ? "/nail" : "/bearing"))),
			...known ? [hint("nail hole above the floor"), hint("hook bears ", figure(at + "/bearing"), " above the floor")]
				: [hint(`the hook bears the ${bears()} here, above the floor`), hint("the nail hole is higher by what the hook adds")],
			hint(figure(at + "/across"), list.length === 1 ? " from the middle of the piece" : ` from the middle of the piece, to the ${i === 0 ? "left" : "right"}`));
	});
}

function loads() {
	const load = (key, name) => worked(here(`/hang/${key}/heaviest`)) && line(name, figure(here(`/hang/${key}/heaviest`)));
	return [
		line("hangers below the frame's top", figure(here("/hang/below/left")), worked(here("/hang/below/right"))?.text !== worked(here("/hang/below/left"))?.text && figure(here("/hang/below/right"))),
		line("between the hangers", figure(here("/hang/span"))), line("wire to cut", figure(here("/hang/wire"))), line("top of the wire below the frame's top", figure(here("/hang/wire_top"))),
		load("hook", "each hook carries at most"), load("hanger", "each hanger carries at most"), load("tension", "the wire carries at most"), line("weight at most", figure(here("/mass/heaviest"))),
	].filter(Boolean);
}

function content() {
	if (given(here("/hang")) === undefined) return [el("p", {class: "lead", text: "How this piece hangs is not decided yet."}), button("Hang it", () => step({order: set(state.order, here("/hang"), {})}), {class: "strong"})];
	if (!piecePlan()?.hang) return [el("p", {class: "lead", text: "Something in the order cannot be read yet."})];
	return [el("div", {class: "nails"}, ...marks()), el("dl", {class: "facts"}, ...loads()),
		button("Change how it hangs", () => step({view: "make", open: {part: "hang"}}), {class: "quiet"}), ...notesOf("hang").map(element)];
}

function update() {
	byId("hang").hidden = state.view !== "hang";
	if (state.view !== "hang" || !state.plan) return;
	fill(byId("hang"), here() + JSON.stringify(piecePlan()?.hang ?? null) + signature(notesOf("hang")) + (given(here("/hang")) === undefined), content);
}

export function begin() {
	onChange(update, "plan", "open");
}

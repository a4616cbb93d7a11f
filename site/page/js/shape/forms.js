// What the forms of shapes are made of. A form is a list of lines, each with a key
// that is another where it must be made anew, and the way to make it.
import {el, button, setText} from "../dom.js";
import {state, given, here, problemsAt} from "../state.js";
import {set} from "../pointer.js";
import {newest} from "../order.js";
import {step} from "../steps.js";
import {control, pick} from "../fields.js";
import {problem, sentence} from "../words.js";

/** write puts another value in the order at a place of the piece. */
export const write = (rest, value) => step({order: newest(set(state.order, here(rest), value), state.version)});

/** field is a field of the piece, under a name that says which side it belongs to. */
export const field = (rest, name) => ({key: rest + (name ?? ""), make: () => control(here(rest), name)});

/** choice is one of several texts by their values, which is not a field. */
export const choice = (key, name, texts, now, become) => ({key, make: () => {
	const {input, update} = pick(key, sentence(name), Object.entries(texts), become, now);
	return {line: el("div", {class: "field choice", "data-shape": key}, input), update};
}});

/** hint is a line of advice. */
export const hint = text => ({key: text, make: () => ({line: el("p", {class: "hint", text}), update() {}})});

const itself = (path, root) => path === root || path.startsWith(root + "/") && /^\d+$/.test(path.slice(root.length + 1)) && given(path.slice("/order".length)) === undefined;

/** wrong says what is wrong with a place itself, or with a side or corner of it that
    no field stands for. */
export const wrong = (...rests) => ({key: "wrong " + rests, make: () => {
	const line = el("p", {class: "wrong", role: "status"});
	return {line, update: () => {
		const found = rests.flatMap(rest => problemsAt(here(rest)).filter(p => itself(p.path, "/order" + here(rest))));
		setText(line, found.map(problem).join(" "));
		line.hidden = found.length === 0;
	}};
}});

/** ways are buttons beside one another, each a text and what it does. */
export const ways = list => ({key: list.map(w => w[0]).join(), make: () => ({line: el("div", {class: "part-end"}, ...list.map(([text, go]) => button(text, go, {class: "quiet", "data-keep": text}))), update() {}})});

// What was said in a way that counts no longer, by the piece and that way: it is
// there again when one turns back.
const aside = new Map();
const about = what => [state.order.job, state.piece, given(here("/name")), what].join("\n");

export const put = (what, value) => aside.set(about(what), value);
export const back = what => aside.get(about(what));

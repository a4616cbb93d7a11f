// How a figure came to be: a sentence whose terms can be touched and light up on
// the drawing, and the way back from it.
import {el, button, byId, fill, setClass} from "./dom.js";
import {state, onChange, worked, text} from "./state.js";
import {step, leave} from "./steps.js";
import {ask} from "./engine.js";
import {light} from "./drawing.js";
import {problem, say, sentence} from "./words.js";
import {name} from "./shapes.js";
import {openPad} from "./pad.js";
import {backwards} from "./backwards.js";

/** openFigure opens what stands at a path of the plan: a pad, or a working. */
export function openFigure(path) {
	if (path.startsWith("/order/")) return openPad(path.slice(6));
	const under = state.open?.part ? state.open : state.open?.under;
	step({open: {figure: path, under}});
}

/** terms are those of a formula that stand somewhere, as they are written. */
export function terms(expr, list = []) {
	if (expr?.term?.key) list.push(expr.term);
	expr?.args?.forEach(a => terms(a, list));
	return list;
}

/** split cuts a sentence at its terms: texts, and terms with their text. */
function split(line, list) {
	const pieces = [];
	let at = line.indexOf(" = ") + 3;
	pieces.push(line.slice(0, at));
	for (const term of list) {
		const name = say(term.key), from = line.indexOf(name, at);
		if (from < 0 || !term.path) continue;
		const rest = line.slice(from + name.length), length = rest.search(/ [-+x/=] |[(),]|, |$/);
		pieces.push(line.slice(at, from), {term, text: line.slice(from, from + name.length + Math.max(0, length))});
		at = from + name.length + Math.max(0, length);
	}
	pieces.push(line.slice(at));
	return pieces;
}

const touch = term => el("button", {type: "button", class: "term" + (term.term.path.startsWith("/order/") ? " given" : " worked"), text: term.text, "data-term": term.term.path,
	onpointerenter: () => light([term.term.path]), onfocus: () => light([term.term.path]), onpointerleave: () => light([state.open?.figure]), onclick: () => openFigure(term.term.path)});

const line = (text, list) => el("p", {class: "working num"}, ...split(text, list).map(p => typeof p === "string" ? el("span", {text: p.replaceAll(" x ", " × ").replaceAll(" - ", " − ")}) : touch(p)));

let entered = null; // the figure that the focus is to go to, once it stands there

async function show() {
	const path = state.open?.figure, box = byId("working");
	if (path && box.hidden) entered = path;
	box.hidden = !path;
	setClass(document.body, "with-working", path);
	if (!path) {
		if (!state.open?.pad) light([]);
		return;
	}
	if (worked(path) === undefined) return leave(true);
	const reply = await ask("explain", {order: state.order, path});
	if (!reply || reply.fault || state.open?.figure !== path) return;
	const d = reply.data, wrong = (reply.problems ?? []).filter(p => p.code !== "no_such_figure").map(problem).join(" "); // a number that was given has no working
	fill(box, path + (d ? d.text + d.rounding : wrong) + text(path), () => [
		el("div", {class: "pad-head"}, el("h2", {id: "working-name", tabindex: "-1"}, sentence(name(path)), el("span", {class: "num big", "data-path": path, text: text(path)})), button("Close", () => leave(false), {class: "quiet"})),
		...(d ? [line(d.text, terms(d.working.formula)), el("p", {class: "rounding num", text: "Shown: " + d.rounding.replaceAll(" x ", " × ")}), el("p", {class: "source", text: "Source: " + d.source})] : []),
		wrong && el("p", {class: "wrong", text: wrong}),
		backwards(path, d),
	].filter(Boolean));
	light([path]);
	if (entered === path) byId("working-name").focus({preventScroll: true});
	entered = null;
}

export function begin() {
	byId("working").addEventListener("keydown", e => { if (e.key === "Escape") leave(false); });
	onChange(show, "plan", "open");
}

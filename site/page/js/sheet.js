// The side sheet: a line for each part that says what it is now, and opens.
import {el, button, byId, setText, setAttr, setClass, fill, withFractions} from "./dom.js";
import {state, onChange, problemsAt} from "./state.js";
import {set, unset} from "./pointer.js";
import {step, leave} from "./steps.js";
import {parts, whole, pathOf, present, find} from "./parts.js";
import {control} from "./fields.js";
import {leaves} from "./schema.js";
import {notesOf, element, signature} from "./notes.js";
import {problem} from "./words.js";
import {extras} from "./files.js";
import {shapes} from "./shapes.js";

const lines = new Map(); // by the part's name
const seldom = new Set();  // parts whose seldom used settings are shown

export const openPart = key => step({open: {part: key, before: state.order}});

/** close closes a part: back to before it was opened, where nothing was changed. */
const close = () => leave((state.open.part ? state.open : state.open.under).before !== state.order);
const keyOf = part => whole.includes(part) ? part.name : part.key;
const isOpen = part => [state.open?.part, state.open?.under?.part].includes(keyOf(part));

function line(part) {
	const say = el("span", {class: "say"}), mark = el("span", {class: "mark"});
	const head = el("button", {type: "button", class: "part-line", "data-part-line": keyOf(part), onclick: () => isOpen(part) ? close() : openPart(keyOf(part))},
		el("span", {class: "part-name", text: part.name}), say, mark);
	const body = el("div", {class: "part-body"}), notes = el("div", {class: "part-notes"});
	const section = el("section", {class: "part", "aria-label": part.name}, el("h2", {}, head), notes, body);
	return {part, section, head, say, mark, body, notes, controls: []};
}

function settings(part) {
	const root = pathOf(part);
	const all = (part.only ? part.only.flatMap(k => leaves(`${root}/${k}`)) : leaves(root)).filter(p => !part.skip?.some(s => p.startsWith(`${root}/${s}`)) && !(part.shape && shapes()?.hides(p)));
	const first = part.main.map(m => `${root}/${m}`).filter(p => all.includes(p));
	return {first, rest: all.filter(p => !first.includes(p))};
}

function build(l) {
	const {first, rest} = settings(l.part), key = keyOf(l.part), more = seldom.has(key);
	const line = path => ({key: path, make: () => control(path)});
	const want = [...first.map(line), ...l.part.shape && shapes()?.[l.part.shape]() || [], ...(more ? rest : []).map(line)];
	if (!fill(l.body, pathOf(l.part) + want.map(w => w.key).join() + state.order.pieces.length, () => {
		l.controls = want.map(w => w.make());
		const toggle = rest.length > 0 && button(more ? "Less" : "More settings", () => { more ? seldom.delete(key) : seldom.add(key); update(); }, {class: "quiet", "data-keep": "more", "aria-expanded": String(more)});
		const away = l.part.add && button("Take it away", () => step({order: unset(state.order, pathOf(l.part)), open: null}), {class: "quiet away"});
		return [...l.controls.map(c => c.line), el("div", {class: "part-end"}, toggle, away, ...(l.part.name === "Order" ? extras() : []))];
	})) return;
}

function show(l) {
	const open = isOpen(l.part), wrong = problemsAt(pathOf(l.part) || "/units");
	const says = state.good || whole.includes(l.part) ? l.part.say() : wrong.length ? [problem(wrong[0])] : null;
	if (says) fill(l.say, JSON.stringify(says), () => says.flatMap(s => s.path ? el("span", {"data-path": s.path, text: s.text}) : withFractions(s)));
	const notes = notesOf(keyOf(l.part), open).filter(n => n.level !== "caution" || open);
	const worst = wrong.length || notes.some(n => n.level === "warning") ? "bad" : notes.some(n => n.level === "advice") ? "mind" : "";
	const count = notes.filter(n => n.level === "advice").length;
	setText(l.mark, worst === "bad" ? "!" : count ? String(count) : "");
	const marked = worst === "bad" ? "Does not work" : count ? `${count} to look at` : null;
	setAttr(l.mark, "role", marked && "img");
	setAttr(l.mark, "aria-label", marked);
	setClass(l.section, "mind", worst === "mind");
	setClass(l.section, "bad", worst === "bad");
	setClass(l.section, "open", open);
	setAttr(l.head, "aria-expanded", String(open));
	fill(l.notes, signature(notes), () => notes.map(element));
	l.body.hidden = !open;
	if (open) {
		build(l);
		l.controls.forEach(c => c.update());
	}
}

function update() {
	const box = byId("parts"), there = [...parts.filter(present), ...whole];
	for (const part of there) if (!lines.has(part)) lines.set(part, line(part));
	fill(box, there.map(p => p.name).join(), () => there.map(p => lines.get(p).section));
	there.forEach(p => show(lines.get(p)));
	const away = parts.filter(p => !present(p) && (!p.on || present(find(p.on))));
	fill(byId("add"), away.map(p => p.key).join(), () => away.map(p => button(p.add, () => add(p), {"data-add": p.key})));
}

function add(part) {
	const list = part.on && pathOf(part).replace(/\/\d$/, "");
	let order = state.order;
	if (list && !Array.isArray(list.split("/").slice(1).reduce((n, k) => n?.[k], order))) order = set(order, list, []);
	step({order: set(order, pathOf(part), part.fresh), open: {part: part.key}});
}

export function begin() {
	onChange(what => {
		update();
		if (what === "open" && state.open?.part) lines.get(find(state.open.part))?.section.scrollIntoView({block: "nearest"});
	}, "plan", "open");
}

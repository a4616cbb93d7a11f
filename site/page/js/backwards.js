// Fix a figure instead: say what it shall be, and which field may give way.
import {el, button, setText} from "./dom.js";
import {state, orderPath, text, worked, here} from "./state.js";
import {set, under} from "./pointer.js";
import {step} from "./steps.js";
import {ask} from "./engine.js";
import {terms} from "./working.js";
import {problem, sentence} from "./words.js";
import {name} from "./shapes.js";

/** givens are the fields of the order that a figure follows from. */
async function givens(path, first) {
	const seen = new Set([path]), found = [], queue = [first];
	for (let asked = 0; queue.length && asked < 24; asked++) {
		const working = queue.shift();
		for (const term of terms(working.formula)) {
			if (!term.path || seen.has(term.path)) continue;
			seen.add(term.path);
			const field = orderPath(term.path);
			if (field && under(field, here())) found.push(field);
			else if (!field) {
				const reply = await ask("explain", {order: state.order, path: term.path}, "explain " + term.path);
				if (reply?.data) queue.push(reply.data.working);
			}
		}
	}
	return found;
}

/** partner is the field that goes along with one: both sides of a mat alike. */
function partner(free) {
	const other = {left: "right", right: "left", top: "bottom", bottom: "top"}[free.split("/").at(-1)];
	if (!other || !free.includes("/borders/")) return {};
	const path = free.slice(0, free.lastIndexOf("/") + 1) + other;
	return {with: [path], move: worked("/order" + path) === worked("/order" + free) ? "same" : "step"};
}

/** use writes a try into the order: the field, and what moved with it. */
function use(free, moved, tried) {
	const order = moved.reduce((o, path, i) => set(o, path, tried.with[i]), set(state.order, free, tried.value));
	step({order, open: state.open.under ?? null});
}

const gives = (free, moved, tried) => el("p", {class: "answer"},
	el("span", {class: "num", text: `${sentence(name(free))} ${tried.text} gives ${tried.figure_text}.`}), button("Use it", () => use(free, moved, tried), {class: "strong", "data-use": free}));

async function solve(want, free, value, out) {
	const along = partner(free), moved = along.with ?? [];
	const reply = await ask("solve", {order: state.order, question: {free, want, value, ...along}});
	if (!reply || reply.fault) return;
	if (reply.problems) return out.replaceChildren(el("p", {class: "wrong", text: reply.problems.map(problem).join(" ")}));
	const s = reply.data;
	const marked = (s.on_tape ?? []).map(t => gives(free, moved, t)); // what a tape has a mark for
	if (s.found) out.replaceChildren(gives(free, moved, s.answer), ...marked.length ? [el("p", {class: "hint", text: "On the tape:"}), ...marked] : []);
	else out.replaceChildren(el("p", {class: "wrong num", text: s.reason.text}), ...marked.length ? marked : s.nearest.map(t => gives(free, moved, t)));
	out.scrollIntoView({block: "nearest"});
}

/** backwards is the form under a working. */
export function backwards(path, data) {
	if (!data) return el("div");
	const out = el("div", {role: "status"}), pick = el("div", {class: "chip-row"}), value = el("input", {type: "text", class: "num", id: "want", autocomplete: "off", value: text(path)});
	let free = "";
	const go = () => free && solve(path, free, value.value, out);
	const form = el("form", {class: "backwards", hidden: true, onsubmit: e => { e.preventDefault(); go(); }},
		el("label", {class: "row"}, el("span", {class: "name", text: `It shall be (${state.plan.order.units})`}), value),
		el("fieldset", {class: "chips"}, el("legend", {class: "name", text: "What may change for it"}), pick),
		el("button", {type: "submit", class: "strong", id: "solve", text: "Work it out"}), out);
	const ask1 = button("Fix this instead", async () => {
		ask1.hidden = true;
		form.hidden = false;
		value.focus();
		value.select();
		const found = await givens(path, data.working);
		if (!found.length) setText(out, "Nothing in the order moves this number.");
		pick.replaceChildren(...found.map((p, i) => {
			const radio = el("input", {type: "radio", name: "free", value: p, onchange: () => { free = p; out.replaceChildren(); }});
			if (i === 0) { radio.checked = true; free = p; }
			return el("label", {class: "chip"}, radio, el("span", {text: `${name(p)} ${text("/order" + p)}`}));
		}));
	}, {class: "strong", id: "fix"});
	return el("div", {}, ask1, form);
}

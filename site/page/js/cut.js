// What to cut, in the largest letters that fit, each with its tick.
import {el, byId, fill, setText} from "./dom.js";
import {state, onChange} from "./state.js";
import {cuts} from "./cutlist.js";
import {ticked, tick} from "./keep.js";
import {notes as all, element} from "./notes.js";
import {partOf} from "./parts.js";

function row(cut) {
	const key = cut.key, box = el("input", {type: "checkbox", class: "tick", "aria-label": `${cut.name} is cut`, onchange: () => { tick(key, box.checked); line.classList.toggle("done", box.checked); setDone(); }});
	box.checked = ticked.has(key);
	const line = el("li", {class: "cut" + (box.checked ? " done" : "")}, el("label", {class: "tick-box"}, box), el("div", {class: "cut-what"}, el("h2", {text: cut.name}), el("p", {class: "hint num"}, ...cut.hint())),
		el("p", {class: "cut-size"}, cut.count > 1 && el("span", {class: "times num", text: `${cut.count} ×`}), ...cut.size()));
	return line;
}

function setDone() {
	const list = cuts(), done = list.filter(c => ticked.has(c.key)).length;
	setText(byId("cut-done"), done ? `${done} of ${list.length} done` : "");
}

function update() {
	byId("cut").hidden = state.view !== "cut";
	if (state.view !== "cut" || !state.plan) return;
	const list = cuts(), notes = all().filter(n => n.level !== "advice" && partOf(n.path) !== "hang");
	const bad = !state.good || notes.some(n => n.level === "warning");
	fill(byId("cut-list"), state.good + list.map(c => c.key).join("|"), () => list.map(row));
	setText(byId("cut-wait"), state.good ? bad ? "Something here does not work yet. Do not cut before it is mended." : "" : "Nothing to cut: something in the order cannot be read yet.");
	fill(byId("cut-notes"), notes.map(n => n.text).join("|"), () => notes.map(element));
	setDone();
}

export function begin() {
	onChange(update, "plan", "open");
}

// The rim of the page: the name of the piece above, views and totals below.
import {el, byId, setText, setAttr, fill, button} from "./dom.js";
import {state, onChange, here, worked, text, given} from "./state.js";
import {set, unset} from "./pointer.js";
import {step, undo, canUndo} from "./steps.js";
import {figure, size} from "./figure.js";
import {refresh} from "./work.js";
import {openTicket} from "./ticket.js";

const views = {make: "Make", cut: "Cut", hang: "Hang"};

function go(view) {
	if (view === state.view) return;
	step({view, open: null});
	scrollTo(0, 0);
	refresh();
}

const metric = () => worked("/order/show/as") === "metric";

function units(to) {
	if (metric() !== (to === "mm")) step({order: set(state.order, "/show", {as: to === "mm" ? "metric" : "fraction"})});
}

function pieces() {
	const list = state.plan?.order.pieces ?? [], box = byId("which");
	const name = (p, i) => p.name || `Piece ${i + 1}`;
	fill(box, state.piece + JSON.stringify(list.map(p => [p.name, p.quantity])), () => {
		if (list.length < 2) return [el("h1", {text: list[0] ? name(list[0], 0) : "Fairmiter", "data-path": list[0]?.name && "/order/pieces/0/name"})];
		const select = el("select", {"aria-label": "Which piece", onchange: () => step({piece: Number(select.value), open: null}) ?? refresh()}, ...list.map((p, i) => el("option", {value: i, text: `${i + 1}  ${name(p, i)}`})));
		select.value = state.piece;
		return [el("h1", {}, select)];
	});
}

/** footage is how much molding it takes, wherever that stands. */
const footage = () => ["/shape/regular/footage", "/shape/footage"].map(here).find(text) ?? here("/frame/footage");

function foot() {
	const outside = here("/frame/outside");
	if (!state.good) return;
	fill(byId("totals"), [outside + "/width", outside + "/height", footage(), here("/mass/total")].map(p => worked(p)?.text).join("|"), () => [
		text(outside + "/width") && el("span", {class: "total"}, el("span", {class: "name", text: "outside"}), size(outside)),
		worked(here("/mass/total")) && el("span", {class: "total"}, el("span", {class: "name", text: "weighs"}), figure(here("/mass/total"))),
		text(footage()) && el("span", {class: "total"}, el("span", {class: "name", text: "molding"}), figure(footage())),
	].filter(Boolean));
}

function update(what) {
	document.body.dataset.view = state.view;
	for (const b of byId("views").querySelectorAll("button")) setAttr(b, "aria-pressed", String(b.dataset.view === state.view));
	byId("undo").disabled = !canUndo();
	byId("side").hidden = state.view !== "make";
	for (const b of byId("units").querySelectorAll("button")) setAttr(b, "aria-pressed", String((b.dataset.unit === "mm") === metric()));
	pieces();
	foot();
}

export function begin() {
	byId("views").append(...Object.entries(views).map(([view, text]) => button(text, () => go(view), {"data-view": view, "aria-pressed": "false"})));
	byId("units").append(button("in", () => units("in"), {"data-unit": "in", "aria-label": "in: show inches"}), button("mm", () => units("mm"), {"data-unit": "mm", "aria-label": "mm: show millimeters"}));
	byId("undo").addEventListener("click", undo);
	byId("print").addEventListener("click", openTicket);
	onChange(update, "plan", "open");
}

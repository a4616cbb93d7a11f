// The pad for one length of the order. What is typed goes into the order as it is
// and is read by the library; the drawing follows.
import {el, button, byId, setText, setAttr, setClass} from "./dom.js";
import {state, given, worked, problemsAt, text, onChange, isUsual} from "./state.js";
import {set, unset} from "./pointer.js";
import {step, amend, leave} from "./steps.js";
import {sequence} from "./parts.js";
import {required} from "./schema.js";
import {problem, sentence} from "./words.js";
import {name} from "./shapes.js";
import {newest} from "./order.js";
import {keys, fraction} from "./padkeys.js";
import {light} from "./drawing.js";

let ui = null, finer = false, back = null;

const orderUnit = () => worked("/order/units") ?? given("/units");
const shownUnit = () => worked("/order/show/as") === "metric" ? "mm" : "in";
const isLength = path => !/ (deg|g|N|%)$/.test(String(worked("/order" + path) ?? "")) && !String(worked("/order" + path) ?? "").endsWith("%");

/** openPad opens the pad for a field of the order. */
export function openPad(path) {
	const under = state.open?.part ? state.open : state.open?.under;
	step({open: {pad: path, before: state.order, under}});
	focus();
}

const focus = () => { ui.input.focus({preventScroll: true}); ui.input.select(); };
const touched = () => state.order !== state.open.before;

/** start is the text that the pad begins with, and the unit it is in. */
function begun(path) {
	const typed = given(path);
	if (typed === undefined || problemsAt(path).length) return {value: typed ?? "", unit: shownUnit()};
	const shown = text("/order" + path);
	if (!/^[\d.]/.test(shown)) { // about so much: the pad begins with what was typed
		const [, number, unit] = String(typed).match(/^(.*?)\s*(mm|in)?$/);
		return {value: number, unit: unit ?? orderUnit()};
	}
	return {value: / (in|ft)$/.test(shown) ? shown.slice(0, -3) : shown, unit: / mm$/.test(shown) ? "mm" : shownUnit()};
}

/** version is that of an order with a field: what the shop's saw does came later. */
const version = path => path.startsWith("/shop/saw/") ? state.version : 0;

function typed() {
	const {pad: path} = state.open, value = ui.input.value.trim();
	const bare = isLength(path) && ui.unit !== orderUnit() && /[\d⁄½¼¾⅛⅜⅝⅞]$/.test(value);
	if (value === "" && !required(path)) amend({order: unset(state.order, path)});
	else amend({order: newest(set(state.order, path, bare ? `${value} ${ui.unit}` : value), version(path))});
}

function key(k) {
	const {input} = ui, all = input.selectionStart === 0 && input.selectionEnd === input.value.length;
	const before = all && k.length > 0 ? "" : input.value;
	if (k === "⌫") input.value = all ? "" : input.value.slice(0, -1);
	else if (k === "±") input.value = input.value.startsWith("-") ? input.value.slice(1) : "-" + input.value;
	else if (k.includes("/")) input.value = fraction(before, k);
	else if (k === "+") input.value = input.value.trim() + " + ";
	else input.value = before + k;
	input.setSelectionRange(input.value.length, input.value.length);
	typed();
}

/** done closes the pad; next goes on to the next dimension. */
function done() {
	const path = "/order" + state.open.pad;
	back = path;
	leave(touched());
}

/** refocus goes back to the number that the pad was opened from. */
function refocus(path) {
	const places = [...document.querySelectorAll(`:is(button, [tabindex])[data-path="${CSS.escape(path)}"]`)].filter(e => e.getClientRects().length);
	(places.find(e => e.closest("#side")) ?? places[0])?.focus({preventScroll: true});
}

function next() {
	const list = sequence(), i = list.indexOf(state.open.pad), to = list[i + 1];
	if (i < 0 || !to || problemsAt(state.open.pad).length) return problemsAt(state.open.pad).length ? undefined : done();
	const {under} = state.open;
	if (touched()) {
		amend({open: under ?? null});
		openPad(to);
	} else {
		amend({open: {pad: to, before: state.order, under}});
	}
	focus();
}

const sides = path => /\/borders\/(left|right|top|bottom)$/.test(path);

function alike() {
	const path = state.open.pad, root = path.slice(0, path.lastIndexOf("/"));
	amend({order: ["left", "right", "top", "bottom"].reduce((o, side) => set(o, `${root}/${side}`, given(path)), state.order)});
}

function make() {
	ui = {unit: "in"};
	ui.name = el("h2", {id: "pad-name"});
	ui.input = el("input", {type: "text", class: "num", inputmode: "none", autocomplete: "off", spellcheck: "false", "aria-labelledby": "pad-name pad-unit", "aria-describedby": "pad-wrong", enterkeyhint: "next",
		oninput: typed, onkeydown: e => { if (e.key === "Enter") { e.preventDefault(); next(); } }});
	ui.toggle = button("", () => { ui.unit = ui.unit === "in" ? "mm" : "in"; typed(); draw(); ui.input.focus(); }, {class: "unit", id: "pad-unit"});
	ui.wrong = el("p", {class: "wrong", id: "pad-wrong", role: "status"});
	ui.usual = button("As usual", () => { amend({order: unset(state.order, state.open.pad)}); leave(true); }, {class: "quiet"});
	ui.alike = button("Same all round", alike, {class: "quiet"});
	ui.keys = el("div", {class: "keys"});
	ui.next = button("Next", next, {class: "strong"});
	byId("pad").append(el("div", {class: "pad-head"}, ui.name, ui.alike, ui.usual), el("div", {class: "pad-value"}, ui.input, ui.toggle), ui.wrong, ui.keys,
		el("div", {class: "pad-end"}, button("Done", done), ui.next));
	byId("pad").addEventListener("keydown", e => { if (e.key === "Escape") { e.stopPropagation(); done(); } });
}

function draw() {
	const path = state.open.pad;
	setText(ui.toggle, !isLength(path) ? "" : ui.unit === "in" ? "inches" : "millimeters");
	ui.toggle.hidden = !isLength(path);
	keys(ui.keys, {fractions: ui.unit === "in" && isLength(path), finer, signed: path === "/shop/saw/off"}, key, () => { finer = !finer; draw(); });
}

function update(what) {
	const box = byId("pad"), path = state.open?.pad;
	box.hidden = !path;
	setClass(document.body, "with-pad", path);
	if (!path) {
		ui.path = null;
		if (back && what === "open") { refocus(back); back = null; }
		return;
	}
	if (ui.path !== path) {
		const {value, unit} = begun(path);
		Object.assign(ui, {path, unit});
		ui.input.value = value;
		setText(ui.name, sentence(name(path)));
		draw();
	} else if (what === "open" && document.activeElement !== ui.input) {
		ui.input.value = begun(path).value;
	}
	ui.alike.hidden = !sides(path);
	ui.usual.hidden = required(path) || given(path) === undefined;
	setAttr(ui.input, "placeholder", isUsual(path) ? `usually ${text("/order" + path)}` : null);
	const [first] = problemsAt(path);
	setText(ui.wrong, first ? problem(first) : "");
	setAttr(ui.input, "aria-invalid", first ? "true" : null);
	light(["/order" + path]);
}

export function begin() {
	make();
	onChange(update, "plan", "open");
}

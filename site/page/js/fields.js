// The settings of one part, each as a control of its own, from the schema.
import {el, button, setText, setAttr, setClass} from "./dom.js";
import {given, isUsual, worked, text, spoken, problemsAt, state} from "./state.js";
import {set, unset} from "./pointer.js";
import {step} from "./steps.js";
import {openPad} from "./pad.js";
import * as schema from "./schema.js";
import {choice, problem, sentence} from "./words.js";
import {name as nameOf} from "./shapes.js";

const change = (path, value) => step({order: set(state.order, path, value)});
const usual = path => step({order: unset(state.order, path)});

/** control is the line of one field: what it is called, its value, what is wrong.
    One of several alike is called by the side that it belongs to. */
export function control(path, side) {
	const kind = schema.kind(path), name = sentence(side ?? nameOf(path));
	const wrong = el("p", {class: "wrong", id: "wrong" + path, hidden: true});
	const make = {choice: choices, count, date: words, name: words, measure}[kind];
	const {input, update} = make(path, name, wrong.id);
	const back = schema.required(path) || side || !["choice", "count"].includes(kind) ? null : button("as usual", () => usual(path), {class: "quiet", "aria-label": `${name}: as usual`});
	const line = el("div", {class: "field " + kind, "data-place": side && "", title: schema.field(path).description?.replace(/^\w+ (is|are|says|say) /, (_, verb) => verb.startsWith("say") ? "Says " : "")}, input, back, wrong);
	return {line, update: () => {
		update();
		setClass(line, "usual", isUsual(path));
		if (back) back.hidden = given(path) === undefined;
		const [first] = problemsAt(path);
		wrong.hidden = !first;
		setText(wrong, first ? problem(first) : "");
	}};
}

function measure(path, name, wrong) {
	const value = el("span", {class: "num"}), key = button("", () => openPad(path), {class: "value", "data-path": "/order" + path, "data-keep": path, "aria-describedby": wrong});
	key.append(value);
	return {input: el("div", {class: "row"}, el("span", {class: "name", text: name}), key), update: () => {
		setText(value, text("/order" + path) || "not set");
		setAttr(key, "aria-label", `${name}: ${key.textContent || "not set"}`);
		setAttr(key, "aria-description", spoken("/order" + path) || null);
	}};
}

function words(path, name, wrong) {
	const input = el("input", {type: schema.kind(path) === "date" ? "date" : "text", "aria-describedby": wrong, autocomplete: "off", "data-keep": path,
		onchange: () => input.value ? change(path, input.value) : usual(path)});
	return {input: el("label", {class: "row"}, el("span", {class: "name", text: name}), input), update: () => {
		if (document.activeElement !== input) input.value = given(path) ?? "";
	}};
}

function count(path, name, wrong) {
	const f = schema.field(path), now = () => Number(worked("/order" + path) ?? f.minimum);
	const shown = el("output", {class: "num", "data-path": "/order" + path});
	const go = by => change(path, Math.min(f.maximum, Math.max(f.minimum, now() + by)));
	const less = button("−", () => go(-1), {"aria-label": `${name}: one less`}), more = button("+", () => go(1), {"aria-label": `${name}: one more`});
	return {input: el("div", {class: "row", role: "group", "aria-label": name, "aria-describedby": wrong}, el("span", {class: "name", text: name}), el("span", {class: "count"}, less, shown, more)), update: () => {
		setText(shown, String(now()));
		less.disabled = now() <= f.minimum;
		more.disabled = now() >= f.maximum;
	}};
}

const choices = (path, name, wrong) => pick(path, name, schema.field(path).enum.map(v => [v, choice(path, v)]), v => change(path, v), () => worked("/order" + path) ?? given(path), wrong);

/** pick is a choice among values, each with its text: a row of them, or a list where
    they are many. */
export function pick(key, name, values, become, now, wrong) {
	if (values.length > 4) {
		const select = el("select", {"aria-describedby": wrong, "data-keep": key, onchange: () => become(select.value)}, ...values.map(([value, text]) => el("option", {value, text})));
		return {input: el("label", {class: "row"}, el("span", {class: "name", text: name}), select), update: () => { select.value = now() ?? ""; }};
	}
	const radios = values.map(([value]) => el("input", {type: "radio", name: key, value, "data-keep": `${key} ${value}`, onchange: () => become(value)}));
	const box = el("fieldset", {class: "chips", "aria-describedby": wrong}, el("legend", {class: "name", text: name}),
		...radios.map((r, i) => el("label", {class: "chip"}, r, el("span", {text: values[i][1]}))));
	return {input: box, update: () => {
		const chosen = now();
		radios.forEach(r => { r.checked = r.value === chosen; });
	}};
}

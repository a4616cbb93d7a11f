// The keys of the pad: digits, the eighths, the sixteenths between them, and the
// thirty-seconds on demand. They are marks of a tape, written as text.
import {el, fill} from "./dom.js";

const digits = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "⌫"];
const eighths = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];
const odd = of => Array.from({length: of / 2}, (_, i) => `${2 * i + 1}/${of}`);

/** fraction puts a fraction behind the whole number, in place of the one there. */
export function fraction(text, mark) {
	const whole = text.replace(/\s*\d+\s*\/\s*\d*\s*$/, "").trimEnd();
	return whole === "" ? mark : `${whole} ${mark}`;
}

const spoken = {"±": "the other way", "⌫": "take back one", ".": "point"};

/** keys makes the keys for inches or for millimeters. */
export function keys(box, {fractions, finer, signed}, press, more) {
	const key = (k, name) => el("button", {type: "button", class: name, text: k, "aria-description": spoken[k], onpointerdown: e => e.preventDefault(), onclick: () => press(k)});
	fill(box, `${fractions}${finer}${signed}`, () => [
		el("div", {class: "digits"}, ...digits.map(k => key(k, "digit")), signed && key("±", "digit")),
		fractions && el("div", {class: "fractions"},
			el("div", {class: "marks eighths"}, ...eighths.map(k => key(k, "fraction"))),
			el("div", {class: "marks sixteenths"}, ...odd(16).map(k => key(k, "fraction"))),
			finer && el("div", {class: "marks finest"}, ...odd(32).map(k => key(k, "fraction"))),
			el("button", {type: "button", class: "quiet", text: finer ? "coarser" : "finer", "data-keep": "finer", onclick: more})),
	].filter(Boolean));
}

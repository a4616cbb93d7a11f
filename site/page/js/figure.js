// A number of the plan, to be tapped for its working.
import {el} from "./dom.js";
import {text, spoken} from "./state.js";
import {name} from "./shapes.js";
import {openFigure} from "./working.js";

/** figure is a number that opens how it came to be. */
export const figure = (path, unit = "") => text(path) ? el("button", {type: "button", class: "figure num", "data-path": path, "data-keep": path, "aria-label": `${name(path)}: ${text(path)}${unit}`, "aria-description": spoken(path), text: text(path) + unit,
	onclick: () => openFigure(path)}) : null;

/** size is a width by a height. */
export const size = path => el("span", {class: "size num"}, figure(path + "/width"), el("span", {class: "by", text: "×"}), figure(path + "/height"));

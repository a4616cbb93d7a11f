// What is said over all that is open when the numbers cannot be worked out: because
// the library is lost, which only opening the page again mends, or for once.
import {el, byId, button} from "./dom.js";
import {state} from "./state.js";
import {isKept} from "./keep.js";
import {save} from "./files.js";
import {problem} from "./words.js";

let final = false;

const order = () => isKept() ? "Your order is kept in this browser." : "Your order could not be kept in this browser: save it as a file.";

/** gone says that nothing more is worked out, what happened, and what to do. */
export function gone(what, why) {
	if (final) return;
	final = true;
	byId("fault").replaceChildren(
		el("p", {}, el("strong", {text: what}), el("span", {text: ` The numbers here no longer follow the order: do not cut by them. ${order()} Open the page again to go on.`})),
		el("p", {class: "hint", text: `What happened: ${why}.`}),
		el("p", {class: "ways"}, button("Open the page again", () => location.reload(), {class: "strong"}), state.order && button("Save the order as a file", save)));
}

/** failed says that the order, as it is now, could not be worked out. */
export function failed(problems) {
	if (!final) byId("fault").replaceChildren(el("p", {}, el("strong", {text: "This could not be worked out."}), el("span", {text: ` ${problems.map(problem).join(" ")} ${order()} Undo the last change, or open the page again.`})));
}

/** well takes back what failed said. */
export function well() {
	const told = byId("fault");
	if (!final && told.firstChild) told.replaceChildren();
}

// Drawings of the library on the page, made to be tapped.
import {setClass} from "./dom.js";
import {draw} from "./picture.js";

/** show puts a drawing into a box where it is another than before. */
export function show(box, svg, quiet) {
	if (!svg || box.drawn === svg) return;
	box.drawn = svg;
	const focus = box.contains(document.activeElement) ? document.activeElement.id : "";
	if (!draw(box, svg, quiet)) return;
	if (focus && document.activeElement.id !== focus) document.getElementById(focus)?.focus({preventScroll: true});
	relight(box);
}

let lit = [];

function relight(box) {
	const names = lit.flatMap(path => path.match(/^\/order\/pieces\/\d+\/(mat\/under\/\d|[a-z]+)/)?.[1] ?? []);
	for (const e of box.querySelectorAll("[data-path]")) setClass(e, "lit", lit.includes(e.dataset.path));
	const found = box.querySelector("[data-path].lit");
	for (const e of box.querySelectorAll("[data-part]")) setClass(e, "lit", !found && names.includes(e.dataset.part));
}

/** light lights what stands at some paths of the plan, and nothing else. */
export function light(paths) {
	lit = paths;
	document.querySelectorAll(".drawing-box").forEach(relight);
}

const reach = 18; // pixels of the page that a finger may miss a number by

/** near is the number that a tap beside it was meant for. */
function near(box, {clientX: x, clientY: y, detail}) {
	if (!detail) return null; // no pointer
	let best = null, least = reach;
	for (const e of box.querySelectorAll(".tap")) {
		const r = e.querySelector(".hit").getBoundingClientRect();
		const far = Math.hypot(Math.max(r.left - x, 0, x - r.right), Math.max(r.top - y, 0, y - r.bottom));
		if (far < least) [best, least] = [e, far];
	}
	return best;
}

/** onTap tells which number or part of a drawing was tapped, or chosen by key. */
export function onTap(box, tap) {
	const chosen = e => {
		const number = e.target.closest?.("[data-path]") ?? near(box, e), part = e.target.closest?.("[data-part]");
		if (number) tap({path: number.dataset.path});
		else if (part) tap({part: part.dataset.part});
	};
	box.addEventListener("click", chosen);
	box.addEventListener("keydown", e => {
		if ((e.key === "Enter" || e.key === " ") && e.target.closest("svg")) {
			e.preventDefault();
			chosen(e);
		}
	});
}

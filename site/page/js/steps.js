// Steps into something, kept in the browser's history: going back undoes the last.
import {state, changed} from "./state.js";
import {keep} from "./keep.js";

const steps = new Map(); // snapshots by their number
let number = 0, counter = 0;

const snapshot = () => ({order: state.order, piece: state.piece, view: state.view, main: state.main, open: state.open});

function remember() {
	steps.set(number, snapshot());
	keep(state.order);
}

export function begin() {
	number = counter = Date.now();
	remember();
	history.replaceState({step: number, first: true}, "");
	addEventListener("popstate", event => {
		const before = {...state}, to = steps.get(event.state?.step);
		if (!to) { // from before a reload, whose steps are gone: nothing to undo
			history.replaceState({step: number, first: true}, "");
			return;
		}
		number = event.state.step;
		Object.assign(state, to);
		keep(state.order);
		if (["order", "piece", "view", "main"].some(key => before[key] !== state[key])) changed("order"); // another drawing
		changed("open");
	});
}

/** step goes into something, or does something, that going back undoes. */
export function step(change) {
	const before = state.order;
	Object.assign(state, change);
	try {
		history.pushState({step: counter + 1}, "");
		number = ++counter;
	} catch { /* a browser that takes only so many in a while: then it is undone with the one before */ }
	remember();
	if (before !== state.order) changed("order");
	changed("open");
}

/** amend changes where one is: no step of its own. */
export function amend(change) {
	const before = state.order;
	Object.assign(state, change);
	remember();
	if (before !== state.order) changed("order");
	if ("open" in change || "view" in change || "main" in change) changed("open");
}

/** leave closes what is open: back to before where nothing was changed in it. */
export function leave(touched) {
	if (touched || history.state?.first) amend({open: state.open?.under ?? null});
	else history.back();
}

export const canUndo = () => !history.state?.first;
export const undo = () => history.back();

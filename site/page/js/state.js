// What the page knows: the order as it was typed, its plan, and what is open.
import * as pointer from "./pointer.js";

export const state = {
	order: null,   // what the framer said
	plan: null,    // the newest plan
	good: false,   // whether the plan's piece was worked
	fields: {},    // the texts of the plan's order, by path
	piece: 0,
	view: "make",  // make, cut or hang
	main: "front", // the large drawing
	views: ["front", "section", "back"], // what there are drawings of
	version: 0,    // the newest version of orders
	open: null,    // {part}, {pad, …}, {figure} or {ticket}
};

const listeners = [];
/** onChange has f called after some kinds of change, with the kind. */
export const onChange = (f, ...kinds) => listeners.push({f, kinds});
/** changed tells everyone what changed: "order"; "drawn", the drawings of a new
    plan, which are to be seen first; "plan", all that follows from it; "open". */
export const changed = what => { for (const {f, kinds} of listeners) if (kinds.includes(what)) f(what); };

/** here is the place of the current piece in the order, with rest below it. */
export const here = (rest = "") => `/pieces/${state.piece}${rest}`;
/** mainView is the large drawing that the piece has. */
export const mainView = () => state.view === "hang" ? "back" : state.views.includes(state.main) ? state.main : "front";

export const given = path => pointer.at(state.order, path);
export const worked = path => state.plan && pointer.at(state.plan, path);
export const pieceOrder = () => given(here()) ?? {};
export const piecePlan = () => state.plan?.pieces?.[state.piece] ?? null;

/** orderPath is the path in the order of one in the plan, null of a figure. */
export const orderPath = path => path.startsWith("/order/") ? path.slice(6) : null;

/** isUsual reports whether the shop's default stands at a path of the order. */
export const isUsual = path => (state.plan?.defaults ?? []).some(d => pointer.under("/order" + path, d));

/** problemsAt are what is wrong at a path of the order or below it. */
export const problemsAt = path => (state.plan?.problems ?? []).filter(p => pointer.under(p.path, "/order" + path));

/** text is how a field of the order or a figure of the plan is written. */
export function text(path) {
	const mine = orderPath(path);
	if (mine === null) return worked(path)?.text ?? "";
	return state.fields[mine]?.text ?? String(worked(path) ?? "");
}

export function spoken(path) {
	const mine = orderPath(path);
	return (mine === null ? worked(path)?.spoken : state.fields[mine]?.spoken) ?? text(path);
}

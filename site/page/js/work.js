// Has the order worked out whenever it changes: first what is seen large, then,
// when the framer pauses, the small pictures.
import {ask} from "./engine.js";
import {state, changed, onChange} from "./state.js";

export const drawings = {}; // SVG text by view
let later = 0, failed = () => {};

const small = () => state.view === "make" ? ["front", "section", "back"].filter(v => v !== state.main) : [];
const large = () => state.view === "hang" ? "back" : state.main;

let sheet = null;

/** paper is how large a drawing is to be. It is measured once, and when the box
    changes: to ask for it makes the browser lay the page out. */
const paper = () => sheet ??= measured();

function measured() {
	const box = document.getElementById("main-drawing").getBoundingClientRect();
	if (sheet && box.width === 0) return sheet; // not shown
	const more = box.width > 600 ? 1.05 : 1.25; // a small piece is drawn larger, with smaller letters
	return {width: Math.max(240, Math.round(box.width * more)), height: Math.max(240, Math.round(box.height * more))};
}

async function work(views) {
	const order = state.order;
	let reply;
	try {
		reply = await ask("work", {order, views, piece: state.piece, paper: paper(), interactive: true});
	} catch (error) {
		return failed(error);
	}
	if (!reply) return;
	if (reply.problems) return failed(new Error(reply.problems.map(p => p.code).join(", ")));
	if (order !== state.order) return;
	const {plan, fields} = reply.data;
	state.plan = plan;
	state.fields = fields ?? {};
	state.good = plan.pieces?.[state.piece]?.worked ?? false;
	if (state.good) Object.assign(drawings, reply.data.drawings);
	changed("drawn");
	await painted();
	if (state.plan === plan) changed("plan");
}

/** painted comes when what was changed is on the screen, or would be if the page
    were looked at. */
const painted = () => new Promise(done => {
	requestAnimationFrame(() => setTimeout(done));
	setTimeout(done, 100);
});

export async function refresh() {
	clearTimeout(later);
	await work(state.view === "cut" ? [] : [large()]);
	// Only then: a newer question overtakes one that waits, and the large drawing
	// must not be the one that is left behind.
	clearTimeout(later);
	if (state.view !== "cut") later = setTimeout(() => small().length && work(small()), 400);
}

export function begin(onFault) {
	failed = onFault;
	onChange(refresh, "order");
	let before = null;
	new ResizeObserver(() => {
		const now = sheet = measured();
		if (before && Math.abs(now.width - before.width) + Math.abs(now.height - before.height) < 24) return;
		if (before && state.view !== "cut") refresh();
		before = now;
	}).observe(document.getElementById("main-drawing"));
}

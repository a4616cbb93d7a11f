// Has the order worked out whenever it changes: first the large drawing, which the
// eye follows while one types; when that is painted all the numbers; and when the
// framer pauses the small pictures.
import {ask} from "./engine.js";
import {state, changed, onChange, mainView} from "./state.js";
import {failed, well} from "./fault.js";

export const drawings = {}; // SVG text by view
let later = 0;

const large = mainView;
const small = () => state.view === "make" ? state.views.filter(v => v !== large()) : [];

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

/** answer is what the library makes of the order, null where it made nothing, which
    is then said, or where a newer edit has overtaken the question. */
async function answer(kind, fields) {
	const {order, piece} = state;
	const reply = await ask("work", {order, piece, paper: paper(), interactive: true, ...fields}, kind);
	if (!reply || reply.fault || order !== state.order || piece !== state.piece) return null;
	if (reply.problems) failed(reply.problems);
	else well();
	return reply.data ?? null;
}

function take(worked, pictures) {
	state.good = worked;
	if (worked) Object.assign(drawings, pictures);
	changed("drawn");
}

async function draw(kind, views) {
	const data = await answer(kind, {views, bare: true});
	if (data) take(data.worked, data.drawings);
	return data !== null;
}

async function plan(views) {
	const data = await answer("plan", {views});
	if (!data) return;
	state.plan = data.plan;
	state.fields = data.fields;
	const before = large();
	state.views = data.views;
	for (const view of Object.keys(drawings)) if (!state.views.includes(view)) delete drawings[view]; // of another piece
	take(data.plan.pieces?.[state.piece]?.worked ?? false, data.drawings);
	changed("plan");
	if (large() !== before && state.view !== "cut") await draw("large", [large()]);
}

/** painted comes when what was changed is on the screen, or would be if the page
    were looked at. */
const painted = () => new Promise(done => {
	requestAnimationFrame(() => setTimeout(done));
	setTimeout(done, 100);
});

export async function refresh() {
	const {order, view} = state;
	clearTimeout(later);
	if (view === "cut" || !state.plan) await plan(view === "cut" ? [] : [large()]);
	else if (await draw("large", [large()])) {
		await painted();
		if (order === state.order) await plan([]);
	}
	clearTimeout(later);
	if (view !== "cut") later = setTimeout(() => small().length && draw("small", small()), 400);
}

export function begin() {
	onChange(refresh, "order");
	let before = null;
	new ResizeObserver(() => {
		before ??= sheet; // that a drawing was asked for already
		const now = sheet = measured();
		if (before && Math.abs(now.width - before.width) + Math.abs(now.height - before.height) < 24) return;
		if (before && state.view !== "cut") refresh();
		before = now;
	}).observe(document.getElementById("main-drawing"));
}

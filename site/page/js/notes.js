// What to know about a piece: notes beside the part they belong to, each with
// its ways out as buttons.
import {el, button, byId, setText} from "./dom.js";
import {state, piecePlan, orderPath, onChange} from "./state.js";
import {set} from "./pointer.js";
import {step} from "./steps.js";
import {partOf} from "./parts.js";
import {kind} from "./schema.js";
import {sentence} from "./words.js";
import {name} from "./shapes.js";

/** notes are all notes of the piece and of the order. */
export const notes = () => [...(piecePlan()?.notes ?? []), ...(state.plan?.notes ?? [])];

/** notesOf are the notes on a part; with ways out, those too that it can mend. */
export const notesOf = (key, waysOut) => notes().filter(n => partOf(n.path) === key || waysOut && n.changes?.some(c => partOf(c.path) === key));

/** mend sets one field as a note proposes. */
const mend = ({path, to}) => step({order: set(state.order, orderPath(path), kind(orderPath(path)) === "count" ? Number(to) : to)});

const marks = {warning: "Does not work", advice: "Better otherwise", caution: "Take care"};

/** place is the rail or board that a note is about, where there are several. */
const place = path => /\/shape\/(rails|slope)\/\d/.test(path) && el("strong", {class: "place", "data-place": "", text: sentence(name(path)) + ". "});

/** element is one note. */
export const element = note => el("div", {class: "note " + note.level, "data-code": note.code},
	el("p", {}, el("strong", {text: marks[note.level] + ". "}), place(note.path), el("span", {text: note.text})),
	...(note.changes ?? []).filter(c => orderPath(c.path)).map(c => button(sentence("make the " + c.text), () => mend(c), {class: "remedy"})));

/** signature changes with what the notes say. */
export const signature = list => list.map(n => n.text + (n.changes ?? []).map(c => c.text).join()).join("|");

/** announce tells a listener what turned up, when the typing has paused. */
export function announce() {
	let timer = 0, before = null;
	onChange(() => {
		if (!state.good) return;
		clearTimeout(timer);
		timer = setTimeout(() => {
			const now = notes().filter(n => n.level === "warning").map(n => n.text);
			const fresh = before ? now.filter(text => !before.includes(text)) : [];
			if (before && (fresh.length || now.length < before.length)) setText(byId("told"), fresh.length ? fresh.join(" ") : "Mended.");
			before = now;
		}, 700);
	}, "plan");
}

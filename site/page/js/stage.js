// The piece, large, and its other sides as small pictures beside it.
import {el, byId, setClass, setText, setAttr} from "./dom.js";
import {state, onChange, mainView} from "./state.js";
import {amend} from "./steps.js";
import {drawings, refresh} from "./work.js";
import {show, onTap} from "./drawing.js";
import {openFigure} from "./working.js";
import {openPart} from "./sheet.js";
import {find, present} from "./parts.js";
import {openPad} from "./pad.js";
import {here} from "./state.js";
import {say, sentence} from "./words.js";

const names = {front: "Front", section: "Section", back: "Back", rails: "Rails", setup: "Saw"};
const nameOf = view => names[view] ?? sentence(say(view));

const opens = {wire: "hang", hanger: "hang", hook: "hang", dust_cover: "Shop"};

function tapped({path, part}) {
	if (path) return openFigure(path);
	const key = opens[part] ?? part, known = find(key);
	if (known && present(known)) state.view === "make" ? openPart(key) : openPad(here("/hang/center"));
}

function thumb(view) {
	const box = el("span", {class: "drawing-box", "aria-hidden": "true"});
	return el("button", {type: "button", class: "thumb", "data-view": view, "aria-description": "show it large", onclick: () => {
		const before = mainView();
		amend({main: view});
		byId(`thumb-${before}`)?.querySelector("button")?.focus({preventScroll: true});
		refresh();
	}}, box, el("span", {class: "caption", text: nameOf(view)}));
}

function place(name) {
	byId("thumbs").append(el("div", {id: `thumb-${name}`, hidden: true}, thumb(name)));
}

function update() {
	const main = byId("main-drawing"), view = mainView();
	setAttr(byId("stage"), "data-view", view);
	show(main, drawings[view]);
	setClass(main, "stale", state.plan && !state.good);
	for (const name of state.views) if (!byId(`thumb-${name}`)) place(name);
	setClass(byId("thumbs"), "many", state.views.length > 3);
	for (const item of byId("thumbs").children) {
		const name = item.id.slice("thumb-".length);
		item.hidden = name === view || state.view !== "make" || !state.views.includes(name);
		if (!item.hidden) show(item.querySelector(".drawing-box"), drawings[name], true);
	}
	const text = state.plan && !state.good ? "As it was before: something in the order cannot be read yet." : "";
	setText(byId("stale"), text);
}

export function begin() {
	for (const item of byId("thumbs").children) item.append(thumb(item.id.slice("thumb-".length)));
	onTap(byId("main-drawing"), tapped);
	onChange(update, "drawn", "open");
}

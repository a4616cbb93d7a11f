// The ticket, to be looked at and printed.
import {el, byId, button, setClass, withFractions} from "./dom.js";
import {state, onChange} from "./state.js";
import {step, leave} from "./steps.js";
import {ask} from "./engine.js";
import {problem} from "./words.js";

export const openTicket = () => step({open: {ticket: true}});

// What a ticket is made of; anything else is left out.
const elements = /^(article|section|div|figure|figcaption|table|tbody|tr|th|td|h[1-6]|p|ul|ol|li|strong|em|span|br|svg|g|path|rect|circle|line|polygon|text|tspan|title|desc)$/;
const attributes = /^(class|id|scope|role|dir|direction|xmlns|viewBox|width|height|x|y|x1|y1|x2|y2|cx|cy|r|d|points|transform|fill|fill-rule|fill-opacity|stroke[a-z-]*|font-size|font-weight|text-anchor|text-decoration|aria-labelledby|aria-label|data-path|data-part)$/;

function clean(node) {
	for (const e of [node, ...node.querySelectorAll("*")]) {
		if (!elements.test(e.localName)) {
			e.remove();
			continue;
		}
		for (const a of [...e.attributes]) {
			if (!attributes.test(a.name)) e.removeAttribute(a.name);
			else if (a.name === "id" || a.name === "aria-labelledby") e.setAttribute(a.name, a.value.split(" ").map(n => "ticket-" + n).join(" "));
		}
	}
	for (const e of node.querySelectorAll("p, td, th, h2, h3, h4")) setFractions(e);
	return node;
}

/** setFractions sets the fractions of a plain text. */
function setFractions(e) {
	if (!e.childElementCount) e.replaceChildren(...withFractions(e.textContent));
}

async function update(what) {
	const open = Boolean(state.open?.ticket), box = byId("ticket");
	const was = !box.hidden;
	box.hidden = !open;
	setClass(document.body, "with-ticket", open);
	byId("page").inert = open;
	if (!open || what === "order") return;
	const reply = await ask("ticket", {order: state.order, form: "html", working: byId("ticket-working").checked});
	if (!reply || reply.fault || !state.open?.ticket) return;
	if (reply.problems) return byId("ticket-sheet").replaceChildren(el("p", {class: "wrong", text: reply.problems.map(problem).join(" ")}));
	const article = new DOMParser().parseFromString(reply.data.text, "text/html").querySelector("article");
	byId("ticket-sheet").replaceChildren(clean(document.importNode(article, true)));
	if (!was) byId("ticket-print").focus();
}

export function begin() {
	const working = el("input", {type: "checkbox", id: "ticket-working", onchange: () => update("open")});
	byId("ticket-bar").append(button("Print", () => print(), {class: "strong", id: "ticket-print"}), el("label", {class: "check"}, working, "with workings"), button("Back to the piece", () => leave(false), {id: "ticket-back"}));
	byId("ticket").addEventListener("keydown", e => { if (e.key === "Escape") leave(false); });
	onChange(update, "order", "plan", "open");
}

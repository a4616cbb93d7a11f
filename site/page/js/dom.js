// Elements, made and changed as text only: nothing that an order says becomes
// markup.

/** el makes an element; names beginning with "on" listen, "text" is its text. */
export function el(name, attributes = {}, ...children) {
	const e = document.createElement(name);
	for (const [key, value] of Object.entries(attributes)) put(e, key, value);
	e.append(...children.filter(c => c !== null && c !== undefined && c !== false));
	return e;
}

function put(e, key, value) {
	if (value === undefined || value === null || value === false) return;
	if (key === "text") e.replaceChildren(...withFractions(value));
	else if (key.startsWith("on")) e.addEventListener(key.slice(2), value);
	else e.setAttribute(key, value === true ? "" : value);
}

/** withFractions is a text with its fractions apart, to be set diagonally and kept
    on one line with the whole number before them. */
export function withFractions(value) {
	return String(value).split(/(?<![\d/])((?:\d+ )?\d+\/\d+)(?![\d/])/).map((part, i) => {
		if (i % 2 === 0) return part;
		const number = document.createElement("span"), fraction = document.createElement("span");
		const cut = part.lastIndexOf(" ") + 1;
		number.className = "mixed";
		fraction.className = "frac";
		fraction.textContent = part.slice(cut);
		number.append(part.slice(0, cut), fraction);
		return number;
	});
}

/** setText writes a text where it is another than before. */
export function setText(e, text) {
	if (e.textContent !== text) e.replaceChildren(...withFractions(text));
}

/** setAttr writes an attribute where it is another; null takes it away. */
export function setAttr(e, name, value) {
	if (value === null || value === false) e.removeAttribute(name);
	else if (e.getAttribute(name) !== String(value)) e.setAttribute(name, value);
}

/** setClass switches a class. */
export function setClass(e, name, on) {
	e.classList.toggle(name, Boolean(on));
}

/** fill replaces the children where their signature is another than before. */
export function fill(e, signature, make) {
	if (e.signature === signature) return false;
	e.signature = signature;
	const focus = e.contains(document.activeElement) && document.activeElement.dataset.keep;
	e.replaceChildren(...make());
	if (focus) e.querySelector(`[data-keep="${CSS.escape(focus)}"]`)?.focus();
	return true;
}

export const byId = id => document.getElementById(id);

/** button is a button that says what happens. */
export const button = (text, onclick, attributes = {}) => el("button", {type: "button", text, onclick, ...attributes});

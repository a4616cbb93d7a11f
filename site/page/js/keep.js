// The order as text in this browser, under one name.
import {parsed} from "./order.js";

const name = "fairmiter.order", ticks = "fairmiter.ticks";

const read = key => { try { return localStorage.getItem(key); } catch { return null; } };
const write = (key, text) => { try { localStorage.setItem(key, text); return true; } catch { return false; /* a frame without storage: the order lives as long as the page */ } };

let newest = null, later = 0, good = true, aside = false;

/** keep keeps the order, once its numbers are on the screen; a page that goes
    away keeps it at once. */
export function keep(order) {
	newest = order;
	later ||= setTimeout(now, 100);
}

function now() {
	clearTimeout(later);
	later = 0;
	if (newest) good = write(name, JSON.stringify(newest));
	newest = null;
}

/** isKept keeps the order now and reports whether that could be done. */
export function isKept() {
	now();
	return good;
}

addEventListener("pagehide", now);
document.addEventListener("visibilitychange", now);

/** kept is the order that was kept, or null. What is no order is put aside, as the
    next one takes its place. */
export function kept() {
	const text = read(name), order = text && parsed(text);
	if (text && !order) aside = write(name + ".unread", text);
	return order || null;
}

/** unread reports whether what was kept had to be put aside. */
export const unread = () => aside;

function done() {
	try {
		const list = JSON.parse(read(ticks));
		return Array.isArray(list) ? list : [];
	} catch {
		return [];
	}
}

/** ticked are the cuts that are done; a cut that comes out otherwise is another. */
export const ticked = new Set(done());

export function tick(key, on) {
	if (on) ticked.add(key);
	else ticked.delete(key);
	write(ticks, JSON.stringify([...ticked].slice(-500)));
}

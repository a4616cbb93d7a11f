// The order as text in this browser, under one name.
const name = "fairmiter.order", ticks = "fairmiter.ticks";

const read = key => { try { return localStorage.getItem(key); } catch { return null; } };
const write = (key, text) => { try { localStorage.setItem(key, text); } catch { /* a frame without storage: the order lives as long as the page */ } };

let newest = null, later = 0;

/** keep keeps the order, once its numbers are on the screen; a page that goes
    away keeps it at once. */
export function keep(order) {
	newest = order;
	later ||= setTimeout(now, 100);
}

function now() {
	clearTimeout(later);
	later = 0;
	if (newest) write(name, JSON.stringify(newest));
	newest = null;
}

addEventListener("pagehide", now);
document.addEventListener("visibilitychange", now);

export function kept() {
	try {
		const order = JSON.parse(read(name));
		return order && Array.isArray(order.pieces) && order.pieces.length ? order : null;
	} catch {
		return null;
	}
}

/** ticked are the cuts that are done; a cut that comes out otherwise is another. */
export const ticked = new Set((() => { try { return JSON.parse(read(ticks)) ?? []; } catch { return []; } })());

export function tick(key, on) {
	if (on) ticked.add(key);
	else ticked.delete(key);
	write(ticks, JSON.stringify([...ticked].slice(-500)));
}

// What the page takes for an order: an object with a piece or more, each an object.
// What is in them may be anything; the library says what is wrong with it.
const isObject = value => value !== null && typeof value === "object" && !Array.isArray(value);

export const isOrder = order => isObject(order) && Array.isArray(order.pieces) && order.pieces.length > 0 && order.pieces.every(isObject);

/** newest is an order as one of a version, where it is of an older one: what was
    written into it may be a field that the older one lacks. */
export const newest = (order, version) => typeof order.version === "number" && order.version < version ? {...order, version} : order;

/** parsed is the order that a text holds, null of any other text. It can be written
    again, which one that is too deep cannot. */
export function parsed(text) {
	try {
		const order = JSON.parse(text);
		return isOrder(order) && JSON.stringify([order], null, "\t") ? order : null;
	} catch {
		return null;
	}
}

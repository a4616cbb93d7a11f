// JSON Pointers (RFC 6901) into an order or a plan.

export const keys = path => path.split("/").slice(1).map(k => k.replaceAll("~1", "/").replaceAll("~0", "~"));
export const join = list => list.map(k => "/" + String(k).replaceAll("~", "~0").replaceAll("/", "~1")).join("");
export const last = path => keys(path).at(-1) ?? "";

/** at is what stands at a path, or undefined. */
export function at(root, path) {
	let value = root;
	for (const key of keys(path)) {
		if (value === null || typeof value !== "object" || !Object.hasOwn(value, key)) return undefined;
		value = value[key];
	}
	return value;
}

/** under reports whether path is root or lies below it. */
export const under = (path, root) => path === root || path.startsWith(root + "/");

/** set is root with another value at a path; what lies beside it is shared. */
export function set(root, path, value) {
	const change = (node, [key, ...rest]) => {
		if (key === undefined) return value;
		const copy = Array.isArray(node) ? [...node] : {...node};
		copy[key] = change(Object.hasOwn(copy, key) ? copy[key] : {}, rest);
		return copy;
	};
	return change(root, keys(path));
}

/** unset is root without what stands at a path. */
export function unset(root, path) {
	const list = keys(path), key = list.pop(), parent = at(root, join(list));
	if (parent === undefined || !Object.hasOwn(parent, key)) return root;
	if (Array.isArray(parent)) return set(root, join(list), parent.filter((_, i) => i !== Number(key)));
	const {[key]: gone, ...rest} = parent;
	return set(root, join(list), rest);
}

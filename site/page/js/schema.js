// What an order can hold, from its JSON Schema.
import {keys} from "./pointer.js";

let root = {};

export async function load() {
	root = await (await fetch("order.schema.json")).json();
}

/** field is the schema of the field at a path of the order. */
export function field(path) {
	let node = root;
	for (const key of keys(path)) node = node?.type === "array" ? node.items : node?.properties?.[key];
	return node;
}

/** leaves are the paths of all fields below a path, in the order of the schema. */
export function leaves(path) {
	const node = field(path);
	if (!node || node.type === "array") return [];
	if (node.type !== "object") return [path];
	return Object.keys(node.properties).flatMap(key => leaves(path + "/" + key));
}

/** required reports whether the field at a path has no default. */
export function required(path) {
	const cut = path.lastIndexOf("/");
	const parent = field(path.slice(0, cut)), list = parent?.required ?? parent?.anyOf?.[0].required;
	return parent?.type === "array" || (list?.includes(path.slice(cut + 1)) ?? false);
}

/** kind is how a field is set: choice, count, name, date or measure. */
export function kind(path) {
	const f = field(path);
	if (f?.enum) return "choice";
	if (f?.type === "integer") return "count";
	if (f?.pattern?.includes("{4}")) return "date";
	return f?.minLength || f?.pattern ? "measure" : "name";
}

// A drawing as the library writes it, made of elements here and kept like the text
// of the next one. From key to key only numbers and places change, and only those
// are touched: to read a whole drawing anew, and lay it out, takes a slow tablet
// longer than a key may take.

const escaped = /&(?:#(\d+)|#x([0-9a-fA-F]+)|(amp|lt|gt|quot|apos));/g;
const named = {amp: "&", lt: "<", gt: ">", quot: "\"", apos: "'"};

const plain = text => text.includes("&") ? text.replace(escaped, (_, d, x, name) => name ? named[name] : String.fromCodePoint(d ? +d : parseInt(x, 16))) : text;

// What makes a part of a drawing known by name, or reached by hand or voice.
const reached = / (?:id|tabindex|role|aria-[a-z]+)="[^"]*"/g;

/** tree reads the text of a drawing: names of elements, what they say of
    themselves, and what is in them. A text has no name. Of a quiet one nothing can
    be reached. In a text and in an attribute, < and > are always escaped. */
function tree(svg, quiet) {
	const top = {list: []}, open = [top];
	for (const part of svg.split("<")) {
		if (part === "") continue;
		const end = part.indexOf(">");
		if (part[0] === "/") open.pop();
		else {
			const single = part[end - 1] === "/", tag = part.slice(0, single ? end - 1 : end), space = tag.indexOf(" ");
			const item = {name: space < 0 ? tag : tag.slice(0, space), said: space < 0 ? "" : tag.slice(space), list: []};
			if (quiet) item.said = item.said.replace(reached, "");
			if (!quiet || item.name !== "title" && item.name !== "desc") open.at(-1).list.push(item);
			if (!single) open.push(item);
		}
		if (part.length > end + 1 && part[end + 1] !== "\n") open.at(-1).list.push({said: part.slice(end + 1)});
	}
	return top.list[0];
}

/** attributes are names and values in turn: what stands between quotation marks,
    ' x="1" y="2"', is a value, and before it the name. */
const attributes = said => said.split("\"");
const nameOf = text => text.slice(1, -1);

/** build makes the nodes of an item. */
function build(item) {
	if (!item.name) return item.node = document.createTextNode(plain(item.said));
	item.node = document.createElementNS("http://www.w3.org/2000/svg", item.name);
	put(item.node, attributes(item.said));
	item.node.append(...item.list.map(build));
	return item.node;
}

function put(node, list) {
	for (let i = 0; i + 1 < list.length; i += 2) if (list[i] !== " xmlns=") node.setAttribute(nameOf(list[i]), plain(list[i + 1]));
}

/** follow makes the nodes of one item like another, which takes them over. */
function follow(before, after) {
	if (before.name !== after.name) {
		before.node.replaceWith(build(after));
		return;
	}
	const node = after.node = before.node;
	if (!after.name) {
		if (before.said !== after.said) node.data = plain(after.said);
		return;
	}
	if (before.said !== after.said) write(node, attributes(before.said), attributes(after.said));
	after.list.forEach((item, i) => before.list[i] ? follow(before.list[i], item) : node.append(build(item)));
	before.list.slice(after.list.length).forEach(item => item.node.remove());
}

function write(node, before, after) {
	if (before.length === after.length && after.every((text, i) => i % 2 || text === before[i])) {
		for (let i = 1; i < after.length; i += 2) if (before[i] !== after[i]) node.setAttribute(nameOf(after[i - 1]), plain(after[i]));
		return;
	}
	for (let i = 0; i + 1 < before.length; i += 2) node.removeAttribute(nameOf(before[i]));
	put(node, after);
}

/** draw puts the drawing into a box, or makes the one that it put there like it. A
    quiet one is a mere picture: nothing in it can be reached. */
export function draw(box, svg, quiet) {
	const drawing = tree(svg, quiet), before = box.drawing;
	if (drawing?.name !== "svg") return false;
	if (before && before.node.parentNode === box) follow(before, drawing);
	else {
		box.querySelector("svg")?.remove();
		box.append(build(drawing));
	}
	box.drawing = drawing;
	return true;
}

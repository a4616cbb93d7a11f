// The cuts of a piece: what its plan says is cut, in the order of the bench.
import {here, worked, text, piecePlan, pieceOrder} from "./state.js";
import {figure, size} from "./figure.js";
import {say, sentence, choice} from "./words.js";
import {shapes} from "./shapes.js";

const cut = (name, at, make, hint = () => [], count = 1) => ({name, at, size: make, hint, count});

function rails(part, name) {
	const frame = worked(here("/" + part)), how = worked("/order" + here(`/${part}/made`));
	if (!frame || how === "ready_made") return [];
	const rail = (which, what) => cut(`${name}, ${what}`, here(`/${part}/${which}/long_point`), () => [figure(here(`/${part}/${which}/long_point`))],
		() => ["long point to long point; both ends ", figure(here(`/${part}/${which}/saw`), "°"), " on the saw, from square"], 2);
	return [rail("horizontal", "top and bottom"), rail("vertical", "sides")];
}

function board(part, name) {
	const root = here("/" + part), own = part === "mat" ? "/cut" : "/own";
	const list = [cut(`${name} blank`, root + "/blank/width", () => [size(root + "/blank")])];
	list.push(cut(`${name} window`, root + "/window/width", () => [size(root + "/window")],
		() => ["lines from the edge, on the back: ", ...[["left", "right"], ["right", "left"], ["top", "top"], ["bottom", "bottom"]].flatMap(([name, side], i) => [i ? ", " : "", name + " ", figure(`${root}${own}/${side}`)])]));
	return list;
}

/** across says how a sheet behind equal sides is measured. */
const across = () => piecePlan().shape?.regular ? ", across flats: cut it to the outline" : "";

function sheets() {
	return (piecePlan().layers ?? []).flatMap((layer, i) => {
		if (!layer.cut_to_fit || ["mat", "under_mat", "spacer", "liner", "art"].includes(layer.part)) return [];
		const material = pieceOrder()[layer.part] && worked("/order" + here(`/${layer.part}/material`));
		return [cut(sentence(say(layer.part)), here(`/layers/${i}/size/width`), () => [size(here(`/layers/${i}/size`))], () => [material ? choice("/material", material) : "", across()])];
	});
}

/** cuts are all cuts of the piece. */
export function cuts() {
	const plan = piecePlan();
	if (!plan?.worked) return [];
	const list = [...plan.shape ? shapes()?.cuts(cut) ?? [] : rails("frame", "Frame"), ...rails("liner", "Liner")];
	if (plan.canvas) {
		list.push(cut("Stretcher bars, across", here("/canvas/bars/width"), () => [figure(here("/canvas/bars/width"))], () => ["long point to long point"], 2));
		list.push(cut("Stretcher bars, upright", here("/canvas/bars/height"), () => [figure(here("/canvas/bars/height"))], () => ["long point to long point"], 2));
		list.push(cut("Canvas", here("/canvas/cut/width"), () => [size(here("/canvas/cut"))]));
	}
	if (plan.mat) list.push(...board("mat", "Mat"));
	(plan.mat?.under ?? []).forEach((_, i) => list.push(...board(`mat/under/${i}`, i ? "Third mat" : "Lower mat")));
	list.push(...sheets());
	if (plan.frame?.dust_cover) list.push(cut("Dust cover", here("/frame/dust_cover/width"), () => [size(here("/frame/dust_cover"))], () => ["paper over the back", across()]));
	const wire = text(here("/hang/wire"));
	if (wire) list.push(cut("Wire", here("/hang/wire"), () => [figure(here("/hang/wire"))], () => ["with both tails"]));
	for (const c of list) c.key = `${c.name} ${c.at} ${text(c.at)} ${text(c.at.replace(/width$/, "height"))}`;
	return list;
}

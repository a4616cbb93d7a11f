// What is cut of a frame that is no plain rectangle: each rail with both its ends, a
// board that slopes with each way to lay it on the saw.
import {el} from "../dom.js";
import {here, worked, text, piecePlan} from "../state.js";
import {figure} from "../figure.js";
import {say, sentence} from "../words.js";
import {rail, several} from "./names.js";

const at = rest => here("/shape" + rest);
const number = (rest, unit) => figure(at(rest), unit);

const end = root => [number(root + "/saw", "°"), " from square, ", number(root + "/edge", "°"), " to the edge"];

const square = root => worked(at(root + "/square")) ? ["cut square"] : end(root);

function equal(cut) {
	const {sides} = piecePlan().shape.panel;
	return cut("Frame, each rail", at("/regular/long_point"), () => [number("/regular/long_point")],
		() => ["long point to long point; short point to short point ", number("/regular/short_point"), "; both ends ", ...end("/regular")], sides);
}

function own(cut, i) {
	const root = `/rails/${i}`;
	return cut(`Frame, ${rail(i)}`, at(root + "/long"), () => [number(root + "/long")], () => [
		"sight edge ", number(root + "/sight"), ", outer edge ", number(root + "/outer"), "; face up, sight edge away from you: left end ", ...square(root + "/start"), "; right end ", ...square(root + "/finish")]);
}

const ways = ["flat", "on_edge", "propped"];

/** laid is how the board lies; from where its angles are measured stands beside them. */
const laid = way => say("laid." + way).split("; ")[0];

/** longer says at which side of the cut the board comes out longer. */
const longer = (path, more, less) => text(path) === "0" ? "" : text(path).startsWith("-") ? `, longer ${less}` : `, longer ${more}`;

const setting = root => [" miter ", number(root + "/miter", "°"), " from square", longer(at(root + "/miter"), "at the fence", "in front"),
	"; blade ", number(root + "/tilt", "°"), " from upright", longer(at(root + "/tilt"), "at the table", "at the top")];

const said = root => ways.map(way => ["miter", "tilt"].map(turned => text(at(`${root}/${way}/${turned}`)))).join();

function sloped(cut, s, i) {
	const root = `/slope/${i}`, alike = said(root + "/left") === said(root + "/right");
	const lies = (end, name) => ways.map(way => el("span", {class: "way", "data-way": `${end} ${way}`}, el("span", {class: "lay", text: `${sentence(laid(way))}; ${name}:`}), ...setting(`${root}/${end}/${way}`)));
	return cut(`Frame, ${several(s.sides, "board")}`, at(root + "/back_rim"), () => [number(root + "/back_rim")], () => [
		"behind the rim; rim in front ", number(root + "/front_rim"), ", sight edge in front ", number(root + "/front_sight"), ", behind it ", number(root + "/back_sight"),
		...alike ? lies("left", "both ends") : [...lies("left", "left end"), ...lies("right", "right end")]], s.sides.length);
}

/** cuts are the rails and boards; cut makes one. */
export function cuts(cut) {
	const {regular, rails, slope} = piecePlan().shape;
	const list = slope ? slope.map((s, i) => sloped(cut, s, i)) : regular ? [equal(cut)] : (rails ?? []).flatMap((r, i) => r.long ? [own(cut, i)] : []);
	for (const c of list) c.name = sentence(c.name);
	return list;
}

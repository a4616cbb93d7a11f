// Frames that are no plain rectangle. What only they need is a room of its own,
// which comes when the first of them is seen, or the part is opened that asks for it.
import {byId, setText} from "./dom.js";
import {state, changed, onChange, pieceOrder} from "./state.js";
import {label} from "./words.js";

let room = null, coming = null;

/** shapes is that room, null as long as it is not there. */
export const shapes = () => room;

/** outlined and railed report what of a piece is no plain rectangle: its art, the
    rails around it. */
export const outlined = ({art}) => Boolean(art?.outline ?? art?.sides);
export const railed = ({frame}) => Boolean(frame?.faces ?? frame?.slope);

/** name is what a field or figure is called, with the side that it belongs to. */
export const name = path => room?.name(path) ?? label(path);

const asks = part => part === "art" || part === "frame";

function need() {
	const piece = pieceOrder();
	if (!outlined(piece) && !railed(piece) && !asks(state.open?.part) && !asks(state.open?.under?.part)) return;
	coming ??= import("./shape/room.js").then(m => {
		room = m;
		changed("plan");
	}).catch(error => {
		coming = null; // the next time it may come
		setText(byId("told-seen"), `What belongs to other shapes than rectangles did not come: ${error.message}`);
	});
}

export function begin() {
	onChange(need, "plan", "open");
}

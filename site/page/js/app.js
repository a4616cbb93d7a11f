// Opens the page: the kept order or the sample, and the library in its worker.
import {byId, setText} from "./dom.js";
import {state, changed} from "./state.js";
import {kept, unread} from "./keep.js";
import {sample} from "./sample.js";
import {hello, onFault} from "./engine.js";
import {learn, problem} from "./words.js";
import {gone} from "./fault.js";
import * as schema from "./schema.js";
import * as steps from "./steps.js";
import * as work from "./work.js";
import * as stage from "./stage.js";
import * as sheet from "./sheet.js";
import * as pad from "./pad.js";
import * as working from "./working.js";
import * as cut from "./cut.js";
import * as hang from "./hang.js";
import * as ticket from "./ticket.js";
import * as bar from "./bar.js";
import * as notes from "./notes.js";
import * as shapes from "./shapes.js";

const broken = error => gone("The page did not load whole.", error?.message ?? error);

async function begin() {
	const [first] = await Promise.all([kept() ?? sample(), schema.load()]);
	state.order = first;
	onFault(why => gone("The part of the page that works out the numbers has stopped.", why));
	steps.begin();
	for (const room of [shapes, bar, stage, sheet, pad, working, cut, hang, ticket]) room.begin();
	notes.announce();
	work.begin();
	if (unread()) setText(byId("told-seen"), "What was kept in this browser is no order that can be read. It is put aside, and this is the sample.");
	const reply = await hello;
	if (reply.fault) return;
	if (reply.problems) return broken(reply.problems.map(problem).join(" "));
	learn(reply.data.english);
	state.version = reply.data.order_version;
	await work.refresh();
	changed("open");
	performance.mark("ready");
	document.body.dataset.ready = "yes";
	setTimeout(keepOffline, 1500); // what is typed at once comes first
}

function keepOffline() {
	if ("serviceWorker" in navigator && isSecureContext) navigator.serviceWorker.register("sw.js").then(there => there.update()).catch(() => { /* a frame that may not keep things works all the same, as does a page without a network */ });
}

begin().catch(broken);

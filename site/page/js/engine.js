// Questions to the library in its worker: one at a time, and of those that wait,
// of each kind only the newest. One that was overtaken is answered with null. Once
// the library is lost, every question is answered with the fault.

const protocol = 1;
const waiting = new Map(); // by kind
let count = 0, flying = null, fault = "", tell = () => {};

// The page loads this file first, so that the library is on its way, in a thread
// of its own, while the others come.
let worker = null;
try {
	worker = new Worker("worker.js");
	worker.onmessage = event => take(event.data);
	worker.onerror = event => lost(event.message || "worker.js did not load");
	worker.onmessageerror = () => lost("a reply could not be read");
} catch (error) { // a browser that lets this page have none
	lost(error.message);
}

/** hello is the answer of the library once it is there. */
export const hello = ask("hello", {protocol});

/** onFault has f told why the library is lost, now or when it comes to that. */
export function onFault(f) {
	tell = f;
	if (fault) f(fault);
}

function lost(why) {
	if (fault) return;
	fault = why;
	worker?.terminate();
	for (const question of [flying, ...waiting.values()]) question?.resolve({fault});
	flying = null;
	waiting.clear();
	tell(fault);
}

/** ask asks; kind says which questions overtake one another. The reply has data,
    or problems, or a fault. */
export function ask(call, fields, kind = call) {
	if (fault) return Promise.resolve({fault});
	const request = {id: ++count, call, ...fields};
	return new Promise(resolve => {
		waiting.get(kind)?.resolve(null);
		waiting.delete(kind);
		waiting.set(kind, {kind, resolve, id: request.id, text: JSON.stringify(request)});
		next();
	});
}

function next() {
	if (flying || waiting.size === 0) return;
	const [kind, question] = waiting.entries().next().value;
	waiting.delete(kind);
	flying = question;
	worker.postMessage(question.text);
}

function take(text) {
	let reply;
	try {
		reply = JSON.parse(text);
	} catch {
		return lost("a reply could not be read");
	}
	if (reply.fault) lost(reply.fault);
	else land(reply);
}

function land(reply) {
	const question = flying;
	if (!question) return;
	flying = null;
	if (reply.id && reply.id !== question.id) question.resolve(null); // 0 is of one that was not read so far
	else if (waiting.has(question.kind)) question.resolve(null); // a newer one waits
	else question.resolve(reply);
	next();
}

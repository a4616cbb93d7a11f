// Questions to the library in its worker: one at a time, and of those that wait,
// of each kind only the newest. One that was overtaken is answered with null.

const protocol = 1;
const waiting = new Map(); // by kind
let count = 0, flying = null;

// The page loads this file first, so that the library is on its way, in a thread
// of its own, while the others come.
const worker = new Worker("worker.js");
worker.onmessage = event => land(JSON.parse(event.data));

/** hello is the answer of the library once it is there. */
export const hello = ask("hello", {protocol});

/** ask asks; kind says which questions overtake one another. */
export function ask(call, fields, kind = call) {
	return new Promise((resolve, reject) => {
		waiting.get(kind)?.resolve(null);
		waiting.delete(kind);
		waiting.set(kind, {kind, resolve, reject, request: {id: ++count, call, ...fields}});
		next();
	});
}

function next() {
	if (flying || waiting.size === 0) return;
	const [kind, question] = waiting.entries().next().value;
	waiting.delete(kind);
	flying = question;
	worker.postMessage(JSON.stringify(question.request));
}

function land(reply) {
	const question = flying;
	if (!question) return;
	flying = null;
	if (reply.fault) question.reject(new Error(reply.fault));
	else if (reply.id !== question.request.id) question.resolve(null);
	else if (waiting.has(question.kind)) question.resolve(null); // a newer one waits
	else question.resolve(reply);
	next();
}

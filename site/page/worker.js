"use strict";
// The library, in a thread of its own: text of a request in, text of a reply out.
// Whatever ends it is told as a fault, once it is known.
importScripts("wasm_exec.js");

const toBytes = new TextEncoder(), toText = new TextDecoder();
const lost = error => postMessage(JSON.stringify({fault: String(error?.message ?? error)}));

// The module that everyone starts with, and the one that has every shape of frame: it
// takes over once something asks for that.
const ready = start("fairmiter.wasm");
let shapes;

onmessage = async event => {
	try {
		await ready;
		await shapes;
		let reply = ask(event.data);
		if (reply.length < 400 && reply.includes('"needs_shapes"')) {
			await (shapes ??= start("shapes.wasm"));
			reply = ask(event.data);
		}
		postMessage(reply);
	} catch (error) {
		lost(error);
	}
};

function ask(text) {
	const reply = self.fairmiter(toBytes.encode(text));
	if (!reply) throw new Error("it ended on a question"); // what a program that exits returns
	return toText.decode(reply);
}

async function get(name) {
	const answer = await fetch(name);
	if (!answer.ok) throw new Error(name + ": " + answer.status);
	return answer;
}

// Settles once the module answers; what ends it later is told when it happens.
function start(name) {
	return new Promise(async done => {
		try {
			const go = new Go(), file = await get(name);
			let made;
			try {
				made = await WebAssembly.instantiateStreaming(file, go.importObject);
			} catch { // a host that sends the file under another type
				made = await WebAssembly.instantiate(await (await get(name)).arrayBuffer(), go.importObject);
			}
			self.fairmiterReady = done;
			await go.run(made.instance);
			throw new Error("it ended");
		} catch (error) {
			lost(error);
		}
	});
}

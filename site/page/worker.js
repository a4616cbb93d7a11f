"use strict";
// The library, in a thread of its own: text of a request in, text of a reply out.
// Whatever ends it is told as a fault, once it is known.
importScripts("wasm_exec.js");

const toBytes = new TextEncoder(), toText = new TextDecoder();
const ready = new Promise(done => { self.fairmiterReady = done; });
const lost = error => postMessage(JSON.stringify({fault: String(error?.message ?? error)}));

onmessage = async event => {
	try {
		await ready;
		const reply = self.fairmiter(toBytes.encode(event.data));
		if (!reply) throw new Error("it ended on a question"); // what a program that exits returns
		postMessage(toText.decode(reply));
	} catch (error) {
		lost(error);
	}
};

async function get() {
	const answer = await fetch("fairmiter.wasm");
	if (!answer.ok) throw new Error("fairmiter.wasm: " + answer.status);
	return answer;
}

async function start() {
	const go = new Go(), file = await get();
	let made;
	try {
		made = await WebAssembly.instantiateStreaming(file, go.importObject);
	} catch { // a host that sends the file under another type
		made = await WebAssembly.instantiate(await (await get()).arrayBuffer(), go.importObject);
	}
	await go.run(made.instance);
	throw new Error("it ended");
}

start().catch(lost);

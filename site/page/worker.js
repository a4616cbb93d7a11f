"use strict";
// The library, in a thread of its own: text of a request in, text of a reply out.
importScripts("wasm_exec.js");

const toBytes = new TextEncoder(), toText = new TextDecoder();
const ready = new Promise(done => { self.fairmiterReady = done; });

onmessage = async event => {
	await ready;
	postMessage(toText.decode(self.fairmiter(toBytes.encode(event.data))));
};

async function start() {
	const go = new Go(), file = fetch("fairmiter.wasm");
	let made;
	try {
		made = await WebAssembly.instantiateStreaming(file, go.importObject);
	} catch { // a host that sends the file under another type
		made = await WebAssembly.instantiate(await (await fetch("fairmiter.wasm")).arrayBuffer(), go.importObject);
	}
	go.run(made.instance);
}

start().catch(error => postMessage(JSON.stringify({fault: String(error)})));

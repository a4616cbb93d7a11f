"use strict";
// ask sends a request to the module and returns its reply.
let last = 0;
function ask(request) {
	const bytes = fairmiter(new TextEncoder().encode(JSON.stringify({id: ++last, ...request})));
	return JSON.parse(new TextDecoder().decode(bytes));
}
const go = new Go();
const ready = new Promise(resolve => { globalThis.fairmiterReady = resolve; });
WebAssembly.instantiateStreaming(fetch("fairmiter.wasm"), go.importObject).then(async ({instance}) => {
	go.run(instance);
	await ready;
	globalThis.readyAt = performance.now();
});
// codeOf is the code of the problem that bytes give. It makes the bytes itself:
// those of a driver's script are of another world in Firefox.
function codeOf(make) {
	const made = make === "zeros" ? new Uint8Array(9e6) : new TextEncoder().encode("[".repeat(2e6));
	return JSON.parse(new TextDecoder().decode(fairmiter(made))).problems[0].code;
}

"use strict";
// Keeps the page for the next time without a network. Everything comes from what
// was kept; a new version is fetched whole beside the old one and takes over when
// the page, having been closed everywhere, is opened again. The build writes the
// version here: so each is another worker, has a store of its own, and a page never
// gets files of two.
const version = "@version@";
const prefix = "fairmiter:" + registration.scope + ":", mine = prefix + version;

/** listed is the list of files, of this version or an error. */
async function listed() {
	const list = await (await fetch("files.json", {cache: "no-store"})).json();
	if (list.version !== version) throw new Error("the host has version " + list.version);
	return list.files;
}

self.addEventListener("install", event => event.waitUntil((async () => {
	try {
		await caches.delete(mine); // half of it, from a browser that was ended
		const files = await listed(), store = await caches.open(mine);
		await store.addAll([...files, "files.json"].map(name => new Request(name, {cache: "no-cache"})));
		await listed(); // still
	} catch (error) {
		await caches.delete(mine);
		throw error;
	}
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
	const others = (await caches.keys()).filter(name => name.startsWith(prefix) && name !== mine);
	await Promise.all(others.map(name => caches.delete(name)));
	await self.clients.claim(); // a first visit
})()));

self.addEventListener("fetch", event => {
	if (event.request.method !== "GET" || !event.request.url.startsWith(registration.scope)) return;
	event.respondWith((async () => {
		const url = event.request.url.split(/[?#]/)[0];
		const name = url === registration.scope ? registration.scope + "index.html" : url;
		return await caches.match(name, {cacheName: mine}) || fetch(event.request);
	})());
});

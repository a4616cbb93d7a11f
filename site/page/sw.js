"use strict";
// Keeps the page for the next time without a network. Everything comes from what
// was kept; a new version is fetched whole beside the old one and takes over when
// the page is opened again.
const prefix = "fairmiter:" + registration.scope + ":";

self.addEventListener("install", event => event.waitUntil((async () => {
	const list = await (await fetch("files.json", {cache: "no-cache"})).json();
	const store = await caches.open(prefix + list.version);
	await store.addAll([...list.files, "files.json"].map(name => new Request(name, {cache: "no-cache"})));
	await self.skipWaiting();
})()));

self.addEventListener("activate", event => event.waitUntil((async () => {
	const ours = (await caches.keys()).filter(name => name.startsWith(prefix));
	await Promise.all(ours.slice(0, -1).map(name => caches.delete(name)));
	await self.clients.claim();
})()));

self.addEventListener("fetch", event => {
	if (event.request.method !== "GET" || !event.request.url.startsWith(registration.scope)) return;
	event.respondWith((async () => {
		const url = event.request.url.split(/[?#]/)[0];
		const name = url === registration.scope ? registration.scope + "index.html" : url;
		const names = (await caches.keys()).filter(n => n.startsWith(prefix));
		const kept = names.length && await (await caches.open(names.at(-1))).match(name);
		return kept || fetch(event.request);
	})());
});

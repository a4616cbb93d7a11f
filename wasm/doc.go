// Wasm is the seam between the library and a page. Built for a browser it gives
// the page one function, fairmiter, that takes the bytes of a request and
// returns the bytes of a reply, both JSON in a Uint8Array:
//
//	{"id": 7, "call": "work", "order": {...}}
//	{"id": 7, "data": {"plan": {...}}}
//	{"id": 7, "problems": [{"code": "missing", "path": "/order"}]}
//
// A reply holds data, or the problems of the request and no data. What is wrong
// with an order is no problem of the request: it stands in the plan. The paths of
// problems point into the request. The seam only passes on: what is worked out,
// and how it is written, is the library's.
//
// The calls, with what they take beside id and call:
//
//	hello     protocol                         who speaks, the English, a sample order
//	work      order, views, piece, paper,      the plan, and drawings of one piece:
//	          interactive, bare                views of front, section, back; of a bare
//	                                           one no plan, but whether it was worked
//	explain   order, path                      how the figure at path came to be
//	solve     order, question                  the value of a field that makes a figure
//	                                           come out; see framing.Question
//	ticket    order, working, form             the work ticket, as text or html
//
// Instead of an order a call may have text: the order as a file holds it, which
// need not be sound JSON.
package main

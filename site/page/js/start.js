// Starts the page: the library at once, in a thread of its own, and the rest when
// the sample, which stands in the page as it came, has been painted.
const library = import("./engine.js");

const painted = new Promise(done => {
	requestAnimationFrame(() => setTimeout(done));
	setTimeout(done, 400); // a page that is not looked at is not painted
});

Promise.all([library, painted]).then(() => import("./app.js")).catch(error => {
	document.getElementById("fault").textContent = "The page did not load whole. Open it again; your order is kept. What happened: " + error.message;
});

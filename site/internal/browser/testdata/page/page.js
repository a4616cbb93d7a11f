"use strict";
document.getElementById("say").addEventListener("click", () => {
	document.getElementById("said").textContent = document.getElementById("words").value;
});

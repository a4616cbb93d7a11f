// The piece that a first visit finds.
let file = null;

async function get() {
	const answer = await fetch("sample.json");
	if (!answer.ok) throw new Error("sample.json: " + answer.status);
	return answer.json();
}

export const sample = () => file ??= get().catch(error => {
	file = null; // the next one may get it
	throw error;
});

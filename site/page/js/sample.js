// The piece that a first visit finds, and others to start from.
let file = null;

async function get(name) {
	const answer = await fetch(name);
	if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
	return answer.json();
}

/** examples are orders to start from: what each shows, and its name. */
export const examples = {"octagon-mirror": "An octagon mirror", "wide-bottom": "A wide bottom rail", "canted-box": "Canted boxes"};

export const example = name => get(`examples/${name}.json`);

export const sample = () => file ??= get("sample.json").catch(error => {
	file = null; // the next one may get it
	throw error;
});

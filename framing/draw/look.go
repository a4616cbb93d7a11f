package draw

// The looks of lines and surfaces: a class for the page, and what stands alone.
// Ink is nearly black, paper warm, and one color says what is wrong.
const (
	paperLook  = `class="paper" fill="#fdfbf6"`
	inkLook    = `class="ink" fill="none" stroke="#26211b" stroke-width=".9" stroke-linejoin="round"`
	thinLook   = `class="ink thin" fill="none" stroke="#26211b" stroke-width=".5" stroke-opacity=".55"`
	lineLook   = `class="line" fill="none" stroke="#857a6d" stroke-width=".6"`
	tickLook   = `class="tick" fill="none" stroke="#26211b" stroke-width="1.1"`
	dotLook    = `class="dot" fill="#26211b"`
	hiddenLook = `class="hidden" fill="none" stroke="#26211b" stroke-width=".6" stroke-opacity=".7" stroke-dasharray="5 3"`
	badLook    = `class="bad" fill="none" stroke="#b3361b" stroke-width="1.3" stroke-dasharray="6 3"`
	badFill    = `class="bad" fill="#b3361b" fill-opacity=".16" stroke="#b3361b" stroke-width="1.2"`
	badLine    = `class="line bad" fill="none" stroke="#b3361b" stroke-width=".8"`
	hatchLook  = `class="hatch" fill="none" stroke="#26211b" stroke-width=".45" stroke-opacity=".6"`
	hitLook    = `class="hit" fill="none" pointer-events="all"`

	boardEdge  = `class="core" fill="#ffffff" stroke="#26211b" stroke-width=".3" stroke-opacity=".5"`
	depthLook  = `class="shade" fill="#2f2a25"`
	behindLook = `class="behind" fill="#e6dfd2"`
	glassLook  = `class="glass" fill="#cfe3e6" stroke="#26211b" stroke-width=".6"`
	artLook    = `class="sheet" fill="#f7f2e7" stroke="#26211b" stroke-width=".5"`
	airLook    = `class="air" fill="#fdfbf6"`
	coverLook  = `class="dust" fill="#d9c7a6" stroke="#26211b" stroke-width=".5"`
	wireLook   = `class="wire" fill="none" stroke="#4b4f52" stroke-width="1.6" stroke-linejoin="round"`
	metalLook  = `class="metal" fill="#b9bdbf" stroke="#26211b" stroke-width=".7"`
)

// boardLook is the face of each board of a mat, from the top down.
var boardLook = [...]string{
	`class="board" fill="#f1eadc"`,
	`class="board board-1" fill="#6d7f86"`,
	`class="board board-2" fill="#a8836a"`,
}

// layerLook is a part in the rabbet, cut through.
func layerLook(part string) string {
	switch part {
	case "glazing":
		return glassLook
	case "mat":
		return `class="board" fill="#f6f1e6" stroke="#26211b" stroke-width=".6"`
	case "under_mat":
		return `class="board board-1" fill="#c9d1d2" stroke="#26211b" stroke-width=".6"`
	case "art":
		return `class="sheet" fill="#3d362e" stroke="#26211b" stroke-width=".6"`
	case "spacer":
		return `class="strip" fill="#dfe7ea" stroke="#26211b" stroke-width=".6"`
	}
	return `class="sheet" fill="#efe7d8" stroke="#26211b" stroke-width=".6"`
}

// railLook is one rail: lit from the left above, so that the four differ.
func railLook(metal, liner bool, side side) string {
	tones := [...]string{"#c79e6b", "#a37b4c", "#94703f", "#b98f5c"} // top, right, bottom, left
	switch {
	case metal:
		tones = [...]string{"#c9ccce", "#9ea3a6", "#8e9396", "#b7bbbe"}
	case liner:
		tones = [...]string{"#f0e7d5", "#dccfb8", "#d2c4ab", "#e8ddc8"}
	}
	names := [...]string{"top", "right", "bottom", "left"}
	return `class="rail rail-` + names[side] + `" fill="` + tones[side] + `" stroke="#26211b" stroke-width=".7" stroke-linejoin="round"`
}

package material

import (
	"slices"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// An Entry is what is known about one material.
type Entry struct {
	// Key is the material's name for programs, as an order holds it.
	Key string
	// Nominal is its usual density, Heaviest the highest that a piece of this name
	// can well have.
	Nominal, Heaviest Density
	// Source is where the nominal density comes from.
	Source explain.Source
	// Uncertain is whether the density differs much from one make to the next, or
	// is from memory.
	Uncertain bool
}

// Of returns the material of a key, false where there is none.
func Of(key string) (Entry, bool) {
	for i := range entries {
		if entries[i].Key == key {
			return entries[i], true
		}
	}
	return Entry{}, false
}

// All returns every material: woods first, then what moldings are made of
// besides, then sheets and the rest.
func All() []Entry { return slices.Clone(entries[:]) }

// Moldings returns the keys of what moldings can be made of. The first, [Wood],
// is a wood that is not known more closely.
func Moldings() []string {
	keys := make([]string, 0, moldings)
	for _, e := range entries[:moldings] {
		keys = append(keys, e.Key)
	}
	return keys
}

// Keys of the materials that a piece names without being asked.
const (
	Wood          = "wood"           // a molding of a wood that is not known
	Aluminum      = "aluminum"       // extruded sections
	Glass         = "glass"          // panes and mirrors
	Paper         = "paper"          // prints and drawings
	Panel         = "panel"          // art on board or wood
	Bars          = "stretcher_bars" // under a canvas, with the canvas
	SpacerPlastic = "spacer_plastic"
)

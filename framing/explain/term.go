package explain

// A Key names a thing that has a value: "face", "opening", "window". Its
// English stands in [Table].
type Key string

// A Term is one value in a formula or a note: what it is, how much, and where
// it stands.
type Term struct {
	Key   Key   `json:"key"`
	Value Value `json:"value"`
	// Path is where the value stands in the plan; empty for one that stands
	// nowhere, such as the 2 of "2 x face".
	Path Path `json:"path,omitzero"`
}

// NewTerm returns the term of q under key, standing at path.
func NewTerm[Q Quantity](key Key, q Q, path Path) Term {
	return Term{Key: key, Value: Of(q), Path: path}
}

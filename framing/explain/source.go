package explain

// A Status says how far a source was followed.
type Status string

// The status letters, from the strongest down.
const (
	Verified  Status = "V"  // read in the source itself
	Secondary Status = "V2" // read in a named copy that quotes the source
	Computed  Status = "C"  // follows exactly from a stated formula
	Practice  Status = "P"  // common practice in the trade, no single source
	Memory    Status = "M"  // from memory; not to be taken as verified
	Decided   Status = "D"  // not a formula: the order says so
)

// A Source is where a figure or a formula comes from.
type Source struct {
	// Title is the standard, handbook, article or page.
	Title string `json:"title"`
	// Place is the table, section, page or number in it.
	Place  string `json:"place,omitzero"`
	Status Status `json:"status"`
}

// String writes "title, place (status)".
func (s Source) String() string {
	text := s.Title
	if s.Place != "" {
		text += ", " + s.Place
	}
	return text + " (" + string(s.Status) + ")"
}

// AsGiven is the source of a figure that the order gives.
func AsGiven() Source { return Source{Title: "as given", Status: Decided} }

// Geometry is the source of a formula that follows from how the parts lie.
func Geometry(place string) Source { return Source{"plane geometry", place, Computed} }

// CommonPractice is the source of what framers do and nobody printed first.
func CommonPractice(place string) Source { return Source{"common practice", place, Practice} }

package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A Mat is what is decided about a mat with one window: the top board, and the
// ones under it. The zero Mat is no mat.
type Mat struct {
	// Name is what the shop calls the top board.
	Name string `json:"name,omitzero"`
	// Thickness of the top board, measured with a caliper; plies are no standard
	// unit.
	Thickness measure.Length `json:"thickness"`
	// Bevel is the angle of the cut from the top board's face: 45 degrees is
	// usual, 90 is straight, more is a reverse bevel.
	Bevel measure.Angle `json:"bevel" since:"2"`
	// Window says how large the window is.
	Window Window `json:"window"`
	// Borders says how wide the borders are, or how large the board is.
	Borders Borders `json:"borders"`
	// Under are the boards under the top one, from the top down.
	Under UnderMats `json:"under,omitzero" since:"2"`
}

// IsZero reports whether there is no mat.
func (m Mat) IsZero() bool { return m == Mat{} }

// A Window says how the window follows from the art: that of the lowest board,
// which lies on the art.
type Window struct {
	// By says which of the fields below counts.
	By WindowBy `json:"by"`
	// EachSide is the overlap or the gap on each of the four sides.
	EachSide measure.Length `json:"each_side"`
	// Size is the window where it is given.
	measure.Size
}

// A WindowBy is a way to say how large a window is.
type WindowBy string

// The ways to size a window.
const (
	ByOverlap WindowBy = "overlap" // the mat covers the art's edge each side
	ByGap     WindowBy = "gap"     // the art shows whole, with a gap each side
	BySize    WindowBy = "size"    // the window is given
)

// Choices lists the ways, for readers and forms.
func (WindowBy) Choices() []string { return []string{string(ByOverlap), string(ByGap), string(BySize)} }

// Borders says how wide the borders are.
type Borders struct {
	// By says what the borders are measured as, or that the board is given.
	By BordersBy `json:"by"`
	// To says which window the borders are measured to.
	To BordersTo `json:"to" since:"2"`
	measure.Sides
	// Weight says how the bottom border follows from the top one.
	Weight Weight `json:"weight"`
	// Extra is what [Extra] adds to the top border.
	Extra measure.Length `json:"extra"`
	// Ratio is what [Ratio] adds to the top border, as a part of it: "20 %".
	Ratio explain.Ratio `json:"ratio"`
	// Board is the size of the board where it is given.
	Board measure.Size `json:"board,omitzero"`
}

// A BordersBy is a way to say how wide borders are.
type BordersBy string

// The ways to size borders.
const (
	ByVisible BordersBy = "visible" // as seen, with the mat in the middle of its play
	ByCut     BordersBy = "cut"     // as cut, with what the lip hides
	ByBoard   BordersBy = "board"   // the board is given; the window is centered in it
)

// Choices lists the ways, for readers and forms.
func (BordersBy) Choices() []string {
	return []string{string(ByVisible), string(ByCut), string(ByBoard)}
}

// A BordersTo is the window that borders are measured to. It makes a difference
// where a mat has several boards, and none in a board that is given.
type BordersTo string

// The windows that borders are measured to.
const (
	ToTop    BordersTo = "top_window"    // of the top board; the reveals come inside
	ToLowest BordersTo = "lowest_window" // the border includes the reveals
)

// Choices lists the windows, for readers and forms.
func (BordersTo) Choices() []string { return []string{string(ToTop), string(ToLowest)} }

// A Weight is a way to make the bottom border wider than the top one. It works
// on the borders as they are seen by [ByVisible] and [ByBoard], and on those that
// are cut by [ByCut].
type Weight string

// The ways to weight the bottom border.
const (
	Unweighted Weight = "none"    // as given; in a given board, as the top
	Extra      Weight = "extra"   // the top border and a fixed extra
	Ratio      Weight = "ratio"   // the top border and a part of it
	Optical    Weight = "optical" // the optical center found with a straightedge
)

// Choices lists the ways, for readers and forms.
func (Weight) Choices() []string {
	return []string{string(Unweighted), string(Extra), string(Ratio), string(Optical)}
}

// MaxRatio is the largest [Borders].Ratio accepted: a bottom border of eleven
// times the top one.
const MaxRatio = 10 * explain.Whole

// Given is what a mat finds: the art under it, the lip over it.
type Given struct {
	// Least and Greatest are the art's size where it measures smallest and
	// largest. Square art has one size.
	Least, Greatest measure.Size
	// Lip is how far each rail covers the package.
	Lip measure.Sides
	// Allowance is the mat's play in the opening, both sides together.
	Allowance measure.Length
	// Overlap and Border are the overlap and the visible border each side that
	// the shop usually takes, for the remedies of notes.
	Overlap, Border measure.Length
}

// Check adds to c what is wrong with m, whose fields lie at path at, for art
// that lies at path art.
func (m Mat) Check(c *explain.Checker, at explain.Path, g Given, art explain.Path) {
	c.Text(at+"/name", m.Name)
	c.Measured(at+"/thickness", m.Thickness)
	c.Angle(at+"/bevel", m.Bevel, LeastBevel, MostBevel)
	m.Under.check(c, at+"/under")

	window := at + "/window"
	c.Choice(window+"/by", string(m.Window.By), m.Window.By.Choices())
	c.NotNegative(window+"/each_side", m.Window.EachSide)
	c.GivenSize(window, m.Window.Size, m.Window.By == BySize)
	m.checkOverlap(c, window, g, art)
	m.checkTopWindow(c, at, g, art)

	m.Borders.check(c, at+"/borders")
}

// checkOverlap refuses an overlap that leaves no window.
func (m Mat) checkOverlap(c *explain.Checker, window explain.Path, g Given, art explain.Path) {
	if m.Window.By != ByOverlap || !c.Clean(window+"/by", window+"/each_side", art+"/width", art+"/height") {
		return
	}
	if smallest := min(g.Least.Width, g.Least.Height); 2*m.Window.EachSide >= smallest {
		c.Add(explain.Problem{
			Code: explain.OutOfRange, Path: window + "/each_side", Given: c.Write(m.Window.EachSide),
			Accepted: c.Write(0) + " to less than half of the art's shorter side, " + c.Write(smallest),
		})
	}
}

func (b Borders) check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/by", string(b.By), b.By.Choices())
	c.Choice(at+"/to", string(b.To), b.To.Choices())
	c.NotNegative(at+"/left", b.Left)
	c.NotNegative(at+"/right", b.Right)
	c.NotNegative(at+"/top", b.Top)
	c.NotNegative(at+"/bottom", b.Bottom)
	c.Choice(at+"/weight", string(b.Weight), b.Weight.Choices())
	c.NotNegative(at+"/extra", b.Extra)
	c.Ratio(at+"/ratio", b.Ratio, 0, MaxRatio)
	c.GivenSize(at+"/board", b.Board, b.By == ByBoard)
}

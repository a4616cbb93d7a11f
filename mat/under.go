package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// MaxUnder is how many boards can lie under the top one: a mat of three.
const MaxUnder = 2

// UnderMats are the boards under the top one, from the top down. Those that are
// the zero value are none; there is none below the first of them.
type UnderMats [MaxUnder]UnderMat

// An UnderMat is a board under the top one, of which a strip shows in the window
// of the board above it.
type UnderMat struct {
	// Name is what the shop calls the board.
	Name string `json:"name,omitzero"`
	// Thickness of the board, measured with a caliper.
	Thickness measure.Length `json:"thickness"`
	// Bevel is the angle of the cut from the board's face.
	Bevel measure.Angle `json:"bevel"`
	// By says what Reveal is measured as.
	By RevealBy `json:"by"`
	// Reveal is how much smaller this window is than the one above, each side.
	Reveal measure.Length `json:"reveal"`
	// Trim is how much smaller the blank is than the top board's, each side, so
	// that it does not get in the way in the rabbet.
	Trim measure.Length `json:"trim"`
}

// A RevealBy is a way to say how wide a reveal is.
type RevealBy string

// The ways to size a reveal.
const (
	ByLine RevealBy = "line" // window line to window line, on the backs
	BySeen RevealBy = "seen" // the strip of color that shows, without the bevel
)

// Choices lists the ways, for readers and forms.
func (RevealBy) Choices() []string { return []string{string(ByLine), string(BySeen)} }

// Count is how many boards there are.
func (u UnderMats) Count() int {
	for i := range u {
		if (u[i] == UnderMat{}) {
			return i
		}
	}
	return MaxUnder
}

// All returns the boards that are there, from the top down.
func (u *UnderMats) All() []UnderMat { return u[:u.Count()] }

// IsZero reports whether there is no board under the top one.
func (u UnderMats) IsZero() bool { return u == UnderMats{} }

// MarshalJSON writes the boards that are there as a list.
func (u UnderMats) MarshalJSON() ([]byte, error) { return u.AppendJSON(nil), nil }

// AppendJSON appends what MarshalJSON returns.
func (u UnderMats) AppendJSON(dst []byte) []byte { return jsontext.Append(dst, u.All()) }

func (u *UnderMats) check(c *explain.Checker, at explain.Path) {
	n := u.Count()
	for i, b := range u {
		path := at.Index(i)
		if i >= n {
			if (b != UnderMat{}) { // below a board that is none
				c.Add(explain.Problem{Code: explain.Missing, Path: at.Index(n)})
			}
			continue
		}
		c.Text(path+"/name", b.Name)
		c.Measured(path+"/thickness", b.Thickness)
		c.Angle(path+"/bevel", b.Bevel, LeastBevel, MostBevel)
		c.Choice(path+"/by", string(b.By), b.By.Choices())
		c.NotNegative(path+"/reveal", b.Reveal)
		c.NotNegative(path+"/trim", b.Trim)
	}
}

// checkTopWindow refuses reveals that leave the top board no window: a strip to
// be seen that is narrower than a reverse bevel reaches in makes the windows
// above smaller than the one on the art.
func (m Mat) checkTopWindow(c *explain.Checker, at explain.Path, g Given, art explain.Path) {
	var l Layout
	m.layReveals(&l)
	reveals := l.reveals()
	if reveals >= 0 || !c.Clean(at+"/under", at+"/window", art+"/width", art+"/height") {
		return
	}
	if top := m.Window.size(g).Grown(2 * reveals); min(top.Width, top.Height) <= 0 {
		for i, u := range m.Under.All() {
			if l.Under[i].Reveal < 0 {
				c.Add(explain.Problem{
					Code: explain.OutOfRange, Path: (at + "/under").Index(i) + "/reveal", Given: c.Write(u.Reveal),
					Accepted: c.Write(u.Reveal-l.Under[i].Reveal) + " or more: the reverse bevel leaves the top board no window",
				})
			}
		}
	}
}

// layReveals finds the reveals from line to line and what they leave to be seen,
// from the top board down. It sets the runs of the bevels, which they follow
// from, and nothing else.
func (m *Mat) layReveals(l *Layout) {
	if m.Under.IsZero() {
		return
	}
	l.Bevel.Run = Run(m.Thickness, m.Bevel)
	for i, u := range m.Under.All() {
		b := &l.Under[i]
		b.Reveal, b.Bevel.Run = u.Reveal, Run(u.Thickness, u.Bevel)
		over, _ := l.Overhang(i)
		if u.By == BySeen {
			b.Reveal += b.Bevel.Run + over
		}
		b.Seen = b.Reveal - b.Bevel.Run - over
	}
}

// Overhang returns how far the boards above board i under the top one reach in
// past the line of the window right above it, each side, and which of them
// reaches farthest, the top one being 0. The face of a reverse bevel does, or the
// whole edge where the reveal between is less than nothing; else it is nothing.
//
// Source: geometry.
func (l *Layout) Overhang(i int) (over measure.Length, board int) {
	var back measure.Length // from a board's line to the one right above board i
	for k := i; k >= 0; k-- {
		run := l.Bevel.Run
		if k > 0 {
			run = l.Under[k-1].Bevel.Run
		}
		if past := max(0, -run) - back; past > over {
			over, board = past, k
		}
		if k > 0 {
			back += l.Under[k-1].Reveal
		}
	}
	return over, board
}

// reveals is what all the reveals take of each side, line to line.
func (l *Layout) reveals() measure.Length {
	var sum measure.Length
	for i := range l.Under {
		sum += l.Under[i].Reveal
	}
	return sum
}

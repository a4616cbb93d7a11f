package plane

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Pins are two pins and a thread that draw an ellipse. The pins stand at the foci, on
// the longer axis, each half of Apart from the middle. The thread is either a closed
// Loop around both pins and the pencil, or a String tied to both.
type Pins struct {
	Apart  measure.Length `json:"apart"`
	Loop   measure.Length `json:"loop"`
	String measure.Length `json:"string"`
}

// Pins returns the pins of e: 2 c apart, the root of the axes' squares' difference,
// rounded to the nearest, a loop of 2 a + 2 c, a string of 2 a.
func (e Ellipse) Pins() Pins {
	if !e.sound() {
		return Pins{}
	}
	long, short := e.axes()
	apart := measure.Leg(long, short)
	return Pins{Apart: apart, Loop: long + apart, String: long}
}

// A Trammel is a stick with a pencil at its end and two pins that slide along the
// axes. They are crossed over: the one that is Short from the pencil, half of the
// shorter axis, rides along the longer axis, and the one that is Long from it, half of
// the longer axis, along the shorter one. So the pencil is Short above the middle where
// the stick stands upright across the longer axis. Gap is from one pin to the other.
type Trammel struct {
	Long  measure.Length `json:"long"`
	Short measure.Length `json:"short"`
	Gap   measure.Length `json:"gap"`
}

// Trammel returns the marks on the stick, a, b and a - b, halves rounded down.
func (e Ellipse) Trammel() Trammel {
	if !e.sound() {
		return Trammel{}
	}
	long, short := e.axes()
	long, short = long/2, short/2
	return Trammel{Long: long, Short: short, Gap: long - short}
}

// LatheOffset is how far the ring of an oval chuck is set off the lathe's axis, a - b,
// to turn e with the tool at half of the shorter axis. It stays as it is for all
// ellipses that are [Ellipse.Grown] from one another: only the tool is moved.
func (e Ellipse) LatheOffset() measure.Length { return e.Trammel().Gap }

// An Ordinate is a place along the longer axis, from the middle, and how far across
// from there to the curve, square to the axis.
type Ordinate struct {
	Along  measure.Length `json:"along"`
	Across measure.Length `json:"across"`
}

// MaxOrdinates is how many ordinates one asks for at the most.
const MaxOrdinates = 1000

// Ordinates returns the ordinates from the middle to one end of the longer axis, a
// step apart, and that of the end. They hold for both ends and both sides. It refuses
// a step that is not above nothing, and one so short that there were more than
// [MaxOrdinates].
func (e Ellipse) Ordinates(step measure.Length) ([]Ordinate, error) {
	if err := e.Check(); err != nil {
		return nil, err
	}
	if err := checkLength(step, Reach, -1); err != nil {
		return nil, err
	}
	long, short := e.axes()
	end := long / 2
	if n := (end-1)/step + 2; end > 0 && n > MaxOrdinates {
		return nil, limited(given(fault(explain.TooMany, -1), int(n)), explain.AtMost, MaxOrdinates)
	}
	var ordinates []Ordinate
	for x := measure.Length(0); x < end; x += step {
		across, _ := measure.Leg(long<<(grain-1), x<<grain).Scale(int64(short), int64(long))
		ordinates = append(ordinates, Ordinate{x, coarse(int64(across))})
	}
	return append(ordinates, Ordinate{end, 0}), nil
}

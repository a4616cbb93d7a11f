package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes on the boards under the top one.
const (
	NoStrip      explain.Code = "mat.no_strip"
	ReverseHides explain.Code = "mat.reverse_hides"
	ShortUnder   explain.Code = "mat.short_under"
)

// appendUnder looks at each board under the top one: its strip must show, and
// its edge must not.
func (m Mat) appendUnder(notes []explain.Note, l Layout, at Places) []explain.Note {
	for i, u := range m.Under.All() {
		b, given, worked := l.Under[i], (at.Mat + "/under").Index(i), (at.Worked + "/under").Index(i)
		if b.Seen <= 0 {
			over, _ := l.Overhang(i)
			n := explain.Note{
				Level: explain.Warning, Code: NoStrip, Path: worked + "/seen",
				Values: []explain.Term{
					explain.NewTerm("reveal", b.Reveal, worked+"/reveal"),
					explain.NewTerm("run", b.Bevel.Run, worked+"/bevel/run"),
				},
				Changes: []explain.Change{{Path: given + "/reveal", To: explain.Of(u.enoughReveal(b, over)), Bound: explain.AtLeast}},
			}
			if over > 0 {
				n.Code, n.Values = ReverseHides, append(n.Values, explain.NewTerm("over", over, ""))
			}
			notes = append(notes, n)
		}
		above, side := least(b.FromTop.Minus(measure.AllSides(b.Reveal)))
		if u.Trim < above || above <= 0 {
			continue
		}
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: ShortUnder, Path: worked + "/own/" + explain.Path(side),
			Values: []explain.Term{
				explain.NewTerm("trim", u.Trim, given+"/trim"),
				explain.NewTerm("border", above, ""),
			},
			Changes: []explain.Change{{Path: given + "/trim", To: explain.Of(above / 4), Bound: explain.AtMost}},
		})
	}
	return notes
}

// enoughReveal is a reveal, measured as this one is, of which a strip shows.
func (u UnderMat) enoughReveal(b Board, over measure.Length) measure.Length {
	const strip = measure.Inch / 16
	if u.By == BySeen {
		return strip
	}
	return b.Bevel.Run + over + strip
}

// least returns the smallest of the four sides and its name.
func least(s measure.Sides) (measure.Length, string) {
	l, name := s.Left, "left"
	if s.Right < l {
		l, name = s.Right, "right"
	}
	if s.Top < l {
		l, name = s.Top, "top"
	}
	if s.Bottom < l {
		l, name = s.Bottom, "bottom"
	}
	return l, name
}

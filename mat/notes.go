package mat

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes of this room.
const (
	FallsThrough  explain.Code = "mat.falls_through"
	ThinOverlap   explain.Code = "mat.thin_overlap"
	NoBorder      explain.Code = "mat.no_border"
	OffBoard      explain.Code = "mat.off_board"
	BottomNarrow  explain.Code = "mat.bottom_narrow"
	ThickOverlap  explain.Code = "mat.thick_overlap"
	NoWeight      explain.Code = "mat.no_weight"
	CautionBlades explain.Code = "caution.mat_blade"
)

// thinOverlap is where an overlap gets thin: half of the usual 1/8 in (common
// practice).
const thinOverlap = measure.Inch / 16

// Places are where the fields stand that formulas and notes speak of.
type Places struct {
	Art    explain.Path // the art: width and height
	Mat    explain.Path // the mat as decided
	Frame  explain.Path // the frame as decided: lip and allowance
	Worked explain.Path // the mat worked out
	// Play is the mat's play where it is not the frame's allowance; the zero Expr
	// is that.
	Play explain.Expr
}

// lowestWindow is where the window that lies on the art stands.
func (at Places) lowestWindow(under int) explain.Path {
	if under == 0 {
		return at.Worked + "/window"
	}
	return (at.Worked + "/under").Index(under-1) + "/window"
}

// Notes says what a framer should know about the layout l of m.
func (m Mat) Notes(g Given, l Layout, at Places) []explain.Note {
	notes := []explain.Note{{Level: explain.Caution, Code: CautionBlades, Path: at.Worked + "/window"}}
	notes = m.appendOverlap(notes, g, l, at)
	notes = m.appendUnder(notes, l, at)
	return m.appendBorders(notes, g, l, at)
}

// appendOverlap looks at how well the mat holds the art's edge, per axis where
// the two can differ.
func (m Mat) appendOverlap(notes []explain.Note, g Given, l Layout, at Places) []explain.Note {
	lowest, window := l.Lowest(m.Under.Count()), at.lowestWindow(m.Under.Count())
	switch m.Window.By {
	case ByOverlap:
		change := explain.Change{Path: at.Mat + "/window/each_side", Bound: explain.AtLeast}
		overlap := max(g.Overlap, thinOverlap)
		if 2*overlap < min(g.Least.Width, g.Least.Height) {
			change.To = explain.Of(overlap)
		}
		return appendCovered(notes, "/width", g.Least.Width, lowest.Width, l.Covered.Width, change, window, at)
	case ByGap:
		if m.Window.EachSide > 0 {
			return notes
		}
		change := explain.Change{Path: at.Mat + "/window/each_side", To: explain.Of(max(g.Overlap, thinOverlap)), Bound: explain.AtLeast}
		return appendCovered(notes, "/width", g.Least.Width, lowest.Width, l.Covered.Width, change, window, at)
	case BySize:
		notes = m.appendGivenWindow(notes, "/width", g, g.Least.Width, lowest.Width, l.Covered.Width, window, at)
		notes = m.appendGivenWindow(notes, "/height", g, g.Least.Height, lowest.Height, l.Covered.Height, window, at)
	}
	return notes
}

func (m Mat) appendGivenWindow(notes []explain.Note, axis explain.Path, g Given, art, window, covered measure.Length, windowAt explain.Path, at Places) []explain.Note {
	change := explain.Change{Path: at.Mat + "/window" + axis, Bound: explain.AtMost}
	if wanted := art - 2*max(g.Overlap, thinOverlap); wanted > 0 {
		change.To = explain.Of(wanted)
	}
	return appendCovered(notes, axis, art, window, covered, change, windowAt, at)
}

// appendCovered notes an overlap that is missing or thin; a change without a
// value is none.
func appendCovered(notes []explain.Note, axis explain.Path, art, window, covered measure.Length, change explain.Change, windowAt explain.Path, at Places) []explain.Note {
	n := explain.Note{Level: explain.Advice, Code: ThinOverlap, Path: at.Worked + "/covered" + axis}
	switch {
	case covered <= 0:
		n.Level, n.Code = explain.Warning, FallsThrough
	case covered > art/4: // more than half of it under the mat
		n.Code, change = ThickOverlap, explain.Change{}
	case covered >= thinOverlap:
		return notes
	}
	n.Values = []explain.Term{
		explain.NewTerm("window", window, windowAt+axis),
		explain.NewTerm("art", art, at.Art+axis),
		explain.NewTerm("covered", covered, n.Path),
	}
	if change.To != (explain.Value{}) {
		n.Changes = []explain.Change{change}
	}
	return append(notes, n)
}

// appendBorders looks at what is left of the borders.
func (m Mat) appendBorders(notes []explain.Note, g Given, l Layout, at Places) []explain.Note {
	if b := m.Borders; b.Weight == Extra && b.Extra == 0 {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoWeight, Path: at.Mat + "/borders/extra"})
	} else if b.Weight == Ratio && b.Ratio == 0 {
		notes = append(notes, explain.Note{Level: explain.Advice, Code: NoWeight, Path: at.Mat + "/borders/ratio"})
	}
	off := m.sides(l.Cut, func(cut measure.Length) bool { return cut < 0 })
	for _, side := range off {
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: OffBoard, Path: at.Worked + "/cut/" + side.name,
			Values:  []explain.Term{explain.NewTerm("over", -side.is, "")},
			Changes: m.widen(string(side.name), g, l, at),
		})
	}
	if len(off) > 0 {
		return notes
	}
	for _, side := range m.sides(l.Visible, func(visible measure.Length) bool { return visible <= 0 }) {
		notes = append(notes, explain.Note{
			Level: explain.Warning, Code: NoBorder, Path: at.Worked + "/visible/" + side.name,
			Values:  []explain.Term{explain.NewTerm("hidden", -side.is, "")},
			Changes: m.widen(string(side.name), g, l, at),
		})
	}
	// The odd nanometer that one of two equal borders takes is no difference.
	if l.Visible.Top-l.Visible.Bottom > measure.Nanometer {
		n := explain.Note{
			Level: explain.Advice, Code: BottomNarrow, Path: at.Worked + "/visible/bottom",
			Values: []explain.Term{
				explain.NewTerm("bottom", l.Visible.Bottom, at.Worked+"/visible/bottom"),
				explain.NewTerm("top", l.Visible.Top, at.Worked+"/visible/top"),
			},
		}
		if m.Borders.By != ByBoard {
			n.Changes = []explain.Change{{Path: at.Mat + "/borders/bottom", To: explain.Of(m.Borders.Top), Bound: explain.AtLeast}}
		}
		notes = append(notes, n)
	}
	return notes
}

// A border is one side of a mat.
type border struct {
	name explain.Path
	is   measure.Length
}

// sides are those that are wrong; of two that one field of the mat widens, the first.
func (m Mat) sides(s measure.Sides, wrong func(measure.Length) bool) []border {
	all := [...]border{{"left", s.Left}, {"right", s.Right}, {"top", s.Top}, {"bottom", s.Bottom}}
	var found []border
	for i, b := range all {
		twin := m.Borders.By == ByBoard || b.name == "bottom" && m.Borders.Weight != Unweighted
		if wrong(b.is) && !(i%2 == 1 && twin && wrong(all[i-1].is)) {
			found = append(found, b)
		}
	}
	return found
}

// widen is the change that gives a border back what the shop usually shows: of
// the border itself, or of the board that is given. A bottom border that
// follows from the top one is widened there.
func (m Mat) widen(side string, g Given, l Layout, at Places) []explain.Change {
	if g.Border <= 0 {
		return nil
	}
	if side == "bottom" && m.Borders.Weight != Unweighted {
		side = "top"
	}
	cover := map[string]measure.Length{
		"left": l.Cover.Left, "right": l.Cover.Right, "top": l.Cover.Top, "bottom": l.Cover.Bottom,
	}[side]
	within := m.Borders.within(l.reveals())
	change := explain.Change{Path: at.Mat + "/borders/" + explain.Path(side), To: explain.Of(max(g.Border, -cover) + within)}
	switch m.Borders.By {
	case ByCut:
		change.To = explain.Of(g.Border + cover + within)
	case ByBoard:
		dimension, window := "width", l.Window.Width
		if side == "top" || side == "bottom" {
			dimension, window = "height", l.Window.Height
		}
		change.Path, change.Bound = at.Mat+"/borders/board/"+explain.Path(dimension), explain.AtLeast
		change.To = explain.Of(window + 2*max(cover, 0) + m.Borders.both(dimension, g.Border+measure.Nanometer))
	}
	return []explain.Change{change}
}

// both is what two borders of a given board take together so that the narrower
// one has at least this much.
func (b Borders) both(dimension string, narrower measure.Length) measure.Length {
	if dimension == "width" {
		return 2 * narrower
	}
	switch b.Weight {
	case Extra:
		return 2*narrower + b.Extra
	case Ratio:
		return 2*narrower + partOf(narrower, b) + measure.Nanometer
	case Optical:
		return 4 * narrower // the top one has a quarter at least
	}
	return 2 * narrower
}

// Unused lists the fields of m, as paths from the mat, that hold something and
// do not count, because another way was chosen. Usual is what the shop writes
// into a new mat: its values are no decision.
func (m Mat) Unused(usual Mat) []explain.Path {
	var unused []explain.Path
	idle := func(path explain.Path, counts bool, l, usual measure.Length) {
		if !counts && l != 0 && l != usual {
			unused = append(unused, path)
		}
	}
	w, b := m.Window, m.Borders
	idle("/window/each_side", w.By != BySize, w.EachSide, usual.Window.EachSide)
	idle("/window/width", w.By == BySize, w.Width, 0)
	idle("/window/height", w.By == BySize, w.Height, 0)
	sides := b.By != ByBoard
	idle("/borders/left", sides, b.Left, usual.Borders.Left)
	idle("/borders/right", sides, b.Right, usual.Borders.Right)
	idle("/borders/top", sides, b.Top, usual.Borders.Top)
	idle("/borders/bottom", sides && b.Weight == Unweighted, b.Bottom, usual.Borders.Bottom)
	idle("/borders/extra", b.Weight == Extra, b.Extra, usual.Borders.Extra)
	if b.Weight != Ratio && b.Ratio != 0 {
		unused = append(unused, "/borders/ratio")
	}
	idle("/borders/board/width", b.By == ByBoard, b.Board.Width, 0)
	idle("/borders/board/height", b.By == ByBoard, b.Board.Height, 0)
	return unused
}

package framing_test

import (
	"fmt"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// TestShownSet holds the integers that a plan shows against the laws of the
// bench, whatever the order and however coarse the fineness: everything goes
// in, everything adds up, nothing drops out unless a note says so.
func TestShownSet(t *testing.T) {
	orders := 20_000
	if slow || testing.Short() {
		orders = 2_000
	}
	d := newDice(1)
	ways := shows()
	seen := map[string]int{}
	for i := range orders {
		o := d.order(1)
		for _, o.Show = range ways {
			plan := work(t, o)
			l := law{o.Pieces[0], plan.Pieces[0], o.Show.Fineness, nil}
			l.frames()
			l.layers()
			if !o.Pieces[0].Mat.IsZero() {
				l.mat()
			}
			l.notes(t, o, seen)
			for _, broken := range l.broken {
				t.Errorf("order %d shown %s to %s: %s\n%s", i, o.Show.As, o.Show.Fineness, broken, marshal(t, o))
			}
			if t.Failed() {
				return
			}
		}
	}
	for _, must := range []string{string(framing.Uncovered), string(framing.UncoveredEver), string(molding.DropsOut), "holds"} {
		if seen[must] == 0 {
			t.Errorf("no draw led to %q: the orders are too tame", must)
		}
	}
}

// A law holds one piece against its plan.
type law struct {
	framing.Piece
	plan   framing.PiecePlan
	step   measure.Length
	broken []string
}

func (l *law) equal(what string, got, want measure.Length) {
	if got != want {
		l.broken = append(l.broken, fmt.Sprintf("%s is %s, must be %s", what, got, want))
	}
}

func (l *law) that(ok bool, what string, values ...measure.Length) {
	if !ok {
		l.broken = append(l.broken, fmt.Sprintf("%s: %v", what, values))
	}
}

// marked requires that one can set a length off on a rule.
func (l *law) marked(what string, of ...measure.Length) {
	for _, v := range of {
		l.that(v%l.step == 0, what+" lies between two marks", v)
	}
}

func each(s measure.Size) [2]measure.Length { return [2]measure.Length{s.Width, s.Height} }

// inner is the frame that the package lies in, as decided and as worked.
func (l *law) inner() (molding.Frame, framing.FramePlan) {
	if l.Liner.IsZero() {
		return l.Frame, l.plan.Frame
	}
	return l.Liner, l.plan.Liner
}

// frames: the liner around the package, the frame around the liner.
func (l *law) frames() {
	f, p := l.inner()
	l.frame(f, p, p.Package.Exact())
	if l.Liner.IsZero() {
		return
	}
	l.equal("the frame's package", l.plan.Frame.Package.Width.Shown, p.Outside.Width.Shown)
	l.equal("the frame's package", l.plan.Frame.Package.Height.Shown, p.Outside.Height.Shown)
	l.frame(l.Frame, l.plan.Frame, p.Outside.Shown())
}

// frame: rails on the marks, the smallest that still make the opening; or, where
// the outside is fixed, the largest that are not larger.
func (l *law) frame(f molding.Frame, p framing.FramePlan, around measure.Size) {
	l.equal("the long point of top and bottom", p.Horizontal.LongPoint.Shown, p.Outside.Width.Shown)
	l.equal("the long point of the sides", p.Vertical.LongPoint.Shown, p.Outside.Height.Shown)
	l.equal("the short point of top and bottom", p.Horizontal.ShortPoint.Shown, p.Sight.Width.Shown)
	l.equal("the short point of the sides", p.Vertical.ShortPoint.Shown, p.Sight.Height.Shown)
	l.equal("footage", p.Footage.Shown, 2*p.Outside.Width.Shown+2*p.Outside.Height.Shown)
	room := f.Allowance
	if f.Kind == molding.Floater {
		room = f.Gap + f.Gap
	}
	for i, outside := range each(p.Outside.Shown()) {
		opening, sight := each(p.Opening.Shown())[i], each(p.Sight.Shown())[i]
		pkg := each(around)[i]
		l.marked("outside and sight", outside, sight)
		l.equal("opening", opening, outside-2*f.Face+2*f.Lip)
		if f.Made == molding.ToFit {
			l.that(opening-pkg >= room, "the package does not go in with its allowance", opening, pkg)
			l.that(opening-l.step-pkg < room, "a rail one step shorter would do", opening, pkg)
		} else {
			l.that(opening-pkg <= room, "a rail is longer than the space", opening, pkg)
			l.that(opening+l.step-pkg > room, "a rail one step longer would go into the space", opening, pkg)
		}
		l.that(sight <= opening-2*f.Lip && sight+l.step > opening-2*f.Lip, "sight claims more or less than is seen", sight, opening)
	}
}

// layers: what is cut to fit is the largest that goes in with its play.
func (l *law) layers() {
	for _, part := range l.plan.Layers {
		f, p := l.Frame, l.plan.Frame
		if part.In == framing.LinerLayer {
			f, p = l.Liner, l.plan.Liner
		}
		made, cut := l.made(f, part.Part)
		for i, size := range each(part.Size.Shown()) {
			opening := each(p.Opening.Shown())[i]
			least := size
			if part.Part == framing.ArtLayer {
				least = each(l.Art.Least())[i]
				l.equal("art", size, each(l.Art.Greatest())[i])
			}
			play, bite := each(part.Play.Shown())[i], each(part.Bite.Shown())[i]
			l.equal("play of "+string(part.Part), play, opening-size)
			l.equal("bite on "+string(part.Part), bite, f.Lip-(opening-least))
			switch {
			case part.CutToFit:
				l.marked("a size cut to fit", size)
				l.that(play >= made, "cut to fit with too little play", play, made)
				l.that(opening-(size+l.step) < made, "one step more would go in", size, opening)
			case part.Part == framing.LinerLayer:
				l.equal("the liner", size, each(l.plan.Liner.Outside.Shown())[i])
			case part.Part == framing.ArtLayer || part.Part == framing.MatLayer:
				l.that(play >= made || l.told(framing.Binds, framing.BindsEver), "the package has too little play and nothing says so", play, made)
			default:
				l.equal("a given size", size, each(cut.Size)[i])
			}
		}
	}
}

// told reports whether one of the notes is there.
func (l *law) told(codes ...explain.Code) bool {
	for _, code := range codes {
		if hasNote(l.plan, code) {
			return true
		}
	}
	return false
}

// made is the play that a part is made with.
func (l *law) made(f molding.Frame, part framing.LayerPart) (measure.Length, molding.Cut) {
	var c molding.Cut
	switch part {
	case framing.GlazingLayer:
		c = molding.Cut{Clearance: l.Glazing.Clearance, Size: l.Glazing.Size}
	case framing.MountLayer:
		c = l.Mount.Cut
	case framing.BackingLayer:
		c = l.Backing.Cut
	}
	if c.Clearance > f.Allowance {
		return c.Clearance, c
	}
	return f.Allowance, c
}

// mat: the numbers add up on the blank and in the sight opening, and a window
// is rounded the safe way.
func (l *law) mat() {
	m, p := l.Mat, l.plan.Mat
	_, frame := l.inner()
	lowest, lowestExact := p.Window, p.Window.Exact()
	if n := len(p.Under); n > 0 {
		lowest, lowestExact = p.Under[n-1].Window, p.Under[n-1].Window.Exact()
	}
	l.under()
	given := m.Borders.By == mat.ByBoard
	for i, window := range each(p.Window.Shown()) {
		blank, sight, exact := each(p.Blank.Shown())[i], each(frame.Sight.Shown())[i], each(lowestExact)[i]
		cut, visible, seated, cover := pair(p.Cut.Shown(), i), pair(p.Visible.Shown(), i), pair(p.Seated.Shown(), i), pair(p.Cover.Shown(), i)
		l.equal("window and cut borders", cut[0]+window+cut[1], blank)
		l.equal("window and visible borders", visible[0]+window+visible[1], sight)
		l.equal("window and seated borders", seated[0]+window+seated[1], sight)
		l.equal("package", each(frame.Package.Shown())[i], blank)
		least := each(l.Art.Least())[i]
		window := each(lowest.Shown())[i] // from here on, the one on the art
		half, _ := (least - window).Half()
		l.equal("covered", each(p.Covered.Shown())[i], half)
		l.marked("a window", window)
		l.equal("what is seen of the first border", visible[0], cut[0]-cover[0])
		l.equal("what is seen of the last border", visible[1], cut[1]-cover[1])
		first, odd := (blank - sight).Half()
		l.equal("what the lip hides of the first border", cover[0], first)
		l.equal("what the lip hides of the last border", cover[1], first+odd)
		for k := range 2 {
			l.equal("cover", cover[k], cut[k]-visible[k])
		}
		if given {
			l.equal("a given board", blank, each(m.Borders.Board)[i])
			l.marked("the first border as cut", cut[0])
		} else {
			l.marked("a blank or a border as cut", blank, cut[0], cut[1])
		}
		if e := pair(p.Cut.Exact(), i); e[0] == e[1] && !given {
			l.that(cut[1] == cut[0] || cut[1] == cut[0]+l.step, "borders that should be equal", cut[:]...)
		}
		if e := pair(p.Cut.Exact(), i); e[0] == e[1] && given {
			l.that(cut[1]-cut[0] <= l.step && cut[0]-cut[1] <= l.step, "the window is not in the middle of its board", cut[:]...)
		}
		switch m.Window.By {
		case mat.ByGap:
			gap := 2 * m.Window.EachSide
			greatest := each(l.Art.Greatest())[i]
			l.that(window-greatest >= gap && window-l.step-greatest < gap, "the gap", window, greatest, gap)
		case mat.ByOverlap:
			overlap := 2 * m.Window.EachSide
			l.that(least-window >= overlap && least-(window+l.step) < overlap, "the overlap", window, least, overlap)
		default:
			l.that(window <= exact && window+l.step > exact, "a given window", window, exact)
		}
	}
	l.equal("window from the left, on the back", p.Back.Left.Shown, p.Cut.Right.Shown)
	l.equal("window from the top, on the back", p.Back.Top.Shown, p.Cut.Top.Shown)
}

// under: the boards below the top one, whose numbers add up on their own blanks
// and from the top board's edge.
func (l *law) under() {
	above, cut, blank := l.plan.Mat.Window.Shown(), l.plan.Mat.Cut.Shown(), l.plan.Mat.Blank.Shown()
	open := min(above.Width, l.plan.Mat.Bevel.Face.Width.Shown) // from the front
	for _, u := range l.plan.Mat.Under {
		l.marked("a reveal", u.Reveal.Shown)
		l.equal("the strip seen, both sides", 2*u.Seen.Shown, open-u.Bevel.Face.Width.Shown)
		open = min(open, u.Window.Width.Shown, u.Bevel.Face.Width.Shown)
		for i, window := range each(u.Window.Shown()) {
			l.equal("window and reveals", window+2*u.Reveal.Shown, each(above)[i])
			from, own := pair(u.FromTop.Shown(), i), pair(u.Own.Shown(), i)
			l.equal("borders from the top board", from[0]+window+from[1], each(blank)[i])
			l.equal("own borders", own[0]+window+own[1], each(u.Blank.Shown())[i])
			l.equal("the reveal beside the border", from[0]-pair(cut, i)[0], u.Reveal.Shown)
			l.marked("a lower blank", each(u.Blank.Shown())[i])
		}
		above, cut = u.Window.Shown(), u.FromTop.Shown()
	}
}

// pair is left and right, or top and bottom.
func pair(s measure.Sides, i int) [2]measure.Length {
	if i == 0 {
		return [2]measure.Length{s.Left, s.Right}
	}
	return [2]measure.Length{s.Top, s.Bottom}
}

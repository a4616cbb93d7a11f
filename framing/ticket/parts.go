package ticket

import (
	"slices"
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// canvas writes what to cut for a canvas that is to be stretched.
func (t *writer) canvas(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	c := &p.Canvas
	t.row("canvas to cut", t.size(c.Cut), pieces(p.Quantity))
	t.row("", "turned round the back ", t.given(order.Art.Stretch.Turn), " each side", t.usual(at+"/turn"))
	t.row("bars", strconv.Itoa(2*p.Quantity), " of ", c.Bars.Width.Text(), ", ", strconv.Itoa(2*p.Quantity), " of ", c.Bars.Height.Text(),
		", ", t.given(order.Art.Thickness), " deep")
	t.row("united inches", c.United.Text(), " of the bars")
}

// mat writes the cuts of a mat in the order of work: the board, the line on
// its back, the window; then the boards under it.
func (t *writer) mat(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	m := &p.Mat
	t.row("blank", t.size(m.Blank), pieces(p.Quantity))
	t.row("window", t.size(m.Window), pieces(p.Quantity))
	t.row("on the back, from", "the left ", m.Back.Left.Text(), ", the top ", m.Back.Top.Text())
	t.row("bevel", order.Mat.Bevel.String(), " from the face", t.usual(at+"/bevel"), "; ", t.bevelRun(m.Bevel))
	t.borders("borders as cut", m.Cut)
	t.borders("borders as seen", m.Visible)
	t.row("once seated", "top ", m.Seated.Top.Text(), ", bottom ", m.Seated.Bottom.Text())
	t.row(coverLabel(m.Covered.Width.Shown), t.coveredText(m), t.usual(at+"/window/each_side"))
	for k, u := range m.Under {
		b, under := order.Mat.Under[k], (at + "/under").Index(k)
		t.sheet.under(clean("Under it", title(b.Name), ", ", t.thick(b.Thickness), " thick", t.usual(under+"/thickness")))
		t.row("blank", t.size(u.Blank), pieces(p.Quantity))
		t.row("", "trimmed ", t.given(b.Trim), " each side", t.usual(under+"/trim"))
		t.row("window", t.size(u.Window), pieces(p.Quantity))
		t.row("reveal", t.one(u.Reveal), " line to line", t.usual(under+"/reveal"))
		seen := u.Seen.Text()
		if u.Seen.Shown <= 0 {
			seen = "nothing"
		}
		t.row("", seen, " of it seen; bevel ", b.Bevel.String(), ", ", t.bevelRun(u.Bevel))
		t.borders("from its own edge", u.Own)
		t.borders("from the top mat's", u.FromTop)
	}
}

// bevelRun says what is seen of a bevel, or how far a reverse one reaches in.
func (t *writer) bevelRun(b framing.BevelPlan) string {
	if run := b.Run.Shown; run < 0 {
		return "reaches in " + t.given(-run)
	}
	return "shows " + b.Run.Text()
}

// coverLabel names what Covered is: an overlap, or a gap.
func coverLabel(covered measure.Length) string {
	if covered < 0 {
		return "clear of the art"
	}
	return "covers the art"
}

// coveredText says each side and, since the two are easily taken for one
// another, how much that is in total.
func (t *writer) coveredText(m *framing.MatPlan) string {
	each := func(f framing.Figure) string {
		l := max(f.Shown, -f.Shown)
		return t.given(l) + " each side (" + t.given(2*l) + " total)"
	}
	w, h := each(m.Covered.Width), each(m.Covered.Height)
	if w == h {
		return w
	}
	return w + "; above and below " + h
}

// borders writes a row of four borders, and below it the exact ones where they
// differ.
func (t *writer) borders(label string, s framing.SidesFigure) {
	shown := sides([4]string{s.Left.Text(), s.Right.Text(), s.Top.Text(), s.Bottom.Text()})
	if s.Exact() == s.Shown() {
		t.row(label, pad(shown, valueWidth), "[exact]")
		return
	}
	t.row(label, shown)
	e := s.Exact()
	t.row("", "[", sides([4]string{t.given(e.Left), t.given(e.Right), t.given(e.Top), t.given(e.Bottom)}), "]")
}

// sides says left, right, top and bottom as shortly as they allow.
func sides(s [4]string) string {
	left, right, top, bottom := s[0], s[1], s[2], s[3]
	switch {
	case left == right && left == top && left == bottom:
		return left + " all round"
	case left == right && left == top:
		return left + ", bottom " + bottom
	case left == right:
		return left + " at the sides, top " + top + ", bottom " + bottom
	}
	return "left " + left + ", right " + right + ", top " + top + ", bottom " + bottom
}

// rails writes what to cut of a molding, or how a frame that is there measures.
func (t *writer) rails(p *framing.PiecePlan, f framing.FramePlan, order molding.Frame, at explain.Path) {
	t.molding(order, at)
	t.ready(order)
	if order.Made == molding.ReadyMade {
		t.row("rails", f.Horizontal.LongPoint.Text(), " and ", f.Vertical.LongPoint.Text(), ", long point to long point")
	} else {
		t.rail("top and bottom", f.Horizontal, 2*p.Quantity)
		t.rail("sides", f.Vertical, 2*p.Quantity)
		t.row("both ends", f.Horizontal.Saw.Text(), " on the saw's scale, from square; ",
			f.Horizontal.Edge.Text(), " to the edge")
	}
	t.fixed(order)
	t.row("opening", t.size(f.Opening))
	t.row("sight size", t.size(f.Sight))
	t.row("outside", t.size(f.Outside))
	if order.Made != molding.ReadyMade {
		t.footage(f.Footage.Shown, p.Quantity)
	}
	t.dustCover(f, p.Quantity)
}

// run writes a length of molding as it is bought: by the foot, or in
// millimeters.
func (t *writer) run(l measure.Length) string {
	f := t.format
	if f.Style == measure.Fraction {
		f.Style = measure.FeetInches
	}
	return string(explain.Of(l).AppendReadable(nil, f))
}

func (t *writer) rail(label string, r framing.RailPlan, count int) {
	t.row(label, t.count(count), t.one(r.LongPoint))
	t.row("", pad("", 6), "long point to long point; short points ", r.ShortPoint.Text())
}

func (t *writer) rabbetDepth(l measure.Length) string {
	if l == 0 {
		return "not given"
	}
	return t.given(l)
}

// rabbet writes the parts that lie in the rabbet of one frame, from the front.
func (t *writer) rabbet(p *framing.PiecePlan, order *framing.Piece, frame molding.Frame, in framing.LayerPart, d framing.DepthPlan, at explain.Path) {
	for _, l := range p.Layers {
		if l.In != in {
			continue
		}
		t.row(word(string(l.Part)), t.size(l.Size), made(l))
		t.row("", t.lies("play ", "too large by ", l.Play), t.holds(l))
		if l.Part == framing.ArtLayer && order.Art.Outline.By == framing.ByAround {
			t.row("", "the art on it is ", t.given(order.Art.Width), " x ", t.given(order.Art.Height))
		}
		if l.Part == framing.ArtLayer && order.Art.Varies != (measure.Size{}) {
			t.row("", "the play where it is largest, the hold where it is smallest")
		}
		if of := t.madeOf(l.Part, order); of != "" {
			t.row("", of, t.usual((at + "/" + explain.Path(l.Part) + "/thickness")))
		}
	}
	if s := order.Spacer; !s.IsZero() && slices.ContainsFunc(d.Stack, func(p framing.StackPlan) bool { return p.Part == framing.SpacerLayer }) {
		t.row("spacer", t.given(s.Width), " wide, ", t.given(s.Depth), " deep", t.usual(at+"/spacer/depth"), ", behind the ", string(s.Under), title(s.Name))
	}
	if f := p.Float; f != (framing.FloatPlan{}) && frame.Kind == molding.Floater {
		t.row("gap each side", t.both(f.Least))
		if f.Most != f.Least {
			t.row("", t.both(f.Most), " where the art is smallest")
		}
	}
	t.depth(d, order, frame)
}

// both is a gap across and upright: of a regular outline it is one.
func (t *writer) both(s framing.SizeFigure) string {
	if t.flats {
		return s.Width.Text()
	}
	return s.Text()
}

// depth writes how thick everything is together and what that leaves.
func (t *writer) depth(d framing.DepthPlan, order *framing.Piece, frame molding.Frame) {
	var parts []string
	for _, s := range d.Stack {
		if s.Thickness.Exact == 0 {
			continue
		}
		name := word(string(s.Part))
		if s.Part == framing.PackageLayer {
			name = "proud of the liner"
		}
		text := name + " " + t.thick(s.Thickness.Exact)
		if s.Inside {
			text += " (inside the spacer)"
		}
		parts = append(parts, text)
	}
	if len(parts) > 0 {
		t.row("in the depth", strings.Join(parts, ", "))
	}
	unknown := order.Art.Kind != framing.Paper && order.Art.Thickness == 0
	if unknown && len(parts) == 0 {
		t.row("package", "the art alone, whose thickness is not given")
		return
	}
	if unknown {
		t.row("package", t.one(d.Package), " and the art, whose thickness is not given")
		return
	}
	t.row("package", t.one(d.Package), " thick")
	switch {
	case frame.Rabbet == 0:
	case d.Clear.Shown < 0:
		t.row("stands proud", t.given(-d.Clear.Shown))
	case frame.Kind == molding.Floater:
		t.row("stands back", t.one(d.Clear), " behind the front")
	default:
		t.row("clear behind it", t.one(d.Clear))
	}
	if frame.Kind != molding.Floater {
		t.row("rabbet wanted", t.one(d.Wanted), " or more")
	}
}

// mass writes what the parts weigh.
func (t *writer) mass(p *framing.PiecePlan) {
	var parts, unknown []string
	for _, m := range p.Mass.Parts {
		text := word(string(m.Part)) + " " + m.Mass.Text()
		if m.Uncertain {
			text += " (about)"
		}
		parts = append(parts, text)
	}
	for _, u := range p.Mass.Unknown {
		unknown = append(unknown, word(string(u)))
	}
	if len(parts) == 0 {
		t.row("one piece", "not known: ", strings.Join(unknown, ", "))
		return
	}
	t.row("one piece", p.Mass.Total.Text(), "; at most ", p.Mass.Heaviest.Text())
	if len(unknown) > 0 {
		t.row("", "and what is not known: ", strings.Join(unknown, ", "))
	}
	if len(parts) > 1 {
		parts[len(parts)-1] += "; each rounded up"
	}
	t.row("", strings.Join(parts, ", "))
}

// holds says how far the lip covers a part that goes in.
func (t *writer) holds(l framing.LayerPlan) string {
	if l.Play.Width.Shown < 0 || l.Play.Height.Shown < 0 {
		return ""
	}
	return "; " + t.lies("lip holds ", "clear of the lip by ", l.Bite)
}

// lies says both dimensions of a play or a hold, or what it is where it is less
// than nothing. Of a regular outline they are one.
func (t *writer) lies(good, bad string, s framing.SizeFigure) string {
	if t.flats {
		f, word := s.Width.Aside(good, bad)
		return word + f.Text()
	}
	if s.Width.Shown >= 0 && s.Height.Shown >= 0 {
		return good + s.Text()
	}
	one := func(name string, f framing.Figure) string {
		text := f.Text()
		if less, ok := strings.CutPrefix(text, "-"); ok {
			return bad + less + name
		}
		return good + text + name
	}
	return one(" across", s.Width) + ", " + one(" upright", s.Height)
}

// pieces counts equal parts.
func pieces(quantity int) string {
	if quantity == 1 {
		return ""
	}
	return "  " + strconv.Itoa(quantity) + " of them"
}

func made(l framing.LayerPlan) string {
	switch {
	case l.CutToFit:
		return "  cut"
	case l.Part == framing.ArtLayer, l.Part == framing.LinerLayer:
		return ""
	}
	return "  as given"
}

// word is a choice as one says it.
func word(choice string) string { return strings.ReplaceAll(choice, "_", " ") }

// madeOf says what a pane or a sheet is made of.
func (t *writer) madeOf(p framing.LayerPart, order *framing.Piece) string {
	switch p {
	case framing.GlazingLayer:
		return word(string(order.Glazing.Material)) + title(order.Glazing.Name) + ", " + t.thick(order.Glazing.Thickness)
	case framing.MountLayer:
		return word(string(order.Mount.Material)) + title(order.Mount.Name) + ", " + t.thick(order.Mount.Thickness)
	case framing.BackingLayer:
		return word(string(order.Backing.Material)) + title(order.Backing.Name) + ", " + t.thick(order.Backing.Thickness)
	}
	return ""
}

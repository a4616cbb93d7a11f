package framing

import "github.com/fairmiter/fairmiter/framing/explain"

// Figures lists the paths of all figures of the piece i, in the order of work:
// the canvas, the mat, the frames, the parts in the rabbets, the depth, what it
// weighs and how it hangs. Each of them has a working; see [Plan.Explain]. A piece
// that was not worked has none.
func (p Plan) Figures(i int) []explain.Path {
	if i < 0 || i >= len(p.Pieces) || !p.Pieces[i].Worked {
		return nil
	}
	l := lister{at: placesOf(i).worked}
	l.piece(&p.Pieces[i])
	return l.paths
}

// A lister lists paths below one place.
type lister struct {
	at    explain.Path
	paths []explain.Path
}

// Names of the figures of a size and of four sides.
var (
	sizeNames = [...]explain.Path{"width", "height"}
	sideNames = [...]explain.Path{"left", "right", "top", "bottom"}
)

func (l *lister) add(group explain.Path, names ...explain.Path) {
	for _, name := range names {
		l.paths = append(l.paths, l.at+group+"/"+name)
	}
}

func (l *lister) sizes(groups ...explain.Path) {
	for _, g := range groups {
		l.add(g, sizeNames[:]...)
	}
}

func (l *lister) sides(groups ...explain.Path) {
	for _, g := range groups {
		l.add(g, sideNames[:]...)
	}
}

func (l *lister) piece(p *PiecePlan) {
	if (p.Canvas != CanvasPlan{}) {
		l.sizes("/canvas/cut", "/canvas/bars")
		l.add("/canvas", "united")
	}
	if !p.Mat.IsZero() {
		l.mat(&p.Mat)
	}
	if !p.Liner.IsZero() {
		l.frame("/liner")
	}
	l.frames(p)
	if (p.Float != FloatPlan{}) {
		l.sizes("/float/least", "/float/most")
	}
	for k := range p.Layers {
		layer := explain.Path("/layers").Index(k)
		l.sizes(layer+"/size", layer+"/play", layer+"/bite")
	}
	l.depth("/depth", p.Depth)
	if !p.LinerDepth.IsZero() {
		l.depth("/liner_depth", p.LinerDepth)
	}
	for k := range p.Mass.Parts {
		l.add(explain.Path("/mass/parts").Index(k), "mass", "heaviest")
	}
	l.add("/mass", "total", "heaviest")
	if !p.Hang.IsZero() {
		l.hang(&p.Hang)
	}
}

func (l *lister) mat(m *MatPlan) {
	l.sizes("/mat/window")
	l.bevel("/mat")
	l.sizes("/mat/covered")
	l.sides("/mat/cover", "/mat/cut", "/mat/visible", "/mat/seated")
	l.sizes("/mat/blank")
	l.add("/mat/back", "left", "top")
	for k := range m.Under {
		under := explain.Path("/mat/under").Index(k)
		l.add(under, "reveal", "seen")
		l.sizes(under + "/window")
		l.bevel(under)
		l.sizes(under + "/blank")
		l.sides(under+"/own", under+"/from_top")
	}
}

func (l *lister) bevel(board explain.Path) {
	l.add(board+"/bevel", "run", "slope")
	l.sizes(board + "/bevel/face")
}

func (l *lister) frame(at explain.Path) {
	l.sizes(at+"/package", at+"/opening", at+"/sight", at+"/outside")
	l.add(at+"/horizontal", "long_point", "short_point", "saw", "edge")
	l.add(at+"/vertical", "long_point", "short_point", "saw", "edge")
	l.add(at, "footage")
}

// frames lists the figures of the frame, whatever its shape.
func (l *lister) frames(p *PiecePlan) {
	switch {
	case p.Shape.IsZero():
		l.frame("/frame")
	case !p.Frame.IsZero():
		l.sizes("/frame/package", "/frame/opening", "/frame/sight", "/frame/outside")
	}
	if !p.Frame.IsZero() {
		l.sizes("/frame/dust_cover")
	}
	if Shapes && !p.Shape.IsZero() {
		l.shape(&p.Shape)
	}
}

func (l *lister) depth(at explain.Path, d DepthPlan) {
	for k := range d.Stack {
		l.add((at + "/stack").Index(k), "thickness")
	}
	l.add(at, "package", "clear", "wanted")
}

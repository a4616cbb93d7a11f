package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// masses are what the parts of a piece weigh.
type masses struct {
	parts           []partMass
	unknown         []LayerPart
	total, heaviest measure.Mass
}

// A partMass is one part and what it weighs.
type partMass struct {
	part           LayerPart
	mass, heaviest measure.Mass
	body           body
}

// uncertain reports whether the mass rests on a density that is not known for
// certain.
func (p partMass) uncertain() bool { return p.body.material.Uncertain && p.body.given == 0 }

// A body is what a part is made of: boxes of one material. Where the mass is
// given it has none.
type body struct {
	boxes    []box
	material material.Entry
	// given is the mass where the order says it, at givenAt.
	given   measure.Mass
	givenAt explain.Path
	// thickest is how much thicker the heaviest part is.
	thicker measure.Length
}

// A box is a block of a material, so many times; less is what is taken away
// from the others.
type box struct {
	times         int
	over          int // the times are of so many parts of it; 0 is whole ones
	long, wide    dim
	thick         dim
	less, flexing bool // flexing: the thickness is the one that can be more
}

// A dim is one dimension of a box: a value with its name and place, or what one
// such value leaves of another.
type dim struct {
	value measure.Length
	key   explain.Key
	// root, group and name make the path of the value. They are joined only for
	// someone who asks: see dim.path.
	root, group, name explain.Path
	// from and less are what the value is the difference of, if it is one: less
	// is taken off so many times, down to nothing.
	from, less *dim
	times      int
}

// leaves is what is left of d when less is taken off so many times.
func (d dim) leaves(less dim, times int) dim {
	return dim{
		value: max(0, d.value-measure.Length(times)*less.value), key: "between",
		from: &d, less: &less, times: times,
	}
}

// weigh weighs every part whose material and size are known.
func (w *worker) weigh(x exactPiece) masses {
	m := masses{parts: make([]partMass, 0, len(x.layers)+1)}
	under := 0
	for _, l := range x.layers {
		i := 0
		if l.part == UnderMatLayer {
			i = under
			under++
		}
		m.add(l.part, w.bodyOf(x, l, i))
	}
	frame := w.railBody(x.frame, w.Frame, w.framePlaces())
	if Shapes && w.shaped() {
		frame = w.shapedRails(x)
	}
	m.add(FrameLayer, frame)
	return m
}

// add weighs a body; one without boxes and without a given mass is not known.
func (m *masses) add(part LayerPart, b body) {
	if len(b.boxes) == 0 && b.given == 0 {
		m.unknown = append(m.unknown, part)
		return
	}
	p := partMass{part: part, body: b}
	p.mass, p.heaviest = b.weigh()
	m.parts = append(m.parts, p)
	m.total += p.mass
	m.heaviest += p.heaviest
}

// weigh returns what the body weighs, and what it can weigh.
func (b body) weigh() (mass, heaviest measure.Mass) {
	if b.given != 0 {
		return b.given, b.given
	}
	for _, x := range b.boxes {
		mass += x.of(material.BoxMass(x.long.value, x.wide.value, x.thick.value, b.material.Nominal))
		heaviest += x.of(material.BoxMass(x.long.value, x.wide.value, x.thick.value+b.more(x), b.material.Heaviest))
	}
	return mass, heaviest
}

// of is what so many times a box of this mass weigh.
func (x box) of(mass measure.Mass) measure.Mass {
	n := measure.Mass(x.times)
	if x.less {
		n = -n
	}
	if x.over == 0 {
		return n * mass
	}
	part, _ := measure.Length(mass).Scale(int64(n), int64(x.over))
	return measure.Mass(part)
}

// more is how much thicker a box can be.
func (b body) more(x box) measure.Length {
	if x.flexing {
		return b.thicker
	}
	return 0
}

// bodyOf is the body of a layer; number counts the boards under the top mat.
func (w *worker) bodyOf(x exactPiece, l layer, number int) body {
	thick := dim{value: l.thickness, key: "thickness", root: l.thicknessAt}
	if Shapes && w.form() != rectangular {
		return w.shapedBody(x, l, thick)
	}
	switch l.part {
	case GlazingLayer:
		b := sheetBody(w.layerSize(x, l), thick, string(w.Glazing.Material))
		b.thicker = material.HeaviestThickness(string(w.Glazing.Material), l.thickness) - l.thickness
		return b
	case SpacerLayer:
		return w.stripBody(x, thick)
	case MatLayer:
		return boardBody(sizeDims(x.mat.Blank, "blank", w.at.worked, "/mat/blank"), sizeDims(x.mat.Window, "window", w.at.worked, "/mat/window"), thick)
	case UnderMatLayer:
		at, b := (w.at.worked + "/mat/under").Index(number), x.mat.Under[number]
		return boardBody(sizeDims(b.Blank, "blank", at, "/blank"), sizeDims(b.Window, "window", at, "/window"), thick)
	case MountLayer:
		return sheetBody(w.layerSize(x, l), thick, string(w.Mount.Material))
	case BackingLayer:
		return sheetBody(w.layerSize(x, l), thick, string(w.Backing.Material))
	case LinerLayer:
		return w.railBody(x.inner, w.Liner, w.linerPlaces())
	}
	return w.artBody(thick)
}

// path is where the value stands; empty where it has no place.
func (d dim) path() explain.Path { return d.root + d.group + d.name }

// sizeDims are the two dimensions of a size that stands in a group below a root.
func sizeDims(s measure.Size, key explain.Key, root, group explain.Path) [2]dim {
	if root == "" {
		return [2]dim{{value: s.Width, key: key}, {value: s.Height, key: key}}
	}
	return [2]dim{
		{value: s.Width, key: key, root: root, group: group, name: "/width"},
		{value: s.Height, key: key, root: root, group: group, name: "/height"},
	}
}

// layerSize is the size of a loose layer, as the plan holds it.
func (w *worker) layerSize(x exactPiece, l layer) [2]dim {
	number := 0
	for _, o := range x.layers {
		if o.part == l.part {
			break
		}
		if o.loose {
			number++
		}
	}
	if !l.loose {
		return sizeDims(l.size, "size", "", "")
	}
	return sizeDims(l.size, "size", (w.at.worked + "/layers").Index(number), "/size")
}

// sheetBody is a flat sheet.
func sheetBody(size [2]dim, thick dim, name string) body {
	m, ok := material.Of(name)
	if !ok || thick.value <= 0 || size[0].value <= 0 || size[1].value <= 0 {
		return body{}
	}
	return body{boxes: []box{{times: 1, long: size[0], wide: size[1], thick: thick, flexing: true}}, material: m}
}

// boardBody is a board with a window in it.
func boardBody(blank, window [2]dim, thick dim) body {
	for i := range blank {
		if window[i].value <= 0 || window[i].value >= blank[i].value {
			return body{}
		}
	}
	m, _ := material.Of(string(molding.Board))
	return body{material: m, boxes: []box{
		{times: 1, long: blank[0], wide: blank[1], thick: thick},
		{times: 1, long: window[0], wide: window[1], thick: thick, less: true},
	}}
}

// stripBody is a spacer: two strips along the width, and two between them.
func (w *worker) stripBody(x exactPiece, thick dim) body {
	m, _ := material.Of(material.SpacerPlastic)
	opening := sizeDims(x.inner.Opening, "opening", w.innerPlaces().Worked, "/opening")
	if thick.value <= 0 || opening[0].value <= 0 {
		return body{}
	}
	wide := dim{value: w.Spacer.Width, key: "width", root: w.at.order, group: "/spacer/width"}
	between := opening[1].leaves(wide, 2)
	return body{material: m, boxes: []box{
		{times: 2, long: opening[0], wide: wide, thick: thick},
		{times: 2, long: between, wide: wide, thick: thick},
	}}
}

// railBody is four mitered rails, each part of the section of its mean length:
// the rail of its long point less the face; the rabbet, which is taken out, and a
// floater's ledge of the opening less their width. A rabbet whose depth is not
// known is not taken out.
func (w *worker) railBody(r molding.Rectangle, f molding.Frame, at molding.Places) body {
	m, ok := material.Of(string(f.Wood))
	if !ok || f.Height == 0 {
		return body{}
	}
	field := func(l measure.Length, key explain.Key, name explain.Path) dim {
		return dim{value: l, key: key, root: at.Frame, group: name}
	}
	face, height, rabbet := field(f.Face, "face", "/face"), field(f.Height, explain.Key("molding_height"), "/height"), field(f.Rabbet, "rabbet", "/rabbet")
	b := body{material: m, boxes: make([]box, 0, 4)}
	openings := sizeDims(r.Opening, "opening", at.Worked, "/opening")
	for i, outside := range sizeDims(r.Outside, "outside", at.Worked, "/outside") {
		b.boxes = append(b.boxes, box{times: 2, long: outside.leaves(face, 1), wide: face, thick: height})
		switch {
		case f.Kind == molding.Floater && f.Ledge > 0 && f.Height > f.Rabbet:
			ledge := field(f.Ledge, "ledge", "/ledge")
			b.boxes = append(b.boxes, box{times: 2, long: openings[i].leaves(ledge, 1), wide: ledge, thick: height.leaves(rabbet, 1)})
		case f.Kind == molding.Rabbeted && f.Lip > 0 && f.Rabbet > 0 && f.Rabbet < f.Height:
			lip := field(f.Lip, "lip", "/lip")
			b.boxes = append(b.boxes, box{times: 2, less: true, long: openings[i].leaves(lip, 1), wide: lip, thick: rabbet})
		}
	}
	return b
}

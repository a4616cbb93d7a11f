package draw

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A place is where a line of the table beside a section points: a height, and
// from where.
type place struct{ x, y int }

// stack draws what lies in the rabbet, from the front. It returns where each
// part can be pointed at, and the place of the clear depth behind the last one.
func (s *sheet) stack(c cut) []place {
	d := &s.piece.Depth
	places := make([]place, 0, len(d.Stack)+1)
	y, under := c.front, 0
	for i := range d.Stack {
		part := d.Stack[i].Part
		thick := d.Stack[i].Thickness.Exact
		from, deep := y, thick
		if i+1 < len(d.Stack) && d.Stack[i+1].Inside { // a spacer around art: both stand on what is behind
			deep = max(thick, d.Stack[i+1].Thickness.Exact)
			from = y + deep - thick
		}
		if d.Stack[i].Inside {
			from, deep = y-thick, 0
		}
		b := box{y0: c.of(from), y1: c.of(from + thick)}
		if b.height() < px {
			b.y1 = b.y0 + px // a hair
		}
		y += deep
		name := s.partName(part, under)
		n := under
		if part == framing.UnderMatLayer {
			under++
		}
		s.part("stack-"+strconv.Itoa(i), name, partWord(part), false)
		b.x0, b.x1 = c.of(s.edge(c, part, n)), c.of(c.end)
		at := place{c.right() - 5*px, (b.y0 + b.y1) / 2}
		look := layerLook(string(part))
		if part == framing.ArtLayer && b.height() > 5*px {
			look = s.thickArt()
		}
		switch {
		case part == framing.SpacerLayer:
			b.x1 = min(b.x1, b.x0+c.of(s.order.Spacer.Width))
			at.x = (b.x0 + b.x1) / 2
			s.pen.rect(b, look)
			s.pen.path(thinLook, b.x0, b.y0, b.x1, b.y1)
			s.pen.path(thinLook, b.x0, b.y1, b.x1, b.y0)
		case part == framing.MatLayer || part == framing.UnderMatLayer:
			s.pen.rect(b, look)
			at.x = s.boardAtWindow(c, b, part, n, look)
		case d.Stack[i].Inside && c.gap == 0:
			b.x0 = min(b.x0+c.of(s.order.Spacer.Width)+3*px, b.x1)
			s.pen.rect(b, look)
			s.texture(part, b)
		case part == framing.ArtLayer && c.gap > 0:
			// Under a mat the art begins only by the window.
			from := -s.covered()
			b.x0, b.x1 = c.atWindow(max(from, -c.near)), c.right()
			s.pen.rect(b, look)
			s.texture(part, b)
		default:
			s.pen.rect(b, look)
			s.texture(part, b)
			if c.gap > 0 {
				b.x0, b.x1 = c.atWindow(-c.near), c.right()
				s.pen.rect(b, look)
				s.texture(part, b)
			}
		}
		s.close()
		places = append(places, at)
	}
	return append(places, s.clearance(c))
}

// covered is how far the mat's top window line lies beyond the art's edge.
func (s *sheet) covered() measure.Length {
	over := s.piece.Mat.Covered.Width.Exact
	for _, u := range s.piece.Mat.Under {
		over -= max(u.Reveal.Exact, 0)
	}
	return over
}

// edge is where a part begins in the rabbet.
func (s *sheet) edge(c cut, part framing.LayerPart, n int) measure.Length {
	h := c.holder
	if h.floater {
		return h.face + s.piece.Float.Least.Width.Exact
	}
	at := h.x + h.face - h.lip
	for i := range s.piece.Layers {
		if l := &s.piece.Layers[i]; l.Part == part {
			if n == 0 {
				return at + half(l.Play.Width.Exact)
			}
			n--
		}
	}
	return at + half(s.order.Frame.Allowance)
}

// boardAtWindow draws a board by the window, with its bevel. It returns where
// it ends.
func (s *sheet) boardAtWindow(c cut, b box, part framing.LayerPart, n int, look string) int {
	bevel, line := s.piece.Mat.Bevel, measure.Length(0)
	if part == framing.UnderMatLayer && n < len(s.piece.Mat.Under) {
		bevel = s.piece.Mat.Under[n].Bevel
		for _, u := range s.piece.Mat.Under[:n+1] {
			line += u.Reveal.Exact
		}
	}
	x, x0 := c.atWindow(line), c.atWindow(-c.near)
	face := max(c.atWindow(line-bevel.Run.Exact), x0)
	s.pen.area(look, x0, b.y0, face, b.y0, x, b.y1, x0, b.y1)
	s.pen.path(`class="core" fill="none" stroke="#ffffff" stroke-width="1.4"`, face, b.y0, x, b.y1)
	s.pen.path(`class="ink" fill="none" stroke="#26211b" stroke-width=".7"`, face, b.y0, x, b.y1)
	return min(face, x) - 3*px
}

// texture tells materials apart.
func (s *sheet) texture(part framing.LayerPart, b box) {
	if b.height() < 4*px {
		return
	}
	material := ""
	switch part {
	case framing.MountLayer:
		material = string(s.order.Mount.Material)
	case framing.BackingLayer:
		material = string(s.order.Backing.Material)
	case framing.GlazingLayer:
		material = "glass"
	case framing.ArtLayer:
		material = string(s.order.Art.Kind)
	}
	switch material {
	case "corrugated": // its flutes
		step := max(b.height(), b.width()/80)
		s.pen.raw(`<path d="`)
		s.pen.num("M", b.x0)
		s.pen.num(" ", b.y1)
		for x, up := b.x0+step/2, true; x < b.x1; x, up = x+step/2, !up {
			s.pen.num("L", x)
			s.pen.num(" ", map[bool]int{true: b.y0, false: b.y1}[up])
		}
		s.pen.raw(`" `, hatchLook, "/>\n")
	case "plywood": // its plies
		s.pen.path(thinLook, b.x0, b.y0+b.height()/3, b.x1, b.y0+b.height()/3)
		s.pen.path(thinLook, b.x0, b.y0+2*b.height()/3, b.x1, b.y0+2*b.height()/3)
	case "metal":
		s.hatches(3*px, true, b)
	case "hardboard", "other", "panel":
		s.hatches(6*px, false, b)
	case "canvas": // a bar, across its grain
		s.pen.path(thinLook, b.x0, b.y0, b.x1, b.y1)
		s.pen.path(thinLook, b.x0, b.y1, b.x1, b.y0)
	case "glass", "mirror":
		s.pen.raw(`<path d="`)
		for x := b.x0 + 14*px; x+b.height() < b.x1; x += max(46*px, b.width()/30) {
			s.pen.stroke(x, b.y1, x+b.height(), b.y0)
			s.pen.stroke(x+4*px, b.y1-b.height()/4, x+4*px+b.height()/2, b.y0+b.height()/4)
		}
		s.pen.raw(`" `, hatchLook, "/>\n")
	}
}

// clearance draws the points behind the package, or what stands proud of the
// frame. It returns where the clear depth can be pointed at.
func (s *sheet) clearance(c cut) place {
	d, h := s.piece.Depth, c.holder
	x := c.right() - 5*px
	if h.floater {
		return place{x, c.of(c.front) / 2}
	}
	back, end := c.of(h.y+h.height()), c.of(c.front+c.pkg)
	at := place{x, max((back+end)/2, end)}
	if h.noRabbet || len(d.Stack) == 0 {
		return at
	}
	if d.Clear.Exact < 0 {
		edge := c.of(s.edge(c, d.Stack[len(d.Stack)-1].Part, 0))
		s.pen.rect(box{edge, back, c.of(c.end), end}, badFill)
		if c.gap > 0 {
			s.pen.rect(box{c.atWindow(-c.near), back, c.right(), end}, badFill)
		}
		return at
	}
	metal := s.order.Frame.Section()
	if !s.piece.Liner.IsZero() {
		metal = s.order.Liner.Section()
	}
	if d.Clear.Exact > 0 && !metal { // no point goes into metal
		wall := c.of(h.x + h.face - h.lip)
		deep := min(back-end, 3*px)
		s.pen.area(metalLook, wall-c.of(h.lip)/2, end, wall+c.of(h.lip)*3/2, end, wall-c.of(h.lip)/2, end+deep)
	}
	return at
}

// thickArt is the look of art that is thick enough to have one.
func (s *sheet) thickArt() string {
	switch s.order.Art.Kind {
	case framing.Mirror:
		return glassLook
	case framing.Paper:
		return artLook
	}
	return `class="sheet solid" fill="#e6d7b9" stroke="#26211b" stroke-width=".8"`
}

// partName is the data-part of a part in the rabbet.
func (s *sheet) partName(p framing.LayerPart, under int) string {
	if p == framing.UnderMatLayer {
		return "mat/under/" + strconv.Itoa(under)
	}
	return string(p)
}

// thickness is how thick a part is, as the order gives it.
func (s *sheet) thickness(p framing.LayerPart, under int) (explain.Path, measure.Length) {
	o := s.order
	switch p {
	case framing.GlazingLayer:
		return "/glazing/thickness", o.Glazing.Thickness
	case framing.SpacerLayer:
		return "/spacer/depth", o.Spacer.Depth
	case framing.MatLayer:
		return "/mat/thickness", o.Mat.Thickness
	case framing.UnderMatLayer:
		if under < len(o.Mat.Under) {
			return explain.Path("/mat/under").Index(under) + "/thickness", o.Mat.Under[under].Thickness
		}
	case framing.ArtLayer:
		return "/art/thickness", o.Art.Thickness
	case framing.MountLayer:
		return "/mount/thickness", o.Mount.Thickness
	case framing.BackingLayer:
		return "/backing/thickness", o.Backing.Thickness
	case framing.LinerLayer:
		return "/liner/height", o.Liner.Height
	}
	return "", 0
}

package draw

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// A profile is a molding cut through, with its outer front corner at x and y:
// across to the sight edge, and from the front to the back. Where a height or a
// rabbet is not known it is drawn as it may be, with a break.
type profile struct {
	x, y      measure.Length
	face, lip measure.Length
	front     measure.Length // of the lip, in front of the rabbet
	rabbet    measure.Length
	ledge     measure.Length // of a floater
	floater   bool
	noHeight  bool
	noRabbet  bool
}

func (p profile) height() measure.Length { return p.front + p.rabbet }

// profileOf is how a frame is drawn around a package so thick.
func profileOf(f molding.Frame, pkg measure.Length) profile {
	p := profile{
		face: f.Face, lip: f.Lip, rabbet: f.Rabbet, ledge: f.Ledge, floater: f.Kind == molding.Floater,
		front: f.Height - f.Rabbet, noHeight: f.Height <= f.Rabbet, noRabbet: f.Rabbet == 0,
	}
	if p.noRabbet {
		p.rabbet = max(pkg+pkg/4, f.Face/3)
		p.noHeight = true
	}
	if p.noHeight {
		p.front = max(f.Face/6, p.rabbet/4)
	}
	if p.floater && p.ledge == 0 {
		p.ledge = f.Face + f.Gap
	}
	return p
}

// A cut is a section on the paper.
type cut struct {
	scale
	frame, holder profile
	pkg           measure.Length // how thick the package is
	front         measure.Length // where it begins
	end           measure.Length // where what is seen of it by the rail breaks off
	gap           int            // of paper, to where it goes on by the window
	near, far     measure.Length // what is seen there before and behind the top window's line
}

// atWindow is a place by the window, from the line of the top board's window.
func (c *cut) atWindow(l measure.Length) int { return c.of(c.end) + c.gap + c.of(c.near+l) }

// right is where all of it ends.
func (c *cut) right() int {
	if c.gap == 0 {
		return c.of(c.end)
	}
	return c.atWindow(c.far)
}

// section draws one rail cut through, with what lies in its rabbet.
func (s *sheet) section() {
	f, c := s.order.Frame, s.layCut()
	t := s.table()
	width, height := s.paper()
	across := width - 2*pitch - 6*pad - t.width() - fan
	below := across < 2*width/5 // on a narrow paper the table stands below
	if below {
		across = width - 2*pitch - 6*pad
	}
	depth := max(c.frame.height(), c.front+c.pkg, c.holder.y+c.holder.height()) - min(0, c.front)
	size := measure.Size{Width: c.end + c.near + c.far, Height: depth}
	if c.gap > 0 {
		across -= c.gap
	}
	c.scale = fit(size, across, height-5*pitch-4*pad)

	top, bottom := c.of(min(0, c.front)), c.of(depth+min(0, c.front))
	s.profile("frame", c.frame, c.scale)
	if !s.piece.Liner.IsZero() {
		s.profile("liner", c.holder, c.scale)
	}
	places := s.stack(c)
	s.backPlane(c)
	s.breaks(c, top, bottom)
	if !below {
		s.fanOut(c, t, places, c.right()+fan, (top+bottom)/2)
	}

	r := &rows{around: box{0, top, c.of(c.frame.face + c.frame.ledge), max(bottom, s.pen.bounds.y1)}}
	r.reach[2] = r.around.y1 - bottom
	for d := range r.base {
		r.base[d] = pad / 2
	}
	s.sectionRows(c, r)
	s.rows(r)
	if below {
		b := s.pen.bounds
		s.fanOut(c, t, nil, b.x0, b.y1+pad+len(t.rows)*line/2)
	}
	if len(f.Faces) > 0 {
		s.word("cut through "+s.railWord(s.firstRail()), s.pen.bounds.x0, s.pen.bounds.y1+line)
	}
	s.saySection()
}

// layCut decides where everything lies, in the piece's own lengths.
func (s *sheet) layCut() cut {
	f, d := s.cutRail(), s.piece.Depth
	c := cut{pkg: d.Package.Exact}
	c.frame = profileOf(f, c.pkg)
	c.holder = c.frame
	if !s.piece.Liner.IsZero() {
		c.holder = profileOf(s.order.Liner, c.pkg)
		if f.Rabbet == 0 {
			c.frame = profileOf(f, c.holder.height())
		}
		c.holder.x = f.Face - f.Lip + half(s.piece.Frame.Opening.Width.Exact-s.piece.Liner.Outside.Width.Exact)
		c.holder.y = c.frame.front
	}
	h := c.holder
	c.front = h.y + h.front
	c.end = h.x + h.face + max(h.lip, h.face/2, s.order.Spacer.Width-h.lip+h.face/4)
	if h.floater {
		c.front = h.rabbet - c.pkg
		c.end = h.face + h.ledge + h.face
	}
	if m := &s.piece.Mat; !m.IsZero() {
		c.gap = 16 * px
		c.near = max(h.face/3, 3*m.Bevel.Run.Exact, half(h.lip))
		if s.order.Mat.Window.By == "overlap" {
			c.near = max(c.near, m.Covered.Width.Exact*3/2)
		}
		c.far = h.face / 3
		for _, u := range m.Under {
			c.far += max(u.Reveal.Exact, 0)
		}
		c.far -= min(0, m.Covered.Width.Exact)
	}
	return c
}

func half(l measure.Length) measure.Length { return l / 2 }

// profile draws a molding cut through.
func (s *sheet) profile(name string, p profile, c scale) {
	y0, y1 := c.of(p.y), c.of(p.y+p.height())
	x0, x1 := c.of(p.x), c.of(p.x+p.face)
	look := `class="wood" fill="#ecd9ba" stroke="#26211b" stroke-width="1.1" stroke-linejoin="round"`
	if name == "liner" {
		look = `class="wood linen" fill="#f0e7d5" stroke="#26211b" stroke-width="1.1" stroke-linejoin="round"`
	}
	s.part(name, name, words(name), false)
	if p.floater {
		x2, y2 := c.of(p.x+p.face+p.ledge), c.of(p.y+p.rabbet)
		s.pen.area(look, x0, y0, x1, y0, x1, y2, x2, y2, x2, y1, x0, y1)
		s.hatches(9*px, true, box{x0, y0, x1, y1}, box{x1, y2, x2, y1})
	} else {
		x2, y2 := c.of(p.x+p.face-p.lip), c.of(p.y+p.front)
		s.pen.area(look, x0, y0, x1, y0, x1, y2, x2, y2, x2, y1, x0, y1)
		s.hatches(9*px, name != "liner", box{x0, y0, x2, y1}, box{x2, y0, x1, y2})
	}
	if p.noHeight && !p.floater {
		s.zigzag(x0, x1, (y0+c.of(p.y+p.front))/2)
	}
	if p.noRabbet || p.noHeight && p.floater {
		s.zigzag(x0, c.of(p.x+p.face-p.lip), (c.of(p.y+p.front)+y1)/2)
	}
	s.close()
}

// zigzag breaks a molding whose size is not known.
func (s *sheet) zigzag(x0, x1, y int) {
	m, d := (x0+x1)/2, min(4*px, (x1-x0)/8)
	for _, up := range [...]int{-150, 150} {
		y := y + up
		s.pen.path(`class="break" fill="none" stroke="#26211b" stroke-width=".8"`,
			x0-3*px, y, m-d, y, m-d/2, y-d, m+d/2, y+d, m+d, y, x1+3*px, y)
	}
}

// breaks draws where the package breaks off, and where it goes on.
func (s *sheet) breaks(c cut, top, bottom int) {
	y0, y1 := max(top, c.of(c.front))-2*px, c.of(c.front+c.pkg)+2*px
	if c.pkg <= 0 {
		y0, y1 = top, bottom
	}
	s.breakLine(c.of(c.end), y0, y1)
	if c.gap > 0 {
		s.breakLine(c.atWindow(-c.near), y0, y1)
		s.breakLine(c.right(), y0, y1)
	}
}

func (s *sheet) breakLine(x, y0, y1 int) {
	m, d := (y0+y1)/2, 3*px
	s.pen.path(`class="break" fill="none" stroke="#26211b" stroke-width=".6"`,
		x, y0-d, x, m-d, x-d, m-d/3, x+d, m+d/3, x, m+d, x, y1+d)
}

// backPlane draws how far back the molding reaches, where one does not see it.
func (s *sheet) backPlane(c cut) {
	h := c.holder
	if h.floater || h.noRabbet {
		return
	}
	y := c.of(h.y + h.height())
	s.pen.path(hiddenLook, c.of(h.x+h.face-h.lip), y, c.right(), y)
}

// hatches draws lines at 45 degrees in boxes, the same lines in all of them.
func (s *sheet) hatches(step int, rising bool, boxes ...box) {
	s.pen.raw(`<path d="`)
	for _, b := range boxes {
		if b.empty() {
			continue
		}
		step := max(step, (b.width()+b.height())/60)
		if rising {
			for k := floor(b.x0+b.y0, step) + step; k < b.x1+b.y1; k += step {
				x0, x1 := max(b.x0, k-b.y1), min(b.x1, k-b.y0)
				s.pen.stroke(x0, k-x0, x1, k-x1)
			}
			continue
		}
		for k := floor(b.x0-b.y1, step) + step; k < b.x1-b.y0; k += step {
			x0, x1 := max(b.x0, k+b.y0), min(b.x1, k+b.y1)
			s.pen.stroke(x0, x0-k, x1, x1-k)
		}
	}
	s.pen.raw(`" `, hatchLook, "/>\n")
}

// floor is the greatest multiple of step that is not above n.
func floor(n, step int) int {
	m := n / step * step
	if m > n {
		m -= step
	}
	return m
}

// sectionRows puts the dimensions at the molding.
func (s *sheet) sectionRows(c cut, r *rows) {
	f := s.cutRail()
	p := c.frame
	x := func(l measure.Length) int { return c.of(l) }
	if p.floater {
		r.add(bottom,
			span{0, x(p.face), s.molding(s.firstRail())},
			span{x(p.face), x(p.face + f.Gap), s.given("/frame/gap", f.Gap)})
		if f.Ledge > 0 {
			r.add(bottom, span{x(p.face), x(p.face + p.ledge), s.given("/frame/ledge", f.Ledge)})
		}
		if !p.noRabbet {
			r.add(left, span{0, x(p.rabbet), s.given("/frame/rabbet", f.Rabbet)})
		}
	} else {
		if h := c.holder; !s.piece.Liner.IsZero() {
			l := s.order.Liner
			r.add(bottom, span{x(h.x + h.face - h.lip), x(h.x + h.face), s.given("/liner/lip", l.Lip)})
			r.add(bottom, span{x(h.x), x(h.x + h.face), s.given("/liner/face", l.Face)})
		}
		r.add(bottom, span{x(p.face - p.lip), x(p.face), s.given("/frame/lip", f.Lip)})
		r.add(bottom, span{0, x(p.face), s.molding(s.firstRail())})
		if !p.noRabbet {
			r.add(left, span{x(p.front), x(p.height()), s.given("/frame/rabbet", f.Rabbet)})
		}
	}
	if !p.noHeight {
		r.add(left, span{0, x(p.height()), s.given("/frame/height", f.Height)})
	}
}

// saySection tells what the section shows.
func (s *sheet) saySection() {
	f, d := s.cutRail(), s.piece.Depth
	list := []string{"One rail cut through, its front upward: face " + s.given("", f.Face).spoken + ", lip " + s.given("", f.Lip).spoken + "."}
	if f.Rabbet > 0 {
		list = append(list, "The rabbet is "+s.given("", f.Rabbet).spoken+" deep.")
	}
	if len(d.Stack) > 0 {
		parts := "From the front lie in it"
		for i, p := range d.Stack {
			if i > 0 {
				parts += ","
			}
			parts += " " + partWord(p.Part)
		}
		list = append(list, parts+".", "Together they are "+d.Package.Spoken()+" thick;")
		l := s.clear("", d.Clear, s.piece.Liner.IsZero() && f.Kind == "floater", words("clear"), "stands proud")
		list = append(list, l.word+" "+l.spoken+".")
	}
	s.say("section through the rabbet", list...)
}

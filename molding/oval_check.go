package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// NotOval is the code of what a frame has that no oval can have.
const NotOval explain.Code = "oval.not_even"

// Check adds to c what is wrong with ring, whose fields lie at path at.
func (ring OvalRing) Check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/true", string(ring.True), ring.True.Choices())
	c.Choice(at+"/rings", string(ring.Rings), ring.Rings.Choices())
}

// CheckOval adds to c what keeps f, whose fields lie at path at, from going around an
// oval package: faces that differ, sides that slope, lips that leave no ellipse, and a
// parallel that would fold back on itself.
func (f Frame) CheckOval(c *explain.Checker, at explain.Path, pkg measure.Size, ring OvalRing) {
	if fault := f.ovalFault(pkg, ring); fault != nil {
		c.Add(fault.problem(at, c.Write))
	}
}

// An ovalFault is what AroundOval refuses.
type ovalFault struct {
	code  explain.Code
	path  explain.Path // from the frame
	given measure.Length
	// most is the most that would do; nothing where no length would.
	most measure.Length
	text string // what else would do
}

func (o *ovalFault) problem(at explain.Path, write func(measure.Length) string) explain.Problem {
	p := explain.Problem{Code: o.code, Path: at + o.path, Given: write(o.given), Accepted: o.text}
	if o.most > 0 {
		p.Accepted = write(0) + " to " + write(o.most) + o.text
	}
	return p
}

// What mends a parallel that folds, beside a narrower one.
const (
	orTurned = "; or turned rings"
	orSight  = "; or the sight edge as the true ellipse; or turned rings"
)

func (f Frame) ovalFault(pkg measure.Size, ring OvalRing) *ovalFault {
	for i, face := range f.Faces {
		if face != f.Face {
			return &ovalFault{code: NotOval, path: explain.Path("/faces").Index(i), given: face, text: "one face all round"}
		}
	}
	if !f.Slope.IsZero() {
		return &ovalFault{code: NotOval, path: "/slope", given: f.Slope.Thickness, text: "none on an oval"}
	}
	if ring.Rings != Parallel {
		return nil
	}
	r := f.Around(pkg)
	from := ring.of(r)
	if least := min(from.Width, from.Height); least <= 0 {
		room := min(r.Opening.Width, r.Opening.Height)
		most, odd := room.Half()
		return &ovalFault{code: explain.OutOfRange, path: "/lip", given: f.Lip, most: max(most+odd-1, 0), text: orTurned}
	}
	var worst *ovalFault
	for _, size := range []measure.Size{r.Sight, r.Opening, r.Package} {
		by := outward(size, from)
		if _, err := ellipse(from).Parallel(by); err == nil || by >= 0 {
			continue
		}
		if fault := f.foldFault(size, from, ring.True); worst == nil || fault.most < worst.most {
			worst = fault
		}
	}
	return worst
}

// foldFault is the fault of an edge of a size that would fold back within the true one.
func (f Frame) foldFault(size, from measure.Size, edge OvalEdge) *ovalFault {
	by := outward(size, from)
	switch edge {
	case TrueOutside:
		// The inner edge stays as large as the package makes it.
		return &ovalFault{code: plane.Folds, path: "/face", given: f.Face, most: max(f.Face+by+deepest(size, (from.Width-size.Width)%2), 0), text: orSight}
	case TrueSight: // the package would lie within the sight edge
		path := explain.Path("/allowance")
		if f.Kind == Floater {
			path = "/gap"
		}
		return &ovalFault{code: plane.Folds, path: path, given: f.Room(), text: "no more than twice the lip in all" + orTurned}
	}
	return &ovalFault{code: plane.Folds, path: "/lip", given: f.Lip, most: max(f.Lip+by+inmost(from), 0), text: orSight}
}

// inmost is the farthest that a parallel of these axes may lie inside: short of b^2/a.
func inmost(s measure.Size) measure.Length {
	m := ellipse(s).Tightest()
	if _, err := ellipse(s).Parallel(-m); err != nil {
		m--
	}
	return m
}

// deepest is the farthest outside that an ellipse may lie so that the parallel of these
// axes inside it does not fold back; an odd nanometer of the axes lies inside. With the
// half axes a and b of the parallel, and d between, (b + d)^2 / (a + d) is more than d:
// up to a = 2 b always, else for a d below b^2 / (a - 2 b).
func deepest(s measure.Size, odd measure.Length) measure.Length {
	long, short := max(s.Width, s.Height), min(s.Width, s.Height)
	if short <= 0 || long <= 2*short {
		return explain.MaxLength
	}
	d, _ := short.Scale(int64(short), int64(2*(long-2*short)))
	fits := func(d measure.Length) bool {
		_, err := ellipse(s.Grown(2*d - odd)).Parallel(-d)
		return err == nil
	}
	for d > 0 && !fits(d) { // rounded up, or just there
		d--
	}
	return d
}

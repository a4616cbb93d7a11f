package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/hang"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// A Piece is one thing to frame, or several of the same. From the front its
// layers are glazing, spacer, mat, art, mount and backing; one that is absent is
// the zero value. They lie in the liner where there is one, and the liner in the
// frame.
type Piece struct {
	// Name is what the shop calls the piece.
	Name string `json:"name,omitzero"`
	// Quantity is how many are made of it.
	Quantity int `json:"quantity"`
	// Art is what is framed.
	Art Art `json:"art" order:"required"`
	// Mat is the window mat over the art.
	Mat mat.Mat `json:"mat,omitzero"`
	// Glazing is the clear sheet in front of everything.
	Glazing glazing.Pane `json:"glazing,omitzero"`
	// Spacer is the strip that keeps the parts apart.
	Spacer glazing.Spacer `json:"spacer,omitzero" since:"2"`
	// Mount is the board that the art is fixed to.
	Mount molding.Sheet `json:"mount,omitzero"`
	// Backing is the sheet that closes the package.
	Backing molding.Sheet `json:"backing,omitzero"`
	// Liner is a frame around the package that lies in the frame itself, a fillet
	// frame too.
	Liner molding.Frame `json:"liner,omitzero" since:"2"`
	// Frame is the molding around it.
	Frame molding.Frame `json:"frame" order:"required"`
	// Hang is how the piece hangs on the wall.
	Hang hang.Hanging `json:"hang,omitzero" since:"2"`
}

// Art is what is framed: a flat thing with four square corners, or nearly.
type Art struct {
	// Kind says what it is.
	Kind ArtKind `json:"kind"`
	// Width and Height are measured where the art is smallest.
	// Art with an outline or measured sides has none: they follow from those.
	Width  measure.Length `json:"width" order:"required"`
	Height measure.Length `json:"height" order:"required"`
	// Varies is how much more it measures where it is largest: art that is not
	// square or not straight, canvas with folded corners. Openings are made for
	// the largest size, overlaps for the smallest.
	Varies measure.Size `json:"varies,omitzero"`
	// Thickness counts into the depth of the package, a canvas with its folds.
	Thickness measure.Length `json:"thickness"`
	// Mass is what the art weighs; 0 is worked out from its kind and size.
	Mass measure.Mass `json:"mass" since:"2"`
	// Stretch says how a canvas is stretched on its bars; none where it is
	// stretched already.
	Stretch Stretch `json:"stretch,omitzero" since:"2"`
	// Outline is the outline of art that is no rectangle.
	Outline Outline `json:"outline,omitzero" since:"3"`
	// Sides are the edges and diagonals of art that is out of square, as measured.
	// The largest clean rectangle within them, and the box around them, are then the
	// sizes where the art is smallest and largest.
	Sides molding.OutOfSquare `json:"sides,omitzero" since:"3"`
}

// Stretch says how a canvas is stretched. The zero Stretch is none.
type Stretch struct {
	// Turn is how much canvas is turned round the back of the bars on each side,
	// to staple and to pull.
	Turn measure.Length `json:"turn"`
	// Bar is how wide the bars are, seen from the front.
	Bar measure.Length `json:"bar"`
}

// IsZero reports whether nothing is to be stretched.
func (s Stretch) IsZero() bool { return s == Stretch{} }

// An ArtKind is a kind of art.
type ArtKind string

// The kinds of art.
const (
	Paper  ArtKind = "paper"  // prints, drawings, photographs
	Mirror ArtKind = "mirror" // glass, silvered
	Panel  ArtKind = "panel"  // board, wood, metal
	Canvas ArtKind = "canvas" // on stretcher bars
)

// Choices lists the kinds, for readers and forms.
func (ArtKind) Choices() []string {
	return []string{string(Paper), string(Mirror), string(Panel), string(Canvas)}
}

// Least is the size where the art is smallest.
func (a Art) Least() measure.Size { return measure.Size{Width: a.Width, Height: a.Height} }

// Greatest is the size where the art is largest.
func (a Art) Greatest() measure.Size {
	return measure.Size{Width: a.Width + a.Varies.Width, Height: a.Height + a.Varies.Height}
}

func (p *Piece) check(c *explain.Checker, at explain.Path) {
	c.Text(at+"/name", p.Name)
	c.Number(at+"/quantity", int64(p.Quantity), 1, MaxQuantity)
	p.Art.check(c, at+"/art")
	p.Frame.Check(c, at+"/frame")
	if Shapes {
		p.checkShape(c, at)
	} else if p.Shaped() {
		c.Add(explain.Problem{Code: NoShapes, Path: at})
	}
	if !p.Mat.IsZero() {
		w := worker{Piece: p, artAt: at + "/art"}
		if Shapes {
			w.derive()
		}
		given := w.given(Shop{})
		if !p.Art.sized() && w.derived.IsZero() { // what is wrong with it was said
			given.Least = measure.Size{Width: explain.MaxLength, Height: explain.MaxLength}
		}
		w.Mat.Check(c, at+"/mat", given, at+"/art")
	}
	if !p.Glazing.IsZero() {
		p.Glazing.Check(c, at+"/glazing")
	}
	if !p.Spacer.IsZero() {
		p.Spacer.Check(c, at+"/spacer")
	}
	if !p.Mount.IsZero() {
		p.Mount.Check(c, at+"/mount")
	}
	if !p.Backing.IsZero() {
		p.Backing.Check(c, at+"/backing")
	}
	if !p.Liner.IsZero() {
		p.Liner.Check(c, at+"/liner")
	}
	if !p.Hang.IsZero() {
		p.Hang.Check(c, at+"/hang")
	}
	if Shapes {
		p.checkReach(c, at)
	}
}

func (a Art) check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/kind", string(a.Kind), a.Kind.Choices())
	if a.sized() {
		c.Positive(at+"/width", a.Width)
		c.Positive(at+"/height", a.Height)
	} else {
		c.NotNegative(at+"/width", a.Width)
		c.NotNegative(at+"/height", a.Height)
	}
	if Shapes {
		a.checkShape(c, at)
	}
	c.NotNegative(at+"/varies/width", a.Varies.Width)
	c.NotNegative(at+"/varies/height", a.Varies.Height)
	c.NotNegative(at+"/thickness", a.Thickness)
	c.Mass(at+"/mass", a.Mass)
	if !a.Stretch.IsZero() {
		c.Positive(at+"/stretch/turn", a.Stretch.Turn)
		c.Positive(at+"/stretch/bar", a.Stretch.Bar)
	}
}

// given is what the piece's mat finds.
func (p *Piece) given(s Shop) mat.Given {
	return mat.Given{
		Least: p.Art.Least(), Greatest: p.Art.Greatest(),
		Lip: p.inner().Lips(), Allowance: p.inner().Room(), Overlap: s.Overlap, Border: s.Border,
	}
}

// inner is the frame that the package lies in.
func (p *Piece) inner() molding.Frame {
	if p.Liner.IsZero() {
		return p.Frame
	}
	return p.Liner
}

// glazingCut is how the pane is cut, in the words of the rabbet.
func (p *Piece) glazingCut() molding.Cut {
	return molding.Cut{Clearance: p.Glazing.Clearance, Size: p.Glazing.Size}
}

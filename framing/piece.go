package framing

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/glazing"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// A Piece is one thing to frame, or several of the same. From the front its
// layers are glazing, mat, art, mount and backing; one that is absent is the
// zero value.
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
	// Mount is the board that the art is fixed to.
	Mount molding.Sheet `json:"mount,omitzero"`
	// Backing is the sheet that closes the package.
	Backing molding.Sheet `json:"backing,omitzero"`
	// Frame is the molding around it.
	Frame molding.Frame `json:"frame" order:"required"`
}

// Art is what is framed: a flat thing with four square corners, or nearly.
type Art struct {
	// Kind says what it is.
	Kind ArtKind `json:"kind"`
	// Width and Height are measured where the art is smallest.
	Width  measure.Length `json:"width" order:"required"`
	Height measure.Length `json:"height" order:"required"`
	// Varies is how much more it measures where it is largest: art that is not
	// square or not straight, canvas with folded corners. Openings are made for
	// the largest size, overlaps for the smallest.
	Varies measure.Size `json:"varies,omitzero"`
	// Thickness counts into the depth of the package, a canvas with its folds.
	Thickness measure.Length `json:"thickness"`
}

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
	if !p.Mat.IsZero() {
		p.Mat.Check(c, at+"/mat", p.given(Shop{}), at+"/art")
	}
	if !p.Glazing.IsZero() {
		p.Glazing.Check(c, at+"/glazing")
	}
	if !p.Mount.IsZero() {
		p.Mount.Check(c, at+"/mount")
	}
	if !p.Backing.IsZero() {
		p.Backing.Check(c, at+"/backing")
	}
}

func (a Art) check(c *explain.Checker, at explain.Path) {
	c.Choice(at+"/kind", string(a.Kind), a.Kind.Choices())
	c.Positive(at+"/width", a.Width)
	c.Positive(at+"/height", a.Height)
	c.NotNegative(at+"/varies/width", a.Varies.Width)
	c.NotNegative(at+"/varies/height", a.Varies.Height)
	c.NotNegative(at+"/thickness", a.Thickness)
}

// given is what the piece's mat finds.
func (p *Piece) given(s Shop) mat.Given {
	return mat.Given{
		Least: p.Art.Least(), Greatest: p.Art.Greatest(),
		Lip: p.Frame.Lips(), Allowance: p.Frame.Allowance, Overlap: s.Overlap, Border: s.Border,
	}
}

// glazingCut is how the pane is cut, in the words of the rabbet.
func (p *Piece) glazingCut() molding.Cut {
	return molding.Cut{Clearance: p.Glazing.Clearance, Size: p.Glazing.Size}
}

package framing_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/mat"
	"github.com/fairmiter/fairmiter/molding"
)

// TestNotes spoils the sample in one way at a time: the note must be there,
// and must not be there before.
func TestNotes(t *testing.T) {
	for _, c := range []struct {
		level explain.Level
		code  explain.Code
		path  explain.Path
		spoil func(*framing.Order, *framing.Piece)
	}{
		{explain.Warning, molding.DoesNotGoIn, "/order/pieces/0/art/height", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Window.By, p.Mat.Window.Width, p.Mat.Window.Height = mat.BySize, in(t, "9"), in(t, "13")
			p.Art.Height = in(t, "20") // a sheet that nobody trimmed, behind a small window
		}},
		{explain.Warning, molding.DoesNotGoIn, "/pieces/0/layers/3/play/width", func(_ *framing.Order, p *framing.Piece) {
			p.Backing.Size.Width, p.Backing.Size.Height = in(t, "14 9/16"), in(t, "18 5/8")
		}},
		{explain.Advice, molding.Tight, "/pieces/0/layers/0/play/height", func(_ *framing.Order, p *framing.Piece) {
			p.Glazing.Size.Width, p.Glazing.Size.Height = in(t, "14 3/8"), in(t, "18 11/16")
		}},
		{explain.Advice, molding.ThinBite, "/pieces/0/layers/1/bite/width", func(_ *framing.Order, p *framing.Piece) {
			p.Frame.Lip = in(t, "3/16")
		}},
		{explain.Advice, framing.Unused, "/order/pieces/0/mat/borders/ratio", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Borders.Ratio = explain.Percent
		}},
		{explain.Advice, framing.Turned, "/order/pieces/0/mount/size", func(_ *framing.Order, p *framing.Piece) {
			p.Mount.Size.Width, p.Mount.Size.Height = in(t, "18 5/8"), in(t, "14 3/8")
		}},
		{explain.Warning, framing.TouchesGlazing, "/order/pieces/0/glazing", func(_ *framing.Order, p *framing.Piece) {
			p.Mat = mat.Mat{}
		}},
		{explain.Advice, framing.CloseToGlazing, "/order/pieces/0/glazing", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Thickness = in(t, "0.039")
		}},
		{explain.Warning, framing.NothingBehind, "/order/pieces/0/art", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Window.By, p.Mount, p.Backing = mat.ByGap, molding.Sheet{}, molding.Sheet{}
		}},
		{explain.Advice, framing.NoMount, "/order/pieces/0/art", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Window.By, p.Mount = mat.ByGap, molding.Sheet{}
		}},
		{explain.Advice, framing.NoBacking, "/order/pieces/0/art", func(_ *framing.Order, p *framing.Piece) {
			p.Backing = molding.Sheet{}
		}},
		{explain.Advice, framing.MirrorBack, "/order/pieces/0/art", func(_ *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Mat, p.Backing = framing.Mirror, mat.Mat{}, molding.Sheet{}
		}},
		{explain.Advice, framing.Brace, "/order/pieces/0/art/stretch", func(o *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Art.Width, p.Art.Stretch = framing.Canvas, in(t, "30")+1, framing.NewStretch(o.Shop)
		}},
		{explain.Advice, framing.NoThickness, "/order/pieces/0/art/thickness", func(_ *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Art.Thickness = framing.Panel, 0
		}},
		{explain.Warning, mat.FallsThrough, "/pieces/0/mat/covered/width", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Window.EachSide = 0
		}},
		{explain.Warning, mat.FallsThrough, "/pieces/0/mat/covered/width", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Window.By, p.Mat.Window.EachSide, p.Art.Varies.Width = mat.ByGap, 0, in(t, "1/8") // a find
		}},
		{explain.Warning, framing.Uncovered, "/order/show/fineness", func(o *framing.Order, p *framing.Piece) {
			o.Show.Fineness = in(t, "1/8")
			p.Frame.Face, p.Frame.Lip, p.Frame.Allowance = in(t, "1 1/16"), in(t, "5/32"), in(t, "1/8")
		}},
		{explain.Warning, framing.Vanishes, "/order/show/fineness", func(o *framing.Order, p *framing.Piece) {
			o.Show.Fineness, p.Mat.Borders.By = in(t, "1/8"), mat.ByCut
			p.Mat.Borders.Left, p.Mat.Borders.Right = in(t, "1/16"), in(t, "1/16")
		}},
		{explain.Warning, framing.VanishesEver, "/order/show/fineness", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Borders.By, p.Mat.Borders.Left, p.Mat.Borders.Right = mat.ByCut, 1, 1
		}},
		{explain.Warning, molding.NothingSeen, "/pieces/0/frame/sight/width", func(_ *framing.Order, p *framing.Piece) {
			p.Mat, p.Art.Width = mat.Mat{}, in(t, "3/8")
		}},
		{explain.Warning, mat.NoBorder, "/pieces/0/mat/visible/left", func(_ *framing.Order, p *framing.Piece) {
			p.Mat.Borders.By, p.Mat.Borders.Left = mat.ByCut, in(t, "1/8")
		}},
		{explain.Caution, "caution.safety_glazing", "/order/pieces/0/glazing", func(_ *framing.Order, p *framing.Piece) {
			p.Art.Width, p.Art.Height = in(t, "40"), in(t, "50")
		}},
		{explain.Caution, "caution.static", "/order/pieces/0/glazing", func(_ *framing.Order, p *framing.Piece) {
			p.Glazing.Material = "acrylic"
		}},
	} {
		t.Run(fmt.Sprint(c.code, c.path), func(t *testing.T) {
			order := framing.Sample()
			there := func() bool {
				return slices.ContainsFunc(work(t, order).Pieces[0].Notes, func(n explain.Note) bool {
					return n.Level == c.level && n.Code == c.code && n.Path == c.path
				})
			}
			if there() {
				t.Fatal("the sample has this note already")
			}
			c.spoil(&order, &order.Pieces[0])
			if !there() {
				t.Errorf("no %s %s at %s; notes: %+v", c.level, c.code, c.path, work(t, order).Pieces[0].Notes)
			}
		})
	}
}

// TestNothingToAdd spares what does without a mount, a backing or a brace.
func TestNothingToAdd(t *testing.T) {
	unsaid := []explain.Code{framing.NothingBehind, framing.NoMount, framing.NoBacking, framing.MirrorBack, framing.Brace}
	for name, spare := range map[string]func(*framing.Order, *framing.Piece){
		"a gap before a mount": func(_ *framing.Order, p *framing.Piece) { p.Mat.Window.By = mat.ByGap },
		"a mirror with a back": func(_ *framing.Order, p *framing.Piece) { p.Art.Kind, p.Mat = framing.Mirror, mat.Mat{} },
		"a panel": func(_ *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Mat, p.Backing = framing.Panel, mat.Mat{}, molding.Sheet{}
		},
		"a mirror in a floater": func(_ *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Mat, p.Backing, p.Mount = framing.Mirror, mat.Mat{}, molding.Sheet{}, molding.Sheet{}
			p.Frame.Kind, p.Frame.Lip, p.Frame.Gap = molding.Floater, 0, in(t, "1/4")
		},
		"bars of 30 in": func(o *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Art.Width, p.Art.Height, p.Art.Varies.Width = framing.Canvas, in(t, "29 7/8"), in(t, "30"), in(t, "1/8")
			p.Art.Stretch = framing.NewStretch(o.Shop)
		},
		"a canvas that is stretched": func(_ *framing.Order, p *framing.Piece) {
			p.Art.Kind, p.Art.Width, p.Art.Height = framing.Canvas, in(t, "60"), in(t, "72")
		},
	} {
		order := framing.Sample()
		spare(&order, &order.Pieces[0])
		for _, n := range work(t, order).Pieces[0].Notes {
			if slices.Contains(unsaid, n.Code) {
				t.Errorf("%s: %s", name, n.Code)
			}
		}
	}
}

// TestNotesInOrder: the gravest first, every code has English, and no text is
// left with a brace in it.
func TestNotesInOrder(t *testing.T) {
	rank := []explain.Level{explain.Warning, explain.Caution, explain.Advice}
	d := newDice(9)
	for range 2000 {
		plan := work(t, d.order(1))
		last := 0
		for _, n := range plan.Pieces[0].Notes {
			at := slices.Index(rank, n.Level)
			if at < last {
				t.Fatalf("%s %s stands behind a lesser note", n.Level, n.Code)
			}
			last = at
			text := n.Text(format(plan))
			if text == string(n.Code) || slices.ContainsFunc([]rune(text), func(r rune) bool { return r == '{' || r == '}' }) {
				t.Fatalf("%s reads %q", n.Code, text)
			}
			for _, change := range n.Changes {
				if change.Text(format(plan)) == "" {
					t.Fatalf("%s has a change without text", n.Code)
				}
			}
		}
	}
}

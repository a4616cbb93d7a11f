package framing_test

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// Art of 16 x 20 without a mat: the long point is what one orders.
func longPointIsNotShortPoint(r *recorder) {
	p := r.piece("in", tape, `{"art": {"width": "16", "height": "20"},
		"frame": {"face": "1 1/2", "lip": "1/4", "rabbet": "1/2", "allowance": "1/8"}}`)
	r.is("long point, top", p.Frame.Horizontal.LongPoint.Shown, "18 5/8")
	r.is("long point, side", p.Frame.Vertical.LongPoint.Shown, "22 5/8")
	r.is("short point, top", p.Frame.Horizontal.ShortPoint.Shown, "15 5/8")
	r.is("short point, side", p.Frame.Vertical.ShortPoint.Shown, "19 5/8")
	r.size("sight", p.Frame.Sight.Shown(), "15 5/8", "19 5/8")
	r.size("opening", p.Frame.Opening.Shown(), "16 1/8", "20 1/8")
	r.isNot("long point", p.Frame.Horizontal.LongPoint.Shown, "15 5/8")
	r.number("saw, tenths of a degree", int64(p.Frame.Horizontal.Saw.Shown/(measure.Degree/10)), 450)
}

// A print of 19 in a face of 2: not 19 + 2 x 2.
func lipIsTakenOff(r *recorder) {
	p := r.piece("in", tape, `{"art": {"width": "19", "height": "19"},
		"frame": {"face": "2", "lip": "1/4", "rabbet": "1/2", "allowance": "1/8"}}`)
	r.is("long point", p.Frame.Horizontal.LongPoint.Shown, "22 5/8")
	r.isNot("long point", p.Frame.Horizontal.LongPoint.Shown, "23")
	r.is("play", layer(r, p, framing.ArtLayer).Play.Width.Shown, "1/8")
	r.is("bite", layer(r, p, framing.ArtLayer).Bite.Width.Shown, "1/8")
}

// Flat stock of 4 in around a mirror of 72: no lip, no play.
func buttedAround(r *recorder) {
	p := r.piece("in", tape, `{"art": {"kind": "mirror", "width": "72", "height": "72", "thickness": "1/4"},
		"frame": {"face": "4", "lip": "0", "rabbet": "0", "allowance": "0"}}`)
	r.is("long point", p.Frame.Horizontal.LongPoint.Shown, "80")
	r.is("sight", p.Frame.Sight.Width.Shown, "72")
	r.told(p, explain.Warning, molding.NoAllowance)
	r.told(p, explain.Warning, molding.DropsOut)
}

// A recess of 345 x 620 mm with glass of 342 x 616 and plywood of the recess's
// own size.
func eachPartItsPlay(r *recorder) {
	p := r.piece("mm", tenth, `{"art": {"width": "343", "height": "618", "thickness": "0.3"},
		"glazing": {"material": "glass", "size": {"width": "342", "height": "616"}},
		"backing": {"material": "plywood", "thickness": "4", "size": {"width": "345", "height": "620"}},
		"frame": {"face": "30", "lip": "8", "rabbet": "12", "allowance": "2"}}`)
	r.size("opening", p.Frame.Opening.Shown(), "345 mm", "620 mm")
	r.size("play of the glass", layer(r, p, framing.GlazingLayer).Play.Shown(), "3 mm", "4 mm")
	r.size("play of the plywood", layer(r, p, framing.BackingLayer).Play.Shown(), "0", "0")
	n := r.told(p, explain.Warning, molding.NoPlay)
	if len(n.Changes) == 0 {
		r.Fatal("nothing would mend it")
	}
	r.is("the plywood to cut", measure.Length(n.Changes[0].To.N), "343 mm")
	r.untold(p, molding.DoesNotGoIn, molding.DropsOut)
}

// A package of 1/4 asks for a rabbet of 3/8: the points take 1/8.
func rabbetForPoints(r *recorder) {
	piece := func(rabbet string) framing.PiecePlan {
		return r.piece("in", tape, `{"art": {"kind": "panel", "width": "9", "height": "12", "thickness": "1/8"},
			"backing": {"material": "hardboard", "thickness": "1/8"},
			"frame": {"face": "1", "lip": "1/4", "rabbet": "`+rabbet+`"}}`)
	}
	p := piece("1/4")
	r.is("package", p.Depth.Package.Shown, "1/4")
	r.is("wanted", p.Depth.Wanted.Shown, "3/8")
	n := r.told(p, explain.Warning, molding.NoRoom)
	r.is("the rabbet to take", measure.Length(n.Changes[0].To.N), "3/8")
	r.told(piece("5/16"), explain.Advice, molding.LittleRoom)
	r.is("clear", piece("3/8").Depth.Clear.Shown, "1/8")
	r.untold(piece("3/8"), molding.NoRoom, molding.LittleRoom, molding.Proud)
	r.is("proud", -piece("3/16").Depth.Clear.Shown, "1/16")
	r.told(piece("3/16"), explain.Warning, molding.Proud)
	r.told(piece("0"), explain.Advice, molding.DepthUnknown)
}

// A mirror of 1/8 fills a recess of 1/8: nothing is left for a backing.
func rabbetFilled(r *recorder) {
	p := r.piece("in", tape, `{"art": {"kind": "mirror", "width": "14", "height": "22", "thickness": "1/8"},
		"frame": {"face": "1 1/2", "lip": "3/8", "rabbet": "1/8"}}`)
	r.is("clear", p.Depth.Clear.Shown, "0")
	r.is("wanted", p.Depth.Wanted.Shown, "1/4")
	r.told(p, explain.Warning, molding.NoRoom)
	r.untold(p, molding.Proud)
}

// A ready-made frame sold by its outside of 20 x 24: what fits into it is
// smaller by twice face less lip, and by the play.
func readyMadeByOutside(r *recorder) {
	f := molding.Frame{Face: in(r, "1 1/2"), Lip: in(r, "1/4"), Allowance: in(r, "1/8")}
	opening := f.OpeningOf(measure.Size{Width: in(r, "20"), Height: in(r, "24")})
	r.size("opening", opening, "17 1/2", "21 1/2")
	r.isNot("opening", opening.Width, "20")
	r.isNot("opening", opening.Width, "17")
	p := r.piece("in", tape, `{"art": {"width": "17 3/8", "height": "21 3/8"},
		"frame": {"face": "1 1/2", "lip": "1/4", "rabbet": "1/2", "allowance": "1/8"}}`)
	r.size("outside of the frame for what fits", p.Frame.Outside.Shown(), "20", "24")
}

// A pane of 15 1/2 x 19 1/2 in a rabbet of 16 1/8 x 20 1/8 falls through a lip
// of 1/4; 16 x 20 is right.
func paneFallsThrough(r *recorder) {
	const piece = `{"art": {"width": "16", "height": "20", "thickness": "1/32"},
		"frame": {"face": "1", "lip": "1/4", "rabbet": "1/2", "allowance": "1/8"}, "glazing": `
	p := r.piece("in", tape, piece+`{"material": "glass", "thickness": "2 mm"}}`)
	r.size("rabbet", p.Frame.Opening.Shown(), "16 1/8", "20 1/8")
	r.size("glass", layer(r, p, framing.GlazingLayer).Size.Shown(), "16", "20")
	r.untold(p, molding.DropsOut)
	small := r.piece("in", tape, piece+`{"size": {"width": "15 1/2", "height": "19 1/2"}}}`)
	r.size("bite on the pane", layer(r, small, framing.GlazingLayer).Bite.Shown(), "-3/8", "-3/8")
	n := r.told(small, explain.Warning, molding.DropsOut)
	r.text("the pane to cut", string(n.Changes[0].Path), "/order/pieces/0/glazing/size/width")
	r.is("the pane to cut", measure.Length(n.Changes[0].To.N), "16")
}

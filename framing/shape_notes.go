package framing

import (
	"strconv"

	"errors"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// Codes of the notes on frames that are no plain rectangle.
const (
	ShapeParts   explain.Code = "shape.parts"
	ShapeHangers explain.Code = "shape.hangers"
	ShapeSkew    explain.Code = "shape.skew"
)

// appendShape gathers what the shape of the frame, and of the art, has to say.
func (w *worker) appendShape(notes []explain.Note, x exactPiece) []explain.Note {
	shape, saw := &x.shape, w.shop.Saw
	var own []explain.Note
	switch {
	case !w.Frame.Slope.IsZero():
		own = w.slopeNotes(shape)
		if w.form() == regular {
			own = append(own, w.seen().RegularNotes(w.panel, shape.regular, 0, w.regularPlaces())...)
		}
	case w.form() == regular:
		own = w.Frame.RegularNotes(w.panel, shape.regular, saw.Miter, w.regularPlaces())
		if shape.ring.Sides > 0 {
			own = append(own, shape.ring.Notes(saw.Seen, orderRoot+"/shop/saw", w.at.worked+"/shape/last")...)
		}
	default:
		own = append(w.inOrder(shape.frame.Notes(shape.polygon, w.polygonPlaces())), w.chainNotes(shape)...)
		if !shape.polygon.Closed() {
			own = append(own, w.crossedRails(shape)...)
		}
	}
	notes = appendNew(notes, once(own))
	if w.form() == polygonal && (!w.Glazing.IsZero() || !w.Mount.IsZero() || !w.Backing.IsZero()) {
		rails := w.at.worked + "/shape/rails"
		if !w.Frame.Slope.IsZero() {
			rails = w.at.worked + "/shape/slope"
		}
		notes = append(notes, explain.Note{Level: explain.Advice, Code: ShapeParts, Path: rails, Values: []explain.Term{
			explain.NewTerm("allowance", w.Frame.Room(), w.at.order+"/frame/allowance")}})
	}
	if w.form() == regular && !w.Hang.IsZero() {
		notes = append(notes, explain.Note{Level: explain.Warning, Code: ShapeHangers, Path: w.at.order + "/hang"})
	}
	return notes
}

// inOrder writes changes of a frame's sections as those of the order that they were made
// of: a face of its own, or that of all rails, and the lip that all have.
func (w *worker) inOrder(notes []explain.Note) []explain.Note {
	sections, frame := w.polygonPlaces().Frame+"/sections", w.at.order+"/frame"
	for i := range notes {
		changes := notes[i].Changes
		notes[i].Changes = nil
		for _, c := range changes {
			name := c.Path.Last()
			below, ok := c.Path.After(sections)
			switch {
			case ok && name == "face" && len(w.Frame.Faces) > 0:
				side, _ := strconv.Atoi(below.Segments()[0])
				c.Path = (frame + "/faces").Index(side)
			case ok || c.Path.Under(w.polygonPlaces().Frame):
				c.Path = frame.Child(name)
			}
			if name != "allowance" || w.Frame.Kind != molding.Floater {
				notes[i].Changes = append(notes[i].Changes, c)
			}
		}
	}
	return notes
}

// crossedRails are the rails of an open frame whose two miters cross.
func (w *worker) crossedRails(x *exactShape) []explain.Note {
	var notes []explain.Note
	for i, r := range x.polygon.Rails {
		if !r.IsZero() && r.Outer <= 0 {
			notes = append(notes, explain.Note{Level: explain.Warning, Code: molding.RailsClash, Path: (w.at.worked + "/shape/rails").Index(i),
				Values: []explain.Term{explain.NewTerm("limit", measure.Length(0), "")}})
		}
	}
	return notes
}

// once leaves out notes that say the same of another rail or end.
func once(notes []explain.Note) []explain.Note {
	var kept []explain.Note
	for _, n := range notes {
		said := false
		for _, o := range kept {
			said = said || o.Code == n.Code && sameValues(o.Values, n.Values) && len(o.Changes) == 0
		}
		if !said {
			kept = append(kept, n)
		}
	}
	return kept
}

func sameValues(a, b []explain.Term) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Key != b[i].Key || a[i].Value != b[i].Value {
			return false
		}
	}
	return true
}

// appendNew appends notes, but no caution that stands there already, nor a code that
// was said of the whole frame.
func appendNew(notes, more []explain.Note) []explain.Note {
	known := len(notes)
	for _, n := range more {
		said := false
		for _, o := range notes[:known] {
			said = said || o.Code == n.Code
		}
		if !said {
			notes = append(notes, n)
		}
	}
	return notes
}

// slopeNotes are those of sides that slope: rims that do not meet, cuts that the saw
// does not reach.
func (w *worker) slopeNotes(x *exactShape) []explain.Note {
	var notes []explain.Note
	n := x.panel.Len()
	at := w.at.worked + "/shape/slope"
	if w.form() != regular {
		for i := range n {
			k, own := x.slopeOf(i)
			j, other := x.slopeOf((i + 1) % n)
			if k != j {
				notes = append(notes, molding.RimNotes(own.side, other.side, measure.Millimeter/2, at.Index(k)+"/side", at.Index(j)+"/side")...)
			}
		}
	}
	for k, s := range x.slope {
		notes = append(notes, s.side.CutNotes(s.rail, s.left, s.right, molding.LaidFlat, at.Index(k))...)
	}
	if w.form() == polygonal {
		notes = w.lostSlopes(notes, x)
	}
	if w.shop.Saw.Miter == 0 && w.shop.Saw.Tilt == 0 {
		return notes
	}
	reach := molding.Reach{Miter: w.shop.Saw.Miter, Tilt: w.shop.Saw.Tilt}
	if reach.Miter == 0 {
		reach.Miter = measure.RightAngle
	}
	if reach.Tilt == 0 {
		reach.Tilt = measure.RightAngle
	}
	for k, s := range x.slope {
		for _, end := range [...]struct {
			corner molding.SlopedCorner
			at     explain.Path
		}{{s.left, at.Index(k) + "/left"}, {s.right, at.Index(k) + "/right"}} {
			notes = append(notes, end.corner.ReachNotes(molding.LaidFlat, reach, end.at)...)
		}
	}
	return notes
}

// lostSlopes says of sides that slope how they are cut, where nothing is seen in the frame, or where a
// rim is lost between its neighbors.
func (w *worker) lostSlopes(notes []explain.Note, x *exactShape) []explain.Note {
	at := w.at.worked + "/shape/slope"
	lost := func(code explain.Code, path explain.Path, limit measure.Length) {
		notes = append(notes, explain.Note{Level: explain.Warning, Code: code, Path: path, Values: []explain.Term{explain.NewTerm("limit", limit, "")}})
	}
	notes = append(notes, explain.Note{Level: explain.Caution, Code: molding.CautionSaw, Path: at})
	_, err := x.frame.SightEdge(x.panel)
	var fault *plane.Error
	if errors.As(err, &fault) {
		limit := measure.Length(0)
		if fault.Limit.Kind == explain.LengthKind {
			limit = measure.Length(fault.Limit.N)
		}
		lost(molding.NoSight, at, limit)
	}
	for k, s := range x.slope {
		if s.rail.FrontRim <= 0 {
			lost(molding.RailsClash, at.Index(k), 0)
		}
	}
	return notes
}

// appendSkew says of art out of square what its mat shows, or what its gaps become.
func (w *worker) appendSkew(notes []explain.Note) []explain.Note {
	d := w.derived
	if d.Outline == nil {
		return notes
	}
	at := w.at.worked + "/art"
	return append(notes, explain.Note{Level: explain.Advice, Code: ShapeSkew, Path: at + "/skew", Values: []explain.Term{
		explain.NewTerm("skew", said(d.Skew), ""),
		explain.NewTerm("width", d.Width, at+"/width"), explain.NewTerm("height", d.Height, at+"/height"),
		explain.NewTerm("turned", said(d.Turned.Turned), ""),
		explain.NewTerm("turned_width", d.Turned.Size.Width, at+"/turned/size/width"),
		explain.NewTerm("turned_height", d.Turned.Size.Height, at+"/turned/size/height"),
	}})
}

// said is how far something is turned, either way, to the hundredth of a degree.
func said(a measure.Angle) measure.Angle {
	a, _ = measure.RoundTo(max(a, -a), measure.Degree/100, measure.Nearest)
	return a
}

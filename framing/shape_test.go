package framing_test

import (
	"reflect"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
	"github.com/fairmiter/fairmiter/molding"
)

// quarter lists what belongs to four sides as it is after a quarter turn to the left:
// what was at the bottom is at the right.
func quarter[T any](sides []T) []T {
	if len(sides) != 4 {
		return sides
	}
	return []T{sides[3], sides[0], sides[1], sides[2]}
}

// TestQuarterTurn turns orders by 90 degrees: their plans are turned, and nothing else.
func TestQuarterTurn(t *testing.T) {
	d := newDice(31)
	turned := 0
	for turned < 200 {
		order := d.order(1)
		p := &order.Pieces[0]
		p.Mat, p.Liner, p.Hang, p.Art.Stretch = framing.Piece{}.Mat, molding.Frame{}, framing.Piece{}.Hang, framing.Stretch{}
		p.Glazing.Size, p.Mount.Size, p.Backing.Size = measure.Size{}, measure.Size{}, measure.Size{}
		for range 4 {
			p.Frame.Faces = append(p.Frame.Faces, p.Frame.Lip+d.length(1, 60*mm))
		}
		if d.in(2) {
			p.Frame.Slope.Thickness = d.length(1, 20*mm)
			for range 4 {
				p.Frame.Slope.Pitches = append(p.Frame.Slope.Pitches, d.pitch())
			}
		}
		other := order
		other.Pieces = []framing.Piece{*p}
		q := &other.Pieces[0]
		q.Art.Width, q.Art.Height = p.Art.Height, p.Art.Width
		q.Art.Varies.Width, q.Art.Varies.Height = p.Art.Varies.Height, p.Art.Varies.Width
		q.Frame.Faces, q.Frame.Slope.Pitches = quarter(p.Frame.Faces), quarter(p.Frame.Slope.Pitches)
		if order.Check() != nil || other.Check() != nil {
			if (order.Check() == nil) != (other.Check() == nil) {
				t.Fatalf("turned, an order has the problems %v, else %v", other.Check(), order.Check())
			}
			continue
		}
		turned++
		one, two := work(t, order).Pieces[0], work(t, other).Pieces[0]
		if a, b := one.Frame.Outside, two.Frame.Outside; a.Width != b.Height || a.Height != b.Width {
			t.Errorf("outside %v, turned %v", a, b)
		}
		if !reflect.DeepEqual(quarter(one.Shape.Rails), two.Shape.Rails) {
			t.Errorf("rails %+v\nturned %+v", one.Shape.Rails, two.Shape.Rails)
		}
		if len(one.Shape.Slope) != len(two.Shape.Slope) {
			t.Errorf("%d kinds of sides, turned %d", len(one.Shape.Slope), len(two.Shape.Slope))
		}
		for i := range 4 * min(1, len(one.Shape.Slope)) {
			a, b := slopeOf(one.Shape, i), slopeOf(two.Shape, (i+1)%4)
			a.Sides, b.Sides = nil, nil
			if !reflect.DeepEqual(a, b) {
				t.Errorf("side %d is %+v\nturned %+v", i, a, b)
			}
		}
		if t.Failed() {
			return
		}
	}
}

func slopeOf(s framing.ShapePlan, side int) framing.SlopePlan {
	for _, slope := range s.Slope {
		for _, i := range slope.Sides {
			if i == side {
				return slope
			}
		}
	}
	return framing.SlopePlan{}
}

// TestBoxAsOutline: a rectangle given by its edges and a diagonal has the rails of the
// plain one.
func TestBoxAsOutline(t *testing.T) {
	for _, c := range []struct{ width, height, diagonal measure.Length }{{12, 16, 20}, {5, 12, 13}, {24, 7, 25}, {20, 21, 29}} {
		order := read(t, "in", `{"art": {"kind": "panel", "width": "1", "height": "1"}, "frame": {"face": "1 3/4", "lip": "1/4"}}`)
		art := &order.Pieces[0].Art
		art.Width, art.Height = c.width*measure.Inch, c.height*measure.Inch
		plain := work(t, order).Pieces[0]
		order.Pieces[0].Frame.Faces = []measure.Length{order.Pieces[0].Frame.Face, order.Pieces[0].Frame.Face, order.Pieces[0].Frame.Face, order.Pieces[0].Frame.Face}
		faced := work(t, order).Pieces[0]
		o := framing.NewOutline()
		o.By, o.Edges = framing.ByEdges, []measure.Length{art.Width, art.Height, art.Width, art.Height}
		o.Diagonals = []plane.Diagonal{{From: 0, To: 2, Length: c.diagonal * measure.Inch}}
		art.Outline, art.Width, art.Height = o, 0, 0
		order.Pieces[0].Frame.Faces = nil
		outlined := work(t, order).Pieces[0]
		if !reflect.DeepEqual(outlined.Shape.Rails, faced.Shape.Rails) || outlined.Shape.Footage != faced.Shape.Footage {
			t.Errorf("rails %+v, of the plain rectangle %+v", outlined.Shape.Rails, faced.Shape.Rails)
		}
		for i, r := range outlined.Shape.Rails {
			want := plain.Frame.Horizontal
			if i%2 == 1 {
				want = plain.Frame.Vertical
			}
			if r.Long != want.LongPoint || r.Sight.Exact != want.ShortPoint.Exact || r.Start.Saw.Exact != want.Saw.Exact {
				t.Errorf("rail %d is %v long, sight %v, saw %v; plain %v, %v, %v", i, r.Long, r.Sight, r.Start.Saw, want.LongPoint, want.ShortPoint, want.Saw)
			}
		}
		// A corner that was measured lies within a nanometer.
		if w, h := outlined.Art.Width-c.width*measure.Inch, outlined.Art.Height-c.height*measure.Inch; w < 0 || w > 1 || h < 0 || h > 1 {
			t.Errorf("the art is %v x %v", outlined.Art.Width, outlined.Art.Height)
		}
	}
}

// TestOldVersions: fields of version 3 are unknown to the versions before.
func TestOldVersions(t *testing.T) {
	const fields = "/pieces/0/"
	for path, field := range map[explain.Path]string{
		"/shop/saw":            `"shop": {"saw": {"miter": "50"}}, "pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]`,
		fields + "art/outline": `"pieces": [{"art": {"width": "8", "height": "10", "outline": {"by": "around"}}, "frame": {"face": "1", "lip": "1/4"}}]`,
		fields + "art/sides": `"pieces": [{"art": {"sides": {"bottom": "3", "right": "4", "top": "3", "left": "4", "rising": "5"}},
			"frame": {"face": "1", "lip": "1/4"}}]`,
		fields + "frame/faces": `"pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4", "faces": ["1", "1", "2", "1"]}}]`,
		fields + "frame/slope": `"pieces": [{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4",
			"slope": {"pitches": [{"angle": "45", "from": "flat"}], "thickness": "1/2"}}}]`,
	} {
		for version, known := range map[string]bool{"1": false, "2": false, "3": true} {
			order, err := framing.Read([]byte(`{"version": ` + version + `, "units": "in", ` + field + `}`))
			ps := problems(t, err)
			if known {
				if len(ps) > 0 || order.Version != framing.OrderVersion {
					t.Errorf("%s in version %s: %v", path, version, ps)
				}
				continue
			}
			unknown := false
			for _, p := range ps {
				unknown = unknown || p.Path == path && p.Code == explain.UnknownField
			}
			if !unknown || len(ps) > 3 {
				t.Errorf("%s in version %s: %v", path, version, ps)
			}
		}
	}
	versions := make(map[string]int)
	for name, text := range sampleFiles(t) {
		order, err := framing.Read(text)
		if err != nil || order.Version != framing.OrderVersion {
			t.Errorf("%s is read as version %d: %v", name, order.Version, err)
		}
		doc := parseDoc(t, text)
		versions[doc.below[0].raw]++
	}
	if versions["1"] == 0 || versions["2"] == 0 || versions["3"] == 0 {
		t.Errorf("sample orders are of the versions %v", versions)
	}
}

// TestSolveShapes: the fields that a figure of a shape follows from, and lists of the
// order that stay as they are while fields in them are tried.
func TestSolveShapes(t *testing.T) {
	for _, c := range []struct {
		piece string
		want  explain.Path
		free  []explain.Path
	}{
		{octagonMirror, p("/shape/regular/outside"), with(p("/art/outline/size"), p("/frame/face"), p("/frame/lip"), p("/frame/allowance"))},
		{`{"art": {"kind": "panel", "width": "8", "height": "8"}, "frame": {"face": "2", "lip": "1/4", "faces": ["2", "2", "3", "2"]}}`, p("/shape/rails/0/outer"),
			with(p("/art/width"), p("/art/varies/width"), p("/frame/lip"), p("/frame/allowance"), p("/frame/faces/1"), p("/frame/faces/3"))},
		{`{"art": {"kind": "panel", "outline": {"by": "edges", "edges": ["12", "16", "12", "16"], "diagonals": [{"from": 0, "to": 2, "length": "20"}]}},
			"frame": {"face": "2", "lip": "1/4"}}`, p("/shape/rails/0/start/saw"), with(p("/art/outline/edges/0"), p("/art/outline/edges/1"),
			p("/art/outline/edges/2"), p("/art/outline/edges/3"), p("/art/outline/diagonals/0/length"))},
		{`{"art": {"kind": "panel", "width": "8", "height": "8"}, "frame": {"face": "2", "lip": "1/4",
			"slope": {"pitches": [{"angle": "40", "from": "flat"}], "thickness": "1/2"}}}`, p("/shape/slope/0/left/flat/miter"), with(p("/frame/slope/pitches/0/angle"))},
	} {
		order := read(t, "in", c.piece)
		before := marshal(t, order)
		if got := framing.FreeFields(order, c.want); !reflect.DeepEqual(got, c.free) {
			t.Errorf("%s follows from %q, want %q", c.want, got, c.free)
		}
		for _, free := range c.free {
			if _, err := framing.Solve(order, framing.Question{Free: free, Want: c.want, Value: "1"}); err != nil {
				t.Errorf("%s for %s: %v", free, c.want, err)
			}
		}
		if after := marshal(t, order); string(after) != string(before) {
			t.Errorf("asked, the order is %s, was %s", after, before)
		}
	}
}

package framing_test

import (
	"encoding/json"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// TestZero: a zero value of any type may be written, read out and worked, and
// says that it holds nothing.
func TestZero(t *testing.T) {
	if text := (framing.Figure{}).Text(); text != "0" {
		t.Errorf("a zero figure reads %q", text)
	}
	if text := (framing.AngleFigure{}).Text(); text != "0" {
		t.Errorf("a zero angle reads %q", text)
	}
	if text := (framing.SizeFigure{}).Text(); text != "0 x 0" {
		t.Errorf("a zero size reads %q", text)
	}
	if text := (framing.Figure{}).Spoken(); text == "" {
		t.Error("a zero figure says nothing")
	}
	for _, v := range []any{
		framing.Order{}, framing.Shop{}, framing.Show{}, framing.Piece{}, framing.Art{}, framing.Plan{},
		framing.PiecePlan{}, framing.FramePlan{}, framing.MatPlan{}, framing.LayerPlan{}, framing.DepthPlan{},
		framing.Figure{}, framing.SizeFigure{}, framing.SidesFigure{}, framing.AngleFigure{}, framing.CornerFigure{},
		framing.MassFigure{}, framing.ForceFigure{}, framing.CanvasPlan{}, framing.FloatPlan{}, framing.UnderPlan{}, framing.BevelPlan{},
		framing.StackPlan{}, framing.MassPlan{}, framing.PartMass{}, framing.HangPlan{}, framing.MarkPlan{}, framing.LoadFigure{}, framing.PairFigure{},
		framing.Outline{}, framing.Saw{}, framing.ArtPlan{}, framing.ShapePlan{}, framing.RegularPlan{}, framing.SeenPlan{}, framing.CutPlan{}, framing.EndPlan{},
		framing.SlopePlan{}, framing.SlopeEndPlan{}, framing.SettingPlan{}, framing.NearestPlan{}, framing.LastPlan{}, framing.Outlines{},
	} {
		if text := marshal(t, v); !json.Valid(text) {
			t.Errorf("%T{} writes %s", v, text)
		}
	}
	if got := (framing.SizeFigure{}).Exact(); got != (framing.SizeFigure{}).Shown() {
		t.Errorf("a zero size is %v", got)
	}
	if got := (framing.SidesFigure{}).Exact(); got != (framing.SidesFigure{}).Shown() {
		t.Errorf("zero sides are %v", got)
	}
	plan, err := framing.Work(framing.Order{})
	ps := problems(t, err)
	want := []explain.Path{"/pieces", "/show/as", "/show/fineness", "/units", "/version"}
	got := paths(ps)
	if len(got) != len(want) || len(plan.Pieces) != 0 {
		t.Fatalf("the zero order has problems at %q and %d pieces", got, len(plan.Pieces))
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("problem at %s, want %s", got[i], want[i])
		}
	}
}

// TestZeroIsZero: a setting of nothing means nothing; one that is absent takes
// the shop's, and the shop's own absent one the trade's.
func TestZeroIsZero(t *testing.T) {
	const art = `"art": {"width": "8", "height": "10"}`
	for _, c := range []struct{ shop, frame, want string }{
		{`{}`, `"face": "1"`, "1/8"},
		{`{}`, `"face": "1", "allowance": "0"`, "0"},
		{`{"allowance": "3/16"}`, `"face": "1"`, "3/16"},
		{`{"allowance": "0"}`, `"face": "1"`, "0"},
		{`{"allowance": "0"}`, `"face": "1", "allowance": "1/16"`, "1/16"},
	} {
		plan := worked(t, `{"version": 1, "units": "in", "shop": `+c.shop+`, "pieces": [{`+art+`, "frame": {"lip": "1/4", `+c.frame+`}}]}`)
		if got, want := plan.Pieces[0].Frame.Opening.Width.Exact, in(t, "8")+in(t, c.want); got != want {
			t.Errorf("shop %s, frame %s: opening %v, want %v", c.shop, c.frame, got, want)
		}
	}
	for _, bad := range []string{`"allowance": ""`, `"allowance": null`, `"allowance": 0`} {
		_, err := framing.Read([]byte(orderOf(`{` + art + `, "frame": {"face": "1", "lip": "1/4", ` + bad + `}}`)))
		if ps := problems(t, err); len(ps) != 1 || ps[0].Path != "/pieces/0/frame/allowance" {
			t.Errorf("%s: %v", bad, ps)
		}
	}
}

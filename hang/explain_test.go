package hang_test

import (
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/hang"
)

// TestExplainText: how figures read at the bench.
func TestExplainText(t *testing.T) {
	f := measure.Format{Style: measure.Fraction, Step: in("1/16")}
	wire, g := worked()
	wire.Taut = hang.Taut{By: hang.ByRise, Rise: in("4")}
	two := wire
	two.Hooks = 2
	bare := wire
	bare.NailAbove = 0
	rings := wire
	rings.By, rings.BelowRight = hang.Rings, in("6 3/4")
	rows := []struct {
		h      hang.Hanging
		figure explain.Path
		want   string
	}{
		{wire, "/span", "span 18 = outside 20 - 2 x hanger from the outside edge 1"},
		{wire, "/wire_top", "wire below the top 3 = hangers below the top 7 - rise 4"},
		{two, "/spread", "hooks apart 9 = half of (span 18)"},
		{wire, "/marks/0/across", "from the middle 0 = middle 0"},
		{two, "/marks/0/across", "from the middle -4 1/2 = middle 0 - half of (hooks apart 9)"},
		{two, "/marks/1/across", "from the middle 4 1/2 = hooks apart 9 - half of (hooks apart 9)"},
		{rings, "/below/right", "hangers below the top 6 3/4 = given 6 3/4"},
		{rings, "/marks/1/bearing", "hook bears at 62 1/4 = center line 57 + half of (outside 24) - hangers below the top 6 3/4"},
		{bare, "/marks/0/nail", "a bare nail at 66 = hook bears at 66"},
		{rings, "/marks/1/nail", "nail hole at 63 = hook bears at 62 1/4 + nail above the bearing 3/4"},
	}
	for _, row := range rows {
		w, ok := row.h.Explain(g, row.figure, places)
		if got := w.Text(f); !ok || got != row.want {
			t.Errorf("%s reads %q, want %q", row.figure, got, row.want)
		}
	}
}

// TestNoWorking asks for figures that there are not.
func TestNoWorking(t *testing.T) {
	one, g := worked()
	two := one
	two.Hooks = 2
	rings := one
	rings.By = hang.Rings
	sawtooth := one
	sawtooth.By = hang.Sawtooth
	rows := map[explain.Path][]hang.Hanging{
		"":                   {one, two, rings, sawtooth},
		"/":                  {one},
		"span":               {one},
		"/span":              {sawtooth},
		"/spread":            {one, rings, sawtooth},
		"/rise":              {rings, sawtooth},
		"/wire":              {rings, sawtooth},
		"/stable_rise":       {two, rings, sawtooth},
		"/tension/nominal":   {rings, sawtooth},
		"/pull/heaviest":     {rings, sawtooth},
		"/hook":              {one},
		"/hook/lightest":     {one},
		"/hooks/nominal":     {one},
		"/below":             {one},
		"/below/top":         {one},
		"/marks":             {one},
		"/marks/0":           {one},
		"/marks/1/nail":      {one, sawtooth},
		"/marks/2/nail":      {two, rings},
		"/marks/-1/nail":     {two},
		"/marks/00/nail":     {two},
		"/marks/x/nail":      {two},
		"/marks/0/height":    {two},
		"/marks/0/nail/0":    {two},
		"/lines/0/nail":      {two},
		"/marks/1/bearing/a": {two},
	}
	for path, hangings := range rows {
		for _, h := range hangings {
			if w, ok := h.Explain(g, path, places); ok {
				t.Errorf("%q by %s is explained: %+v", path, h.By, w)
			}
		}
	}
}

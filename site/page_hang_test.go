//go:build !js

package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
)

// TestNail: what stands large at a hook is its nail hole where the order says how
// much higher that is than where the hook bears, and else where it bears; never is
// the one called the other.
func TestNail(t *testing.T) {
	t.Parallel()
	v := desk(t)
	home := fmt.Sprint(v.eval(`return location.href`))
	for _, row := range []struct {
		hang        map[string]any
		large, says string
	}{
		{map[string]any{"by": "wire"}, "bearing", "the hook bears the wire here, above the floor|the nail hole is higher by what the hook adds"},
		{map[string]any{"by": "rings"}, "bearing", "the hook bears the ring here, above the floor|the nail hole is higher by what the hook adds"},
		{map[string]any{"by": "sawtooth"}, "bearing", "the hook bears the sawtooth here, above the floor|the nail hole is higher by what the hook adds"},
		{map[string]any{"by": "wire", "nail_above": "5/8"}, "nail", "nail hole above the floor|hook bears BEARING above the floor"},
		{map[string]any{"by": "rings", "nail_above": "5/8"}, "nail", "nail hole above the floor|hook bears BEARING above the floor"},
	} {
		order := sampleWith(t, func(_, piece map[string]any) { piece["hang"] = row.hang })
		v.goes(home + "sample.json") // where the page does not keep its own
		v.eval(`localStorage.setItem("fairmiter.order", arguments[0])`, string(order))
		v.goes(home)
		v.ready()
		v.press(`#views [data-view="hang"]`)
		v.wait(`document.querySelector("#hang .nail .cut-size [data-path]")`)
		marks := worked(t, order).plan.Pieces[0].Hang.Marks
		got := v.eval(`return [...document.querySelectorAll("#hang .nail")].map(n => { const f = n.querySelector(".cut-size [data-path]");
			return [f.dataset.path.split("/").at(-1), f.textContent, [...n.querySelectorAll(".hint")].slice(0, 2).map(h => h.textContent).join("|")].join("; "); })`).([]any)
		if len(got) != len(marks) {
			t.Fatalf("%v: %d hooks, want %d", row.hang, len(got), len(marks))
		}
		for i, m := range marks {
			figure := m.Bearing
			if row.large == "nail" {
				figure = m.Nail
			}
			want := row.large + "; " + figure.Text() + "; " + strings.ReplaceAll(row.says, "BEARING", m.Bearing.Text())
			if got[i] != want {
				text, _ := json.Marshal(row.hang)
				t.Errorf("%s: got\n%v\nwant\n%s", text, got[i], want)
			}
		}
	}
}

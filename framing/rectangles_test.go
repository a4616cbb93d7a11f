//go:build rectangles

package framing_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// TestRectangles: a build without shapes makes the same plans of plain rectangles, and
// refuses any other piece by its name.
func TestRectangles(t *testing.T) {
	plain, shaped := 0, 0
	for name, text := range sampleFiles(t) {
		reading := framing.NewReading(text)
		plan, err := reading.Work()
		refused := problems(t, err)
		for i := range reading.Order.Pieces {
			if reading.Order.Pieces[i].Shaped() {
				shaped++
				no := func(p explain.Problem) bool { return p.Code == framing.NoShapes }
				if !slices.ContainsFunc(refused.Under(explain.Path("/pieces").Index(i)), no) || plan.Pieces[i].Worked {
					t.Errorf("%s: piece %d has a shape and is not refused: %v", name, i, refused)
				}
			}
		}
		if refused != nil {
			continue
		}
		plain++
		got, err := json.MarshalIndent(plan, "", "\t")
		if err != nil {
			t.Fatal(err)
		}
		want, err := os.ReadFile(filepath.Join(testdata, "plans", name+".json"))
		if err != nil || !bytes.Equal(append(got, '\n'), want) {
			t.Errorf("%s: another plan than that of the whole build (%v)", name, err)
		}
	}
	if plain < 10 || shaped < 10 {
		t.Errorf("%d plain orders and %d shaped pieces tried", plain, shaped)
	}
}

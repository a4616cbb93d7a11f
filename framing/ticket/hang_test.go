package ticket_test

import (
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

// TestHangsWhere: a wire above its frame and hooks below the floor are said in
// words, and a nail hole that is not known is not given.
func TestHangsWhere(t *testing.T) {
	const adds = "the nail is higher by what the hook adds"
	rows := []struct {
		name, hang string
		has, hasNo []string
	}{
		{"a wire above the frame", `{"by": "wire", "hooks": 1, "taut": {"by": "angle", "angle": "45"}}`, []string{"above the frame's", adds}, []string{"top -", ", its nail hole"}},
		{"a hidden wire", `{"by": "wire", "taut": {"by": "rise", "rise": "1"}, "nail_above": "1/2"}`, []string{"below the frame's", ", its nail hole"}, []string{adds}},
		{"rings", `{"by": "rings"}`, []string{adds}, []string{", its nail hole"}},
		{"a sawtooth", `{"by": "sawtooth"}`, nil, []string{adds, ", its nail hole"}},
		{"below the floor", `{"by": "rings", "below": "20", "center": "2"}`, []string{"below the floor"}, []string{"bears -"}},
	}
	for _, row := range rows {
		order := framing.NewReading([]byte(`{"version": 2, "units": "in", "pieces": [{"art": {"width": "40", "height": "12"},
			"frame": {"face": "1 1/4", "lip": "1/4", "rabbet": "5/8"}, "hang": ` + row.hang + `}]}`))
		plan, err := order.Work()
		if err != nil {
			t.Fatalf("%s: %v", row.name, err)
		}
		text := strings.Join(strings.Fields(ticket.Text(plan, ticket.Options{})), " ")
		for _, part := range row.has {
			if !strings.Contains(text, part) {
				t.Errorf("%s: no %q", row.name, part)
			}
		}
		for _, part := range row.hasNo {
			if strings.Contains(text, part) {
				t.Errorf("%s: %q", row.name, part)
			}
		}
	}
}

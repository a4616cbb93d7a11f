package draw

import (
	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/hang"
)

// marks are the lines about the hooks in the wall: their nail holes and where
// they bear, and that alone where it is not known how high a hook is. Two at one
// height are said once.
func (s *sheet) marks(h *framing.HangPlan) []label {
	known := s.order.Hang.NailAbove != 0
	marks, names := h.Marks, []string{"hook bears", "hook bears"}
	holes := []string{"nail hole", "nail hole"}
	var lines []label
	switch {
	case len(marks) < 2:
	case marks[0].Bearing == marks[1].Bearing && marks[0].Nail == marks[1].Nail:
		marks, names[0], holes[0] = marks[:1], "both hooks bear", "both nail holes"
	default:
		lines = append(lines, saying("as one faces the wall:"))
		names = []string{"left hook bears", "right hook bears"}
		holes = []string{"left nail hole", "right nail hole"}
	}
	for i, m := range marks {
		at := explain.Path("/hang/marks").Index(i)
		if known {
			lines = append(lines, s.aside(at+"/nail", m.Nail, holes[i]+" above the floor", holes[i]+" below the floor"))
		}
		lines = append(lines, s.aside(at+"/bearing", m.Bearing, names[i]+" above the floor", names[i]+" below the floor"))
	}
	if !known && s.order.Hang.By != hang.Sawtooth {
		lines = append(lines, saying("the nail is higher by what the hook adds"))
	}
	return lines
}

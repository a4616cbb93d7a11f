package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
)

// ends names what lies below a piece's shape: all the ends that are cut as the one at
// this place is, or the sides that a place is about. It is "" where a place has no name
// at the bench.
func ends(p *framing.PiecePlan, order *framing.Piece, place []string) string {
	s := &p.Shape
	switch {
	case len(place) < 2:
		return ""
	case place[0] == "regular" && place[1] == "saw":
		return "every end"
	case place[0] != "rails" && place[0] != "slope":
		return ""
	}
	i, err := strconv.Atoi(place[1])
	if err != nil || i < 0 {
		return ""
	}
	at := ""
	if len(place) > 2 {
		at = place[2]
	}
	switch {
	case place[0] == "slope" && i < len(s.Slope):
		names := sideNames(s.Slope[i].Sides, len(s.Sides), order)
		switch at {
		case "left", "right":
			corner := s.Slope[i].Left.Corner
			if at == "right" {
				corner = s.Slope[i].Right.Corner
			}
			for _, e := range endsOf(s, order) {
				if e.Corner == corner && e.of.Side == s.Slope[i].Side {
					return e.name
				}
			}
		}
		return names
	case place[0] == "rails" && i < len(s.Rails):
		switch at {
		case "start":
			return endsLike(s, s.Rails[i].Start, order)
		case "finish":
			return endsLike(s, s.Rails[i].Finish, order)
		}
		return rail(i, order)
	}
	return ""
}

// endsLike names the ends of all rails that are cut at one angle.
func endsLike(s *framing.ShapePlan, like framing.EndPlan, order *framing.Piece) string {
	var both, left, right []int
	for i, r := range s.Rails {
		if r.IsZero() {
			continue
		}
		start := r.Start.Saw == like.Saw && r.Start.Square == like.Square
		finish := r.Finish.Saw == like.Saw && r.Finish.Square == like.Square
		switch {
		case start && finish:
			both = append(both, i)
		case start:
			left = append(left, i)
		case finish:
			right = append(right, i)
		}
	}
	var names []string
	for _, ends := range [...]struct {
		name  string
		sides []int
	}{{"both ends of ", both}, {"left end of ", left}, {"right end of ", right}} {
		if len(ends.sides) > 0 {
			names = append(names, ends.name+railNames(ends.sides, len(s.Sides), order))
		}
	}
	return strings.Join(names, ", ")
}

// railNames names the rails along some sides, of so many.
func railNames(list []int, of int, order *framing.Piece) string {
	names := sideNames(list, of, order)
	switch {
	case isPanel(order) || len(list) == of:
		return names
	case len(list) == 1:
		return "the " + names + " rail"
	}
	return "the " + names + " rails"
}

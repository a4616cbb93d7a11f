package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// subject names what a note or a problem is about, with a colon behind it: the
// part in the rabbet, or the field of the order. Pieces are counted from 1.
func (t *writer) subject(path explain.Path) string {
	segments := path.Segments()
	if len(segments) > 4 && segments[0] == "pieces" && segments[2] == "layers" {
		return t.part(segments[1], segments[3]) + ", " + path.Last() + ": "
	}
	if framing.Shapes && len(segments) > 4 && segments[0] == "pieces" && segments[2] == "shape" {
		if i, err := strconv.Atoi(segments[1]); err == nil && i >= 0 && i < len(t.plan.Pieces) && i < len(t.plan.Order.Pieces) {
			if name := ends(&t.plan.Pieces[i], &t.plan.Order.Pieces[i], segments[3:]); name != "" {
				return name + ": "
			}
		}
		return ""
	}
	if len(segments) < 2 || segments[0] != "order" {
		return ""
	}
	field := segments[1:]
	if field[0] == "pieces" && len(field) > 1 {
		rest := strings.Join(field[2:], " ")
		if i, err := strconv.Atoi(field[1]); err == nil && len(t.plan.Pieces) > 1 {
			rest = strings.TrimSpace("piece " + strconv.Itoa(i+1) + " " + rest)
		}
		field = []string{rest}
	}
	return strings.ReplaceAll(strings.Join(field, " "), "_", " ") + ": "
}

// part names the layer of a piece, both given as they stand in a path.
func (t *writer) part(piece, layer string) string {
	i, err := strconv.Atoi(piece)
	k, err2 := strconv.Atoi(layer)
	if err != nil || err2 != nil || i >= len(t.plan.Pieces) || k >= len(t.plan.Pieces[i].Layers) {
		return "part " + layer
	}
	return explain.English(string(t.plan.Pieces[i].Layers[k].Part))
}

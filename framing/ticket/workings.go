package ticket

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// workings writes how each figure of a piece came to be: its path, the exact
// working, and below it the rounding where that is more than the same again. Of
// rails and ends that are cut alike, or as mirror images, the first one has it.
func (t *writer) workings(i int) {
	figures := t.plan.Figures(i)
	if len(figures) == 0 {
		return
	}
	t.sheet.heading("Workings, exact; below with ~ as shown")
	root := explain.Path("/pieces").Index(i)
	said := map[string]bool{}
	p := &t.plan.Pieces[i]
	var list []cut
	if framing.Shapes {
		list = cutsOf(&p.Shape)
	}
	for _, path := range figures {
		figure, _ := path.After(root)
		if place := figure.Segments(); len(place) == 0 || t.needless(p, list, place) {
			continue
		}
		w, ok := t.plan.Explain(path)
		if !ok {
			continue
		}
		exact := w.Text(t.format)
		if strings.HasPrefix(string(figure), "/shape/") {
			if said[exact] {
				continue
			}
			said[exact] = true
		}
		t.row(t.figure(i, figure), exact)
		if shown := string(w.AppendRounding(nil, t.format)); w.Exact != w.Shown && shown != exact {
			t.row("", "~ ", shown)
		}
	}
}

// needless reports whether a working says nothing: that of a rail that is cut as one
// before it is, of a second size across flats, or of a piece of which no part has a
// weight.
func (t *writer) needless(p *framing.PiecePlan, list []cut, place []string) bool {
	switch {
	case t.flats && place[len(place)-1] == "height":
		return true
	case place[0] == "mass":
		return len(p.Mass.Parts) == 0
	case framing.Shapes && len(place) > 2 && place[0] == "shape" && place[1] == "rails":
		i, err := strconv.Atoi(place[2])
		return err == nil && known(list, i)
	}
	return false
}

// figure names a figure by its path: a rail and its end as they are called at the
// bench.
func (t *writer) figure(i int, figure explain.Path) string {
	place := figure.Segments()
	if len(place) > 0 && t.flats && place[len(place)-1] == "width" {
		place[len(place)-1] = "across flats"
	}
	if !framing.Shapes || len(place) < 3 || place[0] != "shape" {
		return strings.Join(place, " ")
	}
	place = place[1:]
	if place[0] == "footage" {
		return "in the rails"
	}
	p, order := &t.plan.Pieces[i], &t.plan.Order.Pieces[i]
	if place[0] != "rails" && place[0] != "slope" {
		return strings.Join(place, " ")
	}
	name, rest := ends(p, order, place[:2]), place[2:]
	switch rest[0] {
	case "start":
		rest[0] = "left end"
	case "finish":
		rest[0] = "right end"
	case "left", "right":
		name, rest = ends(p, order, place[:3]), place[3:]
	}
	return word(name + ", " + strings.Join(rest, " "))
}

// defaults lists the fields that were not given.
func (t *writer) defaults() {
	if len(t.plan.Defaults) == 0 {
		return
	}
	t.sheet.heading("Not given, so as the shop usually does")
	for _, path := range t.plan.Defaults {
		field, _ := path.After("/order")
		t.sheet.item(clean(strings.ReplaceAll(strings.TrimPrefix(string(field), "/"), "/", " ")))
	}
}

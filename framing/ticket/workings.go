package ticket

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// workings writes how each figure of a piece came to be: its path, the exact
// working, and below it the rounding where that is more than the same again.
func (t *writer) workings(i int) {
	figures := t.plan.Figures(i)
	if len(figures) == 0 {
		return
	}
	t.sheet.heading("Workings, exact; below with ~ as shown")
	root := explain.Path("/pieces").Index(i)
	for _, path := range figures {
		w, ok := t.plan.Explain(path)
		if !ok {
			continue
		}
		figure, _ := path.After(root)
		t.row(strings.ReplaceAll(strings.TrimPrefix(string(figure), "/"), "/", " "), w.Text(t.format))
		if exact, shown := w.Text(t.format), string(w.AppendRounding(nil, t.format)); w.Exact != w.Shown && shown != exact {
			t.row("", "~ ", shown)
		}
	}
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

package framing_test

import (
	"encoding/json"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A spot is one field of the full order.
type spot struct {
	path     explain.Path
	kind     reflect.Type
	required bool // an order without it has a problem at its very path
	zeroable bool // left out where it is zero, so that its absence is no default
}

// spots lists every field of an order that one of the full orders has, holders before
// what they hold.
func spots(full *doc) []spot {
	var list, has []spot
	spotsOf(reflect.TypeFor[framing.Order](), "", &list)
	for _, s := range list {
		if holds(full, s.path) {
			has = append(has, s.in(full))
		}
	}
	return has
}

// in is the spot in an order: what counts of an outline depends on how it is given.
func (s spot) in(full *doc) spot {
	const outline = "/pieces/0/art/outline"
	if !s.path.Under(outline) {
		return s
	}
	holder, i := full.at(outline + "/by")
	by := holder.below[i].raw
	switch s.path {
	case outline + "/size":
		s.required = by == `"regular"`
	case outline + "/edges":
		s.required = by == `"edges"` || by == `"angles"`
	case outline + "/diagonals":
		s.required = by == `"edges"`
	case outline + "/angles":
		s.required = by == `"angles"`
	}
	return s
}

// element reports whether the spot is not a field but lies in a list.
func (s spot) element() bool { return s.path.Last() == "0" }

func spotsOf(t reflect.Type, at explain.Path, list *[]spot) {
	for _, f := range reflect.VisibleFields(t) {
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		if name == "" || f.Anonymous || !f.IsExported() {
			continue
		}
		path := at.Child(name)
		s := spot{path, f.Type, f.Tag.Get("order") == "required", options == "omitzero"}
		switch {
		case name == "face" || path.Parent().Last() == "size" || name == "size" && f.Type == reflect.TypeFor[measure.Length](),
			path.Parent().Last() == "sides" && name != "rising" && name != "falling":
			s.required = true // zero is what it has then, and zero makes no sense
		}
		*list = append(*list, s)
		switch f.Type.Kind() {
		case reflect.Struct:
			spotsOf(f.Type, path, list)
		case reflect.Slice, reflect.Array:
			if f.Type.Elem().Kind() != reflect.Struct {
				*list = append(*list, spot{path: path.Index(0), kind: f.Type.Elem()})
				continue
			}
			spotsOf(f.Type.Elem(), path.Index(0), list)
		}
	}
}

// never are fields that no order may hold: a liner is a plain rectangle.
func never(path explain.Path) bool {
	return path.Under("/pieces/0/liner/faces") || path.Under("/pieces/0/liner/slope")
}

// TestFullOrders: every field of an order stands in one of the full ones.
func TestFullOrders(t *testing.T) {
	var list []spot
	spotsOf(reflect.TypeFor[framing.Order](), "", &list)
	has := make(map[explain.Path]bool)
	for name, text := range fullOrders {
		full := parseDoc(t, []byte(text))
		exactly(t, full.text(), name)
		for _, s := range spots(full) {
			has[s.path] = true
		}
		if plan := worked(t, text); len(plan.Defaults) > 0 || !plan.Pieces[0].Worked {
			t.Errorf("%s: the plan names the defaults %q", name, plan.Defaults)
		}
	}
	for _, s := range list {
		if has[s.path] == never(s.path) {
			t.Errorf("%s stands in a full order: %v", s.path, has[s.path])
		}
	}
	liner := parseDoc(t, []byte(fullOrder))
	for key, raw := range map[string]string{"faces": `["1", "1", "1", "1"]`, "slope": `{"pitches": [{"angle": "40", "from": "flat"}], "thickness": "1/2"}`} {
		exactly(t, liner.beside("/pieces/0/liner/kind", key, raw).text(), "a liner with "+key, "/pieces/0/liner")
	}
}

// wrongs lists values that are wrong for a field whatever the others hold.
func (s spot) wrongs() []string {
	wrong := []string{"null", "true", "[]", "[1]", "-0.5e1"}
	switch s.kind.Kind() {
	case reflect.Struct:
		return append(wrong, `"text"`, "7")
	case reflect.Slice:
		wrong = []string{"null", "true", "{}", `"text"`, "7"}
		if s.required || !s.path.Under("/pieces/0/art/outline") {
			wrong = append(wrong, "[]") // those of an outline may not count
		}
		return wrong
	case reflect.Array:
		return []string{"null", "true", "{}", `"text"`, "7", "[{}, {}, {}]"}
	case reflect.Int, reflect.Int64:
		switch s.kind {
		case reflect.TypeFor[measure.Angle]():
			wrong = append(wrong, "{}", "45", `""`, `"3 kg"`, `"3 mm"`, `"361 deg"`, `"-6 deg"`, `"steep"`)
			if s.path != "/shop/saw/off" && s.path != "/pieces/0/art/outline/angles/0" {
				wrong = append(wrong, `"-1 deg"`, `"181 deg"`)
			}
			return wrong
		case reflect.TypeFor[measure.Mass]():
			return append(wrong, "{}", "2", `""`, `"2"`, `"-1 kg"`, `"3 mm"`, `"2 N"`, `"10001 kg"`, `"heavy"`)
		case reflect.TypeFor[measure.Force]():
			return append(wrong, "{}", "20", `""`, `"20"`, `"-1 N"`, `"3 mm"`, `"101 kN"`, `"strong"`)
		}
		if s.kind != reflect.TypeFor[measure.Length]() {
			return append(wrong, "{}", `"1"`, "-1", "1.5", "1e3", "99999999", "99999999999999999999999", "-99999999999999999999999")
		}
		wrong = append(wrong, "{}", "12", "0", `""`, `" "`, `"-1 mm"`, `"-1/64"`, `"3 kg"`, `"2 deg"`, `"3 sq in"`, `"1,250"`,
			`"51 m"`, `"2000 in"`, `"99999999999999999999 mm"`, `"twelve"`, `"1/0"`, `"1 \u0000"`, `"\ud800"`)
		if s.positive() {
			wrong = append(wrong, `"0"`, `"0 mm"`)
		}
		return wrong
	}
	wrong = append(wrong, "{}", "7")
	if _, ok := reflect.Zero(s.kind).Interface().(interface{ Choices() []string }); ok {
		for _, word := range choices(s.kind) {
			wrong = append(wrong, strconv.Quote(strings.ToUpper(word)), strconv.Quote(strings.ToUpper(word[:1])+word[1:]))
		}
		return append(wrong, `""`, `"other word"`, `"\ud800"`)
	}
	if s.kind == reflect.TypeFor[framing.Date]() {
		return append(wrong, `"2027-02-29"`, `"2027-3-31"`, `"31.3.2027"`, `"2027-03-31T00:00:00Z"`, `"today"`)
	}
	return append(wrong, strconv.Quote(strings.Repeat("x", explain.MaxText+1)), `"two\nlines"`, `"\u202eturned"`, `"\u0007"`, `"\udc00"`)
}

func choices(kind reflect.Type) []string {
	return reflect.Zero(kind).Interface().(interface{ Choices() []string }).Choices()
}

// positive reports whether a length of nothing makes no sense here.
func (s spot) positive() bool {
	switch s.path.Last() {
	case "face", "fineness":
		return true
	case "size":
		return s.required
	case "bottom", "right", "top", "left":
		return s.path.Parent().Last() == "sides"
	case "length":
		return true
	case "0":
		return s.path.Parent().Last() == "edges"
	case "thickness":
		return s.path.Parent().Last() != "art"
	case "width", "height":
		return s.path.Parent().Last() == "art" || s.path.Parent().Last() == "size"
	}
	return false
}

// exactly requires that an order has problems at these paths and nowhere else.
func exactly(t *testing.T, text []byte, what string, want ...explain.Path) {
	t.Helper()
	order, err := framing.Read(text)
	ps := problems(t, err)
	sortedPaths(t, ps)
	slices.SortFunc(want, explain.Path.Compare)
	if got := paths(ps); !slices.Equal(got, want) {
		t.Errorf("%s: problems at %q, want %q\n%v", what, got, want, ps)
	}
	// What is found again in the order that could be read is no more than that.
	_, err = framing.Work(order)
	for _, p := range problems(t, err) {
		if !slices.ContainsFunc(want, func(w explain.Path) bool {
			// Measures and rails need not go together then.
			return p.Path.Under(w) || p.Code == framing.NotTogether || w.Under(p.Path) && strings.HasPrefix(string(p.Code), "plane.")
		}) {
			t.Errorf("%s: Work finds %v as well", what, p)
		}
	}
	// Worked with what is known of the text, the problems are the same ones, and
	// no piece is worked that was not understood whole.
	plan, err := framing.NewReading(text).Work()
	if again := problems(t, err); !slices.Equal(again, ps) || len(plan.Problems) != len(ps) {
		t.Errorf("%s: worked, the problems are %v and in the plan %v, want %v", what, again, plan.Problems, ps)
	}
	for i, p := range plan.Pieces {
		for _, w := range want {
			if p.Worked && w.Under(explain.Path("/pieces").Index(i)) {
				t.Errorf("%s: piece %d is worked", what, i)
			}
		}
	}
}

// TestStrict changes one field of a good order at a time.
func TestStrict(t *testing.T) {
	for name, text := range fullOrders {
		t.Run(name, func(t *testing.T) { strictly(t, parseDoc(t, []byte(text)), name == "plain") })
	}
}

// strictly tries the fields of an order: those that the plain one has, too, where all
// is set.
func strictly(t *testing.T, full *doc, all bool) {
	plain := parseDoc(t, []byte(fullOrder))
	for _, s := range spots(full) {
		if !all && holds(plain, s.path) && !s.path.Under("/pieces/0/art") {
			continue
		}
		for _, raw := range s.wrongs() {
			exactly(t, full.with(s.path, raw).text(), string(s.path)+" = "+raw, s.path)
		}
		if s.element() {
			continue
		}
		key := s.path.Last()
		for _, other := range []string{strings.ToUpper(key), strings.ToUpper(key[:1]) + key[1:]} {
			exactly(t, full.renamed(s.path, other).text(), other, s.path.Parent().Child(other))
			exactly(t, full.beside(s.path, other, "null").text(), other+" as well", s.path.Parent().Child(other))
		}
		exactly(t, full.beside(s.path, key, "null").text(), "twice "+key, s.path)
		for _, unknown := range []string{key + "s", "", "~/", "é", "__proto__"} {
			exactly(t, full.beside(s.path, unknown, `{"a": [1, {"b": "1 in"}]}`).text(), "unknown "+unknown, s.path.Parent().Child(unknown))
		}
		absent(t, full, s)
	}
}

// absent leaves a field out: a problem there, or the default and a word about it.
func absent(t *testing.T, full *doc, s spot) {
	t.Helper()
	text := full.without(s.path).text()
	if s.path == "/pieces/0/art/sides" || s.path == "/pieces/0/art/outline" && !holds(full, "/pieces/0/art/width") {
		exactly(t, text, "without "+string(s.path), "/pieces/0/art/width", "/pieces/0/art/height")
		return
	}
	if s.path == "/pieces/0/art/outline" {
		exactly(t, text, "without "+string(s.path), "/pieces/0/frame/faces") // as many as the outline has sides
		return
	}
	if s.required {
		exactly(t, text, "without "+string(s.path), s.path)
		return
	}
	plan, err := framing.NewReading(text).Work()
	if err != nil {
		t.Errorf("without %s: %v", s.path, err)
		return
	}
	told := slices.Contains(plan.Defaults, "/order"+s.path)
	if told == s.zeroable || len(plan.Defaults) > 1 {
		t.Errorf("without %s the plan names the defaults %q", s.path, plan.Defaults)
	}
	var document any
	if err := json.Unmarshal(marshal(t, plan), &document); err != nil {
		t.Fatal(err)
	}
	if _, written := resolve(document, "/order"+s.path); written == s.zeroable {
		t.Errorf("without %s the plan's order writes it: %v", s.path, written)
	}
}

func holds(full *doc, path explain.Path) bool {
	holder, i := full.reach(path)
	return holder != nil && i >= 0
}

// TestStrictSeveral spoils several fields at once.
func TestStrictSeveral(t *testing.T) {
	for name, text := range fullOrders {
		t.Run(name, func(t *testing.T) { several(t, parseDoc(t, []byte(text))) })
	}
}

func several(t *testing.T, full *doc) {
	var leaves []spot
	for _, s := range spots(full) {
		if k := s.kind.Kind(); k != reflect.Struct && k != reflect.Slice && k != reflect.Array {
			leaves = append(leaves, s)
		}
	}
	d, rounds := newDice(3), 400
	if slow {
		rounds = 100
	}
	for range rounds {
		spoiled := full
		var want []explain.Path
		for k := 1 + d.below(5); k > 0; {
			s := draw(d, leaves...)
			if slices.Contains(want, s.path) {
				continue
			}
			raw := draw(d, s.wrongs()...)
			if s.path.Parent().Last() == "size" && strings.HasPrefix(raw, `"0`) {
				continue // a size of nothing both ways is cut to fit, and a spoiled one reads as nothing
			}
			if strings.HasPrefix(raw, `"0`) && (s.path.Under("/pieces/0/art/width") || s.path.Under("/pieces/0/art/height") || s.path.Under("/pieces/0/art/outline")) {
				continue // whether it may be nothing depends on how an outline is given, which is spoiled, too
			}
			spoiled = spoiled.with(s.path, raw)
			want = append(want, s.path)
			k--
		}
		exactly(t, spoiled.text(), string(spoiled.text()), want...)
		if t.Failed() {
			return
		}
	}
}
